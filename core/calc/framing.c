/* Calculators of framing: sections, design values, rafters. */
#include "rafter.h"
#include "structural.h"

#include <math.h>
#include <string.h>

static const struct parameter section_properties_inputs[] = {
    GIVEN_WORD("size", words_for_lumber_size, "Nominal size."),
};
static const struct parameter section_properties_results[] = {
    GIVEN_QUANTITY("section_modulus", VOLUME, "in³", 0, 0, "S about the strong axis."),
    GIVEN_QUANTITY("second_moment", SECOND_MOMENT, "in⁴", 0, 0, "I about the strong axis."),
    GIVEN_QUANTITY("area", AREA, "in²", 0, 0, "A."),
    GIVEN_QUANTITY("width", LENGTH, "in", 0, 0, "Dressed width."),
    GIVEN_QUANTITY("depth", LENGTH, "in", 0, 0, "Dressed depth."),
};

static bool run_section_properties(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    (void)about;
    const struct wood_section *section = wood_section_find(inputs[0].word);
    if (section == NULL)
        return working_beyond(working, "no dressed size is in the table for %s", inputs[0].word);
    working_step(working, "PS 20 dressed sizes",
                 "%s: b = %.4g in, d = %.4g in; A = bd, S = bd²/6, I = bd³/12", section->size,
                 section->width, section->depth);
    results[0] = amount_as(wood_section_modulus(section), "in³");
    results[1] = amount_as(wood_section_second_moment(section), "in⁴");
    results[2] = amount_as(wood_section_area(section), "in²");
    results[3] = amount_as(section->width, "in");
    results[4] = amount_as(section->depth, "in");
    return true;
}

/* Rafters take their member in the same order, after the load. */
enum { MEMBER_SPECIES, MEMBER_GRADE, MEMBER_SIZE, MEMBER_SPACING, MEMBER_INPUTS };
#define MEMBER_ROWS                                                                                \
    [MEMBER_SPECIES] = GIVEN_WORD("species", words_for_species, "Wood species combination."),      \
    [MEMBER_GRADE] = GIVEN_WORD("grade", words_for_grade, "Lumber grade."),                        \
    [MEMBER_SIZE] = GIVEN_WORD("size", words_for_lumber_size, "Nominal size."),                    \
    [MEMBER_SPACING] = GIVEN_QUANTITY("spacing", LENGTH, "in", 4, 120, "Spacing on center.")
#define RAFTER_SPAN                                                                                \
    GIVEN_QUANTITY("span", LENGTH, "ft", 0.5, 60, "Clear span in horizontal projection.")

static struct timber_member member_of(const struct amount *inputs)
{
    return (struct timber_member){.species = inputs[MEMBER_SPECIES].word,
                                  .grade = inputs[MEMBER_GRADE].word,
                                  .size = inputs[MEMBER_SIZE].word,
                                  .spacing = amount_in(inputs[MEMBER_SPACING], "in", 0)};
}

static bool is_by_code(struct amount basis)
{
    return is_given(basis) && strcmp(basis.word, value_basis_words[1]) == 0;
}

static bool is_yes(struct amount input)
{
    return is_given(input) && input.yes;
}

enum { CHECK_SPAN = MEMBER_INPUTS, CHECK_LOAD, CHECK_DURATION, CHECK_WET, CHECK_BASIS };
static const struct parameter rafter_bending_inputs[] = {
    MEMBER_ROWS,
    [CHECK_SPAN] = RAFTER_SPAN,
    [CHECK_LOAD] = RAFTER_LOAD,
    [CHECK_DURATION] = GIVEN_DURATION,
    [CHECK_WET] = MAYBE_WET,
    [CHECK_BASIS] = RAFTER_BASIS,
};
#define STRESS_RESULTS(last)                                                                       \
    GIVEN_QUANTITY("stress", PRESSURE, "psi", 0, 0, "Stress in the member."),                      \
        GIVEN_QUANTITY("allowed", PRESSURE, "psi", 0, 0, "Adjusted design value."),                \
        GIVEN_NUMBER("ratio", 0, 0, "Stress over design value."), last
