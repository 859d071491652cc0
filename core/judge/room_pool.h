/* judge, inside the room: memory for Lua, whose pieces are small and come and go by the thousand.
 */
#ifndef JUDGE_ROOM_POOL_H
#define JUDGE_ROOM_POOL_H
#include <stddef.h>

struct room_pool;

/* NULL: no memory. */
struct room_pool *room_pool_new(void);
/* Takes all small pieces with it; larger ones must have been given back. */
void room_pool_free(struct room_pool *pool);
/* realloc for who knows the old size: 0 of either says that there is no piece, or shall be none.
 * Small pieces stay the pool's until it is freed. NULL: no memory (the old piece stays), or
 * new_size was 0. */
void *room_pool_resize(struct room_pool *pool, void *piece, size_t old_size, size_t new_size);

#endif
