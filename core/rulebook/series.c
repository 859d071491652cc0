#include "series.h"
#include <stdlib.h>
#include <string.h>

static struct series *series_named(struct resolving *resolving, struct all_series *all,
                                   const char *name)
{
    struct series *series = index_find(&all->index, name);
    if (series)
        return series;
    struct series **items = arena_grow(resolving->arena, all->items, all->count, &all->capacity,
                                       sizeof(struct series *));
    series = arena_take(resolving->arena, sizeof *series);
    if (!items || !series || !index_add(&all->index, name, series))
        return NULL;
    series->name = name;
    all->items = items;
    items[all->count++] = series;
    return series;
}

/* The lowest book's declaration stands; another one is a mistake, and then nobody knows. */
static void tell_torn(struct resolving *resolving, struct series *series,
                      const struct declaration *again)
{
    series->is_torn = true;
    tell_both(resolving, "value-declared-twice", again->place, series->declared->declaration->place,
              NULL, "the value %s is declared by %s already; give a list of entries to amend it",
              series->name, resolving->books[series->declared_by].book->name);
}

static bool add_giver(struct resolving *resolving, struct all_series *all, size_t book,
                      const struct book_value *given)
{
    struct series *series = series_named(resolving, all, given->name);
    if (!series)
        return false;
    if (given->declaration && series->declared) {
        tell_torn(resolving, series, given->declaration);
        return true;
    }
    struct giver *givers = arena_grow(resolving->arena, series->givers, series->giver_count,
                                      &series->giver_capacity, sizeof *givers);
    if (!givers)
        return false;
    series->givers = givers;
    givers[series->giver_count++] = (struct giver){.book = book, .given = given};
    if (given->declaration) {
        series->declared = given;
        series->declared_by = book;
    }
    return true;
}

static int compare_series(const void *a, const void *b)
{
    return strcmp((*(struct series *const *)a)->name, (*(struct series *const *)b)->name);
}

bool collect_series(struct resolving *resolving, struct all_series *all)
{
    *all = (struct all_series){.index = {.arena = resolving->arena}};
    for (size_t i = 0; i < resolving->book_count; i++) {
        const struct book *book = resolving->books[i].book;
        for (size_t j = 0; j < book->value_count; j++)
            if (!add_giver(resolving, all, i, &book->values[j]))
                return false;
    }
    all->names = arena_take(resolving->arena, (all->count + 1) * sizeof *all->names);
    if (!all->names)
        return false;
    if (all->count > 0)
        qsort(all->items, all->count, sizeof(struct series *), compare_series);
    for (size_t i = 0; i < all->count; i++)
        if (all->items[i]->declared)
            all->names[all->name_count++] = all->items[i]->name;
    return true;
}

/* Is it declared by a book that is adopted on other days? */
static bool is_declared_dormant(struct resolving *resolving, const char *name)
{
    seek_dormant(resolving);
    for (size_t i = 0; i < resolving->dormant_count; i++)
        for (size_t j = 0; j < resolving->dormant[i]->value_count; j++) {
            const struct book_value *value = &resolving->dormant[i]->values[j];
            if (value->declaration && strcmp(value->name, name) == 0)
                return true;
        }
    return false;
}

/* "; there is: ridge_setback_large, ridge_setback_small" for ridge_setback, or "". Never NULL. */
static const char *list_beginning(struct resolving *resolving, const struct all_series *all,
                                  const char *name)
{
    const char *list = "";
    for (size_t i = 0; i < all->name_count && list; i++)
        if (strncmp(all->names[i], name, strlen(name)) == 0)
            list = arena_format(resolving->arena, "%s%s%s", list,
                                *list ? ", " : "; there is: ", all->names[i]);
    return list ? list : "";
}

/* How to declare it; a company's book seldom means to: its town was not named. */
static const char *example_of_declaring(struct resolving *resolving, const struct book *book,
                                        const char *name)
{
    return book->role == ROLE_COMPANY
               ? arena_format(resolving->arena, "--book marrow-bay --book %s", book->name)
               : arena_format(resolving->arena,
                              "%s: {kind: length, stricter: larger, says: what it is, entries: "
                              "[{from: 2023-01-01, is: 18 in, cite: \"Town Code 14-07\"}]}",
                              name);
}

void tell_undeclared(struct resolving *resolving, const struct all_series *all,
                     const struct series *series)
{
    for (size_t i = 0; i < resolving->book_count; i++)
        if (resolving->books[i].book->is_partial)
            return;
    if (is_declared_dormant(resolving, series->name))
        return;
    const char *hint = near_hint(resolving, series->name, all->names, all->name_count);
    if (!*hint)
        hint = list_beginning(resolving, all, series->name);
    for (size_t i = 0; i < series->giver_count; i++) {
        const struct book *book = resolving->books[series->givers[i].book].book;
        const char *town = !*hint && book->role == ROLE_COMPANY
                               ? "; the book that adopts its code is named before"
                               : "";
        tell(resolving, "value-unknown", series->givers[i].given->place,
             *hint ? NULL : example_of_declaring(resolving, book, series->name),
             "no book of the stack declares a value %s%s%s", series->name, hint, town);
    }
}
