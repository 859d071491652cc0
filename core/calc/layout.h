/* Roof geometry, computed once per review and kept.
 *
 * Lengths are in m and lie in the plane: x along the eave, y up the slope, both along the surface.
 * A module is the rectangle whose lower left corner is `at`; its longer side runs up the slope in
 * portrait, along the eave in landscape. In plan, y is shortened by cos(slope). Two lengths within
 * 0.1 mm are the same: what stands out or laps by less does neither. Areas and distances are exact
 * to rounding; a pathway's width is exact except on a plane whose eave or ridge is notched between
 * two modules, where it is found by bisection within 0.1 mm. */
#ifndef CALC_LAYOUT_H
#define CALC_LAYOUT_H
#include "working.h"

/* Frees a layout; NULL is fine. */
void layout_free(struct layout *layout);

/* Something about the geometry itself that a person has to put right. */
struct layout_fault {
    const struct object *object;
    unsigned slot;       /* the fact that is wrong */
    const char *message; /* one sentence, without the place */
    const char *example; /* how it would be right */
};

/* Looks at the outlines of planes and obstructions (crossing itself, no area), at the number of
 * edges and whether each can be of its kind where it lies, for modules, rails, attachments,
 * obstructions and escape openings that do not lie on their plane at all, and for attachments that
 * do not stand below the rail they carry. What is missing is not looked at.
 * The faults live in the arena. False: no memory. */
bool layout_check(struct layout_fault **faults, size_t *count, const struct design *design,
                  struct arena *arena);

#endif
