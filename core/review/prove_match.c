/* Is a finding what a case expects? */
#include "proving.h"

#include <math.h>
#include <string.h>

#include "unit.h"

enum { AMOUNT_TEXT = 160 };

/* A number is what is written when it is so to a part in a thousand: nobody writes more digits. */
static bool is_near(double a, double b, bool is_point)
{
    return fabs(a - b) <= (is_point ? 0.05 : 1e-3 * fabs(b) + 1e-12);
}

/* NULL: they agree. */
static const char *amount_mismatch(const char *role, const char *wanted,
                                   const struct amount *amount, const struct unit *unit,
                                   struct arena *arena)
{
    struct quantity_fault fault;
    struct quantity quantity;
    struct date date;
    char is[AMOUNT_TEXT];
    bool agrees = false;
    amount_write(is, sizeof is, *amount, unit, 6);
    switch (amount->type) {
    case AMOUNT_NUMBER:
    case AMOUNT_QUANTITY:
        if (!quantity_read(&quantity, wanted, strlen(wanted),
                           amount->type == AMOUNT_NUMBER ? measure_dimension(PURE_NUMBER)
                                                         : amount->quantity.dimension,
                           &fault))
            return arena_format(arena, "%s: expected '%s' cannot be read: %s (it is %s)", role,
                                wanted, fault.message, is);
        agrees = is_near(amount->quantity.value, quantity.value,
                         amount->type == AMOUNT_QUANTITY && quantity.dimension.is_point);
        break;
    case AMOUNT_DATE:
        agrees = date_read(&date, wanted, strlen(wanted)) && date_compare(date, amount->date) == 0;
        break;
    default:
        agrees = strcmp(is, wanted) == 0;
    }
    return agrees ? NULL : arena_format(arena, "%s: expected %s, but it is %s", role, wanted, is);
}

/* The test whose sentence holds the words; looks into options, too. */
static const struct test *find_test(const struct test *tests, size_t count, const char *what)
{
    for (size_t i = 0; i < count; i++) {
        if (tests[i].what != NULL && strstr(tests[i].what, what) != NULL)
            return &tests[i];
        for (size_t k = 0; k < tests[i].option_count; k++) {
            const struct option *option = &tests[i].options[k];
            const struct test *inside = find_test(option->tests, option->test_count, what);
            if (inside != NULL)
                return inside;
        }
    }
    return NULL;
}

static const struct test *find_group(const struct test *tests, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (tests[i].relation == RELATION_ONE_OF)
            return &tests[i];
    return NULL;
}

/* What decides: of a group what decides in its best way. */
static const struct test *deciding_test(const struct test *tests, size_t count)
{
    const struct test *test = tests_deciding(tests, count);
    while (test != NULL && test->relation == RELATION_ONE_OF) {
        const struct option *best = options_best(test->options, test->option_count);
        test = best != NULL ? tests_deciding(best->tests, best->test_count) : NULL;
    }
    return test;
}

static bool is_missing(const struct test *tests, size_t count, const char *fact)
{
    for (size_t i = 0; i < count; i++) {
        if (tests[i].relation == RELATION_MISSING && tests[i].missing.fact != NULL &&
            strstr(tests[i].missing.fact, fact) != NULL)
            return true;
        for (size_t k = 0; k < tests[i].option_count; k++)
            if (is_missing(tests[i].options[k].tests, tests[i].options[k].test_count, fact))
                return true;
    }
    return false;
}

static const struct test *find_broken(const struct test *tests, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (tests[i].relation == RELATION_BROKEN)
            return &tests[i];
    return NULL;
}

static bool is_about(const struct finding *finding, const char *about)
{
    size_t length = strlen(finding->about_kind);
    return strncmp(about, finding->about_kind, length) == 0 && about[length] == ':' &&
           strcmp(about + length + 1, finding->about_name) == 0;
}

const struct finding *trial_find(const struct expectation *expect, const struct findings *findings,
                                 const char **why)
{
    const struct finding *found = NULL, *resting = NULL;
    size_t count = 0;
    const char *list = "";
    for (size_t i = 0; i < findings->count && list != NULL; i++) {
        const struct finding *one = findings->items[i];
        if (expect->about != NULL && is_about(one, expect->about))
            return one;
        bool counts = one->outcome != OUTCOME_NOT_APPLICABLE || expect->about != NULL;
        if (!counts && resting == NULL)
            resting = one;
        if (!counts)
            continue;
        found = one;
        list = arena_format(findings->arena, "%s%s%s:%s", list, count++ > 0 ? ", " : "",
                            one->about_kind, one->about_name);
    }
    *why = expect->about != NULL
               ? arena_format(findings->arena, "there is no finding about %s; there is: %s",
                              expect->about, count > 0 ? list : "none")
               : arena_format(findings->arena,
                              "there are %zu findings: say with 'about' which is meant, of %s",
                              count, list);
    if (expect->about != NULL)
        return NULL;
    return count == 1 ? found : count == 0 ? resting : NULL;
}

