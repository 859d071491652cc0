#include "tree.h"
#include "build.h"
#include "file.h"
#include "lines.h"
#include "scan.h"
#include "text.h"
#include <string.h>

/* A pair without the space after its colon is one plain word to YAML. */
static void check_root(struct reading *reading)
{
    struct source *source = reading->source;
    const struct node *root = source->root;
    if (!root || root->type != NODE_SCALAR || !root->is_plain)
        return;
    if (root->length == 0)
        source->root = NULL; /* a lone "---" says nothing either */
    else if (reading->told == 0 && strchr(root->text, ':'))
        tell_mistake(reading, "space-missing", root->place, "title: Clear width",
                     "a space is missing after the colon");
}

/* A reading of the file at `path`, its source still without bytes. False: no memory, told. */
static bool begin_reading(struct reading *reading, const char *path, struct arena *arena,
                          struct problems *problems)
{
    *reading = (struct reading){.arena = arena, .problems = problems, .before = problems->count};
    reading->file = arena_copy(problems->arena, path, strlen(path));
    reading->source = arena_take(arena, sizeof *reading->source);
    if (reading->source)
        reading->source->path = arena_copy(arena, path, strlen(path));
    reading->is_short = !reading->file || !reading->source || !reading->source->path;
    if (reading->is_short)
        end_complaints(reading);
    return !reading->is_short;
}

/* Reads the bytes that the source now has. */
static bool read_source(struct source **out, struct reading *reading)
{
    if (scan_bytes(reading)) {
        build_tree(reading);
        check_root(reading);
    }
    end_complaints(reading);
    bool is_whole = !reading->is_full && !reading->is_short;
    if (is_whole && reading->told == reading->keys_repeated)
        *out = reading->source;
    return is_whole && reading->told == 0;
}

bool yaml_read_file(struct source **out, const char *path, struct arena *arena,
                    struct problems *problems)
{
    struct reading reading;
    char *bytes;
    size_t length;
    *out = NULL;
    if (!begin_reading(&reading, path, arena, problems) ||
        !file_read(&bytes, &length, reading.file, YAML_BYTES, arena, PROBLEM_INPUT, problems))
        return false;
    reading.source->bytes = bytes;
    reading.source->length = length;
    return read_source(out, &reading);
}

bool yaml_read(struct source **out, const char *path, const char *bytes, size_t length,
               struct arena *arena, struct problems *problems)
{
    struct reading reading;
    *out = NULL;
    if (!begin_reading(&reading, path, arena, problems))
        return false;
    /* Too many bytes are refused unseen, so they need no copy. */
    if (length <= YAML_BYTES)
        bytes = arena_copy(arena, bytes, length);
    reading.source->bytes = bytes;
    reading.source->length = length;
    reading.is_short = !bytes;
    if (reading.is_short)
        end_complaints(&reading);
    return !reading.is_short && read_source(out, &reading);
}

struct node *node_find(const struct node *mapping, const char *key)
{
    if (!mapping || mapping->type != NODE_MAPPING)
        return NULL;
    for (size_t i = 0; i < mapping->length; i++) {
        const char *text = mapping->items[2 * i]->text;
        if (text && text_is_same(text, key))
            return mapping->items[2 * i + 1];
    }
    return NULL;
}
