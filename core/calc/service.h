/* The runs behind the rows of service.c. */
#ifndef CALC_SERVICE_H
#define CALC_SERVICE_H
#include "service_tree.h"

/* service_bus.c */
calculate run_busbar_source_current, run_busbar_controlled_current, run_busbar_source_breaker_total,
    run_busbar_breaker_total, run_busbar_has_sources, run_busbar_source_breaker_place,
    run_busbar_sources_at_both_ends, run_busbar_largest_source_current;
/* service_panel.c */
calculate run_panel_source_current, run_panel_is_between_array_and_service, run_panel_path_up,
    run_panel_mains, run_panel_needed_spaces, run_breaker_source_current, run_breaker_has_sources,
    run_service_source_current_sum, run_service_source_rating_sum;
/* service_spaces.c */
calculate run_panel_crowded_spaces;
/* service_feeder.c */
calculate run_circuit_feeder_source_current, run_circuit_feeder_need, run_circuit_tap_need,
    run_circuit_supply_side_need, run_feeder_ampacity, run_feeder_tap, run_supply_side;
/* service_change.c */
calculate run_service_is_renewed, run_inverter_opened_by, run_branch_opened_by;
/* service_options.c */
calculate run_busbar_options, run_panel_largest_backfeed, run_service_disconnect_minimum;
/* service_load.c, service_house.c */
calculate run_dwelling_load_optional, run_dwelling_load_existing, run_load_calculation_optional,
    run_load_calculation_existing, run_load_calculation_metered;
calculate run_working_space, run_working_space_needed;

#endif
