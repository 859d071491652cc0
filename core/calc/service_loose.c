/* Which sources count, and those that stand on no breaker: on the supply side, or tapping a feeder.
 */
#include "service_walk.h"

#include <string.h>

bool add_source(struct source_list *list, const struct object *thing, struct working *working)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->items[i] == thing)
            return true;
    const struct object **items = arena_grow(working->arena, list->items, list->count,
                                             &list->capacity, sizeof(const struct object *));
    if (items == NULL)
        return working_short(working);
    list->items = items;
    items[list->count++] = thing;
    return true;
}

/* Another source counts unless it is known that it cannot run beside the utility. What is told to
 * run beside it counts, whatever interlock is told besides: storage behind a transfer switch feeds
 * the bus while the utility is there. An interlock alone settles it where nothing else is told. */
static bool does_source_count(bool *counts, const struct object *source, struct working *working)
{
    working_read(working, source, SLOT_source_parallel);
    working_read(working, source, SLOT_source_interlocked);
    bool knows_parallel = object_has(source, SLOT_source_parallel);
    bool is_interlocked = object_has(source, SLOT_source_interlocked) &&
                          object_fact(source, SLOT_source_interlocked)->is.yes;
    *counts = !knows_parallel || object_fact(source, SLOT_source_parallel)->is.yes;
    if (knows_parallel ? !*counts : is_interlocked) {
        *counts = false;
        working_step(working, "NEC 705.12, 702",
                     "source %s cannot run in parallel with the utility: not counted",
                     source->path);
        return true;
    }
    return knows_parallel || working_missing(working, source, SLOT_source_parallel);
}

bool does_count(bool *counts, const struct object *thing, struct working *working)
{
    if (thing->kind->id == KIND_source)
        return does_source_count(counts, thing, working);
    *counts = thing->kind->id != KIND_inverter || !is_removed(thing, SLOT_inverter_status, working);
    return true;
}

/* Taps: an inverter or branch on no breaker, where the interconnection is on a feeder. */

static unsigned breakers_slot(const struct object *thing)
{
    return thing->kind->id == KIND_inverter ? (unsigned)SLOT_inverter_breakers
           : thing->kind->id == KIND_branch ? (unsigned)SLOT_branch_breakers
                                            : (unsigned)SLOT_source_breakers;
}

static bool is_on_breaker(bool *is_on, const struct object *thing, struct working *working)
{
    struct object *const *breakers;
    size_t count;
    *is_on = false;
    if (!need_objects(&breakers, &count, thing, breakers_slot(thing), working))
        return false;
    for (size_t i = 0; i < count; i++)
        *is_on = *is_on || !is_removed(breakers[i], SLOT_breaker_status, working);
    return true;
}

static bool find_side(const char **side, const struct object **at, struct working *working)
{
    const struct object *interconnection;
    if (!need_object(&interconnection, working->design->root, SLOT_design_interconnection, working))
        return false;
    if (interconnection == NULL)
        return working_missing(working, working->design->root, SLOT_design_interconnection);
    if (!need_word(side, interconnection, SLOT_interconnection_side, working))
        return false;
    *at = NULL;
    return strcmp(*side, "feeder") != 0 ||
           need_object(at, interconnection, SLOT_interconnection_at, working);
}

/* Is the circuit a feeder of the panel, as either of them says? */
bool is_feeder_of(const struct object *circuit, const struct object *panel)
{
    const struct fact *carries = object_fact(circuit, SLOT_circuit_carries);
    if (object_fact(panel, SLOT_panel_feeder)->state == FACT_GIVEN &&
        object_fact(panel, SLOT_panel_feeder)->is.object == circuit)
        return true;
    for (size_t i = 0; carries->state == FACT_GIVEN && i < carries->count; i++)
        if (carries->is.objects[i] == panel)
            return true;
    return false;
}

static bool is_any_feeder(const struct object *circuit, const struct design *design)
{
    const struct objects *panels = &design->of_kind[KIND_panel];
    for (size_t i = 0; i < panels->count; i++)
        if (is_feeder_of(circuit, panels->items[i]))
            return true;
    return false;
}

