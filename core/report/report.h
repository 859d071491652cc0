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
    bool with_working;  /* each finding with its whole working; HTML always */
    bool failures_only; /* SARIF only: what fails, for readers that pass over `kind` */
    bool with_color;    /* text only */
    unsigned width;     /* text only: columns; 0: 80 */
    /* ndjson only: takes what stands in `out` so far and empties it, so that a long report is never
     * whole in memory. False: it cannot be handed on any further. NULL: the report stays whole. */
    bool (*hand_on)(struct text *out, void *taker);
    void *taker;
};

/* Each adds to `out`; false: no memory. */
bool report_write_text(struct text *out, const struct report *report);
bool report_write_json(struct text *out, const struct report *report);
/* The same on one line, with a line end. */
bool report_write_ndjson(struct text *out, const struct report *report);
/* One file that needs no other and no script. */
bool report_write_html(struct text *out, const struct report *report);
/* SARIF 2.1.0: a log with one run. */
bool report_write_sarif(struct text *out, const struct report *report);
/* JUnit XML as build servers commonly read it: a test suite in a list of its own. */
bool report_write_junit(struct text *out, const struct report *report);

/* A format by name, "text", "json" …; NULL: there is none of that name. */
struct report_format {
    const char *name;
    bool (*write)(struct text *out, const struct report *report);
    /* What several reports of this format are put into so that they are one: before the first,
     * between two, behind the last. Each report is then cut down by what it begins and ends with.
     * NULL: they just follow each other. */
    const char *begins, *between, *ends;
    bool stands_alone;  /* several designs do not fit into one */
    bool needs_working; /* whether asked for or not */
    bool tells_few;     /* messages of some findings only: it makes them itself */
};
const struct report_format *report_format_find(const char *name);
/* Problems alone, as text for people: place, sentence, excerpt with caret, right example. */
void report_write_problems(struct text *out, const struct problems *problems, bool with_color);

/* The caution that every report carries, in one paragraph. */
const char *report_caution(void);

#endif
