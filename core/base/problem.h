/* What could not be read or run: said once, where it is known, with its place. */
#ifndef BASE_PROBLEM_H
#define BASE_PROBLEM_H
#include "arena.h"
#include "place.h"

/* In the order in which they decide the exit code. */
enum problem_weight {
    PROBLEM_COMMAND, /* 64: the command line */
    PROBLEM_OUTPUT,  /* 74: output was not written */
    PROBLEM_MEMORY,  /* 70: no memory */
    PROBLEM_INPUT,   /* 3: a design, book or values file was not read; no rule in force */
    PROBLEM_RULE,    /* 4: something is wrong in a rule file */
    PROBLEM_NOTE     /* told, but stops nothing */
};

struct problem {
    enum problem_weight weight;
    const char *code;    /* stable, e.g. "unknown-key" */
    struct place place;  /* where */
    struct place other;  /* a second place that belongs to it, or no file */
    const char *message; /* one sentence, no place inside */
    const char *example; /* how it would be right, or NULL */
    const char *excerpt; /* the line of the file at `place`, or NULL */
};

/* Everything in the list lives in its arena. */
struct problems {
    struct arena *arena;
    struct problem *items;
    size_t count, capacity;
    size_t dropped; /* could not be kept: no memory */
};

/* Adds a problem; the returned one may be completed (example, excerpt, other). NULL: no memory, and
 * it is counted as dropped. */
struct problem *problems_add(struct problems *problems, enum problem_weight weight,
                             const char *code, struct place place, const char *format, ...)
    __attribute__((format(printf, 5, 6)));

#endif
