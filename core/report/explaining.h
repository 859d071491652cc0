/* report, inside the room: a calculation sheet while it is being written. */
#ifndef REPORT_EXPLAINING_H
#define REPORT_EXPLAINING_H
#include "page.h"
#include "report.h"

enum { SHEET_LABEL_AT = 2, SHEET_TEXT_AT = 4, SHEET_DEEP_AT = 6 };

struct explaining {
    struct page page;
    const struct report *report;
    struct arena *arena;
    unsigned part;  /* number of the part being written */
    unsigned depth; /* columns further in: inside the ways of a group */
};

/* "3  Steps" */
bool explain_head(struct explaining *sheet, const char *title);
/* A paragraph with a dash before it, one that goes on below it. NULL: false, no memory. */
bool explain_tell(struct explaining *sheet, const char *text);
bool explain_below(struct explaining *sheet, const char *text);
/* Who adopted, amended, deleted or restored, by date. `value` is NULL for a rule's acts. */
bool explain_acts(struct explaining *sheet, const struct act *acts, size_t count,
                  const struct value *value);
/* The numbers of the law that decided. */
bool explain_values(struct explaining *sheet, const struct finding *finding);

#endif
