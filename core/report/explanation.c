#include "explanation.h"

#include <stdio.h>
#include <string.h>

#include "block.h"
#include "explaining.h"
#include "signoff.h"

enum { SHEET_WIDTH = 80, SHEET_LEAST = 40, DEEPER = 4 };

bool explain_head(struct explaining *sheet, const char *title)
{
    char number[24];
    snprintf(number, sizeof number, "%u", ++sheet->part);
    page_gap(&sheet->page);
    page_paragraph(&sheet->page, 0, number, STYLE_STRONG, SHEET_TEXT_AT - 1, title);
    return true;
}

bool explain_tell(struct explaining *sheet, const char *text)
{
    if (text == NULL)
        return false;
    page_paragraph(&sheet->page, SHEET_LABEL_AT + sheet->depth, "-", STYLE_PLAIN,
                   SHEET_TEXT_AT + sheet->depth, text);
    return true;
}

bool explain_below(struct explaining *sheet, const char *text)
{
    if (text == NULL)
        return false;
    page_paragraph(&sheet->page, 0, NULL, STYLE_PLAIN, SHEET_DEEP_AT + sheet->depth, text);
    return true;
}

static bool tell_rule(struct explaining *sheet, const struct rule *rule, const char *cite)
{
    struct arena *arena = sheet->arena;
    bool is_cited =
        cite != NULL && cite[0] != '\0'; /* a card that could not be read cites nothing */
    if (!explain_head(sheet, "The rule"))
        return false;
    if (rule->book == NULL) /* one of the program's own */
        return explain_tell(sheet, arena_format(arena, "%s, %s", rule->id, cite));
    return explain_tell(sheet,
                        arena_format(arena, "%s%s%s%s%s, %s", is_cited ? cite : "",
                                     is_cited ? ", " : "", rule->book->name,
                                     rule->edition != NULL ? " " : "",
                                     rule->edition != NULL ? rule->edition : "", rule->path)) &&
           explain_acts(sheet, rule->acts, rule->act_count, NULL) &&
           (rule->text_by == rule->book ||
            explain_below(sheet,
                          arena_format(arena, "so the text is that of %s", rule->text_by->name)));
}

/* Modules of one row have one place for each of their facts. */
static bool is_alike(const struct input *a, const struct input *b)
{
    return a->place.file != NULL && b->place.file != NULL && a->text != NULL && b->text != NULL &&
           a->place.line == b->place.line && a->place.column == b->place.column &&
           strcmp(a->place.file, b->place.file) == 0 && a->fact != NULL && b->fact != NULL &&
           strcmp(a->fact, b->fact) == 0 && strcmp(a->text, b->text) == 0;
}

/* How many like it come before it (then it is told already), or behind it. */
static size_t count_alike(const struct finding *finding, size_t at, bool before)
{
    size_t count = 0;
    for (size_t i = before ? 0 : at + 1; i < (before ? at : finding->input_count); i++)
        count += is_alike(finding->inputs[at], finding->inputs[i]);
    return count;
}

static bool tell_input(struct explaining *sheet, const struct input *input, size_t more)
{
    const char *place = place_text(input->place, sheet->arena);
    const char *name = input_name(input, sheet->arena);
    const char *says = input->text != NULL ? input->text : "not given";
    const char *why = "", *others = "";
    if (input->is_assumed)
        why = arena_format(sheet->arena, ", assumed%s%s", input->assumed_why != NULL ? ": " : "",
                           input->assumed_why != NULL ? input->assumed_why : "");
    if (more > 0)
        others = arena_format(sheet->arena, ", and so of %zu more", more);
    return place != NULL && name != NULL && why != NULL && others != NULL &&
           explain_tell(sheet, arena_format(sheet->arena, "%s = %s%s%s%s%s%s%s%s", name, says,
                                            input->source != NULL ? ", by " : "",
                                            input->source != NULL ? input->source : "", why, others,
                                            place[0] ? " (" : "", place, place[0] ? ")" : ""));
}

