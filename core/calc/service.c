/* The calculators of the service side: what they take, what they give, what they rest on. */
#include "service.h"

#include "service_load.h"

static const struct parameter current_result[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Sum of marked continuous output currents.")};
static const struct parameter total_result[] = {
    GIVEN_QUANTITY("total", CURRENT, "A", 0, 1e6, "Sum of ratings.")};
static const struct parameter role_input[] = {
    GIVEN_WORD("role", words_for_disconnect_role, "Whose disconnects are asked.")};
static const struct parameter yes_result[] = {GIVEN_YESNO("is_so", "Yes or no.")};
static const struct parameter place_result[] = {
    GIVEN_WORD("place", words_for_breaker_place, "The worst place of any of them.")};
static const struct parameter largest_source_results[] = {
    GIVEN_QUANTITY("by_120", CURRENT, "A", 0, 1e5, "Under the 120 % option."),
    GIVEN_QUANTITY("by_sum", CURRENT, "A", 0, 1e5, "Under the sum of sources (100 %)."),
};
static const struct parameter breaker_current_results[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Current of the sources behind it."),
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "125 % of it."),
};
static const struct parameter path_results[] = {
    GIVEN_NUMBER("count", 0, 64, "How many panels stand above it."),
    GIVEN_WORD("path", NULL, "Their names, nearest first."),
};
static const struct parameter crowded_results[] = {
    GIVEN_NUMBER("crowded", 0, 200, "Spaces that more breakers are in than fit."),
    GIVEN_NUMBER("last", 0, 208, "The highest number of a space that is taken."),
    GIVEN_NUMBER("tandems", 0, 1e4, "Spaces that tandem breakers are in.")};
static const struct parameter mains_result[] = {GIVEN_NUMBER("mains", 0, 1e4, "How many.")};
static const struct parameter spaces_result[] = {
    GIVEN_NUMBER("spaces", 0, 1e4, "Spaces that its new breakers take.")};

/* Inputs of the free calculators */

#define DEVICE_LOW 1
#define FEEDER_DEVICE                                                                              \
    GIVEN_QUANTITY("feeder_ocpd", CURRENT, "A", DEVICE_LOW, 6000,                                  \
                   "Device that protects the feeder from the utility's side.")
#define SOURCE_CURRENT                                                                             \
    GIVEN_QUANTITY("source_current", CURRENT, "A", 0.01, 6000,                                     \
                   "Marked output current of the sources, without 125 %.")
#define MATERIAL GIVEN_WORD("material", words_for_conductor_material, "Material of the conductors.")

static const struct parameter busbar_options_inputs[] = {
    GIVEN_QUANTITY("protecting_device", CURRENT, "A", DEVICE_LOW, 6000,
                   "Device that protects the bus."),
    SOURCE_CURRENT, MAYBE_QUANTITY("rating", CURRENT, "A", DEVICE_LOW, 6000, "Rating of the bus."),
    MAYBE_QUANTITY("breakers", CURRENT, "A", DEVICE_LOW, 1e5,
                   "Sum of all load and source breakers, the main left out.")};
static const struct parameter busbar_options_results[] = {
    GIVEN_QUANTITY("needed_by_sum", CURRENT, "A", 0, 1e5, "Bus rating for the sum of sources."),
    GIVEN_QUANTITY("needed_by_120", CURRENT, "A", 0, 1e5, "Bus rating for the 120 % option."),
    MAYBE_YESNO("serves_by_sum", "Does the bus serve by the sum of sources?"),
    MAYBE_YESNO("serves_by_120", "By the 120 % option, if the breaker is at the opposite end?"),
    MAYBE_YESNO("serves_by_breakers", "By the sum of breakers?"),
    MAYBE_QUANTITY("largest_by_sum", CURRENT, "A", 0, 1e5, "Largest source current so."),
    MAYBE_QUANTITY("largest_by_120", CURRENT, "A", 0, 1e5, "Largest source current so."),
};

static const struct parameter panel_largest_backfeed_inputs[] = {
    GIVEN_QUANTITY("rating", CURRENT, "A", DEVICE_LOW, 6000, "Rating of the bus."),
    GIVEN_QUANTITY("protecting_device", CURRENT, "A", DEVICE_LOW, 6000,
                   "Device that protects the bus.")};
