/* plumbrule books: the rulebooks there are. */
#include "desk.h"

#include <string.h>

#include "finding.h"
#include "intake.h"
#include "listing.h"
#include "search.h"

/* Reads every book on the shelf; one that cannot be read is a problem, and the others still show.
 */
static bool read_books(const struct book ***out, size_t *count, struct shelf *shelf,
                       struct desk *desk)
{
    char **names;
    size_t all;
    if (!shelf_list(&names, &all, shelf, desk->arena))
        return false;
    *count = 0;
    *out = arena_take(desk->arena, (all + 1) * sizeof **out);
    for (size_t i = 0; *out != NULL && i < all; i++) {
        const struct book *book = shelf_find(shelf, names[i], (struct place){0}, &desk->problems);
        if (book != NULL)
            (*out)[(*count)++] = book;
    }
    return *out != NULL;
}

static enum plumbrule_end list_books(struct desk *desk, struct shelf *shelf)
{
    const struct book **books;
    size_t count;
    const char *format = desk_last(desk, FLAG_FORMAT);
    if (!read_books(&books, &count, shelf, desk))
        return PLUMBRULE_NO_MEMORY;
    bool is_written = format != NULL && strcmp(format, "json") == 0
                          ? list_books_as_json(&desk->out, books, count)
                          : list_books_as_text(&desk->out, books, count);
    if (!is_written)
        return PLUMBRULE_NO_MEMORY;
    return (enum plumbrule_end)exit_code(NULL, &desk->problems, true);
}

enum plumbrule_end run_books(struct desk *desk)
{
    if (desk->operands.count > 0)
        return desk_refuse(desk, "operand", NULL, "books takes no '%s'", desk->operands.items[0]);
    const char *const *given = desk_book_directories(desk);
    const char *const *directories = given != NULL ? search_books(given, desk->arena) : NULL;
    struct shelf *shelf = directories != NULL ? shelf_new(directories) : NULL;
    if (shelf == NULL)
        return PLUMBRULE_NO_MEMORY;
    enum plumbrule_end end = list_books(desk, shelf);
    shelf_free(shelf);
    return end;
}
