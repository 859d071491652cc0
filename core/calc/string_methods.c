/* What is to be said of one string of a design, but for its voltages. */
#include <math.h>

#include "string_runs.h"

/* Currents */

bool find_string_current(double *amperes, const struct object *string, struct working *working)
{
    const struct object *converter;
    if (!find_string_converter(&converter, string, working))
        return false;
    if (converter != NULL) {
        if (!need_in(amperes, converter, SLOT_converter_model_maximum_output_current, "A", working))
            return false;
        working_step(working, "NEC 690.8(A)",
                     "string %s: continuous output of its converters %.6g A", string->path,
                     *amperes);
        return true;
    }
    double short_circuit;
    if (!find_string_short_circuit(&short_circuit, string, working))
        return false;
    *amperes = IRRADIANCE_FACTOR * short_circuit;
    working_step(working, "NEC 690.8(A)(1)", "string %s: 1.25 x %.6g A = %.6g A", string->path,
                 short_circuit, *amperes);
    return true;
}

/* Converters hold the string at a fixed voltage: the model's, else the inverter's. */
bool need_string_voltage(double *volts, const struct object *string, const struct object *converter,
                         struct working *working)
{
    const struct object *inverter, *model;
    if (object_has(converter, SLOT_converter_model_string_voltage))
        return need_in(volts, converter, SLOT_converter_model_string_voltage, "V", working);
    return need_model(&inverter, string, SLOT_string_inverter, working) &&
           need_model(&model, inverter, SLOT_inverter_model, working) &&
           need_in(volts, model, SLOT_inverter_model_nominal_dc_voltage, "V", working);
}

bool find_string_operating_current(double *amperes, const struct object *string,
                                   struct working *working)
{
    const struct model_fact current = {SLOT_module_model_power_current, "A"};
    const struct object *converter;
    double power, volts, most, sum;
    if (!find_string_converter(&converter, string, working))
        return false;
    if (converter == NULL)
        return find_over_modules(&sum, amperes, string, read_model_fact, &current, working);
    if (!find_string_power(&power, string, working) ||
        !need_string_voltage(&volts, string, converter, working) ||
        !need_in(&most, converter, SLOT_converter_model_maximum_output_current, "A", working))
        return false;
    *amperes = fmin(power / volts, most);
    working_step(working, NULL, "%.6g W / %.6g V, not above %.6g A: %.6g A", power, volts, most,
                 *amperes);
    return true;
}

/* Strings in parallel on one combiner, or on one input of one inverter. Does `other` stand beside
 * `string`? */
static bool stands_beside(bool *does, const struct object *string, const struct object *other,
                          struct working *working)
{
    const struct object *mine, *theirs;
    double my_input, their_input;
    *does = false;
    if (!need_object(&mine, string, SLOT_string_combiner, working) ||
        !need_object(&theirs, other, SLOT_string_combiner, working))
        return false;
    if (mine != NULL || theirs != NULL) {
        *does = mine == theirs;
        return true;
    }
    if (!need_model(&mine, string, SLOT_string_inverter, working) ||
        !need_model(&theirs, other, SLOT_string_inverter, working))
        return false;
    if (mine != theirs)
        return true;
    if (!need_number(&my_input, string, SLOT_string_input, working) ||
        !need_number(&their_input, other, SLOT_string_input, working))
        return false;
    *does = my_input == their_input;
    return true;
}

bool run_string_backfeed_current(struct amount *results, const struct object *about,
                                 const struct amount *inputs, struct working *working)
{
    (void)inputs;
    const struct objects *all = &working->design->of_kind[KIND_string];
    double sum = 0;
    for (size_t i = 0; i < all->count; i++) {
        bool does;
        double one;
        if (all->items[i] == about)
            continue;
        if (!stands_beside(&does, about, all->items[i], working))
            return false;
        if (does && !find_string_current(&one, all->items[i], working))
            return false;
        sum += does ? one : 0;
    }
    working_step(working, "NEC 690.9(A)", "from the strings in parallel with %s: %.6g A",
                 about->path, sum);
    results[0] = amount_as(sum, "A");
    return true;
}

/* Counts, powers, currents as they are asked for */

bool run_string_module_count(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double sum, largest;
    if (!find_over_modules(&sum, &largest, about, count_one, NULL, working))
        return false;
    results[0] = amount_of_number(sum);
    return true;
}

bool run_string_power(struct amount *results, const struct object *about,
                      const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double watts;
    if (!find_string_power(&watts, about, working))
        return false;
    results[0] = amount_as(watts, "W");
    return true;
}

bool run_string_converter_count(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)inputs;
    const struct object *converter;
    double count = 0;
    if (!find_string_converter(&converter, about, working) ||
        (converter != NULL && !find_converter_count(&count, about, working)))
        return false;
    results[0] = amount_of_number(count);
    return true;
}

bool run_string_converter_power(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)inputs;
    const struct model_fact power = {SLOT_module_model_rated_power, "W"};
    const struct object *converter;
    double sum, largest, per;
    if (!need_converter(&converter, about, working) ||
        !find_over_modules(&sum, &largest, about, read_model_fact, &power, working) ||
        !need_number(&per, about, SLOT_string_modules_per_converter, working))
        return false;
    results[0] = amount_as(per * largest, "W");
    return true;
}

bool run_string_short_circuit_current(struct amount *results, const struct object *about,
                                      const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double amperes;
    if (!find_string_short_circuit(&amperes, about, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

bool run_string_source_current(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double amperes;
    if (!find_string_current(&amperes, about, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

bool run_string_held_voltage(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    (void)inputs;
    const struct object *converter;
    double volts;
    if (!need_converter(&converter, about, working) ||
        !need_string_voltage(&volts, about, converter, working))
        return false;
    results[0] = amount_as(volts, "V");
    return true;
}

bool run_string_operating_current(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double amperes;
    if (!find_string_operating_current(&amperes, about, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}
