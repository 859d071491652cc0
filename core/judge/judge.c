#include "judge.h"

#include "room.h"

#include <assert.h>
#include <string.h>

/* What one protected call into a rule needs and gives back. */
struct running {
    struct judge *judge;
    struct rule_text *text;
    struct card *card;
    const struct object *about; /* NULL: only the card is read */
    bool applies;
};

static void add_problem(struct judge *judge, const char *code, unsigned line, const char *message)
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

static void tell_bad_text(struct problems *problems, const struct rule *rule,
                          const struct rule_text *text)
{
    struct problem *problem =
        problems_add(problems, PROBLEM_RULE, text->code,
                     (struct place){rule->path, text->line, text->column}, "%s", text->wrong);
    if (problem != NULL && text->excerpt != NULL)
        problem->excerpt = text->excerpt;
}

/* The chunk's words: an empty page of its own each time, so that nothing it keeps outlives the
 * review. */
static void push_chunk(lua_State *lua, const struct rule_text *text)
{
    lua_rawgeti(lua, LUA_REGISTRYINDEX, text->chunk);
    lua_newtable(lua);
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    lua_setmetatable(lua, -2);
    const char *name = lua_setupvalue(lua, -2, 1);
    assert(name != NULL && strcmp(name, "_ENV") == 0);
    (void)name;
}

static const char *card_text(lua_State *lua, const char *key, bool is_needed)
{
    size_t length;
    struct judge *judge = room_judge(lua);
    const char *copy = NULL;
    lua_getfield(lua, 1, key);
    if (lua_type(lua, -1) == LUA_TSTRING) {
        const char *text = lua_tolstring(lua, -1, &length);
        copy = arena_copy(judge->page, text, length);
        if (copy == NULL)
            luaL_error(lua, "not enough memory");
    } else if (is_needed || !lua_isnil(lua, -1))
        luaL_error(lua, "the card needs %s = \"…\"", key);
    lua_pop(lua, 1);
    return copy;
}

/* A citation, or one per edition: cite = {["2017"] = "705.12(B)", ["2020"] = …}. */
static const char *card_cite(lua_State *lua)
{
    struct judge *judge = room_judge(lua);
    const char *edition = judge->rule->edition;
    lua_getfield(lua, 1, "cite");
    if (lua_type(lua, -1) != LUA_TTABLE) {
        lua_pop(lua, 1);
        return card_text(lua, "cite", true);
    }
    if (edition == NULL)
        luaL_error(lua, "the card cites per edition, but the book has none");
    lua_getfield(lua, -1, edition);
    if (lua_type(lua, -1) != LUA_TSTRING)
        luaL_error(lua, "the card has no citation for the edition %s in force", edition);
    const char *text = lua_tostring(lua, -1);
    const char *copy = arena_copy(judge->page, text, strlen(text));
    if (copy == NULL)
        luaL_error(lua, "not enough memory");
    lua_pop(lua, 2);
    return copy;
}

static void check_keys(lua_State *lua)
{
    static const char *const keys[] = {"title", "cite", "about", "applies", "check", "remedy"};
    lua_pushnil(lua);
    while (lua_next(lua, 1) != 0) {
        bool is_known = false;
        for (size_t i = 0; lua_type(lua, -2) == LUA_TSTRING && i < sizeof keys / sizeof keys[0];
             i++)
            is_known = is_known || strcmp(keys[i], lua_tostring(lua, -2)) == 0;
        if (!is_known)
            luaL_error(lua, "a rule's card has title, cite, about, applies, check and remedy; "
                            "this one has something else, too");
        lua_pop(lua, 1);
    }
}

static void check_function(lua_State *lua, const char *key, bool is_needed)
{
    int type = lua_getfield(lua, 1, key);
    if (type != LUA_TFUNCTION && (is_needed || type != LUA_TNIL))
        luaL_error(lua, "the card needs %s = function(thing, book, design) … end", key);
    lua_pop(lua, 1);
}

/* Runs protected: the file's chunk, which returns the card. Leaves the card's table. */
static int run_card(lua_State *lua)
{
    struct running *running = lua_touserdata(lua, 1);
    lua_settop(lua, 0);
    push_chunk(lua, running->text);
    lua_call(lua, 0, 1);
    if (lua_type(lua, 1) != LUA_TTABLE)
        return luaL_error(lua, "a rule file returns one table, its card");
    running->card->title = card_text(lua, "title", true);
    running->card->cite = card_cite(lua);
    running->card->about = card_text(lua, "about", true);
    running->card->remedy = card_text(lua, "remedy", false);
    if (kind_find(running->card->about) == KIND_NONE)
        return luaL_error(lua, "about = \"%s\": there is no such kind of thing",
                          running->card->about);
    check_function(lua, "applies", false);
    check_function(lua, "check", true);
    check_keys(lua);
    return 1;
}

