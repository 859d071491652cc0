/* Loads where things lie: wind on modules and attachments, snow on planes, read from the design. */
#ifndef CALC_PLACED_H
#define CALC_PLACED_H
#include "layout_plane.h"
#include "structural.h"

/* Runs a calculator of a list by name on inputs in its order, with all it records; `about` is NULL
 * for a free one. False: stop is set. */
bool placed_ask(struct amount *results, const struct calculator *list, const char *name,
                const struct object *about, const struct amount *inputs, size_t count,
                struct working *working);

/* The ONE thing of a kind that the design holds ("site", "building"). False: stop is set. */
bool placed_need(const struct object **out, unsigned slot, struct working *working);

/* A spot of the array: a whole module, or the point of an attachment under it. */
struct placed_spot {
    struct layout_plane *plane;
    struct layout_module *module; /* it lies on, or is nearest to */
    struct point low, high;       /* the spot's own reach, in the plane */
};

/* Does the spot lie within 1.5 Lp of an exposed edge of its array (ASCE 7-16 29.4.4)? An edge is
 * exposed where the roof goes on for more than half the mean roof height beyond it and no other
 * module stands within 4 h2 and 4 ft. A ridge, hip or valley is no roof edge: the roof goes on.
 * Lengths in m. */
bool placed_is_exposed(const struct placed_spot *spot, double mean_roof_height,
                       double height_above_roof, bool ridge_is_edge);

extern const struct parameter placed_snow_inputs[4], placed_unbalanced_inputs[3];
extern const struct parameter placed_snow_results[3], placed_unbalanced_results[4];
calculate placed_run_rafter_reach, placed_run_snow, placed_run_unbalanced, placed_run_drifted;
/* How far a height up the slope lies below the lowest ridge of its plane, m in plan; 0 above it, or
 * where there is none. */
double placed_below_ridge(const struct layout_plane *plane, double top);
calculate placed_run_module_below_ridge, placed_run_attachment_below_ridge;

#endif
