/* Problems for people: place, sentence, excerpt with caret, right example. */
#include "report.h"

#include <string.h>

#include "page.h"

enum { EXCERPT_POINTS = 100, POINTS_BEFORE = 60 };

static void add_place(struct text *out, struct place place)
{
    if (place.file == NULL)
        return;
    text_add_printable(out, place.file, strlen(place.file));
    if (place.line > 0)
        text_add_format(out, ":%u", place.line);
    if (place.line > 0 && place.column > 0)
        text_add_format(out, ":%u", place.column);
}

/* Bytes of the first `points` code points, as text_count_points counts them. */
static size_t bytes_of(const char *text, size_t length, size_t points)
{
    size_t at = 0;
    for (; points > 0 && at < length; points--) {
        size_t step = 1;
        while (step < 4 && at + step < length && ((unsigned char)text[at + step] & 0xC0) == 0x80)
            step++;
        at += text_is_utf8(text + at, step, NULL) ? step : 1;
    }
    return at;
}

/* The caret's line repeats tabs, so that it stands right whatever a tab's width is. */
static void add_caret(struct page *page, const char *before, size_t length)
{
    text_add_word(page->out, "    ");
    for (size_t at = 0; at < length; at += bytes_of(before + at, length - at, 1))
        text_add(page->out, before[at] == '\t' ? "\t" : " ", 1);
    page_add_styled(page, STYLE_BAD, "^");
    text_add(page->out, "\n", 1);
}

/* The line, or the part of a long one around the column. */
static void add_excerpt(struct page *page, const struct problem *problem)
{
    const char *line = problem->excerpt;
    size_t length = strlen(line), column = problem->place.column;
    size_t to_column = column > 0 ? bytes_of(line, length, column - 1) : 0;
    size_t from = 0;
    if (column > POINTS_BEFORE + 1)
        from = bytes_of(line, length, column - 1 - POINTS_BEFORE);
    size_t shown = bytes_of(line + from, length - from, EXCERPT_POINTS);
    text_add_word(page->out, "    ");
    text_add_printable(page->out, line + from, shown);
    text_add(page->out, "\n", 1);
    if (column > 0)
        add_caret(page, line + from, to_column - from);
}

static const char *kind_of(enum problem_weight weight)
{
    return weight == PROBLEM_NOTE ? "note: " : weight == PROBLEM_RULE ? "rule: " : "";
}

static void add_problem(struct page *page, const struct problem *problem)
{
    if (problem->place.file != NULL) {
        add_place(page->out, problem->place);
        text_add_word(page->out, ": ");
    }
    page_add_styled(page, problem->weight == PROBLEM_NOTE ? STYLE_UNSURE : STYLE_BAD,
                    kind_of(problem->weight));
    page_add_styled(page, STYLE_STRONG, problem->message);
    text_add(page->out, "\n", 1);
    if (problem->excerpt != NULL)
        add_excerpt(page, problem);
    if (problem->example != NULL) {
        text_add_word(page->out, "    for example: ");
        text_add_printable(page->out, problem->example, strlen(problem->example));
        text_add(page->out, "\n", 1);
    }
    if (problem->other.file != NULL) {
        text_add_word(page->out, "    see also ");
        add_place(page->out, problem->other);
        text_add(page->out, "\n", 1);
    }
}

void report_write_problems(struct text *out, const struct problems *problems, bool with_color)
{
    struct page page = {out, 80, with_color};
    for (size_t i = 0; i < problems->count; i++)
        add_problem(&page, &problems->items[i]);
    if (problems->dropped > 0)
        text_add_word(out, "There was no memory left to tell all problems.\n");
}
