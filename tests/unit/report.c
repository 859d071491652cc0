/* Reports: valid JSON in the documented shape, text that wraps, carets that stand right. */
#include <jansson.h>
#include "check.h"
#include "listing.h"
#include "page.h"
#include "parts.h"
#include "report.h"
#include "unit.h"

static const struct book town = {.name = "pell-harbor",
                                 .title = "Town of Pell Harbor",
                                 .role = ROLE_AUTHORITY,
                                 .directory = "rules/pell-harbor"};
static const struct rule bus_rule = {
    .id = "pell-harbor/bus", .book = &town, .text_by = &town, .holds = true};

/* The widest line, in code points. */
static size_t widest_line(const char *text)
{
    size_t widest = 0;
    while (*text != '\0') {
        size_t length = strcspn(text, "\n"), points = text_count_points(text, length);
        widest = points > widest ? points : widest;
        text += length + (text[length] == '\n');
    }
    return widest;
}

static void check_paragraph(unsigned width, unsigned indent, const char *label, const char *text,
                            const char *should, const char *sentence)
{
    struct text out = {0};
    struct page page = {&out, width, false};
    page_paragraph(&page, 1, label, STYLE_BAD, indent, text);
    CHECK_TEXT(out.bytes, should, sentence);
    text_free(&out);
}

static void test_wrapping(void)
{
    check_paragraph(16, 5, "to", "give the slope of it", " to  give the\n     slope of it\n",
                    "words wrap behind a label");
    check_paragraph(16, 5, NULL, "give the slope", "     give the\n     slope\n",
                    "and without one");
    check_paragraph(12, 2, NULL, "äöüäöüäöü ä", "  äöüäöüäöü\n  ä\n", "code points are counted");
    check_paragraph(13, 2, NULL, "äöüäöüäöü ä", "  äöüäöüäöü ä\n", "and not bytes");
    check_paragraph(8, 2, NULL, "it is 100 % so", "  it is\n  100 %\n  so\n",
                    "a percent sign stays with its number");
    check_paragraph(8, 2, NULL, "a/very/long/path x", "  a/very/long/path\n  x\n",
                    "a word that is too wide stands alone");
    check_paragraph(20, 2, NULL, "one\ntwo", "  one\n  two\n", "a line end is kept");
    check_paragraph(20, 2, NULL, "red \x1b[31m \x7f \xc2\x9b x\xff",
                    "  red \xEF\xBF\xBD[31m \xEF\xBF\xBD \xEF\xBF\xBD x\xEF\xBF\xBD\n",
                    "no control character reaches a terminal");
}

/* A space at the end is dropped, but has the words laid out one by one. */
static void test_lines_as_words(void)
{
    static const char *const words[] = {"a", "of", "%", "slope", "100", "a/very/long/path/of/it"};
    uint32_t state = 7;
    for (int round = 0; round < 3000; round++) {
        char text[200] = "";
        size_t length = 0;
        struct text lines = {0}, one_by_one = {0};
        struct page page = {&lines, 8 + (unsigned)round % 30, false};
        struct page other = {&one_by_one, page.width, false};
        do {
            state = state * 1664525 + 1013904223;
            length += (size_t)snprintf(text + length, sizeof text - length, "%s%s",
                                       length > 0 ? " " : "", words[(state >> 16) % 6]);
        } while ((state >> 8) % 8 != 0 && length < 150);
        const char *label = round % 3 == 0 ? NULL : "at the label";
        page_paragraph(&page, 1, label, STYLE_BAD, (unsigned)round % 7, text);
        text[length] = ' ';
        text[length + 1] = '\0';
        page_paragraph(&other, 1, label, STYLE_BAD, (unsigned)round % 7, text);
        CHECK_TEXT(lines.bytes, one_by_one.bytes, "by lines as by words");
        text_free(&lines);
        text_free(&one_by_one);
    }
}

static void check_problem(struct problem problem, const char *should, const char *sentence)
{
    struct text out = {0};
    struct problems problems = {.items = &problem, .count = 1, .capacity = 1};
    report_write_problems(&out, &problems, false);
    CHECK_TEXT(out.bytes, should, sentence);
    text_free(&out);
}

