/* review, inside the room: reading books before the first design. */
#ifndef REVIEW_WARM_H
#define REVIEW_WARM_H
#include "plumbrule/plumbrule.h"
#include "review.h"

/* Reads the books and compiles the rules in force on the day of the options, else of the design.
 * What is wrong in them is told by the checks that follow. */
void bench_warm(struct bench *bench, const char *design_path, const struct bench_options *options);
/* The same. */
void plumbrule_warm(struct plumbrule *plumbrule, const char *design_path,
                    const struct plumbrule_options *options);

#endif
