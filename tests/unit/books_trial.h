/* One stack of books resolved for one day, and what came of it. */
#ifndef TESTS_BOOKS_TRIAL_H
#define TESTS_BOOKS_TRIAL_H
#include "check.h"
#include "file.h"
#include "intake.h"
#include "text.h"

struct trial {
    struct shelf *shelf;
    struct arena *arena;
    struct problems problems;
    struct rulebook *rulebook;
    bool is_good;
};

enum { NAMES = 8 };

static inline struct date day(const char *text)
{
    struct date date;
    if (!date_read(&date, text, strlen(text)))
        abort();
    return date;
}

/* Resolves with the shelf of the trial; `names` are parted by spaces. */
static inline void resolve_again(struct trial *trial, const char *names, const char *on)
{
    const char *list[NAMES];
    size_t count = 0;
    trial->problems = (struct problems){.arena = trial->arena};
    for (char *at = arena_format(trial->arena, "%s", names); at && count < NAMES;) {
        char *space = strchr(at, ' ');
        if (space)
            *space = '\0';
        list[count++] = at;
        at = space ? space + 1 : NULL;
    }
    trial->is_good = rulebook_resolve(&trial->rulebook, list, count, day(on), shelf_find,
                                      trial->shelf, trial->arena, &trial->problems);
}

/* Of books in TESTS_DIR/books/FOLDER, read anew. */
static inline struct trial resolve(const char *folder, const char *names, const char *on)
{
    struct trial trial = {.arena = arena_new()};
    const char **directories =
        trial.arena ? arena_take(trial.arena, 2 * sizeof *directories) : NULL;
    if (!directories)
        abort();
    directories[0] = arena_format(trial.arena, "%s/books/%s", TESTS_DIR, folder);
    trial.shelf = shelf_new(directories);
    if (!trial.shelf)
        abort();
    resolve_again(&trial, names, on);
    return trial;
}

static inline void end(struct trial *trial)
{
    shelf_free(trial->shelf);
    arena_free(trial->arena);
}

/* A path as it stands under tests/books. */
static inline const char *short_path(const char *path)
{
    const char *at = path ? strstr(path, "/books/") : NULL;
    return at ? at + strlen("/books/") : "-";
}

/* Each problem as "PLACE CODE" or "PLACE CODE PLACE", one a line. */
static inline const char *told(const struct trial *trial)
{
    const char *all = "";
    for (size_t i = 0; all && i < trial->problems.count; i++) {
        const struct problem *problem = &trial->problems.items[i];
        all = arena_format(trial->arena, "%s%s:%u:%u %s", all, short_path(problem->place.file),
                           problem->place.line, problem->place.column, problem->code);
        if (all && problem->other.file)
            all = arena_format(trial->arena, "%s %s:%u", all, short_path(problem->other.file),
                               problem->other.line);
        all = all ? arena_format(trial->arena, "%s\n", all) : NULL;
    }
    return all;
}

static inline const struct problem *find_problem(const struct trial *trial, const char *code)
{
    for (size_t i = 0; i < trial->problems.count; i++)
        if (strcmp(trial->problems.items[i].code, code) == 0)
            return &trial->problems.items[i];
    return NULL;
}

static inline bool says(const struct trial *trial, const char *code, const char *words)
{
    for (size_t i = 0; i < trial->problems.count; i++)
        if (strcmp(trial->problems.items[i].code, code) == 0 &&
            strstr(trial->problems.items[i].message, words))
            return true;
    return false;
}

/* Every problem with a line shows that very line of the file. */
static inline void check_excerpts(struct trial *trial)
{
    for (size_t i = 0; i < trial->problems.count; i++) {
        const struct problem *problem = &trial->problems.items[i];
        struct problems unheard = {.arena = trial->arena};
        char *bytes;
        size_t length;
        if (problem->place.line == 0 || !file_read(&bytes, &length, problem->place.file, 1 << 20,
                                                   trial->arena, PROBLEM_INPUT, &unheard))
            continue;
        struct source source = {problem->place.file, bytes, length, NULL};
        const char *line = source_line(&source, problem->place.line, trial->arena);
        CHECK_TEXT(problem->excerpt, line ? line : "(none)", "a problem shows its line");
    }
}

/* The value as people read it, or its state in words. */
static inline const char *value_text(struct trial *trial, const char *name)
{
    char buffer[128];
    const struct value *value = trial->rulebook ? rulebook_find_value(trial->rulebook, name) : NULL;
    if (!value)
        return "unknown";
    if (value->state != VALUE_IN_FORCE)
        return value->state == VALUE_RIVALS ? "undecided" : "not in force";
    amount_write(buffer, sizeof buffer, value->is, NULL, 12);
    return arena_format(trial->arena, "%s by %s", buffer, value->book->name);
}

static inline const char *acts_text(struct trial *trial, const struct act *acts, size_t count)
{
    const char *all = "";
    for (size_t i = 0; i < count && all; i++) {
        char from[16] = "ever";
        if (acts[i].from.year != 0)
            date_write(from, sizeof from, acts[i].from);
        all = arena_format(trial->arena, "%s%s%s %s %s", all, i > 0 ? ", " : "", acts[i].book->name,
                           acts[i].verb, from);
    }
    return all;
}

/* "holds ridge.lua of pell-harbor", "deleted ridge.lua of …"; or "unknown". */
static inline const char *rule_text(struct trial *trial, const char *id)
{
    const struct rule *rule = trial->rulebook ? rulebook_find_rule(trial->rulebook, id) : NULL;
    if (!rule)
        return "unknown";
    return arena_format(trial->arena, "%s %s of %s", rule->holds ? "holds" : "deleted",
                        short_path(rule->path), rule->text_by->name);
}

static inline const char *rule_acts(struct trial *trial, const char *id)
{
    const struct rule *rule = trial->rulebook ? rulebook_find_rule(trial->rulebook, id) : NULL;
    return rule ? acts_text(trial, rule->acts, rule->act_count) : "unknown";
}

#endif
