#include "array_weight.h"

#include <math.h>

#include "combination.h"
#include "roof_weight.h"

static const double degree = 3.14159265358979323846 / 180;

/* Load combinations */

static const struct parameter asd_combinations_inputs[] = {
    GIVEN_WORD("edition", edition_words,
               "Edition of ASCE 7; from 7-22 on snow is at strength level."),
    GIVEN_QUANTITY("dead", PRESSURE, "psf", 0, 500, "Dead load per area of the surface."),
    GIVEN_QUANTITY("wind_uplift", PRESSURE, "psf", 0, 5000,
                   "Wind away from the roof, ultimate level, as positive."),
    GIVEN_QUANTITY("wind_down", PRESSURE, "psf", 0, 5000, "Wind towards the roof, ultimate level."),
    GIVEN_QUANTITY("snow", PRESSURE, "psf", 0, 1000, "Roof snow on the horizontal projection."),
    GIVEN_QUANTITY(
        "roof_live", PRESSURE, "psf", 0, 100,
        "Roof live load on the horizontal projection; 0 where the array leaves no room."),
    GIVEN_QUANTITY("slope", ANGLE, "°", 0, 80, "Slope of the plane; 0°: all loads square to it."),
};
static const struct parameter asd_combinations_results[] = {
    GIVEN_QUANTITY("uplift", PRESSURE, "psf", -500, 5000,
                   "Net uplift square to the roof; below zero: the weight holds."),
    GIVEN_QUANTITY("down", PRESSURE, "psf", 0, 5000, "Largest pressure square to the roof."),
    GIVEN_QUANTITY("along", PRESSURE, "psf", 0, 5000, "Largest load along the slope, per area."),
    GIVEN_QUANTITY("uplift_along", PRESSURE, "psf", 0, 500,
                   "Load along the slope that goes with the net uplift."),
    {"uplift_combination", AMOUNT_WORD, PURE_NUMBER, "", 0, 0, NULL, false, "Its name."},
    {"down_combination", AMOUNT_WORD, PURE_NUMBER, "", 0, 0, NULL, false, "Its name."},
    {"along_combination", AMOUNT_WORD, PURE_NUMBER, "", 0, 0, NULL, false, "Its name."}};

/* Loads on a square foot of the sloping surface, in psf. */
struct surface_loads {
    double dead, snow, live; /* vertical */
    double uplift, down;     /* wind, square to the surface */
    double normal, along;    /* shares of a vertical load */
};

static struct surface_loads read_loads(const struct amount *inputs)
{
    double slope = input_in(inputs[6], "°", 0) * degree;
    return (struct surface_loads){.dead = input_in(inputs[1], "psf", 0),
                                  .uplift = input_in(inputs[2], "psf", 0),
                                  .down = input_in(inputs[3], "psf", 0),
                                  .snow = input_in(inputs[4], "psf", 0) * cos(slope),
                                  .live = input_in(inputs[5], "psf", 0) * cos(slope),
                                  .normal = cos(slope),
                                  .along = sin(slope)};
}

static void combine_down(struct amount *results, const struct surface_loads *loads,
                         bool is_strength_snow, struct working *working)
{
    size_t count;
    const struct combination *all = down_combinations(is_strength_snow, &count);
    double most_down = -1, most_along = -1;
    for (size_t i = 0; i < count; i++) {
        const struct combination *one = &all[i];
        double vertical =
            one->dead * loads->dead + one->snow * loads->snow + one->live * loads->live;
        double down = vertical * loads->normal + one->wind * loads->down;
        double along = vertical * loads->along;
        working_step(working, one->source, "%s: %.4g psf square to the roof, %.4g psf along it",
                     one->name, down, along);
        if (down > most_down) {
            most_down = down;
            results[5] = amount_of_word(one->name);
        }
        if (along > most_along) {
            most_along = along;
            results[6] = amount_of_word(one->name);
        }
    }
    results[1] = result_in(most_down, "psf");
    results[2] = result_in(most_along, "psf");
}

static bool run_asd_combinations(struct amount *results, const struct object *about,
                                 const struct amount *inputs, struct working *working)
{
    (void)about;
    struct surface_loads loads = read_loads(inputs);
    const struct combination *lift = &uplift_combination;
    double hold = lift->dead * loads.dead * loads.normal;
    double uplift = lift->wind * loads.uplift - hold;
    working_step(working, lift->source, "%s: 0.6 x %.4g - %.4g = %.4g psf of uplift", lift->name,
                 loads.uplift, hold, uplift);
    combine_down(results, &loads, edition_of(inputs[0]) == ASCE_7_22, working);
    results[0] = result_in(uplift, "psf");
    results[3] = result_in(lift->dead * loads.dead * loads.along, "psf");
    results[4] = amount_of_word(lift->name);
    return true;
}

