#include "beam.h"

#include <math.h>
#include <stdbool.h>
#include <stdlib.h>

static int by_place(const void *a, const void *b)
{
    const struct point_load *one = a, *other = b;
    return (one->at > other->at) - (one->at < other->at);
}

/* The part of a stretch between neighbouring loads: inside it nothing jumps. */
struct stretch {
    const struct beam *beam;
    double from, to;
    double left;         /* reaction */
    double loads;        /* sum of the loads up to `from` */
    double turned;       /* sum of load × place of those */
    double turned_twice; /* sum of load × place² */
    bool was_positive;   /* the slope, where the stretch before ends */
};

static double shear_at(const struct stretch *stretch, double x)
{
    return stretch->left - stretch->beam->line_load * x - stretch->loads;
}

static double moment_at(const struct stretch *stretch, double x)
{
    return (stretch->left - stretch->loads) * x + stretch->turned -
           stretch->beam->line_load * x * x / 2;
}

/* EI times slope and deflection, by Macaulay's brackets, without the constant turn at the left. The
 * slope is a cubic within a stretch: its brackets multiplied out. */
struct cubic {
    double by[4]; /* the powers of x */
};

static struct cubic slope_of(const struct stretch *stretch, double turn)
{
    return (struct cubic){{turn + stretch->turned_twice / 2, -stretch->turned,
                           (stretch->loads - stretch->left) / 2, stretch->beam->line_load / 6}};
}

static double value_at(const struct cubic *cubic, double x)
{
    return ((cubic->by[3] * x + cubic->by[2]) * x + cubic->by[1]) * x + cubic->by[0];
}

static double rise_at(const struct cubic *cubic, double x)
{
    return (3 * cubic->by[3] * x + 2 * cubic->by[2]) * x + cubic->by[1];
}

static double bent_deflection(const struct beam *beam, double left, double x)
{
    double sum = -left * x * x * x / 6 + beam->line_load * x * x * x * x / 24;
    for (size_t i = 0; i < beam->count && beam->loads[i].at < x; i++) {
        double beyond = x - beam->loads[i].at;
        sum += beam->loads[i].load * beyond * beyond * beyond / 6;
    }
    return sum;
}

static void note_moment(struct beam_result *out, double moment, double at)
{
    if (fabs(moment) > fabs(out->moment)) {
        out->moment = moment;
        out->moment_at = at;
    }
}

static void seek_forces(struct beam_result *out, const struct stretch *stretch)
{
    double first = shear_at(stretch, stretch->from), last = shear_at(stretch, stretch->to);
    out->shear = fmax(out->shear, fmax(fabs(first), fabs(last)));
    note_moment(out, moment_at(stretch, stretch->to), stretch->to);
    if ((first > 0) == (last > 0) || stretch->beam->line_load == 0)
        return;
    double at = (stretch->left - stretch->loads) / stretch->beam->line_load;
    note_moment(out, moment_at(stretch, at), at);
}

/* Where it is zero between two places of unlike sign, by Newton's steps; one that would leave what
 * is known to hold the zero is halved instead. */
static double zero_of(const struct cubic *slope, double from, double to)
{
    bool is_falling = value_at(slope, from) > 0;
    double at = (from + to) / 2;
    for (int i = 0; i < 80; i++) {
        double value = value_at(slope, at);
        if (value == 0)
            return at;
        if ((value > 0) == is_falling)
            from = at;
        else
            to = at;
        double next = at - value / rise_at(slope, at);
        if (!(next > from && next < to))
            next = (from + to) / 2;
        if (fabs(next - at) <= 1e-15 * to)
            return next;
        at = next;
    }
    return at;
}

static void note_deflection(struct beam_result *out, const struct stretch *stretch, double turn,
                            double at)
{
    double bent =
        (turn * at + bent_deflection(stretch->beam, stretch->left, at)) / stretch->beam->stiffness;
    if (fabs(bent) > fabs(out->deflection)) {
        out->deflection = bent;
        out->deflection_at = at;
    }
}

/* The slope runs one way between `from` and `to`: where it is zero the deflection may be largest.
 */
static void seek_deflection(struct beam_result *out, const struct stretch *stretch, double turn,
                            double from, double to)
{
    struct cubic slope = slope_of(stretch, turn);
    if ((value_at(&slope, from) > 0) != (value_at(&slope, to) > 0))
        note_deflection(out, stretch, turn, zero_of(&slope, from, to));
}

/* Each stretch has a cubic of its own, and they meet but for rounding: where the slope is zero at a
 * load itself, neither of the two need show it. */
static void seek_between(struct beam_result *out, struct stretch *stretch, double turn)
{
    struct cubic slope = slope_of(stretch, turn);
    if ((value_at(&slope, stretch->from) > 0) != stretch->was_positive)
        note_deflection(out, stretch, turn, stretch->from);
    stretch->was_positive = value_at(&slope, stretch->to) > 0;
}

/* Splits a stretch where the moment is zero, since there the slope turns round. */
static void seek_bend(struct beam_result *out, const struct stretch *stretch, double turn)
{
    double cuts[4] = {stretch->from, stretch->to, stretch->to, stretch->to};
    size_t count = 1;
    double w = stretch->beam->line_load, v = stretch->left - stretch->loads;
    double roots[2] = {NAN, NAN};
    double under = v * v + 2 * w * stretch->turned;
    if (w != 0 && under >= 0) {
        roots[0] = (v - copysign(sqrt(under), w)) / w;
        roots[1] = (v + copysign(sqrt(under), w)) / w;
    } else if (w == 0 && v != 0) {
        roots[0] = -stretch->turned / v;
    }
    for (size_t i = 0; i < 2; i++)
        if (roots[i] > stretch->from && roots[i] < stretch->to)
            cuts[count++] = roots[i];
    for (size_t i = 0; i + 1 <= count; i++)
        seek_deflection(out, stretch, turn, cuts[i], i + 1 < count ? cuts[i + 1] : stretch->to);
}

void beam_solve(struct beam_result *out, struct beam *beam)
{
    double length = beam->span, total = beam->line_load * length;
    double turned = total * length / 2;
    if (beam->count > 0)
        qsort(beam->loads, beam->count, sizeof *beam->loads, by_place);
    for (size_t i = 0; i < beam->count; i++) {
        total += beam->loads[i].load;
        turned += beam->loads[i].load * beam->loads[i].at;
    }
    *out = (struct beam_result){.right = turned / length, .left = total - turned / length};
    double turn = -bent_deflection(beam, out->left, length) / length;
    struct stretch stretch = {.beam = beam, .left = out->left};
    for (size_t i = 0; i <= beam->count; i++) {
        stretch.to = i < beam->count ? beam->loads[i].at : length;
        seek_forces(out, &stretch);
        if (beam->stiffness > 0) {
            seek_between(out, &stretch, turn);
            seek_bend(out, &stretch, turn);
        }
        if (i == beam->count)
            break;
        stretch.loads += beam->loads[i].load;
        stretch.turned += beam->loads[i].load * beam->loads[i].at;
        stretch.turned_twice += beam->loads[i].load * beam->loads[i].at * beam->loads[i].at;
        stretch.from = stretch.to;
    }
}
