/* judge: runs rules in a closed Lua room. The only room that knows Lua. */
#ifndef JUDGE_JUDGE_H
#define JUDGE_JUDGE_H
#include "calculator.h"
#include "finding.h"

/* What ends a runaway rule with a problem that names it. 0 takes the usual limit. */
struct judge_limits {
    long instructions; /* Lua instructions per call of a rule's function; usual: 2 000 000 */
    size_t memory;     /* bytes of Lua memory in all; usual: 64 MiB */
    size_t results;    /* tests recorded in one finding; usual: 2 000 */
};

/* A Lua state with the vocabulary; keeps compiled rule files from one review to the next. One per
 * thread. */
struct judge;

/* NULL: no memory. Asserts that nothing but the agreed words can be reached from a rule. */
struct judge *judge_new(const struct judge_limits *limits);
void judge_free(struct judge *judge);

/* The card of a rule, as its file says it; in the arena. */
struct card {
    const char *title, *cite, *about, *remedy; /* remedy may be NULL; about: a kind's name */
};

/* Loads one rule's text and checks its card. False: problems of weight PROBLEM_RULE say why. */
bool judge_read_card(struct card *out, struct judge *judge, const struct rule *rule,
                     struct arena *arena, struct problems *problems);

/* Runs every rule that holds over every thing it is about. Findings go to `findings` in its arena;
 * what is broken in a rule is a problem of weight PROBLEM_RULE and its finding is open; the others
 * still run. `working` is the review's. False: no memory. */
bool judge_review(struct findings *findings, struct judge *judge, const struct design *design,
                  const struct rulebook *rulebook, struct working *working,
                  struct problems *problems);

#endif
