/* The algebra of outcomes, margins, sentences, waivers and exit codes. */
#include "check.h"
#include "finding.h"
#include "unit.h"

static struct test outcome_test(enum outcome outcome)
{
    return (struct test){.what = "It", .relation = RELATION_BE, .outcome = outcome};
}

static struct quantity in(double value, const char *unit)
{
    struct quantity quantity = quantity_of(value, unit);
    quantity.written = NULL;
    return quantity;
}

static struct test pair(enum relation relation, struct amount actual, struct amount limit)
{
    return (struct test){
        .what = "Clear width", .relation = relation, .actual = actual, .limit = limit};
}

static struct test judged(enum relation relation, struct amount actual, struct amount limit)
{
    struct test test = pair(relation, actual, limit);
    struct quantity_fault fault;
    CHECK(test_judge(&test, &fault), "the pair can be compared");
    return test;
}

static struct test amperes(double actual, double limit)
{
    struct test test = judged(RELATION_NOT_EXCEED, amount_of_quantity(in(actual, "A")),
                              amount_of_quantity(in(limit, "A")));
    test.what = "Current";
    return test;
}

/* Every pair of outcomes, as tests of a finding and as options of a group. */
static void test_tables(void)
{
    static const enum outcome all[] = {OUTCOME_FAIL, OUTCOME_OPEN, OUTCOME_REVIEW, OUTCOME_PASS};
    /* Worst of both: fail > open > review > pass. */
    static const enum outcome worst[4][4] = {
        {OUTCOME_FAIL, OUTCOME_FAIL, OUTCOME_FAIL, OUTCOME_FAIL},
        {OUTCOME_FAIL, OUTCOME_OPEN, OUTCOME_OPEN, OUTCOME_OPEN},
        {OUTCOME_FAIL, OUTCOME_OPEN, OUTCOME_REVIEW, OUTCOME_REVIEW},
        {OUTCOME_FAIL, OUTCOME_OPEN, OUTCOME_REVIEW, OUTCOME_PASS}};
    /* Best of both: pass, else open, else review, else fail. */
    static const enum outcome best[4][4] = {
        {OUTCOME_FAIL, OUTCOME_OPEN, OUTCOME_REVIEW, OUTCOME_PASS},
        {OUTCOME_OPEN, OUTCOME_OPEN, OUTCOME_OPEN, OUTCOME_PASS},
        {OUTCOME_REVIEW, OUTCOME_OPEN, OUTCOME_REVIEW, OUTCOME_PASS},
        {OUTCOME_PASS, OUTCOME_PASS, OUTCOME_PASS, OUTCOME_PASS}};
    for (size_t i = 0; i < 4; i++)
        for (size_t k = 0; k < 4; k++) {
            struct test tests[] = {outcome_test(all[i]), outcome_test(all[k])};
            struct option options[] = {{.name = "a", .outcome = all[i]},
                                       {.name = "b", .outcome = all[k]}};
            CHECK(tests_outcome(tests, 2) == worst[i][k], "of two tests the worse decides");
            CHECK(options_outcome(options, 2) == best[i][k], "of two options the better decides");
        }
    CHECK(tests_outcome(NULL, 0) == OUTCOME_COUNT, "no tests have no outcome");
    CHECK(options_outcome(NULL, 0) == OUTCOME_COUNT, "no options have no outcome");
}

static void test_names(void)
{
    CHECK_TEXT(outcome_name(OUTCOME_NOT_APPLICABLE), "notApplicable", "SARIF's own word");
    CHECK_TEXT(outcome_name(OUTCOME_OPEN), "open", "SARIF's own word");
    CHECK_TEXT(relation_name(RELATION_ONE_OF), "one_of", "a relation's word");
    CHECK_TEXT(relation_name(RELATION_BROKEN), "broken", "the last relation has its word");
}

