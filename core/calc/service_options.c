/* The bus options of 705.12 on plain figures, and what a service disconnect must at least be. */
#include "service.h"

#include <string.h>

#define SOURCE_SUM      "NEC 705.12(B)(1) (2017: (B)(2)(3)(a), 2020: (B)(3)(1)), secondary source"
#define SOURCE_120      "NEC 705.12(B)(2) (2017: (B)(2)(3)(b), 2020: (B)(3)(2)), secondary source"
#define SOURCE_BREAKERS "NEC 705.12(B)(3) (2017: (B)(2)(3)(c), 2020: (B)(3)(3)), secondary source"

static struct amount is_within(double is, double limit)
{
    return amount_of_yesno(number_compare(is, limit) <= 0);
}

static double above_zero(double value)
{
    return value > 0 ? value : 0;
}

/* What a bus of known rating allows. */
static void judge_bus(struct amount *results, double rating, double device, double all,
                      double breakers, struct working *working)
{
    double by_sum = above_zero(rating - device), by_120 = above_zero(1.2 * rating - device);
    working_step(working, SOURCE_SUM, "%.6g A on a bus of %g A", all, rating);
    working_step(working, SOURCE_120, "%.6g A against 1.2 x %g A = %.6g A", all, rating,
                 1.2 * rating);
    results[2] = is_within(all, rating);
    results[3] = is_within(all, 1.2 * rating);
    results[5] = amount_as(by_sum / CONTINUOUS_FACTOR, "A");
    results[6] = amount_as(by_120 / CONTINUOUS_FACTOR, "A");
    if (breakers < 0)
        return;
    working_step(working, SOURCE_BREAKERS, "breakers %g A, its device %g A, bus %g A", breakers,
                 device, rating);
    results[4] = amount_of_yesno(number_compare(breakers, rating) <= 0 &&
                                 number_compare(device, rating) <= 0);
}

bool run_busbar_options(struct amount *results, const struct object *about,
                        const struct amount *inputs, struct working *working)
{
    (void)about;
    double device = amount_in(inputs[0], "A", 0), source = amount_in(inputs[1], "A", 0);
    double all = device + CONTINUOUS_FACTOR * source;
    working_step(working, SOURCE_SUM, "%g A + 1.25 x %.6g A = %.6g A", device, source, all);
    working_step(working, SOURCE_120, "%.6g A / 1.2 = %.6g A", all, all / 1.2);
    results[0] = amount_as(all, "A");
    results[1] = amount_as(all / 1.2, "A");
    if (is_given(inputs[2]))
        judge_bus(results, amount_in(inputs[2], "A", 0), device, all, amount_in(inputs[3], "A", -1),
                  working);
    return true;
}

bool run_panel_largest_backfeed(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)about;
    double bus = amount_in(inputs[0], "A", 0), device = amount_in(inputs[1], "A", 0);
    double left = above_zero(1.2 * bus - device), by_sum = above_zero(bus - device);
    working_step(working, SOURCE_120, "1.2 x %g A - %g A = %.6g A for 125 %% of the source current",
                 bus, device, left);
    working_step(working, SOURCE_SUM, "%g A - %g A = %.6g A without a place at the far end", bus,
                 device, by_sum);
    results[0] = amount_as(left, "A");
    results[1] = amount_as(left / CONTINUOUS_FACTOR, "A");
    results[2] = amount_as(by_sum, "A");
    results[3] = amount_as(by_sum / CONTINUOUS_FACTOR, "A");
    return true;
}

/* 230.79(C) one-family dwellings 100 A; (D) all others 60 A. Not below the calculated load. */
bool run_service_disconnect_minimum(struct amount *results, const struct object *about,
                                    const struct amount *inputs, struct working *working)
{
    (void)about;
    bool is_dwelling = strcmp(inputs[0].word, "one-family dwelling") == 0;
    double least = is_dwelling ? 100 : 60, load = amount_in(inputs[1], "A", 0);
    working_step(working,
                 is_dwelling ? "NEC 230.79(C), secondary source" : "NEC 230.79(D), from memory",
                 "%s: at least %g A", inputs[0].word, least);
    if (load > least)
        working_step(working, "NEC 230.79", "not below the load of %.6g A", load);
    results[0] = amount_as(load > least ? load : least, "A");
    return true;
}
