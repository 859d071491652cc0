#include "room.h"

#include <stdlib.h>
#include <string.h>

const char room_words, room_signal;

enum { HOOK_PERIOD = 1000 };

/* Lua's memory, counted. The cap holds only while a rule runs, so that the core can always clean
 * up. */
static void *allocate(void *context, void *block, size_t old_size, size_t new_size)
{
    struct judge *judge = context;
    if (block == NULL)
        old_size = 0; /* for a new block Lua passes the type here */
    if (new_size == 0) {
        free(block);
        judge->memory -= old_size;
        return NULL;
    }
    if (judge->limits_memory && new_size > old_size &&
        judge->memory + (new_size - old_size) > judge->limits.memory)
        return NULL;
    void *moved = realloc(block, new_size);
    if (moved != NULL)
        judge->memory += new_size - old_size;
    return moved;
}

void room_charge(lua_State *lua, size_t work)
{
    struct judge *judge = room_judge(lua);
    judge->instructions +=
        work < (size_t)judge->limits.instructions ? (long)work : judge->limits.instructions;
    if (judge->instructions > judge->limits.instructions)
        luaL_error(lua, "the rule ran past its budget of %d instructions",
                   (int)judge->limits.instructions);
}

static void count_instructions(lua_State *lua, lua_Debug *activation)
{
    (void)activation;
    struct judge *judge = room_judge(lua);
    judge->instructions += HOOK_PERIOD;
    if (judge->instructions <= judge->limits.instructions)
        return;
    /* The line that ran is found by the one who catches this. */
    luaL_where(lua, 0);
    lua_pushfstring(lua, "the rule ran past its budget of %d instructions",
                    (int)judge->limits.instructions);
    lua_concat(lua, 2);
    lua_error(lua);
}

void room_set_word(lua_State *lua, const char *name)
{
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    lua_insert(lua, -2);
    lua_setfield(lua, -2, name);
    lua_pop(lua, 1);
}

static int refuse_write(lua_State *lua)
{
    char name[80];
    room_write_value(name, sizeof name, lua, 2);
    return luaL_error(lua, "'%s' cannot be set: what a rule needs it keeps in a local", name);
}

static int refuse_name(lua_State *lua)
{
    char name[80];
    room_write_value(name, sizeof name, lua, 2);
    return luaL_error(lua, "there is no '%s' here", name);
}

void room_freeze(lua_State *lua)
{
    /* shown table → its own fallback for unknown names */
    lua_createtable(lua, 0, 1);
    lua_pushcfunction(lua, refuse_name);
    lua_setfield(lua, -2, "__index");
    lua_setmetatable(lua, -2);
    lua_newtable(lua); /* the empty one */
    lua_createtable(lua, 0, 3);
    lua_pushvalue(lua, -3);
    lua_setfield(lua, -2, "__index");
    lua_pushcfunction(lua, refuse_write);
    lua_setfield(lua, -2, "__newindex");
    lua_pushboolean(lua, false);
    lua_setfield(lua, -2, "__metatable");
    lua_setmetatable(lua, -2);
    lua_remove(lua, -2);
}

bool room_is_signal(lua_State *lua, int index)
{
    return lua_type(lua, index) == LUA_TLIGHTUSERDATA &&
           lua_touserdata(lua, index) == (const void *)&room_signal;
}

static int raise_signal(lua_State *lua, enum signal_kind kind)
{
    room_judge(lua)->signal = kind;
    lua_pushlightuserdata(lua, (void *)(uintptr_t)&room_signal);
    return lua_error(lua);
}

int room_raise_missing(lua_State *lua, const struct missing *missing)
{
    room_judge(lua)->missing = *missing;
    return raise_signal(lua, SIGNAL_MISSING);
}

