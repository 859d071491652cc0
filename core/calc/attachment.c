#include "attachment.h"

#include <math.h>
#include <string.h>

const char *const lateral_directions[] = {"parallel to grain", "perpendicular to grain", NULL};
const char *const roof_directions[] = {"along the slope", "across the slope", NULL};

#define SAFETY MAYBE_NUMBER("safety_factor", 1, 10, "By which a test's ultimate value is divided.")
#define DIRECTION                                                                                  \
    MAYBE_WORD("direction", lateral_directions,                                                    \
               "Which way it is pushed against the grain; needed where a screw goes into wood.")
#define MODEL_ROWS                                                                                 \
    [MODEL_DURATION] = GIVEN_DURATION,                                                             \
    [MODEL_STANDS_ON] =                                                                            \
        GIVEN_WORD("stands_on", words_for_stands_on, "What its fastener goes into."),              \
    [MODEL_SPECIES] = MAYBE_SPECIES, [MODEL_GRAVITY] = MAYBE_GRAVITY,                              \
    [MODEL_SHEATHING] = MAYBE_QUANTITY("sheathing", LENGTH, "in", 0, 12, "Deck on the member."),   \
    [MODEL_WET] = MAYBE_WET, [MODEL_TEMPERATURE] = MAYBE_TEMPERATURE,                              \
    [MODEL_MEMBER_DEPTH] =                                                                         \
        MAYBE_QUANTITY("member_depth", LENGTH, "in", 0.5, 24, "Depth of the member.")

const struct parameter attachment_model_withdrawal_inputs[] = {MODEL_ROWS};
const struct parameter attachment_model_uplift_capacity_inputs[] = {MODEL_ROWS, [MODEL_SAFETY] =
                                                                                    SAFETY};
const struct parameter attachment_model_lateral_capacity_inputs[] = {
    MODEL_ROWS, [MODEL_SAFETY] = SAFETY, [MODEL_DIRECTION] = DIRECTION};
const struct parameter attachment_model_withdrawal_results[] = {
    GIVEN_QUANTITY("capacity", FORCE, "lbf", 0, 0, "What its fasteners hold, prying not counted."),
    GIVEN_QUANTITY("per_fastener", FORCE, "lbf", 0, 0, "What one of them holds."),
    GIVEN_QUANTITY("penetration", LENGTH, "in", 0, 0, "Thread in the member, tip left out."),
    GIVEN_QUANTITY("least_penetration", LENGTH, "in", 0, 0, "Least thread that counts."),
};
const struct parameter attachment_model_uplift_capacity_results[] = {
    GIVEN_QUANTITY("capacity", FORCE, "lbf", 0, 0, "Allowable uplift."),
    GIVEN_WORD("governs", NULL, "\"fasteners\" or \"mount\"."),
    GIVEN_QUANTITY("mount", FORCE, "lbf", 0, 0, "What the test allows."),
    MAYBE_QUANTITY("fasteners", FORCE, "lbf", 0, 0, "What the fasteners hold, prying counted."),
    MAYBE_QUANTITY("penetration", LENGTH, "in", 0, 0, "Thread in the member, tip left out."),
};
const struct parameter attachment_model_lateral_capacity_results[] = {
    GIVEN_QUANTITY("capacity", FORCE, "lbf", 0, 0, "Allowable load along the roof."),
    GIVEN_WORD("governs", NULL, "\"fasteners\" or \"mount\"."),
    GIVEN_QUANTITY("mount", FORCE, "lbf", 0, 0, "What the test allows."),
    MAYBE_QUANTITY("fasteners", FORCE, "lbf", 0, 0, "What its lag or wood screws carry."),
};
const struct parameter attachment_model_down_capacity_inputs[] = {SAFETY};
const struct parameter attachment_model_down_capacity_results[] = {
    GIVEN_QUANTITY("capacity", FORCE, "lbf", 0, 0, "Allowable load downward."),
};

