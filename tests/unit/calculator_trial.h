/* Calls calculators in tests as a person would: inputs by name, as text. */
#ifndef TESTS_CALCULATOR_TRIAL_H
#define TESTS_CALCULATOR_TRIAL_H
#include <stdarg.h>
#include "calculator.h"
#include "check.h"

struct trial {
    struct arena *arena;
    struct working working;
    struct amount results[CALCULATOR_RESULTS];
    const struct calculator *calculator;
    void *user; /* what a row of a table adds up in */
};

static inline void trial_open(struct trial *trial)
{
    *trial = (struct trial){.arena = arena_new()};
    trial->working.arena = trial->arena;
    trial->working.keeps_steps = true;
}

static inline void trial_close(struct trial *trial)
{
    working_close(&trial->working);
    arena_free(trial->arena);
}

/* One input from text; "-" leaves an optional one out. */
static inline bool trial_read(struct amount *out, const struct parameter *parameter,
                              const char *text)
{
    struct quantity quantity;
    struct quantity_fault fault;
    switch (parameter->type) {
    case AMOUNT_QUANTITY:
        if (!quantity_read(&quantity, text, strlen(text), measure_dimension(parameter->measure),
                           &fault) &&
            !quantity_read_any(&quantity, text, strlen(text), &fault))
            return false;
        *out = amount_of_quantity(quantity);
        return true;
    case AMOUNT_NUMBER:
        *out = amount_of_number(strtod(text, NULL));
        return true;
    case AMOUNT_YESNO:
        *out = amount_of_yesno(strcmp(text, "yes") == 0);
        return true;
    default:
        *out = amount_of_word(text);
        return true;
    }
}

/* Pairs of input name and text, ending in NULL. Our own misspellings end the test. */
static inline bool trial_run_list(struct trial *trial, const struct object *about, const char *name,
                                  va_list pairs)
{
    struct amount inputs[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    trial->calculator = calculator_find(about != NULL ? about->kind->id : KIND_NONE, name);
    if (trial->calculator == NULL && !CHECK(false, name))
        exit(EXIT_FAILURE);
    for (const char *input; (input = va_arg(pairs, const char *)) != NULL;) {
        const char *text = va_arg(pairs, const char *);
        size_t at = 0;
        while (at < trial->calculator->input_count &&
               strcmp(trial->calculator->inputs[at].name, input) != 0)
            at++;
        if ((at == trial->calculator->input_count && !CHECK(false, input)) ||
            (strcmp(text, "-") != 0 &&
             !trial_read(&inputs[at], &trial->calculator->inputs[at], text) && !CHECK(false, text)))
            exit(EXIT_FAILURE);
    }
    working_start(&trial->working);
    return calculator_run(trial->calculator, trial->results, about, inputs, &trial->working);
}

static inline bool trial_run(struct trial *trial, const struct object *about, const char *name, ...)
{
    va_list pairs;
    va_start(pairs, name);
    bool done = trial_run_list(trial, about, name, pairs);
    va_end(pairs);
    return done;
}

/* A result by name: in its own unit, or the number; NAN where it is not there. */
static inline double trial_number(const struct trial *trial, const char *name)
{
    for (size_t i = 0; i < trial->calculator->result_count; i++) {
        const struct parameter *parameter = &trial->calculator->results[i];
        const struct amount *result = &trial->results[i];
        if (strcmp(parameter->name, name) != 0)
            continue;
        return result->type == AMOUNT_QUANTITY ? quantity_as(result->quantity, parameter->unit)
               : result->type == AMOUNT_NUMBER ? result->quantity.value
                                               : NAN;
    }
    CHECK(false, name);
    return NAN;
}

static inline const char *trial_word(const struct trial *trial, const char *name)
{
    for (size_t i = 0; i < trial->calculator->result_count; i++)
        if (strcmp(trial->calculator->results[i].name, name) == 0)
            return trial->results[i].word;
    return NULL;
}

/* Did it stop in that way, with that in its sentence? */
static inline bool trial_stopped(const struct trial *trial, enum stop_kind kind, const char *part)
{
    const struct stop *stop = &trial->working.stop;
    bool holds = stop->kind == kind &&
                 (part == NULL || (stop->why != NULL && strstr(stop->why, part) != NULL));
    if (!holds)
        fprintf(stderr, "    stop %d: %s\n", (int)stop->kind, stop->why ? stop->why : "(nothing)");
    return holds;
}

/* Did it stop because this fact is missing? */
static inline bool trial_misses(const struct trial *trial, const struct object *object,
                                unsigned slot)
{
    const struct stop *stop = &trial->working.stop;
    return stop->kind == STOP_MISSING && stop->object == object && stop->slot == slot;
}

/* Does any step hold that text? */
static inline bool trial_says(const struct trial *trial, const char *part)
{
    for (size_t i = 0; i < trial->working.step_count; i++)
        if (strstr(trial->working.steps[i].text, part) != NULL)
            return true;
    return false;
}

/* The fields of a line of comma-separated values, quotes taken off, in place; how many. */
static inline size_t trial_split(char **fields, size_t most, char *line)
{
    size_t count = 0;
    char *from = line, *to = line;
    bool is_quoted = false;
    fields[count++] = to;
    for (; *from != '\0' && *from != '\n'; from++) {
        if (*from == '"') {
            is_quoted = !is_quoted;
        } else if (*from == ',' && !is_quoted && count < most) {
            *to++ = '\0';
            fields[count++] = to;
        } else {
            *to++ = *from;
        }
    }
    *to = '\0';
    return count;
}

/* Calls `row` for each line of tests/wood/NAME below its heading; how many there were. */
static inline size_t trial_rows(struct trial *trial, const char *name,
                                void (*row)(struct trial *trial, char **fields))
{
    char path[512], line[1024], *fields[12];
    size_t rows = 0;
    snprintf(path, sizeof path, "%s/wood/%s", TESTS_DIR, name);
    FILE *file = fopen(path, "r");
    if (!CHECK(file != NULL, path))
        exit(EXIT_FAILURE);
    if (fgets(line, sizeof line, file) != NULL)
        while (fgets(line, sizeof line, file) != NULL) {
            size_t count = trial_split(fields, 12, line);
            for (; count < 12; count++)
                fields[count] = "";
            row(trial, fields);
            rows++;
        }
    fclose(file);
    return rows;
}

/* A repeatable random number from `low` to `high`. */
static inline double trial_random(unsigned long long *state, double low, double high)
{
    *state = *state * 6364136223846793005ULL + 1442695040888963407ULL;
    return low + (high - low) * (double)(*state >> 11) / 9007199254740992.0;
}

#endif
