/* How planes lie beside each other in plan: edges that two share. */
#include <string.h>

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

/* How far behind a wall the roof above it may begin in plan, m: a foot. Our own choice. */
static const double behind_wall = 0.3048;

/* Is a roof drawn beyond the side, at its quarters and its middle? False: no memory. */
static bool find_beyond(bool *is, const struct layout_plane *plane, size_t side,
                        struct layout_plane *const *planes, size_t count, struct layout *layout)
{
    struct point a = layout_in_plan(plane, plane->corners[side]);
    struct point b = layout_in_plan(plane, plane->corners[side + 1]);
    bool found[3] = {false, false, false};
    for (size_t i = 0; i < count; i++) {
        struct shape outline;
        if (planes[i] == plane)
            continue;
        if (!layout_plan_of(&outline, planes[i], layout))
            return false;
        for (int part = 0; part < 3; part++) {
            double share = (part + 1) / 4.0;
            struct point at = {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)}, nearest[2];
            struct shape spot = {&at, 1, false};
            found[part] = found[part] || flat_distance(&spot, &outline, nearest) <= behind_wall;
        }
    }
    *is = found[0] && found[1] && found[2];
    return true;
}

/* A wall that stands higher than a roof carries one of its own; what is a rake or a parapet, along
 * which wind is strongest, has none beyond it. */
bool layout_run_walls_are_met(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane, **planes;
    size_t count;
    bool is = true;
    (void)inputs;
    if (!layout_plane_open(&plane, about, LAYOUT_EDGES | LAYOUT_PLAN, working) ||
        !layout_planes_open(&planes, &count, LAYOUT_OUTLINE | LAYOUT_PLAN, working))
        return false;
    for (size_t side = 0; side < plane->count && is; side++)
        if (strcmp(plane->edges[side], "wall") == 0 &&
            !find_beyond(&is, plane, side, planes, count, working->layout))
            return working_short(working);
    results[0] = amount_of_yesno(is);
    return true;
}
