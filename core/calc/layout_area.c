/* Areas in the plane and in plan, and the share of the whole roof that the array covers. */
#include "layout_methods.h"

#include <math.h>

struct amount layout_metres(double length)
{
    return amount_of_quantity(
        (struct quantity){.value = length, .dimension = measure_dimension(LENGTH)});
}

struct amount layout_square_metres(double area)
{
    return amount_of_quantity(
        (struct quantity){.value = area, .dimension = measure_dimension(AREA)});
}

struct areas {
    double roof, roof_in_plan, array, array_in_plan;
};

static bool add_plane(struct areas *areas, struct layout_plane *plane, bool is_with_modules,
                      struct working *working)
{
    double covered = 0;
    if (is_with_modules && !layout_covered_area(&covered, plane, working))
        return false;
    areas->roof += plane->area;
    areas->roof_in_plan += plane->area * plane->cos_slope;
    areas->array += covered;
    areas->array_in_plan += covered * plane->cos_slope;
    return true;
}

/* All planes, or those of one building: the one that stands under `of`. */
static bool add_all(struct areas *areas, const struct object *of, bool is_with_modules,
                    struct working *working)
{
    struct layout_plane **planes;
    size_t count, added = 0;
    unsigned parts = LAYOUT_OUTLINE | LAYOUT_SLOPE | (is_with_modules ? LAYOUT_MODULES : 0);
    *areas = (struct areas){0, 0, 0, 0};
    if (!layout_planes_open(&planes, &count, parts, working))
        return false;
    for (size_t i = 0; i < count; i++) {
        bool is_of = true;
        if (of != NULL && !layout_is_one_building(&is_of, planes[i]->object, of, working))
            return false;
        if (is_of && !add_plane(areas, planes[i], is_with_modules, working))
            return false;
        added += is_of;
    }
    working_step(working, NULL, "roof in plan: %zu planes, area times cos(slope), %.6g m² together",
                 added, areas->roof_in_plan);
    if (is_with_modules)
        working_step(working, NULL, "modules: %.6g m² on the surface, %.6g m² in plan",
                     areas->array, areas->array_in_plan);
    return true;
}

bool layout_run_roof_plan_area(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    struct areas areas;
    (void)about, (void)inputs;
    if (!add_all(&areas, NULL, false, working))
        return false;
    results[0] = layout_square_metres(areas.roof_in_plan);
    return true;
}

bool layout_run_roof_array_area(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    struct areas areas;
    (void)about, (void)inputs;
    if (!add_all(&areas, NULL, true, working))
        return false;
    results[0] = layout_square_metres(areas.array);
    return true;
}

bool layout_run_roof_covered_plan_area(struct amount *results, const struct object *about,
                                       const struct amount *inputs, struct working *working)
{
    struct areas areas;
    (void)about, (void)inputs;
    if (!add_all(&areas, NULL, true, working))
        return false;
    results[0] = layout_square_metres(areas.array_in_plan);
    return true;
}

/* Share of the building under a plane. */
static bool find_share(double *share, const struct object *of, struct working *working)
{
    struct areas areas;
    if (!add_all(&areas, of, true, working))
        return false;
    if (!(areas.roof_in_plan > 0))
        return working_beyond(working, "the roof has no area in plan");
    *share = areas.array_in_plan / areas.roof_in_plan;
    return true;
}

bool layout_run_covered_share(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    struct layout_plane **planes;
    size_t count;
    double most = 0;
    (void)about, (void)inputs;
    if (!layout_planes_open(&planes, &count, LAYOUT_MODULES, working))
        return false;
    if (count == 0)
        return working_beyond(working, "the roof has no area in plan");
    for (size_t i = 0; i < count; i++) {
        double share = 0;
        bool is_told = false;
        if (planes[i]->module_count == 0) /* a building without any has no share */
            continue;
        for (size_t j = 0; j < i && !is_told; j++)
            if (planes[j]->module_count > 0 &&
                !layout_is_one_building(&is_told, planes[i]->object, planes[j]->object, working))
                return false;
        if (!is_told && !find_share(&share, planes[i]->object, working))
            return false;
        most = fmax(most, share);
    }
    results[0] = amount_of_number(most);
    return true;
}

bool layout_run_building_share(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    double share;
    (void)inputs;
    if (!find_share(&share, about, working))
        return false;
    results[0] = amount_of_number(share);
    return true;
}

static bool add_one(struct areas *areas, const struct object *about, unsigned parts,
                    struct working *working)
{
    struct layout_plane *plane;
    *areas = (struct areas){0, 0, 0, 0};
    return layout_plane_open(&plane, about, parts, working) &&
           add_plane(areas, plane, (parts & LAYOUT_MODULES) != 0, working);
}

bool layout_run_area(struct amount *results, const struct object *about,
                     const struct amount *inputs, struct working *working)
{
    struct areas areas;
    (void)inputs;
    if (!add_one(&areas, about, LAYOUT_OUTLINE, working))
        return false;
    results[0] = layout_square_metres(areas.roof);
    return true;
}

bool layout_run_plan_area(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    struct areas areas;
    (void)inputs;
    if (!add_one(&areas, about, LAYOUT_OUTLINE | LAYOUT_SLOPE, working))
        return false;
    working_step(working, NULL, "%.6g m² on the surface, times cos(slope)", areas.roof);
    results[0] = layout_square_metres(areas.roof_in_plan);
    return true;
}

bool layout_run_covered_area(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    struct areas areas;
    (void)inputs;
    if (!add_one(&areas, about, LAYOUT_MODULES, working))
        return false;
    results[0] = layout_square_metres(areas.array);
    return true;
}

bool layout_run_covered_plan_area(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    struct areas areas;
    (void)inputs;
    if (!add_one(&areas, about, LAYOUT_MODULES | LAYOUT_SLOPE, working))
        return false;
    results[0] = layout_square_metres(areas.array_in_plan);
    return true;
}

bool layout_run_module_count(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    (void)inputs;
    if (!layout_plane_open(&plane, about, LAYOUT_MODULES, working))
        return false;
    results[0] = amount_of_number((double)plane->module_count);
    return true;
}
