/* The top of the report: whose design, held against what, and the verdict in words. */
#include <string.h>

#include "html.h"

/* A plumb line before its board. It hangs true where the design stands, and beside the mark where
 * it does not. */
static void write_mark(struct html *html, int code)
{
    const char *bob = code == 0 ? "<path d='M22 8V50'/><path class='bob' d='M16 50h12l-6 16z'/>"
                      : code == 1
                          ? "<path d='M22 8L36 48'/><path class='bob' d='M30 50l11-4 0 17z'/>"
                          : "<path stroke-dasharray='3 4' d='M22 8V50'/>"
                            "<path class='bob hollow' d='M16 50h12l-6 16z'/>";
    html_raw(html,
             "<svg class='mark' viewBox='0 0 48 72' width='48' height='72' aria-hidden='true' "
             "focusable='false'><path class='board' d='M12 3h20v66h-20z'/>"
             "<path class='tick' d='M22 60v9'/>");
    html_raw(html, bob);
    html_raw(html, "</svg>");
}

static const char *verdict_words(int code)
{
    return code == 0   ? "Stands"
           : code == 1 ? "Does not stand"
           : code == 2 ? "Not settled"
           : code == 4 ? "Not settled: a rule is broken"
                       : "Not checked";
}

/* "48 stand, 2 are waived": what needs no action. */
static const char *counts_text(struct html *html, const struct finding_counts *counts)
{
    const struct {
        size_t count;
        const char *words;
    } parts[] = {{counts->of[OUTCOME_PASS], "stand"},
                 {counts->of[OUTCOME_NOT_APPLICABLE], "do not apply"},
                 {counts->failing_should, "fall short of advice"},
                 {counts->waived, "lifted by a waiver"},
                 {counts->signed_off, "signed by a person"},
                 {counts->of[OUTCOME_INFORMATIONAL], "to know"}};
    const char *text = "";
    for (size_t i = 0; i < sizeof parts / sizeof parts[0]; i++)
        if (parts[i].count > 0)
            text = html_text(html, arena_format(html->arena, "%s%s%zu %s", text,
                                                text[0] != '\0' ? ", " : "", parts[i].count,
                                                parts[i].words));
    return text[0] != '\0' ? html_text(html, arena_format(html->arena, "%s.", text))
                           : "Nothing was checked.";
}

/* "3 points fail that must hold; 1 fact …": what is to be done, in one sentence each. */
static void write_verdict(struct html *html, int code)
{
    const struct report *report = html->report;
    struct finding_counts counts = {{0}, 0, 0, 0};
    if (report->findings != NULL)
        counts = findings_count(report->findings);
    size_t must = counts.of[OUTCOME_FAIL] - counts.failing_should - counts.waived;
    html_open(html, "div", "verdict");
    write_mark(html, code);
    html_open(html, "div", NULL);
    html_put(html, "p", "word", verdict_words(code));
    if (code == 0)
        html_put_format(html, "p", NULL,
                        "Nothing that must hold fails%s, and nothing is left open.",
                        counts.waived > 0 ? " but what is waived" : "");
    else if (code == 3)
        html_put(html, "p", NULL,
                 "Something could not be read, or no rule is in force; see the problems.");
    if (must > 0)
        html_put_format(html, "p", NULL,
                        "%zu finding%s that must hold fail%s and must be put right first.", must,
                        must == 1 ? "" : "s", must == 1 ? "s" : "");
    if (counts.of[OUTCOME_OPEN] > 0)
        html_put_format(html, "p", NULL, "%zu finding%s cannot be told, because facts are missing.",
                        counts.of[OUTCOME_OPEN], counts.of[OUTCOME_OPEN] == 1 ? "" : "s");
    if (counts.of[OUTCOME_REVIEW] > counts.signed_off)
        html_put_format(html, "p", NULL, "%zu must be judged by a person.",
                        counts.of[OUTCOME_REVIEW] - counts.signed_off);
    html_put(html, "p", "counts", counts_text(html, &counts));
    html_close(html);
    html_close(html);
}

static void write_pair(struct html *html, const char *name, const char *text)
{
    html_open(html, "div", NULL);
    html_put(html, "dt", NULL, name);
    html_put(html, "dd", NULL, text);
    html_close(html);
}

static void write_project(struct html *html)
{
    static const struct {
        const char *name;
        unsigned slot;
    } rows[] = {{"Address", SLOT_project_address},     {"Owner", SLOT_project_owner},
                {"Installer", SLOT_project_installer}, {"License", SLOT_project_installer_license},
                {"Designer", SLOT_project_designer},   {"Permit", SLOT_project_permit_number},
                {"Work", SLOT_project_scope}};
    const struct design *design = html->report->design;
    if (design == NULL || design->of_kind[KIND_project].count == 0)
        return;
    const struct object *project = design->of_kind[KIND_project].items[0];
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        const char *text = html_fact(html, project, rows[i].slot);
        if (text != NULL)
            write_pair(html, rows[i].name, text);
    }
}

