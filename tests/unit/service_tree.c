/* The tree of panels: what feeds which bus. All premises are invented. */
#include "service_trial.h"

#define MODELS                                                                                     \
    "inverter_models:\n"                                                                           \
    "  - {name: Brae, output_current: 32 A}\n"                                                     \
    "  - {name: Wisp, output_current: 1.2 A}\n"
#define NO_ARRAY     "inverters: none\nbranches: none\n"
#define ONE_INVERTER "inverters:\n  - {name: pv, model: Brae}\nbranches: none\n"
#define LOAD_SIDE    "interconnection: {side: load side}\n"

static const char single[] = MODELS ONE_INVERTER
    "other_sources: none\n" LOAD_SIDE "panels:\n"
    "  - name: main\n"
    "    is_service_panel: yes\n"
    "    fed_from: none\n"
    "    busbars:\n"
    "      - name: bus\n"
    "        rating: 200 A\n"
    "        protecting_device: 200 A\n"
    "        breakers:\n"
    "          - {name: main-breaker, duty: main, rating: 200 A}\n"
    "          - {name: range, duty: load, rating: 50 A, place: feed end, status: existing}\n"
    "          - {name: idle, duty: spare, rating: 30 A}\n"
    "          - {name: gone, duty: load, rating: 60 A, status: removed}\n"
    "          - {name: back, duty: source, rating: 40 A, serves: pv, place: opposite end}\n";

static void test_single_panel(void)
{
    struct premises at;
    bool yes = false;
    premises_open(&at, single);
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 32, 1e-9, "one inverter");
    CHECK(trial_says(&at.trial, "32 A"), "a step names the marked output current");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_breaker_total"), 40, 1e-9, "its breaker");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "breaker_total"), 90, 1e-9,
               "loads and sources, without main, spare and removed ones");
    CHECK(trial_run(&at.trial, thing(&at, KIND_busbar, "main/bus"), "source_breaker_place", NULL),
          "the place is told, though the load's is the feed end");
    CHECK_TEXT(trial_word(&at.trial, "place"), "opposite end", "opposite end");
    CHECK(ask_yes(&at, KIND_busbar, "main/bus", "has_sources", &yes) && yes, "has a source");
    CHECK(ask_yes(&at, KIND_busbar, "main/bus", "sources_at_both_ends", &yes) && !yes,
          "one breaker stands at one end");
    CHECK_NEAR(ask(&at, KIND_panel, "main", "source_current"), 32, 1e-9, "the panel's");
    CHECK(ask_yes(&at, KIND_panel, "main", "is_between_array_and_service", &yes) && yes, "on path");
    CHECK_NEAR(ask(&at, KIND_breaker, "main/bus/back", "source_current"), 32, 1e-9, "behind it");
    CHECK_NEAR(trial_number(&at.trial, "needed"), 40, 1e-9, "125 % of a marked 32 A");
    CHECK(ask_yes(&at, KIND_breaker, "main/bus/range", "has_sources", &yes) && !yes, "a load");
    CHECK_NEAR(ask(&at, KIND_panel, "main", "path_up"), 0, 0, "nothing above the service panel");
    premises_close(&at);
}

/* main (200 A) - feeder 100 A - sub with an inverter and storage; a generator that is interlocked;
 * an inverter that is gone. */
