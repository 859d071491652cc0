/* Wind on modules and attachments where they lie, from the facts of site, building and roof. */
#include "placed_wind.h"

#include <math.h>
#include <string.h>

#include "layout_build.h"
#include "layout_methods.h"

static const double foot = 0.3048;
static const double square_foot = 0.3048 * 0.3048;

bool placed_ask(struct amount *results, const struct calculator *list, const char *name,
                const struct object *about, const struct amount *inputs, size_t count,
                struct working *working)
{
    struct amount all[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    enum kind_id kind = about != NULL ? about->kind->id : KIND_NONE;
    const struct calculator *calculator = list;
    while (calculator->about_kind != kind || calculator->name[0] != name[0] ||
           strcmp(calculator->name, name) != 0)
        calculator++; /* it is there: the names stand in this file and its neighbours */
    if (count > 0)
        memcpy(all, inputs, count * sizeof *inputs);
    return calculator_run(calculator, results, about, all, working);
}

bool placed_need(const struct object **out, unsigned slot, struct working *working)
{
    return need_object(out, working->design->root, slot, working) &&
           (*out != NULL || working_missing(working, working->design->root, slot));
}

#define WIND_ROWS                                                                                  \
    [WIND_EDITION] = GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),                   \
    [WIND_SPEED] = GIVEN_QUANTITY("speed", SPEED, "mph", 50, 250, "Basic wind speed (ultimate)."), \
    [WIND_MINIMUM] = MAYBE_QUANTITY("minimum", PRESSURE, "psf", 0, 100,                            \
                                    "Least pressure either way, where the book asks for one.")
enum { WIND_SHARE = WIND_INPUTS };
const struct parameter placed_wind_inputs[WIND_INPUTS] = {WIND_ROWS};
static const struct parameter module_wind_inputs[] = {
    WIND_ROWS, [WIND_SHARE] = MAYBE_NUMBER("share", 0.01, 1,
                                           "Part of its area that what is judged carries, such as "
                                           "a clamp. Absent: all of it.")};
static const struct parameter pressure_results[] = {
    GIVEN_QUANTITY("uplift", PRESSURE, "psf", 0, 5000, "Away from the roof, ultimate level."),
    GIVEN_QUANTITY("down", PRESSURE, "psf", 0, 5000, "Towards the roof, ultimate level."),
    GIVEN_WORD("zone", NULL, "The wind zone it lies in."),
    GIVEN_QUANTITY("area", AREA, "ft²", 0, 10000, "The area that carries wind to it."),
    GIVEN_YESNO("exposed", "Does it lie at an exposed edge of the array?"),
    GIVEN_NUMBER("uplift_coefficient", -10, 10, "GCp for uplift."),
};

static const struct parameter below_ridge_results[] = {
    GIVEN_QUANTITY("distance", LENGTH, "ft", 0, 1000, "In plan; 0 where the plane has no ridge.")};

bool placed_read_site(struct wind_place *place, struct working *working)
{
    return placed_need(&place->site, SLOT_design_site, working) &&
           need_word(&place->exposure, place->site, SLOT_site_exposure, working) &&
           need_quantity(&place->elevation, place->site, SLOT_site_elevation, working) &&
           need_number(&place->topographic, place->site, SLOT_site_topographic_factor, working);
}

bool placed_read_building(struct wind_place *place, struct working *working)
{
    return placed_need(&place->building, SLOT_design_building, working) &&
           placed_need(&place->roof, SLOT_design_roof, working) &&
           need_quantity(&place->height, place->building, SLOT_building_mean_roof_height,
                         working) &&
           need_quantity(&place->width, place->building, SLOT_building_width, working) &&
           need_word(&place->enclosure, place->building, SLOT_building_enclosure, working) &&
           need_word(&place->shape, place->roof, SLOT_roof_shape, working) &&
           need_quantity(&place->slope, place->plane, SLOT_roof_plane_slope, working);
}

bool placed_read_racking(struct wind_place *place, struct working *working)
{
    return placed_need(&place->racking, SLOT_design_racking, working) &&
           need_quantity(&place->above, place->racking, SLOT_racking_height_above_roof, working) &&
           need_quantity(&place->tilt, place->racking, SLOT_racking_tilt, working) &&
           need_quantity(&place->gap, place->racking, SLOT_racking_module_gap, working);
}

/* The least distance of a module to an edge of the roof or to a ridge; valleys and walls are none.
 */
