/* Snow on roofs. Sources stand beside the examples; tests/structural/snow_cs.csv holds the curves.
 */
#include "calculation.h"

static const char ground[] = "basis service level, exposure_factor 1, importance_factor 1";

static double slope_factor(struct calculation *c, double slope, double thermal, const char *surface)
{
    return calculate_with(c, "snow_slope_factor",
                          "edition 7-16, slope %.12g °, thermal_factor %g, surface %s", slope,
                          thermal, surface)
               ? result_number(c, "factor")
               : NAN;
}

static void check_curve(struct calculation *c, char *const f[ROW_FIELDS])
{
    double thermal = atof(f[0]), full = atof(f[2]), none = atof(f[3]);
    const char *surface = f[1][0] == 'y' ? "unobstructed slippery" : "other";
    CHECK_NEAR(slope_factor(c, 0, thermal, surface), 1, 0, "a level roof keeps all");
    CHECK_NEAR(slope_factor(c, full, thermal, surface), 1, 1e-12, "all to the knee");
    CHECK_NEAR(slope_factor(c, (full + none) / 2, thermal, surface), 0.5, 1e-12, "half way down");
    CHECK_NEAR(slope_factor(c, none, thermal, surface), 0, 1e-12, "none from the far end");
    CHECK_NEAR(slope_factor(c, 85, thermal, surface), 0, 0, "none beyond it");
}

static void check_factors(struct calculation *c)
{
    static const struct {
        const char *name, *inputs;
        double factor;
    } rows[] = {
        {"snow_exposure_factor", "exposure B, roof fully exposed", 0.9},
        {"snow_exposure_factor", "exposure B, roof partially exposed", 1.0},
        {"snow_exposure_factor", "exposure B, roof sheltered", 1.2},
        {"snow_exposure_factor", "exposure C, roof fully exposed", 0.9},
        {"snow_exposure_factor", "exposure C, roof partially exposed", 1.0},
        {"snow_exposure_factor", "exposure C, roof sheltered", 1.1},
        {"snow_exposure_factor", "exposure D, roof fully exposed", 0.8},
        {"snow_exposure_factor", "exposure D, roof partially exposed", 0.9},
        {"snow_exposure_factor", "exposure D, roof sheltered", 1.0},
        {"snow_thermal_factor", "edition 7-16, heated yes, ventilated no", 1.0},
        {"snow_thermal_factor", "edition 7-10, heated yes, ventilated yes", 1.1},
        {"snow_thermal_factor", "edition 7-16, heated no, ventilated yes", 1.2},
        {"snow_importance_factor", "edition 7-16, risk_category I", 0.8},
        {"snow_importance_factor", "edition 7-16, risk_category II", 1.0},
        {"snow_importance_factor", "edition 7-10, risk_category III", 1.1},
        {"snow_importance_factor", "edition 7-16, risk_category IV", 1.2},
        {"snow_importance_factor", "edition 7-22, risk_category IV", 1.0},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        CHECK(calculate_text(c, rows[i].name, rows[i].inputs), rows[i].inputs);
        CHECK_NEAR(result_number(c, "factor"), rows[i].factor, 1e-12, rows[i].inputs);
    }
}

/* EX10: O'Rourke, Snow Loads: Guide to ASCE 7-10, Example 4-3: pg 30, Ct 1.2, 0.5:12: 25.2 psf
 * (25), minimum 20, no rain on snow over pg 20. */
static void check_ex10(struct calculation *c)
{
    CHECK(calculate_with(c, "roof_snow",
                         "edition 7-10, %s, ground_snow 30 psf, thermal_factor 1.2, slope "
                         "0.5/12, surface other, eave_to_ridge 150 ft",
                         ground),
          "EX10");
    CHECK_NEAR(result_number(c, "sloped"), 25.2, 1e-9, "EX10 sloped");
    CHECK_NEAR(result_number(c, "load"), 25.2, 1e-9, "EX10 load");
    CHECK_NEAR(result_number(c, "minimum"), 20, 1e-9, "EX10 minimum");
    CHECK_NEAR(result_number(c, "rain"), 0, 0, "EX10 no rain on snow");
}

/* EX11: a guide's page on a 6:12 unheated slippery roof, pg 50, Ce 0.9. Its arithmetic is right
 * (34.65 printed 34.7); unheated is Ct 1.2, and 7-22 cannot be worked with the older equation. */
