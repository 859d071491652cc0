/* review, inside the room: a comparison while it is being made. */
#ifndef REVIEW_COMPARING_H
#define REVIEW_COMPARING_H
#include "compare.h"

struct comparing {
    struct comparison *comparison;
    const struct compare_options *options;
    struct arena *arena;
    struct problems *problems;
    struct bench was, is; /* a bench for each side, so that both are there at once */
};

/* A copy that outlives books and reviews; NULL stays NULL. */
const char *compare_keep(struct comparing *comparing, const char *text);
struct place compare_keep_place(struct comparing *comparing, struct place place);
/* Takes problems over, each once, however many designs tell it. False: no memory. */
bool compare_keep_problems(struct comparing *comparing, const struct problems *problems);
/* Books, rules and values of both sides. False: no memory. */
bool compare_books(struct comparing *comparing);
bool compare_values(struct comparing *comparing, const struct rulebook *was,
                    const struct rulebook *is);
/* "irc 2021, R324.6.2" of a value's number; NULL: no memory. */
const char *compare_cite(struct comparing *comparing, const struct value *value);
/* Pairs the findings of one design. False: no memory. */
bool compare_findings(struct compared_design *design, struct comparing *comparing,
                      const struct findings *was, const struct findings *is);

#endif
