/* Wind: velocity pressure, roof coefficients, panels parallel to the roof. Sources stand beside the
 * examples; tests/structural holds the tables. */
#include "calculation.h"

static double coefficient(struct calculation *c, const char *edition, const char *shape,
                          double slope, const char *zone, double area, const char *direction,
                          const char *more)
{
    bool holds = calculate_with(c, "external_pressure_coefficient",
                                "edition %s, shape %s, slope %.12g °, zone %s, area %.12g ft², "
                                "direction %s%s",
                                edition, shape, slope, zone, area, direction, more);
    if (!holds) {
        fprintf(stderr, "%s %s %g %s %g %s%s: %s\n", edition, shape, slope, zone, area, direction,
                more, c->working.stop.why);
        return NAN;
    }
    return result_number(c, "coefficient");
}

static double velocity(struct calculation *c, const char *edition, double speed,
                       const char *exposure, double height)
{
    bool holds = calculate_with(c, "velocity_pressure",
                                "edition %s, speed %.12g mph, exposure %s, height %.12g ft, "
                                "topographic_factor 1",
                                edition, speed, exposure, height);
    return holds ? result_number(c, "pressure") : NAN;
}

/* Kz and Ke */

static void check_kz(struct calculation *c, char *const f[ROW_FIELDS])
{
    CHECK(calculate_with(c, "exposure_coefficient",
                         "edition %s, exposure %s, height %s ft, cladding_floor no", f[0], f[1],
                         f[2]),
          "Kz of a row of the table is found");
    CHECK_NEAR(result_number(c, "coefficient"), atof(f[3]), 6e-5, "Kz is that of its row");
}

static void check_ke(struct calculation *c, char *const f[ROW_FIELDS])
{
    CHECK(calculate_with(c, "ground_elevation_factor", "edition 7-16, elevation %s ft", f[0]),
          "Ke of a row of the table is found");
    CHECK_NEAR(result_number(c, "factor"), atof(f[1]), 6e-4, "Ke is that of its row");
    CHECK(calculate_with(c, "ground_elevation_factor", "edition 7-10, elevation %s ft", f[0]) &&
              result_number(c, "factor") == 1,
          "7-10 has no Ke");
}

static void check_floor(struct calculation *c)
{
    CHECK(calculate_text(c, "exposure_coefficient", "edition 7-10, exposure B, height 15 ft"),
          "7-10 B");
    CHECK_NEAR(result_number(c, "coefficient"), 0.70, 0, "cladding floor of 7-10 in exposure B");
    CHECK(calculate_text(c, "exposure_coefficient", "edition 7-16, exposure B, height 15 ft"),
          "7-16 B");
    CHECK_NEAR(result_number(c, "coefficient"), 0.5747, 6e-5, "no floor from 7-16 on");
    CHECK(calculate_text(c, "exposure_coefficient", "edition 7-10, exposure C, height 15 ft"),
          "7-10 C");
    CHECK_NEAR(result_number(c, "coefficient"), 0.8489, 6e-5, "no floor in exposure C");
    CHECK(!calculate_text(c, "exposure_coefficient", "edition 7-16, exposure B, height 61 ft") &&
              stopped_with(c, STOP_BEYOND, "up to 60 ft"),
          "over 60 ft a person must judge");
}

/* Coefficients: every row, at both ends, beyond them and between, at both ends of its slopes */

