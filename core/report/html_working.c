/* What a finding compared, read and calculated. */
#include <string.h>

#include "block.h"
#include "html.h"
#include "shown.h"

static const char *asks(enum relation relation)
{
    switch (relation) {
    case RELATION_NOT_EXCEED:
        return "at most";
    case RELATION_AT_LEAST:
        return "at least";
    case RELATION_LESS_THAN:
        return "less than";
    case RELATION_MORE_THAN:
        return "more than";
    case RELATION_EQUAL:
        return "exactly";
    default:
        return "";
    }
}

static const char *answer(const struct test *test)
{
    switch (test->outcome) {
    case OUTCOME_FAIL:
        return test->normative == SHALL ? "does not hold" : "falls short of advice";
    case OUTCOME_OPEN:
        return test->relation == RELATION_BROKEN ? "rule broken" : "open";
    case OUTCOME_REVIEW:
        return "for a person";
    default:
        return "holds";
    }
}

static enum html_group group_of(const struct test *test)
{
    return test->outcome == OUTCOME_FAIL   ? (test->normative == SHALL ? GROUP_FAILS : GROUP_ADVICE)
           : test->outcome == OUTCOME_OPEN ? GROUP_OPEN
           : test->outcome == OUTCOME_REVIEW ? GROUP_REVIEW
                                             : GROUP_STANDS;
}

static bool is_pair(const struct test *test)
{
    return test->relation != RELATION_ONE_OF && test->relation != RELATION_REVIEW &&
           test->relation != RELATION_MISSING && test->relation != RELATION_BROKEN;
}

static void write_margin(struct html *html, const struct test *test)
{
    html_open(html, "td", "margin");
    if (test->outcome != OUTCOME_OPEN && test->outcome != OUTCOME_REVIEW) {
        html_say(html, html_margin(html, test->has_margin, test->margin));
        html_margin_bar(html, test->has_margin, test->margin);
    }
    html_close(html);
}

static void write_pair(struct html *html, const struct test *test)
{
    char actual[160] = "", limit[160] = "";
    const char *what = test->what != NULL                   ? test->what
                       : test->relation == RELATION_MISSING ? test->missing.fact
                                                            : "";
    if (is_pair(test))
        test_write_amounts(actual, limit, sizeof actual, test);
    html_raw(html, "\n");
    html_open(html, "tr", NULL);
    html_open(html, "th", NULL);
    html_set(html, "scope", "row");
    html_say(html, what);
    html_close(html);
    html_put(html, "td", NULL, test->relation == RELATION_MISSING ? "not told" : actual);
    if (test->relation == RELATION_BE)
        html_put(html, "td", NULL, "must be so");
    else if (is_pair(test))
        html_put_format(html, "td", NULL, "%s %s", asks(test->relation), limit);
    else
        html_put(html, "td", NULL, "");
    write_margin(html, test);
    html_open(html, "td", NULL);
    html_put(html, "span", html_group_class(group_of(test)), answer(test));
    html_close(html);
    html_close(html);
}

static void write_pairs(struct html *html, const char *caption, const struct test *tests,
                        size_t count)
{
    static const char *const heads[] = {"Compared", "Is", "Asked", "Margin", "Answer", NULL};
    size_t pairs = 0;
    for (size_t i = 0; i < count; i++)
        pairs += tests[i].relation != RELATION_ONE_OF;
    if (pairs == 0)
        return;
    html_table(html, "pairs", caption, heads);
    for (size_t i = 0; i < count; i++)
        if (tests[i].relation != RELATION_ONE_OF)
            write_pair(html, &tests[i]);
    html_table_end(html);
}

static const char *option_word(enum outcome outcome)
{
    return outcome == OUTCOME_PASS     ? "met"
           : outcome == OUTCOME_FAIL   ? "not met"
           : outcome == OUTCOME_REVIEW ? "for a person"
                                       : "open";
}

static void write_group(struct html *html, const struct test *group)
{
    html_put_format(html, "p", "ways",
                    "%s%sOne of %zu ways is enough:", group->what != NULL ? group->what : "",
                    group->what != NULL ? ". " : "", group->option_count);
    for (size_t i = 0; i < group->option_count; i++) {
        const struct option *option = &group->options[i];
        const char *caption =
            html_text(html, arena_format(html->arena, "Way %zu, “%s”: %s", i + 1, option->name,
                                         option_word(option->outcome)));
        write_pairs(html, caption, option->tests, option->test_count);
        for (size_t k = 0; k < option->test_count; k++)
            if (option->tests[k].relation == RELATION_ONE_OF)
                write_group(html, &option->tests[k]);
    }
}

