/* What compiled code can do: told of functions whose doings are plain from their text. */
#include <lauxlib.h>
#include <lua.h>
#include <string.h>

#include "check.h"
#include "rule_code.h"

static const struct {
    const char *text; /* returns the function */
    bool sets, back, makes;
} functions[] = {
    {"return function(a) return a end", false, false, false},
    {"local n = 0 return function() n = n + 1 end", true, false, false},
    {"local n = 0 return function() return n end", false, false, false},
    {"return function(a) a = a + 1 a.b = a end", false, false, false},
    {"return function(a) local n = 0 return function() n = n + 1 end end", true, false, true},
    {"return function() return function() return 1 end end", false, false, true},
    {"return function() x = 1 end", false, false, false}, /* a global: the page refuses it */
    {"return function(a) for i = 1, 2 do a = i end return a end", false, true, false},
    {"return function(a) for _, b in ipairs(a) do a = b end return a end", false, true, false},
    {"return function(a) while a do a = a.b end end", false, true, false},
    {"return function(a) repeat a = a.b until a end", false, true, false},
    {"return function(a) ::again:: if a then a = a.b goto again end end", false, true, false},
    {"return function(a) if a then goto done end a = 1 ::done:: return a end", false, false, false},
    {"return function(a) return a and a.b or not a end", false, false, false},
    {"return function(...) return 'text', 1, 2.5, nil, true, ... end", false, false, false},
    {"return function(a) return {a, b = 'a text so long that it is kept apart from all short "
     "ones'} "
     "end",
     false, false, false},
    {"return function(a) return function() for i = 1, a do a = i end end end", true, true, true},
};

static void test_functions(lua_State *lua)
{
    for (size_t i = 0; i < sizeof functions / sizeof functions[0]; i++) {
        struct rule_code code;
        const char *text = functions[i].text;
        CHECK(luaL_loadstring(lua, text) == LUA_OK && lua_pcall(lua, 0, 1, 0) == LUA_OK, text);
        CHECK(rule_code_look(&code, lua, lua_gettop(lua)), text);
        CHECK(code.sets_upvalues == functions[i].sets, text);
        CHECK(code.goes_back == functions[i].back, text);
        CHECK(code.has_functions == functions[i].makes, text);
        CHECK(code.instructions > 0 && code.instructions < 40, text);
        lua_settop(lua, 0);
    }
}

static void test_division(lua_State *lua)
{
    static const char *const texts[] = {"local a, b = ... return a // b",
                                        "return ... // 2",
                                        "local a, b = ... return a % b",
                                        "return ... % 2",
                                        "return 7 // ...",
                                        "return ... / 2",
                                        "local a, b = ... return a / b",
                                        "return ... * 2 - 1"};
    for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++) {
        struct rule_code code;
        CHECK(luaL_loadstring(lua, texts[i]) == LUA_OK && rule_code_look(&code, lua, 1), texts[i]);
        CHECK(code.divides_whole == (i < 5), texts[i]);
        lua_settop(lua, 0);
    }
}

static void test_length(lua_State *lua)
{
    static const char step[] = "a = a.b ";
    char text[4000] = "return function(a) ";
    struct rule_code code;
    for (int i = 0; i < 400; i++)
        memcpy(text + strlen(text), step, sizeof step);
    memcpy(text + strlen(text), "end", 4);
    CHECK(luaL_loadstring(lua, text) == LUA_OK && lua_pcall(lua, 0, 1, 0) == LUA_OK, "long");
    CHECK(rule_code_look(&code, lua, 1) && code.instructions == 401, "each step and the return");
    lua_settop(lua, 0);
}

static int of_c(lua_State *lua)
{
    (void)lua;
    return 0;
}

int main(void)
{
    lua_State *lua = luaL_newstate();
    struct rule_code code;
    if (lua == NULL)
        return 1;
    test_functions(lua);
    test_division(lua);
    test_length(lua);
    lua_pushcfunction(lua, of_c);
    CHECK(!rule_code_look(&code, lua, 1), "of a function that is none of Lua's nothing is told");
    lua_close(lua);
    return checks_end();
}
