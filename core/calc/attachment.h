/* What an attachment holds: methods about a model of attachment, and about one where it stands.
 * Their rows stand in fastener.c. */
#ifndef CALC_ATTACHMENT_H
#define CALC_ATTACHMENT_H
#include "timber.h"

/* "parallel to grain", "perpendicular to grain" */
extern const char *const lateral_directions[];
/* "along the slope", "across the slope" */
extern const char *const roof_directions[];

/* Uplift that `fasteners` hold together, lbf: capacity of one × fasteners / prying factor. */
double timber_pried(double capacity, double fasteners, double prying_factor,
                    struct working *working);

/* Inputs of the methods about a model, where its place is not known. */
enum {
    MODEL_DURATION,
    MODEL_STANDS_ON,
    MODEL_SPECIES,
    MODEL_GRAVITY,
    MODEL_SHEATHING,
    MODEL_WET,
    MODEL_TEMPERATURE,
    MODEL_MEMBER_DEPTH,
    MODEL_SAFETY,
    MODEL_INPUTS,
    MODEL_DIRECTION = MODEL_INPUTS,
    MODEL_LATERAL_INPUTS
};
extern const struct parameter attachment_model_uplift_capacity_inputs[MODEL_INPUTS];
extern const struct parameter attachment_model_uplift_capacity_results[5];
extern const struct parameter attachment_model_lateral_capacity_inputs[MODEL_LATERAL_INPUTS];
extern const struct parameter attachment_model_lateral_capacity_results[4];
extern const struct parameter attachment_model_withdrawal_inputs[MODEL_SAFETY];
extern const struct parameter attachment_model_withdrawal_results[4];
extern const struct parameter attachment_model_down_capacity_inputs[1];
extern const struct parameter attachment_model_down_capacity_results[1];
calculate run_attachment_model_uplift_capacity, run_attachment_model_lateral_capacity,
    run_attachment_model_withdrawal, run_attachment_model_down_capacity;

/* Inputs of the methods about an attachment where it stands: the rest is read from the design. */
enum {
    PLACED_DURATION,
    PLACED_TEMPERATURE,
    PLACED_SAFETY,
    PLACED_INPUTS,
    PLACED_PUSH = PLACED_INPUTS,
    PLACED_LATERAL_INPUTS
};
extern const struct parameter attachment_uplift_capacity_inputs[PLACED_INPUTS];
extern const struct parameter attachment_lateral_capacity_inputs[PLACED_LATERAL_INPUTS];
extern const struct parameter attachment_off_member_results[3];
calculate run_attachment_uplift_capacity, run_attachment_lateral_capacity,
    run_attachment_down_capacity, run_attachment_off_member;

/* weakest.c */
enum { WEAKEST_INPUTS = 6 };
extern const struct parameter weakest_part_inputs[WEAKEST_INPUTS], weakest_part_results[3];
calculate run_weakest_part;

/* Inside: what a capacity rests on. */
struct anchorage {
    const struct object *model;
    const char *stands_on;      /* a word of stands_on */
    const struct object *plane; /* where it stands, or NULL: for a missing deck thickness */
    double gravity;             /* of the member; NAN: not known */
    double sheathing;           /* in; NAN: not known */
    double member;              /* depth, in; NAN: not known */
    double safety;              /* NAN: not given */
    struct timber_service service;
    const char *direction; /* of lateral_directions; NULL: not given */
    /* Results, lbf; NAN where there is none to give */
    double fastener, mount, penetration, least;
};

/* Each is true with results, or false with the stop set. */
bool anchorage_withdraw(struct anchorage *anchorage, struct working *working);
bool anchorage_lift(struct anchorage *anchorage, struct working *working);
bool anchorage_slide(struct anchorage *anchorage, struct working *working);
bool anchorage_press(struct anchorage *anchorage, struct working *working);

#endif
