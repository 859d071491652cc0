/* For tests of the service side: a small invented design from YAML, and its things by name. */
#ifndef TESTS_SERVICE_TRIAL_H
#define TESTS_SERVICE_TRIAL_H
#include <assert.h>
#include <unistd.h>
#include "calculator_trial.h"
#include "intake.h"

struct premises {
    struct trial trial;
    struct design *design;
};

/* Reads a design from text; a text that is not read ends the test. */
static inline void premises_open(struct premises *premises, const char *text)
{
    static const char pattern[] = "/tmp/plumbrule-service-XXXXXX";
    trial_open(&premises->trial);
    char *path = arena_copy(premises->trial.arena, pattern, sizeof pattern - 1);
    int file = path != NULL ? mkstemp(path) : -1;
    struct problems problems = {.arena = premises->trial.arena};
    bool is_written = file >= 0 && write(file, text, strlen(text)) == (ssize_t)strlen(text);
    if (file >= 0)
        close(file);
    if (!is_written ||
        !design_read(&premises->design, path, NULL, premises->trial.arena, &problems)) {
        for (size_t i = 0; i < problems.count; i++)
            fprintf(stderr, "%u: %s\n", problems.items[i].place.line, problems.items[i].message);
        fprintf(stderr, "in\n%s\n", text);
        exit(EXIT_FAILURE);
    }
    unlink(path);
    premises->trial.working.design = premises->design;
}

/* The same text with one part changed; a part that is not there ends the test. */
static inline void premises_open_with(struct premises *premises, const char *text, const char *part,
                                      const char *instead)
{
    char changed[8000];
    const char *at = strstr(text, part);
    if (at == NULL || strlen(text) + strlen(instead) >= sizeof changed) {
        fprintf(stderr, "cannot change '%s'\n", part);
        exit(EXIT_FAILURE);
    }
    int length = snprintf(changed, sizeof changed, "%.*s%s%s", (int)(at - text), text, instead,
                          at + strlen(part));
    assert(length > 0 && (size_t)length < sizeof changed);
    premises_open(premises, changed);
}

static inline void premises_close(struct premises *premises)
{
    trial_close(&premises->trial);
}

static inline struct object *thing(const struct premises *premises, enum kind_id kind,
                                   const char *name)
{
    bool is_ambiguous;
    struct object *found = design_find(premises->design, (kind_set)1 << kind, name, &is_ambiguous);
    if (found == NULL) {
        fprintf(stderr, "no %s named %s\n", kind_at(kind)->name, name);
        exit(EXIT_FAILURE);
    }
    return found;
}

/* Runs a method without inputs; its first result in A (or the number). NaN: it stopped. */
static inline double ask(struct premises *premises, enum kind_id kind, const char *name,
                         const char *method)
{
    struct trial *trial = &premises->trial;
    if (!trial_run(trial, thing(premises, kind, name), method, NULL))
        return NAN;
    return trial->results[0].type == AMOUNT_QUANTITY ? quantity_as(trial->results[0].quantity, "A")
                                                     : trial->results[0].quantity.value;
}

static inline bool ask_yes(struct premises *premises, enum kind_id kind, const char *name,
                           const char *method, bool *answer)
{
    if (!trial_run(&premises->trial, thing(premises, kind, name), method, NULL))
        return false;
    *answer = premises->trial.results[0].yes;
    return true;
}

/* Did the last call stop because this fact of this thing is missing? */
static inline bool misses(struct premises *premises, enum kind_id kind, const char *name,
                          const char *fact)
{
    const struct object *object = thing(premises, kind, name);
    const struct stop *stop = &premises->trial.working.stop;
    bool holds =
        trial_misses(&premises->trial, object, (unsigned)kind_find_fact(object->kind, fact));
    if (!holds)
        fprintf(stderr, "    stop %d: %s %s %s\n", (int)stop->kind, stop->why ? stop->why : "",
                stop->object ? stop->object->path : "",
                stop->object ? object_row(stop->object, stop->slot)->name : "");
    return holds;
}

#endif
