#include "layout_plane.h"

#include <math.h>
#include <string.h>

#include "layout_build.h"

static const struct object *object_in(const void *items, size_t at, size_t size)
{
    const struct object *object;
    memcpy(&object, (const char *)items + at * size, sizeof object);
    return object;
}

size_t layout_place_of(const struct object *about, const void *items, size_t count, size_t size)
{
    size_t low = 0, high = count;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        if (object_in(items, middle, size)->ordinal < about->ordinal)
            low = middle + 1;
        else
            high = middle;
    }
    return low < count && object_in(items, low, size) == about ? low : count;
}

struct layout *layout_of(struct working *working)
{
    if (working->layout != NULL)
        return working->layout;
    struct arena *arena = arena_new();
    struct layout *layout = arena != NULL ? arena_take(arena, sizeof *layout) : NULL;
    size_t count = working->design->of_kind[KIND_roof_plane].count;
    if (layout != NULL) {
        layout->arena = arena;
        layout->planes = arena_take(arena, count * sizeof *layout->planes);
        layout->geos = layout_geos_new();
    }
    if (layout == NULL || layout->planes == NULL || layout->geos == NULL) {
        if (layout != NULL)
            layout_geos_free(layout->geos);
        arena_free(arena);
        (working_short)(working);
        return NULL;
    }
    return working->layout = layout;
}

void layout_free(struct layout *layout)
{
    if (layout == NULL)
        return;
    layout_geos_free(layout->geos);
    arena_free(layout->arena);
}

bool layout_need_fact(const struct fact **out, const struct object *object, unsigned slot,
                      struct working *working)
{
    working_read(working, object, slot);
    *out = object_fact(object, slot);
    return object_has(object, slot) || working_missing(working, object, slot);
}

bool layout_unanswered(const struct object *object, struct working *working)
{
    const struct layout *layout = working->layout;
    if (layout_geos_is_short(layout->geos) || arena_is_short(layout->arena) ||
        arena_is_short(working->arena))
        return working_short(working);
    return working_beyond(working, "the geometry of %s %s cannot be worked out", object->kind->name,
                          object->path);
}

bool layout_build(struct readings **from, layout_part_builder *build, struct layout_plane *plane,
                  struct working *working)
{
    if (*from != NULL) {
        working_read_again(working, *from);
        return true;
    }
    struct trail outer = working_trail_open(working);
    bool is_built = build(plane, working);
    if (is_built)
        *from = working_trail_keep(working, working->layout->arena);
    working_trail_close(working, outer, *from);
    return is_built && (*from != NULL || working_short(working));
}

static bool open_parts(struct layout_plane *plane, unsigned parts, struct working *working)
{
    static layout_part_builder *const all[LAYOUT_PARTS] = {
        layout_build_outline, layout_build_edges,        layout_build_slope,
        layout_build_modules, layout_build_obstructions, layout_build_plan};
    for (unsigned i = 0; i < LAYOUT_PARTS; i++)
        if ((parts >> i & 1) != 0 && !layout_build(&plane->parts[i], all[i], plane, working))
            return false;
    return true;
}

bool layout_plane_open(struct layout_plane **out, const struct object *object, unsigned parts,
                       struct working *working)
{
    struct layout *layout = layout_of(working);
    if (layout == NULL)
        return false;
    struct layout_plane *plane = &layout->planes[object->ordinal];
    if (plane->object == NULL)
        plane->covered_area = -1;
    plane->object = object;
    *out = plane;
    if (parts & (LAYOUT_EDGES | LAYOUT_MODULES | LAYOUT_OBSTRUCTIONS))
        parts |= LAYOUT_OUTLINE;
    if (parts & LAYOUT_PLAN)
        parts |= LAYOUT_SLOPE;
    return open_parts(plane, parts, working);
}

bool layout_plane_of(const struct object **plane, const struct object *about, unsigned slot,
                     struct working *working)
{
    if (!need_object(plane, about, slot, working))
        return false;
    return *plane != NULL || working_wrong(working, NULL, "%s %s stands on no roof plane",
                                           about->kind->name, about->path);
}

