/* report, inside the room: what every drawing carries: keys to findings, legend, title block. */
#ifndef REPORT_DRAWING_SHEET_H
#define REPORT_DRAWING_SHEET_H
#include "drawing_canvas.h"

/* A finding that needs action, and its number in the report. */
struct key {
    const struct finding *finding;
    const struct object *object; /* it is about, or NULL */
    size_t number;
    bool is_outlined; /* the drawing shows where */
};

struct keys {
    struct key *items;
    size_t count;
};

/* Those about things of some kinds, in the order of their numbers. No memory: the canvas is short.
 */
void keys_collect(struct keys *out, struct canvas *canvas, kind_set kinds);
/* The first key about an object, or NULL; of a key for a finding. */
struct key *keys_find(const struct keys *keys, const struct object *object);
struct key *keys_find_finding(const struct keys *keys, const struct finding *finding);
/* Draws the number at the first free one of some points (centres). The mark's shape tells the
 * outcome. False: there is no room. */
bool key_mark(struct canvas *canvas, struct key *key, const struct point *points, size_t count);
/* "fails", "fails (a should)", "open", "for review", "waived", "signed" */
const char *key_word(const struct finding *finding);
bool key_is_fail(const struct key *key); /* NULL: no */
/* The list of keys with what each says, from y on. Returns where it ends. */
double keys_write(struct canvas *canvas, const struct keys *keys, double y);

/* Head of the sheet: returns where the drawing may begin. */
double sheet_head(struct canvas *canvas, const char *title);
/* Title block: whose design, which rules, by what. */
void sheet_block(struct canvas *canvas, double y, const char *title);
/* Says why there is nothing to draw. */
double sheet_note(struct canvas *canvas, double y, const char *note);

/* A sample of a line or a fill with its words. */
enum { SAMPLE_LINE, SAMPLE_AREA, SAMPLE_DOT };

struct legend_entry {
    struct stroke stroke;
    int sample;
    const char *says;
};

enum { LEGEND_MOST = 24 };

struct legend {
    struct legend_entry entries[LEGEND_MOST];
    size_t count;
};

void legend_add(struct legend *legend, int sample, struct stroke stroke, const char *says);
double legend_write(struct canvas *canvas, const struct legend *legend, double y);

/* A fact as people read it, or "not given", or "none". Never NULL. */
const char *fact_shown(struct canvas *canvas, const struct object *object, unsigned slot);
/* The name of the thing a reference names, or "not given", or "none". */
const char *name_shown(struct canvas *canvas, const struct object *object, unsigned slot);
/* The thing in a given ONE or REFERENCE, or NULL. */
const struct object *object_in(const struct object *object, unsigned slot);
/* The things in a given LIST, REFERENCES or INVERSE; NULL and 0 where there are none. */
struct object *const *objects_in(size_t *count, const struct object *object, unsigned slot);
bool has_removed_status(const struct object *object, unsigned status_slot);
/* 5.34 m as 17'-6", to a quarter of an inch. */
const char *feet_shown(struct canvas *canvas, double metres);

#endif
