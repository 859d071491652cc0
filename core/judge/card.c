/* The card at the head of a rule: read and checked at the door. */
#include "room.h"

#include <assert.h>
#include <string.h>

enum { CARD_LETTERS = 1000 }; /* of one text on a card */

/* Runs the chunk and leaves the card. Its words are an empty page of its own each time, so that
 * nothing it keeps outlives the review. */
static void run_chunk(lua_State *lua, struct rule_text *text)
{
    lua_newtable(lua);
    int page = lua_gettop(lua);
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    lua_setmetatable(lua, page);
    lua_rawgeti(lua, LUA_REGISTRYINDEX, text->chunk);
    lua_pushvalue(lua, page);
    const char *name = lua_setupvalue(lua, -2, 1);
    assert(name != NULL && strcmp(name, "_ENV") == 0);
    (void)name;
    lua_call(lua, 0, 1);
    if (lua_type(lua, -1) != LUA_TTABLE)
        luaL_error(lua, "a rule file returns one table, its card");
    room_keep_card_table(lua, text, page + 1, page);
    lua_remove(lua, page);
}

static const char *card_text(lua_State *lua, const char *key, bool is_needed)
{
    const char *copy = NULL;
    lua_getfield(lua, 1, key);
    if (lua_type(lua, -1) == LUA_TSTRING)
        copy = room_keep_text(lua, -1, key, CARD_LETTERS);
    else if (is_needed || !lua_isnil(lua, -1))
        luaL_error(lua, "the card needs %s = \"…\"", key);
    lua_pop(lua, 1);
    return copy;
}

/* A citation, or one per edition: cite = {["2017"] = "705.12(B)", ["2020"] = …}. */
static const char *card_cite(lua_State *lua)
{
    const char *edition = room_judge(lua)->rule->edition;
    lua_getfield(lua, 1, "cite");
    if (lua_type(lua, -1) != LUA_TTABLE) {
        lua_pop(lua, 1);
        return card_text(lua, "cite", true);
    }
    if (edition == NULL)
        luaL_error(lua, "the card cites per edition, but the book has none");
    lua_getfield(lua, -1, edition);
    if (lua_type(lua, -1) != LUA_TSTRING)
        luaL_error(lua, "the card has no citation for the edition %s in force", edition);
    const char *copy = room_keep_text(lua, -1, "cite", CARD_LETTERS);
    lua_pop(lua, 2);
    return copy;
}

static void check_keys(lua_State *lua)
{
    static const char *const keys[] = {"title", "cite", "about", "applies", "check", "remedy"};
    lua_pushnil(lua);
    while (lua_next(lua, 1) != 0) {
        bool is_known = false;
        for (size_t i = 0; lua_type(lua, -2) == LUA_TSTRING && i < sizeof keys / sizeof keys[0];
             i++)
            is_known = is_known || strcmp(keys[i], lua_tostring(lua, -2)) == 0;
        if (!is_known)
            luaL_error(lua, "a rule's card has title, cite, about, applies, check and remedy; "
                            "this one has something else, too");
        lua_pop(lua, 1);
    }
}

/* The line where a function of the card begins; 0: not there, or one of ours, put there as it is.
 */
static unsigned check_function(lua_State *lua, const char *key, bool is_needed)
{
    lua_Debug about = {.linedefined = 0};
    int type = lua_getfield(lua, 1, key);
    if (type != LUA_TFUNCTION && (is_needed || type != LUA_TNIL))
        luaL_error(lua, "the card needs %s = function(thing, book, design) … end", key);
    if (type == LUA_TFUNCTION)
        lua_getinfo(lua, ">S", &about);
    else
        lua_pop(lua, 1);
    return about.linedefined > 0 ? (unsigned)about.linedefined : 0;
}

static int refuse_kind(lua_State *lua, const char *name)
{
    const char *kinds[KIND_COUNT];
    for (size_t i = 0; i < KIND_COUNT; i++)
        kinds[i] = kind_at((enum kind_id)i)->name;
    const char *near = text_find_near(name, kinds, KIND_COUNT);
    if (near == NULL)
        return luaL_error(lua, "about = \"%s\": there is no such kind of thing", name);
    return luaL_error(lua, "about = \"%s\": there is no such kind of thing; did you mean \"%s\"?",
                      name, near);
}

static bool is_edition(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

static const struct kept_card *card_find(const struct rule_text *text, const char *edition)
{
    const struct kept_card *card = text->cards;
    while (card != NULL && !is_edition(card->edition, edition))
        card = card->next;
    return card;
}

/* Where it finds no memory, the card is read anew the next time. */
static void keep_card(const struct judge *judge, const struct running *running)
{
    const struct card *card = running->card;
    const char *texts[] = {card->title, card->cite, card->about, card->remedy,
                           judge->rule->edition};
    struct kept_card *kept = arena_take(judge->arena, sizeof *kept);
    for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++)
        if (texts[i] != NULL &&
            (texts[i] = arena_copy(judge->arena, texts[i], strlen(texts[i]))) == NULL)
            return;
    if (kept == NULL)
        return;
    struct rule_text *text = running->text;
    *kept = (struct kept_card){text->cards,
                               texts[4],
                               {texts[0], texts[1], texts[2], texts[3]},
                               running->applies_line,
                               running->check_line};
    text->cards = kept;
}

static bool take_card(struct running *running)
{
    const struct kept_card *kept = card_find(running->text, running->judge->rule->edition);
    if (kept == NULL)
        return false;
    *running->card = kept->card;
    running->applies_line = kept->applies_line;
    running->check_line = kept->check_line;
    return true;
}

bool room_take_card(lua_State *lua, struct running *running)
{
    return running->text->card_table >= 0 && running->text->is_fixed && take_card(running) &&
           room_push_card_table(lua, running->text);
}

int room_run_card(lua_State *lua)
{
    struct running *running = lua_touserdata(lua, 1);
    lua_settop(lua, 0);
    if (!room_push_card_table(lua, running->text))
        run_chunk(lua, running->text);
    if (take_card(running))
        return 1;
    running->card->title = card_text(lua, "title", true);
    running->card->cite = card_cite(lua);
    running->card->about = card_text(lua, "about", true);
    running->card->remedy = card_text(lua, "remedy", false);
    if (kind_find(running->card->about) == KIND_NONE)
        return refuse_kind(lua, running->card->about);
    running->applies_line = check_function(lua, "applies", false);
    running->check_line = check_function(lua, "check", true);
    check_keys(lua);
    keep_card(room_judge(lua), running);
    return 1;
}