static void check_ex11(struct calculation *c)
{
    CHECK(calculate_text(c, "flat_roof_snow",
                         "edition 7-16, basis service level, ground_snow 50 psf, exposure_factor "
                         "0.9, thermal_factor 1.1, importance_factor 1"),
          "EX11 as printed");
    CHECK_NEAR(result_number(c, "load"), 34.65, 1e-9, "EX11 arithmetic");
    CHECK(calculate_text(c, "snow_thermal_factor", "edition 7-16, heated no, ventilated no"),
          "EX11 Ct");
    CHECK_NEAR(result_number(c, "factor"), 1.2, 1e-12, "EX11: unheated is 1.2, not 1.1");
    CHECK(calculate_text(c, "flat_roof_snow",
                         "edition 7-16, basis service level, ground_snow 50 psf, exposure_factor "
                         "0.9, thermal_factor 1.2, importance_factor 1"),
          "EX11 set right");
    CHECK_NEAR(result_number(c, "load"), 37.8, 1e-9, "EX11 with the right Ct");
    CHECK_NEAR(slope_factor(c, 26.6, 1.2, "unobstructed slippery"), 0.789, 6e-4, "EX11 Cs, Ct 1.2");
    CHECK(!calculate_text(c, "snow_thermal_factor", "edition 7-22, heated no, ventilated no") &&
              stopped_with(c, STOP_BEYOND, "7-22 takes Ct from tables"),
          "EX11: 7-22 has other tables");
}

/* EX12: engineers' discussion of ASCE 7 Eq. C7.4-2a: Ct 1.1, 26.6°, slippery: 0.72. */
static void check_ex12(struct calculation *c)
{
    CHECK_NEAR(slope_factor(c, 26.6, 1.1, "unobstructed slippery"), 0.7233, 5e-5, "EX12 Cs");
}

/* EX13: roof snow printed in permit letters: 0.7 pg: 35 for 50, 14 for 20, 5 for 7 psf. */
static void check_ex13(struct calculation *c)
{
    static const double pairs[3][2] = {{50, 35}, {20, 14}, {7, 5}};
    for (size_t i = 0; i < 3; i++) {
        CHECK(calculate_with(c, "flat_roof_snow",
                             "edition 7-16, %s, ground_snow %g psf, thermal_factor 1", ground,
                             pairs[i][0]),
              "EX13");
        CHECK_NEAR(result_number(c, "load"), pairs[i][1], 0.11, "EX13 roof snow");
    }
}

static double balanced(struct calculation *c, const char *edition, const char *basis, double snow,
                       double slope, double width, const char *more)
{
    return calculate_with(c, "roof_snow",
                          "edition %s, basis %s, ground_snow %.12g psf, exposure_factor 1, "
                          "thermal_factor 1, importance_factor 1, slope %.12g °, surface other, "
                          "eave_to_ridge %g ft%s",
                          edition, basis, snow, slope, width, more)
               ? result_number(c, "load")
               : NAN;
}

static void check_minimum_and_rain(struct calculation *c)
{
    CHECK_NEAR(balanced(c, "7-16", "service level", 15, 10, 15, ""), 15, 1e-9,
               "below 15° and to 20 psf the minimum is pg");
    CHECK_NEAR(balanced(c, "7-16", "service level", 15, 15, 15, ""), 10.5, 1e-9,
               "no minimum at 15°");
    CHECK_NEAR(balanced(c, "7-16", "service level", 25, 10, 15, ""), 20, 1e-9,
               "over 20 psf the minimum is 20");
    CHECK_NEAR(balanced(c, "7-16", "service level", 25, 20, 15, ", minimum 25 psf"), 25, 1e-9,
               "a town's minimum holds at any slope");
    CHECK_NEAR(balanced(c, "7-16", "service level", 20, 0.25, 15, ""), 20, 1e-9,
               "14 + 5 of rain is less than the minimum");
    CHECK_NEAR(result_number(c, "rain"), 5, 0, "rain on snow below W/50 = 0.3°");
    CHECK_NEAR(balanced(c, "7-16", "service level", 20, 0.3, 15, ""), 20, 1e-9, "at W/50");
    CHECK_NEAR(result_number(c, "rain"), 0, 0, "no rain on snow at W/50");
    CHECK_NEAR(balanced(c, "7-16", "service level", 20.1, 0.25, 15, ""), 20, 1e-9, "over 20 psf");
    CHECK_NEAR(result_number(c, "rain"), 0, 0, "no rain on snow over 20 psf");
    CHECK_NEAR(balanced(c, "7-16", "service level", 0, 0, 15, ""), 0, 0, "no snow, no rain on it");
    CHECK_NEAR(balanced(c, "7-16", "service level", 50, 50, 15, ""), 17.5, 1e-9,
               "Cs = 0.5 half way between 30° and 70°");
}

