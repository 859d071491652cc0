/* Books: book.yaml, values.yaml and a second book that stands on the first, divided by lines
 * "----". */
#include "intake.h"
#include "put.h"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    static const char *const files[] = {"first/book.yaml", "first/values.yaml", "second/book.yaml",
                                        "first/a.lua"};
    static const char *const names[] = {"first", "second"};
    char path[PUT_PATH];
    size_t at = 0, part_length;
    put_inner("first");
    put_inner("second");
    for (size_t i = 0; i < sizeof files / sizeof files[0]; i++) {
        const uint8_t *part = put_part(bytes, length, &at, &part_length);
        put_file(path, files[i], part, part_length);
    }
    const char *const directories[] = {put_folder(), FUZZ_DIR "/../books/stack", NULL};
    struct arena *arena = arena_new();
    struct problems problems = {.arena = arena};
    struct shelf *shelf = shelf_new(directories);
    struct rulebook *rulebook = NULL;
    const struct date day = {2026, 8, 3};
    MUST(shelf != NULL);
    bool is_resolved =
        rulebook_resolve(&rulebook, names, 2, day, shelf_find, shelf, arena, &problems);
    MUST(is_resolved == (rulebook != NULL));
    MUST(is_resolved || problems.count > 0);
    for (size_t i = 0; i < problems.count; i++)
        MUST(problems.items[i].message[0] != '\0' && problems.items[i].code != NULL);
    for (size_t i = 0; is_resolved && i < rulebook->rule_count; i++)
        MUST(rulebook->rules[i].id != NULL);
    shelf_free(shelf);
    arena_free(arena);
    return 0;
}
