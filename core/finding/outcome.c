/* The algebra of outcomes and of margins. */
#include "finding.h"

#include <assert.h>

const char *outcome_name(enum outcome outcome)
{
    static const char *const names[OUTCOME_COUNT] = {[OUTCOME_FAIL] = "fail",
                                                     [OUTCOME_OPEN] = "open",
                                                     [OUTCOME_REVIEW] = "review",
                                                     [OUTCOME_PASS] = "pass",
                                                     [OUTCOME_INFORMATIONAL] = "informational",
                                                     [OUTCOME_NOT_APPLICABLE] = "notApplicable"};
    assert((unsigned)outcome < OUTCOME_COUNT);
    return names[outcome];
}

const char *relation_name(enum relation relation)
{
    static const char *const names[] = {
        [RELATION_NOT_EXCEED] = "not_exceed", [RELATION_AT_LEAST] = "at_least",
        [RELATION_LESS_THAN] = "less_than",   [RELATION_MORE_THAN] = "more_than",
        [RELATION_EQUAL] = "equal",           [RELATION_BE] = "be",
        [RELATION_ONE_OF] = "one_of",         [RELATION_REVIEW] = "review",
        [RELATION_MISSING] = "missing",       [RELATION_BROKEN] = "broken"};
    return names[relation];
}

/* The enumeration runs from the worst to the mildest. */
enum outcome tests_outcome(const struct test *tests, size_t count)
{
    enum outcome worst = OUTCOME_COUNT;
    for (size_t i = 0; i < count; i++)
        if (tests[i].outcome < worst)
            worst = tests[i].outcome;
    return worst;
}

enum outcome options_outcome(const struct option *options, size_t count)
{
    static const enum outcome order[] = {OUTCOME_PASS, OUTCOME_OPEN, OUTCOME_REVIEW, OUTCOME_FAIL};
    for (size_t i = 0; i < sizeof order / sizeof order[0]; i++)
        for (size_t k = 0; k < count; k++)
            if (options[k].outcome == order[i])
                return order[i];
    return OUTCOME_COUNT;
}

/* A group's margin is always taken from its options, so that nothing depends on who set it. */
static bool margin_of(double *out, const struct test *test)
{
    if (test->relation == RELATION_ONE_OF)
        return options_margin(out, test->options, test->option_count);
    *out = test->margin;
    return test->has_margin;
}

/* By the house's comparison: of margins that only rounding tells apart, the first stands. */
static bool is_less(double a, double b)
{
    return number_compare(a, b) < 0;
}

bool tests_margin(double *out, const struct test *tests, size_t count)
{
    enum outcome outcome = tests_outcome(tests, count);
    bool found = false;
    if (outcome != OUTCOME_PASS && outcome != OUTCOME_FAIL)
        return false;
    for (size_t i = 0; i < count; i++) {
        double margin;
        if (tests[i].outcome != outcome || !margin_of(&margin, &tests[i]))
            continue;
        if (!found || is_less(margin, *out))
            *out = margin;
        found = true;
    }
    return found;
}

/* How near an option is to standing, or how well it stands. Of what fails by yes or no nothing is
 * there: that is a miss by the whole, and a limit that is missed by more is farther off. */
static bool reach_of(double *out, const struct option *option)
{
    bool has_reach = tests_margin(out, option->tests, option->test_count);
    for (size_t i = 0; option->outcome == OUTCOME_FAIL && i < option->test_count; i++) {
        const struct test *test = &option->tests[i];
        double margin;
        if (test->outcome != OUTCOME_FAIL || margin_of(&margin, test))
            continue;
        *out = has_reach && is_less(*out, -1) ? *out : -1;
        has_reach = true;
    }
    return has_reach;
}

const struct option *options_best(const struct option *options, size_t count)
{
    enum outcome outcome = options_outcome(options, count);
    const struct option *best = NULL;
    double widest = 0;
    bool has_widest = false;
    for (size_t i = 0; i < count; i++) {
        double reach = 0;
        if (options[i].outcome != outcome)
            continue;
        bool has_reach = reach_of(&reach, &options[i]);
        if (best == NULL || (has_reach && (!has_widest || is_less(widest, reach)))) {
            best = &options[i];
            widest = reach;
            has_widest = has_reach;
        }
    }
    return best;
}

bool options_margin(double *out, const struct option *options, size_t count)
{
    const struct option *best = options_best(options, count);
    return best != NULL && tests_margin(out, best->tests, best->test_count);
}

enum normative tests_normative(const struct test *tests, size_t count)
{
    bool any_fails = false, any_shall = count == 0;
    for (size_t i = 0; i < count; i++) {
        bool fails = tests[i].outcome == OUTCOME_FAIL;
        if (fails && tests[i].normative == SHALL)
            return SHALL;
        any_fails = any_fails || fails;
        any_shall = any_shall || tests[i].normative == SHALL;
    }
    return any_fails || !any_shall ? SHOULD : SHALL;
}

const struct test *tests_deciding(const struct test *tests, size_t count)
{
    enum outcome outcome = tests_outcome(tests, count);
    enum normative weight = tests_normative(tests, count);
    const struct test *deciding = NULL;
    double least = 0;
    bool has_least = false;
    for (size_t i = 0; i < count; i++) {
        double margin = 0;
        if (tests[i].outcome != outcome ||
            (outcome == OUTCOME_FAIL && tests[i].normative != weight))
            continue;
        bool has_margin = margin_of(&margin, &tests[i]);
        if (deciding == NULL || (has_margin && (!has_least || is_less(margin, least)))) {
            deciding = &tests[i];
            least = margin;
            has_least = has_margin;
        }
    }
    return deciding;
}

bool test_settle_group(struct test *group)
{
    bool all_recorded = group->option_count > 0;
    assert(group->relation == RELATION_ONE_OF);
    for (size_t i = 0; i < group->option_count; i++) {
        struct option *option = &group->options[i];
        option->outcome = tests_outcome(option->tests, option->test_count);
        if (option->outcome == OUTCOME_COUNT) {
            option->outcome = OUTCOME_OPEN; /* never a pass */
            all_recorded = false;
        }
    }
    group->outcome = options_outcome(group->options, group->option_count);
    if (group->outcome == OUTCOME_COUNT)
        group->outcome = OUTCOME_OPEN;
    group->has_margin = options_margin(&group->margin, group->options, group->option_count);
    return all_recorded;
}
