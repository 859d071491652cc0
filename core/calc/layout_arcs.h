/* The rim of a roof as arcs: eaves where a pathway starts, ridges where it ends, sides between. */
#ifndef CALC_LAYOUT_ARCS_H
#define CALC_LAYOUT_ARCS_H
#include "layout_pathway.h"

/* As near as this is the same point or the same height, m. */
#define LAYOUT_POINT 1e-4

enum arc_type { ARC_SIDE, ARC_FROM, ARC_TO };

struct pathway_arc {
    enum arc_type type;
    struct shape shape; /* a polyline, or one point */
    bool is_apex;       /* a lone corner that stands for a missing eave or ridge */
};

/* Side and open arcs by turns, against the clock: sides[k] comes before open[k]. */
struct pathway_arcs {
    struct shape *sides;
    struct pathway_arc *open;
    size_t count;
    enum arc_type *side_types; /* of each side of the outline */
};

/* Lives in the arena. False: no memory. */
bool pathway_arcs_make(struct pathway_arcs *arcs, const struct pathway_roof *roof,
                       struct arena *arena);

#endif
