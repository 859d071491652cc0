/* What the files that read the tree of panels share. */
#ifndef CALC_SERVICE_WALK_H
#define CALC_SERVICE_WALK_H
#include "service_tree.h"

/* A chain of panels longer than any building's: deeper ones are left to a person. */
enum { CHAIN_LIMIT = 64 };

/* service_loose.c. Adds a source once. */
bool add_source(struct source_list *list, const struct object *thing, struct working *working);
/* Does an inverter, branch or source count: not removed, able to run in parallel? */
bool does_count(bool *counts, const struct object *thing, struct working *working);
/* Are all sources told, and has each that is on no breaker another way to the utility? */
bool check_all_told(struct working *working);
/* Adds what taps this feeder, or (`circuit` NULL) any feeder of this panel. */
bool find_taps(struct source_list *found, const struct object *circuit, const struct object *panel,
               struct working *working);
/* Is the circuit a feeder of the panel, as either of them says? */
bool is_feeder_of(const struct object *circuit, const struct object *panel);

/* service_path.c. Does the chain of a panel upwards lead over `above`, or is it that panel? */
bool is_above(const struct object *above, const struct object *panel);

#endif
