#include <math.h>
#include <string.h>

#include "string_runs.h"
#include "voltage.h"

static const double standard_temperature = 25; /* °C: standard test conditions */

double count_within(double limit, double each)
{
    double count = floor(limit / each);
    /* What equals the limit within the house's tolerance is within it. */
    return number_compare((count + 1) * each, limit) <= 0 ? count + 1 : count;
}

double count_reaching(double limit, double each)
{
    double count = ceil(limit / each);
    return count > 1 && number_compare((count - 1) * each, limit) >= 0 ? count - 1 : count;
}

/* By coefficient, hot or cold. */
static double shift(double voltage, double celsius, bool has_share, double share, double volts,
                    const char *source, struct working *working)
{
    double change = celsius - standard_temperature;
    double shifted = has_share ? voltage * (1 + share * change) : voltage + volts * change;
    if (has_share)
        working_step(working, source, "%.6g V x (1 + (%.4g %%/°C) x (%.4g °C - 25 °C)) = %.6g V",
                     voltage, 100 * share, celsius, shifted);
    else
        working_step(working, source, "%.6g V + (%.4g V/°C) x (%.4g °C - 25 °C) = %.6g V", voltage,
                     volts, celsius, shifted);
    return shifted;
}

static bool find_cold_by_table(double *volts, const struct cold_case *given,
                               struct working *working)
{
    double factor;
    bool is_from_memory;
    if (given->technology == NULL || strstr(given->technology, "crystalline silicon") == NULL)
        return working_beyond(working,
                              "Table 690.7(A) holds for crystalline silicon only; give the "
                              "temperature coefficient of open-circuit voltage");
    if (!cold_factor(&factor, &is_from_memory, given->low))
        return working_beyond(working,
                              "temperature is %.4g °C; Table 690.7(A) runs from 24 °C to "
                              "-40 °C",
                              given->low);
    *volts = given->voltage * factor;
    working_step(working, is_from_memory ? SOURCE_COLD_FACTOR_MEMORY : SOURCE_COLD_FACTOR,
                 "%.4g °C: factor %g; %.6g V x %g = %.6g V", given->low, factor, given->voltage,
                 factor, *volts);
    return true;
}

bool find_cold_voltage(double *volts, const struct cold_case *given, struct working *working)
{
    if (number_compare(given->low, standard_temperature) > 0)
        return working_beyond(working,
                              "the low temperature is %.4g °C, above the 25 °C at which "
                              "modules are rated",
                              given->low);
    if (!given->has_share && !given->has_volts)
        return find_cold_by_table(volts, given, working);
    if ((given->has_share ? given->share : given->volts) > 0)
        return working_beyond(working, "the temperature coefficient of open-circuit voltage is "
                                       "positive; on a data sheet it is negative");
    *volts = shift(given->voltage, given->low, given->has_share, given->share, given->volts,
                   "NEC 690.7(A)(1), coefficient", working);
    return true;
}

bool find_hot_voltage(double *volts, const struct hot_case *given, struct working *working)
{
    *volts = shift(given->voltage, given->high, given->has_share, given->share, given->volts,
                   "data sheet, coefficient", working);
    return *volts > 0 ||
           working_beyond(working, "at %.4g °C the coefficient leaves no voltage", given->high);
}

/* The inputs from the temperature on stand alike in both calculators of the cold. */
enum { COLD_FIRST, COLD_VOLTAGE, COLD_TEMPERATURE, COLD_SHARE, COLD_VOLTS, COLD_TECHNOLOGY };

static bool read_cold(double *volts, const struct amount *inputs, struct working *working)
{
    struct cold_case given = {.voltage = amount_in(inputs[COLD_VOLTAGE], "V", 0),
                              .low = amount_in(inputs[COLD_TEMPERATURE], "°C", 25),
                              .has_share = is_given(inputs[COLD_SHARE]),
                              .has_volts = is_given(inputs[COLD_VOLTS]),
                              .share = amount_in(inputs[COLD_SHARE], NULL, 0),
                              .volts = amount_in(inputs[COLD_VOLTS], "V/°C", 0),
                              .technology = inputs[COLD_TECHNOLOGY].word};
    if (!given.has_share && !given.has_volts && given.technology == NULL)
        return working_wrong(working, "coefficient",
                             "give coefficient (%%/°C), coefficient_volts (V/°C), or technology "
                             "(then the table is used)");
    return find_cold_voltage(volts, &given, working);
}

