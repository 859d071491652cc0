/* What is to be said of one circuit of a design. */
#include "conductor_runs.h"

#include <string.h>

#include "conductor.h"

/* Current */

static bool is_role(const struct object *circuit, const char *role)
{
    return object_is(circuit, SLOT_circuit_role, role);
}

/* The source circuit of a converter string ends at the converters: there the modules tell. */
static bool find_carried_current(double *amperes, const struct object *circuit,
                                 const struct object *thing, struct working *working)
{
    if (thing->kind->id != KIND_string || !is_role(circuit, "PV source"))
        return find_output_current(amperes, thing, working);
    double short_circuit;
    if (!find_string_short_circuit(&short_circuit, thing, working))
        return false;
    *amperes = IRRADIANCE_FACTOR * short_circuit;
    working_step(working, "NEC 690.8(A)(1)", "string %s: 1.25 x %.6g A = %.6g A", thing->path,
                 short_circuit, *amperes);
    return true;
}

bool find_circuit_current(double *amperes, const struct object *circuit, struct working *working)
{
    const char *role;
    struct object *const *things;
    size_t count;
    if (!need_word(&role, circuit, SLOT_circuit_role, working) ||
        !need_objects(&things, &count, circuit, SLOT_circuit_carries, working))
        return false;
    if (count == 0)
        return working_beyond(working,
                              "circuit %s carries nothing named: its current is to be told "
                              "by a person",
                              circuit->path);
    *amperes = 0;
    for (size_t i = 0; i < count; i++) {
        double one;
        if (!find_carried_current(&one, circuit, things[i], working))
            return false;
        *amperes += one;
    }
    working_step(working, "NEC 690.8(A), 705.28(A)", "circuit %s carries %.6g A", circuit->path,
                 *amperes);
    return true;
}

