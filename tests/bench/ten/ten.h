/* Ten checks: what the two ways in C (facts.c, checks.c, ten.c) share. */
#ifndef BENCH_TEN_H
#define BENCH_TEN_H
#include <stdio.h>

#include "design.h"
#include "finding.h"

enum { CHECKS = 10 };

/* One thing that a check is about. */
struct check {
    const char *rule; /* its name in the book */
    enum kind_id about;
    /* pass, fail, open, or not applicable */
    enum outcome (*judge)(const struct object *object);
};
extern const struct check checks[CHECKS];

/* All facts that the ten checks read, of all things of a design, as one line of JSON; a fact that
 * nobody told is null. */
void facts_write(FILE *out, const struct design *design);

#endif
