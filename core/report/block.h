/* report, inside the room: one finding as a block of text. */
#ifndef REPORT_BLOCK_H
#define REPORT_BLOCK_H
#include "page.h"
#include "report.h"

/* The whole of a finding: what, where, how much, who decided, what to do. */
bool block_write(struct page *page, const struct finding *finding, size_t number,
                 const struct report *report, struct arena *arena);
/* One line: how far inside, what, where. */
bool block_write_line(struct page *page, const struct finding *finding, struct arena *arena);
/* "roof_plane south", or "service" of what there is only one of. NULL: no memory. */
const char *about_text(const struct finding *finding, struct arena *arena);
/* "design.yaml:12", or the empty text where there is no file. NULL: no memory. */
const char *place_text(struct place place, struct arena *arena);

#endif