static void check_strength_level(struct calculation *c)
{
    CHECK_NEAR(balanced(c, "7-22", "strength level", 60, 25, 15, ""), 42, 1e-9,
               "7-22 where no curve falls yet");
    CHECK_TEXT(calculate_with(c, "flat_roof_snow",
                              "edition 7-22, basis strength level, ground_snow 60 psf, "
                              "exposure_factor 1, thermal_factor 1, importance_factor 1")
                   ? result_amount(c, "basis")->word
                   : NULL,
               "strength level", "the level goes with the load");
    CHECK(isnan(balanced(c, "7-22", "strength level", 60, 40, 15, "")) &&
              stopped_with(c, STOP_BEYOND, "curves of ASCE 7-22"),
          "7-22 curves are not sourced");
    CHECK(isnan(balanced(c, "7-22", "strength level", 60, 10, 15, "")) &&
              stopped_with(c, STOP_BEYOND, "Table 7.3-4"),
          "7-22 minimum is not sourced");
    CHECK_NEAR(balanced(c, "7-22", "strength level", 60, 10, 15, ", minimum 30 psf"), 42, 1e-9,
               "7-22 with a minimum given");
    CHECK(isnan(balanced(c, "7-22", "strength level", 15, 0.1, 15, ", minimum 30 psf")) &&
              stopped_with(c, STOP_BEYOND, "rain on snow"),
          "7-22 rain on snow is not sourced");
    CHECK(isnan(balanced(c, "7-22", "service level", 60, 25, 15, "")) &&
              stopped_with(c, STOP_BEYOND, "of strength level"),
          "a service-level map under 7-22");
    CHECK(isnan(balanced(c, "7-16", "strength level", 60, 25, 15, "")) &&
              stopped_with(c, STOP_BEYOND, "of service level"),
          "a strength-level map under 7-16");
    CHECK(!calculate_text(c, "flat_roof_snow",
                          "edition 7-22, basis strength level, ground_snow 60 psf, "
                          "exposure_factor 1, thermal_factor 1, importance_factor 1.1") &&
              stopped_with(c, STOP_WRONG, "7-22 has none"),
          "7-22 has no importance factor");
    CHECK(isnan(slope_factor(c, 40, 1.05, "other")) && stopped_with(c, STOP_BEYOND, "Ct 1.05"),
          "no curve between Ct 1.0 and 1.1");
    CHECK(isnan(slope_factor(c, 40, 1.15, "other")) && stopped_with(c, STOP_BEYOND, "Ct 1.15"),
          "no curve between Ct 1.1 and 1.2");
    CHECK(!calculate_text(c, "flat_roof_snow",
                          "edition 7-16, basis service level, ground_snow 501 psf, "
                          "exposure_factor 1, thermal_factor 1, importance_factor 1") &&
              stopped_with(c, STOP_WRONG, "ground_snow is 501 psf"),
          "ground snow out of range is named");
}

static bool unbalanced(struct calculation *c, double slope, double width, const char *shape,
                       const char *rafters)
{
    return calculate_with(c, "unbalanced_snow",
                          "edition 7-16, %s, ground_snow 30 psf, thermal_factor 1, slope %g °, "
                          "surface other, eave_to_ridge %g ft, shape %s, simple_rafters %s",
                          ground, slope, width, shape, rafters);
}

