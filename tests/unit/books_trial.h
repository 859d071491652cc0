/* One stack of books resolved for one day, and what came of it. */
#ifndef TESTS_BOOKS_TRIAL_H
#define TESTS_BOOKS_TRIAL_H
#include "check.h"
#include "intake.h"

struct trial {
    struct shelf *shelf;
    struct arena *arena;
    struct problems problems;
    struct rulebook *rulebook;
    bool is_good;
};

enum { NAMES = 8 };

/* `names`: of books in TESTS_DIR/books/FOLDER, parted by spaces. */
static inline struct trial resolve(const char *folder, const char *names, const char *on)
{
    struct trial trial = {.arena = arena_new()};
    struct date date;
    const char *list[NAMES];
    size_t count = 0;
    if (!trial.arena || !date_read(&date, on, strlen(on)))
        abort();
    trial.problems.arena = trial.arena;
    for (char *at = arena_format(trial.arena, "%s", names); at && count < NAMES;) {
        char *space = strchr(at, ' ');
        if (space)
            *space = '\0';
        list[count++] = at;
        at = space ? space + 1 : NULL;
    }
    const char **directories = arena_take(trial.arena, 2 * sizeof *directories);
    directories[0] = arena_format(trial.arena, "%s/books/%s", TESTS_DIR, folder);
    trial.shelf = shelf_new(directories);
    trial.is_good = rulebook_resolve(&trial.rulebook, list, count, date, shelf_find, trial.shelf,
                                     trial.arena, &trial.problems);
    return trial;
}

static inline void end(struct trial *trial)
{
    shelf_free(trial->shelf);
    arena_free(trial->arena);
}

static inline void show_problems(const struct trial *trial)
{
    for (size_t i = 0; i < trial->problems.count; i++) {
        const struct problem *problem = &trial->problems.items[i];
        fprintf(stderr, "    %s:%u:%u (%s:%u) %s: %s\n      | %s\n      e.g. %s\n",
                problem->place.file ? problem->place.file : "-", problem->place.line,
                problem->place.column, problem->other.file ? problem->other.file : "-",
                problem->other.line, problem->code, problem->message,
                problem->excerpt ? problem->excerpt : "-",
                problem->example ? problem->example : "-");
    }
}

#endif
