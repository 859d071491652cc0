/* The files of a new book, a new rule and new cases, with comments that teach. Each writer leaves
 * it to the text to keep whether memory was short. */
#ifndef REPORT_LAYING_OUT_H
#define REPORT_LAYING_OUT_H
#include "book.h"
#include "text.h"

enum { LAYOUT_BOOKS = 16 };

struct layout_adoption {
    const struct book *book;
    const char *edition; /* or NULL */
};

struct layout_book {
    const char *name, *from; /* the day from which it holds */
    struct layout_adoption adopts[LAYOUT_BOOKS];
    size_t count;
};

/* book.yaml: with every value that the adopted codes leave to towns, as a comment. */
void layout_write_book(struct text *out, const struct layout_book *layout);
void layout_write_values(struct text *out, const struct layout_book *layout);
/* near-meter.lua and its cases: a rule that works, to be changed or deleted. */
void layout_write_rule(struct text *out, const struct layout_book *layout);
void layout_write_rule_cases(struct text *out, const struct layout_book *layout);
/* A rule that hands its question to a person until it is written. */
void layout_write_empty_rule(struct text *out);
/* Cases to be filled in; those of a new rule show what it does so far. */
void layout_write_cases(struct text *out, const char *rule, bool is_of_new_rule);

#endif
