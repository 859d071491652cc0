/* The table of layout calculators: what each asks for and answers. */
#include "layout.h"

#include "calculator.h"
#include "layout_methods.h"
#include "parameter.h"
#include "words.h"

#define SMALLEST_WIDTH 0.1 /* in */
#define LARGEST_LENGTH 10000.0

static const char *const zone_schemes[] = {"gable",     "hip",       "simple", "plain gable",
                                           "plain hip", "low slope", NULL};
static const char *const way_sides[] = {"street",    "driveway",           "rear",
                                        "side yard", "street or driveway", NULL};

#define AREA_OF(name, sentence)                                                                    \
    {                                                                                              \
        name, AMOUNT_QUANTITY, AREA, "ft²", 0, 0, NULL, false, sentence                            \
    }
#define LENGTH_OF(name, sentence)                                                                  \
    {                                                                                              \
        name, AMOUNT_QUANTITY, LENGTH, "in", 0, 0, NULL, false, sentence                           \
    }
#define NUMBER_OF(name, sentence)                                                                  \
    {                                                                                              \
        name, AMOUNT_NUMBER, PURE_NUMBER, "", 0, 0, NULL, false, sentence                          \
    }
#define YES_OF(name, sentence)                                                                     \
    {                                                                                              \
        name, AMOUNT_YESNO, PURE_NUMBER, "", 0, 0, NULL, false, sentence                           \
    }
#define NAME_OF(name, sentence)                                                                    \
    {                                                                                              \
        name, AMOUNT_WORD, PURE_NUMBER, "", 0, 0, NULL, true, sentence                             \
    }
#define WIDTH(name, is_optional, sentence)                                                         \
    {                                                                                              \
        name, AMOUNT_QUANTITY, LENGTH, "in", SMALLEST_WIDTH, LARGEST_LENGTH, NULL, is_optional,    \
            sentence                                                                               \
    }
#define CHOSEN(name, words, is_optional, sentence)                                                 \
    {                                                                                              \
        name, AMOUNT_WORD, PURE_NUMBER, "", 0, 0, words, is_optional, sentence                     \
    }

static const struct parameter edge_input[] = {
    CHOSEN("edge", words_for_edge, false, "Kind of edge.")};
static const struct parameter maybe_edge_input[] = {
    CHOSEN("edge", words_for_edge, true, "Kind of edge; without it all edges count.")};
static const struct parameter across_input[] = {
    CHOSEN("across", words_for_edge, true, "Kind of the shared edge; without it any.")};
static const struct parameter width_input[] = {WIDTH("width", false, "Width of the strip.")};
static const struct parameter width_and_side_input[] = {
    WIDTH("width", false, "Width of the strip."),
    CHOSEN("side", way_sides, false, "Side of the lot that the plane's eave faces.")};
static const struct parameter width_and_maybe_side_input[] = {
    WIDTH("width", false, "Width of the strip."),
    CHOSEN("side", way_sides, true,
           "Side of the lot that the plane's eave faces; without it any.")};
static const struct parameter gap_input[] = {
    WIDTH("gap", false, "Modules nearer to each other than this are one section.")};
static const struct parameter obstruction_input[] = {
    CHOSEN("kind", words_for_obstruction, true, "Only those of this kind; without it all.")};
static const struct parameter zone_inputs[] = {
    CHOSEN("scheme", zone_schemes, false,
           "gable: 1 2e 2r 2n 3e 3r; hip: 1 2e 2r 3; simple, plain gable (none along the eave) and "
           "plain hip (3 along the eave): 1 2 3; low slope: 1' 1 2 3."),
    WIDTH("width", false, "Width of the edge strips, in plan."),
    WIDTH("corner", true, "low slope: depth of the corner pieces; without it the width."),
    WIDTH("inner", true, "low slope: where zone 1' begins, from the edge; without it nowhere.")};

static const struct parameter plan_area_result[] = {AREA_OF("plan_area", "Area in plan.")};
static const struct parameter area_result[] = {AREA_OF("area", "Area on the surface.")};
static const struct parameter share_result[] = {
    NUMBER_OF("share", "Array area over the area of all planes of the building, both in plan.")};
static const struct parameter has_edge_result[] = {YES_OF("has_edge", "Is there such an edge?")};
static const struct parameter clearance_results[] = {
    LENGTH_OF("clearance", "Least distance from a module, in the plane."),
    NAME_OF("module", "The nearest module."), NAME_OF("obstruction", "The nearest obstruction.")};
