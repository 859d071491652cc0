/* Lint: the rules of a book read without running them. */
#ifndef REVIEW_LINT_H
#define REVIEW_LINT_H
#include "review.h"

/* Tells what is amiss in one book, each a problem of weight PROBLEM_NOTE with its place; what
 * cannot be read keeps its own weight. It follows names, not what happens: a fact behind a computed
 * name, a local that is set again or a function's own parameters are not seen. The paths of the
 * rules' files come back in *files, ending in NULL. False: no memory. */
bool bench_lint(const char ***files, struct bench *bench, const char *book,
                const char *const *directories, struct arena *arena, struct problems *problems);

#endif
