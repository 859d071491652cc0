/* Methods about framing: its members under even loads, and under the array's attachments. */
#include "rafter.h"

#include <assert.h>
#include <math.h>
#include <string.h>

#include "layout_support.h"
#include "placed.h"
#include "stands.h"

/* What an engineer needs to judge a member that is no plain rafter. */
static bool refuse_kind(const char *kind, struct working *working)
{
    if (strcmp(kind, "truss") == 0)
        return working_beyond(
            working, "a truss is checked by its designer: an engineer needs the truss drawings "
                     "(chords and webs, plates, design loads), the spacing, the span, photographs "
                     "of every change made to it, and the load and place of each attachment");
    return working_beyond(working,
                          "a %s is no simple rafter: an engineer needs its section, material, "
                          "supports and connections, and the load and place of each attachment",
                          kind);
}

bool rafter_take(struct rafter *out, const struct object *framing, struct working *working)
{
    const char *kind;
    *out = (struct rafter){.load = 0};
    struct timber_member *member = &out->member;
    if (!need_word(&kind, framing, SLOT_framing_kind, working))
        return false;
    if (strcmp(kind, "rafter") != 0)
        return refuse_kind(kind, working);
    return need_word(&member->size, framing, SLOT_framing_size, working) &&
           need_word(&member->species, framing, SLOT_framing_species, working) &&
           need_word(&member->grade, framing, SLOT_framing_grade, working) &&
           timber_need_inches(&member->spacing, framing, SLOT_framing_spacing, working) &&
           timber_need_inches(&out->span, framing, SLOT_framing_span, working) &&
           need_yesno(&member->is_wet, framing, SLOT_framing_wet_service, working);
}

static void take_strength(struct rafter *rafter, struct amount duration, struct amount basis)
{
    rafter->member.duration = wood_duration_find(duration.word);
    rafter->member.by_code_tables =
        is_given(basis) && strcmp(basis.word, value_basis_words[1]) == 0;
}

static void take_drift(struct rafter *rafter, struct amount drift, struct amount reach)
{
    rafter->drift = amount_in(drift, "psf", 0);
    rafter->reach = amount_in(reach, "in", INFINITY);
}

bool run_framing_bending(struct amount *results, const struct object *about,
                         const struct amount *inputs, struct working *working)
{
    struct rafter rafter;
    if (!rafter_take(&rafter, about, working))
        return false;
    rafter.load = amount_in(inputs[BEND_LOAD], "psf", 0);
    take_strength(&rafter, inputs[BEND_DURATION], inputs[BEND_BASIS]);
    take_drift(&rafter, inputs[BEND_DRIFT], inputs[BEND_REACH]);
    return rafter_bend(results, &rafter, working);
}

bool run_framing_shear(struct amount *results, const struct object *about,
                       const struct amount *inputs, struct working *working)
{
    struct rafter rafter;
    if (!rafter_take(&rafter, about, working))
        return false;
    rafter.load = amount_in(inputs[BEND_LOAD], "psf", 0);
    take_strength(&rafter, inputs[BEND_DURATION], inputs[BEND_BASIS]);
    take_drift(&rafter, inputs[BEND_DRIFT], inputs[BEND_REACH]);
    return rafter_resist(results, &rafter, working);
}

bool run_framing_deflection(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct rafter rafter;
    if (!rafter_take(&rafter, about, working))
        return false;
    rafter.load = amount_in(inputs[DEFLECT_LOAD], "psf", 0);
    return rafter_deflect(results, &rafter, inputs[DEFLECT_LIMIT].quantity.value, working);
}

bool run_framing_allowable_span(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    struct rafter rafter;
    if (!rafter_take(&rafter, about, working))
        return false;
    double live = amount_in(inputs[REACH_LIVE], "psf", 0);
    rafter.load = live + amount_in(inputs[REACH_DEAD], "psf", 0);
    take_strength(&rafter, inputs[REACH_DURATION], inputs[REACH_BASIS]);
    return rafter_reach(results, &rafter, live, inputs[REACH_LIMIT].quantity.value, working);
}

