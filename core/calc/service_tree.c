#include "service_tree.h"

#include <stdio.h>
#include <string.h>

/* A chain of panels longer than any building's: deeper ones are left to a person. */
enum { CHAIN_LIMIT = 64 };
enum panel_state { UNSEEN, ON_PATH, DONE };

struct walk {
    struct working *working;
    struct source_list *found;
    unsigned char *panel_states;             /* by ordinal */
    const struct object *chain[CHAIN_LIMIT]; /* panels on the way down */
    size_t depth;
};

bool is_removed(const struct object *thing, unsigned status_slot, struct working *working)
{
    working_read(working, thing, status_slot);
    return object_is(thing, status_slot, "removed");
}

bool need_amperes_of(double *amperes, const struct object *object, unsigned slot,
                     struct working *working)
{
    struct quantity current;
    if (!need_quantity(&current, object, slot, working))
        return false;
    *amperes = quantity_as(current, "A");
    return true;
}

static bool add_source(struct source_list *list, const struct object *thing,
                       struct working *working)
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

/* Another source counts unless it is known that it cannot run beside the utility. Either fact
 * settles it alone where it says so; else it must be told that it can run in parallel. */
static bool does_source_count(bool *counts, const struct object *source, struct working *working)
{
    working_read(working, source, SLOT_source_parallel);
    working_read(working, source, SLOT_source_interlocked);
    const struct fact *parallel = object_fact(source, SLOT_source_parallel);
    const struct fact *interlocked = object_fact(source, SLOT_source_interlocked);
    bool knows_parallel = object_has(source, SLOT_source_parallel);
    *counts = false;
    if ((knows_parallel && !parallel->is.yes) ||
        (object_has(source, SLOT_source_interlocked) && interlocked->is.yes)) {
        working_step(working, "NEC 705.12, 702",
                     "source %s cannot run in parallel with the utility: not counted",
                     source->path);
        return true;
    }
    *counts = true;
    return knows_parallel || working_missing(working, source, SLOT_source_parallel);
}

static bool does_count(bool *counts, const struct object *thing, struct working *working)
{
    if (thing->kind->id == KIND_source)
        return does_source_count(counts, thing, working);
    *counts = thing->kind->id != KIND_inverter || !is_removed(thing, SLOT_inverter_status, working);
    return true;
}