static const char chain[] = MODELS
    "inverters:\n"
    "  - {name: pv, model: Brae}\n"
    "  - {name: old, model: Brae, status: removed}\n"
    "branches: none\n"
    "other_sources:\n"
    "  - {name: store, kind: storage, output_current: 20 A, parallel: yes, interlocked: no}\n"
    "  - {name: generator, kind: generator, output_current: 80 A, interlocked: yes}\n" LOAD_SIDE
    "panels:\n"
    "  - name: main\n"
    "    is_service_panel: yes\n"
    "    fed_from: none\n"
    "    busbars:\n"
    "      - name: bus\n"
    "        rating: 225 A\n"
    "        protecting_device: 150 A\n"
    "        breakers:\n"
    "          - {name: generator, duty: source, rating: 100 A, serves: generator, place: "
    "between}\n"
    "          - {name: to-sub, duty: feeder, rating: 100 A, serves: sub, place: opposite end}\n"
    "          - {name: to-shed, duty: feeder, rating: 60 A, serves: shed, place: feed end}\n"
    "  - name: sub\n"
    "    fed_from: main\n"
    "    busbars:\n"
    "      - name: bus\n"
    "        rating: 100 A\n"
    "        protecting_device: 100 A\n"
    "        breakers:\n"
    "          - {name: pv, duty: source, rating: 40 A, serves: pv, place: opposite end}\n"
    "          - {name: store, duty: source, rating: 25 A, serves: store, place: between}\n"
    "          - {name: old, duty: source, rating: 40 A, serves: old, status: existing}\n"
    "  - name: shed\n"
    "    busbars:\n"
    "      - {name: bus, breakers: [{name: lamp, duty: load, rating: 15 A}]}\n";

static void test_chain(void)
{
    struct premises at;
    bool yes = true;
    premises_open(&at, chain);
    CHECK_NEAR(ask(&at, KIND_busbar, "sub/bus", "source_current"), 52, 1e-9, "inverter and store");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 52, 1e-9,
               "the same, by the feeder; the interlocked generator does not count");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_breaker_total"), 100, 1e-9,
               "the feeder breaker is a source breaker");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "breaker_total"), 260, 1e-9, "all three");
    CHECK(trial_run(&at.trial, thing(&at, KIND_busbar, "main/bus"), "source_breaker_place", NULL),
          "the place of the feeder");
    CHECK_TEXT(trial_word(&at.trial, "place"), "opposite end",
               "neither the generator's nor the shed's place counts");
    CHECK(trial_run(&at.trial, thing(&at, KIND_busbar, "sub/bus"), "source_breaker_place", NULL),
          "two places");
    CHECK_TEXT(trial_word(&at.trial, "place"), "between", "the worse of two");
    CHECK_NEAR(ask(&at, KIND_breaker, "main/bus/to-sub", "source_current"), 52, 1e-9, "behind");
    CHECK(ask_yes(&at, KIND_panel, "shed", "is_between_array_and_service", &yes) && !yes,
          "the shed is not on the way");
    CHECK_NEAR(ask(&at, KIND_panel, "sub", "path_up"), 1, 0, "one panel above");
    CHECK_TEXT(trial_word(&at.trial, "path"), "main", "main");
    CHECK_NEAR(ask(&at, KIND_panel, "shed", "path_up"), 1, 0,
               "found by the breaker that serves it");
    premises_close(&at);

    premises_open_with(&at, chain, "{name: lamp, duty: load, rating: 15 A}",
                       "{name: was, duty: source, rating: 40 A, serves: pv, status: removed}");
    CHECK(ask_yes(&at, KIND_panel, "shed", "is_between_array_and_service", &yes) && !yes,
          "a breaker that is gone feeds nothing back");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 52, 1e-9, "nor twice");
    premises_close(&at);
    premises_open_with(&at, chain, "serves: pv, place: opposite end",
                       "serves: pv, place: feed end");
    CHECK(trial_run(&at.trial, thing(&at, KIND_busbar, "sub/bus"), "source_breaker_place", NULL),
          "the worse one comes first");
    CHECK_TEXT(trial_word(&at.trial, "place"), "feed end", "the worst, whatever the order");
    premises_close(&at);
    premises_open_with(&at, chain, "interlocked: yes", "interlocked: no, parallel: yes");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 132, 1e-9,
               "a generator in parallel counts");
    premises_close(&at);
    premises_open_with(&at, chain, "fed_from: main", "fed_from: shed");
    CHECK(isnan(ask(&at, KIND_busbar, "main/bus", "source_current")) &&
              trial_stopped(&at.trial, STOP_BEYOND, "one of the two is not so"),
          "a breaker and the panel it serves disagree");
    premises_close(&at);
}

