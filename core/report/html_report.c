/* The report for people who look at it: one file that needs nothing else. */
#include "html.h"

/* Nothing may be fetched or run, whatever the page holds. */
static void write_page_head(struct html *html)
{
    const struct report *report = html->report;
    const char *title =
        report->design != NULL ? html_fact(html, report->design->root, SLOT_design_title) : NULL;
    html_open(html, "head", NULL);
    html_void(html, "meta", "charset", "utf-8");
    html_raw(html, "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                   "style-src 'unsafe-inline'\"/>"
                   "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>"
                   "<meta name=\"color-scheme\" content=\"light\"/>");
    html_put_format(html, "title", NULL, "%s, design review",
                    title != NULL ? title : report->design_path);
    html_open(html, "style", NULL);
    for (size_t i = 0; html_style(i) != NULL; i++)
        html_raw(html, html_style(i));
    html_close(html);
    html_close(html);
}

static void write_caution(struct html *html)
{
    html_section(html, "caution", "Caution");
    html_put(html, "p", NULL, report_caution());
    html_close(html);
}

static void write_body(struct html *html)
{
    html_open(html, "body", NULL);
    html_head(html);
    html_open(html, "main", NULL);
    html_problems(html);
    html_findings(html);
    html_drawings(html);
    html_margins(html);
    html_values(html);
    html_labels(html);
    html_equipment(html);
    html_sheets(html);
    html_checklists(html);
    html_papers(html);
    html_jobsite(html);
    html_not_checked(html);
    html_origin(html);
    write_caution(html);
    html_close(html);
    html_close(html);
}

static void write_page(struct html *html)
{
    html_raw(html, "<!DOCTYPE html>\n");
    html_open(html, "html", NULL);
    html_set(html, "lang", "en");
    html_set(html, "xmlns", "http://www.w3.org/1999/xhtml");
    write_page_head(html);
    write_body(html);
    html_close(html);
    html_raw(html, "\n");
}

bool report_write_html(struct text *out, const struct report *report)
{
    struct html html;
    html_begin(&html, out, report);
    if (!html.is_short)
        write_page(&html);
    return html_end(&html);
}
