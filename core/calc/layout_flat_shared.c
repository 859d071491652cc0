/* The area that two outlines share. */
#include "layout_flat.h"

#include <math.h>

/* A side from left to right; over it, an outline's inside begins or ends. */
struct side {
    struct point left, right;
    bool is_turned;
};

static struct side side_of(const struct shape *shape, size_t at)
{
    struct point from = shape->corners[at], to = shape->corners[at + 1 < shape->count ? at + 1 : 0];
    return from.x <= to.x ? (struct side){from, to, false} : (struct side){to, from, true};
}

static double height_at(const struct side *side, double x)
{
    double share = (x - side->left.x) / (side->right.x - side->left.x);
    return side->left.y + share * (side->right.y - side->left.y);
}

/* Unlike fmin and fmax no calls: these are asked of each pair of sides. */
static double smaller(double a, double b)
{
    return a < b ? a : b;
}

static double larger(double a, double b)
{
    return a > b ? a : b;
}

/* The area from `base` up to the lower of two sides, where both have a height; below zero for what
 * lies under it. */
static double area_below(const struct side *a, const struct side *b, double base)
{
    double from = larger(a->left.x, b->left.x), to = smaller(a->right.x, b->right.x);
    if (from >= to) /* one beside the other, or one that runs straight up */
        return 0;
    double a_from = height_at(a, from) - base, a_to = height_at(a, to) - base;
    double b_from = height_at(b, from) - base, b_to = height_at(b, to) - base;
    double begins = a_from - b_from, ends = a_to - b_to;
    double low_from = smaller(a_from, b_from), low_to = smaller(a_to, b_to);
    if (begins * ends >= 0)
        return (to - from) * (low_from + low_to) / 2;
    double share = begins / (begins - ends); /* they cross there */
    double crossing = a_from + share * (a_to - a_from);
    return (to - from) * (share * (low_from + crossing) + (1 - share) * (crossing + low_to)) / 2;
}

/* An outline is what lies below its upper sides without what lies below its lower ones, and so is
 * what two of them share, pair by pair of their sides. */
double flat_shared_area(const struct shape *a, const struct shape *b)
{
    /* Of any base as much is taken away as is added; a near one keeps rounding small. */
    double area = 0, base = a->corners[0].y;
    for (size_t i = 0; i < a->count; i++) {
        struct side one = side_of(a, i);
        for (size_t j = 0; j < b->count; j++) {
            struct side other = side_of(b, j);
            double below = area_below(&one, &other, base);
            area += one.is_turned == other.is_turned ? below : -below;
        }
    }
    return fabs(area); /* below zero where one runs with the clock */
}