double placed_edge_distance(const struct placed_spot *spot)
{
    struct shape shape = layout_module_shape(spot->module);
    double least = INFINITY;
    if (spot->module->edge_distance >= 0)
        return spot->module->edge_distance;
    for (size_t i = 0; i < spot->plane->count; i++) {
        struct shape side = layout_side_of(spot->plane, i);
        struct point nearest[2];
        const char *kind = spot->plane->edges[i];
        if (strcmp(kind, "valley") != 0 && strcmp(kind, "wall") != 0)
            least = fmin(least, flat_distance(&shape, &side, nearest));
    }
    return spot->module->edge_distance = spot->module->is_over_edge ? 0 : least;
}

/* 7-10 has no section for panels; its practice takes the roof's own pressure for those that lie
 * flat and near it, as later editions mean it: up to 2° and 10 in. */
static bool is_covered_by_practice(const struct wind_place *place, struct working *working)
{
    double above = place->above.value / foot * 12;
    if (number_compare(place->tilt.value, 2 * acos(-1) / 180) > 0)
        return working_beyond(working, "the panels are tilted against the roof, and no pressures "
                                       "of ASCE 7-10 are at hand for such");
    return number_compare(above, 10) <= 0 ||
           working_beyond(working,
                          "the panels stand %.4g in above the roof, and no pressures of ASCE 7-10 "
                          "are at hand for more than 10 in",
                          above);
}

/* May the section for panels parallel to the roof be used? */
bool placed_is_covered(const struct wind_place *place, const struct placed_spot *spot,
                       struct amount edition, struct working *working)
{
    struct amount results[CALCULATOR_RESULTS];
    const struct point *corners = spot->module->corners;
    double longer = fmax(corners[2].x - corners[0].x, corners[2].y - corners[0].y);
    /* Where modules are drawn closer than is said, as drawn. */
    double drawn = fmax(0, spot->plane->least_gap);
    bool is_closer = number_compare(drawn + LAYOUT_SLACK, place->gap.value) < 0;
    struct amount inputs[] = {edition,
                              amount_of_word(place->enclosure),
                              amount_of_quantity(place->tilt),
                              amount_of_quantity(place->above),
                              is_closer ? result_in(drawn / foot * 12, "in")
                                        : amount_of_quantity(place->gap),
                              result_in(longer / foot, "ft"),
                              result_in(fmin(placed_edge_distance(spot) / foot * 12, 20000), "in")};
    if (edition_of(edition) == ASCE_7_10)
        return is_covered_by_practice(place, working);
    return placed_ask(results, wind_calculators, "parallel_section", NULL, inputs, 7, working);
}

static bool find_zone(struct amount *zone, const struct wind_place *place,
                      const struct object *about, struct amount edition, struct working *working)
{
    struct amount strips[CALCULATOR_RESULTS], results[CALCULATOR_RESULTS];
    struct amount inputs[] = {edition, amount_of_word(place->shape),
                              amount_of_quantity(place->slope), amount_of_quantity(place->height),
                              amount_of_quantity(place->width)};
    if (!placed_ask(strips, wind_calculators, "zone_width", NULL, inputs, 5, working))
        return false;
    struct amount asked[] = {strips[3], strips[0], strips[1], strips[2]};
    if (!placed_ask(results, layout_calculators, "zone", about, asked, 4, working))
        return false;
    *zone = results[0];
    return true;
}

bool placed_find_coefficients(struct amount *uplift, struct amount *down,
                              const struct wind_place *place, struct amount edition,
                              struct amount zone, struct amount area, struct working *working)
{
    struct amount results[CALCULATOR_RESULTS];
    struct amount inputs[] = {edition,
                              amount_of_word(place->shape),
                              amount_of_quantity(place->slope),
                              zone,
                              area,
                              amount_of_word(direction_words[0]),
                              {.type = AMOUNT_NONE},
                              amount_of_number(fmin(20, place->height.value / place->width.value))};
    if (!placed_ask(results, wind_calculators, "external_pressure_coefficient", NULL, inputs, 8,
                    working))
        return false;
    *uplift = results[0];
    inputs[5] = amount_of_word(direction_words[1]);
    if (!placed_ask(results, wind_calculators, "external_pressure_coefficient", NULL, inputs, 8,
                    working))
        return false;
    *down = results[0];
    return true;
}

