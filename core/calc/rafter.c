#include "rafter.h"

#include <math.h>
#include <string.h>

const char *const value_basis_words[] = {"current values", "span tables", NULL};

/* lbf per inch of span on one member. */
static double line_load_of(const struct rafter *rafter, double load, struct working *working)
{
    double line = load / 144 * rafter->member.spacing;
    working_step(working, "statics", "w = %.5g psf × %.5g in = %.5g lbf/ft", load,
                 rafter->member.spacing, line * 12);
    return line;
}

/* An even load and a drift from the upper support down to its reach: the reaction there is the
 * larger one, and the shear is zero in the drift or below it. */
static double upper_reaction(const struct rafter *rafter, double line, double drift, double reach)
{
    return line * rafter->span / 2 + drift * reach * (1 - reach / (2 * rafter->span));
}

static double moment_of(const struct rafter *rafter, double line, double drift, double reach)
{
    double upper = upper_reaction(rafter, line, drift, reach);
    double lower = line * rafter->span + drift * reach - upper;
    if (upper <= (line + drift) * reach || line <= 0)
        return upper * upper / (2 * (line + drift));
    return lower * lower / (2 * line);
}

/* lbf per inch on one member, and how much of its span has it, in. */
static double drift_of(double *reach, const struct rafter *rafter, struct working *working)
{
    *reach = fmin(rafter->reach, rafter->span);
    if (rafter->drift <= 0 || *reach <= 0) {
        *reach = 0;
        return 0;
    }
    working_step(working, "statics", "drifted snow on the upper %.5g ft of the span:", *reach / 12);
    return line_load_of(rafter, rafter->drift, working);
}

bool rafter_bend(struct amount *results, struct rafter *rafter, struct working *working)
{
    if (!timber_member_take(&rafter->member, working))
        return false;
    double line = line_load_of(rafter, rafter->load, working);
    double reach, drift = drift_of(&reach, rafter, working);
    double moment =
        drift > 0 ? moment_of(rafter, line, drift, reach) : line * rafter->span * rafter->span / 8;
    double stress = moment / wood_section_modulus(rafter->member.section);
    if (drift > 0)
        working_step(working, "statics", "where the shear is zero M = %.6g lbf·ft", moment / 12);
    else
        working_step(working, "statics", "M = w L²/8 = %.5g lbf/ft × (%.5g ft)²/8 = %.6g lbf·ft",
                     line * 12, rafter->span / 12, moment / 12);
    working_step(working, "NDS 3.3", "fb = M/S = %.5g psi of %.5g psi", stress,
                 rafter->member.bending);
    results[0] = amount_as(stress, "psi");
    results[1] = amount_as(rafter->member.bending, "psi");
    results[2] = amount_of_number(stress / rafter->member.bending);
    results[3] = amount_as(moment, "lbf·in");
    return true;
}

bool rafter_resist(struct amount *results, struct rafter *rafter, struct working *working)
{
    if (!timber_member_take(&rafter->member, working))
        return false;
    double line = line_load_of(rafter, rafter->load, working);
    double reach, drift = drift_of(&reach, rafter, working);
    double shear = upper_reaction(rafter, line, drift, reach);
    double stress = timber_shear_stress(rafter->member.section, shear);
    working_step(working, "statics", "V = %s = %.5g lbf, at the support itself",
                 drift > 0 ? "w L/2 + wd r (1 - r/2L)" : "w L/2", shear);
    working_step(working, "NDS 3.4", "fv = 3V/2bd = %.5g psi of %.5g psi", stress,
                 rafter->member.shear);
    results[0] = amount_as(stress, "psi");
    results[1] = amount_as(rafter->member.shear, "psi");
    results[2] = amount_of_number(stress / rafter->member.shear);
    results[3] = amount_as(shear, "lbf");
    return true;
}

bool rafter_deflect(struct amount *results, struct rafter *rafter, double limit,
                    struct working *working)
{
    rafter->member.duration = NULL;
    if (!timber_member_take(&rafter->member, working))
        return false;
    double line = line_load_of(rafter, rafter->load, working);
    double stiffness =
        rafter->member.elasticity * wood_section_second_moment(rafter->member.section);
    double sag = 5 * line * pow(rafter->span, 4) / 384 / stiffness;
    double allowed = rafter->span / limit;
    working_step(working, "statics", "5wL⁴/384EI = %.4g in of L/%g = %.4g in", sag, limit, allowed);
    results[0] = amount_as(sag, "in");
    results[1] = amount_as(allowed, "in");
    results[2] = amount_of_number(sag / allowed);
    return true;
}

bool rafter_reach(struct amount *results, struct rafter *rafter, double live, double limit,
                  struct working *working)
{
    if (!timber_member_take(&rafter->member, working))
        return false;
    const struct timber_member *member = &rafter->member;
    double all = line_load_of(rafter, rafter->load, working);
    double lasting = line_load_of(rafter, live, working);
    double bend = sqrt(8 * member->bending * wood_section_modulus(member->section) / all);
    double sag = cbrt(384 * member->elasticity * wood_section_second_moment(member->section) /
                      (5 * lasting * limit));
    double shear = 4 * member->shear * wood_section_area(member->section) / (3 * all);
    double least = fmin(fmin(bend, sag), shear);
    const char *governs = bend <= least ? "bending" : sag <= least ? "deflection" : "shear";
    working_step(working, "NDS 3.3, 3.4, statics",
                 "bending √(8 F'b S/w) = %.5g ft; deflection of the live load ∛(384 E'I/5wn) = "
                 "%.5g ft; shear 4 F'v A/3w = %.5g ft; %s governs",
                 bend / 12, sag / 12, shear / 12, governs);
    results[0] = amount_as(least / 12, "ft");
    results[1] = amount_of_word(governs);
    results[2] = amount_as(bend / 12, "ft");
    results[3] = amount_as(sag / 12, "ft");
    results[4] = amount_as(shear / 12, "ft");
    return true;
}
