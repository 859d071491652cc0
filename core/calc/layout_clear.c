/* Clearances, and modules that stand over what they should not. */
#include "layout_methods.h"

#include <assert.h>
#include <math.h>
#include <string.h>

static bool has_side(const struct layout_plane *plane, const char *edge)
{
    for (size_t i = 0; i < plane->count; i++)
        if (strcmp(plane->edges[i], edge) == 0)
            return true;
    return false;
}

bool layout_run_has_edge(struct amount *results, const struct object *about,
                         const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    if (!layout_plane_open(&plane, about, LAYOUT_EDGES, working))
        return false;
    results[0] = amount_of_yesno(has_side(plane, inputs[0].word));
    return true;
}

struct closest {
    double distance;
    const struct layout_module *module;
    const struct object *thing;
};

static void offer(struct closest *closest, const struct layout_module *module,
                  const struct object *thing, const struct shape *other)
{
    struct shape shape = layout_module_shape(module);
    struct point nearest[2];
    double distance = module->is_off_plane ? 0 : flat_distance(&shape, other, nearest);
    if (closest->module != NULL && distance >= closest->distance)
        return;
    *closest = (struct closest){distance, module, thing};
}

static bool tell(struct amount *results, const struct closest *closest, const char *what,
                 struct working *working)
{
    assert(closest->module != NULL); /* has_modules was asked */
    results[0] = layout_metres(closest->distance);
    results[1] = amount_of_word(closest->module->object->path);
    working_step(working, NULL, "module %s is the nearest to %s, %.6g m in the plane",
                 closest->module->object->path, what, closest->distance);
    return true;
}

static bool has_modules(const struct layout_plane *plane, struct working *working)
{
    return plane->module_count > 0 ||
           working_wrong(working, NULL,
                         "roof plane %s carries no module, so there is no clearance; ask for its "
                         "modules before",
                         plane->object->path);
}

bool layout_run_clearance(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct closest closest = {0, NULL, NULL};
    const char *edge = inputs[0].word;
    if (!layout_plane_open(&plane, about, LAYOUT_EDGES | LAYOUT_MODULES, working) ||
        !has_modules(plane, working))
        return false;
    if (!has_side(plane, edge))
        return working_wrong(working, "edge", "roof plane %s has no %s; ask has_edge before",
                             about->path, edge);
    for (size_t i = 0; i < plane->count; i++) {
        struct shape side = layout_side_of(plane, i);
        for (size_t j = 0; strcmp(plane->edges[i], edge) == 0 && j < plane->module_count; j++)
            offer(&closest, &plane->modules[j], NULL, &side);
    }
    return tell(results, &closest, edge, working);
}

bool layout_run_obstruction_clearance(struct amount *results, const struct object *about,
                                      const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct closest closest = {0, NULL, NULL};
    const char *kind = inputs[0].type == AMOUNT_WORD ? inputs[0].word : NULL;
    if (!layout_plane_open(&plane, about, LAYOUT_MODULES | LAYOUT_OBSTRUCTIONS, working) ||
        !has_modules(plane, working))
        return false;
    for (size_t i = 0; i < plane->obstruction_count; i++) {
        const struct layout_obstruction *one = &plane->obstructions[i];
        const char *is;
        if (kind != NULL && !need_word(&is, one->object, SLOT_obstruction_kind, working))
            return false;
        for (size_t j = 0; (kind == NULL || strcmp(is, kind) == 0) && j < plane->module_count; j++)
            offer(&closest, &plane->modules[j], one->object, &one->shape);
    }
    if (closest.thing == NULL)
        return working_wrong(working, NULL,
                             "roof plane %s has no %s; ask for its obstructions before",
                             about->path, kind != NULL ? kind : "obstruction");
    results[2] = amount_of_word(closest.thing->path);
    return tell(results, &closest, closest.thing->path, working);
}

bool layout_run_over_edge(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    size_t count = 0;
    (void)inputs;
    if (!layout_plane_open(&plane, about, LAYOUT_MODULES, working))
        return false;
    for (size_t i = 0; i < plane->module_count; i++) {
        if (!plane->modules[i].is_over_edge)
            continue;
        if (count++ == 0)
            results[1] = amount_of_word(plane->modules[i].object->path);
        working_step(working, NULL, "module %s stands out past the outline",
                     plane->modules[i].object->path);
    }
    results[0] = amount_of_number((double)count);
    return true;
}

/* Does the module lap over the obstruction by more than the slack? */
static bool is_over(const struct layout_module *module, const struct shape *thing)
{
    const struct point *c = module->corners;
    double s = LAYOUT_SLACK;
    struct point smaller[4] = {{c[0].x + s, c[0].y + s},
                               {c[1].x - s, c[1].y + s},
                               {c[2].x - s, c[2].y - s},
                               {c[3].x + s, c[3].y - s}};
    struct shape core = {smaller, 4, true};
    struct point nearest[2];
    return flat_distance(&core, thing, nearest) <= 0;
}

bool layout_run_over_obstructions(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    size_t count = 0;
    (void)inputs;
    if (!layout_plane_open(&plane, about, LAYOUT_MODULES | LAYOUT_OBSTRUCTIONS, working))
        return false;
    for (size_t i = 0; i < plane->module_count; i++)
        for (size_t j = 0; j < plane->obstruction_count; j++) {
            if (!is_over(&plane->modules[i], &plane->obstructions[j].shape))
                continue;
            if (count++ == 0) {
                results[1] = amount_of_word(plane->modules[i].object->path);
                results[2] = amount_of_word(plane->obstructions[j].object->path);
            }
            working_step(working, NULL, "module %s stands over %s", plane->modules[i].object->path,
                         plane->obstructions[j].object->path);
            break; /* a module counts once */
        }
    results[0] = amount_of_number((double)count);
    return true;
}

bool layout_run_overlapping(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    size_t count = 0;
    (void)inputs;
    if (!layout_plane_open(&plane, about, LAYOUT_MODULES, working))
        return false;
    for (size_t i = 0; i < plane->module_count; i++)
        for (size_t j = i + 1; j < plane->module_count; j++) {
            if (!layout_is_overlapping(&plane->modules[i], &plane->modules[j]))
                continue;
            if (count++ == 0) {
                results[1] = amount_of_word(plane->modules[i].object->path);
                results[2] = amount_of_word(plane->modules[j].object->path);
            }
            working_step(working, NULL, "modules %s and %s lie over each other",
                         plane->modules[i].object->path, plane->modules[j].object->path);
        }
    results[0] = amount_of_number((double)count);
    return true;
}
