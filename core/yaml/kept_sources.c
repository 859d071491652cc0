#include "kept_sources.h"

#include <stdlib.h>
#include <string.h>

#include "file.h"

/* A town's installers share a few catalogues; more than these are read as if nothing were kept. */
enum { KEPT_MOST = 32 };

struct kept_source {
    struct arena *arena; /* of the tree */
    struct source *source;
    char *bytes; /* as they were read */
    size_t length;
    bool is_outdated;
};

struct kept_sources {
    struct kept_source items[KEPT_MOST];
    size_t count;
};

struct kept_sources *kept_sources_new(void)
{
    return calloc(1, sizeof(struct kept_sources));
}

void kept_sources_free(struct kept_sources *kept)
{
    for (size_t i = 0; kept != NULL && i < kept->count; i++)
        arena_free(kept->items[i].arena);
    free(kept);
}

void kept_sources_tidy(struct kept_sources *kept)
{
    size_t stay = 0;
    for (size_t i = 0; i < kept->count; i++)
        if (kept->items[i].is_outdated)
            arena_free(kept->items[i].arena);
        else
            kept->items[stay++] = kept->items[i];
    kept->count = stay;
}

/* The kept tree of these bytes, or NULL; one of other bytes under that path is outdated. */
static struct source *find(struct kept_sources *kept, const char *path, const char *bytes,
                           size_t length)
{
    for (size_t i = 0; i < kept->count; i++) {
        struct kept_source *item = &kept->items[i];
        if (item->is_outdated || strcmp(item->source->path, path) != 0)
            continue;
        if (item->length == length && memcmp(item->bytes, bytes, length) == 0)
            return item->source;
        item->is_outdated = true;
    }
    return NULL;
}

/* Reads into an arena that lasts until a tidying: the next one, if anything is wrong with the file.
 */
static bool read_anew(struct source **out, struct kept_source *item, const char *path,
                      struct problems *problems)
{
    bool is_right = yaml_read(out, path, item->bytes, item->length, item->arena, problems);
    item->bytes = arena_copy(item->arena, item->bytes, item->length);
    item->source = *out;
    item->is_outdated = !is_right || item->bytes == NULL || *out == NULL;
    return is_right;
}

bool yaml_read_kept(struct source **out, struct kept_sources *kept, const char *path,
                    struct arena *arena, struct problems *problems)
{
    struct kept_source item = {0};
    *out = NULL;
    if (!file_read(&item.bytes, &item.length, path, YAML_BYTES, arena, PROBLEM_INPUT, problems))
        return false;
    if ((*out = find(kept, path, item.bytes, item.length)) != NULL)
        return true;
    item.arena = kept->count < KEPT_MOST ? arena_new() : NULL;
    if (item.arena == NULL)
        return yaml_read(out, path, item.bytes, item.length, arena, problems);
    bool is_right = read_anew(out, &item, path, problems);
    kept->items[kept->count++] = item;
    return is_right;
}
