/* Wind zones in which modules and attachments lie, and the distances that tell exposed modules.
 *
 * Strips are measured in plan (ASCE 7, chapter 30, figures for components and cladding; the names
 * of the pieces from memory): e along the eave, r along ridge and hip, n along the rake; 3 where
 * two of them meet, on a low roof at each outer corner. From 7-22 on (secondary source: two general
 * wind load codes agree) a gable roof to 27° has no strip along the eave, and a hip roof has zone 3
 * along the whole eave. */
#include "layout_corner.h"
#include "layout_methods.h"

#include <math.h>
#include <string.h>

/* Edges by what they do to the wind. */
enum line { LINE_EAVE, LINE_RIDGE, LINE_HIP, LINE_RAKE, LINE_COUNT };
static const char *const line_names[LINE_COUNT] = {"eave", "ridge", "hip", "rake"};

/* A place to be zoned, in plan: a point or a module. */
struct place_in_plan {
    struct point corners[4];
    struct shape shape;
};

struct zoning {
    const struct layout_plane *plane;
    const char *scheme;
    double width, corner, inner;
};

static struct point flatten(const struct layout_plane *plane, struct point at)
{
    return (struct point){at.x, at.y * plane->cos_slope};
}

/* The least distance in plan to the lines of a kind; infinite where there are none. */
static double distance_to(const struct layout_plane *plane, const struct shape *shape,
                          enum line line)
{
    double least = INFINITY;
    for (size_t i = 0; i < plane->count; i++) {
        if (strcmp(plane->edges[i], line_names[line]) != 0)
            continue;
        struct point ends[2] = {flatten(plane, plane->corners[i]),
                                flatten(plane, plane->corners[i + 1])};
        struct point nearest[2];
        struct shape side = {ends, 2, false};
        least = fmin(least, flat_distance(shape, &side, nearest));
    }
    return least;
}

static bool is_plain_gable(const char *scheme)
{
    return strcmp(scheme, "plain gable") == 0;
}

static bool is_plain_hip(const char *scheme)
{
    return strcmp(scheme, "plain hip") == 0;
}

static bool is_corner_pair(enum line a, enum line b, const char *scheme)
{
    if (strcmp(scheme, "low slope") == 0)
        return a == LINE_EAVE && b == LINE_RAKE;
    if (a == LINE_EAVE && b == LINE_RAKE)
        return !is_plain_gable(scheme);
    return (a == LINE_EAVE && b == LINE_HIP) || (a == LINE_RIDGE && b == LINE_RAKE);
}

/* The zone of one point, as a rank: index into the scheme's words, worst last. */
static const char *zone_of_point(const struct zoning *zoning, struct point at)
{
    struct shape point = {&at, 1, false};
    bool is_near[LINE_COUNT];
    double least = INFINITY, reach = zoning->width + LAYOUT_SLACK;
    bool is_low = strcmp(zoning->scheme, "low slope") == 0;
    for (int i = 0; i < LINE_COUNT; i++) {
        double distance = distance_to(zoning->plane, &point, (enum line)i);
        is_near[i] = distance <= reach && !(is_low && (i == LINE_RIDGE || i == LINE_HIP));
        if (i == LINE_EAVE || i == LINE_RAKE)
            least = fmin(least, distance);
    }
    bool at_eave = is_near[LINE_EAVE], at_rake = is_near[LINE_RAKE];
    bool at_ridge = is_near[LINE_RIDGE], at_hip = is_near[LINE_HIP];
    if (is_low) {
        if ((at_eave && at_rake && least <= zoning->corner + LAYOUT_SLACK) ||
            layout_at_corner(zoning->plane, &point, zoning->width, zoning->corner))
            return "3";
        return at_eave || at_rake ? "2" : zoning->inner > 0 && least > zoning->inner ? "1'" : "1";
    }
    if (strcmp(zoning->scheme, "gable") == 0) {
        if (at_rake && (at_eave || at_ridge))
            return at_eave ? "3e" : "3r";
        return at_rake ? "2n" : at_ridge || at_hip ? "2r" : at_eave ? "2e" : "1";
    }
    if ((at_eave && is_plain_hip(zoning->scheme)) || (at_ridge && at_rake) ||
        (at_eave && (at_hip || (at_rake && !is_plain_gable(zoning->scheme)))))
        return "3";
    if (is_plain_gable(zoning->scheme))
        at_eave = false;
    if (strcmp(zoning->scheme, "hip") == 0)
        return at_ridge || at_hip ? "2r" : at_eave || at_rake ? "2e" : "1";
    return at_eave || at_rake || at_ridge || at_hip ? "2" : "1";
}

