/* What a dwelling's service must carry. NEC 220.82 (new), 220.83 (existing), 220.87 (metered). */
#include "service_load.h"

#include <string.h>

#define SOURCE_OPTIONAL "NEC 220.82, secondary source"
#define SOURCE_EXISTING "NEC 220.83, secondary source"

/* 220.82(B), 220.83: VA per ft² and per circuit; the part of the load that counts in full; the
 * share of the rest. */
static const double per_area = 3, per_circuit = 1500;
static const double full_optional = 10000, full_existing = 8000, rest_share = 0.4;
/* 220.82(C): central heating or fewer than four separate controls; four and more. */
static const double heating_share = 0.65, controlled_share = 0.4;
/* 220.57 (2023), secondary source: a vehicle charger counts with its rating, at least this. */
static const double least_charging = 7200;

const char *const heating_words[] = {"central", "up to three controls", "four or more controls",
                                     "supplement to a heat pump", NULL};

/* Whether the demand factor covers it is settled nowhere: the strict load takes it in full. */
static double charging_load(const struct dwelling *dwelling, struct working *working)
{
    if (dwelling->edition < 2023 || dwelling->charging <= 0 ||
        number_compare(dwelling->charging, least_charging) >= 0)
        return dwelling->charging;
    working_step(working, "NEC 220.57 (2023), secondary source", "vehicle charging counts as %g VA",
                 least_charging);
    return least_charging;
}

/* All but heating, cooling and vehicle charging, before the demand factors. */
static double connected_load(const struct dwelling *dwelling, struct working *working)
{
    double area = per_area * dwelling->area, circuits = per_circuit * dwelling->circuits;
    double all = area + circuits + dwelling->appliances + dwelling->motors;
    working_step(working, SOURCE_OPTIONAL, "3 VA/ft² x %g ft² = %g VA", dwelling->area, area);
    working_step(working, SOURCE_OPTIONAL, "1500 VA x %g circuits = %g VA", dwelling->circuits,
                 circuits);
    working_step(working, NULL, "+ appliances %g VA, motors %g VA = %g VA", dwelling->appliances,
                 dwelling->motors, all);
    return all;
}

static double apply_demand(double load, double full, const char *source, struct working *working)
{
    double rest = load > full ? load - full : 0, counted = load - rest + rest_share * rest;
    working_step(working, source, "first %g VA in full, 40 %% of the other %g VA: %g VA", full,
                 rest, counted);
    return counted;
}

static double larger(double a, double b)
{
    return a > b ? a : b;
}

static bool is_supplement(const struct dwelling *dwelling)
{
    return strcmp(dwelling->heating_kind, heating_words[3]) == 0;
}

/* 220.82(C): the largest of heating and cooling; a supplement runs with its heat pump. `both`: if
 * they ran together anyway. */
static double climate_load(double *both, const struct dwelling *dwelling, struct working *working)
{
    bool is_controlled = strcmp(dwelling->heating_kind, heating_words[2]) == 0;
    double share = is_controlled ? controlled_share : heating_share;
    double heat = share * dwelling->heating;
    *both = dwelling->cooling + heat;
    double counted = is_supplement(dwelling) ? *both : larger(dwelling->cooling, heat);
    working_step(working, "NEC 220.82(C), secondary source",
                 "cooling or heat pump %g VA; heating %g %% of %g VA = %g VA; counted %g VA",
                 dwelling->cooling, 100 * share, dwelling->heating, heat, counted);
    return counted;
}

static void give_load(struct amount *results, const struct dwelling *dwelling, double load,
                      double strict, struct working *working)
{
    working_step(working, NULL, "%g VA / %g V = %.6g A", load, dwelling->voltage,
                 load / dwelling->voltage);
    working_step(working, NULL,
                 "read strictly (vehicle charging in full, heating and cooling together): %g VA = "
                 "%.6g A",
                 strict, strict / dwelling->voltage);
    results[0] = amount_as(load / dwelling->voltage, "A");
    results[1] = amount_as(load, "VA");
    results[2] = amount_as(strict / dwelling->voltage, "A");
}

void calculate_optional(struct amount *results, const struct dwelling *dwelling,
                        struct working *working)
{
    double other = connected_load(dwelling, working), charging = charging_load(dwelling, working);
    double both;
    double strict = apply_demand(other, full_optional, SOURCE_OPTIONAL, working) + charging;
    double general = charging > 0
                         ? apply_demand(other + charging, full_optional, SOURCE_OPTIONAL, working)
                         : strict;
    double climate = climate_load(&both, dwelling, working);
    give_load(results, dwelling, general + climate, strict + both, working);
}

/* (A) nothing added: whether heating and cooling that are there take the demand factor is read both
 * ways: the load takes it, the strict one does not. (B) added: the larger in full. */
void calculate_existing(struct amount *results, const struct dwelling *dwelling, bool adds_climate,
                        struct working *working)
{
    double other = connected_load(dwelling, working), charging = charging_load(dwelling, working);
    double both = dwelling->cooling + dwelling->heating;
    double climate = is_supplement(dwelling) ? both : larger(dwelling->cooling, dwelling->heating);
    double strict = apply_demand(other, full_existing, SOURCE_EXISTING, working) + charging + both;
    double load = other + charging;
    working_step(working, adds_climate ? "NEC 220.83(B), secondary source" : "NEC 220.83(A)",
                 "heating or cooling %g VA, %s", climate,
                 adds_climate ? "in full besides the others" : "among the others");
    load =
        apply_demand(adds_climate ? load : load + climate, full_existing, SOURCE_EXISTING, working);
    give_load(results, dwelling, adds_climate ? load + climate : load, strict, working);
}

static bool read_dwelling(struct dwelling *dwelling, const struct amount *inputs,
                          struct working *working)
{
    *dwelling =
        (struct dwelling){.area = amount_in(inputs[0], "ft²", 0),
                          .circuits = amount_in(inputs[1], NULL, 0) + amount_in(inputs[2], NULL, 0),
                          .appliances = amount_in(inputs[3], "VA", 0),
                          .motors = amount_in(inputs[4], "VA", 0),
                          .charging = amount_in(inputs[5], "VA", 0),
                          .heating = amount_in(inputs[6], "VA", 0),
                          .heating_kind = is_given(inputs[7]) ? inputs[7].word : heating_words[0],
                          .cooling = amount_in(inputs[8], "VA", 0),
                          .voltage = amount_in(inputs[9], "V", 240)};
    return edition_read(&dwelling->edition, inputs[10], working);
}

bool run_dwelling_load_optional(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)about;
    struct dwelling dwelling;
    if (!read_dwelling(&dwelling, inputs, working))
        return false;
    calculate_optional(results, &dwelling, working);
    return true;
}

bool run_dwelling_load_existing(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)about;
    struct dwelling dwelling;
    if (!read_dwelling(&dwelling, inputs, working))
        return false;
    calculate_existing(results, &dwelling, inputs[11].yes, working);
    return true;
}
