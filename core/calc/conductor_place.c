/* Room in a raceway, and the conductors that tables give outright. */
#include "conductor_runs.h"

#include <string.h>

#include "conductor.h"
#include "raceway.h"

bool find_conductor_area(double *area, const char *size, const char *insulation, double diameter,
                         struct working *working)
{
    const double quarter_pi = 0.78539816339744831;
    if (diameter > 0) {
        *area = quarter_pi * diameter * diameter;
        working_step(working, "NEC Chapter 9, notes to the tables",
                     "diameter %.4g in: π/4 x d² = %.4g in² each", diameter, *area);
        return true;
    }
    if (!conductor_dimensions(&diameter, area, size, insulation))
        return working_beyond(working,
                              "%s %s has no dimensions in Table 5 as at hand (14 AWG to 750 kcmil "
                              "of THHN, THWN-2, XHHW-2, to 500 kcmil of RHW-2, USE-2): give the "
                              "maker's diameter",
                              size, insulation);
    working_step(working, SOURCE_DIMENSIONS, "%s %s: %g in² each%s", size, insulation, *area,
                 conductor_is_from_memory(size) ? " (from memory)" : "");
    return true;
}

enum {
    FILL_RACEWAY,
    FILL_TRADE_SIZE,
    FILL_INSULATION,
    FILL_SIZE,
    FILL_COUNT,
    FILL_SIZE_2,
    FILL_COUNT_2,
    FILL_SIZE_3,
    FILL_COUNT_3,
    FILL_DIAMETER,
    FILL_DIAMETER_COUNT,
    FILL_NIPPLE
};

/* Adds one group of equal conductors; both of its inputs or none. */
static bool add_group(double *area, double *count, const struct amount *inputs, int what, int many,
                      struct working *working)
{
    double each;
    if (!is_given(inputs[what]) && !is_given(inputs[many]))
        return true;
    if (!is_given(inputs[what]) || !is_given(inputs[many]))
        return working_wrong(working, "count", "a size or diameter and its count go together");
    bool is_diameter = what == FILL_DIAMETER;
    if (!is_diameter && !is_given(inputs[FILL_INSULATION]))
        return working_wrong(working, "insulation", "insulation is not given");
    if (!find_conductor_area(&each, inputs[what].word, inputs[FILL_INSULATION].word,
                             is_diameter ? amount_in(inputs[what], "in", 0) : 0, working))
        return false;
    double number = amount_in(inputs[many], NULL, 0);
    *area += number * each;
    *count += number;
    working_step(working, NULL, "%g x %.6g in² = %.6g in²", number, each, number * each);
    return true;
}

static bool find_smallest_raceway(const char **smallest, const char *raceway, double area,
                                  double share)
{
    double diameter, whole;
    for (size_t i = 0; raceway_size_at(raceway, i) != NULL; i++) {
        *smallest = raceway_size_at(raceway, i);
        if (raceway_inside(&diameter, &whole, raceway, *smallest) &&
            number_compare(area, share * whole) <= 0)
            return true;
    }
    return false;
}

