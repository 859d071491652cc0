/* The electrical calculators at their limits: boundaries, refusals, and what rises with what. */
#include "electrical_call.h"

/* Each refusal names the input, its unit and its range. */
static void check_refusal(struct call *call, enum stop_kind kind, const char *input,
                          const char *unit, const char *low, const char *high)
{
    const struct stop *stop = &call->working.stop;
    CHECK(kind == STOP_WRONG && stop->why != NULL, "refused as a mistake of the caller");
    CHECK_TEXT(stop->input, input, "the input is named");
    bool is_told = stop->why != NULL && strstr(stop->why, input) != NULL &&
                   strstr(stop->why, unit) != NULL && strstr(stop->why, low) != NULL &&
                   strstr(stop->why, high) != NULL;
    if (!CHECK(is_told, "the sentence tells input, unit and range"))
        fprintf(stderr, "    %s\n", stop->why != NULL ? stop->why : "(nothing)");
}

static void test_refusals(struct call *call)
{
    check_refusal(call, call_refused(call, "ocpd_up", "current", "0 A", NULL), "current", "A",
                  "0.01", "6000");
    check_refusal(call, call_refused(call, "ocpd_up", "current", "-3 A", NULL), "current", "A",
                  "0.01", "6000");
    check_refusal(call,
                  call_refused(call, "ampacity", "size", "10 AWG", "material", "copper",
                               "insulation", "90 °C", "ambient", "120 °C", "conductors", "3", NULL),
                  "ambient", "°C", "-60", "85");
    check_refusal(call,
                  call_refused(call, "ampacity", "size", "2000 kcmil", "material", "copper",
                               "insulation", "90 °C", "ambient", "30 °C", "conductors", "3", NULL),
                  "size", "kcmil", "14 AWG", "750 kcmil");
    check_refusal(call,
                  call_refused(call, "ampacity", "size", "10 AWG", "material", "copper",
                               "insulation", "40 °C", "ambient", "30 °C", "conductors", "3", NULL),
                  "insulation", "°C", "60", "150");
    check_refusal(call,
                  call_refused(call, "ampacity", "size", "10 AWG", "material", "copper",
                               "insulation", "90 °C", "ambient", "30 °C", "conductors", "0", NULL),
                  "conductors", "", "1", "200");
    check_refusal(call,
                  call_refused(call, "cold_voltage", "modules", "0", "open_circuit_voltage", "40 V",
                               "temperature", "-5 °C", "coefficient", "-0.3 %/°C", NULL),
                  "modules", "", "1", "200");
    check_refusal(call,
                  call_refused(call, "dc_voltage_drop", "current", "8 A", "length", "-5 ft", "size",
                               "10 AWG", "material", "copper", NULL),
                  "length", "ft", "0", "20000");
    check_refusal(
        call,
        call_refused(call, "dwelling_conductor", "rating", "500 A", "material", "copper", NULL),
        "rating", "A", "100", "400");
    check_refusal(call,
                  call_refused(call, "egc_size", "ocpd", "7000 A", "material", "copper", NULL),
                  "ocpd", "A", "1", "6000");
    CHECK(call_refused(call, "ocpd_up", "current", "8 A", "edition", "2019", NULL) == STOP_WRONG,
          "no edition but the three");
    CHECK(call_refused(call, "ampacity", "size", "10 AWG", NULL) == STOP_WRONG, "inputs are asked");
    CHECK_TEXT(call->working.stop.input, "material", "by name");
    CHECK(call_refused(call, "cold_voltage", "modules", "10", "open_circuit_voltage", "40 V",
                       "temperature", "-5 °C", NULL) == STOP_WRONG,
          "neither coefficient nor technology");
    CHECK(call_refused(call, "hot_voltage", "modules", "10", "power_voltage", "40 V", "temperature",
                       "40 °C", NULL) == STOP_WRONG,
          "no coefficient");
}

