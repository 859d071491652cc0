/* Numbers, names and dimensions on the roof plan. */
#include <math.h>
#include <string.h>

#include "drawing_roof.h"

void roof_strip_corners(struct point *corners, const struct roof *roof, const struct strip *strip)
{
    for (size_t i = 0; i < 4; i++)
        corners[i] = plan_at(&roof->plan, strip->plane, strip->corners[i].x, strip->corners[i].y);
}

/* Marks are sought room for along a grid over a box of the sheet. */
static void mark_in_box(struct roof *roof, struct key *key, struct box box)
{
    enum { ACROSS = 9, DOWN = 5 };
    struct point points[ACROSS * DOWN];
    size_t count = 0;
    for (int row = 0; row < DOWN; row++)
        for (int column = 0; column < ACROSS; column++)
            points[count++] =
                (struct point){box.left + (box.right - box.left) * (column + 0.5) / ACROSS,
                               box.top + (box.bottom - box.top) * (row + 0.5) / DOWN};
    key_mark(roof->canvas, key, points, count);
}

static struct box box_around(const struct point *points, size_t count)
{
    struct box box = {INFINITY, INFINITY, -INFINITY, -INFINITY};
    for (size_t i = 0; i < count; i++) {
        box.left = fmin(box.left, points[i].x);
        box.right = fmax(box.right, points[i].x);
        box.top = fmin(box.top, points[i].y);
        box.bottom = fmax(box.bottom, points[i].y);
    }
    return box;
}

static void mark_strips(struct roof *roof)
{
    for (size_t i = 0; i < roof->strips.count; i++) {
        struct key *key = keys_find_finding(&roof->keys, roof->strips.items[i].finding);
        struct point corners[4];
        if (key == NULL || key->is_outlined)
            continue;
        roof_strip_corners(corners, roof, &roof->strips.items[i]);
        mark_in_box(roof, key, box_around(corners, 4));
    }
}

/* On the sheet; false: the module is not drawn. */
static bool module_corners(struct point *corners, const struct roof *roof,
                           const struct object *module)
{
    const struct plan_plane *plane = plan_find(&roof->plan, object_in(module, SLOT_module_plane));
    struct point at;
    double width, length;
    if (plane == NULL || !module_rect(&at, &width, &length, module))
        return false;
    plan_rect(corners, &roof->plan, plane, at, width, length);
    return true;
}

/* All modules; false: none is drawn. */
static bool box_of_modules(struct box *out, const struct roof *roof)
{
    const struct objects *modules = &roof->canvas->report->design->of_kind[KIND_module];
    *out = (struct box){INFINITY, INFINITY, -INFINITY, -INFINITY};
    for (size_t i = 0; i < modules->count; i++) {
        struct point corners[4];
        if (!module_corners(corners, roof, modules->items[i]))
            continue;
        struct box box = box_around(corners, 4);
        *out = (struct box){fmin(out->left, box.left), fmin(out->top, box.top),
                            fmax(out->right, box.right), fmax(out->bottom, box.bottom)};
    }
    return out->left < out->right;
}

static void mark_things(struct roof *roof)
{
    struct canvas *canvas = roof->canvas;
    for (size_t i = 0; i < roof->keys.count; i++) {
        struct key *key = &roof->keys.items[i];
        struct point at, corners[4];
        double width, length;
        if (key->object == NULL || key->is_outlined)
            continue;
        const struct object *one = key->object;
        if (one->kind->id == KIND_roof_plane || one->kind->id == KIND_framing) {
            const struct plan_plane *plane =
                plan_find(&roof->plan, one->kind->id == KIND_framing ? one->parent : one);
            if (plane != NULL)
                mark_in_box(roof, key, box_around(plane->corners, plane->count));
        } else if (one->kind->id == KIND_module) {
            if (module_corners(corners, roof, one))
                mark_in_box(roof, key, box_around(corners, 4));
        } else if (one->kind->id == KIND_obstruction &&
                   obstruction_rect(&at, &width, &length, one)) {
            const struct plan_plane *plane = plan_find(&roof->plan, one->parent);
            if (plane == NULL)
                continue;
            plan_rect(corners, &roof->plan, plane, at, width, length);
            struct box box = box_around(corners, 4);
            mark_in_box(roof, key,
                        (struct box){box.left - 16, box.top - 16, box.right + 16, box.bottom + 16});
        } else if (one->kind->id == KIND_racking || one->kind->id == KIND_rail) {
            struct box box;
            if (box_of_modules(&box, roof))
                mark_in_box(
                    roof, key,
                    (struct box){box.left - 16, box.top - 16, box.right + 16, box.bottom + 16});
        } else if (one->kind->id == KIND_attachment && roof_attachment_at(&at, &roof->plan, one))
            key_mark(canvas, key, (struct point[]){{at.x, at.y - 16}, {at.x, at.y + 16}}, 2);
    }
}

static void keep_modules(struct roof *roof)
{
    const struct objects *modules = &roof->canvas->report->design->of_kind[KIND_module];
    for (size_t i = 0; i < modules->count; i++) {
        struct point corners[4];
        if (!module_corners(corners, roof, modules->items[i]))
            continue;
        canvas_keep(roof->canvas, box_around(corners, 4));
    }
}

