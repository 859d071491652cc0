/* report: drawings as SVG, one function per drawing. Each writes one complete <svg> element that
 * stands alone as a file or inside an HTML page: no style sheet, no script, nothing fetched, and
 * every id begins with the drawing's own name. Widths are in the units of the viewBox; the svg has
 * width 100 % and a viewBox, the label sheet is in true inches. */
#ifndef REPORT_DRAWING_H
#define REPORT_DRAWING_H
#include "report.h"

/* Each adds to `out`; false: no memory. A design that was not read (report->design NULL) gives a
 * drawing that says so. */
bool drawing_write_roof(struct text *out, const struct report *report);
bool drawing_write_one_line(struct text *out, const struct report *report);
bool drawing_write_panel(struct text *out, const struct report *report);
bool drawing_write_labels(struct text *out, const struct report *report);
bool drawing_write_loads(struct text *out, const struct report *report);

struct drawing {
    const char *name;  /* "roof", "one-line", "panel", "labels", "loads" */
    const char *title; /* "Roof plan" */
    bool (*write)(struct text *out, const struct report *report);
};

/* All drawings in the order of a set; NULL past the end. */
const struct drawing *drawing_at(size_t at);
const struct drawing *drawing_find(const char *name);

#endif
