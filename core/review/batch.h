/* Many designs: one line of JSON for each, in the order in which they are named, by workers that
 * share what is warm. Memory does not grow with the number of designs, and the bytes do not hang on
 * the number of workers. */
#ifndef REVIEW_BATCH_H
#define REVIEW_BATCH_H
#include "plumbrule/plumbrule.h"
#include "problem.h"

enum { BATCH_JOBS_MOST = 256 };

struct batch {
    const struct plumbrule_options *options; /* its format is the line's: "ndjson" */
    const char *const *designs;              /* paths; the first to be checked */
    size_t count;
    int list;      /* a descriptor that further paths are read from, one a line; -1: none */
    unsigned jobs; /* workers, 1 to BATCH_JOBS_MOST */
    int out;       /* a descriptor for the lines */
    int terminal;  /* a descriptor of a terminal that is told how far it is; -1: none */
};

struct batch_result {
    enum plumbrule_end end; /* over all designs */
    int signal;             /* that asked to stop (SIGINT, SIGTERM, SIGHUP); 0: none */
    size_t written;         /* whole lines */
    size_t replaced;        /* workers that were lost and replaced */
};

/* Checks all. A design that cannot be read, or at which its worker is lost, has a line that says
 * so, and the others still have theirs. What ends the whole (output that is not written, a list
 * that cannot be read, no memory) is a problem too, but for a standard output whose reader has
 * gone. Only whole lines are written. SIGPIPE must be ignored. Must not be called where other
 * threads run. */
void batch_run(struct batch_result *out, const struct batch *batch, struct problems *problems);

#endif
