/* The load calculation and the working spaces of a design. */
#include "service_load.h"

#include <string.h>

#include "voltage.h"

static bool need_va(double *out, const struct object *object, unsigned slot,
                    struct working *working)
{
    struct quantity power;
    if (!need_quantity(&power, object, slot, working))
        return false;
    *out = quantity_as(power, "VA");
    return true;
}

static bool need_service_volts(double *volts, unsigned slot, struct working *working)
{
    const struct object *service, *root = working->design->root;
    struct quantity voltage;
    if (!need_object(&service, root, SLOT_design_service, working))
        return false;
    if (service == NULL)
        return working_missing(working, root, SLOT_design_service);
    if (!need_quantity(&voltage, service, slot, working))
        return false;
    *volts = quantity_as(voltage, "V");
    return true;
}

/* How heating is controlled is no fact of a design: the larger share is taken. */
static bool need_dwelling(struct dwelling *dwelling, const struct object *loads,
                          struct amount edition, struct working *working)
{
    struct quantity area;
    double kitchen, laundry;
    *dwelling = (struct dwelling){.heating_kind = heating_words[0]};
    if (!edition_read(&dwelling->edition, edition, working) ||
        !need_quantity(&area, loads, SLOT_load_calculation_floor_area, working) ||
        !need_number(&kitchen, loads, SLOT_load_calculation_small_appliance_circuits, working) ||
        !need_number(&laundry, loads, SLOT_load_calculation_laundry_circuits, working) ||
        !need_va(&dwelling->appliances, loads, SLOT_load_calculation_appliances, working) ||
        !need_va(&dwelling->motors, loads, SLOT_load_calculation_motors, working) ||
        !need_va(&dwelling->charging, loads, SLOT_load_calculation_ev_charging, working) ||
        !need_va(&dwelling->heating, loads, SLOT_load_calculation_heating, working) ||
        !need_va(&dwelling->cooling, loads, SLOT_load_calculation_cooling, working) ||
        !need_service_volts(&dwelling->voltage, SLOT_service_voltage, working))
        return false;
    dwelling->area = quantity_as(area, "ft²");
    dwelling->circuits = kitchen + laundry;
    return true;
}

bool run_load_calculation_optional(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    struct dwelling dwelling;
    if (!need_dwelling(&dwelling, about, inputs[0], working))
        return false;
    calculate_optional(results, &dwelling, working);
    return true;
}

bool run_load_calculation_existing(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    struct dwelling dwelling;
    bool adds;
    if (!need_yesno(&adds, about, SLOT_load_calculation_adds_air_conditioning, working) ||
        !need_dwelling(&dwelling, about, inputs[0], working))
        return false;
    calculate_existing(results, &dwelling, adds, working);
    return true;
}

bool run_load_calculation_metered(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double peak = 0, volts = 0;
    if (!need_va(&peak, about, SLOT_load_calculation_existing_peak, working) ||
        !need_service_volts(&volts, SLOT_service_voltage, working))
        return false;
    working_step(working, "NEC 220.87, secondary source", "1.25 x %g VA / %g V = %.6g A", peak,
                 volts, 1.25 * peak / volts);
    results[0] = amount_as(1.25 * peak / volts, "A");
    return true;
}

/* Working space, NEC 110.26(A) */

#define SOURCE_SPACE "NEC 110.26(A)(2), (3), secondary source"
static const double least_width = 30;   /* in */
static const double least_height = 6.5; /* ft */

static int condition_of(const char *facing)
{
    return strcmp(facing, "live parts to none") == 0     ? 1
           : strcmp(facing, "live parts to ground") == 0 ? 2
                                                         : 3;
}

static bool size_space(struct amount *results, double volts, const char *facing,
                       double equipment_width, double equipment_height, struct working *working)
{
    double depth;
    if (!working_space_depth(&depth, volts, condition_of(facing)))
        return working_beyond(working, "%g V to ground is above Table 110.26(A)(1) as at hand",
                              volts);
    double width = equipment_width > least_width ? equipment_width : least_width;
    double height = equipment_height > least_height ? equipment_height : least_height;
    working_step(working, SOURCE_WORKING_SPACE, "%g V to ground, %s: %g ft deep", volts, facing,
                 depth);
    working_step(working, SOURCE_SPACE, "the larger of 30 in and the equipment: %g in wide", width);
    working_step(working, SOURCE_SPACE, "the larger of 6.5 ft and the equipment: %g ft high",
                 height);
    results[0] = amount_as(depth, "ft");
    results[1] = amount_as(width, "in");
    results[2] = amount_as(height, "ft");
    return true;
}

bool run_working_space(struct amount *results, const struct object *about,
                       const struct amount *inputs, struct working *working)
{
    (void)about;
    return size_space(results, amount_in(inputs[0], "V", 0), inputs[1].word,
                      amount_in(inputs[2], "in", 0), amount_in(inputs[3], "ft", 0), working);
}

/* The voltage is the service's unless the rule tells a higher one (dc in an inverter). */
bool run_working_space_needed(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    double volts = amount_in(inputs[0], "V", 0);
    const char *facing;
    struct quantity width;
    if (!is_given(inputs[0]) &&
        !need_service_volts(&volts, SLOT_service_voltage_to_ground, working))
        return false;
    if (!need_word(&facing, about, SLOT_working_space_facing, working) ||
        !need_quantity(&width, about, SLOT_working_space_equipment_width, working))
        return false;
    return size_space(results, volts, facing, quantity_as(width, "in"), 0, working);
}
