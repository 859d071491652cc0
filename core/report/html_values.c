/* Values of the law that any finding rests on, each once. */
#include <string.h>

#include "block.h"
#include "html.h"
#include "shown.h"

static bool is_read(const struct findings *findings, const struct value *value)
{
    for (size_t i = 0; i < findings->count; i++)
        for (size_t k = 0; k < findings->items[i]->value_count; k++)
            if (findings->items[i]->values[k] == value)
                return true;
    return false;
}

static const char *stricter_text(enum stricter stricter)
{
    return stricter == STRICTER_LARGER    ? "larger is stricter"
           : stricter == STRICTER_SMALLER ? "smaller is stricter"
                                          : NULL;
}

static const char *says_text(struct html *html, const struct value *value)
{
    const struct declaration *declaration = value->declaration;
    if (declaration == NULL)
        return "";
    const char *stricter = stricter_text(declaration->stricter);
    return html_text(html,
                     arena_format(html->arena, "%s%s%s%s%s",
                                  declaration->says != NULL ? declaration->says : "",
                                  declaration->basis != NULL ? ", " : "",
                                  declaration->basis != NULL ? declaration->basis : "",
                                  stricter != NULL ? "; " : "", stricter != NULL ? stricter : ""));
}

static void write_row(struct html *html, const struct value *value)
{
    const struct entry *entry = value->state == VALUE_IN_FORCE ? value->entry : NULL;
    const struct book *book = value->book != NULL ? value->book : value->declared_by;
    char is[128] = "none in force", from[16] = "";
    if (entry != NULL)
        amount_write(is, sizeof is, value_shown(value, html->report->design), NULL, 6);
    if (entry != NULL && entry->from.year != 0)
        date_write(from, sizeof from, entry->from);
    const char *name =
        html_text(html, arena_format(html->arena, "%s: %s", value->name, says_text(html, value)));
    const char *const cells[] = {name,
                                 is,
                                 book != NULL ? book->name : "",
                                 value->edition,
                                 from[0] != '\0' || entry == NULL ? from : "its edition",
                                 entry != NULL ? entry->cite : NULL,
                                 entry != NULL ? html_place(html, entry->place) : NULL};
    html_row(html, cells, sizeof cells / sizeof cells[0]);
}

void html_values(struct html *html)
{
    static const char *const heads[] = {"Value",          "Is",       "Book",  "Edition",
                                        "In force since", "Citation", "Place", NULL};
    const struct rulebook *rulebook = html->report->rulebook;
    if (rulebook == NULL || html->report->findings == NULL)
        return;
    size_t read = 0;
    html_section(html, "values", "Values of the law");
    html_table(html, "values", "Values that a finding rests on", heads);
    for (size_t i = 0; i < rulebook->value_count; i++)
        if (is_read(html->report->findings, &rulebook->values[i])) {
            write_row(html, &rulebook->values[i]);
            read++;
        }
    html_table_end(html);
    html_put_format(html, "p", NULL,
                    "%zu of the %zu values in the books decided something here; the others were "
                    "not read for this design.",
                    read, rulebook->value_count);
    html_close(html);
}
