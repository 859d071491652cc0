/* Books when memory runs out: each allocation fails once, and nothing breaks or is made up. */
#include <stdlib.h>

struct supply {
    size_t left; /* allocations that still succeed */
};

static struct supply *supply(void);

static void *scarce_malloc(size_t size)
{
    return supply()->left == 0 ? NULL : (supply()->left--, malloc(size));
}

static void *scarce_calloc(size_t count, size_t size)
{
    return supply()->left == 0 ? NULL : (supply()->left--, calloc(count, size));
}

/* The arena of this program alone takes from the scarce supply. */
#define malloc scarce_malloc
#define calloc scarce_calloc
#include "../../core/base/arena.c"
#undef malloc
#undef calloc
#include "books_trial.h"
#include "shelf_folders.h"

static struct supply *supply(void)
{
    static struct supply one = {.left = (size_t)-1};
    return &one;
}

/* Both arenas lose `offset` bytes first, so that their blocks end at other places, and then get
 * `blocks` more blocks. True: memory ran short. */
static bool try_with(size_t offset, size_t blocks, const char *folder, const char *name)
{
    struct arena *arena = arena_new();
    const char *directories[] = {folder, NULL}, *names[] = {name};
    struct shelf *shelf = shelf_new(directories);
    struct problems problems = {.arena = arena};
    struct rulebook *rulebook = NULL;
    if (!arena || !shelf || !arena_take(arena, offset) || !arena_take(shelf->arena, offset))
        abort();
    supply()->left = blocks;
    bool is_good = rulebook_resolve(&rulebook, names, 1, day("2024-06-01"), shelf_find, shelf,
                                    arena, &problems);
    bool is_short = arena_is_short(arena) || arena_is_short(shelf->arena);
    supply()->left = (size_t)-1;
    CHECK(is_good == (rulebook != NULL), "a rulebook or none");
    CHECK(is_good != is_short, "short of memory there is none, else there is one");
    CHECK(is_good || problems.count + problems.dropped > 0, "want of memory is told");
    CHECK(!is_good || (problems.count == 0 && rulebook->rule_count == 6), "it is whole");
    shelf_free(shelf);
    arena_free(arena);
    return is_short;
}

int main(void)
{
    size_t short_times = 0;
    for (size_t offset = 16; offset < 16 * 1024; offset += 112) {
        size_t blocks = 0;
        while (try_with(offset, blocks, TESTS_DIR "/books/stack", "pell-harbor"))
            blocks++;
        short_times += blocks;
    }
    CHECK(short_times > 200, "it ran short in many places");
    fprintf(stderr, "short of memory %zu times\n", short_times);
    return checks_end();
}
