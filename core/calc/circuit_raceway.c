/* What is in the raceway of a circuit: its own conductors and those of circuits that share it. */
#include "conductor_runs.h"

#include <math.h>
#include <string.h>

#include "conductor.h"
#include "raceway.h"

bool is_dc_role(const char *role)
{
    return strcmp(role, "PV source") == 0 || strcmp(role, "PV output") == 0 ||
           strcmp(role, "converter output") == 0;
}

/* The circuits in one raceway: the one that has it, then those that name that one. */
struct company {
    const struct object *first;
    struct object *const *guests;
    size_t guest_count;
};

static const struct object *circuit_in(const struct company *company, size_t i)
{
    return i == 0 ? company->first : company->guests[i - 1];
}

static bool is_gone(const struct object *circuit)
{
    return object_is(circuit, SLOT_circuit_status, "removed");
}

/* False with no stop: it is alone. A design that was not linked has no guests. */
static bool find_company(struct company *company, const struct object *circuit,
                         struct working *working)
{
    const struct fact *host = object_fact(circuit, SLOT_circuit_raceway_of);
    *company = (struct company){.first = circuit};
    if (host->state == FACT_GIVEN) {
        company->first = host->is.object;
        working_read(working, circuit, SLOT_circuit_raceway_of);
        if (object_has(company->first, SLOT_circuit_raceway_of))
            return working_beyond(working,
                                  "circuit %s is told to run in the raceway of %s, which itself "
                                  "runs in that of another: name the one that has the raceway",
                                  circuit->path, company->first->path);
    }
    const struct fact *guests = object_fact(company->first, SLOT_circuit_raceway_guests);
    if (guests->state != FACT_GIVEN)
        return false;
    for (size_t i = 0; i < guests->count; i++)
        working_read(working, guests->is.objects[i], SLOT_circuit_raceway_of);
    company->guests = guests->is.objects;
    company->guest_count = guests->count;
    return true;
}

/* Conductors that one circuit brings, those that ground left out. */
struct brought {
    double carrying; /* ungrounded; two per string of a source circuit */
    double neutrals;
};

static bool find_brought(struct brought *brought, const struct object *circuit,
                         struct working *working)
{
    const char *role, *neutral;
    double sets;
    struct object *const *carried;
    size_t strings = 1;
    if (!need_word(&role, circuit, SLOT_circuit_role, working) ||
        !need_number(&sets, circuit, SLOT_circuit_parallel_sets, working))
        return false;
    *brought = (struct brought){.carrying = 2 * sets};
    if (is_dc_role(role)) {
        if (strcmp(role, "PV output") == 0)
            return true;
        if (!need_objects(&carried, &strings, circuit, SLOT_circuit_carries, working))
            return false;
        brought->carrying *= strings > 1 ? (double)strings : 1;
        return true;
    }
    if (!need_word(&neutral, circuit, SLOT_circuit_neutral, working))
        return false;
    brought->neutrals = strcmp(neutral, "none") == 0 ? 0 : sets;
    return true;
}

/* What the circuits bring and the largest number that one of them tells. */
struct counted {
    double carrying, neutrals, told;
};

/* `slot`: how many are told to be in the raceway, of all or of those that carry current. */
static bool count_all(struct counted *counted, const struct company *company, unsigned slot,
                      struct working *working)
{
    *counted = (struct counted){.told = 0};
    for (size_t i = 0; i <= company->guest_count; i++) {
        const struct object *circuit = circuit_in(company, i);
        struct brought one;
        double told;
        if (is_gone(circuit))
            continue;
        if (!find_brought(&one, circuit, working) || !need_number(&told, circuit, slot, working))
            return false;
        counted->carrying += one.carrying;
        counted->neutrals += one.neutrals;
        counted->told = told > counted->told ? told : counted->told;
    }
    return true;
}

bool find_carrying_conductors(double *count, const struct object *circuit, struct working *working)
{
    enum { SLOT = SLOT_circuit_current_carrying_conductors };
    struct company company;
    struct counted all;
    if (!need_number(count, circuit, SLOT, working))
        return false;
    if (!find_company(&company, circuit, working))
        return working->stop.kind == STOP_NONE;
    if (!count_all(&all, &company, SLOT, working))
        return false;
    *count = fmax(*count, all.told);
    working_step(working, NULL,
                 "circuits in its raceway bring %g current-carrying conductors; the largest count "
                 "told is %g",
                 all.carrying, *count);
    *count = fmax(*count, all.carrying);
    return true;
}

/* Areas of one conductor of each sort, in². */
struct areas {
    double each, neutral, ground;
};

