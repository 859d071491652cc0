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

/* A pipe, a device, or whatever a descriptor of ours leads to: nothing to be renamed over. */
static bool is_written_directly(const char *path, const struct stat *about, bool is_there)
{
    if (strncmp(path, "/dev/", 5) == 0 || strncmp(path, "/proc/", 6) == 0)
        return true;
    return is_there && !S_ISREG(about->st_mode) && !S_ISDIR(about->st_mode);
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

/* A draft beside the target. Returns 0 or what went wrong. */
static int open_beside(struct file_draft *draft, const struct stat *about, bool is_there,
                       struct arena *arena)
{
    if (is_there && access(draft->target, W_OK) != 0)
        return errno;
    draft->file = open_temporary(&draft->temporary, draft->target, arena);
    if (draft->file < 0)
        return errno;
    if (!is_there || fchmod(draft->file, about->st_mode & 07777) == 0)
        return 0;
    int error = errno;
    close(draft->file);
    unlink(draft->temporary);
    return error;
}

/* A link stays a link: what it leads to is replaced. */
static char *find_target(const char *path, bool is_there, struct arena *arena)
{
    char *real = is_there ? realpath(path, NULL) : NULL;
    const char *target = real ? real : path;
    char *copy = arena_copy(arena, target, strlen(target));

    free(real);
    return copy;
}

bool file_draft_open(struct file_draft *out, const char *path, struct problems *problems)
{
    struct stat about;
    bool is_there = stat(path, &about) == 0;
    int error = 0;

    *out = (struct file_draft){.path = path, .file = -1};
    if (is_there && S_ISDIR(about.st_mode))
        return refuse(EISDIR, path, problems);
    if (is_written_directly(path, &about, is_there)) {
        out->file = open(path, O_WRONLY | O_APPEND | O_CLOEXEC | O_NOCTTY);
        error = out->file < 0 ? errno : 0;
    } else {
        out->target = find_target(path, is_there, problems->arena);
        error = out->target ? open_beside(out, &about, is_there, problems->arena) : ENOMEM;
    }
    return error == 0 || refuse(error, path, problems);
}

bool file_draft_close(struct file_draft *draft, bool is_kept, struct problems *problems)
{
    int error = 0;

    if (close(draft->file) != 0 && errno != EINTR)
        error = errno;
    if (draft->temporary && is_kept && error == 0 && rename(draft->temporary, draft->target) != 0)
        error = errno;
    if (draft->temporary && (!is_kept || error != 0))
        unlink(draft->temporary);
    return error == 0 || !is_kept || refuse(error, draft->path, problems);
}

/* Writes all bytes. Returns 0 or what went wrong. */
static int write_all(int file, const char *bytes, size_t length)
{
    for (size_t done = 0; done < length;) {
        ssize_t step = write(file, bytes + done, length - done);
        if (step >= 0)
            done += (size_t)step;
        else if (errno != EINTR)
            return errno;
    }
    return 0;
}

bool file_write(const char *path, const char *bytes, size_t length, struct problems *problems)
{
    struct file_draft draft;

    if (!file_draft_open(&draft, path, problems))
        return false;
    int error = write_all(draft.file, bytes, length);
    bool is_closed = file_draft_close(&draft, error == 0, problems);
    return error == 0 ? is_closed : refuse(error, path, problems);
}
