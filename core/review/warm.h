/* review, inside the room: what only batches need: reading books before the first design, and a
 * report that is handed on while it is written. */
#ifndef REVIEW_WARM_H
#define REVIEW_WARM_H
#include "plumbrule/plumbrule.h"
#include "review.h"
#include "text.h"

/* Reads the books and compiles the rules in force on the day of the options, else of the design.
 * What is wrong in them is told by the checks that follow. */
void bench_warm(struct bench *bench, const char *design_path, const struct bench_options *options);
/* The same. */
void plumbrule_warm(struct plumbrule *plumbrule, const char *design_path,
                    const struct plumbrule_options *options);

/* Who takes a report part by part: see hand_on of struct report. */
struct part_taker {
    bool (*hand_on)(struct text *part, void *context); /* NULL: nobody */
    void *context;
};
/* plumbrule_check whose report is what the taker has not been handed. After PLUMBRULE_NO_MEMORY
 * there is none, whatever was handed on. */
enum plumbrule_end plumbrule_check_in_parts(const char **report, size_t *length,
                                            struct plumbrule *plumbrule, const char *design_path,
                                            const struct plumbrule_options *options,
                                            const struct part_taker *taker);

#endif
