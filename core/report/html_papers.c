/* Papers for the permit and for the utility: what is there, what is missing. */
#include <string.h>

#include "html_tables.h"

static bool is_of_utility(const char *kind)
{
    static const char *const kinds[] = {"interconnection application", "interconnection agreement",
                                        "permission to operate", "insurance certificate"};
    for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
        if (strcmp(kind, kinds[i]) == 0)
            return true;
    return false;
}

static bool is_of_papers(const struct finding *finding)
{
    return strstr(html_rule_name(finding), "papers") != NULL ||
           strcmp(finding->about_kind, "paper") == 0;
}

static const struct object *find_paper(const struct design *design, const char *kind)
{
    const struct objects *all = &design->of_kind[KIND_paper];
    for (size_t i = 0; i < all->count; i++)
        if (object_is(all->items[i], SLOT_paper_kind, kind))
            return all->items[i];
    return NULL;
}

static void write_paper(struct html *html, const char *kind)
{
    const struct object *paper = find_paper(html->report->design, kind);
    bool is_there = paper != NULL && object_has(paper, SLOT_paper_state) &&
                    !object_is(paper, SLOT_paper_state, "missing");
    html_raw(html, "\n");
    html_open(html, "tr", NULL);
    html_open(html, "th", NULL);
    html_set(html, "scope", "row");
    html_say(html, kind);
    html_close(html);
    html_open(html, "td", NULL);
    html_put(html, "span", is_there ? "stands" : "open",
             paper == NULL ? "not in the list" : html_fact_or_dash(html, paper, SLOT_paper_state));
    html_close(html);
    html_put(html, "td", NULL,
             paper != NULL ? html_fact_or_dash(html, paper, SLOT_paper_date) : "–");
    html_put(html, "td", NULL, paper != NULL ? html_fact_or_dash(html, paper, SLOT_paper_by) : "–");
    html_put(html, "td", NULL,
             paper != NULL ? html_fact_or_dash(html, paper, SLOT_paper_sealed) : "–");
    html_close(html);
}

static void write_side(struct html *html, const char *caption, bool of_utility)
{
    static const char *const heads[] = {"Paper", "State", "Day", "By", "Sealed", NULL};
    const struct vocabulary *kinds = vocabulary_at(WORDS_paper_kind);
    html_table(html, NULL, caption, heads);
    for (size_t i = 0; i < kinds->count; i++)
        if (is_of_utility(kinds->words[i]) == of_utility)
            write_paper(html, kinds->words[i]);
    html_table_end(html);
}

void html_papers(struct html *html)
{
    if (html->report->design == NULL)
        return;
    html_section(html, "papers", "Papers for the permit and the utility");
    html_put(html, "p", NULL,
             "All papers that this trade knows, with what the design says of them. Which of them "
             "are asked for is the authority's and the utility's to say; what the books in force "
             "ask for stands below.");
    write_side(html, "For the permit", false);
    write_side(html, "For the utility", true);
    html_put(html, "h3", NULL, "What the books ask for");
    if (html_answers(html, is_of_papers) == 0)
        html_put(html, "p", NULL, "No rule in force asks for papers.");
    html_close(html);
}
