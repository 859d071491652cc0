/* Fasteners and attachments against published values, worked examples and their own laws. */
#include "calculator_trial.h"
#include "wood.h"
#include "words.h"

static void try_lag_cell(struct trial *trial, char **fields)
{
    char diameter[40];
    snprintf(diameter, sizeof diameter, "%s in", fields[1]);
    CHECK(trial_run(trial, NULL, "lag_withdrawal", "diameter", diameter, "penetration", "6 in",
                    "load_duration", "occupancy live", "specific_gravity", fields[0], NULL),
          "a cell of the table runs");
    CHECK_NEAR(round(trial_number(trial, "reference")), strtod(fields[2], NULL), 0.01,
               "withdrawal value to the pound");
    CHECK_NEAR(trial_number(trial, "capacity"), 6 * trial_number(trial, "per_length"), 1e-6,
               "capacity is value times thread");
}

/* A lag screw through a plate, 8 D into the wood; lbf along the grain, or across it. */
static double lateral_of(struct trial *trial, const char *inch, const char *plate_inch,
                         const char *gravity, bool is_across)
{
    char diameter[40], plate[40], penetration[40];
    snprintf(diameter, sizeof diameter, "%s in", inch);
    snprintf(plate, sizeof plate, "%s in", plate_inch);
    snprintf(penetration, sizeof penetration, "%.6g in", 8 * strtod(inch, NULL));
    CHECK(trial_run(trial, NULL, "lag_lateral", "diameter", diameter, "plate_thickness", plate,
                    "penetration", penetration, "direction",
                    is_across ? "perpendicular to grain" : "parallel to grain", "load_duration",
                    "occupancy live", "specific_gravity", gravity, NULL),
          "a cell of Table 12K runs");
    return trial_number(trial, "capacity");
}

/* Manufacturers' standard gages of sheet steel, to the thousandth as the table has them. */
static const struct {
    int gage;
    const char *inch;
} plates[] = {{14, "0.075"}, {12, "0.105"}, {11, "0.120"}, {10, "0.134"}};

static void try_lateral_cell(struct trial *trial, char **fields)
{
    size_t at = 0;
    while (at < 3 && strcmp(plates[at].inch, fields[0]) != 0)
        at++;
    CHECK(plates[at].gage == atoi(fields[1]) && strcmp(plates[at].inch, fields[0]) == 0,
          "the row's gage is that thickness");
    for (size_t i = 0; i < 2; i++)
        CHECK_NEAR(round(lateral_of(trial, fields[2], fields[0], fields[3], i == 1) / 10) * 10,
                   strtod(fields[4 + i], NULL), 1e-6,
                   "lateral value of the table, to the ten pounds that it prints");
}

/* The table prints tens of pounds, which plates of two gages often share: these rows tell them
 * apart by the hundredth, and a plate that is a thousandth thicker, too. */
static void try_plate(struct trial *trial, char **fields)
{
    char thicker[40];
    snprintf(thicker, sizeof thicker, "%.6g", strtod(fields[0], NULL) + 0.001);
    for (size_t i = 0; i < 2; i++) {
        double published = strtod(fields[3 + i], NULL);
        CHECK_NEAR(lateral_of(trial, fields[1], fields[0], fields[2], i == 1), published, 0.01,
                   "lateral value to the hundredth of a pound");
        CHECK(lateral_of(trial, fields[1], thicker, fields[2], i == 1) > published + 0.02 ||
                  strtod(fields[0], NULL) > 0.2,
              "a thicker plate holds more, where it is thin enough to bend the screw");
    }
}

static void try_duration(struct trial *trial, char **fields)
{
    CHECK(trial_run(trial, NULL, "load_duration_factor", "load_duration", fields[0], NULL),
          "a load duration is known");
    CHECK_NEAR(trial_number(trial, "factor"), strtod(fields[1], NULL), 1e-12, fields[0]);
}

