#include "html_checklist.h"

#include <string.h>

#include "html_tables.h"

/* Is a name among words with spaces between, some ending in a star? */
static bool is_among(const char *name, const char *words)
{
    while (words != NULL && *words != '\0') {
        size_t length = strcspn(words, " ");
        bool is_beginning = words[length - 1] == '*';
        size_t compared = is_beginning ? length - 1 : length;
        if (strncmp(name, words, compared) == 0 && (is_beginning || name[compared] == '\0'))
            return true;
        words += length + (words[length] == ' ');
    }
    return false;
}

static void write_answer(struct html *html, size_t at)
{
    const struct finding *finding = html->report->findings->items[at];
    enum html_group group = html_group_of(finding);
    double margin = 0;
    bool has_margin = tests_margin(&margin, finding->tests, finding->test_count);
    html_open(html, "li", NULL);
    html_put(html, "span",
             html_text(html, arena_format(html->arena, "badge %s", html_group_class(group))),
             html_group_word(group));
    html_say(html, " ");
    html_link(html, html_finding_id(html, at), finding->title != NULL ? finding->title : "");
    if (has_margin && (finding->outcome == OUTCOME_PASS || finding->outcome == OUTCOME_FAIL))
        html_put_format(html, "span", "margin", ", %s", html_margin(html, true, margin));
    html_close(html);
}

/* The worst answer of each rule. */
static size_t worst_of_rule(const struct findings *findings, size_t from)
{
    size_t worst = from;
    for (size_t i = from + 1; i < findings->count; i++)
        if (findings->items[i]->rule == findings->items[from]->rule &&
            findings->items[i]->outcome < findings->items[worst]->outcome)
            worst = i;
    return worst;
}

static bool is_first_of_rule(const struct findings *findings, size_t at)
{
    for (size_t i = at; i > 0; i--)
        if (findings->items[i - 1]->rule == findings->items[at]->rule)
            return false;
    return true;
}

static void write_answers(struct html *html, const struct check_item *item)
{
    const struct findings *findings = html->report->findings;
    bool is_begun = false;
    for (size_t i = 0; findings != NULL && i < findings->count; i++) {
        if (!is_among(html_rule_name(findings->items[i]), item->rules) ||
            !is_first_of_rule(findings, i))
            continue;
        size_t worst = worst_of_rule(findings, i);
        if (findings->items[worst]->outcome == OUTCOME_NOT_APPLICABLE)
            continue;
        if (!is_begun)
            html_open(html, "ul", "answers");
        is_begun = true;
        write_answer(html, worst);
    }
    if (is_begun)
        html_close(html);
}

static void write_item(struct html *html, const struct check_item *item)
{
    const char *filled = item->fill != NULL ? item->fill(html) : NULL;
    html_raw(html, "\n");
    html_open(html, "tr", NULL);
    html_open(html, "th", NULL);
    html_set(html, "scope", "row");
    html_say(html, item->look_at);
    html_close(html);
    html_open(html, "td", NULL);
    if (filled != NULL)
        html_put(html, "p", NULL, filled);
    write_answers(html, item);
    html_close(html);
    html_put(html, "td", "tick", "☐");
    html_put(html, "td", "remark", "");
    html_close(html);
}

static void write_visit(struct html *html, enum visit visit, const char *title)
{
    static const char *const heads[] = {"Look at", "From this review", "Seen", "Remark", NULL};
    html_open(html, "article", "visit");
    html_put(html, "h3", NULL, title);
    html_table(html, "visit", title, heads);
    for (size_t i = 0; check_item_at(i) != NULL; i++)
        if (check_item_at(i)->visit == visit)
            write_item(html, check_item_at(i));
    html_table_end(html);
    html_put(html, "p", "sign", "Inspector, day:");
    html_close(html);
}

static bool is_for_a_person(const struct finding *finding)
{
    return finding->outcome == OUTCOME_REVIEW || finding->outcome == OUTCOME_OPEN;
}

void html_checklists(struct html *html)
{
    static const char *const titles[VISIT_COUNT] = {"City, rough", "City, final", "Utility"};
    html_section(html, "checklists", "Inspection checklists");
    html_put(html, "p", NULL,
             "What inspectors commonly look at; the authority and the utility may look at more. "
             "What this review computed is filled in, the rest is for the visit.");
    for (enum visit visit = VISIT_ROUGH; visit < VISIT_COUNT; visit++)
        write_visit(html, visit, titles[visit]);
    html_put(html, "h3", NULL, "Not settled by this review");
    if (html_answers(html, is_for_a_person) == 0)
        html_put(html, "p", NULL, "Nothing is open and nothing waits for a person.");
    html_close(html);
}
