/* What ends a runaway rule: a budget of instructions, a cap on memory, a cap on what is held in one
 * piece. */
#include "room_limits.h"

#include <limits.h>

#include "room_pool.h"

enum {
    HOOK_PERIOD = 1000,       /* instructions between two looks */
    TEXT_BYTES = 32 * 1024,   /* of one text made by a rule: comparing two is one instruction */
    PIECE_BYTES = 256 * 1024, /* of one table, or of all calls that stand open */
    ARGUMENTS = 250,          /* handed on by "...": each call copies them in one instruction */
    RESERVE = 1024 * 1024,    /* beyond the cap, so that the rule can be stopped at its line */
    BYTES_PER_INSTRUCTION = 64,
    CALLS_FULL = 50,        /* of one rule, that may each take the usual budget */
    SHARE_OF_A_THING = 200, /* and a part of it for every thing of the design, if it takes more */
    INSTRUCTIONS_PER_READ = 40, /* of a fact that a finding rests on: so long it takes */
    SWEPT_PER_INSTRUCTION = 256 /* bytes that a collection looks through */
};

static void watch(lua_State *lua, lua_Debug *activation);

static void look_every(struct judge *judge, int period)
{
    judge->period = period;
    lua_sethook(judge->lua, watch, LUA_MASKCOUNT, period);
}

/* Asked from inside the allocator, where nothing can be raised: the next instruction will. (Setting
 * a hook is safe anywhere; Lua's manual of its debug interface says so of signal handlers.) */
static void stop_soon(struct judge *judge, enum runaway runaway)
{
    if (judge->runaway == RUNAWAY_NONE)
        judge->runaway = runaway;
    look_every(judge, 1);
}

/* May a rule's memory grow by so much? New memory costs time, too. */
static bool may_grow(struct judge *judge, bool is_text, size_t new_size, size_t growth)
{
    judge->instructions += (long)(new_size / BYTES_PER_INSTRUCTION);
    judge->rule_work += (long)(new_size / BYTES_PER_INSTRUCTION);
    if (judge->instructions > judge->budget)
        stop_soon(judge, RUNAWAY_BUDGET);
    if (new_size > (is_text ? TEXT_BYTES : PIECE_BYTES))
        stop_soon(judge, RUNAWAY_SIZE);
    if (judge->memory + growth > judge->limits.memory) {
        judge->is_full = true;
        look_every(judge, 1);
    }
    return judge->memory + growth <= judge->limits.memory + RESERVE;
}

void *limits_allocate(void *context, void *block, size_t old_size, size_t new_size)
{
    struct judge *judge = context;
    if (new_size == 0) {
        judge->memory -= block != NULL ? old_size : 0;
        return block != NULL ? room_pool_resize(judge->pool, block, old_size, 0) : NULL;
    }
    bool is_text = block == NULL && old_size == LUA_TSTRING;
    if (block == NULL)
        old_size = 0; /* for a new block Lua passes the type here */
    if (judge->is_limited && new_size > old_size &&
        !may_grow(judge, is_text, new_size, new_size - old_size))
        return NULL;
    void *moved = room_pool_resize(judge->pool, block, old_size, new_size);
    if (moved != NULL)
        judge->memory += new_size - old_size; /* unsigned: less, too */
    else
        judge->is_short = true;
    return moved;
}

bool limits_rule_is_spent(struct judge *judge)
{
    return judge->rule_work > judge->rule_budget;
}

void limits_count_reads(struct judge *judge)
{
    judge->rule_work += (long)judge->working->read_count * INSTRUCTIONS_PER_READ;
}

const char *limits_sentence_of_rule(struct judge *judge)
{
    return arena_format(judge->page,
                        "the rule ran past its budget of %ld instructions for all things together, "
                        "so it was not asked about the rest",
                        judge->rule_budget);
}

const char *limits_sentence(struct judge *judge, enum runaway runaway)
{
    size_t memory = judge->limits.memory;
    switch (runaway) {
    case RUNAWAY_BUDGET:
        return arena_format(judge->page, "the rule ran past its budget of %ld instructions",
                            judge->budget);
    case RUNAWAY_SIZE:
        return "the rule makes a text, a table or a depth of calls that is too large";
    default:
        return arena_format(judge->page, "the rule needs more than %zu %s of memory",
                            memory >> 20 != 0 ? memory >> 20 : memory >> 10,
                            memory >> 20 != 0 ? "MiB" : "KiB");
    }
}

