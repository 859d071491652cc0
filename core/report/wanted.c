#include "wanted.h"

#include "index.h"

enum { OPEN_FEW = 10, SHOWN_MOST = 10, WAIT_LEAST = 2 };

struct collecting {
    struct index by_fact;
    struct wanted **items;
    size_t count, capacity;
    struct arena *arena;
};

static struct wanted *wanted_of(struct collecting *collecting, const struct missing *missing)
{
    struct wanted *wanted = index_find(&collecting->by_fact, missing->fact);
    if (wanted != NULL)
        return wanted;
    struct wanted **items = arena_grow(collecting->arena, collecting->items, collecting->count,
                                       &collecting->capacity, sizeof *items);
    wanted = arena_take(collecting->arena, sizeof *wanted);
    if (items == NULL || wanted == NULL || !index_add(&collecting->by_fact, missing->fact, wanted))
        return NULL;
    collecting->items = items;
    items[collecting->count++] = wanted;
    wanted->missing = missing;
    return wanted;
}

static bool collect(struct collecting *collecting, const struct finding *finding,
                    const struct test *tests, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        const struct test *test = &tests[i];
        for (size_t k = 0; k < test->option_count; k++)
            if (!collect(collecting, finding, test->options[k].tests, test->options[k].test_count))
                return false;
        if (test->relation != RELATION_MISSING || test->missing.fact == NULL)
            continue;
        struct wanted *wanted = wanted_of(collecting, &test->missing);
        if (wanted == NULL)
            return false;
        wanted->findings += wanted->last != finding;
        wanted->last = finding;
    }
    return true;
}

/* The one that most wait for, the first of equals, and not shown yet. NULL: none is left. */
static struct wanted *most_of(const struct collecting *collecting)
{
    struct wanted *most = NULL;
    for (size_t i = 0; i < collecting->count; i++) {
        struct wanted *one = collecting->items[i];
        if (one->findings >= WAIT_LEAST && (most == NULL || one->findings > most->findings))
            most = one;
    }
    return most;
}

bool wanted_collect(struct wanted **out, size_t *count, const struct findings *findings,
                    struct arena *arena)
{
    struct collecting collecting = {.by_fact = {.arena = arena}, .arena = arena};
    struct wanted *one;
    *out = NULL;
    *count = 0;
    if (findings_count(findings).of[OUTCOME_OPEN] <= OPEN_FEW)
        return true;
    for (size_t i = 0; i < findings->count; i++) {
        const struct finding *finding = findings->items[i];
        if (finding->outcome == OUTCOME_OPEN &&
            !collect(&collecting, finding, finding->tests, finding->test_count))
            return false;
    }
    *out = arena_take(arena, SHOWN_MOST * sizeof **out);
    if (*out == NULL)
        return false;
    for (; *count < SHOWN_MOST && (one = most_of(&collecting)) != NULL; one->findings = 0)
        (*out)[(*count)++] = *one;
    return true;
}

const char *wanted_text(const struct findings *findings, struct arena *arena)
{
    return arena_format(
        arena,
        "%zu findings are open. These are the facts that most of them wait for, with how many do; "
        "what then goes on may ask for more. A sheet with every fact of every thing, and what may "
        "stand there, is laid out by: plumbrule new design NAME",
        findings_count(findings).of[OUTCOME_OPEN]);
}
