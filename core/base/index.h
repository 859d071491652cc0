/* Names to things: a hash index whose order is never seen by anyone. */
#ifndef BASE_INDEX_H
#define BASE_INDEX_H
#include "arena.h"

struct index {
    struct arena *arena;
    struct index_entry *entries;
    size_t count, capacity;
};

/* The thing under a name, or NULL. */
void *index_find(const struct index *index, const char *name);
/* Adds a thing under a name that is not there yet; both must outlive the index. False: no memory.
 */
bool index_add(struct index *index, const char *name, void *thing);

#endif
