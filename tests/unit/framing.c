/* Rafters and beams against published spans, closed forms and their own laws. */
#include "beam.h"
#include "calculator_trial.h"
#include "wood.h"

/* What the published span tables say, against both sets of bending values. */
struct span_tally {
    int cells, capped, matches_now, matches_older;
    int southern_pine, southern_pine_older;
    int ibc, ibc_now;
    int missed_select, missed_no2, missed_no3, missed_hem_fir, missed_other;
};

static const char *species_of(const char *text)
{
    return strncmp(text, "DFL", 3) == 0   ? "Douglas Fir-Larch"
           : strncmp(text, "HF", 2) == 0  ? "Hem-Fir"
           : strncmp(text, "SPF", 3) == 0 ? "Spruce-Pine-Fir"
                                          : "Southern Pine";
}

static const char *grade_of(const char *text)
{
    return strstr(text, "SS") != NULL   ? "Select Structural"
           : strstr(text, "#1") != NULL ? "No. 1"
           : strstr(text, "#2") != NULL ? "No. 2"
                                        : "No. 3";
}

/* "14-7" in inches. */
static double inches_of(const char *text)
{
    char *dash;
    double feet = strtod(text, &dash);
    return feet * 12 + strtod(dash + 1, NULL);
}

/* Span in inches, rounded to the inch as the tables print it. */
static double span_of(struct trial *trial, const char *wood, const char *size, const char *spacing,
                      const char *live, const char *dead, const char *duration, const char *limit,
                      const char *basis)
{
    char between[40], from_above[40], itself[40];
    snprintf(between, sizeof between, "%s in", spacing);
    snprintf(from_above, sizeof from_above, "%s psf", live);
    snprintf(itself, sizeof itself, "%s psf", dead);
    if (!CHECK(trial_run(trial, NULL, "rafter_span", "species", species_of(wood), "grade",
                         grade_of(wood), "size", size, "spacing", between, "live", from_above,
                         "dead", itself, "load_duration", duration, "deflection_limit", limit,
                         "basis", basis, NULL),
               wood))
        return NAN;
    return round(trial_number(trial, "span") * 12);
}

static struct span_tally *tally_of(struct trial *trial)
{
    return trial->user;
}

static void note_miss(struct span_tally *tally, const char *wood)
{
    int *count = strcmp(wood, "DFL SS") == 0   ? &tally->missed_select
                 : strcmp(wood, "DFL #2") == 0 ? &tally->missed_no2
                 : strcmp(wood, "DFL #3") == 0 ? &tally->missed_no3
                 : strcmp(wood, "HF #1") == 0  ? &tally->missed_hem_fir
                                               : &tally->missed_other;
    ++*count;
}

/* table, loading, species and grade, size, spacing, live, dead, published, source */
static void try_published(struct trial *trial, char **fields)
{
    struct span_tally *tally = tally_of(trial);
    const char *duration = strstr(fields[1], "roof live") != NULL ? "roof live" : "snow";
    const char *limit = strstr(fields[1], "L/240") != NULL ? "240" : "180";
    tally->cells++;
    double now = span_of(trial, fields[2], fields[3], fields[4], fields[5], fields[6], duration,
                         limit, "current values");
    double older = span_of(trial, fields[2], fields[3], fields[4], fields[5], fields[6], duration,
                           limit, "span tables");
    if (fields[7][0] == '>') {
        tally->capped++;
        CHECK(older >= 26 * 12 - 1, "a cell that the table cuts off at 26 ft reaches so far");
        return;
    }
    double published = inches_of(fields[7]);
    /* Some cells print 26-0 where others print >26: the tables end there. */
    bool is_now = fabs(fmin(now, 26 * 12) - published) <= 1;
    bool is_older = fabs(fmin(older, 26 * 12) - published) <= 1;
    bool is_model_code = strncmp(fields[0], "CRC", 3) != 0;
    tally->matches_now += is_now;
    tally->ibc += is_model_code;
    tally->ibc_now += is_model_code && is_now;
    if (is_model_code && !is_now)
        note_miss(tally, fields[2]);
    if (strcmp(species_of(fields[2]), "Southern Pine") == 0) {
        tally->southern_pine++;
        tally->southern_pine_older += is_older;
        return;
    }
    tally->matches_older += is_older;
    CHECK(is_older, "a published span follows from the older bending values, to an inch");
}

