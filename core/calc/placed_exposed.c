/* Which parts of an array stand at an exposed edge. */
#include "placed.h"

#include <math.h>
#include <string.h>

/* One of the four ways out of a module, along an axis of the plane. */
struct way {
    size_t at;   /* of the layout's ways */
    bool is_up;  /* along y, else along x */
    double sign; /* +1 or -1 */
};

/* Coordinates as seen looking along the way: `ahead` grows outwards. */
static double ahead(struct way way, struct point at)
{
    return way.sign * (way.is_up ? at.y : at.x);
}

static double beside(struct way way, struct point at)
{
    return way.is_up ? at.x : at.y;
}

/* A rectangle seen along a way. */
struct seen {
    double near, far, left, right;
};

static struct seen see(struct way way, struct point low, struct point high)
{
    double a = ahead(way, low), b = ahead(way, high);
    return (struct seen){fmin(a, b), fmax(a, b), beside(way, low), beside(way, high)};
}

/* The first module that may reach as far as `near`: those before begin too early and end short of
 * it. */
static size_t first_near(const struct layout_plane *plane, struct way way, double near)
{
    const struct layout_passed *passed = plane->passed[way.at];
    double from = near - plane->longest[way.at] - LAYOUT_SLACK;
    size_t low = 0, high = plane->module_count;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        if (passed[middle].near < from)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

/* Where the array ends along the way: modules nearer than `gap` belong to it. Modules that begin
 * farther out than one that is out of reach are out of reach, too. */
static double find_edge(const struct placed_spot *spot, struct way way, double gap)
{
    const struct layout_plane *plane = spot->plane;
    const struct layout_passed *passed = plane->passed[way.at];
    struct seen own = see(way, spot->module->corners[0], spot->module->corners[2]);
    double edge = own.far;
    for (size_t i = first_near(plane, way, own.near);
         i < plane->module_count && passed[i].near <= edge + gap + LAYOUT_SLACK; i++) {
        const struct point *corners = plane->modules[passed[i].module].corners;
        struct seen other = see(way, corners[0], corners[2]);
        bool is_beside =
            other.right <= own.left + LAYOUT_SLACK || other.left >= own.right - LAYOUT_SLACK;
        if (!is_beside && other.far > edge + LAYOUT_SLACK)
            edge = other.far;
    }
    return edge;
}

static bool is_roof_edge(const char *kind, bool ridge_is_edge)
{
    return strcmp(kind, "eave") == 0 || strcmp(kind, "rake") == 0 || strcmp(kind, "wall") == 0 ||
           (ridge_is_edge && strcmp(kind, "ridge") == 0);
}

/* How far the roof goes on beyond `edge` at one place beside the way; infinite over a ridge. */
static double roof_beyond(const struct layout_plane *plane, struct way way, double edge,
                          double place, bool ridge_is_edge)
{
    double least = INFINITY;
    bool ends = true;
    for (size_t i = 0; i < plane->count; i++) {
        struct point a = plane->corners[i], b = plane->corners[i + 1];
        double from = beside(way, a) - place, to = beside(way, b) - place;
        if ((from > 0) == (to > 0))
            continue;
        double share = from / (from - to);
        double at = ahead(way, a) + share * (ahead(way, b) - ahead(way, a)) - edge;
        if (at < -LAYOUT_SLACK || at >= least)
            continue;
        least = fmax(at, 0);
        ends = is_roof_edge(plane->edges[i], ridge_is_edge);
    }
    return ends ? least : INFINITY;
}

static bool is_exposed_along(const struct placed_spot *spot, struct way way, double half_height,
                             double gap, bool ridge_is_edge)
{
    struct seen module = see(way, spot->module->corners[0], spot->module->corners[2]);
    struct seen own = see(way, spot->low, spot->high);
    double edge = find_edge(spot, way, gap);
    double reach = 1.5 * (module.far - module.near);
    if (edge - own.far > reach + LAYOUT_SLACK)
        return false;
    double inside = fmin(0.01, (module.right - module.left) / 4);
    double places[3] = {module.left + inside, (module.left + module.right) / 2,
                        module.right - inside};
    for (int i = 0; i < 3; i++)
        if (roof_beyond(spot->plane, way, edge, places[i], ridge_is_edge) >
            half_height + LAYOUT_SLACK)
            return true;
    return false;
}

bool placed_is_exposed(const struct placed_spot *spot, double mean_roof_height,
                       double height_above_roof, bool ridge_is_edge)
{
    static const struct way ways[LAYOUT_WAYS] = {
        {0, false, 1}, {1, false, -1}, {2, true, 1}, {3, true, -1}};
    double gap = fmax(4 * height_above_roof, 4 * 0.3048);
    for (size_t i = 0; i < LAYOUT_WAYS; i++)
        if (is_exposed_along(spot, ways[i], mean_roof_height / 2, gap, ridge_is_edge))
            return true;
    return false;
}