struct missing room_missing_fact(struct judge *judge, const struct object *object, unsigned slot)
{
    const struct fact_row *row = object_row(object, slot);
    char example[200];
    fact_write_example(example, sizeof example, row);
    struct fact_read read = {object, slot};
    struct missing missing = {.fact = room_name_of_read(judge, &read),
                              .example = arena_copy(judge->page, example, strlen(example)),
                              .place = object_fact(object, slot)->place};
    return missing;
}

int room_raise_missing_fact(lua_State *lua, const struct object *object, unsigned slot)
{
    struct judge *judge = room_judge(lua);
    struct missing missing = room_missing_fact(judge, object, slot);
    return room_raise_missing(lua, &missing);
}

int room_raise_review(lua_State *lua, const char *why)
{
    room_judge(lua)->why = why;
    return raise_signal(lua, SIGNAL_REVIEW);
}

int room_raise_stop(lua_State *lua)
{
    const struct stop *stop = &room_judge(lua)->working->stop;
    switch (stop->kind) {
    case STOP_MISSING:
        return room_raise_missing_fact(lua, stop->object, stop->slot);
    case STOP_BEYOND:
        return room_raise_review(lua, stop->why);
    case STOP_WRONG:
        return luaL_error(lua, "%s", stop->why);
    default:
        return luaL_error(lua, "not enough memory");
    }
}

/* The words a rule can say, and no others. Kept in step with the manual by a test. */
static const char *const forbidden[] = {
    "pcall",        "xpcall",  "load",   "loadstring",   "dofile",         "require",  "coroutine",
    "setmetatable", "rawset",  "rawget", "pairs",        "next",           "os",       "io",
    "debug",        "package", "_G",     "getmetatable", "collectgarbage", "rawequal", "rawlen",
    "print",        "warn",    "utf8"};

static void assert_closed(lua_State *lua)
{
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    for (size_t i = 0; i < sizeof forbidden / sizeof forbidden[0]; i++) {
        lua_pushstring(lua, forbidden[i]);
        if (lua_rawget(lua, -2) != LUA_TNIL)
            luaL_error(lua, "'%s' must not be reachable from a rule", forbidden[i]);
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}

/* Runs protected, once per state. */
static int fill(lua_State *lua)
{
    lua_newtable(lua);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &room_words);
    room_add_quantities(lua);
    room_add_views(lua);
    room_add_words(lua);
    room_add_tests(lua);
    room_add_calculators(lua);
    assert_closed(lua);
    /* From here on the words are frozen: a name that is none of them raises. */
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    room_freeze(lua);
    lua_getmetatable(lua, -1);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &room_words);
    lua_pop(lua, 1);
    return 0;
}

static struct judge_limits usual_limits(const struct judge_limits *asked)
{
    struct judge_limits limits = {2000000, (size_t)64 << 20, 2000};
    if (asked != NULL && asked->instructions > 0)
        limits.instructions = asked->instructions;
    if (asked != NULL && asked->memory > 0)
        limits.memory = asked->memory;
    if (asked != NULL && asked->results > 0)
        limits.results = asked->results;
    return limits;
}

struct judge *judge_new(const struct judge_limits *limits)
{
    struct judge *judge = calloc(1, sizeof *judge);
    if (judge == NULL)
        return NULL;
    judge->limits = usual_limits(limits);
    judge->arena = arena_new();
    judge->files.arena = judge->arena;
    judge->lua = judge->arena != NULL ? lua_newstate(allocate, judge) : NULL;
    if (judge->lua == NULL) {
        judge_free(judge);
        return NULL;
    }
    *(struct judge **)lua_getextraspace(judge->lua) = judge;
    lua_pushcfunction(judge->lua, fill);
    if (lua_pcall(judge->lua, 0, 0, 0) != LUA_OK) {
        judge_free(judge);
        return NULL;
    }
    lua_sethook(judge->lua, count_instructions, LUA_MASKCOUNT, HOOK_PERIOD);
    return judge;
}

void judge_free(struct judge *judge)
{
    if (judge == NULL)
        return;
    if (judge->lua != NULL)
        lua_close(judge->lua);
    arena_free(judge->arena);
    free(judge);
}
