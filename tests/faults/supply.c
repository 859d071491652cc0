#include "supply.h"

#include <errno.h>
#include <geos_c.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "room_pool.h"

struct supply *supply(void)
{
    static struct supply one;
    return &one;
}

void supply_reset(void)
{
    memset(supply(), 0, sizeof *supply());
}

static bool may_take(void)
{
    struct supply *now = supply();
    if (now->is_sheltered)
        return true;
    now->allocations++;
    bool fails = now->fails_at > 0 && (now->allocations == now->fails_at ||
                                       (now->fails_on && now->allocations > now->fails_at));
    if (fails)
        errno = ENOMEM;
    return !fails;
}

#ifdef SUPPLY_WRAPS /* our own calls only: sanitizers have an allocator themselves */
void *__real_malloc(size_t size);
void *__real_calloc(size_t count, size_t size);
void *__real_realloc(void *block, size_t size);
void *__wrap_malloc(size_t size);
void *__wrap_calloc(size_t count, size_t size);
void *__wrap_realloc(void *block, size_t size);
#define TAKE(name) __wrap_##name
#define REAL(name) __real_##name
#else /* those of all libraries below, too */
void *__libc_malloc(size_t size);
void *__libc_calloc(size_t count, size_t size);
void *__libc_realloc(void *block, size_t size);
#define TAKE(name) name
#define REAL(name) __libc_##name
#endif

/* Names are hidden unless said: libraries would not find these. */
#pragma GCC visibility push(default)

void *TAKE(malloc)(size_t size)
{
    return may_take() ? REAL(malloc)(size) : NULL;
}

void *TAKE(calloc)(size_t count, size_t size)
{
    return may_take() ? REAL(calloc)(count, size) : NULL;
}

void *TAKE(realloc)(void *block, size_t size)
{
    return may_take() ? REAL(realloc)(block, size) : NULL;
}
#pragma GCC visibility pop

/* It throws an exception past C where memory fails in it, which nobody in C can catch; the room of
 * calculators asks for as much just before. What GEOS does after it catches all of its own. */
GEOSContextHandle_t __real_GEOS_init_r(void);
GEOSContextHandle_t __wrap_GEOS_init_r(void);

GEOSContextHandle_t __wrap_GEOS_init_r(void)
{
    supply()->is_sheltered = true;
    GEOSContextHandle_t handle = __real_GEOS_init_r();
    supply()->is_sheltered = false;
    return handle;
}

/* Lua's own asking, which mostly ends at a pool of small pieces. */
void *__real_room_pool_resize(struct room_pool *pool, void *piece, size_t old_size,
                              size_t new_size);
void *__wrap_room_pool_resize(struct room_pool *pool, void *piece, size_t old_size,
                              size_t new_size);

void *__wrap_room_pool_resize(struct room_pool *pool, void *piece, size_t old_size, size_t new_size)
{
    if (new_size > 0 && !may_take())
        return NULL;
    return __real_room_pool_resize(pool, piece, old_size, new_size);
}

ssize_t __real_read(int file, void *bytes, size_t length);
ssize_t __real_write(int file, const void *bytes, size_t length);
ssize_t __wrap_read(int file, void *bytes, size_t length);
ssize_t __wrap_write(int file, const void *bytes, size_t length);

/* How many bytes the call may take; 0: it fails. */
static size_t allowed(size_t *calls, size_t fails_at, size_t most, size_t length)
{
    struct supply *now = supply();
    ++*calls;
    if (fails_at > 0 && *calls >= fails_at) {
        errno = now->error;
        return 0;
    }
    if (now->is_interrupted && *calls % 2 == 1) {
        errno = EINTR;
        return 0;
    }
    return most > 0 && length > most ? most : length;
}

ssize_t __wrap_read(int file, void *bytes, size_t length)
{
    struct supply *now = supply();
    void (*before)(void) = now->before_read;
    now->before_read = NULL;
    if (before != NULL)
        before();
    size_t most = allowed(&now->reads, now->read_fails_at, now->read_most, length);
    return most > 0 || length == 0 ? __real_read(file, bytes, most) : -1;
}

ssize_t __wrap_write(int file, const void *bytes, size_t length)
{
    struct supply *now = supply();
    size_t most = allowed(&now->writes, now->write_fails_at, now->write_most, length);
    return most > 0 || length == 0 ? __real_write(file, bytes, most) : -1;
}
