/* All findings, grouped by what there is to do. */
#include "block.h"
#include "html.h"
#include "wanted.h"

static const struct {
    const char *title, *says;
} groups[GROUP_COUNT] = {
    [GROUP_FAILS] = {"To put right", "What must hold and does not."},
    [GROUP_ADVICE] = {"Advice not followed",
                      "What the books advise and the design does not do. It stops nothing."},
    [GROUP_OPEN] =
        {"Facts to give",
         "Nobody has told these yet. Unknown is not a pass: each stays open until told."},
    [GROUP_REVIEW] = {"For a person to judge",
                      "No rule can settle these; a licensed or authorized person must."},
    [GROUP_WAIVED] = {"Fails, lifted by a waiver",
                      "They do not hold; the authority has lifted them for this design."},
    [GROUP_SIGNED] = {"Signed by a person",
                      "Handed to a person, who has judged this design as it is and accepted it."},
    [GROUP_STANDS] = {"Stands", "What was held against a rule and holds."},
    [GROUP_TO_KNOW] = {"To know", "Said for information; nothing was decided by it."},
    [GROUP_NOT_APPLICABLE] = {"Does not apply",
                              "Rules in force that this design gives no cause for."},
};

static size_t count_of(const struct findings *findings, enum html_group group)
{
    size_t count = 0;
    for (size_t i = 0; i < findings->count; i++)
        count += html_group_of(findings->items[i]) == group;
    return count;
}

/* One line per rule with all it does not apply to. */
static void write_apart(struct html *html, const struct findings *findings)
{
    html_open(html, "details", NULL);
    html_put(html, "summary", NULL, "The list of rules and things");
    html_open(html, "ul", NULL);
    for (size_t i = 0; i < findings->count;) {
        const struct finding *first = findings->items[i];
        const char *things = NULL;
        for (; i < findings->count && findings->items[i]->rule == first->rule; i++) {
            const struct finding *next = findings->items[i];
            if (html_group_of(next) != GROUP_NOT_APPLICABLE)
                continue;
            things = things == NULL ? about_text(next, html->arena)
                                    : arena_format(html->arena, "%s, %s", things, next->about_name);
            things = html_text(html, things);
        }
        if (things == NULL)
            continue;
        html_raw(html, "\n");
        html_open(html, "li", NULL);
        html_put(html, "strong", NULL, first->title != NULL ? first->title : first->rule->id);
        html_say(html, ": ");
        html_put(html, "span", NULL, things);
        html_close(html);
    }
    html_close(html);
    html_close(html);
}

static void write_standing_head(struct html *html, const struct finding *finding, size_t count,
                                bool has_margin, double least)
{
    html_raw(html, "\n");
    html_open(html, "details", "stands");
    html_open(html, "summary", NULL);
    html_put(html, "span", "badge stands", html_group_word(GROUP_STANDS));
    html_say(html, " ");
    html_put(html, "strong", NULL, finding->title != NULL ? finding->title : finding->rule->id);
    html_say(html, HTML_MARK);
    html_put_format(html, "span", "about", "%zu of kind %s", count, finding->about_kind);
    html_cite(html, finding);
    if (has_margin) {
        html_say(html, HTML_MARK);
        html_put_format(html, "span", "margin", "least %s", html_margin(html, true, least));
    }
    html_close(html);
}

/* Things that one rule says stand, under one line with the least margin. */
static void write_standing(struct html *html, size_t at)
{
    const struct findings *findings = html->report->findings;
    const struct rule *rule = findings->items[at]->rule;
    size_t count = 0;
    double least = 0, margin;
    bool has_margin = false;
    for (size_t i = 0; i < findings->count; i++) {
        const struct finding *one = findings->items[i];
        if (one->rule != rule || html_group_of(one) != GROUP_STANDS)
            continue;
        if (i < at)
            return; /* told with the first */
        count++;
        if (tests_margin(&margin, one->tests, one->test_count) && (!has_margin || margin < least)) {
            least = margin;
            has_margin = true;
        }
    }
    if (count > 1)
        write_standing_head(html, findings->items[at], count, has_margin, least);
    for (size_t i = at; i < findings->count; i++)
        if (findings->items[i]->rule == rule && html_group_of(findings->items[i]) == GROUP_STANDS)
            html_finding(html, i, 0);
    if (count > 1)
        html_close(html);
}

