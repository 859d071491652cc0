/* All margins, the tightest first. */
#include <stdlib.h>

#include "block.h"
#include "html.h"

struct row {
    size_t at; /* of the finding */
    double margin;
};

static int compare_rows(const void *a, const void *b)
{
    const struct row *one = a, *other = b;
    if (one->margin < other->margin)
        return -1;
    if (one->margin > other->margin)
        return 1;
    return one->at < other->at ? -1 : one->at > other->at;
}

static size_t collect(struct row *rows, const struct findings *findings)
{
    size_t count = 0;
    for (size_t i = 0; i < findings->count; i++) {
        const struct finding *finding = findings->items[i];
        double margin;
        if ((finding->outcome == OUTCOME_PASS || finding->outcome == OUTCOME_FAIL) &&
            tests_margin(&margin, finding->tests, finding->test_count))
            rows[count++] = (struct row){i, margin};
    }
    qsort(rows, count, sizeof *rows, compare_rows);
    return count;
}

static void write_row(struct html *html, const struct row *row)
{
    const struct finding *finding = html->report->findings->items[row->at];
    enum html_group group = html_group_of(finding);
    html_raw(html, "\n");
    html_open(html, "tr", NULL);
    html_open(html, "th", NULL);
    html_set(html, "scope", "row");
    html_link(html, html_finding_id(html, row->at), finding->title != NULL ? finding->title : "");
    html_close(html);
    html_put(html, "td", NULL, html_text(html, about_text(finding, html->arena)));
    html_open(html, "td", "margin");
    html_say(html, html_margin(html, true, row->margin));
    html_margin_bar(html, true, row->margin);
    html_close(html);
    html_open(html, "td", NULL);
    html_put(html, "span", html_group_class(group), html_group_word(group));
    html_close(html);
    html_close(html);
}

void html_margins(struct html *html)
{
    static const char *const heads[] = {"Rule", "Of", "Margin", "Answer", NULL};
    const struct findings *findings = html->report->findings;
    if (findings == NULL || findings->count == 0)
        return;
    struct row *rows = arena_take(html->arena, findings->count * sizeof *rows);
    size_t count = rows != NULL ? collect(rows, findings) : 0;
    if (rows == NULL)
        html->is_short = true;
    if (count == 0)
        return;
    html_section(html, "margins", "Margins");
    html_put(html, "p", NULL,
             "How far each stands inside or outside its limit, as a share of the limit, the "
             "tightest first. The tick in the middle of a bar is the limit. What is answered with "
             "yes or no has no margin and is not in this list.");
    html_table(html, "margins", "Margins, tightest first", heads);
    for (size_t i = 0; i < count; i++)
        write_row(html, &rows[i]);
    html_table_end(html);
    html_close(html);
}
