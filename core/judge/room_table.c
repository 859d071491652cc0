/* table.…: lists of a rule's own, bounded. */
#include "room.h"

enum { TABLE_LIMIT = 10000 };

static lua_Integer checked_length(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    if (lua_getmetatable(lua, 1))
        luaL_error(lua, "a library is no list"); /* math, shall: raw writes would reach them */
    lua_Integer length = (lua_Integer)lua_rawlen(lua, 1);
    if (length > TABLE_LIMIT)
        luaL_error(lua, "a table of more than %d entries", TABLE_LIMIT);
    return length;
}

static int table_insert(lua_State *lua)
{
    if (lua_gettop(lua) != 2)
        return luaL_error(lua, "table.insert(list, value) adds at the end only");
    lua_rawseti(lua, 1, checked_length(lua) + 1);
    return 0;
}

static int table_remove(lua_State *lua)
{
    if (lua_gettop(lua) != 1)
        return luaL_error(lua, "table.remove(list) takes from the end only");
    lua_Integer length = checked_length(lua);
    lua_rawgeti(lua, 1, length);
    lua_pushnil(lua);
    lua_rawseti(lua, 1, length);
    return 1;
}

static int table_concat(lua_State *lua)
{
    luaL_Buffer buffer;
    lua_Integer length = checked_length(lua);
    const char *between = luaL_optstring(lua, 2, "");
    room_charge(lua, (size_t)length);
    luaL_buffinit(lua, &buffer);
    for (lua_Integer i = 1; i <= length; i++) {
        if (i > 1)
            luaL_addstring(&buffer, between);
        lua_rawgeti(lua, 1, i);
        if (lua_type(lua, -1) != LUA_TSTRING)
            return luaL_error(lua, "table.concat joins texts; entry %d is none", (int)i);
        luaL_addvalue(&buffer);
    }
    luaL_pushresult(&buffer);
    return 1;
}

/* Is the entry at the top of the stack to stand before the one below it? */
static bool stands_before(lua_State *lua)
{
    if (lua_isnoneornil(lua, 2))
        return room_is_less(lua, -1, -2);
    lua_pushvalue(lua, 2);
    lua_pushvalue(lua, -2);
    lua_pushvalue(lua, -4);
    lua_call(lua, 2, 1);
    bool is_before = lua_toboolean(lua, -1);
    lua_pop(lua, 1);
    return is_before;
}

/* Merges entries from..middle-1 and middle..end-1 of the table at `source` into that at `target`.
 */
static void merge(lua_State *lua, int source, int target, lua_Integer from, lua_Integer middle,
                  lua_Integer end)
{
    lua_Integer left = from, right = middle;
    for (lua_Integer to = from; to < end; to++) {
        room_charge(lua, 10);
        lua_rawgeti(lua, source, left);
        lua_rawgeti(lua, source, right);
        bool takes_right = left >= middle || (right < end && stands_before(lua));
        if (takes_right)
            lua_remove(lua, -2);
        else
            lua_pop(lua, 1);
        left += !takes_right;
        right += takes_right;
        lua_rawseti(lua, target, to);
    }
}

/* table.sort(list [, before]): stable, by merging; equal entries keep their order. It works on
 * copies, so that a comparison that raises or writes leaves nothing half done. */
static int table_sort(lua_State *lua)
{
    enum { LIST = 1, BEFORE, SOURCE, TARGET };
    lua_settop(lua, 2);
    lua_Integer length = checked_length(lua);
    if (!lua_isnil(lua, BEFORE))
        luaL_checktype(lua, BEFORE, LUA_TFUNCTION);
    lua_createtable(lua, (int)length, 0);
    lua_createtable(lua, (int)length, 0);
    for (lua_Integer i = 1; i <= length; i++) {
        lua_rawgeti(lua, LIST, i);
        lua_rawseti(lua, SOURCE, i);
    }
    for (lua_Integer width = 1; width < length; width *= 2) {
        for (lua_Integer from = 1; from <= length; from += 2 * width) {
            lua_Integer middle = from + width <= length ? from + width : length + 1;
            lua_Integer end = from + 2 * width <= length ? from + 2 * width : length + 1;
            merge(lua, SOURCE, TARGET, from, middle, end);
        }
        lua_pushvalue(lua, SOURCE);
        lua_copy(lua, TARGET, SOURCE);
        lua_replace(lua, TARGET);
    }
    for (lua_Integer i = 1; i <= length; i++) {
        lua_rawgeti(lua, SOURCE, i);
        lua_rawseti(lua, LIST, i);
    }
    return 0;
}

const luaL_Reg room_tables[] = {{"insert", table_insert},
                                {"remove", table_remove},
                                {"concat", table_concat},
                                {"sort", table_sort},
                                {NULL, NULL}};
