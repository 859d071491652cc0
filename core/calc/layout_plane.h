/* Roof planes as geometry: outline, modules and obstructions, built once per review and kept. */
#ifndef CALC_LAYOUT_PLANE_H
#define CALC_LAYOUT_PLANE_H
#include "layout.h"
#include "layout_flat.h"
#include "layout_geos.h"
#include "layout_pathway.h"

/* What a calculation asks of a plane; each part brings what it stands on. */
enum layout_part {
    LAYOUT_OUTLINE = 1,
    LAYOUT_EDGES = 2,
    LAYOUT_SLOPE = 4,
    LAYOUT_MODULES = 8,
    LAYOUT_OBSTRUCTIONS = 16,
    LAYOUT_PLAN = 32, /* slope, azimuth and plan origin */
    LAYOUT_PARTS = 6, /* how many */
    LAYOUT_PATHWAY = LAYOUT_OUTLINE | LAYOUT_EDGES | LAYOUT_MODULES | LAYOUT_OBSTRUCTIONS
};

/* An upright rectangle, corners against the clock from the lower left. */
struct layout_module {
    const struct object *object;
    struct point corners[4];
    bool is_over_edge;    /* stands out past the outline by more than LAYOUT_SLACK */
    bool is_off_plane;    /* does not lie on the plane at all */
    double edge_distance; /* as wind asks for it; < 0: it has not yet */
};

struct layout_obstruction {
    const struct object *object;
    struct shape shape;
};

/* A module as one comes upon it going one way over the plane. */
struct layout_passed {
    double near; /* where it begins, growing along the way */
    size_t module;
};

/* The ways: along x, against x, along y, against y. */
enum { LAYOUT_WAYS = 4 };

struct wind_place;

struct layout_plane {
    const struct object *object;
    struct readings *parts[LAYOUT_PARTS]; /* what each part was built from; NULL: not yet */
    const char *fault;                    /* why the outline cannot be used, or NULL */
    struct point *corners;                /* against the clock, count + 1: the last is the first */
    const char **edges;                   /* kind of the side from corners[i] to corners[i + 1] */
    size_t count;
    double area, cos_slope;
    struct point plan_origin, plan_right, plan_up; /* unit vectors in plan (east, north) */
    struct point *plan; /* the corners in plan; NULL: not yet asked for */
    struct layout_module *modules;
    size_t module_count;
    struct layout_passed *passed[LAYOUT_WAYS]; /* all modules, by where they begin */
    double longest[LAYOUT_WAYS];               /* of a module, along the way */
    struct layout_obstruction *obstructions;
    size_t obstruction_count;
    double least_gap;              /* of two modules side by side, m; infinite without any */
    double covered_area;           /* by modules, each spot once; < 0: not yet computed */
    struct pathway_graph *pathway; /* NULL: not yet asked for */
    double pathway_width, bare_width;
    struct layout_support *support;
    struct readings *support_read;       /* what it was built from; NULL: not yet */
    const struct wind_place *wind;       /* of what lies on it: see placed_wind.h */
    struct readings *wind_read;          /* as support_read */
    const struct layout_plane *building; /* of what stands apart: the first plane of its building */
};

/* Lengths closer than this are the same, m: 0.1 mm. */
#define LAYOUT_SLACK 1e-4

/* The widest strip on two planes over one joint: the same from either side. */
struct layout_pair {
    const struct layout_plane *planes[2];
    size_t sides[2];
    double width;
};

/* Kinds of structures that stand apart from the house. */
enum { LAYOUT_APART = 4 };

struct layout {
    struct arena *arena;
    struct readings *buildings_read[LAYOUT_APART]; /* what told which planes are together */
    struct layout_geos *geos;
    struct layout_plane *planes; /* by the ordinal of the thing */
    struct layout_pair *pairs;   /* those asked for so far */
    size_t pair_count, pair_capacity;
};

/* Where a thing stands among `count` items of `size` bytes, each beginning with its object, in the
 * design's order with some left out; `count`: it is not there. */
size_t layout_place_of(const struct object *about, const void *items, size_t count, size_t size);
/* The review's layout, made when first asked for. NULL: stop is set. */
struct layout *layout_of(struct working *working);
/* A plane with the parts asked for, and every fact read noted. False: stop is set. */
bool layout_plane_open(struct layout_plane **out, const struct object *plane, unsigned parts,
                       struct working *working);
/* The plane that an attachment or a rail stands on. False: stop is set. */
bool layout_plane_of(const struct object **plane, const struct object *about, unsigned slot,
                     struct working *working);
/* A module that counts, and its plane with the parts asked for. False: stop is set. */
bool layout_module_open(struct layout_plane **plane, struct layout_module **out,
                        const struct object *about, unsigned parts, struct working *working);
/* All planes of the roof with the parts asked for. */
bool layout_planes_open(struct layout_plane ***out, size_t *count, unsigned parts,
                        struct working *working);
/* A POINT, POINTS or WORD_LIST fact. False: stop is set. */
bool layout_need_fact(const struct fact **out, const struct object *object, unsigned slot,
                      struct working *working);
/* After geometry that gave no answer: no memory, or it cannot be worked out for this thing, which
 * are told apart. Sets the stop; always false. */
bool layout_unanswered(const struct object *object, struct working *working);
struct shape layout_outline_of(const struct layout_plane *plane);
struct shape layout_ring_of(const struct layout_plane *plane); /* its rim without the inside */
struct shape layout_side_of(const struct layout_plane *plane, size_t side);
struct shape layout_module_shape(const struct layout_module *module);
struct point layout_in_plan(const struct layout_plane *plane, struct point at);
/* The outline in plan, its first corner once more behind the last, kept with the plane. False: no
 * memory. */
bool layout_plan_of(struct shape *out, struct layout_plane *plane, struct layout *layout);
/* The area its modules cover. False: stop is set. */
bool layout_covered_area(double *area, struct layout_plane *plane, struct working *working);
/* Do two modules lie over each other by more than LAYOUT_SLACK both ways? */
bool layout_is_overlapping(const struct layout_module *a, const struct layout_module *b);

/* Is the outline fit for use? NULL: yes; else a sentence. False: no memory. */
bool layout_outline_fault(const char **fault, struct layout_geos *geos, const struct point *points,
                          size_t count);

#endif
