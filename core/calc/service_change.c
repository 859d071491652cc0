/* What the project changes at the service, and what takes sources off it. */
#include "service.h"

#include <string.h>

/* A new panel at the service is new service equipment, whatever is said of the rest. */
static bool has_new_panel(bool *has, struct working *working)
{
    struct object *const *panels;
    size_t count;
    *has = false;
    if (!need_objects(&panels, &count, working->design->root, SLOT_design_panels, working))
        return false;
    for (size_t i = 0; i < count && !*has; i++) {
        bool is_at_service;
        const char *status = "";
        if (!need_yesno(&is_at_service, panels[i], SLOT_panel_is_service_panel, working) ||
            (is_at_service && !need_word(&status, panels[i], SLOT_panel_status, working)))
            return false;
        *has = strcmp(status, "new") == 0;
    }
    return true;
}

bool run_service_is_renewed(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    const char *work;
    bool is_renewed = true;
    (void)inputs;
    if (!need_word(&work, about, SLOT_service_work, working) ||
        (strcmp(work, "untouched") == 0 && !has_new_panel(&is_renewed, working)))
        return false;
    results[0] = amount_of_yesno(is_renewed);
    return true;
}

enum { CHAIN_MOST = 8 }; /* panels one behind the other; no design has more */

static bool is_behind(bool *is, const struct object *thing, const struct object *panel,
                      unsigned depth, struct working *working);

/* Is the thing what this breaker serves, or behind the panel that it serves? */
static bool is_served(bool *is, const struct object *thing, const struct object *breaker,
                      unsigned depth, struct working *working)
{
    const char *status;
    const struct object *serves;
    if (!need_word(&status, breaker, SLOT_breaker_status, working))
        return false;
    if (strcmp(status, "removed") == 0)
        return true;
    if (!need_object(&serves, breaker, SLOT_breaker_serves, working))
        return false;
    *is = serves == thing;
    return *is || serves == NULL || serves->kind->id != KIND_panel ||
           is_behind(is, thing, serves, depth + 1, working);
}

/* Is the thing on a breaker of this panel, or of one that it feeds? */
static bool is_behind(bool *is, const struct object *thing, const struct object *panel,
                      unsigned depth, struct working *working)
{
    const char *status;
    struct object *const *buses, *const *breakers;
    size_t bus_count, count;
    if (!need_word(&status, panel, SLOT_panel_status, working))
        return false;
    if (strcmp(status, "removed") == 0 || depth >= CHAIN_MOST)
        return true;
    if (!need_objects(&buses, &bus_count, panel, SLOT_panel_busbars, working))
        return false;
    for (size_t i = 0; i < bus_count; i++) {
        if (!need_objects(&breakers, &count, buses[i], SLOT_busbar_breakers, working))
            return false;
        for (size_t k = 0; k < count && !*is; k++)
            if (!is_served(is, thing, breakers[k], depth, working))
                return false;
        if (*is)
            return true;
    }
    return true;
}

/* Does what the disconnect is of take the thing along? */
static bool does_open(bool *does, const struct object *disconnect, const struct object *thing,
                      struct working *working)
{
    const struct object *of, *inverter;
    if (!need_object(&of, disconnect, SLOT_disconnect_of, working))
        return false;
    *does = of == thing;
    if (of == NULL || *does)
        return true;
    if (of->kind->id == KIND_panel)
        return is_behind(does, thing, of, 0, working);
    if (of->kind->id != KIND_string || thing->kind->id != KIND_inverter)
        return true;
    if (!need_object(&inverter, of, SLOT_string_inverter, working))
        return false;
    *does = inverter == thing;
    return true;
}

static bool run_opened_by(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    struct object *const *disconnects;
    size_t count;
    bool is_opened = false;
    if (!need_objects(&disconnects, &count, working->design->root, SLOT_design_disconnects,
                      working))
        return false;
    for (size_t i = 0; i < count && !is_opened; i++) {
        const char *role;
        if (!need_word(&role, disconnects[i], SLOT_disconnect_role, working))
            return false;
        if (strcmp(role, inputs[0].word) == 0 &&
            !does_open(&is_opened, disconnects[i], about, working))
            return false;
    }
    results[0] = amount_of_yesno(is_opened);
    return true;
}

bool run_inverter_opened_by(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    return run_opened_by(results, about, inputs, working);
}

bool run_branch_opened_by(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    return run_opened_by(results, about, inputs, working);
}