static const struct parameter rafter_bending_results[] = {
    STRESS_RESULTS(GIVEN_QUANTITY("moment", MOMENT, "lbf·in", 0, 0, "Bending moment."))};
static const struct parameter rafter_shear_results[] = {
    STRESS_RESULTS(GIVEN_QUANTITY("shear", FORCE, "lbf", 0, 0, "Shear force at the support."))};
#define rafter_shear_inputs rafter_bending_inputs

static struct rafter rafter_of(const struct amount *inputs)
{
    struct rafter rafter = {.member = member_of(inputs),
                            .span = amount_in(inputs[CHECK_SPAN], "in", 0),
                            .load = amount_in(inputs[CHECK_LOAD], "psf", 0)};
    rafter.member.is_wet = is_yes(inputs[CHECK_WET]);
    rafter.member.by_code_tables = is_by_code(inputs[CHECK_BASIS]);
    rafter.member.duration = wood_duration_find(inputs[CHECK_DURATION].word);
    return rafter;
}

static bool run_rafter_bending(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)about;
    struct rafter rafter = rafter_of(inputs);
    return rafter_bend(results, &rafter, working);
}

static bool run_rafter_shear(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    (void)about;
    struct rafter rafter = rafter_of(inputs);
    return rafter_resist(results, &rafter, working);
}

enum { SAG_SPAN = MEMBER_INPUTS, SAG_LOAD, SAG_LIMIT, SAG_WET };
static const struct parameter rafter_deflection_inputs[] = {
    MEMBER_ROWS,
    [SAG_SPAN] = RAFTER_SPAN,
    [SAG_LOAD] = RAFTER_LOAD,
    [SAG_LIMIT] = RAFTER_LIMIT,
    [SAG_WET] = MAYBE_WET,
};
static const struct parameter rafter_deflection_results[] = {
    GIVEN_QUANTITY("deflection", LENGTH, "in", 0, 0, "At midspan."),
    GIVEN_QUANTITY("allowed", LENGTH, "in", 0, 0, "Span over the limit's number."),
    GIVEN_NUMBER("ratio", 0, 0, "Deflection over what is allowed."),
};

static bool run_rafter_deflection(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    (void)about;
    struct rafter rafter = {.member = member_of(inputs),
                            .span = amount_in(inputs[SAG_SPAN], "in", 0),
                            .load = amount_in(inputs[SAG_LOAD], "psf", 0)};
    rafter.member.is_wet = is_yes(inputs[SAG_WET]);
    return rafter_deflect(results, &rafter, inputs[SAG_LIMIT].quantity.value, working);
}

enum { SPAN_LIVE = MEMBER_INPUTS, SPAN_DEAD, SPAN_DURATION, SPAN_LIMIT, SPAN_WET, SPAN_BASIS };
static const struct parameter rafter_span_inputs[] = {
    MEMBER_ROWS,
    [SPAN_LIVE] = RAFTER_LIVE,
    [SPAN_DEAD] = RAFTER_DEAD,
    [SPAN_DURATION] = GIVEN_DURATION,
    [SPAN_LIMIT] = RAFTER_LIMIT,
    [SPAN_WET] = MAYBE_WET,
    [SPAN_BASIS] = RAFTER_BASIS,
};
static const struct parameter rafter_span_results[] = {
    GIVEN_QUANTITY("span", LENGTH, "ft", 0, 0, "Longest span in horizontal projection."),
    GIVEN_WORD("governs", NULL, "\"bending\", \"deflection\" or \"shear\"."),
    GIVEN_QUANTITY("bending_span", LENGTH, "ft", 0, 0, "By bending alone."),
    GIVEN_QUANTITY("deflection_span", LENGTH, "ft", 0, 0, "By deflection of the live load alone."),
    GIVEN_QUANTITY("shear_span", LENGTH, "ft", 0, 0, "By shear alone."),
};

