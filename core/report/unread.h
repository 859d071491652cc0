/* report, inside the room: facts that the design gives and that no rule looked at. */
#ifndef REPORT_UNREAD_H
#define REPORT_UNREAD_H
#include "report.h"

struct unread {
    const struct kind *kind;
    const struct fact_row *fact;
    size_t given, unread; /* how many things of the kind give it; of how many no rule read it */
};

/* In the order of the object model. Equipment that the design refers to nowhere is left out. False:
 * no memory. */
bool unread_collect(struct unread **out, size_t *count, const struct report *report,
                    struct arena *arena);

#endif