/* One fact taken away (or changed): the method stops and names it. */
static void lacks(const char *text, const char *part, const char *instead, const char *bus,
                  const char *method, enum kind_id kind, const char *name, const char *fact)
{
    struct premises at;
    premises_open_with(&at, text, part, instead);
    CHECK(isnan(ask(&at, KIND_busbar, bus, method)), part);
    CHECK(misses(&at, kind, name, fact), fact);
    premises_close(&at);
}

static void test_missing(void)
{
    static const char bare[] = NO_ARRAY
        "other_sources: none\npanels: [{name: main, busbars: [{name: bus, breakers: none}]}]\n";
    static const char sum[] = "source_current";
    lacks(single, ", serves: pv", "", "main/bus", sum, KIND_breaker, "main/bus/back", "serves");
    lacks(single, "{name: Brae, output_current: 32 A}", "{name: Brae}", "main/bus", sum,
          KIND_inverter_model, "Brae", "output_current");
    lacks(single, ", model: Brae", "", "main/bus", sum, KIND_inverter, "pv", "model");
    lacks(single, "duty: load, rating: 50 A", "rating: 50 A", "main/bus", sum, KIND_breaker,
          "main/bus/range", "duty");
    lacks(single, "rating: 50 A, ", "", "main/bus", "breaker_total", KIND_breaker, "main/bus/range",
          "rating");
    lacks(single, ", place: opposite end", "", "main/bus", "source_breaker_place", KIND_breaker,
          "main/bus/back", "place");
    lacks(single, "other_sources: none\n", "", "main/bus", sum, KIND_design, "design",
          "other_sources");
    lacks(bare, NO_ARRAY, "", "main/bus", "has_sources", KIND_design, "design", "inverters");
    lacks(chain, "parallel: yes, ", "", "main/bus", sum, KIND_source, "store", "parallel");
    lacks(chain, ", interlocked: yes", "", "main/bus", sum, KIND_source, "generator", "parallel");
    lacks(chain, "output_current: 20 A, ", "", "sub/bus", sum, KIND_source, "store",
          "output_current");
    lacks(chain, ", serves: shed", "", "main/bus", sum, KIND_panel, "shed", "fed_from");
    lacks(chain, ", serves: store", ", status: removed", "main/bus", sum, KIND_source, "store",
          "breakers");
    lacks(chain, ", breakers: [{name: lamp, duty: load, rating: 15 A}]", "", "main/bus", sum,
          KIND_busbar, "shed/bus", "breakers");
}

/* An inverter on no breaker. */
static const char loose[] = MODELS ONE_INVERTER
    "other_sources: none\n"
    "interconnection: {side: feeder, at: run, ocpd_rating: 40 A}\n"
    "circuits:\n"
    "  - {name: run, role: feeder, carries: [sub], ocpd_rating: 100 A}\n"
    "  - {name: tap, role: feeder tap, carries: [pv], taps: run, ocpd_rating: 40 A, "
    "ocpd_distance: 20 ft}\n"
    "panels:\n"
    "  - name: main\n"
    "    is_service_panel: yes\n"
    "    busbars:\n"
    "      - name: bus\n"
    "        breakers: [{name: to-sub, duty: feeder, rating: 100 A, serves: sub, place: opposite "
    "end}]\n"
    "  - name: sub\n"
    "    main_lugs_only: yes\n"
    "    busbars:\n"
    "      - {name: bus, breakers: [{name: lamp, duty: load, rating: 15 A, place: between}]}\n"
    "service: {rating: 200 A}\n";