static void check_areas(struct calculation *c, const char *edition, char *const f[ROW_FIELDS],
                        const char *shape, double slope, const char *zone)
{
    const char *direction = f[7][0] == '-' ? "uplift" : "down";
    char more[80];
    double a1 = atof(f[8]), c1 = atof(f[9]), a2 = atof(f[10]), c2 = atof(f[11]);
    double middle = sqrt(a1 * a2);
    snprintf(more, sizeof more, ", overhang %s%s%s", f[4], f[5][0] ? ", height_to_width " : "",
             f[5]);
    CHECK_NEAR(coefficient(c, edition, shape, slope, zone, a1 / 5, direction, more), c1, 1e-12,
               "flat below the smallest area");
    CHECK_NEAR(coefficient(c, edition, shape, slope, zone, a1, direction, more), c1, 1e-12,
               "plateau at the smallest area");
    CHECK_NEAR(coefficient(c, edition, shape, slope, zone, a2, direction, more), c2, 1e-3,
               "plateau at the largest area");
    CHECK_NEAR(coefficient(c, edition, shape, slope, zone, a2 * 5, direction, more), c2, 1e-12,
               "flat above the largest area");
    CHECK_NEAR(coefficient(c, edition, shape, slope, zone, middle, direction, more), (c1 + c2) / 2,
               1e-3, "half way on the logarithm of area");
    if (f[12][0] != '\0')
        CHECK_NEAR(coefficient(c, edition, shape, slope, zone, middle, direction, more),
                   atof(f[12]) + atof(f[13]) * log10(middle), 2e-3,
                   "the equation of the commentary");
}

static void check_slopes(struct calculation *c, const char *edition, char *const f[ROW_FIELDS],
                         const char *shape, const char *zone)
{
    double over = atof(f[2]), to = atof(f[3]);
    check_areas(c, edition, f, shape, to, zone);
    if (over == to)
        return;
    check_areas(c, edition, f, shape, over + 0.001, zone);
    check_areas(c, edition, f, shape, (over + to) / 2, zone);
}

static void check_row(struct calculation *c, const char *edition, char *const f[ROW_FIELDS])
{
    char shapes[60], *shape, *rest;
    snprintf(shapes, sizeof shapes, "%s", f[1]);
    for (shape = strtok_r(shapes, "/", &rest); shape != NULL; shape = strtok_r(NULL, "/", &rest)) {
        char zones[60], *zone, *others;
        snprintf(zones, sizeof zones, "%s", f[6]);
        for (zone = strtok_r(zones, "/", &others); zone != NULL;
             zone = strtok_r(NULL, "/", &others))
            check_slopes(c, edition, f, shape, zone);
    }
}

static void check_7_10(struct calculation *c, char *const f[ROW_FIELDS])
{
    check_row(c, "7-10", f);
}
static void check_7_16(struct calculation *c, char *const f[ROW_FIELDS])
{
    check_row(c, "7-16", f);
}
static void check_7_22(struct calculation *c, char *const f[ROW_FIELDS])
{
    check_row(c, "7-22", f);
}

/* Derived by hand from the rows above; no published value. */
static void check_derived(struct calculation *c)
{
    CHECK_NEAR(coefficient(c, "7-16", "gable", 15, "2r", 25, "uplift", ""), -2.431, 6e-4,
               "2B zone 2r at 25 ft²");
    CHECK_NEAR(coefficient(c, "7-16", "gable", 25, "1", 50, "uplift", ""), -1.263, 6e-4,
               "2C zone 1 at 50 ft²");
    CHECK_NEAR(coefficient(c, "7-16", "gable", 35, "3e", 10, "uplift", ""), -2.493, 6e-4,
               "2D zone 3e at 10 ft²");
    CHECK_NEAR(coefficient(c, "7-16", "hip", 15, "3", 50, "uplift", ", height_to_width 0.5"),
               -1.424, 6e-4, "2E zone 3 at 50 ft², h/B 0.5");
    CHECK_NEAR(coefficient(c, "7-16", "hip", 15, "3", 10, "uplift", ", height_to_width 0.65"), -2.2,
               1e-9, "2E half way between h/B 0.5 and 0.8");
    CHECK_NEAR(coefficient(c, "7-16", "hip", 15, "3", 10, "uplift", ", height_to_width 3"), -2.6,
               1e-9, "2E over h/B 0.8");
    CHECK_NEAR(coefficient(c, "7-16", "hip", 15, "3", 10, "uplift", ", height_to_width 0.1"), -1.8,
               1e-9, "2E below h/B 0.5");
    CHECK_NEAR(coefficient(c, "7-16", "hip", 32.5, "1", 10, "uplift", ""), -1.268, 1e-9,
               "2H half way between 30° and 35°");
    CHECK_NEAR(coefficient(c, "7-22", "hip", 36, "3", 10, "uplift", ""), -2.2, 1e-9,
               "7-22 2G half way between 27° and 45°");
    CHECK_NEAR(coefficient(c, "7-16", "gable", 0, "1'", 10, "uplift", ""), -0.9, 0,
               "a level roof belongs to the first band");
    CHECK(coefficient(c, "7-16", "gable", 20, "1", 10, "uplift", "") == -2.0 &&
              coefficient(c, "7-16", "gable", 20.01, "1", 10, "uplift", "") == -1.5,
          "20° itself is still in the band up to 20°");
}

