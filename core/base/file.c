#include "file.h"

#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* What a file system call complained of, in words. */
static const char *reason(char *buffer, size_t size, int error)
{
    return strerror_r(error, buffer, size) == 0 ? buffer : "unknown reason";
}

/* Why a file cannot be opened. Always false. */
static bool refuse_open(int error, const char *path, enum problem_weight weight,
                        struct problems *problems)
{
    struct place place = {.file = path};
    char text[128];

    if (error == ENOENT || error == ENOTDIR)
        problems_add(problems, weight, "file-missing", place, "there is no such file");
    else
        problems_add(problems, weight, "file-unreadable", place, "the file cannot be read: %s",
                     reason(text, sizeof text, error));
    return false;
}

static bool refuse_large(const char *path, size_t limit, enum problem_weight weight,
                         struct problems *problems)
{
    struct place place = {.file = path};

    problems_add(problems, weight, "file-large", place,
                 "the file is larger than %zu KiB, the most that is read", limit >> 10);
    return false;
}

/* Is it a regular file of a size we read? */
static bool accept_kind(int file, const char *path, size_t limit, struct stat *about,
                        enum problem_weight weight, struct problems *problems)
{
    struct place place = {.file = path};

    if (fstat(file, about) != 0)
        return refuse_open(errno, path, weight, problems);
    if (S_ISDIR(about->st_mode)) {
        problems_add(problems, weight, "file-directory", place,
                     "this is a directory; a file is needed");
        return false;
    }
    if (!S_ISREG(about->st_mode)) {
        problems_add(problems, weight, "file-special", place,
                     "this is a pipe or a device; a plain file is needed");
        return false;
    }
    if ((uintmax_t)about->st_size > limit)
        return refuse_large(path, limit, weight, problems);
    return true;
}

/* All bytes up to the end, at most limit + 1. False: *error says why, 0: no memory. */
static bool read_all(int file, size_t expected, size_t limit, char **out, size_t *length,
                     struct arena *arena, int *error)
{
    size_t capacity = expected + 2, used = 0; /* one for the NUL, one to see the end */
    char *bytes = arena_take(arena, capacity);

    *error = 0;
    while (bytes && used <= limit) {
        ssize_t step = read(file, bytes + used, capacity - used - 1);
        if (step == 0)
            break;
        if (step < 0 && errno != EINTR) {
            *error = errno;
            return false;
        }
        used += step > 0 ? (size_t)step : 0;
        if (used + 1 == capacity) /* it has grown since we looked? */
            bytes = arena_grow(arena, bytes, capacity, &capacity, 1);
    }
    if (bytes)
        bytes[used] = '\0';
    *out = bytes;
    *length = used;
    return bytes != NULL;
}

/* Is it still what it was before it was read? */
static bool is_unchanged(int file, const struct stat *before, size_t length)
{
    struct stat after;

    return (uintmax_t)before->st_size == length && fstat(file, &after) == 0 &&
           after.st_size == before->st_size && after.st_mtim.tv_sec == before->st_mtim.tv_sec &&
           after.st_mtim.tv_nsec == before->st_mtim.tv_nsec;
}

bool file_read(char **out, size_t *length, const char *path, size_t limit, struct arena *arena,
               enum problem_weight weight, struct problems *problems)
{
    struct stat about;
    struct place place = {.file = path};
    int error = 0;
    /* O_NONBLOCK: a pipe without a writer is refused, not waited for. */
    int file = open(path, O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY);

    if (file < 0)
        return refuse_open(errno, path, weight, problems);
    bool fits = accept_kind(file, path, limit, &about, weight, problems);
    bool read_it = fits && read_all(file, (size_t)about.st_size, limit, out, length, arena, &error);
    bool is_whole = read_it && (*length > limit || is_unchanged(file, &about, *length));
    close(file);
    if (!fits)
        return false;
    if (!read_it && error == 0)
        problems_add(problems, PROBLEM_MEMORY, "memory", place, "there is no memory to read it");
    else if (!read_it)
        return refuse_open(error, path, weight, problems);
    else if (*length > limit)
        return refuse_large(path, limit, weight, problems);
    else if (!is_whole)
        problems_add(problems, weight, "file-changed", place,
                     "the file was changed while it was read; check it again");
    return is_whole;
}

bool file_is_there(const char *path)
{
    struct stat about;

    return stat(path, &about) == 0 && (S_ISREG(about.st_mode) || S_ISDIR(about.st_mode));
}

bool file_is_directory(const char *path)
{
    struct stat about;

    return stat(path, &about) == 0 && S_ISDIR(about.st_mode);
}

static int compare_names(const void *a, const void *b)
{
    return strcmp(*(const char *const *)a, *(const char *const *)b);
}

/* Most file systems tell the kind with the name; of a link it is asked where it leads. What is no
 * directory counts as a file, so that whoever reads it tells why it cannot be read. */
static bool is_kind(int directory, const struct dirent *entry, bool as_directory)
{
    struct stat about;

    if (entry->d_type == DT_REG || entry->d_type == DT_DIR)
        return (entry->d_type == DT_DIR) == as_directory;
    bool is_directory = fstatat(directory, entry->d_name, &about, 0) == 0 && S_ISDIR(about.st_mode);
    return is_directory == as_directory;
}

/* Does a name in an open directory belong in the list? */
static bool is_wanted(int directory, const struct dirent *entry, const char *ending)
{
    const char *name = entry->d_name;
    size_t length = strlen(name), tail = ending ? strlen(ending) : 0;

    if (strcmp(name, ".") == 0 || strcmp(name, "..") == 0)
        return false;
    if (ending && name[0] == '.') /* what editors and file systems keep beside a file */
        return false;
    if (length < tail || (ending && strcmp(name + length - tail, ending) != 0))
        return false;
    return is_kind(directory, entry, ending == NULL);
}

bool file_list(char ***out, size_t *count, const char *directory, const char *ending,
               struct arena *arena)
{
    DIR *open_directory = opendir(directory);
    size_t capacity = 0;
    bool is_whole = open_directory != NULL;

    if (!is_whole && errno == ENOMEM)
        arena_take(arena, SIZE_MAX); /* marks it as short: what is not listed may be there */
    *out = NULL;
    *count = 0;
    while (is_whole) {
        errno = 0;
        const struct dirent *entry = readdir(open_directory);
        if (!entry) {
            is_whole = errno == 0;
            break;
        }
        if (!is_wanted(dirfd(open_directory), entry, ending))
            continue;
        char **names = arena_grow(arena, *out, *count, &capacity, sizeof **out);
        char *name = arena_copy(arena, entry->d_name, strlen(entry->d_name));
        is_whole = names && name;
        if (!is_whole)
            break;
        *out = names;
        names[(*count)++] = name;
    }
    if (open_directory)
        closedir(open_directory);
    if (*count > 0)
        qsort(*out, *count, sizeof **out, compare_names);
    return is_whole;
}