bool run_conduit_fill(struct amount *results, const struct object *about,
                      const struct amount *inputs, struct working *working)
{
    (void)about;
    double area = 0, count = 0, share, whole, diameter;
    const char *raceway = inputs[FILL_RACEWAY].word, *smallest;
    if (!add_group(&area, &count, inputs, FILL_SIZE, FILL_COUNT, working) ||
        !add_group(&area, &count, inputs, FILL_SIZE_2, FILL_COUNT_2, working) ||
        !add_group(&area, &count, inputs, FILL_SIZE_3, FILL_COUNT_3, working) ||
        !add_group(&area, &count, inputs, FILL_DIAMETER, FILL_DIAMETER_COUNT, working))
        return false;
    if (!raceway_fill_share(&share, count,
                            is_given(inputs[FILL_NIPPLE]) && inputs[FILL_NIPPLE].yes))
        return working_wrong(working, "count", "no conductor is given");
    working_step(working, SOURCE_FILL, "%g conductors may fill %g %%", count, 100 * share);
    results[0] = amount_as(area, "in²");
    results[1] = amount_of_number(share);
    if (is_given(inputs[FILL_TRADE_SIZE])) {
        if (!raceway_inside(&diameter, &whole, raceway, inputs[FILL_TRADE_SIZE].word))
            return working_beyond(working,
                                  "trade_size is %s; Table 4 as at hand has %s from 1/2 "
                                  "in to 4 in",
                                  inputs[FILL_TRADE_SIZE].word, raceway);
        working_step(working, SOURCE_RACEWAY, "%s %s: %g in²; %.6g in² fill %.4g %%",
                     inputs[FILL_TRADE_SIZE].word, raceway, whole, area, 100 * area / whole);
        results[2] = amount_of_number(area / whole);
        results[3] = amount_of_yesno(number_compare(area, share * whole) <= 0);
    }
    if (find_smallest_raceway(&smallest, raceway, area, share))
        results[4] = amount_of_word(smallest);
    return true;
}

bool run_egc_size(struct amount *results, const struct object *about, const struct amount *inputs,
                  struct working *working)
{
    (void)about;
    const char *size;
    double ocpd = amount_in(inputs[0], "A", 0);
    if (!conductor_egc(&size, ocpd, inputs[1].word))
        return working_beyond(working, "ocpd is %.6g A; Table 250.122 ends at 6000 A", ocpd);
    working_step(working, SOURCE_EGC, "device of %g A, %s: %s", ocpd, inputs[1].word, size);
    results[0] = amount_of_word(size);
    return true;
}

bool run_gec_size(struct amount *results, const struct object *about, const struct amount *inputs,
                  struct working *working)
{
    (void)about;
    enum { SERVICE_SIZE, SERVICE_MATERIAL, MATERIAL, SETS };
    const char *size;
    double kcmil, sets = amount_in(inputs[SETS], NULL, 1);
    if (!conductor_kcmil(&kcmil, inputs[SERVICE_SIZE].word) ||
        !conductor_gec(&size, sets * kcmil, inputs[SERVICE_MATERIAL].word, inputs[MATERIAL].word))
        return working_beyond(working, "service_size %s is not in Table 250.66",
                              inputs[SERVICE_SIZE].word);
    working_step(working, SOURCE_GEC, "service of %s %s (%.6g kcmil): %s %s",
                 inputs[SERVICE_SIZE].word, inputs[SERVICE_MATERIAL].word, sets * kcmil, size,
                 inputs[MATERIAL].word);
    results[0] = amount_of_word(size);
    return true;
}

bool run_dwelling_conductor(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    (void)about;
    const char *size;
    double rating = amount_in(inputs[0], "A", 0), column;
    if (!conductor_dwelling(&size, rating, inputs[1].word) ||
        !ampacity_at(&column, size, inputs[1].word, 75, IN_RACEWAY))
        return working_beyond(working, "rating is %.6g A; Table 310.12 runs from 100 A to 400 A",
                              rating);
    working_step(working, SOURCE_DWELLING, "83 %% of %g A = %.6g A", rating, 0.83 * rating);
    working_step(working, SOURCE_DWELLING, "%g A: %s %s (%g A in the 75 °C column)", rating, size,
                 inputs[1].word, column);
    results[0] = amount_of_word(size);
    results[1] = amount_as(0.83 * rating, "A");
    results[2] = amount_as(column, "A");
    return true;
}

bool run_conductor_area(struct amount *results, const struct object *about,
                        const struct amount *inputs, struct working *working)
{
    (void)about;
    double kcmil;
    if (!conductor_kcmil(&kcmil, inputs[0].word))
        return working_beyond(working, "size %s is not in Table 8", inputs[0].word);
    working_step(working, SOURCE_DC_RESISTANCE, "%s: %.6g kcmil", inputs[0].word, kcmil);
    results[0] = amount_of_number(kcmil);
    return true;
}
