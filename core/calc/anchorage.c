/* What a model of attachment holds in a given place: the least of its fasteners and its test. */
#include "attachment.h"

#include <math.h>
#include <string.h>

static bool is_word(const char *word, const char *other)
{
    return strcmp(word, other) == 0;
}

static bool is_wood(const char *stands_on)
{
    return is_word(stands_on, "rafter") || is_word(stands_on, "truss") ||
           is_word(stands_on, "blocking") || is_word(stands_on, "purlin");
}

double timber_pried(double capacity, double fasteners, double prying_factor,
                    struct working *working)
{
    double held = capacity * fasteners / prying_factor;
    working_step(working, "statics", "%.5g lbf × %g fastener(s) / prying factor %.4g = %.5g lbf",
                 capacity, fasteners, prying_factor, held);
    return held;
}

/* From length, fixture and deck. */
static bool take_by_length(double *out, const struct anchorage *anchorage, bool is_lag,
                           double diameter, struct working *working)
{
    struct timber_thread thread = {.fastener = is_lag ? TIMBER_LAG : TIMBER_WOOD_SCREW,
                                   .diameter = diameter,
                                   .thread = NAN,
                                   .tip = NAN,
                                   .member = anchorage->member};
    const struct object *model = anchorage->model;
    if (!timber_need_inches(&thread.length, model, SLOT_attachment_model_fastener_length,
                            working) ||
        !timber_need_inches(&thread.above, model, SLOT_attachment_model_fixture_thickness, working))
        return false;
    if (isnan(anchorage->sheathing))
        return anchorage->plane != NULL
                   ? working_missing(working, anchorage->plane, SLOT_roof_plane_deck_thickness)
                   : working_wrong(working, "sheathing",
                                   "sheathing is needed to find the thread in the member");
    thread.above += anchorage->sheathing;
    if (!timber_thread_take(&thread, working))
        return false;
    *out = thread.penetration;
    return true;
}

/* As detailed by its maker, or from its length; where both are known, the lesser. */
static bool take_penetration(struct anchorage *anchorage, bool is_lag, double diameter,
                             struct working *working)
{
    const struct object *model = anchorage->model;
    bool is_detailed = object_has(model, SLOT_attachment_model_embedment);
    bool has_length = object_has(model, SLOT_attachment_model_fastener_length) &&
                      object_has(model, SLOT_attachment_model_fixture_thickness) &&
                      !isnan(anchorage->sheathing);
    double detailed = INFINITY, measured = INFINITY;
    if (is_detailed &&
        !timber_need_inches(&detailed, model, SLOT_attachment_model_embedment, working))
        return false;
    if ((has_length || !is_detailed) &&
        !take_by_length(&measured, anchorage, is_lag, diameter, working))
        return false;
    anchorage->penetration = fmin(detailed, measured);
    if (is_detailed)
        working_step(working, NULL, "embedment stated by the maker %.5g in; %.5g in counts",
                     detailed, anchorage->penetration);
    return true;
}

/* Diameter and thread of the model's lag or wood screw. */
static bool take_screw(struct anchorage *anchorage, bool *is_lag, double *diameter,
                       struct working *working)
{
    const char *fastener;
    if (!need_word(&fastener, anchorage->model, SLOT_attachment_model_fastener, working))
        return false;
    *is_lag = is_word(fastener, "lag screw");
    if (!*is_lag && !is_word(fastener, "wood screw"))
        return working_beyond(working,
                              "a %s has no general withdrawal value in wood: its maker's tested "
                              "value for this member is needed",
                              fastener);
    if (!is_wood(anchorage->stands_on))
        return working_beyond(working, "a %s that goes into %s has no withdrawal value", fastener,
                              anchorage->stands_on);
    return timber_need_inches(diameter, anchorage->model, SLOT_attachment_model_fastener_diameter,
                              working) &&
           take_penetration(anchorage, *is_lag, *diameter, working);
}

bool anchorage_withdraw(struct anchorage *anchorage, struct working *working)
{
    struct timber_withdrawal pull = {.gravity = anchorage->gravity, .service = anchorage->service};
    bool is_lag;
    double fasteners;
    if (!take_screw(anchorage, &is_lag, &pull.diameter, working) ||
        !need_number(&fasteners, anchorage->model, SLOT_attachment_model_fasteners, working))
        return false;
    if (is_lag && number_compare(pull.diameter, 0.25) < 0)
        return working_beyond(working,
                              "a lag screw of %.4g in is thinner than the table's least, "
                              "1/4 in",
                              pull.diameter);
    pull.fastener = is_lag ? TIMBER_LAG : TIMBER_WOOD_SCREW;
    pull.penetration = anchorage->penetration;
    if (!timber_withdraw(&pull, working))
        return false;
    anchorage->least = pull.least;
    anchorage->fastener = pull.capacity * fasteners;
    return true;
}

