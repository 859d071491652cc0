/* The calculators of the service side: what they take, what they give, what they rest on. */
#include "service.h"

static const struct parameter current_result[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Sum of marked continuous output currents.")};
static const struct parameter total_result[] = {
    GIVEN_QUANTITY("total", CURRENT, "A", 0, 1e6, "Sum of ratings.")};
static const struct parameter yes_result[] = {GIVEN_YESNO("is_so", "Yes or no.")};
static const struct parameter place_result[] = {
    GIVEN_WORD("place", words_for_breaker_place, "The worst place of any of them.")};
static const struct parameter largest_source_results[] = {
    GIVEN_QUANTITY("by_120", CURRENT, "A", 0, 1e5, "Under the 120 % option."),
    GIVEN_QUANTITY("by_sum", CURRENT, "A", 0, 1e5, "Under the sum of sources (100 %)."),
};
static const struct parameter breaker_current_results[] = {
    GIVEN_QUANTITY("current", CURRENT, "A", 0, 1e5, "Current of the sources behind it."),
    GIVEN_QUANTITY("needed", CURRENT, "A", 0, 1e5, "125 % of it."),
};
static const struct parameter path_results[] = {
    GIVEN_NUMBER("count", 0, 64, "How many panels stand above it."),
    GIVEN_WORD("path", NULL, "Their names, nearest first."),
};
static const struct parameter spaces_result[] = {
    GIVEN_NUMBER("spaces", 0, 1e4, "Spaces that its new breakers take.")};

const struct calculator service_calculators[] = {
    PLAIN_METHOD(busbar, source_current, current_result,
                 "Output current of every source that can feed it, without 125 %.", "NEC 705.12"),
    PLAIN_METHOD(busbar, controlled_current, current_result,
                 "The same, held to the limit of a power control system that the design names.",
                 "NEC 705.13"),
    PLAIN_METHOD(busbar, source_breaker_total, total_result,
                 "Ratings of its breakers that have sources behind them.", "NEC 705.12"),
    PLAIN_METHOD(busbar, breaker_total, total_result,
                 "Ratings of all its load, source and feeder breakers, without main and spare "
                 "ones; a tandem is written as two breakers.",
                 "NEC 705.12(B)(3) (2017: (B)(2)(3)(c), 2020: (B)(3)(3))"),
    PLAIN_METHOD(busbar, has_sources, yes_result, "Can any source feed it?", "NEC 705.12"),
    PLAIN_METHOD(busbar, source_breaker_place, place_result,
                 "Where its breakers with sources stand: at the opposite end only if all do.",
                 "NEC 705.12(B)(2) (2017: (B)(2)(3)(b), 2020: (B)(3)(2))"),
    PLAIN_METHOD(busbar, sources_at_both_ends, yes_result,
                 "Do breakers with sources stand in both halves of the panel (center-fed)?",
                 "NEC 705.12(B)(4) (2017: (B)(2)(3)(d), 2020: (B)(3)(4))"),
    PLAIN_METHOD(busbar, largest_source_current, largest_source_results,
                 "Largest source current that its rating and its device leave.", "NEC 705.12"),
    PLAIN_METHOD(panel, source_current, current_result,
                 "Output current of every source that can feed any of its buses.", "NEC 705.12"),
    PLAIN_METHOD(panel, is_between_array_and_service, yes_result, "Is any source behind it?",
                 "NEC 705.12"),
    PLAIN_METHOD(panel, path_up, path_results, "The panels between it and the service.", NULL),
    PLAIN_METHOD(panel, needed_spaces, spaces_result, "Spaces that its new breakers take.",
                 "common practice, no source"),
    PLAIN_METHOD(breaker, source_current, breaker_current_results,
                 "Output current of the sources behind it.", "NEC 705.30"),
    PLAIN_METHOD(breaker, has_sources, yes_result, "Is any source behind it?", "NEC 705.12"),
    PLAIN_METHOD(service, source_current_sum, current_result,
                 "Output current of all sources, on either side of the service disconnect.",
                 "NEC 705.11(A) (2020, 2023)"),
    PLAIN_METHOD(service, source_rating_sum, total_result,
                 "Ratings of the devices at all sources, on either side of the service disconnect.",
                 "NEC 705.12(A) (2017), from memory"),
    {.name = NULL},
};
