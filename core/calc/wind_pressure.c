#include "wind_pressure.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

double directionality_outside(enum wind_edition edition)
{
    return edition == ASCE_7_22 ? directionality_factor : 1;
}

static const char equalization_source[] = "ASCE 7-16 Fig. 29.4-8 (secondary source)";

/* γa = 1.2 - 0.4 log10 A between 10 and 100 ft². */
static double equalization_at(double area)
{
    return fmin(0.8, fmax(0.4, 1.2 - 0.4 * log10(area)));
}

static bool has_parallel_section(enum wind_edition edition, struct working *working)
{
    return edition != ASCE_7_10 ||
           working_beyond(working, "ASCE 7-10 has no section for panels parallel to the roof");
}

const struct parameter pressure_equalization_inputs[2] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_QUANTITY("area", AREA, "ft²", 0.1, 10000, "Effective wind area."),
};
const struct parameter pressure_equalization_results[1] = {
    GIVEN_NUMBER("factor", 0.4, 0.8, "Pressure equalization factor, γa.")};

bool run_pressure_equalization(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)about;
    if (!has_parallel_section(edition_of(inputs[0]), working))
        return false;
    double area = input_in(inputs[1], "ft²", 0);
    double factor = equalization_at(area);
    working_step(working, equalization_source, "γa = 1.2 - 0.4 log10(%.4g), from 0.4 to 0.8 = %.4g",
                 area, factor);
    results[0] = amount_of_number(factor);
    return true;
}

const struct parameter array_edge_factor_inputs[7] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_QUANTITY("mean_roof_height", LENGTH, "ft", 1, 300, "Mean roof height, h."),
    GIVEN_QUANTITY("height_above_roof", LENGTH, "in", 0, 120,
                   "Top of the panels above the roof, h2."),
    GIVEN_QUANTITY("distance_to_roof_edge", LENGTH, "ft", 0, 2000,
                   "From the exposed edge of the array to the roof edge it faces, d1."),
    MAYBE_QUANTITY("distance_to_neighbor", LENGTH, "ft", 0, 2000,
                   "From that edge to the next panel or array; absent: there is none."),
    GIVEN_QUANTITY("distance_from_array_edge", LENGTH, "ft", 0, 2000,
                   "From that edge to the nearest part of the panel or attachment in question."),
    GIVEN_QUANTITY("panel_length", LENGTH, "ft", 0.2, 30,
                   "Length of the panel square to that edge, Lp."),
};
const struct parameter array_edge_factor_results[2] = {
    GIVEN_NUMBER("factor", 1, 1.5, "Array edge factor, γE, for uplift; downward it is 1."),
    GIVEN_YESNO("is_exposed", "Does the panel count as exposed?")};

bool run_array_edge_factor(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    (void)about;
    if (!has_parallel_section(edition_of(inputs[0]), working))
        return false;
    double height = input_in(inputs[1], "ft", 0), above = input_in(inputs[2], "ft", 0);
    double to_edge = input_in(inputs[3], "ft", 0);
    double to_neighbor = input_in(inputs[4], "ft", INFINITY);
    double within = input_in(inputs[5], "ft", 0), reach = 1.5 * input_in(inputs[6], "ft", 0);
    double least_gap = fmax(4 * above, 4);
    bool is_exposed_edge =
        number_compare(to_edge, 0.5 * height) > 0 && number_compare(to_neighbor, least_gap) > 0;
    bool is_exposed = is_exposed_edge && number_compare(within, reach) <= 0;
    working_step(working, "ASCE 7-16 29.4.4 (0.5 h: secondary source; 4 h2 and 4 ft: from memory)",
                 "the array's edge is %s: %.4g ft to the roof edge against 0.5 h = %.4g ft, next "
                 "panel beyond max(4 h2, 4 ft) = %.4g ft: %s",
                 is_exposed_edge ? "exposed" : "not exposed", to_edge, 0.5 * height, least_gap,
                 number_compare(to_neighbor, least_gap) > 0 ? "yes" : "no");
    working_step(working, "ASCE 7-16 29.4.4 (secondary source)",
                 "%.4g ft from that edge against 1.5 Lp = %.4g ft: γE = %s", within, reach,
                 is_exposed ? "1.5" : "1.0");
    results[0] = amount_of_number(is_exposed ? 1.5 : 1);
    results[1] = amount_of_yesno(is_exposed);
    return true;
}

