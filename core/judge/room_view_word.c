/* Words of a closed list, and sets of words, as a rule sees them. */
#include <stdio.h>
#include <string.h>

#include "room_views.h"

void room_push_word(lua_State *lua, const char *word, const char *const *words, const char *of)
{
    struct thing_word *thing = room_new_thing(lua, sizeof *thing, THING_WORD);
    *thing = (struct thing_word){THING_WORD, false, word, words, of};
}

static void refuse_word(lua_State *lua, const char *word, const char *const *words, const char *of)
{
    char list[300] = "";
    size_t length = 0;
    for (size_t i = 0; words[i] != NULL && length < sizeof list; i++)
        length +=
            (size_t)snprintf(list + length, sizeof list - length, "%s%s", i ? ", " : "", words[i]);
    luaL_error(lua, "'%s' is no word for %s; it can be: %s", word, of, list);
}

/* Which word of a closed list a rule's text at this index says; raises where it is none. */
static const char *check_word(lua_State *lua, int index, const char *const *words, const char *of,
                              bool is_lasting)
{
    struct judge *judge = room_judge(lua);
    const char *word = luaL_checkstring(lua, index);
    size_t note = room_note_of(word, words);
    struct found_word *found = &judge->found_words[note];
    if (found->words == words && found->text == word)
        return found->word;
    for (size_t i = 0; words[i] != NULL; i++)
        if (text_is_same(words[i], word)) {
            room_refuse_nul(lua, index);
            if (!is_lasting)
                return words[i];
            lua_pushvalue(lua, index); /* held, so that no other text comes to stand there */
            lua_rawseti(lua, LUA_REGISTRYINDEX,
                        (lua_Integer)judge->found_first + (lua_Integer)note);
            *found = (struct found_word){words, word, words[i]};
            return words[i];
        }
    refuse_word(lua, word, words, of);
    return word; /* not come to */
}

/* fact:is("word", …): true if it is any of them. */
static int word_is(lua_State *lua)
{
    const struct thing_word *thing = lua_touserdata(lua, 1);
    bool is_any = false;
    int top = lua_gettop(lua);
    if (thing == NULL || thing->tag != THING_WORD)
        return luaL_error(lua, "is() is asked of a word: write the_fact:is(\"…\")");
    if (top < 2)
        return luaL_error(lua, "is() needs a word");
    for (int i = 2; i <= top; i++) {
        const char *word = check_word(lua, i, thing->words, thing->of, thing->is_lasting);
        is_any = is_any || word == thing->word || text_is_same(word, thing->word);
    }
    lua_pushboolean(lua, is_any);
    return 1;
}

/* ---- sets of words ---- */

/* listings:has("UL 2703", …): true if it has all of them. */
static int words_has(lua_State *lua)
{
    if (room_tag(lua, 1) != THING_WORDS)
        return luaL_error(lua, "has() is asked of a set of words");
    const struct thing_words *thing = lua_touserdata(lua, 1);
    bool has_all = true;
    if (lua_gettop(lua) < 2)
        return luaL_error(lua, "has() needs a word");
    for (int i = 2; i <= lua_gettop(lua); i++) {
        const char *word = luaL_checkstring(lua, i);
        room_refuse_nul(lua, i);
        if (thing->row->vocabulary != NULL)
            check_word(lua, i, thing->row->vocabulary->words, thing->row->name, true);
        bool has = false;
        room_charge(lua, thing->fact->count / 16); /* a design may name thousands */
        for (size_t w = 0; w < thing->fact->count; w++)
            has = has || strcmp(thing->fact->is.words[w], word) == 0;
        has_all = has_all && has;
    }
    lua_pushboolean(lua, has_all);
    return 1;
}

static int words_count(lua_State *lua)
{
    if (room_tag(lua, 1) != THING_WORDS)
        return luaL_error(lua, "count() is asked of a list");
    lua_pushinteger(lua, (lua_Integer)((struct thing_words *)lua_touserdata(lua, 1))->fact->count);
    return 1;
}

void room_add_word_views(lua_State *lua)
{
    static const luaL_Reg word_methods[] = {{"is", word_is}, {NULL, NULL}};
    static const luaL_Reg words_methods[] = {
        {"has", words_has}, {"count", words_count}, {NULL, NULL}};
    room_add_metatable(lua, THING_WORD, "word", word_methods, NULL);
    lua_pop(lua, 1);
    room_add_metatable(lua, THING_WORDS, "words", words_methods, NULL);
    lua_pushcfunction(lua, words_count);
    lua_setfield(lua, -2, "__len");
    lua_pop(lua, 1);
}
