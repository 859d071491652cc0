/* report, inside the room: what findings rest on that nobody told, equal assumptions told once. */
#ifndef REPORT_ASSUMED_H
#define REPORT_ASSUMED_H
#include "finding.h"

struct assumption {
    const struct input *first;
    size_t count;  /* things that it is assumed of */
    bool is_guess; /* the design itself says that it is assumed */
};

/* Over the inputs of the review or of one finding, in the order of first reading. False: no
 * memory. */
bool assumed_collect(struct assumption **out, size_t *count, const struct input *const *inputs,
                     size_t input_count, struct arena *arena);
/* "module low-1-1 and 18 more: status is new: a module without a status is new work". NULL: no
 * memory. */
const char *assumption_text(const struct assumption *assumption, struct arena *arena);

#endif
