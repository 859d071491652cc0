/* Roofs one above the other: where in plan an eave runs over another plane. Heights are not drawn,
 * but of two planes in one place the one whose eave ends there is the upper one, as roofs are
 * built. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "layout_methods.h"
#include "layout_neighbour.h"

static struct point between(struct point a, struct point b, double share)
{
    return (struct point){a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
}

static int compare_shares(const void *a, const void *b)
{
    double one = *(const double *)a, other = *(const double *)b;
    return one < other ? -1 : one > other;
}

/* Where a segment meets the line of a side, as a share of its length; out of 0 to 1: not in it. */
static double meeting(struct point from, struct point to, struct point a, struct point b)
{
    double dx = to.x - from.x, dy = to.y - from.y, sx = b.x - a.x, sy = b.y - a.y;
    double turn = dx * sy - dy * sx;
    if (fabs(turn) < 1e-12)
        return -1;
    return ((a.x - from.x) * sy - (a.y - from.y) * sx) / turn;
}

/* Is the point inside, and farther from the rim than plans are exact? */
static bool is_well_inside(const struct shape *outline, struct point at)
{
    struct shape spot = {&at, 1, false}, rim = {outline->corners, outline->count + 1, false};
    struct point nearest[2];
    return flat_contains(outline, at, 0) &&
           flat_distance(&spot, &rim, nearest) > LAYOUT_JOINT_SLACK;
}

/* Do the boxes around a segment and an outline lie apart? */
static bool is_far(struct point a, struct point b, const struct shape *outline)
{
    double west = INFINITY, east = -INFINITY, south = INFINITY, north = -INFINITY;
    for (size_t i = 0; i < outline->count; i++) {
        west = fmin(west, outline->corners[i].x);
        east = fmax(east, outline->corners[i].x);
        south = fmin(south, outline->corners[i].y);
        north = fmax(north, outline->corners[i].y);
    }
    return fmax(a.x, b.x) < west || fmin(a.x, b.x) > east || fmax(a.y, b.y) < south ||
           fmin(a.y, b.y) > north;
}

/* How much of a segment lies well inside an outline. False: no memory. */
static bool length_inside(double *out, struct point from, struct point to,
                          const struct shape *outline, struct arena *arena)
{
    size_t count = 0;
    *out = 0;
    if (is_far(from, to, outline))
        return true;
    double *shares = arena_take(arena, (outline->count + 2) * sizeof *shares);
    if (shares == NULL)
        return false;
    shares[count++] = 0;
    for (size_t i = 0; i < outline->count; i++) {
        double share = meeting(from, to, outline->corners[i], outline->corners[i + 1]);
        if (share > 0 && share < 1)
            shares[count++] = share;
    }
    shares[count++] = 1;
    qsort(shares, count, sizeof *shares, compare_shares);
    for (size_t i = 0; i + 1 < count; i++)
        if (is_well_inside(outline, between(from, to, (shares[i] + shares[i + 1]) / 2)))
            *out += (shares[i + 1] - shares[i]) * flat_length(from, to);
    return true;
}

/* Of a valley's length; its ends touch the rim. Our own choice. */
static const double wholly = 0.9;

/* Where a valley of it lies wholly inside the other plane, drawn in full below it, the two are one
 * roof: what the other has beyond that valley is not built. A valley that only ends below an eave
 * is of a lower roof. False: no memory. */
static bool find_laid_on(bool *is, const struct layout_plane *plane, const struct shape *outline,
                         struct arena *arena)
{
    *is = false;
    for (size_t side = 0; side < plane->count && !*is; side++) {
        struct point from = layout_in_plan(plane, plane->corners[side]);
        struct point to = layout_in_plan(plane, plane->corners[side + 1]);
        double inside;
        if (strcmp(plane->edges[side], "valley") != 0)
            continue;
        if (!length_inside(&inside, from, to, outline, arena))
            return false;
        *is = inside >= wholly * flat_length(from, to);
    }
    return true;
}

/* Does an eave run over the other plane, or end right above the wall that the other leans on?
 * False: no memory. */
static bool find_over(bool *is, struct layout_plane *plane, struct layout_plane *other,
                      struct working *working)
{
    struct shape outline, own;
    struct layout_joint joint;
    bool is_laid_on;
    *is = false;
    if (!layout_plan_of(&outline, other, working->layout) ||
        !layout_plan_of(&own, plane, working->layout) ||
        !find_laid_on(&is_laid_on, other, &own, working->arena))
        return false;
    if (is_laid_on)
        return true;
    for (size_t side = 0; side < plane->count && !*is; side++) {
        double inside;
        if (strcmp(plane->edges[side], "eave") != 0)
            continue;
        if (!length_inside(&inside, layout_in_plan(plane, plane->corners[side]),
                           layout_in_plan(plane, plane->corners[side + 1]), &outline,
                           working->arena))
            return false;
        *is =
            inside >= LAYOUT_JOINT_LENGTH || (layout_side_joint(&joint, plane, side, other) > 0 &&
                                              strcmp(other->edges[joint.other_side], "wall") == 0);
    }
    return true;
}

/* The first plane that lies over this one (or under it: `is_upper`). */
static bool find_first(struct amount *results, const struct object *about, bool is_upper,
                       struct working *working)
{
    struct layout_plane *plane, **planes;
    size_t count;
    unsigned parts = LAYOUT_OUTLINE | LAYOUT_EDGES | LAYOUT_PLAN;
    bool is = false;
    results[0] = amount_of_yesno(false);
    if (!layout_planes_open(&planes, &count, 0, working))
        return false;
    if (count < 2)
        return true;
    if (!layout_plane_open(&plane, about, parts, working) ||
        !layout_planes_open(&planes, &count, parts, working))
        return false;
    for (size_t i = 0; i < count && !is; i++) {
        if (planes[i] == plane)
            continue;
        if (!find_over(&is, is_upper ? plane : planes[i], is_upper ? planes[i] : plane, working))
            return working_short(working);
        if (!is)
            continue;
        results[0] = amount_of_yesno(true);
        results[1] = amount_of_word(planes[i]->object->path);
    }
    return true;
}

bool layout_run_eave_above(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    (void)inputs;
    return find_first(results, about, false, working);
}

bool layout_run_roof_below(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    (void)inputs;
    return find_first(results, about, true, working);
}
