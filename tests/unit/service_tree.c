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

int main(void)
{
    test_single_panel();
    return checks_end();
}
