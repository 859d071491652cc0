#include "file.h"

#include <string.h>

char *path_join(struct arena *arena, const char *directory, const char *name)
{
    size_t length = strlen(directory);
    bool ends_in_slash = length > 0 && directory[length - 1] == '/';

    return ARENA_JOIN(arena, directory, ends_in_slash ? "" : "/", name);
}

char *path_beside(struct arena *arena, const char *path, const char *name)
{
    const char *slash = strrchr(path, '/');
    int length = slash ? (int)(slash - path) + 1 : 0;

    return arena_format(arena, "%.*s%s", length, path, name);
}