static void test_loose(void)
{
    static const char side[] = "{side: feeder, at: run, ocpd_rating: 40 A}";
    struct premises at;
    premises_open(&at, loose);
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 32, 1e-9, "the tap comes back");
    CHECK_NEAR(ask(&at, KIND_busbar, "sub/bus", "source_current"), 32, 1e-9,
               "no main: the tap reaches the bus beside the feeder's device");
    CHECK_NEAR(ask(&at, KIND_circuit, "run", "feeder_source_current"), 32, 1e-9,
               "it taps the feeder");
    CHECK_NEAR(ask(&at, KIND_circuit, "run", "feeder_need"), 140, 1e-9, "100 + 1.25 x 32");
    CHECK(isnan(ask(&at, KIND_busbar, "sub/bus", "source_breaker_place")) &&
              trial_stopped(&at.trial, STOP_BEYOND, "tapped feeder"),
          "no breaker of the bus: no place");
    CHECK(
        trial_run(&at.trial, thing(&at, KIND_circuit, "tap"), "tap_need", "edition", "2020", NULL),
        "2020");
    CHECK_NEAR(trial_number(&at.trial, "needed"), 140 / 3.0, 1e-9, "(100 + 1.25 x 32) / 3");
    premises_close(&at);

    premises_open_with(&at, loose, "main_lugs_only: yes", "main_lugs_only: no");
    CHECK_NEAR(ask(&at, KIND_busbar, "sub/bus", "source_current"), 0, 0, "behind the panel's main");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 32, 1e-9, "but main has it");
    premises_close(&at);

    premises_open_with(&at, loose, side, "{side: supply side, ocpd_rating: 40 A}");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 0, 0, "feeds no bus");
    CHECK_NEAR(ask(&at, KIND_service, "service", "source_current_sum"), 32, 1e-9,
               "but the service");
    CHECK_NEAR(ask(&at, KIND_service, "service", "source_rating_sum"), 40, 1e-9, "by its device");
    premises_close(&at);

    premises_open_with(&at, loose, "inverters:\n", "inverters:\n  - {name: twin, model: Brae}\n");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 64, 1e-9, "two on one tap");
    CHECK_NEAR(ask(&at, KIND_service, "service", "source_rating_sum"), 40, 1e-9,
               "behind one device, counted once");
    premises_close(&at);

    lacks(loose, side, "{ocpd_rating: 40 A}", "main/bus", "source_current", KIND_interconnection,
          "interconnection", "side");
    lacks(loose, "interconnection: {side: feeder, at: run, ocpd_rating: 40 A}\n", "", "main/bus",
          "source_current", KIND_design, "design", "interconnection");
    lacks(loose, side, "{side: load side}", "main/bus", "source_current", KIND_inverter, "pv",
          "breakers");
    lacks(loose, side, "{side: feeder}", "main/bus", "source_current", KIND_interconnection,
          "interconnection", "at");
    lacks(loose, "    main_lugs_only: yes\n", "", "sub/bus", "source_current", KIND_panel, "sub",
          "main_lugs_only");
}

static void test_cycle(void)
{
    static const char ring[] = NO_ARRAY
        "other_sources: none\n"
        "panels:\n"
        "  - {name: a, fed_from: b, busbars: [{name: bus, breakers: [{name: x, duty: feeder, "
        "serves: b}]}]}\n"
        "  - {name: b, busbars: [{name: bus, breakers: [{name: y, duty: feeder, serves: a}]}]}\n";
    struct premises at;
    premises_open(&at, ring);
    CHECK(isnan(ask(&at, KIND_busbar, "a/bus", "source_current")) &&
              trial_stopped(&at.trial, STOP_BEYOND,
                            "panel a feeds itself: a, which feeds b, which feeds a"),
          "a circle is told with its names");
    CHECK(isnan(ask(&at, KIND_panel, "a", "path_up")) &&
              trial_stopped(&at.trial, STOP_BEYOND, "panel a feeds itself"),
          "and so on the way up");
    premises_close(&at);
    premises_open_with(&at, ring, "serves: a}", "serves: b}");
    CHECK(isnan(ask(&at, KIND_busbar, "b/bus", "source_current")) &&
              trial_stopped(&at.trial, STOP_BEYOND, "panel b feeds itself: b, which feeds b"),
          "a breaker that serves its own panel");
    premises_close(&at);
}

