/* The report for people: what needs action first, then what stands, then what it rests on. */
#include "report.h"

#include <string.h>

#include "assumed.h"
#include "block.h"
#include "unread.h"
#include "wanted.h"

enum { USUAL_WIDTH = 80, LEAST_WIDTH = 40 };

/* The groups of findings that need action, in the order they are told. */
enum group { FAILING_SHALL, FAILING_SHOULD, OPEN, FOR_REVIEW, WAIVED, SIGNED, REST };

static enum group group_of(const struct finding *finding)
{
    if (finding->outcome == OUTCOME_FAIL && finding->waiver != NULL)
        return WAIVED;
    if (finding->signoff != NULL)
        return SIGNED;
    if (finding->outcome == OUTCOME_FAIL)
        return finding->normative == SHALL ? FAILING_SHALL : FAILING_SHOULD;
    return finding->outcome == OUTCOME_OPEN     ? OPEN
           : finding->outcome == OUTCOME_REVIEW ? FOR_REVIEW
                                                : REST;
}

static bool write_head(struct page *page, const struct report *report, struct arena *arena)
{
    const struct design *design = report->design;
    const struct fact *title = design != NULL ? object_fact(design->root, SLOT_design_title) : NULL;
    char on[16];
    const char *name =
        title != NULL && title->state == FACT_GIVEN ? title->is.word : report->design_path;
    page_add_styled(page, STYLE_STRONG, name);
    text_add(page->out, "\n", 1);
    if (report->has_date)
        date_write(on, sizeof on, report->on);
    const char *line =
        report->has_date
            ? arena_format(arena, "%s, held against the rules of %s", report->design_path, on)
            : arena_format(arena, "%s, held against nothing yet", report->design_path);
    if (line == NULL)
        return false;
    page_paragraph(page, 0, NULL, STYLE_PLAIN, 0, line);
    return true;
}

static bool has_mistakes(const struct problems *problems)
{
    for (size_t i = 0; i < problems->count; i++)
        if (problems->items[i].weight != PROBLEM_NOTE)
            return true;
    return problems->dropped > 0;
}

static void write_problems(struct page *page, const struct report *report)
{
    if (report->problems == NULL || report->problems->count + report->problems->dropped == 0)
        return;
    page_heading(page, STYLE_STRONG,
                 has_mistakes(report->problems) ? "Could not be read or run" : "Notes");
    report_write_problems(page->out, report->problems, page->with_color);
}

static bool write_actions(struct page *page, const struct report *report, struct arena *arena)
{
    size_t number = 0;
    for (enum group group = FAILING_SHALL; group < REST; group++)
        for (size_t i = 0; i < report->findings->count; i++) {
            struct finding *finding = report->findings->items[i];
            if (group_of(finding) != group)
                continue;
            if (number == 0)
                page_heading(page, STYLE_STRONG, "Needs action");
            if (!block_write(page, finding, ++number, report, arena))
                return false;
        }
    return true;
}

enum { GATHERED = 6 };

/* All things that one rule says the same of. */
struct gathered {
    const char *text; /* "label a, b, c and 3 more"; NULL: no memory */
    bool has_margin;
    double margin; /* the least of theirs */
    size_t count;
};

static void take_margin(struct gathered *gathered, const struct finding *finding)
{
    double share;
    if (finding->outcome != OUTCOME_PASS ||
        !tests_margin(&share, finding->tests, finding->test_count))
        return;
    if (!gathered->has_margin || share < gathered->margin)
        gathered->margin = share;
    gathered->has_margin = true;
}

/* From `at` on, as long as the rule is the same. Moves `at` behind them. */
static struct gathered gather(size_t *at, const struct findings *findings, enum outcome outcome,
                              struct arena *arena)
{
    const struct finding *first = findings->items[*at];
    struct gathered gathered = {.text = about_text(first, arena)};
    for (; *at < findings->count && gathered.text != NULL; ++*at) {
        const struct finding *next = findings->items[*at];
        if (next->rule != first->rule)
            break;
        if (next->outcome != outcome)
            continue;
        take_margin(&gathered, next);
        if (++gathered.count > 1 && gathered.count <= GATHERED)
            gathered.text = ARENA_JOIN(arena, gathered.text, ", ", next->about_name);
    }
    if (gathered.count > GATHERED && gathered.text != NULL)
        gathered.text =
            arena_format(arena, "%s and %zu more", gathered.text, gathered.count - GATHERED);
    return gathered;
}