/* Tributary areas and loads on them */

static const struct parameter tributary_width_inputs[] = {
    GIVEN_QUANTITY("panel_dimension", LENGTH, "in", 5, 240,
                   "Size of the panel square to its rails (with half a gap on either side)."),
    GIVEN_NUMBER("rails", 1, 8, "Rails that share it."),
};
static const struct parameter tributary_width_results[] = {
    GIVEN_QUANTITY("width", LENGTH, "in", 0, 240, "Width of array that one rail carries.")};

static bool run_tributary_width(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)about;
    double dimension = input_in(inputs[0], "in", 0), rails = input_in(inputs[1], "", 1);
    working_step(working, "common practice (worked rail calculation)",
                 "%.5g in / %g rails = %.5g in", dimension, rails, dimension / rails);
    results[0] = result_in(dimension / rails, "in");
    return true;
}

static const struct parameter tributary_area_inputs[] = {
    GIVEN_QUANTITY("spacing", LENGTH, "in", 1, 480, "Between attachments along a rail."),
    GIVEN_QUANTITY("width", LENGTH, "in", 1, 480, "Width of array that the rail carries."),
    GIVEN_QUANTITY("cantilever", LENGTH, "in", 0, 240,
                   "How far the rail stands out past its last attachment."),
};
static const struct parameter tributary_area_results[] = {
    GIVEN_QUANTITY("area", AREA, "ft²", 0, 1600, "The larger of the two."),
    GIVEN_QUANTITY("interior", AREA, "ft²", 0, 1600, "Of an attachment between two others."),
    GIVEN_QUANTITY("end", AREA, "ft²", 0, 1600, "Of the last one: half a spacing and the end.")};

static bool run_tributary_area(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)about;
    double spacing = input_in(inputs[0], "ft", 0), width = input_in(inputs[1], "ft", 0);
    double interior = spacing * width;
    double end = (spacing / 2 + input_in(inputs[2], "ft", 0)) * width;
    working_step(working, "common practice (worked calculations)",
                 "interior %.4g ft x %.4g ft = %.4g ft²; end %.4g ft²", spacing, width, interior,
                 end);
    results[0] = result_in(fmax(interior, end), "ft²");
    results[1] = result_in(interior, "ft²");
    results[2] = result_in(end, "ft²");
    return true;
}

static const struct parameter effective_wind_area_inputs[] = {
    GIVEN_QUANTITY("span", LENGTH, "in", 1, 1200, "Span of the element between its supports."),
    GIVEN_QUANTITY("width", LENGTH, "in", 1, 1200, "Its tributary width."),
};
static const struct parameter effective_wind_area_results[] = {GIVEN_QUANTITY(
    "area", AREA, "ft²", 0, 10000, "Span times width, the width taken as a third of it at least.")};

static bool run_effective_wind_area(struct amount *results, const struct object *about,
                                    const struct amount *inputs, struct working *working)
{
    (void)about;
    double span = input_in(inputs[0], "ft", 0);
    double width = fmax(input_in(inputs[1], "ft", 0), span / 3);
    working_step(working, "ASCE 7 26.2 (from memory)", "%.4g ft x %.4g ft = %.4g ft²", span, width,
                 span * width);
    results[0] = result_in(span * width, "ft²");
    return true;
}

static const struct parameter attachment_load_inputs[] = {
    GIVEN_QUANTITY("pressure", PRESSURE, "psf", -5000, 5000, "Pressure on the array."),
    GIVEN_QUANTITY("area", AREA, "ft²", 0, 10000, "Tributary area of the attachment."),
};
static const struct parameter attachment_load_results[] = {
    GIVEN_QUANTITY("load", FORCE, "lbf", -1e7, 1e7, "Load on the attachment.")};

static bool run_attachment_load(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)about;
    double pressure = input_in(inputs[0], "psf", 0), area = input_in(inputs[1], "ft²", 0);
    working_step(working, NULL, "%.4g psf x %.4g ft² = %.4g lbf", pressure, area, pressure * area);
    results[0] = result_in(pressure * area, "lbf");
    return true;
}

