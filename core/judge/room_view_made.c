/* How views are made and closed; dates and amounts as a rule sees them. */
#include "room_views.h"

void *room_new_thing(lua_State *lua, size_t size, enum thing_tag tag)
{
    void *thing = lua_newuserdatauv(lua, size, 0);
    *(enum thing_tag *)thing = tag;
    lua_rawgeti(lua, LUA_REGISTRYINDEX, room_judge(lua)->metatables[tag]);
    lua_setmetatable(lua, -2);
    return thing;
}

static int refuse_setting(lua_State *lua)
{
    return luaL_error(lua, "a rule looks at the design and the books; it cannot change them");
}

void room_close_metatable(lua_State *lua, const char *name)
{
    lua_pushstring(lua, name);
    lua_setfield(lua, -2, "__name");
    lua_pushcfunction(lua, refuse_setting);
    lua_setfield(lua, -2, "__newindex");
    lua_pushboolean(lua, false);
    lua_setfield(lua, -2, "__metatable");
}

void room_add_metatable(lua_State *lua, enum thing_tag tag, const char *name,
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
    room_close_metatable(lua, name);
}

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

void room_add_views(lua_State *lua)
{
    static const luaL_Reg none[] = {{NULL, NULL}};
    room_add_word_views(lua);
    room_add_list_views(lua);
    room_add_metatable(lua, THING_DATE, "date", none, NULL);
    lua_pushcfunction(lua, date_is_less);
    lua_setfield(lua, -2, "__lt");
    lua_pushcfunction(lua, date_is_at_most);
    lua_setfield(lua, -2, "__le");
    lua_pop(lua, 1);
}