static void test_relations(void)
{
    static const struct {
        enum relation relation;
        double actual;
        enum outcome outcome;
        double margin;
    } rows[] = {{RELATION_NOT_EXCEED, 165, OUTCOME_FAIL, -0.32},
                {RELATION_NOT_EXCEED, 110, OUTCOME_PASS, 0.12},
                {RELATION_NOT_EXCEED, 125, OUTCOME_PASS, 0},
                {RELATION_AT_LEAST, 100, OUTCOME_FAIL, -0.2},
                {RELATION_AT_LEAST, 150, OUTCOME_PASS, 0.2},
                {RELATION_AT_LEAST, 125, OUTCOME_PASS, 0},
                {RELATION_LESS_THAN, 125, OUTCOME_FAIL, 0},
                {RELATION_LESS_THAN, 100, OUTCOME_PASS, 0.2},
                {RELATION_MORE_THAN, 125, OUTCOME_FAIL, 0},
                {RELATION_MORE_THAN, 150, OUTCOME_PASS, 0.2},
                {RELATION_EQUAL, 100, OUTCOME_FAIL, -0.2},
                {RELATION_EQUAL, 150, OUTCOME_FAIL, -0.2}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        struct test test =
            judged(rows[i].relation, amount_of_number(rows[i].actual), amount_of_number(125));
        CHECK(test.outcome == rows[i].outcome, "each relation decides as it says");
        CHECK(test.has_margin, "a number against a number has a margin");
        CHECK_NEAR(test.margin, rows[i].margin, 1e-12, "the margin is the share of the limit");
    }
    struct test same = judged(RELATION_EQUAL, amount_of_number(2), amount_of_number(2));
    CHECK(same.outcome == OUTCOME_PASS && !same.has_margin, "what is the same has no margin");
    struct test near = judged(RELATION_NOT_EXCEED, amount_of_quantity(in(125 * (1 + 1e-10), "A")),
                              amount_of_quantity(in(125, "A")));
    CHECK(near.outcome == OUTCOME_PASS && near.margin == 0, "equal within 1e-9 is at the limit");
    struct test below = judged(RELATION_AT_LEAST, amount_of_number(-3), amount_of_number(-2));
    CHECK(below.outcome == OUTCOME_FAIL, "below a negative limit is below");
    CHECK_NEAR(below.margin, -0.5, 1e-12, "and the share is of the limit's magnitude");
}

static void test_without_margin(void)
{
    struct test zero = judged(RELATION_NOT_EXCEED, amount_of_number(3), amount_of_number(0));
    CHECK(zero.outcome == OUTCOME_FAIL && !zero.has_margin, "a limit of 0 has no margin");
    struct test cold = judged(RELATION_AT_LEAST, amount_of_quantity(in(-12, "°C")),
                              amount_of_quantity(in(-20, "°C")));
    CHECK(cold.outcome == OUTCOME_PASS && !cold.has_margin, "temperatures have no margin");
    struct test yes = pair(RELATION_BE, amount_of_yesno(false), (struct amount){0});
    struct quantity_fault fault;
    CHECK(test_judge(&yes, &fault) && yes.outcome == OUTCOME_FAIL && !yes.has_margin,
          "a yes/no fails on no and has no margin");
    struct test word = judged(RELATION_EQUAL, amount_of_word("C"), amount_of_word("B"));
    CHECK(word.outcome == OUTCOME_FAIL && !word.has_margin, "words are the same or not");
    struct test date = judged(RELATION_AT_LEAST, amount_of_date((struct date){2026, 5, 4}),
                              amount_of_date((struct date){2026, 5, 5}));
    CHECK(date.outcome == OUTCOME_FAIL && !date.has_margin, "dates have an order and no margin");
}

