#include "resolving.h"
#include <string.h>

bool is_same_name(const char *a, const char *b)
{
    return a == b || (a && b && strcmp(a, b) == 0);
}

bool has_editions(const struct book *book)
{
    return book->editions && book->editions[0];
}

bool has_edition(const struct book *book, const char *edition)
{
    for (size_t i = 0; book->editions && book->editions[i]; i++)
        if (strcmp(book->editions[i], edition) == 0)
            return true;
    return false;
}

size_t book_number(const struct resolving *resolving, const char *name)
{
    for (size_t i = 0; i < resolving->book_count; i++)
        if (strcmp(resolving->books[i].book->name, name) == 0)
            return i;
    return NO_BOOK;
}

static size_t count_editions(const struct book *book)
{
    size_t count = 0;
    while (book->editions && book->editions[count])
        count++;
    return count;
}

/* Does the edition asked for exist, and is it asked for where there are several? */
static bool check_edition(struct resolving *resolving, const struct book *book, const char *edition,
                          struct place place)
{
    const char *list = list_names(resolving, book->editions);
    if (!has_editions(book) && edition) {
        tell(resolving, "edition-needless", place, book->name,
             "%s has no editions, so there is no edition %s of it", book->name, edition);
        return false;
    }
    if (!has_editions(book) || (edition && has_edition(book, edition)))
        return true;
    size_t last = count_editions(book) - 1;
    const char *example =
        place.file ? arena_format(resolving->arena, "{book: %s, edition: %s, from: 2023-01-01}",
                                  book->name, book->editions[last])
                   : arena_format(resolving->arena, "%s@%s", book->name, book->editions[last]);
    if (edition)
        tell(resolving, "edition-unknown", place, example,
             "%s has no edition %s; its editions are %s", book->name, edition, list);
    else
        tell(resolving, "edition-missing", place, example,
             "%s comes in editions, so one must be named: %s", book->name, list);
    return false;
}

/* The words for a place on the command line. */
static const char *edition_words(const char *edition)
{
    return edition ? edition : "none";
}

/* The number of the book, newly added or there before. NO_BOOK: a problem was told. */
static size_t add_book(struct resolving *resolving, const struct book_in_force *wanted)
{
    const struct book *book = wanted->book;
    size_t at = book_number(resolving, book->name);
    struct book_in_force *there = at == NO_BOOK ? NULL : &resolving->books[at];
    if (there && there->book != book) {
        tell_both(resolving, "book-name-twice", book->place, there->book->place, NULL,
                  "two folders call their book %s", book->name);
        return NO_BOOK;
    }
    if (!check_edition(resolving, book, wanted->edition, wanted->place))
        return NO_BOOK;
    if (there && !is_same_name(there->edition, wanted->edition)) {
        tell_both(resolving, "editions-two", wanted->place, there->place, NULL,
                  "%s is adopted at two editions at once: %s here, %s there; only one can be in "
                  "force",
                  book->name, edition_words(wanted->edition), edition_words(there->edition));
        return NO_BOOK;
    }
    if (there)
        return at;
    struct book_in_force *books =
        arena_grow(resolving->arena, resolving->books, resolving->book_count,
                   &resolving->book_capacity, sizeof *books);
    if (!books)
        return NO_BOOK;
    resolving->books = books;
    books[resolving->book_count] = *wanted;
    return resolving->book_count++;
}

static bool add_link(struct resolving *resolving, size_t upper, size_t lower,
                     const struct adoption *adoption)
{
    struct link *links = arena_grow(resolving->arena, resolving->links, resolving->link_count,
                                    &resolving->link_capacity, sizeof *links);
    if (!links)
        return false;
    resolving->links = links;
    links[resolving->link_count++] = (struct link){upper, lower, adoption};
    return true;
}

bool has_begun(struct date from, struct date on)
{
    return date_compare(from, on) <= 0;
}

bool has_ended(struct date repealed, struct date on)
{
    return repealed.year != 0 && date_compare(repealed, on) <= 0;
}

/* Is this adoption the one of its book that counts on the day? The latest that has begun counts,
 * and it may have been repealed. */
static bool is_adoption_live(const struct book *book, const struct adoption *adoption,
                             struct date on)
{
    if (!has_begun(adoption->from, on) || has_ended(adoption->repealed, on))
        return false;
    for (size_t i = 0; i < book->adoption_count; i++) {
        const struct adoption *other = &book->adoptions[i];
        if (strcmp(other->book, adoption->book) == 0 && has_begun(other->from, on) &&
            date_compare(other->from, adoption->from) > 0)
            return false;
    }
    return true;
}

