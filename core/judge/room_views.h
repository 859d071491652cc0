/* What the views share: things of the design and the book as a rule sees them. */
#ifndef JUDGE_ROOM_VIEWS_H
#define JUDGE_ROOM_VIEWS_H
#include <stdint.h>

#include "room.h"

/* Where to note what is found behind a text of Lua's about a thing of ours. */
static inline size_t room_note_of(const char *text, const void *about)
{
    uint64_t key = (uintptr_t)text ^ (uint64_t)(uintptr_t)about << 7;
    return (size_t)(key * UINT64_C(0x9E3779B97F4A7C15) >> 32) % FOUND; /* Fibonacci hashing */
}

/* Gives the metatable at the top its name in Lua's own messages, and refuses that anything of its
 * kind be written. */
void room_close_metatable(lua_State *lua, const char *name);
/* Leaves the metatable of all things with this tag at the top. `index` is asked for what is no text
 * of its methods, its upvalue 1; NULL: nothing is. */
void room_add_metatable(lua_State *lua, enum thing_tag tag, const char *name,
                        const luaL_Reg *methods, lua_CFunction index);
void room_add_word_views(lua_State *lua);
void room_add_list_views(lua_State *lua);

#endif
