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

/* Name, dimension, factor, offset, other spellings, as GNU units names it. A spelling that could be
 * read two ways is left out. Areas and the like are also read as in2, in^2 (see unit_reading.c). */
const struct unit unit_table[] = {
    {"%", PURE, 0.01, 0, ALSO("percent", "pct"), "percent"},
    {"in", LENGTH_, INCH, 0, ALSO("\"", "in.", "inch", "inches"), "in"},
    {"ft", LENGTH_, FOOT, 0, ALSO("'", "ft.", "foot", "feet"), "ft"},
    {"yd", LENGTH_, 3 * FOOT, 0, ALSO("yard", "yards"), "yd"},
    {"mi", LENGTH_, 5280 * FOOT, 0, ALSO("mile", "miles"), "mile"},
    {"mil", LENGTH_, INCH / 1000, 0, ALSO("mils"), "mil"},
    {"mm", LENGTH_, 1e-3, 0, ALSO("millimeter", "millimeters", "millimetre", "millimetres"), "mm"},
    {"cm", LENGTH_, 1e-2, 0, ALSO("centimeter", "centimeters", "centimetre", "centimetres"), "cm"},
    {"m", LENGTH_, 1, 0, ALSO("meter", "meters", "metre", "metres"), "m"},
    {"km", LENGTH_, 1e3, 0, ALSO("kilometer", "kilometers", "kilometre", "kilometres"), "km"},
    {"ft²", AREA_, FOOT *FOOT, 0,
     ALSO("sq ft", "sqft", "sq. ft", "sq. ft.", "sf", "square foot", "square feet"), "ft^2"},
    {"in²", AREA_, INCH *INCH, 0,
     ALSO("sq in", "sqin", "sq. in", "sq. in.", "square inch", "square inches"), "in^2"},
    {"m²", AREA_, 1, 0,
     ALSO("sq m", "square meter", "square meters", "square metre", "square metres"), "m^2"},
    {"cm²", AREA_, 1e-4, 0, ALSO("sq cm"), "cm^2"},
    {"mm²", AREA_, 1e-6, 0, ALSO("sq mm"), "mm^2"},
    {"in³", VOLUME_, INCH *INCH *INCH, 0, ALSO("cu in", "cubic inch", "cubic inches"), "in^3"},
    {"ft³", VOLUME_, FOOT *FOOT *FOOT, 0, ALSO("cu ft", "cubic foot", "cubic feet"), "ft^3"},
    {"m³", VOLUME_, 1, 0, ALSO("cubic meter", "cubic meters"), "m^3"},
    {"in⁴", SECOND_MOMENT_, INCH *INCH *INCH *INCH, 0, NULL, "in^4"},
    {"lb", MASS_, POUND, 0, ALSO("lbs", "lb.", "lbs.", "lbm", "pound", "pounds"), "lb"},
    {"oz", MASS_, POUND / 16, 0, ALSO("ounce", "ounces"), "oz"},
    {"kg", MASS_, 1, 0, ALSO("kilogram", "kilograms"), "kg"},
    {"g", MASS_, 1e-3, 0, ALSO("gram", "grams"), "g"},
    {"ton", MASS_, 2000 * POUND, 0, ALSO("tons", "short ton", "short tons"), "shortton"},
    {"s", TIME_, 1, 0, ALSO("sec", "second", "seconds"), "s"},
    {"min", TIME_, 60, 0, ALSO("minute", "minutes"), "min"},
    {"h", TIME_, 3600, 0, ALSO("hr", "hrs", "hour", "hours"), "hour"},
    {"day", TIME_, 86400, 0, ALSO("days"), "day"},
    {"year", TIME_, 31557600, 0, ALSO("years", "yr"), "julianyear"},
    {"A", CURRENT_, 1, 0, ALSO("amp", "amps", "Amp", "Amps", "ampere", "amperes"), "A"},
    {"mA", CURRENT_, 1e-3, 0, ALSO("milliamp", "milliamps"), "mA"},
    {"kA", CURRENT_, 1e3, 0, NULL, "kA"},
    {"°C", POINT, 1, CELSIUS, ALSO("C", "degC", "deg C", "degrees C", "° C", "degrees Celsius"),
     "tempC"},
    {"°F", POINT, 5.0 / 9, FAHRENHEIT,
     ALSO("F", "degF", "deg F", "degrees F", "° F", "degrees Fahrenheit"), "tempF"},
    {"K", POINT, 1, 0, ALSO("kelvin"), "tempK"},
    {"°C", DIFFERENCE, 1, 0,
     ALSO("Δ°C", "C", "degC", "deg C", "degrees C", "° C", "degrees Celsius"), "degC"},
    {"°F", DIFFERENCE, 5.0 / 9, 0,
     ALSO("Δ°F", "F", "degF", "deg F", "degrees F", "° F", "degrees Fahrenheit"), "degF"},
    {"K", DIFFERENCE, 1, 0, ALSO("ΔK", "kelvin"), "K"},
    {"°", ANGLE_, DEGREE, 0, ALSO("deg", "degree", "degrees"), "degree"},
    {"rad", ANGLE_, 1, 0, ALSO("radian", "radians"), "radian"},
    {"mph", SPEED_, 5280 * FOOT / 3600, 0, ALSO("MPH", "mi/h"), "mph"},
    {"ft/s", SPEED_, FOOT, 0, ALSO("fps"), "ft/s"},
    {"m/s", SPEED_, 1, 0, NULL, "m/s"},
    {"km/h", SPEED_, 1e3 / 3600, 0, ALSO("kph", "kmh"), "km/hour"},
    {"lbf", FORCE_, POUND_FORCE, 0, ALSO("pound-force", "pounds-force", "pounds force"), "lbf"},
    {"kip", FORCE_, 1000 * POUND_FORCE, 0, ALSO("kips"), "kip"},
    {"N", FORCE_, 1, 0, ALSO("newton", "newtons"), "N"},
    {"kN", FORCE_, 1e3, 0, NULL, "kN"},
    {"lbf/ft", LINE_LOAD_, POUND_FORCE / FOOT, 0, ALSO("plf", "PLF"), "lbf/ft"},
    {"lbf/in", LINE_LOAD_, POUND_FORCE / INCH, 0, ALSO("pli"), "lbf/in"},
    {"N/m", LINE_LOAD_, 1, 0, NULL, "N/m"},
    {"kN/m", LINE_LOAD_, 1e3, 0, NULL, "kN/m"},
    {"psf", PRESSURE_, POUND_FORCE / FOOT / FOOT, 0, ALSO("PSF", "lbf/ft²"), "lbf/ft^2"},
    {"psi", PRESSURE_, POUND_FORCE / INCH / INCH, 0, ALSO("PSI", "lbf/in²"), "psi"},
    {"ksi", PRESSURE_, 1000 * POUND_FORCE / INCH / INCH, 0, ALSO("KSI", "kip/in²"), "kip/in^2"},
    {"Pa", PRESSURE_, 1, 0, ALSO("pascal", "pascals"), "Pa"},
    {"kPa", PRESSURE_, 1e3, 0, NULL, "kPa"},
    {"MPa", PRESSURE_, 1e6, 0, NULL, "MPa"},
    {"pcf", WEIGHT_DENSITY_, POUND_FORCE / FOOT / FOOT / FOOT, 0, ALSO("PCF", "lbf/ft³"),
     "lbf/ft^3"},
    {"kN/m³", WEIGHT_DENSITY_, 1e3, 0, NULL, "kN/m^3"},
    {"lbf·ft", ENERGY_, POUND_FORCE *FOOT, 0, ALSO("lbf-ft", "ft-lbf", "ft·lbf"), "lbf ft"},
    {"lbf·in", ENERGY_, POUND_FORCE *INCH, 0, ALSO("lbf-in", "in-lbf", "in·lbf"), "lbf in"},
    {"N·m", ENERGY_, 1, 0, ALSO("Nm"), "N m"},
    /* Energy shares the moment's dimension; a moment is the more usual of the two. */
    {"Wh", ENERGY_, 3600, 0, ALSO("watt-hour", "watt-hours"), "W hour"},
    {"kWh", ENERGY_, 3.6e6, 0, ALSO("kilowatt-hour", "kilowatt-hours"), "kW hour"},
    {"J", ENERGY_, 1, 0, ALSO("joule", "joules"), "J"},
    {"MJ", ENERGY_, 1e6, 0, NULL, "MJ"},
    {"V", VOLTAGE_, 1, 0, ALSO("volt", "volts", "Volt", "Volts"), "V"},
    {"mV", VOLTAGE_, 1e-3, 0, NULL, "mV"},
    {"kV", VOLTAGE_, 1e3, 0, NULL, "kV"},
    /* Apparent power has the dimension of power. */
    {"W", POWER_, 1, 0, ALSO("watt", "watts", "Watt", "Watts"), "W"},
    {"kW", POWER_, 1e3, 0, ALSO("kilowatt", "kilowatts"), "kW"},
    {"MW", POWER_, 1e6, 0, ALSO("megawatt", "megawatts"), "MW"},
    {"VA", POWER_, 1, 0, NULL, "V A"},
    {"kVA", POWER_, 1e3, 0, NULL, "kV A"},
    {"Ω", RESISTANCE_, 1, 0, ALSO("ohm", "ohms", "Ohm", "Ohms"), "ohm"},
    {"mΩ", RESISTANCE_, 1e-3, 0, ALSO("mohm"), "mohm"},
    {"kΩ", RESISTANCE_, 1e3, 0, ALSO("kohm"), "kohm"},
    {"MΩ", RESISTANCE_, 1e6, 0, ALSO("Mohm", "megohm", "megohms"), "Mohm"},
    {"Ω/kft", LINE_RESISTANCE_, 1 / (1000 * FOOT), 0,
     ALSO("ohm/kft", "ohms/kft", "Ω/1000 ft", "ohm/1000 ft", "ohms/1000 ft"), "ohm/(1000 ft)"},
    {"Ω/km", LINE_RESISTANCE_, 1e-3, 0, ALSO("ohm/km", "ohms/km"), "ohm/km"},
    {"Ah", CHARGE_, 3600, 0, ALSO("A·h", "amp-hour", "amp-hours"), "A hour"},
    {"Hz", FREQUENCY_, 1, 0, ALSO("hz", "hertz"), "Hz"},
    {"%/°C", PER_TEMPERATURE_, 0.01, 0, ALSO("%/C", "%/degC", "pct/°C"), "percent/degC"},
    {"%/K", PER_TEMPERATURE_, 0.01, 0, NULL, "percent/K"},
    {"%/°F", PER_TEMPERATURE_, 0.01 * 9 / 5, 0, ALSO("%/F", "%/degF"), "percent/degF"},
    {"1/°C", PER_TEMPERATURE_, 1, 0, ALSO("/°C"), "1/degC"},
    {"1/K", PER_TEMPERATURE_, 1, 0, ALSO("/K"), "1/K"},
    {"V/°C", VOLTAGE_PER_T, 1, 0, ALSO("V/C", "V/degC"), "V/degC"},
    {"mV/°C", VOLTAGE_PER_T, 1e-3, 0, ALSO("mV/C", "mV/degC"), "mV/degC"},
    {"V/K", VOLTAGE_PER_T, 1, 0, NULL, "V/K"},
    {"mV/K", VOLTAGE_PER_T, 1e-3, 0, NULL, "mV/K"},
    {"A/°C", CURRENT_PER_T, 1, 0, ALSO("A/C", "A/degC"), "A/degC"},
    {"mA/°C", CURRENT_PER_T, 1e-3, 0, ALSO("mA/C", "mA/degC"), "mA/degC"},
    {"A/K", CURRENT_PER_T, 1, 0, NULL, "A/K"},
    {"mA/K", CURRENT_PER_T, 1e-3, 0, NULL, "mA/K"},
};

const size_t unit_table_count = sizeof unit_table / sizeof unit_table[0];
