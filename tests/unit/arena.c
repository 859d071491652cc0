/* Memory that is cleaned some way ahead: whatever was written, grown, cleared or did not fit before
 * it, each new piece is empty, and no piece changes another. */
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>
#include "arena.h"
#include "check.h"
#include "memory_limit.h"

enum { PIECES = 400, PIECE = 16 };

/* What was taken, all of it written over with the piece's own letter. */
struct piece {
    unsigned char *bytes;
    size_t size;
    unsigned char letter;
    bool is_list; /* may grow */
};

struct heap {
    struct arena *arena;
    struct piece pieces[PIECES];
    size_t count;
    unsigned long long state;
    size_t dirty, changed;
};

static size_t random_below(struct heap *heap, size_t limit)
{
    heap->state = heap->state * 6364136223846793005ULL + 1442695040888963407ULL;
    return (size_t)(heap->state >> 33) % limit;
}

/* Small ones for the most part, some past what is cleaned at once, some past a block. */
static size_t random_size(struct heap *heap)
{
    static const size_t limits[] = {40, 40, 40, 200, 200, 3000, 20000, 70000};
    return random_below(heap, limits[random_below(heap, sizeof limits / sizeof limits[0])]);
}

static bool holds_only(const unsigned char *bytes, size_t size, unsigned char letter)
{
    for (size_t i = 0; i < size; i++)
        if (bytes[i] != letter)
            return false;
    return true;
}

static void keep(struct heap *heap, void *bytes, size_t size, bool is_list)
{
    unsigned char letter = (unsigned char)(1 + heap->count % 250);
    memset(bytes, letter, size);
    heap->pieces[heap->count++] = (struct piece){bytes, size, letter, is_list};
}

static void take_one(struct heap *heap)
{
    size_t size = random_size(heap), all = size == 0 ? PIECE : (size + PIECE - 1) / PIECE * PIECE;
    unsigned char *bytes = arena_take(heap->arena, size);
    heap->dirty += !holds_only(bytes, all, 0);
    keep(heap, bytes, size, true);
}

static void copy_one(struct heap *heap)
{
    char text[200];
    size_t size = random_below(heap, sizeof text);
    memset(text, 'c', sizeof text);
    char *copy = arena_copy(heap->arena, text, size);
    heap->dirty += copy[size] != '\0' || memcmp(copy, text, size) != 0;
    keep(heap, copy, size + 1, false);
}

/* Texts of all lengths, so that many end where their block does, and many do not fit. */
static void format_one(struct heap *heap)
{
    size_t size = random_size(heap);
    char *text = arena_format(heap->arena, "%*s", (int)size, "");
    heap->dirty += strlen(text) != size || !holds_only((unsigned char *)text, size, ' ');
    keep(heap, text, size + 1, false);
}

static void grow_one(struct heap *heap)
{
    /* The last one grows where it stands, if it may; others move. */
    size_t at = random_below(heap, 3) > 0 ? heap->count - 1 : random_below(heap, heap->count);
    struct piece *piece = &heap->pieces[at];
    if (!piece->is_list || piece->size > 100000)
        return;
    size_t capacity = piece->size;
    unsigned char *bytes = arena_grow(heap->arena, piece->bytes, piece->size, &capacity, 1);
    heap->dirty += !holds_only(bytes + piece->size, capacity - piece->size, 0);
    heap->changed += !holds_only(bytes, piece->size, piece->letter);
    memset(bytes, piece->letter, capacity);
    piece->bytes = bytes;
    piece->size = capacity;
}

static void check_pieces(struct heap *heap)
{
    for (size_t i = 0; i < heap->count; i++) {
        const struct piece *piece = &heap->pieces[i];
        heap->changed += !holds_only(piece->bytes, piece->size, piece->letter);
    }
}