/* A tested value at allowable level. */
static bool take_tested(double *out, const struct anchorage *anchorage, unsigned slot,
                        struct working *working)
{
    struct quantity tested;
    const char *basis;
    if (!need_quantity(&tested, anchorage->model, slot, working) ||
        !need_word(&basis, anchorage->model, SLOT_attachment_model_test_basis, working))
        return false;
    double force = tested.value / TIMBER_POUND_FORCE;
    if (is_word(basis, "allowable")) {
        *out = force;
        working_step(working, NULL, "tested, allowable: %.5g lbf", force);
        return true;
    }
    if (isnan(anchorage->safety))
        return working_wrong(working, "safety_factor",
                             "the test states an ultimate value: safety_factor is needed");
    *out = force / anchorage->safety;
    working_step(working, NULL, "tested, ultimate: %.5g lbf / safety factor %.4g = %.5g lbf", force,
                 anchorage->safety, *out);
    return true;
}

/* Was it tested on what it stands on? Members of framing count as one. */
static bool match_test(const struct anchorage *anchorage, struct working *working)
{
    const char *tested_on, *kind;
    if (!need_word(&kind, anchorage->model, SLOT_attachment_model_kind, working))
        return false;
    if (is_word(kind, "ballast block") || is_word(anchorage->stands_on, "none"))
        return working_beyond(working, "it is held by weight alone: an engineer must judge it");
    if (!need_word(&tested_on, anchorage->model, SLOT_attachment_model_tested_on, working))
        return false;
    return is_word(tested_on, anchorage->stands_on) ||
           (is_wood(tested_on) && is_wood(anchorage->stands_on)) ||
           working_beyond(working, "it was tested on a %s and stands on a %s", tested_on,
                          anchorage->stands_on);
}

/* Only lag and wood screws have general values; of another fastener the test alone speaks. */
static bool is_general_screw(const struct anchorage *anchorage, bool *is_lag,
                             struct working *working)
{
    const char *fastener;
    if (!need_word(&fastener, anchorage->model, SLOT_attachment_model_fastener, working))
        return false;
    *is_lag = is_word(fastener, "lag screw");
    if (*is_lag || is_word(fastener, "wood screw"))
        return true;
    working_step(working, NULL, "the %s is held to be covered by the test on a %s", fastener,
                 anchorage->stands_on);
    return false;
}

bool anchorage_lift(struct anchorage *anchorage, struct working *working)
{
    double prying;
    bool is_lag;
    anchorage->fastener = NAN;
    if (!match_test(anchorage, working) ||
        !take_tested(&anchorage->mount, anchorage, SLOT_attachment_model_tested_uplift, working))
        return false;
    if (!is_wood(anchorage->stands_on))
        return true;
    if (!is_general_screw(anchorage, &is_lag, working))
        return working->stop.kind == STOP_NONE;
    if (!anchorage_withdraw(anchorage, working) ||
        !need_number(&prying, anchorage->model, SLOT_attachment_model_prying_factor, working))
        return false;
    anchorage->fastener = timber_pried(anchorage->fastener, 1, prying, working);
    return true;
}

static bool slide_lag(struct anchorage *anchorage, struct working *working)
{
    bool is_lag;
    double fasteners;
    struct timber_lateral push = {.gravity = anchorage->gravity,
                                  .plate = anchorage->plate,
                                  .is_parallel =
                                      is_word(anchorage->direction, lateral_directions[0]),
                                  .service = anchorage->service};
    if (!take_screw(anchorage, &is_lag, &push.diameter, working) ||
        !need_number(&fasteners, anchorage->model, SLOT_attachment_model_fasteners, working))
        return false;
    push.penetration = anchorage->penetration;
    if (!timber_lateral_take(&push, working))
        return false;
    anchorage->fastener = push.capacity * fasteners;
    return true;
}

bool anchorage_slide(struct anchorage *anchorage, struct working *working)
{
    bool is_lag;
    anchorage->fastener = NAN;
    if (!match_test(anchorage, working) ||
        !take_tested(&anchorage->mount, anchorage, SLOT_attachment_model_tested_lateral, working))
        return false;
    if (!is_wood(anchorage->stands_on))
        return true;
    if (!is_general_screw(anchorage, &is_lag, working))
        return working->stop.kind == STOP_NONE;
    if (!is_lag || isnan(anchorage->plate) || anchorage->direction == NULL) {
        working_step(working, NULL,
                     "plate_thickness and direction of a lag screw are not given: "
                     "the test alone counts");
        return true;
    }
    return slide_lag(anchorage, working);
}

bool anchorage_press(struct anchorage *anchorage, struct working *working)
{
    return match_test(anchorage, working) &&
           take_tested(&anchorage->mount, anchorage, SLOT_attachment_model_tested_down, working);
}
