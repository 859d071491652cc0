#include "room_pool.h"

#include <stdlib.h>
#include <string.h>

#include "arena.h"

#ifndef __has_feature
#define __has_feature(feature) 0 /* clang's question; gcc has a macro of its own */
#endif
#if defined __SANITIZE_ADDRESS__ || __has_feature(address_sanitizer)
enum { LARGEST = 0 }; /* every piece is malloc's, so that the sanitizer sees them one by one */
#else
enum { LARGEST = 256 };
#endif
enum { STEP = 16, SIZES = 256 / STEP };

struct free_piece {
    struct free_piece *next;
};

struct room_pool {
    struct arena *arena;             /* of the small ones */
    struct free_piece *given[SIZES]; /* back, by size */
};

struct room_pool *room_pool_new(void)
{
    struct room_pool *pool = calloc(1, sizeof *pool);
    if (pool == NULL || (pool->arena = arena_new()) == NULL) {
        free(pool);
        return NULL;
    }
    return pool;
}

void room_pool_free(struct room_pool *pool)
{
    if (pool == NULL)
        return;
    arena_free(pool->arena);
    free(pool);
}

/* Which list pieces of this size, from 1 to LARGEST, stand in. */
static size_t list_of(size_t size)
{
    return (size - 1) / STEP;
}

static void *take(struct room_pool *pool, size_t size)
{
    if (size > LARGEST)
        return malloc(size);
    size_t at = list_of(size);
    struct free_piece *piece = pool->given[at];
    if (piece == NULL)
        return arena_take(pool->arena, (at + 1) * STEP);
    pool->given[at] = piece->next;
    __builtin_prefetch(piece->next); /* the next one taken: it lay idle for long */
    return piece;
}

static void give_back(struct room_pool *pool, void *piece, size_t size)
{
    if (size > LARGEST) {
        free(piece);
        return;
    }
    struct free_piece *given = piece;
    given->next = pool->given[list_of(size)];
    pool->given[list_of(size)] = given;
}

void *room_pool_resize(struct room_pool *pool, void *piece, size_t old_size, size_t new_size)
{
    if (new_size == 0) {
        if (old_size != 0)
            give_back(pool, piece, old_size);
        return NULL;
    }
    if (old_size == 0)
        return take(pool, new_size);
    if (old_size > LARGEST && new_size > LARGEST)
        return realloc(piece, new_size);
    if (old_size <= LARGEST && new_size <= LARGEST && list_of(old_size) == list_of(new_size))
        return piece;
    void *moved = take(pool, new_size);
    if (moved == NULL)
        return NULL;
    memcpy(moved, piece, old_size < new_size ? old_size : new_size);
    give_back(pool, piece, old_size);
    return moved;
}
