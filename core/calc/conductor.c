/* The calculators about conductors: what they take, what they give, what they rest on. */
#include "conductor_runs.h"

#define SIZE_INPUT     GIVEN_WORD("size", words_for_conductor_size, "Size of the conductor.")
#define MATERIAL_INPUT GIVEN_WORD("material", words_for_conductor_material, "Its material.")
#define INSULATION_INPUT                                                                           \
    GIVEN_QUANTITY("insulation", TEMPERATURE, "°C", 60, 150,                                       \
                   "Temperature rating of the insulation; above 90 °C the 90 °C column is used.")
#define SETS_INPUT  MAYBE_NUMBER("sets", 1, 8, "Conductors in parallel per pole; else one.")
#define CURRENT_LOW 0.01
#define COMMON_AMPACITY_INPUTS                                                                     \
    MATERIAL_INPUT, INSULATION_INPUT,                                                              \
        GIVEN_QUANTITY("ambient", TEMPERATURE, "°C", -60, 85,                                      \
                       "Ambient temperature, without the rooftop adder."),                         \
        GIVEN_NUMBER("conductors", 1, 200, "Current-carrying conductors together."),               \
        MAYBE_QUANTITY("terminal", TEMPERATURE, "°C", 60, 90,                                      \
                       "Lower temperature rating of the terminals."),                              \
        MAYBE_WORD("environment", environment_words,                                               \
                   "In a raceway or cable (the usual), or in "                                     \
                   "free air."),                                                                   \
        MAYBE_QUANTITY("height", LENGTH, "in", 0, 240,                                             \
                       "Height above a roof in sunlight; absent: not on a roof."),                 \
        MAYBE_EDITION,                                                                             \
        MAYBE_WORD("insulation_type", words_for_insulation,                                        \
                   "XHHW-2 is spared the rooftop adder."),                                         \
        SETS_INPUT
#define DEVICE_INPUT MAYBE_WORD("device", device_words, "A circuit breaker (the usual) or a fuse.")

static const struct parameter ampacity_inputs[] = {SIZE_INPUT, COMMON_AMPACITY_INPUTS};
static const struct parameter ampacity_results[] = {
    GIVEN_QUANTITY("ampacity", CURRENT, "A", 0, 1e5, "Ampacity after corrections."),
    GIVEN_QUANTITY("column", CURRENT, "A", 0, 1e5, "The table's figure before corrections."),
    GIVEN_QUANTITY("temperature", TEMPERATURE, "°C", -60, 85, "Ambient with the rooftop adder."),
    GIVEN_NUMBER("ambient_factor", 0, 1.3, "Correction for the ambient temperature."),
    GIVEN_NUMBER("count_factor", 0, 1, "Adjustment for the number of conductors."),
    MAYBE_QUANTITY("terminal_ampacity", CURRENT, "A", 0, 1e5, "The column of the terminals."),
    MAYBE_QUANTITY("usable", CURRENT, "A", 0, 1e5, "The smaller of corrected and terminal."),
};

static const struct parameter corrected_ampacity_inputs[] = {
    SIZE_INPUT, COMMON_AMPACITY_INPUTS,
    GIVEN_QUANTITY("current", CURRENT, "A", CURRENT_LOW, 6000, "Largest current, without 125 %.")};
static const struct parameter corrected_ampacity_results[] = {
    GIVEN_QUANTITY("ampacity", CURRENT, "A", 0, 1e5, "Ampacity after corrections."),
    GIVEN_YESNO("serves", "Is it at least the current?"),
};

static const struct parameter terminal_ampacity_inputs[] = {
    SIZE_INPUT,
    MATERIAL_INPUT,
    INSULATION_INPUT,
    GIVEN_QUANTITY("terminal", TEMPERATURE, "°C", 60, 90,
                   "Lower temperature rating of the terminals."),
    MAYBE_QUANTITY("current", CURRENT, "A", CURRENT_LOW, 6000, "Largest current, without 125 %."),
    SETS_INPUT};
static const struct parameter terminal_ampacity_results[] = {
    GIVEN_QUANTITY("ampacity", CURRENT, "A", 0, 1e5, "The column of the terminals, uncorrected."),
    MAYBE_QUANTITY("needed", CURRENT, "A", 0, 1e5, "125 % of the current."),
    MAYBE_YESNO("serves", "Is the column at least that?"),
};

