/* Outer corners of a roof in plan. */
#ifndef CALC_LAYOUT_CORNER_H
#define CALC_LAYOUT_CORNER_H
#include "layout_plane.h"

/* The part of a module in the strip along a side: within reach of it, and of its ends lengthwise.
 * `cell` has room for 8 corners. Returns how many it has. */
size_t layout_cut_to_strip(struct point *cell, const struct point corners[4], struct point from,
                           struct point to, double reach);
/* Does a point or a module, in plan, reach into an outer corner: within `reach` of both edges and
 * within `corner` of one? Eaves and rakes count alike, as on a low roof; where a hip ends at one of
 * them, the edge of the neighbouring plane beyond it counts, too. */
bool layout_at_corner(const struct layout_plane *plane, const struct shape *shape, double reach,
                      double corner);

#endif