const struct parameter panel_pressure_inputs[7] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_QUANTITY("velocity_pressure", PRESSURE, "psf", 0, 500,
                   "Velocity pressure at mean roof height, as velocity_pressure gives it."),
    GIVEN_NUMBER("uplift_coefficient", -10, 0, "GCp for uplift, negative."),
    GIVEN_NUMBER("down_coefficient", 0, 10, "GCp towards the roof, positive."),
    GIVEN_QUANTITY("area", AREA, "ft²", 0.1, 10000, "Effective wind area."),
    GIVEN_YESNO("exposed", "Is the panel exposed (array_edge_factor)?"),
    MAYBE_QUANTITY("minimum", PRESSURE, "psf", 0, 100,
                   "Least pressure either way, where the book asks for one."),
};
const struct parameter panel_pressure_results[4] = {
    GIVEN_QUANTITY("uplift", PRESSURE, "psf", 0, 5000, "Pressure away from the roof, as positive."),
    GIVEN_QUANTITY("down", PRESSURE, "psf", 0, 5000, "Pressure towards the roof."),
    MAYBE_NUMBER("equalization_factor", 0.4, 0.8, "γa; none in 7-10."),
    MAYBE_NUMBER("edge_factor", 1, 1.5, "γE for uplift; none in 7-10.")};

/* The pressure of one direction, no less than the minimum. */
static struct amount panel_pressure_of(const char *direction, double q, double coefficient,
                                       double factor, double minimum, struct working *working)
{
    double pressure = q * fabs(coefficient) * factor;
    working_step(working, NULL, "%s: p = %.4g psf x %.4g x %.4g = %.4g psf%s", direction, q,
                 fabs(coefficient), factor, pressure,
                 pressure < minimum ? ", less than the minimum" : "");
    return result_in(fmax(pressure, minimum), "psf");
}

bool run_panel_pressure(struct amount *results, const struct object *about,
                        const struct amount *inputs, struct working *working)
{
    (void)about;
    enum wind_edition edition = edition_of(inputs[0]);
    double q = input_in(inputs[1], "psf", 0), area = input_in(inputs[4], "ft²", 0);
    double minimum = input_in(inputs[6], "psf", 0);
    double equalization = 1, edge = 1;
    if (edition != ASCE_7_10) {
        equalization = equalization_at(area);
        edge = inputs[5].yes ? 1.5 : 1;
        working_step(working, "ASCE 7-16 Eq. 29.4-7, 7-22 29.4.4 (secondary source)",
                     "p = qh (GCp) γE γa%s: γa at %.4g ft² = %.4g, γE for uplift %.2g, down 1",
                     edition == ASCE_7_22 ? " Kd" : "", area, equalization, edge);
        results[2] = amount_of_number(equalization);
        results[3] = amount_of_number(edge);
    } else
        working_step(working, "ASCE 7-10 30.4 (common practice: no section for such panels)",
                     "p = qh (GCp), as for the roof below, without equalization");
    double factor = equalization * directionality_outside(edition);
    results[0] =
        panel_pressure_of("uplift", q, input_in(inputs[2], "", 0), factor * edge, minimum, working);
    results[1] = panel_pressure_of("down", q, input_in(inputs[3], "", 0), factor, minimum, working);
    return true;
}

const struct parameter parallel_section_inputs[7] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_WORD("enclosure", words_for_enclosure, "Enclosure class of the building."),
    GIVEN_QUANTITY("tilt", ANGLE, "°", 0, 90, "Tilt of the panels against the roof."),
    GIVEN_QUANTITY("height_above_roof", LENGTH, "in", 0, 240,
                   "Top of the panels above the roof, h2."),
    GIVEN_QUANTITY("panel_gap", LENGTH, "in", 0, 120, "Gap between neighbouring panels."),
    GIVEN_QUANTITY("gap_spacing", LENGTH, "ft", 0, 100, "Largest distance from gap to gap."),
    GIVEN_QUANTITY("edge_distance", LENGTH, "in", -1000, 24000,
                   "Least distance from a panel to a roof edge, gable ridge or hip ridge."),
};
const struct parameter parallel_section_results[1] = {
    GIVEN_YESNO("applies", "The section for panels parallel to the roof may be used.")};

