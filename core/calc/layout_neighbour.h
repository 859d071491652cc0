/* Planes that share an edge in plan, and the two of them laid flat together. */
#ifndef CALC_LAYOUT_NEIGHBOUR_H
#define CALC_LAYOUT_NEIGHBOUR_H
#include "layout_plane.h"

/* How near two edges must run in plan to be one, m: plans are drawn to the inch. */
#define LAYOUT_JOINT_SLACK 0.05
/* The least length they share, m. */
#define LAYOUT_JOINT_LENGTH 0.3

/* The stretch shared by side `side` of one plane and side `other_side` of the other, from the end
 * nearer to corners[side]; the same two points in the coordinates of each plane. */
struct layout_joint {
    size_t side, other_side;
    struct point start, end;
    struct point other_start, other_end;
};

/* The longest stretch that a side of the plane shares with the other one in plan, m; 0: none. */
double layout_side_joint(struct layout_joint *joint, const struct layout_plane *plane, size_t side,
                         const struct layout_plane *other);
/* The longest stretch that two planes share in plan, over sides of kind `across` (NULL: any). Needs
 * the parts EDGES and PLAN of both. False: they share none. */
bool layout_find_joint(struct layout_joint *joint, const struct layout_plane *plane,
                       const struct layout_plane *other, const char *across);
/* Both planes as one flat roof in the coordinates of the first, turned about the joint, so lengths
 * on either surface stay true. Lives in the arena. False: no memory. */
bool layout_unfold(struct pathway_roof *roof, const struct layout_plane *plane,
                   const struct layout_plane *other, const struct layout_joint *joint,
                   struct arena *arena);

#endif