bool run_cold_voltage(struct amount *results, const struct object *about,
                      const struct amount *inputs, struct working *working)
{
    (void)about;
    double each, modules = amount_in(inputs[COLD_FIRST], NULL, 1);
    if (!read_cold(&each, inputs, working))
        return false;
    working_step(working, NULL, "%g x %.6g V = %.6g V", modules, each, modules * each);
    results[0] = amount_as(modules * each, "V");
    results[1] = amount_as(each, "V");
    return true;
}

bool run_longest_string(struct amount *results, const struct object *about,
                        const struct amount *inputs, struct working *working)
{
    (void)about;
    double each, limit = amount_in(inputs[COLD_FIRST], "V", 0);
    if (!read_cold(&each, inputs, working))
        return false;
    double modules = count_within(limit, each);
    if (modules < 1)
        return working_beyond(working, "one module alone reaches %.6g V, over the limit of %.6g V",
                              each, limit);
    working_step(working, NULL, "%.6g V / %.6g V = %.6g, rounded down: %g modules, %.6g V", limit,
                 each, limit / each, modules, modules * each);
    results[0] = amount_of_number(modules);
    results[1] = amount_as(modules * each, "V");
    results[2] = amount_as(each, "V");
    return true;
}

enum { HOT_FIRST, HOT_VOLTAGE, HOT_TEMPERATURE, HOT_RISE, HOT_SHARE, HOT_VOLTS, HOT_ALLOWANCE };

static bool read_hot(double *volts, const struct amount *inputs, struct working *working)
{
    double ambient = amount_in(inputs[HOT_TEMPERATURE], "°C", 25);
    double rise = amount_in(inputs[HOT_RISE], "K", 0);
    struct hot_case given = {.voltage = amount_in(inputs[HOT_VOLTAGE], "V", 0),
                             .high = ambient + rise,
                             .has_share = is_given(inputs[HOT_SHARE]),
                             .has_volts = is_given(inputs[HOT_VOLTS]),
                             .share = amount_in(inputs[HOT_SHARE], NULL, 0),
                             .volts = amount_in(inputs[HOT_VOLTS], "V/°C", 0)};
    if (!given.has_share && !given.has_volts)
        return working_wrong(working, "coefficient",
                             "give coefficient (%%/°C) or coefficient_volts (V/°C)");
    if (rise > 0)
        working_step(working, "common practice, no source", "cells: %.4g °C + %.4g °C = %.4g °C",
                     ambient, rise, given.high);
    return find_hot_voltage(volts, &given, working);
}

bool run_hot_voltage(struct amount *results, const struct object *about,
                     const struct amount *inputs, struct working *working)
{
    (void)about;
    double each, modules = amount_in(inputs[HOT_FIRST], NULL, 1);
    if (!read_hot(&each, inputs, working))
        return false;
    working_step(working, NULL, "%g x %.6g V = %.6g V", modules, each, modules * each);
    results[0] = amount_as(modules * each, "V");
    results[1] = amount_as(each, "V");
    return true;
}

bool run_shortest_string(struct amount *results, const struct object *about,
                         const struct amount *inputs, struct working *working)
{
    (void)about;
    double each, least = amount_in(inputs[HOT_FIRST], "V", 0);
    double allowance = amount_in(inputs[HOT_ALLOWANCE], NULL, 0);
    if (!read_hot(&each, inputs, working))
        return false;
    if (allowance > 0)
        working_step(working, "common practice, no source", "%.6g V less %.4g %% = %.6g V", each,
                     100 * allowance, each * (1 - allowance));
    each *= 1 - allowance;
    double modules = count_reaching(least, each);
    working_step(working, NULL, "%.6g V / %.6g V = %.6g, rounded up: %g modules, %.6g V", least,
                 each, least / each, modules, modules * each);
    results[0] = amount_of_number(modules);
    results[1] = amount_as(modules * each, "V");
    results[2] = amount_as(each, "V");
    return true;
}