static const char *level_of(const struct finding *finding)
{
    return finding->outcome != OUTCOME_FAIL ? "none"
           : finding->normative == SHALL    ? "error"
                                            : "warning";
}

static const char *margin_mismatch(const char *wanted, const struct test *test, struct arena *arena)
{
    struct quantity_fault fault;
    struct quantity quantity;
    double margin = test->margin;
    bool has_margin = test->relation == RELATION_ONE_OF
                          ? options_margin(&margin, test->options, test->option_count)
                          : test->has_margin;
    if (!quantity_read(&quantity, wanted, strlen(wanted), measure_dimension(PURE_NUMBER), &fault))
        return arena_format(arena, "margin: expected '%s' cannot be read: %s", wanted,
                            fault.message);
    if (!has_margin)
        return arena_format(arena, "margin: expected %s, but there is none", wanted);
    double tolerance = fabs(quantity.value) < 0.1 ? 0.0005 : 0.005;
    return fabs(margin - quantity.value) <= tolerance + 1e-12
               ? NULL
               : arena_format(arena, "margin: expected %s, but it is %.4g %%", wanted,
                              100 * margin);
}

/* The numbers of one test. */
static const char *test_mismatch(const struct expectation *expect, const struct test *test,
                                 struct arena *arena)
{
    const char *wrong = NULL;
    const struct unit *unit = test->unit;
    bool has_pair = test->relation < RELATION_ONE_OF;
    if (!has_pair && (expect->actual != NULL || expect->limit != NULL))
        return arena_format(arena, "'%s' compares no numbers", test->what);
    if (expect->actual != NULL)
        wrong = amount_mismatch("actual", expect->actual, &test->actual, unit, arena);
    if (wrong == NULL && expect->limit != NULL)
        wrong = amount_mismatch("limit", expect->limit, &test->limit, unit, arena);
    if (wrong == NULL && expect->margin != NULL)
        wrong = margin_mismatch(expect->margin, test, arena);
    return wrong;
}

static const char *option_mismatch(const struct expectation *expect, const struct finding *finding,
                                   struct arena *arena)
{
    const struct test *group = find_group(finding->tests, finding->test_count);
    const struct option *best =
        group != NULL ? options_best(group->options, group->option_count) : NULL;
    if (best != NULL && strcmp(best->name, expect->option) == 0)
        return NULL;
    return arena_format(arena, "expected the way '%s', but it is %s%s%s", expect->option,
                        best != NULL ? "'" : "", best != NULL ? best->name : "none",
                        best != NULL ? "'" : "");
}

static const char *detail_mismatch(const struct expectation *expect, const struct finding *finding,
                                   struct arena *arena)
{
    const char *wrong = NULL;
    if (expect->level != NULL && strcmp(expect->level, level_of(finding)) != 0)
        return arena_format(arena, "expected the level %s, but it is %s", expect->level,
                            level_of(finding));
    if (expect->cite != NULL && strcmp(expect->cite, finding->cite) != 0)
        return arena_format(arena, "expected the citation %s, but it is %s", expect->cite,
                            finding->cite);
    if (expect->missing != NULL &&
        !is_missing(finding->tests, finding->test_count, expect->missing))
        return arena_format(arena, "expected '%s' to be missing, but: %s", expect->missing,
                            finding->message);
    if (expect->option != NULL)
        wrong = option_mismatch(expect, finding, arena);
    if (wrong != NULL || (expect->what == NULL && expect->actual == NULL && expect->limit == NULL &&
                          expect->margin == NULL))
        return wrong;
    const struct test *test = expect->what != NULL
                                  ? find_test(finding->tests, finding->test_count, expect->what)
                                  : deciding_test(finding->tests, finding->test_count);
    if (test == NULL)
        return arena_format(arena, "nothing is compared like '%s'",
                            expect->what != NULL ? expect->what : "that");
    return test_mismatch(expect, test, arena);
}

const char *trial_mismatch(const struct trial *trial, const struct findings *findings)
{
    const struct expectation *expect = &trial->one->expect;
    struct arena *arena = findings->arena;
    bool wants_deleted = strcmp(expect->kind, "deleted") == 0;
    const char *why;
    if (!trial->rule->holds || wants_deleted)
        return trial->rule->holds == !wants_deleted ? NULL
               : wants_deleted
                   ? "expected that the rule does not hold, but it does"
                   : arena_format(arena, "expected %s, but the rule does not hold", expect->kind);
    const struct finding *finding = trial_find(expect, findings, &why);
    if (finding == NULL)
        return why;
    const struct test *broken = find_broken(finding->tests, finding->test_count);
    if (broken != NULL)
        return arena_format(arena, "the rule is broken: %s", broken->what);
    if (strcmp(outcome_name(finding->outcome), expect->kind) != 0)
        return arena_format(arena, "expected %s, but it is %s: %s", expect->kind,
                            outcome_name(finding->outcome), finding->message);
    return detail_mismatch(expect, finding, arena);
}
