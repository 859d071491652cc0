/* Inside the room: where the array's loads stand on the members of a plane. */
#ifndef CALC_STANDS_H
#define CALC_STANDS_H
#include "timber.h"

/* Where a load stands: on which member, in which of its spans, how far from the lower support. */
struct stand {
    double member, bay, at, load;
};

struct bearing {
    double first, spacing, span; /* in */
    double eave;                 /* y of the lower support in plan, in */
    double cosine;
};

bool bearing_take(struct bearing *out, const struct object *framing, double spacing, double span,
                  struct working *working);
/* The attachments of the plane, by member and span; those on the overhang are left out. */
bool stands_take(struct stand **out, size_t *count, const struct bearing *bearing,
                 const struct object *plane, const double *loads, struct working *working);
int stand_by_member(const void *a, const void *b);

#endif