static void test_problems(void)
{
    check_problem((struct problem){.place = {"house.yaml", 12, 5},
                                   .message = "there is no fact 'slpe'",
                                   .example = "slope: 4/12",
                                   .excerpt = "\tü: slpe: 1",
                                   .other = {"house.yaml", 3, 1}},
                  "house.yaml:12:5: there is no fact 'slpe'\n    \tü: slpe: 1\n    \t   ^\n"
                  "    for example: slope: 4/12\n    see also house.yaml:3:1\n",
                  "place, sentence, caret below its column, example, second place");
    check_problem((struct problem){.weight = PROBLEM_NOTE, .message = "a waiver lifts nothing"},
                  "note: a waiver lifts nothing\n", "a note says so, and needs no place");
    check_problem((struct problem){.place = {"a.lua", 3, 0},
                                   .weight = PROBLEM_RULE,
                                   .message = "nil",
                                   .excerpt = "x = nil"},
                  "a.lua:3: rule: nil\n    x = nil\n", "a line without a column has no caret");
    char wide[301];
    memset(wide, 'x', 300);
    wide[300] = '\0';
    struct text out = {0};
    struct problem problem = {.place = {"b.yaml", 1, 250}, .message = "m", .excerpt = wide};
    struct problems problems = {.items = &problem, .count = 1, .capacity = 1};
    report_write_problems(&out, &problems, false);
    CHECK(widest_line(out.bytes) <= 110, "a long line is shown around its column");
    CHECK(strstr(out.bytes, "^") != NULL, "with its caret");
    text_free(&out);
}

static void check_number(double number, const char *should)
{
    json_t *array = json_array();
    CHECK(json_push(array, json_number(number)), "a number becomes JSON");
    char *text = json_dumps(array, JSON_COMPACT | JSON_REAL_PRECISION(12));
    CHECK_TEXT(text, should, "at 12 significant digits");
    free(text);
    json_decref(array);
}

static void test_numbers(void)
{
    check_number(165, "[165]");
    check_number(-0.0, "[0]");
    check_number(0.1 + 0.2, "[0.3]");
    check_number(52.083333333333336, "[52.0833333333]");
    check_number(-0.32, "[-0.32]");
    check_number(NAN, "[null]");
    check_number(INFINITY, "[null]");
    json_t *broken = json_text("a\xff");
    CHECK_TEXT(json_string_value(broken), "a\xEF\xBF\xBD", "bytes that are no UTF-8 are replaced");
    json_decref(broken);
}

static struct test amperes(double actual, double limit)
{
    struct test test = {.what = "Current", .relation = RELATION_NOT_EXCEED};
    struct quantity_fault fault;
    struct quantity a = quantity_of(actual, "A"), b = quantity_of(limit, "A");
    a.written = b.written = NULL;
    test.actual = amount_of_quantity(a);
    test.limit = amount_of_quantity(b);
    CHECK(test_judge(&test, &fault), "amperes are compared");
    return test;
}

/* A failing group, an open finding, a pass, a waived fail and an unfit assumption. */
struct scene {
    struct design *design;
    struct rulebook rulebook;
    struct book_in_force books[1];
    struct findings findings;
    struct problems problems;
    struct waiver waiver;
    struct test far[1], near[1], group[1], open[1], pass[1], waived[1];
    struct option options[2];
    struct input *shared[3];
    struct line working[1];
    struct rule rules[1];
};

static struct finding *add(struct scene *scene, const char *name, struct test *test)
{
    struct finding *finding = finding_add(&scene->findings);
    finding->rule = &bus_rule;
    finding->title = "The busbar carries no more than it is rated for";
    finding->cite = "Code 5-2";
    finding->about_kind = "busbar";
    finding->about_name = name;
    finding->place = (struct place){"house.yaml", 16, 9};
    finding->tests = test;
    finding->test_count = 1;
    finding->outcome = test->outcome;
    finding->remedy = "Use a larger bus.";
    return finding;
}