/* Inside an input's range and still outside the table: a person must judge. */
static void test_beyond(struct call *call)
{
    CHECK(call_refused(call, "ampacity", "size", "10 AWG", "material", "copper", "insulation",
                       "75 °C", "ambient", "72 °C", "conductors", "3", NULL) == STOP_BEYOND,
          "75 °C insulation ends at 70 °C");
    CHECK(call_refused(call, "ampacity", "size", "10 AWG", "material", "copper", "insulation",
                       "90 °C", "ambient", "60 °C", "conductors", "3", "height", "0.5 in",
                       "edition", "2020", NULL) == STOP_BEYOND,
          "93 °C with the rooftop adder");
    CHECK(strstr(call->working.stop.why, "93 °C") != NULL, "and the figure is told");
    CHECK(call_refused(call, "ampacity", "size", "18 AWG", "material", "copper", "insulation",
                       "90 °C", "ambient", "30 °C", "conductors", "3", NULL) == STOP_BEYOND,
          "18 AWG is no row at hand");
    CHECK(call_refused(call, "cold_voltage", "modules", "10", "open_circuit_voltage", "40 V",
                       "temperature", "-41 °C", "technology", "monocrystalline silicon",
                       NULL) == STOP_BEYOND,
          "the cold table ends at -40 °C");
    CHECK(call_refused(call, "cold_voltage", "modules", "10", "open_circuit_voltage", "40 V",
                       "temperature", "-5 °C", "technology", "thin film", NULL) == STOP_BEYOND,
          "the cold table is for crystalline silicon");
    CHECK(call_refused(call, "conduit_fill", "raceway", "EMT", "insulation", "PV wire", "size",
                       "10 AWG", "count", "4", NULL) == STOP_BEYOND,
          "PV wire has no row");
    CHECK(call_refused(call, "smallest_conductor", "current", "900 A", "material", "copper",
                       "insulation", "90 °C", "ambient", "30 °C", "conductors", "3", "terminal",
                       "75 °C", NULL) == STOP_BEYOND,
          "no conductor at hand carries 900 A");
    CHECK(call_refused(call, "longest_string", "limit", "50 V", "open_circuit_voltage", "60 V",
                       "temperature", "20 °C", "coefficient", "0 %/°C", NULL) == STOP_BEYOND,
          "one module is over the limit");
    CHECK(call_it(call, "longest_string", "limit", "50 V", "open_circuit_voltage", "50 V",
                  "temperature", "20 °C", "coefficient", "0 %/°C", NULL),
          "a refusal leaves nothing behind");
}

static void test_the_desk_example(struct call *call)
{
    CHECK(call_it(call, "ampacity", "size", "10 AWG", "material", "copper", "insulation", "90 °C",
                  "ambient", "52 °C", "conductors", "6", NULL),
          "10 AWG at 52 °C among six");
    CHECK_NEAR(number_of(call, "ampacity"), 40 * 0.76 * 0.8, 1e-9, "24.32 A");
    CHECK(has_step(call, "90 °C column: 40 A") && has_step(call, "factor 0.76") &&
              has_step(call, "factor 0.8") && has_step(call, "= 24.32 A"),
          "like a hand calculation");
    bool has_source = false;
    for (size_t i = 0; i < call->working.step_count; i++)
        has_source |= call->working.steps[i].source != NULL &&
                      strstr(call->working.steps[i].source, "310.16") != NULL;
    CHECK(has_source, "with its source");
}

