#include "kept.h"

#include <stdint.h>
#include <string.h>

#include "index.h"

struct answer {
    const struct calculator *calculator;
    const struct object *about;
    uint64_t hash;
    const struct amount *inputs;
    /* Asked where steps are written down? An answer without them would tell too little there. */
    bool has_steps;
    const struct step *steps;
    size_t step_count;
    struct readings *readings; /* of a method */
    struct amount results[];   /* and behind them the inputs */
};

/* Most words asked with are the same few: zones, shapes, editions. */
enum { WORDS = 24 };

struct kept {
    struct arena *arena;
    struct answer **answers; /* an open table, at most half full; NULL: a free place */
    size_t count, capacity, most;
    const char *words[WORDS];
    size_t word_count;
};

/* A house is asked a few thousand questions; large designs some thirty about each thing. */
enum { FEWEST_ANSWERS = 256, MOST_ANSWERS = 8192, MOST_PER_THING = 64 };

void kept_free(struct kept *kept)
{
    if (kept != NULL)
        arena_free(kept->arena);
}

static uint64_t bits_of(double number)
{
    uint64_t bits;
    memcpy(&bits, &number, sizeof bits);
    return bits;
}

/* Of a word two letters are enough: few are asked with the same numbers, and they are compared. */
static uint64_t hash_of(const struct calculator *calculator, const struct object *about,
                        const struct amount *inputs)
{
    uint64_t hash = index_stir((uint64_t)(uintptr_t)calculator, (uint64_t)(uintptr_t)about);
    for (size_t i = 0; i < calculator->input_count; i++) {
        const struct amount *input = &inputs[i];
        if (input->type == AMOUNT_QUANTITY || input->type == AMOUNT_NUMBER)
            hash = index_stir(hash, bits_of(input->quantity.value));
        else if (input->type == AMOUNT_YESNO)
            hash = index_stir(hash, input->yes);
        else if (input->type == AMOUNT_WORD && input->word[0] != '\0')
            hash = index_stir(hash, (uint64_t)(unsigned char)input->word[0] << 8 |
                                        (unsigned char)input->word[1]);
    }
    return hash;
}

