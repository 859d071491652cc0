/* report, inside the room: a sheet to draw on. Alone knows the XML writer. */
#ifndef REPORT_DRAWING_CANVAS_H
#define REPORT_DRAWING_CANVAS_H
#include "design.h"
#include "page.h"
#include "report.h"

/* Every figure is told by line style or pattern first; colour only helps. Shades are chosen so that
 * they differ in grey, too. */
#define INK   "#16232b"
#define FAINT "#5d6b73"
#define HAIR  "#9aa6ac"
#define WASH  "#eef1f2"
#define GLASS "#cfdde6"
#define ALARM "#8c1d18"
#define PAPER "#ffffff"

enum { SHEET_WIDTH = 720, MARGIN = 20 };

struct canvas {
    struct arena *arena;
    const struct report *report;
    const char *prefix; /* before every id */
    /* Both are libxml2's, under its own names. NOLINTBEGIN(bugprone-reserved-identifier) */
    struct _xmlTextWriter *pen;
    struct _xmlBuffer *buffer;
    /* NOLINTEND(bugprone-reserved-identifier) */
    unsigned used_patterns;
    double bottom; /* the lowest y so far */
    double width;  /* of the sheet */
    bool is_short;
    struct box *boxes; /* where text stands */
    size_t box_count, box_capacity;
};

struct box {
    double left, top, right, bottom;
};

enum anchor { ANCHOR_START, ANCHOR_MIDDLE, ANCHOR_END };

struct lettering {
    double size;
    enum anchor anchor;
    bool is_bold, has_halo;
    const char *fill;  /* NULL: ink */
    double most_width; /* 0: any; what is wider is cut, the whole of it in a <title> */
};

struct stroke {
    const char *color; /* NULL: none */
    double width;
    const char *dashes; /* NULL: solid */
    const char *fill;   /* NULL: none */
};

/* Opens a sheet; false: no memory. */
bool canvas_open(struct canvas *canvas, const char *prefix, double width,
                 const struct report *report);
/* Frees a sheet without writing it. */
void canvas_drop(struct canvas *canvas);
/* Ends the sheet, adds all of it to `out` and frees it. False: no memory. */
bool canvas_close(struct canvas *canvas, struct text *out, const char *title,
                  const char *description, bool is_true_size);

void canvas_begin(struct canvas *canvas, const char *element);
void canvas_end(struct canvas *canvas);
/* An attribute; a number has two decimals at most and no exponent. */
void canvas_attribute(struct canvas *canvas, const char *name, const char *value);
void canvas_number(struct canvas *canvas, const char *name, double value);
/* An id with the drawing's prefix; a reference to one, as url(#…). */
void canvas_id(struct canvas *canvas, const char *name);
void canvas_reference(struct canvas *canvas, const char *attribute, const char *name);
/* <title> of the element that is open. */
void canvas_title(struct canvas *canvas, const char *title);
void canvas_stroke(struct canvas *canvas, struct stroke stroke);
/* The same without the fill, for what has no inside. */
void canvas_pen(struct canvas *canvas, struct stroke stroke);

void canvas_line(struct canvas *canvas, double x1, double y1, double x2, double y2,
                 struct stroke stroke);
void canvas_rect(struct canvas *canvas, double x, double y, double width, double height,
                 struct stroke stroke);
void canvas_circle(struct canvas *canvas, double x, double y, double radius, struct stroke stroke);
void canvas_polygon(struct canvas *canvas, const struct point *points, size_t count,
                    struct stroke stroke);
/* The polygon alone as an open element, so that more can be said of it. */
void canvas_begin_polygon(struct canvas *canvas, const struct point *points, size_t count);
void canvas_path(struct canvas *canvas, const char *path, struct stroke stroke);
void canvas_reach(struct canvas *canvas, double y); /* the sheet is at least this long */
/* Text as it stands in an element: escaped, and without what no XML file may hold. */
void canvas_string(struct canvas *canvas, const char *text);
/* At most two decimals. Buffer of at least 40 bytes. */
void canvas_write_number(char *buffer, size_t size, double value);

/* One line of text whose baseline is at y. */
void canvas_text(struct canvas *canvas, double x, double y, struct lettering lettering,
                 const char *text);
void canvas_text_format(struct canvas *canvas, double x, double y, struct lettering lettering,
                        const char *format, ...) __attribute__((format(printf, 5, 6)));
/* Wraps at `width`; the baseline of the first line is at y. Returns the baseline of the next line.
 * At most `lines` lines (0: any number). */
double canvas_paragraph(struct canvas *canvas, double x, double y, double width, size_t lines,
                        struct lettering lettering, const char *text);
/* How many lines that takes. */
size_t canvas_count_lines(double width, struct lettering lettering, const char *text);
/* The text at the first of some points where it meets no other text and stays on the sheet. False:
 * there is no room at any. */
bool canvas_place(struct canvas *canvas, const struct point *points, const enum anchor *anchors,
                  size_t count, struct lettering lettering, const char *text);
/* Is the box free of text? Keeping it claims it. */
bool canvas_is_free(const struct canvas *canvas, struct box box);
void canvas_keep(struct canvas *canvas, struct box box);
/* How wide a text will be at most, by the widths of common sans-serif letters. */
double lettering_width(const char *text, size_t length, double size, bool is_bold);

/* Patterns of the drawing, said once, those that were used: "setback", "pathway", "existing",
 * "zone-1" … */
void canvas_patterns(struct canvas *canvas);
/* One of them as a fill. */
const char *canvas_pattern(struct canvas *canvas, const char *name);

#endif
