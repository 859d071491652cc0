/* JUnit XML: a design is a suite, a finding a case. What must hold and fails is a failure; what is
 * open is an error, since unknown is no pass; what waits for a person, is waived or does not apply
 * is skipped; advice not followed is told in the case's output. A problem is an error of its own.
 */
#include <string.h>

#include "block.h"
#include "envelope.h"
#include "html.h"

struct tally {
    size_t tests, failures, errors, skipped;
};

static bool is_mistake(const struct problem *problem)
{
    return problem->weight != PROBLEM_NOTE;
}

static bool is_skipped(enum html_group group)
{
    return group == GROUP_REVIEW || group == GROUP_WAIVED || group == GROUP_SIGNED ||
           group == GROUP_NOT_APPLICABLE;
}

static struct tally count(const struct report *report)
{
    struct tally tally = {0};
    for (size_t i = 0; report->findings != NULL && i < report->findings->count; i++) {
        enum html_group group = html_group_of(report->findings->items[i]);
        tally.tests++;
        tally.failures += group == GROUP_FAILS;
        tally.errors += group == GROUP_OPEN;
        tally.skipped += is_skipped(group);
    }
    for (size_t i = 0; i < report->problems->count; i++)
        if (is_mistake(&report->problems->items[i])) {
            tally.tests++;
            tally.errors++;
        }
    return tally;
}

static void set_count(struct html *xml, const char *name, size_t number)
{
    html_set(xml, name, arena_format(xml->arena, "%zu", number));
}

static void write_property(struct html *xml, const char *name, const char *value)
{
    html_open(xml, "property", NULL);
    html_set(xml, "name", name);
    html_set(xml, "value", value);
    html_close(xml);
}

static void write_properties(struct html *xml)
{
    const struct report *report = xml->report;
    char on[16];
    html_open(xml, "properties", NULL);
    write_property(xml, "plumbrule", report->version);
    if (report->has_date) {
        date_write(on, sizeof on, report->on);
        write_property(xml, "on", on);
    }
    for (size_t i = 0; report->rulebook != NULL && i < report->rulebook->book_count; i++) {
        const struct book_in_force *one = &report->rulebook->books[i];
        write_property(xml, "book",
                       arena_format(xml->arena, "%s%s%s", one->book->name,
                                    one->edition != NULL ? " " : "",
                                    one->edition != NULL ? one->edition : ""));
    }
    html_close(xml);
}

/* What the case's body says: where, by what, what to do. */
static const char *body_text(struct html *xml, const struct finding *finding)
{
    const char *place = html_text(xml, place_text(finding->place, xml->arena));
    return arena_format(
        xml->arena, "%s.%s%s%s%s%s%s", finding->message, place[0] ? "\nWhere: " : "", place,
        finding->cite != NULL ? "\nRule: " : "", finding->cite != NULL ? finding->cite : "",
        finding->remedy != NULL ? "\nTo do: " : "", finding->remedy != NULL ? finding->remedy : "");
}

static void write_outcome(struct html *xml, const char *tag, const char *type,
                          const struct finding *finding)
{
    html_open(xml, tag, NULL);
    if (type != NULL)
        html_set(xml, "type", type);
    html_set(xml, "message", finding->message);
    if (type != NULL)
        html_say(xml, body_text(xml, finding));
    html_close(xml);
}

static void write_case(struct html *xml, const struct finding *finding)
{
    enum html_group group = html_group_of(finding);
    html_raw(xml, "\n");
    html_open(xml, "testcase", NULL);
    html_set(xml, "classname", finding->rule->id);
    html_set(xml, "name",
             arena_format(xml->arena, "%s: %s", finding->title != NULL ? finding->title : "",
                          html_text(xml, about_text(finding, xml->arena))));
    if (group == GROUP_FAILS)
        write_outcome(xml, "failure", "fail", finding);
    else if (group == GROUP_OPEN)
        write_outcome(xml, "error", "open", finding);
    else if (is_skipped(group))
        write_outcome(xml, "skipped", NULL, finding);
    else if (group == GROUP_ADVICE)
        html_put_format(xml, "system-out", NULL, "Advice not followed. %s",
                        html_text(xml, body_text(xml, finding)));
    html_close(xml);
}

static void write_problem(struct html *xml, const struct problem *problem, size_t number)
{
    const char *place = html_text(xml, place_text(problem->place, xml->arena));
    html_raw(xml, "\n");
    html_open(xml, "testcase", NULL);
    html_set(xml, "classname", "plumbrule/problem");
    html_set(xml, "name", arena_format(xml->arena, "%zu %s", number, problem->code));
    html_open(xml, "error", NULL);
    html_set(xml, "type", problem->code);
    html_set(xml, "message", problem->message);
    html_say(xml, arena_format(xml->arena, "%s%s%s%s", place, place[0] ? ": " : "",
                               problem->example != NULL ? "for example " : "",
                               problem->example != NULL ? problem->example : ""));
    html_close(xml);
    html_close(xml);
}

static void write_suite(struct html *xml)
{
    const struct report *report = xml->report;
    struct tally tally = count(report);
    html_open(xml, "testsuite", NULL);
    html_set(xml, "name", report->design_path);
    set_count(xml, "tests", tally.tests);
    set_count(xml, "failures", tally.failures);
    set_count(xml, "errors", tally.errors);
    set_count(xml, "skipped", tally.skipped);
    write_properties(xml);
    for (size_t i = 0; report->findings != NULL && i < report->findings->count; i++)
        write_case(xml, report->findings->items[i]);
    for (size_t i = 0; i < report->problems->count; i++)
        if (is_mistake(&report->problems->items[i]))
            write_problem(xml, &report->problems->items[i], i + 1);
    html_close(xml);
}

bool report_write_junit(struct text *out, const struct report *report)
{
    struct html xml;
    text_add_word(out, JUNIT_BEGINS);
    html_begin(&xml, out, report);
    if (!xml.is_short)
        write_suite(&xml);
    bool is_written = html_end(&xml);
    text_add_word(out, JUNIT_ENDS);
    return is_written && !out->is_short;
}
