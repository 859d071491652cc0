/* How a plane's parts come from its facts. Each notes its readings even where the part stands. */
#ifndef CALC_LAYOUT_BUILD_H
#define CALC_LAYOUT_BUILD_H
#include "layout_plane.h"

bool layout_build_outline(struct layout_plane *plane, struct working *working);
bool layout_build_edges(struct layout_plane *plane, struct working *working);
bool layout_build_slope(struct layout_plane *plane, struct working *working);
bool layout_build_modules(struct layout_plane *plane, struct working *working);
bool layout_build_obstructions(struct layout_plane *plane, struct working *working);
bool layout_build_plan(struct layout_plane *plane, struct working *working);

#endif