static void push_arguments(lua_State *lua, const struct running *running)
{
    room_push_object(lua, running->about);
    room_push_book(lua);
    room_push_object(lua, running->judge->design->root);
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
        return luaL_error(lua, "applies() answers true or false, not %s", luaL_typename(lua, -1));
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
        return luaL_error(lua, "the check recorded nothing: it must say shall, should or review");
    return 0;
}

/* Calls a protected function with its limits on. What went wrong is left on the stack. */
static int call_protected(struct judge *judge, lua_CFunction function, struct running *running,
                          int card_index)
{
    lua_State *lua = judge->lua;
    int results = function == run_card ? 1 : 0;
    lua_pushcfunction(lua, function);
    lua_pushlightuserdata(lua, running);
    if (card_index != 0)
        lua_pushvalue(lua, card_index);
    judge->instructions = 0;
    judge->is_broken = false;
    judge->signal = SIGNAL_NONE;
    judge->limits_memory = true;
    int status = lua_pcall(lua, card_index != 0 ? 2 : 1, results, 0);
    judge->limits_memory = false;
    return status;
}

/* The sentence and the line of an error that a rule left on the stack. */
static const char *read_error(struct judge *judge, int status, unsigned *line, const char **code)
{
    lua_State *lua = judge->lua;
    *line = 0;
    *code = "rule-error";
    if (status == LUA_ERRMEM) {
        *code = "rule-memory";
        return arena_format(judge->page, "the rule needs more than %zu MiB of memory",
                            judge->limits.memory >> 20);
    }
    if (lua_type(lua, -1) != LUA_TSTRING)
        return "the rule raised something that is no sentence";
    const char *message = rule_text_split(lua_tostring(lua, -1), line);
    /* A memory error that was raised again through an option has become a plain one. */
    if (strcmp(message, "not enough memory") == 0)
        return read_error(judge, LUA_ERRMEM, line, code);
    if (strstr(message, "budget of") != NULL)
        *code = "rule-budget";
    return arena_format(judge->page, "%s", message);
}

/* A test without a comparison, at the end of the finding. */
static struct test *note_test(struct judge *judge, enum relation relation, enum outcome outcome,
                              const char *what)
{
    struct finding *finding = judge->finding;
    struct test *test =
        test_add(&finding->tests, &finding->test_count, &finding->test_capacity, judge->page);
    if (test == NULL)
        return NULL;
    test->relation = relation;
    test->outcome = outcome;
    test->what = what;
    test->normative = SHALL;
    return test;
}

/* How a call ended, put down in the finding. True: it ran to its end. */
static bool settle_call(struct judge *judge, int status)
{
    lua_State *lua = judge->lua;
    struct test *test = NULL;
    if (status == LUA_OK)
        return true;
    if (status == LUA_ERRRUN && room_is_signal(lua, -1) && !judge->is_broken) {
        if (judge->signal == SIGNAL_MISSING) {
            test = note_test(judge, RELATION_MISSING, OUTCOME_OPEN, judge->missing.fact);
            if (test != NULL)
                test->missing = judge->missing;
        } else
            note_test(judge, RELATION_REVIEW, OUTCOME_REVIEW, judge->why);
    } else {
        unsigned line;
        const char *code;
        const char *message = read_error(judge, status, &line, &code);
        if (message != NULL)
            add_problem(judge, code, line, message);
        note_test(judge, RELATION_BROKEN, OUTCOME_OPEN, message);
    }
    lua_pop(lua, 1);
    return false;
}

static struct finding *new_finding(struct judge *judge, const struct card *card,
                                   const struct object *about, size_t order)
{
    struct finding *finding = finding_add(judge->findings);
    if (finding == NULL)
        return NULL;
    finding->rule = judge->rule;
    finding->title = card->title;
    finding->cite = card->cite;
    finding->remedy = card->remedy;
    finding->about_kind = about->kind->name;
    finding->about_name = about->kind->count == ROOT && object_has(about, SLOT_design_title)
                              ? object_fact(about, SLOT_design_title)->is.word
                              : about->path;
    finding->place = about->place;
    finding->order = order;
    judge->finding = finding;
    judge->results = 0;
    working_start(judge->working);
    return finding;
}

/* Settles outcome, level and message from what was recorded. */
static bool end_finding(struct judge *judge)
{
    struct finding *finding = judge->finding;
    if (finding->outcome != OUTCOME_NOT_APPLICABLE) {
        finding->outcome = tests_outcome(finding->tests, finding->test_count);
        if (finding->outcome == OUTCOME_COUNT)
            return false; /* not even the reason could be kept */
        finding->normative = tests_normative(finding->tests, finding->test_count);
    }
    finding->message = finding_message(finding, judge->page);
    return room_keep_working(judge) && finding->message != NULL;
}