/* The survey: each blank once, however many findings wait for it. */
static void write_blanks(struct html *html)
{
    const struct findings *findings = html->report->findings;
    struct index told = {.arena = html->arena};
    for (size_t i = 0; i < findings->count; i++)
        if (html_group_of(findings->items[i]) == GROUP_OPEN)
            html_missing(html, findings->items[i]->tests, findings->items[i]->test_count, &told);
    if (told.count > 0)
        html_close(html);
}

static void write_group(struct html *html, enum html_group group, size_t *number)
{
    const struct findings *findings = html->report->findings;
    size_t count = count_of(findings, group);
    if (count == 0)
        return;
    html_raw(html, "\n");
    html_open(html, "section",
              html_text(html, arena_format(html->arena, "group %s", html_group_class(group))));
    html_put_format(html, "h3", NULL, "%s (%zu)", groups[group].title, count);
    html_put(html, "p", NULL, groups[group].says);
    if (group == GROUP_OPEN)
        write_blanks(html);
    if (group == GROUP_NOT_APPLICABLE)
        write_apart(html, findings);
    else
        for (size_t i = 0; i < findings->count; i++)
            if (html_group_of(findings->items[i]) != group)
                continue;
            else if (group == GROUP_STANDS)
                write_standing(html, i);
            else
                html_finding(html, i, group < GROUP_STANDS ? ++*number : 0);
    html_close(html);
}

void html_wanted(struct html *html)
{
    static const char *const heads[] = {"Fact", "Waiting", "For example", NULL};
    const struct findings *findings = html->report->findings;
    struct wanted *wanted;
    size_t count = 0;
    if (findings == NULL || !wanted_collect(&wanted, &count, findings, html->arena) || count == 0)
        return; /* without memory the arena is short, which is asked at the end */
    html_open(html, "section", NULL);
    html_put(html, "h2", NULL, "Give these facts first");
    html_put(html, "p", NULL, html_text(html, wanted_text(findings, html->arena)));
    html_table(html, "wanted", "Facts that most findings wait for", heads);
    for (size_t i = 0; i < count; i++) {
        const char *cells[] = {
            wanted[i].missing->fact,
            html_text(html, arena_format(html->arena, "%zu", wanted[i].findings)),
            wanted[i].missing->example};
        html_row(html, cells, sizeof cells / sizeof cells[0]);
    }
    html_table_end(html);
    html_close(html);
    html_put(html, "h2", NULL, "Needs action");
}

static void write_action(struct html *html, size_t at, size_t number)
{
    const struct finding *finding = html->report->findings->items[at];
    enum html_group group = html_group_of(finding);
    html_raw(html, "\n");
    html_open(html, "li", NULL);
    html_put_format(html, "span", "key", "%zu", number);
    html_say(html, " ");
    html_put_format(html, "span",
                    html_text(html, arena_format(html->arena, "badge %s", html_group_class(group))),
                    "%s", html_group_word(group));
    html_say(html, " ");
    html_link(html, html_finding_id(html, at), finding->title != NULL ? finding->title : "");
    html_put_format(html, "span", NULL, ", %s: %s.",
                    html_text(html, about_text(finding, html->arena)),
                    finding->message != NULL ? finding->message : "");
    html_close(html);
}

void html_actions(struct html *html)
{
    const struct findings *findings = html->report->findings;
    size_t number = 0;
    for (enum html_group group = GROUP_FAILS; group < GROUP_STANDS; group++)
        for (size_t i = 0; findings != NULL && i < findings->count; i++) {
            if (html_group_of(findings->items[i]) != group)
                continue;
            if (number == 0)
                html_open(html, "ol", "actions");
            write_action(html, i, ++number);
        }
    if (number > 0)
        html_close(html);
}

void html_findings(struct html *html)
{
    if (html->report->findings == NULL)
        return;
    size_t number = 0;
    html_section(html, "findings", "Findings");
    for (enum html_group group = GROUP_FAILS; group < GROUP_COUNT; group++)
        write_group(html, group, &number);
    html_close(html);
}
