/* report, inside the room: what inspectors look at. */
#ifndef REPORT_HTML_CHECKLIST_H
#define REPORT_HTML_CHECKLIST_H
#include "html.h"

enum visit { VISIT_ROUGH, VISIT_FINAL, VISIT_UTILITY, VISIT_COUNT };

struct check_item {
    enum visit visit;
    const char *look_at;
    const char *rules; /* names of rules that answer, "label-*" a beginning; NULL: none */
    /* What the design tells, or NULL where it tells nothing; the function NULL: nothing to tell. */
    const char *(*fill)(struct html *html);
};

/* All items, in the order of the visits; NULL past the end. */
const struct check_item *check_item_at(size_t at);

#endif