static void name_obstructions(struct roof *roof)
{
    const struct objects *all = &roof->canvas->report->design->of_kind[KIND_obstruction];
    const struct lettering lettering = {10, ANCHOR_START, false, true, NULL, 110};
    for (size_t i = 0; i < all->count; i++) {
        const struct plan_plane *plane = plan_find(&roof->plan, all->items[i]->parent);
        struct point at, corners[4];
        double width, length;
        if (plane == NULL || !obstruction_rect(&at, &width, &length, all->items[i]))
            continue;
        plan_rect(corners, &roof->plan, plane, at, width, length);
        struct box box = box_around(corners, 4);
        double middle = (box.left + box.right) / 2, half = (box.top + box.bottom) / 2 + 4;
        const struct point points[] = {{middle, box.top - 4},
                                       {middle, box.bottom + 12},
                                       {box.left - 4, half},
                                       {box.right + 4, half}};
        const enum anchor anchors[] = {ANCHOR_MIDDLE, ANCHOR_MIDDLE, ANCHOR_END, ANCHOR_START};
        canvas_place(roof->canvas, points, anchors, 4, lettering, all->items[i]->name);
    }
}

/* How wide each strip is asked to be. */
static void name_strips(struct roof *roof)
{
    const struct lettering lettering = {10, ANCHOR_MIDDLE, false, true, NULL, 0};
    for (size_t i = 0; i < roof->strips.count; i++) {
        const struct strip *strip = &roof->strips.items[i];
        struct point corners[4], points[18];
        enum anchor anchors[18];
        char is[128];
        roof_strip_corners(corners, roof, strip);
        struct box box = box_around(corners, 4);
        bool is_tall = box.bottom - box.top > box.right - box.left;
        for (size_t j = 0; j < 18; j++) {
            int off = ((int)(j % 9) + 1) / 2 * (j % 2 == 0 ? 1 : -1); /* from the middle outwards */
            double along = (4.5 + off) / 9, across = j < 9 ? 0.5 : 0.75;
            points[j] =
                (struct point){box.left + (box.right - box.left) * (is_tall ? across : along),
                               box.top + (box.bottom - box.top) * (is_tall ? along : across) + 4};
            anchors[j] = ANCHOR_MIDDLE;
        }
        amount_write(is, sizeof is, strip->value->is, NULL, 4);
        canvas_place(roof->canvas, points, anchors, 18, lettering,
                     arena_format(roof->canvas->arena, "%s", is));
    }
}

void roof_write_marks(struct roof *roof)
{
    mark_strips(roof);
    mark_things(roof);
    keep_modules(roof);
    name_strips(roof);
    plan_name_planes(roof->canvas, &roof->plan, &roof->strips);
    name_obstructions(roof);
}

/* Which way is out, from the middle of a side. */
static struct point outward(const struct plan_plane *plane, struct point a, struct point b)
{
    double length = hypot(b.x - a.x, b.y - a.y);
    struct point normal = {(b.y - a.y) / length, -(b.x - a.x) / length};
    struct point probe = {(a.x + b.x) / 2 + normal.x * 3, (a.y + b.y) / 2 + normal.y * 3};
    return plan_is_inside(plane, probe) ? (struct point){-normal.x, -normal.y} : normal;
}

static bool is_over_a_plane(const struct plan *plan, struct point at)
{
    for (size_t i = 0; i < plan->count; i++)
        if (plan->planes[i].outline != NULL && plan_is_inside(&plan->planes[i], at))
            return true;
    return false;
}

/* One side of a plane with its true length, if there is room outside of it. */
static bool dimension_side(struct roof *roof, const struct plan_plane *plane, size_t side)
{
    size_t next = (side + 1) % plane->count;
    struct point a = plane->corners[side], b = plane->corners[next];
    struct point p = plane->outline[side], q = plane->outline[next];
    if (hypot(b.x - a.x, b.y - a.y) < 30)
        return false;
    struct point normal = outward(plane, a, b);
    struct point probe = {(a.x + b.x) / 2 + normal.x * 20, (a.y + b.y) / 2 + normal.y * 20};
    if (is_over_a_plane(&roof->plan, probe))
        return false;
    double along = hypot(q.x - p.x, q.y - p.y);
    roof->has_sloped_length |= hypot(b.x - a.x, b.y - a.y) < 0.999 * along * roof->plan.scale;
    plan_dimension(roof->canvas, a, b, normal, 16, feet_shown(roof->canvas, along));
    return true;
}

void roof_write_dimensions(struct roof *roof)
{
    static const char *const kinds[] = {"eave", "rake"};
    for (size_t i = 0; i < roof->plan.count; i++) {
        const struct plan_plane *plane = &roof->plan.planes[i];
        for (size_t kind = 0; kind < 2; kind++)
            for (size_t side = 0; side < plane->count; side++) {
                const char *edge = plan_edge(plane, side);
                if (edge != NULL && strcmp(edge, kinds[kind]) == 0 &&
                    dimension_side(roof, plane, side))
                    break;
            }
    }
}