static const struct parameter over_edge_results[] = {
    NUMBER_OF("count", "Modules that stand out past the outline."),
    NAME_OF("module", "The first of them.")};
static const struct parameter over_obstruction_results[] = {
    NUMBER_OF("count", "Modules that stand over an obstruction."),
    NAME_OF("module", "The first of them."), NAME_OF("obstruction", "What it stands over.")};
static const struct parameter overlap_results[] = {
    NUMBER_OF("count", "Pairs of modules that lie over each other."),
    NAME_OF("module", "One of the first pair."), NAME_OF("other", "The other one.")};
static const struct parameter pathway_results[] = {
    LENGTH_OF("width", "Width of the widest strip from eave to ridge."),
    LENGTH_OF("bare_width", "What the plane would allow with nothing on it.")};
static const struct parameter neighbour_pathway_results[] = {
    LENGTH_OF("width", "Width of the widest strip; 0 where no plane is adjacent."),
    NAME_OF("plane", "The adjacent plane.")};
static const struct parameter pathway_count_result[] = {
    NUMBER_OF("count", "Strips side by side that do not overlap.")};
static const struct parameter pathway_planes_results[] = {
    NUMBER_OF("count", "Planes with such a strip."), NAME_OF("plane", "The first of them."),
    NUMBER_OF("planes", "Planes that the building has."),
    NAME_OF("building", "The first of its planes, with a strip or without.")};
static const struct parameter yes_result[] = {YES_OF("is_so", "Is it so?")};
static const struct parameter edges_agree_results[] = {
    YES_OF("is_so", "Is it so?"), NAME_OF("plane", "The other plane, where it is not."),
    NAME_OF("edge", "What this plane calls the edge."),
    NAME_OF("other", "What the other one calls it.")};
static const struct parameter other_plane_results[] = {
    YES_OF("is_so", "Is it so?"), NAME_OF("plane", "The first other plane of which it is.")};
static const struct parameter section_count_result[] = {NUMBER_OF("count", "Sections.")};
static const struct parameter module_count_result[] = {NUMBER_OF("count", "Modules.")};
static const struct parameter section_length_results[] = {
    LENGTH_OF("length", "Longer reach of the largest section."),
    LENGTH_OF("along_eave", "Longest reach of a section along the eave."),
    LENGTH_OF("up_slope", "Longest reach of a section up the slope.")};
static const struct parameter gap_result[] = {LENGTH_OF("gap", "Least distance of two sections.")};
static const struct parameter clear_below_results[] = {
    YES_OF("clear", "Is the strip straight down from the opening free of modules?"),
    NAME_OF("module", "The first module in it.")};
static const struct parameter width_result[] = {LENGTH_OF("width", "Free width.")};
static const struct parameter zone_result[] = {NAME_OF("zone", "Wind zone.")};
static const struct parameter distance_results[] = {LENGTH_OF("distance", "Least distance."),
                                                    NAME_OF("module", "The nearest module.")};
static const struct parameter member_results[] = {
    LENGTH_OF("distance", "Distance to the nearest framing member."),
    LENGTH_OF("member", "Where that member stands: its x.")};
static const struct parameter tributary_result[] = {
    AREA_OF("area", "Module area that the attachment carries.")};
static const struct parameter supported_results[] = {
    AREA_OF("area", "Module area that attachments carry together."),
    AREA_OF("largest", "The most that one of them carries."),
    NAME_OF("attachment", "The one that carries most.")};
static const struct parameter unsupported_results[] = {
    NUMBER_OF("count", "Modules that no attachment carries."), NAME_OF("module", "The first.")};
static const struct parameter rails_input[] = {GIVEN_NUMBER(
    "rails", 1, 12, "Rails or, without rails, attachments that are to hold each module.")};
static const struct parameter short_of_rails_results[] = {
    NUMBER_OF("count", "Modules with fewer carried rails below them."),
    NAME_OF("module", "The first.")};
static const struct parameter past_rails_results[] = {
    LENGTH_OF("distance", "The longest part of a module without a rail below it; 0 where each "
                          "reaches from edge to edge."),
    NAME_OF("module", "The module.")};
static const struct parameter rail_overhang_results[] = {
    NUMBER_OF("share", "The part of a module past the outermost rail below it, as a share of its "
                       "size across the rails: the most of all modules."),
    LENGTH_OF("distance", "That part."), NAME_OF("module", "The first module with it.")};
static const struct parameter rail_spread_results[] = {
    NUMBER_OF("share", "Distance of the outermost rails below a module, as a share of its size "
                       "across them: the least of all modules with two; 1 without any."),
    LENGTH_OF("distance", "That distance."), NAME_OF("module", "The first module with it."),
    LENGTH_OF("largest", "The largest such distance of all modules; 0 without any.")};

