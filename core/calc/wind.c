#include "structural.h"

#include <math.h>
#include <string.h>

#include "wind_pressure.h"

static const char kz_source[] = "ASCE 7-10 Table 30.3-1, 7-16 and 7-22 Table 26.10-1 "
                                "(formula; secondary source)";

/* Velocity pressure */

static const struct parameter ground_elevation_factor_inputs[] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_QUANTITY("elevation", LENGTH, "ft", -300, 15000, "Height of the ground above sea level."),
};
static const struct parameter ground_elevation_factor_results[] = {
    GIVEN_NUMBER("factor", 0.5, 1.02, "Ground elevation factor, Ke.")};

/* 7-10 has no Ke. */
static double elevation_factor_at(enum wind_edition edition, double elevation)
{
    return edition == ASCE_7_10 ? 1 : exp(elevation_rate * elevation);
}

static void note_elevation(enum wind_edition edition, double elevation, struct working *working)
{
    if (edition == ASCE_7_10)
        working_step(working, NULL, "ASCE 7-10 has no Ke: 1");
    else
        working_step(working, "ASCE 7-16 Table 26.9-1, note (secondary source)",
                     "Ke = exp(-0.0000362 x %.6g) = %.4g", elevation,
                     elevation_factor_at(edition, elevation));
}

static bool run_ground_elevation_factor(struct amount *results, const struct object *about,
                                        const struct amount *inputs, struct working *working)
{
    (void)about;
    enum wind_edition edition = edition_of(inputs[0]);
    double elevation = input_in(inputs[1], "ft", 0);
    note_elevation(edition, elevation, working);
    results[0] = amount_of_number(elevation_factor_at(edition, elevation));
    return true;
}

static const struct parameter exposure_coefficient_inputs[] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_WORD("exposure", words_for_exposure, "Wind exposure category."),
    GIVEN_QUANTITY("height", LENGTH, "ft", 0, 300, "Mean roof height, h."),
    MAYBE_YESNO("cladding_floor", "Take no less than 0.70 in exposure B up to 30 ft; absent: as "
                                  "the edition says (7-10 yes, later no)."),
};
static const struct parameter exposure_coefficient_results[] = {
    GIVEN_NUMBER("coefficient", 0.5, 1.4, "Velocity pressure exposure coefficient, Kz.")};

static bool find_exposure_coefficient(double *out, enum wind_edition edition, const char *exposure,
                                      double height, bool has_floor, struct working *working)
{
    const struct terrain *terrain = terrain_find(edition, exposure);
    if (number_compare(height, highest_building) > 0)
        return working_beyond(working,
                              "mean roof height is %.4g ft; the wind figures at hand are for "
                              "buildings up to %g ft",
                              height, highest_building);
    double z = fmax(height, 15);
    *out = terrain->scale * pow(z / terrain->gradient_height, 2 / terrain->exponent);
    working_step(working, kz_source, "exposure %s: Kz = %.3g (%.4g / %.4g)^(2 / %.3g) = %.4g",
                 exposure, terrain->scale, z, terrain->gradient_height, terrain->exponent, *out);
    if (has_floor && exposure[0] == 'B' && number_compare(height, cladding_floor_height) <= 0 &&
        *out < cladding_floor) {
        *out = cladding_floor;
        working_step(working, "ASCE 7-10 Table 30.3-1 (secondary source)",
                     "cladding in exposure B up to 30 ft: Kz no less than %.2f", cladding_floor);
    }
    return true;
}

static bool run_exposure_coefficient(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    (void)about;
    enum wind_edition edition = edition_of(inputs[0]);
    bool has_floor = inputs[3].type == AMOUNT_YESNO ? inputs[3].yes : edition == ASCE_7_10;
    double coefficient;
    if (!find_exposure_coefficient(&coefficient, edition, inputs[1].word,
                                   input_in(inputs[2], "ft", 0), has_floor, working))
        return false;
    results[0] = amount_of_number(coefficient);
    return true;
}

static const struct parameter velocity_pressure_inputs[] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_QUANTITY("speed", SPEED, "mph", 50, 250, "Basic wind speed of the edition (ultimate)."),
    GIVEN_WORD("exposure", words_for_exposure, "Wind exposure category."),
    GIVEN_QUANTITY("height", LENGTH, "ft", 0, 300, "Mean roof height, h."),
    GIVEN_NUMBER("topographic_factor", 1, 3, "Kzt; 1 on flat ground."),
    MAYBE_QUANTITY(
        "elevation", LENGTH, "ft", -300, 15000,
        "Height of the ground above sea level; absent: Ke = 1, which is always allowed."),
};
static const struct parameter velocity_pressure_results[] = {
    GIVEN_QUANTITY("pressure", PRESSURE, "psf", 0, 1000,
                   "Velocity pressure qh; from 7-22 on without Kd, which stands in the pressure."),
    GIVEN_NUMBER("exposure_coefficient", 0.5, 1.4, "Kz."),
    GIVEN_NUMBER("elevation_factor", 0.5, 1.02, "Ke."),
    GIVEN_NUMBER("directionality", 0.85, 1, "Kd as far as it is in qh.")};

