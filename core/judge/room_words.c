/* Plain words: what is left of Lua's libraries, bounded, without addresses and without locale. */
#include "room.h"

#include <lualib.h>
#include <stdio.h>
#include <string.h>

static int type_of(lua_State *lua)
{
    char name[80];
    luaL_checkany(lua, 1);
    lua_pushstring(lua, room_tag(lua, 1) == THING_QUANTITY
                            ? "quantity"
                            : room_type_name(lua, 1, name, sizeof name));
    return 1;
}

static int to_text(lua_State *lua)
{
    char text[400];
    luaL_checkany(lua, 1);
    if (lua_type(lua, 1) == LUA_TSTRING)
        lua_pushvalue(lua, 1);
    else {
        room_write_value(text, sizeof text, lua, 1);
        lua_pushstring(lua, text);
    }
    return 1;
}

static int to_number(lua_State *lua)
{
    size_t length;
    double number;
    if (lua_type(lua, 1) == LUA_TNUMBER) {
        lua_pushnumber(lua, room_finite(lua, lua_tonumber(lua, 1)));
        return 1;
    }
    if (lua_gettop(lua) > 1)
        return luaL_error(lua, "tonumber() takes one text, of a decimal number");
    const char *text = luaL_checklstring(lua, 1, &length);
    if (number_read(&number, text, length))
        lua_pushnumber(lua, number);
    else
        lua_pushnil(lua);
    return 1;
}

/* As many decimals as asked for; a point whatever the locale says. */
static void write_decimals(char *text, size_t size, double number, int decimals)
{
    snprintf(text, size, "%.*f", decimals, number);
    for (char *at = text; *at != '\0'; at++)
        if (*at == ',')
            *at = '.';
}

/* One placeholder: %s, %d, %.2f or %%. Returns what follows it. */
static const char *format_one(lua_State *lua, luaL_Buffer *buffer, const char *at, int argument)
{
    char text[400];
    int digits = -1;
    if (at[0] == '.' && at[1] >= '0' && at[1] <= '9') {
        digits = at[1] - '0';
        at += 2;
    }
    if (*at == 's' && digits < 0 && lua_type(lua, argument) == LUA_TSTRING) {
        size_t length;
        const char *whole = lua_tolstring(lua, argument, &length);
        luaL_addlstring(buffer, whole, length);
        return at + 1;
    }
    if (*at == 's' && digits < 0)
        room_write_value(text, sizeof text, lua, argument);
    else if (*at == 'd' && digits < 0)
        write_decimals(text, sizeof text, room_finite(lua, luaL_checknumber(lua, argument)), 0);
    else if (*at == 'f')
        write_decimals(text, sizeof text, room_finite(lua, luaL_checknumber(lua, argument)),
                       digits < 0 ? 2 : digits);
    else
        luaL_error(lua, "format() knows %%s, %%d, %%.2f and %%%%");
    luaL_addstring(buffer, text);
    return at + 1;
}

static int format(lua_State *lua)
{
    luaL_Buffer buffer;
    int argument = 2, given = lua_gettop(lua); /* the buffer may take places of its own */
    const char *at = luaL_checkstring(lua, 1);
    room_refuse_nul(lua, 1);
    luaL_buffinit(lua, &buffer);
    for (;;) {
        size_t plain = strcspn(at, "%");
        luaL_addlstring(&buffer, at, plain);
        at += plain;
        if (*at == '\0')
            break;
        if (at[1] == '%') {
            luaL_addchar(&buffer, '%');
            at += 2;
        } else if (argument > given)
            return luaL_error(lua, "format() has more places than values");
        else
            at = format_one(lua, &buffer, at + 1, argument++);
    }
    luaL_pushresult(&buffer);
    return 1;
}

/* The string metatable keeps __index alone: no arithmetic on texts, no library behind our back. */
static void close_strings(lua_State *lua)
{
    lua_pushliteral(lua, "");
    lua_newtable(lua);
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    lua_getfield(lua, -1, "string");
    lua_setfield(lua, -3, "__index");
    lua_pop(lua, 1);
    lua_pushboolean(lua, false);
    lua_setfield(lua, -2, "__metatable");
    lua_setmetatable(lua, -2);
    lua_pop(lua, 1);
}

static void add_library(lua_State *lua, const char *name, const luaL_Reg *functions)
{
    lua_newtable(lua);
    luaL_setfuncs(lua, functions, 0);
    if (strcmp(name, "math") == 0) {
        lua_pushnumber(lua, 3.14159265358979323846);
        lua_setfield(lua, -2, "pi");
    }
    room_freeze(lua);
    room_set_word(lua, name);
}

/* Two of Lua's own. */
static void add_from_base(lua_State *lua)
{
    luaL_requiref(lua, LUA_GNAME, luaopen_base, 0);
    lua_getfield(lua, -1, "ipairs");
    room_push_walk(lua);
    room_set_word(lua, "ipairs");
    lua_getfield(lua, -1, "select");
    room_set_word(lua, "select");
    lua_pop(lua, 1);
    /* What luaopen_base left among the globals goes. */
    lua_newtable(lua);
    lua_rawseti(lua, LUA_REGISTRYINDEX, LUA_RIDX_GLOBALS);
    lua_pushnil(lua);
    lua_setfield(lua, LUA_REGISTRYINDEX, LUA_LOADED_TABLE);
}

static void add_plain(lua_State *lua, const luaL_Reg *words)
{
    for (; words->name != NULL; words++) {
        lua_pushcfunction(lua, words->func);
        room_set_word(lua, words->name);
    }
}

void room_add_words(lua_State *lua)
{
    static const luaL_Reg words[] = {{"type", type_of},
                                     {"tostring", to_text},
                                     {"tonumber", to_number},
                                     {"format", format},
                                     {NULL, NULL}};
    add_plain(lua, words);
    add_plain(lua, room_number_words);
    add_library(lua, "math", room_numbers);
    add_library(lua, "string", room_texts);
    add_library(lua, "table", room_tables);
    add_from_base(lua);
    close_strings(lua);
}
