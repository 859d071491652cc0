/* report, inside the room: the roof plan in the making. */
#ifndef REPORT_DRAWING_ROOF_H
#define REPORT_DRAWING_ROOF_H
#include "drawing_plan.h"

struct roof {
    struct canvas *canvas;
    struct plan plan;
    struct strips strips;
    struct keys keys;
    struct legend legend;
    bool has_sloped_length; /* a dimension is longer than what is drawn */
};

/* Where an attachment stands on the sheet. False: not told. */
bool roof_attachment_at(struct point *at, const struct plan *plan, const struct object *attachment);
/* A strip's corners on the sheet. */
void roof_strip_corners(struct point *corners, const struct roof *roof, const struct strip *strip);
/* Numbers of findings, then names of strips, planes and obstructions, where there is room. */
void roof_write_marks(struct roof *roof);
/* Eaves and rakes with their true lengths. */
void roof_write_dimensions(struct roof *roof);

#endif
