/* What is to be said of one string of a design. */
#include <math.h>
#include <string.h>

#include "string_runs.h"

/* Modules */

static bool need_model(const struct object **model, const struct object *module, unsigned slot,
                       struct working *working)
{
    return need_object(model, module, slot, working) &&
           (*model != NULL || working_missing(working, module, slot));
}

/* A reference may name one module or a whole row. */
static bool read_reference(struct module_group *out, const struct object *reference,
                           struct working *working)
{
    double columns, rows;
    out->count = 1;
    if (reference->kind->id == KIND_module)
        return need_model(&out->model, reference, SLOT_module_model, working);
    if (!need_model(&out->model, reference, SLOT_module_row_model, working) ||
        !need_number(&columns, reference, SLOT_module_row_columns, working) ||
        !need_number(&rows, reference, SLOT_module_row_rows, working))
        return false;
    out->count = columns * rows;
    return true;
}

bool find_module_groups(struct module_group **groups, size_t *count, const struct object *thing,
                        unsigned slot, struct working *working)
{
    struct object *const *modules;
    size_t module_count;
    *count = 0;
    if (!need_objects(&modules, &module_count, thing, slot, working))
        return false;
    *groups = arena_take(working->arena, (module_count + 1) * sizeof **groups);
    if (*groups == NULL)
        return working_short(working);
    for (size_t i = 0; i < module_count; i++) {
        struct module_group one;
        size_t at = 0;
        if (!read_reference(&one, modules[i], working))
            return false;
        while (at < *count && (*groups)[at].model != one.model)
            at++;
        if (at == *count)
            (*groups)[(*count)++] = one;
        else
            (*groups)[at].count += one.count;
    }
    return true;
}

/* Sums what each model gives, over all modules; or the largest of it. */
typedef bool of_model(double *out, const struct object *model, const void *how,
                      struct working *working);

static bool find_over_modules(double *sum, double *largest, const struct object *string,
                              of_model *find, const void *how, struct working *working)
{
    struct module_group *groups;
    size_t count;
    if (!find_module_groups(&groups, &count, string, SLOT_string_modules, working))
        return false;
    *sum = 0;
    *largest = 0;
    for (size_t i = 0; i < count; i++) {
        double one;
        if (!find(&one, groups[i].model, how, working))
            return false;
        *sum += groups[i].count * one;
        *largest = fmax(*largest, one);
        working_step(working, NULL, "%g x %.6g (%s) = %.6g", groups[i].count, one,
                     groups[i].model->path, groups[i].count * one);
    }
    return true;
}

static bool count_one(double *out, const struct object *model, const void *how,
                      struct working *working)
{
    (void)model;
    (void)how;
    (void)working;
    *out = 1;
    return true;
}

struct model_fact {
    unsigned slot;
    const char *unit;
};

static bool read_model_fact(double *out, const struct object *model, const void *how,
                            struct working *working)
{
    const struct model_fact *fact = how;
    struct quantity quantity;
    if (!need_quantity(&quantity, model, fact->slot, working))
        return false;
    *out = quantity_as(quantity, fact->unit);
    return true;
}

bool find_string_power(double *watts, const struct object *string, struct working *working)
{
    const struct model_fact power = {SLOT_module_model_rated_power, "W"};
    double largest;
    return find_over_modules(watts, &largest, string, read_model_fact, &power, working);
}

bool find_string_short_circuit(double *amperes, const struct object *string,
                               struct working *working)
{
    const struct model_fact current = {SLOT_module_model_short_circuit_current, "A"};
    double sum;
    return find_over_modules(&sum, amperes, string, read_model_fact, &current, working);
}

/* Converters */

bool find_string_converter(const struct object **model, const struct object *string,
                           struct working *working)
{
    bool has_converters;
    *model = NULL;
    enum fact_state state = object_fact(string, SLOT_string_converter)->state;
    if (state != FACT_MISSING)
        return need_object(model, string, SLOT_string_converter, working);
    return need_yesno(&has_converters, string, SLOT_string_has_converters, working) &&
           (!has_converters || working_missing(working, string, SLOT_string_converter));
}

static bool need_converter(const struct object **model, const struct object *string,
                           struct working *working)
{
    return find_string_converter(model, string, working) &&
           (*model != NULL ||
            working_wrong(working, NULL, "string %s has no converters", string->path));
}

static bool find_converter_count(double *converters, const struct object *string,
                                 struct working *working)
{
    double modules, largest, per;
    if (!find_over_modules(&modules, &largest, string, count_one, NULL, working) ||
        !need_number(&per, string, SLOT_string_modules_per_converter, working))
        return false;
    *converters = ceil(modules / per);
    working_step(working, NULL, "%g modules, %g per converter: %g converters", modules, per,
                 *converters);
    return true;
}

static bool need_in(double *out, const struct object *model, unsigned slot, const char *unit,
                    struct working *working)
{
    const struct model_fact fact = {slot, unit};
    return read_model_fact(out, model, &fact, working);
}

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
static bool need_string_voltage(double *volts, const struct object *string,
                                const struct object *converter, struct working *working)
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

/* Voltages */

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
