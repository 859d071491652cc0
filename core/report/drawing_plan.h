/* report, inside the room: a roof in plan on a sheet. */
#ifndef REPORT_DRAWING_PLAN_H
#define REPORT_DRAWING_PLAN_H
#include "drawing_sheet.h"

/* A plane as it lies on the sheet. Its own coordinates are in m: x along the eave, y up the slope.
 */
struct plan_plane {
    const struct object *object;
    const struct point *outline; /* NULL: not given, so not drawn */
    size_t count;
    bool is_placed;                 /* by its plan_origin; else laid beside the others */
    bool has_slope;                 /* else drawn in its true length */
    bool has_azimuth;               /* else drawn with its eave at the foot of the sheet */
    bool is_clockwise;              /* the outline's corners */
    double foreshort;               /* cosine of the slope */
    struct point origin, right, up; /* plan, m: east and north */
    struct point *corners;          /* on the sheet */
};

struct plan {
    struct plan_plane *planes;
    size_t count, drawn, beside;
    double scale; /* sheet units to a metre */
    double left, top, west, north;
    double bottom; /* of the drawn planes on the sheet */
};

/* Lays all planes of the design out inside a width and a height. False: there is nothing to draw.
 */
bool plan_lay(struct plan *plan, struct canvas *canvas, double left, double top, double width,
              double height);
struct plan_plane *plan_find(const struct plan *plan, const struct object *plane);
/* A point of a plane on the sheet. */
struct point plan_at(const struct plan *plan, const struct plan_plane *plane, double x, double y);
/* A rectangle of a plane's own coordinates, as four corners on the sheet. */
void plan_rect(struct point *corners, const struct plan *plan, const struct plan_plane *plane,
               struct point at, double width, double length);
/* Is a point of the sheet inside the plane? */
bool plan_is_inside(const struct plan_plane *plane, struct point at);
/* The kind of the side from corner i to the next; NULL: not given. */
const char *plan_edge(const struct plan_plane *plane, size_t side);
/* Corner, width along the eave and length up the slope of a module that is not removed. False: not
 * told. */
bool module_rect(struct point *at, double *width, double *length, const struct object *module);
bool obstruction_rect(struct point *at, double *width, double *length, const struct object *one);
/* The lower and upper bounds of a plane's outline, in its own coordinates. */
struct box plan_reach(const struct plan_plane *plane);

void plan_write_outlines(struct canvas *canvas, const struct plan *plan, struct legend *legend);
void plan_write_clips(struct canvas *canvas, const struct plan *plan);
void plan_write_modules(struct canvas *canvas, const struct plan *plan, struct legend *legend);
void plan_write_north_and_scale(struct canvas *canvas, const struct plan *plan);
/* A dimension beside the line from a to b, on the side that the normal points to. Left out where
 * its text finds no room. */
void plan_dimension(struct canvas *canvas, struct point a, struct point b, struct point normal,
                    double away, const char *text);
/* Which planes could not be drawn as they lie, in words. */
double plan_write_notes(struct canvas *canvas, const struct plan *plan, double y);

/* A strip that the books ask to be kept clear, as a polygon of a plane's own coordinates. */
struct strip {
    const struct finding *finding;
    const struct plan_plane *plane;
    const struct value *value;
    bool is_pathway;
    struct point corners[4];
    struct point from, to, inward; /* of an edge strip: its edge and the way in */
    double width;
};

struct strips {
    struct strip *items;
    size_t count, capacity;
    bool has_bent; /* a pathway stands, but not as one straight strip: not drawn */
};

/* From the values that decided findings about planes. */
void strips_collect(struct strips *out, struct canvas *canvas, const struct plan *plan);
/* Each plane's name and slope where they meet nothing, off the strips if there is room. */
void plan_name_planes(struct canvas *canvas, const struct plan *plan, const struct strips *strips);
/* Does a rectangle of the plane reach into the strip? */
bool strip_meets(const struct strip *strip, struct point at, double width, double length);

#endif
