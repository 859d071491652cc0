#include "judge.h"

#include <string.h>

#include "room_limits.h"
#include "rule_call.h"

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

/* How the call of a function that begins at a line ended, put down in the finding. True: it ran to
 * its end. */
static bool settle_call(struct judge *judge, int status, unsigned begins)
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
        const char *message = rule_call_error(judge, status, &line, &code);
        if (message == NULL)
            message = "there was no memory";
        if (line == 0) /* where memory went cannot be told to the line */
            line = begins;
        rule_call_problem(judge, code, line, message);
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
    finding->tests = judge->drafts;
    finding->test_capacity = judge->draft_capacity;
    judge->finding = finding;
    judge->results = 0;
    working_start(judge->working);
    return finding;
}

/* The tests, from where those of every finding are first written to a place of their own size. */
static bool keep_tests(struct judge *judge)
{
    struct finding *finding = judge->finding;
    size_t size = finding->test_count * sizeof *finding->tests;
    struct test *own = arena_take(judge->page, size);
    if (own == NULL)
        return false;
    if (size > 0)
        memcpy(own, finding->tests, size);
    judge->drafts = finding->tests;
    judge->draft_capacity = finding->test_capacity;
    finding->tests = own;
    finding->test_capacity = finding->test_count;
    return true;
}

/* Settles outcome and level from what was recorded. */
static bool end_finding(struct judge *judge)
{
    struct finding *finding = judge->finding;
    if (!keep_tests(judge))
        return false;
    if (finding->outcome != OUTCOME_NOT_APPLICABLE) {
        finding->outcome = tests_outcome(finding->tests, finding->test_count);
        if (finding->outcome == OUTCOME_COUNT)
            return false; /* not even the reason could be kept */
        finding->normative = tests_normative(finding->tests, finding->test_count);
    }
    return room_keep_working(judge);
}

/* Each thing is within its limit, but all together are too much: from here on it is not run. */
static void give_up_spent(struct judge *judge, unsigned line)
{
    const char *message = limits_sentence_of_rule(judge);
    judge->gave_up = message != NULL ? message : "the rule ran away";
    rule_call_problem(judge, "rule-budget", line, judge->gave_up);
}

/* One finding: one rule about one thing. The card's table is at card_index. */
static bool judge_thing(struct judge *judge, struct running *running, int card_index, size_t order)
{
    struct finding *finding = new_finding(judge, running->card, running->about, order);
    if (finding == NULL)
        return false;
    struct frame frame = {&finding->tests, &finding->test_count, &finding->test_capacity, NULL};
    /* cppcheck-suppress autoVariables ; both ways out below take it back */
    judge->frame = &frame;
    finding->outcome = OUTCOME_OPEN;
    if (judge->gave_up == NULL && limits_rule_is_spent(judge))
        give_up_spent(judge, running->check_line);
    if (judge->gave_up != NULL) { /* it would run away from every thing, each time for long */
        note_test(judge, RELATION_BROKEN, OUTCOME_OPEN, judge->gave_up);
        judge->frame = NULL;
        return end_finding(judge);
    }
    bool ran = settle_call(judge, rule_call(judge, STAGE_APPLIES, running, card_index),
                           running->applies_line);
    judge->frame = &frame;
    if (ran && running->applies)
        settle_call(judge, rule_call(judge, STAGE_CHECK, running, card_index), running->check_line);
    else if (ran)
        finding->outcome = OUTCOME_NOT_APPLICABLE;
    judge->frame = NULL;
    limits_count_reads(judge);
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

/* Notes what was read, so that a report can tell what decided. */
static bool keep_text(struct findings *findings, const struct rule_text *text)
{
    const struct book_text **texts =
        arena_grow(findings->arena, findings->rule_texts, findings->rule_text_count,
                   &findings->rule_text_capacity, sizeof *texts);
    if (texts == NULL)
        return false;
    findings->rule_texts = texts;
    texts[findings->rule_text_count++] = &text->file;
    return true;
}

static bool judge_rule(struct judge *judge, size_t at)
{
    lua_State *lua = judge->lua;
    struct card card = {0};
    size_t order = at << 20;
    struct rule_text *text = rule_text_find(judge, judge->rule->path);
    struct running running = {.judge = judge, .text = text, .card = &card};
    judge->gave_up = NULL;
    judge->rule_results = 0;
    if (text == NULL || !keep_text(judge->findings, text))
        return false;
    if (text->wrong != NULL) {
        rule_call_bad_text(judge->problems, judge->rule, text);
        return judge_broken(judge, order, text->wrong);
    }
    lua_settop(lua, 0);
    int status = room_take_card(lua, &running) ? LUA_OK : rule_call(judge, STAGE_CARD, &running, 0);
    if (status != LUA_OK) {
        const char *message = rule_call_bad_card(judge, status);
        lua_settop(lua, 0);
        return judge_broken(judge, order, message);
    }
    judge->rule_work = 0; /* a kept card is not read again */
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
    judge->drafts = NULL;
    judge->draft_capacity = 0;
    limits_fit(judge, design);
    bool is_kept = room_forget_shown(judge->lua);
    judge->told = arena_take(findings->arena, design->fact_count * sizeof *judge->told);
    is_kept = is_kept && judge->told != NULL;
    for (size_t i = 0; is_kept && i < rulebook->rule_count; i++) {
        judge->rule = &rulebook->rules[i];
        if (judge->rule->holds)
            is_kept = judge_rule(judge, i);
    }
    return is_kept && !arena_is_short(findings->arena);
}

/* In the arena, where they outlive the judge's own copies. */
static bool copy_card(struct card *card, struct arena *arena)
{
    const char **texts[] = {&card->title, &card->cite, &card->about, &card->remedy};
    for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++)
        if (*texts[i] != NULL &&
            (*texts[i] = arena_copy(arena, *texts[i], strlen(*texts[i]))) == NULL)
            return false;
    return true;
}

bool judge_read_card(struct card *out, struct judge *judge, const struct rule *rule,
                     struct arena *arena, struct problems *problems)
{
    judge->rule = rule;
    judge->page = arena;
    judge->problems = problems;
    judge->gave_up = NULL;
    limits_fit(judge, NULL);
    struct rule_text *text = rule_text_find(judge, rule->path);
    struct running running = {.judge = judge, .text = text, .card = out};
    if (text == NULL)
        return false;
    if (text->wrong != NULL) {
        rule_call_bad_text(problems, rule, text);
        return false;
    }
    lua_settop(judge->lua, 0);
    int status = rule_call(judge, STAGE_CARD, &running, 0);
    if (status != LUA_OK)
        rule_call_bad_card(judge, status);
    lua_settop(judge->lua, 0);
    return status == LUA_OK && copy_card(out, arena);
}
