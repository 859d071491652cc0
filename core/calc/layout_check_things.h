/* Faults of what stands on the planes of a roof; layout_check looks for them plane by plane. */
#ifndef CALC_LAYOUT_CHECK_THINGS_H
#define CALC_LAYOUT_CHECK_THINGS_H
#include "layout_plane.h"

struct layout_faults {
    struct arena *arena;
    struct layout_fault *items;
    size_t count, capacity;
};

/* The example is how it would be right. False: no memory (a NULL message or example, too). */
bool layout_fault_add(struct layout_faults *faults, const struct object *object, unsigned slot,
                      const char *message, const char *example);
/* Where a thing on the plane could stand, as it is written. NULL: no memory. */
const char *layout_example_on(struct arena *arena, const struct layout_plane *plane);
/* Edges that cannot be of their kind where they lie; obstructions, rails and attachments that do
 * not touch the plane; attachments that do not stand below the rail they carry. What misses a fact
 * is not looked at. False: no memory. */
bool layout_check_things(struct layout_faults *faults, const struct object *plane,
                         struct working *working);
/* All planes as they are seen from above, in the working's arena. False: no memory. */
struct layout_twice;
bool layout_twice_open(struct layout_twice **out, const struct objects *planes,
                       struct working *working);
/* The plane at `at` that lies over one before it which faces the same way: told of the first such,
 * so that of many drawn as one each is told once. False: no memory. */
bool layout_check_twice(struct layout_faults *faults, const struct layout_twice *twice, size_t at);
/* An escape opening that does not touch its plane. False: no memory. */
bool layout_check_opening(struct layout_faults *faults, const struct object *opening,
                          struct working *working);

#endif