static bool is_written_same(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

/* The same to the last bit, and shown in the same unit; where steps tell the inputs, also as the
 * same text. */
static bool is_same(const struct amount *a, const struct amount *b, bool has_steps)
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
               (!has_steps || is_written_same(a->quantity.written, b->quantity.written)) &&
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

static bool is_asked(const struct answer *answer, const struct answer *now)
{
    if (answer->hash != now->hash || answer->calculator != now->calculator ||
        answer->about != now->about || answer->has_steps != now->has_steps)
        return false;
    for (size_t i = 0; i < now->calculator->input_count; i++)
        if (!is_same(&answer->inputs[i], &now->inputs[i], now->has_steps))
            return false;
    return true;
}

static const struct answer *find(const struct kept *kept, const struct answer *now)
{
    for (size_t at = (size_t)now->hash;; at++) {
        const struct answer *answer = kept->answers[at & (kept->capacity - 1)];
        if (answer == NULL || is_asked(answer, now))
            return answer;
    }
}

bool kept_tell(struct amount *results, const struct calculator *calculator,
               const struct object *about, const struct amount *inputs, struct working *working)
{
    if (working->kept == NULL)
        return false;
    struct answer now = {.calculator = calculator,
                         .about = about,
                         .hash = hash_of(calculator, about, inputs),
                         .inputs = inputs,
                         .has_steps = working->keeps_steps};
    const struct answer *before = find(working->kept, &now);
    if (before == NULL)
        return false;
    memcpy(results, before->results, calculator->result_count * sizeof *results);
    if (before->readings != NULL)
        working_read_again(working, before->readings);
    for (size_t i = 0; i < before->step_count; i++)
        working_tell(working, before->steps[i]);
    return true;
}

static struct answer **free_place(struct answer **answers, size_t capacity, uint64_t hash)
{
    size_t at = (size_t)hash & (capacity - 1);
    while (answers[at] != NULL)
        at = (at + 1) & (capacity - 1);
    return &answers[at];
}

/* Room for one answer more? False: no memory, or enough is kept. */
static bool widen(struct kept *kept)
{
    if (2 * (kept->count + 1) <= kept->capacity)
        return true;
    size_t capacity = kept->capacity > 0 ? 2 * kept->capacity : FEWEST_ANSWERS;
    if (capacity / 2 > kept->most)
        return false;
    struct answer **answers = arena_take(kept->arena, capacity * sizeof *answers);
    if (answers == NULL)
        return false;
    for (size_t i = 0; i < kept->capacity; i++)
        if (kept->answers[i] != NULL)
            *free_place(answers, capacity, kept->answers[i]->hash) = kept->answers[i];
    kept->answers = answers;
    kept->capacity = capacity;
    return true;
}

static struct kept *kept_new(const struct design *design)
{
    size_t things = design != NULL ? design->thing_count : 0;
    struct arena *arena = arena_new();
    struct kept *kept = arena != NULL ? arena_take(arena, sizeof *kept) : NULL;
    if (kept == NULL) {
        arena_free(arena);
        return NULL;
    }
    kept->arena = arena;
    kept->most = MOST_ANSWERS;
    while (kept->most < MOST_PER_THING * things)
        kept->most *= 2;
    if (widen(kept))
        return kept;
    arena_free(arena);
    return NULL;
}

/* NULL: no memory. */
static const char *keep_word(struct kept *kept, const char *word)
{
    for (size_t i = 0; i < kept->word_count; i++)
        if (kept->words[i][0] == word[0] && strcmp(kept->words[i], word) == 0)
            return kept->words[i];
    word = arena_copy(kept->arena, word, strlen(word));
    if (word != NULL && kept->word_count < WORDS)
        kept->words[kept->word_count++] = word;
    return word;
}

/* With words of its own: those of the asker may not last. False: no memory. */
static bool copy(struct amount *copies, const struct amount *amounts, size_t count,
                 bool with_written, struct kept *kept)
{
    for (size_t i = 0; i < count; i++) {
        bool is_word = amounts[i].type == AMOUNT_WORD;
        const char *text = is_word ? amounts[i].word : amounts[i].quantity.written;
        copies[i] = amounts[i];
        copies[i].quantity.written = NULL;
        if (!is_word && (!with_written || text == NULL))
            continue;
        text = is_word ? keep_word(kept, text) : arena_copy(kept->arena, text, strlen(text));
        if (text == NULL)
            return false;
        if (is_word)
            copies[i].word = text;
        else
            copies[i].quantity.written = text;
    }
    return true;
}

/* Their texts stay where they are, in the arena of a working that lasts. NULL: no memory. */
static const struct step *copy_steps(const struct working *working, size_t first,
                                     struct arena *arena)
{
    size_t count = working->step_count - first;
    struct step *steps = arena_take(arena, (count + 1) * sizeof *steps);
    if (steps != NULL && count > 0)
        memcpy(steps, working->steps + first, count * sizeof *steps);
    return steps;
}

static bool is_to_keep(const struct calculator *calculator, const struct amount *results,
                       const struct working *working)
{
    for (size_t i = 0; i < calculator->result_count; i++)
        if (results[i].type == AMOUNT_QUANTITY && results[i].quantity.written != NULL)
            return false;
    return working->is_lasting || !working->keeps_steps;
}

struct readings *kept_add(const struct calculator *calculator, const struct object *about,
                          const struct amount *inputs, const struct amount *results,
                          size_t first_step, struct working *working)
{
    if (!is_to_keep(calculator, results, working))
        return NULL;
    if (working->kept == NULL)
        working->kept = kept_new(working->design);
    struct kept *kept = working->kept;
    if (kept == NULL || !widen(kept))
        return NULL;
    size_t result_count = calculator->result_count, input_count = calculator->input_count;
    struct answer *answer = arena_take(kept->arena, sizeof *answer + (result_count + input_count) *
                                                                         sizeof answer->results[0]);
    if (answer == NULL)
        return NULL;
    answer->calculator = calculator;
    answer->about = about;
    answer->hash = hash_of(calculator, about, inputs);
    answer->has_steps = working->keeps_steps;
    answer->inputs = answer->results + result_count;
    if (!copy(answer->results, results, result_count, false, kept) ||
        !copy(answer->results + result_count, inputs, input_count, answer->has_steps, kept))
        return NULL;
    if (about != NULL && (answer->readings = working_trail_keep(working, kept->arena)) == NULL)
        return NULL;
    if (answer->has_steps) {
        answer->steps = copy_steps(working, first_step, kept->arena);
        answer->step_count = working->step_count - first_step;
        if (answer->steps == NULL)
            return NULL;
    }
    *free_place(kept->answers, kept->capacity, answer->hash) = answer;
    kept->count++;
    return answer->readings;
}
