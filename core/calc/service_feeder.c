/* Feeders, taps of feeders and connections on the supply side. NEC 705.11, 705.12, 240.21(B). */
#include "service.h"

#include <string.h>

#include "conductor.h"

#define SOURCE_FEEDER "NEC 705.12(A)(1) (2017: (B)(2)(1), 2020: (B)(1)), secondary source"
#define SOURCE_TAP    "NEC 705.12(A)(3) (2017: (B)(2)(2), 2020: (B)(2)), 240.21(B), secondary source"
#define SOURCE_SUPPLY "NEC 705.11(B) (2020, 2023), secondary source"

/* Lengths of taps, ft: 240.21(B)(1) and (B)(2). */
static const double short_tap = 10, long_tap = 25;

/* Feeders */

static double add_feeder(double ocpd, double source, struct working *working)
{
    double needed = ocpd + CONTINUOUS_FACTOR * source;
    working_step(working, SOURCE_FEEDER, "%g A + 1.25 x %.6g A = %.6g A", ocpd, source, needed);
    return needed;
}

bool run_feeder_ampacity(struct amount *results, const struct object *about,
                         const struct amount *inputs, struct working *working)
{
    (void)about;
    double ocpd = amount_in(inputs[0], "A", 0);
    double needed = add_feeder(ocpd, amount_in(inputs[1], "A", 0), working);
    results[0] = amount_as(needed, "A");
    if (is_given(inputs[2]))
        results[1] = amount_of_yesno(number_compare(needed, amount_in(inputs[2], "A", 0)) <= 0);
    return true;
}

static bool find_feeder_source(double *amperes, const struct object *circuit,
                               struct working *working)
{
    struct source_list sources;
    return find_sources_of_feeder(&sources, circuit, working) &&
           find_source_current(amperes, &sources, circuit->path, working);
}