static void try_gravity(struct trial *trial, char **fields)
{
    const char *name = strstr(fields[0], "Cedars") != NULL       ? "Western Red Cedar"
                       : strstr(fields[0], "open grain") != NULL ? "Redwood"
                                                                 : fields[0];
    if (wood_species_find(name) == NULL)
        return; /* the facts have no such word */
    CHECK(trial_run(trial, NULL, "wood_gravity", "species", name, NULL), "a species has a gravity");
    CHECK_NEAR(trial_number(trial, "specific_gravity"), strtod(fields[1], NULL), 1e-9,
               "its gravity is the table's");
    trial_run(trial, NULL, "lag_withdrawal", "diameter", "5/16 in", "penetration", "3 in",
              "load_duration", "occupancy live", "species", name, NULL);
    CHECK_NEAR(round(trial_number(trial, "reference")), strtod(fields[2], NULL), 0.01,
               "a 5/16 in lag screw in that species");
}

static void try_thread_length(struct trial *trial, char **fields)
{
    char length[40];
    snprintf(length, sizeof length, "%s in", fields[0]);
    trial_run(trial, NULL, "thread_penetration", "fastener", "lag screw", "diameter", "5/16 in",
              "length", length, "fixture_thickness", "0 in", "sheathing", "0 in", NULL);
    CHECK_NEAR(trial_number(trial, "penetration"), strtod(fields[1], NULL) - 3.0 / 16, 1e-9,
               "thread of a lag screw by its length, less its tip");
}

static void try_lag_dimensions(struct trial *trial, char **fields)
{
    (void)trial;
    const struct wood_lag *lag = wood_lag_find(strtod(fields[0], NULL));
    if (CHECK(lag != NULL, "a lag screw of the table")) {
        CHECK_NEAR(lag->root, strtod(fields[1], NULL), 1e-9, "its root");
        CHECK_NEAR(lag->tip, strtod(fields[2], NULL), 6e-5, "its tip");
    }
}

static void test_tables(struct trial *trial)
{
    CHECK(trial_rows(trial, "lag_withdrawal.csv", try_lag_cell) == 242, "242 withdrawal cells");
    CHECK(trial_rows(trial, "lag_lateral.csv", try_lateral_cell) == 109, "109 rows of Table 12K");
    CHECK(trial_rows(trial, "lag_lateral_plates.csv", try_plate) == 30, "30 rows by thickness");
    CHECK(trial_rows(trial, "specific_gravity.csv", try_gravity) == 15, "15 species");
    CHECK(trial_rows(trial, "lag_thread_length.csv", try_thread_length) == 8, "8 thread lengths");
    CHECK(trial_rows(trial, "lag_dimensions.csv", try_lag_dimensions) == 4, "4 lag screws");
    for (const char *const *word = words_for_species; *word != NULL; word++)
        CHECK(wood_species_find(*word) != NULL, *word);
}

static void test_durations(struct trial *trial)
{
    CHECK(trial_rows(trial, "load_duration.csv", try_duration) == 6, "6 load durations");
    CHECK(wood_duration_loads[6] == NULL, "no load without its factor tried");
    CHECK(!trial_run(trial, NULL, "load_duration_factor", "load_duration", "storm", NULL) &&
              trial_stopped(trial, STOP_WRONG, "roof live"),
          "an unknown duration is refused with the known ones");
}

/* EX02's fastener: City of Everett WA record 1590007 p.14: 532 and 851.2 lbf. */
static void test_published_lag(struct trial *trial)
{
    trial_run(trial, NULL, "lag_withdrawal", "diameter", "5/16 in", "penetration", "2 in",
              "load_duration", "wind", "specific_gravity", "0.5", NULL);
    CHECK_NEAR(2 * round(trial_number(trial, "reference")), 532, 1e-9, "EX02: 2 in × 266 lbf/in");
    CHECK_NEAR(trial_number(trial, "capacity"), 851.2, 0.2, "EX02: for wind");
    CHECK_NEAR(trial_number(trial, "least_penetration"), 1.25, 1e-9, "4 D");
}

/* EX14: an AWC connection calculation in City of Santa Ana record 548684 p.322: 7 in screw through
 * 1/4 in into 7-1/2 in of G 0.50; (4 - 7/32) in × 305 lbf/in = 1153 lbf. */
