#include "snow.h"

#include <math.h>
#include <string.h>

#include "structural.h"

static const double degree = 3.14159265358979323846 / 180;
static const char *const surface_words[] = {"unobstructed slippery", "other", NULL};
static const char *const basis_words[] = {"service level", "strength level", NULL};

/* What several snow calculators take, read by read_ground. */
#define SNOW_INPUTS                                                                                \
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),                                    \
        GIVEN_WORD("basis", basis_words, "Level of the mapped ground snow load."),                 \
        GIVEN_QUANTITY("ground_snow", PRESSURE, "psf", 0, 500, "Ground snow load, pg."),           \
        GIVEN_NUMBER("exposure_factor", 0.7, 1.2, "Ce."),                                          \
        GIVEN_NUMBER("thermal_factor", 0.85, 1.3, "Ct."),                                          \
        GIVEN_NUMBER("importance_factor", 0.8, 1.2, "Is; 1 under 7-22, which has none.")

struct ground {
    enum wind_edition edition;
    double snow, exposure, thermal, importance; /* psf */
    double flat;                                /* pf, psf */
};

/* The level of a map and the edition belong together: 7-22 maps are made at strength level. */
static bool check_basis(enum wind_edition edition, const char *basis, double importance,
                        struct working *working)
{
    bool is_strength = strcmp(basis, "strength level") == 0;
    if (is_strength != (edition == ASCE_7_22))
        return working_beyond(working,
                              "ASCE %s works with ground snow of %s, and this one is of %s: no "
                              "sourced way from one to the other",
                              edition_words[edition],
                              is_strength ? "service level" : "strength level", basis);
    if (edition == ASCE_7_22 && number_compare(importance, 1) != 0)
        return working_wrong(working, "importance_factor",
                             "importance_factor is %.4g, but ASCE 7-22 has none (its maps are made "
                             "for the risk category): give 1",
                             importance);
    return true;
}

static bool read_ground(struct ground *out, const struct amount *inputs, struct working *working)
{
    out->edition = edition_of(inputs[0]);
    out->snow = input_in(inputs[2], "psf", 0);
    out->exposure = input_in(inputs[3], "", 1);
    out->thermal = input_in(inputs[4], "", 1);
    out->importance = input_in(inputs[5], "", 1);
    if (!check_basis(out->edition, inputs[1].word, out->importance, working))
        return false;
    out->flat = 0.7 * out->exposure * out->thermal * out->importance * out->snow;
    working_step(working, "ASCE 7-10 Eq. 7.3-1, 7-16 and 7-22 Eq. 7.3-1 (secondary source)",
                 "pf = 0.7 x Ce %.3g x Ct %.3g x Is %.3g x pg %.4g psf = %.4g psf", out->exposure,
                 out->thermal, out->importance, out->snow, out->flat);
    return true;
}

static const struct parameter flat_roof_snow_inputs[] = {SNOW_INPUTS};
static const struct parameter flat_roof_snow_results[] = {
    GIVEN_QUANTITY("load", PRESSURE, "psf", 0, 1000, "Flat roof snow load, pf."),
    GIVEN_WORD("basis", basis_words, "Its level.")};

static bool run_flat_roof_snow(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)about;
    struct ground ground;
    if (!read_ground(&ground, inputs, working))
        return false;
    results[0] = result_in(ground.flat, "psf");
    results[1] = amount_of_word(inputs[1].word);
    return true;
}

static const struct parameter snow_exposure_factor_inputs[] = {
    GIVEN_WORD("exposure", words_for_exposure, "Terrain, as for wind."),
    GIVEN_WORD("roof", words_for_snow_exposure, "How the roof stands to the wind.")};
static const struct parameter snow_exposure_factor_results[] = {
    GIVEN_NUMBER("factor", 0.7, 1.2, "Exposure factor, Ce.")};

static bool run_snow_exposure_factor(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    (void)about;
    double factor;
    if (!snow_exposure_find(&factor, inputs[0].word, inputs[1].word))
        return working_beyond(working, "no exposure factor is at hand for terrain %s, %s",
                              inputs[0].word, inputs[1].word);
    results[0] = amount_of_number(factor);
    return true;
}

