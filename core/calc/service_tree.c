/* The tree of panels, read downwards from a bus, a panel, a breaker or a feeder. */
#include "service_tree.h"

#include "service_walk.h"

#include <stdio.h>
#include <string.h>

enum panel_state { UNSEEN, ON_PATH, DONE };

struct walk {
    struct working *working;
    struct source_list *found;
    unsigned char *panel_states;             /* by ordinal */
    const struct object *chain[CHAIN_LIMIT]; /* panels on the way down */
    size_t depth;
};

static bool walk_thing(struct walk *walk, const struct object *thing)
{
    bool counts;
    if (!does_count(&counts, thing, walk->working))
        return false;
    return !counts || add_source(walk->found, thing, walk->working);
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
    return working_beyond(walk->working, "panel %s feeds itself: %s%s", panel->path, names,
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
        !find_taps(walk->found, NULL, panel, walk->working))
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
    if (!is_here)
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
    struct source_list tapped = {NULL, 0, 0};
    bool has_no_main;
    if (!find_taps(&tapped, NULL, panel, walk->working))
        return false;
    if (tapped.count == 0)
        return true;
    if (!need_yesno(&has_no_main, panel, SLOT_panel_main_lugs_only, walk->working))
        return false;
    for (size_t i = 0; has_no_main && i < tapped.count; i++)
        if (!add_source(walk->found, tapped.items[i], walk->working))
            return false;
    return true;
}

bool find_sources_of_bus(struct source_list *out, const struct object *bus, struct working *working)
{
    struct walk walk;
    bool is_new;
    return walk_open(&walk, out, working) && check_all_told(working) &&
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
    if (!walk_open(&walk, out, working) || !check_all_told(working) ||
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
    return walk_open(&walk, out, working) && check_all_told(working) &&
           enter(&is_new, &walk, breaker->parent->parent) && walk_breaker(&walk, breaker);
}

bool find_sources_of_feeder(struct source_list *out, const struct object *circuit,
                            struct working *working)
{
    struct walk walk;
    struct object *const *things;
    size_t count;
    const struct objects *panels = &working->design->of_kind[KIND_panel];
    if (!walk_open(&walk, out, working) || !check_all_told(working) ||
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
    return find_taps(out, circuit, NULL, working);
}

bool find_sources_of_service(struct source_list *out, struct working *working)
{
    static const enum kind_id kinds[] = {KIND_inverter, KIND_branch, KIND_source};
    struct walk walk;
    if (!walk_open(&walk, out, working) || !check_all_told(working))
        return false;
    for (size_t k = 0; k < sizeof kinds / sizeof kinds[0]; k++) {
        const struct objects *all = &working->design->of_kind[kinds[k]];
        for (size_t i = 0; i < all->count; i++)
            if (!walk_thing(&walk, all->items[i]))
                return false;
    }
    return true;
}
