/* What a rule has been shown, kept for the review: a thing or a fact is the same to every rule, and
 * none can change it, so that one view of each serves all. Lua finds by small numbers far faster
 * than by addresses: views stand one after the other in its registry. The next review has views of
 * other things, in the same places: nothing that a rule can hold outlives its review, so that a
 * view is written anew where one of its kind stands, and no garbage is left. */
#include "room.h"

#include <string.h>

static void set_places(lua_State *lua, size_t from, size_t end)
{
    for (size_t place = from; place < end; place++) {
        lua_pushboolean(lua, false); /* not nil: the registry's own numbers begin behind the last */
        lua_rawseti(lua, LUA_REGISTRYINDEX, (lua_Integer)place);
    }
}

void room_add_found(lua_State *lua)
{
    size_t first = (size_t)lua_rawlen(lua, LUA_REGISTRYINDEX) + 1;
    set_places(lua, first, first + FOUND);
    room_judge(lua)->found_first = first;
    lua_pushboolean(lua, false);
    room_judge(lua)->shown_over = luaL_ref(lua, LUA_REGISTRYINDEX);
}

/* Runs protected, before any rule. Argument: how many. */
static int add_places(lua_State *lua)
{
    struct judge *judge = room_judge(lua);
    size_t room = (size_t)lua_tointeger(lua, 1);
    size_t first = (size_t)lua_rawlen(lua, LUA_REGISTRYINDEX) + 1;
    size_t old = judge->shown_first, old_end = old + judge->shown_count;
    /* Where memory is short on the way, nothing may point to places that hold no view. */
    memset(judge->shown_chains, 0, sizeof judge->shown_chains);
    judge->shown_count = judge->shown_room = 0;
    set_places(lua, old, old_end);
    set_places(lua, first, first + room);
    judge->shown_first = first;
    judge->shown_room = room;
    return 0;
}

bool room_forget_shown(lua_State *lua)
{
    enum { VIEWS_OF_A_THING = 8, STEP = 1024 };
    struct judge *judge = room_judge(lua);
    size_t facts = judge->design->fact_count, things = judge->design->thing_count;
    size_t most = (VIEWS_OF_A_THING * things + STEP - 1) / STEP * STEP;
    judge->shown = arena_take(judge->page, (facts + things) * sizeof *judge->shown);
    most = most < MOST_SHOWN ? most : MOST_SHOWN;
    judge->has_shown_over = false;
    lua_pushboolean(lua, false);
    lua_rawseti(lua, LUA_REGISTRYINDEX, judge->shown_over);
    for (size_t i = 0; i < SHOWN_CHAINS; i++)
        judge->shown_chains[i].next = judge->shown_chains[i].first;
    if (judge->shown == NULL)
        return false;
    if (most <= judge->shown_room)
        return true;
    lua_pushcfunction(lua, add_places);
    lua_pushinteger(lua, (lua_Integer)most);
    bool is_done = lua_pcall(lua, 1, 0, 0) == LUA_OK;
    lua_settop(lua, 0); /* no error stays: the next review may fail as well */
    return is_done;
}

size_t room_key_of_object(lua_State *lua, const struct object *object)
{
    return room_judge(lua)->design->fact_count + object->number;
}

bool room_show_again(lua_State *lua, size_t key)
{
    struct judge *judge = room_judge(lua);
    uint32_t place = judge->shown[key];
    if (place == 0)
        return false;
    lua_rawgeti(lua, LUA_REGISTRYINDEX, place);
    return true;
}

void *room_show_anew(lua_State *lua, size_t key, size_t chain)
{
    struct judge *judge = room_judge(lua);
    size_t place = judge->shown_chains[chain].next;
    if (place == 0)
        return NULL;
    judge->shown_chains[chain].next = judge->shown_follows[place - judge->shown_first];
    judge->shown[key] = (uint32_t)place;
    lua_rawgeti(lua, LUA_REGISTRYINDEX, (lua_Integer)place);
    return lua_touserdata(lua, -1);
}

bool room_show_over(lua_State *lua, const struct object *object)
{
    struct judge *judge = room_judge(lua);
    if (!judge->has_shown_over)
        return false;
    lua_rawgeti(lua, LUA_REGISTRYINDEX, judge->shown_over);
    if (lua_rawgeti(lua, -1, (lua_Integer)object->number) == LUA_TUSERDATA) {
        lua_remove(lua, -2);
        return true;
    }
    lua_pop(lua, 2);
    return false;
}

void room_keep_over(lua_State *lua, const struct object *object)
{
    enum { MOST_OVER = 1 << 18 }; /* some 20 MiB */
    struct judge *judge = room_judge(lua);
    if (object->number >= MOST_OVER)
        return;
    bool was_limited = room_lift_limits(lua);
    if (!judge->has_shown_over) {
        lua_newtable(lua);
        lua_rawseti(lua, LUA_REGISTRYINDEX, judge->shown_over);
        judge->has_shown_over = true;
    }
    lua_rawgeti(lua, LUA_REGISTRYINDEX, judge->shown_over);
    lua_pushvalue(lua, -2);
    lua_rawseti(lua, -2, (lua_Integer)object->number);
    lua_pop(lua, 1);
    judge->is_limited = was_limited;
}

bool room_keep_shown(lua_State *lua, size_t key, size_t chain)
{
    struct judge *judge = room_judge(lua);
    struct shown_chain *kept = &judge->shown_chains[chain];
    if (judge->shown_count == judge->shown_room)
        return false;
    size_t place = judge->shown_first + judge->shown_count;
    lua_pushvalue(lua, -1);
    lua_rawseti(lua, LUA_REGISTRYINDEX, (lua_Integer)place); /* the place is there: none is made */
    judge->shown[key] = (uint32_t)place;
    judge->shown_follows[judge->shown_count++] = kept->first;
    kept->first = (uint32_t)place; /* before what is used already in this review */
    return true;
}