static const struct parameter snow_thermal_factor_inputs[] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_YESNO("heated", "Is the building heated in winter?"),
    GIVEN_YESNO("ventilated", "Is the roof ventilated below its deck (a cold roof)?")};
static const struct parameter snow_thermal_factor_results[] = {
    GIVEN_NUMBER("factor", 0.85, 1.3, "Thermal factor, Ct.")};

static bool run_snow_thermal_factor(struct amount *results, const struct object *about,
                                    const struct amount *inputs, struct working *working)
{
    (void)about;
    if (edition_of(inputs[0]) == ASCE_7_22)
        return working_beyond(working, "ASCE 7-22 takes Ct from tables by insulation and ground "
                                       "snow, and those are not at hand");
    double factor = !inputs[1].yes  ? thermal_unheated
                    : inputs[2].yes ? thermal_cold_ventilated
                                    : thermal_heated;
    working_step(working, "ASCE 7-10 Table 7-3, 7-16 Table 7.3-2 (secondary source)",
                 "%s: Ct = %.2g",
                 !inputs[1].yes  ? "unheated"
                 : inputs[2].yes ? "heated, cold ventilated roof (taken as R-25 or more)"
                                 : "heated",
                 factor);
    results[0] = amount_of_number(factor);
    return true;
}

static const struct parameter snow_importance_factor_inputs[] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_WORD("risk_category", words_for_risk_category, "Risk category of the building.")};
static const struct parameter snow_importance_factor_results[] = {
    GIVEN_NUMBER("factor", 0.8, 1.2, "Importance factor, Is; 1 where the edition has none.")};

static bool run_snow_importance_factor(struct amount *results, const struct object *about,
                                       const struct amount *inputs, struct working *working)
{
    (void)about;
    double factor = 1;
    if (edition_of(inputs[0]) == ASCE_7_22)
        working_step(working, "ASCE 7-22 chapter 7 (secondary source)",
                     "no importance factor: the ground snow maps are made for the risk category");
    else if (!snow_importance_find(&factor, inputs[1].word))
        return working_beyond(working, "no importance factor is at hand for risk category %s",
                              inputs[1].word);
    results[0] = amount_of_number(factor);
    return true;
}

/* Cs. Under 7-22 only where every curve at hand is still at 1: its own curves are not sourced. */
static bool find_slope_factor(double *out, enum wind_edition edition, double slope, double thermal,
                              bool is_slippery, struct working *working)
{
    const struct slope_line *line = slope_line_find(thermal, is_slippery);
    if (line == NULL)
        return working_beyond(working,
                              "no roof slope factor is at hand for Ct %.4g: the curves are for Ct "
                              "to 1.0, 1.1, and 1.2 or more",
                              thermal);
    *out = fmin(1, fmax(0, 1 - (slope - line->full_to) / (line->none_from - line->full_to)));
    if (edition == ASCE_7_22 && *out < 1)
        return working_beyond(working,
                              "the roof slope factor curves of ASCE 7-22 are not at hand, and a "
                              "slope of %.4g° is past where the earlier ones begin to fall (%.4g°)",
                              slope, line->full_to);
    working_step(working, "ASCE 7-10 Fig. 7-2, 7-16 Fig. 7.4-1 (secondary source)",
                 "%s surface, Ct %.3g: Cs = 1 to %.4g°, 0 from %.4g°; at %.4g° %.4g",
                 is_slippery ? "unobstructed slippery" : "other", thermal, line->full_to,
                 line->none_from, slope, *out);
    return true;
}

static const struct parameter snow_slope_factor_inputs[] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_QUANTITY("slope", ANGLE, "°", 0, 90, "Slope of the plane."),
    GIVEN_NUMBER("thermal_factor", 0.85, 1.3, "Ct."),
    GIVEN_WORD("surface", surface_words,
               "Slippery only where snow can slide off freely; else other.")};
static const struct parameter snow_slope_factor_results[] = {
    GIVEN_NUMBER("factor", 0, 1, "Roof slope factor, Cs.")};

