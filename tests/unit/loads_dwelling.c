/* Loads of dwellings against published worked examples, and of a small invented design. */
#include "service_trial.h"

static struct trial trial;

#define RUN(name, ...) trial_run(&trial, NULL, name, __VA_ARGS__, NULL)
#define HOUSE(area)    "floor_area", area, "small_appliance_circuits", "2", "laundry_circuits", "1"

/* Examples D2(a), (b), (c) of the NEC's Annex D, as a handbook prints them (flylib.com 2.419.1); a
 * sample problem of 18 July 2016 (jadelearning.com, optional method, 2014 NEC). */
static void test_optional(void)
{
    CHECK(RUN("dwelling_load_optional", HOUSE("1500 ft²"), "appliances", "20700 VA", "heating",
              "9 kW", "heating_kind", "four or more controls", "cooling", "1380 VA"),
          "D2(a)");
    CHECK_NEAR(trial_number(&trial, "load"), 21480, 1e-6, "D2(a): 17 880 + 3600 VA");
    CHECK_NEAR(trial_number(&trial, "current"), 89.5, 1e-9, "D2(a): at 240 V");
    CHECK(RUN("dwelling_load_optional", HOUSE("1500 ft²"), "appliances", "23800 VA", "heating",
              "1.5 kW", "heating_kind", "up to three controls", "cooling", "10080 VA"),
          "D2(b)");
    CHECK_NEAR(trial_number(&trial, "load"), 29200, 1e-6, "D2(b): 19 120 + 10 080 VA");
    CHECK(RUN("dwelling_load_optional", HOUSE("2000 ft²"), "appliances", "22700 VA", "heating",
              "15 kW", "heating_kind", "supplement to a heat pump", "cooling", "5760 VA"),
          "D2(c)");
    /* The page prints 15.51 kVA for heat pump and supplement, and 34 790 VA for all. */
    CHECK_NEAR(trial_number(&trial, "load"), 34790, 1e-6, "D2(c): 19 280 + 5760 + 9750 VA");
    CHECK(RUN("dwelling_load_optional", HOUSE("2800 ft²"), "appliances", "23500 VA", "heating",
              "15 kW", "cooling", "6960 VA"),
          "sample problem");
    CHECK_NEAR(trial_number(&trial, "load"), 30310, 1e-6, "20 560 + 9750 VA");
    CHECK_NEAR(trial_number(&trial, "current"), 126, 0.5, "prints 126 A");
    CHECK(trial_number(&trial, "strict_current") > trial_number(&trial, "current"),
          "strictly, cooling runs beside central heating");
}

/* 220.57 (2023): forums.mikeholt.com thread 2585012; expertce.com. */
static void test_charging(void)
{
    CHECK(RUN("dwelling_load_optional", HOUSE("1500 ft²"), "appliances", "20000 VA", "ev_charging",
              "5000 VA", "edition", "2020"),
          "before 2023");
    double before = trial_number(&trial, "load");
    CHECK_NEAR(before, 10000 + 0.4 * (9000 + 20000 + 5000 - 10000), 1e-6, "its rating");
    CHECK_NEAR(240 * trial_number(&trial, "strict_current"), before + 0.6 * 5000, 1e-6,
               "strictly in full");
    CHECK(RUN("dwelling_load_optional", HOUSE("1500 ft²"), "appliances", "20000 VA", "ev_charging",
              "5000 VA", "edition", "2023"),
          "2023");
    CHECK_NEAR(trial_number(&trial, "load") - before, 0.4 * 2200, 1e-6, "at least 7200 VA");
    CHECK(RUN("dwelling_load_optional", HOUSE("1500 ft²"), "appliances", "20000 VA", "edition",
              "2023") &&
              !trial_says(&trial, "7200"),
          "no charger, no load");
}

/* 220.83: an owner's calculation (homeownershub.com 599409): 1000 ft², three circuits, 14 000 VA of
 * appliances come to 13 400 VA, 55 A (it prints 55 for 55.8). */
static void test_existing(void)
{
    CHECK(RUN("dwelling_load_existing", HOUSE("1000 ft²"), "appliances", "14000 VA",
              "adds_air_conditioning", "no"),
          "existing");
    CHECK_NEAR(trial_number(&trial, "load"), 13400, 1e-6, "8000 + 0.4 x 13 500 VA");
    CHECK_NEAR(trial_number(&trial, "current"), 55.833, 1e-3, "at 240 V");
    CHECK(RUN("dwelling_load_existing", HOUSE("1000 ft²"), "appliances", "25200 VA",
              "adds_air_conditioning", "no"),
          "with 11 200 VA of new loads");
    CHECK_NEAR(trial_number(&trial, "load"), 17880, 1e-6, "8000 + 0.4 x 24 700 VA");
    /* (B), constructed: cooling in full besides the same others. */
    CHECK(RUN("dwelling_load_existing", HOUSE("1000 ft²"), "appliances", "14000 VA", "cooling",
              "6 kVA", "heating", "4 kW", "adds_air_conditioning", "yes"),
          "cooling is added");
    CHECK_NEAR(trial_number(&trial, "load"), 19400, 1e-6, "13 400 + 6000 VA: the larger alone");
    CHECK_NEAR(240 * trial_number(&trial, "strict_current"), 23400, 1e-6, "strictly both");
    CHECK(RUN("dwelling_load_existing", HOUSE("1000 ft²"), "appliances", "14000 VA", "cooling",
              "6 kVA", "adds_air_conditioning", "no"),
          "cooling is there");
    CHECK_NEAR(trial_number(&trial, "load"), 15800, 1e-6, "13 400 + 0.4 x 6000 VA");
    CHECK_NEAR(240 * trial_number(&trial, "strict_current"), 19400, 1e-6, "strictly in full");
    CHECK(!RUN("dwelling_load_existing", HOUSE("1000 ft²")) &&
              trial_stopped(&trial, STOP_WRONG, "adds_air_conditioning"),
          "it must be said whether cooling is added");
    CHECK(!RUN("dwelling_load_optional", HOUSE("10 ft²")) &&
              trial_stopped(&trial, STOP_WRONG, "floor_area is 10 ft²"),
          "a house of 10 ft² is refused");
}

