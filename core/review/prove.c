#include "prove.h"

#include <string.h>

#include "file.h"
#include "proving.h"
#include "search.h"
#include "text.h"

/* ---- what the cases show ----------------------------------------------------------------------
 */

static struct proving_rule *find_rule(struct proving *proving, const char *id)
{
    for (size_t i = 0; i < proving->rule_count; i++)
        if (strcmp(proving->rules[i].id, id) == 0)
            return &proving->rules[i];
    return NULL;
}

/* Each rule of the book once; a rule with a text of its own for some edition counts with each. */
static bool list_rules(struct proving *proving)
{
    const struct book *book = proving->book;
    proving->rules = arena_take(proving->arena, (book->rule_count + 1) * sizeof *proving->rules);
    proving->is_read = arena_take(proving->arena, book->value_count + 1);
    for (size_t i = 0; proving->rules != NULL && i < book->rule_count; i++)
        if (find_rule(proving, book->rules[i].id) == NULL)
            proving->rules[proving->rule_count++] =
                (struct proving_rule){.id = book->rules[i].id, .path = book->rules[i].path};
    proving->proof->rule_count = proving->rule_count;
    return proving->rules != NULL && proving->is_read != NULL;
}

static bool note_option(struct proving *proving, struct proving_rule *rule,
                        const struct option *option)
{
    struct proving_option *there = NULL;
    for (size_t i = 0; i < rule->option_count; i++)
        if (strcmp(rule->options[i].name, option->name) == 0)
            there = &rule->options[i];
    if (there == NULL) {
        struct proving_option *options =
            arena_grow(proving->arena, rule->options, rule->option_count, &rule->option_capacity,
                       sizeof *options);
        if (options == NULL)
            return false;
        rule->options = options;
        there = &options[rule->option_count++];
        there->name = arena_copy(proving->arena, option->name, strlen(option->name));
        there->is_met = false;
        if (there->name == NULL)
            return false;
    }
    /* A way that is for a person to judge can be met no further. */
    there->is_met =
        there->is_met || option->outcome == OUTCOME_PASS || option->outcome == OUTCOME_REVIEW;
    return true;
}

static bool note_options(struct proving *proving, struct proving_rule *rule,
                         const struct test *tests, size_t count)
{
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < tests[i].option_count; k++) {
            const struct option *option = &tests[i].options[k];
            if (!note_option(proving, rule, option) ||
                !note_options(proving, rule, option->tests, option->test_count))
                return false;
        }
    return true;
}

static void note_values(struct proving *proving, const struct finding *finding)
{
    const struct book *book = proving->book;
    for (size_t i = 0; i < book->value_count; i++)
        for (size_t k = 0; k < finding->value_count; k++)
            if (strcmp(book->values[i].name, finding->values[k]->name) == 0)
                proving->is_read[i] = true;
}

/* A case that came out as expected shows something of its rule. */
static bool note_shown(struct proving *proving, const struct trial *trial,
                       const struct findings *findings)
{
    const char *why;
    struct proving_rule *rule = find_rule(proving, trial->one->rule);
    const struct finding *finding =
        trial->rule->holds ? trial_find(&trial->one->expect, findings, &why) : NULL;
    if (finding == NULL)
        return true;
    note_values(proving, finding);
    if (rule == NULL)
        return true;
    rule->has[finding->outcome] = true;
    if (finding->input_count > 0 || finding->outcome == OUTCOME_NOT_APPLICABLE)
        rule->reads = true;
    for (size_t i = 0; i < finding->test_count; i++)
        rule->compares = rule->compares || finding->tests[i].outcome != OUTCOME_REVIEW;
    return note_options(proving, rule, finding->tests, finding->test_count);
}

/* ---- what they lack ---------------------------------------------------------------------------
 */

static bool add_lack(struct proving *proving, enum lack_kind kind, const char *thing,
                     const char *lacks, struct place place)
{
    struct proof *proof = proving->proof;
    struct proof_lack *items = arena_grow(proving->arena, proof->lacks, proof->lack_count,
                                          &proof->lack_capacity, sizeof *items);
    if (items == NULL)
        return false;
    proof->lacks = items;
    items[proof->lack_count++] = (struct proof_lack){kind, thing, lacks, place};
    return true;
}

/* A rule may hand to a person what it does not pass, and one that compares nothing hands over all;
   but one that reads nothing is not written yet. */
static bool is_shown(const struct proving_rule *rule, enum outcome outcome)
{
    bool stands_in = rule->reads && (outcome == OUTCOME_FAIL || !rule->compares);
    return rule->has[outcome] || (stands_in && rule->has[OUTCOME_REVIEW]);
}

