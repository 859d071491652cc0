/* What the service calculators share besides the walk: sums, breakers of a bus, the way up. */
#include "service_walk.h"

#include <string.h>

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

bool is_above(const struct object *above, const struct object *panel)
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
            return working_beyond(working, "panel %s feeds itself: it is fed from %s%s%s",
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
