/* calc: statics of one span on two supports, exactly. */
#ifndef CALC_BEAM_H
#define CALC_BEAM_H
#include <stddef.h>

struct point_load {
    double at;   /* from the left support, 0 … span */
    double load; /* down is positive */
};

/* Any coherent units, such as inch and pound-force. */
struct beam {
    double span;
    double line_load; /* over the whole span, down is positive */
    struct point_load *loads;
    size_t count;
    double stiffness; /* EI; 0 where the deflection is not asked for */
};

struct beam_result {
    double left, right;               /* reactions, up is positive */
    double moment, moment_at;         /* largest by magnitude; sagging is positive */
    double shear;                     /* largest magnitude */
    double deflection, deflection_at; /* largest by magnitude; down is positive */
};

/* Sorts the loads by place. Euler-Bernoulli: no shear deformation. Exact but for rounding: the
 * largest values are sought where shear and slope are zero, not on a grid. */
void beam_solve(struct beam_result *out, struct beam *beam);

#endif
