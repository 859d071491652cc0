#include "layout_build.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

/* Do all corners lie on one line? */
static bool is_line(const struct point *points, size_t count)
{
    size_t far = 0;
    for (size_t i = 1; i < count; i++)
        if (flat_length(points[0], points[i]) > flat_length(points[0], points[far]))
            far = i;
    struct shape line = {(struct point[]){points[0], points[far]}, 2, false};
    for (size_t i = 1; i < count; i++) {
        struct shape corner = {&points[i], 1, false};
        struct point nearest[2];
        if (flat_distance(&corner, &line, nearest) > LAYOUT_SLACK)
            return false;
    }
    return true;
}

bool layout_outline_fault(const char **fault, struct layout_geos *geos, const struct point *points,
                          size_t count)
{
    bool is_simple = false;
    struct shape outline = {points, count, true};
    *fault = NULL;
    if (count < 3) {
        *fault = "the outline has fewer than three corners";
        return true;
    }
    if (!layout_geos_is_simple(&is_simple, geos, &outline))
        return false;
    if (is_line(points, count))
        *fault = "the outline encloses no area";
    else if (!is_simple)
        *fault = "the outline crosses or touches itself";
    return true;
}

static bool is_with_clock(const struct fact *outline)
{
    return flat_area(outline->is.points, outline->count) < 0;
}

static bool take_corners(struct layout_plane *plane, const struct fact *outline,
                         struct working *working)
{
    size_t count = outline->count;
    struct point *corners = arena_take(working->layout->arena, (count + 1) * sizeof *corners);
    if (corners == NULL)
        return working_short(working);
    if (!layout_outline_fault(&plane->fault, working->layout->geos, outline->is.points, count))
        return layout_unanswered(plane->object, working);
    for (size_t i = 0; i < count; i++)
        corners[i] = outline->is.points[is_with_clock(outline) ? count - 1 - i : i];
    corners[count] = corners[0];
    plane->corners = corners;
    plane->count = count;
    plane->area = fabs(flat_area(corners, count));
    return true;
}

bool layout_build_outline(struct layout_plane *plane, struct working *working)
{
    const struct fact *outline;
    if (!layout_need_fact(&outline, plane->object, SLOT_roof_plane_outline, working))
        return false;
    if (plane->corners == NULL && !take_corners(plane, outline, working))
        return false;
    return plane->fault == NULL || working_beyond(working, "%s: roof plane %s cannot be measured",
                                                  plane->fault, plane->object->path);
}

bool layout_build_edges(struct layout_plane *plane, struct working *working)
{
    const struct fact *edges;
    if (!layout_need_fact(&edges, plane->object, SLOT_roof_plane_edges, working))
        return false;
    size_t count = plane->count;
    if (edges->count != count)
        return working_beyond(working, "roof plane %s has %zu sides but names %zu edges",
                              plane->object->path, count, edges->count);
    const struct fact *outline = object_fact(plane->object, SLOT_roof_plane_outline);
    const char **kinds = arena_take(working->layout->arena, count * sizeof *kinds);
    if (kinds == NULL)
        return working_short(working);
    /* Turned round, the side from corner n-1-i to n-2-i is the one that began at n-2-i. */
    for (size_t i = 0; i < count; i++)
        kinds[i] = edges->is.words[is_with_clock(outline) ? (2 * count - 2 - i) % count : i];
    plane->edges = kinds;
    return true;
}

bool layout_build_slope(struct layout_plane *plane, struct working *working)
{
    struct quantity slope;
    if (!need_quantity(&slope, plane->object, SLOT_roof_plane_slope, working))
        return false;
    plane->cos_slope = cos(slope.value);
    return true;
}

bool layout_build_plan(struct layout_plane *plane, struct working *working)
{
    struct quantity azimuth;
    const struct fact *origin;
    if (!need_quantity(&azimuth, plane->object, SLOT_roof_plane_azimuth, working) ||
        !layout_need_fact(&origin, plane->object, SLOT_roof_plane_plan_origin, working))
        return false;
    double east = sin(azimuth.value), north = cos(azimuth.value); /* down the slope */
    plane->plan_origin = origin->is.point;
    plane->plan_up = (struct point){-east, -north};
    plane->plan_right = (struct point){-north, east}; /* to the right of who looks up the slope */
    return true;
}