#define ALL(array)    array, sizeof(array) / sizeof(array)[0]
#define ONE_OF(array) array, 1
#define TWO_OF(array) array, 2
#define NOTHING       NULL, 0
#define PLANE(name, sentence, inputs, results, run)                                                \
    {                                                                                              \
        name, KIND_roof_plane, sentence, NULL, inputs, results, run                                \
    }
#define ABOUT(kind, name, sentence, inputs, results, run)                                          \
    {                                                                                              \
        name, KIND_##kind, sentence, NULL, inputs, results, run                                    \
    }

static const char zone_source[] =
    "ASCE 7, chapter 30, figures for components and cladding; corner pieces from memory";

const struct calculator layout_calculators[] = {
    ABOUT(roof, "plan_area", "Area of all planes in plan.", NOTHING, ALL(plan_area_result),
          layout_run_roof_plan_area),
    ABOUT(roof, "array_area", "Area of all modules on the surface, each spot once.", NOTHING,
          ALL(area_result), layout_run_roof_array_area),
    ABOUT(roof, "covered_plan_area", "Area of all modules in plan.", NOTHING, ALL(plan_area_result),
          layout_run_roof_covered_plan_area),
    ABOUT(roof, "covered_share",
          "Share of a building's whole roof that modules cover, in plan: the largest of all "
          "buildings.",
          NOTHING, ALL(share_result), layout_run_covered_share),
    ABOUT(roof, "pathway_planes",
          "Planes of the building with modules that have a strip of a width from eave to ridge; of "
          "the house where what stands apart has modules, too.",
          ALL(width_and_maybe_side_input), ALL(pathway_planes_results), layout_run_pathway_planes),
    PLANE("building_pathways",
          "Planes of the same building that have a strip of a width from eave to ridge.",
          ALL(width_and_maybe_side_input), ALL(pathway_planes_results),
          layout_run_building_pathways),
    PLANE("building_share", "Share of the whole roof of its building that modules cover, in plan.",
          NOTHING, ALL(share_result), layout_run_building_share),
    PLANE("stands_apart", "Does it cover what stands apart from the house, as a detached garage?",
          NOTHING, ALL(yes_result), layout_run_stands_apart),
    PLANE("meets_house", "Is it told to stand apart, and a roof of the house within a foot of it?",
          NOTHING, ALL(other_plane_results), layout_run_meets_house),
    PLANE("module_count", "Modules that lie on it when the work is done: none to be removed.",
          NOTHING, ALL(module_count_result), layout_run_module_count),
    PLANE("area", "Area on the surface.", NOTHING, ALL(area_result), layout_run_area),
    PLANE("plan_area", "Area in plan.", NOTHING, ALL(plan_area_result), layout_run_plan_area),
    PLANE("covered_area", "Area of its modules on the surface.", NOTHING, ALL(area_result),
          layout_run_covered_area),
    PLANE("covered_plan_area", "Area of its modules in plan.", NOTHING, ALL(plan_area_result),
          layout_run_covered_plan_area),
    PLANE("has_edge", "Has the plane an edge of a kind?", ALL(edge_input), ALL(has_edge_result),
          layout_run_has_edge),
    PLANE("edge_is_met", "Does another plane meet each of its edges of a kind in plan?",
          ALL(edge_input), ALL(yes_result), layout_run_edge_is_met),
    PLANE("edges_agree", "Do planes that share a ridge, hip or valley in plan name it alike?",
          NOTHING, ALL(edges_agree_results), layout_run_edges_agree),
    PLANE("walls_are_met", "Is a roof drawn beyond each of its walls, within a foot in plan?",
          NOTHING, ALL(yes_result), layout_run_walls_are_met),
    PLANE("eave_above", "Does an eave of another plane run over it in plan, or end above its wall?",
          NOTHING, ALL(other_plane_results), layout_run_eave_above),
    PLANE("roof_below", "Does an eave of it run over another plane in plan, or end above its wall?",
          NOTHING, ALL(other_plane_results), layout_run_roof_below),
    PLANE("clearance", "Least distance from any module to the edges of a kind.", ALL(edge_input),
          TWO_OF(clearance_results), layout_run_clearance),
    PLANE("clearance_to_obstructions", "Least distance from any module to an obstruction.",
          ALL(obstruction_input), ALL(clearance_results), layout_run_obstruction_clearance),
    PLANE("modules_over_edge", "Modules that stand out past the outline.", NOTHING,
          ALL(over_edge_results), layout_run_over_edge),
    PLANE("modules_over_obstructions", "Modules that stand over an obstruction.", NOTHING,
          ALL(over_obstruction_results), layout_run_over_obstructions),
    PLANE("modules_overlapping", "Pairs of modules that lie over each other.", NOTHING,
          ALL(overlap_results), layout_run_overlapping),
    PLANE("pathway_width", "Widest strip from eave to ridge free of modules and obstructions.",
          NOTHING, ALL(pathway_results), layout_run_pathway_width),
    PLANE("pathway_count", "How many strips of a width run from eave to ridge.", ALL(width_input),
          ALL(pathway_count_result), layout_run_pathway_count),
    PLANE("pathway_faces", "Is there a strip of a width, and does the plane face a side?",
          ALL(width_and_side_input), ALL(yes_result), layout_run_pathway_faces),
    PLANE("adjacent_pathway_width", "Widest strip on a plane that shares an edge with this one.",
          ALL(across_input), ALL(neighbour_pathway_results), layout_run_adjacent_pathway),
    PLANE(
        "straddling_pathway_width",
        "Widest strip on this plane and an adjacent one taken together, their shared edge no bar.",
        ALL(across_input), ALL(neighbour_pathway_results), layout_run_straddling_pathway),
    PLANE("section_count", "Sections of the array.", ALL(gap_input), ALL(section_count_result),
          layout_run_section_count),
    PLANE("largest_section_length", "Reach of the largest section of the array.", ALL(gap_input),
          ALL(section_length_results), layout_run_section_length),
    PLANE("gap_between_sections", "Least distance of two sections of the array.", ALL(gap_input),
          ALL(gap_result), layout_run_section_gap),
    PLANE("supported_area", "Module area that attachments carry; the whole array's if all is held.",
          NOTHING, ALL(supported_results), layout_run_supported_area),
    PLANE("unsupported_modules", "Modules that no attachment carries.", NOTHING,
          ALL(unsupported_results), layout_run_unsupported),
    PLANE("modules_short_of_rails",
          "Modules with fewer rails below them, or without rails fewer attachments at them, than "
          "are asked for.",
          ALL(rails_input), ALL(short_of_rails_results), layout_run_short_of_rails),
    PLANE("past_rails", "How far a module stands out past the ends of the rails below it.",
          ALL(rails_input), ALL(past_rails_results), layout_run_past_rails),
    PLANE("largest_rail_overhang", "How far a module stands out past the outermost rail below it.",
          NOTHING, ALL(rail_overhang_results), layout_run_rail_overhang),
    PLANE("least_rail_spread", "How near together the rails below a module lie.", NOTHING,
          ALL(rail_spread_results), layout_run_rail_spread),
    ABOUT(escape_opening, "clear_below", "Is the roof straight below the opening free of modules?",
          ALL(width_input), ALL(clear_below_results), layout_run_clear_below),
    ABOUT(escape_opening, "clear_width_below",
          "Width straight below the opening free of modules and obstructions.", NOTHING,
          ALL(width_result), layout_run_clear_width_below),
    ABOUT(module, "edge_distance", "Least distance to the edges of its plane.",
          ALL(maybe_edge_input), ONE_OF(distance_results), layout_run_edge_distance),
    ABOUT(module, "neighbour_distance", "Distance to the nearest other module.", NOTHING,
          ALL(distance_results), layout_run_neighbour_distance),
    {"zone", KIND_module, "The worst wind zone it reaches into.", zone_source, ALL(zone_inputs),
     ALL(zone_result), layout_run_module_zone},
    {"zone", KIND_attachment, "The wind zone it stands in.", zone_source, ALL(zone_inputs),
     ALL(zone_result), layout_run_attachment_zone},
    ABOUT(attachment, "member_distance", "Distance to the nearest rafter or truss.", NOTHING,
          ALL(member_results), layout_run_member_distance),
    ABOUT(attachment, "tributary_area", "Module area that it carries.", NOTHING,
          ALL(tributary_result), layout_run_attachment_area),
    ABOUT(rail, "largest_span", "Largest distance of two neighbouring attachments.", NOTHING,
          ALL(width_result), layout_run_rail_span),
    ABOUT(rail, "cantilever", "How far it stands out past its last attachment.", NOTHING,
          ALL(width_result), layout_run_rail_cantilever),
    {NULL, KIND_NONE, NULL, NULL, NOTHING, NOTHING, NULL}};
