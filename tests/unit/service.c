/* The service calculators on plain figures: published and constructed examples with their sources,
 * boundaries, editions, refusals, monotony. */
#include "service_trial.h"

static struct trial trial;

/* A result of a free calculator; NaN: it stopped. */
#define RUN(name, ...) trial_run(&trial, NULL, name, __VA_ARGS__, NULL)

static bool says_yes(const char *name)
{
    for (size_t i = 0; i < trial.calculator->result_count; i++)
        if (strcmp(trial.calculator->results[i].name, name) == 0)
            return trial.results[i].type == AMOUNT_YESNO && trial.results[i].yes;
    return false;
}

/* E14: forums.mikeholt.com thread 2580629, page 2. */
static void test_bus_options(void)
{
    CHECK(RUN("busbar_options", "protecting_device", "200 A", "source_current", "64 A"), "E14");
    CHECK_NEAR(trial_number(&trial, "needed_by_sum"), 280, 1e-9, "E14: 200 + 1.25 x 64");
    CHECK_NEAR(trial_number(&trial, "needed_by_120"), 233.3333333, 1e-6, "E14: 280 / 1.2");
    CHECK(isnan(trial_number(&trial, "largest_by_sum")), "without a bus nothing is largest");

    /* C7, constructed: 225 A bus, 150 A main, 60 A of sources come out exactly at the bus. */
    CHECK(RUN("busbar_options", "protecting_device", "150 A", "source_current", "60 A", "rating",
              "225 A"),
          "C7");
    CHECK(says_yes("serves_by_sum"), "C7: exactly at the limit passes");
    CHECK_NEAR(trial_number(&trial, "largest_by_sum"), 60, 1e-9, "C7: 60 A are the most");
    CHECK(RUN("busbar_options", "protecting_device", "150 A", "source_current", "60.001 A",
              "rating", "225 A") &&
              !says_yes("serves_by_sum") && says_yes("serves_by_120"),
          "a milliampere above fails the sum");

    /* C8, constructed: 40 + 40 + 20 + 20 A of breakers on a bus of 125 A. */
    CHECK(RUN("busbar_options", "protecting_device", "125 A", "source_current", "32 A", "rating",
              "125 A", "breakers", "120 A") &&
              says_yes("serves_by_breakers") && !says_yes("serves_by_sum"),
          "C8: 120 A of breakers on 125 A");
    CHECK(RUN("busbar_options", "protecting_device", "125 A", "source_current", "32 A", "rating",
              "125 A", "breakers", "125 A") &&
              says_yes("serves_by_breakers"),
          "125 A of breakers on 125 A: equal passes");
    CHECK(RUN("busbar_options", "protecting_device", "150 A", "source_current", "32 A", "rating",
              "125 A", "breakers", "120 A") &&
              !says_yes("serves_by_breakers"),
          "the main must be within the bus, too");

    /* A marked 32 A (7700 W / 240 V = 32.08 A) comes to 40.000 A, not to 40.104 A. */
    CHECK(RUN("busbar_options", "protecting_device", "200 A", "source_current", "32 A", "rating",
              "200 A") &&
              says_yes("serves_by_120"),
          "marked 32 A: exactly 240 A");
    CHECK(RUN("busbar_options", "protecting_device", "200 A", "source_current", "32.0833333 A",
              "rating", "200 A") &&
              !says_yes("serves_by_120"),
          "no tolerance lets 40.104 A pass for 40 A");
}

/* E16: 325603.net p=256. C2, constructed. */
static void test_backfeed(void)
{
    static const struct {
        const char *bus, *main;
        double most;
    } rows[] = {{"200 A", "200 A", 40}, {"200 A", "175 A", 65}, {"225 A", "200 A", 70}};
    for (size_t i = 0; i < 3; i++) {
        CHECK(
            RUN("panel_largest_backfeed", "rating", rows[i].bus, "protecting_device", rows[i].main),
            "E16");
        CHECK_NEAR(trial_number(&trial, "backfeed"), rows[i].most, 1e-9, "E16, C2");
        CHECK_NEAR(trial_number(&trial, "source_current"), rows[i].most / 1.25, 1e-9, "/ 1.25");
    }
    CHECK(RUN("panel_largest_backfeed", "rating", "100 A", "protecting_device", "150 A") &&
              trial_number(&trial, "backfeed") == 0,
          "nothing is left, never less than nothing");
}