static void test_refusals(void)
{
    struct quantity_fault fault = {0};
    struct test mixed =
        pair(RELATION_NOT_EXCEED, amount_of_quantity(in(3, "A")), amount_of_quantity(in(4, "V")));
    CHECK(!test_judge(&mixed, &fault), "amperes are not compared with volts");
    CHECK_TEXT(fault.code, "dimension", "the fault says it is the dimension");
    struct test number =
        pair(RELATION_NOT_EXCEED, amount_of_quantity(in(3, "A")), amount_of_number(4));
    CHECK(!test_judge(&number, &fault), "a quantity is not compared with a number");
    struct test word = pair(RELATION_NOT_EXCEED, amount_of_word("B"), amount_of_word("C"));
    CHECK(!test_judge(&word, &fault), "words have no larger and smaller");
    struct test none = pair(RELATION_AT_LEAST, (struct amount){0}, (struct amount){0});
    CHECK(!test_judge(&none, &fault), "nothing is never compared");
    struct test is = pair(RELATION_BE, amount_of_number(1), (struct amount){0});
    CHECK(!test_judge(&is, &fault), "a yes/no is not a number");
    struct test infinite =
        pair(RELATION_NOT_EXCEED, amount_of_number(INFINITY), amount_of_number(4));
    CHECK(!test_judge(&infinite, &fault), "what is not finite is never compared");
}

static void test_margins(void)
{
    double margin = 9;
    struct test two[] = {amperes(100, 125), amperes(110, 125)};
    CHECK(tests_margin(&margin, two, 2), "two that hold have a margin");
    CHECK_NEAR(margin, 0.12, 1e-12, "the least of both");
    struct test beside[] = {outcome_test(OUTCOME_FAIL), amperes(110, 125)};
    CHECK(!tests_margin(&margin, beside, 2), "a yes/no that fails beside one that holds has none");
    struct test open[] = {outcome_test(OUTCOME_OPEN), amperes(110, 125)};
    CHECK(!tests_margin(&margin, open, 2), "what is open has none");
    struct test near[] = {amperes(150, 125)}, far[] = {amperes(165, 125)};
    struct option options[] = {{.name = "far", .tests = far, .test_count = 1},
                               {.name = "near", .tests = near, .test_count = 1}};
    struct test group = {
        .what = "One of", .relation = RELATION_ONE_OF, .options = options, .option_count = 2};
    CHECK(test_settle_group(&group) && group.outcome == OUTCOME_FAIL, "all options fail");
    CHECK(group.has_margin, "and the group has a margin");
    CHECK_NEAR(group.margin, -0.2, 1e-12, "that of the nearest miss");
    far[0] = amperes(50, 125);
    CHECK(test_settle_group(&group) && group.outcome == OUTCOME_PASS, "one option is enough");
    CHECK_NEAR(group.margin, 0.6, 1e-12, "and its margin is the group's");
    near[0] = amperes(100, 125);
    test_settle_group(&group);
    CHECK_NEAR(group.margin, 0.6, 1e-12, "of two that pass the wider counts");
    options[1].test_count = 0;
    CHECK(!test_settle_group(&group), "an option that recorded nothing is broken");
    CHECK(options[1].outcome == OUTCOME_OPEN, "and never passes");
}

/* What only rounding tells apart is one margin: then the first decides, whatever the compiler does
 * with the last digit. */
static void test_margins_that_are_one(void)
{
    struct test failing[] = {amperes(30.1, 30), amperes(3 * 10.033333333333335, 30)};
    struct test passing[] = {amperes(0.3, 0.9), amperes(0.1 + 0.2, 0.9)};
    double margin = 0;
    CHECK(passing[1].margin < passing[0].margin && failing[1].margin < failing[0].margin,
          "the last digit tells them apart");
    CHECK(tests_deciding(failing, 2) == &failing[0], "the first that fails decides");
    CHECK(tests_deciding(passing, 2) == &passing[0], "the first that holds decides");
    CHECK(tests_margin(&margin, passing, 2) && margin == passing[0].margin, "its margin stands");
    struct option ways[] = {
        {.name = "a", .outcome = OUTCOME_PASS, .tests = &passing[1], .test_count = 1},
        {.name = "b", .outcome = OUTCOME_PASS, .tests = &passing[0], .test_count = 1}};
    CHECK(options_best(ways, 2) == &ways[0], "the first way stands for the group");
    struct test apart[] = {amperes(30.1, 30), amperes(30.1 + 1e-6, 30)};
    CHECK(tests_deciding(apart, 2) == &apart[1], "a real difference decides");
}

