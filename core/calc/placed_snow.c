/* Snow on a roof plane, from the facts of site, building and plane. */
#include "placed.h"

#include <math.h>
#include <string.h>

#include "layout_support.h"

static const double foot = 0.3048;
static const double simple_share = 0.7; /* of eave to ridge in plan */
static const char *const basis_words[] = {"service level", "strength level", NULL};

enum { EDITION, BASIS, GROUND, MINIMUM };
#define SNOW_ROWS                                                                                  \
    [EDITION] = GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),                        \
    [BASIS] = GIVEN_WORD("basis", basis_words, "Level of the mapped ground snow load."),           \
    [GROUND] = GIVEN_QUANTITY("ground_snow", PRESSURE, "psf", 0, 500, "Ground snow load, pg.")

const struct parameter placed_snow_inputs[4] = {
    SNOW_ROWS,
    [MINIMUM] =
        MAYBE_QUANTITY("minimum", PRESSURE, "psf", 0, 500, "Least roof snow load of the town."),
};
const struct parameter placed_unbalanced_inputs[3] = {SNOW_ROWS};
const struct parameter placed_snow_results[3] = {
    GIVEN_QUANTITY("load", PRESSURE, "psf", 0, 1000, "On the horizontal projection."),
    GIVEN_QUANTITY("flat", PRESSURE, "psf", 0, 1000, "Flat roof snow load, pf."),
    GIVEN_NUMBER("slope_factor", 0, 1, "Cs."),
};
const struct parameter placed_unbalanced_results[4] = {
    GIVEN_QUANTITY("load", PRESSURE, "psf", 0, 1000, "Largest on the leeward side, in plan."),
    GIVEN_QUANTITY("windward", PRESSURE, "psf", 0, 1000, "On the windward side."),
    GIVEN_YESNO("needed", "Does the roof need the unbalanced case at all?"),
    GIVEN_QUANTITY(
        "reach", LENGTH, "ft", 0, 1000,
        "How far from the ridge in plan that load lies; below it no more than balanced."),
};

/* Inputs of roof_snow and unbalanced_snow, in their order. */
enum {
    SNOW_EDITION,
    SNOW_BASIS,
    SNOW_GROUND,
    SNOW_CE,
    SNOW_CT,
    SNOW_IS,
    SNOW_SLOPE,
    SNOW_SURFACE,
    SNOW_WIDTH,
    SNOW_LAST,
    SNOW_SIMPLE,
    SNOW_WINDWARD
};

static bool find_factor(struct amount *out, const char *name, const struct amount *inputs,
                        size_t count, struct working *working)
{
    struct amount results[CALCULATOR_RESULTS];
    if (!placed_ask(results, snow_calculators, name, NULL, inputs, count, working))
        return false;
    *out = results[0];
    return true;
}

/* Below what is open, or stands apart from the house, nobody heats: `heated` is told of the house.
 */
static bool read_heated(bool *is_heated, const struct object *plane, const struct object *building,
                        struct working *working)
{
    static const char *const cold[] = {"porch", "carport", "shade structure", "detached garage",
                                       "accessory"};
    const char *structure;
    if (!need_word(&structure, plane, SLOT_roof_plane_structure, working))
        return false;
    for (size_t i = 0; i < sizeof cold / sizeof cold[0]; i++)
        if (strcmp(structure, cold[i]) == 0) {
            working_step(working, NULL, "below it is a %s: taken as unheated", structure);
            *is_heated = false;
            return true;
        }
    return need_yesno(is_heated, building, SLOT_building_heated, working);
}

static bool find_factors(struct amount *asked, const struct object *plane, struct working *working)
{
    const struct object *site, *building;
    const char *exposure, *stand, *category;
    bool is_heated, is_ventilated;
    if (!placed_need(&site, SLOT_design_site, working) ||
        !placed_need(&building, SLOT_design_building, working) ||
        !need_word(&exposure, site, SLOT_site_exposure, working) ||
        !need_word(&stand, site, SLOT_site_snow_exposure, working) ||
        !need_word(&category, site, SLOT_site_risk_category, working) ||
        !read_heated(&is_heated, plane, building, working) ||
        !need_yesno(&is_ventilated, building, SLOT_building_ventilated_attic, working))
        return false;
    struct amount wind[] = {amount_of_word(exposure), amount_of_word(stand)};
    struct amount warmth[] = {asked[SNOW_EDITION], amount_of_yesno(is_heated),
                              amount_of_yesno(is_ventilated)};
    struct amount weight[] = {asked[SNOW_EDITION], amount_of_word(category)};
    return find_factor(&asked[SNOW_CE], "snow_exposure_factor", wind, 2, working) &&
           find_factor(&asked[SNOW_CT], "snow_thermal_factor", warmth, 3, working) &&
           find_factor(&asked[SNOW_IS], "snow_importance_factor", weight, 2, working);
}

