/* Plain words: what is left of Lua's libraries, bounded, without addresses and without locale. */
#include "room.h"

#include <lualib.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

static double finite_number(lua_State *lua, double number)
{
    if (!isfinite(number))
        luaL_error(lua, "a number came out not finite");
    return number;
}

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
        lua_pushnumber(lua, finite_number(lua, lua_tonumber(lua, 1)));
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
        write_decimals(text, sizeof text, finite_number(lua, luaL_checknumber(lua, argument)), 0);
    else if (*at == 'f')
        write_decimals(text, sizeof text, finite_number(lua, luaL_checknumber(lua, argument)),
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

/* ---- numbers ---- */

#define NUMBER_WORD(word, expression)                                                              \
    static int word(lua_State *lua)                                                                \
    {                                                                                              \
        double x = finite_number(lua, luaL_checknumber(lua, 1));                                   \
        lua_pushnumber(lua, finite_number(lua, expression));                                       \
        return 1;                                                                                  \
    }
NUMBER_WORD(number_floor, floor(x))
NUMBER_WORD(number_ceil, ceil(x))
NUMBER_WORD(number_log10, log10(x))
NUMBER_WORD(number_exp, exp(x))

/* Of a quantity, too. */
static int absolute(lua_State *lua)
{
    struct quantity *quantity = room_to_quantity(lua, 1);
    if (quantity != NULL) {
        struct quantity result = *quantity;
        if (result.dimension.is_point)
            return luaL_error(lua, "a temperature has no absolute value");
        result.value = fabs(result.value);
        result.written = NULL;
        room_push_quantity(lua, result);
    } else
        lua_pushnumber(lua, fabs(finite_number(lua, luaL_checknumber(lua, 1))));
    return 1;
}

static int root(lua_State *lua)
{
    struct quantity result;
    struct quantity_fault fault;
    struct quantity *quantity = room_to_quantity(lua, 1);
    if (quantity == NULL) {
        lua_pushnumber(lua, finite_number(lua, sqrt(finite_number(lua, luaL_checknumber(lua, 1)))));
        return 1;
    }
    if (!quantity_root(&result, *quantity, &fault))
        return luaL_error(lua, "%s", fault.message);
    room_push_quantity(lua, result);
    return 1;
}

static double angle(lua_State *lua)
{
    struct quantity *quantity = room_to_quantity(lua, 1);
    if (quantity != NULL && dimension_is_same(quantity->dimension, measure_dimension(ANGLE)))
        return quantity->value;
    return luaL_error(lua, "an angle is needed, such as plane.slope or 18 * deg");
}

static int sine(lua_State *lua)
{
    lua_pushnumber(lua, sin(angle(lua)));
    return 1;
}

static int cosine(lua_State *lua)
{
    lua_pushnumber(lua, cos(angle(lua)));
    return 1;
}

static int tangent(lua_State *lua)
{
    lua_pushnumber(lua, finite_number(lua, tan(angle(lua))));
    return 1;
}

/* a < b, as the operator has it; raises with the line of the rule. */
static bool is_less(lua_State *lua, int a, int b)
{
    char left[80], right[80];
    int order = 0;
    struct quantity_fault fault;
    struct amount first = {.type = AMOUNT_NONE}, second = {.type = AMOUNT_NONE};
    int type = lua_type(lua, a);
    if ((type == LUA_TNUMBER || type == LUA_TSTRING) && type == lua_type(lua, b))
        return lua_compare(lua, a, b, LUA_OPLT);
    bool can = type == LUA_TUSERDATA && lua_type(lua, b) == LUA_TUSERDATA &&
               room_to_amount(&first, lua, a) && room_to_amount(&second, lua, b) &&
               first.type == second.type && first.type != AMOUNT_WORD;
    if (!can)
        luaL_error(lua, "a %s and a %s have no order", room_type_name(lua, a, left, sizeof left),
                   room_type_name(lua, b, right, sizeof right));
    if (first.type == AMOUNT_DATE)
        return date_compare(first.date, second.date) < 0;
    if (!quantity_compare(&order, first.quantity, second.quantity, &fault))
        luaL_error(lua, "%s", fault.message);
    return order < 0;
}

/* smallest(a, b, …) and largest(a, b, …) of numbers, or of quantities of one dimension. */
static int extreme(lua_State *lua, bool is_largest)
{
    int best = 1;
    luaL_checkany(lua, 1);
    for (int i = 1; i <= lua_gettop(lua); i++) {
        if (lua_type(lua, i) == LUA_TNUMBER)
            finite_number(lua, lua_tonumber(lua, i));
        else if (room_to_quantity(lua, i) == NULL)
            return luaL_error(lua, "numbers or quantities are needed");
        if (i > 1 && (is_largest ? is_less(lua, best, i) : is_less(lua, i, best)))
            best = i;
    }
    lua_pushvalue(lua, best);
    return 1;
}

static int smallest(lua_State *lua)
{
    return extreme(lua, false);
}

static int largest(lua_State *lua)
{
    return extreme(lua, true);
}

/* ---- tables ---- */

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
        return is_less(lua, -1, -2);
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

void room_add_words(lua_State *lua)
{
    static const luaL_Reg words[] = {{"type", type_of},
                                     {"tostring", to_text},
                                     {"tonumber", to_number},
                                     {"format", format},
                                     {"abs", absolute},
                                     {"sqrt", root},
                                     {"sin", sine},
                                     {"cos", cosine},
                                     {"tan", tangent},
                                     {"smallest", smallest},
                                     {"largest", largest},
                                     {"round_down", number_floor},
                                     {"round_up", number_ceil},
                                     {NULL, NULL}};
    static const luaL_Reg numbers[] = {
        {"floor", number_floor}, {"ceil", number_ceil}, {"abs", absolute},
        {"sqrt", root},          {"min", smallest},     {"max", largest},
        {"log10", number_log10}, {"exp", number_exp},   {NULL, NULL}};
    static const luaL_Reg tables[] = {{"insert", table_insert},
                                      {"remove", table_remove},
                                      {"concat", table_concat},
                                      {"sort", table_sort},
                                      {NULL, NULL}};
    for (const luaL_Reg *word = words; word->name != NULL; word++) {
        lua_pushcfunction(lua, word->func);
        room_set_word(lua, word->name);
    }
    add_library(lua, "math", numbers);
    add_library(lua, "string", room_texts);
    add_library(lua, "table", tables);
    add_from_base(lua);
    close_strings(lua);
}