bool layout_module_open(struct layout_plane **plane, struct layout_module **out,
                        const struct object *about, unsigned parts, struct working *working)
{
    const struct object *of;
    if (!need_object(&of, about, SLOT_module_plane, working))
        return false;
    if (of == NULL)
        return working_wrong(working, NULL, "module %s lies on no roof plane", about->path);
    if (!layout_plane_open(plane, of, LAYOUT_MODULES | parts, working))
        return false;
    size_t at = layout_place_of(about, (*plane)->modules, (*plane)->module_count,
                                sizeof *(*plane)->modules);
    if (at == (*plane)->module_count)
        return working_wrong(working, NULL, "module %s is removed", about->path);
    *out = &(*plane)->modules[at];
    return true;
}

bool layout_planes_open(struct layout_plane ***out, size_t *count, unsigned parts,
                        struct working *working)
{
    const struct objects *roofs = &working->design->of_kind[KIND_roof];
    struct object *const *objects = NULL;
    *count = 0;
    if (roofs->count == 0)
        return working_missing(working, working->design->root, SLOT_design_roof);
    if (!need_objects(&objects, count, roofs->items[0], SLOT_roof_planes, working))
        return false;
    struct layout_plane **planes = arena_take(working->arena, *count * sizeof *planes);
    if (planes == NULL)
        return working_short(working);
    for (size_t i = 0; i < *count; i++)
        if (!layout_plane_open(&planes[i], objects[i], parts, working))
            return false;
    *out = planes;
    return true;
}

struct shape layout_outline_of(const struct layout_plane *plane)
{
    return (struct shape){plane->corners, plane->count, true};
}

struct shape layout_ring_of(const struct layout_plane *plane)
{
    return (struct shape){plane->corners, plane->count + 1, false};
}

struct shape layout_side_of(const struct layout_plane *plane, size_t side)
{
    return (struct shape){&plane->corners[side], 2, false};
}

struct shape layout_module_shape(const struct layout_module *module)
{
    return (struct shape){module->corners, 4, true};
}

struct point layout_in_plan(const struct layout_plane *plane, struct point at)
{
    double up = at.y * plane->cos_slope;
    return (struct point){plane->plan_origin.x + at.x * plane->plan_right.x + up * plane->plan_up.x,
                          plane->plan_origin.y + at.x * plane->plan_right.y +
                              up * plane->plan_up.y};
}

bool layout_plan_of(struct shape *out, struct layout_plane *plane, struct layout *layout)
{
    if (plane->plan == NULL) {
        struct point *corners = arena_take(layout->arena, (plane->count + 1) * sizeof *corners);
        if (corners == NULL)
            return false;
        for (size_t i = 0; i <= plane->count; i++)
            corners[i] = layout_in_plan(plane, plane->corners[i]);
        plane->plan = corners;
    }
    *out = (struct shape){plane->plan, plane->count, true};
    return true;
}

bool layout_is_overlapping(const struct layout_module *a, const struct layout_module *b)
{
    const struct point *p = a->corners, *q = b->corners;
    return fmin(p[2].x, q[2].x) - fmax(p[0].x, q[0].x) > LAYOUT_SLACK &&
           fmin(p[2].y, q[2].y) - fmax(p[0].y, q[0].y) > LAYOUT_SLACK;
}

static bool has_overlap(const struct layout_plane *plane)
{
    for (size_t i = 0; i < plane->module_count; i++)
        for (size_t j = 0; j < i; j++)
            if (layout_is_overlapping(&plane->modules[i], &plane->modules[j]))
                return true;
    return false;
}

bool layout_covered_area(double *area, struct layout_plane *plane, struct working *working)
{
    if (plane->covered_area >= 0) {
        *area = plane->covered_area;
        return true;
    }
    *area = 0;
    struct shape *shapes = arena_take(working->arena, plane->module_count * sizeof *shapes);
    if (shapes == NULL)
        return working_short(working);
    for (size_t i = 0; i < plane->module_count; i++) {
        shapes[i] = layout_module_shape(&plane->modules[i]);
        *area += flat_area(plane->modules[i].corners, 4);
    }
    /* Modules over each other are rare, and only then is a union needed. */
    if (has_overlap(plane) &&
        !layout_geos_union_area(area, working->layout->geos, shapes, plane->module_count))
        return layout_unanswered(plane->object, working);
    plane->covered_area = *area;
    return true;
}
