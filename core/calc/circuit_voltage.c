/* The voltage of one circuit of a design, by what it carries. */
#include "conductor_runs.h"

#include <math.h>

#include "string_runs.h"

/* A string's largest voltage in the cold, where it is a string. */
static bool raise_to_string(double *volts, const struct object *thing, struct working *working)
{
    const struct object *site;
    struct quantity low;
    struct amount found[CALCULATOR_RESULTS];
    if (thing->kind->id != KIND_string)
        return true;
    if (!need_object(&site, working->design->root, SLOT_design_site, working))
        return false;
    if (site == NULL)
        return working_missing(working, working->design->root, SLOT_design_site);
    if (!need_quantity(&low, site, SLOT_site_design_low_temperature, working))
        return false;
    const struct amount asked = amount_of_quantity(low);
    if (!run_string_maximum_voltage(found, thing, &asked, working))
        return false;
    *volts = fmax(*volts, amount_in(found[0], "V", 0));
    return true;
}

bool run_circuit_largest_voltage(struct amount *results, const struct object *about,
                                 const struct amount *inputs, struct working *working)
{
    struct object *const *things, *const *strings;
    size_t count, string_count;
    struct quantity nominal;
    (void)inputs;
    if (!need_quantity(&nominal, about, SLOT_circuit_nominal_voltage, working) ||
        !need_objects(&things, &count, about, SLOT_circuit_carries, working))
        return false;
    double volts = amount_in(amount_of_quantity(nominal), "V", 0);
    for (size_t i = 0; i < count; i++) {
        if (things[i]->kind->id != KIND_combiner) {
            if (!raise_to_string(&volts, things[i], working))
                return false;
            continue;
        }
        if (!need_objects(&strings, &string_count, things[i], SLOT_combiner_strings, working))
            return false;
        for (size_t k = 0; k < string_count; k++)
            if (!raise_to_string(&volts, strings[k], working))
                return false;
    }
    results[0] = amount_as(volts, "V");
    return true;
}