static void test_boundaries(struct call *call)
{
    /* 1.5625, not 1.56: 21.67 A, not 21.64 A. */
    CHECK(call_it(call, "source_current", "strings", "1", "short_circuit_current", "13.87 A", NULL),
          "13.87 A");
    CHECK_NEAR(number_of(call, "needed"), 21.671875, 1e-9, "156.25 %");
    /* 12.81 A: 20.0156 A by 1.5625 is over 20 A, by 1.56 it would pass. */
    CHECK(call_it(call, "source_current", "strings", "1", "short_circuit_current", "12.81 A", NULL),
          "12.81 A");
    CHECK(1.56 * 12.81 < 20 && number_of(call, "needed") > 20, "the difference flips a size");
    CHECK(call_it(call, "ocpd_up", "current", "40.104 A", NULL), "40.104 A");
    CHECK_NEAR(number_of(call, "ocpd"), 45, 0, "40.104 A does not pass on 40 A");
    CHECK(call_it(call, "ocpd_up", "current", "40 A", NULL), "40 A");
    CHECK_NEAR(number_of(call, "ocpd"), 40, 0, "40 A exactly does");
    static const char *const editions[] = {"2017", "2020", "2023"};
    static const double smallest[] = {15, 15, 10};
    for (int i = 0; i < 3; i++) {
        CHECK(call_it(call, "ocpd_up", "current", "9 A", "edition", editions[i], NULL), "9 A");
        CHECK_NEAR(number_of(call, "ocpd"), smallest[i], 0, "10 A breakers only from 2023");
    }
    CHECK(call_refused(call, "ocpd_up", "current", "9 A", NULL) == STOP_WRONG &&
              strcmp(call->working.stop.input, "edition") == 0,
          "where the editions differ the edition is asked for");
    CHECK(call_refused(call, "ocpd_down", "current", "12 A", NULL) == STOP_WRONG, "down, too");
    CHECK(call_it(call, "ocpd_down", "current", "49.99 A", NULL) && number_of(call, "ocpd") == 45,
          "49.99 A down is 45 A");
    /* 600 V exactly. */
    CHECK(call_it(call, "longest_string", "limit", "600 V", "open_circuit_voltage", "50 V",
                  "temperature", "25 °C", "coefficient", "-0.3 %/°C", NULL),
          "12 x 50 V");
    CHECK_NEAR(number_of(call, "modules"), 12, 0, "600 V exactly is within 600 V");
    CHECK(call_it(call, "longest_string", "limit", "600 V", "open_circuit_voltage", "50.001 V",
                  "temperature", "25 °C", "coefficient", "-0.3 %/°C", NULL),
          "12 x 50.001 V");
    CHECK_NEAR(number_of(call, "modules"), 11, 0, "600.012 V is not");
    /* On a row, between rows. */
    static const char *const ambients[] = {"40 °C", "40.9 °C", "41 °C", "104 °F"};
    static const double factors[] = {0.91, 0.87, 0.87, 0.91};
    for (int i = 0; i < 4; i++) {
        CHECK(call_it(call, "ampacity", "size", "10 AWG", "material", "copper", "insulation",
                      "90 °C", "ambient", ambients[i], "conductors", "3", NULL),
              "ambient");
        CHECK_NEAR(number_of(call, "ambient_factor"), factors[i], 0, "between rows the hotter");
    }
}

static double ampacity_on_roof(struct call *call, const char *height, const char *edition,
                               const char *type)
{
    CHECK(call_it(call, "ampacity", "size", "10 AWG", "material", "copper", "insulation", "90 °C",
                  "ambient", "35 °C", "conductors", "3", "height", height, "edition", edition,
                  "insulation_type", type, NULL),
          "on a roof");
    return number_of(call, "ampacity");
}

static void test_rooftop(struct call *call)
{
    CHECK_NEAR(ampacity_on_roof(call, "0.5 in", "2023", "THWN-2"), 40 * 0.58, 1e-9, "68 °C");
    CHECK_NEAR(ampacity_on_roof(call, "0.8 in", "2020", "THWN-2"), 40 * 0.58, 1e-9, "2020: 7/8 in");
    CHECK_NEAR(ampacity_on_roof(call, "0.8 in", "2017", "THWN-2"), 40 * 0.58, 1e-9, "2017: 7/8 in");
    CHECK_NEAR(ampacity_on_roof(call, "0.8 in", "2023", "THWN-2"), 40 * 0.96, 1e-9, "2023: 3/4 in");
    CHECK_NEAR(ampacity_on_roof(call, "0.875 in", "2020", "THWN-2"), 40 * 0.96, 1e-9,
               "7/8 in is free");
    CHECK_NEAR(ampacity_on_roof(call, "0.5 in", "2020", "XHHW-2"), 40 * 0.96, 1e-9, "XHHW-2");
    CHECK(call_refused(call, "ampacity", "size", "10 AWG", "material", "copper", "insulation",
                       "90 °C", "ambient", "35 °C", "conductors", "3", "height", "0.8 in",
                       NULL) == STOP_WRONG,
          "at 0.8 in the edition decides");
    CHECK(call_it(call, "ampacity", "size", "10 AWG", "material", "copper", "insulation", "90 °C",
                  "ambient", "35 °C", "conductors", "3", "height", "12 in", NULL),
          "at 12 in it does not");
}

