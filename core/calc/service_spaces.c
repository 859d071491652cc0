/* Which spaces of a panel its breakers take. Spaces are numbered as printed: odd ones on one side,
 * even ones on the other, so that a breaker of two poles takes its number and that plus two. */
#include "service.h"

#include <assert.h>
#include <string.h>

enum { SPACES_MOST = 208, SPACE_HOLDS = 2 }; /* halves: one breaker, or two tandems */

struct taken_spaces {
    int filled[SPACES_MOST + 1]; /* in halves */
    int last;
    int tandems; /* spaces that tandems are in: one each, unless two are told of one space */
    bool has_tandem[SPACES_MOST + 1];
};

static bool is_tandem(const struct object *breaker, struct working *working)
{
    working_read(working, breaker, SLOT_breaker_tandem);
    return object_has(breaker, SLOT_breaker_tandem) &&
           object_fact(breaker, SLOT_breaker_tandem)->is.yes;
}

static bool take_spaces(struct taken_spaces *taken, const struct object *breaker,
                        struct working *working)
{
    const char *status;
    double poles;
    bool tandem = is_tandem(breaker, working);
    if (!need_word(&status, breaker, SLOT_breaker_status, working))
        return false;
    if (strcmp(status, "removed") == 0)
        return true;
    /* A main may have a place of its own; any other may stand in the space of one that is told. */
    working_read(working, breaker, SLOT_breaker_position);
    if (!object_has(breaker, SLOT_breaker_position))
        return object_is(breaker, SLOT_breaker_duty, "main") ||
               working_missing(working, breaker, SLOT_breaker_position);
    if (!need_number(&poles, breaker, SLOT_breaker_poles, working))
        return false;
    double position = object_fact(breaker, SLOT_breaker_position)->is.number;
    for (int pole = 0; pole < (int)poles; pole++) {
        int space = (int)position + 2 * pole;
        assert(space <= SPACES_MOST); /* a position is at most 200, poles are at most 3 */
        taken->filled[space] += tandem ? SPACE_HOLDS / 2 : SPACE_HOLDS;
        taken->tandems += tandem && !taken->has_tandem[space];
        taken->has_tandem[space] |= tandem;
        taken->last = space > taken->last ? space : taken->last;
        if (taken->filled[space] > SPACE_HOLDS)
            working_step(working, NULL, "space %d: breaker %s finds it taken", space,
                         breaker->path);
    }
    return true;
}

static bool find_taken(struct taken_spaces *taken, const struct object *bus,
                       struct working *working)
{
    struct object *const *breakers;
    size_t count;
    if (!need_objects(&breakers, &count, bus, SLOT_busbar_breakers, working))
        return false;
    for (size_t i = 0; i < count; i++)
        if (!take_spaces(taken, breakers[i], working))
            return false;
    return true;
}

bool run_panel_crowded_spaces(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    (void)inputs;
    struct object *const *buses;
    size_t count;
    struct taken_spaces taken = {.last = 0};
    int crowded = 0;
    if (!need_objects(&buses, &count, about, SLOT_panel_busbars, working))
        return false;
    for (size_t i = 0; i < count; i++)
        if (!find_taken(&taken, buses[i], working))
            return false;
    for (int space = 1; space <= taken.last; space++)
        crowded += taken.filled[space] > SPACE_HOLDS;
    working_step(working, NULL, "%d space%s told of more breakers than fit; the last taken is %d",
                 crowded, crowded == 1 ? "" : "s", taken.last);
    results[0] = amount_of_number(crowded);
    results[1] = amount_of_number(taken.last);
    results[2] = amount_of_number(taken.tandems);
    return true;
}