static bool run_velocity_pressure(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    (void)about;
    enum wind_edition edition = edition_of(inputs[0]);
    double speed = input_in(inputs[1], "mph", 0), kzt = input_in(inputs[4], "", 1), kz, ke = 1;
    double kd = edition == ASCE_7_22 ? 1 : directionality_factor;
    if (!find_exposure_coefficient(&kz, edition, inputs[2].word, input_in(inputs[3], "ft", 0),
                                   edition == ASCE_7_10, working))
        return false;
    if (inputs[5].type != AMOUNT_NONE) {
        double elevation = input_in(inputs[5], "ft", 0);
        ke = elevation_factor_at(edition, elevation);
        note_elevation(edition, elevation, working);
    }
    double pressure = velocity_pressure_scale * kz * kzt * kd * ke * speed * speed;
    working_step(working, "ASCE 7-10 Eq. 30.3-1, 7-16 and 7-22 Eq. 26.10-1 (secondary source)",
                 "qh = 0.00256 x Kz %.4g x Kzt %.4g x Kd %.4g x Ke %.4g x (%.4g mph)² = %.4g psf",
                 kz, kzt, kd, ke, speed, pressure);
    results[0] = result_in(pressure, "psf");
    results[1] = amount_of_number(kz);
    results[2] = amount_of_number(ke);
    results[3] = amount_of_number(kd);
    return true;
}

/* Roof zones and their coefficients */

static const char *const zone_words[] = {"1", "1'", "2", "3", "2e", "2n", "2r", "3e", "3r", NULL};

static const struct parameter external_pressure_coefficient_inputs[] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_WORD("shape", words_for_roof_shape, "Shape of the roof."),
    GIVEN_QUANTITY("slope", ANGLE, "°", 0, 80, "Slope of the plane."),
    GIVEN_WORD("zone", zone_words, "Zone of the roof, as the edition's figure names it."),
    GIVEN_QUANTITY("area", AREA, "ft²", 0.1, 10000, "Effective wind area."),
    GIVEN_WORD("direction", direction_words, "Away from the roof or towards it."),
    MAYBE_YESNO("overhang", "Over an overhang, with the soffit's pressure; absent: no."),
    MAYBE_NUMBER("height_to_width", 0.01, 20,
                 "h/B; a hip roof over 7° up to 20° under 7-16 needs it."),
};
static const struct parameter external_pressure_coefficient_results[] = {
    GIVEN_NUMBER("coefficient", -10, 10, "GCp; negative away from the roof."),
    {"figure", AMOUNT_WORD, PURE_NUMBER, "", 0, 0, NULL, false, "The figure of ASCE 7 it is from."},
    GIVEN_YESNO("from_memory", "Is that figure from memory, without a published source?")};

static bool run_external_pressure_coefficient(struct amount *results, const struct object *about,
                                              const struct amount *inputs, struct working *working)
{
    (void)about;
    struct gcp_query query = {.edition = edition_of(inputs[0]),
                              .shape = inputs[1].word,
                              .slope = input_in(inputs[2], "°", 0),
                              .zone = inputs[3].word,
                              .area = input_in(inputs[4], "ft²", 0),
                              .is_uplift = strcmp(inputs[5].word, "uplift") == 0,
                              .is_overhang = inputs[6].type == AMOUNT_YESNO && inputs[6].yes,
                              .height_to_width = input_in(inputs[7], "", 0)};
    struct gcp_answer answer;
    if (!external_coefficient_of(&answer, &query, working))
        return false;
    results[0] = amount_of_number(answer.coefficient);
    results[1] = amount_of_word(answer.figure);
    results[2] = amount_of_yesno(answer.is_from_memory);
    return true;
}

static const struct parameter zone_width_inputs[] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_WORD("shape", words_for_roof_shape, "Shape of the roof."),
    GIVEN_QUANTITY("slope", ANGLE, "°", 0, 80, "Slope of the roof."),
    GIVEN_QUANTITY("height", LENGTH, "ft", 1, 300, "Mean roof height, h."),
    GIVEN_QUANTITY("least_width", LENGTH, "ft", 1, 2000, "Least horizontal dimension."),
};
static const struct parameter zone_width_results[] = {
    GIVEN_QUANTITY("width", LENGTH, "ft", 0, 500, "Width of the strip along the edges."),
    GIVEN_QUANTITY(
        "corner", LENGTH, "ft", 0, 500,
        "Depth of the corner pieces; on a roof to 7° from 7-16 on 0.2 h, else the same."),
    MAYBE_QUANTITY("inner", LENGTH, "ft", 0, 500,
                   "From which distance on zone 1' begins (to 7°, from 7-16 on)."),
    {"scheme", AMOUNT_WORD, PURE_NUMBER, "", 0, 0, NULL, false,
     "How the edition parts such a roof: low slope, gable, hip, simple, plain gable or plain "
     "hip."}};