bool run_circuit_design_current(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double amperes;
    if (!find_circuit_current(&amperes, about, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

/* Ampacity */

bool need_quantity_in(double *out, const struct object *circuit, unsigned slot, const char *unit,
                      struct working *working)
{
    struct quantity quantity;
    if (!need_quantity(&quantity, circuit, slot, working))
        return false;
    *out = quantity_as(quantity, unit);
    return true;
}

/* A maker's or an engineer's figure. */
static bool has_stated(double *amperes, const struct object *circuit, struct working *working)
{
    if (!object_has(circuit, SLOT_circuit_ampacity))
        return false;
    double sets = object_fact(circuit, SLOT_circuit_parallel_sets)->is.number;
    working_read(working, circuit, SLOT_circuit_ampacity);
    *amperes = quantity_as(object_quantity(circuit, SLOT_circuit_ampacity), "A") *
               (object_has(circuit, SLOT_circuit_parallel_sets) ? sets : 1);
    working_step(working, NULL, "ampacity as stated for circuit %s: %.6g A", circuit->path,
                 *amperes);
    return true;
}

/* Trunk cable has no table: its maker's figure stands, but for more than its conductors carry one
 * by one in the open it cannot. */
static bool has_makers_figure(double *amperes, const struct object *circuit,
                              struct working *working)
{
    double most;
    if ((!object_is(circuit, SLOT_circuit_insulation, "trunk cable") &&
         !object_is(circuit, SLOT_circuit_wiring_method, "trunk cable")) ||
        !has_stated(amperes, circuit, working))
        return false;
    if (object_has(circuit, SLOT_circuit_conductor_size) &&
        object_has(circuit, SLOT_circuit_conductor_material) &&
        ampacity_at(&most, object_fact(circuit, SLOT_circuit_conductor_size)->is.word,
                    object_fact(circuit, SLOT_circuit_conductor_material)->is.word, 90,
                    IN_FREE_AIR) &&
        number_compare(*amperes, most) > 0) {
        working_read(working, circuit, SLOT_circuit_conductor_size);
        working_read(working, circuit, SLOT_circuit_conductor_material);
        working_step(working, SOURCE_AMPACITY_FREE, "no more than %g A, 90 °C in free air", most);
        *amperes = most;
    }
    return true;
}

/* Where a table has the conductor, no other figure may stand above the table's. */
static void bound_by_stated(double *amperes, const struct object *circuit, struct working *working)
{
    double stated;
    if (has_stated(&stated, circuit, working) && stated < *amperes)
        *amperes = stated;
}

static bool read_metal(struct ampacity_case *given, const struct object *circuit, bool needs_size,
                       struct working *working)
{
    return (!needs_size ||
            need_word(&given->size, circuit, SLOT_circuit_conductor_size, working)) &&
           need_word(&given->material, circuit, SLOT_circuit_conductor_material, working) &&
           need_quantity_in(&given->insulation, circuit, SLOT_circuit_insulation_temperature, "°C",
                            working) &&
           need_number(&given->sets, circuit, SLOT_circuit_parallel_sets, working);
}

static bool read_roof(struct ampacity_case *given, const struct object *circuit,
                      struct working *working)
{
    bool is_on_roof;
    given->height = -1;
    if (!need_yesno(&is_on_roof, circuit, SLOT_circuit_on_roof, working))
        return false;
    working_read(working, circuit, SLOT_circuit_height_above_roof);
    if (!is_on_roof)
        return !object_has(circuit, SLOT_circuit_height_above_roof) ||
               working_beyond(working, "it is told not to run on a roof, and how high above the "
                                       "roof it runs: the designer tells which holds");
    return need_quantity_in(&given->height, circuit, SLOT_circuit_height_above_roof, "in",
                            working) &&
           need_word(&given->insulation_type, circuit, SLOT_circuit_insulation, working);
}

static bool read_surroundings(struct ampacity_case *given, const struct object *circuit,
                              struct amount edition, struct working *working)
{
    const char *method;
    if (!edition_read(&given->edition, edition, working) ||
        !need_quantity_in(&given->ambient, circuit, SLOT_circuit_ambient_temperature, "°C",
                          working) ||
        !find_carrying_conductors(&given->conductors, circuit, working) ||
        !need_word(&method, circuit, SLOT_circuit_wiring_method, working))
        return false;
    given->environment = strcmp(method, "free air") == 0 ? IN_FREE_AIR : IN_RACEWAY;
    return read_roof(given, circuit, working);
}

static enum ocpd_device device_on(const struct object *circuit)
{
    return object_is(circuit, SLOT_circuit_ocpd, "fuse") ||
                   object_is(circuit, SLOT_circuit_ocpd, "fused disconnect")
               ? FUSE
               : CIRCUIT_BREAKER;
}

static bool find_corrected(double *amperes, const struct object *circuit, struct amount edition,
                           struct working *working)
{
    struct ampacity_case given = {0};
    struct ampacity_found found;
    if (has_makers_figure(amperes, circuit, working))
        return true;
    if (!read_metal(&given, circuit, true, working) ||
        !read_surroundings(&given, circuit, edition, working) ||
        !find_ampacity(&found, &given, working))
        return false;
    *amperes = found.corrected;
    bound_by_stated(amperes, circuit, working);
    return true;
}

static bool find_terminal(double *amperes, const struct object *circuit, struct working *working)
{
    struct ampacity_case given = {0};
    if (has_makers_figure(amperes, circuit, working))
        return true;
    if (!read_metal(&given, circuit, true, working) ||
        !need_quantity_in(&given.terminal, circuit, SLOT_circuit_terminal_temperature, "°C",
                          working) ||
        !find_terminal_ampacity(amperes, &given, working))
        return false;
    bound_by_stated(amperes, circuit, working);
    return true;
}

static bool find_usable(double *amperes, const struct object *circuit, struct amount edition,
                        struct working *working)
{
    double corrected, terminal;
    if (!find_corrected(&corrected, circuit, edition, working) ||
        !find_terminal(&terminal, circuit, working))
        return false;
    *amperes = corrected < terminal ? corrected : terminal;
    return true;
}

bool run_circuit_corrected_ampacity(struct amount *results, const struct object *about,
                                    const struct amount *inputs, struct working *working)
{
    double amperes;
    if (!find_corrected(&amperes, about, inputs[0], working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

bool run_circuit_terminal_ampacity(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double amperes;
    if (!find_terminal(&amperes, about, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

bool run_circuit_usable_ampacity(struct amount *results, const struct object *about,
                                 const struct amount *inputs, struct working *working)
{
    double amperes;
    if (!find_usable(&amperes, about, inputs[0], working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

/* Protection */

static bool find_needed_ocpd(double *rating, const struct object *circuit, struct amount edition,
                             struct working *working)
{
    double amperes;
    int year;
    if (!edition_read(&year, edition, working) || !find_circuit_current(&amperes, circuit, working))
        return false;
    working_step(working, "NEC 690.9(B), 705.30", "1.25 x %.6g A = %.6g A", amperes,
                 CONTINUOUS_FACTOR * amperes);
    return find_ocpd_up(rating, CONTINUOUS_FACTOR * amperes, device_on(circuit), year, working);
}

bool run_circuit_needed_ocpd(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    double rating;
    if (!find_needed_ocpd(&rating, about, inputs[0], working))
        return false;
    results[0] = amount_as(rating, "A");
    return true;
}

bool run_circuit_largest_ocpd(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    double usable, rating;
    int edition;
    const char *size, *material;
    if (!edition_read(&edition, inputs[0], working) ||
        !find_usable(&usable, about, inputs[0], working) ||
        !need_word(&size, about, SLOT_circuit_conductor_size, working) ||
        !need_word(&material, about, SLOT_circuit_conductor_material, working) ||
        !find_largest_ocpd(&rating, size, material, usable, device_on(about), edition, working))
        return false;
    results[0] = amount_as(rating, "A");
    return true;
}

bool run_circuit_smallest_size(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    struct ampacity_case given = {0};
    double amperes, ocpd = 0;
    const char *size;
    if (!find_circuit_current(&amperes, about, working) ||
        !read_metal(&given, about, false, working) ||
        !read_surroundings(&given, about, inputs[0], working) ||
        !need_quantity_in(&given.terminal, about, SLOT_circuit_terminal_temperature, "°C", working))
        return false;
    working_read(working, about, SLOT_circuit_ocpd_rating);
    if (object_has(about, SLOT_circuit_ocpd_rating))
        ocpd = quantity_as(object_quantity(about, SLOT_circuit_ocpd_rating), "A");
    if (!find_smallest_conductor(&size, &given, amperes, ocpd, device_on(about), working))
        return false;
    results[0] = amount_of_word(size);
    return true;
}

/* 690.45: where no device protects the circuit, one of 690.9(B) is assumed. */
bool run_circuit_needed_egc(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    double rating;
    const char *material, *size;
    bool has_none = object_is(about, SLOT_circuit_ocpd, "none");
    if (has_none ? !find_needed_ocpd(&rating, about, inputs[0], working)
                 : !need_quantity_in(&rating, about, SLOT_circuit_ocpd_rating, "A", working))
        return false;
    if (!need_word(&material, about, SLOT_circuit_egc_material, working))
        return false;
    if (!conductor_egc(&size, rating, material))
        return working_beyond(working, "a device of %.6g A is not in Table 250.122", rating);
    working_step(working, SOURCE_EGC, "device of %g A, %s: %s", rating, material, size);
    results[0] = amount_of_word(size);
    return true;
}

/* Voltage drop */

static bool find_operating_current(double *amperes, const struct object *circuit, bool is_direct,
                                   struct working *working)
{
    struct object *const *things;
    size_t count;
    if (!is_direct)
        return find_circuit_current(amperes, circuit, working);
    if (!need_objects(&things, &count, circuit, SLOT_circuit_carries, working))
        return false;
    *amperes = 0;
    for (size_t i = 0; i < count; i++) {
        double one;
        if (things[i]->kind->id != KIND_string)
            return find_circuit_current(amperes, circuit, working);
        if (!find_string_operating_current(&one, things[i], working))
            return false;
        *amperes += one;
    }
    return true;
}

bool run_circuit_voltage_drop(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    (void)inputs;
    struct drop_case given = {.power_factor = 1};
    const char *role;
    double voltage, volts;
    if (!need_word(&role, about, SLOT_circuit_role, working) ||
        !need_quantity_in(&voltage, about, SLOT_circuit_nominal_voltage, "V", working) ||
        !need_quantity_in(&given.feet, about, SLOT_circuit_length, "ft", working) ||
        !need_word(&given.size, about, SLOT_circuit_conductor_size, working) ||
        !need_word(&given.material, about, SLOT_circuit_conductor_material, working) ||
        !need_word(&given.wiring_method, about, SLOT_circuit_wiring_method, working) ||
        !need_number(&given.sets, about, SLOT_circuit_parallel_sets, working) ||
        !find_operating_current(&given.amperes, about, is_dc_role(role), working))
        return false;
    if (!is_dc_role(role))
        working_step(working, NULL, "taken as single-phase at power factor 1");
    if (is_dc_role(role) ? !find_dc_drop(&volts, &given, working)
                         : !find_ac_drop(&volts, &given, working))
        return false;
    results[0] = amount_of_number(volts / voltage);
    results[1] = amount_as(volts, "V");
    return true;
}