static const struct parameter rail_line_load_inputs[] = {
    GIVEN_QUANTITY("pressure", PRESSURE, "psf", -5000, 5000, "Pressure on the array."),
    GIVEN_QUANTITY("width", LENGTH, "in", 0, 1200, "Width of array that the rail carries."),
};
static const struct parameter rail_line_load_results[] = {
    GIVEN_QUANTITY("load", LINE_LOAD, "lbf/ft", -1e6, 1e6, "Load per length of rail.")};

static bool run_rail_line_load(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)about;
    double pressure = input_in(inputs[0], "psf", 0), width = input_in(inputs[1], "ft", 0);
    working_step(working, NULL, "%.4g psf x %.4g ft = %.4g lbf/ft", pressure, width,
                 pressure * width);
    results[0] = result_in(pressure * width, "lbf/ft");
    return true;
}

/* Weights */

static const struct parameter dead_load_per_area_inputs[] = {
    GIVEN_QUANTITY("weight", MASS, "lb", 0, 1e7, "Weight of modules and racking."),
    GIVEN_QUANTITY("area", AREA, "ft²", 0.1, 1e7, "Area they cover."),
};
static const struct parameter dead_load_per_area_results[] = {
    GIVEN_QUANTITY("load", PRESSURE, "psf", 0, 1e6, "Dead load per area.")};

static bool run_dead_load_per_area(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    (void)about;
    double weight = input_in(inputs[0], "lb", 0), area = input_in(inputs[1], "ft²", 1);
    working_step(working, NULL, "%.5g lb / %.5g ft² = %.4g psf", weight, area, weight / area);
    results[0] = result_in(weight / area, "psf");
    return true;
}

static const struct parameter weight_per_attachment_inputs[] = {
    GIVEN_QUANTITY("weight", MASS, "lb", 0, 1e7, "Weight of modules and racking."),
    GIVEN_NUMBER("attachments", 1, 1e6, "How many attachments carry it."),
};
static const struct parameter weight_per_attachment_results[] = {
    GIVEN_QUANTITY("weight", FORCE, "lbf", 0, 1e7, "Weight on one attachment, on average.")};

static bool run_weight_per_attachment(struct amount *results, const struct object *about,
                                      const struct amount *inputs, struct working *working)
{
    (void)about;
    double weight = input_in(inputs[0], "lb", 0), count = input_in(inputs[1], "", 1);
    working_step(working, NULL, "%.5g lb / %g = %.4g lbf", weight, count, weight / count);
    results[0] = result_in(weight / count, "lbf");
    return true;
}

/* Existing structures */

static const struct parameter existing_structure_change_inputs[] = {
    GIVEN_QUANTITY("dead", PRESSURE, "psf", 0.5, 500, "Dead load of the roof without the array."),
    GIVEN_QUANTITY("roof_live", PRESSURE, "psf", 0, 100, "Roof live load."),
    GIVEN_QUANTITY("snow", PRESSURE, "psf", 0, 1000, "Roof snow load."),
    GIVEN_QUANTITY("array_dead", PRESSURE, "psf", 0, 100, "Dead load of the array."),
    GIVEN_QUANTITY("live_under_array", PRESSURE, "psf", 0, 100,
                   "Roof live load where the array stands; 0 where at most 24 in are clear below."),
    GIVEN_QUANTITY("roof_area", AREA, "ft²", 1, 1e6, "Area of the roof."),
    GIVEN_QUANTITY("array_area", AREA, "ft²", 0, 1e6, "Area of the array on it."),
    MAYBE_NUMBER("member_share", 0, 100,
                 "Array that comes to the most loaded member, over the roof that it carries. "
                 "Absent or less than 1: as much."),
};
static const struct parameter existing_structure_change_results[] = {
    GIVEN_NUMBER("change", -1, 1000, "Change of gravity load on the whole roof, as a share."),
    GIVEN_NUMBER("member_change", -1, 1000,
                 "The same for the member that carries most of the array."),
    GIVEN_NUMBER("lateral_change", 0, 1000,
                 "Weight of the array as a share of the roof's (walls left out)."),
    GIVEN_QUANTITY("existing", FORCE, "lbf", 0, 1e10, "Gravity load before."),
    GIVEN_QUANTITY("proposed", FORCE, "lbf", 0, 1e10, "Gravity load with the array."),
    GIVEN_QUANTITY("member_difference", PRESSURE, "psf", -200, 200,
                   "Change per area of that member.")};

/* What governs a member whose attachments bring it `share` times its own area of array: the array's
 * weight and the snow on it come through them, what walks below it does not. Psf of its own area.
 */
