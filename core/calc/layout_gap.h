/* The gaps between all that bounds or bars a pathway. */
#ifndef CALC_LAYOUT_GAP_H
#define CALC_LAYOUT_GAP_H
#include "layout_arcs.h"

/* What stands in the way and how far it is apart. Nodes: the side arcs, then the things. */
struct pathway_graph {
    struct pathway_arcs arcs;
    struct pathway_roof roof;
    struct shape *nodes;
    size_t side_count, node_count;
    double *gaps;      /* node_count × node_count */
    bool *is_doubtful; /* the gap leads outside the roof over an eave or a ridge */
    bool is_convex;    /* then no gap leads outside */
    bool has_doubt;    /* is any gap doubtful? */
};

#endif
