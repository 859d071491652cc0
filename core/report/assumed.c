#include "assumed.h"

#include <string.h>

static bool is_guess(const struct input *input)
{
    return !input->is_assumed && input->source != NULL && strcmp(input->source, "assumed") == 0;
}

/* Bytes of the kind in "module low-1-1: status". */
static size_t kind_length(const struct input *input)
{
    return strcspn(input->fact, " :");
}

/* ": status" in it. */
static const char *fact_part(const struct input *input)
{
    const char *part = input->fact, *next;
    while ((next = strstr(part + 1, ": ")) != NULL)
        part = next;
    return part;
}

static bool is_same_text(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

/* Is the same assumed of another thing of the kind? */
static bool is_like(const struct input *a, const struct input *b)
{
    size_t kind = kind_length(a);
    return kind == kind_length(b) && strncmp(a->fact, b->fact, kind) == 0 &&
           strcmp(fact_part(a), fact_part(b)) == 0 && is_same_text(a->text, b->text) &&
           is_same_text(a->assumed_why, b->assumed_why) && is_guess(a) == is_guess(b);
}

struct collection {
    struct assumption *items;
    size_t count, capacity;
    struct index seen;
    struct arena *arena;
};

static bool add(struct collection *collection, const struct input *input)
{
    if (index_find(&collection->seen, input->fact) != NULL)
        return true;
    struct input *copy = arena_take(collection->arena, sizeof *copy);
    if (copy == NULL)
        return false;
    *copy = *input;
    if (!index_add(&collection->seen, copy->fact, copy))
        return false;
    for (size_t i = 0; i < collection->count; i++)
        if (is_like(collection->items[i].first, copy)) {
            collection->items[i].count++;
            return true;
        }
    struct assumption *items = arena_grow(collection->arena, collection->items, collection->count,
                                          &collection->capacity, sizeof *items);
    if (items == NULL)
        return false;
    collection->items = items;
    items[collection->count++] = (struct assumption){copy, 1, is_guess(copy)};
    return true;
}

bool assumed_collect(struct assumption **out, size_t *count, struct finding *const *findings,
                     size_t finding_count, struct arena *arena)
{
    struct collection collection = {.seen = {.arena = arena}, .arena = arena};
    for (size_t i = 0; i < finding_count; i++)
        for (size_t k = 0; k < findings[i]->input_count; k++) {
            const struct input *input = findings[i]->inputs[k];
            if ((input->is_assumed || is_guess(input)) && !add(&collection, input))
                return false;
        }
    *out = collection.items;
    *count = collection.count;
    return true;
}

const char *assumption_text(const struct assumption *assumption, struct arena *arena)
{
    const struct input *first = assumption->first;
    const char *part = fact_part(first), *is = first->text != NULL ? first->text : "none";
    const char *why = assumption->is_guess         ? "so the design itself says"
                      : first->assumed_why != NULL ? first->assumed_why
                                                   : "the design does not say";
    if (assumption->count == 1)
        return arena_format(arena, "%s is %s: %s", first->fact, is, why);
    return arena_format(arena, "%.*s and %zu more%s is %s: %s", (int)(part - first->fact),
                        first->fact, assumption->count - 1, part, is, why);
}
