/* What is to be said of a panel, of a breaker on one of its buses, and of the whole service. */
#include "service.h"

#include <math.h>
#include <string.h>

bool run_panel_source_current(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    (void)inputs;
    struct source_list sources;
    double amperes;
    if (!find_sources_of_panel(&sources, about, working) ||
        !find_source_current(&amperes, &sources, about->path, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

bool run_panel_is_between_array_and_service(struct amount *results, const struct object *about,
                                            const struct amount *inputs, struct working *working)
{
    (void)inputs;
    struct source_list sources;
    if (!find_sources_of_panel(&sources, about, working))
        return false;
    results[0] = amount_of_yesno(sources.count > 0);
    return true;
}

bool run_panel_path_up(struct amount *results, const struct object *about,
                       const struct amount *inputs, struct working *working)
{
    (void)inputs;
    const char *path;
    size_t count;
    if (!find_path_up(&path, &count, about, working))
        return false;
    results[0] = amount_of_number((double)count);
    results[1] = amount_of_word(path);
    return true;
}

/* A tandem takes half a space per pole. */
static bool find_spaces_of(double *spaces, const struct object *breaker, struct working *working)
{
    const char *status, *duty;
    double poles;
    *spaces = 0;
    if (!need_word(&status, breaker, SLOT_breaker_status, working) ||
        !need_word(&duty, breaker, SLOT_breaker_duty, working))
        return false;
    if (strcmp(status, "new") != 0 || strcmp(duty, "spare") == 0 || strcmp(duty, "main") == 0)
        return true; /* only new ones take a space; a main has its own place */
    if (!need_number(&poles, breaker, SLOT_breaker_poles, working))
        return false;
    bool is_tandem = object_has(breaker, SLOT_breaker_tandem) &&
                     object_fact(breaker, SLOT_breaker_tandem)->is.yes;
    working_read(working, breaker, SLOT_breaker_tandem);
    *spaces = is_tandem ? poles / 2 : poles;
    working_step(working, NULL, "breaker %s: %g space%s", breaker->path, *spaces,
                 *spaces > 1 ? "s" : "");
    return true;
}

typedef bool weigh_breaker(double *counts, const struct object *breaker, struct working *working);

/* Adds up what its breakers count for, bus by bus. */
static bool add_breakers(double *sum, const struct object *panel, weigh_breaker *weigh,
                         struct working *working)
{
    struct object *const *buses, *const *breakers;
    size_t bus_count, count;
    double one;
    *sum = 0;
    if (!need_objects(&buses, &bus_count, panel, SLOT_panel_busbars, working))
        return false;
    for (size_t b = 0; b < bus_count; b++) {
        if (!need_objects(&breakers, &count, buses[b], SLOT_busbar_breakers, working))
            return false;
        for (size_t i = 0; i < count; i++) {
            if (!weigh(&one, breakers[i], working))
                return false;
            *sum += one;
        }
    }
    return true;
}

bool run_panel_needed_spaces(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double spaces;
    if (!add_breakers(&spaces, about, find_spaces_of, working))
        return false;
    results[0] = amount_of_number(ceil(spaces));
    return true;
}

static bool find_main(double *is_one, const struct object *breaker, struct working *working)
{
    const char *duty, *status;
    *is_one = 0;
    if (!need_word(&duty, breaker, SLOT_breaker_duty, working))
        return false;
    if (strcmp(duty, "main") != 0)
        return true;
    if (!need_word(&status, breaker, SLOT_breaker_status, working))
        return false;
    *is_one = strcmp(status, "removed") != 0;
    return true;
}

bool run_panel_mains(struct amount *results, const struct object *about,
                     const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double mains;
    if (!add_breakers(&mains, about, find_main, working))
        return false;
    results[0] = amount_of_number(mains);
    return true;
}

bool run_breaker_source_current(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)inputs;
    struct source_list sources;
    double amperes;
    if (!find_sources_of_breaker(&sources, about, working) ||
        !find_source_current(&amperes, &sources, about->path, working))
        return false;
    working_step(working, "NEC 705.30", "1.25 x %.6g A = %.6g A", amperes,
                 CONTINUOUS_FACTOR * amperes);
    results[0] = amount_as(amperes, "A");
    results[1] = amount_as(CONTINUOUS_FACTOR * amperes, "A");
    return true;
}

bool run_breaker_has_sources(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    (void)inputs;
    struct source_list sources;
    if (!find_sources_of_breaker(&sources, about, working))
        return false;
    results[0] = amount_of_yesno(sources.count > 0);
    return true;
}

/* The service as a whole */

bool run_service_source_current_sum(struct amount *results, const struct object *about,
                                    const struct amount *inputs, struct working *working)
{
    (void)inputs;
    struct source_list sources;
    double amperes;
    if (!find_sources_of_service(&sources, working) ||
        !find_source_current(&amperes, &sources, about->path, working))
        return false;
    results[0] = amount_as(amperes, "A");
    return true;
}

static const struct object *standing_breaker(const struct object *thing, unsigned slot,
                                             struct working *working)
{
    const struct fact *breakers = object_fact(thing, slot);
    for (size_t i = 0; breakers->state == FACT_GIVEN && i < breakers->count; i++)
        if (!is_removed(breakers->is.objects[i], SLOT_breaker_status, working))
            return breakers->is.objects[i];
    return NULL;
}

/* The device right at a source: its breaker, else that of the interconnection, which serves all
 * that are on no breaker and is counted once (*is_shared). */
static bool find_source_rating(double *rating, bool *is_shared, const struct object *source,
                               struct working *working)
{
    enum kind_id kind = source->kind->id;
    const struct object *interconnection,
        *breaker = standing_breaker(source,
                                    kind == KIND_inverter ? (unsigned)SLOT_inverter_breakers
                                    : kind == KIND_branch ? (unsigned)SLOT_branch_breakers
                                                          : (unsigned)SLOT_source_breakers,
                                    working);
    *is_shared = false;
    if (breaker != NULL)
        return need_amperes_of(rating, breaker, SLOT_breaker_rating, working);
    *is_shared = true;
    if (!need_object(&interconnection, working->design->root, SLOT_design_interconnection, working))
        return false;
    return interconnection == NULL
               ? working_missing(working, working->design->root, SLOT_design_interconnection)
               : need_amperes_of(rating, interconnection, SLOT_interconnection_ocpd_rating,
                                 working);
}

bool run_service_source_rating_sum(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    (void)inputs;
    (void)about;
    struct source_list sources;
    double total = 0;
    bool has_shared = false;
    if (!find_sources_of_service(&sources, working))
        return false;
    for (size_t i = 0; i < sources.count; i++) {
        double one;
        bool is_shared;
        if (!find_source_rating(&one, &is_shared, sources.items[i], working))
            return false;
        if (is_shared && has_shared)
            continue;
        has_shared = has_shared || is_shared;
        total += one;
        working_step(working, "NEC 705.12(A) (2017), from memory", "+ device of %s %s: %g A",
                     sources.items[i]->kind->name, sources.items[i]->path, one);
    }
    results[0] = amount_as(total, "A");
    return true;
}