static bool tell_inputs(struct explaining *sheet, const struct finding *finding)
{
    if (finding->input_count > 0 && !explain_head(sheet, "Facts of the design"))
        return false;
    for (size_t i = 0; i < finding->input_count; i++)
        if (count_alike(finding, i, true) == 0 &&
            !tell_input(sheet, finding->inputs[i], count_alike(finding, i, false)))
            return false;
    return true;
}

/* A roof has many equal pieces: a step that came out as one before is not told again. */
static bool tell_steps(struct explaining *sheet, const struct finding *finding)
{
    struct index told = {.arena = sheet->arena};
    if (finding->line_count > 0 && !explain_head(sheet, "Steps"))
        return false;
    for (size_t i = 0; i < finding->line_count; i++) {
        const struct line *line = &finding->working[i];
        if (line->text == NULL || index_find(&told, line->text) != NULL)
            continue;
        if (!index_add(&told, line->text, sheet) || !explain_tell(sheet, line->text) ||
            (line->source != NULL && !explain_below(sheet, line->source)))
            return false;
    }
    if (told.count == finding->line_count)
        return true;
    return explain_below(sheet, arena_format(sheet->arena,
                                             "(%zu steps were taken; those that came out equal for "
                                             "several pieces stand once)",
                                             finding->line_count));
}

static const char *answer(const struct test *test)
{
    switch (test->outcome) {
    case OUTCOME_FAIL:
        return test->normative == SHALL ? "does not hold" : "falls short of advice";
    case OUTCOME_OPEN:
        return test->relation == RELATION_BROKEN ? "the rule is broken" : "open";
    case OUTCOME_REVIEW:
        return "for a person";
    default:
        return "holds";
    }
}

static const char *option_answer(enum outcome outcome)
{
    return outcome == OUTCOME_PASS     ? "met"
           : outcome == OUTCOME_FAIL   ? "not met"
           : outcome == OUTCOME_REVIEW ? "for a person"
                                       : "open";
}

static bool tell_tests(struct explaining *sheet, const struct test *tests, size_t count);

static bool tell_group(struct explaining *sheet, const struct test *group)
{
    if (!explain_tell(sheet, arena_format(sheet->arena, "one of %zu ways is enough: %s",
                                          group->option_count, answer(group))))
        return false;
    for (size_t i = 0; i < group->option_count; i++) {
        const struct option *option = &group->options[i];
        const char *text = arena_format(sheet->arena, "way %zu, \"%s\": %s", i + 1, option->name,
                                        option_answer(option->outcome));
        if (!explain_below(sheet, text))
            return false;
        sheet->depth += DEEPER;
        bool is_told = tell_tests(sheet, option->tests, option->test_count);
        sheet->depth -= DEEPER;
        if (!is_told)
            return false;
    }
    return true;
}

static bool tell_tests(struct explaining *sheet, const struct test *tests, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        if (tests[i].relation == RELATION_ONE_OF) {
            if (!tell_group(sheet, &tests[i]))
                return false;
            continue;
        }
        const char *sentence = tests[i].relation == RELATION_BE
                                   ? tests[i].what
                                   : test_sentence(&tests[i], sheet->arena);
        if (sentence == NULL || !explain_tell(sheet, arena_format(sheet->arena, "%s: %s.",
                                                                  answer(&tests[i]), sentence)))
            return false;
    }
    return true;
}

static const char *result_word(const struct finding *finding)
{
    switch (finding->outcome) {
    case OUTCOME_FAIL:
        return finding->waiver != NULL        ? "Fails, waived"
               : finding->normative == SHOULD ? "Falls short of advice"
                                              : "Fails";
    case OUTCOME_OPEN:
        return "Open";
    case OUTCOME_REVIEW:
        return finding->signoff != NULL ? "For a person, and signed" : "For a person";
    case OUTCOME_PASS:
        return "Stands";
    case OUTCOME_INFORMATIONAL:
        return "To know";
    default:
        return NULL; /* its message says so */
    }
}