/* One line for a rule, the least margin in front, so that the tight ones are seen at once. */
static bool write_brief(struct page *page, size_t *at, const struct findings *findings,
                        enum outcome outcome, struct arena *arena)
{
    char margin[40] = "";
    const struct finding *finding = findings->items[*at];
    struct gathered gathered = gather(at, findings, outcome, arena);
    if (gathered.has_margin)
        margin_write(margin, sizeof margin, gathered.margin);
    if (gathered.text == NULL)
        return false;
    char label[48] = "        "; /* eight wide, the margin to the right */
    size_t length = strlen(margin);
    memcpy(label + (length < 8 ? 8 - length : 0), margin, length + 1);
    const char *text = ARENA_JOIN(arena, finding->title, ": ", gathered.text);
    if (text == NULL)
        return false;
    page_paragraph(page, 0, label, STYLE_GOOD, 10, text);
    return true;
}

static bool write_outcome(struct page *page, const struct report *report, enum outcome outcome,
                          const char *heading, struct arena *arena)
{
    size_t number = 0;
    for (size_t i = 0; i < report->findings->count;) {
        struct finding *finding = report->findings->items[i];
        bool is_told = true;
        if (finding->outcome != outcome) {
            i++;
            continue;
        }
        if (number++ == 0)
            page_heading(page, STYLE_STRONG, heading);
        if (report->with_working && outcome != OUTCOME_NOT_APPLICABLE) {
            is_told = block_write(page, finding, number, report, arena);
            i++;
        } else
            is_told = write_brief(page, &i, report->findings, outcome, arena);
        if (!is_told)
            return false;
    }
    return true;
}

static bool write_assumed(struct page *page, const struct findings *findings, struct arena *arena)
{
    struct assumption *assumptions;
    size_t count;
    if (!assumed_collect(&assumptions, &count, findings->inputs, findings->input_count, arena))
        return false;
    if (count > 0)
        page_heading(page, STYLE_STRONG, "Assumed, not told");
    for (size_t i = 0; i < count; i++) {
        const char *line = assumption_text(&assumptions[i], arena);
        if (line == NULL)
            return false;
        page_paragraph(page, 2, "-", STYLE_PLAIN, 4, line);
    }
    return true;
}

/* One paragraph per kind: "breaker: tandem, position (2 of 5)". */
static bool write_unread(struct page *page, const struct report *report, struct arena *arena)
{
    struct unread *unread;
    size_t count;
    if (!unread_collect(&unread, &count, report, arena))
        return false;
    if (count > 0)
        page_heading(page, STYLE_STRONG, "Not checked: given, but no rule in force looked at it");
    for (size_t i = 0; i < count;) {
        const struct kind *kind = unread[i].kind;
        const char *line = "", *comma = "";
        for (; i < count && unread[i].kind == kind && line != NULL; i++, comma = ", ")
            line = unread[i].unread == unread[i].given
                       ? ARENA_JOIN(arena, line, comma, unread[i].fact->name)
                       : arena_format(arena, "%s%s%s (%zu of %zu)", line, comma,
                                      unread[i].fact->name, unread[i].unread, unread[i].given);
        const char *label = ARENA_JOIN(arena, kind->name, ":");
        if (line == NULL || label == NULL)
            return false;
        page_paragraph(page, 2, label, STYLE_PLAIN, 4, line);
    }
    return true;
}

static bool write_books(struct page *page, const struct report *report, struct arena *arena)
{
    if (report->rulebook == NULL)
        return true;
    page_heading(page, STYLE_STRONG, "Books in force, lowest first");
    for (size_t i = 0; i < report->rulebook->book_count; i++) {
        const struct book_in_force *one = &report->rulebook->books[i];
        const char *label = ARENA_JOIN(arena, one->book->name, one->edition != NULL ? " " : "",
                                       one->edition != NULL ? one->edition : "", ":");
        const char *text = ARENA_JOIN(arena, one->book->title != NULL ? one->book->title : "",
                                      one->book->scope != NULL ? ". Scope: " : "",
                                      one->book->scope != NULL ? one->book->scope : "");
        if (label == NULL || text == NULL)
            return false;
        page_paragraph(page, 2, label, STYLE_PLAIN, 4, text);
    }
    return true;
}