/* Adds what drifts onto those attachments whose modules come that near to the ridge. */
static bool add_drift(double *loads, const struct layout_support *support,
                      const struct object *plane, const struct amount *inputs,
                      struct working *working)
{
    struct layout_plane *opened;
    struct amount drift = inputs[ARRAY_DRIFT], reach = inputs[ARRAY_REACH];
    size_t within = 0;
    if (!is_given(drift))
        return true;
    if (!layout_plane_open(&opened, plane, LAYOUT_EDGES | LAYOUT_SLOPE, working))
        return false;
    double far = amount_in(reach, "m", INFINITY);
    for (size_t i = 0; i < support->attachment_count; i++) {
        const struct layout_attachment *one = &support->attachments[i];
        if (number_compare(placed_below_ridge(opened, one->top), far) >= 0)
            continue;
        loads[i] += drift.quantity.value * one->area / TIMBER_POUND_FORCE;
        within++;
    }
    working_step(working, NULL,
                 "%zu attachment(s) carry modules that reach into the drifted snow below the ridge",
                 within);
    return true;
}

/* What each attachment of the plane carries, lbf: the stated load, or the array's load on the area
 * that comes to it. */
static bool take_loads(double **out, size_t *count, const struct object *plane,
                       const struct amount *inputs, struct working *working)
{
    struct object *const *attachments;
    struct layout_plane *opened;
    const struct layout_support *support = NULL;
    struct amount stated = inputs[ARRAY_ATTACHMENT_LOAD], spread = inputs[ARRAY_ARRAY_LOAD];
    if (is_given(stated) == is_given(spread))
        return working_wrong(working, "attachment_load",
                             "give either attachment_load or array_load, and only one of them");
    if (!need_objects(&attachments, count, plane, SLOT_roof_plane_attachments, working) ||
        (is_given(spread) && !layout_support_open(&support, &opened, plane, working)))
        return false;
    *out = arena_take(working->arena, (*count + 1) * sizeof **out);
    if (*out == NULL)
        return working_short(working);
    for (size_t i = 0; is_given(spread) && i < opened->module_count; i++) {
        assert(support != NULL); /* opened above */
        if (!support->is_carried[i])
            return working_beyond(working, "no attachment is found that carries module %s",
                                  opened->modules[i].object->path);
    }
    for (size_t i = 0; i < *count; i++) {
        assert(is_given(stated) || support != NULL);
        (*out)[i] = is_given(stated)
                        ? stated.quantity.value / TIMBER_POUND_FORCE
                        : spread.quantity.value * support->attachments[i].area / TIMBER_POUND_FORCE;
    }
    return support == NULL || add_drift(*out, support, plane, inputs, working);
}

/* The worst of all members so far. */
struct worst {
    double moment, shear, deflection, member;
    size_t attachments;
    bool has_jacks; /* members may end anywhere: a load may stand at their very end */
};

/* Do members of the plane end at a hip or valley? */
static bool has_jacks(const struct object *plane, struct working *working)
{
    const struct fact *edges = object_fact(plane, SLOT_roof_plane_edges);
    working_read(working, plane, SLOT_roof_plane_edges);
    for (size_t i = 0; object_has(plane, SLOT_roof_plane_edges) && i < edges->count; i++)
        if (strcmp(edges->is.words[i], "hip") == 0 || strcmp(edges->is.words[i], "valley") == 0)
            return true;
    return false;
}

static void weigh(struct worst *worst, struct beam *beam, double member)
{
    struct beam_result solved;
    beam_solve(&solved, beam);
    if (worst->has_jacks) {
        /* A load just inside a jack's own end goes into that support whole. */
        double all = fabs(beam->line_load) * beam->span / 2;
        for (size_t i = 0; i < beam->count; i++)
            all += fabs(beam->loads[i].load);
        solved.shear = fmax(solved.shear, all);
    }
    worst->shear = fmax(worst->shear, solved.shear);
    worst->deflection = fmax(worst->deflection, fabs(solved.deflection));
    if (fabs(solved.moment) > worst->moment) {
        worst->moment = fabs(solved.moment);
        worst->member = member;
        worst->attachments = beam->count;
    }
}

