/* string.…: what rules may do with texts; each charges its work to the rule. */
#include "room.h"

#include <math.h>
#include <string.h>

static int text_len(lua_State *lua)
{
    size_t length;
    luaL_checklstring(lua, 1, &length);
    lua_pushinteger(lua, (lua_Integer)length);
    return 1;
}

static int text_sub(lua_State *lua)
{
    size_t length;
    const char *text = luaL_checklstring(lua, 1, &length);
    lua_Integer size = (lua_Integer)length;
    lua_Integer from = luaL_checkinteger(lua, 2), to = luaL_optinteger(lua, 3, -1);
    from = from < 0 ? (from < -size ? 1 : size + from + 1) : from < 1 ? 1 : from;
    to = to < 0 ? (to < -size ? 0 : size + to + 1) : to > size ? size : to;
    lua_pushlstring(lua, from <= to ? text + from - 1 : "",
                    from <= to ? (size_t)(to - from + 1) : 0);
    return 1;
}

static int change_case(lua_State *lua, char first, char last, int shift)
{
    size_t length;
    luaL_Buffer buffer;
    const char *text = luaL_checklstring(lua, 1, &length);
    room_charge(lua, length);
    luaL_buffinit(lua, &buffer);
    for (size_t i = 0; i < length; i++)
        luaL_addchar(&buffer,
                     (char)(text[i] >= first && text[i] <= last ? text[i] + shift : text[i]));
    luaL_pushresult(&buffer);
    return 1;
}

static int text_lower(lua_State *lua)
{
    return change_case(lua, 'A', 'Z', 'a' - 'A');
}

static int text_upper(lua_State *lua)
{
    return change_case(lua, 'a', 'z', 'A' - 'a');
}

/* string.contains(text, piece): plain text, no pattern. */
static int text_contains(lua_State *lua)
{
    size_t length, piece_length;
    const char *text = luaL_checklstring(lua, 1, &length);
    const char *piece = luaL_checklstring(lua, 2, &piece_length);
    bool found = piece_length == 0;
    for (size_t i = 0; !found && i + piece_length <= length; i++) {
        room_charge(lua, 1 + piece_length / 16);
        found = memcmp(text + i, piece, piece_length) == 0;
    }
    lua_pushboolean(lua, found);
    return 1;
}

/* Where the digits of a number that ends before `end` begin; a point alone begins none. */
static size_t number_begin(const char *text, size_t end)
{
    size_t begin = end;
    while (begin > 0 &&
           ((text[begin - 1] >= '0' && text[begin - 1] <= '9') || text[begin - 1] == '.'))
        begin--;
    while (begin < end && text[begin] == '.')
        begin++;
    return begin;
}

static bool is_letter(char byte)
{
    return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z');
}

/* Does the unit stand behind the number that ends before `at`, right away or after a blank? It ends
 * where no letter follows it. */
static bool is_unit_at(const char *text, size_t length, size_t at, const char *unit,
                       size_t unit_length)
{
    size_t from = text[at] == ' ' ? at + 1 : at;
    const char *after = text + from + unit_length;
    return from + unit_length <= length && memcmp(text + from, unit, unit_length) == 0 &&
           (after == text + length || !is_letter(*after));
}

/* string.numbers_before(text, unit, …): the least and the largest number that one of the units
 * follows, as in "32 A" and "32A"; nil: there is none. */
static int text_numbers_before(lua_State *lua)
{
    size_t length, unit_length;
    const char *text = luaL_checklstring(lua, 1, &length);
    int top = lua_gettop(lua);
    double least = INFINITY, most = -INFINITY, number;
    luaL_checkstring(lua, 2);
    for (int i = 2; i <= top; i++) {
        const char *unit = luaL_checklstring(lua, i, &unit_length);
        for (size_t at = 1; at + unit_length <= length; at++) {
            room_charge(lua, 1 + unit_length / 16);
            if (text[at - 1] < '0' || text[at - 1] > '9' ||
                !is_unit_at(text, length, at, unit, unit_length))
                continue;
            size_t begin = number_begin(text, at);
            /* Where the unit is a digit, or nothing, each number is gone back over many times. */
            room_charge(lua, at - begin);
            if (!number_read(&number, text + begin, at - begin))
                continue;
            least = number < least ? number : least;
            most = number > most ? number : most;
        }
    }
    if (least > most) {
        lua_pushnil(lua);
        return 1;
    }
    lua_pushnumber(lua, least);
    lua_pushnumber(lua, most);
    return 2;
}

const luaL_Reg room_texts[] = {
    {"len", text_len},     {"sub", text_sub},           {"lower", text_lower},
    {"upper", text_upper}, {"contains", text_contains}, {"numbers_before", text_numbers_before},
    {NULL, NULL}};