/* Inside the outline, or out by no more than the slack? */
static void place_module(struct layout_module *module, const struct layout_plane *plane)
{
    const struct point *c = module->corners;
    double s = LAYOUT_SLACK;
    struct point smaller[4] = {{c[0].x + s, c[0].y + s},
                               {c[1].x - s, c[1].y + s},
                               {c[2].x - s, c[2].y - s},
                               {c[3].x + s, c[3].y - s}};
    struct shape core = {smaller, 4, true};
    struct shape outline = layout_outline_of(plane), ring = layout_ring_of(plane);
    struct point nearest[2];
    bool is_apart = flat_distance(&core, &ring, nearest) > 0;
    bool is_in = flat_contains(&outline, smaller[0], 0);
    module->is_over_edge = !is_apart || !is_in;
    module->is_off_plane = is_apart && !is_in;
    module->edge_distance = -1;
}

/* How large the modules of a model are; that of the module before need not be read again. */
struct extent {
    const struct object *model;
    double length, width;
};

static bool read_extent(struct extent *extent, const struct object *model, struct working *working)
{
    struct quantity length, width;
    if (model == extent->model)
        return true;
    if (!need_quantity(&length, model, SLOT_module_model_length, working) ||
        !need_quantity(&width, model, SLOT_module_model_width, working))
        return false;
    *extent = (struct extent){model, length.value, width.value};
    return true;
}

static bool read_module(struct layout_module *out, struct extent *extent,
                        const struct object *module, struct working *working)
{
    const struct fact *at;
    const struct object *model;
    const char *orientation;
    if (!layout_need_fact(&at, module, SLOT_module_at, working) ||
        !need_word(&orientation, module, SLOT_module_orientation, working) ||
        !need_object(&model, module, SLOT_module_model, working))
        return false;
    if (model == NULL)
        return working_missing(working, module, SLOT_module_model);
    if (!read_extent(extent, model, working))
        return false;
    bool is_portrait = strcmp(orientation, "portrait") == 0;
    double along = is_portrait ? extent->width : extent->length;
    double up = is_portrait ? extent->length : extent->width;
    double x = at->is.point.x, y = at->is.point.y;
    out->object = module;
    out->corners[0] = (struct point){x, y};
    out->corners[1] = (struct point){x + along, y};
    out->corners[2] = (struct point){x + along, y + up};
    out->corners[3] = (struct point){x, y + up};
    return true;
}

static int compare_passed(const void *a, const void *b)
{
    const struct layout_passed *one = a, *other = b;
    if (one->near < other->near || one->near > other->near)
        return one->near < other->near ? -1 : 1;
    return one->module < other->module ? -1 : one->module > other->module;
}

/* Sorts the modules each way. */
static bool pass_over(struct layout_plane *plane, struct working *working)
{
    for (size_t way = 0; way < LAYOUT_WAYS; way++) {
        struct layout_passed *passed =
            arena_take(working->layout->arena, plane->module_count * sizeof *passed);
        if (passed == NULL)
            return working_short(working);
        for (size_t i = 0; i < plane->module_count; i++) {
            struct point low = plane->modules[i].corners[0], high = plane->modules[i].corners[2];
            const double near[LAYOUT_WAYS] = {low.x, -high.x, low.y, -high.y};
            passed[i] = (struct layout_passed){near[way], i};
            plane->longest[way] =
                fmax(plane->longest[way], way < 2 ? high.x - low.x : high.y - low.y);
        }
        qsort(passed, plane->module_count, sizeof *passed, compare_passed);
        plane->passed[way] = passed;
    }
    return true;
}

/* How far two modules lie apart that face each other; infinite for others, and where they lie over
 * each other. */
