/* Calculators of connections: one fastener, and what it carries in an attachment. */
#include "attachment.h"

#include <math.h>
#include <string.h>

#define withdrawal_source "NDS 12.2, Table 11.3.1"
#define lateral_source    "NDS 12.3.1 (yield limit equations), Table 11.3.1"
#define least_source      "NDS 12.2, Table 11.3.1, and the maker's test"
#define slide_source      "NDS 12.3.1, Table 11.3.1, and the maker's test"
#define test_source       "the maker's test"

/* Lag and wood screws take the same inputs in the same order. */
enum {
    PULL_DIAMETER,
    PULL_PENETRATION,
    PULL_DURATION,
    PULL_SPECIES,
    PULL_GRAVITY,
    PULL_WET,
    PULL_TEMPERATURE,
    PULL_END_GRAIN
};
#define PULL_INPUTS(least, most, says)                                                             \
    [PULL_DIAMETER] = GIVEN_QUANTITY("diameter", LENGTH, "in", least, most, says),                 \
    [PULL_PENETRATION] = GIVEN_QUANTITY("penetration", LENGTH, "in", 0, 12,                        \
                                        "Thread in the member, tip and sheathing left out."),      \
    [PULL_DURATION] = GIVEN_DURATION, [PULL_SPECIES] = MAYBE_SPECIES,                              \
    [PULL_GRAVITY] = MAYBE_GRAVITY, [PULL_WET] = MAYBE_WET, [PULL_TEMPERATURE] = MAYBE_TEMPERATURE

static const struct parameter lag_withdrawal_inputs[] = {
    PULL_INPUTS(0.25, 1.25, "Diameter of the lag screw."),
    [PULL_END_GRAIN] = MAYBE_YESNO("end_grain", "Does it stand in end grain? Absent: side grain."),
};
static const struct parameter wood_screw_withdrawal_inputs[] = {
    PULL_INPUTS(0.138, 0.375, "Diameter of the wood screw's shank."),
};
static const struct parameter lag_withdrawal_results[] = {
    GIVEN_QUANTITY("capacity", FORCE, "lbf", 0, 0, "What one fastener holds; 0 below the least."),
    GIVEN_QUANTITY("per_length", LINE_LOAD, "lbf/in", 0, 0, "Adjusted value per length of thread."),
    GIVEN_QUANTITY("reference", LINE_LOAD, "lbf/in", 0, 0, "Value of the table, unadjusted."),
    GIVEN_QUANTITY("least_penetration", LENGTH, "in", 0, 0, "Least thread that counts."),
};
#define wood_screw_withdrawal_results lag_withdrawal_results

static bool run_pull(struct amount *results, enum timber_fastener fastener,
                     const struct amount *inputs, bool is_end_grain, struct working *working)
{
    struct timber_withdrawal pull = {.fastener = fastener,
                                     .diameter = amount_in(inputs[PULL_DIAMETER], "in", 0),
                                     .penetration = amount_in(inputs[PULL_PENETRATION], "in", 0),
                                     .is_end_grain = is_end_grain};
    if (!timber_gravity(&pull.gravity, inputs[PULL_SPECIES], inputs[PULL_GRAVITY], working) ||
        !timber_service_take(&pull.service, inputs[PULL_DURATION], inputs[PULL_WET],
                             inputs[PULL_TEMPERATURE], working) ||
        !timber_withdraw(&pull, working))
        return false;
    results[0] = amount_as(pull.capacity, "lbf");
    results[1] = amount_as(pull.adjusted, "lbf/in");
    results[2] = amount_as(pull.reference, "lbf/in");
    results[3] = amount_as(pull.least, "in");
    return true;
}

static bool run_lag_withdrawal(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)about;
    bool is_end = is_given(inputs[PULL_END_GRAIN]) && inputs[PULL_END_GRAIN].yes;
    return run_pull(results, TIMBER_LAG, inputs, is_end, working);
}