static void test_published_spans(struct trial *trial)
{
    struct span_tally tally = {.cells = 0};
    trial->user = &tally;
    CHECK(trial_rows(trial, "rafter_spans_published.csv", try_published) == 668, "668 cells");
    CHECK(tally.ibc == 169 && tally.ibc_now == 133,
          "with current values 133 of 169 cells of IBC and WAC match within an inch");
    CHECK(tally.missed_no3 == 20 && tally.missed_no2 == 12 && tally.missed_hem_fir == 3 &&
              tally.missed_select == 1 && tally.missed_other == 0,
          "the misses are Douglas Fir-Larch No. 3 (20), No. 2 (12), Select Structural (1), Hem-Fir "
          "No. 1 (3)");
    CHECK(tally.matches_older == 607 + 12 && tally.southern_pine_older == 20,
          "with the older values all 607 cells of IBC and CRC match, and 12 of WAC, and 20 of "
          "Southern Pine");
    CHECK(tally.matches_older + tally.southern_pine_older + tally.capped == tally.cells,
          "no cell is left over");
    CHECK(tally.matches_now < tally.matches_older, "today's values do not make the older tables");
}

/* loading, ceiling, deflection, species and grade, size, spacing, dead, span, governs, status */
static void try_computed(struct trial *trial, char **fields)
{
    const char *live = strrchr(fields[0], ' ') + 1;
    const char *duration = strncmp(fields[0], "roof live", 9) == 0 ? "roof live" : "snow";
    double span =
        span_of(trial, fields[3], fields[4], fields[5], live, fields[6], duration, fields[2] + 2,
                strstr(fields[3], "875") != NULL ? "span tables" : "current values");
    double limit = fields[7][0] == '>' ? 26 * 12 : inches_of(fields[7]);
    CHECK_NEAR(fmin(span, 26 * 12), limit, 1, "a span computed elsewhere by the same mechanics");
    if (span < 26 * 12)
        CHECK(strncmp(trial_word(trial, "governs"), fields[8], 4) == 0, "the same governs");
}

static void try_section(struct trial *trial, char **fields)
{
    static const char *const names[] = {"width", "depth", "area", "section_modulus",
                                        "second_moment"};
    CHECK(trial_run(trial, NULL, "section_properties", "size", fields[0], NULL), fields[0]);
    for (size_t i = 0; i < 5; i++)
        CHECK_NEAR(trial_number(trial, names[i]), strtod(fields[1 + i], NULL), 5.1e-5, names[i]);
}

/* species, grade and sometimes size, Fb, E */
static void try_lumber(struct trial *trial, char **fields)
{
    (void)trial;
    const char *size = strstr(fields[0], " 2x");
    const struct wood_value *value = wood_value_find(species_of(fields[0]), grade_of(fields[0]),
                                                     size != NULL ? size + 1 : "2x6");
    if (CHECK(value != NULL, fields[0])) {
        CHECK_NEAR(value->bending, strtod(fields[1], NULL), 1e-9, "Fb");
        CHECK_NEAR(value->elasticity, strtod(fields[2], NULL), 1e-9, "E");
        CHECK((value->size != NULL) == (size != NULL), "size stands in Fb, or its factor does not");
    }
}

static void test_tables(struct trial *trial)
{
    CHECK(trial_rows(trial, "section_properties.csv", try_section) == 5, "5 sizes");
    CHECK(trial_rows(trial, "lumber_values.csv", try_lumber) == 21, "21 design values");
    CHECK(trial_rows(trial, "rafter_spans_computed.csv", try_computed) == 960, "960 spans");
}