/* A limit missed by more than the whole is farther off than a no where a yes is needed. */
static void test_nearest_way(void)
{
    struct test far = amperes(480, 30), near = amperes(33, 30), no = outcome_test(OUTCOME_FAIL);
    struct test both[] = {near, no};
    struct option ways[] = {
        {.name = "far", .outcome = OUTCOME_FAIL, .tests = &far, .test_count = 1},
        {.name = "no", .outcome = OUTCOME_FAIL, .tests = &no, .test_count = 1},
        {.name = "near, but no", .outcome = OUTCOME_FAIL, .tests = both, .test_count = 2},
        {.name = "near", .outcome = OUTCOME_FAIL, .tests = &near, .test_count = 1}};
    CHECK(options_best(ways, 2) == &ways[1], "the yes or no is nearer than 1500 % over");
    CHECK(options_best(ways, 3) == &ways[1], "the first of two that lack a yes");
    CHECK(options_best(ways, 4) == &ways[3], "10 % over is nearest");
}

static void test_weights(void)
{
    struct test tests[] = {outcome_test(OUTCOME_FAIL), outcome_test(OUTCOME_PASS)};
    tests[0].normative = SHOULD;
    CHECK(tests_normative(tests, 2) == SHOULD, "a failing should beside a shall that holds");
    tests[1].outcome = OUTCOME_FAIL;
    CHECK(tests_normative(tests, 2) == SHALL, "any failing shall makes an error");
    CHECK(tests_normative(NULL, 0) == SHALL, "nothing recorded is taken as a shall");
}

static const char *message_of(struct test *tests, size_t count, enum outcome outcome,
                              struct arena *arena)
{
    struct finding finding = {.outcome = outcome, .tests = tests, .test_count = count};
    return finding_message(&finding, arena);
}

static void test_messages(struct arena *arena)
{
    struct test fail[] = {amperes(165, 125), amperes(130, 125), amperes(10, 125)};
    CHECK_TEXT(message_of(fail, 1, OUTCOME_FAIL, arena),
               "Current is 165 A; at most 125 A is allowed (32 % over)", "a fail in one sentence");
    CHECK_TEXT(message_of(fail, 3, OUTCOME_FAIL, arena),
               "Current is 165 A; at most 125 A is allowed (32 % over); 1 more does not hold",
               "the worst is told, the others are counted");
    struct test pass[] = {amperes(110, 125)};
    CHECK_TEXT(message_of(pass, 1, OUTCOME_PASS, arena),
               "Current is 110 A; at most 125 A is allowed; it stands 12 % inside the limit",
               "a pass with its margin");
    struct test exact[] = {amperes(125, 125)};
    CHECK_TEXT(message_of(exact, 1, OUTCOME_PASS, arena),
               "Current is 125 A; at most 125 A is allowed; it stands exactly at the limit",
               "a pass without room");
    struct test tiny[] = {amperes(125.0004, 125)};
    CHECK_TEXT(message_of(tiny, 1, OUTCOME_FAIL, arena),
               "Current is 125.0004 A; at most 125 A is allowed (less than 0.1 % over)",
               "as many digits as it takes to tell both apart");
    struct test brief[] = {judged(RELATION_AT_LEAST, amount_of_quantity(in(30, "in")),
                                  amount_of_quantity(in(3, "ft")))};
    CHECK_TEXT(message_of(brief, 1, OUTCOME_FAIL, arena),
               "Clear width is 2.5 ft; at least 3 ft is needed (17 % short)",
               "both in the limit's unit");
    struct test counted[] = {
        judged(RELATION_EQUAL, amount_of_number(4), amount_of_number(0)),
        judged(RELATION_EQUAL, amount_of_number(0), amount_of_number(0)),
        judged(RELATION_NOT_EXCEED, amount_of_number(2), amount_of_number(1)),
        judged(RELATION_NOT_EXCEED, amount_of_number(2), amount_of_number(2.5))};
    const char *what = counted[0].what;
    CHECK_TEXT(message_of(counted, 1, OUTCOME_FAIL, arena),
               arena_format(arena, "%s: 4; there must be none", what), "what is counted");
    CHECK_TEXT(message_of(counted + 1, 1, OUTCOME_PASS, arena),
               arena_format(arena, "%s: none, as it must be", what), "none of it");
    CHECK_TEXT(message_of(counted + 2, 1, OUTCOME_FAIL, arena),
               arena_format(arena, "%s: 2; at most 1 is allowed (100 %% over)", what),
               "some of it is allowed");
    CHECK_TEXT(message_of(counted + 3, 1, OUTCOME_PASS, arena),
               arena_format(arena,
                            "%s is 2; at most 2.5 is allowed; it stands 20 %% inside the limit",
                            what),
               "what is held against no count is none");
    struct test open[] = {{.relation = RELATION_MISSING,
                           .outcome = OUTCOME_OPEN,
                           .missing = {.fact = "roof_plane south: slope"}},
                          amperes(110, 125)};
    CHECK_TEXT(message_of(open, 2, OUTCOME_OPEN, arena),
               "Cannot be told: roof_plane south: slope is not given", "the missing fact is named");
    struct test review[] = {
        {.what = "the truss was cut", .relation = RELATION_REVIEW, .outcome = OUTCOME_REVIEW}};
    CHECK_TEXT(message_of(review, 1, OUTCOME_REVIEW, arena), "The truss was cut",
               "the why of a review");
    struct test broken[] = {
        amperes(110, 125),
        {.what = "nil in line 3", .relation = RELATION_BROKEN, .outcome = OUTCOME_OPEN}};
    CHECK_TEXT(message_of(broken, 2, OUTCOME_OPEN, arena),
               "Cannot be told: the rule could not be run to its end: nil in line 3",
               "a broken rule is open");
    CHECK_TEXT(message_of(NULL, 0, OUTCOME_NOT_APPLICABLE, arena), "Does not apply here",
               "not applicable");
    CHECK_TEXT(message_of(NULL, 0, OUTCOME_OPEN, arena),
               "Cannot be told: the rule recorded nothing", "nothing recorded is never a pass");
}

