#include "unit_table.h"

/* Exact by definition: inch and pound (US Federal Register 24 FR 5348, 1 July 1959), standard
 * gravity (3rd CGPM, 1901), the zeros of the Celsius and Fahrenheit scales (273.15 K, 459.67 °F).
 * The SI units after the BIPM brochure, 9th ed. 2019. The year is the Julian one of 365.25 days. */
#define INCH        0.0254
#define FOOT        0.3048
#define POUND       0.45359237
#define POUND_FORCE (POUND * 9.80665)
#define CELSIUS     273.15
#define FAHRENHEIT  (459.67 * 5 / 9)
#define DEGREE      (3.14159265358979323846 / 180)

/* Powers of length, mass, time, current, temperature, angle. */
#define DIMENSION(l, m, t, i, k, a)                                                                \
    {                                                                                              \
        .power = { l, m, t, i, k, a }                                                              \
    }
#define PURE           DIMENSION(0, 0, 0, 0, 0, 0)
#define LENGTH_        DIMENSION(1, 0, 0, 0, 0, 0)
#define AREA_          DIMENSION(2, 0, 0, 0, 0, 0)
#define VOLUME_        DIMENSION(3, 0, 0, 0, 0, 0)
#define SECOND_MOMENT_ DIMENSION(4, 0, 0, 0, 0, 0)
#define MASS_          DIMENSION(0, 1, 0, 0, 0, 0)
#define TIME_          DIMENSION(0, 0, 1, 0, 0, 0)
#define CURRENT_       DIMENSION(0, 0, 0, 1, 0, 0)
#define POINT                                                                                      \
    {                                                                                              \
        .power = {[POWER_TEMPERATURE] = 1}, .is_point = true                                       \
    }
#define DIFFERENCE       DIMENSION(0, 0, 0, 0, 1, 0)
#define ANGLE_           DIMENSION(0, 0, 0, 0, 0, 1)
#define SPEED_           DIMENSION(1, 0, -1, 0, 0, 0)
#define FORCE_           DIMENSION(1, 1, -2, 0, 0, 0)
#define LINE_LOAD_       DIMENSION(0, 1, -2, 0, 0, 0)
#define PRESSURE_        DIMENSION(-1, 1, -2, 0, 0, 0)
#define WEIGHT_DENSITY_  DIMENSION(-2, 1, -2, 0, 0, 0)
#define ENERGY_          DIMENSION(2, 1, -2, 0, 0, 0) /* a moment too */
#define POWER_           DIMENSION(2, 1, -3, 0, 0, 0)
#define VOLTAGE_         DIMENSION(2, 1, -3, -1, 0, 0)
#define RESISTANCE_      DIMENSION(2, 1, -3, -2, 0, 0)
#define LINE_RESISTANCE_ DIMENSION(1, 1, -3, -2, 0, 0)
#define CHARGE_          DIMENSION(0, 0, 1, 1, 0, 0)
#define FREQUENCY_       DIMENSION(0, 0, -1, 0, 0, 0)
#define PER_TEMPERATURE_ DIMENSION(0, 0, 0, 0, -1, 0)
#define VOLTAGE_PER_T    DIMENSION(2, 1, -3, -1, -1, 0)
#define CURRENT_PER_T    DIMENSION(0, 0, 0, 1, -1, 0)

#define ALSO(...) ((const char *const[]){__VA_ARGS__, NULL})