static void check_refusals(struct calculation *c)
{
    static const struct {
        const char *inputs;
        enum stop_kind kind;
        const char *words;
    } refusals[] = {
        {"edition 7-16, shape gable, slope 46 °, zone 1, area 10 ft², direction uplift",
         STOP_BEYOND, "gable roof of 46°"},
        {"edition 7-16, shape hip, slope 28 °, zone 1, area 10 ft², direction uplift", STOP_BEYOND,
         "hip roof of 28°"},
        {"edition 7-16, shape monoslope, slope 2 °, zone 1, area 10 ft², direction uplift",
         STOP_BEYOND, "monoslope"},
        {"edition 7-16, shape flat, slope 8 °, zone 1, area 10 ft², direction uplift", STOP_BEYOND,
         "flat roof of 8°"},
        {"edition 7-22, shape gable, slope 5 °, zone 1, area 10 ft², direction uplift", STOP_BEYOND,
         "7-22"},
        {"edition 7-22, shape gable, slope 15 °, zone 1, area 10 ft², direction uplift, overhang "
         "yes",
         STOP_BEYOND, "over an overhang"},
        {"edition 7-10, shape gable, slope 15 °, zone 1, area 10 ft², direction uplift, overhang "
         "yes",
         STOP_BEYOND, "over an overhang"},
        {"edition 7-16, shape hip, slope 15 °, zone 1, area 10 ft², direction uplift, overhang "
         "yes, height_to_width 0.4",
         STOP_BEYOND, "zone 1 over an overhang"},
        {"edition 7-16, shape gable, slope 15 °, zone 2, area 10 ft², direction uplift", STOP_WRONG,
         "it has 1 2e 2n 2r 3e 3r"},
        {"edition 7-10, shape gable, slope 15 °, zone 2e, area 10 ft², direction uplift",
         STOP_WRONG, "it has 1 2 3"},
        {"edition 7-16, shape hip, slope 15 °, zone 1, area 10 ft², direction uplift", STOP_WRONG,
         "height_to_width is not given"},
        {"edition 7-05, shape gable, slope 15 °, zone 1, area 10 ft², direction uplift", STOP_WRONG,
         "'7-05' is no edition"},
        {"edition 7-16, shape gable, slope 15 °, zone 1, area 0 ft², direction uplift", STOP_WRONG,
         "area is 0 ft²"},
        {"edition 7-16, shape gable, zone 1, area 10 ft², direction uplift", STOP_WRONG,
         "slope is not given"},
    };
    for (size_t i = 0; i < sizeof refusals / sizeof refusals[0]; i++)
        CHECK(!calculate_text(c, "external_pressure_coefficient", refusals[i].inputs) &&
                  stopped_with(c, refusals[i].kind, refusals[i].words),
              refusals[i].inputs);
}

/* Worked examples */

