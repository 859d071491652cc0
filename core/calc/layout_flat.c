#include "layout_flat.h"

#include <assert.h>
#include <math.h>
#include <string.h>

double flat_length(struct point a, struct point b)
{
    return hypot(b.x - a.x, b.y - a.y);
}

/* Twice the signed area of the triangle a, b, c. */
static double turn(struct point a, struct point b, struct point c)
{
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool flat_crosses(struct point a, struct point b, struct point c, struct point d)
{
    double left = turn(a, b, c), right = turn(a, b, d);
    double above = turn(c, d, a), below = turn(c, d, b);
    double none = 1e-9; /* m²: corners that touch are no crossing */
    return ((left > none && right < -none) || (left < -none && right > none)) &&
           ((above > none && below < -none) || (above < -none && below > none));
}

static struct point nearest_on(struct point a, struct point b, struct point p)
{
    double dx = b.x - a.x, dy = b.y - a.y, length2 = dx * dx + dy * dy;
    double t = length2 > 0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / length2 : 0;
    t = t < 0 ? 0 : t > 1 ? 1 : t;
    return (struct point){a.x + t * dx, a.y + t * dy};
}

struct best {
    double square; /* of the distance: roots are dear */
    struct point *nearest;
};

static void offer(struct best *best, struct point on_a, struct point on_b)
{
    double dx = on_b.x - on_a.x, dy = on_b.y - on_a.y, square = dx * dx + dy * dy;
    if (square >= best->square)
        return;
    best->square = square;
    best->nearest[0] = on_a;
    best->nearest[1] = on_b;
}

struct box {
    double left, right, low, high;
};

static struct box box_of(struct point a, struct point b)
{
    return (struct box){a.x < b.x ? a.x : b.x, a.x < b.x ? b.x : a.x, a.y < b.y ? a.y : b.y,
                        a.y < b.y ? b.y : a.y};
}

static struct box box_round(const struct shape *shape)
{
    struct box all = box_of(shape->corners[0], shape->corners[0]);
    for (size_t i = 1; i < shape->count; i++) {
        struct point at = shape->corners[i];
        all.left = at.x < all.left ? at.x : all.left;
        all.right = at.x > all.right ? at.x : all.right;
        all.low = at.y < all.low ? at.y : all.low;
        all.high = at.y > all.high ? at.y : all.high;
    }
    return all;
}

/* How far two boxes are apart, squared; 0: they meet. */
static double apart(const struct box *a, const struct box *b)
{
    double x = b->left > a->right   ? b->left - a->right
               : a->left > b->right ? a->left - b->right
                                    : 0;
    double y = b->low > a->high ? b->low - a->high : a->low > b->high ? a->low - b->high : 0;
    return x * x + y * y;
}

/* Is what lies so far apart surely farther than the best so far, rounding and all? */
static bool is_beyond(double square, const struct best *best)
{
    return square > best->square * (1 + 1e-9);
}

static void offer_segments(struct best *best, struct point a, struct point b, struct point c,
                           struct point d, bool is_boxed)
{
    if (is_boxed && flat_crosses(a, b, c, d)) {
        double t = turn(c, d, a) / (turn(c, d, a) - turn(c, d, b));
        struct point at = {a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)};
        offer(best, at, at);
        return;
    }
    offer(best, a, nearest_on(c, d, a));
    offer(best, nearest_on(a, b, c), c);
}

static size_t side_count(const struct shape *shape)
{
    return shape->is_closed || shape->count == 1 ? shape->count : shape->count - 1;
}

/* The first corner of each side was offered; a polyline has one corner more. */
static void offer_end(struct best *best, const struct shape *a, const struct shape *b,
                      bool is_turned)
{
    struct point end = a->corners[a->count - 1];
    if (a->is_closed)
        return;
    for (size_t j = 0; j < side_count(b); j++) {
        struct point on = nearest_on(b->corners[j], b->corners[(j + 1) % b->count], end);
        offer(best, is_turned ? on : end, is_turned ? end : on);
    }
}

static void offer_sides(struct best *best, const struct shape *a, const struct shape *b)
{
    struct box whole = box_round(b);
    for (size_t i = 0; i < side_count(a); i++) {
        struct point from = a->corners[i], to = a->corners[i + 1 < a->count ? i + 1 : 0];
        struct box side = box_of(from, to);
        if (is_beyond(apart(&side, &whole), best))
            continue;
        for (size_t j = 0; j < side_count(b); j++) {
            struct point c = b->corners[j], d = b->corners[j + 1 < b->count ? j + 1 : 0];
            struct box other = box_of(c, d);
            double square = apart(&side, &other);
            if (!is_beyond(square, best))
                offer_segments(best, from, to, c, d, square <= 0);
        }
    }
}

/* Are all sides of these four corners along an axis, by turns? */
static bool is_box(const struct shape *shape)
{
    const struct point *at = shape->corners;
    if (!shape->is_closed || shape->count != 4)
        return false;
    bool begins_along_x = at[0].y <= at[1].y && at[0].y >= at[1].y;
    for (size_t i = 0; i < 4; i++) {
        struct point from = at[i], to = at[(i + 1) % 4];
        bool is_along_x = (i % 2 == 0) == begins_along_x;
        if (is_along_x ? from.y < to.y || from.y > to.y : from.x < to.x || from.x > to.x)
            return false;
    }
    return true;
}

