/* Whole files in and out. */
#ifndef BASE_FILE_H
#define BASE_FILE_H
#include "problem.h"

/* Reads a regular file of at most `limit` bytes into the arena, with a NUL behind it. False: a
 * problem of weight `weight` says why: "file-missing", "file-directory", "file-special" (a pipe, a
 * device), "file-large", "file-unreadable", "file-changed" (while it was read); no memory is
 * "memory", PROBLEM_MEMORY. */
bool file_read(char **out, size_t *length, const char *path, size_t limit, struct arena *arena,
               enum problem_weight weight, struct problems *problems);
/* Is there a regular file or directory? */
bool file_is_there(const char *path);
bool file_is_directory(const char *path);
/* Names in a directory in byte order, without "." and ".."; only what ends in `ending`,
 * begins with no point and is no directory (a link that leads nowhere, too), or only directories
 * where it is NULL. False: cannot be read or no memory. */
bool file_list(char ***out, size_t *count, const char *directory, const char *ending,
               struct arena *arena);
/* Writes beside the target and renames, so that nothing half-written stays; an existing file keeps
 * its rights, a link stays a link. Pipes, devices and what stands in /dev are written directly.
 * False: a problem "file-unwritten" of weight PROBLEM_OUTPUT. */
bool file_write(const char *path, const char *bytes, size_t length, struct problems *problems);
/* The same for what is written bit by bit: `file` is a descriptor to write to. False: a problem. */
struct file_draft {
    const char *path; /* as it was asked for */
    int file;
    char *target, *temporary; /* NULL: written directly */
};
bool file_draft_open(struct file_draft *out, const char *path, struct problems *problems);
/* With `is_kept` the file takes its place, else the old one stands. False: a problem. */
bool file_draft_close(struct file_draft *draft, bool is_kept, struct problems *problems);
/* directory + "/" + name; the path of a name that stands beside the file at `path`. NULL: no
 * memory. */
char *path_join(struct arena *arena, const char *directory, const char *name);
char *path_beside(struct arena *arena, const char *path, const char *name);

#endif