static void test_thread(struct trial *trial)
{
    CHECK(trial_run(trial, NULL, "thread_penetration", "fastener", "lag screw", "diameter",
                    "3/8 in", "length", "7 in", "fixture_thickness", "1/4 in", "sheathing", "0 in",
                    "member_depth", "7.5 in", NULL),
          "EX14 runs");
    CHECK_NEAR(trial_number(trial, "penetration"), 3.78125, 1e-9, "EX14: thread less tip");
    CHECK(trial_run(trial, NULL, "lag_withdrawal", "diameter", "3/8 in", "penetration",
                    "3.78125 in", "load_duration", "occupancy live", "species", "Douglas Fir-Larch",
                    NULL),
          "EX14's withdrawal runs");
    CHECK_NEAR(trial_number(trial, "capacity"), 1153, 0.5, "EX14: 1153 lbf");

    static const char *const name = "thread_penetration";
    trial_run(trial, NULL, name, "fastener", "lag screw", "diameter", "5/16 in", "length", "4 in",
              "fixture_thickness", "1/2 in", "sheathing", "1/2 in", NULL);
    CHECK_NEAR(trial_number(trial, "penetration"), 2.5 - 3.0 / 16, 1e-9,
               "the sheathing lies in the shank's length, so no thread is lost");
    trial_run(trial, NULL, name, "fastener", "lag screw", "diameter", "5/16 in", "length", "4 in",
              "fixture_thickness", "1.5 in", "sheathing", "1 in", NULL);
    CHECK_NEAR(trial_number(trial, "penetration"), 1.5 - 3.0 / 16, 1e-9,
               "thread in the sheathing is not counted");
    trial_run(trial, NULL, name, "fastener", "lag screw", "diameter", "5/16 in", "length", "4 in",
              "fixture_thickness", "0 in", "sheathing", "1/2 in", "member_depth", "1.5 in", NULL);
    CHECK_NEAR(trial_number(trial, "penetration"), 0.5, 1e-9,
               "thread that comes out below the member is not counted");
    trial_run(trial, NULL, name, "fastener", "lag screw", "diameter", "5/16 in", "length", "2 in",
              "fixture_thickness", "1.5 in", "sheathing", "1 in", NULL);
    CHECK_NEAR(trial_number(trial, "penetration"), 0, 0, "a screw that does not reach has none");
    CHECK(!trial_run(trial, NULL, name, "fastener", "lag screw", "diameter", "5/8 in", "length",
                     "6 in", "fixture_thickness", "0 in", "sheathing", "0 in", NULL) &&
              trial_stopped(trial, STOP_BEYOND, "tip"),
          "a lag screw whose tip is not in the table is said to be so");
    CHECK(!trial_run(trial, NULL, name, "fastener", "structural screw", "diameter", "1/4 in",
                     "length", "4 in", "fixture_thickness", "0 in", "sheathing", "0 in", NULL) &&
              trial_stopped(trial, STOP_BEYOND, "maker"),
          "a maker's own screw needs its maker's thread");
    CHECK(trial_run(trial, NULL, name, "fastener", "structural screw", "diameter", "1/4 in",
                    "length", "4 in", "fixture_thickness", "0 in", "sheathing", "1/2 in",
                    "thread_length", "3 in", "tip_length", "0.3 in", NULL),
          "with the maker's thread it runs");
    CHECK_NEAR(trial_number(trial, "penetration"), 2.7, 1e-9, "thread less tip, as given");
}

