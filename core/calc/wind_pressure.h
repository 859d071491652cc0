/* Inside the room: how wind presses on a roof and on panels parallel to it. Their list: wind.c. */
#ifndef CALC_WIND_PRESSURE_H
#define CALC_WIND_PRESSURE_H
#include "structural.h"

extern const struct parameter pressure_equalization_inputs[2], pressure_equalization_results[1];
extern const struct parameter array_edge_factor_inputs[7], array_edge_factor_results[2];
extern const struct parameter panel_pressure_inputs[7], panel_pressure_results[4];
extern const struct parameter parallel_section_inputs[7], parallel_section_results[1];
extern const struct parameter bare_roof_pressure_inputs[6], bare_roof_pressure_results[2];
calculate run_pressure_equalization, run_array_edge_factor, run_panel_pressure,
    run_parallel_section, run_bare_roof_pressure;

/* Kd where the edition puts it into the pressure (7-22), else 1: it is in q already. */
double directionality_outside(enum wind_edition edition);

#endif
