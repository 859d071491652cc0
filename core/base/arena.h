/* base: memory, text, places and problems. Knows no word of the trade. */
#ifndef BASE_ARENA_H
#define BASE_ARENA_H
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>

/* Memory that is handed out in pieces and freed as a whole. */
struct arena;

/* An empty arena; NULL: no memory. */
struct arena *arena_new(void);
void arena_free(struct arena *arena);
/* Takes everything back but keeps the blocks warm for the next user. */
void arena_clear(struct arena *arena);

/* Zeroed memory for any type. NULL: no memory, and the arena stays marked as short. */
void *arena_take(struct arena *arena, size_t size);
/* A copy that ends in NUL. NULL: no memory. */
char *arena_copy(struct arena *arena, const char *text, size_t length);
char *arena_format(struct arena *arena, const char *format, ...)
    __attribute__((format(printf, 2, 3)));
char *arena_format_list(struct arena *arena, const char *format, va_list arguments)
    __attribute__((format(printf, 2, 0)));
/* The texts one behind the other, as a text that ends in NUL. NULL: no memory. */
char *arena_join(struct arena *arena, const char *const *texts, size_t count);
#define ARENA_JOIN(arena, ...)                                                                     \
    arena_join(arena, (const char *const[]){__VA_ARGS__},                                          \
               sizeof((const char *const[]){__VA_ARGS__}) / sizeof(const char *))
/* Has any take failed since the arena was new or cleared? */
bool arena_is_short(const struct arena *arena);

/* Room for one more item in a growing array: returns the array (moved when it had to grow) with at
 * least `count + 1` items, new ones zeroed; NULL: no memory, the old array still stands. */
void *arena_grow(struct arena *arena, void *items, size_t count, size_t *capacity, size_t size);

#endif
