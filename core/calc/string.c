/* The calculators about strings, inverters and branches: what they take, give and rest on. */
#include "string_runs.h"

#define MODULES_INPUT GIVEN_NUMBER("modules", 1, 200, "Modules in series.")
#define COLD_INPUTS                                                                                \
    GIVEN_QUANTITY("open_circuit_voltage", VOLTAGE, "V", 1, 400,                                   \
                   "Open-circuit voltage of one module at 25 °C."),                                \
        GIVEN_QUANTITY("temperature", TEMPERATURE, "°C", -60, 25, "Lowest expected temperature."), \
        MAYBE_QUANTITY("coefficient", PER_TEMPERATURE, "%/°C", -1, 0,                              \
                       "Its coefficient as a share, negative; goes before the others."),           \
        MAYBE_QUANTITY("coefficient_volts", VOLTAGE_PER_TEMPERATURE, "V/°C", -2, 0,                \
                       "Its coefficient in volts, negative."),                                     \
        MAYBE_WORD("technology", words_for_technology,                                             \
                   "Cell technology; without a coefficient silicon takes the table.")
#define HOT_INPUTS                                                                                 \
    GIVEN_QUANTITY("power_voltage", VOLTAGE, "V", 1, 400,                                          \
                   "Voltage of one module at maximum power and 25 °C."),                           \
        GIVEN_QUANTITY("temperature", TEMPERATURE, "°C", -60, 100, "Highest air temperature."),    \
        MAYBE_QUANTITY("rise", TEMPERATURE_DIFFERENCE, "°C", 0, 60,                                \
                       "How much hotter the cells are."),                                          \
        MAYBE_QUANTITY("coefficient", PER_TEMPERATURE, "%/°C", -1.5, 0,                            \
                       "Its coefficient as a share, negative; goes before volts."),                \
        MAYBE_QUANTITY("coefficient_volts", VOLTAGE_PER_TEMPERATURE, "V/°C", -2, 0,                \
                       "Its coefficient in volts, negative.")

static const struct parameter cold_voltage_inputs[] = {MODULES_INPUT, COLD_INPUTS};
static const struct parameter hot_voltage_inputs[] = {MODULES_INPUT, HOT_INPUTS};
static const struct parameter string_voltage_results[] = {
    GIVEN_QUANTITY("voltage", VOLTAGE, "V", 0, 1e5, "Voltage of the string."),
    GIVEN_QUANTITY("module_voltage", VOLTAGE, "V", 0, 1e3, "Voltage of one module."),
};

static const struct parameter longest_string_inputs[] = {
    GIVEN_QUANTITY("limit", VOLTAGE, "V", 10, 1500, "Largest voltage allowed."), COLD_INPUTS};
static const struct parameter shortest_string_inputs[] = {
    GIVEN_QUANTITY("least", VOLTAGE, "V", 5, 1500, "Least voltage that serves the inverter."),
    HOT_INPUTS, MAYBE_NUMBER("allowance", 0, 0.5, "Share of voltage kept for age and drop.")};
static const struct parameter string_length_results[] = {
    GIVEN_NUMBER("modules", 1, 1e4, "Modules in series."),
    GIVEN_QUANTITY("voltage", VOLTAGE, "V", 0, 1e5, "Voltage of that string."),
    GIVEN_QUANTITY("module_voltage", VOLTAGE, "V", 0, 1e3, "Voltage of one module."),
};

#define STRINGS_INPUT GIVEN_NUMBER("strings", 1, 100, "Strings in parallel.")
#define SHORT_CIRCUIT_INPUT                                                                        \
    GIVEN_QUANTITY("short_circuit_current", CURRENT, "A", 0.1, 100, "Of one string at 25 °C.")
static const struct parameter source_current_inputs[] = {STRINGS_INPUT, SHORT_CIRCUIT_INPUT};
static const struct parameter source_current_results[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Largest current, 125 % of short circuit."),
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "125 % of that: conductors and devices."),
};

static const struct parameter parallel_fusing_inputs[] = {
    STRINGS_INPUT, SHORT_CIRCUIT_INPUT,
    GIVEN_QUANTITY("maximum_series_fuse", CURRENT, "A", 1, 100, "The module's largest fuse."),
    GIVEN_QUANTITY("ampacity", CURRENT, "A", 0.1, 1000, "Usable ampacity of a string's conductor."),
    MAYBE_EDITION};
