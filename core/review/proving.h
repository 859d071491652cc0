/* review, inside the room: a proof while it is being made. */
#ifndef REVIEW_PROVING_H
#define REVIEW_PROVING_H
#include "cases.h"
#include "prove.h"
#include "stir.h"

/* A way of meet_one_of that some case came to. */
struct proving_option {
    const char *name;
    bool is_met;
};

/* What the cases show of one rule. */
struct proving_rule {
    const char *id, *path;
    bool has[OUTCOME_COUNT];
    bool reads;    /* some case shows what it rests on, or that it does not apply */
    bool compares; /* some case shows a test that does not go to a person */
    struct proving_option *options;
    size_t option_count, option_capacity;
};

/* A stack of books on a day, resolved once. */
struct proving_stack {
    const char *key;
    struct rulebook *rulebook; /* NULL: could not be */
};

struct proving {
    struct bench *bench;
    const struct prove_options *options;
    const char *const *catalogues;
    const struct book *book;
    struct proof *proof;
    struct problems *problems;
    struct arena *arena;      /* of the proof */
    struct arena *case_arena; /* of one case; cleared before the next */
    struct arena *run_arena;  /* of one run of it */
    struct proving_rule *rules;
    size_t rule_count;
    bool *is_read; /* by value of the book */
    struct proving_stack *stacks;
    size_t stack_count, stack_capacity;
};

/* One case ready to be run, again and again. */
struct trial {
    const struct rule_case *one;
    struct design *design;
    struct rulebook rulebook; /* of the one rule, with values of its own */
    const struct rule *rule;
    struct working working; /* keeps the geometry from run to run */
};

/* Reads design and books. False: told, or no memory; the trial must be closed all the same. */
bool trial_open(struct trial *out, struct proving *proving, const struct rule_case *one);
void trial_close(struct trial *trial);
/* Runs the rule into `findings`, which live in the run's arena. False: no memory. */
bool trial_run(struct findings *findings, struct trial *trial, struct proving *proving,
               struct problems *problems);
/* What is otherwise than expected, in the findings' arena; NULL: nothing. */
const char *trial_mismatch(const struct trial *trial, const struct findings *findings);
/* The finding that the case is about. NULL: *why says why there is none. */
const struct finding *trial_find(const struct expectation *expect, const struct findings *findings,
                                 const char **why);

/* Moves all that the case's findings rest on, each a step, and notes what it notices. */
bool prove_stirred(struct proving *proving, struct trial *trial, const struct stir *met,
                   const struct findings *findings);
/* Adds the moves of numbers and comparisons that no case came to. */
bool prove_unmoved(struct proving *proving);

#endif
