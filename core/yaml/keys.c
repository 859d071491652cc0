#include "keys.h"
#include "text.h"
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

enum {
    KEY_BYTES = 1024, /* libyaml's own limit for a key without a question mark */
    SHOWN_BYTES = 60,
    FEW_PAIRS = 48, /* up to here comparing each with each costs less than sorting */
};

void key_check(struct reading *reading, const struct node *key, bool is_block)
{
    if (is_block || memchr(key->text, '\n', key->length))
        tell_mistake(reading, "key-not-text", key->place, "title: Clear width",
                     "a key is one line of text");
    else if (key->length == 0)
        tell_mistake(reading, "key-missing", key->place, "title: Clear width",
                     "there is no key before the colon");
    else if (key->length > KEY_BYTES)
        tell_mistake(reading, "key-too-long", key->place, NULL, "a key has at most %d bytes",
                     KEY_BYTES);
    else if (key->is_plain && strcmp(key->text, "<<") == 0)
        tell_mistake(reading, "merge-key", key->place, NULL,
                     "a merge key << is not taken; write the pairs out");
}

static bool is_same(const struct node *a, const struct node *b)
{
    return a->text && b->text && a->length == b->length && memcmp(a->text, b->text, a->length) == 0;
}

/* Some bytes of a key: those of the same text are the same, and few others are. */
static uint64_t mark_of(const struct node *key)
{
    uint64_t mark = key->length;
    if (key->text && key->length >= sizeof mark) {
        memcpy(&mark, key->text + key->length - sizeof mark, sizeof mark);
        return mark ^ (uint64_t)(unsigned char)key->text[0] << 56;
    }
    for (size_t i = 0; key->text && i < key->length; i++)
        mark = mark << 8 | (unsigned char)key->text[i];
    return mark;
}

/* For each pair the first key with the same text, or NULL where it is the first itself. */
static void find_few(const struct node **firsts, struct node *const *items, size_t pairs)
{
    uint64_t marks[FEW_PAIRS];
    for (size_t i = 0; i < pairs; i++) {
        marks[i] = mark_of(items[2 * i]);
        firsts[i] = NULL;
        for (size_t j = 0; j < i && !firsts[i]; j++)
            if (marks[j] == marks[i] && is_same(items[2 * j], items[2 * i]))
                firsts[i] = items[2 * j];
    }
}

struct seat {
    const struct node *key;
    size_t pair;
};

static int compare_seats(const void *left, const void *right)
{
    const struct seat *a = left, *b = right;
    int order = strcmp(a->key->text, b->key->text);
    if (order == 0)
        order = (a->pair > b->pair) - (a->pair < b->pair);
    return order;
}

/* The same by sorting: a hash would let a stranger choose keys that collide. */
static bool find_many(const struct node **firsts, struct node *const *items, size_t pairs,
                      struct arena *arena)
{
    struct seat *seats = arena_take(arena, pairs * sizeof *seats);
    if (!seats)
        return false;
    size_t count = 0;
    for (size_t i = 0; i < pairs; i++)
        if (items[2 * i]->text)
            seats[count++] = (struct seat){items[2 * i], i};
    qsort(seats, count, sizeof *seats, compare_seats);
    const struct node *first = NULL;
    for (size_t i = 0; i < count; i++) {
        if (first && is_same(first, seats[i].key))
            firsts[seats[i].pair] = first;
        else
            first = seats[i].key;
    }
    return true;
}

static void tell_repeated(struct reading *reading, const struct node *key, const struct node *first)
{
    size_t shown = text_cut(key->text, key->length, SHOWN_BYTES);
    struct problem *problem = tell_mistake(reading, "duplicate-key", key->place, NULL,
                                           "\"%.*s%s\" is given a second time here", (int)shown,
                                           key->text, shown < key->length ? "…" : "");
    complain_other(reading, problem, first->place);
    if (problem)
        reading->keys_repeated++;
}

size_t keys_keep_first(struct reading *reading, struct node **items, size_t count)
{
    size_t pairs = count / 2;
    const struct node *few[FEW_PAIRS];
    const struct node **firsts = few;
    if (pairs <= FEW_PAIRS) {
        find_few(few, items, pairs);
    } else {
        firsts = arena_take(reading->arena, pairs * sizeof *firsts);
        if (!firsts || !find_many(firsts, items, pairs, reading->arena)) {
            reading->is_short = true;
            return count;
        }
    }
    size_t kept = 0;
    for (size_t i = 0; i < pairs; i++) {
        if (firsts[i]) {
            tell_repeated(reading, items[2 * i], firsts[i]);
            continue;
        }
        items[kept++] = items[2 * i];
        items[kept++] = items[2 * i + 1];
    }
    return kept;
}
