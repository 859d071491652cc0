/* plumbrule draw: one drawing of a design, as SVG. */
#include "desk.h"

#include <string.h>

#include "drawing.h"
#include "review.h"

static bool is_complete(struct desk *desk)
{
    if (desk->operands.count != 1)
        desk_refuse(desk, desk->operands.count == 0 ? "design-none" : "design-many",
                    "plumbrule draw house.yaml --what roof -o roof.svg", "%s",
                    desk->operands.count == 0 ? "no design is named"
                                              : "one drawing shows one design");
    if (!desk_has(desk, FLAG_WHAT))
        desk_refuse(desk, "drawing-none", "--what roof",
                    "it is not said what to draw; --what takes %s",
                    choices_text(desk, flag_at(FLAG_WHAT)));
    return desk_check_date(desk) && desk->problems.count == 0;
}

/* Without a book a design is drawn as it is: then nobody asks for a book or a day. */
static void forget_book(struct problems *problems)
{
    size_t kept = 0;
    for (size_t i = 0; i < problems->count; i++)
        if (strcmp(problems->items[i].code, "book-none") != 0 &&
            strcmp(problems->items[i].code, "date-missing") != 0)
            problems->items[kept++] = problems->items[i];
    problems->count = kept;
}

static bool write_drawing(struct desk *desk, const struct review *review, const char *path)
{
    const struct report report = {
        .design_path = path,
        .design = review->design,
        .rulebook = review->rulebook,
        .findings = review->rulebook != NULL ? &review->findings : NULL,
        .problems = &review->problems,
        .has_date = review->has_date,
        .on = review->on,
        .version = plumbrule_version(),
    };
    const struct drawing *drawing = drawing_find(desk_last(desk, FLAG_WHAT));
    text_add_word(&desk->out, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    return drawing->write(&desk->out, &report);
}

/* What stands in the way of a drawing decides the code, not what its findings say. */
static enum plumbrule_end draw(struct desk *desk, struct bench *bench,
                               const struct bench_options *options)
{
    struct review review;
    const char *path = desk->operands.items[0];
    if (!bench_review(&review, bench, path, options))
        return PLUMBRULE_NO_MEMORY;
    if (options->books == NULL)
        forget_book(&review.problems);
    if (!desk_tell(&review.problems))
        return PLUMBRULE_NO_MEMORY;
    if (review.design == NULL) {
        desk->given[FLAG_OUTPUT].count = 0; /* an older drawing stays as it is */
        return (enum plumbrule_end)exit_code_first(
            PLUMBRULE_UNREAD, exit_code(NULL, &review.problems, true)); /* for want of memory? */
    }
    if (!write_drawing(desk, &review, path))
        return PLUMBRULE_NO_MEMORY;
    return (enum plumbrule_end)exit_code(NULL, &review.problems, true);
}

enum plumbrule_end run_draw(struct desk *desk)
{
    struct bench bench;
    if (!is_complete(desk))
        return PLUMBRULE_COMMAND;
    const struct bench_options options = {
        .book_directories = desk_book_directories(desk),
        .catalogue_directories = desk->given[FLAG_CATALOGUES].items,
        .books = desk->given[FLAG_BOOK].items,
        .on = desk_last(desk, FLAG_ON),
    };
    if (options.book_directories == NULL || !bench_open(&bench))
        return PLUMBRULE_NO_MEMORY;
    enum plumbrule_end end = draw(desk, &bench, &options);
    bench_close(&bench);
    return end;
}
