/* Findings as sentences: what decides, with its numbers. */
#include "finding.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "text.h"
#include "unit.h"

enum { DIGITS_SHOWN = 4, DIGITS_MOST = 12 };

/* The unit that both are shown in where the test names none: what is unchanged since reading prints
 * as written, what was computed prints in the unit of what it is held against. */
static const struct unit *unit_for(const struct amount *shown, const struct amount *beside,
                                   const struct unit *wanted)
{
    if (wanted != NULL || shown->type != AMOUNT_QUANTITY || shown->quantity.written != NULL)
        return wanted;
    if (beside->type == AMOUNT_QUANTITY && beside->quantity.unit != NULL &&
        dimension_is_same(beside->quantity.dimension, shown->quantity.dimension))
        return beside->quantity.unit;
    return shown->quantity.unit;
}

void test_write_amounts(char *actual, char *limit, size_t size, const struct test *test)
{
    const struct unit *wanted = test->unit;
    if (wanted != NULL && (test->actual.type != AMOUNT_QUANTITY ||
                           !dimension_is_same(wanted->dimension, test->actual.quantity.dimension)))
        wanted = NULL;
    const struct unit *of_actual = unit_for(&test->actual, &test->limit, wanted);
    const struct unit *of_limit =
        unit_for(&test->limit, &test->limit,
                 wanted != NULL || test->limit.quantity.unit != NULL ? wanted : of_actual);
    int digits = DIGITS_SHOWN;
    bool are_apart = test->outcome == OUTCOME_FAIL;
    do {
        amount_write(actual, size, test->actual, of_actual, digits);
        amount_write(limit, size, test->limit, of_limit, digits);
    } while (are_apart && strcmp(actual, limit) == 0 && digits++ < DIGITS_MOST);
}

void margin_write(char *buffer, size_t size, double margin)
{
    double percent = fabs(margin) * 100;
    if (percent > 0 && percent < 0.1) {
        snprintf(buffer, size, "less than 0.1 %%");
        return;
    }
    number_write_digits(buffer, size, percent < 10 ? percent : round(percent),
                        percent < 10 ? 2 : 12);
    text_append(buffer, size, " %");
}

/* What stands behind the demand: " (32 % over)", in three pieces. `size` is of the share. */
static void write_share(const char **before, char *share, size_t size, const char **behind,
                        const struct test *test)
{
    share[0] = '\0';
    *before = *behind = "";
    if (!test->has_margin)
        return;
    if (test->outcome == OUTCOME_FAIL && test->margin < 0) {
        *before = " (";
        *behind = test->relation == RELATION_EQUAL ? " off)"
                  : test->relation == RELATION_AT_LEAST || test->relation == RELATION_MORE_THAN
                      ? " short)"
                      : " over)";
    } else if (test->outcome == OUTCOME_FAIL) {
        *before = " (it is just that much)";
        return;
    } else if (test->margin > 0) {
        *before = "; it stands ";
        *behind = " inside the limit";
    } else {
        *before = "; it stands exactly at the limit";
        return;
    }
    margin_write(share, size, test->margin);
}

/* What stands before and behind the limit. */
struct demand {
    const char *before, *behind;
};

static struct demand demand_of(enum relation relation)
{
    switch (relation) {
    case RELATION_NOT_EXCEED:
        return (struct demand){"at most ", " is allowed"};
    case RELATION_AT_LEAST:
        return (struct demand){"at least ", " is needed"};
    case RELATION_LESS_THAN:
        return (struct demand){"it must be less than ", ""};
    case RELATION_MORE_THAN:
        return (struct demand){"it must be more than ", ""};
    default:
        return (struct demand){"it must be ", ""};
    }
}

static bool is_count(const struct amount *amount)
{
    return amount->type == AMOUNT_NUMBER && amount->quantity.unit == NULL &&
           amount->quantity.value >= 0 && floor(amount->quantity.value) == amount->quantity.value;
}

/* Of things that are counted: "Modules over an edge: 4; there must be none". */
static const char *count_sentence(const struct test *test, const char *actual, const char *limit,
                                  const char *share, struct arena *arena)
{
    bool is_none = test->limit.quantity.value <= 0 &&
                   (test->relation == RELATION_EQUAL || test->relation == RELATION_NOT_EXCEED);
    struct demand demand = demand_of(test->relation);
    if (!is_none)
        return ARENA_JOIN(arena, test->what, ": ", actual, "; ", demand.before, limit,
                          demand.behind, share);
    return test->outcome == OUTCOME_FAIL
               ? ARENA_JOIN(arena, test->what, ": ", actual, "; there must be none")
               : ARENA_JOIN(arena, test->what, ": none, as it must be");
}

