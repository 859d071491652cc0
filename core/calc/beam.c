#include "beam.h"

#include <math.h>
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
    double left;   /* reaction */
    double loads;  /* sum of the loads up to `from` */
    double turned; /* sum of load × place of those */
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

/* EI times slope and deflection, by Macaulay's brackets, without the constant turn at the left. */
static double bent_slope(const struct beam *beam, double left, double x)
{
    double sum = -left * x * x / 2 + beam->line_load * x * x * x / 6;
    for (size_t i = 0; i < beam->count && beam->loads[i].at < x; i++) {
        double beyond = x - beam->loads[i].at;
        sum += beam->loads[i].load * beyond * beyond / 2;
    }
    return sum;
}

static double bent_deflection(const struct beam *beam, double left, double x)
{
    double sum = -left * pow(x, 3) / 6 + beam->line_load * pow(x, 4) / 24;
    for (size_t i = 0; i < beam->count && beam->loads[i].at < x; i++)
        sum += beam->loads[i].load * pow(x - beam->loads[i].at, 3) / 6;
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

/* The slope runs one way between `from` and `to`: where it is zero the deflection may be largest.
 */
static void seek_deflection(struct beam_result *out, const struct stretch *stretch, double turn,
                            double from, double to)
{
    const struct beam *beam = stretch->beam;
    double first = turn + bent_slope(beam, stretch->left, from);
    if ((first > 0) == (turn + bent_slope(beam, stretch->left, to) > 0))
        return;
    for (int i = 0; i < 80; i++) {
        double middle = (from + to) / 2;
        if (!(middle > from && middle < to)) /* no number lies between them any more */
            break;
        if ((turn + bent_slope(beam, stretch->left, middle) > 0) == (first > 0))
            from = middle;
        else
            to = middle;
    }
    double at = (from + to) / 2;
    double bent = (turn * at + bent_deflection(beam, stretch->left, at)) / beam->stiffness;
    if (fabs(bent) > fabs(out->deflection)) {
        out->deflection = bent;
        out->deflection_at = at;
    }
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
        if (beam->stiffness > 0)
            seek_bend(out, &stretch, turn);
        if (i == beam->count)
            break;
        stretch.loads += beam->loads[i].load;
        stretch.turned += beam->loads[i].load * beam->loads[i].at;
        stretch.from = stretch.to;
    }
}