static bool weigh_all(struct worst *worst, struct beam beam, const struct stand *stands,
                      size_t count, struct working *working)
{
    beam.loads = arena_take(working->arena, (count + 1) * sizeof *beam.loads);
    if (beam.loads == NULL)
        return working_short(working);
    weigh(worst, &beam, 0);
    for (size_t i = 0; i < count; i += beam.count) {
        beam.count = 0;
        while (i + beam.count < count &&
               stand_by_member(&stands[i], &stands[i + beam.count]) == 0) {
            const struct stand *stand = &stands[i + beam.count];
            beam.loads[beam.count] = (struct point_load){stand->at, stand->load};
            beam.count++;
        }
        weigh(worst, &beam, stands[i].member);
    }
    return true;
}

static void give_worst(struct amount *results, const struct worst *worst,
                       const struct timber_member *member, size_t count, struct working *working)
{
    double stress = worst->moment / wood_section_modulus(member->section);
    double shear = timber_shear_stress(member->section, worst->shear);
    working_step(working, "statics; each clear span taken as simply supported",
                 "%zu attachment(s); member %g is bent most: %zu on one span, M = %.6g lbf·ft, "
                 "fb = M/S = %.5g psi of %.5g psi",
                 count, worst->member, worst->attachments, worst->moment / 12, stress,
                 member->bending);
    if (worst->has_jacks)
        working_step(working, "statics",
                     "members may end at a hip or valley: V as if all point loads of one stood at "
                     "its end");
    working_step(working, "NDS 3.4", "largest V = %.5g lbf, fv = 3V/2bd = %.5g psi of %.5g psi",
                 worst->shear, shear, member->shear);
    results[0] = amount_as(stress, "psi");
    results[1] = amount_as(member->bending, "psi");
    results[2] = amount_of_number(fmax(stress / member->bending, shear / member->shear));
    results[3] = amount_as(shear, "psi");
    results[4] = amount_as(member->shear, "psi");
    results[5] = amount_as(worst->deflection, "in");
    results[6] = amount_of_number((double)worst->attachments);
    results[7] = amount_of_number(worst->member);
}

bool rafter_weigh(struct amount *results, const struct object *framing, struct rafter *rafter,
                  const double *loads, size_t count, struct working *working)
{
    struct bearing bearing = {.first = 0};
    struct stand *stands = NULL;
    struct worst worst = {.moment = 0};
    if (!bearing_take(&bearing, framing, rafter->member.spacing, rafter->span, working) ||
        !stands_take(&stands, &count, &bearing, framing->parent, loads, working))
        return false;
    worst.has_jacks = has_jacks(framing->parent, working);
    if (!timber_member_take(&rafter->member, working))
        return false;
    const struct wood_section *section = rafter->member.section;
    struct beam beam = {.span = rafter->span,
                        .line_load = rafter->load / 144 * rafter->member.spacing,
                        .stiffness =
                            rafter->member.elasticity * wood_section_second_moment(section)};
    if (!weigh_all(&worst, beam, stands, count, working))
        return false;
    give_worst(results, &worst, &rafter->member, count, working);
    return true;
}

bool run_framing_under_array(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    struct rafter rafter;
    double *loads = NULL;
    size_t count;
    if (!rafter_take(&rafter, about, working) ||
        !take_loads(&loads, &count, about->parent, inputs, working))
        return false;
    rafter.load = amount_in(inputs[ARRAY_ROOF_LOAD], "psf", 0);
    take_strength(&rafter, inputs[ARRAY_DURATION], inputs[ARRAY_BASIS]);
    return rafter_weigh(results, about, &rafter, loads, count, working);
}