static bool run_rafter_span(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    (void)about;
    double live = amount_in(inputs[SPAN_LIVE], "psf", 0);
    struct rafter rafter = {.member = member_of(inputs),
                            .load = live + amount_in(inputs[SPAN_DEAD], "psf", 0)};
    rafter.member.is_wet = is_yes(inputs[SPAN_WET]);
    rafter.member.by_code_tables = is_by_code(inputs[SPAN_BASIS]);
    rafter.member.duration = wood_duration_find(inputs[SPAN_DURATION].word);
    return rafter_reach(results, &rafter, live, inputs[SPAN_LIMIT].quantity.value, working);
}

static const struct parameter framing_bending_inputs[] = {[BEND_LOAD] = RAFTER_LOAD,
                                                          [BEND_DURATION] = GIVEN_DURATION,
                                                          [BEND_BASIS] = RAFTER_BASIS,
                                                          [BEND_DRIFT] = RAFTER_DRIFT,
                                                          [BEND_REACH] = RAFTER_REACH};
#define framing_bending_results rafter_bending_results
#define framing_shear_inputs    framing_bending_inputs
#define framing_shear_results   rafter_shear_results
static const struct parameter framing_deflection_inputs[] = {
    [DEFLECT_LOAD] = RAFTER_LOAD, [DEFLECT_LIMIT] = RAFTER_LIMIT};
#define framing_deflection_results rafter_deflection_results
static const struct parameter framing_allowable_span_inputs[] = {[REACH_LIVE] = RAFTER_LIVE,
                                                                 [REACH_DEAD] = RAFTER_DEAD,
                                                                 [REACH_DURATION] = GIVEN_DURATION,
                                                                 [REACH_LIMIT] = RAFTER_LIMIT,
                                                                 [REACH_BASIS] = RAFTER_BASIS};
#define framing_allowable_span_results rafter_span_results
static const struct parameter framing_under_array_inputs[] = {
    [ARRAY_ROOF_LOAD] = GIVEN_QUANTITY("roof_load", PRESSURE, "psf", 0, 1000,
                                       "Load on the roof itself, per area of plan."),
    [ARRAY_DURATION] = GIVEN_DURATION,
    [ARRAY_ATTACHMENT_LOAD] =
        MAYBE_QUANTITY("attachment_load", FORCE, "lbf", 0, 20000,
                       "Load down of each attachment, all alike; or give array_load."),
    [ARRAY_ARRAY_LOAD] =
        MAYBE_QUANTITY("array_load", PRESSURE, "psf", 0, 500,
                       "Load down per area of modules: each attachment takes what comes to it."),
    [ARRAY_BASIS] = RAFTER_BASIS,
    [ARRAY_DRIFT] = MAYBE_QUANTITY("drift", PRESSURE, "psf", 0, 1000,
                                   "What drifted snow adds to array_load near the ridge, per area "
                                   "of modules. Absent: none."),
    [ARRAY_REACH] = RAFTER_REACH,
};
#define UNDER_STRESSES                                                                             \
    GIVEN_QUANTITY("stress", PRESSURE, "psi", 0, 0, "Largest bending stress of any member."),      \
        GIVEN_QUANTITY("allowed", PRESSURE, "psi", 0, 0, "Adjusted bending value."),               \
        GIVEN_NUMBER("ratio", 0, 0, "The larger of both stresses over its value."),                \
        GIVEN_QUANTITY("shear_stress", PRESSURE, "psi", 0, 0,                                      \
                       "Largest shear stress of any member."),                                     \
        GIVEN_QUANTITY("shear_allowed", PRESSURE, "psi", 0, 0, "Adjusted shear value.")
