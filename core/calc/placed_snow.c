/* Snow on a roof plane, from the facts of site, building and plane. */
#include "placed.h"

#include <math.h>
#include <string.h>

static const double foot = 0.3048;
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
const struct parameter placed_unbalanced_results[3] = {
    GIVEN_QUANTITY("load", PRESSURE, "psf", 0, 1000, "Largest on the leeward side, in plan."),
    GIVEN_QUANTITY("windward", PRESSURE, "psf", 0, 1000, "On the windward side."),
    GIVEN_YESNO("needed", "Does the roof need the unbalanced case at all?"),
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
    SNOW_SIMPLE
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

static bool find_factors(struct amount *asked, struct working *working)
{
    const struct object *site, *building;
    const char *exposure, *stand, *category;
    bool is_heated, is_ventilated;
    if (!placed_need(&site, SLOT_design_site, working) ||
        !placed_need(&building, SLOT_design_building, working) ||
        !need_word(&exposure, site, SLOT_site_exposure, working) ||
        !need_word(&stand, site, SLOT_site_snow_exposure, working) ||
        !need_word(&category, site, SLOT_site_risk_category, working) ||
        !need_yesno(&is_heated, building, SLOT_building_heated, working) ||
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
        !find_factors(asked, working))
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

bool placed_run_unbalanced(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    struct amount asked[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}}, found[CALCULATOR_RESULTS];
    const struct object *roof, *framing;
    const char *shape, *kind;
    if (is_without_snow(inputs)) {
        results[0] = results[1] = result_in(0, "psf");
        results[2] = amount_of_yesno(false);
        return true;
    }
    if (!take(asked, about, inputs, working) || !placed_need(&roof, SLOT_design_roof, working) ||
        !need_word(&shape, roof, SLOT_roof_shape, working) ||
        !need_object(&framing, about, SLOT_roof_plane_framing, working))
        return false;
    if (framing == NULL)
        return working_missing(working, about, SLOT_roof_plane_framing);
    if (!need_word(&kind, framing, SLOT_framing_kind, working))
        return false;
    asked[SNOW_LAST] = amount_of_word(shape);
    asked[SNOW_SIMPLE] = amount_of_yesno(strcmp(kind, "rafter") == 0);
    if (!placed_ask(found, snow_calculators, "unbalanced_snow", NULL, asked, SNOW_SIMPLE + 1,
                    working))
        return false;
    results[0] = found[0];
    results[1] = found[2];
    results[2] = found[5];
    return true;
}