static bool run_wood_screw_withdrawal(struct amount *results, const struct object *about,
                                      const struct amount *inputs, struct working *working)
{
    (void)about;
    return run_pull(results, TIMBER_WOOD_SCREW, inputs, false, working);
}

enum {
    THREAD_FASTENER,
    THREAD_DIAMETER,
    THREAD_LENGTH,
    THREAD_FIXTURE,
    THREAD_SHEATHING,
    THREAD_THREAD,
    THREAD_TIP,
    THREAD_MEMBER
};
static const struct parameter thread_penetration_inputs[] = {
    [THREAD_FASTENER] = GIVEN_WORD("fastener", words_for_fastener, "Kind of fastener."),
    [THREAD_DIAMETER] = GIVEN_QUANTITY("diameter", LENGTH, "in", 0.05, 1.25, "Its diameter."),
    [THREAD_LENGTH] = GIVEN_QUANTITY("length", LENGTH, "in", 0.5, 14, "Its length below the head."),
    [THREAD_FIXTURE] = GIVEN_QUANTITY("fixture_thickness", LENGTH, "in", 0, 12,
                                      "Mount, flashing and covering between head and wood."),
    [THREAD_SHEATHING] = GIVEN_QUANTITY("sheathing", LENGTH, "in", 0, 12,
                                        "Deck above the member: it holds nothing here."),
    [THREAD_THREAD] = MAYBE_QUANTITY("thread_length", LENGTH, "in", 0, 14,
                                     "Thread with its tip. Absent: by the standard's proportions."),
    [THREAD_TIP] =
        MAYBE_QUANTITY("tip_length", LENGTH, "in", 0, 2, "Tapered tip. Absent: by the table."),
    [THREAD_MEMBER] = MAYBE_QUANTITY("member_depth", LENGTH, "in", 0.5, 24,
                                     "Depth of the member. Absent: the point stays inside."),
};
static const struct parameter thread_penetration_results[] = {
    GIVEN_QUANTITY("penetration", LENGTH, "in", 0, 0, "Thread in the member, tip left out."),
};

static bool run_thread_penetration(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    (void)about;
    bool is_lag = strcmp(inputs[THREAD_FASTENER].word, "lag screw") == 0;
    bool is_wood_screw = strcmp(inputs[THREAD_FASTENER].word, "wood screw") == 0;
    struct timber_thread thread = {
        .fastener = is_lag ? TIMBER_LAG : TIMBER_WOOD_SCREW,
        .is_other = !is_lag && !is_wood_screw,
        .diameter = amount_in(inputs[THREAD_DIAMETER], "in", 0),
        .length = amount_in(inputs[THREAD_LENGTH], "in", 0),
        .above = amount_in(inputs[THREAD_FIXTURE], "in", 0) +
                 amount_in(inputs[THREAD_SHEATHING], "in", 0),
        .thread = amount_in(inputs[THREAD_THREAD], "in", NAN),
        .tip = amount_in(inputs[THREAD_TIP], "in", NAN),
        .member = amount_in(inputs[THREAD_MEMBER], "in", NAN),
    };
    if (!timber_thread_take(&thread, working))
        return false;
    results[0] = amount_as(thread.penetration, "in");
    return true;
}