/* Where the rows of each dimension begin, in this order. */
enum {
    FIRST_PURE,
    FIRST_LENGTH = 1,
    FIRST_AREA = 10,
    FIRST_VOLUME = 15,
    FIRST_SECOND_MOMENT = 18,
    FIRST_MASS = 19,
    FIRST_TIME = 24,
    FIRST_CURRENT = 29,
    FIRST_POINT = 32,
    FIRST_DIFFERENCE = 35,
    FIRST_ANGLE = 38,
    FIRST_SPEED = 40,
    FIRST_FORCE = 44,
    FIRST_LINE_LOAD = 48,
    FIRST_PRESSURE = 52,
    FIRST_WEIGHT_DENSITY = 58,
    FIRST_ENERGY = 60,
    FIRST_VOLTAGE = 67,
    FIRST_POWER = 70,
    FIRST_RESISTANCE = 75,
    FIRST_LINE_RESISTANCE = 79,
    FIRST_CHARGE = 81,
    FIRST_FREQUENCY = 82,
    FIRST_PER_TEMPERATURE = 83,
    FIRST_VOLTAGE_PER_T = 88,
    FIRST_CURRENT_PER_T = 92,
};

/* Sought one after the other: those that most facts have stand first. */
const struct unit_group unit_groups[] = {
    {CURRENT_, FIRST_CURRENT},
    {LENGTH_, FIRST_LENGTH},
    {VOLTAGE_, FIRST_VOLTAGE},
    {POWER_, FIRST_POWER},
    {POINT, FIRST_POINT},
    {PRESSURE_, FIRST_PRESSURE},
    {FORCE_, FIRST_FORCE},
    {ANGLE_, FIRST_ANGLE},
    {PER_TEMPERATURE_, FIRST_PER_TEMPERATURE},
    {MASS_, FIRST_MASS},
    {AREA_, FIRST_AREA},
    {PURE, FIRST_PURE},
    {VOLUME_, FIRST_VOLUME},
    {SECOND_MOMENT_, FIRST_SECOND_MOMENT},
    {TIME_, FIRST_TIME},
    {DIFFERENCE, FIRST_DIFFERENCE},
    {SPEED_, FIRST_SPEED},
    {LINE_LOAD_, FIRST_LINE_LOAD},
    {WEIGHT_DENSITY_, FIRST_WEIGHT_DENSITY},
    {ENERGY_, FIRST_ENERGY},
    {RESISTANCE_, FIRST_RESISTANCE},
    {LINE_RESISTANCE_, FIRST_LINE_RESISTANCE},
    {CHARGE_, FIRST_CHARGE},
    {FREQUENCY_, FIRST_FREQUENCY},
    {VOLTAGE_PER_T, FIRST_VOLTAGE_PER_T},
    {CURRENT_PER_T, FIRST_CURRENT_PER_T},
};
const size_t unit_group_count = sizeof unit_groups / sizeof unit_groups[0];

/* Name, dimension, factor, offset, other spellings, as GNU units names it. A spelling that could be
 * read two ways is left out. Areas and the like are also read as in2, in^2 (see unit_reading.c). */