/* One finding: one rule about one thing. The card's table is at card_index. */
static bool judge_thing(struct judge *judge, struct running *running, int card_index, size_t order)
{
    struct finding *finding = new_finding(judge, running->card, running->about, order);
    if (finding == NULL)
        return false;
    struct frame frame = {&finding->tests, &finding->test_count, &finding->test_capacity, NULL};
    judge->frame = &frame;
    finding->outcome = OUTCOME_OPEN;
    bool ran = settle_call(judge, call_protected(judge, run_applies, running, card_index));
    judge->frame = &frame;
    if (ran && running->applies)
        settle_call(judge, call_protected(judge, run_check, running, card_index));
    else if (ran)
        finding->outcome = OUTCOME_NOT_APPLICABLE;
    judge->frame = NULL;
    return end_finding(judge);
}

/* Nothing of the kind is there to look at, or more of it may be untold: one finding about where it
 * would stand. */
static bool judge_absence(struct judge *judge, const struct card *card, enum kind_id kind,
                          size_t order)
{
    const struct design *design = judge->design;
    const struct object *holder = design->untold[kind].object;
    if (holder == NULL && design->of_kind[kind].count > 0)
        return true;
    struct finding *finding = new_finding(judge, card, design->root, order);
    if (finding == NULL)
        return false;
    if (holder == NULL) {
        finding->outcome = OUTCOME_NOT_APPLICABLE;
        return end_finding(judge);
    }
    unsigned slot = design->untold[kind].slot;
    struct missing missing = room_missing_fact(judge, holder, slot);
    struct test *test = note_test(judge, RELATION_MISSING, OUTCOME_OPEN, missing.fact);
    if (test == NULL)
        return false;
    test->missing = missing;
    return end_finding(judge);
}

/* A rule whose card cannot be read: a problem, and an open finding about the whole design. */
static bool judge_broken(struct judge *judge, size_t order, const char *why)
{
    struct card card = {judge->rule->id, "", "design", NULL};
    if (new_finding(judge, &card, judge->design->root, order) == NULL)
        return false;
    note_test(judge, RELATION_BROKEN, OUTCOME_OPEN, why);
    return end_finding(judge);
}

static bool judge_rule(struct judge *judge, size_t at)
{
    lua_State *lua = judge->lua;
    struct card card;
    size_t order = at << 20;
    struct rule_text *text = rule_text_find(judge, judge->rule->path);
    struct running running = {judge, text, &card, NULL, false};
    if (text == NULL)
        return false;
    if (text->wrong != NULL) {
        tell_bad_text(judge->problems, judge->rule, text);
        return judge_broken(judge, order, text->wrong);
    }
    lua_settop(lua, 0);
    int status = call_protected(judge, run_card, &running, 0);
    if (status != LUA_OK) {
        unsigned line;
        const char *code = "rule-card", *said;
        const char *message = read_error(judge, status, &line, &said);
        add_problem(judge, strcmp(said, "rule-error") == 0 ? code : said, line,
                    message != NULL ? message : "no memory");
        lua_settop(lua, 0);
        return judge_broken(judge, order, message);
    }
    enum kind_id kind = kind_find(card.about);
    const struct objects *things = &judge->design->of_kind[kind];
    bool is_kept = true;
    for (size_t i = 0; is_kept && i < things->count; i++) {
        running.about = things->items[i];
        is_kept = judge_thing(judge, &running, 1, order + i + 1);
    }
    is_kept = is_kept && judge_absence(judge, &card, kind, order + things->count + 1);
    lua_settop(lua, 0);
    return is_kept;
}

bool judge_review(struct findings *findings, struct judge *judge, const struct design *design,
                  const struct rulebook *rulebook, struct working *working,
                  struct problems *problems)
{
    judge->design = design;
    judge->rulebook = rulebook;
    judge->working = working;
    judge->findings = findings;
    judge->page = findings->arena;
    judge->problems = problems;
    bool is_kept = true;
    for (size_t i = 0; is_kept && i < rulebook->rule_count; i++) {
        judge->rule = &rulebook->rules[i];
        if (judge->rule->holds)
            is_kept = judge_rule(judge, i);
    }
    return is_kept && !arena_is_short(findings->arena);
}

bool judge_read_card(struct card *out, struct judge *judge, const struct rule *rule,
                     struct arena *arena, struct problems *problems)
{
    judge->rule = rule;
    judge->page = arena;
    judge->problems = problems;
    struct rule_text *text = rule_text_find(judge, rule->path);
    struct running running = {judge, text, out, NULL, false};
    if (text == NULL)
        return false;
    if (text->wrong != NULL) {
        tell_bad_text(problems, rule, text);
        return false;
    }
    lua_settop(judge->lua, 0);
    int status = call_protected(judge, run_card, &running, 0);
    if (status != LUA_OK) {
        unsigned line;
        const char *code;
        const char *message = read_error(judge, status, &line, &code);
        add_problem(judge, "rule-card", line, message != NULL ? message : "no memory");
    }
    lua_settop(judge->lua, 0);
    return status == LUA_OK;
}