enum {
    LATERAL_DIAMETER,
    LATERAL_PLATE,
    LATERAL_PENETRATION,
    LATERAL_DIRECTION,
    LATERAL_DURATION,
    LATERAL_SPECIES,
    LATERAL_GRAVITY,
    LATERAL_WET,
    LATERAL_TEMPERATURE,
    LATERAL_BEARING
};
#define PUSH_INPUTS(least, most, says)                                                             \
    [LATERAL_DIAMETER] = GIVEN_QUANTITY("diameter", LENGTH, "in", least, most, says),              \
    [LATERAL_PLATE] = GIVEN_QUANTITY("plate_thickness", LENGTH, "in", 0.02, 2,                     \
                                     "Metal plate between head and wood."),                        \
    [LATERAL_PENETRATION] =                                                                        \
        GIVEN_QUANTITY("penetration", LENGTH, "in", 0, 12, "Length in the member, tip left out."), \
    [LATERAL_DIRECTION] =                                                                          \
        GIVEN_WORD("direction", lateral_directions, "Which way it is pushed against the grain."),  \
    [LATERAL_DURATION] = GIVEN_DURATION, [LATERAL_SPECIES] = MAYBE_SPECIES,                        \
    [LATERAL_GRAVITY] = MAYBE_GRAVITY, [LATERAL_WET] = MAYBE_WET,                                  \
    [LATERAL_TEMPERATURE] = MAYBE_TEMPERATURE,                                                     \
    [LATERAL_BEARING] =                                                                            \
        MAYBE_QUANTITY("plate_bearing_strength", PRESSURE, "psi", 5000, 200000,                    \
                       "Dowel bearing strength of the plate. Absent: steel, by its thickness.")

static const struct parameter lag_lateral_inputs[] = {
    PUSH_INPUTS(0.25, 1.25, "Diameter of the lag screw."),
};
static const struct parameter wood_screw_lateral_inputs[] = {
    PUSH_INPUTS(0.138, 0.375, "Diameter of the wood screw's shank."),
};
static const struct parameter lag_lateral_results[] = {
    GIVEN_QUANTITY("capacity", FORCE, "lbf", 0, 0,
                   "What one screw carries; 0 below the least penetration."),
    GIVEN_QUANTITY("reference", FORCE, "lbf", 0, 0, "Z, unadjusted, of full penetration."),
    GIVEN_WORD("mode", NULL,
               "Yield mode that governs: \"Im\", \"Is\", \"II\", \"IIIm\", "
               "\"IIIs\" or \"IV\"."),
};
#define wood_screw_lateral_results lag_lateral_results

static bool run_push(struct amount *results, enum timber_fastener fastener,
                     const struct amount *inputs, struct working *working)
{
    struct timber_lateral push = {
        .fastener = fastener,
        .bearing = amount_in(inputs[LATERAL_BEARING], "psi", NAN),
        .diameter = amount_in(inputs[LATERAL_DIAMETER], "in", 0),
        .plate = amount_in(inputs[LATERAL_PLATE], "in", 0),
        .penetration = amount_in(inputs[LATERAL_PENETRATION], "in", 0),
        .is_parallel = strcmp(inputs[LATERAL_DIRECTION].word, lateral_directions[0]) == 0};
    if (!timber_gravity(&push.gravity, inputs[LATERAL_SPECIES], inputs[LATERAL_GRAVITY], working) ||
        !timber_service_take(&push.service, inputs[LATERAL_DURATION], inputs[LATERAL_WET],
                             inputs[LATERAL_TEMPERATURE], working) ||
        !timber_lateral_take(&push, working))
        return false;
    results[0] = amount_as(push.capacity, "lbf");
    results[1] = amount_as(push.reference, "lbf");
    results[2] = amount_of_word(push.mode);
    return true;
}

static bool run_lag_lateral(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    (void)about;
    return run_push(results, TIMBER_LAG, inputs, working);
}

static bool run_wood_screw_lateral(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    (void)about;
    return run_push(results, TIMBER_WOOD_SCREW, inputs, working);
}

