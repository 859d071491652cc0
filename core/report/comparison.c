#include "comparison.h"

const char *standing_name(enum standing standing)
{
    static const char *const names[STANDING_COUNT] = {[STANDING_NONE] = "none",
                                                      [STANDING_FAIL] = "fail",
                                                      [STANDING_ADVICE] = "advice",
                                                      [STANDING_WAIVED] = "waived",
                                                      [STANDING_OPEN] = "open",
                                                      [STANDING_REVIEW] = "review",
                                                      [STANDING_SIGNED] = "signed",
                                                      [STANDING_PASS] = "pass",
                                                      [STANDING_INFORMATIONAL] = "informational",
                                                      [STANDING_NOT_APPLICABLE] = "notApplicable"};
    return names[standing];
}

const char *rule_change_name(enum rule_change change)
{
    static const char *const names[] = {
        [RULE_ADDED] = "added",     [RULE_RESTORED] = "restored",   [RULE_GONE] = "gone",
        [RULE_DELETED] = "deleted", [RULE_REWRITTEN] = "rewritten", [RULE_CITED] = "cited anew"};
    return names[change];
}

const char *tightening_name(enum tightening tightening)
{
    return tightening == TIGHTENED ? "stricter" : tightening == LOOSENED ? "looser" : NULL;
}

struct comparison_counts comparison_count(const struct comparison *comparison)
{
    struct comparison_counts sum = {0};
    for (size_t i = 0; i < comparison->design_count; i++) {
        const struct comparison_counts *one = &comparison->designs[i].counts;
        sum.paired += one->paired;
        sum.newly_fail += one->newly_fail;
        sum.no_longer_fail += one->no_longer_fail;
        sum.newly_open += one->newly_open;
        sum.newly_for_person += one->newly_for_person;
        sum.added += one->added;
        sum.gone += one->gone;
        sum.other_numbers += one->other_numbers;
    }
    return sum;
}

int comparison_code(const struct comparison *comparison)
{
    struct comparison_counts counts = comparison_count(comparison);
    return counts.newly_fail > 0 ? 1 : counts.newly_open + counts.newly_for_person > 0 ? 2 : 0;
}
