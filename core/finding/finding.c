#include "finding.h"

#include <string.h>

struct test *test_add(struct test **tests, size_t *count, size_t *capacity, struct arena *arena)
{
    struct test *items = arena_grow(arena, *tests, *count, capacity, sizeof *items);
    if (items == NULL)
        return NULL;
    *tests = items;
    items[*count] = (struct test){.outcome = OUTCOME_OPEN};
    return &items[(*count)++];
}

struct finding *finding_add(struct findings *findings)
{
    struct finding **items = arena_grow(findings->arena, findings->items, findings->count,
                                        &findings->capacity, sizeof(struct finding *));
    struct finding *finding = items != NULL ? arena_take(findings->arena, sizeof *finding) : NULL;
    if (items != NULL)
        findings->items = items;
    if (finding == NULL)
        return NULL;
    finding->outcome = OUTCOME_OPEN; /* until its tests say otherwise */
    items[findings->count++] = finding;
    return finding;
}

struct input *findings_add_input(struct findings *findings)
{
    const struct input **inputs =
        arena_grow(findings->arena, findings->inputs, findings->input_count,
                   &findings->input_capacity, sizeof *inputs);
    struct input *input = inputs != NULL ? arena_take(findings->arena, sizeof *input) : NULL;
    if (inputs != NULL)
        findings->inputs = inputs;
    if (input != NULL) {
        input->number = findings->input_count;
        inputs[findings->input_count++] = input;
    }
    return input;
}

const char *input_name(const struct input *input, struct arena *arena)
{
    const char *kind = input->kind, *thing = input->thing, *fact = input->fact;
    return ARENA_JOIN(arena, kind != NULL ? kind : "", kind != NULL ? " " : "",
                      thing != NULL ? thing : "", thing != NULL && fact != NULL ? ": " : "",
                      fact != NULL ? fact : "");
}

const char *input_names(const struct input *input, size_t count, struct arena *arena)
{
    if (count == 1 || input->kind == NULL || input->fact == NULL)
        return input_name(input, arena);
    return arena_format(arena, "%s %s and %zu more: %s", input->kind, input->thing, count - 1,
                        input->fact);
}

const char *finding_fingerprint(const struct finding *finding, struct arena *arena)
{
    return arena_format(arena, "%s|%s:%s", finding->rule->id, finding->about_kind,
                        finding->about_name);
}

struct finding_counts findings_count(const struct findings *findings)
{
    struct finding_counts counts = {{0}, 0, 0, 0};
    for (size_t i = 0; i < findings->count; i++) {
        const struct finding *finding = findings->items[i];
        counts.of[finding->outcome]++;
        counts.signed_off += finding->signoff != NULL;
        if (finding->outcome != OUTCOME_FAIL)
            continue;
        if (finding->waiver != NULL)
            counts.waived++;
        else if (finding->normative == SHOULD)
            counts.failing_should++;
    }
    return counts;
}

static int compare_sizes(size_t a, size_t b)
{
    return a < b ? -1 : a > b;
}

static int compare_findings(const struct finding *a, const struct finding *b)
{
    int order = compare_sizes(a->order, b->order);
    if (order == 0)
        order = compare_sizes(a->place.line, b->place.line);
    if (order == 0)
        order = compare_sizes(a->place.column, b->place.column);
    return order;
}

/* By insertion: the judge adds findings nearly in order, and equals must keep theirs. */
void findings_sort(struct findings *findings)
{
    for (size_t i = 1; i < findings->count; i++) {
        struct finding *moved = findings->items[i];
        size_t at = i;
        for (; at > 0 && compare_findings(findings->items[at - 1], moved) > 0; at--)
            findings->items[at] = findings->items[at - 1];
        findings->items[at] = moved;
    }
}

/* Options that another option makes good count no more. */
static bool any_unsettled(const struct test *tests, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (tests[i].outcome == OUTCOME_OPEN || tests[i].outcome == OUTCOME_REVIEW)
            return true;
    return false;
}

bool finding_is_unsettled(const struct finding *finding)
{
    return finding->outcome == OUTCOME_OPEN || finding->outcome == OUTCOME_REVIEW ||
           any_unsettled(finding->tests, finding->test_count);
}
