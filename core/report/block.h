/* report, inside the room: one finding as a block of text. */
#ifndef REPORT_BLOCK_H
#define REPORT_BLOCK_H
#include "page.h"
#include "report.h"

enum { LABEL_AT = 3, TEXT_AT = 13 };

/* What a block is written with. */
struct block {
    struct page *page;
    struct finding *finding;
    const struct report *report;
    struct arena *arena;
};

/* A labelled paragraph; a text of NULL is one that memory was short for: false. */
bool block_tell(const struct block *block, const char *label, const char *text);
/* "irc 2021, R324.6.2": the book whose text it is, with its edition; a section says nothing without
 * its code. NULL: no memory. */
const char *cite_text(const struct finding *finding, struct arena *arena);
/* Citation and who made the rule hold; the values that decided, with book, day and citation. */
bool block_tell_rule(const struct block *block);
bool block_tell_values(const struct block *block);
/* The whole of a finding: what, where, how much, who decided, what to do. */
bool block_write(struct page *page, struct finding *finding, size_t number,
                 const struct report *report, struct arena *arena);
/* "roof_plane south", or "service" of what there is only one of. NULL: no memory. */
const char *about_text(const struct finding *finding, struct arena *arena);
/* "design.yaml:12", or the empty text where there is no file. NULL: no memory. */
const char *place_text(struct place place, struct arena *arena);

#endif