static void check_unbalanced(struct calculation *c)
{
    CHECK(unbalanced(c, 20, 20, "gable", "yes"), "narrow gable");
    CHECK_NEAR(result_number(c, "load"), 30, 1e-9, "leeward Is pg");
    CHECK_NEAR(result_number(c, "windward"), 0, 0, "windward nothing");
    CHECK(unbalanced(c, 2.37, 20, "gable", "yes") && !result_amount(c, "needed")->yes, "too flat");
    CHECK_NEAR(result_number(c, "load"), 21, 1e-9, "the balanced load stays");
    CHECK(unbalanced(c, 2.38, 20, "gable", "yes") && result_amount(c, "needed")->yes, "2.38°");
    CHECK(unbalanced(c, 30.2, 20, "gable", "yes") && result_amount(c, "needed")->yes, "30.2°");
    CHECK(unbalanced(c, 30.3, 20, "gable", "yes") && !result_amount(c, "needed")->yes, "too steep");
    /* By hand: W 30 ft, pg 30: γ = 17.9 pcf, hd = 0.43 x 30^(1/3) x 40^(1/4) - 1.5 = 1.8602 ft; S
     * at 20° = 2.7475, √S = 1.6576: surcharge 20.09 psf over 8.223 ft. */
    CHECK(unbalanced(c, 20, 30, "gable", "no"), "wide gable");
    CHECK_NEAR(result_number(c, "surcharge"), 20.09, 0.02, "drift over the ridge");
    CHECK_NEAR(result_number(c, "surcharge_width"), 8.223, 0.005, "its width");
    CHECK_NEAR(result_number(c, "windward"), 6.3, 1e-9, "0.3 ps");
    CHECK_NEAR(result_number(c, "load"), 41.09, 0.02, "ps and surcharge");
    /* W 12 ft without simple rafters: lu 20 ft at least, and with Is 1.2 √1.2 more: hd = (0.43 x
     * 20^(1/3) x 40^(1/4) - 1.5) √1.2 = 1.5723 ft. */
    CHECK(
        calculate_text(c, "unbalanced_snow",
                       "edition 7-16, basis service level, ground_snow 30 psf, exposure_factor 1, "
                       "thermal_factor 1, importance_factor 1.2, slope 20 °, surface other, "
                       "eave_to_ridge 12 ft, shape gable, simple_rafters no"),
        "narrow gable with trusses");
    CHECK_NEAR(result_number(c, "surcharge"), 1.57235 * 17.9 / 1.65755, 2e-3, "drift with Is");
    CHECK_NEAR(result_number(c, "leeward"), 25.2, 1e-9, "ps with Is");
    /* Snow weighs no more than 30 pcf, here for 0.13 x 150 + 14 = 33.5: hd = 0.43 x 30^(1/3) x
     * 160^(1/4) - 1.5 = 3.252 ft. */
    CHECK(calculate_text(c, "unbalanced_snow",
                         "edition 7-16, basis service level, ground_snow 150 psf, exposure_factor "
                         "1, thermal_factor 1, importance_factor 1, slope 20 °, surface other, "
                         "eave_to_ridge 30 ft, shape gable, simple_rafters no"),
          "deep snow");
    CHECK_NEAR(result_number(c, "surcharge"), 3.252 * 30 / 1.65755, 0.02, "at most 30 pcf");
    /* From a side of 60 ft more is blown over: hd = 0.43 x 60^(1/3) x 40^(1/4) - 1.5 = 2.7335 ft.
     */
    CHECK(
        calculate_text(c, "unbalanced_snow",
                       "edition 7-16, basis service level, ground_snow 30 psf, exposure_factor 1, "
                       "thermal_factor 1, importance_factor 1, slope 20 °, surface other, "
                       "eave_to_ridge 30 ft, shape gable, simple_rafters no, windward_width 60 ft"),
        "a wider side to windward");
    CHECK_NEAR(result_number(c, "surcharge"), 2.7335 * 17.9 / 1.65755, 5e-3, "its fetch counts");
    CHECK_NEAR(result_number(c, "surcharge_width"), 8 / 3.0 * 2.7335 * 1.65755, 5e-3, "its reach");
    CHECK(!unbalanced(c, 20, 30, "hip", "no") && stopped_with(c, STOP_BEYOND, "gables only"),
          "hips are not covered");
    CHECK(unbalanced(c, 1.2, 30, "flat", "no") && !result_amount(c, "needed")->yes &&
              unbalanced(c, 20, 30, "monoslope", "no") && !result_amount(c, "needed")->yes &&
              unbalanced(c, 31, 30, "hip", "no") && !result_amount(c, "needed")->yes,
          "no ridge, or too steep: no unbalanced case");
    CHECK(!calculate_text(c, "unbalanced_snow",
                          "edition 7-22, basis strength level, ground_snow 30 psf, exposure_factor "
                          "1, thermal_factor 1, importance_factor 1, slope 20 °, surface other, "
                          "eave_to_ridge 30 ft, shape gable, simple_rafters no") &&
              stopped_with(c, STOP_BEYOND, "7-22"),
          "7-22 is not covered");
    CHECK(!calculate_text(c, "unbalanced_snow",
                          "edition 7-10, basis service level, ground_snow 30 psf, exposure_factor "
                          "1, thermal_factor 1, importance_factor 1.1, slope 20 °, surface other, "
                          "eave_to_ridge 30 ft, shape gable, simple_rafters no") &&
              stopped_with(c, STOP_BEYOND, "Is = 1"),
          "7-10 with an importance factor is not covered");
}