static const struct parameter parallel_fusing_results[] = {
    GIVEN_YESNO("needed", "Does each string need an overcurrent device?"),
    GIVEN_QUANTITY("backfeed", CURRENT, "A", 0, 1e5, "Current from all other strings."),
    MAYBE_QUANTITY("fuse", CURRENT, "A", 1, 6000, "Standard fuse from 156.25 % of short circuit."),
    MAYBE_YESNO("allowed", "Is it within the module's largest fuse?"),
};

static const struct parameter converter_string_inputs[] = {
    GIVEN_NUMBER("modules", 1, 200, "Modules in the string."),
    GIVEN_QUANTITY("module_power", POWER, "W", 5, 1200, "Rated power of one module."),
    GIVEN_QUANTITY("converter_power", POWER, "W", 5, 3000, "Rated input power of a converter."),
    GIVEN_QUANTITY("output_current", CURRENT, "A", 0.1, 60, "Largest output current."),
    GIVEN_QUANTITY("string_voltage", VOLTAGE, "V", 50, 1500, "Voltage at which it is held."),
    GIVEN_NUMBER("minimum", 1, 100, "Fewest converters in a string."),
    GIVEN_NUMBER("maximum", 1, 200, "Most converters in a string."),
    MAYBE_NUMBER("modules_per_converter", 1, 4, "Modules on one converter; else one."),
    MAYBE_QUANTITY("maximum_power", POWER, "W", 100, 1e5, "Largest power of a string, if stated.")};
static const struct parameter converter_string_results[] = {
    GIVEN_YESNO("serves", "Is it within the maker's limits?"),
    GIVEN_NUMBER("converters", 1, 200, "Converters in the string."),
    GIVEN_QUANTITY("power", POWER, "W", 0, 1e6, "Power of its modules."),
    GIVEN_QUANTITY("power_limit", POWER, "W", 0, 1e6, "Power that its current and voltage allow."),
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Current at that power and voltage."),
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "125 % of the output current."),
};

static const struct parameter microinverter_branch_inputs[] = {
    GIVEN_NUMBER("microinverters", 1, 200, "Microinverters on the branch."),
    GIVEN_QUANTITY("output_current", CURRENT, "A", 0.1, 50, "Marked output current of one."),
    MAYBE_EDITION,
    MAYBE_QUANTITY("ocpd", CURRENT, "A", 5, 400, "Rating of the branch's device, if chosen.")};
static const struct parameter microinverter_branch_results[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Current of the branch."),
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "125 % of it."),
    GIVEN_QUANTITY("needed_ocpd", CURRENT, "A", 0, 6000, "Smallest standard device."),
    MAYBE_NUMBER("most", 0, 1e4, "Most microinverters on the chosen device."),
};

static const struct parameter low_input[] = {
    GIVEN_QUANTITY("temperature", TEMPERATURE, "°C", -60, 60, "Lowest expected temperature.")};
static const struct parameter high_input[] = {
    GIVEN_QUANTITY("temperature", TEMPERATURE, "°C", -60, 100, "Highest air temperature."),
    MAYBE_QUANTITY("rise", TEMPERATURE_DIFFERENCE, "°C", 0, 60, "How much hotter the cells are.")};
static const struct parameter tracker_input[] = {
    GIVEN_NUMBER("input", 1, 24, "Which tracking input.")};
static const struct parameter volts_result[] = {
    GIVEN_QUANTITY("voltage", VOLTAGE, "V", 0, 1e5, "Voltage.")};
