/* judge: runs rules in a closed Lua room. The only room that knows Lua. */
#ifndef JUDGE_JUDGE_H
#define JUDGE_JUDGE_H
#include "calculator.h"
#include "finding.h"

/* What ends a runaway rule with a problem that names it. 0 takes the usual limit. */
struct judge_limits {
    /* Lua instructions per call of a rule's function, memory it takes and long work in C counted as
     * such; usual: 2 000 000. In a design of more than 1000 things a rule may take longer by as
     * much as there are more. For all things together a rule may take 50 times as much, and a
     * 200th of it more for each thing of the design; a fact that a finding rests on counts as 40
     * instructions there. */
    long instructions;
    size_t memory;  /* bytes of Lua memory in all; usual: 64 MiB */
    size_t results; /* tests recorded in one finding, 50 times as many by one rule; usual: 2 000 */
};

/* A Lua state with the vocabulary; keeps compiled rule files from one review to the next. One per
 * thread. */
struct judge;

/* NULL: no memory. Asserts that nothing but the agreed words can be reached from a rule. */
struct judge *judge_new(const struct judge_limits *limits);
void judge_free(struct judge *judge);

/* All words that a rule can say, in byte order: "abs", "calc.ampacity", "math.abs" … False: no
 * memory. */
bool judge_list_words(const char *const **out, size_t *count, struct judge *judge,
                      struct arena *arena);

/* The card of a rule, as its file says it; in the arena. */
struct card {
    const char *title, *cite, *about, *remedy; /* remedy may be NULL; about: a kind's name */
};

/* Loads one rule's text and checks its card. False: problems of weight PROBLEM_RULE say why. */
bool judge_read_card(struct card *out, struct judge *judge, const struct rule *rule,
                     struct arena *arena, struct problems *problems);

/* Runs every rule that holds over every thing it is about. Findings go to `findings` in its arena;
 * what is broken in a rule is a problem of weight PROBLEM_RULE and its finding is open; the others
 * still run. A rule that ran past a limit, for one thing or for all together, is not run again in
 * this review: its further findings are open, too. A rule's file is run afresh for each review,
 * unless it can keep nothing; what it keeps in locals lasts from one thing to the next, not to the
 * next review. `working` is the review's. False: no memory. */
bool judge_review(struct findings *findings, struct judge *judge, const struct design *design,
                  const struct rulebook *rulebook, struct working *working,
                  struct problems *problems);

#endif
