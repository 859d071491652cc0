/* Comparing: two stacks of books, or one on two days, over designs. */
#ifndef REVIEW_COMPARE_H
#define REVIEW_COMPARE_H
#include "comparison.h"
#include "review.h"

struct compare_options {
    const char *const *was_books, *const *is_books; /* names, lowest first; end in NULL */
    const char *was_on, *is_on; /* NULL, both: the day that all designs are of */
    const char *const *book_directories, *const *catalogue_directories;
};

/* All of the comparison and the problems live in `arena`; comparison's sides are named by the
 * caller. What cannot be read is a problem, and the rest is compared. False: no memory. */
bool review_compare(struct comparison *out, const struct compare_options *options,
                    const char *const *designs, size_t count, struct arena *arena,
                    struct problems *problems);

#endif
