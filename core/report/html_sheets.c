/* Calculation sheets: what was calculated, step by step, one sheet per finding that calculates. */
#include "block.h"
#include "html.h"

/* Longer sheets are put on paper only where the reader has opened them. */
enum { STEPS_ON_PAPER = 120 };

static void write_sheet(struct html *html, size_t at, size_t number)
{
    const struct finding *finding = html->report->findings->items[at];
    html_raw(html, "\n");
    html_open(html, "details", finding->line_count > STEPS_ON_PAPER ? "sheet long" : "sheet");
    html_open(html, "summary", NULL);
    html_put_format(html, "strong", NULL, "Sheet %zu: %s", number,
                    finding->title != NULL ? finding->title : finding->rule->id);
    html_say(html, HTML_MARK);
    html_put(html, "span", "about", html_text(html, about_text(finding, html->arena)));
    html_cite(html, finding);
    html_close(html);
    html_open(html, "p", NULL);
    html_set(html, "id", html_text(html, arena_format(html->arena, "sheet-%zu", number)));
    html_say(html, "Result: ");
    html_link(html, html_finding_id(html, at), "the finding");
    html_put_format(html, "span", NULL, ". %s.", finding->message != NULL ? finding->message : "");
    html_close(html);
    html_steps(html, finding);
    html_tests(html, finding->tests, finding->test_count);
    html_close(html);
}

void html_sheets(struct html *html)
{
    const struct findings *findings = html->report->findings;
    size_t number = 0;
    for (size_t i = 0; findings != NULL && i < findings->count; i++) {
        if (!html_has_sheet(findings->items[i]))
            continue;
        if (number == 0) {
            html_section(html, "sheets", "Calculation sheets");
            html_put(html, "p", NULL,
                     "One sheet for each finding that was calculated: every step with its source, "
                     "then what was compared. What a figure was read from stands at the finding.");
            html_put(html, "p", "paper-only",
                     "Sheets of very many steps stand here by their title; those that are opened "
                     "before printing are printed whole.");
        }
        write_sheet(html, i, ++number);
    }
    if (number > 0)
        html_close(html);
}