static void test_withdrawal_factors(struct trial *trial)
{
    static const struct {
        const char *wet, *temperature, *end;
        double factor;
    } cases[] = {{"no", "-", "-", 1},          {"yes", "-", "-", 0.7},
                 {"no", "100 °F", "-", 1},     {"no", "110 °F", "-", 0.8},
                 {"yes", "110 °F", "-", 0.49}, {"no", "140 °F", "-", 0.7},
                 {"yes", "140 °F", "-", 0.35}, {"no", "-", "yes", 0.75}};
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        trial_run(trial, NULL, "lag_withdrawal", "diameter", "5/16 in", "penetration", "2 in",
                  "load_duration", "occupancy live", "species", "Hem-Fir", "wet_service",
                  cases[i].wet, "temperature", cases[i].temperature, "end_grain", cases[i].end,
                  NULL);
        CHECK_NEAR(trial_number(trial, "per_length") / trial_number(trial, "reference"),
                   cases[i].factor, 1e-12, "factors of moisture, heat and grain");
    }
    CHECK(trial_run(trial, NULL, "wood_screw_withdrawal", "diameter", "0.242 in", "penetration",
                    "2 in", "load_duration", "occupancy live", "specific_gravity", "0.5", NULL),
          "a wood screw runs");
    CHECK_NEAR(trial_number(trial, "reference"), 172, 0.5, "#14 wood screw, G 0.50: 172 lbf/in");
    trial_run(trial, NULL, "wood_screw_withdrawal", "diameter", "0.242 in", "penetration", "1.4 in",
              "load_duration", "wind", "specific_gravity", "0.5", NULL);
    CHECK_NEAR(trial_number(trial, "capacity"), 0, 0,
               "less than 6 D of a wood screw holds nothing");
}

static void test_least_penetration(struct trial *trial)
{
    static const struct {
        const char *penetration;
        bool holds;
    } cases[] = {{"1.25 in", true}, {"1.2499 in", false}, {"0 in", false}, {"1.2501 in", true}};
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        CHECK(trial_run(trial, NULL, "lag_withdrawal", "diameter", "5/16 in", "penetration",
                        cases[i].penetration, "load_duration", "wind", "species", "Southern Pine",
                        NULL),
              "a short screw is a result, not a stop");
        CHECK((trial_number(trial, "capacity") > 0) == cases[i].holds,
              "withdrawal begins at 4 D, not below");
        CHECK(trial_says(trial, "no withdrawal capacity") != cases[i].holds,
              "the working says why it holds nothing");
    }
}

static bool push(struct trial *trial, const char *screw, const char *diameter, const char *plate,
                 const char *penetration, const char *direction, const char *gravity)
{
    return trial_run(trial, NULL, screw, "diameter", diameter, "plate_thickness", plate,
                     "penetration", penetration, "direction", direction, "load_duration",
                     "occupancy live", "specific_gravity", gravity, NULL);
}