/* EX02: City of Everett WA record 1590007 p. 14, ASCE 7-16, gable 18°, 98 mph, Kz 0.85, attachment
 * 32.5 in x 48 in. Its arithmetic is right; its coefficients are those of the 20° to 27° band. */
static void check_ex02(struct calculation *c)
{
    static const struct {
        const char *zone;
        const char *exposed;
        double printed, sheet; /* psf; GCp as printed */
        double right;          /* GCp of the band that holds 18° */
    } rows[] = {{"1", "no", 20.9, -1.5, -2.0},
                {"2r", "yes", 52.4, -2.5, -2.95},
                {"3r", "yes", 75.4, -3.6, -3.54}};
    double q = velocity(c, "7-16", 98, "C", 15);
    CHECK_NEAR(q, 17.76, 0.03, "EX02 velocity pressure (printed 17.8 with Kz 0.85)");
    for (size_t i = 0; i < 3; i++) {
        CHECK(calculate_with(c, "panel_pressure",
                             "edition 7-16, velocity_pressure 17.764 psf, uplift_coefficient %g, "
                             "down_coefficient 0.3, area 10.8333333 ft², exposed %s",
                             rows[i].sheet, rows[i].exposed),
              "EX02 pressure");
        CHECK_NEAR(result_number(c, "uplift"), rows[i].printed, 0.06, "EX02 pressure as printed");
        CHECK_NEAR(result_number(c, "equalization_factor"), 0.7861, 5e-5, "EX02 γa");
        double is = coefficient(c, "7-16", "gable", 18, rows[i].zone, 10.8333, "uplift", "");
        CHECK_NEAR(is, rows[i].right, 6e-3, "EX02: what 18° truly has");
        CHECK(fabs(is - rows[i].sheet) > 0.05, "EX02: the sheet's wrong band is not reproduced");
    }
    CHECK_NEAR(coefficient(c, "7-16", "gable", 24, "3e", 4, "uplift", ""), -3.6, 1e-9,
               "EX02: the sheet's -3.6 is the next band's");
}

/* EX05: City of Santa Ana record 370505 pp. 67-70, ASCE 7-16, 120 mph, C, 30 ft (Kz printed 0.98).
 */
static void check_ex05(struct calculation *c)
{
    CHECK_NEAR(velocity(c, "7-16", 120, "C", 30), 30.71, 0.08, "EX05 velocity pressure");
}

/* EX17: 2018 IRC Table R301.2(2): exposure B, 30 ft, 10 ft², roof to 7°, at 0.6 W, GCpi 0.18; the
 * stored page drops decimals. */
static void check_ex17(struct calculation *c)
{
    static const double speeds[] = {110, 115, 120, 130, 140, 150};
    static const double zone1[] = {13, 14, 15, 18, 21, 24}, zone3[] = {33, 36, 39, 46, 53, 61};
    for (size_t i = 0; i < 6; i++) {
        double q = velocity(c, "7-10", speeds[i], "B", 30);
        for (int zone = 1; zone <= 3; zone += 2) {
            char name[2] = {(char)('0' + zone), '\0'};
            double gcp = coefficient(c, "7-10", "gable", 5, name, 10, "uplift", "");
            CHECK(calculate_with(c, "bare_roof_pressure",
                                 "edition 7-10, velocity_pressure %.12g psf, uplift_coefficient "
                                 "%g, down_coefficient 0.3, enclosure enclosed",
                                 q, gcp),
                  "EX17 pressure");
            double asd = 0.6 * result_number(c, "uplift"),
                   printed = zone == 1 ? zone1[i] : zone3[i];
            CHECK(fabs(asd - printed) < 0.99, "EX17 to the whole psf");
        }
    }
    CHECK_NEAR(0.6 * velocity(c, "7-10", 110, "B", 30) * 1.18, 13.05, 0.02, "EX17 recomputed");
}

/* Panels */