#define PLACED_ROWS                                                                                \
    [PLACED_DURATION] = GIVEN_DURATION, [PLACED_TEMPERATURE] = MAYBE_TEMPERATURE,                  \
    [PLACED_SAFETY] = SAFETY
const struct parameter attachment_uplift_capacity_inputs[] = {PLACED_ROWS};
const struct parameter attachment_lateral_capacity_inputs[] = {
    PLACED_ROWS, [PLACED_PUSH] =
                     GIVEN_WORD("push", roof_directions, "Which way it is pushed on its roof.")};
const struct parameter attachment_off_member_results[] = {
    GIVEN_QUANTITY("offset", LENGTH, "in", 0, 0, "From the nearest member's center line."),
    GIVEN_QUANTITY("edge", LENGTH, "in", 0, 0, "To its nearer edge; negative: beside it."),
    GIVEN_NUMBER("member", 0, 0, "Which member, counted from 0 at the first."),
};

/* The gravity is asked for only where a fastener goes into wood. */
static bool take_model(struct anchorage *out, const struct object *model,
                       const struct amount *inputs, struct working *working)
{
    const struct amount *species = &inputs[MODEL_SPECIES], *gravity = &inputs[MODEL_GRAVITY];
    const char *stands_on = inputs[MODEL_STANDS_ON].word;
    *out = (struct anchorage){.model = model,
                              .stands_on = stands_on,
                              .gravity = NAN,
                              .sheathing = amount_in(inputs[MODEL_SHEATHING], "in", NAN),
                              .member = amount_in(inputs[MODEL_MEMBER_DEPTH], "in", NAN),
                              .safety = NAN};
    bool is_wood = strcmp(stands_on, "deck") != 0 && strcmp(stands_on, "seam") != 0 &&
                   strcmp(stands_on, "none") != 0;
    if (is_wood && !timber_gravity(&out->gravity, *species, *gravity, working))
        return false;
    return timber_service_take(&out->service, inputs[MODEL_DURATION], inputs[MODEL_WET],
                               inputs[MODEL_TEMPERATURE], working);
}

static void give_capacity(struct amount *results, const struct anchorage *anchorage,
                          struct working *working)
{
    bool by_fastener = anchorage->fastener < anchorage->mount; /* false where there is none */
    double capacity = by_fastener ? anchorage->fastener : anchorage->mount;
    results[0] = amount_as(capacity, "lbf");
    results[1] = amount_of_word(by_fastener ? "fasteners" : "mount");
    results[2] = amount_as(anchorage->mount, "lbf");
    if (!isnan(anchorage->fastener))
        results[3] = amount_as(anchorage->fastener, "lbf");
    working_step(working, NULL, "the least counts: %.5g lbf, of the %s", capacity, results[1].word);
}

static void give_uplift(struct amount *results, const struct anchorage *anchorage,
                        struct working *working)
{
    give_capacity(results, anchorage, working);
    if (!isnan(anchorage->fastener))
        results[4] = amount_as(anchorage->penetration, "in");
}

bool run_attachment_model_withdrawal(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    struct anchorage anchorage;
    if (!take_model(&anchorage, about, inputs, working) || !anchorage_withdraw(&anchorage, working))
        return false;
    double fasteners = object_fact(about, SLOT_attachment_model_fasteners)->is.number;
    results[0] = amount_as(anchorage.fastener, "lbf");
    results[1] = amount_as(anchorage.fastener / fasteners, "lbf");
    results[2] = amount_as(anchorage.penetration, "in");
    results[3] = amount_as(anchorage.least, "in");
    return true;
}

bool run_attachment_model_uplift_capacity(struct amount *results, const struct object *about,
                                          const struct amount *inputs, struct working *working)
{
    struct anchorage anchorage;
    if (!take_model(&anchorage, about, inputs, working))
        return false;
    anchorage.safety = amount_in(inputs[MODEL_SAFETY], NULL, NAN);
    if (!anchorage_lift(&anchorage, working))
        return false;
    give_uplift(results, &anchorage, working);
    return true;
}