static const char house[] = "service:\n"
                            "  voltage: 240 V\n"
                            "  load_calculation:\n"
                            "    floor_area: 1000 ft²\n"
                            "    small_appliance_circuits: 2\n"
                            "    laundry_circuits: 1\n"
                            "    appliances: 14000 VA\n"
                            "    motors: 0 VA\n"
                            "    heating: 0 VA\n"
                            "    cooling: 6000 VA\n"
                            "    ev_charging: 0 VA\n"
                            "    existing_peak: 9600 VA\n"
                            "    adds_air_conditioning: yes\n";

static void test_design(void)
{
    static const char *const parts[] = {"floor_area: 1000 ft²", "small_appliance_circuits: 2",
                                        "laundry_circuits: 1",  "appliances: 14000 VA",
                                        "motors: 0 VA",         "heating: 0 VA",
                                        "cooling: 6000 VA",     "ev_charging: 0 VA"};
    struct premises at;
    premises_open(&at, house);
    CHECK_NEAR(ask(&at, KIND_load_calculation, "load_calculation", "existing"), 19400 / 240.0, 1e-9,
               "(B), as above");
    CHECK_NEAR(ask(&at, KIND_load_calculation, "load_calculation", "optional"),
               (10000 + 0.4 * 11500 + 6000) / 240, 1e-9, "the optional method");
    CHECK_NEAR(ask(&at, KIND_load_calculation, "load_calculation", "metered"), 50, 1e-9,
               "1.25 x 9600 / 240");
    premises_close(&at);
    for (size_t i = 0; i < sizeof parts / sizeof parts[0]; i++) {
        char fact[40];
        snprintf(fact, sizeof fact, "%.*s", (int)strcspn(parts[i], ":"), parts[i]);
        premises_open_with(&at, house, parts[i], "");
        CHECK(isnan(ask(&at, KIND_load_calculation, "load_calculation", "optional")) &&
                  misses(&at, KIND_load_calculation, "load_calculation", fact),
              fact);
        premises_close(&at);
    }
    premises_open_with(&at, house, "voltage: 240 V", "");
    CHECK(isnan(ask(&at, KIND_load_calculation, "load_calculation", "metered")) &&
              misses(&at, KIND_service, "service", "voltage"),
          "the voltage must be told");
    premises_close(&at);
    premises_open_with(&at, house, "adds_air_conditioning: yes", "");
    CHECK(isnan(ask(&at, KIND_load_calculation, "load_calculation", "existing")) &&
              misses(&at, KIND_load_calculation, "load_calculation", "adds_air_conditioning"),
          "whether cooling is added");
    premises_close(&at);
}

/* More of anything is never less of a load, and the strict reading is never below the other. */
static void test_monotony(void)
{
    static const char *const names[] = {"appliances", "motors", "ev_charging", "heating",
                                        "cooling"};
    unsigned long long state = 11;
    bool rises = true, bounds = true;
    for (size_t i = 0; i < 200; i++) {
        char text[5][40], more[40];
        double load[5];
        for (size_t n = 0; n < 5; n++) {
            load[n] = trial_random(&state, 0, 30000);
            snprintf(text[n], sizeof text[n], "%.6f VA", load[n]);
        }
        size_t which = i % 5;
        snprintf(more, sizeof more, "%.6f VA", load[which] + trial_random(&state, 0, 5000));
        for (size_t kind = 0; kind < 2; kind++) {
            double is[2];
            for (size_t step = 0; step < 2; step++) {
                const char *values[5];
                for (size_t n = 0; n < 5; n++)
                    values[n] = step == 1 && n == which ? more : text[n];
                RUN(kind == 0 ? "dwelling_load_optional" : "dwelling_load_existing",
                    HOUSE("1800 ft²"), names[0], values[0], names[1], values[1], names[2],
                    values[2], names[3], values[3], names[4], values[4],
                    kind == 0 ? "edition" : "adds_air_conditioning",
                    kind == 0 ? "2023" : (i % 2 == 0 ? "yes" : "no"));
                is[step] = trial_number(&trial, "current");
                bounds = bounds && trial_number(&trial, "strict_current") >= is[step] - 1e-9;
            }
            rises = rises && is[1] >= is[0] - 1e-9;
        }
    }
    CHECK(rises, "more of anything is never less of a load");
    CHECK(bounds, "the strict reading is never below the other");
}

int main(void)
{
    trial_open(&trial);
    test_optional();
    test_charging();
    test_existing();
    test_design();
    test_monotony();
    trial_close(&trial);
    return checks_end();
}
