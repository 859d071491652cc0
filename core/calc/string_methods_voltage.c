/* What is to be said of the voltages of one string of a design. */
#include "string_runs.h"

static bool find_model_cold(double *volts, const struct object *model, const void *how,
                            struct working *working)
{
    struct cold_case given = {.low = *(const double *)how};
    if (!need_in(&given.voltage, model, SLOT_module_model_open_circuit_voltage, "V", working))
        return false;
    given.has_share = object_has(model, SLOT_module_model_voc_coefficient);
    given.has_volts = object_has(model, SLOT_module_model_voc_coefficient_volts);
    struct quantity share, per_degree;
    if (given.has_share) {
        if (!need_quantity(&share, model, SLOT_module_model_voc_coefficient, working))
            return false;
        given.share = share.value;
    } else if (given.has_volts) {
        if (!need_quantity(&per_degree, model, SLOT_module_model_voc_coefficient_volts, working))
            return false;
        given.volts = quantity_as(per_degree, "V/°C");
    } else if (!object_has(model, SLOT_module_model_technology))
        return working_missing(working, model, SLOT_module_model_voc_coefficient);
    else if (!need_word(&given.technology, model, SLOT_module_model_technology, working))
        return false;
    return find_cold_voltage(volts, &given, working);
}

/* Data sheets often give the coefficient of power only; it falls faster than the voltage does, for
 * current rises with heat, and so errs to the safe side. */
static bool find_model_hot(double *volts, const struct object *model, const void *how,
                           struct working *working)
{
    struct hot_case given = {.high = *(const double *)how, .has_share = true};
    struct quantity share;
    bool has_power = !object_has(model, SLOT_module_model_vmp_coefficient) &&
                     object_has(model, SLOT_module_model_power_coefficient);
    if (!need_in(&given.voltage, model, SLOT_module_model_power_voltage, "V", working) ||
        !need_quantity(&share, model,
                       has_power ? SLOT_module_model_power_coefficient
                                 : SLOT_module_model_vmp_coefficient,
                       working))
        return false;
    if (has_power)
        working_step(working, "common practice, no source",
                     "the coefficient of power stands in for that of voltage: a lower voltage");
    given.share = share.value;
    return find_hot_voltage(volts, &given, working);
}

bool run_string_cold_voltage(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    double low = amount_in(inputs[0], "°C", 25), sum, largest;
    if (!find_over_modules(&sum, &largest, about, find_model_cold, &low, working))
        return false;
    results[0] = amount_as(sum, "V");
    return true;
}

bool run_module_model_cold_voltage(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    double low = amount_in(inputs[0], "°C", 25), volts;
    if (!find_model_cold(&volts, about, &low, working))
        return false;
    results[0] = amount_as(volts, "V");
    return true;
}

bool run_string_hot_voltage(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    double high = amount_in(inputs[0], "°C", 25) + amount_in(inputs[1], "K", 0), sum, largest;
    if (!find_over_modules(&sum, &largest, about, find_model_hot, &high, working))
        return false;
    results[0] = amount_as(sum, "V");
    return true;
}

/* 690.7(B)(2): converters in series by their instructions, else the sum of their outputs. */
bool run_string_maximum_voltage(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    const struct object *converter;
    double each, count, volts;
    if (!find_string_converter(&converter, about, working))
        return false;
    if (converter == NULL)
        return run_string_cold_voltage(results, about, inputs, working);
    if (object_has(converter, SLOT_converter_model_maximum_string_voltage)) {
        if (!need_in(&volts, converter, SLOT_converter_model_maximum_string_voltage, "V", working))
            return false;
        working_step(working, "NEC 690.7(B)(2), by instructions", "largest string voltage %.6g V",
                     volts);
    } else {
        if (!find_converter_count(&count, about, working) ||
            !need_in(&each, converter, SLOT_converter_model_maximum_output_voltage, "V", working))
            return false;
        volts = count * each;
        working_step(working, "NEC 690.7(B)(2), sum of outputs", "%g x %.6g V = %.6g V", count,
                     each, volts);
    }
    results[0] = amount_as(volts, "V");
    return true;
}

bool run_string_converter_voltage(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    const struct object *converter;
    double low = amount_in(inputs[0], "°C", 25), sum, largest, per;
    if (!need_converter(&converter, about, working) ||
        !find_over_modules(&sum, &largest, about, find_model_cold, &low, working) ||
        !need_number(&per, about, SLOT_string_modules_per_converter, working))
        return false;
    working_step(working, NULL, "%g in series on one converter: %.6g V", per, per * largest);
    results[0] = amount_as(per * largest, "V");
    return true;
}
