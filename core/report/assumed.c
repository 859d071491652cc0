#include "assumed.h"

#include <string.h>

static bool is_guess(const struct input *input)
{
    return !input->is_assumed && input->source != NULL && strcmp(input->source, "assumed") == 0;
}

static bool is_same_text(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

/* Is the same assumed of another thing of the kind? */
static bool is_like(const struct input *a, const struct input *b)
{
    return is_same_text(a->kind, b->kind) && is_same_text(a->fact, b->fact) &&
           (a->kind != NULL || is_same_text(a->thing, b->thing)) &&
           is_same_text(a->text, b->text) && is_same_text(a->assumed_why, b->assumed_why) &&
           is_guess(a) == is_guess(b);
}

struct collection {
    struct assumption *items;
    size_t count, capacity;
    struct arena *arena;
};

static bool add(struct collection *collection, const struct input *input)
{
    for (size_t i = 0; i < collection->count; i++)
        if (is_like(collection->items[i].first, input)) {
            collection->items[i].count++;
            return true;
        }
    struct assumption *items = arena_grow(collection->arena, collection->items, collection->count,
                                          &collection->capacity, sizeof *items);
    if (items == NULL)
        return false;
    collection->items = items;
    items[collection->count++] = (struct assumption){input, 1, is_guess(input)};
    return true;
}

bool assumed_collect(struct assumption **out, size_t *count, const struct input *const *inputs,
                     size_t input_count, struct arena *arena)
{
    struct collection collection = {.arena = arena};
    for (size_t i = 0; i < input_count; i++)
        if ((inputs[i]->is_assumed || is_guess(inputs[i])) && !add(&collection, inputs[i]))
            return false;
    *out = collection.items;
    *count = collection.count;
    return true;
}

const char *assumption_text(const struct assumption *assumption, struct arena *arena)
{
    const struct input *first = assumption->first;
    const char *is = first->text != NULL ? first->text : "none";
    const char *why = assumption->is_guess         ? "so the design itself says"
                      : first->assumed_why != NULL ? first->assumed_why
                                                   : "the design does not say";
    const char *name = input_names(first, assumption->count, arena);
    return name != NULL ? ARENA_JOIN(arena, name, " is ", is, ": ", why) : NULL;
}