static double gap_of(const struct layout_module *one, const struct layout_module *other)
{
    double right =
        fmax(one->corners[0].x, other->corners[0].x) - fmin(one->corners[2].x, other->corners[2].x);
    double up =
        fmax(one->corners[0].y, other->corners[0].y) - fmin(one->corners[2].y, other->corners[2].y);
    if ((right < -LAYOUT_SLACK) == (up < -LAYOUT_SLACK))
        return INFINITY;
    return fmax(right, up);
}

/* From the left to the right: what begins farther from a module's right side than the least gap so
 * far, and all behind that, is no nearer. */
static double least_gap_of(const struct layout_plane *plane)
{
    const struct layout_passed *passed = plane->passed[0];
    double least = INFINITY;
    for (size_t i = 0; i < plane->module_count; i++) {
        const struct layout_module *one = &plane->modules[passed[i].module];
        for (size_t j = i + 1; j < plane->module_count; j++) {
            const struct layout_module *other = &plane->modules[passed[j].module];
            if (other->corners[0].x - one->corners[2].x >= least)
                break;
            least = fmin(least, gap_of(one, other));
        }
    }
    return least;
}

bool layout_build_modules(struct layout_plane *plane, struct working *working)
{
    struct object *const *objects;
    size_t count, kept = 0;
    if (!need_objects(&objects, &count, plane->object, SLOT_roof_plane_modules, working))
        return false;
    struct extent extent = {NULL, 0, 0};
    struct layout_module *modules = arena_take(working->layout->arena, count * sizeof *modules);
    if (modules == NULL)
        return working_short(working);
    for (size_t i = 0; i < count; i++) {
        const char *status;
        if (!need_word(&status, objects[i], SLOT_module_status, working))
            return false;
        if (strcmp(status, "removed") == 0)
            continue;
        if (!read_module(&modules[kept], &extent, objects[i], working))
            return false;
        place_module(&modules[kept++], plane);
    }
    plane->modules = modules;
    plane->module_count = kept;
    if (!pass_over(plane, working))
        return false;
    plane->least_gap = least_gap_of(plane);
    return true;
}

static bool read_box(struct layout_obstruction *out, const struct object *thing,
                     struct working *working)
{
    const struct fact *at;
    struct quantity width, length;
    if (!layout_need_fact(&at, thing, SLOT_obstruction_at, working) ||
        !need_quantity(&width, thing, SLOT_obstruction_width, working) ||
        !need_quantity(&length, thing, SLOT_obstruction_length, working))
        return false;
    double x = at->is.point.x, y = at->is.point.y;
    struct point *corners = arena_take(working->layout->arena, 4 * sizeof *corners);
    if (corners == NULL)
        return working_short(working);
    corners[0] = (struct point){x, y};
    corners[1] = (struct point){x + width.value, y};
    corners[2] = (struct point){x + width.value, y + length.value};
    corners[3] = (struct point){x, y + length.value};
    out->shape = (struct shape){corners, 4, true};
    return true;
}

/* Its outline where it has one, else its rectangle. */
static bool read_obstruction(struct layout_obstruction *out, const struct object *thing,
                             struct working *working)
{
    const char *fault;
    out->object = thing;
    working_read(working, thing, SLOT_obstruction_outline);
    if (!object_has(thing, SLOT_obstruction_outline))
        return read_box(out, thing, working);
    const struct fact *outline = object_fact(thing, SLOT_obstruction_outline);
    if (!layout_outline_fault(&fault, working->layout->geos, outline->is.points, outline->count))
        return layout_unanswered(thing, working);
    if (fault != NULL)
        return working_beyond(working, "%s: obstruction %s cannot be measured", fault, thing->path);
    out->shape = (struct shape){outline->is.points, outline->count, true};
    return true;
}

bool layout_build_obstructions(struct layout_plane *plane, struct working *working)
{
    struct object *const *objects;
    size_t count;
    if (!need_objects(&objects, &count, plane->object, SLOT_roof_plane_obstructions, working))
        return false;
    struct layout_obstruction *things = arena_take(working->layout->arena, count * sizeof *things);
    if (things == NULL)
        return working_short(working);
    for (size_t i = 0; i < count; i++)
        if (!read_obstruction(&things[i], objects[i], working))
            return false;
    plane->obstructions = things;
    plane->obstruction_count = count;
    return true;
}