static void test_feeder(void)
{
    /* C9, constructed. */
    CHECK(RUN("feeder_ampacity", "feeder_ocpd", "200 A", "source_current", "32 A", "ampacity",
              "240 A"),
          "C9");
    CHECK_NEAR(trial_number(&trial, "needed"), 240, 1e-9, "C9: 200 + 1.25 x 32");
    CHECK(says_yes("serves"), "C9: equal serves");
    /* E15: forums.mikeholt.com thread 2580771. */
    CHECK(RUN("feeder_tap", "edition", "2023", "feeder_ocpd", "200 A", "source_ocpd", "60 A",
              "length", "25 ft"),
          "E15");
    CHECK_NEAR(trial_number(&trial, "needed"), 86.6667, 1e-4, "E15: prints 87");
    CHECK(RUN("feeder_tap", "edition", "2023", "feeder_ocpd", "600 A", "source_ocpd", "200 A",
              "length", "11 ft"),
          "E15, second");
    CHECK_NEAR(trial_number(&trial, "needed"), 266.6667, 1e-4, "E15: (600 + 200) / 3");
    /* C10, constructed. */
    CHECK(RUN("feeder_tap", "edition", "2020", "feeder_ocpd", "200 A", "source_current", "48 A",
              "length", "20 ft"),
          "C10");
    CHECK_NEAR(trial_number(&trial, "needed"), 86.6667, 1e-4, "C10: (1.25 x 48 + 200) / 3");
    CHECK(RUN("feeder_tap", "edition", "2017", "feeder_ocpd", "200 A", "source_current", "32 A",
              "length", "10 ft", "end_device", "40 A"),
          "a short tap");
    CHECK_NEAR(trial_number(&trial, "part"), 24, 1e-9, "a tenth of 240 A");
    CHECK_NEAR(trial_number(&trial, "needed"), 40, 1e-9, "not below the device in which it ends");
    CHECK(!RUN("feeder_tap", "edition", "2020", "feeder_ocpd", "200 A", "source_current", "48 A",
               "length", "26 ft") &&
              trial_stopped(&trial, STOP_BEYOND, "25 ft"),
          "longer than 25 ft");
    CHECK(!RUN("feeder_tap", "edition", "2023", "feeder_ocpd", "200 A", "source_current", "48 A",
               "length", "20 ft") &&
              trial_stopped(&trial, STOP_WRONG, "source_ocpd"),
          "2023 asks for the source's device");
    CHECK(!RUN("feeder_tap", "edition", "2017", "feeder_ocpd", "200 A", "source_ocpd", "60 A",
               "length", "20 ft") &&
              trial_stopped(&trial, STOP_WRONG, "source_current"),
          "2017 asks for the current");
    CHECK(!RUN("feeder_ampacity", "feeder_ocpd", "200 A", "source_current", "0 A") &&
              trial_stopped(&trial, STOP_WRONG, "source_current is 0 A"),
          "no source is no input");
}

