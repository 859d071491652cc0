/* Which power sources stand behind a bus, a panel, a breaker or a feeder: the tree of panels, read
 * downwards. Removed things do not count, existing ones do; sources that cannot run in parallel
 * with the utility (or are interlocked) do not either. Each function returns false with
 * working->stop set: missing facts name themselves, a panel that feeds itself is WRONG and named.
 */
#ifndef CALC_SERVICE_TREE_H
#define CALC_SERVICE_TREE_H
#include "electrical.h"

/* Inverters, branches and other sources, each once, in the order they are met. */
struct source_list {
    const struct object **items;
    size_t count, capacity;
};

bool find_sources_of_bus(struct source_list *out, const struct object *bus,
                         struct working *working);
bool find_sources_of_panel(struct source_list *out, const struct object *panel,
                           struct working *working);
bool find_sources_of_breaker(struct source_list *out, const struct object *breaker,
                             struct working *working);
/* Sources of a feeder: those of the panel it feeds and those that tap it. */
bool find_sources_of_feeder(struct source_list *out, const struct object *circuit,
                            struct working *working);
/* All sources on the premises that count. */
bool find_sources_of_service(struct source_list *out, struct working *working);

/* Sum of their marked continuous output currents, A; a step for each. `what` names the sum. */
bool find_source_current(double *amperes, const struct source_list *sources, const char *what,
                         struct working *working);

/* Breakers on a bus, removed and spare ones and the main left out. */
struct bus_breaker {
    const struct object *breaker;
    bool has_sources;
};
bool find_bus_breakers(struct bus_breaker **out, size_t *count, const struct object *bus,
                       struct working *working);

/* The panels above a panel up to the service panel, nearest first; `path` as "sub, main". */
bool find_path_up(const char **path, size_t *count, const struct object *panel,
                  struct working *working);

bool is_removed(const struct object *thing, unsigned status_slot, struct working *working);
bool need_amperes_of(double *amperes, const struct object *object, unsigned slot,
                     struct working *working);

#endif