static void set_scene(struct scene *scene, struct arena *arena)
{
    *scene = (struct scene){.findings = {.arena = arena}, .problems = {.arena = arena}};
    scene->design = design_new(arena, "house.yaml");
    struct object *root = scene->design->root;
    root->facts[SLOT_design_title] = (struct fact){
        .state = FACT_GIVEN, .place = {"house.yaml", 1, 8}, .is.word = "Heron Row house"};
    struct object *service =
        design_add(scene->design, KIND_service, root, NULL, (struct place){"house.yaml", 3, 1});
    service->facts[SLOT_service_rating] = (struct fact){
        .state = FACT_GIVEN, .place = {"house.yaml", 4, 11}, .written = "200 A", .is.number = 200};
    service->facts[SLOT_service_voltage] = (struct fact){
        .state = FACT_GIVEN, .place = {"house.yaml", 5, 12}, .written = "240 V", .is.number = 240};
    scene->books[0] = (struct book_in_force){.book = &town};
    scene->rules[0] = bus_rule;
    scene->rulebook = (struct rulebook){.on = {2026, 5, 4},
                                        .books = scene->books,
                                        .book_count = 1,
                                        .rules = scene->rules,
                                        .rule_count = 1};
    scene->far[0] = amperes(165, 125);
    scene->near[0] = amperes(165, 150);
    scene->options[0] = (struct option){"sum of sources", OUTCOME_FAIL, scene->far, 1, 1};
    scene->options[1] = (struct option){"120 % of the busbar", OUTCOME_FAIL, scene->near, 1, 1};
    scene->group[0] = (struct test){.what = "One of",
                                    .relation = RELATION_ONE_OF,
                                    .options = scene->options,
                                    .option_count = 2};
    test_settle_group(scene->group);
    scene->open[0] =
        (struct test){.relation = RELATION_MISSING,
                      .outcome = OUTCOME_OPEN,
                      .missing = {"busbar sub: rating", "rating: 125 A", {"house.yaml", 20, 3}}};
    scene->pass[0] = amperes(110, 125);
    scene->waived[0] = amperes(200, 125);
    struct finding *fail = add(scene, "main", scene->group);
    for (size_t i = 0; i < 3; i++)
        scene->shared[i] = findings_add_input(&scene->findings);
    struct input *rating = scene->shared[0], *assumed = scene->shared[1];
    rating->thing = "service";
    rating->fact = "rating";
    rating->text = "200 A";
    rating->is = object_amount(service, SLOT_service_rating);
    rating->place = (struct place){"house.yaml", 4, 11};
    assumed->kind = "breaker";
    assumed->thing = "pv";
    assumed->fact = "serves";
    assumed->text = "none";
    assumed->is_assumed = true;
    assumed->assumed_why = "it serves ordinary loads";
    *scene->shared[2] = *assumed;
    scene->shared[2]->number = 2;
    scene->shared[2]->thing = "spare";
    fail->inputs = scene->findings.inputs;
    fail->input_count = 3;
    scene->working[0] = (struct line){"125 % of 32 A = 40 A", "Code 5-1"};
    fail->working = scene->working;
    fail->line_count = 1;
    add(scene, "sub", scene->open);
    add(scene, "garage", scene->pass);
    scene->waiver = (struct waiver){.rule = bus_rule.id,
                                    .about = "busbar:shed",
                                    .reason = "old",
                                    .granted_by = "Chief Official",
                                    .until = {2027, 1, 1}};
    add(scene, "shed", scene->waived)->waiver = &scene->waiver;
}

static struct report report_of(const struct scene *scene)
{
    return (struct report){.design_path = "house.yaml",
                           .design = scene->design,
                           .rulebook = &scene->rulebook,
                           .findings = &scene->findings,
                           .problems = &scene->problems,
                           .has_date = true,
                           .on = scene->rulebook.on,
                           .version = "0.1.0"};
}

static const char *word(json_t *object, const char *key)
{
    return json_string_value(json_object_get(object, key));
}

static void test_json_findings(json_t *report)
{
    json_t *findings = json_object_get(report, "findings");
    json_t *fail = json_array_get(findings, 0), *open = json_array_get(findings, 1),
           *pass = json_array_get(findings, 2), *waived = json_array_get(findings, 3);
    CHECK_TEXT(word(fail, "rule"), "pell-harbor/bus", "the rule");
    CHECK_TEXT(word(fail, "kind"), "fail", "the outcome");
    CHECK_TEXT(word(fail, "level"), "error", "a shall");
    CHECK_TEXT(word(pass, "level"), "none", "a pass has no level");
    CHECK_TEXT(word(json_object_get(fail, "about"), "name"), "main", "what it is about");
    json_t *group = json_array_get(json_object_get(fail, "tests"), 0);
    CHECK_TEXT(word(group, "relation"), "one_of", "a group");
    CHECK_NEAR(json_number_value(json_object_get(group, "margin")), -0.1, 1e-12,
               "has its best option's margin");
    CHECK(json_object_get(group, "actual") == NULL, "and compares nothing itself");
    json_t *option = json_array_get(json_object_get(group, "options"), 0);
    json_t *leaf = json_array_get(json_object_get(option, "tests"), 0);
    CHECK_TEXT(word(json_object_get(leaf, "limit"), "unit"), "A", "a limit with its unit");
    CHECK(json_integer_value(json_object_get(json_object_get(leaf, "actual"), "value")) == 165,
          "and the number beside it");
    json_t *facts = json_object_get(report, "facts"), *inputs = json_object_get(fail, "inputs");
    CHECK(json_array_size(inputs) == 3 && json_integer_value(json_array_get(inputs, 2)) == 2,
          "the facts that it rests on, by number");
    json_t *input = json_array_get(facts, 0);
    CHECK(json_number_value(json_object_get(input, "value")) == 200, "an input's value");
    CHECK(json_integer_value(json_object_get(json_object_get(input, "place"), "line")) == 4,
          "and its place");
    CHECK_TEXT(word(json_array_get(facts, 1), "assumed"), "it serves ordinary loads",
               "what was assumed says why");
    CHECK_TEXT(word(json_array_get(json_object_get(fail, "working"), 0), "text"),
               "125 % of 32 A = 40 A", "the working");
    json_t *missing = json_array_get(json_object_get(open, "missing"), 0);
    CHECK_TEXT(word(missing, "fact"), "busbar sub: rating", "what is missing");
    CHECK(json_is_null(json_object_get(fail, "waived")), "what is not waived");
    CHECK_TEXT(word(json_object_get(waived, "waived"), "granted_by"), "Chief Official",
               "who waived");
    CHECK_TEXT(word(waived, "kind"), "fail", "a waived fail stays one");
}