static void test_lateral(struct trial *trial)
{
    static const char *const along = "parallel to grain";
    CHECK(push(trial, "lag_lateral", "5/16 in", "0.134 in", "2.5 in", along, "0.5"), "runs");
    double whole = trial_number(trial, "reference");
    CHECK_NEAR(trial_number(trial, "capacity"), whole, 1e-9, "at 8 D all of it");
    CHECK_TEXT(trial_word(trial, "mode"), "IIIs", "a thin plate yields");
    trial_run(trial, NULL, "lag_lateral", "diameter", "5/16 in", "plate_thickness", "0.134 in",
              "penetration", "2.5 in", "direction", along, "load_duration", "wind", "species",
              "Douglas Fir-Larch", "wet_service", "yes", "temperature", "120 °F", NULL);
    CHECK_NEAR(trial_number(trial, "capacity"), whole * 1.6 * 0.7 * 0.7, 1e-9,
               "CD 1.6, CM 0.7, Ct 0.7 of wet wood at 120 °F");
    push(trial, "lag_lateral", "5/16 in", "0.134 in", "9 in", along, "0.5");
    CHECK_NEAR(trial_number(trial, "capacity"), whole, 1e-9, "deeper than 8 D is no more");
    push(trial, "lag_lateral", "5/16 in", "0.134 in", "1.25 in", along, "0.5");
    CHECK_NEAR(trial_number(trial, "capacity"), whole / 2, 1e-9, "at 4 D half of it");
    push(trial, "lag_lateral", "5/16 in", "0.134 in", "1.249 in", along, "0.5");
    CHECK_NEAR(trial_number(trial, "capacity"), 0, 0, "below 4 D nothing");
    push(trial, "lag_lateral", "5/16 in", "1/4 in", "2.5 in", along, "0.5");
    CHECK_TEXT(trial_word(trial, "mode"), "IV", "a thick plate holds: two hinges in the screw");
    CHECK_NEAR(trial_number(trial, "reference"), 269.87, 0.01, "by hand, 87 000 psi and Rd 2.77");
    trial_run(trial, NULL, "lag_lateral", "diameter", "5/16 in", "plate_thickness", "1/4 in",
              "penetration", "2.5 in", "direction", along, "load_duration", "occupancy live",
              "specific_gravity", "0.5", "plate_bearing_strength", "30000 psi", NULL);
    CHECK(trial_number(trial, "reference") < 269, "a softer metal that is told carries less");
    CHECK(push(trial, "wood_screw_lateral", "0.19 in", "0.105 in", "1.9 in", along, "0.5"),
          "a number 10 wood screw runs");
    whole = trial_number(trial, "reference");
    /* By hand: Fem = 16 600 x 0.5^1.84 = 4650 psi, Dr 0.171 in, Rd 2.21; mode IIIs. */
    push(trial, "wood_screw_lateral", "0.216 in", "0.134 in", "2.5 in", along, "0.5");
    CHECK_NEAR(trial_number(trial, "capacity"), 167.45, 0.05, "a number 12 screw, 10 gage");
    push(trial, "wood_screw_lateral", "0.19 in", "0.105 in", "1.9 in", "perpendicular to grain",
         "0.5");
    CHECK_NEAR(trial_number(trial, "reference"), whole, 1e-9, "thin dowels know no grain");
    push(trial, "wood_screw_lateral", "0.19 in", "0.105 in", "1.14 in", along, "0.5");
    CHECK_NEAR(trial_number(trial, "capacity"), whole * 0.6, 1e-9, "at 6 D six tenths");
    push(trial, "wood_screw_lateral", "0.19 in", "0.105 in", "1.13 in", along, "0.5");
    CHECK_NEAR(trial_number(trial, "capacity"), 0, 0, "below 6 D nothing");
    CHECK(!push(trial, "lag_lateral", "7/16 in", "0.105 in", "4 in", along, "0.5") &&
              trial_stopped(trial, STOP_BEYOND, "no root diameter"),
          "a lag screw whose root is not in the table");
    CHECK(!push(trial, "wood_screw_lateral", "0.3 in", "0.105 in", "4 in", along, "0.5") &&
              trial_stopped(trial, STOP_BEYOND, "no root diameter"),
          "nor this wood screw's");
}

/* General dowel equations (AWC Technical Report 12, from memory): per mode the positive root of
 * A P² + B P + C, made from the bearing per length of plate and member and the plastic moment. */
static double yield_by_roots(double d, double bending, double member, double depth, double plate,
                             double thickness, const double reduction[3])
{
    double qs = plate * d, qm = member * d, moment = bending * d * d * d / 6;
    double ls = thickness, lm = depth;
    const double a[] = {1 / (4 * qs) + 1 / (4 * qm), 1 / (2 * qs) + 1 / (4 * qm),
                        1 / (4 * qs) + 1 / (2 * qm), 1 / (2 * qs) + 1 / (2 * qm)};
    const double b[] = {ls / 2 + lm / 2, lm / 2, ls / 2, 0};
    const double c[] = {-qs * ls * ls / 4 - qm * lm * lm / 4, -moment - qm * lm * lm / 4,
                        -qs * ls * ls / 4 - moment, -2 * moment};
    double least = fmin(qs * ls, qm * lm) / reduction[0];
    for (size_t i = 0; i < 4; i++) {
        double root = (-b[i] + sqrt(b[i] * b[i] - 4 * a[i] * c[i])) / (2 * a[i]);
        least = fmin(least, root / reduction[i == 0 ? 1 : 2]);
    }
    return least;
}