void html_tests(struct html *html, const struct test *tests, size_t count)
{
    write_pairs(html, "Compared", tests, count);
    for (size_t i = 0; i < count; i++)
        if (tests[i].relation == RELATION_ONE_OF)
            write_group(html, &tests[i]);
}

void html_values_of(struct html *html, const struct finding *finding)
{
    static const char *const heads[] = {"Value",    "Is",    "Set by", "In force since",
                                        "Citation", "Place", NULL};
    if (finding->value_count == 0)
        return;
    html_table(html, NULL, "Values of the law that decided", heads);
    for (size_t i = 0; i < finding->value_count; i++) {
        const struct value *value = finding->values[i];
        const struct entry *entry = value->state == VALUE_IN_FORCE ? value->entry : NULL;
        const struct book *book = value->book != NULL ? value->book : value->declared_by;
        char is[128] = "no number in force", from[16] = "";
        if (entry != NULL)
            amount_write(is, sizeof is, value_shown(value, html->report->design), NULL, 6);
        if (entry != NULL && entry->from.year != 0)
            date_write(from, sizeof from, entry->from);
        const char *set_by = arena_format(html->arena, "%s %s", book != NULL ? book->name : "",
                                          value->edition != NULL ? value->edition : "");
        const char *const cells[] = {value->name,
                                     is,
                                     html_text(html, set_by),
                                     from[0] != '\0' || entry == NULL ? from : "its edition",
                                     entry != NULL ? entry->cite : NULL,
                                     entry != NULL ? html_place(html, entry->place) : NULL};
        html_row(html, cells, sizeof cells / sizeof cells[0]);
    }
    html_table_end(html);
}

static void write_step(struct html *html, const struct line *line)
{
    html_raw(html, "\n");
    html_open(html, "li", NULL);
    html_say(html, line->text != NULL ? line->text : "");
    if (line->source != NULL) {
        html_say(html, " ");
        html_put(html, "cite", NULL, line->source);
    }
    html_close(html);
}

/* A roof has many equal pieces: a step that came out as one before is not told again. */
void html_steps(struct html *html, const struct finding *finding)
{
    struct index told = {.arena = html->arena};
    if (finding->line_count == 0)
        return;
    html_put(html, "p", "label", "Steps");
    html_open(html, "ol", "steps");
    for (size_t i = 0; i < finding->line_count; i++) {
        const struct line *line = &finding->working[i];
        const char *text = line->text != NULL ? line->text : "";
        if (index_find(&told, text) != NULL)
            continue;
        if (!index_add(&told, text, html))
            html->is_short = true;
        write_step(html, line);
    }
    html_close(html);
    if (told.count < finding->line_count)
        html_put_format(html, "p", "place",
                        "%zu steps were taken; those that came out equal for several pieces stand "
                        "once.",
                        finding->line_count);
}

/* ---- sheets -----------------------------------------------------------------------------------
 */

bool html_has_sheet(const struct finding *finding)
{
    return finding->line_count > 0 && finding->outcome != OUTCOME_NOT_APPLICABLE;
}

size_t html_sheet_number(const struct html *html, size_t at)
{
    size_t number = 0;
    for (size_t i = 0; i <= at; i++)
        number += html_has_sheet(html->report->findings->items[i]);
    return number;
}

/* What needs action shows its steps at once, the others show the way to them. */
void html_steps_or_sheet(struct html *html, size_t at, bool in_place)
{
    const struct finding *finding = html->report->findings->items[at];
    if (in_place || !html_has_sheet(finding)) {
        html_open(html, "div", "in-place"); /* on paper the sheet alone has them */
        html_steps(html, finding);
        html_close(html);
    }
    if (!html_has_sheet(finding))
        return;
    size_t number = html_sheet_number(html, at);
    html_open(html, "p", NULL);
    html_say(html, "Step by step: ");
    html_link(html, arena_format(html->arena, "sheet-%zu", number),
              html_text(html, arena_format(html->arena, "calculation sheet %zu", number)));
    html_close(html);
}
