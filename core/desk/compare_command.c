/* plumbrule compare: what a change of books does to designs. */
#include "desk.h"

#include <string.h>

#include "compare.h"
#include "report.h"

static const char example[] =
    "plumbrule compare marrow-bay marrow-bay+lantern-roofworks house.yaml";

/* "marrow-bay+lantern-roofworks" as a list that ends in NULL. NULL: no memory. */
static const char *const *split_stack(struct desk *desk, const char *stack)
{
    struct words words = {0};
    for (const char *at = stack;;) {
        size_t length = strcspn(at, "+");
        char *one = arena_copy(desk->arena, at, length);
        if (one == NULL || !words_add(&words, one, desk->arena))
            return NULL;
        if (length == 0)
            desk_refuse(desk, "book-none", example, "'%s' is no stack of books", stack);
        if (at[length] == '\0')
            return words.items;
        at += length + 1;
    }
}

static const char *join_stack(struct desk *desk, const struct words *books)
{
    const char *name = "";
    for (size_t i = 0; i < books->count && name != NULL; i++)
        name = arena_format(desk->arena, "%s%s%s", name, i > 0 ? "+" : "", books->items[i]);
    return name;
}

static bool check_day(struct desk *desk, const char *option, const char *day)
{
    struct date date;
    if (day == NULL || date_read(&date, day, strlen(day)))
        return true;
    desk_refuse(desk, "date-bad", "--on 2026-05-04",
                "%s '%s' is no day of the calendar written YYYY-MM-DD", option, day);
    return false;
}

/* --book B… --on DATE --against DATE DESIGN…: one stack on two days. */
static bool take_days(struct desk *desk, struct compare_options *options,
                      struct comparison *comparison, size_t *first)
{
    if (!desk_has(desk, FLAG_ON) || !desk_has(desk, FLAG_AGAINST))
        desk_refuse(desk, "date-missing", "--on 2026-08-03 --against 2025-08-03",
                    "with --book two days are compared: --on and --against");
    options->was_books = options->is_books = desk->given[FLAG_BOOK].items;
    options->was_on = desk_last(desk, FLAG_AGAINST);
    options->is_on = desk_last(desk, FLAG_ON);
    comparison->was.name = comparison->is.name = join_stack(desk, &desk->given[FLAG_BOOK]);
    *first = 0;
    return comparison->is.name != NULL;
}

/* A design where a stack of books is needed: one of the two was left out. */
static void refuse_design(struct desk *desk, const char *operand)
{
    const char *ending = strrchr(operand, '.');
    if (ending != NULL && strcmp(ending, ".yaml") == 0)
        desk_refuse(desk, "book-none", example,
                    "'%s' is no stack of books; two of them go before the designs", operand);
}

/* OLD NEW DESIGN…: two stacks on one day. */
static bool take_stacks(struct desk *desk, struct compare_options *options,
                        struct comparison *comparison, size_t *first)
{
    const struct words *operands = &desk->operands;
    if (desk_has(desk, FLAG_AGAINST))
        desk_refuse(desk, "option-without",
                    "--book marrow-bay --on 2026-08-03 --against 2025-08-03",
                    "--against goes with --book");
    if (operands->count < 2) {
        desk_refuse(desk, "book-none", example,
                    "two stacks of books are compared; plumbrule books lists the books");
        return true;
    }
    refuse_design(desk, operands->items[0]);
    refuse_design(desk, operands->items[1]);
    if (operands->count == 2 && !desk_has(desk, FLAG_ON) && desk->problems.count == 0)
        desk_refuse(desk, "date-missing", "--on 2026-08-03",
                    "without a design the day whose rules are meant must be given");
    options->was_books = split_stack(desk, operands->items[0]);
    options->is_books = split_stack(desk, operands->items[1]);
    options->was_on = options->is_on = desk_last(desk, FLAG_ON);
    comparison->was.name = operands->items[0];
    comparison->is.name = operands->items[1];
    *first = 2;
    return options->was_books != NULL && options->is_books != NULL;
}

static bool write_comparison(struct desk *desk, const struct comparison *comparison,
                             const struct problems *problems)
{
    const char *format = desk_last(desk, FLAG_FORMAT);
    return format != NULL && strcmp(format, "json") == 0
               ? comparison_write_json(&desk->out, comparison, problems)
               : comparison_write_text(&desk->out, comparison);
}

static enum plumbrule_end compare(struct desk *desk, const struct compare_options *options,
                                  struct comparison *comparison, size_t first)
{
    struct problems problems = {.arena = desk->arena};
    if (!review_compare(comparison, options, desk->operands.items + first,
                        desk->operands.count - first, desk->arena, &problems) ||
        !write_comparison(desk, comparison, &problems) || !desk_tell(&problems))
        return PLUMBRULE_NO_MEMORY;
    return (enum plumbrule_end)exit_code_first(comparison_code(comparison),
                                               exit_code(NULL, &problems, true));
}

enum plumbrule_end run_compare(struct desk *desk)
{
    struct comparison comparison = {0};
    struct compare_options options = {
        .book_directories = desk_book_directories(desk),
        .catalogue_directories = desk->given[FLAG_CATALOGUES].items,
    };
    size_t first = 0;
    bool is_taken = desk_has(desk, FLAG_BOOK) ? take_days(desk, &options, &comparison, &first)
                                              : take_stacks(desk, &options, &comparison, &first);
    if (!is_taken || options.book_directories == NULL)
        return PLUMBRULE_NO_MEMORY;
    check_day(desk, "--on", desk_last(desk, FLAG_ON));
    check_day(desk, "--against", desk_last(desk, FLAG_AGAINST));
    return desk->problems.count > 0 || !desk_leave_signoffs(desk, first)
               ? PLUMBRULE_COMMAND
               : compare(desk, &options, &comparison, first);
}
