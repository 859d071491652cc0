/* Inside the room: what a roof weighs at least. Its list: load.c. */
#ifndef CALC_ROOF_WEIGHT_H
#define CALC_ROOF_WEIGHT_H
#include "structural.h"

extern const struct parameter least_dead_load_results[1];
calculate run_roof_plane_least_dead_load;

#endif