static void test_json(const struct scene *scene)
{
    struct text out = {0};
    struct report report = report_of(scene);
    json_error_t error;
    CHECK(report_write_json(&out, &report), "the report is written");
    json_t *json = json_loads(out.bytes, JSON_REJECT_DUPLICATES, &error);
    CHECK(json != NULL, "and is JSON");
    CHECK(json_integer_value(json_object_get(json, "plumbrule")) == 1, "its shape's number");
    CHECK_TEXT(word(json, "on"), "2026-05-04", "the day");
    CHECK_TEXT(word(json, "design"), "house.yaml", "the path as given");
    CHECK_TEXT(word(json, "caution"), report_caution(), "the caution");
    json_t *counts = json_object_get(json, "counts");
    CHECK(json_integer_value(json_object_get(counts, "fail")) == 2 &&
              json_integer_value(json_object_get(counts, "open")) == 1 &&
              json_integer_value(json_object_get(counts, "waived")) == 1,
          "the counts");
    test_json_findings(json);
    json_t *unread = json_object_get(json, "not_checked");
    CHECK(json_array_size(unread) == 1, "one fact was read by no rule");
    CHECK_TEXT(word(json_array_get(unread, 0), "fact"), "voltage", "and it is named");
    json_decref(json);
    text_free(&out);
}

static void test_text(const struct scene *scene)
{
    static const char *const needed[] = {
        "Heron Row house",
        "house.yaml, held against the rules of 2026-05-04",
        "1  Fails: The busbar",
        "busbar main, house.yaml:16",
        "at most 150 A is",
        "\"sum of sources\" (not met): Current is 165 A",
        "breaker pv and 1 more: serves is none: it serves",
        "  - breaker pv and 1 more: serves is none: it serves ordinary loads\n",
        "pell-harbor, Code 5-2 (pell-harbor/bus)",
        "Use a larger bus.",
        "for example: rating: 125 A",
        "3  Fails, waived:",
        "by Chief Official, until 2027-01-01: old",
        "    12 %  The busbar carries no more than it is rated for: busbar garage",
        "4 findings: 2 fail (0 of them only as advice, 1 waived), 1 open,",
        "Does not stand: something that must hold fails.",
        "  service: voltage\n",
        "pell-harbor: Town of Pell Harbor",
        "an aid, not an approval"};
    struct text out = {0};
    struct report report = report_of(scene);
    CHECK(report_write_text(&out, &report), "the report is written");
    for (size_t i = 0; i < sizeof needed / sizeof needed[0]; i++)
        if (!CHECK(strstr(out.bytes, needed[i]) != NULL, needed[i]))
            fprintf(stderr, "%s\n", out.bytes);
    CHECK(widest_line(out.bytes) <= 80, "no line is wider than 80 columns");
    CHECK(strchr(out.bytes, '\x1b') == NULL, "no colour where none is wanted");
    CHECK(strstr(out.bytes, "125 % of 32 A = 40 A") == NULL, "the working is told when asked for");
    text_clear(&out);
    report.with_working = true;
    report.width = 60;
    CHECK(report_write_text(&out, &report), "the report is written");
    CHECK(strstr(out.bytes, "125 % of 32 A = 40 A [Code 5-1]") != NULL, "now the working is told");
    if (!CHECK(widest_line(out.bytes) <= 60, "no line is wider than 60 columns"))
        fprintf(stderr, "%s\n", out.bytes);
    text_free(&out);
}

