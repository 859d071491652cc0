#include "resolving.h"
#include <string.h>

/* A code's editions, for an example: the one in force. */
static const char *edition_in_force(const struct resolving *resolving, size_t target)
{
    return resolving->books[target].edition;
}

static const char *edition_example(struct resolving *resolving, size_t target)
{
    return arena_format(resolving->arena, "edition: %s", edition_in_force(resolving, target));
}

enum edition_fit judge_edition(struct resolving *resolving, size_t target,
                               const struct edition_question *question)
{
    const struct book *book = resolving->books[target].book;
    const char *edition = question->edition;
    if (!has_editions(book)) {
        if (!edition)
            return EDITION_FITS;
        tell(resolving, "edition-needless", question->place, NULL,
             "%s has no editions, so %s is not written for edition %s of it", book->name,
             question->what, edition);
        return EDITION_WRONG;
    }
    if (!edition && !question->is_needed)
        return EDITION_FITS;
    const char *list = list_names(resolving, book->editions);
    if (!edition) {
        tell(resolving, "edition-missing", question->place, edition_example(resolving, target),
             "this is about %s: say which edition of %s it was written for (%s)", question->what,
             book->name, list);
        return EDITION_WRONG;
    }
    if (!has_edition(book, edition)) {
        tell(resolving, "edition-unknown", question->place, edition_example(resolving, target),
             "%s has no edition %s; its editions are %s", book->name, edition, list);
        return EDITION_WRONG;
    }
    return strcmp(edition, edition_in_force(resolving, target)) == 0 ? EDITION_FITS : EDITION_OTHER;
}

void tell_stale(struct resolving *resolving, size_t target, const struct edition_question *question)
{
    const struct book_in_force *adopted = &resolving->books[target];
    char day[16];
    date_write(day, sizeof day, resolving->rulebook->on);
    const char *example = arena_format(
        resolving->arena, "edition: %s, or end this one with repealed: DATE", adopted->edition);
    tell_both(resolving, "edition-other", question->place, adopted->place, example,
              "%s is written for edition %s of %s, but edition %s is in force on %s: restate it "
              "for that edition or drop it",
              question->what, question->edition, adopted->book->name, adopted->edition, day);
}

void sort_acts(struct act *acts, size_t count)
{
    for (size_t i = 1; i < count; i++) {
        struct act moving = acts[i];
        size_t at = i;
        for (; at > 0 && date_compare(acts[at - 1].from, moving.from) > 0; at--)
            acts[at] = acts[at - 1];
        acts[at] = moving;
    }
}
