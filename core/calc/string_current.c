#include <math.h>

#include "string_runs.h"

bool run_source_current(struct amount *results, const struct object *about,
                        const struct amount *inputs, struct working *working)
{
    (void)about;
    double strings = amount_in(inputs[0], NULL, 1), each = amount_in(inputs[1], "A", 0);
    double current = IRRADIANCE_FACTOR * strings * each;
    working_step(working, "NEC 690.8(A)(1)", "1.25 x %g x %.6g A = %.6g A", strings, each, current);
    working_step(working, "NEC 690.8(B)(1), 690.9(B)", "1.25 x %.6g A = %.6g A", current,
                 CONTINUOUS_FACTOR * current);
    results[0] = amount_as(current, "A");
    results[1] = amount_as(CONTINUOUS_FACTOR * current, "A");
    return true;
}

/* Each string can be fed back by all others. */
bool run_parallel_fusing(struct amount *results, const struct object *about,
                         const struct amount *inputs, struct working *working)
{
    (void)about;
    enum { STRINGS, SHORT_CIRCUIT, SERIES_FUSE, AMPACITY, EDITION };
    double strings = amount_in(inputs[STRINGS], NULL, 1);
    double each = amount_in(inputs[SHORT_CIRCUIT], "A", 0);
    double series_fuse = amount_in(inputs[SERIES_FUSE], "A", 0);
    double ampacity = amount_in(inputs[AMPACITY], "A", 0), fuse;
    double backfeed = IRRADIANCE_FACTOR * (strings - 1) * each;
    int edition;
    if (!edition_read(&edition, inputs[EDITION], working))
        return false;
    working_step(working, "NEC 690.9(A)",
                 "from the other strings: 1.25 x (%g - 1) x %.6g A = %.6g A", strings, each,
                 backfeed);
    bool is_needed =
        number_compare(backfeed, series_fuse) > 0 || number_compare(backfeed, ampacity) > 0;
    working_step(working, "NEC 690.9(A)",
                 "series fuse rating %.6g A, conductors %.6g A: a device per string is %s",
                 series_fuse, ampacity, is_needed ? "needed" : "not needed");
    results[0] = amount_of_yesno(is_needed);
    results[1] = amount_as(backfeed, "A");
    if (!is_needed)
        return true;
    if (!find_ocpd_up(&fuse, CONTINUOUS_FACTOR * IRRADIANCE_FACTOR * each, FUSE, edition, working))
        return false;
    results[2] = amount_as(fuse, "A");
    results[3] = amount_of_yesno(number_compare(fuse, series_fuse) <= 0);
    return true;
}

enum {
    CONVERTER_MODULES,
    CONVERTER_MODULE_POWER,
    CONVERTER_POWER,
    CONVERTER_CURRENT,
    CONVERTER_VOLTAGE,
    CONVERTER_LEAST,
    CONVERTER_MOST,
    CONVERTER_PER,
    CONVERTER_MOST_POWER
};

/* What the maker lets one string carry: its current at its voltage, or a smaller stated power. */
static double find_string_power_limit(const struct amount *inputs, struct working *working)
{
    double volts = amount_in(inputs[CONVERTER_VOLTAGE], "V", 0);
    double amperes = amount_in(inputs[CONVERTER_CURRENT], "A", 0);
    double limit = volts * amperes;
    working_step(working, NULL, "%.6g V x %.6g A = %.6g W", volts, amperes, limit);
    return fmin(limit, amount_in(inputs[CONVERTER_MOST_POWER], "W", limit));
}

static bool is_module_taken(const struct amount *inputs, struct working *working)
{
    double power = amount_in(inputs[CONVERTER_PER], NULL, 1) *
                   amount_in(inputs[CONVERTER_MODULE_POWER], "W", 0);
    double rated = amount_in(inputs[CONVERTER_POWER], "W", 0);
    bool is_taken = number_compare(power, rated) <= 0;
    working_step(working, "maker's instructions", "%.6g W on a converter of %.6g W: %s", power,
                 rated, is_taken ? "fits" : "too much");
    return is_taken;
}

static bool is_count_allowed(double converters, const struct amount *inputs,
                             struct working *working)
{
    double least = amount_in(inputs[CONVERTER_LEAST], NULL, 1);
    double most = amount_in(inputs[CONVERTER_MOST], NULL, 1);
    bool is_allowed = converters >= least && converters <= most;
    working_step(working, "maker's instructions", "%g converters, %g to %g allowed: %s", converters,
                 least, most, is_allowed ? "fits" : "does not fit");
    return is_allowed;
}

bool run_converter_string(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    (void)about;
    double modules = amount_in(inputs[CONVERTER_MODULES], NULL, 1);
    double converters = ceil(modules / amount_in(inputs[CONVERTER_PER], NULL, 1));
    double power = modules * amount_in(inputs[CONVERTER_MODULE_POWER], "W", 0);
    double output = amount_in(inputs[CONVERTER_CURRENT], "A", 0);
    double limit = find_string_power_limit(inputs, working);
    bool is_taken = is_module_taken(inputs, working);
    bool is_allowed = is_count_allowed(converters, inputs, working);
    bool is_within = number_compare(power, limit) <= 0;
    working_step(working, "maker's instructions", "%.6g W in the string, at most %.6g W: %s", power,
                 limit, is_within ? "fits" : "too much");
    working_step(working, "NEC 690.8(A), 690.9(B)",
                 "continuous output, no irradiance factor: 1.25 x %.6g A = %.6g A", output,
                 CONTINUOUS_FACTOR * output);
    results[0] = amount_of_yesno(is_taken && is_allowed && is_within);
    results[1] = amount_of_number(converters);
    results[2] = amount_as(power, "W");
    results[3] = amount_as(limit, "W");
    results[4] = amount_as(power / amount_in(inputs[CONVERTER_VOLTAGE], "V", 1), "A");
    results[5] = amount_as(CONTINUOUS_FACTOR * output, "A");
    return true;
}

bool run_microinverter_branch(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    (void)about;
    enum { UNITS, EACH, EDITION, OCPD };
    double units = amount_in(inputs[UNITS], NULL, 1), each = amount_in(inputs[EACH], "A", 0);
    double current = units * each, needed = CONTINUOUS_FACTOR * current, ocpd;
    int edition;
    working_step(working, "NEC 690.8(A), 705.28(A)", "%g x %.6g A = %.6g A", units, each, current);
    working_step(working, "NEC 705.30", "1.25 x %.6g A = %.6g A", current, needed);
    if (!edition_read(&edition, inputs[EDITION], working) ||
        !find_ocpd_up(&ocpd, needed, CIRCUIT_BREAKER, edition, working))
        return false;
    results[0] = amount_as(current, "A");
    results[1] = amount_as(needed, "A");
    results[2] = amount_as(ocpd, "A");
    if (!is_given(inputs[OCPD]))
        return true;
    double rating = amount_in(inputs[OCPD], "A", 0);
    double most = count_within(rating, CONTINUOUS_FACTOR * each);
    working_step(working, NULL, "%.6g A / (1.25 x %.6g A) = %.6g, rounded down: %g", rating, each,
                 rating / (CONTINUOUS_FACTOR * each), most);
    results[3] = amount_of_number(most);
    return true;
}