static const struct parameter combined_capacity_inputs[] = {
    GIVEN_QUANTITY("withdrawal", FORCE, "lbf", 0, 100000, "Adjusted withdrawal capacity, W'p."),
    GIVEN_QUANTITY("lateral", FORCE, "lbf", 0, 100000, "Adjusted lateral capacity, Z'."),
    GIVEN_QUANTITY("tension", FORCE, "lbf", 0, 100000, "Load that pulls it out."),
    GIVEN_QUANTITY("shear", FORCE, "lbf", 0, 100000, "Load along the surface of the wood."),
};
static const struct parameter combined_capacity_results[] = {
    GIVEN_QUANTITY("capacity", FORCE, "lbf", 0, 0, "What it carries in the load's own direction."),
    GIVEN_QUANTITY("load", FORCE, "lbf", 0, 0, "Both loads together."),
    GIVEN_QUANTITY("angle", ANGLE, "°", 0, 0, "Between the load and the surface of the wood."),
    MAYBE_NUMBER("ratio", 0, 0, "Load over capacity; none where there is no capacity."),
};

static bool run_combined_capacity(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    (void)about;
    double pull = amount_in(inputs[0], "lbf", 0), push = amount_in(inputs[1], "lbf", 0);
    double tension = amount_in(inputs[2], "lbf", 0), shear = amount_in(inputs[3], "lbf", 0);
    double load = hypot(tension, shear);
    if (load <= 0)
        return working_wrong(working, "tension", "tension and shear are both zero: no direction");
    double cosine = shear / load, sine = tension / load;
    double below = pull * cosine * cosine + push * sine * sine;
    double capacity = below > 0 ? pull * push / below : 0;
    double degrees = atan2(tension, shear) * 180 / acos(-1);
    working_step(working, "NDS 12.4.1, Hankinson's form (from memory)",
                 "at %.4g° to the wood: Z'α = W'p Z' / (W'p cos² + Z' sin²) = %.5g × %.5g / "
                 "(%.5g × %.4g + %.5g × %.4g) = %.5g lbf",
                 degrees, pull, push, pull, cosine * cosine, push, sine * sine, capacity);
    results[0] = amount_as(capacity, "lbf");
    results[1] = amount_as(load, "lbf");
    results[2] = amount_as(degrees, "°");
    if (capacity > 0)
        results[3] = amount_of_number(load / capacity);
    return true;
}

static const struct parameter fastener_capacity_inputs[] = {
    GIVEN_QUANTITY("withdrawal", FORCE, "lbf", 0, 100000, "Adjusted capacity of one fastener."),
    GIVEN_NUMBER("fasteners", 1, 12, "Fasteners per attachment."),
    GIVEN_NUMBER("prying_factor", 1, 5, "How much prying raises the tension; 1: none."),
};
static const struct parameter fastener_capacity_results[] = {
    GIVEN_QUANTITY("capacity", FORCE, "lbf", 0, 0, "Uplift that the fasteners hold together."),
};

static bool run_fastener_capacity(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    (void)about;
    results[0] = amount_as(timber_pried(amount_in(inputs[0], "lbf", 0), inputs[1].quantity.value,
                                        inputs[2].quantity.value, working),
                           "lbf");
    return true;
}

static const struct parameter load_duration_factor_inputs[] = {GIVEN_DURATION};
static const struct parameter load_duration_factor_results[] = {
    GIVEN_NUMBER("factor", 0, 0, "CD."),
};

static bool run_load_duration_factor(struct amount *results, const struct object *about,
                                     const struct amount *inputs, struct working *working)
{
    (void)about;
    const struct wood_duration *duration = wood_duration_find(inputs[0].word);
    working_step(working, duration->source, "%s: CD = %.4g", duration->load, duration->factor);
    results[0] = amount_of_number(duration->factor);
    return true;
}

static const struct parameter wood_gravity_inputs[] = {
    GIVEN_WORD("species", words_for_species, "Wood species combination."),
};
static const struct parameter wood_gravity_results[] = {
    GIVEN_NUMBER("specific_gravity", 0, 0, "G for connections."),
};

static bool run_wood_gravity(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    (void)about;
    double gravity;
    if (!timber_gravity(&gravity, inputs[0], (struct amount){.type = AMOUNT_NONE}, working))
        return false;
    results[0] = amount_of_number(gravity);
    return true;
}

