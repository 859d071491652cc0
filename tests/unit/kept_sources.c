/* Files that are kept while their bytes stay the same: what changes shows, what is wrong is told
 * each time, and what was handed out stays until it is tidied away. */
#include "kept_sources.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "check.h"

struct trial {
    struct kept_sources *kept;
    struct arena *arena;
    struct problems problems;
    char path[40];
};

static bool write_file(const char *path, const char *text)
{
    FILE *file = fopen(path, "w");
    bool is_written = file != NULL && fputs(text, file) >= 0;
    return file != NULL && fclose(file) == 0 && is_written;
}

static bool trial_open(struct trial *out)
{
    *out = (struct trial){.kept = kept_sources_new(), .arena = arena_new()};
    out->problems.arena = out->arena;
    strcpy(out->path, "/tmp/kept_sources_XXXXXX");
    int file = mkstemp(out->path);
    return file >= 0 && close(file) == 0 && out->kept != NULL && out->arena != NULL;
}

static void trial_close(struct trial *trial)
{
    remove(trial->path);
    kept_sources_free(trial->kept);
    arena_free(trial->arena);
}

/* The tree of the file with this text, or NULL. */
static struct source *read_as(struct trial *trial, const char *text)
{
    struct source *source = NULL;
    if (!CHECK(write_file(trial->path, text), "the file is written"))
        return NULL;
    yaml_read_kept(&source, trial->kept, trial->path, trial->arena, &trial->problems);
    return source;
}

static const char *value_of(const struct source *source)
{
    const struct node *node = source != NULL ? node_find(source->root, "a") : NULL;
    return node != NULL ? node->text : "nothing";
}

static void test_same_and_changed(void)
{
    struct trial trial;
    if (CHECK(trial_open(&trial), "a trial opens")) {
        const struct source *first = read_as(&trial, "a: 1\n"), *again = read_as(&trial, "a: 1\n");
        CHECK(first != NULL && first == again, "the same bytes are put together once");
        const struct source *changed = read_as(&trial, "a: 2\n");
        CHECK_TEXT(value_of(changed), "2", "other bytes of the same length show");
        CHECK_TEXT(value_of(first), "1", "what was handed out before stays as it was");
        kept_sources_tidy(trial.kept);
        CHECK(read_as(&trial, "a: 2\n") == changed, "a tidying leaves what is as it was kept");
        CHECK_TEXT(value_of(read_as(&trial, "a: 1\n")), "1", "and what came before may come again");
        CHECK(trial.problems.count == 0, "none of it is a problem");
    }
    trial_close(&trial);
}

static void test_mistakes(void)
{
    struct trial trial;
    if (CHECK(trial_open(&trial), "a trial opens")) {
        CHECK(read_as(&trial, "a: [1\n") == NULL, "a list without its end is no tree");
        size_t told = trial.problems.count;
        CHECK(told > 0 && read_as(&trial, "a: [1\n") == NULL, "nor the second time");
        CHECK(trial.problems.count == 2 * told, "and it is told each time");
        CHECK_TEXT(value_of(read_as(&trial, "a: 1\na: 2\n")), "1", "a key twice can be looked at");
        told = trial.problems.count;
        CHECK_TEXT(value_of(read_as(&trial, "a: 1\na: 2\n")), "1", "each time");
        CHECK(trial.problems.count == told + 1, "and is told each time");
        remove(trial.path);
        struct source *source;
        CHECK(!yaml_read_kept(&source, trial.kept, trial.path, trial.arena, &trial.problems) &&
                  source == NULL,
              "a file that has gone is missed, though it was read before");
        CHECK_TEXT(trial.problems.items[trial.problems.count - 1].code, "file-missing", "by name");
    }
    trial_close(&trial);
}

static void test_many(void)
{
    enum { MANY = 100 };
    struct trial trial;
    if (CHECK(trial_open(&trial), "a trial opens")) {
        for (int round = 0; round < MANY; round++) {
            char number[12], text[32];
            snprintf(number, sizeof number, "%d", round);
            snprintf(text, sizeof text, "a: %s\n", number);
            CHECK_TEXT(value_of(read_as(&trial, text)), number, "more than are kept are read, too");
        }
    }
    trial_close(&trial);
}

int main(void)
{
    test_same_and_changed();
    test_mistakes();
    test_many();
    return checks_end();
}
