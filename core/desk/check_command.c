/* plumbrule check: designs against rulebooks. */
#include "desk.h"

#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "finding.h"

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

static enum plumbrule_end check_all(struct desk *desk, struct plumbrule *plumbrule,
                                    const struct plumbrule_options *options)
{
    enum plumbrule_end end = PLUMBRULE_STANDS;
    bool is_text = options->format == NULL || strcmp(options->format, "text") == 0;
    for (size_t i = 0; i < desk->operands.count; i++) {
        const char *report;
        size_t length;
        enum plumbrule_end one =
            plumbrule_check(&report, &length, plumbrule, desk->operands.items[i], options);
        if (one == PLUMBRULE_NO_MEMORY)
            return one;
        if (i > 0 && is_text)
            text_add_word(&desk->out, "\n\n");
        text_add(&desk->out, report, length);
        end = (enum plumbrule_end)exit_code_first((int)end, (int)one);
    }
    return end;
}

static bool is_complete(struct desk *desk)
{
    if (desk->operands.count == 0)
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
    if (!is_complete(desk))
        return PLUMBRULE_COMMAND;
    const struct plumbrule_options options = {.book_directories = desk_book_directories(desk),
                                              .catalogue_directories =
                                                  desk->given[FLAG_CATALOGUES].items,
                                              .books = desk->given[FLAG_BOOK].items,
                                              .on = desk_last(desk, FLAG_ON),
                                              .format = desk_last(desk, FLAG_FORMAT),
                                              .with_working = desk_has(desk, FLAG_WITH_WORKING),
                                              .with_color = wants_color(desk)};
    if (options.book_directories == NULL || !plumbrule_open(&plumbrule))
        return PLUMBRULE_NO_MEMORY;
    enum plumbrule_end end = check_all(desk, plumbrule, &options);
    plumbrule_close(plumbrule);
    if (end == PLUMBRULE_COMMAND) /* the report tells what was wrong with it */
        return desk_write(desk, end);
    return end;
}
