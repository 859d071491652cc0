/* The roof below an emergency escape and rescue opening: a strip straight down to the plane's
 * lowest edge. */
#include "layout_methods.h"

#include <math.h>

struct opening {
    struct layout_plane *plane;
    double left, right, y;
};

static bool open_opening(struct opening *opening, const struct object *about,
                         struct working *working)
{
    const struct object *plane;
    const struct fact *at;
    struct quantity width;
    if (!need_object(&plane, about, SLOT_escape_opening_plane, working) ||
        !layout_need_fact(&at, about, SLOT_escape_opening_at, working) ||
        !need_quantity(&width, about, SLOT_escape_opening_width, working))
        return false;
    if (plane == NULL)
        return working_wrong(working, NULL, "escape opening %s gives onto no roof plane",
                             about->path);
    opening->left = at->is.point.x;
    opening->right = at->is.point.x + width.value;
    opening->y = at->is.point.y;
    return layout_plane_open(&opening->plane, plane, LAYOUT_PATHWAY, working);
}

/* The part of a shape's rim below `y`, as a range of x. False: nothing of it is below. */
static bool reach_below(struct point *range, const struct shape *shape, double y)
{
    *range = (struct point){INFINITY, -INFINITY};
    size_t sides = shape->is_closed ? shape->count : shape->count - 1;
    for (size_t i = 0; i < sides; i++) {
        struct point a = shape->corners[i], b = shape->corners[(i + 1) % shape->count];
        if (fmin(a.y, b.y) >= y - LAYOUT_SLACK)
            continue;
        struct point cut = a.y > b.y ? a : b; /* the upper end, lowered to y */
        const struct point low = a.y > b.y ? b : a;
        if (cut.y > y)
            cut = (struct point){low.x + (cut.x - low.x) * (y - low.y) / (cut.y - low.y), y};
        range->x = fmin(range->x, fmin(low.x, cut.x));
        range->y = fmax(range->y, fmax(low.x, cut.x));
    }
    return range->x <= range->y;
}

bool layout_run_clear_below(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct opening opening;
    size_t in_way = 0;
    if (!open_opening(&opening, about, working))
        return false;
    const struct layout_plane *plane = opening.plane;
    double middle = (opening.left + opening.right) / 2;
    double half = fmax(inputs[0].quantity.value, opening.right - opening.left) / 2 - LAYOUT_SLACK;
    for (size_t i = 0; i < plane->module_count; i++) {
        struct shape shape = layout_module_shape(&plane->modules[i]);
        struct point range;
        if (!reach_below(&range, &shape, opening.y) || range.y <= middle - half ||
            range.x >= middle + half)
            continue;
        if (in_way++ == 0)
            results[1] = amount_of_word(plane->modules[i].object->path);
    }
    working_step(working, NULL,
                 "strip %.6g m wide straight down from the opening: %zu modules in it",
                 2 * (half + LAYOUT_SLACK), in_way);
    results[0] = amount_of_yesno(in_way == 0);
    return true;
}

struct strip {
    struct point range; /* free from x to y, about the opening */
    bool is_blocked;
};

static void narrow(struct strip *strip, const struct shape *shape, const struct opening *opening)
{
    struct point range;
    if (!reach_below(&range, shape, opening->y))
        return;
    if (range.y <= opening->left + LAYOUT_SLACK)
        strip->range.x = fmax(strip->range.x, range.y);
    else if (range.x >= opening->right - LAYOUT_SLACK)
        strip->range.y = fmin(strip->range.y, range.x);
    else
        strip->is_blocked = true;
}

bool layout_run_clear_width_below(struct amount *results, const struct object *about,
                                  const struct amount *inputs, struct working *working)
{
    struct opening opening;
    struct shape *things;
    size_t count;
    (void)inputs;
    if (!open_opening(&opening, about, working))
        return false;
    const struct layout_plane *plane = opening.plane;
    if (!layout_things_of(&things, &count, plane, working->layout->geos, working->arena))
        return working_short(working);
    struct strip strip = {{-INFINITY, INFINITY}, false};
    for (size_t i = 0; i < count; i++)
        narrow(&strip, &things[i], &opening);
    /* The roof's own sides bound the strip; a side right below the opening blocks it, but for the
     * edge where the strip ends. */
    for (size_t i = 0; i < plane->count; i++) {
        struct shape side = layout_side_of(plane, i);
        if (fabs(plane->corners[i].y - plane->corners[i + 1].y) > LAYOUT_SLACK)
            narrow(&strip, &side, &opening);
    }
    double width = strip.is_blocked ? 0 : strip.range.y - strip.range.x;
    if (isinf(width))
        return working_beyond(working, "escape opening %s does not lie above its roof plane",
                              about->path);
    results[0] = layout_metres(width);
    return true;
}
