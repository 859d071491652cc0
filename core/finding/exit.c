/* What a program's end says of findings and problems. */
#include "finding.h"

/* In the order in which they decide. */
static const int codes[] = {64, 74, 70, 3, 4, 1, 2, 0};

enum { CODES = sizeof codes / sizeof codes[0], NO_MEMORY = 70 };

static size_t rank(int code)
{
    size_t at = 0;
    while (at < CODES - 1 && codes[at] != code)
        at++;
    return at;
}

int exit_code_first(int a, int b)
{
    return rank(a) <= rank(b) ? a : b;
}

/* A waiver lifts its rule for the thing as a whole; a sign-off hangs only on what waits for a
 * person and for nothing else. */
static int code_of_finding(const struct finding *finding)
{
    if (finding->waiver != NULL || finding->signoff != NULL)
        return 0;
    if (finding->outcome == OUTCOME_FAIL && finding->normative == SHALL)
        return 1;
    return finding_is_unsettled(finding) ? 2 : 0;
}

int exit_code(const struct findings *findings, const struct problems *problems,
              bool any_rule_in_force)
{
    static const int of_weight[] = {
        [PROBLEM_COMMAND] = 64, [PROBLEM_OUTPUT] = 74, [PROBLEM_MEMORY] = 70,
        [PROBLEM_INPUT] = 3,    [PROBLEM_RULE] = 4,    [PROBLEM_NOTE] = 0};
    int code = any_rule_in_force ? 0 : 3;
    if (problems->dropped > 0)
        code = exit_code_first(code, NO_MEMORY);
    for (size_t i = 0; i < problems->count; i++)
        code = exit_code_first(code, of_weight[problems->items[i].weight]);
    for (size_t i = 0; findings != NULL && i < findings->count; i++) {
        int one = code_of_finding(findings->items[i]);
        code = one != 0 ? exit_code_first(code, one) : code;
    }
    return code;
}

bool any_rule_holds(const struct rulebook *rulebook)
{
    for (size_t i = 0; rulebook != NULL && i < rulebook->rule_count; i++)
        if (rulebook->rules[i].holds)
            return true;
    return false;
}
