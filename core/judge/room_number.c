/* math.… and its plain words: numbers that stay finite; of quantities, too, where that has a
 * meaning. */
#include "room.h"

#include <math.h>

double room_finite(lua_State *lua, double number)
{
    if (!isfinite(number))
        luaL_error(lua, "a number came out not finite");
    return number;
}

#define NUMBER_WORD(word, expression)                                                              \
    static int word(lua_State *lua)                                                                \
    {                                                                                              \
        double x = room_finite(lua, luaL_checknumber(lua, 1));                                     \
        lua_pushnumber(lua, room_finite(lua, expression));                                         \
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
        lua_pushnumber(lua, fabs(room_finite(lua, luaL_checknumber(lua, 1))));
    return 1;
}

static int root(lua_State *lua)
{
    struct quantity result;
    struct quantity_fault fault;
    struct quantity *quantity = room_to_quantity(lua, 1);
    if (quantity == NULL) {
        lua_pushnumber(lua, room_finite(lua, sqrt(room_finite(lua, luaL_checknumber(lua, 1)))));
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
    lua_pushnumber(lua, room_finite(lua, tan(angle(lua))));
    return 1;
}

bool room_is_less(lua_State *lua, int a, int b)
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
            room_finite(lua, lua_tonumber(lua, i));
        else if (room_to_quantity(lua, i) == NULL)
            return luaL_error(lua, "numbers or quantities are needed");
        if (i > 1 && (is_largest ? room_is_less(lua, best, i) : room_is_less(lua, i, best)))
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

const luaL_Reg room_number_words[] = {{"abs", absolute},
                                      {"sqrt", root},
                                      {"sin", sine},
                                      {"cos", cosine},
                                      {"tan", tangent},
                                      {"smallest", smallest},
                                      {"largest", largest},
                                      {"round_down", number_floor},
                                      {"round_up", number_ceil},
                                      {NULL, NULL}};

const luaL_Reg room_numbers[] = {{"floor", number_floor}, {"ceil", number_ceil}, {"abs", absolute},
                                 {"sqrt", root},          {"min", smallest},     {"max", largest},
                                 {"log10", number_log10}, {"exp", number_exp},   {NULL, NULL}};
