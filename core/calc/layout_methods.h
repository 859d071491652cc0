/* What the layout calculators run; the table in layout.c says inputs and results. */
#ifndef CALC_LAYOUT_METHODS_H
#define CALC_LAYOUT_METHODS_H
#include "calculator.h"
#include "layout_plane.h"

calculate layout_run_roof_plan_area, layout_run_roof_array_area, layout_run_roof_covered_plan_area,
    layout_run_covered_share;
calculate layout_run_building_share, layout_run_stands_apart, layout_run_meets_house,
    layout_run_module_count;
calculate layout_run_area, layout_run_plan_area, layout_run_covered_area,
    layout_run_covered_plan_area;
calculate layout_run_edge_is_met, layout_run_edges_agree, layout_run_walls_are_met;
calculate layout_run_eave_above, layout_run_roof_below;
calculate layout_run_has_edge, layout_run_clearance, layout_run_obstruction_clearance,
    layout_run_over_edge, layout_run_over_obstructions, layout_run_overlapping;
calculate layout_run_pathway_width, layout_run_pathway_count, layout_run_pathway_faces,
    layout_run_adjacent_pathway, layout_run_straddling_pathway, layout_run_pathway_planes,
    layout_run_building_pathways;
calculate layout_run_section_count, layout_run_section_length, layout_run_section_gap;
calculate layout_run_clear_below, layout_run_clear_width_below;
calculate layout_run_attachment_zone, layout_run_module_zone, layout_run_edge_distance,
    layout_run_neighbour_distance;
calculate layout_run_member_distance, layout_run_attachment_area, layout_run_supported_area,
    layout_run_unsupported, layout_run_short_of_rails, layout_run_past_rails,
    layout_run_rail_overhang, layout_run_rail_span, layout_run_rail_spread,
    layout_run_rail_cantilever;

struct amount layout_metres(double length);
struct amount layout_square_metres(double area);
/* Does the plane cover something that stands apart from the house (detached garage, carport, shade
 * structure, accessory building)? False: stop is set. */
bool layout_is_apart(bool *is, const struct object *plane, struct working *working);
/* Are two planes of one building? All that does not stand apart is; what does, is with its like
 * where their roofs meet. False: stop is set. */
bool layout_is_one_building(bool *is, const struct object *plane, const struct object *other,
                            struct working *working);
/* The widest strip on a plane, kept. False: stop is set. */
bool layout_plane_pathway(double *width, double *bare, struct layout_plane *plane,
                          struct working *working);
/* What of modules and obstructions lies on the plane, cut at its outline; shapes live in the arena.
 * False: no memory. */
bool layout_things_of(struct shape **things, size_t *count, const struct layout_plane *plane,
                      struct layout_geos *geos, struct arena *arena);

#endif
