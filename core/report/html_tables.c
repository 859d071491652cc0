#include "html_tables.h"

#include <string.h>

#include "block.h"

enum { COLUMNS_MOST = 16 };

void html_fact_table(struct html *html, const struct fact_table *table)
{
    const struct objects *all = &html->report->design->of_kind[table->kind];
    if (all->count == 0)
        return;
    html_table(html, NULL, table->caption, table->heads);
    for (size_t i = 0; i < all->count; i++) {
        const char *cells[COLUMNS_MOST] = {all->items[i]->path};
        size_t count = 1;
        for (; count < COLUMNS_MOST && table->heads[count] != NULL; count++)
            cells[count] = html_fact_or_dash(html, all->items[i], table->slots[count - 1]);
        html_row(html, cells, count);
    }
    html_table_end(html);
}

void html_fact_list(struct html *html, const struct object *object, const unsigned *slots,
                    size_t count)
{
    static const char *const heads[] = {"Fact", "Is", "Place", NULL};
    html_table(html, NULL, "What the design tells", heads);
    for (size_t i = 0; i < count; i++) {
        const char *text = html_fact(html, object, slots[i]);
        const char *const cells[] = {object_row(object, slots[i])->sentence,
                                     text != NULL ? text : "not told",
                                     html_place(html, object_fact(object, slots[i])->place)};
        html_row(html, cells, sizeof cells / sizeof cells[0]);
    }
    html_table_end(html);
}

static void write_answer(struct html *html, size_t at)
{
    const struct finding *finding = html->report->findings->items[at];
    enum html_group group = html_group_of(finding);
    html_raw(html, "\n");
    html_open(html, "li", NULL);
    html_put(html, "span",
             html_text(html, arena_format(html->arena, "badge %s", html_group_class(group))),
             html_group_word(group));
    html_say(html, " ");
    html_link(html, html_finding_id(html, at), finding->title != NULL ? finding->title : "");
    if (strcmp(finding->about_kind, "design") != 0) {
        html_say(html, ", ");
        html_say(html, html_text(html, about_text(finding, html->arena)));
    }
    html_say(html, ": ");
    html_put_format(html, "span", NULL, "%s.", finding->message != NULL ? finding->message : "");
    html_close(html);
}

size_t html_answers(struct html *html, bool (*is_of)(const struct finding *finding))
{
    const struct findings *findings = html->report->findings;
    size_t count = 0;
    for (size_t i = 0; findings != NULL && i < findings->count; i++) {
        if (findings->items[i]->outcome == OUTCOME_NOT_APPLICABLE || !is_of(findings->items[i]))
            continue;
        if (count++ == 0)
            html_open(html, "ul", "answers");
        write_answer(html, i);
    }
    if (count > 0)
        html_close(html);
    return count;
}

const char *html_rule_name(const struct finding *finding)
{
    const char *slash = strrchr(finding->rule->id, '/');
    return slash != NULL ? slash + 1 : finding->rule->id;
}

void html_cite(struct html *html, const struct finding *finding)
{
    if (finding->cite == NULL)
        return;
    html_say(html, HTML_MARK);
    html_put(html, "span", "cite", html_text(html, cite_text(finding, html->arena)));
}
