/* All margins, the tightest first. */
#include <stdlib.h>

#include "block.h"
#include "html.h"

struct row {
    size_t at; /* of the finding */
    double margin;
    size_t others; /* findings of the same rule that stand with no less */
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

/* What stands shares the tightest row of its rule. */
static size_t share_rows(struct row *rows, size_t count, const struct findings *findings)
{
    size_t kept = 0;
    for (size_t i = 0; i < count; i++) {
        const struct finding *finding = findings->items[rows[i].at];
        size_t k = 0;
        while (k < kept && (findings->items[rows[k].at]->rule != finding->rule ||
                            findings->items[rows[k].at]->outcome != OUTCOME_PASS))
            k++;
        if (finding->outcome == OUTCOME_PASS && k < kept)
            rows[k].others++;
        else
            rows[kept++] = rows[i];
    }
    return kept;
}

static size_t collect(struct row *rows, const struct findings *findings)
{
    size_t count = 0;
    for (size_t i = 0; i < findings->count; i++) {
        const struct finding *finding = findings->items[i];
        double margin;
        if ((finding->outcome == OUTCOME_PASS || finding->outcome == OUTCOME_FAIL) &&
            tests_margin(&margin, finding->tests, finding->test_count))
            rows[count++] = (struct row){i, margin, 0};
    }
    qsort(rows, count, sizeof *rows, compare_rows);
    return share_rows(rows, count, findings);
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
    const char *about = html_text(html, about_text(finding, html->arena));
    if (row->others > 0)
        html_put_format(html, "td", NULL, "%s, and %zu more", about, row->others);
    else
        html_put(html, "td", NULL, about);
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
             "tightest first. Of what stands, the tightest of each rule. The tick in the middle of "
             "a bar is the limit. What is answered with "
             "yes or no has no margin and is not in this list.");
    html_table(html, "margins", "Margins, tightest first", heads);
    for (size_t i = 0; i < count; i++)
        write_row(html, &rows[i]);
    html_table_end(html);
    html_close(html);
}
