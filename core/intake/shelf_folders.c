#include "shelf_folders.h"
#include <stdlib.h>
#include <string.h>
#include "file.h"

bool is_book_folder(struct arena *arena, const char *directory)
{
    const char *path = path_join(arena, directory, "book.yaml");
    return path && file_is_there(path);
}

const char *folder_name(const char *path)
{
    const char *slash = strrchr(path, '/');
    return slash ? slash + 1 : path;
}

struct folders {
    char **paths;
    size_t count, capacity;
};

static bool add_folder(struct folders *folders, char *path, struct arena *arena)
{
    for (size_t i = 0; i < folders->count; i++)
        if (strcmp(folder_name(folders->paths[i]), folder_name(path)) == 0)
            return true; /* the first found stands */
    char **paths = arena_grow(arena, folders->paths, folders->count, &folders->capacity,
                              sizeof *folders->paths);
    if (!paths)
        return false;
    folders->paths = paths;
    paths[folders->count++] = path;
    return true;
}

/* The books right in one directory, and what else may hold books. A directory that cannot be read
 * holds none. */
static bool add_folders_of(struct folders *folders, const char *directory, bool looks_deeper,
                           struct arena *arena)
{
    char **names;
    size_t count;
    if (!file_list(&names, &count, directory, NULL, arena))
        return !arena_is_short(arena);
    for (size_t i = 0; i < count; i++) {
        char *path = path_join(arena, directory, names[i]);
        if (!path || (is_book_folder(arena, path) && !add_folder(folders, path, arena)))
            return false;
    }
    for (size_t i = 0; i < count && looks_deeper; i++) {
        char *path = path_join(arena, directory, names[i]);
        if (!path)
            return false;
        if (!is_book_folder(arena, path) && !add_folders_of(folders, path, false, arena))
            return false;
    }
    return true;
}

static int compare_folders(const void *a, const void *b)
{
    return strcmp(folder_name(*(char *const *)a), folder_name(*(char *const *)b));
}

bool shelf_list(char ***names, size_t *count, const struct shelf *shelf, struct arena *arena)
{
    struct folders folders = {0};
    *names = NULL;
    *count = 0;
    for (size_t i = 0; shelf->directories && shelf->directories[i]; i++)
        if (!add_folders_of(&folders, shelf->directories[i], true, arena))
            return false;
    if (folders.count > 0)
        qsort(folders.paths, folders.count, sizeof *folders.paths, compare_folders);
    *names = folders.paths;
    *count = folders.count;
    return true;
}

const char *find_folder(const struct shelf *shelf, const char *name)
{
    struct arena *arena = shelf->arena;
    for (size_t i = 0; shelf->directories && shelf->directories[i]; i++) {
        char **parts;
        size_t count;
        const char *directory = shelf->directories[i];
        const char *path = path_join(arena, directory, name);
        if (path && is_book_folder(arena, path))
            return path;
        if (!file_list(&parts, &count, directory, NULL, arena))
            continue;
        for (size_t j = 0; j < count; j++) {
            const char *part = path_join(arena, directory, parts[j]);
            path = part && !is_book_folder(arena, part) ? path_join(arena, part, name) : NULL;
            if (path && is_book_folder(arena, path))
                return path;
        }
    }
    return NULL;
}