/* Why the section may not be used, into `why`; false where it may. */
static bool is_outside(char *why, size_t size, const struct amount *inputs)
{
    double tilt = input_in(inputs[2], "°", 0), above = input_in(inputs[3], "in", 0);
    double gap = input_in(inputs[4], "in", 0), spacing = input_in(inputs[5], "ft", 0);
    double edge = input_in(inputs[6], "in", 0);
    if (strcmp(inputs[1].word, "open") == 0)
        snprintf(why, size, "the building is open, not enclosed or partially enclosed");
    else if (number_compare(tilt, 2) > 0)
        snprintf(why, size, "the panels are tilted %.4g° against the roof, more than 2°", tilt);
    else if (number_compare(above, 10) > 0)
        snprintf(why, size, "the panels stand %.4g in above the roof, more than 10 in", above);
    else if (number_compare(gap, 0.25) < 0)
        snprintf(why, size, "the gaps between panels are %.4g in, less than 0.25 in", gap);
    else if (number_compare(spacing, 6.7) > 0)
        snprintf(why, size, "the gaps between panels lie %.4g ft apart, more than 6.7 ft", spacing);
    else if (number_compare(edge, 2 * above) < 0)
        snprintf(why, size,
                 "a panel is %.4g in from a roof edge or ridge, less than twice its height above "
                 "the roof (%.4g in; from memory)",
                 edge, 2 * above);
    else
        return false;
    return true;
}

bool run_parallel_section(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    (void)about;
    char why[200];
    if (!has_parallel_section(edition_of(inputs[0]), working))
        return false;
    if (is_outside(why, sizeof why, inputs))
        return working_beyond(working, "ASCE 7 29.4.4 does not cover this array: %s", why);
    working_step(working, "ASCE 7-16 29.4.4 (secondary source; edge distance from memory)",
                 "tilt, height, gaps and edge distance are within the section");
    results[0] = amount_of_yesno(true);
    return true;
}

const struct parameter bare_roof_pressure_inputs[6] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    GIVEN_QUANTITY("velocity_pressure", PRESSURE, "psf", 0, 500,
                   "Velocity pressure at mean roof height, as velocity_pressure gives it."),
    GIVEN_NUMBER("uplift_coefficient", -10, 0, "GCp for uplift, negative."),
    GIVEN_NUMBER("down_coefficient", 0, 10, "GCp towards the roof, positive."),
    GIVEN_WORD("enclosure", words_for_enclosure, "Enclosure class of the building."),
    MAYBE_QUANTITY("minimum", PRESSURE, "psf", 0, 100,
                   "Least pressure either way, where the book asks for one."),
};
const struct parameter bare_roof_pressure_results[2] = {
    GIVEN_QUANTITY("uplift", PRESSURE, "psf", 0, 5000, "Pressure away from the roof, as positive."),
    GIVEN_QUANTITY("down", PRESSURE, "psf", 0, 5000, "Pressure towards the roof.")};

bool run_bare_roof_pressure(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    (void)about;
    if (strcmp(inputs[4].word, "open") == 0)
        return working_beyond(working,
                              "no roof pressures of ASCE 7 are at hand for an open building");
    bool is_enclosed = strcmp(inputs[4].word, "enclosed") == 0;
    double internal = is_enclosed ? internal_enclosed : internal_partially_enclosed;
    double q = input_in(inputs[1], "psf", 0);
    double factor = directionality_outside(edition_of(inputs[0]));
    double minimum = input_in(inputs[5], "psf", 0);
    working_step(working, "ASCE 7-10 Table 26.11-1 (secondary source)",
                 "%s building: GCpi = ±%.2g, p = qh%s (GCp - GCpi)", inputs[4].word, internal,
                 factor < 1 ? " Kd" : "");
    results[0] = panel_pressure_of("uplift", q, input_in(inputs[2], "", 0) - internal, factor,
                                   minimum, working);
    results[1] = panel_pressure_of("down", q, input_in(inputs[3], "", 0) + internal, factor,
                                   minimum, working);
    return true;
}
