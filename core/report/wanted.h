/* report, inside the room: the facts that most open findings wait for. */
#ifndef REPORT_WANTED_H
#define REPORT_WANTED_H
#include "finding.h"

struct wanted {
    const struct missing *missing;
    size_t findings;            /* that wait for it, each counted once */
    const struct finding *last; /* that was counted */
};

/* At most ten, those that most findings wait for first, else in the order of findings. None where
 * few findings are open, and none that a single finding waits for: the findings say it themselves.
 * False: no memory. */
bool wanted_collect(struct wanted **out, size_t *count, const struct findings *findings,
                    struct arena *arena);
/* "159 findings are open. These are the facts …", or NULL: no memory. */
const char *wanted_text(const struct findings *findings, struct arena *arena);

#endif