static void test_group_messages(struct arena *arena)
{
    struct test far[] = {amperes(165, 125)}, near[] = {amperes(165, 150)};
    struct option options[] = {{.name = "sum of sources", .tests = far, .test_count = 1},
                               {.name = "120 % of the busbar", .tests = near, .test_count = 1}};
    struct test group[] = {
        {.what = "One of", .relation = RELATION_ONE_OF, .options = options, .option_count = 2}};
    test_settle_group(group);
    CHECK_TEXT(message_of(group, 1, OUTCOME_FAIL, arena),
               "None of 2 ways is met; nearest, \"120 % of the busbar\": Current is 165 A; at most "
               "150 A is allowed (10 % over)",
               "a failing group tells its nearest way");
    near[0] = amperes(120, 150);
    test_settle_group(group);
    CHECK_TEXT(message_of(group, 1, OUTCOME_PASS, arena),
               "\"120 % of the busbar\" is met: Current is 120 A; at most 150 A is allowed; it "
               "stands 20 % inside the limit",
               "a group that holds tells the way it holds by");
}

static const struct rule layers = {.id = "town/layers", .holds = true};
static const struct rule deleted = {.id = "town/gone", .holds = false};

static struct finding *finding_of(struct findings *findings, const struct rule *rule,
                                  const char *name, enum outcome outcome)
{
    struct finding *finding = finding_add(findings);
    CHECK(finding != NULL, "a finding can be added");
    finding->rule = rule;
    finding->about_kind = "roof_plane";
    finding->about_name = name;
    finding->outcome = outcome;
    return finding;
}

static const char *only_code(const struct problems *problems)
{
    return problems->count == 1 && problems->items[0].weight == PROBLEM_NOTE
               ? problems->items[0].code
               : "(not just one note)";
}

