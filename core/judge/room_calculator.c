#include "room.h"

#include <string.h>

/* Inputs in order, or by name in one table: circuit:drop(3), calc.ampacity{size = "10 AWG"}. */
static void read_by_name(lua_State *lua, const struct calculator *calculator, int table,
                         struct amount *inputs)
{
    size_t found = 0, given = 0;
    for (size_t i = 0; i < calculator->input_count; i++) {
        lua_pushstring(lua, calculator->inputs[i].name);
        if (lua_rawget(lua, table) != LUA_TNIL) {
            found++;
            if (!room_keep_amount(&inputs[i], lua, -1))
                luaL_error(lua, "%s: %s cannot be a %s", calculator->name,
                           calculator->inputs[i].name, luaL_typename(lua, -1));
        }
        lua_pop(lua, 1);
    }
    lua_pushnil(lua);
    while (lua_next(lua, table) != 0) {
        given++;
        lua_pop(lua, 1);
    }
    room_charge(lua, given);
    if (given > found)
        luaL_error(lua, "%s was given an input that it does not have", calculator->name);
}

static void read_in_order(lua_State *lua, const struct calculator *calculator, int first,
                          struct amount *inputs)
{
    int given = lua_gettop(lua) - first + 1;
    if (given > (int)calculator->input_count)
        luaL_error(lua, "%s takes %d inputs, not %d", calculator->name,
                   (int)calculator->input_count, given);
    for (int i = 0; i < given; i++)
        if (!lua_isnil(lua, first + i) && !room_keep_amount(&inputs[i], lua, first + i))
            luaL_error(lua, "%s: %s cannot be a %s", calculator->name, calculator->inputs[i].name,
                       luaL_typename(lua, first + i));
}

static int call(lua_State *lua, const struct calculator *calculator, const struct object *about,
                int first)
{
    struct judge *judge = room_judge(lua);
    if (judge->stage == STAGE_CARD)
        return luaL_error(lua, "calculators are asked in applies() and check(), not before");
    struct amount inputs[CALCULATOR_INPUTS] = {0}, results[CALCULATOR_RESULTS];
    if (lua_gettop(lua) == first && lua_type(lua, first) == LUA_TTABLE)
        read_by_name(lua, calculator, first, inputs);
    else
        read_in_order(lua, calculator, first, inputs);
    room_charge(lua, 200); /* a calculation is more than one instruction */
    if (!calculator_run(calculator, results, about, inputs, judge->working))
        return room_raise_stop(lua);
    luaL_checkstack(lua, CALCULATOR_RESULTS, "results");
    for (size_t i = 0; i < calculator->result_count; i++)
        room_push_amount(lua, &results[i]);
    return (int)calculator->result_count;
}

static const struct calculator *upvalue(lua_State *lua)
{
    return lua_touserdata(lua, lua_upvalueindex(1));
}

static int call_free(lua_State *lua)
{
    return call(lua, upvalue(lua), NULL, 1);
}

int room_call_method(lua_State *lua)
{
    const struct calculator *calculator = upvalue(lua);
    if (room_tag(lua, 1) == THING_OBJECT) {
        const struct object *object = ((struct thing_object *)lua_touserdata(lua, 1))->object;
        if (object->kind->id == calculator->about_kind)
            return call(lua, calculator, object, 2);
    }
    return luaL_error(lua, "%s is asked of a %s: write the_%s:%s(…)", calculator->name,
                      kind_at(calculator->about_kind)->name, kind_at(calculator->about_kind)->name,
                      calculator->name);
}

void room_add_calculators(lua_State *lua)
{
    const struct calculator *calculator;
    lua_newtable(lua);
    for (size_t i = 0; (calculator = calculator_at(i)) != NULL; i++) {
        if (calculator->about_kind != KIND_NONE)
            continue;
        lua_pushlightuserdata(lua, (void *)(uintptr_t)calculator);
        lua_pushcclosure(lua, call_free, 1);
        lua_setfield(lua, -2, calculator->name);
    }
    room_freeze(lua);
    room_set_word(lua, "calc");
}
