/* What a rule can reach, as it was agreed: held against what the state really offers whenever one
 * is opened, so that another build of Lua cannot slip a word in. */
#include "room.h"

#include <stdlib.h>
#include <string.h>

/* Units stand in room_quantity.c, calculators in the room calc; all else is here. */
static const char *const plain[] = {
    "type",  "tostring", "tonumber", "format",  "abs",    "sqrt",       "sin",
    "cos",   "tan",      "smallest", "largest", "same",   "round_down", "round_up",
    "shall", "should",   "review",   "ipairs",  "select", "celsius",    "fahrenheit",
    "math",  "string",   "table",    "calc",    NULL};
static const struct {
    const char *name, *const words[12];
} libraries[] = {
    {"math", {"floor", "ceil", "abs", "sqrt", "min", "max", "log10", "exp", "pi"}},
    {"string", {"len", "sub", "lower", "upper", "contains", "numbers_before"}},
    {"table", {"insert", "remove", "concat", "sort"}},
    {"shall",
     {"not_exceed", "be_at_least", "be_less_than", "be_more_than", "be_equal", "be",
      "meet_one_of"}},
    {"should", {"not_exceed", "be_at_least", "be_less_than", "be_more_than", "be_equal", "be"}}};

static bool stands_in(const char *const *words, const char *word)
{
    while (*words != NULL && strcmp(*words, word) != 0)
        words++;
    return *words != NULL;
}

static size_t count_words(const char *const *words)
{
    size_t count = 0;
    while (words[count] != NULL)
        count++;
    return count;
}

static void refuse(lua_State *lua, const char *library, const char *word)
{
    luaL_error(lua, "'%s%s' was not agreed", library, word);
}

/* Pushes the table that a frozen one shows. */
static void push_shown(lua_State *lua, const char *name)
{
    if (lua_getfield(lua, -1, name) != LUA_TTABLE || lua_rawlen(lua, -1) != 0 ||
        !lua_getmetatable(lua, -1))
        refuse(lua, name, "");
    lua_getfield(lua, -1, "__newindex");
    if (!lua_iscfunction(lua, -1) || lua_getfield(lua, -2, "__metatable") != LUA_TBOOLEAN)
        refuse(lua, name, " as a table that can be written");
    lua_pop(lua, 2);
    lua_getfield(lua, -1, "__index");
    lua_replace(lua, -3);
    lua_pop(lua, 1);
}

/* Every word of the table at the top must be in the list, and a C function or a number. */
static void check_library(lua_State *lua, const char *name, const char *const *words)
{
    size_t count = 0;
    push_shown(lua, name);
    lua_pushnil(lua);
    while (lua_next(lua, -2) != 0) {
        const char *word = lua_tostring(lua, -2);
        bool is_agreed =
            words != NULL ? stands_in(words, word) : calculator_find(KIND_NONE, word) != NULL;
        if (!is_agreed || (!lua_iscfunction(lua, -1) && lua_type(lua, -1) != LUA_TNUMBER))
            refuse(lua, name, word);
        count++;
        lua_pop(lua, 1);
    }
    if (words != NULL && count != count_words(words))
        refuse(lua, name, " with a word too few");
    lua_pop(lua, 1);
}

/* A text's own metatable: its words and a lock. */
static void check_text(lua_State *lua)
{
    size_t count = 0;
    lua_pushliteral(lua, "");
    if (!lua_getmetatable(lua, -1))
        refuse(lua, "", "a text without words");
    lua_pushnil(lua);
    while (lua_next(lua, -2) != 0) {
        const char *key = lua_tostring(lua, -2);
        if (strcmp(key, "__index") != 0 && strcmp(key, "__metatable") != 0)
            refuse(lua, "text.", key);
        count++;
        lua_pop(lua, 1);
    }
    if (count != 2)
        refuse(lua, "text.", "__metatable");
    lua_pop(lua, 2);
}

void room_check_words(lua_State *lua)
{
    size_t count = 0;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    lua_pushnil(lua);
    while (lua_next(lua, -2) != 0) {
        const char *word = lua_tostring(lua, -2);
        bool is_unit = room_to_quantity(lua, -1) != NULL;
        if (!is_unit && !stands_in(plain, word))
            refuse(lua, "", word);
        if (!is_unit && !lua_iscfunction(lua, -1) && lua_type(lua, -1) != LUA_TTABLE)
            refuse(lua, "", word);
        count += !is_unit;
        lua_pop(lua, 1);
    }
    if (count != count_words(plain))
        refuse(lua, "", "a list with a word too few");
    for (size_t i = 0; i < sizeof libraries / sizeof libraries[0]; i++)
        check_library(lua, libraries[i].name, libraries[i].words);
    check_library(lua, "calc", NULL);
    check_text(lua);
    lua_pop(lua, 1);
}

/* ---- the list, for whoever writes it down ---- */

struct listing {
    struct arena *arena;
    const char **names;
    size_t count, capacity;
};

static void add_name(lua_State *lua, struct listing *listing, const char *library, const char *word)
{
    const char **names = arena_grow(listing->arena, listing->names, listing->count,
                                    &listing->capacity, sizeof *names);
    const char *name =
        arena_format(listing->arena, "%s%s%s", library, library[0] != '\0' ? "." : "", word);
    if (names != NULL && name != NULL) {
        listing->names = names;
        names[listing->count++] = name;
    } else {
        luaL_error(lua, "not enough memory");
    }
}

/* Runs protected. */
static int list_words(lua_State *lua)
{
    struct listing *listing = lua_touserdata(lua, 1);
    /* The words stand behind the fallback that each rule's page has. */
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    lua_getfield(lua, -1, "__index");
    lua_pushnil(lua);
    while (lua_next(lua, 3) != 0) {
        const char *word = lua_tostring(lua, 4);
        if (lua_type(lua, 5) == LUA_TTABLE) {
            lua_settop(lua, 4);
            lua_pushvalue(lua, 3);
            push_shown(lua, word); /* at 6 */
            lua_pushnil(lua);
            while (lua_next(lua, 6) != 0) {
                add_name(lua, listing, word, lua_tostring(lua, 7));
                lua_pop(lua, 1);
            }
        } else
            add_name(lua, listing, "", word);
        lua_settop(lua, 4);
    }
    return 0;
}

static int compare_names(const void *a, const void *b)
{
    return strcmp(*(const char *const *)a, *(const char *const *)b);
}

bool judge_list_words(const char *const **out, size_t *count, struct judge *judge,
                      struct arena *arena)
{
    struct listing listing = {.arena = arena};
    lua_settop(judge->lua, 0);
    lua_pushcfunction(judge->lua, list_words);
    lua_pushlightuserdata(judge->lua, &listing);
    bool is_done = lua_pcall(judge->lua, 1, 0, 0) == LUA_OK;
    lua_settop(judge->lua, 0);
    if (is_done)
        qsort(listing.names, listing.count, sizeof *listing.names, compare_names);
    *out = listing.names;
    *count = listing.count;
    return is_done;
}
