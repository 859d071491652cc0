/* Findings are paired by rule and thing. */
#include "comparing.h"

#include <assert.h>
#include <string.h>

static enum standing standing_of(const struct finding *finding)
{
    if (finding == NULL)
        return STANDING_NONE;
    switch (finding->outcome) {
    case OUTCOME_FAIL:
        return finding->waiver != NULL        ? STANDING_WAIVED
               : finding->normative == SHOULD ? STANDING_ADVICE
                                              : STANDING_FAIL;
    case OUTCOME_OPEN:
        return STANDING_OPEN;
    case OUTCOME_REVIEW:
        return finding->signoff != NULL ? STANDING_SIGNED : STANDING_REVIEW;
    case OUTCOME_PASS:
        return STANDING_PASS;
    case OUTCOME_INFORMATIONAL:
        return STANDING_INFORMATIONAL;
    default:
        return STANDING_NOT_APPLICABLE;
    }
}

/* Rule and thing, and a number where they say it again. NULL: no memory. */
static const char *key_of(const struct finding *finding, const struct index *index,
                          struct arena *arena)
{
    const char *print = finding_fingerprint(finding, arena), *key = print;
    for (size_t again = 2; key != NULL && index_find(index, key) != NULL; again++)
        key = arena_format(arena, "%s|%zu", print, again);
    return key;
}

static bool index_findings(struct index *index, const struct findings *findings,
                           struct arena *arena)
{
    for (size_t i = 0; i < findings->count; i++) {
        const char *key = key_of(findings->items[i], index, arena);
        if (key == NULL || !index_add(index, key, findings->items[i]))
            return false;
    }
    return true;
}

static void count(struct comparison_counts *counts, enum standing was, enum standing is,
                  bool is_same_message)
{
    counts->paired += was != STANDING_NONE && is != STANDING_NONE;
    counts->added += was == STANDING_NONE;
    counts->gone += is == STANDING_NONE;
    counts->newly_fail += is == STANDING_FAIL && was != STANDING_FAIL;
    counts->no_longer_fail += was == STANDING_FAIL && is != STANDING_FAIL;
    counts->newly_open += is == STANDING_OPEN && was != STANDING_OPEN;
    counts->newly_for_person += is == STANDING_REVIEW && was != STANDING_REVIEW;
    counts->other_numbers += was == is && !is_same_message;
}

static const char *about_of(const struct finding *finding, struct arena *arena)
{
    return strcmp(finding->about_kind, finding->about_name) == 0
               ? arena_format(arena, "%s", finding->about_kind)
               : arena_format(arena, "%s %s", finding->about_kind, finding->about_name);
}

/* One pair; either may be NULL. Only what changed is kept. */
static bool add_pair(struct compared_design *design, struct comparing *comparing,
                     const struct finding *was, const struct finding *is)
{
    const struct finding *one = is != NULL ? is : was;
    assert(one != NULL);
    enum standing before = standing_of(was), after = standing_of(is);
    count(&design->counts, before, after,
          was == NULL || is == NULL || strcmp(was->message, is->message) == 0);
    if (before == after)
        return true;
    struct compared_finding *items =
        arena_grow(comparing->arena, design->findings, design->finding_count,
                   &design->finding_capacity, sizeof *items);
    if (items == NULL)
        return false;
    design->findings = items;
    items[design->finding_count++] =
        (struct compared_finding){compare_keep(comparing, one->rule->id),
                                  compare_keep(comparing, one->title),
                                  about_of(one, comparing->arena),
                                  before,
                                  after,
                                  was != NULL ? compare_keep(comparing, was->message) : NULL,
                                  is != NULL ? compare_keep(comparing, is->message) : NULL,
                                  compare_keep_place(comparing, one->place)};
    return true;
}

bool compare_findings(struct compared_design *design, struct comparing *comparing,
                      const struct findings *was, const struct findings *is)
{
    struct arena *arena = is->arena; /* keys live as long as the reviews */
    struct index before = {.arena = arena}, after = {.arena = arena};
    if (!index_findings(&before, was, arena))
        return false;
    for (size_t i = 0; i < is->count; i++) {
        const char *key = key_of(is->items[i], &after, arena);
        if (key == NULL || !index_add(&after, key, is->items[i]) ||
            !add_pair(design, comparing, index_find(&before, key), is->items[i]))
            return false;
    }
    struct index again = {.arena = arena};
    for (size_t i = 0; i < was->count; i++) {
        const char *key = key_of(was->items[i], &again, arena);
        if (key == NULL || !index_add(&again, key, was->items[i]) ||
            (index_find(&after, key) == NULL && !add_pair(design, comparing, was->items[i], NULL)))
            return false;
    }
    return true;
}
