#include "deciding.h"

#include <string.h>

#include "file.h"

enum { FILE_MOST = 16 * 1024 * 1024 };

struct files {
    struct deciding_file *items;
    size_t count, capacity;
    struct index seen;
    struct arena *arena;
};

/* The next file, or NULL: it is there already, or there is no memory (*is_short). */
static struct deciding_file *add(struct files *files, const char *path, const char *role,
                                 bool *is_short)
{
    if (index_find(&files->seen, path) != NULL)
        return NULL;
    struct deciding_file *items =
        arena_grow(files->arena, files->items, files->count, &files->capacity, sizeof *items);
    if (items == NULL || !index_add(&files->seen, path, files)) {
        *is_short = true;
        return NULL;
    }
    files->items = items;
    items[files->count] = (struct deciding_file){.path = path, .role = role};
    return &items[files->count++];
}

static bool add_file(struct files *files, const char *path, const char *role)
{
    bool is_short = false;
    struct deciding_file *file = add(files, path, role, &is_short);
    if (file == NULL)
        return !is_short;
    struct arena *arena = arena_new(); /* the bytes are not needed for longer */
    struct problems problems = {.arena = arena};
    char *bytes;
    size_t length;
    if (arena == NULL)
        return false;
    file->is_read = file_read(&bytes, &length, path, FILE_MOST, arena, PROBLEM_INPUT, &problems);
    if (file->is_read)
        digest_write(file->digest, bytes, length);
    arena_free(arena);
    return true;
}

static bool add_catalogues(struct files *files, const struct design *design)
{
    for (size_t id = 0; id < KIND_COUNT; id++)
        for (size_t i = 0; i < design->of_kind[id].count; i++) {
            const char *path = design->of_kind[id].items[i]->place.file;
            if (path != NULL && !add_file(files, path, "catalogue"))
                return false;
        }
    return true;
}

/* What was read for the review, and so decided, whatever has become of the file since. */
static bool add_text(struct files *files, const struct book_text *text, const char *role)
{
    bool is_short = false;
    struct deciding_file *file = add(files, text->path, role, &is_short);
    if (file == NULL)
        return !is_short;
    digest_write(file->digest, text->bytes, text->length);
    file->is_read = true;
    return true;
}

static bool add_books(struct files *files, const struct rulebook *rulebook)
{
    for (size_t i = 0; i < rulebook->book_count; i++)
        for (size_t k = 0; k < rulebook->books[i].book->text_count; k++)
            if (!add_text(files, &rulebook->books[i].book->texts[k], "book"))
                return false;
    return true;
}

static bool add_rules(struct files *files, const struct rulebook *rulebook,
                      const struct findings *findings)
{
    for (size_t i = 0; findings != NULL && i < findings->rule_text_count; i++)
        if (findings->rule_texts[i]->path != NULL &&
            !add_text(files, findings->rule_texts[i], "rule"))
            return false;
    for (size_t i = 0; i < rulebook->rule_count; i++) /* those that were not run, or not read */
        if (rulebook->rules[i].holds && rulebook->rules[i].path != NULL &&
            !add_file(files, rulebook->rules[i].path, "rule"))
            return false;
    return true;
}

bool deciding_collect(struct deciding_file **out, size_t *count, const struct report *report,
                      struct arena *arena)
{
    struct files files = {.arena = arena, .seen = {.arena = arena}};
    bool is_whole =
        add_file(&files, report->design_path, "design") &&
        (report->design == NULL || add_catalogues(&files, report->design)) &&
        (report->rulebook == NULL || (add_books(&files, report->rulebook) &&
                                      add_rules(&files, report->rulebook, report->findings)));
    *out = files.items;
    *count = files.count;
    return is_whole;
}