static void test_lugs(void)
{
    static const char lugs[] = MODELS ONE_INVERTER
        "other_sources: none\n" LOAD_SIDE "panels:\n"
        "  - {name: main, is_service_panel: yes, busbars: [{name: bus, feed_through: yes, "
        "breakers: [{name: oven, duty: load, rating: 50 A}]}]}\n"
        "  - {name: sub, fed_from: main, busbars: [{name: bus, breakers: [{name: back, duty: "
        "source, serves: pv, rating: 40 A, place: opposite end}]}]}\n";
    struct premises at;
    bool yes = false;
    premises_open(&at, lugs);
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 32, 1e-9, "over the lugs");
    CHECK(ask_yes(&at, KIND_busbar, "main/bus", "has_sources", &yes) && yes, "has a source");
    CHECK(isnan(ask(&at, KIND_busbar, "main/bus", "source_breaker_place")) &&
              trial_stopped(&at.trial, STOP_BEYOND, "feed-through lugs"),
          "where it connects is a person's to judge");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "breaker_total"), 50, 1e-9, "no breaker for it");
    premises_close(&at);
    premises_open_with(&at, lugs, "[{name: oven, duty: load, rating: 50 A}]}]",
                       "none}, {name: two, "
                       "breakers: none}]");
    CHECK(isnan(ask(&at, KIND_busbar, "main/bus", "source_current")) &&
              trial_stopped(&at.trial, STOP_BEYOND, "several buses"),
          "which bus of two is not told");
    premises_close(&at);
}

static void test_center_fed(void)
{
    static const char center[] = MODELS
        "inverters: [{name: pv, model: Brae}, {name: second, model: Brae}]\n"
        "branches: [{name: wisps, microinverter: Wisp, microinverters: 10}]\n"
        "other_sources: none\n" LOAD_SIDE "panels:\n"
        "  - name: main\n"
        "    is_service_panel: yes\n"
        "    spaces: 40\n"
        "    busbars:\n"
        "      - name: bus\n"
        "        rating: 200 A\n"
        "        protecting_device: 200 A\n"
        "        fed_at: center\n"
        "        methods: [power control system]\n"
        "        power_control_limit: 30 A\n"
        "        breakers:\n"
        "          - {name: top, duty: main, rating: 200 A, poles: 2, status: new}\n"
        "          - {name: one, duty: source, rating: 40 A, poles: 2, serves: pv, position: 37, "
        "status: new}\n"
        "          - {name: two, duty: source, rating: 40 A, poles: 2, serves: second, position: "
        "39, status: new, tandem: yes}\n"
        "          - {name: three, duty: source, rating: 20 A, poles: 2, serves: wisps, position: "
        "2, status: existing}\n";
    struct premises at;
    bool yes = false;
    premises_open(&at, center);
    CHECK(ask_yes(&at, KIND_busbar, "main/bus", "sources_at_both_ends", &yes) && yes, "2, 37, 39");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "source_current"), 76, 1e-9,
               "2 x 32 A + 10 x 1.2 A");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "controlled_current"), 30, 1e-9, "held to 30 A");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "largest_source_current"), 32, 1e-9,
               "C2: 1.2 x 200 - 200 = 40 A for 125 %");
    CHECK_NEAR(ask(&at, KIND_panel, "main", "needed_spaces"), 3, 0,
               "2 + 2/2 new, the third is there");
    premises_close(&at);
    premises_open_with(&at, center, "position: 2,", "position: 38,");
    CHECK(ask_yes(&at, KIND_busbar, "main/bus", "sources_at_both_ends", &yes) && !yes, "one end");
    premises_close(&at);
    premises_open_with(&at, center, "        power_control_limit: 30 A\n", "");
    CHECK(isnan(ask(&at, KIND_busbar, "main/bus", "controlled_current")) &&
              misses(&at, KIND_busbar, "main/bus", "power_control_limit"),
          "the limit must be told");
    premises_close(&at);
    premises_open_with(&at, center, "[power control system]", "none");
    CHECK_NEAR(ask(&at, KIND_busbar, "main/bus", "controlled_current"), 76, 1e-9, "not named");
    premises_close(&at);
}

