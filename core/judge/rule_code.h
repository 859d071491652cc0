/* judge, inside the room: what the compiled code of a function can do, seen without running it. */
#ifndef JUDGE_RULE_CODE_H
#define JUDGE_RULE_CODE_H
#include <lua.h>
#include <stdbool.h>
#include <stddef.h>

struct rule_code {
    bool sets_upvalues; /* its own or those of functions in it: what it sees may be another thing */
    bool goes_back;     /* it has a loop */
    bool has_functions; /* it makes functions */
    bool divides_whole; /* `//` or `%`: without a hook Lua 5.4.4 tells a division by 0 a line off */
    size_t instructions; /* its own, each of which runs at most once where it does not go back */
};

/* Looks at the Lua function at this index of the stack. False: it cannot be told, and the worst is
 * to be taken. */
bool rule_code_look(struct rule_code *out, lua_State *lua, int index);

#endif