static bool run_snow_slope_factor(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    (void)about;
    double factor;
    if (!find_slope_factor(&factor, edition_of(inputs[0]), input_in(inputs[1], "°", 0),
                           input_in(inputs[2], "", 1), strcmp(inputs[3].word, "other") != 0,
                           working))
        return false;
    results[0] = amount_of_number(factor);
    return true;
}

static const struct parameter roof_snow_inputs[] = {
    SNOW_INPUTS,
    GIVEN_QUANTITY("slope", ANGLE, "°", 0, 90, "Slope of the plane."),
    GIVEN_WORD("surface", surface_words,
               "Slippery only where snow can slide off freely; else other."),
    GIVEN_QUANTITY("eave_to_ridge", LENGTH, "ft", 0.5, 1000, "From eave to ridge in plan, W."),
    MAYBE_QUANTITY("minimum", PRESSURE, "psf", 0, 500,
                   "Least roof snow load of the town; under 7-22 below 15° it must be given."),
};
static const struct parameter roof_snow_results[] = {
    GIVEN_QUANTITY("load", PRESSURE, "psf", 0, 1000,
                   "Balanced roof snow to design for, on the horizontal projection."),
    GIVEN_QUANTITY("sloped", PRESSURE, "psf", 0, 1000, "Sloped roof snow load, ps = Cs pf."),
    GIVEN_QUANTITY("flat", PRESSURE, "psf", 0, 1000, "Flat roof snow load, pf."),
    GIVEN_NUMBER("slope_factor", 0, 1, "Cs."),
    GIVEN_QUANTITY("minimum", PRESSURE, "psf", 0, 1000, "Minimum that applies; 0: none."),
    GIVEN_QUANTITY("rain", PRESSURE, "psf", 0, 20, "Rain-on-snow surcharge; 0: none.")};

/* The minimum for low slopes, or the town's if that is more. */
static bool find_minimum(double *out, const struct ground *ground, double slope,
                         struct amount given, struct working *working)
{
    bool is_low = number_compare(slope, snow_minimum_slope) < 0;
    *out = input_in(given, "psf", 0);
    if (!is_low)
        return true;
    if (ground->edition == ASCE_7_22)
        return given.type != AMOUNT_NONE ||
               working_beyond(working, "the minimum roof snow loads of ASCE 7-22 Table 7.3-4 are "
                                       "not at hand, and a slope below 15° needs one: give it");
    double least = ground->importance * fmin(ground->snow, snow_minimum_ground);
    working_step(working,
                 "ASCE 7-10 7.3.4, 7-16 7.3.4 (over 20 psf: secondary source; to 20 psf: from "
                 "memory)",
                 "slope %.4g° below 15°: pm = Is x least of pg and 20 psf = %.4g psf", slope,
                 least);
    *out = fmax(*out, least);
    return true;
}

static bool find_rain(double *out, const struct ground *ground, double slope, double width,
                      struct working *working)
{
    *out = 0;
    if (number_compare(slope, width / rain_on_snow_width) >= 0 || ground->snow <= 0)
        return true;
    if (ground->edition == ASCE_7_22)
        return working_beyond(working,
                              "a slope of %.4g° is below W/50, and when ASCE 7-22 adds rain on "
                              "snow (8 psf) is not at hand",
                              slope);
    if (number_compare(ground->snow, rain_on_snow_ground) > 0)
        return true;
    *out = rain_on_snow;
    working_step(working,
                 "ASCE 7-10 7.10, 7-16 7.10 (pg limit: secondary source; rest from memory)",
                 "pg %.4g psf to 20 psf and slope %.4g° below W/50 = %.4g: rain adds %g psf",
                 ground->snow, slope, width / rain_on_snow_width, rain_on_snow);
    return true;
}

