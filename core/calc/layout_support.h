/* Which attachment carries which part of the array. */
#ifndef CALC_LAYOUT_SUPPORT_H
#define CALC_LAYOUT_SUPPORT_H
#include "layout_plane.h"

/* How far past a module's rim a rail or an attachment may stand and still carry it, m: clamps reach
 * over the gap between two modules (common practice, no source). */
#define LAYOUT_REACH 0.05

struct layout_attachment {
    const struct object *object;
    struct point at;
    const struct object *rail; /* NULL: it carries modules directly */
    size_t line;               /* the first rail in that rail's line */
    double area;               /* of modules, m² */
    double top;                /* how far up the slope what it carries reaches, m */
};

/* An attachment as it stands in its line of rails. */
struct layout_standing {
    size_t line;
    double along; /* the rails */
    size_t attachment;
};

struct layout_rail {
    const struct object *object;
    double across; /* its coordinate across its run */
    double from, to;
    size_t line;         /* the first rail in its line: rails in one line are one */
    bool has_attachment; /* on any rail of its line */
};

/* Every spot of a module goes to the nearest rail below that module (on either side of it, across
 * the rails), and there to the nearest attachment along the rail; without rails to the nearest
 * attachment at the module. So the areas add up to the area of the modules that are carried. */
struct layout_support {
    struct layout_attachment *attachments;
    size_t attachment_count;
    struct layout_standing *standings; /* of all attachments, line by line in their order there */
    struct layout_rail *rails;
    size_t rail_count;
    bool runs_up;      /* rails run up the slope, else along the eave */
    bool *is_carried;  /* by module of the plane */
    size_t *lines;     /* by module: how many lines of rails carry it; without rails attachments */
    double *spreads;   /* by module: from the outermost of them to the other, m */
    double *overhangs; /* by module: how far it stands out past the outermost, m; 0 without rails */
    double carried_area;
};

/* A module seen along the rails. */
struct layout_stretch {
    double from, to, low, high; /* along, across */
};

struct layout_stretch layout_stretch_of(const struct layout_support *support,
                                        const struct layout_module *module);
/* Does the rail at `at` lie below the module and something hold it, as the first of its line? */
bool layout_rail_counts(const struct layout_support *support, size_t at,
                        const struct layout_stretch *module);
/* Kept with the plane; the facts are noted each time. False: stop is set. */
bool layout_support_open(const struct layout_support **out, struct layout_plane **plane,
                         const struct object *about, struct working *working);

#endif