const struct unit unit_table[] = {
    [FIRST_PURE] = {"%", PURE, 0.01, 0, ALSO("percent", "pct"), "percent"},
    [FIRST_LENGTH] = {"in", LENGTH_, INCH, 0, ALSO("\"", "in.", "inch", "inches"), "in"},
    {"ft", LENGTH_, FOOT, 0, ALSO("'", "ft.", "foot", "feet"), "ft"},
    {"yd", LENGTH_, 3 * FOOT, 0, ALSO("yard", "yards"), "yd"},
    {"mi", LENGTH_, 5280 * FOOT, 0, ALSO("mile", "miles"), "mile"},
    {"mil", LENGTH_, INCH / 1000, 0, ALSO("mils"), "mil"},
    {"mm", LENGTH_, 1e-3, 0, ALSO("millimeter", "millimeters", "millimetre", "millimetres"), "mm"},
    {"cm", LENGTH_, 1e-2, 0, ALSO("centimeter", "centimeters", "centimetre", "centimetres"), "cm"},
    {"m", LENGTH_, 1, 0, ALSO("meter", "meters", "metre", "metres"), "m"},
    {"km", LENGTH_, 1e3, 0, ALSO("kilometer", "kilometers", "kilometre", "kilometres"), "km"},
    [FIRST_AREA] = {"ft²", AREA_, FOOT *FOOT, 0,
                    ALSO("sq ft", "sqft", "sq. ft", "sq. ft.", "sf", "square foot", "square feet"),
                    "ft^2"},
    {"in²", AREA_, INCH *INCH, 0,
     ALSO("sq in", "sqin", "sq. in", "sq. in.", "square inch", "square inches"), "in^2"},
    {"m²", AREA_, 1, 0,
     ALSO("sq m", "square meter", "square meters", "square metre", "square metres"), "m^2"},
    {"cm²", AREA_, 1e-4, 0, ALSO("sq cm"), "cm^2"},
    {"mm²", AREA_, 1e-6, 0, ALSO("sq mm"), "mm^2"},
    [FIRST_VOLUME] = {"in³", VOLUME_, INCH *INCH *INCH, 0,
                      ALSO("cu in", "cubic inch", "cubic inches"), "in^3"},
    {"ft³", VOLUME_, FOOT *FOOT *FOOT, 0, ALSO("cu ft", "cubic foot", "cubic feet"), "ft^3"},
    {"m³", VOLUME_, 1, 0, ALSO("cubic meter", "cubic meters"), "m^3"},
    [FIRST_SECOND_MOMENT] = {"in⁴", SECOND_MOMENT_, INCH *INCH *INCH *INCH, 0, NULL, "in^4"},
    [FIRST_MASS] = {"lb", MASS_, POUND, 0, ALSO("lbs", "lb.", "lbs.", "lbm", "pound", "pounds"),
                    "lb"},
    {"oz", MASS_, POUND / 16, 0, ALSO("ounce", "ounces"), "oz"},
    {"kg", MASS_, 1, 0, ALSO("kilogram", "kilograms"), "kg"},
    {"g", MASS_, 1e-3, 0, ALSO("gram", "grams"), "g"},
    {"ton", MASS_, 2000 * POUND, 0, ALSO("tons", "short ton", "short tons"), "shortton"},
    [FIRST_TIME] = {"s", TIME_, 1, 0, ALSO("sec", "second", "seconds"), "s"},
    {"min", TIME_, 60, 0, ALSO("minute", "minutes"), "min"},
    {"h", TIME_, 3600, 0, ALSO("hr", "hrs", "hour", "hours"), "hour"},
    {"day", TIME_, 86400, 0, ALSO("days"), "day"},
    {"year", TIME_, 31557600, 0, ALSO("years", "yr"), "julianyear"},
    [FIRST_CURRENT] = {"A", CURRENT_, 1, 0, ALSO("amp", "amps", "Amp", "Amps", "ampere", "amperes"),
                       "A"},
    {"mA", CURRENT_, 1e-3, 0, ALSO("milliamp", "milliamps"), "mA"},
    {"kA", CURRENT_, 1e3, 0, NULL, "kA"},
    [FIRST_POINT] = {"°C", POINT, 1, CELSIUS,
                     ALSO("C", "degC", "deg C", "degrees C", "° C", "degrees Celsius", "Celsius",
                          "celsius"),
                     "tempC"},
    {"°F", POINT, 5.0 / 9, FAHRENHEIT,
     ALSO("F", "degF", "deg F", "degrees F", "° F", "degrees Fahrenheit", "Fahrenheit",
          "fahrenheit"),
     "tempF"},
    {"K", POINT, 1, 0, ALSO("kelvin"), "tempK"},
    [FIRST_DIFFERENCE] = {"°C", DIFFERENCE, 1, 0,
                          ALSO("Δ°C", "C", "degC", "deg C", "degrees C", "° C", "degrees Celsius",
                               "Celsius", "celsius"),
                          "degC"},
    {"°F", DIFFERENCE, 5.0 / 9, 0,
     ALSO("Δ°F", "F", "degF", "deg F", "degrees F", "° F", "degrees Fahrenheit", "Fahrenheit",
          "fahrenheit"),
     "degF"},
    {"K", DIFFERENCE, 1, 0, ALSO("ΔK", "kelvin"), "K"},
    [FIRST_ANGLE] = {"°", ANGLE_, DEGREE, 0, ALSO("deg", "degree", "degrees"), "degree"},
    {"rad", ANGLE_, 1, 0, ALSO("radian", "radians"), "radian"},
    [FIRST_SPEED] = {"mph", SPEED_, 5280 * FOOT / 3600, 0, ALSO("MPH", "mi/h"), "mph"},
    {"ft/s", SPEED_, FOOT, 0, ALSO("fps"), "ft/s"},
    {"m/s", SPEED_, 1, 0, NULL, "m/s"},
    {"km/h", SPEED_, 1e3 / 3600, 0, ALSO("kph", "kmh"), "km/hour"},
    [FIRST_FORCE] = {"lbf", FORCE_, POUND_FORCE, 0,
                     ALSO("pound-force", "pounds-force", "pounds force"), "lbf"},
    {"kip", FORCE_, 1000 * POUND_FORCE, 0, ALSO("kips"), "kip"},
    {"N", FORCE_, 1, 0, ALSO("newton", "newtons"), "N"},
    {"kN", FORCE_, 1e3, 0, NULL, "kN"},
    [FIRST_LINE_LOAD] = {"lbf/ft", LINE_LOAD_, POUND_FORCE / FOOT, 0, ALSO("plf", "PLF"), "lbf/ft"},
    {"lbf/in", LINE_LOAD_, POUND_FORCE / INCH, 0, ALSO("pli"), "lbf/in"},
    {"N/m", LINE_LOAD_, 1, 0, NULL, "N/m"},
    {"kN/m", LINE_LOAD_, 1e3, 0, NULL, "kN/m"},
    [FIRST_PRESSURE] = {"psf", PRESSURE_, POUND_FORCE / FOOT / FOOT, 0, ALSO("PSF", "lbf/ft²"),
                        "lbf/ft^2"},
    {"psi", PRESSURE_, POUND_FORCE / INCH / INCH, 0, ALSO("PSI", "lbf/in²"), "psi"},
    {"ksi", PRESSURE_, 1000 * POUND_FORCE / INCH / INCH, 0, ALSO("KSI", "kip/in²"), "kip/in^2"},
    {"Pa", PRESSURE_, 1, 0, ALSO("pascal", "pascals"), "Pa"},
    {"kPa", PRESSURE_, 1e3, 0, NULL, "kPa"},
    {"MPa", PRESSURE_, 1e6, 0, NULL, "MPa"},
    [FIRST_WEIGHT_DENSITY] = {"pcf", WEIGHT_DENSITY_, POUND_FORCE / FOOT / FOOT / FOOT, 0,
                              ALSO("PCF", "lbf/ft³"), "lbf/ft^3"},
    {"kN/m³", WEIGHT_DENSITY_, 1e3, 0, NULL, "kN/m^3"},
    [FIRST_ENERGY] = {"lbf·ft", ENERGY_, POUND_FORCE *FOOT, 0, ALSO("lbf-ft", "ft-lbf", "ft·lbf"),
                      "lbf ft"},
    {"lbf·in", ENERGY_, POUND_FORCE *INCH, 0, ALSO("lbf-in", "in-lbf", "in·lbf"), "lbf in"},
    {"N·m", ENERGY_, 1, 0, ALSO("Nm"), "N m"},
    /* Energy shares the moment's dimension; a moment is the more usual of the two. */
    {"Wh", ENERGY_, 3600, 0, ALSO("watt-hour", "watt-hours"), "W hour"},
    {"kWh", ENERGY_, 3.6e6, 0, ALSO("kilowatt-hour", "kilowatt-hours"), "kW hour"},
    {"J", ENERGY_, 1, 0, ALSO("joule", "joules"), "J"},
    {"MJ", ENERGY_, 1e6, 0, NULL, "MJ"},
    [FIRST_VOLTAGE] = {"V", VOLTAGE_, 1, 0, ALSO("volt", "volts", "Volt", "Volts"), "V"},
    {"mV", VOLTAGE_, 1e-3, 0, NULL, "mV"},
    {"kV", VOLTAGE_, 1e3, 0, NULL, "kV"},
    /* Apparent power has the dimension of power. */
    [FIRST_POWER] = {"W", POWER_, 1, 0, ALSO("watt", "watts", "Watt", "Watts"), "W"},
    {"kW", POWER_, 1e3, 0, ALSO("kilowatt", "kilowatts"), "kW"},
    {"MW", POWER_, 1e6, 0, ALSO("megawatt", "megawatts"), "MW"},
    {"VA", POWER_, 1, 0, NULL, "V A"},
    {"kVA", POWER_, 1e3, 0, NULL, "kV A"},
    [FIRST_RESISTANCE] = {"Ω", RESISTANCE_, 1, 0, ALSO("ohm", "ohms", "Ohm", "Ohms"), "ohm"},
    {"mΩ", RESISTANCE_, 1e-3, 0, ALSO("mohm"), "mohm"},
    {"kΩ", RESISTANCE_, 1e3, 0, ALSO("kohm"), "kohm"},
    {"MΩ", RESISTANCE_, 1e6, 0, ALSO("Mohm", "megohm", "megohms"), "Mohm"},
    [FIRST_LINE_RESISTANCE] = {"Ω/kft", LINE_RESISTANCE_, 1 / (1000 * FOOT), 0,
                               ALSO("ohm/kft", "ohms/kft", "Ω/1000 ft", "ohm/1000 ft",
                                    "ohms/1000 ft"),
                               "ohm/(1000 ft)"},
    {"Ω/km", LINE_RESISTANCE_, 1e-3, 0, ALSO("ohm/km", "ohms/km"), "ohm/km"},
    [FIRST_CHARGE] = {"Ah", CHARGE_, 3600, 0, ALSO("A·h", "amp-hour", "amp-hours"), "A hour"},
    [FIRST_FREQUENCY] = {"Hz", FREQUENCY_, 1, 0, ALSO("hz", "hertz"), "Hz"},
    [FIRST_PER_TEMPERATURE] = {"%/°C", PER_TEMPERATURE_, 0.01, 0, ALSO("%/C", "%/degC", "pct/°C"),
                               "percent/degC"},
    {"%/K", PER_TEMPERATURE_, 0.01, 0, NULL, "percent/K"},
    {"%/°F", PER_TEMPERATURE_, 0.01 * 9 / 5, 0, ALSO("%/F", "%/degF"), "percent/degF"},
    {"1/°C", PER_TEMPERATURE_, 1, 0, ALSO("/°C"), "1/degC"},
    {"1/K", PER_TEMPERATURE_, 1, 0, ALSO("/K"), "1/K"},
    [FIRST_VOLTAGE_PER_T] = {"V/°C", VOLTAGE_PER_T, 1, 0, ALSO("V/C", "V/degC"), "V/degC"},
    {"mV/°C", VOLTAGE_PER_T, 1e-3, 0, ALSO("mV/C", "mV/degC"), "mV/degC"},
    {"V/K", VOLTAGE_PER_T, 1, 0, NULL, "V/K"},
    {"mV/K", VOLTAGE_PER_T, 1e-3, 0, NULL, "mV/K"},
    [FIRST_CURRENT_PER_T] = {"A/°C", CURRENT_PER_T, 1, 0, ALSO("A/C", "A/degC"), "A/degC"},
    {"mA/°C", CURRENT_PER_T, 1e-3, 0, ALSO("mA/C", "mA/degC"), "mA/degC"},
    {"A/K", CURRENT_PER_T, 1, 0, NULL, "A/K"},
    {"mA/K", CURRENT_PER_T, 1e-3, 0, NULL, "mA/K"},
};

const size_t unit_table_count = sizeof unit_table / sizeof unit_table[0];