/* Colour adds nothing that is not in words. */
static void test_color(const struct scene *scene)
{
    struct text plain = {0}, colored = {0}, stripped = {0};
    struct report report = report_of(scene);
    report_write_text(&plain, &report);
    report.with_color = true;
    report_write_text(&colored, &report);
    CHECK(strchr(colored.bytes, '\x1b') != NULL, "there is colour");
    for (const char *at = colored.bytes; *at != '\0';)
        if (*at == '\x1b')
            at += strcspn(at, "m") + 1;
        else
            text_add(&stripped, at++, 1);
    CHECK_TEXT(stripped.bytes, plain.bytes, "and the words are the same without it");
    text_free(&plain);
    text_free(&colored);
    text_free(&stripped);
}

/* What could not be read has a report, too, and is never a pass. */
static void test_unread(struct arena *arena)
{
    struct problems problems = {.arena = arena};
    problems_add(&problems, PROBLEM_INPUT, "file-missing", (struct place){"gone.yaml", 0, 0},
                 "there is no such file");
    struct report report = {.design_path = "gone.yaml", .problems = &problems};
    struct text out = {0};
    CHECK(report_write_text(&out, &report), "the report is written");
    CHECK(strstr(out.bytes, "gone.yaml: there is no such file") != NULL, "it says what was wrong");
    CHECK(strstr(out.bytes, "Not checked: something could not be read") != NULL, "and so the end");
    CHECK(strstr(out.bytes, "Stands") == NULL, "nothing stands");
    text_clear(&out);
    CHECK(report_write_json(&out, &report), "the report is written as JSON");
    json_t *json = json_loads(out.bytes, 0, NULL);
    CHECK(json_is_null(json_object_get(json, "on")), "there is no day");
    CHECK(json_array_size(json_object_get(json, "problems")) == 1, "there is the problem");
    json_decref(json);
    text_free(&out);
}

static void test_listings(const struct scene *scene)
{
    const struct book *books[] = {&town};
    struct rule gone = bus_rule;
    struct act act = {
        .verb = "deletes", .book = &town, .cite = "Ordinance 9", .from = {2025, 5, 1}};
    gone.id = "pell-harbor/gone";
    gone.holds = false;
    gone.acts = &act;
    gone.act_count = 1;
    struct rule_entry entries[] = {{&bus_rule, "Bus", "5-2"}, {&gone, NULL, NULL}};
    struct text out = {0};
    CHECK(list_books_as_text(&out, books, 1), "books are listed");
    CHECK(strstr(out.bytes, "pell-harbor: Town of Pell Harbor") != NULL, "by name and title");
    CHECK(strstr(out.bytes, "authority") != NULL, "with their role");
    text_clear(&out);
    CHECK(list_rules_as_text(&out, &scene->rulebook, entries, 2), "rules are listed");
    CHECK(strstr(out.bytes, "pell-harbor/gone (deleted)") != NULL, "deleted ones as such");
    CHECK(strstr(out.bytes, "deletes it from 2025-05-01: Ordinance 9") != NULL, "with the act");
    CHECK(strstr(out.bytes, "1 in force, 1 deleted.") != NULL, "and counted");
    text_clear(&out);
    CHECK(list_rules_as_json(&out, &scene->rulebook, entries, 2), "rules are listed as JSON");
    json_t *json = json_loads(out.bytes, 0, NULL);
    json_t *second = json_array_get(json_object_get(json, "rules"), 1);
    CHECK(json_is_false(json_object_get(second, "holds")), "a deleted one does not hold");
    CHECK(json_is_null(json_object_get(second, "title")), "a card that was not read has no title");
    json_decref(json);
    text_clear(&out);
    CHECK(list_books_as_json(&out, books, 1), "books are listed as JSON");
    json = json_loads(out.bytes, 0, NULL);
    CHECK_TEXT(word(json_array_get(json_object_get(json, "books"), 0), "role"), "authority",
               "with their role");
    json_decref(json);
    text_free(&out);
}

int main(void)
{
    struct arena *arena = arena_new();
    struct scene scene;
    if (arena == NULL)
        return EXIT_FAILURE;
    test_wrapping();
    test_lines_as_words();
    test_problems();
    test_numbers();
    set_scene(&scene, arena);
    test_json(&scene);
    test_text(&scene);
    test_color(&scene);
    test_unread(arena);
    test_listings(&scene);
    arena_free(arena);
    return checks_end();
}