bool placed_find_velocity_pressure(struct amount *out, const struct wind_place *place,
                                   const struct amount *inputs, struct working *working)
{
    struct amount results[CALCULATOR_RESULTS];
    struct amount asked[] = {inputs[WIND_EDITION],
                             inputs[WIND_SPEED],
                             amount_of_word(place->exposure),
                             amount_of_quantity(place->height),
                             amount_of_number(place->topographic),
                             amount_of_quantity(place->elevation)};
    if (!placed_ask(results, wind_calculators, "velocity_pressure", NULL, asked, 6, working))
        return false;
    *out = results[0];
    return true;
}

static bool work_out(struct amount *results, const struct object *about,
                     const struct wind_place *place, const struct placed_spot *spot,
                     double square_metres, const struct amount *inputs, struct working *working)
{
    struct amount zone, q, uplift, down, panel[CALCULATOR_RESULTS];
    struct amount area = result_in(fmax(square_metres / square_foot, 0.1), "ft²");
    if (!placed_is_covered(place, spot, inputs[WIND_EDITION], working) ||
        !placed_find_velocity_pressure(&q, place, inputs, working) ||
        !find_zone(&zone, place, about, inputs[WIND_EDITION], working) ||
        !placed_find_coefficients(&uplift, &down, place, inputs[WIND_EDITION], zone, area, working))
        return false;
    bool is_exposed = placed_is_exposed(spot, place->height.value, place->above.value,
                                        strcmp(place->shape, "monoslope") == 0);
    struct amount asked[] = {
        inputs[WIND_EDITION], q, uplift, down, area, amount_of_yesno(is_exposed),
        inputs[WIND_MINIMUM]};
    if (!placed_ask(panel, wind_calculators, "panel_pressure", NULL, asked, 7, working))
        return false;
    results[0] = panel[0];
    results[1] = panel[1];
    results[2] = zone;
    results[3] = area;
    results[4] = amount_of_yesno(is_exposed);
    results[5] = uplift;
    return true;
}

/* The same for all that lies on the plane. */
static bool read_wind(struct layout_plane *plane, struct working *working)
{
    struct wind_place *place = arena_take(working->layout->arena, sizeof *place);
    if (place == NULL)
        return working_short(working);
    place->plane = plane->object;
    plane->wind = place;
    return placed_read_site(place, working) && placed_read_building(place, working) &&
           placed_read_racking(place, working);
}

static bool find_pressure(struct amount *results, const struct object *about,
                          const struct placed_spot *spot, double square_metres,
                          const struct amount *inputs, struct working *working)
{
    return layout_build(&spot->plane->wind_read, read_wind, spot->plane, working) &&
           work_out(results, about, spot->plane->wind, spot, square_metres, inputs, working);
}

static bool run_module_wind_pressure(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct layout_module *module;
    if (!layout_module_open(&plane, &module, about, LAYOUT_EDGES | LAYOUT_SLOPE, working))
        return false;
    struct placed_spot spot = {plane, module, module->corners[0], module->corners[2]};
    double share = inputs[WIND_SHARE].type != AMOUNT_NONE ? inputs[WIND_SHARE].quantity.value : 1;
    return find_pressure(results, about, &spot, share * flat_area(module->corners, 4), inputs,
                         working);
}

static double outside(double low, double at, double high)
{
    return at < low ? low - at : at > high ? at - high : 0;
}

/* How far an upright rectangle is from a point, squared. */
static double square_to(const struct layout_module *module, struct point at)
{
    const struct point *low = &module->corners[0], *high = &module->corners[2];
    double x = outside(low->x, at.x, high->x), y = outside(low->y, at.y, high->y);
    return x * x + y * y;
}

/* The module that the point lies under, or the nearest; of two as near the first. */
static struct layout_module *nearest_module(const struct layout_plane *plane, struct point at)
{
    struct layout_module *nearest = NULL;
    double least = INFINITY, bound = INFINITY;
    struct shape point = {&at, 1, false};
    for (size_t i = 0; i < plane->module_count; i++)
        bound = fmin(bound, square_to(&plane->modules[i], at));
    for (size_t i = 0; i < plane->module_count; i++) {
        struct shape shape = layout_module_shape(&plane->modules[i]);
        struct point ends[2];
        if (square_to(&plane->modules[i], at) > bound + LAYOUT_SLACK * LAYOUT_SLACK)
            continue; /* surely farther, rounding and all */
        double distance = flat_contains(&shape, at, 0) ? 0 : flat_distance(&shape, &point, ends);
        if (distance < least) {
            least = distance;
            nearest = &plane->modules[i];
        }
    }
    return nearest;
}

