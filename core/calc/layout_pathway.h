/* Access pathways: strips of roof from the eave to the ridge, free of modules and obstructions.
 *
 * A strip of width w is the track of a disc w wide whose centre stays on the roof, from an eave to
 * a ridge; the disc keeps off modules, obstructions and the sides that are neither (hip, valley,
 * rake, wall). Without a ridge the strip runs to the highest side, or else to the highest corner (a
 * hip triangle's apex): there the sides' own narrowing counts not, but the gaps beside what stands
 * in the way do. Without an eave it starts at the lowest side or corner. The strip may not use an
 * eave that meets a ridge in a corner as a pathway of no length: that corner counts as a side.
 *
 * The widest strip follows from the gaps alone: widened by w/2, what is in the way parts eave from
 * ridge exactly when a chain of gaps, each narrower than w, joins the sides left and right of the
 * pathway. So the width is the least, over all chains, of the chain's widest gap; and how many
 * strips of width w run side by side is the least, over all chains, of the sum of floor(gap / w).
 * Where a gap leads outside the roof (over a notched eave), erosion of the outline and bisection
 * decide. */
#ifndef CALC_LAYOUT_PATHWAY_H
#define CALC_LAYOUT_PATHWAY_H
#include "layout_flat.h"
#include "layout_geos.h"

/* A roof to be walked: its outline against the clock, closed once more (corners[count] is
 * corners[0]), the kind of each side, and what stands on it, cut at the outline. */
struct pathway_roof {
    const struct point *corners;
    const char *const *edges;
    size_t count;
    const struct shape *things;
    size_t thing_count;
};

struct pathway_graph;

/* Lives in the arena. NULL: no memory. */
struct pathway_graph *pathway_graph_new(const struct pathway_roof *roof, struct arena *arena);
/* The widest strip; *bare is what the roof alone would allow. False: no memory. */
bool pathway_width(double *width, double *bare, const struct pathway_graph *graph,
                   struct layout_geos *geos, struct arena *scratch);
/* How many strips of a width (m, > 0) run side by side. False: no memory. */
bool pathway_count(size_t *count, const struct pathway_graph *graph, double width,
                   struct arena *scratch);

#endif
