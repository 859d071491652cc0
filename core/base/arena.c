#include "arena.h"

#include <assert.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { PIECE = 16, FIRST_BLOCK = 16 * 1024, LARGEST_BLOCK = 1024 * 1024 };
enum { CLEANED = 1024 }; /* at once: far fewer calls than pieces, and no more than is soon used */

/* So that what is done nearly always saves no registers for it. */
#define RARELY __attribute__((noinline))

struct block {
    struct block *next;
    size_t size, used;
    size_t clean; /* from `used` to here all bytes are zero */
    _Alignas(PIECE) unsigned char bytes[];
};

struct arena {
    struct block *first, *current;
    size_t next_size;
    bool is_short;
};

struct arena *arena_new(void)
{
    struct arena *arena = calloc(1, sizeof *arena);

    if (arena)
        arena->next_size = FIRST_BLOCK;
    return arena;
}

void arena_free(struct arena *arena)
{
    if (!arena)
        return;
    for (struct block *block = arena->first; block;) {
        struct block *next = block->next;
        free(block);
        block = next;
    }
    free(arena);
}

void arena_clear(struct arena *arena)
{
    for (struct block *block = arena->first; block; block = block->next)
        block->used = block->clean = 0;
    arena->current = arena->first;
    arena->is_short = false;
}

/* A new block behind the current one, large enough for `size`. */
static struct block *add_block(struct arena *arena, size_t size)
{
    size_t wanted = size > arena->next_size ? size : arena->next_size;
    struct block *block = malloc(sizeof *block + wanted);

    if (!block)
        return NULL;
    *block = (struct block){.size = wanted};
    if (arena->current) {
        block->next = arena->current->next;
        arena->current->next = block;
    } else {
        block->next = arena->first;
        arena->first = block;
    }
    arena->current = block;
    if (arena->next_size < LARGEST_BLOCK)
        arena->next_size *= 2;
    return block;
}

/* Up to what is used, and somewhat beyond. */
static RARELY void clean(struct block *block)
{
    size_t clean = block->used + CLEANED < block->size ? block->used + CLEANED : block->size;

    memset(block->bytes + block->clean, 0, clean - block->clean);
    block->clean = clean;
}

/* The next bytes of a block that has room for them, all zero. */
static inline void *use(struct block *block, size_t size)
{
    unsigned char *bytes = block->bytes + block->used;

    block->used += size;
    if (block->used > block->clean)
        clean(block);
    return bytes;
}

/* From another block than the current one, which has no room for it. */
static RARELY void *take_elsewhere(struct arena *arena, size_t size)
{
    struct block *block = arena->current;
    while (block && block->size - block->used < size) {
        block = block->next; /* kept warm by a clear: empty */
        if (block)
            arena->current = block;
    }
    if (!block)
        block = add_block(arena, size);
    if (!block) {
        arena->is_short = true;
        return NULL;
    }
    return use(block, size);
}

void *arena_take(struct arena *arena, size_t size)
{
    struct block *block = arena->current;

    if (size > SIZE_MAX / 2) { /* would wrap when rounded up? */
        arena->is_short = true;
        return NULL;
    }
    size = size == 0 ? PIECE : (size + PIECE - 1) / PIECE * PIECE;
    return block && size <= block->size - block->used ? use(block, size)
                                                      : take_elsewhere(arena, size);
}

char *arena_copy(struct arena *arena, const char *text, size_t length)
{
    char *copy = length < SIZE_MAX ? arena_take(arena, length + 1) : NULL;

    if (copy && length > 0)
        memcpy(copy, text, length);
    return copy;
}

char *arena_format(struct arena *arena, const char *format, ...)
{
    va_list arguments;

    va_start(arguments, format);
    char *text = arena_format_list(arena, format, arguments);
    va_end(arguments);
    return text;
}

/* Takes the first `size` bytes of what the current block has left, as they are. */
static char *keep_written(struct block *block, size_t size)
{
    char *text = (char *)block->bytes + block->used;

    block->used += (size + PIECE - 1) / PIECE * PIECE;
    if (block->clean < block->used)
        block->clean = block->used;
    return text;
}

char *arena_format_list(struct arena *arena, const char *format, va_list arguments)
{
    struct block *block = arena->current;
    size_t room = block ? (block->size - block->used) / PIECE * PIECE : 0;
    va_list again;

    /* Written where it will stand, if it fits there; else only measured. */
    va_copy(again, arguments);
    int length =
        vsnprintf(room > 0 ? (char *)block->bytes + block->used : NULL, room, format, again);
    va_end(again);
    assert(length >= 0);
    if (length < 0)
        return NULL;
    if ((size_t)length < room)
        return keep_written(block, (size_t)length + 1);
    if (block != NULL)
        block->clean = block->used; /* written over */

    char *text = arena_take(arena, (size_t)length + 1);
    if (text)
        vsnprintf(text, (size_t)length + 1, format, arguments);
    return text;
}

char *arena_join(struct arena *arena, const char *const *texts, size_t count)
{
    enum { FEW = 16 };
    size_t lengths[FEW], length = 0, at = 0;

    for (size_t i = 0; i < count; i++) {
        size_t part = strlen(texts[i]);
        length += part;
        if (i < FEW)
            lengths[i] = part;
    }
    char *joined = arena_take(arena, length + 1);
    for (size_t i = 0; joined && i < count; i++) {
        size_t part = i < FEW ? lengths[i] : strlen(texts[i]);
        memcpy(joined + at, texts[i], part);
        at += part;
    }
    return joined;
}

bool arena_is_short(const struct arena *arena)
{
    return arena->is_short;
}

/* Makes the piece that was taken last larger where it stands, if its block has room. */
static bool stretch(struct arena *arena, const void *piece, size_t size, size_t wanted)
{
    struct block *block = arena->current;
    size_t now = (size + PIECE - 1) / PIECE * PIECE, then = (wanted + PIECE - 1) / PIECE * PIECE;

    if (size == 0 || block == NULL ||
        (const unsigned char *)piece + now != block->bytes + block->used ||
        then - now > block->size - block->used)
        return false;
    use(block, then - now);
    return true;
}

void *arena_grow(struct arena *arena, void *items, size_t count, size_t *capacity, size_t size)
{
    enum { LARGE = 128 }; /* of large items most lists have only one or two */

    if (count < *capacity)
        return items;

    size_t first = size < LARGE ? 8 : 2;
    size_t wanted = *capacity < first / 2 ? first : *capacity * 2;
    if (wanted <= count)
        wanted = count + 1;
    if (wanted < *capacity || wanted > SIZE_MAX / 2 / size) {
        arena->is_short = true;
        return NULL;
    }
    if (stretch(arena, items, *capacity * size, wanted * size)) {
        *capacity = wanted;
        return items;
    }
    void *larger = arena_take(arena, wanted * size);
    if (!larger)
        return NULL;
    if (count > 0)
        memcpy(larger, items, count * size);
    *capacity = wanted;
    return larger;
}