static bool run_roof_snow(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    (void)about;
    struct ground ground;
    double factor, minimum, rain, slope = input_in(inputs[6], "°", 0);
    if (!read_ground(&ground, inputs, working) ||
        !find_slope_factor(&factor, ground.edition, slope, ground.thermal,
                           strcmp(inputs[7].word, "other") != 0, working) ||
        !find_minimum(&minimum, &ground, slope, inputs[9], working) ||
        !find_rain(&rain, &ground, slope, input_in(inputs[8], "ft", 0), working))
        return false;
    double sloped = factor * ground.flat;
    double load = fmax(sloped + rain, minimum);
    working_step(working, NULL,
                 "ps = %.4g x %.4g = %.4g psf; with rain %.4g, minimum %.4g: %.4g psf", factor,
                 ground.flat, sloped, sloped + rain, minimum, load);
    results[0] = result_in(load, "psf");
    results[1] = result_in(sloped, "psf");
    results[2] = result_in(ground.flat, "psf");
    results[3] = amount_of_number(factor);
    results[4] = result_in(minimum, "psf");
    results[5] = result_in(rain, "psf");
    return true;
}

static const struct parameter unbalanced_snow_inputs[] = {
    SNOW_INPUTS,
    GIVEN_QUANTITY("slope", ANGLE, "°", 0, 90, "Slope of the plane."),
    GIVEN_WORD("surface", surface_words,
               "Slippery only where snow can slide off freely; else other."),
    GIVEN_QUANTITY("eave_to_ridge", LENGTH, "ft", 0.5, 1000, "From eave to ridge in plan, W."),
    GIVEN_WORD("shape", words_for_roof_shape, "Shape of the roof."),
    GIVEN_YESNO("simple_rafters", "Do simply supported rafters span from eave to ridge?"),
    MAYBE_QUANTITY(
        "windward_width", LENGTH, "ft", 0.5, 1000,
        "From eave to ridge in plan on the other side, from which snow is blown. Absent: "
        "as on this one."),
};
static const struct parameter unbalanced_snow_results[] = {
    GIVEN_QUANTITY("load", PRESSURE, "psf", 0, 1000,
                   "Largest load on the leeward side, on the horizontal projection."),
    GIVEN_QUANTITY("leeward", PRESSURE, "psf", 0, 1000, "Uniform part on the leeward side."),
    GIVEN_QUANTITY("windward", PRESSURE, "psf", 0, 1000, "On the windward side."),
    GIVEN_QUANTITY("surcharge", PRESSURE, "psf", 0, 1000, "On top, from the ridge down."),
    GIVEN_QUANTITY("surcharge_width", LENGTH, "ft", 0, 1000,
                   "How far from the ridge in plan the largest load lies."),
    GIVEN_YESNO("needed", "Does the roof need the unbalanced case at all?")};

static void give_unbalanced(struct amount *results, double leeward, double windward,
                            double surcharge, double width, bool is_needed)
{
    results[0] = result_in(leeward + surcharge, "psf");
    results[1] = result_in(leeward, "psf");
    results[2] = result_in(windward, "psf");
    results[3] = result_in(surcharge, "psf");
    results[4] = result_in(width, "ft");
    results[5] = amount_of_yesno(is_needed);
}

/* The drift over the ridge of a wide gable: ASCE 7-16 Fig. 7.6-1 and 7.6-2. */
static void drift(struct amount *results, const struct ground *ground, double sloped, double slope,
                  double width, double windward, struct working *working)
{
    double density = fmin(30, 0.13 * ground->snow + 14);
    double fetch = fmax(windward, 20);
    double height =
        (0.43 * cbrt(fetch) * pow(ground->snow + 10, 0.25) - 1.5) * sqrt(ground->importance);
    double run = 1 / tan(slope * degree);
    height = fmax(0, height);
    double surcharge = height * density / sqrt(run);
    double reach = fmin(width, 8.0 / 3 * height * sqrt(run));
    working_step(working,
                 "ASCE 7-16 Eq. 7.7-1, Fig. 7.6-1 (secondary source; lu at least 20 ft: "
                 "from memory)",
                 "γ = %.4g pcf, lu = %.4g ft: hd = %.4g ft", density, fetch, height);
    working_step(working, "ASCE 7-16 7.6.1 (from memory)",
                 "S = %.4g: windward 0.3 ps = %.4g psf, leeward ps + hd γ / √S = %.4g + %.4g psf "
                 "over 8/3 hd √S = %.4g ft",
                 run, 0.3 * sloped, sloped, surcharge, reach);
    give_unbalanced(results, sloped, 0.3 * sloped, surcharge, reach, true);
}

