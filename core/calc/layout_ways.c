/* Access pathways of a plane, of its neighbours, and of the whole roof. */
#include "layout_methods.h"

#include <math.h>
#include <string.h>

#include "layout_neighbour.h"

/* Does a shape lie wholly on the plane? */
static bool is_inside(const struct layout_plane *plane, const struct shape *shape)
{
    struct shape outline = layout_outline_of(plane), ring = layout_ring_of(plane);
    struct point nearest[2];
    return flat_distance(shape, &ring, nearest) > 0 &&
           flat_contains(&outline, shape->corners[0], 0);
}

/* Adds what of a shape lies on the plane. */
static bool add_thing(struct shape **things, size_t *count, size_t *capacity,
                      const struct layout_plane *plane, const struct shape *shape, bool is_in,
                      struct layout_geos *geos, struct arena *arena)
{
    struct shape whole = *shape, *parts = &whole, outline = layout_outline_of(plane);
    size_t part_count = 1;
    if (!is_in && !layout_geos_clip(&parts, &part_count, geos, &outline, shape, arena))
        return false;
    for (size_t i = 0; i < part_count; i++) {
        struct shape *grown = arena_grow(arena, *things, *count, capacity, sizeof *grown);
        if (grown == NULL)
            return false;
        *things = grown;
        grown[(*count)++] = parts[i];
    }
    return true;
}

bool layout_things_of(struct shape **things, size_t *count, const struct layout_plane *plane,
                      struct layout_geos *geos, struct arena *arena)
{
    size_t capacity = 0;
    *count = 0;
    *things = NULL;
    for (size_t i = 0; i < plane->module_count; i++) {
        struct shape shape = layout_module_shape(&plane->modules[i]);
        if (!plane->modules[i].is_off_plane &&
            !add_thing(things, count, &capacity, plane, &shape, !plane->modules[i].is_over_edge,
                       geos, arena))
            return false;
    }
    for (size_t i = 0; i < plane->obstruction_count; i++) {
        const struct shape *shape = &plane->obstructions[i].shape;
        if (!add_thing(things, count, &capacity, plane, shape, is_inside(plane, shape), geos,
                       arena))
            return false;
    }
    return true;
}

static bool open_graph(struct layout_plane *plane, struct working *working)
{
    struct shape *things;
    size_t count;
    struct arena *arena = working->layout->arena;
    if (plane->pathway != NULL)
        return true;
    if (!layout_things_of(&things, &count, plane, working->layout->geos, arena))
        return working_short(working);
    struct pathway_roof roof = {plane->corners, plane->edges, plane->count, things, count};
    struct pathway_graph *graph = pathway_graph_new(&roof, arena);
    if (graph == NULL || !pathway_width(&plane->pathway_width, &plane->bare_width, graph,
                                        working->layout->geos, arena))
        return working_short(working);
    plane->pathway = graph;
    return true;
}

bool layout_plane_pathway(double *width, double *bare, struct layout_plane *plane,
                          struct working *working)
{
    if (!open_graph(plane, working))
        return false;
    *width = plane->pathway_width;
    *bare = plane->bare_width;
    working_step(working, NULL,
                 "roof plane %s: the widest strip from eave to ridge free of %zu modules and %zu "
                 "obstructions is %.6g m; the plane alone would allow %.6g m",
                 plane->object->path, plane->module_count, plane->obstruction_count, *width, *bare);
    return true;
}

bool layout_run_pathway_width(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    double width, bare;
    (void)inputs;
    if (!layout_plane_open(&plane, about, LAYOUT_PATHWAY, working) ||
        !layout_plane_pathway(&width, &bare, plane, working))
        return false;
    results[0] = layout_metres(width);
    results[1] = layout_metres(bare);
    return true;
}

bool layout_run_pathway_count(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    size_t count;
    if (!layout_plane_open(&plane, about, LAYOUT_PATHWAY, working) || !open_graph(plane, working))
        return false;
    if (!pathway_count(&count, plane->pathway, inputs[0].quantity.value, working->arena))
        return working_short(working);
    results[0] = amount_of_number((double)count);
    return true;
}

/* The same width within the slack counts: a strip laid out to the inch fits. */
static bool is_wide_enough(double width, double needed)
{
    return width >= needed - LAYOUT_SLACK;
}

/* `side` as the vocabulary says it, or the two together that codes ask for. */
static bool is_facing(bool *is, const struct object *plane, const char *side,
                      struct working *working)
{
    const struct fact *faces;
    *is = false;
    if (!layout_need_fact(&faces, plane, SLOT_roof_plane_faces, working))
        return object_fact(plane, SLOT_roof_plane_faces)->state == FACT_NONE;
    if (strcmp(side, "street or driveway") == 0)
        *is = object_is(plane, SLOT_roof_plane_faces, "street") ||
              object_is(plane, SLOT_roof_plane_faces, "driveway");
    else
        *is = object_is(plane, SLOT_roof_plane_faces, side);
    return true;
}

bool layout_run_pathway_faces(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    double width, bare;
    bool is = false;
    if (!layout_plane_open(&plane, about, LAYOUT_PATHWAY, working) ||
        !layout_plane_pathway(&width, &bare, plane, working))
        return false;
    bool is_wide = is_wide_enough(width, inputs[0].quantity.value);
    if (is_wide && !is_facing(&is, about, inputs[1].word, working))
        return false;
    results[0] = amount_of_yesno(is);
    return true;
}

bool layout_run_pathway_planes(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    struct layout_plane **planes;
    size_t count, wide = 0;
    (void)about;
    if (!layout_planes_open(&planes, &count, LAYOUT_PATHWAY, working))
        return false;
    for (size_t i = 0; i < count; i++) {
        double width, bare;
        bool is = true;
        if (!layout_plane_pathway(&width, &bare, planes[i], working))
            return false;
        if (!is_wide_enough(width, inputs[0].quantity.value))
            continue;
        if (inputs[1].type == AMOUNT_WORD &&
            !is_facing(&is, planes[i]->object, inputs[1].word, working))
            return false;
        if (is && wide++ == 0)
            results[1] = amount_of_word(planes[i]->object->path);
    }
    results[0] = amount_of_number((double)wide);
    return true;
}

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

static bool measure_straddling(double *width, struct layout_plane *plane,
                               struct layout_plane *other, const struct layout_joint *joint,
                               struct working *working)
{
    struct pathway_roof roof;
    bool is_flat = false;
    *width = 0;
    if (!layout_unfold(&roof, plane, other, joint, working->arena))
        return working_short(working);
    struct shape outline = {roof.corners, roof.count, true};
    if (!layout_geos_is_simple(&is_flat, working->layout->geos, &outline))
        return working_short(working);
    if (!is_flat) /* laid flat the two would lie over each other */
        return true;
    double bare;
    struct pathway_graph *graph = pathway_graph_new(&roof, working->arena);
    return (graph != NULL &&
            pathway_width(width, &bare, graph, working->layout->geos, working->arena)) ||
           working_short(working);
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
