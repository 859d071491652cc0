/* Designs: read, or problems say why; what is read can be walked through. */
#include "intake.h"
#include "put.h"

static void walk(const struct object *object)
{
    char amount[160];
    for (unsigned slot = 0; slot < object->kind->count; slot++)
        if (object_has(object, slot))
            amount_write(amount, sizeof amount, object_amount(object, slot), NULL, 12);
    MUST(object->path != NULL && object->place.file != NULL);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    static const char *const directories[] = {FUZZ_DIR "/../../samples/catalogue", NULL};
    const struct catalogues catalogues = {.directories = directories};
    struct arena *arena = arena_new();
    struct problems problems = {.arena = arena};
    struct design *design;
    char path[PUT_PATH];
    put_file(path, "design.yaml", bytes, length);
    bool is_read = design_read(&design, path, &catalogues, arena, &problems);
    size_t grave = 0;
    for (size_t i = 0; i < problems.count; i++) {
        MUST(problems.items[i].message[0] != '\0' && problems.items[i].place.file != NULL);
        grave += problems.items[i].weight != PROBLEM_NOTE;
    }
    MUST(is_read == (grave == 0) && is_read == (design != NULL));
    if (is_read)
        for (unsigned kind = 0; kind < KIND_COUNT; kind++)
            for (size_t i = 0; i < design->of_kind[kind].count; i++)
                walk(design->of_kind[kind].items[i]);
    arena_free(arena);
    return 0;
}
