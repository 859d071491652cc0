#include "resolving.h"
#include <assert.h>
#include <string.h>

bool does_reach(const struct resolving *resolving, size_t upper, size_t lower)
{
    return resolving->reaches[upper * resolving->book_count + lower];
}

size_t find_winner(const struct resolving *resolving, const size_t *books, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        size_t below = 0;
        for (size_t j = 0; j < count; j++)
            below += j != i && does_reach(resolving, books[i], books[j]);
        if (below + 1 == count)
            return i;
    }
    return NO_BOOK;
}

void find_rivals(const struct resolving *resolving, const size_t *books, size_t count,
                 size_t *first, size_t *second)
{
    *first = *second = NO_BOOK;
    for (size_t i = 0; i < count; i++) {
        bool is_adopted = false;
        for (size_t j = 0; j < count; j++)
            is_adopted = is_adopted || (j != i && does_reach(resolving, books[j], books[i]));
        if (!is_adopted && *first == NO_BOOK)
            *first = i;
        else if (!is_adopted && *second == NO_BOOK)
            *second = i;
    }
}

/* Who reaches whom, whatever the order: Warshall's closure. The books are few. */
static bool close_links(struct resolving *resolving)
{
    size_t count = resolving->book_count;
    resolving->reaches = arena_take(resolving->arena, count * count * sizeof *resolving->reaches);
    bool *reaches = resolving->reaches;
    if (!reaches)
        return false;
    for (size_t i = 0; i < resolving->link_count; i++)
        reaches[resolving->links[i].upper * count + resolving->links[i].lower] = true;
    for (size_t by = 0; by < count; by++)
        for (size_t from = 0; from < count; from++)
            for (size_t to = 0; to < count && reaches[from * count + by]; to++)
                reaches[from * count + to] |= reaches[by * count + to];
    return true;
}

static struct place link_place(const struct link *link)
{
    assert(link != NULL); /* who asks has seen that books reach each other */
    return link->adoption ? link->adoption->place : (struct place){0};
}

/* The first link out of a book that leads back to it. */
static const struct link *find_way_out(const struct resolving *resolving, size_t book)
{
    for (size_t i = 0; i < resolving->link_count; i++) {
        const struct link *link = &resolving->links[i];
        if (link->upper == book &&
            (link->lower == book || does_reach(resolving, link->lower, book)))
            return link;
    }
    return NULL;
}

/* The link that closes the circle: into the book that `out` leaves. */
static const struct link *find_way_back(const struct resolving *resolving, const struct link *out)
{
    assert(out != NULL);
    for (size_t i = 0; i < resolving->link_count; i++) {
        const struct link *link = &resolving->links[i];
        if (link->lower == out->upper &&
            (link->upper == out->lower || does_reach(resolving, out->lower, link->upper)))
            return link;
    }
    return NULL;
}

static void tell_circle(struct resolving *resolving, const struct link *out,
                        const struct link *back)
{
    struct place place = link_place(back), other = link_place(out);
    const char *first = resolving->books[out->upper].book->name;
    const char *second = resolving->books[out->lower].book->name;
    if (out->upper == out->lower) {
        tell(resolving, "adopts-itself", other, NULL, "%s adopts itself", first);
        return;
    }
    if (!place.file) { /* the one that stands in a file is cited first */
        place = other;
        other = (struct place){0};
    }
    bool is_named = !out->adoption || !back->adoption;
    tell_both(resolving, "circle", place, other, NULL,
              "a circle: %s adopts %s, which adopts %s again, directly or not%s", first, second,
              first,
              is_named ? "; a book named later counts as adopting those named before it" : "");
}

/* Tells each circle once: at its first book, with a link out of it and one back into it. */
static bool find_circles(struct resolving *resolving)
{
    bool is_good = true;
    for (size_t i = 0; i < resolving->book_count; i++) {
        bool is_told = !does_reach(resolving, i, i);
        for (size_t j = 0; j < i && !is_told; j++)
            is_told = does_reach(resolving, i, j) && does_reach(resolving, j, i);
        if (is_told)
            continue;
        const struct link *out = find_way_out(resolving, i);
        tell_circle(resolving, out, find_way_back(resolving, out));
        is_good = false;
    }
    return is_good;
}

/* Of the books not placed yet whose lower ones all are, the first by name. */
static size_t next_lowest(const struct resolving *resolving, const bool *is_placed)
{
    size_t best = NO_BOOK;
    for (size_t i = 0; i < resolving->book_count; i++) {
        bool is_ready = !is_placed[i];
        for (size_t j = 0; j < resolving->book_count && is_ready; j++)
            is_ready = is_placed[j] || !does_reach(resolving, i, j);
        if (is_ready && (best == NO_BOOK || strcmp(resolving->books[i].book->name,
                                                   resolving->books[best].book->name) < 0))
            best = i;
    }
    return best;
}

/* Puts the books lowest first and numbers the links anew. */
static bool sort_books(struct resolving *resolving)
{
    size_t count = resolving->book_count;
    struct book_in_force *sorted = arena_take(resolving->arena, count * sizeof *sorted);
    size_t *new_number = arena_take(resolving->arena, count * sizeof *new_number);
    bool *is_placed = arena_take(resolving->arena, count * sizeof *is_placed);
    if (!sorted || !new_number || !is_placed)
        return false;
    for (size_t at = 0; at < count; at++) {
        size_t lowest = next_lowest(resolving, is_placed);
        is_placed[lowest] = true;
        sorted[at] = resolving->books[lowest];
        new_number[lowest] = at;
    }
    resolving->books = sorted;
    resolving->book_capacity = count;
    for (size_t i = 0; i < resolving->link_count; i++) {
        resolving->links[i].upper = new_number[resolving->links[i].upper];
        resolving->links[i].lower = new_number[resolving->links[i].lower];
    }
    return true;
}

bool order_books(struct resolving *resolving)
{
    if (resolving->book_count == 0)
        return true;
    return close_links(resolving) && find_circles(resolving) && sort_books(resolving) &&
           close_links(resolving);
}