/* One waiver against a fail on `south` and a pass on `north`; returns the note's code. */
static const char *waive_under(const char *permit, struct findings *findings,
                               const struct waiver *waiver, struct problems *problems)
{
    struct rule rules[] = {layers, deleted};
    struct rulebook rulebook = {
        .on = {2026, 5, 4}, .rules = rules, .rule_count = 2, .waivers = &waiver, .waiver_count = 1};
    rulebook.rule_index = (struct index){.arena = problems->arena};
    index_add(&rulebook.rule_index, layers.id, &rules[0]);
    index_add(&rulebook.rule_index, deleted.id, &rules[1]);
    problems->count = 0;
    CHECK(findings_waive(findings, &rulebook, permit, problems), "there is memory");
    return problems->count == 0 ? "" : only_code(problems);
}

static const char *waive(struct findings *findings, const struct waiver *waiver,
                         struct problems *problems)
{
    return waive_under("B-7", findings, waiver, problems);
}

static void test_waivers(struct arena *arena)
{
    struct findings findings = {.arena = arena};
    struct problems problems = {.arena = arena};
    struct finding *south = finding_of(&findings, &layers, "south", OUTCOME_FAIL);
    struct finding *east = finding_of(&findings, &layers, "east", OUTCOME_FAIL);
    finding_of(&findings, &layers, "north", OUTCOME_PASS);
    east->normative = SHOULD;
    struct waiver waiver = {.rule = "town/layers",
                            .about = "roof_plane:south",
                            .from = {2026, 5, 5},
                            .until = {2026, 12, 31}};
    CHECK_TEXT(waive(&findings, &waiver, &problems), "waiver-early", "not yet valid");
    CHECK(south->waiver == NULL, "and lifts nothing");
    waiver.from = (struct date){2026, 1, 1};
    waiver.until = (struct date){2026, 5, 3};
    CHECK_TEXT(waive(&findings, &waiver, &problems), "waiver-expired", "no longer valid");
    CHECK(south->waiver == NULL, "and lifts nothing");
    waiver.until = (struct date){2026, 5, 4};
    waiver.about = "roof_plane:north";
    CHECK_TEXT(waive(&findings, &waiver, &problems), "waiver-unused", "what holds needs none");
    waiver.about = "roof_plane:east";
    CHECK_TEXT(waive(&findings, &waiver, &problems), "waiver-unused", "a should needs none");
    waiver.about = "roof_plane:west";
    CHECK_TEXT(waive(&findings, &waiver, &problems), "waiver-orphaned", "there is no such plane");
    waiver.about = "roof_plane:south";
    waiver.rule = "town/gone";
    CHECK_TEXT(waive(&findings, &waiver, &problems), "waiver-orphaned", "the rule is deleted");
    waiver.rule = "town/layers";
    CHECK(exit_code(&findings, &problems, true) == 1, "without a waiver the fail counts");
    waiver.permit = "B-8";
    CHECK_TEXT(waive(&findings, &waiver, &problems), "", "another job's waiver says nothing");
    CHECK(south->waiver == NULL, "and lifts nothing");
    waiver.permit = "B-7";
    CHECK_TEXT(waive_under(NULL, &findings, &waiver, &problems), "waiver-permit",
               "without the permit's number nobody can tell whose it is");
    CHECK(south->waiver == NULL, "and it lifts nothing");
    CHECK_TEXT(waive(&findings, &waiver, &problems), "", "a valid one lifts, on its last day too");
    CHECK(south->waiver == &waiver && south->outcome == OUTCOME_FAIL, "and the fail stays a fail");
    CHECK(exit_code(&findings, &problems, true) == 0, "that no longer decides");
    struct finding_counts counts = findings_count(&findings);
    CHECK(counts.of[OUTCOME_FAIL] == 2 && counts.waived == 1 && counts.failing_should == 1,
          "both fails are counted as what they are");
    CHECK_TEXT(waive(&findings, &waiver, &problems), "waiver-unused", "a second one is needless");
}

