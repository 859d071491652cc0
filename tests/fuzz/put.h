/* Input put where the program reads files: in a folder of this process, in memory where there is
 * one. */
#ifndef TESTS_FUZZ_PUT_H
#define TESTS_FUZZ_PUT_H
#include <sys/stat.h>
#include <unistd.h>

#include "entry.h"

enum { PUT_PATH = 256 };

/* The folder; made at the first asking. */
static inline const char *put_folder(void)
{
    static char folder[PUT_PATH];
    if (folder[0] == '\0') {
        snprintf(folder, sizeof folder, "%s/plumbrule-fuzz-%ld",
                 access("/dev/shm", W_OK) == 0 ? "/dev/shm" : "/tmp", (long)getpid());
        MUST(mkdir(folder, 0700) == 0 || access(folder, W_OK) == 0);
    }
    return folder;
}

/* Writes a file there; `path` takes its name. */
static inline void put_file(char path[PUT_PATH], const char *name, const uint8_t *bytes,
                            size_t length)
{
    snprintf(path, PUT_PATH, "%.100s/%.100s", put_folder(), name);
    FILE *file = fopen(path, "wb");
    MUST(file != NULL && fwrite(bytes, 1, length, file) == length && fclose(file) == 0);
}

/* Makes a folder in it. */
static inline void put_inner(const char *name)
{
    char path[PUT_PATH];
    snprintf(path, sizeof path, "%.100s/%.100s", put_folder(), name);
    MUST(mkdir(path, 0700) == 0 || access(path, W_OK) == 0);
}

/* One part of an input that a line "----" divides; *at moves behind it. */
static inline const uint8_t *put_part(const uint8_t *bytes, size_t length, size_t *at,
                                      size_t *part_length)
{
    static const char mark[] = "\n----\n";
    size_t from = *at, size = sizeof mark - 1;
    for (size_t i = from; i + size <= length; i++)
        if (memcmp(bytes + i, mark, size) == 0) {
            *at = i + size;
            *part_length = i + 1 - from;
            return bytes + from;
        }
    *at = length;
    *part_length = length - from;
    return bytes + from;
}

#endif