static const char *pair_sentence(const struct test *test, struct arena *arena)
{
    char actual[128], limit[128], share[40];
    struct demand demand = demand_of(test->relation);
    const char *before, *behind;
    test_write_amounts(actual, limit, sizeof actual, test);
    write_share(&before, share, sizeof share, &behind, test);
    if (is_count(&test->actual) && is_count(&test->limit)) {
        const char *whole = ARENA_JOIN(arena, before, share, behind);
        return whole != NULL ? count_sentence(test, actual, limit, whole, arena) : NULL;
    }
    return ARENA_JOIN(arena, test->what, " is ", actual, "; ", demand.before, limit, demand.behind,
                      before, share, behind);
}

static const char *group_sentence(const struct test *test, struct arena *arena)
{
    const struct option *best = options_best(test->options, test->option_count);
    const struct test *deciding =
        best != NULL ? tests_deciding(best->tests, best->test_count) : NULL;
    const char *inner = deciding != NULL ? test_sentence(deciding, arena) : "nothing was compared";
    const char *name = best != NULL ? best->name : "none";
    if (inner == NULL)
        return NULL;
    if (test->outcome == OUTCOME_PASS)
        return arena_format(arena, "\"%s\" is met: %s", name, inner);
    if (test->outcome == OUTCOME_FAIL)
        return arena_format(arena, "none of %zu ways is met; nearest, \"%s\": %s",
                            test->option_count, name, inner);
    return arena_format(arena, "none of %zu ways is met yet; \"%s\": %s", test->option_count, name,
                        inner);
}

const char *test_sentence(const struct test *test, struct arena *arena)
{
    switch (test->relation) {
    case RELATION_ONE_OF:
        return group_sentence(test, arena);
    case RELATION_REVIEW:
        return test->what;
    case RELATION_MISSING:
        return arena_format(arena, "%s is not given", test->missing.fact);
    case RELATION_BROKEN:
        return arena_format(arena, "the rule could not be run to its end%s%s",
                            test->what != NULL ? ": " : "", test->what != NULL ? test->what : "");
    case RELATION_BE:
        return test->outcome == OUTCOME_PASS
                   ? test->what
                   : arena_format(arena, "this must hold, and does not: %s", test->what);
    default:
        return pair_sentence(test, arena);
    }
}

/* How many tests beside the deciding one have its outcome. */
static size_t count_others(const struct finding *finding, const struct test *deciding)
{
    size_t others = 0;
    for (size_t i = 0; i < finding->test_count; i++)
        others += &finding->tests[i] != deciding && finding->tests[i].outcome == deciding->outcome;
    return others;
}

/* The first letter large. Only ASCII letters have one here. */
static const char *begin_large(const char *sentence, struct arena *arena)
{
    char *large = sentence != NULL ? arena_copy(arena, sentence, strlen(sentence)) : NULL;
    if (large != NULL && large[0] >= 'a' && large[0] <= 'z')
        large[0] = (char)(large[0] - 'a' + 'A');
    return large;
}

static const char *without_tests(const struct finding *finding)
{
    switch (finding->outcome) {
    case OUTCOME_NOT_APPLICABLE:
        return "Does not apply here";
    case OUTCOME_INFORMATIONAL:
        return "For information";
    default:
        return "Cannot be told: the rule recorded nothing";
    }
}

/* A rule that broke is open whatever it found before: then what is open decides. */
static const struct test *deciding_of(const struct finding *finding)
{
    const struct test *deciding = tests_deciding(finding->tests, finding->test_count);
    if (deciding == NULL || deciding->outcome == finding->outcome)
        return deciding;
    for (size_t i = 0; i < finding->test_count; i++)
        if (finding->tests[i].outcome == finding->outcome)
            return &finding->tests[i];
    return NULL;
}

const char *finding_message(const struct finding *finding, struct arena *arena)
{
    const struct test *deciding = deciding_of(finding);
    if (deciding == NULL)
        return without_tests(finding);
    const char *sentence = test_sentence(deciding, arena);
    size_t others = count_others(finding, deciding);
    if (sentence == NULL)
        return NULL;
    switch (finding->outcome) {
    case OUTCOME_OPEN:
        sentence = others > 0
                       ? arena_format(arena, "Cannot be told: %s (and %zu more)", sentence, others)
                       : arena_format(arena, "Cannot be told: %s", sentence);
        break;
    case OUTCOME_FAIL:
        if (others > 0)
            sentence = arena_format(arena, "%s; %zu more %s not hold", sentence, others,
                                    others == 1 ? "does" : "do");
        break;
    default:
        break;
    }
    return begin_large(sentence, arena);
}

bool findings_say(struct findings *findings)
{
    for (size_t i = 0; i < findings->count; i++) {
        struct finding *finding = findings->items[i];
        if (finding->message == NULL)
            finding->message = finding_message(finding, findings->arena);
        if (finding->message == NULL)
            return false;
    }
    return true;
}
