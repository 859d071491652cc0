#include "room.h"

#include <math.h>
#include <string.h>

#include "unit.h"

int room_tag(lua_State *lua, int index)
{
    /* Every userdata that a rule can come to is ours. */
    const enum thing_tag *thing = lua_touserdata(lua, index);
    return thing != NULL ? (int)*thing : 0;
}

struct quantity *room_to_quantity(lua_State *lua, int index)
{
    struct thing_quantity *thing = lua_touserdata(lua, index);
    return thing != NULL && thing->tag == THING_QUANTITY ? &thing->quantity : NULL;
}

void room_push_quantity(lua_State *lua, struct quantity quantity)
{
    if (dimension_is_pure(quantity.dimension)) {
        lua_pushnumber(lua, quantity.value);
        return;
    }
    struct thing_quantity *thing = room_new_thing(lua, sizeof *thing, THING_QUANTITY);
    thing->quantity = quantity;
}

/* A quantity, or a plain number as a pure one. */
static struct quantity operand(lua_State *lua, int index)
{
    struct quantity *quantity = room_to_quantity(lua, index);
    if (quantity != NULL)
        return *quantity;
    if (lua_type(lua, index) == LUA_TNUMBER) {
        double number = lua_tonumber(lua, index);
        if (!isfinite(number))
            luaL_error(lua, "a number came out not finite");
        return (struct quantity){number, measure_dimension(PURE_NUMBER), NULL, NULL};
    }
    char name[80];
    room_type_name(lua, index, name, sizeof name);
    luaL_error(lua, "one cannot calculate with a %s", name);
    return (struct quantity){0};
}

typedef bool operation(struct quantity *, struct quantity, struct quantity,
                       struct quantity_fault *);

static int operate(lua_State *lua, operation *operate_on)
{
    struct quantity result;
    struct quantity_fault fault;
    struct quantity a = operand(lua, 1), b = operand(lua, 2);
    if (!operate_on(&result, a, b, &fault))
        return luaL_error(lua, "%s", fault.message);
    room_push_quantity(lua, result);
    return 1;
}

static int add(lua_State *lua)
{
    return operate(lua, quantity_add);
}

static int subtract(lua_State *lua)
{
    return operate(lua, quantity_subtract);
}

/* A number times a quantity keeps the quantity's unit. */
static int multiply(lua_State *lua)
{
    struct quantity result;
    struct quantity_fault fault;
    struct quantity a = operand(lua, 1), b = operand(lua, 2);
    bool is_done = dimension_is_pure(a.dimension)   ? quantity_scale(&result, b, a.value, &fault)
                   : dimension_is_pure(b.dimension) ? quantity_scale(&result, a, b.value, &fault)
                                                    : quantity_multiply(&result, a, b, &fault);
    if (!is_done)
        return luaL_error(lua, "%s", fault.message);
    room_push_quantity(lua, result);
    return 1;
}

static int divide(lua_State *lua)
{
    struct quantity result;
    struct quantity_fault fault;
    struct quantity a = operand(lua, 1), b = operand(lua, 2);
    bool by_number = dimension_is_pure(b.dimension) && b.value != 0;
    bool is_done = by_number ? quantity_scale(&result, a, 1 / b.value, &fault)
                             : quantity_divide(&result, a, b, &fault);
    if (!is_done)
        return luaL_error(lua, "%s", fault.message);
    room_push_quantity(lua, result);
    return 1;
}

static int negate(lua_State *lua)
{
    struct quantity result;
    struct quantity_fault fault;
    if (!quantity_scale(&result, operand(lua, 1), -1, &fault))
        return luaL_error(lua, "%s", fault.message);
    room_push_quantity(lua, result);
    return 1;
}

static int compare(lua_State *lua)
{
    int order = 0;
    struct quantity_fault fault;
    if (!quantity_compare(&order, operand(lua, 1), operand(lua, 2), &fault))
        luaL_error(lua, "%s", fault.message);
    return order;
}

static int is_less(lua_State *lua)
{
    lua_pushboolean(lua, compare(lua) < 0);
    return 1;
}

static int is_at_most(lua_State *lua)
{
    lua_pushboolean(lua, compare(lua) <= 0);
    return 1;
}

static int refuse_concat(lua_State *lua)
{
    return luaL_error(lua, "a quantity cannot be joined with '..'; say format(\"%%s\", it)");
}