static double load_on_member(const struct amount *inputs, double share)
{
    double snow = share * input_in(inputs[2], "psf", 0), live = input_in(inputs[4], "psf", 0);
    return input_in(inputs[0], "psf", 0) + share * input_in(inputs[3], "psf", 0) + fmax(live, snow);
}

/* Snow and live load do not act together, so what governs is compared with what governs. */
static bool run_existing_structure_change(struct amount *results, const struct object *about,
                                          const struct amount *inputs, struct working *working)
{
    (void)about;
    double dead = input_in(inputs[0], "psf", 0), snow = input_in(inputs[2], "psf", 0);
    double array_dead = input_in(inputs[3], "psf", 0);
    double roof = input_in(inputs[5], "ft²", 0), array = input_in(inputs[6], "ft²", 0);
    if (number_compare(array, roof) > 0)
        return working_wrong(working, "array_area",
                             "array_area is %.5g ft², more than the roof's %.5g ft²", array, roof);
    double before = dead + fmax(input_in(inputs[1], "psf", 0), snow);
    double below = dead + array_dead + fmax(input_in(inputs[4], "psf", 0), snow);
    double existing = before * roof, proposed = before * (roof - array) + below * array;
    double change = (proposed - existing) / existing;
    working_step(working, "existing building codes (5 %: secondary source)",
                 "before %.4g psf x %.5g ft² = %.5g lbf; with the array %.5g lbf: %+.2f %%", before,
                 roof, existing, proposed, 100 * change);
    double share = fmax(1, inputs[7].type != AMOUNT_NONE ? inputs[7].quantity.value : 1);
    double member = load_on_member(inputs, share);
    working_step(working, NULL,
                 "a member that carries %.4g times its own area of array: %.4g psf after %.4g "
                 "psf: %+.2f %%",
                 share, member, before, 100 * (member - before) / before);
    results[0] = amount_of_number(change);
    results[1] = amount_of_number((member - before) / before);
    results[2] = amount_of_number(array_dead * array / (dead * roof));
    results[3] = result_in(existing, "lbf");
    results[4] = result_in(proposed, "lbf");
    results[5] = result_in(member - before, "psf");
    return true;
}

#define ABOUT(of, id, results, sentence)                                                           \
    PLAIN_METHOD(of, id, results, sentence, "facts of the design")

const struct calculator load_calculators[] = {
    CALCULATOR(asd_combinations, "Governing loads of allowable stress design on a roof surface.",
               "ASCE 7 2.4 (partly from memory)"),
    CALCULATOR(tributary_width, "Width of array that one rail carries.",
               "common practice (worked rail calculation)"),
    CALCULATOR(tributary_area, "Area of array that one attachment carries.",
               "common practice (worked calculations)"),
    CALCULATOR(effective_wind_area, "Effective wind area of an element.",
               "ASCE 7 26.2 (from memory)"),
    CALCULATOR(attachment_load, "Load on one attachment.", "common practice (worked calculations)"),
    CALCULATOR(rail_line_load, "Load per length of rail.",
               "common practice (worked rail calculation)"),
    CALCULATOR(dead_load_per_area, "Weight of an array per area.",
               "common practice (expedited permit worksheet)"),
    CALCULATOR(weight_per_attachment, "Weight of an array per attachment.",
               "common practice (expedited permit worksheet)"),
    CALCULATOR(existing_structure_change, "How much an array changes what a roof carries.",
               "common practice (worked comparison); IEBC 806.2 (secondary source)"),
    ABOUT(design, array_weight, array_weight_results, "Weight of the whole array."),
    ABOUT(design, array_area, array_area_results, "Area of all modules."),
    ABOUT(design, array_dead_load, array_dead_load_results, "Weight of the array per its area."),
    ABOUT(design, weight_per_attachment, weight_on_attachment_results,
          "Weight of the array per attachment, on average."),
    ABOUT(roof_plane, array_weight, array_weight_results, "Weight of the array on the plane."),
    ABOUT(roof_plane, array_area, array_area_results, "Area of the modules on the plane."),
    ABOUT(roof_plane, array_dead_load, array_dead_load_results,
          "Weight of the array on the plane per its area."),
    PLAIN_METHOD(roof_plane, least_dead_load, least_dead_load_results,
                 "What covering and deck of the plane weigh at least.",
                 "published tables of roofing weights (secondary source)"),
    ABOUT(module, area, module_area_results, "Area of the module."),
    {.name = NULL},
};