/* EX15: WAC 246-359-250 Table 250-A: Hem-Fir No. 2, snow 30 + dead 10, L/240. */
static void test_snow_spans(struct trial *trial)
{
    static const char *const sizes[] = {"2x6", "2x8", "2x10", "2x12"};
    static const char *const spacings[] = {"12", "16", "24"};
    static const char *const published[4][3] = {{"12-7", "11-5", "9-7"},
                                                {"16-7", "14-11", "12-2"},
                                                {"21-0", "18-2", "14-10"},
                                                {"24-4", "21-1", "17-3"}};
    for (size_t i = 0; i < 4; i++)
        for (size_t j = 0; j < 3; j++)
            CHECK_NEAR(span_of(trial, "HF #2", sizes[i], spacings[j], "30", "10", "snow", "240",
                               "current values"),
                       inches_of(published[i][j]), 0, "EX15: to the inch");
}

/* EX16: 2018 IBC Table 2308.7.2(2): 2x6 at 12 in, live 20 + dead 20, L/240. Its Douglas Fir-Larch
 * No. 2 does not follow from today's 900 psi (14-7) but from 875 psi (14-4). */
static void test_live_spans(struct trial *trial)
{
    static const struct {
        const char *wood, *published;
    } cells[] = {{"HF #2", "14-2"}, {"SP #2", "13-6"}, {"SPF #2", "14-4"}, {"DFL #1", "15-4"}};
    for (size_t i = 0; i < sizeof cells / sizeof cells[0]; i++)
        CHECK_NEAR(span_of(trial, cells[i].wood, "2x6", "12", "20", "20", "roof live", "240",
                           "current values"),
                   inches_of(cells[i].published), 0, "EX16: to the inch");
    CHECK_NEAR(
        span_of(trial, "DFL #2", "2x6", "12", "20", "20", "roof live", "240", "current values"),
        inches_of("14-7"), 0, "EX16: Douglas Fir-Larch No. 2 by current values");
    CHECK_NEAR(span_of(trial, "DFL #2", "2x6", "12", "20", "20", "roof live", "240", "span tables"),
               inches_of("14-4"), 0, "EX16: as published, by 875 psi");
}

/* EX09: St. Lucie County FL record 1614383: 2x4 DF No. 2 at 24 in. The published value is cut off
 * after "248"; 900 × 1.6 × 1.5 × 1.15 = 2484. */
