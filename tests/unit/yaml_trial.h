/* One reading of a YAML text and what came of it. */
#ifndef TESTS_YAML_TRIAL_H
#define TESTS_YAML_TRIAL_H
#include "tree.h"
#include "check.h"

/* One reading: all of it in one arena. */
struct trial {
    struct arena *arena;
    struct problems problems;
    struct source *source;
    bool is_good;
};

static inline struct trial read_bytes(const char *bytes, size_t length)
{
    struct trial trial = {.arena = arena_new()};
    if (!trial.arena)
        abort();
    trial.problems.arena = trial.arena;
    trial.is_good = yaml_read(&trial.source, "a.yaml", bytes, length, trial.arena, &trial.problems);
    return trial;
}

static inline struct trial read_text(const char *text)
{
    return read_bytes(text, strlen(text));
}

static inline void end(struct trial *trial)
{
    arena_free(trial->arena);
}

static inline const struct node *root_of(const struct trial *trial)
{
    return trial->source ? trial->source->root : NULL;
}

static inline bool is_at(struct place place, unsigned line, unsigned column)
{
    return place.line == line && place.column == column;
}

/* The text is refused with one problem of this code, its first words, at this place. */
static inline void check_refused_bytes(const char *bytes, size_t length, const char *code,
                                       unsigned line, unsigned column, const char *words)
{
    struct trial trial = read_bytes(bytes, length);
    const struct problem *first = trial.problems.items;
    bool holds = !trial.is_good && !trial.source && trial.problems.count == 1 &&
                 first->weight == PROBLEM_INPUT && strcmp(first->code, code) == 0 &&
                 is_at(first->place, line, column) && strcmp(first->place.file, "a.yaml") == 0 &&
                 strstr(first->message, words) != NULL;
    if (!CHECK(holds, "refused once, with this code, place and words:")) {
        fprintf(stderr, "    should: %s at %u:%u: %s\n    in: %.70s\n", code, line, column, words,
                bytes);
        for (size_t i = 0; i < trial.problems.count; i++)
            fprintf(stderr, "    is: %s at %u:%u: %s\n", trial.problems.items[i].code,
                    trial.problems.items[i].place.line, trial.problems.items[i].place.column,
                    trial.problems.items[i].message);
    }
    if (trial.problems.count > 0 && line > 0) {
        char *excerpt = NULL;
        struct source copy = {"a.yaml", bytes, length, NULL};
        if (memcmp(bytes, "\xEF\xBB\xBF", 3) != 0)
            excerpt = source_line(&copy, line, trial.arena);
        if (excerpt)
            CHECK_TEXT(first->excerpt, excerpt, "the excerpt is the line of the place");
    }
    end(&trial);
}

static inline void check_refused(const char *text, const char *code, unsigned line, unsigned column,
                                 const char *words)
{
    check_refused_bytes(text, strlen(text), code, line, column, words);
}

#endif