bool run_attachment_model_lateral_capacity(struct amount *results, const struct object *about,
                                           const struct amount *inputs, struct working *working)
{
    struct anchorage anchorage;
    if (!take_model(&anchorage, about, inputs, working))
        return false;
    anchorage.safety = amount_in(inputs[MODEL_SAFETY], NULL, NAN);
    anchorage.direction = is_given(inputs[MODEL_DIRECTION]) ? inputs[MODEL_DIRECTION].word : NULL;
    if (!anchorage_slide(&anchorage, working))
        return false;
    give_capacity(results, &anchorage, working);
    return true;
}

bool run_attachment_model_down_capacity(struct amount *results, const struct object *about,
                                        const struct amount *inputs, struct working *working)
{
    struct anchorage anchorage = {.model = about, .safety = amount_in(inputs[0], NULL, NAN)};
    if (!need_word(&anchorage.stands_on, about, SLOT_attachment_model_tested_on, working) ||
        !anchorage_press(&anchorage, working))
        return false;
    results[0] = amount_as(anchorage.mount, "lbf");
    return true;
}

/* Plane and framing of an attachment; each needed. */
static bool need_framing(const struct object **plane, const struct object **framing,
                         const struct object *about, struct working *working)
{
    if (!need_object(plane, about, SLOT_attachment_plane, working))
        return false;
    if (*plane == NULL)
        return working_beyond(working, "%s stands on no roof plane", about->path);
    return need_object(framing, *plane, SLOT_roof_plane_framing, working) &&
           (*framing != NULL || working_missing(working, *plane, SLOT_roof_plane_framing));
}

/* Species, moisture, depth and deck below an attachment whose fastener goes into wood. */
static bool take_wood(struct anchorage *out, const struct object *framing, struct working *working)
{
    const char *species, *size;
    bool is_wet;
    struct amount none = {.type = AMOUNT_NONE};
    if (!need_word(&species, framing, SLOT_framing_species, working) ||
        !need_yesno(&is_wet, framing, SLOT_framing_wet_service, working) ||
        !timber_gravity(&out->gravity, amount_of_word(species), none, working))
        return false;
    out->service.is_wet = is_wet;
    /* The depth only guards against a screw longer than the member; blocking may lie flat. */
    bool is_upright = strcmp(out->stands_on, "rafter") == 0 || strcmp(out->stands_on, "truss") == 0;
    if (is_upright && object_has(framing, SLOT_framing_size) &&
        need_word(&size, framing, SLOT_framing_size, working))
        out->member = wood_section_find(size)->depth;
    if (object_has(out->plane, SLOT_roof_plane_deck_thickness)) {
        if (!timber_need_inches(&out->sheathing, out->plane, SLOT_roof_plane_deck_thickness,
                                working))
            return false;
    }
    return true;
}

static bool take_placed(struct anchorage *out, const struct object *about,
                        const struct amount *inputs, struct working *working)
{
    const struct object *framing;
    *out = (struct anchorage){.gravity = NAN,
                              .sheathing = NAN,
                              .member = NAN,
                              .safety = amount_in(inputs[PLACED_SAFETY], NULL, NAN)};
    if (!need_object(&out->model, about, SLOT_attachment_model, working) ||
        !need_word(&out->stands_on, about, SLOT_attachment_stands_on, working))
        return false;
    if (out->model == NULL)
        return working_missing(working, about, SLOT_attachment_model);
    if (!timber_service_take(&out->service, inputs[PLACED_DURATION], amount_of_yesno(false),
                             inputs[PLACED_TEMPERATURE], working))
        return false;
    if (strcmp(out->stands_on, "deck") == 0 || strcmp(out->stands_on, "seam") == 0 ||
        strcmp(out->stands_on, "none") == 0)
        return true;
    return need_framing(&out->plane, &framing, about, working) && take_wood(out, framing, working);
}