/* The breaker that feeds back but does not say what from, or else the thing that is on none. */
static bool miss_breaker(const struct object *thing, struct working *working)
{
    const struct objects *all = &working->design->of_kind[KIND_breaker];
    for (size_t i = 0; i < all->count; i++)
        if (object_is(all->items[i], SLOT_breaker_duty, "source") &&
            object_fact(all->items[i], SLOT_breaker_serves)->state == FACT_NONE &&
            !is_removed(all->items[i], SLOT_breaker_status, working))
            return working_missing(working, all->items[i], SLOT_breaker_serves);
    return working_missing(working, thing, breakers_slot(thing));
}

/* A thing on no breaker must have another way to the utility, or the tree is not told in full. */
static bool check_loose(const struct object *thing, struct working *working)
{
    const char *side;
    const struct object *at;
    if (thing->kind->id == KIND_source)
        return miss_breaker(thing, working);
    if (!find_side(&side, &at, working))
        return false;
    if (strcmp(side, "load side") == 0)
        return miss_breaker(thing, working);
    if (strcmp(side, "supply side") == 0) {
        working_step(working, "NEC 705.11",
                     "%s %s is behind no breaker: connected on the supply side, it feeds no bus",
                     thing->kind->name, thing->path);
        return true;
    }
    if (at == NULL || at->kind->id != KIND_circuit || !is_any_feeder(at, working->design))
        return working_beyond(working,
                              "the interconnection is on a feeder, but 'at' names no circuit that "
                              "feeds a panel, so it cannot be told which buses %s %s feeds",
                              thing->kind->name, thing->path);
    return true;
}

typedef bool on_loose(struct source_list *found, const struct object *thing,
                      struct working *working);

/* Calls `then` for each thing of a kind that counts and is on no breaker. */
static bool each_loose(struct source_list *found, enum kind_id kind, on_loose *then,
                       struct working *working)
{
    const struct objects *all = &working->design->of_kind[kind];
    for (size_t i = 0; i < all->count; i++) {
        bool is_on, counts;
        if (!is_on_breaker(&is_on, all->items[i], working))
            return false;
        if (is_on)
            continue;
        if (!does_count(&counts, all->items[i], working))
            return false;
        if (counts && !then(found, all->items[i], working))
            return false;
    }
    return true;
}

static bool check_one_loose(struct source_list *found, const struct object *thing,
                            struct working *working)
{
    (void)found;
    return check_loose(thing, working);
}

static bool add_one_loose(struct source_list *found, const struct object *thing,
                          struct working *working)
{
    return add_source(found, thing, working);
}

/* The array is told by its inverters or its branches; other sources must be told, if only as none.
 */
static bool look_at_all(struct working *working)
{
    struct source_list *found = NULL; /* only checked */
    const struct design *design = working->design;
    if (design->untold[KIND_source].object != NULL)
        return working_missing(working, design->untold[KIND_source].object,
                               design->untold[KIND_source].slot);
    if (design->untold[KIND_inverter].object != NULL && design->untold[KIND_branch].object != NULL)
        return working_missing(working, design->untold[KIND_inverter].object,
                               design->untold[KIND_inverter].slot);
    return each_loose(found, KIND_inverter, check_one_loose, working) &&
           each_loose(found, KIND_branch, check_one_loose, working) &&
           each_loose(found, KIND_source, check_one_loose, working);
}

bool check_all_told(struct working *working)
{
    if (working->sources_told != NULL && !working->keeps_steps) {
        working_read_again(working, working->sources_told);
        return true;
    }
    struct trail outer = working_trail_open(working);
    bool is_told = look_at_all(working);
    struct readings *kept =
        is_told && working->is_lasting ? working_trail_keep(working, working->arena) : NULL;
    working_trail_close(working, outer, kept);
    working->sources_told = kept;
    return is_told;
}

/* Adds what taps this feeder, or (`circuit` NULL) any feeder of this panel. */
bool find_taps(struct source_list *found, const struct object *circuit, const struct object *panel,
               struct working *working)
{
    const struct fact *interconnection =
        object_fact(working->design->root, SLOT_design_interconnection);
    const char *side;
    const struct object *at;
    /* Where it is not told, check_all_told has asked if anything depends on it. */
    if (interconnection->state != FACT_GIVEN ||
        !object_is(interconnection->is.object, SLOT_interconnection_side, "feeder"))
        return true;
    if (!find_side(&side, &at, working))
        return false;
    if (at == NULL || at->kind->id != KIND_circuit ||
        (circuit != NULL ? at != circuit : !is_feeder_of(at, panel)))
        return true;
    return each_loose(found, KIND_inverter, add_one_loose, working) &&
           each_loose(found, KIND_branch, add_one_loose, working);
}