static int refuse_field(lua_State *lua)
{
    char name[80];
    room_write_value(name, sizeof name, lua, 2);
    return luaL_error(lua, "a quantity has no '%s'", name);
}

static const luaL_Reg metamethods[] = {{"__add", add},
                                       {"__sub", subtract},
                                       {"__mul", multiply},
                                       {"__div", divide},
                                       {"__unm", negate},
                                       {"__lt", is_less},
                                       {"__le", is_at_most},
                                       {"__concat", refuse_concat},
                                       {"__index", refuse_field},
                                       {"__newindex", refuse_field},
                                       {NULL, NULL}};

/* Names of units that are names in Lua, too. */
static const struct {
    const char *word, *unit;
} units[] = {
    {"inch", "in"},    {"ft", "ft"},   {"yd", "yd"},     {"mi", "mi"},     {"mm", "mm"},
    {"cm", "cm"},      {"m", "m"},     {"km", "km"},     {"sq_in", "in²"}, {"sq_ft", "ft²"},
    {"sq_m", "m²"},    {"lb", "lb"},   {"kg", "kg"},     {"s", "s"},       {"min", "min"},
    {"h", "h"},        {"day", "day"}, {"year", "year"}, {"mA", "mA"},     {"A", "A"},
    {"kA", "kA"},      {"mV", "mV"},   {"V", "V"},       {"kV", "kV"},     {"W", "W"},
    {"kW", "kW"},      {"VA", "VA"},   {"kVA", "kVA"},   {"ohm", "Ω"},     {"Wh", "Wh"},
    {"kWh", "kWh"},    {"lbf", "lbf"}, {"kip", "kip"},   {"N", "N"},       {"kN", "kN"},
    {"plf", "lbf/ft"}, {"psf", "psf"}, {"psi", "psi"},   {"ksi", "ksi"},   {"Pa", "Pa"},
    {"kPa", "kPa"},    {"pcf", "pcf"}, {"mph", "mph"},   {"deg", "°"}};

/* Temperatures and their differences share a spelling; a rule tells them apart by name. */
static const struct unit *named_unit(const char *name, enum measure measure)
{
    return unit_find(name, strlen(name), measure_dimension(measure));
}

static int push_temperature(lua_State *lua, const char *unit_name, enum measure measure)
{
    const struct unit *unit = named_unit(unit_name, measure);
    double value = luaL_checknumber(lua, 1) * unit->factor + unit->offset;
    if (!isfinite(value) || value < 0)
        return luaL_error(lua, "a temperature is finite, and not below absolute zero");
    room_push_quantity(lua, (struct quantity){value, unit->dimension, unit, NULL});
    return 1;
}

static int celsius(lua_State *lua)
{
    return push_temperature(lua, "°C", TEMPERATURE);
}

static int fahrenheit(lua_State *lua)
{
    return push_temperature(lua, "°F", TEMPERATURE);
}

static void add_unit(lua_State *lua, const char *word, const struct unit *unit)
{
    room_push_quantity(lua, (struct quantity){unit->factor, unit->dimension, unit, NULL});
    room_set_word(lua, word);
}

void room_add_quantities(lua_State *lua)
{
    lua_newtable(lua);
    lua_pushvalue(lua, -1);
    room_judge(lua)->metatables[THING_QUANTITY] = luaL_ref(lua, LUA_REGISTRYINDEX);
    luaL_setfuncs(lua, metamethods, 0);
    lua_pushboolean(lua, false);
    lua_setfield(lua, -2, "__metatable");
    lua_pushliteral(lua, "quantity");
    lua_setfield(lua, -2, "__name");
    lua_pop(lua, 1);
    for (size_t i = 0; i < sizeof units / sizeof units[0]; i++) {
        struct quantity one = quantity_of(1, units[i].unit);
        room_push_quantity(lua, one);
        room_set_word(lua, units[i].word);
    }
    add_unit(lua, "delta_C", named_unit("°C", TEMPERATURE_DIFFERENCE));
    add_unit(lua, "delta_F", named_unit("°F", TEMPERATURE_DIFFERENCE));
    lua_pushcfunction(lua, celsius);
    room_set_word(lua, "celsius");
    lua_pushcfunction(lua, fahrenheit);
    room_set_word(lua, "fahrenheit");
}