bool run_circuit_feeder_source_current(struct amount *results, const struct object *about,
                                       const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double amperes;
    if (!find_feeder_source(&amperes, about, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

bool run_circuit_feeder_need(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double ocpd, source;
    if (!need_amperes_of(&ocpd, about, SLOT_circuit_ocpd_rating, working) ||
        !find_feeder_source(&source, about, working))
        return false;
    results[0] = amount_as(add_feeder(ocpd, source, working), "A");
    return true;
}

/* Taps */

struct tap {
    int edition;
    double feeder_ocpd, source_current, source_ocpd; /* A; source_ocpd 0: not told */
    double length;                                   /* ft */
    double end_device;                               /* A: the device in which it ends */
};

static bool find_tap_share(double *share, double *most, double length, struct working *working)
{
    if (number_compare(length, long_tap) > 0)
        return working_beyond(working,
                              "a tap of %g ft is longer than the %g ft of 240.21(B)(2): a person "
                              "must judge which other rule lets it stand",
                              length, long_tap);
    bool is_short = number_compare(length, short_tap) <= 0;
    *most = is_short ? short_tap : long_tap;
    *share = is_short ? 10 : 3;
    return true;
}

/* A tap carries its share of all that can feed it, and no less than the device in which it ends
 * (240.21(B)(1)(1), (B)(2)(2): no next size up for taps). */
static bool size_tap(struct amount *results, const struct tap *tap, struct working *working)
{
    double share = 0, most = 0;
    bool is_2023 = tap->edition >= 2023;
    double source = is_2023 ? tap->source_ocpd : CONTINUOUS_FACTOR * tap->source_current;
    if (!find_tap_share(&share, &most, tap->length, working))
        return false;
    double part = (tap->feeder_ocpd + source) / share;
    working_step(working, SOURCE_TAP, "%s: (%g A + %.6g A) / %g = %.6g A",
                 is_2023 ? "feeder device + source device" : "feeder device + 125 % of the source",
                 tap->feeder_ocpd, source, share, part);
    double needed = part > tap->end_device ? part : tap->end_device;
    if (tap->end_device > 0)
        working_step(working, "NEC 240.21(B), secondary source",
                     "not below the %g A device in which it ends: %.6g A", tap->end_device, needed);
    results[0] = amount_as(needed, "A");
    results[1] = amount_as(part, "A");
    results[2] = amount_as(most, "ft");
    return true;
}

bool run_feeder_tap(struct amount *results, const struct object *about, const struct amount *inputs,
                    struct working *working)
{
    (void)about;
    struct tap tap = {.feeder_ocpd = amount_in(inputs[1], "A", 0),
                      .source_current = amount_in(inputs[2], "A", 0),
                      .source_ocpd = amount_in(inputs[3], "A", 0),
                      .length = amount_in(inputs[4], "ft", 0),
                      .end_device = amount_in(inputs[5], "A", 0)};
    if (!edition_read(&tap.edition, inputs[0], working))
        return false;
    size_t asked = tap.edition >= 2023 ? 3 : 2;
    if (!is_given(inputs[asked]))
        return working_wrong(working, asked == 3 ? "source_ocpd" : "source_current",
                             "%s is not given: the tap rule of %d rests on it",
                             asked == 3 ? "source_ocpd" : "source_current", tap.edition);
    return size_tap(results, &tap, working);
}

/* The feeder that a tap taps: the circuit named, or the feeder of the panel named. */
static bool find_tapped(const struct object **feeder, const struct object *tap,
                        struct working *working)
{
    const struct object *tapped;
    if (!need_object(&tapped, tap, SLOT_circuit_taps, working))
        return false;
    if (tapped != NULL && tapped->kind->id == KIND_panel) {
        const struct object *panel = tapped;
        if (!need_object(&tapped, panel, SLOT_panel_feeder, working))
            return false;
    }
    *feeder = tapped;
    return tapped != NULL ||
           working_beyond(working, "circuit %s taps no feeder that is named", tap->path);
}

static bool carries_source(bool *does, const struct object *circuit, struct working *working)
{
    struct object *const *things;
    size_t count;
    *does = false;
    if (!need_objects(&things, &count, circuit, SLOT_circuit_carries, working))
        return false;
    for (size_t i = 0; i < count; i++)
        *does = *does || things[i]->kind->id != KIND_panel;
    return true;
}

/* The interconnection, where it is on this feeder; NULL: it is elsewhere. */
static const struct object *connection_on(const struct object *feeder, struct working *working)
{
    const struct fact *told = object_fact(working->design->root, SLOT_design_interconnection);
    const struct object *connection = told->state == FACT_GIVEN ? told->is.object : NULL;
    if (connection == NULL)
        return NULL;
    working_read(working, connection, SLOT_interconnection_side);
    working_read(working, connection, SLOT_interconnection_at);
    const struct fact *at = object_fact(connection, SLOT_interconnection_at);
    return object_is(connection, SLOT_interconnection_side, "feeder") && at->state == FACT_GIVEN &&
                   at->is.object == feeder
               ? connection
               : NULL;
}

/* The source's device ends the tap that carries it. A tap to loads must look for it elsewhere: at
 * the connection on the feeder. */
static bool find_source_device(struct tap *tap, const struct object *circuit,
                               const struct object *feeder, struct working *working)
{
    bool is_its_own;
    double rating;
    struct source_list sources;
    const struct object *connection = connection_on(feeder, working);
    if (!carries_source(&is_its_own, circuit, working))
        return false;
    tap->source_ocpd = is_its_own ? tap->end_device : 0;
    if (is_its_own)
        return true;
    if (connection != NULL) {
        if (!need_amperes_of(&rating, connection, SLOT_interconnection_ocpd_rating, working))
            return false;
        tap->source_ocpd = rating;
        return true;
    }
    if (!find_sources_of_feeder(&sources, feeder, working))
        return false;
    return sources.count == 0 ||
           working_beyond(
               working,
               "feeder %s has a source behind it, and the tap carries none: which device "
               "of the source counts, a person must judge",
               feeder->path);
}

bool run_circuit_tap_need(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    struct tap tap = {0};
    const struct object *feeder;
    struct quantity length;
    if (!edition_read(&tap.edition, inputs[0], working) || !find_tapped(&feeder, about, working) ||
        !need_amperes_of(&tap.feeder_ocpd, feeder, SLOT_circuit_ocpd_rating, working) ||
        !need_quantity(&length, about, SLOT_circuit_ocpd_distance, working) ||
        !need_amperes_of(&tap.end_device, about, SLOT_circuit_ocpd_rating, working))
        return false;
    tap.length = quantity_as(length, "ft");
    if (tap.edition < 2023 ? !find_feeder_source(&tap.source_current, feeder, working)
                           : !find_source_device(&tap, about, feeder, working))
        return false;
    return size_tap(results, &tap, working);
}

/* Supply side */

static const char *floor_of(int edition, const char *material)
{
    return edition < 2020 ? NULL : strcmp(material, "aluminum") == 0 ? "4 AWG" : "6 AWG";
}

static double step_supply(double current, const char *least, struct working *working)
{
    double needed = CONTINUOUS_FACTOR * current;
    working_step(working, "NEC 705.28, 705.30", "1.25 x %.6g A = %.6g A", current, needed);
    working_step(working, SOURCE_SUPPLY, "%s%s", least != NULL ? "not smaller than " : "no floor",
                 least != NULL ? least : " on the size of its conductors in this edition");
    return needed;
}

bool run_supply_side(struct amount *results, const struct object *about,
                     const struct amount *inputs, struct working *working)
{
    (void)about;
    int edition;
    double ocpd;
    if (!edition_read(&edition, inputs[0], working))
        return false;
    const char *least = floor_of(edition, inputs[2].word);
    double needed = step_supply(amount_in(inputs[1], "A", 0), least, working);
    if (!find_ocpd_up(&ocpd, needed, device_of(inputs[3]), edition, working))
        return false;
    results[0] = amount_as(needed, "A");
    results[1] = amount_as(ocpd, "A");
    if (least != NULL)
        results[2] = amount_of_word(least);
    return true;
}

static bool is_size_below(bool *is_below, const char *size, const char *least,
                          struct working *working)
{
    double is, should;
    if (!conductor_kcmil(&is, size) || !conductor_kcmil(&should, least))
        return working_beyond(working, "the cross-section of %s is not at hand", size);
    *is_below = number_compare(is, should) < 0;
    return true;
}

bool run_circuit_supply_side_need(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    int edition;
    double current;
    const char *size, *material;
    bool is_below = false;
    if (!edition_read(&edition, inputs[0], working) ||
        !find_circuit_current(&current, about, working) ||
        !need_word(&material, about, SLOT_circuit_conductor_material, working) ||
        !need_word(&size, about, SLOT_circuit_conductor_size, working))
        return false;
    const char *least = floor_of(edition, material);
    results[0] = amount_as(step_supply(current, least, working), "A");
    if (least != NULL && !is_size_below(&is_below, size, least, working))
        return false;
    results[1] = amount_of_yesno(!is_below);
    if (least != NULL)
        results[2] = amount_of_word(least);
    return true;
}