static const struct parameter panel_largest_backfeed_results[] = {
    GIVEN_QUANTITY("backfeed", CURRENT, "A", 0, 1e5,
                   "What 125 % of the source current may be, at the opposite end."),
    GIVEN_QUANTITY("source_current", CURRENT, "A", 0, 1e5, "The source current itself."),
    GIVEN_QUANTITY("backfeed_anywhere", CURRENT, "A", 0, 1e5,
                   "What 125 % of the source current may be, at any place."),
    GIVEN_QUANTITY("source_current_anywhere", CURRENT, "A", 0, 1e5, "The source current itself."),
};

static const struct parameter feeder_ampacity_inputs[] = {
    FEEDER_DEVICE, SOURCE_CURRENT,
    MAYBE_QUANTITY("ampacity", CURRENT, "A", DEVICE_LOW, 6000, "Ampacity of the feeder.")};
static const struct parameter feeder_ampacity_results[] = {
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "Ampacity beyond the connection."),
    MAYBE_YESNO("serves", "Is the feeder's at least that?"),
};

static const struct parameter feeder_tap_inputs[] = {
    GIVEN_EDITION,
    FEEDER_DEVICE,
    MAYBE_QUANTITY("source_current", CURRENT, "A", 0.01, 6000,
                   "Marked output current of the sources (2017, 2020)."),
    MAYBE_QUANTITY("source_ocpd", CURRENT, "A", DEVICE_LOW, 6000, "Device of the sources (2023)."),
    GIVEN_QUANTITY("length", LENGTH, "ft", 0, 1000, "Length of the tap to the device at its end."),
    MAYBE_QUANTITY("end_device", CURRENT, "A", DEVICE_LOW, 6000, "The device in which it ends.")};
static const struct parameter tap_results[] = {
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "Ampacity of the tap."),
    GIVEN_QUANTITY("part", CURRENT, "A", 0, 1e5, "The tenth or the third alone."),
    GIVEN_QUANTITY("longest", LENGTH, "ft", 0, 1000, "Longest tap under that share."),
};

static const struct parameter supply_side_inputs[] = {
    GIVEN_EDITION, SOURCE_CURRENT, MATERIAL,
    MAYBE_WORD("device", device_words, "A circuit breaker (the usual) or a fuse.")};
static const struct parameter supply_side_results[] = {
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "Ampacity and device: 125 % of the current."),
    GIVEN_QUANTITY("ocpd", CURRENT, "A", 0, 6000, "Next standard device up."),
    MAYBE_WORD("smallest_size", NULL, "Floor of the size; 2017 has none."),
};
static const struct parameter supply_need_results[] = {
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "125 % of the current."),
    GIVEN_YESNO("meets_floor", "Are its conductors at least the smallest size?"),
    MAYBE_WORD("smallest_size", NULL, "Floor of the size; 2017 has none."),
};
static const struct parameter needed_result[] = {
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "Ampacity that it needs.")};

#define LOAD_VA(name, sentence) MAYBE_QUANTITY(name, POWER, "VA", 0, 1e6, sentence)
#define DWELLING_INPUTS                                                                            \
    GIVEN_QUANTITY("floor_area", AREA, "ft²", 50, 1e5, "Floor area."),                             \
        GIVEN_NUMBER("small_appliance_circuits", 0, 20, "Small-appliance circuits."),              \
        GIVEN_NUMBER("laundry_circuits", 0, 10, "Laundry circuits."),                              \
        LOAD_VA("appliances", "Nameplate sum of fastened appliances, ranges, dryers, heaters."),   \
        LOAD_VA("motors", "Nameplate sum of other motors."),                                       \
        LOAD_VA("ev_charging", "Vehicle charging."), LOAD_VA("heating", "Electric heating."),      \
        MAYBE_WORD("heating_kind", heating_words, "How it is controlled; else central."),          \
        LOAD_VA("cooling", "Air conditioning or heat pump."),                                      \
        MAYBE_QUANTITY("voltage", VOLTAGE, "V", 100, 600, "Else 240 V."), MAYBE_EDITION
static const struct parameter dwelling_load_optional_inputs[] = {DWELLING_INPUTS};
static const struct parameter dwelling_load_existing_inputs[] = {
    DWELLING_INPUTS, GIVEN_YESNO("adds_air_conditioning", "Is heating or cooling added?")};
