/* One lag or wood screw pushed sideways, through a metal plate into wood: yield limit equations. */
#include "timber.h"

#include <math.h>

#define FROM_TABLE                                                                                 \
    "with these figures the equations give each of the 218 values of NDS Table 12K at hand"

/* Dowel, member and plate; in, psi. */
struct yield {
    double dowel, bending;       /* root diameter Dr, Fyb */
    double member, member_depth; /* Fem, lm */
    double plate, plate_depth;   /* Fes, ts */
    double reduction[3];         /* Rd of modes I, II, and III and IV */
};

static const char *const mode_names[] = {"Im", "Is", "II", "IIIm", "IIIs", "IV"};
enum { MODES = 6 };

/* NDS Table 12.3.1A, single shear (from memory), the faces in contact. */
static void yield_modes(double modes[MODES], const struct yield *yield)
{
    double d = yield->dowel, re = yield->member / yield->plate;
    double rt = yield->member_depth / yield->plate_depth;
    double bend = 2 * yield->bending * d * d / (3 * yield->member);
    double k1 =
        (sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) /
        (1 + re);
    double k2 =
        sqrt(2 * (1 + re) + bend * (1 + 2 * re) / (yield->member_depth * yield->member_depth)) - 1;
    double k3 =
        sqrt(2 * (1 + re) / re + bend * (2 + re) / (yield->plate_depth * yield->plate_depth)) - 1;
    modes[0] = d * yield->member_depth * yield->member / yield->reduction[0];
    modes[1] = d * yield->plate_depth * yield->plate / yield->reduction[0];
    modes[2] = k1 * d * yield->plate_depth * yield->plate / yield->reduction[1];
    modes[3] = k2 * d * yield->member_depth * yield->member / ((1 + 2 * re) * yield->reduction[2]);
    modes[4] = k3 * d * yield->plate_depth * yield->member / ((2 + re) * yield->reduction[2]);
    modes[5] =
        d * d / yield->reduction[2] * sqrt(2 * yield->member * yield->bending / (3 * (1 + re)));
}

/* To 50 psi, as NDS Table 12.3.3 prints them. */
static double member_bearing(const struct timber_lateral *lateral)
{
    double strength = 16600 * pow(lateral->gravity, 1.84);
    if (lateral->fastener == TIMBER_LAG)
        strength = lateral->is_parallel
                       ? 11200 * lateral->gravity
                       : 6100 * pow(lateral->gravity, 1.45) / sqrt(lateral->diameter);
    return round(strength / 50) * 50;
}

/* NDS Table 12.3.1B. A thread thinner than 1/4 in at its root counts as a thin dowel. */
static void take_reductions(struct yield *yield, const struct timber_lateral *lateral)
{
    double thin = yield->dowel <= 0.17 ? 2.2 : 10 * yield->dowel + 0.5;
    double across = lateral->fastener == TIMBER_LAG && !lateral->is_parallel ? 1.25 : 1;
    static const double thick[] = {4, 3.6, 3.2};
    for (size_t i = 0; i < 3; i++)
        yield->reduction[i] = (yield->dowel < 0.25 ? thin : thick[i]) * across;
}

static bool take_dowel(struct yield *yield, const struct timber_lateral *lateral,
                       struct working *working)
{
    bool is_lag = lateral->fastener == TIMBER_LAG;
    const struct wood_lag *lag = is_lag ? wood_lag_find(lateral->diameter) : NULL;
    yield->dowel = lag != NULL ? lag->root : is_lag ? NAN : wood_screw_root(lateral->diameter);
    if (isnan(yield->dowel))
        return working_beyond(working,
                              is_lag ? "no root diameter is in the table for a %.4g in lag screw "
                                       "(1/4, 5/16, 3/8 and 1/2 in are): no lateral value"
                                     : "no root diameter is in the table for a %.4g in wood screw "
                                       "(numbers 6 to 14 are): no lateral value",
                              lateral->diameter);
    yield->bending = wood_bending_yield(lateral->diameter);
    working_step(working, lag != NULL ? lag->source : "NDS Table L3 (from memory)",
                 "%.4g in %s screw: root diameter Dr = %.3f in, bending yield strength Fyb = %.5g "
                 "psi (notes of NDS Tables 12K and 12M, from memory)",
                 lateral->diameter, is_lag ? "lag" : "wood", yield->dowel, yield->bending);
    return true;
}

/* As if the screw stood as deep as the table asks; the share of it comes after. */
static void take_reference(struct timber_lateral *lateral, struct yield *yield, double whole,
                           struct working *working)
{
    double modes[MODES];
    size_t least = 0;
    yield->member = member_bearing(lateral);
    yield->member_depth = whole;
    yield->plate = isnan(lateral->bearing) ? wood_steel_bearing(lateral->plate) : lateral->bearing;
    yield->plate_depth = lateral->plate;
    take_reductions(yield, lateral);
    working_step(
        working, "NDS Tables 12.3.1B, 12.3.3 (from memory); steel: notes of Table 12K",
        "dowel bearing strength of the wood, G = %.2f, %s to the grain: Fem = %.5g psi; of "
        "%.4g in of %s: Fes = %.5g psi; Rd = %.4g in modes III and IV",
        lateral->gravity, lateral->is_parallel ? "parallel" : "perpendicular", yield->member,
        lateral->plate, isnan(lateral->bearing) ? "steel" : "metal whose strength is told",
        yield->plate, yield->reduction[2]);
    yield_modes(modes, yield);
    for (size_t i = 1; i < MODES; i++)
        if (modes[i] < modes[least])
            least = i;
    lateral->reference = modes[least];
    lateral->mode = mode_names[least];
    working_step(working, "NDS Table 12.3.1A, single shear (from memory); " FROM_TABLE,
                 "yield modes Im %.5g, Is %.5g, II %.5g, IIIm %.5g, IIIs %.5g, IV %.5g lbf: the "
                 "least, %s, is Z = %.5g lbf; the deck below the plate bears on the screw as the "
                 "member does (common practice, no source)",
                 modes[0], modes[1], modes[2], modes[3], modes[4], modes[5], lateral->mode,
                 lateral->reference);
}

bool timber_lateral_take(struct timber_lateral *lateral, struct working *working)
{
    struct yield yield = {0};
    bool is_lag = lateral->fastener == TIMBER_LAG;
    double least = is_lag ? 4 : 6, whole = is_lag ? 8 : 10;
    double wet = timber_wet_factor(&lateral->service);
    double hot = timber_temperature_factor(&lateral->service);
    if (!take_dowel(&yield, lateral, working))
        return false;
    take_reference(lateral, &yield, whole * lateral->diameter, working);
    double share = fmin(lateral->penetration / (whole * lateral->diameter), 1);
    if (number_compare(lateral->penetration, least * lateral->diameter) < 0)
        share = 0;
    lateral->capacity = lateral->reference * lateral->service.duration->factor * wet * hot * share;
    working_step(working,
                 is_lag ? "NDS Table 11.3.1 and note of Table 12K (share of 8 D, none below 4 D; "
                          "from memory); CD Table 2.3.2; CM and Ct from memory"
                        : "NDS Table 11.3.1 and note of Table 12M (share of 10 D, none below 6 D; "
                          "from memory); CD Table 2.3.2; CM and Ct from memory",
                 "Z' = Z CD CM Ct p/%g D = %.4g × %.4g × %.4g × %.4g × %.4g = %.5g lbf", whole,
                 lateral->reference, lateral->service.duration->factor, wet, hot, share,
                 lateral->capacity);
    return true;
}
