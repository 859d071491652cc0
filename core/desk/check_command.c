/* plumbrule check: designs against rulebooks. */
#include "desk.h"

#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "finding.h"
#include "report.h"

/* By itself colour is for terminals that take it, and never for who asked for none. */
static bool wants_color(const struct desk *desk)
{
    const char *when = desk_last(desk, FLAG_COLOR), *terminal = getenv("TERM"),
               *none = getenv("NO_COLOR");
    if (when != NULL && strcmp(when, "auto") != 0)
        return strcmp(when, "always") == 0;
    return (none == NULL || none[0] == '\0') && !desk_has(desk, FLAG_OUTPUT) &&
           isatty(STDOUT_FILENO) == 1 && terminal != NULL && strcmp(terminal, "dumb") != 0;
}

/* Several reports of one format become one. */
static void add_report(struct desk *desk, const struct report_format *format, const char *report,
                       size_t length, bool is_first)
{
    if (format->begins != NULL && length > 0) {
        report += strlen(format->begins);
        length -= strlen(format->begins) + strlen(format->ends);
    }
    if (is_first && format->begins != NULL)
        text_add_word(&desk->out, format->begins);
    else if (!is_first && format->between != NULL)
        text_add_word(&desk->out, format->between);
    text_add(&desk->out, report, length);
}

static enum plumbrule_end check_all(struct desk *desk, struct plumbrule *plumbrule,
                                    const struct plumbrule_options *options)
{
    enum plumbrule_end end = PLUMBRULE_STANDS;
    const struct report_format *format =
        report_format_find(options->format != NULL ? options->format : "text");
    for (size_t i = 0; i < desk->operands.count; i++) {
        const char *report;
        size_t length;
        enum plumbrule_end one =
            plumbrule_check(&report, &length, plumbrule, desk->operands.items[i], options);
        if (one == PLUMBRULE_NO_MEMORY)
            return one;
        add_report(desk, format, report, length, i == 0);
        end = (enum plumbrule_end)exit_code_first((int)end, (int)one);
    }
    if (format->ends != NULL)
        text_add_word(&desk->out, format->ends);
    return end;
}

static void check_format(struct desk *desk)
{
    const char *name = desk_last(desk, FLAG_REPORT);
    const struct report_format *format = name != NULL ? report_format_find(name) : NULL;
    if (format != NULL && format->stands_alone && desk->operands.count > 1)
        desk_refuse(desk, "format-alone", NULL, "--format %s is one file per design", name);
    if (desk_has(desk, FLAG_FAILURES_ONLY) && (name == NULL || strcmp(name, "sarif") != 0))
        desk_refuse(desk, "option-without", "--format sarif --failures-only",
                    "--failures-only goes with --format sarif");
}

static bool is_complete(struct desk *desk)
{
    check_format(desk);
    if (is_batch(desk) && !batch_is_complete(desk))
        return false;
    if (desk->operands.count == 0 && !desk_has(desk, FLAG_FROM_LIST))
        desk_refuse(desk, "design-none", "plumbrule check house.yaml --book marrow-bay",
                    "no design is named");
    if (!desk_has(desk, FLAG_BOOK))
        desk_refuse(desk, "book-none", "--book marrow-bay",
                    "no rulebook is named; plumbrule books lists them");
    return desk_check_date(desk) && desk->problems.count == 0;
}

enum plumbrule_end run_check(struct desk *desk)
{
    struct plumbrule *plumbrule;
    if (!is_complete(desk) || !desk_leave_signoffs(desk, 0))
        return PLUMBRULE_COMMAND;
    const struct plumbrule_options options = {.book_directories = desk_book_directories(desk),
                                              .catalogue_directories =
                                                  desk->given[FLAG_CATALOGUES].items,
                                              .books = desk->given[FLAG_BOOK].items,
                                              .on = desk_last(desk, FLAG_ON),
                                              .format = desk_last(desk, FLAG_REPORT),
                                              .with_working = desk_has(desk, FLAG_WITH_WORKING),
                                              .with_color = wants_color(desk),
                                              .failures_only = desk_has(desk, FLAG_FAILURES_ONLY)};
    if (options.book_directories != NULL && is_batch(desk))
        return check_batch(desk, &options);
    if (options.book_directories == NULL || !plumbrule_open(&plumbrule))
        return PLUMBRULE_NO_MEMORY;
    enum plumbrule_end end = check_all(desk, plumbrule, &options);
    plumbrule_close(plumbrule);
    if (end == PLUMBRULE_COMMAND) /* the report tells what was wrong with it */
        return desk_write(desk, end);
    return end;
}