/* How far the plane reaches up its slope, in plan. */
static double width_of(const struct layout_plane *plane)
{
    double low = INFINITY, high = -INFINITY;
    for (size_t i = 0; i < plane->count; i++) {
        low = fmin(low, plane->corners[i].y);
        high = fmax(high, plane->corners[i].y);
    }
    return (high - low) * plane->cos_slope;
}

/* The array's glass may be slippery, but rails and edges hold the snow: surface "other" (a reviewer
 * may decide otherwise). */
static bool take(struct amount *asked, const struct object *about, const struct amount *inputs,
                 struct working *working)
{
    struct layout_plane *plane;
    struct quantity slope;
    asked[SNOW_EDITION] = inputs[EDITION];
    asked[SNOW_BASIS] = inputs[BASIS];
    asked[SNOW_GROUND] = inputs[GROUND];
    if (!layout_plane_open(&plane, about, LAYOUT_OUTLINE | LAYOUT_SLOPE, working) ||
        !need_quantity(&slope, about, SLOT_roof_plane_slope, working) ||
        !find_factors(asked, about, working))
        return false;
    asked[SNOW_SLOPE] = amount_of_quantity(slope);
    asked[SNOW_SURFACE] = amount_of_word("other");
    asked[SNOW_WIDTH] = result_in(width_of(plane) / foot, "ft");
    return true;
}

static bool is_without_snow(const struct amount *inputs)
{
    return number_compare(inputs[GROUND].quantity.value, 0) <= 0;
}

bool placed_run_snow(struct amount *results, const struct object *about,
                     const struct amount *inputs, struct working *working)
{
    struct amount asked[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}}, found[CALCULATOR_RESULTS];
    if (is_without_snow(inputs)) {
        working_step(working, NULL, "no snow on the ground, none on the roof");
        results[0] = inputs[MINIMUM].type != AMOUNT_NONE ? inputs[MINIMUM] : result_in(0, "psf");
        results[1] = result_in(0, "psf");
        results[2] = amount_of_number(1);
        return true;
    }
    if (!take(asked, about, inputs, working))
        return false;
    asked[SNOW_LAST] = inputs[MINIMUM];
    if (!placed_ask(found, snow_calculators, "roof_snow", NULL, asked, SNOW_LAST + 1, working))
        return false;
    results[0] = found[0];
    results[1] = found[2];
    results[2] = found[3];
    return true;
}

/* How wide the roof is beyond the ridge, from where snow is blown: the widest plane that faces the
 * other way; as wide as this one where there is none. */
static bool take_windward(struct amount *out, const struct object *about, struct working *working)
{
    struct layout_plane **planes;
    size_t count;
    double widest = -1;
    struct quantity mine, other;
    if (!layout_planes_open(&planes, &count, LAYOUT_OUTLINE | LAYOUT_SLOPE, working))
        return false;
    for (size_t i = 0; i < count; i++) {
        if (planes[i]->object == about)
            continue;
        if (!need_quantity(&mine, about, SLOT_roof_plane_azimuth, working) ||
            !need_quantity(&other, planes[i]->object, SLOT_roof_plane_azimuth, working))
            return false;
        if (cos(other.value - mine.value) < -1e-9)
            widest = fmax(widest, width_of(planes[i]));
    }
    if (widest > 0)
        *out = result_in(widest / foot, "ft");
    return true;
}

/* Do its rafters reach from eave to ridge without a support between? What overhangs and what lies
 * on walls is no span; a support between would leave two thirds at most (common practice, no
 * source). */
static bool find_simple(bool *out, const struct object *framing, double width,
                        struct working *working)
{
    const char *kind;
    struct quantity span;
    *out = false;
    if (!need_word(&kind, framing, SLOT_framing_kind, working))
        return false;
    if (strcmp(kind, "rafter") != 0)
        return true;
    if (!need_quantity(&span, framing, SLOT_framing_span, working))
        return false;
    *out = number_compare(span.value, simple_share * width) >= 0;
    if (!*out)
        working_step(working, NULL,
                     "the rafters span %.4g ft of %.4g ft: held between eave and ridge, too",
                     span.value / foot, width / foot);
    return true;
}

