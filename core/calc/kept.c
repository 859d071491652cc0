#include "kept.h"

#include <stdint.h>
#include <string.h>

struct answer {
    const struct calculator *calculator; /* NULL: a free place */
    const struct object *about;
    uint64_t hash;
    const struct amount *inputs, *results;
};

struct kept {
    struct arena *arena;
    struct answer *answers; /* an open table, at most half full */
    size_t count, capacity;
};

enum { FEWEST_ANSWERS = 256, MOST_ANSWERS = 8192 };

void kept_free(struct kept *kept)
{
    if (kept != NULL)
        arena_free(kept->arena);
}

static uint64_t stir(uint64_t hash, uint64_t with)
{
    hash = (hash ^ with) * 0x9E3779B97F4A7C15U; /* 2^64 over the golden ratio: spreads bits */
    return hash ^ (hash >> 32);
}

static uint64_t bits_of(double number)
{
    uint64_t bits;
    memcpy(&bits, &number, sizeof bits);
    return bits;
}

static uint64_t hash_of(const struct calculator *calculator, const struct object *about,
                        const struct amount *inputs)
{
    uint64_t hash = stir((uint64_t)(uintptr_t)calculator, (uint64_t)(uintptr_t)about);
    for (size_t i = 0; i < calculator->input_count; i++) {
        const struct amount *input = &inputs[i];
        hash = stir(hash, (uint64_t)input->type);
        if (input->type == AMOUNT_QUANTITY || input->type == AMOUNT_NUMBER)
            hash = stir(hash, bits_of(input->quantity.value));
        else if (input->type == AMOUNT_YESNO)
            hash = stir(hash, input->yes);
        else if (input->type == AMOUNT_WORD)
            for (const char *at = input->word; *at != '\0'; at++)
                hash = stir(hash, (uint64_t)(unsigned char)*at);
    }
    return hash;
}

/* The same to the last bit, and shown in the same unit. */
static bool is_same(const struct amount *a, const struct amount *b)
{
    if (a->type != b->type)
        return false;
    switch (a->type) {
    case AMOUNT_NONE:
        return true;
    case AMOUNT_QUANTITY:
    case AMOUNT_NUMBER:
        return bits_of(a->quantity.value) == bits_of(b->quantity.value) &&
               a->quantity.unit == b->quantity.unit &&
               dimension_is_same(a->quantity.dimension, b->quantity.dimension);
    case AMOUNT_YESNO:
        return a->yes == b->yes;
    case AMOUNT_WORD:
        return strcmp(a->word, b->word) == 0;
    case AMOUNT_DATE:
        return false; /* no calculator takes one often */
    }
    return false;
}

static bool is_asked(const struct answer *answer, const struct calculator *calculator,
                     const struct object *about, const struct amount *inputs, uint64_t hash)
{
    if (answer->hash != hash || answer->calculator != calculator || answer->about != about)
        return false;
    for (size_t i = 0; i < calculator->input_count; i++)
        if (!is_same(&answer->inputs[i], &inputs[i]))
            return false;
    return true;
}

const struct amount *kept_find(const struct kept *kept, const struct calculator *calculator,
                               const struct object *about, const struct amount *inputs)
{
    if (kept == NULL)
        return NULL;
    uint64_t hash = hash_of(calculator, about, inputs);
    for (size_t at = (size_t)hash;; at++) {
        const struct answer *answer = &kept->answers[at & (kept->capacity - 1)];
        if (answer->calculator == NULL)
            return NULL;
        if (is_asked(answer, calculator, about, inputs, hash))
            return answer->results;
    }
}

static struct answer *free_place(struct answer *answers, size_t capacity, uint64_t hash)
{
    size_t at = (size_t)hash & (capacity - 1);
    while (answers[at].calculator != NULL)
        at = (at + 1) & (capacity - 1);
    return &answers[at];
}

/* Room for one answer more? False: no memory, or enough is kept. */
static bool widen(struct kept *kept)
{
    if (2 * (kept->count + 1) <= kept->capacity)
        return true;
    size_t capacity = kept->capacity > 0 ? 2 * kept->capacity : FEWEST_ANSWERS;
    if (capacity > 2 * MOST_ANSWERS)
        return false;
    struct answer *answers = arena_take(kept->arena, capacity * sizeof *answers);
    if (answers == NULL)
        return false;
    for (size_t i = 0; i < kept->capacity; i++)
        if (kept->answers[i].calculator != NULL)
            *free_place(answers, capacity, kept->answers[i].hash) = kept->answers[i];
    kept->answers = answers;
    kept->capacity = capacity;
    return true;
}

static struct kept *kept_new(void)
{
    struct arena *arena = arena_new();
    struct kept *kept = arena != NULL ? arena_take(arena, sizeof *kept) : NULL;
    if (kept == NULL) {
        arena_free(arena);
        return NULL;
    }
    kept->arena = arena;
    if (widen(kept))
        return kept;
    arena_free(arena);
    return NULL;
}

/* With words of its own: those of the asker may not last. NULL: no memory. */
static struct amount *copy(const struct amount *amounts, size_t count, struct arena *arena)
{
    struct amount *copies = arena_take(arena, (count + 1) * sizeof *copies);
    if (copies == NULL)
        return NULL;
    for (size_t i = 0; i < count; i++) {
        copies[i] = amounts[i];
        copies[i].quantity.written = NULL;
        if (amounts[i].type != AMOUNT_WORD)
            continue;
        copies[i].word = arena_copy(arena, amounts[i].word, strlen(amounts[i].word));
        if (copies[i].word == NULL)
            return NULL;
    }
    return copies;
}

void kept_add(struct kept **kept, const struct calculator *calculator, const struct object *about,
              const struct amount *inputs, const struct amount *results)
{
    for (size_t i = 0; i < calculator->result_count; i++)
        if (results[i].type == AMOUNT_QUANTITY && results[i].quantity.written != NULL)
            return;
    if (*kept == NULL)
        *kept = kept_new();
    if (*kept == NULL || !widen(*kept))
        return;
    const struct amount *asked = copy(inputs, calculator->input_count, (*kept)->arena);
    const struct amount *told = copy(results, calculator->result_count, (*kept)->arena);
    if (asked == NULL || told == NULL)
        return;
    uint64_t hash = hash_of(calculator, about, inputs);
    *free_place((*kept)->answers, (*kept)->capacity, hash) =
        (struct answer){calculator, about, hash, asked, told};
    (*kept)->count++;
}