static void test_member_value(struct trial *trial)
{
    static const char *const name = "rafter_bending";
    CHECK(trial_run(trial, NULL, name, "species", "Douglas Fir-Larch", "grade", "No. 2", "size",
                    "2x4", "spacing", "24 in", "span", "6 ft", "load", "20 psf", "load_duration",
                    "wind", NULL),
          "EX09 runs");
    CHECK_NEAR(trial_number(trial, "allowed"), 2484, 1e-6, "EX09: F'b for wind");
    CHECK_NEAR(trial_number(trial, "moment"), 40 * 36 / 8.0 * 12, 1e-6, "wL²/8");
    CHECK_NEAR(trial_number(trial, "stress"), 40 * 36 / 8.0 * 12 / 3.0625, 1e-6, "M/S");
    trial_run(trial, NULL, name, "species", "Douglas Fir-Larch", "grade", "No. 2", "size", "2x4",
              "spacing", "24 in", "span", "6 ft", "load", "20 psf", "load_duration", "snow", NULL);
    CHECK_NEAR(trial_number(trial, "allowed"), 1785.4, 0.05, "EX09: F'b for snow");
    trial_run(trial, NULL, name, "species", "Douglas Fir-Larch", "grade", "No. 2", "size", "2x4",
              "spacing", "32 in", "span", "6 ft", "load", "20 psf", "load_duration",
              "occupancy live", "wet_service", "yes", NULL);
    CHECK_NEAR(trial_number(trial, "allowed"), 900 * 1.5 * 0.85, 1e-6,
               "wide apart and wet: no repetitive factor, CM 0.85");
    trial_run(trial, NULL, name, "species", "Hem-Fir", "grade", "No. 2", "size", "2x6", "spacing",
              "24 in", "span", "6 ft", "load", "20 psf", "load_duration", "occupancy live",
              "wet_service", "yes", NULL);
    CHECK_NEAR(trial_number(trial, "allowed"), 850 * 1.3 * 1.15, 1e-6,
               "Fb CF of at most 1150 psi loses nothing when wet");
    trial_run(trial, NULL, "rafter_shear", "species", "Hem-Fir", "grade", "No. 2", "size", "2x6",
              "spacing", "24 in", "span", "10 ft", "load", "30 psf", "load_duration", "snow", NULL);
    CHECK_NEAR(trial_number(trial, "stress"), 1.5 * 300 / 8.25, 1e-9, "3V/2bd");
    CHECK_NEAR(trial_number(trial, "allowed"), 150 * 1.15, 1e-9, "F'v");
    double dry = trial_number(trial, "allowed");
    trial_run(trial, NULL, "rafter_shear", "species", "Hem-Fir", "grade", "No. 2", "size", "2x6",
              "spacing", "24 in", "span", "10 ft", "load", "30 psf", "load_duration", "snow",
              "wet_service", "yes", NULL);
    CHECK_NEAR(trial_number(trial, "allowed"), 0.97 * dry, 1e-9, "F'v when wet");
    trial_run(trial, NULL, "rafter_deflection", "species", "Hem-Fir", "grade", "No. 2", "size",
              "2x6", "spacing", "24 in", "span", "10 ft", "load", "30 psf", "deflection_limit",
              "180", NULL);
    double stiff = trial_number(trial, "deflection");
    trial_run(trial, NULL, "rafter_deflection", "species", "Hem-Fir", "grade", "No. 2", "size",
              "2x6", "spacing", "24 in", "span", "10 ft", "load", "30 psf", "deflection_limit",
              "180", "wet_service", "yes", NULL);
    CHECK_NEAR(trial_number(trial, "deflection"), stiff / 0.9, 1e-9, "E' when wet");
    trial_run(trial, NULL, "rafter_deflection", "species", "Hem-Fir", "grade", "No. 2", "size",
              "2x6", "spacing", "24 in", "span", "10 ft", "load", "30 psf", "deflection_limit",
              "240", NULL);
    CHECK_NEAR(trial_number(trial, "deflection"),
               5 * 5 * pow(120, 4) / 384 / (1.3e6 * 1.5 * pow(5.5, 3) / 12), 1e-9, "5wL⁴/384EI");
    CHECK_NEAR(trial_number(trial, "allowed"), 0.5, 1e-12, "L/240");
}

