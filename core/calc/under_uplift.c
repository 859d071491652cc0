/* Members below the array when wind lifts it: each attachment pulls at the one it stands on. */
#include "rafter.h"

#include <math.h>

#include "combination.h"
#include "layout_support.h"
#include "placed_wind.h"

/* Up to 4 to 1 of nominal depth to breadth, a 2x8, ends held upright are enough. */
static const double slender = 5.5;

/* Wind on the array as the members feel it: in the zone of each attachment, but on the area that a
 * member carries. */
struct pull {
    struct wind_place place;
    struct amount q, area, asked[WIND_INPUTS];
    double dead; /* of the array, psf of its surface */
};

static bool take_wind(struct pull *out, const struct object *framing, const struct amount *inputs,
                      struct working *working)
{
    *out = (struct pull){.place = {.plane = framing->parent},
                         .dead = amount_in(inputs[UPLIFT_ARRAY], "psf", 0)};
    out->asked[WIND_EDITION] = inputs[UPLIFT_EDITION];
    out->asked[WIND_SPEED] = inputs[UPLIFT_SPEED];
    out->asked[WIND_MINIMUM] = inputs[UPLIFT_MINIMUM];
    return placed_read_site(&out->place, working) && placed_read_building(&out->place, working) &&
           placed_member_area(&out->area, &out->place, framing, working) &&
           placed_find_velocity_pressure(&out->q, &out->place, out->asked, working);
}

/* Of one attachment, psf square to the slope. The zone, and whether it is exposed, are its own. */
static bool find_lift(double *out, const struct pull *pull, const struct object *attachment,
                      struct working *working)
{
    struct amount there[CALCULATOR_RESULTS], panel[CALCULATOR_RESULTS], up, down;
    struct amount edition = pull->asked[WIND_EDITION];
    if (!placed_ask(there, placed_calculators, "wind_pressure", attachment, pull->asked,
                    WIND_INPUTS, working) ||
        !placed_find_coefficients(&up, &down, &pull->place, edition, there[2], pull->area, working))
        return false;
    struct amount asked[] = {
        edition, pull->q, up, down, pull->area, there[4], pull->asked[WIND_MINIMUM]};
    if (!placed_ask(panel, wind_calculators, "panel_pressure", NULL, asked, 7, working))
        return false;
    *out = amount_in(panel[0], "psf", 0);
    return true;
}

/* What each attachment pulls up by, lbf, down positive. Wind is square to the slope: over the
 * sloping length that bends as 1/cos of it in plan. */
static bool take_pulls(double **out, size_t *count, const struct pull *pull,
                       struct working *working)
{
    struct object *const *attachments;
    struct layout_plane *opened;
    const struct layout_support *support;
    const struct object *plane = pull->place.plane;
    const struct combination *lift = &uplift_combination;
    double cosine = cos(pull->place.slope.value);
    if (!need_objects(&attachments, count, plane, SLOT_roof_plane_attachments, working) ||
        !layout_support_open(&support, &opened, plane, working))
        return false;
    *out = arena_take(working->arena, (*count + 1) * sizeof **out);
    if (*out == NULL)
        return working_short(working);
    for (size_t i = 0; i < opened->module_count; i++)
        if (!support->is_carried[i])
            return working_beyond(working, "no attachment is found that carries module %s",
                                  opened->modules[i].object->path);
    for (size_t i = 0; i < *count; i++) {
        double area = support->attachments[i].area / (TIMBER_INCH * TIMBER_INCH * 144);
        double wind = 0;
        (*out)[i] = 0;
        if (area <= 0)
            continue;
        if (!find_lift(&wind, pull, attachments[i], working))
            return false;
        (*out)[i] = area * (lift->dead * pull->dead - lift->wind * wind / cosine);
    }
    return true;
}

/* NDS 3.3.3 for a lower edge that is held every so many inches. */
static double edge_factor(const struct rafter *rafter, double length, struct working *working)
{
    const struct wood_section *section = rafter->member.section;
    double depth = section->depth, width = section->width, slim = length / depth;
    double effective = slim < 7       ? 2.06 * length
                       : slim <= 14.3 ? 1.63 * length + 3 * depth
                                      : 1.84 * length;
    double ratio = sqrt(effective * depth / (width * width));
    /* E'min = E' (1 - 1.645 COV) 1.03 / 1.66 with COV = 0.25 */
    double stiffness = rafter->member.elasticity * (1 - 1.645 * 0.25) * 1.03 / 1.66;
    double share = 1.2 * stiffness / (ratio * ratio) / rafter->member.bending;
    double half = (1 + share) / 1.9;
    double factor = ratio > 50 ? 0 : half - sqrt(half * half - share / 0.95);
    working_step(working, "NDS 3.3.3, Table 3.3.3, Appendix D (from memory)",
                 "lower edge held every %.4g in: le = %.4g in, RB = %.4g (at most 50), FbE/Fb* = "
                 "%.4g, CL = %.4g",
                 length, effective, ratio, share, factor);
    return factor;
}

/* The share of its bending value that a member keeps while its lower edge is pressed. What holds
 * that edge is asked only where the supports alone are not enough. */
static bool take_edge(double *factor, const struct rafter *rafter, const struct object *framing,
                      double cosine, double stress, struct working *working)
{
    const struct wood_section *section = rafter->member.section;
    bool has_ceiling;
    double braced, length = rafter->span / cosine;
    *factor = 1;
    if (section->depth / section->width <= slender) {
        working_step(working, "NDS 4.4.1 (from memory)",
                     "a %s is not deeper than 4 to 1 by its nominal size: ends held upright are "
                     "enough, CL = 1",
                     section->size);
        return true;
    }
    if (!need_yesno(&has_ceiling, framing, SLOT_framing_ceiling_attached, working))
        return false;
    if (has_ceiling) {
        working_step(working, NULL, "the ceiling holds the lower edge: CL = 1");
        return true;
    }
    *factor = edge_factor(rafter, length, working);
    if (stress <= *factor * rafter->member.bending)
        return true;
    if (!timber_need_inches(&braced, framing, SLOT_framing_lower_edge_bracing, working))
        return false;
    *factor = edge_factor(rafter, fmin(braced, length), working);
    return true;
}

bool run_framing_under_uplift(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    struct rafter rafter;
    struct pull pull;
    struct amount found[CALCULATOR_RESULTS];
    double *loads = NULL, factor;
    size_t count;
    if (!rafter_take(&rafter, about, working) || !take_wind(&pull, about, inputs, working) ||
        !take_pulls(&loads, &count, &pull, working))
        return false;
    rafter.load = uplift_combination.dead * amount_in(inputs[UPLIFT_ROOF], "psf", 0);
    rafter.member.duration = wood_duration_find("wind");
    working_step(working, uplift_combination.source,
                 "%s: the roof's own weight holds %.4g psf of plan down; wind on the bare roof is "
                 "not counted beside that on the array",
                 uplift_combination.name, rafter.load);
    if (!rafter_weigh(found, about, &rafter, loads, count, working))
        return false;
    double stress = amount_in(found[0], "psi", 0), bending = rafter.member.bending;
    if (!take_edge(&factor, &rafter, about, cos(pull.place.slope.value), stress, working))
        return false;
    for (size_t i = 0; i < 5; i++)
        results[i] = found[i];
    results[1] = amount_as(bending * factor, "psi");
    double share = fmax(stress / fmax(bending * factor, 1e-3),
                        found[3].quantity.value / found[4].quantity.value);
    results[2] = amount_of_number(share);
    return true;
}