static const struct parameter framing_under_array_results[] = {
    UNDER_STRESSES,
    GIVEN_QUANTITY("deflection", LENGTH, "in", 0, 0, "Largest deflection under all the load."),
    GIVEN_NUMBER("attachments", 0, 0, "How many stand on one span of the most bent member."),
    GIVEN_NUMBER("member", 0, 0, "The most bent member, counted from 0 at the first."),
};

static const struct parameter framing_under_uplift_inputs[] = {
    [UPLIFT_EDITION] = GIVEN_WORD("edition", edition_words, "Edition of ASCE 7."),
    [UPLIFT_SPEED] = GIVEN_QUANTITY("speed", SPEED, "mph", 50, 250, "Basic wind speed (ultimate)."),
    [UPLIFT_ROOF] = GIVEN_QUANTITY("roof_dead", PRESSURE, "psf", 0, 200,
                                   "Dead load of the roof itself, per area of plan."),
    [UPLIFT_ARRAY] = GIVEN_QUANTITY("array_dead", PRESSURE, "psf", 0, 200,
                                    "Dead load of the array, per area of modules."),
    [UPLIFT_MINIMUM] = MAYBE_QUANTITY("minimum", PRESSURE, "psf", 0, 100,
                                      "Least pressure, where the book asks for one."),
};
static const struct parameter framing_under_uplift_results[] = {
    UNDER_STRESSES,
};

static const struct parameter framing_array_share_results[] = {
    GIVEN_NUMBER("share", 0, 0, "The most that one carries on a span, over its own area of roof."),
    GIVEN_NUMBER("on_overhang", 0, 0, "Attachments past the lower support, which bring it none."),
};

#define hand_source "NDS 3.3 to 3.5, statics of a simply supported member"

const struct calculator framing_calculators[] = {
    FREE_CALCULATOR(section_properties, section_properties_inputs, section_properties_results,
                    "Section of a nominal size of lumber.", "PS 20"),
    FREE_CALCULATOR(rafter_bending, rafter_bending_inputs, rafter_bending_results,
                    "Bending of a rafter under an even load.", hand_source),
    FREE_CALCULATOR(rafter_shear, rafter_shear_inputs, rafter_shear_results,
                    "Shear in a rafter under an even load.", hand_source),
    FREE_CALCULATOR(rafter_deflection, rafter_deflection_inputs, rafter_deflection_results,
                    "Deflection of a rafter under an even load.", hand_source),
    FREE_CALCULATOR(rafter_span, rafter_span_inputs, rafter_span_results,
                    "How far a rafter may span.", hand_source),
    FREE_CALCULATOR(rafter_with_point_loads, point_load_inputs, point_load_results,
                    "Moment, shear and deflection of one span under point loads and an even load.",
                    "statics of a simply supported beam"),
    METHOD_CALCULATOR(framing, bending, framing_bending_inputs, framing_bending_results,
                      "Bending of its rafters under an even load.", hand_source),
    METHOD_CALCULATOR(framing, shear, framing_shear_inputs, framing_shear_results,
                      "Shear in its rafters under an even load.", hand_source),
    METHOD_CALCULATOR(framing, deflection, framing_deflection_inputs, framing_deflection_results,
                      "Deflection of its rafters under an even load.", hand_source),
    METHOD_CALCULATOR(framing, allowable_span, framing_allowable_span_inputs,
                      framing_allowable_span_results, "How far its rafters may span.", hand_source),
    METHOD_CALCULATOR(framing, under_array, framing_under_array_inputs, framing_under_array_results,
                      "The most loaded member, each attachment a point load on the one below it.",
                      hand_source),
    METHOD_CALCULATOR(framing, under_uplift, framing_under_uplift_inputs,
                      framing_under_uplift_results,
                      "The most bent member where wind on the array pulls at each attachment.",
                      "NDS 3.3 to 3.4, ASCE 7 2.4, statics of a simply supported member"),
    PLAIN_METHOD(framing, array_share, framing_array_share_results,
                 "How much of the array comes to one of its rafters or trusses.", "statics"),
    {.name = NULL},
};