/* C1, constructed; the floor: 705.11(B), secondary source. */
static void test_supply_side(void)
{
    CHECK(RUN("supply_side", "edition", "2020", "source_current", "30 A", "material", "copper"),
          "C1");
    CHECK_NEAR(trial_number(&trial, "needed"), 37.5, 1e-9, "C1: 1.25 x 30");
    CHECK_NEAR(trial_number(&trial, "ocpd"), 40, 1e-9, "C1: next standard");
    CHECK_TEXT(trial_word(&trial, "smallest_size"), "6 AWG", "C1: though 8 AWG would carry it");
    CHECK(RUN("supply_side", "edition", "2023", "source_current", "30 A", "material", "aluminum"),
          "aluminum");
    CHECK_TEXT(trial_word(&trial, "smallest_size"), "4 AWG", "4 AWG aluminum");
    CHECK(RUN("supply_side", "edition", "2017", "source_current", "30 A", "material", "copper") &&
              trial_word(&trial, "smallest_size") == NULL,
          "2017 has no floor");
    CHECK(!RUN("supply_side", "edition", "2018", "source_current", "30 A", "material", "copper") &&
              trial_stopped(&trial, STOP_WRONG, NULL),
          "there is no 2018 edition");
}

static void test_supply_circuit(void)
{
    static const char text[] =
        "inverter_models: [{name: Brae, output_current: 30 A}]\n"
        "inverters: [{name: pv, model: Brae}]\n"
        "circuits:\n"
        "  - {name: out, role: supply-side, carries: [pv], conductor_size: 8 AWG, "
        "conductor_material: copper}\n"
        "  - {name: wide, role: supply-side, carries: [pv], conductor_size: 6 AWG, "
        "conductor_material: copper}\n"
        "  - {name: soft, role: supply-side, carries: [pv], conductor_size: 6 AWG, "
        "conductor_material: aluminum}\n"
        "  - {name: bare, role: supply-side, carries: [pv], conductor_material: copper}\n";
    static const struct {
        const char *circuit, *edition;
        bool meets;
    } rows[] = {{"out", "2020", false}, {"out", "2017", true},   {"wide", "2020", true},
                {"wide", "2023", true}, {"soft", "2023", false}, {"soft", "2017", true}};
    struct premises at;
    premises_open(&at, text);
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        CHECK(trial_run(&at.trial, thing(&at, KIND_circuit, rows[i].circuit), "supply_side_need",
                        "edition", rows[i].edition, NULL),
              rows[i].circuit);
        CHECK_NEAR(trial_number(&at.trial, "needed"), 37.5, 1e-9, "1.25 x 30 A");
        CHECK(at.trial.results[1].yes == rows[i].meets, rows[i].circuit);
    }
    CHECK(!trial_run(&at.trial, thing(&at, KIND_circuit, "bare"), "supply_side_need", "edition",
                     "2020", NULL) &&
              misses(&at, KIND_circuit, "bare", "conductor_size"),
          "the size must be told");
    premises_close(&at);
}

/* 110.26(A): depth after Electrical Contractor, July 2016, p. 68 (to 150 V), and a general
 * electrical reference (above); width and height, secondary source. */
