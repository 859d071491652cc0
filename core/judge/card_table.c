/* The table that a rule's file returned, kept from one review to the next where nothing can have
 * been kept behind it: its functions see each other, texts, numbers, yes or no and the frozen
 * words, each still what it was (looked at, unless none of them sets what it sees). What a rule
 * could write to (a table at its head) forbids it, and so does a head that made much: what is kept
 * takes its memory from all other rules. */
#include "room.h"

#include <math.h>

#include "rule_code.h"

/* The record of a file: a table. [1] the card's table, [2] its functions, in a table; then for each
 * of them in that order what it sees. */
enum { CARD = 1, FUNCTIONS, FIRST_SEEN };

enum {
    MOST_FUNCTIONS = 50, /* a rule's budget does not count the time to look through them */
    MOST_WORK = 256      /* of the head, in instructions; memory it takes is counted as such */
};

static bool is_plain(lua_State *lua, int index)
{
    int type = lua_type(lua, index);
    return type == LUA_TNIL || type == LUA_TBOOLEAN || type == LUA_TNUMBER || type == LUA_TSTRING ||
           lua_iscfunction(lua, index);
}

static bool is_listed(lua_State *lua, int list, int index)
{
    bool is_found = false;
    for (lua_Integer i = 1, count = luaL_len(lua, list); !is_found && i <= count; i++) {
        lua_rawgeti(lua, list, i);
        is_found = lua_rawequal(lua, -1, index);
        lua_pop(lua, 1);
    }
    return is_found;
}

/* Takes the value on the top off: one more function to look into, unless it is among them. */
static void list_function(lua_State *lua, int functions)
{
    if (is_listed(lua, functions, lua_gettop(lua)))
        lua_pop(lua, 1);
    else
        lua_rawseti(lua, functions, luaL_len(lua, functions) + 1);
}

/* Notes what the functions see, and what those see. False: something that can be written to. */
static bool note_seen(lua_State *lua, int record, int page, int functions)
{
    lua_Integer seen = FIRST_SEEN;
    for (lua_Integer i = 1; i <= luaL_len(lua, functions); i++) {
        lua_rawgeti(lua, functions, i);
        int function = lua_gettop(lua);
        if (i > MOST_FUNCTIONS)
            return false;
        for (int n = 1; lua_getupvalue(lua, function, n) != NULL; n++) {
            lua_pushvalue(lua, -1);
            lua_rawseti(lua, record, seen++);
            if (lua_isfunction(lua, -1) && !lua_iscfunction(lua, -1))
                list_function(lua, functions);
            else if (is_plain(lua, -1) || lua_rawequal(lua, -1, page))
                lua_pop(lua, 1);
            else
                return false;
        }
        lua_pop(lua, 1);
    }
    return true;
}

/* Not only equal: 1 and 1.0, 0.0 and -0.0 can be told apart, and what can be told apart is kept. */
static bool is_identical(lua_State *lua, int a, int b)
{
    if (lua_type(lua, a) != LUA_TNUMBER || lua_type(lua, b) != LUA_TNUMBER)
        return lua_rawequal(lua, a, b);
    lua_Number one = lua_tonumber(lua, a), other = lua_tonumber(lua, b);
    return lua_isinteger(lua, a) == lua_isinteger(lua, b) && lua_rawequal(lua, a, b) &&
           signbit(one) == signbit(other);
}

static bool is_as_noted(lua_State *lua, int record, int functions)
{
    lua_Integer seen = FIRST_SEEN;
    for (lua_Integer i = 1; lua_rawgeti(lua, functions, i) == LUA_TFUNCTION; i++) {
        int function = lua_gettop(lua);
        for (int n = 1; lua_getupvalue(lua, function, n) != NULL; n++) {
            lua_rawgeti(lua, record, seen++);
            if (!is_identical(lua, -1, -2))
                return false;
            lua_pop(lua, 2);
        }
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
    return true;
}

/* Is there none among the functions that sets what they see? */
static bool are_fixed(lua_State *lua, int functions)
{
    struct rule_code code;
    bool are = true;
    for (lua_Integer i = 1; are && lua_rawgeti(lua, functions, i) == LUA_TFUNCTION; i++) {
        are = rule_code_look(&code, lua, lua_gettop(lua)) && !code.sets_upvalues;
        lua_pop(lua, 1);
    }
    if (are)
        lua_pop(lua, 1); /* the nil behind the last */
    return are;
}

/* Does the card's function have neither loops nor functions of a rule to call, and so few
 * instructions that the hook would never look at it? Then it needs none. */
static bool is_straight(lua_State *lua, int card, const char *name)
{
    struct rule_code code;
    int top = lua_gettop(lua);
    lua_pushstring(lua, name);
    bool is = lua_rawget(lua, card) == LUA_TFUNCTION && !lua_iscfunction(lua, -1) &&
              rule_code_look(&code, lua, top + 1) && !code.goes_back && !code.has_functions &&
              !code.divides_whole && code.instructions < (size_t)room_judge(lua)->usual_period;
    for (int n = 1; is && lua_getupvalue(lua, top + 1, n) != NULL; n++) {
        is = !lua_isfunction(lua, -1) || lua_iscfunction(lua, -1);
        lua_pop(lua, 1);
    }
    lua_settop(lua, top);
    return is;
}

void room_keep_card_table(lua_State *lua, struct rule_text *text, int card, int page)
{
    static const char *const functions[] = {"applies", "check"};
    if (text->card_table != LUA_NOREF)
        return;
    if (room_judge(lua)->instructions > MOST_WORK) {
        text->card_table = LUA_REFNIL;
        return;
    }
    int top = lua_gettop(lua);
    lua_newtable(lua);
    lua_newtable(lua);
    for (size_t i = 0; i < sizeof functions / sizeof functions[0]; i++) {
        lua_pushstring(lua, functions[i]);
        if (lua_rawget(lua, card) == LUA_TFUNCTION && !lua_iscfunction(lua, -1))
            list_function(lua, top + 2);
        else
            lua_pop(lua, 1);
    }
    lua_pushvalue(lua, card);
    lua_rawseti(lua, top + 1, CARD);
    lua_pushvalue(lua, top + 2);
    lua_rawseti(lua, top + 1, FUNCTIONS);
    if (note_seen(lua, top + 1, page, top + 2)) {
        text->is_fixed = are_fixed(lua, top + 2);
        for (size_t i = 0; i < sizeof functions / sizeof functions[0]; i++)
            text->is_straight[i] = text->is_fixed && is_straight(lua, card, functions[i]);
        lua_settop(lua, top + 1);
        text->card_table = luaL_ref(lua, LUA_REGISTRYINDEX);
    } else {
        text->card_table = LUA_REFNIL; /* and never again */
    }
    lua_settop(lua, top);
}

bool room_push_card_table(lua_State *lua, struct rule_text *text)
{
    if (text->card_table == LUA_NOREF || text->card_table == LUA_REFNIL)
        return false;
    int record = lua_gettop(lua) + 1;
    lua_rawgeti(lua, LUA_REGISTRYINDEX, text->card_table);
    lua_rawgeti(lua, record, CARD);
    if (text->is_fixed) {
        lua_remove(lua, record);
        return true;
    }
    lua_rawgeti(lua, record, FUNCTIONS);
    if (is_as_noted(lua, record, record + FUNCTIONS)) {
        lua_copy(lua, record + CARD, record);
        lua_settop(lua, record);
        return true;
    }
    lua_settop(lua, record - 1);
    luaL_unref(lua, LUA_REGISTRYINDEX, text->card_table);
    text->card_table = LUA_REFNIL;
    return false;
}