/* A second opinion, and the laws: a thicker plate, denser or deeper wood never carries less. */
static void test_yield(struct trial *trial)
{
    static const struct {
        double diameter, root, bending;
    } lags[] = {
        {0.25, 0.173, 70000}, {0.3125, 0.227, 60000}, {0.375, 0.265, 45000}, {0.5, 0.371, 45000}};
    static const double thick[] = {4, 3.6, 3.2};
    unsigned long long state = 20261125;
    for (int i = 0; i < 2000; i++) {
        size_t which = (size_t)(i % 4);
        double d = lags[which].diameter, root = lags[which].root;
        double gravity = round(trial_random(&state, 0.31, 0.73) * 100) / 100;
        double plate = trial_random(&state, 0.03, 0.5);
        bool is_parallel = i % 8 < 4;
        double across = is_parallel ? 1 : 1.25, reduction[3];
        for (size_t j = 0; j < 3; j++)
            reduction[j] = (root < 0.25 ? 10 * root + 0.5 : thick[j]) * across;
        double member = is_parallel ? 11200 * gravity : 6100 * pow(gravity, 1.45) / sqrt(d);
        char texts[4][40];
        snprintf(texts[0], sizeof texts[0], "%.9g in", d);
        snprintf(texts[1], sizeof texts[1], "%.9g in", plate);
        snprintf(texts[2], sizeof texts[2], "%.9g in", 8 * d);
        snprintf(texts[3], sizeof texts[3], "%.9g", gravity);
        push(trial, "lag_lateral", texts[0], texts[1], texts[2],
             is_parallel ? "parallel to grain" : "perpendicular to grain", texts[3]);
        double found = trial_number(trial, "reference");
        CHECK_NEAR(found,
                   yield_by_roots(root, lags[which].bending, round(member / 50) * 50, 8 * d,
                                  plate < 0.25 ? 61850 : 87000, plate, reduction),
                   1e-6, "both forms of the yield equations agree");
        snprintf(texts[1], sizeof texts[1], "%.9g in", trial_random(&state, plate, 0.5));
        snprintf(texts[3], sizeof texts[3], "%.9g", trial_random(&state, gravity, 0.73));
        push(trial, "lag_lateral", texts[0], texts[1], texts[2],
             is_parallel ? "parallel to grain" : "perpendicular to grain", texts[3]);
        CHECK(trial_number(trial, "reference") >= found * (1 - 1e-9),
              "a thicker plate and denser wood never carry less");
    }
}

static double combined(struct trial *trial, const char *tension, const char *shear)
{
    trial_run(trial, NULL, "combined_capacity", "withdrawal", "800 lbf", "lateral", "200 lbf",
              "tension", tension, "shear", shear, NULL);
    return trial_number(trial, "capacity");
}

static void test_combined(struct trial *trial)
{
    CHECK_NEAR(combined(trial, "100 lbf", "0 lbf"), 800, 1e-9, "straight out: withdrawal");
    CHECK_NEAR(combined(trial, "0 lbf", "100 lbf"), 200, 1e-9, "straight along: lateral");
    CHECK_NEAR(combined(trial, "100 lbf", "100 lbf"), 320, 1e-9, "at 45°: 2·800·200/1000");
    CHECK_NEAR(trial_number(trial, "ratio"), sqrt(20000) / 320, 1e-9, "load over capacity");
    CHECK_NEAR(trial_number(trial, "angle"), 45, 1e-9, "the load's angle");
    double last = 0;
    for (int i = 0; i <= 90; i += 5) {
        char tension[40], shear[40];
        snprintf(tension, sizeof tension, "%.9f lbf", fabs(sin(i * acos(-1) / 180)));
        snprintf(shear, sizeof shear, "%.9f lbf", fabs(cos(i * acos(-1) / 180)));
        double now = combined(trial, tension, shear);
        CHECK(now >= last, "the steeper the load, the nearer to the larger withdrawal");
        last = now;
    }
    CHECK(!trial_run(trial, NULL, "combined_capacity", "withdrawal", "1 lbf", "lateral", "1 lbf",
                     "tension", "0 lbf", "shear", "0 lbf", NULL) &&
              trial_stopped(trial, STOP_WRONG, "direction"),
          "no load has no direction");
    CHECK(trial_run(trial, NULL, "fastener_capacity", "withdrawal", "500 lbf", "fasteners", "2",
                    "prying_factor", "1.25", NULL),
          "prying runs");
    CHECK_NEAR(trial_number(trial, "capacity"), 800, 1e-9, "2 × 500 / 1.25");
}