static void check_gamma_a(struct calculation *c, char *const f[ROW_FIELDS])
{
    CHECK(calculate_with(c, "pressure_equalization", "edition 7-16, area %s ft²", f[0]),
          "γa of a row");
    CHECK_NEAR(result_number(c, "factor"), atof(f[1]), 6e-4, "γa is that of its row");
}

static void check_panels(struct calculation *c)
{
    CHECK(!calculate_text(c, "pressure_equalization", "edition 7-10, area 20 ft²") &&
              stopped_with(c, STOP_BEYOND, "7-10 has no section"),
          "7-10 has no equalization");
    CHECK(calculate_text(c, "panel_pressure",
                         "edition 7-10, velocity_pressure 20 psf, uplift_coefficient -2, "
                         "down_coefficient 0.5, area 100 ft², exposed yes, minimum 16 psf"),
          "7-10 panel");
    CHECK_NEAR(result_number(c, "uplift"), 40, 1e-9, "7-10: no equalization, no edge factor");
    CHECK_NEAR(result_number(c, "down"), 16, 1e-9, "the minimum holds either way");
    CHECK(result_amount(c, "edge_factor")->type == AMOUNT_NONE, "7-10 has no edge factor");
    CHECK(calculate_text(c, "panel_pressure",
                         "edition 7-22, velocity_pressure 20 psf, uplift_coefficient -2, "
                         "down_coefficient 0.5, area 100 ft², exposed yes"),
          "7-22 panel");
    CHECK_NEAR(result_number(c, "uplift"), 20 * 0.85 * 2 * 1.5 * 0.4, 1e-9,
               "7-22 has Kd in the pressure");
    CHECK_NEAR(result_number(c, "down"), 20 * 0.85 * 0.5 * 0.4, 1e-9,
               "the edge factor is for uplift alone");
}

static void check_edge_factor(struct calculation *c)
{
    static const struct {
        const char *inputs;
        double factor;
    } rows[] = {
        {"distance_to_roof_edge 12 ft, distance_from_array_edge 0 ft", 1.5},
        {"distance_to_roof_edge 10 ft, distance_from_array_edge 0 ft", 1}, /* 0.5 h is not over */
        {"distance_to_roof_edge 12 ft, distance_from_array_edge 7.5 ft", 1.5}, /* 1.5 Lp */
        {"distance_to_roof_edge 12 ft, distance_from_array_edge 7.6 ft", 1},
        {"distance_to_roof_edge 12 ft, distance_from_array_edge 0 ft, distance_to_neighbor 4 ft",
         1},
        {"distance_to_roof_edge 12 ft, distance_from_array_edge 0 ft, distance_to_neighbor 4.1 ft",
         1.5},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        CHECK(calculate_with(c, "array_edge_factor",
                             "edition 7-16, mean_roof_height 20 ft, height_above_roof 6 in, "
                             "panel_length 5 ft, %s",
                             rows[i].inputs),
              rows[i].inputs);
        CHECK_NEAR(result_number(c, "factor"), rows[i].factor, 0, rows[i].inputs);
    }
    CHECK(calculate_text(c, "array_edge_factor",
                         "edition 7-16, mean_roof_height 20 ft, height_above_roof 15 in, "
                         "panel_length 5 ft, distance_to_roof_edge 12 ft, distance_from_array_edge "
                         "0 ft, distance_to_neighbor 4.5 ft") &&
              result_number(c, "factor") == 1,
          "4 h2 = 5 ft counts where it is more than 4 ft");
}