static void test_working_space(void)
{
    static const struct {
        const char *volts, *facing;
        double depth;
    } rows[] = {{"120 V", "live parts to none", 3},       {"120 V", "live parts to live parts", 3},
                {"150 V", "live parts to ground", 3},     {"150.5 V", "live parts to ground", 3.5},
                {"277 V", "live parts to none", 3},       {"277 V", "live parts to ground", 3.5},
                {"480 V", "live parts to live parts", 4}, {"600 V", "live parts to ground", 3.5},
                {"1000 V", "live parts to live parts", 5}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        CHECK(RUN("working_space", "voltage", rows[i].volts, "facing", rows[i].facing),
              rows[i].volts);
        CHECK_NEAR(trial_number(&trial, "depth"), rows[i].depth, 1e-9, rows[i].volts);
        CHECK_NEAR(trial_number(&trial, "width"), 30, 1e-9, "30 in");
        CHECK_NEAR(trial_number(&trial, "height"), 6.5, 1e-9, "6.5 ft");
    }
    CHECK(RUN("working_space", "voltage", "120 V", "facing", "live parts to none",
              "equipment_width", "42 in", "equipment_height", "7 ft"),
          "large equipment");
    CHECK_NEAR(trial_number(&trial, "width"), 42, 1e-9, "as wide as the equipment");
    CHECK_NEAR(trial_number(&trial, "height"), 7, 1e-9, "as high as the equipment");
    CHECK(!RUN("working_space", "voltage", "1001 V", "facing", "live parts to none") &&
              trial_stopped(&trial, STOP_WRONG, "voltage"),
          "no row above 1000 V");

    static const char text[] =
        "service: {voltage_to_ground: 277 V}\n"
        "panels: [{name: main, working_space: {facing: live parts to ground, equipment_width: 14 "
        "in}}]\n";
    struct premises at;
    premises_open(&at, text);
    const struct object *space = at.design->of_kind[KIND_working_space].items[0];
    CHECK(trial_run(&at.trial, space, "needed", NULL), "a panel's space");
    CHECK_NEAR(trial_number(&at.trial, "depth"), 3.5, 1e-9, "by the service's voltage");
    CHECK(trial_run(&at.trial, space, "needed", "voltage", "120 V", NULL), "a voltage told");
    CHECK_NEAR(trial_number(&at.trial, "depth"), 3, 1e-9, "by the voltage told");
    premises_close(&at);
    premises_open_with(&at, text, "{voltage_to_ground: 277 V}", "{rating: 200 A}");
    CHECK(!trial_run(&at.trial, at.design->of_kind[KIND_working_space].items[0], "needed", NULL) &&
              misses(&at, KIND_service, "service", "voltage_to_ground"),
          "the voltage must be told");
    premises_close(&at);
}

static void test_disconnect(void)
{
    CHECK(RUN("service_disconnect_minimum", "occupancy", "one-family dwelling", "load", "89.5 A"),
          "230.79(C)");
    CHECK_NEAR(trial_number(&trial, "minimum"), 100, 0, "100 A, whatever the load is below");
    CHECK(RUN("service_disconnect_minimum", "occupancy", "one-family dwelling", "load", "145 A"),
          "a larger load");
    CHECK_NEAR(trial_number(&trial, "minimum"), 145, 1e-9, "not below the load");
    CHECK(RUN("service_disconnect_minimum", "occupancy", "commercial"), "230.79(D)");
    CHECK_NEAR(trial_number(&trial, "minimum"), 60, 0, "60 A");
}

static double bus_need(double device, double current, const char *result)
{
    char a[40], b[40];
    snprintf(a, sizeof a, "%.9f A", device);
    snprintf(b, sizeof b, "%.9f A", current);
    RUN("busbar_options", "protecting_device", a, "source_current", b);
    return trial_number(&trial, result);
}

/* More source or a larger device never needs less of a bus, and a larger bus never takes less. */
static void test_monotony(void)
{
    unsigned long long state = 7;
    bool rises = true, falls = true;
    for (size_t i = 0; i < 300; i++) {
        double device = trial_random(&state, 15, 400), current = trial_random(&state, 1, 200);
        double more = trial_random(&state, 0, 50);
        double base = bus_need(device, current, "needed_by_120");
        rises = rises && bus_need(device + more, current, "needed_by_120") >= base &&
                bus_need(device, current + more, "needed_by_120") >= base;
        char rating[40], larger[40], main[40];
        snprintf(rating, sizeof rating, "%.9f A", device);
        snprintf(larger, sizeof larger, "%.9f A", device + more);
        snprintf(main, sizeof main, "%.9f A", 15 + current);
        RUN("panel_largest_backfeed", "rating", rating, "protecting_device", main);
        double most = trial_number(&trial, "backfeed");
        RUN("panel_largest_backfeed", "rating", larger, "protecting_device", main);
        falls = falls && trial_number(&trial, "backfeed") >= most;
    }
    CHECK(rises, "a bus needs no less for more");
    CHECK(falls, "a larger bus takes no less");
}

int main(void)
{
    trial_open(&trial);
    test_bus_options();
    test_backfeed();
    test_feeder();
    test_supply_side();
    test_supply_circuit();
    test_working_space();
    test_disconnect();
    test_monotony();
    trial_close(&trial);
    return checks_end();
}