struct wind_strips wind_strips_of(enum wind_edition edition, double slope, double height,
                                  double least_width)
{
    const double foot = 0.3048, low_slope = 7 * 3.14159265358979323846 / 180;
    bool is_low = number_compare(slope, low_slope) <= 0;
    if (is_low && edition != ASCE_7_10)
        return (struct wind_strips){0.6 * height, 0.2 * height, 1.2 * height};
    double width = fmin(0.1 * least_width, 0.4 * height);
    width = fmax(width, fmax(0.04 * least_width, 3 * foot));
    if (is_low && number_compare(least_width, 300 * foot) > 0)
        width = fmin(width, 0.8 * height);
    return (struct wind_strips){width, width, 0};
}

static struct amount feet(double metres)
{
    return result_in(quantity_as(quantity_of(metres, "m"), "ft"), "ft");
}

/* The way in which the edition's figure lays out its zones (the layout's zone takes these words).
 */
static bool find_scheme(struct amount *out, enum wind_edition edition, const char *shape,
                        double slope, struct working *working)
{
    const char *zones = wind_zones_of(edition, shape, slope);
    bool is_low = number_compare(slope, 7) <= 0 && strcmp(shape, "monoslope") != 0;
    if (zones == NULL && !is_low)
        return working_beyond(working,
                              "no wind zones of ASCE %s are at hand for a %s roof of %.4g°",
                              edition_words[edition], shape, slope);
    *out = amount_of_word(is_low                           ? "low slope"
                          : strstr(zones, "2n") != NULL    ? "gable"
                          : strstr(zones, "2e") != NULL    ? "hip"
                          : edition != ASCE_7_22           ? "simple"
                          : strcmp(shape, "hip") == 0      ? "plain hip"
                          : number_compare(slope, 27) <= 0 ? "plain gable"
                                                           : "simple");
    return true;
}

static bool run_zone_width(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    (void)about;
    enum wind_edition edition = edition_of(inputs[0]);
    double height = input_in(inputs[3], "ft", 0), width = input_in(inputs[4], "ft", 0);
    struct wind_strips strips =
        wind_strips_of(edition, input_in(inputs[2], "rad", 0), input_in(inputs[3], "m", 0),
                       input_in(inputs[4], "m", 0));
    if (!find_scheme(&results[3], edition, inputs[1].word, input_in(inputs[2], "°", 0), working))
        return false;
    results[0] = feet(strips.width);
    results[1] = feet(strips.corner);
    if (strips.inner > 0) {
        results[2] = feet(strips.inner);
        working_step(working, "ASCE 7-16 and 7-22 Fig. 30.3-2A (secondary source)",
                     "roof to 7°: strip 0.6 h, corner 0.2 h, zone 1' from 1.2 h, h = %.4g ft",
                     height);
    } else
        working_step(working, "ASCE 7-10 30.4, 7-16 and 7-22 30.3 (secondary source)",
                     "a = least of 0.1 x %.4g ft and 0.4 x %.4g ft, but no less than 0.04 x %.4g "
                     "ft and 3 ft = %.4g ft",
                     width, height, width, quantity_as(results[0].quantity, "ft"));
    return true;
}

static const char panel_source[] = "ASCE 7-16 and 7-22 29.4.4 (secondary source)";

const struct calculator wind_calculators[] = {
    CALCULATOR(velocity_pressure, "Velocity pressure of the wind at mean roof height.",
               "ASCE 7 26.10 (secondary source)"),
    CALCULATOR(exposure_coefficient, "Velocity pressure exposure coefficient Kz.", kz_source),
    CALCULATOR(ground_elevation_factor, "Ground elevation factor Ke.",
               "ASCE 7-16 Table 26.9-1 (secondary source)"),
    CALCULATOR(external_pressure_coefficient,
               "External pressure coefficient GCp of a roof zone for an effective wind area.",
               "ASCE 7-10 Fig. 30.4-2, 7-16 and 7-22 Fig. 30.3-2 (secondary source)"),
    CALCULATOR(zone_width, "Width of the edge and corner strips of a roof for wind.",
               "ASCE 7 chapter 30 figures (secondary source)"),
    CALCULATOR(pressure_equalization,
               "How far pressure below and above a panel evens out, by effective wind area.",
               "ASCE 7-16 Fig. 29.4-8 (secondary source)"),
    CALCULATOR(array_edge_factor, "Whether a panel is exposed, and what that adds to uplift.",
               panel_source),
    CALCULATOR(panel_pressure, "Wind pressure on panels parallel to the roof, ultimate level.",
               panel_source),
    CALCULATOR(parallel_section,
               "Whether the section for panels parallel to the roof covers an array.",
               panel_source),
    CALCULATOR(bare_roof_pressure,
               "Wind pressure on the roof itself without the array, ultimate level.",
               "ASCE 7-10 Eq. 30.4-1, 7-16 and 7-22 Eq. 30.3-1 (secondary source)"),
    {.name = NULL},
};