/* Much of what fills the memory may be garbage: only what is left counts. */
static void sweep(struct judge *judge)
{
    judge->is_full = false;
    judge->instructions += (long)(judge->memory / SWEPT_PER_INSTRUCTION);
    judge->is_limited = false;
    lua_gc(judge->lua, LUA_GCCOLLECT, 0);
    judge->is_limited = true;
    if (judge->memory > judge->limits.memory)
        judge->runaway = RUNAWAY_MEMORY;
}

/* The count hook: runs between two instructions of a rule, and can raise. */
static void watch(lua_State *lua, lua_Debug *activation)
{
    struct judge *judge = room_judge(lua);
    judge->instructions += judge->period;
    judge->rule_work += judge->period;
    if (judge->is_full)
        sweep(judge);
    if (lua_getlocal(lua, activation, -ARGUMENTS) != NULL) {
        lua_pop(lua, 1);
        judge->runaway = RUNAWAY_SIZE;
    }
    if (judge->instructions > judge->budget)
        judge->runaway = RUNAWAY_BUDGET;
    if (judge->runaway == RUNAWAY_NONE) {
        if (judge->period != judge->usual_period)
            look_every(judge, judge->usual_period);
        return;
    }
    /* Level 0 is the function that was interrupted. */
    luaL_where(lua, 0);
    lua_pushliteral(lua, "the rule ran away");
    lua_concat(lua, 2);
    lua_error(lua);
}

void room_charge(lua_State *lua, size_t work)
{
    struct judge *judge = room_judge(lua);
    long limit = judge->budget;
    long counted = work < (size_t)limit ? (long)work : limit;
    judge->instructions += counted;
    judge->rule_work += counted;
    if (judge->instructions <= limit)
        return;
    judge->runaway = RUNAWAY_BUDGET;
    luaL_error(lua, "the rule ran away");
}

bool room_lift_limits(lua_State *lua)
{
    bool was_limited = room_judge(lua)->is_limited;
    room_judge(lua)->is_limited = false;
    return was_limited;
}

static void start(struct judge *judge)
{
    /* What an earlier rule left behind is not this one's. */
    if (judge->memory > judge->limits.memory / 4 * 3)
        lua_gc(judge->lua, LUA_GCCOLLECT, 0);
    judge->instructions = 0;
    judge->runaway = RUNAWAY_NONE;
    judge->is_full = false;
    judge->is_limited = true;
}

void limits_start(struct judge *judge)
{
    start(judge);
    /* Armed anew, so that what ran before does not shift where this one ends. */
    look_every(judge, judge->usual_period);
}

void limits_start_straight(struct judge *judge)
{
    start(judge);
    lua_sethook(judge->lua, NULL, 0, 0); /* what a hook costs is paid at each instruction */
}

void limits_end(struct judge *judge)
{
    judge->is_limited = false;
    if (judge->runaway != RUNAWAY_NONE)
        lua_gc(judge->lua, LUA_GCCOLLECT, 0);
}

void limits_set(struct judge *judge, const struct judge_limits *asked)
{
    struct judge_limits *limits = &judge->limits;
    *limits = (struct judge_limits){2000000, (size_t)64 << 20, 2000};
    if (asked != NULL && asked->instructions > 0)
        limits->instructions =
            asked->instructions < LONG_MAX / 4 ? asked->instructions : LONG_MAX / 4;
    if (asked != NULL && asked->memory > 0)
        limits->memory = asked->memory < SIZE_MAX / 4 ? asked->memory : SIZE_MAX / 4;
    if (asked != NULL && asked->results > 0)
        limits->results = asked->results < INT_MAX / 64 ? asked->results : INT_MAX / 64;
    judge->usual_period =
        limits->instructions < HOOK_PERIOD ? (int)limits->instructions : HOOK_PERIOD;
    limits_fit(judge, NULL);
}

void limits_fit(struct judge *judge, const struct design *design)
{
    enum { USUAL_THINGS = 1000 }; /* a house has a few hundred; a rule may look at each */
    size_t things = design != NULL ? design->thing_count : 0;
    double share = things > USUAL_THINGS ? (double)things / USUAL_THINGS : 1;
    double budget = share * (double)judge->limits.instructions;
    judge->budget = budget < (double)(LONG_MAX / 4) ? (long)budget : LONG_MAX / 4;
    double all =
        ((double)things / SHARE_OF_A_THING + CALLS_FULL) * (double)judge->limits.instructions;
    judge->rule_budget = all < (double)(LONG_MAX / 4) ? (long)all : LONG_MAX / 4;
}
