/* Proving: the cases of a book are run, and what they leave unsaid is told. */
#ifndef REVIEW_PROVE_H
#define REVIEW_PROVE_H
#include "proof.h"
#include "review.h"

struct prove_options {
    const char *const *book_directories, *const *catalogue_directories;
    bool stirs; /* moves each value and each compared limit a step, and sees who notices */
};

/* Runs the cases of one book; all of the proof lives in `arena`. A book or a case that cannot be
 * read is a problem, and the rest still runs. False: no memory. */
bool bench_prove(struct proof *out, struct bench *bench, const char *book,
                 const struct prove_options *options, struct arena *arena,
                 struct problems *problems);

#endif