static void test_refusals(struct trial *trial)
{
    static const char *const cases[][6] = {
        {"3/16 in", "2 in", "0.5", "-", "-", "diameter"},
        {"2 in", "2 in", "0.5", "-", "-", "diameter"},
        {"2 lbf", "2 in", "0.5", "-", "-", "length"},
        {"5/16 in", "-1 in", "0.5", "-", "-", "penetration"},
        {"5/16 in", "20 in", "0.5", "-", "-", "penetration"},
        {"5/16 in", "2 in", "0.2", "-", "-", "specific_gravity"},
        {"5/16 in", "2 in", "0.9", "-", "-", "specific_gravity"},
        {"5/16 in", "2 in", "-", "Balsa", "-", "Spruce-Pine-Fir"},
        {"5/16 in", "2 in", "-", "-", "-", "either species or"},
        {"5/16 in", "2 in", "0.5", "Hem-Fir", "-", "either species or"},
        {"5/16 in", "2 in", "0.5", "-", "250 °F", "temperature"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++)
        CHECK(!trial_run(trial, NULL, "lag_withdrawal", "diameter", cases[i][0], "penetration",
                         cases[i][1], "specific_gravity", cases[i][2], "species", cases[i][3],
                         "temperature", cases[i][4], "load_duration", "wind", NULL) &&
                  trial_stopped(trial, STOP_WRONG, cases[i][5]),
              cases[i][5]);
    CHECK(!trial_run(trial, NULL, "lag_withdrawal", "diameter", "5/16 in", "penetration", "2 in",
                     "specific_gravity", "0.5", "temperature", "160 °F", "load_duration", "wind",
                     NULL) &&
              trial_stopped(trial, STOP_BEYOND, "150 °F"),
          "wood hotter than the factors reach");
}

/* Withdrawal never falls with G, D at or above 4 D, penetration; wet never helps. Ranges: those of
 * the parameters. */
static void test_monotony(struct trial *trial)
{
    unsigned long long state = 20250611;
    for (int i = 0; i < 2000; i++) {
        double low[3] = {trial_random(&state, 0.31, 0.73), trial_random(&state, 0.25, 1.25),
                         trial_random(&state, 5, 12)};
        double high[3] = {trial_random(&state, low[0], 0.73), trial_random(&state, low[1], 1.25),
                          trial_random(&state, low[2], 12)};
        int raised = i % 3;
        char gravity[40], diameter[40], penetration[40];
        double capacity[2];
        for (int pass = 0; pass < 2; pass++) {
            snprintf(gravity, sizeof gravity, "%.9g", pass && raised == 0 ? high[0] : low[0]);
            snprintf(diameter, sizeof diameter, "%.9g in", pass && raised == 1 ? high[1] : low[1]);
            snprintf(penetration, sizeof penetration, "%.9g in",
                     pass && raised == 2 ? high[2] : low[2]);
            trial_run(trial, NULL, "lag_withdrawal", "diameter", diameter, "penetration",
                      penetration, "load_duration", "snow", "specific_gravity", gravity, NULL);
            capacity[pass] = trial_number(trial, "capacity");
        }
        CHECK(capacity[1] >= capacity[0] * (1 - 1e-12),
              "denser wood, a thicker screw, more thread never hold less");
        CHECK(capacity[0] > 0, "from 4 D on there is a capacity");
    }
}

int main(void)
{
    struct trial trial;
    trial_open(&trial);
    test_tables(&trial);
    test_durations(&trial);
    test_published_lag(&trial);
    test_thread(&trial);
    test_withdrawal_factors(&trial);
    test_least_penetration(&trial);
    test_lateral(&trial);
    test_yield(&trial);
    test_combined(&trial);
    test_refusals(&trial);
    test_monotony(&trial);
    trial_close(&trial);
    return checks_end();
}
