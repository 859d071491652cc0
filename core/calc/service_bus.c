/* What is to be said of one bus of a design. NEC 705.12. */
#include "service.h"

#include <string.h>

static const char *const ends[] = {"opposite end", "between", "feed end"}; /* best to worst */

static bool find_current(double *amperes, const struct object *bus, struct working *working)
{
    struct source_list sources;
    return find_sources_of_bus(&sources, bus, working) &&
           find_source_current(amperes, &sources, bus->path, working);
}

bool run_busbar_source_current(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double amperes;
    if (!find_current(&amperes, about, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

/* 705.13: only where the design names it; the limit must be told. */
bool run_busbar_controlled_current(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double amperes, limit;
    if (!find_current(&amperes, about, working))
        return false;
    working_read(working, about, SLOT_busbar_methods);
    if (object_is(about, SLOT_busbar_methods, "power control system")) {
        if (!need_amperes_of(&limit, about, SLOT_busbar_power_control_limit, working))
            return false;
        working_step(working, "NEC 705.13", "held to %.6g A by a power control system", limit);
        amperes = limit < amperes ? limit : amperes;
    }
    results[0] = amount_as(amperes, "A");
    return true;
}

static bool sum_breakers(struct amount *results, const struct object *bus, bool only_sources,
                         struct working *working)
{
    struct bus_breaker *breakers;
    size_t count;
    double total = 0;
    if (!find_bus_breakers(&breakers, &count, bus, working))
        return false;
    for (size_t i = 0; i < count; i++) {
        double one;
        if (only_sources && !breakers[i].has_sources)
            continue;
        if (!need_amperes_of(&one, breakers[i].breaker, SLOT_breaker_rating, working))
            return false;
        total += one;
        working_step(working, NULL, "+ breaker %s: %g A", breakers[i].breaker->path, one);
    }
    results[0] = amount_as(total, "A");
    return true;
}

bool run_busbar_source_breaker_total(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    (void)inputs;
    return sum_breakers(results, about, true, working);
}

bool run_busbar_breaker_total(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    (void)inputs;
    return sum_breakers(results, about, false, working);
}

bool run_busbar_has_sources(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    (void)inputs;
    struct source_list sources;
    if (!find_sources_of_bus(&sources, about, working))
        return false;
    results[0] = amount_of_yesno(sources.count > 0);
    return true;
}

/* Breakers with sources behind them. Sources that reach the bus otherwise have no breaker whose
 * place could be told. */
static bool find_source_breakers(const struct object ***out, size_t *count,
                                 const struct object *bus, struct working *working)
{
    struct source_list sources, behind = {NULL, 0, 0};
    struct bus_breaker *breakers;
    size_t all, reached = 0;
    *count = 0;
    if (!find_sources_of_bus(&sources, bus, working) ||
        !find_bus_breakers(&breakers, &all, bus, working))
        return false;
    *out = arena_take(working->arena, (all + 1) * sizeof **out);
    if (*out == NULL)
        return working_short(working);
    for (size_t i = 0; i < all; i++)
        if (breakers[i].has_sources)
            (*out)[(*count)++] = breakers[i].breaker;
    for (size_t i = 0; i < sources.count; i++) {
        bool is_behind = false;
        for (size_t b = 0; !is_behind && b < *count; b++) {
            if (!find_sources_of_breaker(&behind, (*out)[b], working))
                return false;
            for (size_t k = 0; k < behind.count; k++)
                is_behind = is_behind || behind.items[k] == sources.items[i];
        }
        reached += is_behind;
    }
    if (sources.count == 0)
        return working_beyond(working, "no source is behind bus %s: there is no place to judge",
                              bus->path);
    return reached == sources.count ||
           working_beyond(working,
                          "a source reaches bus %s over no breaker of it (feed-through lugs, a "
                          "tapped feeder): a person must judge where it connects",
                          bus->path);
}

bool run_busbar_source_breaker_place(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    (void)inputs;
    const struct object **breakers;
    size_t count, worst = 0;
    if (!find_source_breakers(&breakers, &count, about, working))
        return false;
    for (size_t i = 0; i < count; i++) {
        const char *place;
        size_t at = 0;
        if (!need_word(&place, breakers[i], SLOT_breaker_place, working))
            return false;
        while (at < 2 && strcmp(ends[at], place) != 0)
            at++;
        worst = at > worst ? at : worst;
        working_step(working, NULL, "breaker %s: %s", breakers[i]->path, place);
    }
    results[0] = amount_of_word(ends[worst]);
    return true;
}

/* On which half of the panel's spaces does the breaker stand? */
static bool find_half(bool *is_far, const struct object *breaker, double spaces,
                      struct working *working)
{
    double position;
    if (!need_number(&position, breaker, SLOT_breaker_position, working))
        return false;
    *is_far = position > spaces / 2;
    working_step(working, NULL, "breaker %s: space %g of %g", breaker->path, position, spaces);
    return true;
}

/* A bus fed in its middle may have sources at either end, not at both. One breaker is at one end.
 */
bool run_busbar_sources_at_both_ends(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    (void)inputs;
    const struct object **breakers;
    size_t count;
    double spaces;
    bool is_near = false, is_far = false;
    if (!find_source_breakers(&breakers, &count, about, working))
        return false;
    if (count > 1 && !need_number(&spaces, about->parent, SLOT_panel_spaces, working))
        return false;
    for (size_t i = 0; count > 1 && i < count; i++) {
        bool is_beyond;
        if (!find_half(&is_beyond, breakers[i], spaces, working))
            return false;
        is_far = is_far || is_beyond;
        is_near = is_near || !is_beyond;
    }
    results[0] = amount_of_yesno(is_near && is_far);
    return true;
}

bool run_busbar_largest_source_current(struct amount *results, const struct object *about,
                                       const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double rating, device;
    if (!need_amperes_of(&rating, about, SLOT_busbar_rating, working) ||
        !need_amperes_of(&device, about, SLOT_busbar_protecting_device, working))
        return false;
    double share = (1.2 * rating - device) / CONTINUOUS_FACTOR;
    double sum = (rating - device) / CONTINUOUS_FACTOR;
    working_step(working, "NEC 705.12", "(1.2 x %g A - %g A) / 1.25 = %.6g A", rating, device,
                 share);
    working_step(working, "NEC 705.12", "(%g A - %g A) / 1.25 = %.6g A", rating, device, sum);
    results[0] = amount_as(share > 0 ? share : 0, "A");
    results[1] = amount_as(sum > 0 ? sum : 0, "A");
    return true;
}
