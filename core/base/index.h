/* Names to things: a hash index whose order is never seen by anyone. */
#ifndef BASE_INDEX_H
#define BASE_INDEX_H
#include <stdint.h>
#include "arena.h"

/* One number more into a hash. */
static inline uint64_t index_stir(uint64_t hash, uint64_t with)
{
    hash = (hash ^ with) * 0x9E3779B97F4A7C15U; /* 2^64 over the golden ratio: spreads bits */
    return hash ^ (hash >> 32);
}

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