const struct calculator fastener_calculators[] = {
    FREE_CALCULATOR(lag_withdrawal, lag_withdrawal_inputs, lag_withdrawal_results,
                    "What a lag screw holds against being pulled out of wood.", withdrawal_source),
    FREE_CALCULATOR(wood_screw_withdrawal, wood_screw_withdrawal_inputs,
                    wood_screw_withdrawal_results,
                    "What a wood screw holds against being pulled out of wood.", withdrawal_source),
    FREE_CALCULATOR(thread_penetration, thread_penetration_inputs, thread_penetration_results,
                    "How much of a fastener's thread stands in the member.",
                    "NDS 12.1, Appendix L"),
    FREE_CALCULATOR(lag_lateral, lag_lateral_inputs, lag_lateral_results,
                    "What a lag screw through a metal plate carries sideways.", lateral_source),
    FREE_CALCULATOR(wood_screw_lateral, wood_screw_lateral_inputs, wood_screw_lateral_results,
                    "What a wood screw through a metal plate carries sideways.", lateral_source),
    FREE_CALCULATOR(combined_capacity, combined_capacity_inputs, combined_capacity_results,
                    "What a fastener carries when pulled and pushed at once.",
                    "NDS 12.4.1 (from memory)"),
    FREE_CALCULATOR(fastener_capacity, fastener_capacity_inputs, fastener_capacity_results,
                    "What an attachment's fasteners hold, prying counted.", "statics"),
    FREE_CALCULATOR(weakest_part, weakest_part_inputs, weakest_part_results,
                    "The part of an attachment that holds least, and what the others hold.",
                    "statics"),
    FREE_CALCULATOR(load_duration_factor, load_duration_factor_inputs, load_duration_factor_results,
                    "How much wood carries more for a load that does not last.", "NDS Table 2.3.2"),
    FREE_CALCULATOR(wood_gravity, wood_gravity_inputs, wood_gravity_results,
                    "Specific gravity of a wood species for its connections.", "NDS Table 12.3.3A"),
    METHOD_CALCULATOR(attachment_model, withdrawal, attachment_model_withdrawal_inputs,
                      attachment_model_withdrawal_results,
                      "What its fasteners hold in a kind of wood.", withdrawal_source),
    METHOD_CALCULATOR(attachment_model, uplift_capacity, attachment_model_uplift_capacity_inputs,
                      attachment_model_uplift_capacity_results,
                      "Allowable uplift: the least of fasteners and tested mount.", least_source),
    METHOD_CALCULATOR(attachment_model, lateral_capacity, attachment_model_lateral_capacity_inputs,
                      attachment_model_lateral_capacity_results,
                      "Allowable load along the roof: the least of its screws and tested mount.",
                      slide_source),
    METHOD_CALCULATOR(attachment_model, down_capacity, attachment_model_down_capacity_inputs,
                      attachment_model_down_capacity_results, "Allowable load downward.",
                      test_source),
    METHOD_CALCULATOR(attachment, uplift_capacity, attachment_uplift_capacity_inputs,
                      attachment_model_uplift_capacity_results,
                      "Allowable uplift where it stands: the least of fasteners and tested mount.",
                      least_source),
    METHOD_CALCULATOR(attachment, lateral_capacity, attachment_lateral_capacity_inputs,
                      attachment_model_lateral_capacity_results,
                      "Allowable load along the roof where it stands: the least of its screws and "
                      "tested mount.",
                      slide_source),
    METHOD_CALCULATOR(attachment, down_capacity, attachment_model_down_capacity_inputs,
                      attachment_model_down_capacity_results,
                      "Allowable load downward where it stands.", test_source),
    PLAIN_METHOD(attachment, off_member, attachment_off_member_results,
                 "How far it stands from the nearest member.", "geometry"),
    {.name = NULL},
};