static bool tell_lifted(struct explaining *sheet, const struct finding *finding)
{
    const struct waiver *waiver = finding->waiver;
    const struct signoff *signoff = finding->signoff;
    char day[16];
    if (waiver != NULL && !explain_tell(sheet, arena_format(sheet->arena, "waived by %s: %s",
                                                            waiver->granted_by, waiver->reason)))
        return false;
    if (signoff == NULL)
        return true;
    date_write(day, sizeof day, signoff->on);
    return explain_tell(sheet, arena_format(sheet->arena, "accepted by %s, license %s, on %s: %s",
                                            signoff->by, signoff->license, day, signoff->why));
}

static bool tell_result(struct explaining *sheet, const struct finding *finding)
{
    const char *message =
        finding->message != NULL ? finding->message : finding_message(finding, sheet->arena);
    const char *word = result_word(finding);
    return message != NULL && explain_head(sheet, "Result") &&
           explain_tell(sheet, arena_format(sheet->arena, "%s%s%s.", word != NULL ? word : "",
                                            word != NULL ? ": " : "", message)) &&
           tell_lifted(sheet, finding) &&
           (finding->remedy == NULL || finding->outcome != OUTCOME_FAIL ||
            explain_tell(sheet, arena_format(sheet->arena, "to do: %s", finding->remedy)));
}

/* Title, thing, place and day. */
static bool tell_title(struct explaining *sheet, const struct rule *rule, const char *title,
                       const char *about, struct place place)
{
    char on[16];
    date_write(on, sizeof on, sheet->report->on);
    const char *where = place_text(place, sheet->arena);
    const char *head = arena_format(sheet->arena, "%s%s%s", rule->id, about != NULL ? ", " : "",
                                    about != NULL ? about : "");
    if (where == NULL || head == NULL)
        return false;
    page_add_styled(&sheet->page, STYLE_STRONG, head);
    text_add(sheet->page.out, "\n", 1);
    if (title != NULL)
        page_paragraph(&sheet->page, 0, NULL, STYLE_PLAIN, 0, title);
    const char *line = arena_format(sheet->arena, "%s, held against the rules of %s",
                                    where[0] ? where : sheet->report->design_path, on);
    if (line != NULL)
        page_paragraph(&sheet->page, 0, NULL, STYLE_PLAIN, 0, line);
    return line != NULL;
}

static struct explaining open_sheet(struct text *out, const struct report *report,
                                    struct arena *arena)
{
    unsigned width = report->width == 0 ? SHEET_WIDTH : report->width;
    return (struct explaining){
        {out, width < SHEET_LEAST ? SHEET_LEAST : width, report->with_color}, report, arena, 0, 0};
}

bool explanation_write(struct text *out, const struct report *report, const struct finding *finding)
{
    struct arena *arena = arena_new();
    if (arena == NULL)
        return false;
    struct explaining sheet = open_sheet(out, report, arena);
    const char *about = about_text(finding, arena);
    bool is_written =
        about != NULL && tell_title(&sheet, finding->rule, finding->title, about, finding->place) &&
        tell_rule(&sheet, finding->rule, finding->cite) && tell_inputs(&sheet, finding) &&
        explain_values(&sheet, finding) && tell_steps(&sheet, finding) &&
        (finding->test_count == 0 || (explain_head(&sheet, "Compared") &&
                                      tell_tests(&sheet, finding->tests, finding->test_count))) &&
        tell_result(&sheet, finding);
    arena_free(arena);
    return is_written && !out->is_short;
}

bool explanation_write_absent(struct text *out, const struct report *report,
                              const struct rule *rule)
{
    struct arena *arena = arena_new();
    if (arena == NULL)
        return false;
    struct explaining sheet = open_sheet(out, report, arena);
    bool is_written = tell_title(&sheet, rule, NULL, NULL, (struct place){0}) &&
                      tell_rule(&sheet, rule, NULL) && explain_head(&sheet, "Result") &&
                      explain_tell(&sheet, "The rule does not hold on that day: nothing is held "
                                           "against it.");
    arena_free(arena);
    return is_written && !out->is_short;
}
