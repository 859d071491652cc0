#include "file.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum { TEMPORARIES = 100 };

/* Says why the output was not written. Always false. */
static bool refuse(int error, const char *path, struct problems *problems)
{
    struct place place = {.file = path};
    char reason[128];

    if (strerror_r(error, reason, sizeof reason) != 0)
        snprintf(reason, sizeof reason, "error %d", error);
    problems_add(problems, PROBLEM_OUTPUT, "file-unwritten", place,
                 "the output cannot be written: %s", reason);
    return false;
}

/* Writes all bytes and closes. Returns 0 or what went wrong. */
static int write_and_close(int file, const char *bytes, size_t length)
{
    int error = 0;

    for (size_t done = 0; done < length && error == 0;) {
        ssize_t step = write(file, bytes + done, length - done);
        if (step >= 0)
            done += (size_t)step;
        else if (errno != EINTR)
            error = errno;
    }
    if (close(file) != 0 && error == 0 && errno != EINTR)
        error = errno;
    return error;
}

/* A pipe, a device, or whatever a descriptor of ours leads to: nothing to be renamed over. */
static bool is_written_directly(const char *path, const struct stat *about, bool is_there)
{
    if (strncmp(path, "/dev/", 5) == 0 || strncmp(path, "/proc/", 6) == 0)
        return true;
    return is_there && !S_ISREG(about->st_mode) && !S_ISDIR(about->st_mode);
}

static int write_directly(const char *path, const char *bytes, size_t length)
{
    int file = open(path, O_WRONLY | O_APPEND | O_CLOEXEC | O_NOCTTY);

    return file < 0 ? errno : write_and_close(file, bytes, length);
}

/* A new file beside the target, with the rights a new file gets, or -1. */
static int open_temporary(char **name, const char *target, struct arena *arena)
{
    for (int i = 0; i < TEMPORARIES; i++) {
        *name = arena_format(arena, "%s.new-%ld-%d", target, (long)getpid(), i);
        if (!*name) {
            errno = ENOMEM;
            return -1;
        }
        int file = open(*name, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
        if (file >= 0 || errno != EEXIST)
            return file;
    }
    return -1;
}

/* Returns 0 or what went wrong; then the old file stands as it was. */
static int write_beside(const char *target, const struct stat *about, bool is_there,
                        const char *bytes, size_t length, struct arena *arena)
{
    char *temporary = NULL;
    int error = 0;

    if (is_there && access(target, W_OK) != 0)
        return errno;
    int file = open_temporary(&temporary, target, arena);
    if (file < 0)
        return errno;
    if (is_there && fchmod(file, about->st_mode & 07777) != 0)
        error = errno;
    int written = write_and_close(file, bytes, length);
    if (error == 0)
        error = written;
    if (error == 0 && rename(temporary, target) != 0)
        error = errno;
    if (error != 0)
        unlink(temporary);
    return error;
}

bool file_write(const char *path, const char *bytes, size_t length, struct problems *problems)
{
    struct stat about;
    bool is_there = stat(path, &about) == 0;
    int error;

    if (is_there && S_ISDIR(about.st_mode))
        return refuse(EISDIR, path, problems);
    if (is_written_directly(path, &about, is_there)) {
        error = write_directly(path, bytes, length);
    } else {
        /* A link stays a link: what it leads to is replaced. */
        char *target = is_there ? realpath(path, NULL) : NULL;
        error =
            write_beside(target ? target : path, &about, is_there, bytes, length, problems->arena);
        free(target);
    }
    return error == 0 || refuse(error, path, problems);
}