static bool open_zoning(struct zoning *zoning, const struct object *plane,
                        const struct amount *inputs, unsigned parts, struct working *working)
{
    struct layout_plane *opened;
    if (!layout_plane_open(&opened, plane, LAYOUT_EDGES | LAYOUT_SLOPE | parts, working))
        return false;
    double width = inputs[1].quantity.value;
    *zoning = (struct zoning){opened, inputs[0].word, width,
                              inputs[2].type == AMOUNT_QUANTITY ? inputs[2].quantity.value : width,
                              inputs[3].type == AMOUNT_QUANTITY ? inputs[3].quantity.value : 0};
    return true;
}

static bool read_attachment(const struct object **plane, struct point *at,
                            const struct object *about, struct working *working)
{
    const struct fact *fact;
    if (!layout_plane_of(plane, about, SLOT_attachment_plane, working) ||
        !layout_need_fact(&fact, about, SLOT_attachment_at, working))
        return false;
    *at = fact->is.point;
    return true;
}

bool layout_run_attachment_zone(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    const struct object *plane;
    struct point at;
    struct zoning zoning;
    if (!read_attachment(&plane, &at, about, working) ||
        !open_zoning(&zoning, plane, inputs, 0, working))
        return false;
    results[0] = amount_of_word(zone_of_point(&zoning, flatten(zoning.plane, at)));
    return true;
}

/* Is a part of the module within reach of both lines? */
static bool reaches_corner(const struct zoning *zoning, const struct place_in_plan *place,
                           enum line a, enum line b, const double *distances)
{
    const struct layout_plane *plane = zoning->plane;
    double reach = zoning->width + LAYOUT_SLACK;
    if (!is_corner_pair(a, b, zoning->scheme) || distances[a] > reach || distances[b] > reach ||
        fmin(distances[a], distances[b]) > zoning->corner + LAYOUT_SLACK)
        return false;
    for (size_t i = 0; i < plane->count; i++) {
        struct point cell[8];
        if (strcmp(plane->edges[i], line_names[a]) != 0)
            continue;
        size_t count = layout_cut_to_strip(cell, place->corners, flatten(plane, plane->corners[i]),
                                           flatten(plane, plane->corners[i + 1]), reach);
        struct shape part = {cell, count, true};
        if (count > 0 && distance_to(plane, &part, b) <= reach)
            return true;
    }
    return false;
}

/* The worst zone that a module reaches into. Of 3e and 3r the worse one is 3r up to 20°, 3e above
 * (ASCE 7-16 figures 30.3-2B to 2D). */
