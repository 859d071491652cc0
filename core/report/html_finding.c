/* One finding: closed it says what and where, opened it shows its whole working. */
#include <string.h>

#include "assumed.h"
#include "block.h"
#include "html.h"
#include "signoff.h"

static void write_summary(struct html *html, const struct finding *finding, size_t number)
{
    enum html_group group = html_group_of(finding);
    double margin = 0;
    bool has_margin = finding->outcome == OUTCOME_PASS &&
                      tests_margin(&margin, finding->tests, finding->test_count);
    html_open(html, "summary", NULL);
    if (number > 0) {
        html_put_format(html, "span", "key", "%zu", number);
        html_say(html, " ");
    }
    html_put_format(html, "span",
                    html_text(html, arena_format(html->arena, "badge %s", html_group_class(group))),
                    "%s", html_group_word(group));
    html_say(html, " ");
    html_put(html, "strong", NULL, finding->title != NULL ? finding->title : finding->rule->id);
    html_say(html, HTML_MARK);
    html_put(html, "span", "about", html_text(html, about_text(finding, html->arena)));
    html_cite(html, finding);
    if (has_margin) {
        html_say(html, HTML_MARK);
        html_put(html, "span", "margin", html_margin(html, true, margin));
    }
    html_close(html);
}

static void html_missing_one(struct html *html, const struct missing *missing)
{
    html_raw(html, "\n");
    html_open(html, "li", NULL);
    html_put(html, "strong", NULL, missing->fact != NULL ? missing->fact : "");
    const char *place = html_place(html, missing->place);
    if (place[0] != '\0') {
        html_say(html, ", at ");
        html_put(html, "span", "place", place);
    }
    if (missing->example != NULL) {
        html_say(html, ", for example ");
        html_put(html, "code", NULL, missing->example);
    }
    html_close(html);
}

void html_missing(struct html *html, const struct test *tests, size_t count, struct index *told)
{
    for (size_t i = 0; i < count; i++) {
        const struct test *test = &tests[i];
        const char *fact = test->missing.fact;
        if (test->relation == RELATION_MISSING && fact != NULL && index_find(told, fact) == NULL) {
            if (!index_add(told, fact, told)) { /* nothing is opened that nobody would close */
                html->is_short = true;
                return;
            }
            if (told->count == 1) {
                html_put(html, "p", "label", "To give");
                html_open(html, "ul", NULL);
            }
            html_missing_one(html, &test->missing);
        }
        for (size_t k = 0; k < test->option_count; k++)
            html_missing(html, test->options[k].tests, test->options[k].test_count, told);
    }
}

static void write_acts(struct html *html, const struct rule *rule)
{
    for (size_t i = 0; i < rule->act_count; i++) {
        const struct act *act = &rule->acts[i];
        char from[16] = "";
        if (act->from.year != 0)
            date_write(from, sizeof from, act->from);
        html_put_format(html, "span", NULL, "; %s %s it%s%s%s%s%s", act->book->name, act->verb,
                        from[0] ? " from " : "", from, act->cite ? " (" : "",
                        act->cite ? act->cite : "", act->cite ? ")" : "");
    }
}

static void write_rule(struct html *html, const struct finding *finding)
{
    const struct rule *rule = finding->rule;
    html_put(html, "p", "label", "Rule");
    html_open(html, "p", NULL);
    html_put_format(html, "span", NULL, "%s (%s)", html_text(html, cite_text(finding, html->arena)),
                    rule->id);
    write_acts(html, rule);
    const char *print = html_text(html, finding_fingerprint(finding, html->arena));
    html_say(html, ". Fingerprint ");
    html_put(html, "code", NULL, print);
    html_close(html);
}

static void write_waiver(struct html *html, const struct waiver *waiver)
{
    char until[16] = "";
    if (waiver == NULL)
        return;
    if (waiver->until.year != 0)
        date_write(until, sizeof until, waiver->until);
    html_put(html, "p", "label", "Waived");
    html_put_format(html, "p", NULL, "By %s%s%s%s%s: %s",
                    waiver->granted_by != NULL ? waiver->granted_by : "the authority",
                    waiver->permit != NULL ? ", permit " : "",
                    waiver->permit != NULL ? waiver->permit : "", until[0] ? ", until " : "", until,
                    waiver->reason != NULL ? waiver->reason : "no reason given");
}

static void write_signoff(struct html *html, const struct signoff *signoff)
{
    char on[16], until[16] = "";
    if (signoff == NULL)
        return;
    date_write(on, sizeof on, signoff->on);
    if (signoff->until.year != 0)
        date_write(until, sizeof until, signoff->until);
    html_put(html, "p", "label", "Signed");
    html_put_format(html, "p", NULL, "Accepted by %s, license %s, on %s%s%s: %s", signoff->by,
                    signoff->license, on, until[0] ? ", until " : "", until, signoff->why);
}

static const char *message_of(struct html *html, const struct finding *finding)
{
    return html_text(html, finding->message != NULL ? finding->message
                                                    : finding_message(finding, html->arena));
}

void html_finding(struct html *html, size_t at, size_t number)
{
    const struct finding *finding = html->report->findings->items[at];
    struct index told = {.arena = html->arena};
    html_raw(html, "\n");
    html_open(html, "details", html_group_class(html_group_of(finding)));
    html_set(html, "id", html_finding_id(html, at));
    if (number > 0)
        html_set(html, "open", "open");
    write_summary(html, finding, number);
    html_put_format(html, "p", "message", "%s.", message_of(html, finding));
    if (finding->remedy != NULL && finding->outcome == OUTCOME_FAIL)
        html_put_format(html, "p", "remedy", "To do: %s", finding->remedy);
    const char *place = html_place(html, finding->place);
    if (place[0] != '\0')
        html_put_format(html, "p", "place", "%s, %s",
                        html_text(html, about_text(finding, html->arena)), place);
    html_missing(html, finding->tests, finding->test_count, &told);
    if (told.count > 0)
        html_close(html);
    write_waiver(html, finding->waiver);
    write_signoff(html, finding->signoff);
    html_tests(html, finding->tests, finding->test_count);
    html_open(html, "details", "working");
    html_put(html, "summary", NULL, "Whole working");
    html_values_of(html, finding);
    html_steps_or_sheet(html, at, number > 0);
    html_inputs(html, finding);
    write_rule(html, finding);
    html_close(html);
    html_close(html);
}