static void check_parallel_section(struct calculation *c)
{
    static const struct {
        const char *enclosure, *tilt, *height, *gap, *spacing, *edge, *words;
    } rows[] = {
        {"enclosed", "2 °", "10 in", "0.25 in", "6.7 ft", "20 in", NULL},
        {"partially enclosed", "0 °", "5 in", "0.5 in", "5.5 ft", "36 in", NULL},
        {"open", "0 °", "5 in", "0.5 in", "5.5 ft", "36 in", "open"},
        {"enclosed", "2.1 °", "5 in", "0.5 in", "5.5 ft", "36 in", "tilted 2.1°"},
        {"enclosed", "0 °", "10.1 in", "0.5 in", "5.5 ft", "36 in", "10.1 in above the roof"},
        {"enclosed", "0 °", "5 in", "0.2 in", "5.5 ft", "36 in", "less than 0.25 in"},
        {"enclosed", "0 °", "5 in", "0.5 in", "6.8 ft", "36 in", "more than 6.7 ft"},
        {"enclosed", "0 °", "10 in", "0.5 in", "5.5 ft", "19 in", "19 in from a roof edge"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        bool holds = calculate_with(
            c, "parallel_section",
            "edition 7-16, enclosure %s, tilt %s, height_above_roof %s, panel_gap %s, gap_spacing "
            "%s, edge_distance %s",
            rows[i].enclosure, rows[i].tilt, rows[i].height, rows[i].gap, rows[i].spacing,
            rows[i].edge);
        if (rows[i].words == NULL)
            CHECK(holds && c->results[0].yes, "the section covers the array");
        else
            CHECK(!holds && stopped_with(c, STOP_BEYOND, rows[i].words), rows[i].words);
    }
    CHECK(!calculate_text(c, "parallel_section",
                          "edition 7-10, enclosure enclosed, tilt 0 °, height_above_roof 5 in, "
                          "panel_gap 1 in, gap_spacing 5 ft, edge_distance 36 in") &&
              stopped_with(c, STOP_BEYOND, "7-10"),
          "7-10 has no such section");
}

static void check_zone_width(struct calculation *c)
{
    static const struct {
        const char *edition;
        double slope, height, least, width, corner;
    } rows[] = {
        {"7-16", 18, 15, 30, 3, 3},    /* 0.1 x 30 = 3 < 0.4 x 15 = 6 */
        {"7-16", 18, 8, 100, 4, 4},    /* 0.4 h = 3.2, but 0.04 x 100 = 4 */
        {"7-16", 18, 20, 60, 6, 6},    /* 0.1 x 60 */
        {"7-16", 18, 15, 20, 3, 3},    /* 3 ft at least */
        {"7-16", 5, 20, 60, 12, 4},    /* 0.6 h, 0.2 h */
        {"7-10", 5, 20, 60, 6, 6},     /* the older strips */
        {"7-10", 5, 10, 400, 8, 8},    /* over 300 ft: 0.8 h at most, 0.04 x 400 = 16 */
        {"7-10", 18, 10, 400, 16, 16}, /* that is for low slopes alone */
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        CHECK(calculate_with(c, "zone_width",
                             "edition %s, slope %g °, height %g ft, least_width %g ft",
                             rows[i].edition, rows[i].slope, rows[i].height, rows[i].least),
              "zone width");
        CHECK_NEAR(result_number(c, "width"), rows[i].width, 1e-9, "width of the strip");
        CHECK_NEAR(result_number(c, "corner"), rows[i].corner, 1e-9, "depth of the corner");
    }
}

/* Monotony, at random with a fixed seed: qh never falls with speed (50 to 250 mph), height (0 to
 * 60 ft), exposure B to D, Kzt (1 to 3) nor rises with elevation; |GCp|, γa and so the pressure
 * never rise with area (0.1 to 10,000 ft²). */
static void check_monotony(struct calculation *c)
{
    static const char *const editions[] = {"7-10", "7-16", "7-22"};
    static const char *const exposures[] = {"B", "C", "D"};
    unsigned long long seed = 7;
    for (size_t i = 0; i < 600; i++) {
        const char *edition = editions[i % 3];
        size_t e = i / 3 % 3;
        double speed = random_between(&seed, 50, 240), height = random_between(&seed, 0, 55);
        double q = velocity(c, edition, speed, exposures[e], height);
        CHECK(velocity(c, edition, speed + random_between(&seed, 0, 10), exposures[e], height) >= q,
              "qh never falls with speed");
        CHECK(velocity(c, edition, speed, exposures[e], height + random_between(&seed, 0, 5)) >= q,
              "qh never falls with height");
        CHECK(e == 2 || velocity(c, edition, speed, exposures[e + 1], height) >= q,
              "qh never falls from exposure B to D");
        double low = random_between(&seed, -300, 14000), high = low + random_between(&seed, 0, 900);
        double factors[2];
        for (int k = 0; k < 2; k++) {
            calculate_with(c, "velocity_pressure",
                           "edition %s, speed 110 mph, exposure C, height 20 ft, "
                           "topographic_factor %g, elevation %.9g ft",
                           edition, 1.2, k == 0 ? low : high);
            factors[k] = result_number(c, "pressure");
        }
        CHECK(factors[1] <= factors[0], "qh never rises with elevation");
    }
    for (size_t i = 0; i < 600; i++) {
        static const char *const zones[] = {"1", "2e", "2n", "2r", "3e", "3r"};
        const char *zone = zones[i % 6];
        double slope = random_between(&seed, 7.01, 45), area = random_between(&seed, 0.1, 600);
        const char *direction = i % 4 == 0 ? "down" : "uplift";
        double at = coefficient(c, "7-16", "gable", slope, zone, area, direction, "");
        double more = coefficient(c, "7-16", "gable", slope, zone,
                                  area + random_between(&seed, 0, 200), direction, "");
        CHECK(fabs(more) <= fabs(at), "|GCp| never rises with area");
    }
}

/* The exception: force is pressure times area, and where GCp falls faster than area grows (2B zone
 * 1, 20 to 100 ft²: -2.0 to -0.5) a larger area has less force. A rule must look at what governs.
 */
static void check_force_exception(struct calculation *c)
{
    double forces[2];
    const double areas[2] = {40, 99};
    for (int i = 0; i < 2; i++) {
        double gcp = coefficient(c, "7-16", "gable", 15, "1", areas[i], "uplift", "");
        calculate_with(c, "panel_pressure",
                       "edition 7-16, velocity_pressure 20 psf, uplift_coefficient %.12g, "
                       "down_coefficient 0.3, area %g ft², exposed no",
                       gcp, areas[i]);
        forces[i] = result_number(c, "uplift") * areas[i];
    }
    CHECK(forces[1] < forces[0], "force falls between 40 and 99 ft² in zone 1 of 2B");
}

int main(void)
{
    struct calculation c;
    calculation_begin(&c);
    CHECK(each_row(&c, TESTS_DIR "/structural/kz.csv", check_kz) == 90, "90 rows of Kz");
    CHECK(each_row(&c, TESTS_DIR "/structural/ke.csv", check_ke) == 11, "11 rows of Ke");
    check_floor(&c);
    CHECK(each_row(&c, TESTS_DIR "/structural/gcp_7_10.csv", check_7_10) == 22, "7-10 rows");
    CHECK(each_row(&c, TESTS_DIR "/structural/gcp_7_16.csv", check_7_16) == 114, "7-16 rows");
    CHECK(each_row(&c, TESTS_DIR "/structural/gcp_7_22.csv", check_7_22) == 36, "7-22 rows");
    check_derived(&c);
    check_refusals(&c);
    check_ex02(&c);
    check_ex05(&c);
    check_ex17(&c);
    CHECK(each_row(&c, TESTS_DIR "/structural/gamma_a.csv", check_gamma_a) == 7, "rows of γa");
    check_panels(&c);
    check_edge_factor(&c);
    check_parallel_section(&c);
    check_zone_width(&c);
    check_monotony(&c);
    check_force_exception(&c);
    calculation_end(&c);
    return checks_end();
}
