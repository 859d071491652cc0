/* Inside the room: what the array weighs and how large it is. The list of these: load.c. */
#ifndef CALC_ARRAY_WEIGHT_H
#define CALC_ARRAY_WEIGHT_H
#include "structural.h"

extern const struct parameter array_weight_results[3], array_area_results[2],
    array_dead_load_results[3], weight_on_attachment_results[3], module_area_results[1];
calculate run_design_array_weight, run_design_array_area, run_design_array_dead_load,
    run_design_weight_per_attachment, run_roof_plane_array_weight, run_roof_plane_array_area,
    run_roof_plane_array_dead_load, run_module_area;

#endif
