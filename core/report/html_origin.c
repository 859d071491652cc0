/* What was not checked, what it rests on, and how the same report is made again. */
#include <string.h>

#include "assumed.h"
#include "deciding.h"
#include "html.h"
#include "unread.h"

static void write_assumed(struct html *html, const struct findings *findings)
{
    struct assumption *assumptions;
    size_t count;
    if (!assumed_collect(&assumptions, &count, findings->inputs, findings->input_count,
                         html->arena)) {
        html->is_short = true;
        return;
    }
    html_put(html, "h3", NULL, "Assumed, not told");
    if (count == 0)
        html_put(html, "p", NULL, "No finding rests on an assumption.");
    else
        html_open(html, "ul", NULL);
    for (size_t i = 0; i < count; i++)
        html_put(html, "li", NULL, html_text(html, assumption_text(&assumptions[i], html->arena)));
    if (count > 0)
        html_close(html);
}

/* "position (2 of 5), tandem": the facts of one kind. Moves `at` behind them. */
static const char *facts_text(struct html *html, const struct unread *unread, size_t count,
                              size_t *at)
{
    const struct kind *kind = unread[*at].kind;
    const char *text = "";
    for (; *at < count && unread[*at].kind == kind; ++*at) {
        const struct unread *one = &unread[*at];
        const char *comma = text[0] != '\0' ? ", " : "";
        text = one->unread == one->given
                   ? arena_format(html->arena, "%s%s%s", text, comma, one->fact->name)
                   : arena_format(html->arena, "%s%s%s (%zu of %zu)", text, comma, one->fact->name,
                                  one->unread, one->given);
        text = html_text(html, text);
    }
    return text;
}

static void write_unread(struct html *html)
{
    static const char *const heads[] = {"Kind of thing", "Facts that no rule in force looked at",
                                        NULL};
    struct unread *unread;
    size_t count;
    if (!unread_collect(&unread, &count, html->report, html->arena)) {
        html->is_short = true;
        return;
    }
    html_put(html, "h3", NULL, "Given, but looked at by no rule in force");
    if (count == 0) {
        html_put(html, "p", NULL, "Every fact that the design gives was looked at.");
        return;
    }
    html_table(html, NULL, "Facts not looked at", heads);
    for (size_t i = 0; i < count;) {
        const char *kind = unread[i].kind->name;
        const char *const cells[] = {kind, facts_text(html, unread, count, &i)};
        html_row(html, cells, sizeof cells / sizeof cells[0]);
    }
    html_table_end(html);
}

static void write_deleted(struct html *html, const struct rulebook *rulebook)
{
    size_t count = 0;
    for (size_t i = 0; i < rulebook->rule_count; i++) {
        const struct rule *rule = &rulebook->rules[i];
        const struct act *act = rule->act_count > 0 ? &rule->acts[rule->act_count - 1] : NULL;
        if (rule->holds)
            continue;
        if (count++ == 0) {
            html_put(html, "h3", NULL, "Rules that a book has taken out");
            html_open(html, "ul", NULL);
        }
        html_put_format(html, "li", NULL, "%s: %s %s it%s%s", rule->id,
                        act != NULL ? act->book->name : "a book",
                        act != NULL ? act->verb : "deletes",
                        act != NULL && act->cite != NULL ? ", " : "",
                        act != NULL && act->cite != NULL ? act->cite : "");
    }
    if (count > 0)
        html_close(html);
}

void html_not_checked(struct html *html)
{
    const struct report *report = html->report;
    if (report->findings == NULL || report->design == NULL)
        return;
    html_section(html, "not-checked", "Not checked, and assumed");
    html_put(html, "p", NULL,
             "Only what the rules below say was checked. The drawings, the site and the work "
             "itself were not seen.");
    write_unread(html);
    write_assumed(html, report->findings);
    if (report->rulebook != NULL)
        write_deleted(html, report->rulebook);
    html_close(html);
}

static void write_books(struct html *html, const struct rulebook *rulebook)
{
    static const char *const heads[] = {"Book",  "Edition", "Adopted by", "Title",
                                        "Scope", "Kept by", NULL};
    html_table(html, NULL, "Books in force, lowest first", heads);
    for (size_t i = 0; i < rulebook->book_count; i++) {
        const struct book_in_force *one = &rulebook->books[i];
        const char *const cells[] = {one->book->name,
                                     one->edition,
                                     one->adopted_by != NULL ? one->adopted_by->name
                                                             : "named for this review",
                                     one->book->title,
                                     one->book->scope,
                                     one->book->maintained_by};
        html_row(html, cells, sizeof cells / sizeof cells[0]);
    }
    html_table_end(html);
}

static void write_files(struct html *html)
{
    static const char *const heads[] = {"File", "What it is", "SHA-256", NULL};
    struct deciding_file *files;
    size_t count;
    if (!deciding_collect(&files, &count, html->report, html->arena)) {
        html->is_short = true;
        return;
    }
    html_table(html, "digests", "Files that decided", heads);
    for (size_t i = 0; i < count; i++) {
        const char *const cells[] = {html_file(html, files[i].path), files[i].role,
                                     files[i].is_read ? files[i].digest : "no longer to be read"};
        html_row(html, cells, sizeof cells / sizeof cells[0]);
    }
    html_table_end(html);
}

/* The command line that makes this report from the same files. */
static const char *command_text(struct html *html, const char *on)
{
    const struct rulebook *rulebook = html->report->rulebook;
    const char *text =
        html_text(html, arena_format(html->arena, "plumbrule check %s", html->report->design_path));
    for (size_t i = 0; rulebook != NULL && i < rulebook->book_count; i++)
        if (rulebook->books[i].adopted_by == NULL)
            text = html_text(
                html,
                arena_format(html->arena, "%s --book %s%s%s", text, rulebook->books[i].book->name,
                             rulebook->books[i].edition != NULL ? "@" : "",
                             rulebook->books[i].edition != NULL ? rulebook->books[i].edition : ""));
    return html_text(html, arena_format(html->arena, "%s%s%s --format html", text,
                                        on[0] != '\0' ? " --on " : "", on));
}

void html_origin(struct html *html)
{
    const struct report *report = html->report;
    char on[16] = "";
    if (report->has_date)
        date_write(on, sizeof on, report->on);
    html_section(html, "origin", "How to make this report again");
    html_put_format(html, "p", NULL,
                    "Plumbrule %s, the rules of %s, and the files below, byte for byte:",
                    report->version, report->has_date ? on : "no day");
    html_open(html, "p", NULL);
    html_put(html, "code", "command", command_text(html, on));
    html_close(html);
    if (report->rulebook != NULL)
        write_books(html, report->rulebook);
    write_files(html);
    html_close(html);
}
