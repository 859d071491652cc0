/* report, inside the room: the circuits of a design as nodes and runs, from the array down to the
 * utility. */
#ifndef REPORT_DRAWING_CIRCUIT_H
#define REPORT_DRAWING_CIRCUIT_H
#include "drawing_sheet.h"

enum node_shape {
    NODE_STRING,
    NODE_BRANCH,
    NODE_SOURCE,
    NODE_COMBINER,
    NODE_INVERTER,
    NODE_DISCONNECT,
    NODE_JOINT, /* where one run goes on as another */
    NODE_TAP,   /* where a run meets the service conductors */
    NODE_PANEL,
    NODE_METER,
    NODE_UTILITY
};

enum { NODES_MOST = 200, RUNS_MOST = 240, NODE_NONE = 1000 };

struct node {
    enum node_shape shape;
    const struct object *object; /* of a joint or tap: its circuit; NULL: none, or not given */
    bool is_guessed;             /* where it stands in the run is not told */
    bool is_reached;             /* there is a way from it to the utility */
    unsigned level;              /* 0: farthest from the utility */
    double x, y;
};

struct run {
    const struct object *circuit; /* NULL: not given */
    size_t from, to;
    char tag[4]; /* "A"; empty: the rest of a run that is tagged above */
};

struct wiring {
    struct node nodes[NODES_MOST];
    size_t node_count;
    struct run runs[RUNS_MOST];
    size_t run_count;
    size_t utility, columns;
    unsigned levels;
    bool is_too_large; /* there is more than a diagram holds */
    bool is_circle;    /* some of it leads back to where it came from */
};

/* All that the design tells of its circuits, levels and columns set. */
void wiring_collect(struct wiring *wiring, const struct design *design);
/* The panel that the service feeds, or NULL. */
const struct object *service_panel(const struct design *design);

/* Symbols, centred at x and y. */
enum { SYMBOL_HALF = 18 };
void symbol_draw(struct canvas *canvas, const struct node *node);
void symbol_ground(struct canvas *canvas, double x, double y);

/* "2 sets of 8 AWG copper THWN-2", "EMT 3/4 in", "circuit breaker 40 A". NULL: no memory. */
const char *circuit_conductor_text(struct canvas *canvas, const struct object *circuit);
const char *circuit_raceway_text(struct canvas *canvas, const struct object *circuit);
const char *circuit_ocpd_text(struct canvas *canvas, const struct object *circuit);
/* "; N 8 AWG". A DC run has no neutral to tell, and one that is told to have none has no size. */
const char *circuit_neutral_text(struct canvas *canvas, const struct object *circuit);
const char *circuit_ground_text(struct canvas *canvas, const struct object *circuit);

#endif