static bool add_lacks_of(struct proving *proving, const struct proving_rule *rule)
{
    static const struct {
        enum outcome outcome;
        const char *name;
    } needed[] = {
        {OUTCOME_PASS, "a passing"}, {OUTCOME_FAIL, "a failing"}, {OUTCOME_OPEN, "an open"}};
    struct place place = {rule->path, 0, 0};
    const char *lacks = NULL;
    for (size_t i = 0; i < 3; i++)
        if (!is_shown(rule, needed[i].outcome))
            lacks = lacks == NULL ? needed[i].name
                                  : arena_format(proving->arena, "%s, %s", lacks, needed[i].name);
    if (lacks != NULL) {
        lacks = arena_format(proving->arena, "%s case", lacks);
        if (lacks == NULL || !add_lack(proving, LACK_CASE, rule->id, lacks, place))
            return false;
    }
    for (size_t i = 0; i < rule->option_count; i++)
        if (!rule->options[i].is_met &&
            !add_lack(proving, LACK_OPTION, rule->id, rule->options[i].name, place))
            return false;
    return true;
}

static bool add_lacks(struct proving *proving)
{
    const struct book *book = proving->book;
    for (size_t i = 0; i < proving->rule_count; i++)
        if (!add_lacks_of(proving, &proving->rules[i]))
            return false;
    for (size_t i = 0; i < book->value_count; i++)
        if (!proving->is_read[i] &&
            !add_lack(proving, LACK_VALUE, book->values[i].name, NULL, book->values[i].place))
            return false;
    return true;
}

/* ---- the cases --------------------------------------------------------------------------------
 */

static const char *join_books(const struct rule_case *one, struct arena *arena)
{
    const char *text = one->books[0];
    for (size_t i = 1; text != NULL && one->books[i] != NULL; i++)
        text = arena_format(arena, "%s, %s", text, one->books[i]);
    return text;
}

static bool add_case(struct proving *proving, const struct rule_case *one, const char *wrong)
{
    struct proof *proof = proving->proof;
    struct proof_case *items = arena_grow(proving->arena, proof->cases, proof->case_count,
                                          &proof->case_capacity, sizeof *items);
    if (items == NULL)
        return false;
    proof->cases = items;
    items[proof->case_count++] = (struct proof_case){
        .rule = one->rule,
        .says = one->says,
        .books = join_books(one, proving->arena),
        .wrong = wrong != NULL ? arena_copy(proving->arena, wrong, strlen(wrong)) : NULL,
        .place = one->place};
    return true;
}

/* Runs it as it is, then, if asked for, with everything moved. */
static bool run_trial(struct proving *proving, struct trial *trial)
{
    struct findings findings;
    struct stir met = {.arena = proving->case_arena};
    judge_stir(proving->bench->judge, &met);
    bool is_run = trial_run(&findings, trial, proving, proving->problems);
    judge_stir(proving->bench->judge, NULL);
    if (!is_run)
        return false;
    const char *wrong = trial_mismatch(trial, &findings);
    if (!add_case(proving, trial->one, wrong))
        return false;
    if (wrong != NULL)
        return true;
    return note_shown(proving, trial, &findings) &&
           (!proving->options->stirs || !trial->rule->holds ||
            prove_stirred(proving, trial, &met, &findings));
}

static bool run_case(struct proving *proving, const struct rule_case *one)
{
    struct trial trial;
    arena_clear(proving->case_arena);
    bool is_open = trial_open(&trial, proving, one);
    bool is_kept = is_open ? run_trial(proving, &trial)
                           : add_case(proving, one, "the case cannot be run: see the problems");
    trial_close(&trial);
    return is_kept && !arena_is_short(proving->arena) && !arena_is_short(proving->case_arena) &&
           !arena_is_short(proving->run_arena);
}

static bool prove_all(struct proving *proving)
{
    struct cases cases;
    cases_read(&cases, proving->book, proving->arena, proving->problems);
    proving->catalogues =
        search_catalogues(proving->options->catalogue_directories, proving->arena);
    if (proving->catalogues == NULL || !list_rules(proving))
        return false;
    for (size_t i = 0; i < cases.count; i++)
        if (!run_case(proving, &cases.items[i]))
            return false;
    proving->proof->is_stirred = proving->options->stirs;
    return add_lacks(proving) && (!proving->options->stirs || prove_unmoved(proving));
}

bool bench_prove(struct proof *out, struct bench *bench, const char *book,
                 const struct prove_options *options, struct arena *arena,
                 struct problems *problems)
{
    *out = (struct proof){.arena = arena, .book = book};
    struct proving proving = {
        .bench = bench, .options = options, .proof = out, .problems = problems, .arena = arena};
    if (!bench_fetch_shelf(bench, options->book_directories))
        return false;
    proving.book = shelf_find(bench->shelf, book, (struct place){0}, problems);
    if (proving.book == NULL)
        return !arena_is_short(arena);
    out->is_read = true;
    out->book = proving.book->name;
    out->title = proving.book->title;
    proving.case_arena = arena_new();
    proving.run_arena = arena_new();
    bool is_done = proving.case_arena != NULL && proving.run_arena != NULL && prove_all(&proving);
    arena_free(proving.case_arena);
    arena_free(proving.run_arena);
    return is_done && !arena_is_short(arena);
}
