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
    if (!isnan(anchorage->member)) /* what stands out below the member holds nothing */
        anchorage->penetration = fmin(anchorage->penetration, anchorage->member);
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

/* A test speaks of no fastener that ends above the member. */
static bool match_reach(const struct anchorage *anchorage, const char *fastener,
                        struct working *working)
{
    const struct object *model = anchorage->model;
    double length, above;
    if (!object_has(model, SLOT_attachment_model_fastener_length) ||
        !object_has(model, SLOT_attachment_model_fixture_thickness) || isnan(anchorage->sheathing))
        return true;
    if (!timber_need_inches(&length, model, SLOT_attachment_model_fastener_length, working) ||
        !timber_need_inches(&above, model, SLOT_attachment_model_fixture_thickness, working))
        return false;
    above += anchorage->sheathing;
    return number_compare(length, above) > 0 ||
           working_beyond(working,
                          "its %s of %.4g in ends above the member, which begins %.4g in below "
                          "the head: no test speaks of it",
                          fastener, length, above);
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
    if (!match_reach(anchorage, fastener, working))
        return false;
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

/* Thickness and bearing strength of the base through which the screws go. */
static bool take_plate(struct timber_lateral *push, const struct object *model,
                       struct working *working)
{
    const char *material;
    struct quantity bearing;
    if (!timber_need_inches(&push->plate, model, SLOT_attachment_model_plate_thickness, working) ||
        !need_word(&material, model, SLOT_attachment_model_plate_material, working))
        return false;
    push->bearing = NAN;
    if (is_word(material, "steel"))
        return true;
    if (!object_has(model, SLOT_attachment_model_plate_bearing_strength))
        return working_beyond(working,
                              "its base is of %s, for which NDS Table 12K has no dowel bearing "
                              "strength: plate_bearing_strength from its maker or an engineer is "
                              "needed",
                              material);
    if (!need_quantity(&bearing, model, SLOT_attachment_model_plate_bearing_strength, working))
        return false;
    push->bearing = amount_in(amount_of_quantity(bearing), "psi", NAN);
    return true;
}

/* The yield equations hold for faces in contact. Flashing and covering below the base are taken to
 * be pressed tight, up to half an inch of them (common practice, no source); above it the screw
 * bends in the gap and carries far less. */
static bool match_contact(const struct timber_lateral *push, const struct object *model,
                          struct working *working)
{
    static const double most = 0.5;
    double fixture;
    if (!timber_need_inches(&fixture, model, SLOT_attachment_model_fixture_thickness, working))
        return false;
    double gap = fixture - push->plate;
    if (number_compare(gap, 0) < 0)
        return working_beyond(working,
                              "its base of %.4g in is said to be thicker than all that lies "
                              "between head and wood, %.4g in",
                              push->plate, fixture);
    if (number_compare(gap, most) > 0)
        return working_beyond(working,
                              "%.4g in lie between its base and the wood: the lateral value of a "
                              "screw asks for faces in contact (NDS 12.3.1)",
                              gap);
    working_step(working, "NDS 12.3.1 (faces in contact; from memory)",
                 "%.4g in of flashing and covering below the base are taken to be pressed tight "
                 "(common practice, no source)",
                 gap);
    return true;
}

/* Wood that is pushed across its grain splits where the screw stands near the edge. */
static bool match_edge(const struct anchorage *anchorage, double diameter, struct working *working)
{
    double edge;
    if (is_word(anchorage->direction, lateral_directions[0]))
        return true;
    if (!timber_need_inches(&edge, anchorage->model, SLOT_attachment_model_edge_distance, working))
        return false;
    if (number_compare(edge, 4 * diameter) < 0)
        return working_beyond(working,
                              "pushed across the grain a screw has no lateral value where it "
                              "stands %.4g in from the edge; 4 D = %.4g in are needed (NDS 12.5.1, "
                              "from memory)",
                              edge, 4 * diameter);
    working_step(working, "NDS 12.5.1 (from memory)",
                 "%.4g in to the loaded edge, at least 4 D = %.4g in", edge, 4 * diameter);
    return true;
}

/* How a group of screws shares a push depends on where each stands, which nobody tells. By NDS
 * 11.3.6 two in a row keep 0.9 or more: screws up to 1/2 in and 6 in apart, through 1/8 in of
 * aluminum or 14 gage steel 1-1/2 in wide, into a 2x4 of E = 1 200 000 psi. */
static bool push_group(struct anchorage *anchorage, double capacity, struct working *working)
{
    static const double two_in_a_row = 0.9;
    double fasteners;
    if (!need_number(&fasteners, anchorage->model, SLOT_attachment_model_fasteners, working))
        return false;
    if (fasteners > 2)
        return working_beyond(working,
                              "%g screws push on the member together: their spacing is needed to "
                              "tell how they share it (NDS 11.3.6)",
                              fasteners);
    double group = fasteners > 1 ? two_in_a_row : 1;
    anchorage->fastener = capacity * fasteners * group;
    if (fasteners > 1)
        working_step(working, "NDS 11.3.6 (from memory): the least of two screws in a row",
                     "Z' × fasteners × Cg = %.5g × %g × %.4g = %.5g lbf", capacity, fasteners,
                     group, anchorage->fastener);
    return true;
}

static bool slide_screws(struct anchorage *anchorage, struct working *working)
{
    bool is_lag;
    struct timber_lateral push = {.gravity = anchorage->gravity, .service = anchorage->service};
    if (anchorage->direction == NULL)
        return working_wrong(working, "direction",
                             "direction is needed where a screw goes into wood");
    push.is_parallel = is_word(anchorage->direction, lateral_directions[0]);
    if (!take_plate(&push, anchorage->model, working) ||
        !take_screw(anchorage, &is_lag, &push.diameter, working) ||
        !match_contact(&push, anchorage->model, working) ||
        !match_edge(anchorage, push.diameter, working))
        return false;
    push.fastener = is_lag ? TIMBER_LAG : TIMBER_WOOD_SCREW;
    push.penetration = anchorage->penetration;
    return timber_lateral_take(&push, working) && push_group(anchorage, push.capacity, working);
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
    return slide_screws(anchorage, working);
}

bool anchorage_press(struct anchorage *anchorage, struct working *working)
{
    return match_test(anchorage, working) &&
           take_tested(&anchorage->mount, anchorage, SLOT_attachment_model_tested_down, working);
}
