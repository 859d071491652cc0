/* intake, inside the room: a file of cases while it is being read. */
#ifndef INTAKE_CASE_READING_H
#define INTAKE_CASE_READING_H
#include "book_reading.h"
#include "cases.h"

/* What the cases of one file share: said at its top. */
struct case_file {
    struct book_reader *reader;
    const struct book *book;
    const struct source *source;
    const struct node *root;
};

/* The node under a key of a case, else of its file; or NULL. */
const struct node *case_find(const struct case_file *file, const struct node *node,
                             const char *key);
/* with, without, adding: what the case changes in the design. */
void case_read_edits(struct rule_case *one, const struct case_file *file, const struct node *node);
/* What the case expects. False: it asserts nothing, told. */
bool case_read_expectation(struct expectation *out, const struct case_file *file,
                           const struct node *node);
/* All that a node says as one text, for telling two of them apart. NULL: no memory. */
const char *case_write_node(const struct node *node, struct arena *arena);

#endif
