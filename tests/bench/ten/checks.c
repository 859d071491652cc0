/* The ten checks by hand, over a design as it was parsed. They judge, and record nothing. */
#include "ten.h"

#include <math.h>

static const double INCH = 0.0254, FOOT = 0.3048, PSF = 4.4482216152605 / (0.3048 * 0.3048);

static bool number_of(double *out, const struct object *object, unsigned slot)
{
    if (!object_has(object, slot))
        return false;
    *out = object->facts[slot].is.number;
    return true;
}

/* Equal within 1e-9 of the larger magnitude counts as equal. */
static enum outcome not_exceed(double actual, double limit)
{
    return actual <= limit + 1e-9 * fmax(fabs(actual), fabs(limit)) ? OUTCOME_PASS : OUTCOME_FAIL;
}

static enum outcome fact_not_exceed(const struct object *object, unsigned slot, double limit)
{
    double actual;
    return number_of(&actual, object, slot) ? not_exceed(actual, limit) : OUTCOME_OPEN;
}

static enum outcome fact_at_least(const struct object *object, unsigned slot, double limit)
{
    double actual;
    return number_of(&actual, object, slot) ? not_exceed(limit, actual) : OUTCOME_OPEN;
}

static enum outcome circuit_device(const struct object *circuit)
{
    const struct fact *carries = &circuit->facts[SLOT_circuit_carries];
    double sum = 0, rating, one;
    if (!object_has(circuit, SLOT_circuit_role))
        return OUTCOME_OPEN;
    if (!object_is(circuit, SLOT_circuit_role, "inverter output"))
        return OUTCOME_NOT_APPLICABLE;
    if (carries->state == FACT_MISSING)
        return OUTCOME_OPEN;
    for (size_t i = 0; i < carries->count; i++) {
        const struct object *inverter = carries->is.objects[i];
        if (!object_has(inverter, SLOT_inverter_model) ||
            !number_of(&one, inverter->facts[SLOT_inverter_model].is.object,
                       SLOT_inverter_model_output_current))
            return OUTCOME_OPEN;
        sum += one;
    }
    if (!number_of(&rating, circuit, SLOT_circuit_ocpd_rating))
        return OUTCOME_OPEN;
    return not_exceed(1.25 * sum, rating);
}

static enum outcome busbar_sum(const struct object *bus)
{
    const struct fact *breakers = &bus->facts[SLOT_busbar_breakers];
    double sum, rating, one;
    if (!number_of(&sum, bus, SLOT_busbar_protecting_device) || breakers->state == FACT_MISSING)
        return OUTCOME_OPEN;
    for (size_t i = 0; i < breakers->count; i++) {
        const struct object *breaker = breakers->is.objects[i];
        if (!object_has(breaker, SLOT_breaker_duty))
            return OUTCOME_OPEN;
        if (!object_is(breaker, SLOT_breaker_duty, "source") &&
            !object_is(breaker, SLOT_breaker_duty, "feeder"))
            continue;
        if (!number_of(&one, breaker, SLOT_breaker_rating))
            return OUTCOME_OPEN;
        sum += one;
    }
    return number_of(&rating, bus, SLOT_busbar_rating) ? not_exceed(sum, 1.2 * rating)
                                                       : OUTCOME_OPEN;
}

static enum outcome array_height(const struct object *racking)
{
    return fact_not_exceed(racking, SLOT_racking_height_above_roof, 6 * INCH);
}

static enum outcome ridge_distance(const struct object *circuit)
{
    if (!object_has(circuit, SLOT_circuit_on_roof))
        return OUTCOME_OPEN;
    if (!circuit->facts[SLOT_circuit_on_roof].is.yes)
        return OUTCOME_NOT_APPLICABLE;
    return fact_at_least(circuit, SLOT_circuit_ridge_distance, 18 * INCH);
}

static enum outcome shingle_slope(const struct object *plane)
{
    if (!object_has(plane, SLOT_roof_plane_covering))
        return OUTCOME_OPEN;
    if (!object_is(plane, SLOT_roof_plane_covering, "composition shingle"))
        return OUTCOME_NOT_APPLICABLE;
    return fact_at_least(plane, SLOT_roof_plane_slope, 20 * acos(-1) / 180);
}

static enum outcome dead_load(const struct object *plane)
{
    double load;
    if (!number_of(&load, plane, SLOT_roof_plane_dead_load))
        return OUTCOME_OPEN;
    return not_exceed(load + 3 * PSF, 12 * PSF);
}

static enum outcome module_count(const struct object *string)
{
    const struct fact *modules = &string->facts[SLOT_string_modules];
    if (modules->state == FACT_MISSING)
        return OUTCOME_OPEN;
    return not_exceed((double)modules->count, 10);
}

static enum outcome disconnect_distance(const struct object *disconnect)
{
    if (!object_has(disconnect, SLOT_disconnect_role))
        return OUTCOME_OPEN;
    if (!object_is(disconnect, SLOT_disconnect_role, "utility"))
        return OUTCOME_NOT_APPLICABLE;
    return fact_not_exceed(disconnect, SLOT_disconnect_distance_to_meter, 10 * FOOT);
}

static enum outcome shutdown_voltage(const struct object *shutdown)
{
    return fact_not_exceed(shutdown, SLOT_rapid_shutdown_voltage_inside, 80);
}

static enum outcome label_letters(const struct object *label)
{
    return fact_at_least(label, SLOT_label_letter_height, 0.375 * INCH);
}

const struct check checks[CHECKS] = {
    {"array-height", KIND_racking, array_height},
    {"busbar-sum", KIND_busbar, busbar_sum},
    {"circuit-device", KIND_circuit, circuit_device},
    {"dead-load", KIND_roof_plane, dead_load},
    {"disconnect-distance", KIND_disconnect, disconnect_distance},
    {"label-letters", KIND_label, label_letters},
    {"module-count", KIND_string, module_count},
    {"ridge-distance", KIND_circuit, ridge_distance},
    {"shingle-slope", KIND_roof_plane, shingle_slope},
    {"shutdown-voltage", KIND_rapid_shutdown, shutdown_voltage},
};