/* A tree of panels at random: each but the first hangs on a breaker of an earlier one, or on its
 * lugs, and has an inverter or not. Each bus must tell the sum that plain adding up tells. */
enum { TREE = 30 };

static void write_tree(char *text, size_t size, const int *above, const bool *has_inverter,
                       const bool *by_lugs, size_t count)
{
    size_t at = (size_t)snprintf(
        text, size, "%s", MODELS "branches: none\nother_sources: none\n" LOAD_SIDE "inverters:\n");
    for (size_t i = 0; i < count; i++)
        at += (size_t)snprintf(text + at, size - at, "  - {name: pv%zu, model: Brae%s}\n", i,
                               has_inverter[i] ? "" : ", status: removed");
    at += (size_t)snprintf(text + at, size - at, "panels:\n");
    for (size_t i = 0; i < count; i++) {
        char feed[40] = "fed_from: none";
        if (i > 0)
            snprintf(feed, sizeof feed, "fed_from: p%d", above[i]);
        at += (size_t)snprintf(text + at, size - at,
                               "  - {name: p%zu, %s, busbars: [{name: bus, breakers: [{name: pv, "
                               "duty: source, serves: pv%zu}",
                               i, feed, i);
        for (size_t k = i + 1; k < count; k++)
            if ((size_t)above[k] == i && !by_lugs[k])
                at += (size_t)snprintf(text + at, size - at,
                                       ", {name: b%zu, duty: feeder, serves: p%zu}", k, k);
        at += (size_t)snprintf(text + at, size - at, "]}]}\n");
    }
}

static void test_random_trees(void)
{
    unsigned long long state = 3;
    for (size_t round = 0; round < 20; round++) {
        static char text[TREE * 300];
        int above[TREE] = {0};
        bool has_inverter[TREE], by_lugs[TREE], is_right = true;
        double sum[TREE] = {0};
        struct premises at;
        for (size_t i = 0; i < TREE; i++) {
            above[i] = (int)trial_random(&state, 0, (double)i);
            has_inverter[i] = trial_random(&state, 0, 1) > 0.4;
            by_lugs[i] = trial_random(&state, 0, 1) > 0.7;
        }
        for (size_t i = TREE; i-- > 0;) {
            sum[i] += has_inverter[i] ? 32 : 0;
            if (i > 0)
                sum[above[i]] += sum[i];
        }
        write_tree(text, sizeof text, above, has_inverter, by_lugs, TREE);
        premises_open(&at, text);
        for (size_t i = 0; i < TREE; i++) {
            char name[20];
            snprintf(name, sizeof name, "p%zu/bus", i);
            is_right =
                is_right && fabs(ask(&at, KIND_busbar, name, "source_current") - sum[i]) < 1e-9;
        }
        CHECK(is_right, "every bus of a tree tells what stands behind it");
        premises_close(&at);
    }
}

static void test_long_chain(void)
{
    static char text[80 * 300];
    int above[80];
    bool has_inverter[80] = {0}, by_lugs[80] = {0};
    struct premises at;
    for (int i = 0; i < 80; i++)
        above[i] = i - 1;
    write_tree(text, sizeof text, above, has_inverter, by_lugs, 80);
    premises_open(&at, text);
    CHECK(isnan(ask(&at, KIND_busbar, "p0/bus", "source_current")) &&
              trial_stopped(&at.trial, STOP_BEYOND, "down the chain"),
          "a chain longer than any building's is left to a person");
    CHECK_NEAR(ask(&at, KIND_busbar, "p40/bus", "source_current"), 0, 0, "forty are still walked");
    premises_close(&at);
}

int main(void)
{
    test_single_panel();
    test_chain();
    test_missing();
    test_loose();
    test_cycle();
    test_lugs();
    test_center_fed();
    test_random_trees();
    test_long_chain();
    return checks_end();
}