static const char *zone_of_module(const struct zoning *zoning, const struct place_in_plan *place)
{
    double distances[LINE_COUNT], reach = zoning->width + LAYOUT_SLACK;
    const char *scheme = zoning->scheme;
    for (int i = 0; i < LINE_COUNT; i++)
        distances[i] = distance_to(zoning->plane, &place->shape, (enum line)i);
    bool at_eave = reaches_corner(zoning, place, LINE_EAVE, LINE_RAKE, distances);
    bool at_ridge = reaches_corner(zoning, place, LINE_RIDGE, LINE_RAKE, distances);
    bool at_hip = reaches_corner(zoning, place, LINE_EAVE, LINE_HIP, distances);
    bool is_low = strcmp(scheme, "low slope") == 0;
    bool is_gable = strcmp(scheme, "gable") == 0;
    double edge = fmin(distances[LINE_EAVE], distances[LINE_RAKE]);
    double ridge = fmin(distances[LINE_RIDGE], distances[LINE_HIP]);
    if (is_gable && (at_eave || at_ridge)) {
        bool is_steep = zoning->plane->cos_slope < cos(20 * acos(-1) / 180);
        return at_eave && (is_steep || !at_ridge) ? "3e" : "3r";
    }
    if (is_plain_gable(scheme))
        edge = distances[LINE_RAKE];
    at_eave = at_eave || (is_plain_hip(scheme) && distances[LINE_EAVE] <= reach);
    if (is_low && layout_at_corner(zoning->plane, &place->shape, zoning->width, zoning->corner))
        return "3";
    if (!is_gable && (at_eave || at_ridge || at_hip))
        return "3";
    if (is_low)
        return edge <= reach ? "2" : zoning->inner > 0 && edge > zoning->inner ? "1'" : "1";
    if (is_gable && distances[LINE_RAKE] <= reach)
        return "2n";
    if (fmin(edge, ridge) > reach)
        return "1";
    if (!is_gable && strcmp(scheme, "hip") != 0)
        return "2";
    return ridge <= reach ? "2r" : "2e";
}

bool layout_run_module_zone(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct layout_module *module;
    struct zoning zoning;
    struct place_in_plan place;
    if (!layout_module_open(&plane, &module, about, LAYOUT_EDGES | LAYOUT_SLOPE, working) ||
        !open_zoning(&zoning, plane->object, inputs, LAYOUT_MODULES, working))
        return false;
    for (int i = 0; i < 4; i++)
        place.corners[i] = flatten(plane, module->corners[i]);
    place.shape = (struct shape){place.corners, 4, true};
    results[0] = amount_of_word(zone_of_module(&zoning, &place));
    return true;
}

bool layout_run_edge_distance(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct layout_module *module;
    const char *edge = inputs[0].type == AMOUNT_WORD ? inputs[0].word : NULL;
    if (!layout_module_open(&plane, &module, about, edge != NULL ? LAYOUT_EDGES : 0, working))
        return false;
    struct shape shape = layout_module_shape(module);
    double least = INFINITY;
    for (size_t i = 0; i < plane->count; i++) {
        struct shape side = layout_side_of(plane, i);
        struct point nearest[2];
        if (edge == NULL || strcmp(plane->edges[i], edge) == 0)
            least = fmin(least, flat_distance(&shape, &side, nearest));
    }
    if (isinf(least))
        return working_wrong(working, "edge", "roof plane %s has no %s; ask has_edge before",
                             plane->object->path, edge);
    results[0] = layout_metres(module->is_off_plane ? 0 : least);
    return true;
}

bool layout_run_neighbour_distance(struct amount *results, const struct object *about,
                                   const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    struct layout_module *module;
    double least = INFINITY;
    (void)inputs;
    if (!layout_module_open(&plane, &module, about, 0, working))
        return false;
    struct shape shape = layout_module_shape(module);
    for (size_t i = 0; i < plane->module_count; i++) {
        struct shape other = layout_module_shape(&plane->modules[i]);
        struct point nearest[2];
        double distance =
            &plane->modules[i] == module ? INFINITY : flat_distance(&shape, &other, nearest);
        if (distance >= least)
            continue;
        least = distance;
        results[1] = amount_of_word(plane->modules[i].object->path);
    }
    if (isinf(least))
        return working_wrong(working, NULL, "module %s is alone on roof plane %s", about->path,
                             plane->object->path);
    results[0] = layout_metres(least);
    return true;
}
