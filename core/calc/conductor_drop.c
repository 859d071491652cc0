#include "conductor_runs.h"

#include <math.h>
#include <string.h>

#include "conductor.h"

/* Which column of Table 9: cables and non-metallic raceways, aluminum armour, steel. */
static enum raceway_metal metal_of(const char *wiring_method)
{
    static const char *const steel[] = {"EMT", "RMC", "IMC", "FMC", "LFMC"};
    for (size_t i = 0; i < sizeof steel / sizeof steel[0]; i++)
        if (strcmp(wiring_method, steel[i]) == 0)
            return STEEL_RACEWAY;
    return strcmp(wiring_method, "MC cable") == 0 ? ALUMINUM_RACEWAY : NO_METAL;
}

bool find_dc_drop(double *volts, const struct drop_case *given, struct working *working)
{
    double ohms;
    if (!conductor_dc_resistance(&ohms, given->size, given->material, given->is_coated,
                                 given->is_solid ? SOLID : STRANDED))
        return working_beyond(working,
                              "size is %s %s; the dc resistances at hand run from 18 AWG to 750 "
                              "kcmil, solid to 8 AWG",
                              given->size, given->material);
    *volts = 2 * given->feet / 1000 * ohms * given->amperes / given->sets;
    working_step(working, SOURCE_DC_RESISTANCE, "%s %s at 75 °C: %g Ω/kft%s", given->size,
                 given->material, ohms,
                 conductor_is_from_memory(given->size) ? " (from memory)" : "");
    working_step(working, NULL, "2 x %.6g ft x %g Ω/kft x %.6g A / %g per pole = %.6g V",
                 given->feet, ohms, given->amperes, given->sets, *volts);
    return true;
}

bool find_ac_drop(double *volts, const struct drop_case *given, struct working *working)
{
    double ohms, reactance;
    if (!conductor_ac_impedance(&ohms, &reactance, given->size, given->material,
                                metal_of(given->wiring_method)))
        return working_beyond(working,
                              "size is %s %s; the impedances at hand run from 14 AWG copper or 12 "
                              "AWG aluminum to 750 kcmil, and none is of 700 kcmil",
                              given->size, given->material);
    double pf = given->power_factor;
    double effective = ohms * pf + reactance * sqrt(1 - pf * pf);
    double factor = given->is_three_phase ? sqrt(3) : 2;
    *volts = factor * given->feet / 1000 * effective * given->amperes / given->sets;
    working_step(working, SOURCE_AC_IMPEDANCE,
                 "%s %s in %s: R %g Ω/kft, X %g Ω/kft; at power factor %g effective %.6g Ω/kft",
                 given->size, given->material, given->wiring_method, ohms, reactance, pf,
                 effective);
    working_step(working, NULL, "%.6g x %.6g ft x %.6g Ω/kft x %.6g A / %g per pole = %.6g V",
                 factor, given->feet, effective, given->amperes, given->sets, *volts);
    return true;
}

static void give_drop(struct amount *results, double volts, struct amount voltage, double amperes,
                      double per_volt)
{
    results[0] = amount_as(volts, "V");
    results[1] = amount_as(volts * amperes * per_volt, "W");
    if (is_given(voltage))
        results[2] = amount_of_number(volts / amount_in(voltage, "V", 1));
}

enum { DROP_CURRENT, DROP_LENGTH, DROP_SIZE, DROP_MATERIAL, DROP_VOLTAGE, DROP_SETS, DROP_OWN };

static struct drop_case read_drop(const struct amount *inputs)
{
    return (struct drop_case){.amperes = amount_in(inputs[DROP_CURRENT], "A", 0),
                              .feet = amount_in(inputs[DROP_LENGTH], "ft", 0),
                              .size = inputs[DROP_SIZE].word,
                              .material = inputs[DROP_MATERIAL].word,
                              .sets = amount_in(inputs[DROP_SETS], NULL, 1)};
}

bool run_dc_voltage_drop(struct amount *results, const struct object *about,
                         const struct amount *inputs, struct working *working)
{
    (void)about;
    double volts;
    struct drop_case given = read_drop(inputs);
    given.is_solid = is_given(inputs[DROP_OWN]) && inputs[DROP_OWN].yes;
    given.is_coated = is_given(inputs[DROP_OWN + 1]) && inputs[DROP_OWN + 1].yes;
    if (!find_dc_drop(&volts, &given, working))
        return false;
    give_drop(results, volts, inputs[DROP_VOLTAGE], given.amperes, 1);
    return true;
}

bool run_ac_voltage_drop(struct amount *results, const struct object *about,
                         const struct amount *inputs, struct working *working)
{
    (void)about;
    double volts;
    struct drop_case given = read_drop(inputs);
    given.wiring_method = inputs[DROP_OWN].word;
    given.power_factor = amount_in(inputs[DROP_OWN + 1], NULL, 1);
    double phases = amount_in(inputs[DROP_OWN + 2], NULL, 1);
    given.is_three_phase = phases == 3;
    if (phases != 1 && phases != 3)
        return working_wrong(working, "phases", "phases is %.6g; it must be 1 or 3", phases);
    if (!find_ac_drop(&volts, &given, working))
        return false;
    give_drop(results, volts, inputs[DROP_VOLTAGE], given.amperes,
              given.is_three_phase ? sqrt(3) : 1);
    return true;
}
