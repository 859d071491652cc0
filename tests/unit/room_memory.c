/* The judge when memory runs out: every allocation of a new judge and of a review fails once, those
 * of Lua among them. Nothing breaks, nothing leaks, nothing passes that would not. */
#include "room_pool.h"
#include "room_trial.h"

struct supply {
    size_t left; /* allocations that still succeed */
};

static struct supply *supply(void)
{
    static struct supply one = {.left = (size_t)-1};
    return &one;
}

static bool may_take(void)
{
    return supply()->left > 0 && (supply()->left == (size_t)-1 || supply()->left-- > 0);
}

/* The linker puts these before the library's own (--wrap). */
void *__real_malloc(size_t size);
void *__real_calloc(size_t count, size_t size);
void *__real_realloc(void *block, size_t size);
void *__wrap_malloc(size_t size);
void *__wrap_calloc(size_t count, size_t size);
void *__wrap_realloc(void *block, size_t size);

void *__wrap_malloc(size_t size)
{
    return may_take() ? __real_malloc(size) : NULL;
}

void *__wrap_calloc(size_t count, size_t size)
{
    return may_take() ? __real_calloc(count, size) : NULL;
}

void *__wrap_realloc(void *block, size_t size)
{
    return may_take() ? __real_realloc(block, size) : NULL;
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

/* Fails from the n-th allocation on (or that one alone). True: it was reached. */
static bool fail_at(struct room_trial *trial, size_t n, bool only_once, const char *path,
                    enum outcome usual, size_t *unfinished)
{
    supply()->left = n;
    trial->judge = judge_new(NULL);
    if (only_once && supply()->left == 0)
        supply()->left = (size_t)-1;
    bool is_reached = trial->judge == NULL;
    if (trial->judge != NULL) {
        arena_free(trial->page); /* cold, so that its blocks are asked for, too */
        size_t left = supply()->left;
        supply()->left = (size_t)-1;
        trial->page = arena_new();
        supply()->left = left;
        room_review(trial, path);
        is_reached = supply()->left == 0;
    }
    supply()->left = (size_t)-1;
    if (trial->judge != NULL) {
        const struct finding *finding = finding_of(trial, "room/attack", 0);
        CHECK(!trial->is_done || finding != NULL, "a review that is done has its findings");
        bool is_broken = trial->problems.count + trial->problems.dropped > 0;
        if (trial->is_done && finding != NULL && !is_broken)
            CHECK(finding->outcome == usual, "what was not broken says what it always says");
        CHECK(!trial->is_done || finding == NULL || finding->outcome != OUTCOME_PASS ||
                  usual == OUTCOME_PASS,
              "nothing passes that would not");
        *unfinished += !trial->is_done || is_broken;
        /* With memory again it says what it always says. */
        room_review(trial, path);
        finding = finding_of(trial, "room/attack", 0);
        CHECK(trial->is_done && finding != NULL && finding->outcome == usual &&
                  trial->problems.count == 0,
              "with memory again all is as usual");
    }
    judge_free(trial->judge);
    trial->judge = NULL;
    return is_reached;
}

static void try_rule(const char *name, enum outcome usual)
{
    struct room_trial trial = room_open(NULL);
    const char *path = arena_format(trial.arena, ROOM_DIR "attacks/%s.lua", name);
    size_t unfinished = 0, n = 0;
    judge_free(trial.judge);
    trial.judge = NULL;
    while (n < 100000 && fail_at(&trial, n, false, path, usual, &unfinished))
        n++;
    fprintf(stderr, "%s: %zu allocations failed, %zu reviews broke off\n", name, n, unfinished);
    CHECK(n > 500 && n < 100000 && unfinished > 50, "memory ran short in many places");
    room_close(&trial);
}

/* A review that fails before its first rule leaves nothing behind it, however often it is tried. */
static void test_fails_often(void)
{
    struct room_trial trial = room_open(NULL);
    const char *path = ROOM_DIR "attacks/address-of-table.lua";
    size_t lacking = 0;
    /* Warm, so that it is Lua that lacks memory. */
    CHECK(arena_take(trial.page, (size_t)1 << 20) != NULL, "a page");
    for (int turn = 0; turn < 500; turn++) {
        supply()->left = 0;
        room_review(&trial, path);
        supply()->left = (size_t)-1;
        lacking += !trial.is_done;
    }
    CHECK(lacking == 500, "without memory no review is done");
    room_review(&trial, path);
    CHECK(trial.is_done && witness_passes(&trial), "with memory again all is as usual");
    room_close(&trial);
}

int main(void)
{
    test_fails_often();
    try_rule("missing-nested", OUTCOME_OPEN);
    try_rule("address-of-table", OUTCOME_PASS);
    try_rule("group-recorded-late", OUTCOME_FAIL);
    try_rule("missing-in-one-option", OUTCOME_PASS);
    return checks_end();
}
