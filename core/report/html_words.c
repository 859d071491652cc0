/* Facts, margins and groups in words. */
#include <math.h>
#include <string.h>

#include "html.h"

#define INCH 0.0254 /* m; exact since 1959 */

enum html_group html_group_of(const struct finding *finding)
{
    switch (finding->outcome) {
    case OUTCOME_FAIL:
        return finding->waiver != NULL       ? GROUP_WAIVED
               : finding->normative == SHALL ? GROUP_FAILS
                                             : GROUP_ADVICE;
    case OUTCOME_OPEN:
        return GROUP_OPEN;
    case OUTCOME_REVIEW:
        return finding->signoff != NULL ? GROUP_SIGNED : GROUP_REVIEW;
    case OUTCOME_PASS:
        return GROUP_STANDS;
    case OUTCOME_INFORMATIONAL:
        return GROUP_TO_KNOW;
    default:
        return GROUP_NOT_APPLICABLE;
    }
}

static const struct {
    const char *class_name, *word;
} groups[GROUP_COUNT] = {
    [GROUP_FAILS] = {"fails", "Fails"},
    [GROUP_ADVICE] = {"advice", "Advice"},
    [GROUP_OPEN] = {"open", "Open"},
    [GROUP_REVIEW] = {"review", "Person"},
    [GROUP_WAIVED] = {"waived", "Waived"},
    [GROUP_SIGNED] = {"signed", "Signed"},
    [GROUP_STANDS] = {"stands", "Stands"},
    [GROUP_TO_KNOW] = {"to-know", "To know"},
    [GROUP_NOT_APPLICABLE] = {"apart", "Apart"},
};

const char *html_group_class(enum html_group group)
{
    return groups[group].class_name;
}

const char *html_group_word(enum html_group group)
{
    return groups[group].word;
}

static const char *words_text(struct html *html, const struct fact *fact)
{
    const char *text = "";
    for (size_t i = 0; i < fact->count; i++)
        text = arena_format(html->arena, "%s%s%s", html_text(html, text), i > 0 ? ", " : "",
                            fact->is.words[i]);
    return html_text(html, text);
}

static const char *names_text(struct html *html, const struct fact *fact)
{
    const char *text = "";
    for (size_t i = 0; i < fact->count; i++)
        text = arena_format(html->arena, "%s%s%s", html_text(html, text), i > 0 ? ", " : "",
                            fact->is.objects[i]->name);
    return html_text(html, text);
}

/* Both numbers in the unit that the trade draws roofs in. */
static const char *point_text(struct html *html, const struct fact *fact)
{
    char x[64], y[64];
    quantity_write(x, sizeof x, quantity_of(fact->is.point.x / INCH, "in"), NULL, 5);
    quantity_write(y, sizeof y, quantity_of(fact->is.point.y / INCH, "in"), NULL, 5);
    return html_text(html, arena_format(html->arena, "%s, %s", x, y));
}

const char *html_fact(struct html *html, const struct object *object, unsigned slot)
{
    const struct fact *fact = object_fact(object, slot);
    char text[160];
    if (fact->state == FACT_MISSING)
        return NULL;
    if (fact->state == FACT_NONE)
        return "none";
    switch (object_row(object, slot)->type) {
    case TYPE_WORDS:
    case TYPE_WORD_LIST:
    case TYPE_TEXTS:
        return words_text(html, fact);
    case TYPE_REFERENCE:
    case TYPE_ONE:
        return fact->is.object->name;
    case TYPE_REFERENCES:
    case TYPE_LIST:
    case TYPE_INVERSE:
        return names_text(html, fact);
    case TYPE_POINT:
        return point_text(html, fact);
    case TYPE_POINTS:
        return html_text(html, arena_format(html->arena, "%zu corners", fact->count));
    case TYPE_TEXT:
    case TYPE_CHOICE:
        return fact->is.word;
    default:
        if (fact->written != NULL)
            return fact->written;
        amount_write(text, sizeof text, object_amount(object, slot), NULL, 6);
        return html_text(html, arena_copy(html->arena, text, strlen(text)));
    }
}

const char *html_fact_or_dash(struct html *html, const struct object *object, unsigned slot)
{
    const char *text = html_fact(html, object, slot);
    return text != NULL ? text : "–";
}

const char *html_margin(struct html *html, bool has_margin, double margin)
{
    char share[40];
    if (!has_margin)
        return "";
    if (fabs(margin) < 1e-9)
        return "at the limit";
    margin_write(share, sizeof share, margin);
    return html_text(html,
                     arena_format(html->arena, "%s %s", share, margin < 0 ? "outside" : "inside"));
}

/* The limit stands at the middle: outside reaches to the left, inside to the right, both up to a
 * whole limit's length. */
void html_margin_bar(struct html *html, bool has_margin, double margin)
{
    double share = fmin(fabs(margin), 1) * 50;
    if (!has_margin)
        return;
    html_open(html, "span", margin < 0 ? "bar outside" : "bar inside");
    html_set(html, "aria-hidden", "true");
    html_open(html, "span", NULL);
    html_set(html, "style",
             arena_format(html->arena, "left:%.1f%%;width:%.1f%%", margin < 0 ? 50 - share : 50.0,
                          share));
    html_close(html);
    html_close(html);
}

const char *html_file(struct html *html, const char *path)
{
    const struct report *report = html->report;
    if (strcmp(path, report->design_path) == 0)
        return path;
    for (size_t i = 0; report->rulebook != NULL && i < report->rulebook->book_count; i++) {
        const struct book *book = report->rulebook->books[i].book;
        size_t length = book->directory != NULL ? strlen(book->directory) : 0;
        if (length > 0 && strncmp(path, book->directory, length) == 0 && path[length] == '/')
            return html_text(html, arena_format(html->arena, "%s%s", book->name, path + length));
    }
    const char *slash = strrchr(path, '/');
    return slash != NULL ? slash + 1 : path;
}

const char *html_place(struct html *html, struct place place)
{
    if (place.file == NULL)
        return "";
    const char *file = html_file(html, place.file);
    return place.line == 0 ? file
                           : html_text(html, arena_format(html->arena, "%s:%u", file, place.line));
}

const char *html_finding_id(struct html *html, size_t at)
{
    return html_text(html, arena_format(html->arena, "f%zu", at + 1));
}
