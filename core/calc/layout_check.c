/* Faults of the geometry itself, told before any rule runs. */
#include "layout_build.h"

#include "layout_check_things.h"

#include <math.h>
#include <string.h>

bool layout_fault_add(struct layout_faults *faults, const struct object *object, unsigned slot,
                      const char *message, const char *example)
{
    struct layout_fault *items =
        arena_grow(faults->arena, faults->items, faults->count, &faults->capacity, sizeof *items);
    if (items == NULL || message == NULL || example == NULL)
        return false;
    faults->items = items;
    items[faults->count++] = (struct layout_fault){object, slot, message, example};
    return true;
}

/* The corner that is given again right after itself, or at the end after the first; count: none. */
static size_t repeated(const struct fact *outline)
{
    for (size_t i = 0; i < outline->count; i++) {
        const struct point *a = &outline->is.points[i],
                           *b = &outline->is.points[(i + 1) % outline->count];
        if (hypot(b->x - a->x, b->y - a->y) <= LAYOUT_SLACK)
            return i;
    }
    return outline->count;
}

static bool is_repeated(const struct object *object, unsigned slot)
{
    const struct fact *outline = object_fact(object, slot);
    return object_has(object, slot) && repeated(outline) < outline->count;
}

static bool check_repeated(struct layout_faults *faults, const struct object *object, unsigned slot)
{
    if (!is_repeated(object, slot))
        return true;
    const struct fact *outline = object_fact(object, slot);
    const struct point *at = &outline->is.points[repeated(outline)];
    return layout_fault_add(
        faults, object, slot,
        arena_format(faults->arena,
                     "corner [%.4g ft, %.4g ft] is given twice: each corner is given once, and the "
                     "first one not again at the end",
                     at->x / 0.3048, at->y / 0.3048),
        "outline: [[0 ft, 0 ft], [40 ft, 0 ft], [40 ft, 16 ft], [0 ft, 16 ft]]");
}

static bool check_outline(struct layout_faults *faults, struct layout_geos *geos,
                          const struct object *object, unsigned slot)
{
    const struct fact *outline = object_fact(object, slot);
    const char *fault = NULL;
    if (!object_has(object, slot) || is_repeated(object, slot))
        return check_repeated(faults, object, slot);
    if (!layout_outline_fault(&fault, geos, outline->is.points, outline->count))
        return false;
    return fault == NULL ||
           layout_fault_add(
               faults, object, slot,
               arena_format(faults->arena, "%s: give the corners one after the other round the %s",
                            fault, object->kind->id == KIND_roof_plane ? "plane" : "obstruction"),
               "outline: [[0 ft, 0 ft], [40 ft, 0 ft], [40 ft, 16 ft], [0 ft, 16 ft]]");
}

static bool check_edges(struct layout_faults *faults, const struct object *plane)
{
    const struct fact *outline = object_fact(plane, SLOT_roof_plane_outline);
    const struct fact *edges = object_fact(plane, SLOT_roof_plane_edges);
    if (!object_has(plane, SLOT_roof_plane_outline) || !object_has(plane, SLOT_roof_plane_edges) ||
        edges->count == outline->count || is_repeated(plane, SLOT_roof_plane_outline))
        return true;
    return layout_fault_add(
        faults, plane, SLOT_roof_plane_edges,
        arena_format(faults->arena,
                     "%zu edges are named for an outline of %zu corners; name one for each "
                     "side, the first from the first corner to the second",
                     edges->count, outline->count),
        "edges: [eave, rake, ridge, rake]");
}

/* Modules far from their plane: a slip in `at` or in `plane`. Overhanging ones are for rules. */
static bool check_modules(struct layout_faults *faults, const struct object *plane,
                          struct working *working)
{
    struct layout_plane *opened;
    working_start(working);
    if (!layout_plane_open(&opened, plane, LAYOUT_MODULES, working))
        return working->stop.kind != STOP_MEMORY; /* what is missing is told elsewhere */
    for (size_t i = 0; i < opened->module_count; i++)
        if (opened->modules[i].is_off_plane &&
            !layout_fault_add(
                faults, opened->modules[i].object, SLOT_module_at,
                arena_format(faults->arena,
                             "the module does not lie on roof plane %s at all; `at` is its lower "
                             "left corner in that plane's coordinates",
                             plane->path),
                layout_example_on(faults->arena, opened)))
            return false;
    return true;
}

static bool check_all(struct layout_faults *faults, const struct design *design,
                      struct working *working)
{
    const struct objects *planes = &design->of_kind[KIND_roof_plane];
    const struct objects *openings = &design->of_kind[KIND_escape_opening];
    const struct objects *things = &design->of_kind[KIND_obstruction];
    struct layout_geos *geos = working->layout->geos;
    struct layout_twice *twice;
    if (!layout_twice_open(&twice, planes, working))
        return false;
    for (size_t i = 0; i < planes->count; i++)
        if (!check_outline(faults, geos, planes->items[i], SLOT_roof_plane_outline) ||
            !check_edges(faults, planes->items[i]) ||
            !check_modules(faults, planes->items[i], working) ||
            !layout_check_things(faults, planes->items[i], working) ||
            !layout_check_twice(faults, twice, i))
            return false;
    for (size_t i = 0; i < openings->count; i++)
        if (!layout_check_opening(faults, openings->items[i], working))
            return false;
    for (size_t i = 0; i < things->count; i++)
        if (!check_outline(faults, geos, things->items[i], SLOT_obstruction_outline))
            return false;
    return true;
}

bool layout_check(struct layout_fault **faults, size_t *count, const struct design *design,
                  struct arena *arena)
{
    struct working working = {.arena = arena, .design = design, .is_lasting = true};
    struct layout_faults found = {.arena = arena};
    bool is_good = layout_of(&working) != NULL && check_all(&found, design, &working);
    working_close(&working);
    *faults = found.items;
    *count = found.count;
    return is_good;
}
