/* report, inside the room: what findings rest on that nobody told, equal assumptions told once. */
#ifndef REPORT_ASSUMED_H
#define REPORT_ASSUMED_H
#include "finding.h"

struct assumption {
    const struct input *first;
    size_t count;  /* things that it is assumed of */
    bool is_guess; /* the design itself says that it is assumed */
};

/* Over some findings, in the order of first reading, each fact once. False: no memory. */
bool assumed_collect(struct assumption **out, size_t *count, struct finding *const *findings,
                     size_t finding_count, struct arena *arena);
/* "module low-1-1 and 18 more: status is new: a module without a status is new work". NULL: no
 * memory. */
const char *assumption_text(const struct assumption *assumption, struct arena *arena);

#endif