bool run_attachment_uplift_capacity(struct amount *results, const struct object *about,
                                    const struct amount *inputs, struct working *working)
{
    struct anchorage anchorage;
    if (!take_placed(&anchorage, about, inputs, working) || !anchorage_lift(&anchorage, working))
        return false;
    give_uplift(results, &anchorage, working);
    return true;
}

/* A push on the roof against the grain of the member: rafters and trusses run up the slope, purlins
 * across it. Of blocking nobody tells, so the lesser value counts. */
static bool take_direction(struct anchorage *anchorage, const char *push, struct working *working)
{
    bool is_along = strcmp(push, roof_directions[0]) == 0;
    bool runs_up =
        strcmp(anchorage->stands_on, "rafter") == 0 || strcmp(anchorage->stands_on, "truss") == 0;
    bool runs_across = strcmp(anchorage->stands_on, "purlin") == 0;
    if (anchorage->plane == NULL)
        return true;
    const struct object *framing;
    const char *kind;
    if (!need_object(&framing, anchorage->plane, SLOT_roof_plane_framing, working) ||
        !need_word(&kind, framing, SLOT_framing_kind, working))
        return false;
    if (runs_up && strcmp(kind, "rafter") != 0 && strcmp(kind, "truss") != 0)
        return working_beyond(working,
                              "it stands on a %s, but the plane's members are said to be "
                              "of another kind, %s: which way their grain runs is not "
                              "known",
                              anchorage->stands_on, kind);
    bool is_parallel = (runs_up && is_along) || (runs_across && !is_along);
    anchorage->direction = lateral_directions[is_parallel ? 0 : 1];
    working_step(working, "geometry", "pushed %s on a %s: %s%s", push, anchorage->stands_on,
                 anchorage->direction,
                 runs_up || runs_across ? "" : ", the lesser, for its grain may run either way");
    return true;
}

bool run_attachment_lateral_capacity(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    struct anchorage anchorage;
    if (!take_placed(&anchorage, about, inputs, working))
        return false;
    if (!take_direction(&anchorage, inputs[PLACED_PUSH].word, working) ||
        !anchorage_slide(&anchorage, working))
        return false;
    give_capacity(results, &anchorage, working);
    return true;
}

bool run_attachment_down_capacity(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    struct anchorage anchorage = {.safety = amount_in(inputs[0], NULL, NAN)};
    if (!need_object(&anchorage.model, about, SLOT_attachment_model, working) ||
        !need_word(&anchorage.stands_on, about, SLOT_attachment_stands_on, working))
        return false;
    if (anchorage.model == NULL)
        return working_missing(working, about, SLOT_attachment_model);
    if (!anchorage_press(&anchorage, working))
        return false;
    results[0] = amount_as(anchorage.mount, "lbf");
    return true;
}

bool run_attachment_off_member(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    const struct object *plane, *framing;
    double first, spacing;
    const char *size;
    (void)inputs;
    if (!need_framing(&plane, &framing, about, working) ||
        !timber_need_inches(&first, framing, SLOT_framing_first_at, working) ||
        !timber_need_inches(&spacing, framing, SLOT_framing_spacing, working) ||
        !need_word(&size, framing, SLOT_framing_size, working))
        return false;
    working_read(working, about, SLOT_attachment_at);
    if (!object_has(about, SLOT_attachment_at))
        return working_missing(working, about, SLOT_attachment_at);
    double along = object_fact(about, SLOT_attachment_at)->is.point.x / TIMBER_INCH - first;
    double member = fmax(round(along / spacing), 0);
    double offset = fabs(along - member * spacing);
    double edge = wood_section_find(size)->width / 2 - offset;
    working_step(working, "geometry",
                 "nearest is member %g: its center line is %.4g in away, its nearer edge %.4g in",
                 member, offset, edge);
    results[0] = amount_as(offset, "in");
    results[1] = amount_as(edge, "in");
    results[2] = amount_of_number(member);
    return true;
}
