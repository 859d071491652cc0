/* Access pathways of a plane and of the whole roof. */
#include "layout_methods.h"

#include <math.h>
#include <string.h>

bool layout_things_of(struct shape **things, size_t *count, const struct layout_plane *plane,
                      struct layout_geos *geos, struct arena *arena)
{
    size_t raw = 0;
    struct shape outline = layout_outline_of(plane);
    struct shape *all =
        arena_take(arena, (plane->module_count + plane->obstruction_count) * sizeof *all);
    if (all == NULL)
        return false;
    for (size_t i = 0; i < plane->module_count; i++)
        if (!plane->modules[i].is_off_plane)
            all[raw++] = layout_module_shape(&plane->modules[i]);
    for (size_t i = 0; i < plane->obstruction_count; i++)
        all[raw++] = plane->obstructions[i].shape;
    return layout_geos_cut(things, count, geos, &outline, all, raw, arena);
}

static bool open_graph(struct layout_plane *plane, struct working *working)
{
    struct shape *things;
    size_t count;
    struct arena *arena = working->layout->arena;
    if (plane->pathway != NULL)
        return true;
    if (!layout_things_of(&things, &count, plane, working->layout->geos, arena))
        return layout_unanswered(plane->object, working);
    struct pathway_roof roof = {plane->corners, plane->edges, plane->count, things, count};
    struct pathway_graph *graph = pathway_graph_new(&roof, arena);
    if (graph == NULL || !pathway_width(&plane->pathway_width, &plane->bare_width, graph,
                                        working->layout->geos, arena))
        return layout_unanswered(plane->object, working);
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

/* A plane of the building whose planes count: the house if it has modules, else what has. */
static bool find_building(const struct object **out, struct layout_plane *const *planes,
                          size_t count, struct working *working)
{
    *out = count > 0 ? planes[0]->object : NULL;
    for (size_t i = count; i > 0; i--) {
        bool is_apart;
        if (planes[i - 1]->module_count == 0)
            continue;
        *out = planes[i - 1]->object;
        if (!layout_is_apart(&is_apart, *out, working))
            return false;
        if (!is_apart)
            return true;
    }
    return true;
}

/* The first plane of a building: its name tells buildings apart. */
static bool name_building(struct amount *out, const struct object *of,
                          struct layout_plane *const *planes, size_t count, struct working *working)
{
    for (size_t i = 0; i < count; i++) {
        bool is;
        if (!layout_is_one_building(&is, planes[i]->object, of, working))
            return false;
        if (!is)
            continue;
        *out = amount_of_word(planes[i]->object->path);
        return true;
    }
    return true;
}

/* Of the building under a plane. */
static bool count_planes(struct amount *results, const struct object *of,
                         struct layout_plane *const *planes, size_t count,
                         const struct amount *inputs, struct working *working)
{
    size_t wide = 0, all = 0;
    for (size_t i = 0; i < count; i++) {
        double width, bare;
        bool is = true;
        if (!layout_is_one_building(&is, planes[i]->object, of, working))
            return false;
        if (!is)
            continue;
        all++;
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
    results[2] = amount_of_number((double)all);
    return true;
}

bool layout_run_pathway_planes(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    struct layout_plane **planes;
    const struct object *of;
    size_t count;
    (void)about;
    return layout_planes_open(&planes, &count, LAYOUT_PATHWAY, working) &&
           find_building(&of, planes, count, working) &&
           count_planes(results, of, planes, count, inputs, working) &&
           name_building(&results[3], of, planes, count, working);
}

bool layout_run_building_pathways(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    struct layout_plane **planes;
    size_t count;
    return layout_planes_open(&planes, &count, LAYOUT_PATHWAY, working) &&
           count_planes(results, about, planes, count, inputs, working) &&
           name_building(&results[3], about, planes, count, working);
}
