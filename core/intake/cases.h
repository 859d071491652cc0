/* The cases of a book: small changes of a known design, each with the finding that it must lead to.
 * They stand in the book's folder, cases/NAME.yaml. */
#ifndef INTAKE_CASES_H
#define INTAKE_CASES_H
#include "book.h"
#include "design_edits.h"

/* What a case wants of a finding, as it is written; NULL: it does not say. */
struct expectation {
    const char *kind;  /* "pass" …, or "deleted": the rule does not hold */
    const char *about; /* "roof_plane:south" */
    const char *level; /* "error", "warning", "none" */
    const char *cite;
    const char *what; /* part of the sentence of the test that is meant */
    const char *actual, *limit, *margin;
    const char *option;  /* the way of meet_one_of that stands for the group */
    const char *missing; /* "roof_plane south: layers" */
    struct place place;
};

/* A value that holds for the case alone. */
struct case_value {
    const char *name, *is;
    struct place place;
};

struct rule_case {
    const char *rule, *says;
    const char *given;        /* a sample's name, or a path that begins in the book's folder */
    const char *const *books; /* names, lowest first; ends in NULL */
    const char *on;           /* or NULL: the design's own day */
    struct design_edits edits;
    struct case_value *values;
    size_t value_count;
    struct expectation expect;
    const char *key; /* all that it says but its sentence: two with one key are one case */
    struct place place;
};

struct cases {
    struct rule_case *items; /* by file, then as written; once for each edition of a code */
    size_t count, capacity;
};

/* Reads all case files of a book into the arena. What cannot be read, asserts nothing or stands
 * twice is a problem, and is left out. False: a problem was told, or no memory. */
bool cases_read(struct cases *out, const struct book *book, struct arena *arena,
                struct problems *problems);

#endif
