/* How a plane's parts come from its facts. */
#ifndef CALC_LAYOUT_BUILD_H
#define CALC_LAYOUT_BUILD_H
#include "layout_plane.h"

/* False: stop is set, and it is run again when the part is next asked for. */
typedef bool layout_part_builder(struct layout_plane *plane, struct working *working);
layout_part_builder layout_build_outline, layout_build_edges, layout_build_slope,
    layout_build_modules, layout_build_obstructions, layout_build_plan;

/* Builds a part once, and keeps in the layout what it was built from (*from; NULL: not yet built);
 * later it notes that again. False: stop is set. */
bool layout_build(struct readings **from, layout_part_builder *build, struct layout_plane *plane,
                  struct working *working);

#endif