static void test_refusals(struct trial *trial)
{
    static const char *const cases[][7] = {
        {"Oak", "No. 2", "2x6", "24 in", "10 ft", "20 psf", "species"},
        {"Hem-Fir", "No. 4", "2x6", "24 in", "10 ft", "20 psf", "grade"},
        {"Hem-Fir", "No. 2", "2x7", "24 in", "10 ft", "20 psf", "size"},
        {"Hem-Fir", "No. 2", "2x6", "1 in", "10 ft", "20 psf", "spacing"},
        {"Hem-Fir", "No. 2", "2x6", "24 in", "100 ft", "20 psf", "span"},
        {"Hem-Fir", "No. 2", "2x6", "24 in", "10 ft", "-5 psf", "load"},
        {"Hem-Fir", "No. 2", "2x6", "24 in", "10 ft", "20 lbf", "load"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++)
        CHECK(!trial_run(trial, NULL, "rafter_bending", "species", cases[i][0], "grade",
                         cases[i][1], "size", cases[i][2], "spacing", cases[i][3], "span",
                         cases[i][4], "load", cases[i][5], "load_duration", "snow", NULL) &&
                  trial->working.stop.kind == STOP_WRONG &&
                  strcmp(trial->working.stop.input, cases[i][6]) == 0,
              cases[i][6]);
    static const char *const unsourced[][2] = {
        {"Redwood", "No. 2"}, {"Hem-Fir (North)", "No. 1"}, {"Southern Pine", "Select Structural"}};
    for (size_t i = 0; i < 3; i++)
        CHECK(!trial_run(trial, NULL, "rafter_bending", "species", unsourced[i][0], "grade",
                         unsourced[i][1], "size", "2x6", "spacing", "24 in", "span", "10 ft",
                         "load", "20 psf", "load_duration", "snow", NULL) &&
                  trial_stopped(trial, STOP_BEYOND, "no sourced design values"),
              unsourced[i][0]);
}

/* Span never grows with live load (1 … 100 psf), dead load (0 … 60 psf), spacing (4 … 24 in), the
 * number of the deflection limit; it never falls with depth of the section. At the step from 24 in
 * on the repetitive factor only falls, so wider spacing is tried beyond it too (to 48 in). */
static void test_monotony(struct trial *trial)
{
    static const char *const woods[] = {"DFL #2", "HF #1", "SPF #3", "SP #2"};
    static const char *const sizes[] = {"2x4", "2x6", "2x8", "2x10", "2x12"};
    unsigned long long state = 42;
    for (int i = 0; i < 1500; i++) {
        double least[4] = {trial_random(&state, 1, 100), trial_random(&state, 0, 60),
                           trial_random(&state, 4, 48), trial_random(&state, 120, 360)};
        static const double most[4] = {100, 60, 48, 360};
        int raised = i % 5, size = (int)trial_random(&state, 0, 3.999);
        double span[2];
        for (int pass = 0; pass < 2; pass++) {
            char text[4][40];
            for (int j = 0; j < 4; j++)
                snprintf(text[j], sizeof text[j], "%.9g",
                         pass && j == raised ? (least[j] + most[j]) / 2 : least[j]);
            span_of(trial, woods[i % 4], sizes[pass && raised == 4 ? size + 1 : size], text[2],
                    text[0], text[1], "snow", text[3], "current values");
            span[pass] = trial_number(trial, "span");
        }
        if (raised == 4)
            CHECK(span[1] >= span[0], "a deeper rafter never spans less");
        else
            CHECK(span[1] <= span[0] * (1 + 1e-12), "more load never spans more");
    }
}

/* Largest deflection of one load at a ≥ L/2: P b (L² - b²)^1.5 / (9 √3 L EI) at √((L² - b²)/3). */
static void test_closed_forms(void)
{
    struct beam_result solved;
    struct point_load load[2] = {{70, 500}};
    struct beam beam = {.span = 100, .loads = load, .count = 1, .stiffness = 1e7};
    double b = 30, l = 100;
    beam_solve(&solved, &beam);
    CHECK_NEAR(solved.left, 150, 1e-9, "left takes Pb/L");
    CHECK_NEAR(solved.right, 350, 1e-9, "right takes Pa/L");
    CHECK_NEAR(solved.moment, 500 * 70 * 30 / 100.0, 1e-9, "Pab/L");
    CHECK_NEAR(solved.moment_at, 70, 1e-9, "below the load");
    CHECK_NEAR(solved.shear, 350, 1e-9, "the larger reaction");
    CHECK_NEAR(solved.deflection, 500 * b * pow(l * l - b * b, 1.5) / (9 * sqrt(3) * l * 1e7), 1e-9,
               "largest deflection of one load");
    CHECK_NEAR(solved.deflection_at, sqrt((l * l - b * b) / 3), 1e-6, "and its place");
    load[0] = (struct point_load){75, 400};
    load[1] = (struct point_load){25, 400};
    beam.count = 2;
    beam_solve(&solved, &beam);
    CHECK_NEAR(solved.moment, 400 * 25, 1e-9, "two equal loads: Pa");
    CHECK_NEAR(solved.deflection, 400 * 25 * (3 * l * l - 4 * 625) / (24 * 1e7), 1e-9,
               "two equal loads: Pa(3L² - 4a²)/24EI");
    CHECK_NEAR(solved.deflection_at, 50, 1e-6, "at midspan");
    beam.count = 0;
    beam.line_load = 12;
    beam_solve(&solved, &beam);
    CHECK_NEAR(solved.moment, 12 * l * l / 8, 1e-9, "wL²/8");
    CHECK_NEAR(solved.moment_at, 50, 1e-9, "at midspan");
    CHECK_NEAR(solved.shear, 600, 1e-9, "wL/2");
    CHECK_NEAR(solved.deflection, 5 * 12 * pow(l, 4) / (384 * 1e7), 1e-9, "5wL⁴/384EI");
    beam.line_load = 0;
    beam_solve(&solved, &beam);
    CHECK_NEAR(fabs(solved.moment) + solved.shear + fabs(solved.deflection), 0, 0, "no load");
}

/* Mirrored loads and one in the middle, below which the slope is zero: P a (3L² - 4a²) / 48EI each.
 */
static void test_mirrored_beams(void)
{
    unsigned long long state = 11;
    size_t wrong = 0;
    for (int i = 0; i < 2000; i++) {
        enum { PAIRS = 5 };
        struct point_load loads[2 * PAIRS + 1];
        double l = floor(trial_random(&state, 800, 4800)) / 16;
        struct beam beam = {.span = l,
                            .line_load = i % 3 == 0 ? 0 : trial_random(&state, 0, 5),
                            .loads = loads,
                            .stiffness = 2e7};
        struct beam_result solved;
        double should = 5 * beam.line_load * pow(l, 4) / 384;
        for (int k = 0; k <= i % (PAIRS + 1); k++) {
            double a = k == 0 ? l / 2 : trial_random(&state, 0, l / 2);
            double load = trial_random(&state, 1, 400);
            loads[beam.count++] = (struct point_load){a, load};
            if (k > 0)
                loads[beam.count++] = (struct point_load){l - a, load};
            should += (k > 0 ? 2 : 1) * load * a * (3 * l * l - 4 * a * a) / 48;
        }
        beam_solve(&solved, &beam);
        wrong += !(fabs(solved.deflection * beam.stiffness / should - 1) < 1e-9) ||
                 !(fabs(solved.deflection_at - l / 2) < 1e-4);
    }
    CHECK_NEAR((double)wrong, 0, 0, "the largest deflection stands at a load that bears it");
}

/* Deflection by summing moments over many slices: a second way that shares no formula. */
static double summed_deflection(const struct beam *beam, double x)
{
    enum { SLICES = 4000 };
    double sum = 0, step = beam->span / SLICES;
    for (int i = 0; i < SLICES; i++) {
        double at = (i + 0.5) * step, moment = beam->line_load * at * (beam->span - at) / 2;
        for (size_t j = 0; j < beam->count; j++) {
            double a = beam->loads[j].at;
            moment += beam->loads[j].load *
                      (at < a ? at * (beam->span - a) : a * (beam->span - at)) / beam->span;
        }
        sum += moment * (at < x ? at * (beam->span - x) : x * (beam->span - at)) / beam->span;
    }
    return sum * step / beam->stiffness;
}

/* Random loads, some of them lifting: forces add up, no sampled point exceeds the largest. */
static void test_random_beams(void)
{
    unsigned long long state = 7;
    for (int i = 0; i < 300; i++) {
        struct point_load loads[12];
        struct beam beam = {.span = trial_random(&state, 50, 300),
                            .line_load = i % 3 == 0 ? 0 : trial_random(&state, -5, 20),
                            .loads = loads,
                            .count = (size_t)trial_random(&state, 0, 12),
                            .stiffness = 2e7};
        struct beam_result solved;
        double total = beam.line_load * beam.span, turned = total * beam.span / 2;
        for (size_t j = 0; j < beam.count; j++) {
            loads[j] = (struct point_load){trial_random(&state, 0, beam.span),
                                           trial_random(&state, i % 2 ? -400 : 0, 400)};
            total += loads[j].load;
            turned += loads[j].load * loads[j].at;
        }
        beam_solve(&solved, &beam);
        CHECK_NEAR(solved.left + solved.right, total, 1e-6, "the supports carry all the load");
        CHECK_NEAR(solved.right * beam.span, turned, 1e-5, "nothing turns");
        for (int k = 1; k < 20; k++) {
            double x = beam.span * k / 20, moment = solved.left * x - beam.line_load * x * x / 2;
            for (size_t j = 0; j < beam.count && loads[j].at < x; j++)
                moment -= loads[j].load * (x - loads[j].at);
            CHECK(fabs(moment) <= fabs(solved.moment) + 1e-6, "no moment exceeds the largest");
            CHECK(fabs(summed_deflection(&beam, x)) <= fabs(solved.deflection) * (1 + 1e-5) + 1e-7,
                  "no deflection exceeds the largest");
        }
        if (solved.deflection != 0)
            CHECK_NEAR(summed_deflection(&beam, solved.deflection_at) / solved.deflection, 1, 1e-4,
                       "the largest deflection, found a second way");
    }
}

static void test_point_loads(struct trial *trial)
{
    static const char *const name = "rafter_with_point_loads";
    CHECK(trial_run(trial, NULL, name, "span", "12 ft", "loads", "120 lbf at 3 ft, 120 lbf at 9 ft",
                    "size", "2x6", "species", "Hem-Fir", "grade", "No. 2", NULL),
          "two loads run");
    CHECK_NEAR(trial_number(trial, "moment"), 120 * 36, 1e-6, "Pa");
    CHECK_NEAR(trial_number(trial, "stress"), 120 * 36 / 7.5625, 1e-6, "M/S");
    CHECK_NEAR(trial_number(trial, "left_reaction"), 120, 1e-9, "each support one load");
    CHECK_NEAR(trial_number(trial, "deflection"),
               120 * 36 * (3 * 144 * 144 - 4 * 36 * 36) / (24 * 1.3e6 * 1.5 * pow(5.5, 3) / 12),
               1e-9, "Pa(3L² - 4a²)/24EI");
    CHECK(trial_run(trial, NULL, name, "span", "10 ft", "loads", "100 lbf at 5 ft", "line_load",
                    "20 lbf/ft", NULL),
          "a load and an even load run");
    CHECK_NEAR(trial_number(trial, "moment"), (100 * 10 / 4.0 + 20 * 100 / 8.0) * 12, 1e-6,
               "PL/4 + wL²/8");
    CHECK(isnan(trial_number(trial, "deflection")), "no deflection without the wood");
    char many[4000] = "";
    for (int i = 0; i < 100; i++)
        snprintf(many + strlen(many), sizeof many - strlen(many), "%s1 lbf at %d in",
                 i > 0 ? ", " : "", i + 1);
    CHECK(trial_run(trial, NULL, name, "span", "101 in", "loads", many, NULL), "a hundred loads");
    CHECK_NEAR(trial_number(trial, "left_reaction") + trial_number(trial, "right_reaction"), 100,
               1e-9, "all carried");
    static const char *const wrong[] = {"120 lbf",         "120 lbf at 13 ft", "at 3 ft",
                                        "3 ft at 120 lbf", "120 lbf at 3 ft,", "",
                                        "120 lbf at -1 ft"};
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++)
        CHECK(!trial_run(trial, NULL, name, "span", "12 ft", "loads", wrong[i], NULL) &&
                  trial->working.stop.kind == STOP_WRONG &&
                  strcmp(trial->working.stop.input, "loads") == 0,
              "a load that cannot be read is refused");
}

int main(void)
{
    struct trial trial;
    trial_open(&trial);
    test_tables(&trial);
    test_published_spans(&trial);
    test_snow_spans(&trial);
    test_live_spans(&trial);
    test_member_value(&trial);
    test_refusals(&trial);
    test_monotony(&trial);
    test_closed_forms();
    test_mirrored_beams();
    test_random_beams();
    test_point_loads(&trial);
    trial_close(&trial);
    return checks_end();
}