static const struct parameter smallest_conductor_inputs[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", CURRENT_LOW, 4000, "Largest current, without 125 %."),
    COMMON_AMPACITY_INPUTS,
    MAYBE_QUANTITY("ocpd", CURRENT, "A", 1, 6000,
                   "Device that protects it; absent: the next size up of 125 % of the current."),
    DEVICE_INPUT};
static const struct parameter smallest_conductor_results[] = {
    GIVEN_WORD("size", NULL, "Smallest size that passes all three tests."),
    GIVEN_QUANTITY("ampacity", CURRENT, "A", 0, 1e5, "Its ampacity after corrections."),
    GIVEN_QUANTITY("terminal_ampacity", CURRENT, "A", 0, 1e5, "Its column at the terminals."),
};

static const struct parameter largest_ocpd_for_inputs[] = {SIZE_INPUT, COMMON_AMPACITY_INPUTS,
                                                           DEVICE_INPUT};
static const struct parameter largest_ocpd_for_results[] = {
    GIVEN_QUANTITY("ocpd", CURRENT, "A", 0, 6000, "Largest device that protects the conductor."),
    GIVEN_QUANTITY("usable", CURRENT, "A", 0, 1e5, "The conductor's usable ampacity."),
};

static const struct parameter ocpd_inputs[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", CURRENT_LOW, 6000,
                   "What it must carry, 125 % included."),
    MAYBE_EDITION, DEVICE_INPUT};
static const struct parameter ocpd_results[] = {
    GIVEN_QUANTITY("ocpd", CURRENT, "A", 1, 6000, "Standard rating.")};

#define COMMON_DROP_INPUTS                                                                         \
    GIVEN_QUANTITY("current", CURRENT, "A", CURRENT_LOW, 6000, "Operating current."),              \
        GIVEN_QUANTITY("length", LENGTH, "ft", 0, 20000, "One-way length."), SIZE_INPUT,           \
        MATERIAL_INPUT,                                                                            \
        MAYBE_QUANTITY("voltage", VOLTAGE, "V", 1, 1500, "Operating voltage, for the share."),     \
        SETS_INPUT
static const struct parameter dc_voltage_drop_inputs[] = {
    COMMON_DROP_INPUTS, MAYBE_YESNO("solid", "Solid rather than stranded?"),
    MAYBE_YESNO("coated", "Tinned copper?")};
static const struct parameter ac_voltage_drop_inputs[] = {
    COMMON_DROP_INPUTS, GIVEN_WORD("wiring_method", words_for_wiring_method, "Raceway or cable."),
    MAYBE_NUMBER("power_factor", 0.1, 1, "Power factor; an inverter's is usually 1."),
    MAYBE_NUMBER("phases", 1, 3, "1 (the usual) or 3.")};
static const struct parameter drop_results[] = {
    GIVEN_QUANTITY("drop", VOLTAGE, "V", 0, 1e5, "Volts lost, both ways."),
    GIVEN_QUANTITY("loss", POWER, "W", 0, 1e9, "Current times volts lost."),
    MAYBE_NUMBER("share", 0, 1e3, "Share of the voltage."),
};

static const char *const fill_words[] = {"EMT",    "RMC", "IMC",  "PVC 40",
                                         "PVC 80", "FMC", "LFMC", NULL};
#define GROUP(size, count, sentence)                                                               \
    MAYBE_WORD(size, words_for_conductor_size, sentence),                                          \
        MAYBE_NUMBER(count, 1, 200, "How many of them.")
static const struct parameter conduit_fill_inputs[] = {
    GIVEN_WORD("raceway", fill_words, "Raceway."),
    MAYBE_WORD("trade_size", words_for_trade_size, "Its trade size; absent: the smallest is told."),
    MAYBE_WORD("insulation", words_for_insulation, "Insulation of the conductors given by size."),
    GROUP("size", "count", "Size of the first conductors."),
    GROUP("size_2", "count_2", "Size of further ones."),
    GROUP("size_3", "count_3", "Size of further ones."),
    MAYBE_QUANTITY("diameter", LENGTH, "in", 0.05, 3, "Diameter of conductors no table has."),
    MAYBE_NUMBER("diameter_count", 1, 200, "How many of them."),
    MAYBE_YESNO("nipple", "Is it at most 24 in long?")};
