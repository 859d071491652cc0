/* Each writer on findings that lack what most have (citation, book, place, remedy), of every
 * kind there is, and on problems with all that a problem may have. */
#include <jansson.h>
#include "check.h"
#include "explanation.h"
#include "report.h"
#include "signoff.h"

static const struct rule own = {.id = "plumbrule/scope", .holds = true}; /* of no book */

struct scene {
    struct findings findings;
    struct problems problems;
    struct test review, missing;
    struct waiver waiver;
    struct signoff signoff;
    struct report report;
};

static struct finding *add(struct scene *scene, const char *name, enum outcome outcome)
{
    struct finding *finding = finding_add(&scene->findings);
    finding->rule = &own;
    finding->title = "A point";
    finding->about_kind = "design";
    finding->about_name = name;
    finding->outcome = outcome;
    finding->message = name;
    return finding;
}

static void add_problems(struct scene *scene)
{
    struct problem *problem = problems_add(&scene->problems, PROBLEM_NOTE, "seen-twice",
                                           (struct place){"house.yaml", 3, 5}, "It stands twice");
    problem->other = (struct place){"house.yaml", 9, 2};
    problem->example = "once: enough";
    problem->excerpt = "  - twice & twice";
    problems_add(&scene->problems, PROBLEM_NOTE, "bare", (struct place){0}, "It stands nowhere");
    scene->problems.dropped = 2;
}

static void set_scene(struct scene *scene, struct arena *arena)
{
    *scene = (struct scene){.findings = {.arena = arena}, .problems = {.arena = arena}};
    scene->review =
        (struct test){.what = "Look at it", .relation = RELATION_REVIEW, .outcome = OUTCOME_REVIEW};
    scene->missing = (struct test){.relation = RELATION_MISSING,
                                   .outcome = OUTCOME_OPEN,
                                   .missing = {"value ground_snow_load", NULL, {0}}};
    add(scene, "for information", OUTCOME_INFORMATIONAL);
    add(scene, "passed by", OUTCOME_NOT_APPLICABLE);
    struct finding *open = add(scene, "still open", OUTCOME_OPEN);
    open->tests = &scene->missing;
    open->test_count = 1;
    struct finding *looked = add(scene, "looked at", OUTCOME_REVIEW);
    looked->tests = &scene->review;
    looked->test_count = 1;
    scene->signoff = (struct signoff){.rule = own.id,
                                      .about = "design:looked at",
                                      .by = "Ada Thornbury",
                                      .license = "PE 20418",
                                      .why = "seen",
                                      .on = {2026, 8, 10},
                                      .until = {2027, 1, 1},
                                      .place = {"house.signoff.yaml", 1, 3}};
    looked->signoff = &scene->signoff;
    scene->waiver = (struct waiver){.rule = own.id, .about = "design:let off"};
    add(scene, "let off", OUTCOME_FAIL)->waiver = &scene->waiver;
    add(scene, "advised", OUTCOME_FAIL)->normative = SHOULD;
    add_problems(scene);
    scene->report = (struct report){.design_path = "/tmp/a house.yaml",
                                    .findings = &scene->findings,
                                    .problems = &scene->problems,
                                    .version = "0.1.0",
                                    .with_working = true};
}

/* What is written; the text is the caller's. */
static struct text written(const struct report *report, const char *format)
{
    struct text out = {0};
    CHECK(report_format_find(format)->write(&out, report), format);
    return out;
}

static void check_says(const struct report *report, const char *format, const char *const *needed)
{
    struct text out = written(report, format);
    for (; *needed != NULL; needed++)
        if (!CHECK(strstr(out.bytes, *needed) != NULL, *needed))
            fprintf(stderr, "in %s:\n%s\n", format, out.bytes);
    text_free(&out);
}

static void test_text(const struct report *report)
{
    check_says(report, "text",
               (const char *const[]){"for information", "still open", "looked at",
                                     "value ground_snow_load", "the authority", "no reason given",
                                     "Ada Thornbury", "2027-01-01", "It stands twice",
                                     "once: enough", "house.yaml:9:2",
                                     "There was no memory left to tell all problems.", NULL});
}

static void test_markup(const struct report *report)
{
    check_says(report, "html",
               (const char *const[]){"for information", "still open", "twice &amp; twice",
                                     "once: enough", "(note)", "the authority", "no reason given",
                                     "Ada Thornbury", "until 2027-01-01", "plumbrule/scope",
                                     "There was no memory left to tell all problems.", NULL});
    check_says(report, "junit",
               (const char *const[]){"name=\"/tmp/a house.yaml\"",
                                     "tests=\"6\" failures=\"0\" errors=\"1\" skipped=\"3\"",
                                     "Advice not followed. advised.", NULL});
}

static void test_json(const struct report *report)
{
    struct text out = written(report, "json");
    json_t *json = json_loads(out.bytes, JSON_REJECT_DUPLICATES, NULL);
    json_t *counts = json_object_get(json, "counts"), *findings = json_object_get(json, "findings");
    CHECK(json_integer_value(json_object_get(counts, "informational")) == 1, "one to know");
    CHECK(json_array_size(findings) == 6, "all findings");
    CHECK(json_is_null(json_object_get(json_array_get(findings, 0), "cite")), "without citation");
    json_decref(json);
    text_free(&out);
}

static void test_sarif(const struct report *report)
{
    struct text out = written(report, "sarif");
    json_t *json = json_loads(out.bytes, JSON_REJECT_DUPLICATES, NULL);
    json_t *run = json_array_get(json_object_get(json, "runs"), 0);
    json_t *results = json_object_get(run, "results");
    json_t *waived = json_array_get(results, 4);
    CHECK(json_array_size(results) == 6, "a result for each finding");
    CHECK_TEXT(json_string_value(json_object_get(json_array_get(results, 0), "kind")),
               "informational", "SARIF has the kind, too");
    json_t *suppression = json_array_get(json_object_get(waived, "suppressions"), 0);
    CHECK_TEXT(json_string_value(json_object_get(suppression, "justification")), "no reason given",
               "a waiver without a reason");
    json_t *notes = json_object_get(json_array_get(json_object_get(run, "invocations"), 0),
                                    "toolExecutionNotifications");
    CHECK_TEXT(json_string_value(json_object_get(json_array_get(notes, 0), "level")), "note",
               "a note is no error");
    json_decref(json);
    text_free(&out);
}

static void check_explained(const struct scene *scene, size_t at, const char *word)
{
    struct text out = {0};
    CHECK(explanation_write(&out, &scene->report, scene->findings.items[at]), "it is explained");
    if (!CHECK(strstr(out.bytes, word) != NULL, word))
        fprintf(stderr, "%s\n", out.bytes);
    text_free(&out);
}

static void test_explanations(const struct scene *scene)
{
    check_explained(scene, 0, "To know: for information.");
    check_explained(scene, 1, "passed by.");
    check_explained(scene, 2, "Open: still open.");
    check_explained(scene, 3, "For a person, and signed: looked at.");
    check_explained(scene, 5, "Falls short of advice: advised.");
}

int main(void)
{
    struct arena *arena = arena_new();
    struct scene scene;
    if (arena == NULL)
        return EXIT_FAILURE;
    set_scene(&scene, arena);
    test_text(&scene.report);
    test_markup(&scene.report);
    test_json(&scene.report);
    test_sarif(&scene.report);
    test_explanations(&scene);
    arena_free(arena);
    return checks_end();
}