static const struct parameter load_results[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Load at the voltage."),
    GIVEN_QUANTITY("load", POWER, "VA", 0, 1e7, "Load; of heating and cooling the larger."),
    GIVEN_QUANTITY("strict_current", CURRENT, "A", 0, 1e5,
                   "If vehicle charging counts in full and heating and cooling run together."),
};
static const struct parameter metered_result[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "125 % of the peak; new loads come on top.")};
static const struct parameter edition_maybe[] = {MAYBE_EDITION};
static const struct parameter edition_given[] = {GIVEN_EDITION};

static const struct parameter service_disconnect_minimum_inputs[] = {
    GIVEN_WORD("occupancy", words_for_occupancy, "What it serves."),
    MAYBE_QUANTITY("load", CURRENT, "A", 0, 6000, "Calculated load.")};
static const struct parameter minimum_result[] = {
    GIVEN_QUANTITY("minimum", CURRENT, "A", 0, 6000, "Smallest rating.")};

static const struct parameter working_space_inputs[] = {
    GIVEN_QUANTITY("voltage", VOLTAGE, "V", 0, 1000, "Voltage to ground."),
    GIVEN_WORD("facing", words_for_facing, "What is across from the live parts."),
    MAYBE_QUANTITY("equipment_width", LENGTH, "in", 0, 1000, "Width of the equipment."),
    MAYBE_QUANTITY("equipment_height", LENGTH, "ft", 0, 100, "Height of the equipment.")};
static const struct parameter space_needed_inputs[] = {MAYBE_QUANTITY(
    "voltage", VOLTAGE, "V", 0, 1000, "Voltage to ground, where it is not the service's.")};
static const struct parameter space_results[] = {
    GIVEN_QUANTITY("depth", LENGTH, "ft", 0, 10, "Depth."),
    GIVEN_QUANTITY("width", LENGTH, "in", 0, 1000, "Width."),
    GIVEN_QUANTITY("height", LENGTH, "ft", 0, 100, "Height."),
};

