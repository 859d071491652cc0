/* How planes lie beside each other in plan: edges that two share, and planes drawn twice. */
#include <math.h>
#include <string.h>

#include "layout_check_things.h"
#include "layout_methods.h"
#include "layout_neighbour.h"

/* Sides that two planes share run against each other: so the other plane lies beyond a ridge, and
 * faces the other way. */
bool layout_run_edge_is_met(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane, **planes;
    struct layout_joint joint;
    size_t count;
    bool is_met = true;
    if (!layout_plane_open(&plane, about, LAYOUT_EDGES | LAYOUT_PLAN, working) ||
        !layout_planes_open(&planes, &count, LAYOUT_EDGES | LAYOUT_PLAN, working))
        return false;
    for (size_t side = 0; side < plane->count; side++) {
        bool is_side_met = strcmp(plane->edges[side], inputs[0].word) != 0;
        for (size_t i = 0; i < count && !is_side_met; i++)
            is_side_met =
                planes[i] != plane && layout_side_joint(&joint, plane, side, planes[i]) > 0;
        is_met = is_met && is_side_met;
    }
    results[0] = amount_of_yesno(is_met);
    return true;
}

/* Ridges, hips and valleys are of both planes; where one plane stands above the other, neither is.
 */
static bool is_of_both(const char *edge)
{
    return strcmp(edge, "ridge") == 0 || strcmp(edge, "hip") == 0 || strcmp(edge, "valley") == 0;
}

bool layout_run_edges_agree(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane, **planes;
    size_t count;
    (void)inputs;
    if (!layout_plane_open(&plane, about, LAYOUT_EDGES | LAYOUT_PLAN, working) ||
        !layout_planes_open(&planes, &count, LAYOUT_EDGES | LAYOUT_PLAN, working))
        return false;
    results[0] = amount_of_yesno(true);
    for (size_t side = 0; side < plane->count; side++)
        for (size_t i = 0; i < count; i++) {
            struct layout_joint joint;
            if (planes[i] == plane || layout_side_joint(&joint, plane, side, planes[i]) <= 0)
                continue;
            const char *mine = plane->edges[side], *other = planes[i]->edges[joint.other_side];
            if (strcmp(mine, other) == 0 || !(is_of_both(mine) || is_of_both(other)))
                continue;
            results[0] = amount_of_yesno(false);
            results[1] = amount_of_word(planes[i]->object->path);
            results[2] = amount_of_word(mine);
            results[3] = amount_of_word(other);
            return true;
        }
    return true;
}

/* The outline in plan; it lives in the arena. False: no memory. */
static bool plan_of(struct shape *out, const struct layout_plane *plane, struct arena *arena)
{
    struct point *corners = arena_take(arena, (plane->count + 1) * sizeof *corners);
    if (corners == NULL)
        return false;
    for (size_t i = 0; i <= plane->count; i++)
        corners[i] = layout_in_plan(plane, plane->corners[i]);
    *out = (struct shape){corners, plane->count, true};
    return true;
}

/* The most of the smaller that two planes of one facing may lie over each other: a roof may reach
 * out above another, but not over half of it. Our own choice. */
static const double most_shared = 0.5;

/* Do the upright boxes round both lie apart? Cheap, and so for most planes. */
static bool is_surely_apart(const struct shape *a, const struct shape *b)
{
    struct point low[2], high[2];
    const struct shape *both[2] = {a, b};
    for (size_t i = 0; i < 2; i++) {
        low[i] = high[i] = both[i]->corners[0];
        for (size_t j = 1; j < both[i]->count; j++) {
            struct point at = both[i]->corners[j];
            low[i] = (struct point){fmin(low[i].x, at.x), fmin(low[i].y, at.y)};
            high[i] = (struct point){fmax(high[i].x, at.x), fmax(high[i].y, at.y)};
        }
    }
    return low[0].x >= high[1].x || low[1].x >= high[0].x || low[0].y >= high[1].y ||
           low[1].y >= high[0].y;
}

static bool share_of(double *out, const struct layout_plane *a, const struct layout_plane *b,
                     struct working *working)
{
    struct shape both[2];
    double area[3];
    struct layout_geos *geos = working->layout->geos;
    *out = 0;
    if (!plan_of(&both[0], a, working->arena) || !plan_of(&both[1], b, working->arena))
        return working_short(working);
    if (is_surely_apart(&both[0], &both[1]))
        return true;
    if (!layout_geos_union_area(&area[0], geos, both, 1) ||
        !layout_geos_union_area(&area[1], geos, both + 1, 1) ||
        !layout_geos_union_area(&area[2], geos, both, 2))
        return working_short(working);
    double smaller = fmin(area[0], area[1]);
    *out = smaller > 0 ? (area[0] + area[1] - area[2]) / smaller : 0;
    return true;
}

/* Planes that face one way lie beside each other; one drawn twice would make the roof too large.
 * Told of the first that it lies over: of many drawn as one, each is told once. */
bool layout_check_twice(struct layout_faults *faults, const struct objects *planes, size_t at,
                        struct working *working)
{
    struct layout_plane *plane, *other;
    for (size_t i = 0; i < at; i++) {
        double share;
        working_start(working);
        if (!layout_plane_open(&plane, planes->items[at], LAYOUT_OUTLINE | LAYOUT_PLAN, working) ||
            !layout_plane_open(&other, planes->items[i], LAYOUT_OUTLINE | LAYOUT_PLAN, working)) {
            if (working->stop.kind == STOP_MEMORY)
                return false;
            continue; /* what is missing is told elsewhere */
        }
        double faces = plane->plan_up.x * other->plan_up.x + plane->plan_up.y * other->plan_up.y;
        if (faces < cos(acos(-1) / 4))
            continue;
        if (!share_of(&share, plane, other, working))
            return false;
        if (share > most_shared)
            return layout_fault_add(
                faults, plane->object, SLOT_roof_plane_plan_origin,
                arena_format(faults->arena,
                             "seen from above, roof plane %s lies over roof plane %s, which faces "
                             "the same way: `plan_origin` is where its (0, 0) lies in the plan, "
                             "`azimuth` the way down its slope; planes at one ridge face opposite "
                             "ways",
                             plane->object->path, other->object->path),
                "plan_origin: [48 ft, 32.3 ft] with azimuth: 0°, for a plane behind a ridge 16.15 "
                "ft from an eave at [0 ft, 0 ft]");
    }
    return true;
}