/* Monotony at random, fixed seed: the balanced load never falls with ground snow (0 to 300 psf), Ce
 * (0.7 to 1.2) or Is (0.8 to 1.2) on slopes from W/50 up and never rises with slope (15° to 85°,
 * where no minimum and no rain add), on any curve; Cs never rises with slope nor falls with Ct. */
static void check_monotony(struct calculation *c)
{
    static const double thermals[] = {1.0, 1.1, 1.2};
    unsigned long long seed = 11;
    for (size_t i = 0; i < 500; i++) {
        double t = thermals[i % 3], snow = random_between(&seed, 0, 300);
        double ce = random_between(&seed, 0.7, 1.1), is = random_between(&seed, 0.8, 1.1);
        double slope = random_between(&seed, 0, 85), loads[2];
        for (int what = 0; what < 3; what++) {
            for (int k = 0; k < 2; k++) {
                double add = k * 0.1;
                calculate_with(c, "roof_snow",
                               "edition 7-16, basis service level, ground_snow %.9g psf, "
                               "exposure_factor %.9g, thermal_factor %g, importance_factor %.9g, "
                               "slope %.9g °, surface other, eave_to_ridge 40 ft",
                               snow + (what == 0 ? 100 * add : 0), ce + (what == 1 ? add : 0), t,
                               is + (what == 2 ? add : 0), slope < 1 ? 1 : slope);
                loads[k] = result_number(c, "load");
            }
            CHECK(loads[1] >= loads[0] - 1e-9, "more snow, exposure or importance: no less load");
        }
        double steep = random_between(&seed, 15, 80);
        CHECK(slope_factor(c, steep + 5, t, "other") <= slope_factor(c, steep, t, "other"),
              "Cs never rises with slope");
        CHECK(i % 3 == 2 || slope_factor(c, slope, thermals[i % 3 + 1], "unobstructed slippery") >=
                                slope_factor(c, slope, t, "unobstructed slippery"),
              "Cs never falls with Ct");
        CHECK(balanced(c, "7-16", "service level", snow, steep + 5, 40, "") <=
                  balanced(c, "7-16", "service level", snow, steep, 40, "") + 1e-9,
              "the load never rises with slope from 15° on");
    }
}

/* The exception: rain on snow (slopes below W/50) ends where the ground snow passes 20 psf, so a
 * sheltered unheated roof carries less at 20.5 psf than at 20. */
static void check_rain_exception(struct calculation *c)
{
    double loads[2];
    for (int k = 0; k < 2; k++) {
        calculate_with(c, "roof_snow",
                       "edition 7-16, basis service level, ground_snow %g psf, exposure_factor "
                       "1.2, thermal_factor 1.2, importance_factor 1, slope 0.1 °, surface other, "
                       "eave_to_ridge 40 ft",
                       k == 0 ? 20.0 : 20.5);
        loads[k] = result_number(c, "load");
    }
    CHECK_NEAR(loads[0], 0.7 * 1.44 * 20 + 5, 1e-9, "20 psf with rain");
    CHECK_NEAR(loads[1], 0.7 * 1.44 * 20.5, 1e-9, "20.5 psf without");
    CHECK(loads[1] < loads[0], "the load falls where rain on snow ends");
}

int main(void)
{
    struct calculation c;
    calculation_begin(&c);
    CHECK(each_row(&c, TESTS_DIR "/structural/snow_cs.csv", check_curve) == 6, "six curves");
    check_factors(&c);
    check_ex10(&c);
    check_ex11(&c);
    check_ex12(&c);
    check_ex13(&c);
    check_minimum_and_rain(&c);
    check_strength_level(&c);
    check_unbalanced(&c);
    check_monotony(&c);
    check_rain_exception(&c);
    calculation_end(&c);
    return checks_end();
}
