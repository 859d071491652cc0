/* report: one writer per file. Writers know the model; the model knows no writer. */
#ifndef REPORT_REPORT_H
#define REPORT_REPORT_H
#include "design.h"
#include "finding.h"
#include "text.h"

/* Everything a report is made from. */
struct report {
    const char *design_path;
    const struct design *design;     /* NULL where it could not be read */
    const struct rulebook *rulebook; /* NULL where it could not be resolved */
    const struct findings *findings; /* NULL: none */
    const struct problems *problems;
    bool has_date;
    struct date on;
    const char *version;
    bool with_working; /* each finding with its whole working */
    bool with_color;   /* text only */
    unsigned width;    /* text only: columns; 0: 80 */
};

/* Each adds to `out`; false: no memory. */
bool report_write_text(struct text *out, const struct report *report);
bool report_write_json(struct text *out, const struct report *report);
/* Problems alone, as text for people: place, sentence, excerpt with caret, right example. */
void report_write_problems(struct text *out, const struct problems *problems, bool with_color);

/* The caution that every report carries, in one paragraph. */
const char *report_caution(void);

#endif