static const char *books_text(struct html *html)
{
    const struct rulebook *rulebook = html->report->rulebook;
    const char *text = "";
    for (size_t i = 0; rulebook != NULL && i < rulebook->book_count; i++) {
        const struct book_in_force *one = &rulebook->books[i];
        text = html_text(html, arena_format(html->arena, "%s%s%s%s%s", text, i > 0 ? ", " : "",
                                            one->book->name, one->edition != NULL ? " " : "",
                                            one->edition != NULL ? one->edition : ""));
    }
    return text[0] != '\0' ? text : "none";
}

static void write_facts(struct html *html)
{
    const struct report *report = html->report;
    char on[16] = "no day given";
    if (report->has_date)
        date_write(on, sizeof on, report->on);
    html_open(html, "dl", "project");
    write_project(html);
    write_pair(html, "Design file", report->design_path);
    write_pair(html, "Rules of", on);
    write_pair(html, "Books in force", books_text(html));
    html_close(html);
}

static void write_contents(struct html *html)
{
    static const struct {
        const char *id, *title;
        bool needs_findings;
    } parts[] = {{"findings", "Findings", true},       {"drawings", "Drawings", false},
                 {"margins", "Margins", true},         {"values", "Values of the law", true},
                 {"labels", "Labels", false},          {"equipment", "Equipment", false},
                 {"sheets", "Calculations", true},     {"checklists", "Checklists", true},
                 {"papers", "Papers", false},          {"jobsite", "Jobsite", false},
                 {"not-checked", "Not checked", true}, {"origin", "Made from", true},
                 {"caution", "Caution", true}};
    if (html->report->design == NULL || html->report->findings == NULL)
        return;
    html_open(html, "nav", NULL);
    html_set(html, "aria-label", "Parts of this report");
    html_open(html, "ul", NULL);
    for (size_t i = 0; i < sizeof parts / sizeof parts[0]; i++) {
        html_open(html, "li", NULL);
        html_link(html, parts[i].id, parts[i].title);
        html_close(html);
    }
    html_close(html);
    html_close(html);
}

void html_head(struct html *html)
{
    const struct report *report = html->report;
    const char *title =
        report->design != NULL ? html_fact(html, report->design->root, SLOT_design_title) : NULL;
    int code = exit_code(report->findings, report->problems, any_rule_holds(report->rulebook));
    html_open(html, "header", html_text(html, arena_format(html->arena, "result%d", code)));
    html_put(html, "p", "kicker", "Design review, rooftop photovoltaics");
    html_put(html, "h1", NULL, title != NULL ? title : report->design_path);
    write_verdict(html, code);
    html_wanted(html);
    html_actions(html);
    write_facts(html);
    html_open(html, "p", "short-caution");
    html_say(html, "An aid, not an approval: the authority decides. ");
    html_link(html, "caution", "Read the caution.");
    html_close(html);
    write_contents(html);
    html_close(html);
}

static void write_place(struct html *html, struct place place)
{
    if (place.file == NULL)
        return;
    html_put_format(html, "span", "place", "%s:%u", html_place(html, place), place.column);
    html_say(html, " ");
}

static void write_problem(struct html *html, const struct problem *problem)
{
    html_raw(html, "\n");
    html_open(html, "li", NULL);
    write_place(html, problem->place);
    html_put(html, "strong", NULL, problem->message);
    html_say(html, problem->weight == PROBLEM_NOTE ? " (note)" : "");
    if (problem->excerpt != NULL)
        html_put(html, "pre", NULL, problem->excerpt);
    if (problem->example != NULL) {
        html_open(html, "p", NULL);
        html_say(html, "For example: ");
        html_put(html, "code", NULL, problem->example);
        html_close(html);
    }
    if (problem->other.file != NULL) {
        html_say(html, "See also ");
        write_place(html, problem->other);
    }
    html_close(html);
}

void html_problems(struct html *html)
{
    const struct problems *problems = html->report->problems;
    if (problems == NULL || problems->count + problems->dropped == 0)
        return;
    html_section(html, "problems", "Problems and notes");
    html_put(html, "p", NULL, "What could not be read or run, and what is to be noted.");
    html_open(html, "ul", "problems");
    for (size_t i = 0; i < problems->count; i++)
        write_problem(html, &problems->items[i]);
    if (problems->dropped > 0)
        html_put(html, "li", NULL, "There was no memory left to tell all problems.");
    html_close(html);
    html_close(html);
}