static const struct parameter amperes_result[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Current.")};
static const struct parameter watts_result[] = {
    GIVEN_QUANTITY("power", POWER, "W", 0, 1e7, "Power.")};
static const struct parameter count_result[] = {GIVEN_NUMBER("count", 0, 1e5, "How many.")};

const struct calculator string_calculators[] = {
    FREE_CALCULATOR(cold_voltage, cold_voltage_inputs, string_voltage_results,
                    "Open-circuit voltage of a string in the cold.", "NEC 690.7(A)"),
    FREE_CALCULATOR(hot_voltage, hot_voltage_inputs, string_voltage_results,
                    "Voltage of a string at maximum power in the heat.", "data sheet"),
    FREE_CALCULATOR(longest_string, longest_string_inputs, string_length_results,
                    "Most modules in series below a voltage.", "NEC 690.7(A)"),
    FREE_CALCULATOR(shortest_string, shortest_string_inputs, string_length_results,
                    "Fewest modules in series that reach a voltage.", "data sheet"),
    FREE_CALCULATOR(source_current, source_current_inputs, source_current_results,
                    "Largest current of strings in parallel.", "NEC 690.8(A)(1), (B)(1)"),
    FREE_CALCULATOR(parallel_fusing, parallel_fusing_inputs, parallel_fusing_results,
                    "Whether strings in parallel need a device each.", "NEC 690.9(A), (B)"),
    FREE_CALCULATOR(converter_string, converter_string_inputs, converter_string_results,
                    "A string of DC-to-DC converters against its maker's limits.",
                    "maker's instructions; NEC 690.8(A), 690.9(B)"),
    FREE_CALCULATOR(microinverter_branch, microinverter_branch_inputs, microinverter_branch_results,
                    "Current and device of a microinverter branch.",
                    "NEC 690.8(A), 705.28, 705.30"),
    PLAIN_METHOD(string, module_count, count_result, "Its modules.", "design"),
    PLAIN_METHOD(string, power, watts_result, "Sum of its modules' rated power.", "data sheet"),
    METHOD_CALCULATOR(string, cold_voltage, low_input, volts_result,
                      "Open-circuit voltage of its modules in series in the cold.", "NEC 690.7(A)"),
    METHOD_CALCULATOR(string, maximum_voltage, low_input, volts_result,
                      "Its largest voltage, with or without converters.", "NEC 690.7(A), (B)"),
    METHOD_CALCULATOR(string, hot_voltage, high_input, volts_result,
                      "Voltage of its modules at maximum power in the heat.", "data sheet"),
    PLAIN_METHOD(string, short_circuit_current, amperes_result,
                 "Short-circuit current of its strongest module.", "data sheet"),
    PLAIN_METHOD(string, source_current, amperes_result,
                 "Largest current: 125 % of short circuit, or its converters' output.",
                 "NEC 690.8(A)"),
    PLAIN_METHOD(string, operating_current, amperes_result,
                 "Current at maximum power, or power over the converters' string voltage.",
                 "data sheet"),
    PLAIN_METHOD(string, converter_count, count_result, "Its converters; 0 where it has none.",
                 "design"),
    METHOD_CALCULATOR(string, converter_voltage, low_input, volts_result,
                      "Largest voltage of modules on one converter in the cold.", "NEC 690.7(A)"),
    PLAIN_METHOD(string, converter_power, watts_result,
                 "Largest power of modules on one converter.", "data sheet"),
    PLAIN_METHOD(string, held_voltage, volts_result,
                 "Voltage at which its converters hold it: theirs, else the inverter's.",
                 "data sheet"),
    PLAIN_METHOD(string, backfeed_current, amperes_result,
                 "Largest current from all strings in parallel with it.", "NEC 690.9(A)"),
    METHOD_CALCULATOR(module_model, cold_voltage, low_input, volts_result,
                      "Open-circuit voltage of one module in the cold, by its coefficient or the "
                      "table.",
                      "NEC 690.7(A)"),
    PLAIN_METHOD(branch, count, count_result, "Its microinverters.", "design"),
    PLAIN_METHOD(branch, output_current, amperes_result,
                 "Marked output current of all its microinverters.", "NEC 690.8(A)"),
    PLAIN_METHOD(inverter, output_current, amperes_result, "Marked output current.",
                 "NEC 690.8(A)"),
    METHOD_CALCULATOR(inverter, input_current, tracker_input, amperes_result,
                      "Operating current at one tracking input.", "data sheet"),
    METHOD_CALCULATOR(inverter, short_circuit_current, tracker_input, amperes_result,
                      "Short-circuit current at one tracking input, without 125 %.", "data sheet"),
    METHOD_CALCULATOR(inverter, string_count, tracker_input, count_result,
                      "Strings on one tracking input.", "design"),
    PLAIN_METHOD(inverter, array_power, watts_result, "Rated power of all modules that feed it.",
                 "data sheet"),
    {.name = NULL},
};