static bool find_areas(struct areas *areas, const struct object *circuit, bool has_neutral,
                       struct working *working)
{
    const char *size, *insulation, *egc, *neutral;
    double diameter = 0;
    if (!need_word(&size, circuit, SLOT_circuit_conductor_size, working) ||
        !need_word(&insulation, circuit, SLOT_circuit_insulation, working))
        return false;
    if (strcmp(insulation, "PV wire") == 0 &&
        !need_quantity_in(&diameter, circuit, SLOT_circuit_conductor_diameter, "in", working))
        return false;
    const char *of_others = diameter > 0 ? "THWN-2" : insulation;
    areas->neutral = 0;
    return need_word(&egc, circuit, SLOT_circuit_egc_size, working) &&
           find_conductor_area(&areas->each, size, insulation, diameter, working) &&
           find_conductor_area(&areas->ground, egc, of_others, 0, working) &&
           (!has_neutral || (need_word(&neutral, circuit, SLOT_circuit_neutral_size, working) &&
                             find_conductor_area(&areas->neutral, neutral, of_others, 0, working)));
}

/* The grounding conductor counts as one of the conductors; all others are taken as its own size, a
 * step says so. */
static bool find_area_alone(double *area, double *count, const struct object *circuit,
                            struct working *working)
{
    struct areas areas;
    if (!need_number(count, circuit, SLOT_circuit_conductors, working) ||
        !find_areas(&areas, circuit, false, working))
        return false;
    *area = (*count - 1) * areas.each + areas.ground;
    working_step(working, NULL,
                 "%g conductors, one of them the grounding conductor, the others all taken as %s: "
                 "%.6g in²",
                 *count, object_fact(circuit, SLOT_circuit_conductor_size)->is.word, *area);
    return true;
}

/* What circuits bring is taken at their own sizes; what is told to be in it besides, and one at the
 * least, as grounding conductors of the largest size. */
static bool find_area_shared(double *area, double *count, const struct company *company,
                             struct working *working)
{
    struct brought one;
    struct areas areas;
    double told, most = 0, ground = 0;
    *area = *count = 0;
    for (size_t i = 0; i <= company->guest_count; i++) {
        const struct object *circuit = circuit_in(company, i);
        if (is_gone(circuit))
            continue;
        if (!need_number(&told, circuit, SLOT_circuit_conductors, working) ||
            !find_brought(&one, circuit, working) ||
            !find_areas(&areas, circuit, one.neutrals > 0, working))
            return false;
        *area += one.carrying * areas.each + one.neutrals * areas.neutral;
        *count += one.carrying + one.neutrals;
        most = told > most ? told : most;
        ground = areas.ground > ground ? areas.ground : ground;
        working_step(working, NULL, "circuit %s brings %g conductors and %g neutrals",
                     circuit->path, one.carrying, one.neutrals);
    }
    double grounds = most > *count + 1 ? most - *count : 1;
    *area += grounds * ground;
    *count += grounds;
    working_step(working, NULL,
                 "%g conductors of all circuits in it, %g of them taken as grounding conductors: "
                 "%.6g in²",
                 *count, grounds, *area);
    return true;
}

static bool find_raceway_area(double *area, double *count, const struct object *circuit,
                              struct working *working)
{
    struct company company;
    if (find_company(&company, circuit, working))
        return find_area_shared(area, count, &company, working);
    return working->stop.kind == STOP_NONE && find_area_alone(area, count, circuit, working);
}

bool run_circuit_carrying_conductors(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double count;
    if (!find_carrying_conductors(&count, about, working))
        return false;
    results[0] = amount_of_number(count);
    return true;
}

bool run_circuit_fill(struct amount *results, const struct object *about,
                      const struct amount *inputs, struct working *working)
{
    (void)inputs;
    const char *raceway, *trade_size;
    double area, count, diameter, whole;
    if (!need_word(&raceway, about, SLOT_circuit_wiring_method, working) ||
        !need_word(&trade_size, about, SLOT_circuit_raceway_size, working))
        return false;
    if (!raceway_inside(&diameter, &whole, raceway, trade_size))
        return working_beyond(
            working, "Table 4 as at hand has no row for %s of %s; its fill is to be looked up",
            raceway, trade_size);
    if (!find_raceway_area(&area, &count, about, working))
        return false;
    working_step(working, SOURCE_RACEWAY, "%s %s: %g in²; %.6g in² fill %.4g %%", trade_size,
                 raceway, whole, area, 100 * area / whole);
    results[0] = amount_of_number(area / whole);
    return true;
}

/* Conductors in it, as the fill counts them, one of them for ground; sizes do not matter. */
static bool find_conductor_count(double *count, const struct object *circuit,
                                 struct working *working)
{
    struct company company;
    struct counted all;
    if (!need_number(count, circuit, SLOT_circuit_conductors, working))
        return false;
    if (!find_company(&company, circuit, working))
        return working->stop.kind == STOP_NONE;
    if (!count_all(&all, &company, SLOT_circuit_conductors, working))
        return false;
    *count = fmax(fmax(*count, all.told), all.carrying + all.neutrals + 1);
    return true;
}

bool run_circuit_fill_limit(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double count, share;
    if (!find_conductor_count(&count, about, working))
        return false;
    if (!raceway_fill_share(&share, count, false))
        return working_beyond(working, "circuit %s has no conductors", about->path);
    working_step(working, SOURCE_FILL, "%g conductors may fill %g %%", count, 100 * share);
    results[0] = amount_of_number(share);
    return true;
}
