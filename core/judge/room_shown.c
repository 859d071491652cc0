/* What a rule has been shown, kept for the review: a thing or a fact is the same to every rule, and
 * none can change it, so that one view of each serves all. Lua finds by small numbers far faster
 * than by addresses: views stand in one table in the order of their first showing. */
#include "room.h"

enum { MOST_SHOWN = 8192 }; /* 128 KiB of a table; what is over is made anew each time */

void room_forget_shown(lua_State *lua)
{
    struct judge *judge = room_judge(lua);
    size_t facts = judge->design->fact_count, things = judge->design->thing_count;
    judge->shown = arena_take(judge->page, (facts + things) * sizeof *judge->shown);
    judge->shown_count = 0;
    judge->shown_most = 8 * things < MOST_SHOWN ? 8 * things : MOST_SHOWN;
    lua_pushboolean(lua, false); /* the place in the registry is there, so that nothing is raised */
    lua_rawseti(lua, LUA_REGISTRYINDEX, judge->shown_table);
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
    lua_rawgeti(lua, LUA_REGISTRYINDEX, judge->shown_table);
    lua_rawgeti(lua, -1, place);
    lua_replace(lua, -2);
    return true;
}

void room_keep_shown(lua_State *lua, size_t key)
{
    struct judge *judge = room_judge(lua);
    if (judge->shown_count == judge->shown_most)
        return;
    if (lua_rawgeti(lua, LUA_REGISTRYINDEX, judge->shown_table) != LUA_TTABLE) {
        lua_pop(lua, 1);
        lua_createtable(lua, (int)judge->shown_most, 0); /* whole: it never grows under a rule */
        lua_pushvalue(lua, -1);
        lua_rawseti(lua, LUA_REGISTRYINDEX, judge->shown_table);
    }
    lua_pushvalue(lua, -2);
    lua_rawseti(lua, -2, (lua_Integer)judge->shown_count + 1);
    lua_pop(lua, 1);
    judge->shown[key] = (uint32_t)++judge->shown_count;
}
