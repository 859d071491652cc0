#include "layout_corner.h"

#include <math.h>
#include <string.h>

/* Two sides turn a corner where they bend by more than about 10°. */
static const double least_bend = 0.17;

size_t layout_cut_to_strip(struct point *cell, const struct point corners[4], struct point from,
                           struct point to, double reach)
{
    double length = flat_length(from, to);
    double dx = (to.x - from.x) / length, dy = (to.y - from.y) / length;
    double along = dx * from.x + dy * from.y, beside = -dy * from.x + dx * from.y;
    size_t count = 4;
    if (length <= 0)
        return 0;
    for (size_t i = 0; i < count; i++)
        cell[i] = corners[i];
    count = flat_cut(cell, count, -dy, dx, beside + reach);
    count = flat_cut(cell, count, dy, -dx, -beside + reach);
    count = flat_cut(cell, count, dx, dy, along + length + reach);
    return flat_cut(cell, count, -dx, -dy, -along + reach);
}

static bool is_outer(const char *edge)
{
    return strcmp(edge, "eave") == 0 || strcmp(edge, "rake") == 0;
}

/* From `at` along an edge of the roof. */
struct leg {
    struct point at, to;
};

static double distance_to_leg(const struct shape *shape, const struct leg *leg)
{
    struct point ends[2] = {leg->at, leg->to}, nearest[2];
    struct shape line = {ends, 2, false};
    return flat_distance(shape, &line, nearest);
}

/* The edge beyond a hip: this one as a mirror in the hip would show it, long enough to matter. */
static struct leg beyond_hip(const struct leg *edge, const struct leg *hip, double reach)
{
    double length = flat_length(hip->at, hip->to), own = flat_length(edge->at, edge->to);
    double hx = (hip->to.x - hip->at.x) / length, hy = (hip->to.y - hip->at.y) / length;
    double x = (edge->to.x - edge->at.x) / own, y = (edge->to.y - edge->at.y) / own;
    double along = 2 * (x * hx + y * hy), far = fmax(own, 4 * reach);
    return (struct leg){edge->at,
                        {edge->at.x + far * (along * hx - x), edge->at.y + far * (along * hy - y)}};
}

static bool is_in_corner(const struct shape *shape, const struct leg *a, const struct leg *b,
                         double reach, double corner)
{
    double to_a = distance_to_leg(shape, a), to_b = distance_to_leg(shape, b);
    struct point cell[8];
    if (to_a > reach || to_b > reach || fmin(to_a, to_b) > corner)
        return false;
    if (shape->count == 1)
        return true;
    size_t count = layout_cut_to_strip(cell, shape->corners, a->at, a->to, reach);
    struct shape part = {cell, count, true};
    return count > 0 && distance_to_leg(&part, b) <= reach;
}

/* The two edges that meet at a corner of the outline. False: it is no outer corner of the roof. */
static bool find_legs(struct leg legs[2], const struct layout_plane *plane, size_t corner,
                      double reach)
{
    size_t before = (corner + plane->count - 1) % plane->count;
    const char *kinds[2] = {plane->edges[before], plane->edges[corner]};
    const struct point *c = plane->corners;
    double cosine = plane->cos_slope;
    struct point at = {c[corner].x, c[corner].y * cosine};
    legs[0] = (struct leg){at, {c[before].x, c[before].y * cosine}};
    legs[1] = (struct leg){at, {c[corner + 1].x, c[corner + 1].y * cosine}};
    double x = at.x - legs[0].to.x, y = at.y - legs[0].to.y;
    double dx = legs[1].to.x - at.x, dy = legs[1].to.y - at.y;
    if (x * dy - y * dx <= least_bend * hypot(x, y) * hypot(dx, dy))
        return false;
    for (size_t i = 0; i < 2; i++)
        if (strcmp(kinds[i], "hip") == 0 && is_outer(kinds[1 - i])) {
            legs[i] = beyond_hip(&legs[1 - i], &legs[i], reach);
            return true;
        }
    return is_outer(kinds[0]) && is_outer(kinds[1]);
}

bool layout_at_corner(const struct layout_plane *plane, const struct shape *shape, double reach,
                      double corner)
{
    for (size_t i = 0; i < plane->count; i++) {
        struct leg legs[2];
        if (find_legs(legs, plane, i, reach + LAYOUT_SLACK) &&
            is_in_corner(shape, &legs[0], &legs[1], reach + LAYOUT_SLACK, corner + LAYOUT_SLACK))
            return true;
    }
    return false;
}
