/* What is to be said of inverters and microinverter branches, and of what feeds a circuit. */
#include <string.h>

#include "string_runs.h"

static bool need_thing(const struct object **thing, const struct object *object, unsigned slot,
                       struct working *working)
{
    return need_object(thing, object, slot, working) &&
           (*thing != NULL || working_missing(working, object, slot));
}

static bool need_amperes(double *amperes, const struct object *object, unsigned slot,
                         struct working *working)
{
    struct quantity current;
    if (!need_quantity(&current, object, slot, working))
        return false;
    *amperes = quantity_as(current, "A");
    return true;
}

static bool find_branch_current(double *amperes, const struct object *branch,
                                struct working *working)
{
    const struct object *model;
    double count, each;
    if (!need_thing(&model, branch, SLOT_branch_microinverter, working) ||
        !need_number(&count, branch, SLOT_branch_microinverters, working) ||
        !need_amperes(&each, model, SLOT_inverter_model_output_current, working))
        return false;
    *amperes = count * each;
    working_step(working, "NEC 690.8(A)", "branch %s: %g x %.6g A = %.6g A", branch->path, count,
                 each, *amperes);
    return true;
}

static bool find_inverter_current(double *amperes, const struct object *inverter,
                                  struct working *working)
{
    const struct object *model;
    if (!need_thing(&model, inverter, SLOT_inverter_model, working) ||
        !need_amperes(amperes, model, SLOT_inverter_model_output_current, working))
        return false;
    working_step(working, "NEC 690.8(A)", "inverter %s: marked output %.6g A", inverter->path,
                 *amperes);
    return true;
}

typedef bool find_current(double *amperes, const struct object *string, struct working *working);

/* The sum over strings, only those on one input (0: on any). */
static bool sum_strings(double *sum, double *count, const struct object *thing, unsigned slot,
                        double input, find_current *find, struct working *working)
{
    struct object *const *strings;
    size_t string_count;
    *sum = 0;
    *count = 0;
    if (!need_objects(&strings, &string_count, thing, slot, working))
        return false;
    for (size_t i = 0; i < string_count; i++) {
        double at = input, one = 0;
        if (input > 0 && !need_number(&at, strings[i], SLOT_string_input, working))
            return false;
        if (at != input)
            continue;
        if (find != NULL && !find(&one, strings[i], working))
            return false;
        *sum += one;
        *count += 1;
    }
    return true;
}

bool find_output_current(double *amperes, const struct object *thing, struct working *working)
{
    double count;
    switch (thing->kind->id) {
    case KIND_inverter:
        return find_inverter_current(amperes, thing, working);
    case KIND_branch:
        return find_branch_current(amperes, thing, working);
    case KIND_source:
        return need_amperes(amperes, thing, SLOT_source_output_current, working);
    case KIND_string:
        return find_string_current(amperes, thing, working);
    case KIND_combiner:
        return sum_strings(amperes, &count, thing, SLOT_combiner_strings, 0, find_string_current,
                           working);
    default:
        return working_beyond(working,
                              "the current to %s %s comes from its load calculation: a person must "
                              "judge",
                              thing->kind->name, thing->path);
    }
}

bool run_branch_count(struct amount *results, const struct object *about,
                      const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double count;
    if (!need_number(&count, about, SLOT_branch_microinverters, working))
        return false;
    results[0] = amount_of_number(count);
    return true;
}

static bool give_output(struct amount *results, const struct object *about, struct working *working)
{
    double amperes;
    if (!find_output_current(&amperes, about, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

bool run_branch_output_current(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)inputs;
    return give_output(results, about, working);
}

bool run_inverter_output_current(struct amount *results, const struct object *about,
                                 const struct amount *inputs, struct working *working)
{
    (void)inputs;
    return give_output(results, about, working);
}

/* Converters stand between the module and the input: what reaches it is their output. */
static bool find_reaching_short_circuit(double *amperes, const struct object *string,
                                        struct working *working)
{
    const struct object *converter;
    return find_string_converter(&converter, string, working) &&
           (converter != NULL ? find_string_current(amperes, string, working)
                              : find_string_short_circuit(amperes, string, working));
}

static bool give_sum(struct amount *results, const struct object *about, struct amount input,
                     find_current *find, struct working *working)
{
    double sum, count, at = amount_in(input, NULL, 0);
    if (!sum_strings(&sum, &count, about, SLOT_inverter_strings, at, find, working))
        return false;
    working_step(working, NULL, "input %g of %s: %g strings, %.6g A", at, about->path, count, sum);
    results[0] = amount_as(sum, "A");
    return true;
}

bool run_inverter_input_current(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    return give_sum(results, about, inputs[0], find_string_operating_current, working);
}

bool run_inverter_short_circuit_current(struct amount *results, const struct object *about,
                                        const struct amount *inputs, struct working *working)
{
    return give_sum(results, about, inputs[0], find_reaching_short_circuit, working);
}

bool run_inverter_string_count(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    double sum, count;
    if (!sum_strings(&sum, &count, about, SLOT_inverter_strings, amount_in(inputs[0], NULL, 0),
                     NULL, working))
        return false;
    results[0] = amount_of_number(count);
    return true;
}

bool run_inverter_array_power(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double sum, count;
    if (!sum_strings(&sum, &count, about, SLOT_inverter_strings, 0, find_string_power, working))
        return false;
    working_step(working, NULL, "%g strings on %s: %.6g W", count, about->path, sum);
    results[0] = amount_as(sum, "W");
    return true;
}
