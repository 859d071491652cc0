#include "index.h"

#include <assert.h>
#include <stdint.h>
#include <string.h>

struct index_entry {
    const char *name; /* NULL: free */
    void *thing;
    uint64_t hash;
};

/* Eight bytes at a time: names are paths and whole sentences. */
static uint64_t hash_of(const char *name)
{
    size_t length = strlen(name);
    uint64_t hash = index_stir(0, length), eight = 0;
    for (; length >= sizeof eight; length -= sizeof eight, name += sizeof eight) {
        memcpy(&eight, name, sizeof eight);
        hash = index_stir(hash, eight);
    }
    eight = 0;
    for (size_t i = 0; i < length; i++)
        eight = eight << 8 | (unsigned char)name[i];
    return index_stir(hash, eight);
}

/* The entry with that name, or the free one where it belongs. The capacity is a power of two and
 * never full, so the walk ends. */
static struct index_entry *entry_for(struct index_entry *entries, size_t capacity, const char *name,
                                     uint64_t hash)
{
    size_t at = (size_t)hash & (capacity - 1);

    while (entries[at].name && (entries[at].hash != hash || strcmp(entries[at].name, name) != 0))
        at = (at + 1) & (capacity - 1);
    return &entries[at];
}

void *index_find(const struct index *index, const char *name)
{
    if (index->count == 0)
        return NULL;
    return entry_for(index->entries, index->capacity, name, hash_of(name))->thing;
}

static bool widen(struct index *index)
{
    size_t capacity = index->capacity == 0 ? 16 : index->capacity * 2;

    if (capacity > SIZE_MAX / 4 / sizeof *index->entries)
        return false;
    struct index_entry *entries = arena_take(index->arena, capacity * sizeof *entries);
    if (!entries)
        return false;
    for (size_t i = 0; i < index->capacity; i++) {
        const struct index_entry *old = &index->entries[i];
        if (old->name)
            *entry_for(entries, capacity, old->name, old->hash) = *old;
    }
    index->entries = entries;
    index->capacity = capacity;
    return true;
}

bool index_add(struct index *index, const char *name, void *thing)
{
    if (index->count >= index->capacity / 4 * 3 && !widen(index))
        return false;

    uint64_t hash = hash_of(name);
    struct index_entry *entry = entry_for(index->entries, index->capacity, name, hash);
    assert(!entry->name);
    *entry = (struct index_entry){.name = name, .thing = thing, .hash = hash};
    index->count++;
    return true;
}
