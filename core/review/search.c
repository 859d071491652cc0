#include "search.h"

#include <string.h>

static size_t count_of(const char *const *list)
{
    size_t count = 0;
    while (list != NULL && list[count] != NULL)
        count++;
    return count;
}

/* Both lists in copies, one behind the other. */
static const char *const *join(const char *const *first, const char *const *second,
                               struct arena *arena)
{
    size_t before = count_of(first), all = before + count_of(second);
    const char **list = arena_take(arena, (all + 1) * sizeof *list);
    for (size_t i = 0; list != NULL && i < all; i++) {
        const char *one = i < before ? first[i] : second[i - before];
        list[i] = arena_copy(arena, one, strlen(one));
        if (list[i] == NULL)
            return NULL;
    }
    return list;
}

const char *const *search_books(const char *const *given, struct arena *arena)
{
    static const char *const usual[] = {PLUMBRULE_INSTALLED_DIR "/rules",
                                        PLUMBRULE_SOURCE_DIR "/rules", NULL};
    return join(given, usual, arena);
}

const char *const *search_catalogues(const char *const *given, struct arena *arena)
{
    static const char *const usual[] = {
        PLUMBRULE_INSTALLED_DIR "/samples/catalogue", PLUMBRULE_INSTALLED_DIR "/samples",
        PLUMBRULE_SOURCE_DIR "/samples/catalogue", PLUMBRULE_SOURCE_DIR "/samples", NULL};
    return join(given, usual, arena);
}

bool search_is_same(const char *const *a, const char *const *b)
{
    size_t count = count_of(a);
    if (count != count_of(b))
        return false;
    for (size_t i = 0; i < count; i++)
        if (strcmp(a[i], b[i]) != 0)
            return false;
    return true;
}
