/* The parts of the one-line diagram. */
#ifndef REPORT_DRAWING_ONE_LINE_H
#define REPORT_DRAWING_ONE_LINE_H
#include "drawing_circuit.h"

struct line_sheet {
    struct canvas *canvas;
    const struct design *design;
    struct wiring wiring;
    struct keys keys;
    double column; /* width of one */
};

/* Up to three short lines that say what a node is. */
struct label {
    const char *lines[3];
};

/* The one thing of its kind, or NULL. */
static inline const struct object *only_one(const struct design *design, enum kind_id kind)
{
    return design->of_kind[kind].count > 0 ? design->of_kind[kind].items[0] : NULL;
}

struct label one_line_label(const struct line_sheet *sheet, const struct node *node);
/* Each writes from this height down and gives the height below it. */
double one_line_facts(struct line_sheet *sheet, double y);
double one_line_apart(struct line_sheet *sheet, double y);
double one_line_schedule(struct line_sheet *sheet, double y);

#endif