static bool take_unbalanced(struct amount *asked, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    const struct object *roof, *framing;
    const char *shape;
    bool is_simple;
    if (!take(asked, about, inputs, working) || !placed_need(&roof, SLOT_design_roof, working) ||
        !need_word(&shape, roof, SLOT_roof_shape, working) ||
        !need_object(&framing, about, SLOT_roof_plane_framing, working))
        return false;
    if (framing == NULL)
        return working_missing(working, about, SLOT_roof_plane_framing);
    if (!find_simple(&is_simple, framing, input_in(asked[SNOW_WIDTH], "m", 0), working))
        return false;
    asked[SNOW_LAST] = amount_of_word(shape);
    asked[SNOW_SIMPLE] = amount_of_yesno(is_simple);
    return true;
}

static void give_none(struct amount *results)
{
    results[0] = results[1] = result_in(0, "psf");
    results[2] = amount_of_yesno(false);
    results[3] = result_in(0, "ft");
}

static bool find_unbalanced(struct amount *results, const struct object *about,
                            struct amount *asked, struct working *working)
{
    struct amount found[CALCULATOR_RESULTS];
    if (!take_windward(&asked[SNOW_WINDWARD], about, working) ||
        !placed_ask(found, snow_calculators, "unbalanced_snow", NULL, asked, SNOW_WINDWARD + 1,
                    working))
        return false;
    results[0] = found[0];
    results[1] = found[2];
    results[2] = found[5];
    results[3] = found[4];
    return true;
}

bool placed_run_unbalanced(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    struct amount asked[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    if (is_without_snow(inputs)) {
        give_none(results);
        return true;
    }
    return take_unbalanced(asked, about, inputs, working) &&
           find_unbalanced(results, about, asked, working);
}

/* What cannot be told stops the rule that asks for unbalanced snow, once for the whole roof; the
 * others go on without it. */
bool placed_run_drifted(struct amount *results, const struct object *about,
                        const struct amount *inputs, struct working *working)
{
    struct amount asked[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    const char *gap = NULL;
    give_none(results);
    if (is_without_snow(inputs))
        return true;
    if (!take_unbalanced(asked, about, inputs, working))
        return false;
    gap = snow_drift_gap(edition_of(inputs[EDITION]), asked[SNOW_IS].quantity.value,
                         asked[SNOW_LAST].word, input_in(asked[SNOW_SLOPE], "°", 0));
    if (gap == NULL)
        return find_unbalanced(results, about, asked, working);
    working_step(working, NULL, "%s: said once for the roof, not counted here", gap);
    return true;
}

bool placed_run_rafter_reach(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    (void)inputs;
    if (!layout_plane_open(&plane, about, LAYOUT_OUTLINE | LAYOUT_SLOPE, working))
        return false;
    results[0] = result_in(width_of(plane) / foot, "ft");
    return true;
}

double placed_below_ridge(const struct layout_plane *plane, double top)
{
    double ridge = INFINITY;
    for (size_t i = 0; i < plane->count; i++)
        if (strcmp(plane->edges[i], "ridge") == 0)
            ridge = fmin(ridge, fmin(plane->corners[i].y, plane->corners[i + 1].y));
    return isfinite(ridge) ? fmax(0, ridge - top) * plane->cos_slope : 0;
}

bool placed_run_module_below_ridge(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct layout_module *module;
    (void)inputs;
    if (!layout_module_open(&plane, &module, about, LAYOUT_EDGES | LAYOUT_SLOPE, working))
        return false;
    results[0] = result_in(placed_below_ridge(plane, module->corners[2].y) / foot, "ft");
    return true;
}

bool placed_run_attachment_below_ridge(struct amount *results, const struct object *about,
                                       const struct amount *inputs, struct working *working)
{
    const struct object *of;
    struct layout_plane *plane;
    const struct layout_support *support;
    (void)inputs;
    if (!layout_plane_of(&of, about, SLOT_attachment_plane, working) ||
        !layout_support_open(&support, &plane, of, working) ||
        !layout_plane_open(&plane, of, LAYOUT_EDGES | LAYOUT_SLOPE, working))
        return false;
    size_t at = layout_place_of(about, support->attachments, support->attachment_count,
                                sizeof *support->attachments);
    if (at == support->attachment_count)
        return working_wrong(working, NULL, "attachment %s stands on another plane", about->path);
    results[0] = result_in(placed_below_ridge(plane, support->attachments[at].top) / foot, "ft");
    return true;
}
