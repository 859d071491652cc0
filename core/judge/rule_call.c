#include "rule_call.h"

#include <string.h>

#include "room_limits.h"

void rule_call_problem(struct judge *judge, const char *code, unsigned line, const char *message)
{
    struct place place = {judge->rule->path, line, 0};
    /* The same mistake shows again with every thing; once is enough. */
    for (size_t i = 0; i < judge->problems->count; i++) {
        const struct problem *told = &judge->problems->items[i];
        if (told->place.file == place.file && told->place.line == line &&
            strcmp(told->code, code) == 0)
            return;
    }
    problems_add(judge->problems, PROBLEM_RULE, code, place, "%s: %s", judge->rule->id, message);
}

void rule_call_bad_text(struct problems *problems, const struct rule *rule,
                        const struct rule_text *text)
{
    struct problem *problem =
        problems_add(problems, PROBLEM_RULE, text->code,
                     (struct place){rule->path, text->line, text->column}, "%s", text->wrong);
    if (problem != NULL && text->excerpt != NULL)
        problem->excerpt = text->excerpt;
}

static void push_arguments(lua_State *lua, const struct running *running)
{
    room_push_object(lua, running->about);
    room_push_book(lua);
    room_push_object(lua, running->judge->design->root);
}

/* Raises a mistake of a whole function at the line where it begins. */
static int raise_at(lua_State *lua, unsigned line, const char *message)
{
    if (line == 0) /* one of our own functions, put there as it is */
        lua_pushstring(lua, message);
    else
        lua_pushfstring(lua, "rule:%d: %s", (int)line, message);
    return lua_error(lua);
}

/* Runs protected. Arguments: running, the card's table. */
static int run_applies(lua_State *lua)
{
    struct running *running = lua_touserdata(lua, 1);
    running->applies = true;
    if (lua_getfield(lua, 2, "applies") == LUA_TNIL)
        return 0;
    push_arguments(lua, running);
    lua_call(lua, 3, 1);
    if (lua_type(lua, -1) != LUA_TBOOLEAN)
        return raise_at(lua, running->applies_line,
                        "applies() answers true or false, and nothing else");
    running->applies = lua_toboolean(lua, -1);
    return 0;
}

static int run_check(lua_State *lua)
{
    struct running *running = lua_touserdata(lua, 1);
    lua_getfield(lua, 2, "check");
    push_arguments(lua, running);
    lua_call(lua, 3, 0);
    if (running->judge->finding->test_count == 0)
        return raise_at(lua, running->check_line,
                        "the check recorded nothing: it must say shall, should or review");
    return 0;
}

int rule_call(struct judge *judge, enum stage stage, struct running *running, int card_index)
{
    static const lua_CFunction functions[] = {
        [STAGE_CARD] = room_run_card, [STAGE_APPLIES] = run_applies, [STAGE_CHECK] = run_check};
    lua_State *lua = judge->lua;
    lua_pushcfunction(lua, functions[stage]);
    lua_pushlightuserdata(lua, running);
    if (card_index != 0)
        lua_pushvalue(lua, card_index);
    judge->is_broken = false;
    judge->signal = SIGNAL_NONE;
    judge->stage = stage;
    bool is_kept = running->text->card_table >= 0;
    if (is_kept && stage != STAGE_CARD && running->text->is_straight[stage == STAGE_CHECK])
        limits_start_straight(judge);
    else
        limits_start(judge);
    int status = lua_pcall(lua, card_index != 0 ? 2 : 1, stage == STAGE_CARD ? 1 : 0, 0);
    limits_end(judge);
    return status;
}

const char *rule_call_error(struct judge *judge, int status, unsigned *line, const char **code)
{
    lua_State *lua = judge->lua;
    const char *message = "the rule raised something that is no sentence";
    enum runaway runaway = judge->runaway;
    *line = 0;
    if (lua_type(lua, -1) == LUA_TSTRING)
        message = rule_text_split(lua_tostring(lua, -1), line);
    /* A memory error that was raised again through an option has become a plain one. */
    if (runaway == RUNAWAY_NONE &&
        (status == LUA_ERRMEM || strcmp(message, "not enough memory") == 0))
        runaway = RUNAWAY_MEMORY;
    *code = runaway == RUNAWAY_NONE     ? "rule-error"
            : runaway == RUNAWAY_BUDGET ? "rule-budget"
                                        : "rule-memory";
    if (runaway != RUNAWAY_NONE) {
        message = limits_sentence(judge, runaway);
        return judge->gave_up = message != NULL ? message : "the rule ran away";
    }
    char *copy = arena_copy(judge->page, message, text_cut(message, strlen(message), 1000));
    if (copy != NULL)
        room_clean(copy);
    return copy;
}

const char *rule_call_bad_card(struct judge *judge, int status)
{
    unsigned line;
    const char *code, *message = rule_call_error(judge, status, &line, &code);
    if (message == NULL)
        message = "there was no memory";
    rule_call_problem(judge, strcmp(code, "rule-error") == 0 ? "rule-card" : code, line, message);
    return message;
}