static void test_protection(struct call *call)
{
    static const struct {
        const char *size, *material, *ambient, *terminal;
        double ocpd;
        const char *why;
    } cases[] = {
        {"6 AWG", "copper", "30 °C", "75 °C", 70, "65 A: next size up, 240.4(B)"},
        {"8 AWG", "copper", "30 °C", "75 °C", 50, "50 A is a standard size"},
        {"12 AWG", "copper", "30 °C", "75 °C", 20, "25 A, capped by 240.4(D)"},
        {"14 AWG", "copper", "30 °C", "75 °C", 15, "20 A, capped by 240.4(D)"},
        {"10 AWG", "copper", "60 °C", "75 °C", 30, "28.4 A: up to 30 A"},
        {"10 AWG", "copper", "70 °C", "75 °C", 25, "23.2 A: up to 25 A, below the cap"},
        {"10 AWG", "aluminum", "30 °C", "75 °C", 25, "30 A, capped by 240.4(D)"},
        {"500 kcmil", "copper", "30 °C", "75 °C", 400, "380 A: up to 400 A"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        CHECK(call_it(call, "largest_ocpd_for", "size", cases[i].size, "material",
                      cases[i].material, "insulation", "90 °C", "ambient", cases[i].ambient,
                      "conductors", "3", "terminal", cases[i].terminal, NULL),
              cases[i].why);
        CHECK_NEAR(number_of(call, "ocpd"), cases[i].ocpd, 0, cases[i].why);
    }
    /* Above 800 A there is no next size up: 240.4(C). Three sets of 300 kcmil carry 855 A. */
    CHECK(call_it(call, "largest_ocpd_for", "size", "300 kcmil", "material", "copper", "insulation",
                  "75 °C", "ambient", "30 °C", "conductors", "3", "sets", "3", NULL),
          "855 A");
    CHECK_NEAR(number_of(call, "ocpd"), 800, 0, "855 A is protected at 800 A");
}

static void test_fusing(struct call *call)
{
    static const char *const strings[] = {"1", "2", "3"};
    static const bool needed[] = {false, false, true};
    for (int i = 0; i < 3; i++) {
        CHECK(call_it(call, "parallel_fusing", "strings", strings[i], "short_circuit_current",
                      "9 A", "maximum_series_fuse", "20 A", "ampacity", "30 A", NULL),
              "fusing");
        CHECK(is_yes(call, "needed") == needed[i], "from the third string on");
    }
    CHECK_NEAR(number_of(call, "backfeed"), 22.5, 1e-9, "1.25 x 2 x 9 A");
    CHECK_NEAR(number_of(call, "fuse"), 15, 0, "14.06 A: a 15 A fuse");
    CHECK(is_yes(call, "allowed"), "within 20 A");
    CHECK(call_it(call, "parallel_fusing", "strings", "3", "short_circuit_current", "8 A",
                  "maximum_series_fuse", "20 A", "ampacity", "30 A", NULL),
          "20 A on 20 A");
    CHECK(!is_yes(call, "needed"), "20 A exactly is within 20 A");
    CHECK(call_it(call, "parallel_fusing", "strings", "2", "short_circuit_current", "9 A",
                  "maximum_series_fuse", "20 A", "ampacity", "10 A", NULL),
          "a thin conductor");
    CHECK(is_yes(call, "needed"), "the conductor counts, too");
}

/* Monotony at random: of each pair the second input is the larger. */

static double draw(unsigned *seed, double low, double high)
{
    *seed = *seed * 1103515245u + 12345u;
    return low + (high - low) * (double)(*seed >> 8 & 0xffff) / 65535.0;
}

struct rise {
    const char *calculator, *input, *unit, *result;
    double low, high;
    int direction;         /* 1: result does not fall; -1: does not rise */
    const char *given[18]; /* the other inputs */
};

static double run_rise(struct call *call, const struct rise *rise, double value)
{
    struct amount inputs[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    char text[64];
    snprintf(text, sizeof text, "%.6f%s%s", value, rise->unit[0] != '\0' ? " " : "", rise->unit);
    call->calculator = calculator_find(KIND_NONE, rise->calculator);
    for (size_t i = 0; i < call->calculator->input_count; i++) {
        const struct parameter *parameter = &call->calculator->inputs[i];
        for (size_t g = 0; rise->given[g] != NULL; g += 2)
            if (strcmp(parameter->name, rise->given[g]) == 0)
                inputs[i] = amount_from(parameter, rise->given[g + 1]);
        if (strcmp(parameter->name, rise->input) == 0)
            inputs[i] = amount_from(parameter, text);
    }
    working_start(&call->working);
    call->ran = calculator_run(call->calculator, call->results, NULL, inputs, &call->working);
    if (!CHECK(call->ran, rise->calculator))
        fprintf(stderr, "    %s %s: %s\n", rise->input, text, call->working.stop.why);
    return number_of(call, rise->result);
}

#define WIRE "material", "copper", "insulation", "90 °C"
#define COLD "open_circuit_voltage", "41.3 V", "coefficient", "-0.29 %/°C"
#define HOT  "power_voltage", "34.1 V", "coefficient", "-0.35 %/°C"

static const struct rise rises[] = {
    {"ampacity",
     "ambient",
     "°C",
     "ampacity",
     -20,
     85,
     -1,
     {"size", "10 AWG", WIRE, "conductors", "5", NULL}},
    {"ampacity",
     "conductors",
     "",
     "ampacity",
     1,
     60,
     -1,
     {"size", "10 AWG", WIRE, "ambient", "44 °C", NULL}},
    {"ampacity",
     "height",
     "in",
     "ampacity",
     0,
     24,
     1,
     {"size", "10 AWG", WIRE, "ambient", "44 °C", "conductors", "3", "edition", "2020", NULL}},
    {"ampacity",
     "insulation",
     "°C",
     "ampacity",
     60,
     150,
     1,
     {"size", "10 AWG", "material", "copper", "ambient", "44 °C", "conductors", "3", NULL}},
    {"terminal_ampacity", "terminal", "°C", "ampacity", 60, 90, 1, {"size", "4 AWG", WIRE, NULL}},
    {"largest_ocpd_for",
     "ambient",
     "°C",
     "ocpd",
     -20,
     80,
     -1,
     {"size", "4 AWG", WIRE, "conductors", "5", "terminal", "75 °C", NULL}},
    {"ocpd_up", "current", "A", "ocpd", 1, 6000, 1, {"edition", "2023", NULL}},
    {"ocpd_down", "current", "A", "ocpd", 15, 6000, 1, {"edition", "2020", NULL}},
    {"smallest_conductor",
     "current",
     "A",
     "terminal_ampacity",
     1,
     240,
     1,
     {WIRE, "ambient", "44 °C", "conductors", "5", "terminal", "75 °C", "edition", "2023", NULL}},
    {"dc_voltage_drop",
     "length",
     "ft",
     "drop",
     0,
     900,
     1,
     {"size", "10 AWG", "material", "copper", "current", "9 A", NULL}},
    {"dc_voltage_drop",
     "current",
     "A",
     "drop",
     1,
     40,
     1,
     {"size", "10 AWG", "material", "copper", "length", "90 ft", NULL}},
    {"ac_voltage_drop",
     "length",
     "ft",
     "drop",
     0,
     900,
     1,
     {"size", "6 AWG", "material", "aluminum", "current", "32 A", "wiring_method", "EMT", NULL}},
    {"cold_voltage", "temperature", "°C", "voltage", -60, 25, -1, {"modules", "10", COLD, NULL}},
    {"cold_voltage",
     "temperature",
     "°C",
     "voltage",
     -40,
     24,
     -1,
     {"modules", "10", "open_circuit_voltage", "41 V", "technology", "monocrystalline silicon",
      NULL}},
    {"longest_string", "temperature", "°C", "modules", -60, 25, 1, {"limit", "600 V", COLD, NULL}},
    {"longest_string", "limit", "V", "modules", 100, 1500, 1, {"temperature", "-9 °C", COLD, NULL}},
    {"shortest_string", "temperature", "°C", "modules", -20, 90, 1, {"least", "150 V", HOT, NULL}},
    {"shortest_string", "least", "V", "modules", 10, 900, 1, {"temperature", "38 °C", HOT, NULL}},
    {"hot_voltage",
     "rise",
     "°C",
     "voltage",
     0,
     60,
     -1,
     {"modules", "9", "temperature", "38 °C", HOT, NULL}},
    {"source_current", "short_circuit_current", "A", "needed", 0.2, 40, 1, {"strings", "2", NULL}},
    {"parallel_fusing",
     "short_circuit_current",
     "A",
     "backfeed",
     0.5,
     9,
     1,
     {"strings", "3", "maximum_series_fuse", "20 A", "ampacity", "30 A", "edition", "2023", NULL}},
    {"microinverter_branch",
     "output_current",
     "A",
     "needed_ocpd",
     0.2,
     40,
     1,
     {"microinverters", "9", "edition", "2023", NULL}},
    {"microinverter_branch",
     "output_current",
     "A",
     "most",
     0.2,
     40,
     -1,
     {"microinverters", "1", "edition", "2023", "ocpd", "20 A", NULL}},
    {"conduit_fill",
     "diameter",
     "in",
     "area",
     0.1,
     1,
     1,
     {"raceway", "EMT", "diameter_count", "4", NULL}},
};

static void test_monotony(struct call *call)
{
    unsigned seed = 20260801;
    call->working.keeps_steps = false;
    for (size_t i = 0; i < sizeof rises / sizeof rises[0]; i++)
        for (int n = 0; n < 200; n++) {
            const struct rise *rise = &rises[i];
            double a = draw(&seed, rise->low, rise->high), b = draw(&seed, rise->low, rise->high);
            double small = run_rise(call, rise, fmin(a, b)),
                   large = run_rise(call, rise, fmax(a, b));
            if (!CHECK((large - small) * rise->direction >= 0, rise->calculator))
                fprintf(stderr, "    %s %g, %g: %g, %g\n", rise->input, fmin(a, b), fmax(a, b),
                        small, large);
            if (n % 50 == 0)
                arena_clear(call->arena);
        }
    call->working.keeps_steps = true;
}

/* What does not rise or fall all the way. */
static void test_exceptions(struct call *call)
{
    /* A third conductor in a raceway may be allowed more than two are: 40 % after 31 %. */
    double limit[3];
    static const char *const counts[] = {"1", "2", "3"};
    for (int i = 0; i < 3; i++) {
        CHECK(call_it(call, "conduit_fill", "raceway", "EMT", "insulation", "THWN-2", "size",
                      "10 AWG", "count", counts[i], NULL),
              "fill");
        limit[i] = number_of(call, "limit");
    }
    CHECK(limit[0] > limit[1] && limit[1] < limit[2], "two conductors are the tightest");
    /* Better insulation does not help past the terminals. */
    double usable[2];
    static const char *const insulations[] = {"75 °C", "90 °C"};
    for (int i = 0; i < 2; i++) {
        CHECK(call_it(call, "ampacity", "size", "10 AWG", "material", "copper", "insulation",
                      insulations[i], "ambient", "30 °C", "conductors", "3", "terminal", "60 °C",
                      NULL),
              "terminals");
        usable[i] = number_of(call, "usable");
    }
    CHECK(usable[0] == 30 && usable[1] == 30, "60 °C terminals hold 10 AWG at 30 A");
    /* A cold place allows fewer modules, a hot one asks for more: the two can cross. */
    CHECK(call_it(call, "longest_string", "limit", "160 V", "temperature", "-30 °C", COLD, NULL),
          "longest");
    double most = number_of(call, "modules");
    CHECK(call_it(call, "shortest_string", "least", "130 V", "temperature", "70 °C", HOT, NULL),
          "shortest");
    CHECK(number_of(call, "modules") > most, "a narrow window has no string at all");
    /* A thicker small conductor is not always protected by more: its ampacity decides, then the
     * cap. */
    CHECK(call_it(call, "largest_ocpd_for", "size", "10 AWG", "material", "copper", "insulation",
                  "90 °C", "ambient", "30 °C", "conductors", "3", NULL) &&
              number_of(call, "ocpd") == 30,
          "more insulation does not lift the cap of 30 A");
}

int main(void)
{
    struct call call;
    call_open(&call);
    test_refusals(&call);
    test_beyond(&call);
    test_the_desk_example(&call);
    test_boundaries(&call);
    test_rooftop(&call);
    test_protection(&call);
    test_fusing(&call);
    test_monotony(&call);
    test_exceptions(&call);
    call_close(&call);
    return checks_end();
}
