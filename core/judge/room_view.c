/* Things of the design and the book as a rule sees them: strict, read-only, and every reading
 * noted. */
#include "room.h"

#include <stdio.h>
#include <string.h>

void *room_new_thing(lua_State *lua, size_t size, enum thing_tag tag)
{
    void *thing = lua_newuserdatauv(lua, size, 0);
    *(enum thing_tag *)thing = tag;
    lua_rawgeti(lua, LUA_REGISTRYINDEX, room_judge(lua)->metatables[tag]);
    lua_setmetatable(lua, -2);
    return thing;
}

/* ---- words ---- */

void room_push_word(lua_State *lua, const char *word, const char *const *words, const char *of)
{
    struct thing_word *thing = room_new_thing(lua, sizeof *thing, THING_WORD);
    *thing = (struct thing_word){THING_WORD, false, word, words, of};
}

enum { SHORT_TEXT = 40 }; /* bytes of a text that Lua surely holds once (LUAI_MAXSHORTLEN) */

/* Where to note what is found behind a text of Lua's about a thing of ours. */
static size_t note_of(const char *text, const void *about)
{
    uint64_t key = (uintptr_t)text ^ (uint64_t)(uintptr_t)about << 7;
    return (size_t)(key * UINT64_C(0x9E3779B97F4A7C15) >> 32) % FOUND; /* Fibonacci hashing */
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
    size_t note = note_of(word, words);
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

/* ---- lists of things ---- */

static int list_count(lua_State *lua)
{
    if (room_tag(lua, 1) != THING_LIST)
        return luaL_error(lua, "count() is asked of a list");
    lua_pushinteger(lua, (lua_Integer)((struct thing_list *)lua_touserdata(lua, 1))->count);
    return 1;
}

/* list[3], list:count() */
static int list_index(lua_State *lua)
{
    const struct thing_list *thing = lua_touserdata(lua, 1);
    int is_integer;
    lua_Integer at = lua_tointegerx(lua, 2, &is_integer);
    if (lua_type(lua, 2) == LUA_TSTRING) {
        lua_pushvalue(lua, 2);
        if (lua_rawget(lua, lua_upvalueindex(1)) == LUA_TNIL)
            return luaL_error(lua, "a list has no '%s'; it has :count() and [number]",
                              lua_tostring(lua, 2));
        return 1;
    }
    if (!is_integer)
        return luaL_error(lua, "a list has :count() and [number]");
    if (at < 1 || at > (lua_Integer)thing->count)
        return 0; /* the end of ipairs */
    room_push_object(lua, thing->objects[at - 1]);
    return 1;
}

/* The step of a walk over a list: list, number of the last → number, thing. */
static int list_next(lua_State *lua)
{
    int is_integer;
    lua_Integer last = lua_tointegerx(lua, 2, &is_integer);
    const struct thing_list *thing = lua_touserdata(lua, 1);
    if (thing == NULL || thing->tag != THING_LIST || !is_integer)
        return luaL_error(lua, "this walks over a list, from a number");
    if (last < 0 || last >= (lua_Integer)thing->count)
        return 0;
    lua_pushinteger(lua, last + 1);
    room_push_object(lua, thing->objects[last]);
    return 2;
}

/* ipairs(list), without a question to the list at each step. Upvalue 1: Lua's own, for tables. */
static int walk(lua_State *lua)
{
    if (room_tag(lua, 1) == THING_LIST) {
        lua_pushcfunction(lua, list_next);
        lua_pushvalue(lua, 1);
        lua_pushinteger(lua, 0);
    } else {
        lua_pushvalue(lua, lua_upvalueindex(1));
        lua_insert(lua, 1);
        lua_call(lua, lua_gettop(lua) - 1, 3);
    }
    return 3;
}

void room_push_walk(lua_State *lua)
{
    lua_pushcclosure(lua, walk, 1);
}

/* ---- things ---- */

static void push_one(lua_State *lua, const struct object *object, unsigned slot)
{
    const struct fact *fact = object_fact(object, slot);
    if (fact->state == FACT_NONE)
        lua_pushnil(lua); /* stated: there is none */
    else
        room_push_object(lua, fact->is.object);
}

/* The view of a fact, at the top: its tag is right, all else is to be written. */
static void *new_view(lua_State *lua, size_t key, size_t size, enum thing_tag tag)
{
    void *thing = room_show_anew(lua, key, tag);
    if (thing != NULL)
        return thing;
    thing = room_new_thing(lua, size, tag);
    room_keep_shown(lua, key, tag);
    return thing;
}

static void push_list(lua_State *lua, size_t key, const struct fact *fact)
{
    struct thing_list *thing = new_view(lua, key, sizeof *thing, THING_LIST);
    thing->objects = fact->state == FACT_NONE ? NULL : fact->is.objects;
    thing->count = fact->state == FACT_NONE ? 0 : fact->count;
}

static void push_words(lua_State *lua, size_t key, const struct fact *fact,
                       const struct fact_row *row)
{
    struct thing_words *thing = new_view(lua, key, sizeof *thing, THING_WORDS);
    thing->fact = fact;
    thing->row = row;
}

static void push_choice(lua_State *lua, size_t key, const char *word, const struct fact_row *row)
{
    struct thing_word *thing = new_view(lua, key, sizeof *thing, THING_WORD);
    *thing = (struct thing_word){THING_WORD, true, word, row->vocabulary->words, row->name};
}

static void push_amount_of(lua_State *lua, size_t key, const struct amount *amount)
{
    if (amount->type == AMOUNT_QUANTITY && !dimension_is_pure(amount->quantity.dimension)) {
        struct thing_quantity *thing = new_view(lua, key, sizeof *thing, THING_QUANTITY);
        thing->quantity = amount->quantity;
    } else if (amount->type == AMOUNT_DATE) {
        struct thing_date *thing = new_view(lua, key, sizeof *thing, THING_DATE);
        thing->date = amount->date;
    } else
        room_push_amount(lua, amount);
}

static int push_fact(lua_State *lua, const struct object *object, unsigned slot)
{
    const struct fact_row *row = object_row(object, slot);
    const struct fact *fact = object_fact(object, slot);
    struct working *working = room_judge(lua)->working;
    room_charge(lua, 1);
    working_read(working, object, slot);
    if (fact->state == FACT_MISSING) {
        (working_missing)(working, object, slot);
        return room_raise_stop(lua);
    }
    if (row->type == TYPE_ONE || row->type == TYPE_REFERENCE) {
        push_one(lua, object, slot);
        return 1;
    }
    size_t key = object->first_fact + slot;
    if (room_show_again(lua, key))
        return 1;
    switch (row->type) {
    case TYPE_LIST:
    case TYPE_REFERENCES:
    case TYPE_INVERSE:
        push_list(lua, key, fact);
        break;
    case TYPE_WORDS:
    case TYPE_WORD_LIST:
    case TYPE_TEXTS:
        push_words(lua, key, fact, row);
        break;
    case TYPE_CHOICE:
        push_choice(lua, key, fact->is.word, row);
        break;
    case TYPE_POINT:
    case TYPE_POINTS:
        return luaL_error(lua, "'%s' is geometry: ask the roof plane's calculators", row->name);
    default: {
        struct amount amount = object_amount(object, slot);
        push_amount_of(lua, key, &amount);
    }
    }
    return 1;
}

static int refuse_fact(lua_State *lua, const struct kind *kind)
{
    const char *known[80], *name = lua_tostring(lua, 2);
    size_t count = 0;
    for (size_t i = 0; i < kind->fact_count && count < 80; i++)
        known[count++] = kind->facts[i].name;
    const char *near = name != NULL ? text_find_near(name, known, count) : NULL;
    if (near != NULL)
        return luaL_error(lua, "a %s has no '%s'; did you mean '%s'?", kind->name, name, near);
    return luaL_error(lua, "a %s has no '%s'", kind->name, name != NULL ? name : "?");
}

/* Upvalue 1: names → slot or calculator. */
static int object_index(lua_State *lua)
{
    const struct object *object = ((struct thing_object *)lua_touserdata(lua, 1))->object;
    const char *name = lua_tostring(lua, 2);
    struct found_slot *found = &room_judge(lua)->found_slots[note_of(name, object->kind)];
    if (found->name == name && found->kind == object->kind)
        return push_fact(lua, object, found->slot);
    lua_pushvalue(lua, 2);
    switch (lua_rawget(lua, lua_upvalueindex(1))) {
    case LUA_TNUMBER:
        /* Lua holds each short text once: the table holds this very one. */
        if (strlen(name) <= SHORT_TEXT)
            *found = (struct found_slot){name, object->kind, (unsigned)lua_tointeger(lua, -1)};
        return push_fact(lua, object, (unsigned)lua_tointeger(lua, -1));
    case LUA_TFUNCTION:
        return 1;
    default:
        return refuse_fact(lua, object->kind);
    }
}

static int refuse_setting(lua_State *lua)
{
    return luaL_error(lua, "a rule looks at the design and the books; it cannot change them");
}

/* thing:called() */
static int object_name(lua_State *lua)
{
    if (room_tag(lua, 1) != THING_OBJECT)
        return luaL_error(lua, "called() is asked of a thing of the design");
    lua_pushstring(lua, ((struct thing_object *)lua_touserdata(lua, 1))->object->path);
    return 1;
}

/* thing:kind_of(): for references that may go to several kinds. */
static int object_kind(lua_State *lua)
{
    if (room_tag(lua, 1) != THING_OBJECT)
        return luaL_error(lua, "kind_of() is asked of a thing of the design");
    lua_pushstring(lua, ((struct thing_object *)lua_touserdata(lua, 1))->object->kind->name);
    return 1;
}

/* Table of one kind: its facts' slots, its methods. */
static void push_names(lua_State *lua, const struct kind *kind)
{
    const struct calculator *calculator;
    lua_newtable(lua);
    for (size_t slot = 0; slot < kind->fact_count; slot++) {
        lua_pushinteger(lua, (lua_Integer)slot);
        lua_setfield(lua, -2, kind->facts[slot].name);
    }
    lua_pushcfunction(lua, object_name);
    lua_setfield(lua, -2, "called");
    lua_pushcfunction(lua, object_kind);
    lua_setfield(lua, -2, "kind_of");
    for (calculator = calculator_next(NULL, kind->id); calculator != NULL;
         calculator = calculator_next(calculator, kind->id)) {
        lua_pushlightuserdata(lua, (void *)(uintptr_t)calculator);
        lua_pushcclosure(lua, room_call_method, 1);
        lua_setfield(lua, -2, calculator->name);
    }
}

/* Refuses to be written; named in Lua's own messages by `name`. */
static void close_metatable(lua_State *lua, const char *name)
{
    lua_pushstring(lua, name);
    lua_setfield(lua, -2, "__name");
    lua_pushcfunction(lua, refuse_setting);
    lua_setfield(lua, -2, "__newindex");
    lua_pushboolean(lua, false);
    lua_setfield(lua, -2, "__metatable");
}

static void push_metatable(lua_State *lua, const struct kind *kind)
{
    int *place = &room_judge(lua)->kind_metatables[kind->id];
    if (*place != 0) {
        lua_rawgeti(lua, LUA_REGISTRYINDEX, *place);
        return;
    }
    bool was_limited = room_lift_limits(lua);
    lua_newtable(lua);
    push_names(lua, kind);
    lua_pushcclosure(lua, object_index, 1);
    lua_setfield(lua, -2, "__index");
    close_metatable(lua, kind->name);
    lua_pushvalue(lua, -1);
    *place = luaL_ref(lua, LUA_REGISTRYINDEX);
    room_judge(lua)->is_limited = was_limited;
}

void room_push_object(lua_State *lua, const struct object *object)
{
    size_t key = room_key_of_object(lua, object);
    if (room_show_again(lua, key) || room_show_over(lua, object))
        return;
    size_t chain = SHOWN_OBJECTS + object->kind->id;
    struct thing_object *thing = room_show_anew(lua, key, chain);
    if (thing == NULL) {
        thing = lua_newuserdatauv(lua, sizeof *thing, 0);
        thing->tag = THING_OBJECT;
        push_metatable(lua, object->kind);
        lua_setmetatable(lua, -2);
        if (!room_keep_shown(lua, key, chain))
            room_keep_over(lua, object);
    }
    thing->object = object;
}

/* ---- dates ---- */

static int date_compare_things(lua_State *lua)
{
    if (room_tag(lua, 1) != THING_DATE || room_tag(lua, 2) != THING_DATE)
        luaL_error(lua, "a date compares with a date only");
    return date_compare(((struct thing_date *)lua_touserdata(lua, 1))->date,
                        ((struct thing_date *)lua_touserdata(lua, 2))->date);
}

static int date_is_less(lua_State *lua)
{
    lua_pushboolean(lua, date_compare_things(lua) < 0);
    return 1;
}

static int date_is_at_most(lua_State *lua)
{
    lua_pushboolean(lua, date_compare_things(lua) <= 0);
    return 1;
}

/* ---- amounts ---- */

void room_push_amount(lua_State *lua, const struct amount *amount)
{
    switch (amount->type) {
    case AMOUNT_QUANTITY:
        room_push_quantity(lua, amount->quantity);
        break;
    case AMOUNT_NUMBER:
        lua_pushnumber(lua, amount->quantity.value);
        break;
    case AMOUNT_YESNO:
        lua_pushboolean(lua, amount->yes);
        break;
    case AMOUNT_WORD:
        lua_pushstring(lua, amount->word);
        break;
    case AMOUNT_DATE: {
        struct thing_date *thing = room_new_thing(lua, sizeof *thing, THING_DATE);
        thing->date = amount->date;
        break;
    }
    default:
        lua_pushnil(lua);
    }
}

static void add_metatable(lua_State *lua, enum thing_tag tag, const char *name,
                          const luaL_Reg *methods, lua_CFunction index)
{
    lua_newtable(lua);
    lua_pushvalue(lua, -1);
    room_judge(lua)->metatables[tag] = luaL_ref(lua, LUA_REGISTRYINDEX);
    lua_newtable(lua);
    luaL_setfuncs(lua, methods, 0);
    if (index != NULL)
        lua_pushcclosure(lua, index, 1);
    else
        room_refuse_others(lua); /* it need not be frozen: no rule comes to it */
    lua_setfield(lua, -2, "__index");
    close_metatable(lua, name);
}

void room_add_views(lua_State *lua)
{
    static const luaL_Reg word_methods[] = {{"is", word_is}, {NULL, NULL}};
    static const luaL_Reg words_methods[] = {
        {"has", words_has}, {"count", words_count}, {NULL, NULL}};
    static const luaL_Reg list_methods[] = {{"count", list_count}, {NULL, NULL}};
    static const luaL_Reg none[] = {{NULL, NULL}};
    add_metatable(lua, THING_WORD, "word", word_methods, NULL);
    lua_pop(lua, 1);
    add_metatable(lua, THING_WORDS, "words", words_methods, NULL);
    lua_pushcfunction(lua, words_count);
    lua_setfield(lua, -2, "__len");
    lua_pop(lua, 1);
    add_metatable(lua, THING_LIST, "list", list_methods, list_index);
    lua_pushcfunction(lua, list_count);
    lua_setfield(lua, -2, "__len");
    lua_pop(lua, 1);
    add_metatable(lua, THING_DATE, "date", none, NULL);
    lua_pushcfunction(lua, date_is_less);
    lua_setfield(lua, -2, "__lt");
    lua_pushcfunction(lua, date_is_at_most);
    lua_setfield(lua, -2, "__le");
    lua_pop(lua, 1);
}
