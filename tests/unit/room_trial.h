/* One review of a small house by one rule of ours and a witness that must pass beside it. */
#ifndef TESTS_ROOM_TRIAL_H
#define TESTS_ROOM_TRIAL_H
#include <unistd.h>

#include "check.h"
#include "file.h"
#include "intake.h"
#include "judge.h"
#include "text.h"

#define ROOM_DIR TESTS_DIR "/room/"

struct room_trial {
    struct arena *arena;
    struct design *design;
    struct rulebook *rulebook; /* the witness's, with values */
    struct shelf *shelf;
    struct judge *judge;
    bool keeps_steps;
    /* Of the last review: */
    struct arena *page;
    struct problems problems;
    struct findings findings;
    bool is_done;
};

static inline struct design *read_house(const char *name, struct arena *arena)
{
    static const char *const nowhere[] = {NULL};
    struct problems problems = {.arena = arena};
    struct catalogues catalogues = {.directories = nowhere};
    struct design *design;
    const char *path = arena_format(arena, ROOM_DIR "%s", name);
    if (!design_read(&design, path, &catalogues, arena, &problems)) {
        for (size_t i = 0; i < problems.count; i++)
            fprintf(stderr, "%s:%u: %s\n", path, problems.items[i].place.line,
                    problems.items[i].message);
        abort();
    }
    return design;
}

static inline struct room_trial room_open(const struct judge_limits *limits)
{
    static const char *const directories[] = {ROOM_DIR "books", NULL};
    static const char *const names[] = {"room@1"};
    struct room_trial trial = {
        .arena = arena_new(), .page = arena_new(), .judge = judge_new(limits)};
    trial.shelf = shelf_new(directories);
    if (!trial.arena || !trial.page || !trial.judge || !trial.shelf)
        abort();
    trial.design = read_house("house.yaml", trial.arena);
    struct problems problems = {.arena = trial.arena};
    struct date day = {2026, 8, 3};
    if (!rulebook_resolve(&trial.rulebook, names, 1, day, shelf_find, trial.shelf, trial.arena,
                          &problems) ||
        problems.count > 0) {
        for (size_t i = 0; i < problems.count; i++)
            fprintf(stderr, "%s\n", problems.items[i].message);
        abort();
    }
    return trial;
}

static inline void room_close(struct room_trial *trial)
{
    judge_free(trial->judge);
    shelf_free(trial->shelf);
    arena_free(trial->page);
    arena_free(trial->arena);
}

/* Reviews by the rule at `path` (NULL: none), then by the witness. */
static inline void room_review(struct room_trial *trial, const char *path)
{
    struct rulebook rulebook = *trial->rulebook;
    struct rule rules[2] = {trial->rulebook->rules[0], trial->rulebook->rules[0]};
    rules[0].id = "room/attack";
    rules[0].path = path;
    rulebook.rules = path != NULL ? rules : rules + 1;
    rulebook.rule_count = path != NULL ? 2 : 1;
    arena_clear(trial->page);
    trial->problems = (struct problems){.arena = trial->page};
    trial->findings = (struct findings){.arena = trial->page};
    struct working working = {
        .arena = trial->page, .design = trial->design, .keeps_steps = trial->keeps_steps};
    /* The rules outlive the findings that point at them. */
    struct rule *kept = arena_take(trial->page, sizeof rules);
    if (kept != NULL) {
        memcpy(kept, rules, sizeof rules);
        rulebook.rules = path != NULL ? kept : kept + 1;
    }
    trial->is_done = judge_review(&trial->findings, trial->judge, trial->design, &rulebook,
                                  &working, &trial->problems) &&
                     findings_say(&trial->findings);
    working_close(&working);
}

/* The n-th finding of the rule under trial, or NULL. */
static inline const struct finding *finding_of(const struct room_trial *trial, const char *rule,
                                               size_t n)
{
    for (size_t i = 0; i < trial->findings.count; i++)
        if (strcmp(trial->findings.items[i]->rule->id, rule) == 0 && n-- == 0)
            return trial->findings.items[i];
    return NULL;
}

/* Both roof planes pass before the witness. */
static inline bool witness_passes(const struct room_trial *trial)
{
    const struct finding *first = finding_of(trial, "room/witness", 0),
                         *second = finding_of(trial, "room/witness", 1);
    return first != NULL && second != NULL && first->outcome == OUTCOME_PASS &&
           second->outcome == OUTCOME_PASS;
}

/* Writes a rule of our own to a file and gives its path. */
static inline const char *write_rule(const char *bytes, size_t length)
{
    static char path[200];
    const char *directory = getenv("TMPDIR");
    snprintf(path, sizeof path, "%s/plumbrule-room-%ld.lua", directory ? directory : "/tmp",
             (long)getpid());
    FILE *file = fopen(path, "wb");
    if (file == NULL || fwrite(bytes, 1, length, file) != length || fclose(file) != 0)
        abort();
    return path;
}

#endif
