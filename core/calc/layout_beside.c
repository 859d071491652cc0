/* Access pathways on the planes next to one, and over both. */
#include "layout_methods.h"
#include "layout_neighbour.h"

/* The most over the neighbours of what `measure` finds. */
typedef bool measure_pair(double *width, struct layout_plane *plane, struct layout_plane *other,
                          const struct layout_joint *joint, struct working *working);

static bool widest_over_neighbours(struct amount *results, const struct object *about,
                                   const struct amount *inputs, measure_pair *measure,
                                   struct working *working)
{
    struct layout_plane *plane, **planes;
    size_t count;
    double widest = 0;
    if (!layout_plane_open(&plane, about, LAYOUT_PATHWAY | LAYOUT_PLAN, working) ||
        !layout_planes_open(&planes, &count, LAYOUT_PATHWAY | LAYOUT_PLAN, working))
        return false;
    for (size_t i = 0; i < count; i++) {
        struct layout_joint joint;
        double width = 0;
        const char *across = inputs[0].type == AMOUNT_WORD ? inputs[0].word : NULL;
        if (planes[i] == plane || !layout_find_joint(&joint, plane, planes[i], across))
            continue;
        if (!measure(&width, plane, planes[i], &joint, working))
            return false;
        working_step(working, NULL, "over the %s to roof plane %s: %.6g m",
                     plane->edges[joint.side], planes[i]->object->path, width);
        if (results[1].type == AMOUNT_NONE || width > widest) {
            widest = width;
            results[1] = amount_of_word(planes[i]->object->path);
        }
    }
    results[0] = layout_metres(widest);
    return true;
}

static bool measure_adjacent(double *width, struct layout_plane *plane, struct layout_plane *other,
                             const struct layout_joint *joint, struct working *working)
{
    double bare;
    (void)plane, (void)joint;
    return layout_plane_pathway(width, &bare, other, working);
}

static bool unfold_and_measure(double *width, struct layout_plane *plane,
                               struct layout_plane *other, const struct layout_joint *joint,
                               struct working *working)
{
    struct pathway_roof roof;
    struct layout_geos *geos = working->layout->geos;
    bool is_flat = false;
    double bare;
    *width = 0;
    if (!layout_unfold(&roof, plane, other, joint, working->arena))
        return false;
    struct shape outline = {roof.corners, roof.count, true};
    if (!layout_geos_is_simple(&is_flat, geos, &outline))
        return false;
    if (!is_flat) /* laid flat the two would lie over each other */
        return true;
    struct shape *things;
    if (!layout_geos_cut(&things, &roof.thing_count, geos, &outline, roof.things, roof.thing_count,
                         working->arena))
        return false;
    roof.things = things;
    struct pathway_graph *graph = pathway_graph_new(&roof, working->arena);
    return graph != NULL && pathway_width(width, &bare, graph, geos, working->arena);
}

static const struct layout_pair *find_pair(const struct layout *layout,
                                           const struct layout_plane *plane,
                                           const struct layout_plane *other,
                                           const struct layout_joint *joint)
{
    for (size_t i = 0; i < layout->pair_count; i++) {
        const struct layout_pair *pair = &layout->pairs[i];
        for (int turn = 0; turn < 2; turn++)
            if (pair->planes[turn] == plane && pair->planes[1 - turn] == other &&
                pair->sides[turn] == joint->side && pair->sides[1 - turn] == joint->other_side)
                return pair;
    }
    return NULL;
}

static bool measure_straddling(double *width, struct layout_plane *plane,
                               struct layout_plane *other, const struct layout_joint *joint,
                               struct working *working)
{
    struct layout *layout = working->layout;
    const struct layout_pair *found = find_pair(layout, plane, other, joint);
    if (found != NULL) {
        *width = found->width;
        return true;
    }
    struct layout_pair *pairs = arena_grow(layout->arena, layout->pairs, layout->pair_count,
                                           &layout->pair_capacity, sizeof *pairs);
    if (pairs == NULL)
        return working_short(working);
    if (!unfold_and_measure(width, plane, other, joint, working))
        return layout_unanswered(plane->object, working);
    layout->pairs = pairs;
    pairs[layout->pair_count++] =
        (struct layout_pair){{plane, other}, {joint->side, joint->other_side}, *width};
    return true;
}

bool layout_run_adjacent_pathway(struct amount *results, const struct object *about,
                                 const struct amount *inputs, struct working *working)
{
    return widest_over_neighbours(results, about, inputs, measure_adjacent, working);
}

bool layout_run_straddling_pathway(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    return widest_over_neighbours(results, about, inputs, measure_straddling, working);
}
