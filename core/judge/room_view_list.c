/* Lists of things of the design as a rule sees them: list[3], list:count(), ipairs(list). */
#include "room_views.h"

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

void room_add_list_views(lua_State *lua)
{
    static const luaL_Reg methods[] = {{"count", list_count}, {NULL, NULL}};
    room_add_metatable(lua, THING_LIST, "list", methods, list_index);
    lua_pushcfunction(lua, list_count);
    lua_setfield(lua, -2, "__len");
    lua_pop(lua, 1);
}