const struct calculator service_calculators[] = {
    FREE_CALCULATOR(busbar_options, busbar_options_inputs, busbar_options_results,
                    "What a bus with sources must be rated, by each option.", "NEC 705.12(B)"),
    FREE_CALCULATOR(panel_largest_backfeed, panel_largest_backfeed_inputs,
                    panel_largest_backfeed_results, "The most that a bus lets sources feed it.",
                    "NEC 705.12(B)"),
    FREE_CALCULATOR(feeder_ampacity, feeder_ampacity_inputs, feeder_ampacity_results,
                    "A feeder with a source not at its opposite end.",
                    "NEC 705.12(A)(1) (2017: (B)(2)(1), 2020: (B)(1))"),
    FREE_CALCULATOR(feeder_tap, feeder_tap_inputs, tap_results,
                    "A tap of a feeder that sources feed.",
                    "NEC 705.12(A)(3) (2017: (B)(2)(2), 2020: (B)(2)), 240.21(B)(1), (2)"),
    FREE_CALCULATOR(supply_side, supply_side_inputs, supply_side_results,
                    "A connection on the supply side of the service disconnect.", "NEC 705.11"),
    FREE_CALCULATOR(working_space, working_space_inputs, space_results,
                    "Clear space before equipment.", "NEC 110.26(A)"),
    FREE_CALCULATOR(dwelling_load_optional, dwelling_load_optional_inputs, load_results,
                    "Load of a dwelling by the optional method.", "NEC 220.82, secondary source"),
    FREE_CALCULATOR(dwelling_load_existing, dwelling_load_existing_inputs, load_results,
                    "Load of an existing dwelling to which loads are added.",
                    "NEC 220.83, secondary source"),
    FREE_CALCULATOR(service_disconnect_minimum, service_disconnect_minimum_inputs, minimum_result,
                    "Smallest service disconnect.", "NEC 230.79"),
    PLAIN_METHOD(busbar, source_current, current_result,
                 "Output current of every source that can feed it, without 125 %.", "NEC 705.12"),
    PLAIN_METHOD(busbar, controlled_current, current_result,
                 "The same, held to the limit of a power control system that the design names.",
                 "NEC 705.13"),
    PLAIN_METHOD(busbar, source_breaker_total, total_result,
                 "Ratings of its breakers that have sources behind them.", "NEC 705.12"),
    PLAIN_METHOD(busbar, breaker_total, total_result,
                 "Ratings of all its load, source and feeder breakers, without main and spare "
                 "ones; a tandem is written as two breakers.",
                 "NEC 705.12(B)(3) (2017: (B)(2)(3)(c), 2020: (B)(3)(3))"),
    PLAIN_METHOD(busbar, has_sources, yes_result, "Can any source feed it?", "NEC 705.12"),
    PLAIN_METHOD(busbar, source_breaker_place, place_result,
                 "Where its breakers with sources stand: at the opposite end only if all do.",
                 "NEC 705.12(B)(2) (2017: (B)(2)(3)(b), 2020: (B)(3)(2))"),
    PLAIN_METHOD(busbar, sources_at_both_ends, yes_result,
                 "Do breakers with sources stand in both halves of the panel (center-fed)?",
                 "NEC 705.12(B)(4) (2017: (B)(2)(3)(d), 2020: (B)(3)(4))"),
    PLAIN_METHOD(busbar, largest_source_current, largest_source_results,
                 "Largest source current that its rating and its device leave.", "NEC 705.12"),
    PLAIN_METHOD(panel, source_current, current_result,
                 "Output current of every source that can feed any of its buses.", "NEC 705.12"),
    PLAIN_METHOD(panel, is_between_array_and_service, yes_result, "Is any source behind it?",
                 "NEC 705.12"),
    PLAIN_METHOD(panel, path_up, path_results, "The panels between it and the service.", NULL),
    PLAIN_METHOD(panel, mains, mains_result, "Main breakers on its buses that stay.", "design"),
    PLAIN_METHOD(panel, needed_spaces, spaces_result, "Spaces that its new breakers take.",
                 "common practice, no source"),
    PLAIN_METHOD(panel, crowded_spaces, crowded_results,
                 "Spaces that the design gives to more breakers than they hold.",
                 "common practice, no source"),
    PLAIN_METHOD(breaker, source_current, breaker_current_results,
                 "Output current of the sources behind it.", "NEC 705.30"),
    PLAIN_METHOD(breaker, has_sources, yes_result, "Is any source behind it?", "NEC 705.12"),
    PLAIN_METHOD(service, is_renewed, yes_result,
                 "Is there work on the service, or a new panel at it?", "design"),
    METHOD_CALCULATOR(inverter, opened_by, role_input, yes_result,
                      "Does a disconnect of this role take it off all other wiring?", "design"),
    METHOD_CALCULATOR(branch, opened_by, role_input, yes_result,
                      "Does a disconnect of this role take it off all other wiring?", "design"),
    PLAIN_METHOD(service, source_current_sum, current_result,
                 "Output current of all sources, on either side of the service disconnect.",
                 "NEC 705.11(A) (2020, 2023)"),
    PLAIN_METHOD(service, source_rating_sum, total_result,
                 "Ratings of the devices at all sources, on either side of the service disconnect.",
                 "NEC 705.12(A) (2017), from memory"),
    PLAIN_METHOD(circuit, feeder_source_current, current_result,
                 "Sources that feed this feeder: behind its panel, or tapping it.", "NEC 705.12"),
    PLAIN_METHOD(circuit, feeder_need, needed_result,
                 "Its own device plus 125 % of the sources that feed it.",
                 "NEC 705.12(A)(1) (2017: (B)(2)(1), 2020: (B)(1))"),
    METHOD_CALCULATOR(circuit, tap_need, edition_given, tap_results,
                      "What a tap of a feeder must carry.",
                      "NEC 705.12(A)(3) (2017: (B)(2)(2), 2020: (B)(2)), 240.21(B)(1), (2)"),
    METHOD_CALCULATOR(circuit, supply_side_need, edition_given, supply_need_results,
                      "What conductors on the supply side must be.", "NEC 705.11"),
    METHOD_CALCULATOR(load_calculation, optional, edition_maybe, load_results,
                      "Load by the optional method, heating taken as central.", "NEC 220.82"),
    METHOD_CALCULATOR(load_calculation, existing, edition_maybe, load_results,
                      "Load of an existing dwelling, heating taken as central.", "NEC 220.83"),
    PLAIN_METHOD(load_calculation, metered, metered_result, "Load by a year's metered peak.",
                 "NEC 220.87, secondary source"),
    METHOD_CALCULATOR(working_space, needed, space_needed_inputs, space_results,
                      "The clear space that it needs.", "NEC 110.26(A)"),
    {.name = NULL},
};