static void test_exit_codes(struct arena *arena)
{
    static const int order[] = {64, 74, 70, 3, 4, 1, 2, 0};
    for (size_t i = 0; i < 8; i++)
        for (size_t k = 0; k < 8; k++)
            CHECK(exit_code_first(order[i], order[k]) == order[i < k ? i : k],
                  "of two codes the earlier in the order");
    struct problems problems = {.arena = arena};
    struct findings findings = {.arena = arena};
    CHECK(exit_code(NULL, &problems, false) == 3, "no rule in force is 3");
    CHECK(exit_code(&findings, &problems, true) == 0, "no finding is 0");
    finding_of(&findings, &layers, "a", OUTCOME_NOT_APPLICABLE);
    CHECK(exit_code(&findings, &problems, true) == 0, "nothing applicable is 0");
    struct finding *advice = finding_of(&findings, &layers, "b", OUTCOME_FAIL);
    advice->normative = SHOULD;
    CHECK(exit_code(&findings, &problems, true) == 0, "a failing should does not count");
    struct test hidden[] = {outcome_test(OUTCOME_FAIL), outcome_test(OUTCOME_OPEN)};
    advice->tests = hidden;
    advice->test_count = 2;
    CHECK(exit_code(&findings, &problems, true) == 2, "but what is open below it does");
    finding_of(&findings, &layers, "c", OUTCOME_REVIEW);
    CHECK(exit_code(&findings, &problems, true) == 2, "a review is 2");
    finding_of(&findings, &layers, "d", OUTCOME_FAIL);
    CHECK(exit_code(&findings, &problems, true) == 1, "a failing shall is 1");
    problems_add(&problems, PROBLEM_NOTE, "n", (struct place){0}, "note");
    CHECK(exit_code(&findings, &problems, true) == 1, "a note decides nothing");
    problems_add(&problems, PROBLEM_RULE, "r", (struct place){0}, "rule");
    CHECK(exit_code(&findings, &problems, true) == 4, "a broken rule goes before a fail");
    problems_add(&problems, PROBLEM_INPUT, "i", (struct place){0}, "input");
    CHECK(exit_code(&findings, &problems, true) == 3, "unread input goes before");
    problems.dropped = 1;
    CHECK(exit_code(&findings, &problems, true) == 70, "a problem that was lost is no memory");
    problems_add(&problems, PROBLEM_OUTPUT, "o", (struct place){0}, "output");
    CHECK(exit_code(&findings, &problems, true) == 74, "output goes before");
    problems_add(&problems, PROBLEM_COMMAND, "c", (struct place){0}, "command");
    CHECK(exit_code(&findings, &problems, true) == 64, "the command line goes before all");
}

static void test_order(struct arena *arena)
{
    struct findings findings = {.arena = arena};
    static const struct {
        size_t order;
        unsigned line;
        const char *name;
    } rows[] = {{2, 1, "e"}, {1, 9, "d"}, {1, 3, "b"}, {0, 7, "a"}, {1, 3, "c"}};
    char names[6] = "";
    for (size_t i = 0; i < 5; i++) {
        struct finding *finding = finding_of(&findings, &layers, rows[i].name, OUTCOME_PASS);
        finding->order = rows[i].order;
        finding->place.line = rows[i].line;
    }
    findings_sort(&findings);
    for (size_t i = 0; i < 5; i++)
        names[i] = findings.items[i]->about_name[0];
    CHECK_TEXT(names, "abcde", "by rule, then by place, equals as they came");
    CHECK_TEXT(finding_fingerprint(findings.items[0], arena), "town/layers|roof_plane:a",
               "the fingerprint holds no line");
}

int main(void)
{
    struct arena *arena = arena_new();
    if (arena == NULL)
        return EXIT_FAILURE;
    test_tables();
    test_names();
    test_relations();
    test_without_margin();
    test_refusals();
    test_margins();
    test_margins_that_are_one();
    test_nearest_way();
    test_weights();
    test_messages(arena);
    test_group_messages(arena);
    test_waivers(arena);
    test_exit_codes(arena);
    test_order(arena);
    arena_free(arena);
    return checks_end();
}