static const struct parameter conduit_fill_results[] = {
    GIVEN_QUANTITY("area", AREA, "in²", 0, 1e3, "Area of the conductors."),
    GIVEN_NUMBER("limit", 0, 1, "Share that may be filled."),
    MAYBE_NUMBER("fill", 0, 1e3, "Share that is filled."),
    MAYBE_YESNO("serves", "Is it within the limit?"),
    MAYBE_WORD("smallest", NULL, "Smallest trade size that serves."),
};

static const struct parameter egc_size_inputs[] = {
    GIVEN_QUANTITY("ocpd", CURRENT, "A", 1, 6000, "Rating of the device ahead."), MATERIAL_INPUT};
static const struct parameter gec_size_inputs[] = {
    GIVEN_WORD("service_size", words_for_conductor_size, "Size of the service conductors."),
    GIVEN_WORD("service_material", words_for_conductor_material, "Their material."),
    GIVEN_WORD("material", words_for_conductor_material, "Material of the electrode conductor."),
    SETS_INPUT};
static const struct parameter size_results[] = {GIVEN_WORD("size", NULL, "Smallest size.")};

static const struct parameter conductor_area_inputs[] = {SIZE_INPUT};
static const struct parameter conductor_area_results[] = {
    GIVEN_NUMBER("kcmil", 0, 1e4, "Cross-section of the metal in kcmil.")};

static const struct parameter dwelling_conductor_inputs[] = {
    GIVEN_QUANTITY("rating", CURRENT, "A", 100, 400, "Rating of the service."), MATERIAL_INPUT};
static const struct parameter dwelling_conductor_results[] = {
    GIVEN_WORD("size", NULL, "Smallest size."),
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 400, "83 % of the rating."),
    GIVEN_QUANTITY("ampacity", CURRENT, "A", 0, 1e4, "The size's 75 °C column."),
};

static const struct parameter edition_input[] = {GIVEN_EDITION};
static const struct parameter voltage_result[] = {
    GIVEN_QUANTITY("voltage", VOLTAGE, "V", 0, 1e5, "In the cold, of the DC side.")};