static bool walk_thing(struct walk *walk, const struct object *thing)
{
    bool counts;
    if (!does_count(&counts, thing, walk->working))
        return false;
    return !counts || add_source(walk->found, thing, walk->working);
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
static bool is_feeder_of(const struct object *circuit, const struct object *panel)
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

/* A thing on no breaker must have another way to the utility, or the tree is not told in full. */
static bool check_loose(const struct object *thing, struct working *working)
{
    const char *side;
    const struct object *at;
    if (thing->kind->id == KIND_source)
        return working_missing(working, thing, breakers_slot(thing));
    if (!find_side(&side, &at, working))
        return false;
    if (strcmp(side, "load side") == 0)
        return working_missing(working, thing, breakers_slot(thing));
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

typedef bool on_loose(struct walk *walk, const struct object *thing);

/* Calls `then` for each thing of a kind that counts and is on no breaker. */
static bool each_loose(struct walk *walk, enum kind_id kind, on_loose *then)
{
    const struct objects *all = &walk->working->design->of_kind[kind];
    for (size_t i = 0; i < all->count; i++) {
        bool is_on, counts;
        if (!is_on_breaker(&is_on, all->items[i], walk->working))
            return false;
        if (is_on)
            continue;
        if (!does_count(&counts, all->items[i], walk->working))
            return false;
        if (counts && !then(walk, all->items[i]))
            return false;
    }
    return true;
}

static bool check_one_loose(struct walk *walk, const struct object *thing)
{
    return check_loose(thing, walk->working);
}

static bool add_one_loose(struct walk *walk, const struct object *thing)
{
    return add_source(walk->found, thing, walk->working);
}

/* The array is told by its inverters or its branches; other sources must be told, if only as none.
 */
static bool check_all_told(struct walk *walk)
{
    const struct design *design = walk->working->design;
    if (design->untold[KIND_source].object != NULL)
        return working_missing(walk->working, design->untold[KIND_source].object,
                               design->untold[KIND_source].slot);
    if (design->untold[KIND_inverter].object != NULL && design->untold[KIND_branch].object != NULL)
        return working_missing(walk->working, design->untold[KIND_inverter].object,
                               design->untold[KIND_inverter].slot);
    return each_loose(walk, KIND_inverter, check_one_loose) &&
           each_loose(walk, KIND_branch, check_one_loose) &&
           each_loose(walk, KIND_source, check_one_loose);
}

/* Adds what taps this feeder, or (`circuit` NULL) any feeder of this panel. */
static bool walk_taps(struct walk *walk, const struct object *circuit, const struct object *panel)
{
    const struct fact *interconnection =
        object_fact(walk->working->design->root, SLOT_design_interconnection);
    const char *side;
    const struct object *at;
    /* Where it is not told, check_all_told has asked if anything depends on it. */
    if (interconnection->state != FACT_GIVEN ||
        !object_is(interconnection->is.object, SLOT_interconnection_side, "feeder"))
        return true;
    if (!find_side(&side, &at, walk->working))
        return false;
    if (at == NULL || at->kind->id != KIND_circuit ||
        (circuit != NULL ? at != circuit : !is_feeder_of(at, panel)))
        return true;
    return each_loose(walk, KIND_inverter, add_one_loose) &&
           each_loose(walk, KIND_branch, add_one_loose);
}

/* Down the tree */

static bool walk_bus(struct walk *walk, const struct object *bus);

static bool report_cycle(struct walk *walk, const struct object *panel)
{
    char names[300] = "";
    size_t length = 0, from = 0;
    while (from < walk->depth && walk->chain[from] != panel)
        from++;
    for (size_t i = from; i < walk->depth && length < sizeof names; i++)
        length += (size_t)snprintf(names + length, sizeof names - length, "%s, which feeds ",
                                   walk->chain[i]->path);
    return working_wrong(walk->working, NULL, "panel %s feeds itself: %s%s", panel->path, names,
                         panel->path);
}

/* Enters a panel: false in *is_new where it has been walked before. */
static bool enter(bool *is_new, struct walk *walk, const struct object *panel)
{
    unsigned char *state = &walk->panel_states[panel->ordinal];
    *is_new = *state == UNSEEN;
    if (*state == ON_PATH)
        return report_cycle(walk, panel);
    if (!*is_new)
        return true;
    if (walk->depth == CHAIN_LIMIT)
        return working_beyond(walk->working, "panel %s is more than %d panels down the chain",
                              panel->path, (int)CHAIN_LIMIT);
    *state = ON_PATH;
    walk->chain[walk->depth++] = panel;
    return true;
}

static void leave(struct walk *walk, const struct object *panel)
{
    walk->panel_states[panel->ordinal] = DONE;
    walk->depth--;
}

static bool walk_panel(struct walk *walk, const struct object *panel)
{
    struct object *const *buses;
    size_t count;
    bool is_new;
    if (is_removed(panel, SLOT_panel_status, walk->working))
        return true;
    if (!enter(&is_new, walk, panel))
        return false;
    if (!is_new)
        return true;
    if (!need_objects(&buses, &count, panel, SLOT_panel_busbars, walk->working) ||
        !walk_taps(walk, NULL, panel))
        return false;
    for (size_t i = 0; i < count; i++)
        if (!walk_bus(walk, buses[i]))
            return false;
    leave(walk, panel);
    return true;
}

static bool check_feed(const struct object *panel, const struct object *breaker,
                       struct working *working)
{
    const struct fact *fed_from = object_fact(panel, SLOT_panel_fed_from);
    const struct object *bus = breaker->parent;
    working_read(working, panel, SLOT_panel_fed_from);
    if (fed_from->state != FACT_GIVEN || fed_from->is.object == bus ||
        fed_from->is.object == bus->parent)
        return true;
    return working_beyond(working,
                          "breaker %s serves panel %s, which says that it is fed from %s: one of "
                          "the two is not so",
                          breaker->path, panel->path, fed_from->is.object->path);
}

static bool walk_breaker(struct walk *walk, const struct object *breaker)
{
    const char *duty;
    const struct object *serves;
    struct working *working = walk->working;
    if (is_removed(breaker, SLOT_breaker_status, working))
        return true;
    if (!need_word(&duty, breaker, SLOT_breaker_duty, working) ||
        !need_object(&serves, breaker, SLOT_breaker_serves, working))
        return false;
    if (serves == NULL)
        return strcmp(duty, "source") != 0 ||
               working_missing(working, breaker, SLOT_breaker_serves);
    if (strcmp(duty, "main") == 0 || strcmp(duty, "spare") == 0)
        return working_beyond(working, "breaker %s is a %s one and yet serves %s %s", breaker->path,
                              duty, serves->kind->name, serves->path);
    if (serves->kind->id != KIND_panel)
        return walk_thing(walk, serves);
    return check_feed(serves, breaker, working) && walk_panel(walk, serves);
}

static bool has_standing_breaker(const struct object *panel)
{
    const struct fact *breakers = object_fact(panel, SLOT_panel_breakers);
    for (size_t i = 0; breakers->state == FACT_GIVEN && i < breakers->count; i++)
        if (!object_is(breakers->is.objects[i], SLOT_breaker_status, "removed"))
            return true;
    return false;
}

/* Could this panel, whose feed is not told, hang on a bus? Not the service panel, nor one that a
 * breaker serves or that has been met on the way. */
static bool may_hang_anywhere(const struct walk *walk, const struct object *panel)
{
    return walk->panel_states[panel->ordinal] == UNSEEN &&
           object_fact(panel, SLOT_panel_fed_from)->state == FACT_MISSING &&
           !(object_has(panel, SLOT_panel_is_service_panel) &&
             object_fact(panel, SLOT_panel_is_service_panel)->is.yes) &&
           !has_standing_breaker(panel);
}

static bool is_above(const struct object *above, const struct object *panel);

/* A panel that says it is fed from here, though no breaker here serves it: over lugs. */
static bool walk_lugs(struct walk *walk, const struct object *bus, const struct object *panel)
{
    const struct fact *fed_from = object_fact(panel, SLOT_panel_fed_from);
    struct working *working = walk->working;
    bool is_here = fed_from->state == FACT_GIVEN &&
                   (fed_from->is.object == bus || fed_from->is.object == bus->parent);
    if (object_is(panel, SLOT_panel_status, "removed"))
        return true;
    if (panel == bus->parent)
        return !is_here || report_cycle(walk, panel);
    if (may_hang_anywhere(walk, panel) && !is_above(panel, bus->parent))
        return working_missing(working, panel, SLOT_panel_fed_from);
    if (!is_here || walk->panel_states[panel->ordinal] == DONE)
        return true;
    working_read(working, panel, SLOT_panel_fed_from);
    if (has_standing_breaker(panel))
        return true; /* a breaker of another bus of this panel serves it, or check_feed tells */
    if (fed_from->is.object != bus && object_fact(bus->parent, SLOT_panel_busbars)->count > 1)
        return working_beyond(working,
                              "panel %s is fed from panel %s, which has several buses, and no "
                              "breaker tells from which",
                              panel->path, bus->parent->path);
    working_step(working, NULL, "panel %s is fed from bus %s without a breaker", panel->path,
                 bus->path);
    return walk_panel(walk, panel);
}

static bool walk_bus(struct walk *walk, const struct object *bus)
{
    struct object *const *breakers;
    size_t count;
    const struct objects *panels = &walk->working->design->of_kind[KIND_panel];
    if (!need_objects(&breakers, &count, bus, SLOT_busbar_breakers, walk->working))
        return false;
    for (size_t i = 0; i < count; i++)
        if (!walk_breaker(walk, breakers[i]))
            return false;
    for (size_t i = 0; i < panels->count; i++)
        if (!walk_lugs(walk, bus, panels->items[i]))
            return false;
    return true;
}

static bool walk_open(struct walk *walk, struct source_list *out, struct working *working)
{
    size_t panels = working->design->of_kind[KIND_panel].count;
    *out = (struct source_list){NULL, 0, 0};
    walk->working = working;
    walk->found = out;
    walk->depth = 0;
    walk->panel_states = arena_take(working->arena, panels + 1);
    if (walk->panel_states == NULL)
        return working_short(working);
    memset(walk->panel_states, UNSEEN, panels + 1);
    return true;
}

/* A feeder's tap lies before the panel's main: only where the panel has none does it reach its bus
 * besides what the feeder's own device lets through. */
static bool walk_taps_above(struct walk *walk, const struct object *panel)
{
    struct source_list tapped = {NULL, 0, 0}, *found = walk->found;
    bool has_no_main;
    walk->found = &tapped;
    bool done = walk_taps(walk, NULL, panel);
    walk->found = found;
    if (!done || tapped.count == 0)
        return done;
    if (!need_yesno(&has_no_main, panel, SLOT_panel_main_lugs_only, walk->working))
        return false;
    for (size_t i = 0; has_no_main && i < tapped.count; i++)
        if (!add_source(found, tapped.items[i], walk->working))
            return false;
    return true;
}

bool find_sources_of_bus(struct source_list *out, const struct object *bus, struct working *working)
{
    struct walk walk;
    bool is_new;
    return walk_open(&walk, out, working) && check_all_told(&walk) &&
           enter(&is_new, &walk, bus->parent) && walk_taps_above(&walk, bus->parent) &&
           walk_bus(&walk, bus);
}

bool find_sources_of_panel(struct source_list *out, const struct object *panel,
                           struct working *working)
{
    struct walk walk;
    struct object *const *buses;
    size_t count;
    bool is_new;
    if (!walk_open(&walk, out, working) || !check_all_told(&walk) ||
        !enter(&is_new, &walk, panel) || !walk_taps_above(&walk, panel) ||
        !need_objects(&buses, &count, panel, SLOT_panel_busbars, working))
        return false;
    for (size_t i = 0; i < count; i++)
        if (!walk_bus(&walk, buses[i]))
            return false;
    return true;
}

bool find_sources_of_breaker(struct source_list *out, const struct object *breaker,
                             struct working *working)
{
    struct walk walk;
    bool is_new;
    return walk_open(&walk, out, working) && check_all_told(&walk) &&
           enter(&is_new, &walk, breaker->parent->parent) && walk_breaker(&walk, breaker);
}

bool find_sources_of_feeder(struct source_list *out, const struct object *circuit,
                            struct working *working)
{
    struct walk walk;
    struct object *const *things;
    size_t count;
    const struct objects *panels = &working->design->of_kind[KIND_panel];
    if (!walk_open(&walk, out, working) || !check_all_told(&walk) ||
        !need_objects(&things, &count, circuit, SLOT_circuit_carries, working))
        return false;
    for (size_t i = 0; i < count; i++) {
        enum kind_id kind = things[i]->kind->id;
        if (kind == KIND_panel
                ? !walk_panel(&walk, things[i])
                : (kind == KIND_inverter || kind == KIND_branch || kind == KIND_source) &&
                      !walk_thing(&walk, things[i]))
            return false;
    }
    for (size_t i = 0; i < panels->count; i++)
        if (is_feeder_of(circuit, panels->items[i]) && !walk_panel(&walk, panels->items[i]))
            return false;
    return walk_taps(&walk, circuit, NULL);
}

bool find_sources_of_service(struct source_list *out, struct working *working)
{
    static const enum kind_id kinds[] = {KIND_inverter, KIND_branch, KIND_source};
    struct walk walk;
    if (!walk_open(&walk, out, working) || !check_all_told(&walk))
        return false;
    for (size_t k = 0; k < sizeof kinds / sizeof kinds[0]; k++) {
        const struct objects *all = &working->design->of_kind[kinds[k]];
        for (size_t i = 0; i < all->count; i++)
            if (!walk_thing(&walk, all->items[i]))
                return false;
    }
    return true;
}

bool find_source_current(double *amperes, const struct source_list *sources, const char *what,
                         struct working *working)
{
    *amperes = 0;
    for (size_t i = 0; i < sources->count; i++) {
        double one;
        if (!find_output_current(&one, sources->items[i], working))
            return false;
        *amperes += one;
        if (sources->items[i]->kind->id == KIND_source)
            working_step(working, "NEC 705.12", "source %s: rated output %.6g A",
                         sources->items[i]->path, one);
    }
    working_step(working, "NEC 705.12", "%s: %zu source%s, together %.6g A", what, sources->count,
                 sources->count == 1 ? "" : "s", *amperes);
    return true;
}

/* Breakers of a bus */

bool find_bus_breakers(struct bus_breaker **out, size_t *count, const struct object *bus,
                       struct working *working)
{
    struct object *const *breakers;
    size_t all;
    *count = 0;
    if (!need_objects(&breakers, &all, bus, SLOT_busbar_breakers, working))
        return false;
    *out = arena_take(working->arena, (all + 1) * sizeof **out);
    if (*out == NULL)
        return working_short(working);
    for (size_t i = 0; i < all; i++) {
        const char *duty;
        struct source_list behind;
        if (is_removed(breakers[i], SLOT_breaker_status, working))
            continue;
        if (!need_word(&duty, breakers[i], SLOT_breaker_duty, working))
            return false;
        if (strcmp(duty, "main") == 0 || strcmp(duty, "spare") == 0)
            continue;
        if (!find_sources_of_breaker(&behind, breakers[i], working))
            return false;
        (*out)[(*count)++] = (struct bus_breaker){breakers[i], behind.count > 0};
    }
    return true;
}

/* Up the tree */

/* The panel right above, or NULL; by its own word, else by the breaker that serves it. */
static const struct object *panel_above(const struct object *panel)
{
    const struct fact *fed_from = object_fact(panel, SLOT_panel_fed_from);
    const struct fact *breakers = object_fact(panel, SLOT_panel_breakers);
    const struct object *from = NULL;
    if (fed_from->state == FACT_GIVEN)
        from = fed_from->is.object;
    for (size_t i = 0; from == NULL && breakers->state == FACT_GIVEN && i < breakers->count; i++)
        if (!object_is(breakers->is.objects[i], SLOT_breaker_status, "removed"))
            from = breakers->is.objects[i]->parent;
    return from != NULL && from->kind->id == KIND_busbar ? from->parent : from;
}

static bool is_above(const struct object *above, const struct object *panel)
{
    size_t steps = 0;
    while (panel != NULL && panel != above && steps++ < CHAIN_LIMIT)
        panel = panel_above(panel);
    return panel == above;
}

/* Where the way up ends: at the service panel, or at one stated to be fed from nothing. */
static bool check_top(const struct object *panel, struct working *working)
{
    working_read(working, panel, SLOT_panel_is_service_panel);
    working_read(working, panel, SLOT_panel_fed_from);
    return object_fact(panel, SLOT_panel_fed_from)->state == FACT_NONE ||
           (object_has(panel, SLOT_panel_is_service_panel) &&
            object_fact(panel, SLOT_panel_is_service_panel)->is.yes) ||
           working_missing(working, panel, SLOT_panel_fed_from);
}

bool find_path_up(const char **path, size_t *count, const struct object *panel,
                  struct working *working)
{
    const struct object *at = panel;
    const char *names = "";
    *count = 0;
    for (const struct object *next; (next = panel_above(at)) != NULL; at = next) {
        if (next == panel || *count == CHAIN_LIMIT)
            return working_wrong(working, NULL, "panel %s feeds itself: it is fed from %s%s%s",
                                 panel->path, names, *count > 0 ? ", " : "", next->path);
        working_read(working, at, SLOT_panel_fed_from);
        names = arena_format(working->arena, "%s%s%s", names, *count > 0 ? ", " : "", next->path);
        if (names == NULL)
            return working_short(working);
        ++*count;
    }
    *path = names;
    return check_top(at, working);
}
