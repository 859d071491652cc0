/* Runs a fuzz target once over each file named, and over the files of each folder named: for builds
 * without a fuzzer, and to look at one crash. */
#include <dirent.h>
#include <sys/stat.h>

#include "entry.h"

static unsigned run_file(const char *path)
{
    FILE *file = fopen(path, "rb");
    uint8_t *bytes = malloc(1 << 21);
    MUST(file != NULL && bytes != NULL);
    size_t length = fread(bytes, 1, 1 << 21, file);
    fclose(file);
    /* A block of its length, so that a byte read too far shows. */
    uint8_t *exact = malloc(length > 0 ? length : 1);
    MUST(exact != NULL);
    memcpy(exact, bytes, length);
    free(bytes);
    fprintf(stderr, "%s\n", path);
    LLVMFuzzerTestOneInput(exact, length);
    free(exact);
    return 1;
}

static unsigned run_path(const char *path)
{
    struct stat about;
    if (stat(path, &about) != 0)
        return 0;
    if (!S_ISDIR(about.st_mode))
        return run_file(path);
    unsigned count = 0;
    DIR *folder = opendir(path);
    MUST(folder != NULL);
    for (const struct dirent *entry; (entry = readdir(folder)) != NULL;) {
        char inner[4096];
        snprintf(inner, sizeof inner, "%s/%s", path, entry->d_name);
        if (entry->d_name[0] != '.' && stat(inner, &about) == 0 && S_ISREG(about.st_mode))
            count += run_file(inner);
    }
    closedir(folder);
    return count;
}

int main(int count, char **words)
{
    unsigned done = 0;
    for (int i = 1; i < count; i++)
        if (words[i][0] != '-')
            done += run_path(words[i]);
    fprintf(stderr, "%u files\n", done);
    return done > 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