static bool run_attachment_wind_pressure(struct amount *results, const struct object *about,
                                         const struct amount *inputs, struct working *working)
{
    const struct object *of;
    const struct fact *at;
    struct layout_plane *plane;
    struct amount area[CALCULATOR_RESULTS];
    if (!layout_plane_of(&of, about, SLOT_attachment_plane, working) ||
        !layout_need_fact(&at, about, SLOT_attachment_at, working) ||
        !layout_plane_open(&plane, of, LAYOUT_MODULES | LAYOUT_EDGES | LAYOUT_SLOPE, working) ||
        !placed_ask(area, layout_calculators, "tributary_area", about, NULL, 0, working))
        return false;
    struct point point = at->is.point;
    struct placed_spot spot = {plane, nearest_module(plane, point), point, point};
    if (spot.module == NULL)
        return working_beyond(working,
                              "attachment %s stands on roof plane %s, where no module lies",
                              about->path, of->path);
    if (!find_pressure(results, about, &spot, area[0].quantity.value, inputs, working))
        return false;
    results[3] = area[0];
    return true;
}

static const char placed_source[] =
    "ASCE 7-16 and 7-22 29.4.4, 7-10 30.4 (secondary source; exposed edges partly from memory)";
static const char bare_source[] =
    "ASCE 7-10 Eq. 30.4-1, 7-16 and 7-22 Eq. 30.3-1 (secondary source; area of a member from "
    "memory)";
static const char snow_source[] = "ASCE 7 chapter 7 (secondary source)";

const struct calculator placed_calculators[] = {
    METHOD_CALCULATOR(module, wind_pressure, module_wind_inputs, pressure_results,
                      "Wind on the module where it lies, ultimate level.", placed_source),
    METHOD_CALCULATOR(attachment, wind_pressure, placed_wind_inputs, pressure_results,
                      "Wind on the part of the array that the attachment carries, ultimate level.",
                      placed_source),
    {"wind_down", KIND_framing, "Wind towards the roof on its rafters without the array, ultimate.",
     bare_source, ROWS(placed_wind_inputs), ROWS(placed_down_results), placed_run_bare_down},
    {"array_wind_down", KIND_roof_plane,
     "Largest wind towards the roof on what any attachment of the plane carries, ultimate.",
     placed_source, ROWS(placed_wind_inputs), ROWS(placed_down_results), placed_run_array_down},
    {"find_wind", KIND_roof_plane,
     "Whether wind on the plane's array is covered by the figures at hand; else a person judges.",
     placed_source, ROWS(placed_wind_study_inputs), ROWS(placed_wind_study_results),
     placed_run_find_wind},
    {"has_wind", KIND_roof_plane, "The same as yes or no, for rules that go on without wind.",
     placed_source, ROWS(placed_wind_study_inputs), ROWS(placed_wind_study_results),
     placed_run_has_wind},
    {"snow_load", KIND_roof_plane, "Balanced snow on the plane.", snow_source,
     ROWS(placed_snow_inputs), ROWS(placed_snow_results), placed_run_snow},
    {"unbalanced_snow", KIND_roof_plane, "Snow that wind has moved onto the plane.",
     "ASCE 7-10 and 7-16 7.6.1 (partly from memory)", ROWS(placed_unbalanced_inputs),
     ROWS(placed_unbalanced_results), placed_run_unbalanced},
    {"drifted_snow", KIND_roof_plane,
     "The same for rules that go on without it: not needed where it is not at hand.",
     "ASCE 7-10 and 7-16 7.6.1 (partly from memory)", ROWS(placed_unbalanced_inputs),
     ROWS(placed_unbalanced_results), placed_run_drifted},
    {"rafter_reach", KIND_roof_plane,
     "How far its rafters reach from its eave to its highest edge.", NULL, NULL, 0,
     ROWS(below_ridge_results), placed_run_rafter_reach},
    {"below_ridge", KIND_module, "How far below the ridge it begins.", NULL, NULL, 0,
     ROWS(below_ridge_results), placed_run_module_below_ridge},
    {"below_ridge", KIND_attachment, "How far below the ridge the modules that it carries begin.",
     NULL, NULL, 0, ROWS(below_ridge_results), placed_run_attachment_below_ridge},
    {.name = NULL},
};
