/* One span under point loads that a person lists: "120 lbf at 3 ft, 120 lbf at 7 ft". */
#include "rafter.h"

#include <math.h>
#include <string.h>

enum { POINTS_SPAN, POINTS_LOADS, POINTS_LINE, POINTS_SIZE, POINTS_SPECIES, POINTS_GRADE };
const struct parameter point_load_inputs[POINT_LOAD_INPUTS] = {
    [POINTS_SPAN] = GIVEN_QUANTITY("span", LENGTH, "ft", 0.5, 60, "Distance of the supports."),
    [POINTS_LOADS] = GIVEN_WORD("loads", NULL,
                                "Any number of loads, each from the left support: \"120 lbf at 3 "
                                "ft, 90 lbf at 7 ft\"; down is positive."),
    [POINTS_LINE] = MAYBE_QUANTITY("line_load", LINE_LOAD, "lbf/ft", -10000, 10000,
                                   "Even load over the whole span. Absent: none."),
    [POINTS_SIZE] = MAYBE_WORD("size", words_for_lumber_size, "For stress; nominal size."),
    [POINTS_SPECIES] = MAYBE_WORD("species", words_for_species, "For deflection, with grade."),
    [POINTS_GRADE] = MAYBE_WORD("grade", words_for_grade, "For deflection, with species."),
};
const struct parameter point_load_results[POINT_LOAD_RESULTS] = {
    GIVEN_QUANTITY("moment", MOMENT, "lbf·in", 0, 0, "Largest; sagging is positive."),
    GIVEN_QUANTITY("shear", FORCE, "lbf", 0, 0, "Largest."),
    GIVEN_QUANTITY("left_reaction", FORCE, "lbf", 0, 0, "Up is positive."),
    GIVEN_QUANTITY("right_reaction", FORCE, "lbf", 0, 0, "Up is positive."),
    GIVEN_QUANTITY("moment_at", LENGTH, "ft", 0, 0, "Where, from the left support."),
    MAYBE_QUANTITY("stress", PRESSURE, "psi", 0, 0, "Bending stress, where the size is given."),
    MAYBE_QUANTITY("deflection", LENGTH, "in", 0, 0, "Largest, where the wood is given."),
    MAYBE_QUANTITY("deflection_at", LENGTH, "ft", 0, 0, "Where, from the left support."),
};

static bool refuse(const char *text, size_t length, struct working *working)
{
    return working_wrong(
        working, "loads",
        "'%.*s' is no load; write each as \"120 lbf at 3 ft\", with commas between",
        (int)(length < 60 ? length : 60), text);
}

/* One "120 lbf at 3 ft". */
static bool read_load(struct point_load *out, const char *text, size_t length, double span,
                      struct working *working)
{
    static const char at[] = " at ";
    struct quantity_fault fault;
    struct quantity load, place;
    size_t before = 0;
    while (before + 4 <= length && memcmp(text + before, at, 4) != 0)
        before++;
    if (before + 4 > length ||
        !quantity_read(&load, text, before, measure_dimension(FORCE), &fault) ||
        !quantity_read(&place, text + before + 4, length - before - 4, measure_dimension(LENGTH),
                       &fault))
        return refuse(text, length, working);
    *out = (struct point_load){quantity_as(place, "in"), quantity_as(load, "lbf")};
    if (number_compare(out->at, 0) < 0 || number_compare(out->at, span) > 0)
        return working_wrong(working, "loads", "'%.*s' stands outside the span of %.5g ft",
                             (int)(length < 60 ? length : 60), text, span / 12);
    return true;
}

static bool read_loads(struct beam *beam, const char *text, struct working *working)
{
    size_t capacity = 1;
    for (const char *at = text; *at != '\0'; at++)
        capacity += *at == ',';
    beam->loads = arena_take(working->arena, capacity * sizeof *beam->loads);
    if (beam->loads == NULL)
        return working_short(working);
    for (;;) {
        text += strspn(text, " ");
        size_t length = strcspn(text, ","), trimmed = length;
        while (trimmed > 0 && text[trimmed - 1] == ' ')
            trimmed--;
        if (!read_load(&beam->loads[beam->count], text, trimmed, beam->span, working))
            return false;
        beam->count++;
        if (text[length] == '\0')
            return true;
        text += length + 1;
    }
}

static bool take_stiffness(double *out, const struct amount *inputs, struct working *working)
{
    const struct amount *size = &inputs[POINTS_SIZE], *species = &inputs[POINTS_SPECIES],
                        *grade = &inputs[POINTS_GRADE];
    *out = 0;
    if (!is_given(*size) || !is_given(*species) || !is_given(*grade))
        return true;
    struct timber_member member = {
        .species = species->word, .grade = grade->word, .size = size->word, .spacing = 24};
    if (!timber_member_take(&member, working))
        return false;
    *out = member.elasticity * wood_section_second_moment(member.section);
    return true;
}

static void give_bend(struct amount *results, const struct beam_result *solved, double stiffness,
                      const struct amount *inputs, struct working *working)
{
    if (is_given(inputs[POINTS_SIZE])) {
        const struct wood_section *section = wood_section_find(inputs[POINTS_SIZE].word);
        double stress = fabs(solved->moment) / wood_section_modulus(section);
        working_step(working, "NDS 3.3", "fb = M/S = %.5g psi", stress);
        results[5] = amount_as(stress, "psi");
    }
    if (stiffness > 0) {
        working_step(working, "statics",
                     "largest deflection %.5g in at %.5g ft, where the slope is zero",
                     solved->deflection, solved->deflection_at / 12);
        results[6] = amount_as(solved->deflection, "in");
        results[7] = amount_as(solved->deflection_at / 12, "ft");
    }
}

bool run_rafter_with_point_loads(struct amount *results, const struct object *about,
                                 const struct amount *inputs, struct working *working)
{
    (void)about;
    struct beam beam = {.span = amount_in(inputs[POINTS_SPAN], "in", 0),
                        .line_load = amount_in(inputs[POINTS_LINE], "lbf/in", 0)};
    struct beam_result solved;
    if (!read_loads(&beam, inputs[POINTS_LOADS].word, working) ||
        !take_stiffness(&beam.stiffness, inputs, working))
        return false;
    beam_solve(&solved, &beam);
    working_step(working, "statics", "reactions: left %.6g lbf, right %.6g lbf", solved.left,
                 solved.right);
    working_step(working, "statics",
                 "largest moment %.6g lbf·ft at %.5g ft; largest shear %.6g lbf",
                 solved.moment / 12, solved.moment_at / 12, solved.shear);
    results[0] = amount_as(solved.moment, "lbf·in");
    results[1] = amount_as(solved.shear, "lbf");
    results[2] = amount_as(solved.left, "lbf");
    results[3] = amount_as(solved.right, "lbf");
    results[4] = amount_as(solved.moment_at / 12, "ft");
    give_bend(results, &solved, beam.stiffness, inputs, working);
    return true;
}