/* Follows one adoption. False: the stack cannot stand, told. */
static bool follow(struct resolving *resolving, size_t upper, const struct adoption *adoption)
{
    const struct book *adopter = resolving->books[upper].book;
    const struct book *book =
        resolving->find(resolving->context, adoption->book, adoption->place, resolving->problems);
    if (!book)
        return false;
    size_t lower = add_book(
        resolving, &(struct book_in_force){book, adoption->edition, adopter, adoption->place});
    return lower != NO_BOOK && add_link(resolving, upper, lower, adoption);
}

/* Each later book counts as adopting the earlier ones. */
static bool link_named(struct resolving *resolving, size_t number, const size_t *numbers, size_t at)
{
    bool is_good = true;
    for (size_t i = 0; i < at; i++)
        if (numbers[i] != NO_BOOK && numbers[i] != number)
            is_good = add_link(resolving, number, numbers[i], NULL) && is_good;
    return is_good;
}

/* Finds one book that the caller named, "nec@2023" or "marrow-bay". */
static size_t find_named(struct resolving *resolving, const char *name)
{
    const char *at = strrchr(name, '@');
    const char *bare = arena_copy(resolving->arena, name, at ? (size_t)(at - name) : strlen(name));
    const char *edition = at ? arena_copy(resolving->arena, at + 1, strlen(at + 1)) : NULL;
    if (!bare || (at && !edition))
        return NO_BOOK;
    struct place command_line = {0};
    const struct book *book =
        resolving->find(resolving->context, bare, command_line, resolving->problems);
    if (!book)
        return NO_BOOK;
    return add_book(resolving, &(struct book_in_force){book, edition, NULL, command_line});
}

bool gather_books(struct resolving *resolving, const char *const *names, size_t count)
{
    size_t *numbers = arena_take(resolving->arena, (count + 1) * sizeof *numbers);
    bool is_good = numbers != NULL;
    for (size_t i = 0; numbers && i < count; i++) {
        numbers[i] = find_named(resolving, names[i]);
        bool stands = numbers[i] != NO_BOOK && link_named(resolving, numbers[i], numbers, i);
        is_good = stands && is_good;
    }
    for (size_t upper = 0; upper < resolving->book_count; upper++) {
        const struct book *book = resolving->books[upper].book;
        for (size_t i = 0; i < book->adoption_count; i++)
            if (is_adoption_live(book, &book->adoptions[i], resolving->rulebook->on))
                is_good = follow(resolving, upper, &book->adoptions[i]) && is_good;
    }
    return is_good;
}

static bool add_dormant(struct resolving *resolving, const struct book *book)
{
    for (size_t i = 0; i < resolving->dormant_count; i++)
        if (resolving->dormant[i] == book)
            return true;
    const struct book **dormant =
        arena_grow(resolving->arena, resolving->dormant, resolving->dormant_count,
                   &resolving->dormant_capacity, sizeof *dormant);
    if (!dormant)
        return false;
    resolving->dormant = dormant;
    dormant[resolving->dormant_count++] = book;
    return true;
}

/* Adds what a book adopts on any day and is not in force on this one. */
static void add_adopted(struct resolving *resolving, const struct book *book)
{
    struct problems unheard = {.arena = resolving->arena};
    for (size_t i = 0; i < book->adoption_count; i++) {
        const struct adoption *adoption = &book->adoptions[i];
        if (book_number(resolving, adoption->book) != NO_BOOK)
            continue;
        const struct book *found =
            resolving->find(resolving->context, adoption->book, adoption->place, &unheard);
        if (found)
            add_dormant(resolving, found);
    }
}

void seek_dormant(struct resolving *resolving)
{
    if (resolving->is_dormant_sought)
        return;
    resolving->is_dormant_sought = true;
    for (size_t i = 0; i < resolving->book_count; i++)
        add_adopted(resolving, resolving->books[i].book);
    for (size_t i = 0; i < resolving->dormant_count; i++)
        add_adopted(resolving, resolving->dormant[i]);
}

const struct book *find_dormant(struct resolving *resolving, const char *name)
{
    seek_dormant(resolving);
    for (size_t i = 0; i < resolving->dormant_count; i++)
        if (strcmp(resolving->dormant[i]->name, name) == 0)
            return resolving->dormant[i];
    return NULL;
}