/* Fills the arena by chance. */
static void fill(struct heap *heap, size_t pieces)
{
    while (heap->count < pieces) {
        switch (heap->count == 0 ? 0 : random_below(heap, 6)) {
        case 0:
        case 1:
            take_one(heap);
            break;
        case 2:
            copy_one(heap);
            break;
        case 3:
            format_one(heap);
            break;
        default:
            grow_one(heap);
        }
    }
    check_pieces(heap);
}

static void test_random(void)
{
    struct heap heap = {.state = 3};
    for (size_t i = 0; i < 12; i++) {
        heap.arena = arena_new();
        for (size_t turn = 0; turn < 5; turn++) { /* each over what the last one wrote */
            heap.count = 0;
            fill(&heap, 1 + random_below(&heap, PIECES));
            arena_clear(heap.arena);
        }
        arena_free(heap.arena);
    }
    CHECK(heap.dirty == 0, "each new piece is empty");
    CHECK(heap.changed == 0, "no piece changes another");
}

/* Every length around the end of a block: the text that just fits, and the first that does not. */
static void test_end_of_block(void)
{
    enum { BLOCK = 16 * 1024, AROUND = 40 };
    size_t dirty = 0;
    for (size_t left = 0; left < 3 * PIECE; left += PIECE) {
        for (size_t length = 0; length < AROUND + left; length++) {
            struct arena *arena = arena_new();
            unsigned char *first = arena_take(arena, BLOCK - left);
            memset(first, 1, BLOCK - left);
            char *text = arena_format(arena, "%*s", (int)length, "");
            dirty += strlen(text) != length || !holds_only(first, BLOCK - left, 1);
            dirty += !holds_only(arena_take(arena, 5000), 5008, 0);
            dirty += strlen(text) != length;
            arena_free(arena);
        }
    }
    CHECK(dirty == 0, "a text that ends with its block, and one that does not fit in");
}

/* A text too long for its block and for all memory has written over what the block has left: the
 * next piece stands there. Ends with 0 if that is empty. */
static int take_after_failed_text(void)
{
    struct rlimit limit = {64 << 20, 64 << 20};
    struct arena *arena = arena_new();
    size_t capacity = 0;
    char *first = arena_take(arena, 100);
    if (first == NULL || setrlimit(RLIMIT_AS, &limit) != 0)
        return 10;
    if (arena_format(arena, "%*s", 200 << 20, "") != NULL || !arena_is_short(arena))
        return 11;
    unsigned char *bytes = arena_take(arena, 50), *list = arena_grow(arena, NULL, 0, &capacity, 8);
    if (bytes == NULL || list == NULL || (char *)bytes != first + 112)
        return 12;
    if (!holds_only(bytes, 64, 0) || !holds_only(list, capacity * 8, 0))
        return 13;
    if (arena_format(arena, "%*s", 200 << 20, "") != NULL)
        return 14;
    size_t before = capacity;
    if (arena_grow(arena, list, capacity, &capacity, 8) != list ||
        !holds_only(list, capacity * 8, 0))
        return 15;
    if (arena_format(arena, "%*s", 200 << 20, "") != NULL || before == capacity)
        return 16;
    arena_clear(arena);
    return (char *)arena_take(arena, 8000) == first && holds_only((unsigned char *)first, 8000, 0)
               ? 0
               : 17;
}

static void test_failed_text(void)
{
    pid_t child = fork();
    if (child == 0)
        _exit(take_after_failed_text());
    int status = 0;
    CHECK(child > 0 && waitpid(child, &status, 0) == child, "the child ran");
    CHECK_NEAR(WIFEXITED(status) ? WEXITSTATUS(status) : 99, 0, 0,
               "what a text without memory wrote over is cleaned");
}

int main(int count, char **words)
{
    test_random();
    test_end_of_block();
    if (CAN_LIMIT_MEMORY && (count < 2 || strcmp(words[1], "--no-limit") != 0))
        test_failed_text();
    return checks_end();
}
