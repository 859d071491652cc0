/* Sections of the array: modules nearer to each other than a gap belong together. */
#include "layout_methods.h"

#include <math.h>

struct sections {
    size_t *of; /* section of each module, 0.. */
    size_t count;
    double gap; /* least distance of two sections; infinite where there is one */
};

static double distance(const struct layout_module *a, const struct layout_module *b)
{
    struct shape one = layout_module_shape(a), two = layout_module_shape(b);
    struct point nearest[2];
    return flat_distance(&one, &two, nearest);
}

/* Gives all of a module's section the number of another's. */
static void merge(struct sections *sections, size_t count, size_t from, size_t to)
{
    size_t old = sections->of[from], new = sections->of[to];
    for (size_t i = 0; i < count; i++)
        if (sections->of[i] == old)
            sections->of[i] = new;
}

static bool find_sections(struct sections *sections, const struct layout_plane *plane, double join,
                          struct working *working)
{
    size_t count = plane->module_count;
    sections->gap = INFINITY;
    sections->count = count;
    sections->of = arena_take(working->arena, count * sizeof *sections->of);
    if (sections->of == NULL)
        return working_short(working);
    for (size_t i = 0; i < count; i++)
        sections->of[i] = i;
    for (size_t i = 0; i < count; i++)
        for (size_t j = 0; j < i; j++)
            if (sections->of[i] != sections->of[j] &&
                distance(&plane->modules[i], &plane->modules[j]) < join - LAYOUT_SLACK) {
                merge(sections, count, i, j);
                sections->count--;
            }
    for (size_t i = 0; i < count; i++)
        for (size_t j = 0; j < i; j++)
            if (sections->of[i] != sections->of[j])
                sections->gap =
                    fmin(sections->gap, distance(&plane->modules[i], &plane->modules[j]));
    return true;
}

static bool open_sections(struct sections *sections, struct layout_plane **plane,
                          const struct object *about, const struct amount *inputs,
                          struct working *working)
{
    return layout_plane_open(plane, about, LAYOUT_MODULES, working) &&
           find_sections(sections, *plane, inputs[0].quantity.value, working);
}

bool layout_run_section_count(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct sections sections;
    if (!open_sections(&sections, &plane, about, inputs, working))
        return false;
    results[0] = amount_of_number((double)sections.count);
    return true;
}

static void stretch(struct point *along, struct point *up, const struct layout_module *module)
{
    *along =
        (struct point){fmin(along->x, module->corners[0].x), fmax(along->y, module->corners[2].x)};
    *up = (struct point){fmin(up->x, module->corners[0].y), fmax(up->y, module->corners[2].y)};
}

bool layout_run_section_length(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct sections sections;
    double longest_along = 0, longest_up = 0;
    if (!open_sections(&sections, &plane, about, inputs, working))
        return false;
    for (size_t i = 0; i < plane->module_count; i++) {
        struct point along = {INFINITY, -INFINITY}, up = along; /* least and most */
        for (size_t j = 0; j < plane->module_count; j++)
            if (sections.of[j] == sections.of[i])
                stretch(&along, &up, &plane->modules[j]);
        longest_along = fmax(longest_along, along.y - along.x);
        longest_up = fmax(longest_up, up.y - up.x);
    }
    working_step(working, NULL,
                 "%zu sections; the longest reaches %.6g m along the eave, %.6g m up",
                 sections.count, longest_along, longest_up);
    results[0] = layout_metres(fmax(longest_along, longest_up));
    results[1] = layout_metres(longest_along);
    results[2] = layout_metres(longest_up);
    return true;
}

bool layout_run_section_gap(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct sections sections;
    if (!open_sections(&sections, &plane, about, inputs, working))
        return false;
    if (sections.count < 2)
        return working_wrong(working, NULL,
                             "the array on roof plane %s has fewer than two sections, so there is "
                             "no gap; ask section_count before",
                             about->path);
    results[0] = layout_metres(sections.gap);
    return true;
}