/* Narrows low..high to the shares of a run from `from` by `step` that lie between two bounds. */
static void narrow(double *low, double *high, double from, double step, double least, double most)
{
    if (step < 0 || step > 0) {
        double one = (least - from) / step, other = (most - from) / step;
        *low = fmax(*low, fmin(one, other));
        *high = fmin(*high, fmax(one, other));
    } else if (from < least || from > most) {
        *high = -1;
    }
}

/* Where a segment first lies in a box. False: nowhere. */
static bool enters(struct point *at, const struct box *box, struct point a, struct point b)
{
    double low = 0, high = 1, dx = b.x - a.x, dy = b.y - a.y;
    narrow(&low, &high, a.x, dx, box->left, box->right);
    narrow(&low, &high, a.y, dy, box->low, box->high);
    *at = (struct point){a.x + low * dx, a.y + low * dy};
    return low <= high;
}

static struct point nearest_in(const struct box *box, struct point at)
{
    return (struct point){at.x < box->left    ? box->left
                          : at.x > box->right ? box->right
                                              : at.x,
                          at.y < box->low    ? box->low
                          : at.y > box->high ? box->high
                                             : at.y};
}

static void offer_turned(struct best *best, struct point on_a, struct point on_b, bool is_turned)
{
    offer(best, is_turned ? on_b : on_a, is_turned ? on_a : on_b);
}

/* A box or one point against the sides of anything: nearest are an end of a side or a corner of the
 * box, or a side goes through it. `is_turned`: the box is the second of the two shapes. */
static void offer_box(struct best *best, const struct shape *boxed, const struct shape *other,
                      bool is_turned)
{
    struct box box = box_round(boxed);
    for (size_t i = 0; i < side_count(other); i++) {
        struct point at, a = other->corners[i],
                         b = other->corners[i + 1 < other->count ? i + 1 : 0];
        struct box side = box_of(a, b);
        double square = apart(&box, &side);
        if (is_beyond(square, best))
            continue;
        offer_turned(best, nearest_in(&box, a), a, is_turned);
        offer_turned(best, nearest_in(&box, b), b, is_turned);
        if (square <= 0 && enters(&at, &box, a, b))
            offer(best, at, at);
        for (size_t j = 0; j < boxed->count; j++)
            offer_turned(best, boxed->corners[j], nearest_on(a, b, boxed->corners[j]), is_turned);
    }
}

double flat_distance(const struct shape *a, const struct shape *b, struct point nearest[2])
{
    struct best best = {INFINITY, nearest};
    assert(a->count > 0 && b->count > 0);
    if (a->count == 1 || is_box(a)) {
        offer_box(&best, a, b, false);
    } else if (b->count == 1 || is_box(b)) {
        offer_box(&best, b, a, true);
    } else {
        offer_sides(&best, a, b);
        offer_end(&best, a, b, false);
        offer_end(&best, b, a, true);
    }
    /* One may lie wholly inside the other. */
    if (best.square > 0 && a->is_closed && flat_contains(a, b->corners[0], 0))
        offer(&best, b->corners[0], b->corners[0]);
    if (best.square > 0 && b->is_closed && flat_contains(b, a->corners[0], 0))
        offer(&best, a->corners[0], a->corners[0]);
    return sqrt(best.square);
}

bool flat_boxes_distance(double *out, const struct shape *a, const struct shape *b)
{
    if (!is_box(a) || !is_box(b))
        return false;
    struct box one = box_round(a), other = box_round(b);
    *out = sqrt(apart(&one, &other));
    return true;
}

double flat_area(const struct point *corners, size_t count)
{
    double twice = 0;
    for (size_t i = 1; i + 1 < count; i++) /* about the first corner: small numbers stay exact */
        twice += turn(corners[0], corners[i], corners[i + 1]);
    return twice / 2;
}

bool flat_contains(const struct shape *shape, struct point at, double slack)
{
    bool is_inside = false;
    for (size_t i = 0; i < shape->count; i++) {
        struct point a = shape->corners[i], b = shape->corners[i + 1 < shape->count ? i + 1 : 0];
        if ((a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x))
            is_inside = !is_inside;
    }
    for (size_t i = 0; i < shape->count && !is_inside && slack > 0; i++) {
        struct point a = shape->corners[i], b = shape->corners[i + 1 < shape->count ? i + 1 : 0];
        is_inside = flat_length(at, nearest_on(a, b, at)) <= slack;
    }
    return is_inside;
}

size_t flat_cut(struct point *corners, size_t count, double nx, double ny, double limit)
{
    struct point kept[16];
    size_t kept_count = 0;
    assert(count < 16);
    for (size_t i = 0; i < count; i++) {
        struct point a = corners[i], b = corners[(i + 1) % count];
        double over_a = nx * a.x + ny * a.y - limit, over_b = nx * b.x + ny * b.y - limit;
        if (over_a <= 0)
            kept[kept_count++] = a;
        if ((over_a < 0 && over_b > 0) || (over_a > 0 && over_b < 0)) {
            double t = over_a / (over_a - over_b);
            kept[kept_count++] = (struct point){a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)};
        }
        assert(kept_count <= count + 1 && kept_count <= 15);
    }
    memcpy(corners, kept, kept_count * sizeof *kept);
    return kept_count;
}

size_t flat_cut_nearer(struct point *corners, size_t count, struct point keep, struct point lose)
{
    double nx = lose.x - keep.x, ny = lose.y - keep.y;
    double limit = nx * (keep.x + lose.x) / 2 + ny * (keep.y + lose.y) / 2;
    return flat_cut(corners, count, nx, ny, limit);
}