static const struct parameter current_result[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Largest current, without 125 %.")};
static const struct parameter ampacity_result[] = {
    GIVEN_QUANTITY("ampacity", CURRENT, "A", 0, 1e5, "Amperes, all parallel conductors.")};
static const struct parameter ocpd_result[] = {
    GIVEN_QUANTITY("ocpd", CURRENT, "A", 0, 6000, "Standard rating.")};
static const struct parameter circuit_drop_results[] = {
    GIVEN_NUMBER("share", 0, 1e3, "Share of the nominal voltage."),
    GIVEN_QUANTITY("drop", VOLTAGE, "V", 0, 1e5, "Volts lost, both ways."),
};
static const struct parameter carrying_results[] = {
    GIVEN_NUMBER("count", 0, 1e4, "Current-carrying conductors in its raceway.")};
static const struct parameter fill_results[] = {
    GIVEN_NUMBER("fill", 0, 1e3, "Share of the raceway that is filled.")};
static const struct parameter fill_limit_results[] = {
    GIVEN_NUMBER("limit", 0, 1, "Share that may be filled.")};

const struct calculator conductor_calculators[] = {
    FREE_CALCULATOR(ampacity, ampacity_inputs, ampacity_results,
                    "What a conductor carries where it runs.", SOURCE_AMPACITY),
    FREE_CALCULATOR(terminal_ampacity, terminal_ampacity_inputs, terminal_ampacity_results,
                    "125 % of the current against the uncorrected column of the terminals.",
                    "NEC 110.14(C), 690.8(B)(1), 705.28"),
    FREE_CALCULATOR(corrected_ampacity, corrected_ampacity_inputs, corrected_ampacity_results,
                    "The current against the ampacity after corrections.",
                    "NEC 310.15, 690.8(B)(2), 705.28"),
    FREE_CALCULATOR(largest_ocpd_for, largest_ocpd_for_inputs, largest_ocpd_for_results,
                    "The largest device that protects a conductor.", "NEC 240.4(B), (C), (D)"),
    FREE_CALCULATOR(smallest_conductor, smallest_conductor_inputs, smallest_conductor_results,
                    "The smallest conductor that serves by all three tests.",
                    "NEC 690.8(B), 110.14(C), 240.4"),
    FREE_CALCULATOR(ocpd_up, ocpd_inputs, ocpd_results, "The next standard size up.", SOURCE_OCPD),
    FREE_CALCULATOR(ocpd_down, ocpd_inputs, ocpd_results, "The next standard size down.",
                    SOURCE_OCPD),
    FREE_CALCULATOR(dc_voltage_drop, dc_voltage_drop_inputs, drop_results,
                    "Volts lost on a dc circuit.", "NEC Chapter 9 Table 8, secondary source"),
    FREE_CALCULATOR(ac_voltage_drop, ac_voltage_drop_inputs, drop_results,
                    "Volts lost on an ac circuit.", "NEC Chapter 9 Table 9, secondary source"),
    FREE_CALCULATOR(conduit_fill, conduit_fill_inputs, conduit_fill_results,
                    "How full a raceway is.", "NEC Chapter 9 Tables 1, 4, 5, secondary sources"),
    FREE_CALCULATOR(egc_size, egc_size_inputs, size_results,
                    "The equipment grounding conductor behind a device.",
                    "NEC Table 250.122, secondary source"),
    FREE_CALCULATOR(gec_size, gec_size_inputs, size_results,
                    "The grounding electrode conductor of a service.",
                    "NEC Table 250.66, secondary source"),
    FREE_CALCULATOR(conductor_area, conductor_area_inputs, conductor_area_results,
                    "How large a conductor is, to tell which of two is larger.",
                    "NEC Chapter 9 Table 8, secondary source"),
    FREE_CALCULATOR(dwelling_conductor, dwelling_conductor_inputs, dwelling_conductor_results,
                    "The service conductor of a dwelling.",
                    "NEC 310.12 (2017: 310.15(B)(7)), secondary source"),
    PLAIN_METHOD(circuit, design_current, current_result,
                 "The largest current it carries, by what it carries, without 125 %.",
                 "NEC 690.8(A), 705.28(A)"),
    PLAIN_METHOD(circuit, largest_voltage, voltage_result,
                 "What it is told to run at, or the largest of its strings where that is more.",
                 "NEC 690.7"),
    PLAIN_METHOD(circuit, terminal_ampacity, ampacity_result,
                 "The uncorrected column at its terminals.", "NEC 110.14(C)"),
    METHOD_CALCULATOR(circuit, corrected_ampacity, edition_input, ampacity_result,
                      "Its ampacity after corrections.", "NEC 310.15"),
    METHOD_CALCULATOR(circuit, usable_ampacity, edition_input, ampacity_result,
                      "The smaller of the corrected ampacity and its terminals' column.",
                      "NEC 310.15, 110.14(C)"),
    METHOD_CALCULATOR(circuit, needed_ocpd, edition_input, ocpd_result,
                      "The next standard size up of 125 % of its current.",
                      "NEC 690.9(B), 705.30, 240.6(A)"),
    METHOD_CALCULATOR(circuit, largest_ocpd, edition_input, ocpd_result,
                      "The largest device that protects its conductors.", "NEC 240.4(B), (C), (D)"),
    METHOD_CALCULATOR(circuit, smallest_size, edition_input, size_results,
                      "The smallest size that serves where it runs.",
                      "NEC 690.8(B), 110.14(C), 240.4"),
    METHOD_CALCULATOR(circuit, needed_egc, edition_input, size_results,
                      "The equipment grounding conductor it needs.", "NEC 250.122, 690.45"),
    PLAIN_METHOD(circuit, voltage_drop, circuit_drop_results, "Voltage lost along it.",
                 "NEC Chapter 9 Tables 8 and 9, secondary sources"),
    PLAIN_METHOD(circuit, carrying_conductors, carrying_results,
                 "Current-carrying conductors in its raceway, those of circuits that share it "
                 "included.",
                 "NEC 310.15(C)(1)"),
    PLAIN_METHOD(circuit, fill, fill_results, "How full its raceway is.",
                 "NEC Chapter 9 Tables 4 and 5, secondary sources"),
    PLAIN_METHOD(circuit, fill_limit, fill_limit_results, "How full its raceway may be.",
                 "NEC Chapter 9 Table 1, secondary source"),
    {.name = NULL},
};
