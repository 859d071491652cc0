/* One pair judged: by the house's comparison, with its margin. */
#include "finding.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static bool refuse(struct quantity_fault *fault, const char *code, const char *message)
{
    fault->code = code;
    fault->offset = 0;
    snprintf(fault->message, sizeof fault->message, "%s", message);
    return false;
}

static const char *type_name(enum amount_type type)
{
    static const char *const names[] = {
        [AMOUNT_NONE] = "nothing",    [AMOUNT_QUANTITY] = "a quantity",
        [AMOUNT_NUMBER] = "a number", [AMOUNT_YESNO] = "a yes or no",
        [AMOUNT_WORD] = "a word",     [AMOUNT_DATE] = "a date"};
    return names[type];
}

static bool refuse_types(struct quantity_fault *fault, const struct test *test)
{
    fault->code = "dimension";
    fault->offset = 0;
    snprintf(fault->message, sizeof fault->message, "%s cannot be compared with %s here",
             type_name(test->actual.type), type_name(test->limit.type));
    return false;
}

static bool are_same(const struct amount *a, const struct amount *b)
{
    return a->type == AMOUNT_WORD ? strcmp(a->word, b->word) == 0 : a->yes == b->yes;
}

/* -1, 0, 1, as actual stands to limit. */
static bool compare(int *out, const struct test *test, struct quantity_fault *fault)
{
    const struct amount *a = &test->actual, *b = &test->limit;
    if (a->type != b->type)
        return refuse_types(fault, test);
    switch (a->type) {
    case AMOUNT_QUANTITY:
        if (!isfinite(a->quantity.value) || !isfinite(b->quantity.value))
            return refuse(fault, "not-finite", "what is compared must be finite");
        return quantity_compare(out, a->quantity, b->quantity, fault);
    case AMOUNT_NUMBER:
        if (!isfinite(a->quantity.value) || !isfinite(b->quantity.value))
            return refuse(fault, "not-finite", "what is compared must be finite");
        *out = number_compare(a->quantity.value, b->quantity.value);
        return true;
    case AMOUNT_DATE:
        *out = date_compare(a->date, b->date);
        return true;
    case AMOUNT_WORD:
    case AMOUNT_YESNO:
        if (test->relation != RELATION_EQUAL)
            return refuse(fault, "dimension", "words and yes/no have no larger and smaller");
        *out = are_same(a, b) ? 0 : 1;
        return true;
    default:
        return refuse_types(fault, test);
    }
}

static bool holds(enum relation relation, int order)
{
    switch (relation) {
    case RELATION_NOT_EXCEED:
        return order <= 0;
    case RELATION_AT_LEAST:
        return order >= 0;
    case RELATION_LESS_THAN:
        return order < 0;
    case RELATION_MORE_THAN:
        return order > 0;
    default:
        return order == 0;
    }
}

/* Where a share of the limit means something: not of 0, a point on a temperature scale, a date, a
 * word, a yes/no; nor for what holds because it is the same. */
static void set_margin(struct test *test, int order)
{
    double actual = test->actual.quantity.value, limit = test->limit.quantity.value;
    test->has_margin = false;
    test->margin = 0;
    if (test->actual.type != AMOUNT_QUANTITY && test->actual.type != AMOUNT_NUMBER)
        return;
    if (limit == 0 || test->limit.quantity.dimension.is_point ||
        (test->relation == RELATION_EQUAL && order == 0))
        return;
    double inside = test->relation == RELATION_EQUAL ? -fabs(actual - limit)
                    : test->relation == RELATION_AT_LEAST || test->relation == RELATION_MORE_THAN
                        ? actual - limit
                        : limit - actual;
    double margin = order == 0 ? 0 : inside / fabs(limit);
    test->has_margin = isfinite(margin);
    test->margin = test->has_margin ? margin : 0;
}

bool test_judge(struct test *test, struct quantity_fault *fault)
{
    int order = 0;
    test->has_margin = false;
    if (test->relation == RELATION_BE) {
        if (test->actual.type != AMOUNT_YESNO)
            return refuse(fault, "dimension", "a yes or no is needed here");
        test->outcome = test->actual.yes ? OUTCOME_PASS : OUTCOME_FAIL;
        return true;
    }
    if (test->relation > RELATION_BE)
        return refuse(fault, "dimension", "this is nothing to compare");
    if (!compare(&order, test, fault))
        return false;
    test->outcome = holds(test->relation, order) ? OUTCOME_PASS : OUTCOME_FAIL;
    set_margin(test, order);
    return true;
}