static bool has_ridge(const char *shape)
{
    return strcmp(shape, "gable") == 0 || strcmp(shape, "hip") == 0;
}

static bool is_drifting(double slope)
{
    return number_compare(slope, unbalanced_from) >= 0 && number_compare(slope, unbalanced_to) <= 0;
}

const char *snow_drift_gap(enum wind_edition edition, double importance, const char *shape,
                           double slope)
{
    if (!has_ridge(shape) || !is_drifting(slope))
        return NULL;
    if (strcmp(shape, "hip") == 0)
        return "unbalanced snow is at hand for gables only, not for a hip";
    if (edition == ASCE_7_22)
        return "unbalanced snow of ASCE 7-22 is not at hand";
    if (edition == ASCE_7_10 && number_compare(importance, 1) != 0)
        return "the drift height of ASCE 7-10 is at hand for Is = 1 only";
    return NULL;
}

static bool run_unbalanced_snow(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)about;
    struct ground ground;
    double factor, slope = input_in(inputs[6], "°", 0), width = input_in(inputs[8], "ft", 0);
    const char *shape = inputs[9].word;
    if (!read_ground(&ground, inputs, working))
        return false;
    const char *gap = snow_drift_gap(ground.edition, ground.importance, shape, slope);
    if (gap != NULL)
        return working_beyond(working, "%s", gap);
    if (!find_slope_factor(&factor, ground.edition, slope, ground.thermal,
                           strcmp(inputs[7].word, "other") != 0, working))
        return false;
    double sloped = factor * ground.flat;
    if (!has_ridge(shape)) {
        working_step(working, "ASCE 7-10 and 7-16 7.6.1 (from memory)",
                     "a %s roof has no ridge to drift over: no unbalanced case", shape);
        give_unbalanced(results, sloped, sloped, 0, 0, false);
    } else if (!is_drifting(slope)) {
        working_step(working, "ASCE 7-10 and 7-16 7.6.1 (secondary source)",
                     "slope %.4g° is outside %.4g° to %.4g°: no unbalanced case", slope,
                     unbalanced_from, unbalanced_to);
        give_unbalanced(results, sloped, sloped, 0, 0, false);
    } else if (number_compare(width, unbalanced_narrow) <= 0 && inputs[10].yes) {
        working_step(
            working, "ASCE 7-10 and 7-16 7.6.1 (width: secondary source; load from memory)",
            "W %.4g ft to 20 ft with simple rafters: leeward Is pg, windward nothing", width);
        give_unbalanced(results, ground.importance * ground.snow, 0, 0, width, true);
    } else
        drift(results, &ground, sloped, slope, width, input_in(inputs[11], "ft", width), working);
    return true;
}

const struct calculator snow_calculators[] = {
    CALCULATOR(flat_roof_snow, "Snow load on a flat roof.", "ASCE 7 7.3 (secondary source)"),
    CALCULATOR(snow_exposure_factor, "How wind clears snow from a roof, Ce.",
               "ASCE 7-10 Table 7-2, 7-16 Table 7.3-1 (secondary source)"),
    CALCULATOR(snow_thermal_factor, "How warmth melts snow on a roof, Ct.",
               "ASCE 7-10 Table 7-3, 7-16 Table 7.3-2 (secondary source)"),
    CALCULATOR(snow_importance_factor, "How much the building matters, Is.",
               "ASCE 7-10 and 7-16 Table 1.5-2 (secondary source)"),
    CALCULATOR(snow_slope_factor, "How slope sheds snow, Cs.",
               "ASCE 7-10 Fig. 7-2, 7-16 Fig. 7.4-1 (secondary source)"),
    CALCULATOR(roof_snow, "Balanced snow on a sloped roof, with minimum and rain on snow.",
               "ASCE 7 chapter 7 (secondary source)"),
    CALCULATOR(unbalanced_snow, "Snow that wind has moved over the ridge of a gable.",
               "ASCE 7-10 and 7-16 7.6.1 (partly from memory)"),
    {.name = NULL},
};
