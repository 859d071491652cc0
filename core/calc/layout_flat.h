/* Small shapes in the flat: distances, areas and clips that need no library. Lengths in m. */
#ifndef CALC_LAYOUT_FLAT_H
#define CALC_LAYOUT_FLAT_H
#include "design.h"

/* Corners of a polygon (closed, simple, either way round), of a polyline, or one point. */
struct shape {
    const struct point *corners;
    size_t count;
    bool is_closed;
};

/* The least distance of two shapes and the two points where it is met; 0 where they touch or
 * overlap. Both have at least one corner. */
double flat_distance(const struct shape *a, const struct shape *b, struct point nearest[2]);
/* The same for two rectangles along the axes, quickly and without the points. False: they are none.
 */
bool flat_boxes_distance(double *out, const struct shape *a, const struct shape *b);
/* Signed area: positive where the corners run against the clock. */
double flat_area(const struct point *corners, size_t count);
/* The area that two closed shapes share. */
double flat_shared_area(const struct shape *a, const struct shape *b);
/* Is the point inside a closed shape or within `slack` of its rim? */
bool flat_contains(const struct shape *shape, struct point at, double slack);
/* Do the segments cross at one point that is inside both? Touching is no crossing. */
bool flat_crosses(struct point a, struct point b, struct point c, struct point d);
/* Cuts a convex polygon by the half plane of points nearer to `keep` than to `lose`. `corners` has
 * room for one more than `count`; at most 15 corners. Returns the new count. */
size_t flat_cut_nearer(struct point *corners, size_t count, struct point keep, struct point lose);
/* Cuts a convex polygon to nx·x + ny·y <= limit; as above. */
size_t flat_cut(struct point *corners, size_t count, double nx, double ny, double limit);
double flat_length(struct point a, struct point b);

#endif
