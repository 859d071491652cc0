/* The only door to GEOS: a context of our own, corners in, answers out. Lengths in m. */
#ifndef CALC_LAYOUT_GEOS_H
#define CALC_LAYOUT_GEOS_H
#include "layout_flat.h"

struct layout_geos;

/* NULL: no memory. GEOS never prints; a call that it cannot answer returns false. */
struct layout_geos *layout_geos_new(void);
void layout_geos_free(struct layout_geos *geos);
/* Did some call fail for want of memory, in GEOS or on the way to it? (In an arena of the caller's,
 * the arena says so.) */
bool layout_geos_is_short(const struct layout_geos *geos);

/* Is the outline a simple polygon? The reason why not is one of GEOS' own words. */
bool layout_geos_is_simple(bool *is_simple, struct layout_geos *geos, const struct shape *outline);
/* The area that the polygons cover together. */
bool layout_geos_union_area(double *area, struct layout_geos *geos, const struct shape *polygons,
                            size_t count);
/* The parts of polygons inside an outline, whose corners come once more at the end (corners[count]
 * is corners[0]). They live in the arena or are the polygons' own corners. */
bool layout_geos_cut(struct shape **parts, size_t *count, struct layout_geos *geos,
                     const struct shape *outline, const struct shape *polygons,
                     size_t polygon_count, struct arena *arena);
/* Erosion and connectivity: with every barrier widened by `radius`, does one piece of what is left
 * of the outline touch a shape of `from` and one of `to`? Arcs are drawn with 64 chords a quarter:
 * radius is met within 0.01 %. */
bool layout_geos_is_joined(bool *is_joined, struct layout_geos *geos, const struct shape *outline,
                           const struct shape *barriers, size_t barrier_count,
                           const struct shape *from, size_t from_count, const struct shape *to,
                           size_t to_count, double radius);

#endif