static bool write_counts(struct page *page, const struct report *report, struct arena *arena)
{
    struct finding_counts counts = findings_count(report->findings);
    const char *has_signed =
        counts.signed_off > 0 ? arena_format(arena, " (%zu signed)", counts.signed_off) : "";
    if (has_signed == NULL)
        return false;
    const char *line = arena_format(
        arena,
        "%zu finding%s: %zu fail (%zu of them only as advice, %zu waived), %zu open, %zu for a "
        "person%s, %zu stand, %zu do not apply, %zu to know.",
        report->findings->count, report->findings->count == 1 ? "" : "s", counts.of[OUTCOME_FAIL],
        counts.failing_should, counts.waived, counts.of[OUTCOME_OPEN], counts.of[OUTCOME_REVIEW],
        has_signed, counts.of[OUTCOME_PASS], counts.of[OUTCOME_NOT_APPLICABLE],
        counts.of[OUTCOME_INFORMATIONAL]);
    if (line == NULL)
        return false;
    page_gap(page);
    page_paragraph(page, 0, NULL, STYLE_PLAIN, 0, line);
    return true;
}

static void write_result(struct page *page, const struct report *report)
{
    int code = exit_code(report->findings, report->problems, any_rule_holds(report->rulebook));
    const char *words =
        code == 0 && findings_count(report->findings).waived > 0
            ? "Stands: nothing that must hold fails but what is waived, and nothing is left open."
        : code == 0 ? "Stands: nothing that must hold fails, and nothing is left open."
        : code == 1 ? "Does not stand: something that must hold fails."
        : code == 2 ? "Not settled: something is open or for a person to judge."
        : code == 4 ? "Not settled: something is wrong in a rule file."
        : code == 3 ? "Not checked: something could not be read, or no rule is in force."
                    : "Not checked to the end.";
    page_add_styled(page, code == 0 ? STYLE_GOOD : code == 2 ? STYLE_UNSURE : STYLE_BAD, words);
    text_add(page->out, "\n", 1);
}

/* What lets most open findings go on, the most first. */
static bool write_wanted(struct page *page, const struct report *report, struct arena *arena)
{
    struct wanted *wanted;
    size_t count;
    const char *text = wanted_text(report->findings, arena);
    if (text == NULL || !wanted_collect(&wanted, &count, report->findings, arena))
        return false;
    if (count > 0) {
        page_heading(page, STYLE_STRONG, "Give these facts first");
        page_paragraph(page, 0, NULL, STYLE_PLAIN, 0, text);
    }
    for (size_t i = 0; i < count; i++) {
        const struct missing *missing = wanted[i].missing;
        const char *label = arena_format(arena, "%6zu", wanted[i].findings);
        const char *example = missing->example != NULL ? missing->example : "";
        const char *line =
            ARENA_JOIN(arena, missing->fact, example[0] != '\0' ? ", for example: " : "", example);
        if (label == NULL || line == NULL)
            return false;
        page_paragraph(page, 0, label, STYLE_UNSURE, 8, line);
    }
    return true;
}

static bool write_findings(struct page *page, const struct report *report, struct arena *arena)
{
    return write_wanted(page, report, arena) && write_actions(page, report, arena) &&
           write_outcome(page, report, OUTCOME_PASS, "Stands, with the least margin", arena) &&
           write_outcome(page, report, OUTCOME_INFORMATIONAL, "To know", arena) &&
           write_outcome(page, report, OUTCOME_NOT_APPLICABLE, "Does not apply", arena) &&
           write_assumed(page, report->findings, arena) && write_counts(page, report, arena);
}

static bool write_all(struct page *page, const struct report *report, struct arena *arena)
{
    if (!write_head(page, report, arena))
        return false;
    write_problems(page, report);
    if (report->findings != NULL && !write_findings(page, report, arena))
        return false;
    if (report->findings == NULL)
        page_gap(page);
    write_result(page, report);
    if (report->findings != NULL && report->design != NULL && !write_unread(page, report, arena))
        return false;
    if (!write_books(page, report, arena))
        return false;
    page_gap(page);
    page_paragraph(page, 0, NULL, STYLE_PLAIN, 0, report_caution());
    return true;
}

bool report_write_text(struct text *out, const struct report *report)
{
    struct arena *arena = arena_new();
    unsigned width = report->width == 0 ? USUAL_WIDTH : report->width;
    struct page page = {out, width < LEAST_WIDTH ? LEAST_WIDTH : width, report->with_color};
    bool is_written = arena != NULL && write_all(&page, report, arena);
    arena_free(arena);
    return is_written && !out->is_short;
}
