/* One member of a roof on two supports, by the formulas of a hand calculation. */
#ifndef CALC_RAFTER_H
#define CALC_RAFTER_H
#include "timber.h"

/* Which bending values: "current values", "span tables" (older ones, on which the codes' span
 * tables rest). */
extern const char *const value_basis_words[];

struct rafter {
    struct timber_member member;
    double span;         /* in, horizontal */
    double load;         /* psf of plan */
    double drift, reach; /* further load, psf of plan, that far from the upper support, in */
};

/* Results of the three checks, in psi or in; each writes results[0 … 3]: value, allowed, ratio, and
 * moment, shear or nothing. False: stop is set. */
bool rafter_bend(struct amount *results, struct rafter *rafter, struct working *working);
bool rafter_resist(struct amount *results, struct rafter *rafter, struct working *working);
bool rafter_deflect(struct amount *results, struct rafter *rafter, double limit,
                    struct working *working);
/* Longest span, in five results: span, what governs, and the spans by bending, deflection, shear.
 * The deflection is that of the live load alone. */
bool rafter_reach(struct amount *results, struct rafter *rafter, double live, double limit,
                  struct working *working);

/* Rows of parameters that the free calculators and the methods share. */
#define RAFTER_LOAD                                                                                \
    GIVEN_QUANTITY("load", PRESSURE, "psf", 0, 1000, "All load that counts, per area of plan.")
#define RAFTER_LIMIT                                                                               \
    GIVEN_NUMBER("deflection_limit", 60, 1000, "n of the limit span/n, such as 180 or 240.")
#define RAFTER_BASIS                                                                               \
    MAYBE_WORD("basis", value_basis_words,                                                         \
               "Bending values: current (absent, too), or those the code span tables rest on.")
#define RAFTER_DRIFT                                                                               \
    MAYBE_QUANTITY("drift", PRESSURE, "psf", 0, 1000,                                              \
                   "What drifted snow adds near the ridge. Absent: none.")
#define RAFTER_REACH                                                                               \
    MAYBE_QUANTITY("reach", LENGTH, "ft", 0, 1000,                                                 \
                   "How far from the ridge that lies, in plan. Absent: everywhere.")
#define RAFTER_LIVE                                                                                \
    GIVEN_QUANTITY("live", PRESSURE, "psf", 1, 1000, "Live or snow load per area of plan.")
#define RAFTER_DEAD GIVEN_QUANTITY("dead", PRESSURE, "psf", 0, 200, "Dead load per area of plan.")

/* One span under listed loads: point_loads.c. */
enum { POINT_LOAD_INPUTS = 6, POINT_LOAD_RESULTS = 8 };
extern const struct parameter point_load_inputs[POINT_LOAD_INPUTS];
extern const struct parameter point_load_results[POINT_LOAD_RESULTS];
calculate run_rafter_with_point_loads;

/* Methods about framing; rows stand in framing.c. */
enum { BEND_LOAD, BEND_DURATION, BEND_BASIS, BEND_DRIFT, BEND_REACH };
enum { DEFLECT_LOAD, DEFLECT_LIMIT };
enum { REACH_LIVE, REACH_DEAD, REACH_DURATION, REACH_LIMIT, REACH_BASIS };
enum { UPLIFT_EDITION, UPLIFT_SPEED, UPLIFT_ROOF, UPLIFT_ARRAY, UPLIFT_MINIMUM };
enum {
    ARRAY_ROOF_LOAD,
    ARRAY_DURATION,
    ARRAY_ATTACHMENT_LOAD,
    ARRAY_ARRAY_LOAD,
    ARRAY_BASIS,
    ARRAY_DRIFT,
    ARRAY_REACH
};
calculate run_framing_bending, run_framing_shear, run_framing_deflection,
    run_framing_allowable_span, run_framing_under_array, run_framing_under_uplift,
    run_framing_array_share;
/* Takes a member from the facts of its framing. A truss or panel: beyond. */
bool rafter_take(struct rafter *out, const struct object *framing, struct working *working);
/* The worst of the framing's members under the rafter's even load and one point load for each
 * attachment of its plane, lbf, down positive; in the eight results of under_array. */
bool rafter_weigh(struct amount *results, const struct object *framing, struct rafter *rafter,
                  const double *loads, size_t count, struct working *working);

#endif
