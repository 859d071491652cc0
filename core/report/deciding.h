/* report, inside the room: every file that decided, with its digest, so that the same report can be
 * made again. */
#ifndef REPORT_DECIDING_H
#define REPORT_DECIDING_H
#include "digest.h"
#include "report.h"

struct deciding_file {
    const char *path;
    const char *role; /* "design", "catalogue", "book", "rule" */
    bool is_read;     /* false: it is no longer to be read, and there is no digest */
    char digest[DIGEST_TEXT_SIZE];
};

/* Design, catalogues, texts of the books, texts of the rules that hold; each once, in that order.
 * Designs and catalogues are read anew. False: no memory. */
bool deciding_collect(struct deciding_file **out, size_t *count, const struct report *report,
                      struct arena *arena);

#endif
