#include "drawing_plan.h"

#include <math.h>
#include <string.h>

static struct point add(struct point a, struct point b, double times)
{
    return (struct point){a.x + times * b.x, a.y + times * b.y};
}

static struct point in_plan(const struct plan_plane *plane, double x, double y)
{
    return add(add(plane->origin, plane->right, x), plane->up, y * plane->foreshort);
}

struct point plan_at(const struct plan *plan, const struct plan_plane *plane, double x, double y)
{
    struct point at = in_plan(plane, x, y);
    return (struct point){plan->left + (at.x - plan->west) * plan->scale,
                          plan->top + (plan->north - at.y) * plan->scale};
}

void plan_rect(struct point *corners, const struct plan *plan, const struct plan_plane *plane,
               struct point at, double width, double length)
{
    corners[0] = plan_at(plan, plane, at.x, at.y);
    corners[1] = plan_at(plan, plane, at.x + width, at.y);
    corners[2] = plan_at(plan, plane, at.x + width, at.y + length);
    corners[3] = plan_at(plan, plane, at.x, at.y + length);
}

static bool is_clockwise(const struct point *points, size_t count)
{
    double sum = 0;
    for (size_t i = 0; i < count; i++) {
        struct point a = points[i], b = points[(i + 1) % count];
        sum += a.x * b.y - b.x * a.y;
    }
    return sum < 0;
}

static void read_plane(struct plan_plane *plane, const struct object *object)
{
    *plane = (struct plan_plane){.object = object, .foreshort = 1, .right = {1, 0}, .up = {0, 1}};
    if (object_has(object, SLOT_roof_plane_outline)) {
        const struct fact *outline = object_fact(object, SLOT_roof_plane_outline);
        plane->outline = outline->is.points;
        plane->count = outline->count;
        plane->is_clockwise = is_clockwise(plane->outline, plane->count);
    }
    plane->has_slope = object_has(object, SLOT_roof_plane_slope);
    if (plane->has_slope)
        plane->foreshort = cos(object_quantity(object, SLOT_roof_plane_slope).value);
    plane->has_azimuth = object_has(object, SLOT_roof_plane_azimuth);
    if (plane->has_azimuth) {
        double azimuth = object_quantity(object, SLOT_roof_plane_azimuth).value;
        plane->up = (struct point){-sin(azimuth), -cos(azimuth)};
        plane->right = (struct point){plane->up.y, -plane->up.x};
    }
    plane->is_placed =
        plane->has_azimuth && plane->has_slope && object_has(object, SLOT_roof_plane_plan_origin);
    if (plane->is_placed)
        plane->origin = object_fact(object, SLOT_roof_plane_plan_origin)->is.point;
}

static void widen(struct box *box, const struct plan_plane *plane)
{
    for (size_t i = 0; i < plane->count; i++) {
        struct point at = in_plan(plane, plane->outline[i].x, plane->outline[i].y);
        box->left = fmin(box->left, at.x);
        box->right = fmax(box->right, at.x);
        box->top = fmax(box->top, at.y); /* north */
        box->bottom = fmin(box->bottom, at.y);
    }
}

static const struct box nowhere = {INFINITY, -INFINITY, -INFINITY, INFINITY};

/* Planes whose place nobody told are laid east of the others, a gap apart. */
static void lay_beside(struct plan *plan, struct box *all)
{
    enum { GAP = 4 };
    for (size_t i = 0; i < plan->count; i++) {
        struct plan_plane *plane = &plan->planes[i];
        struct box own = nowhere;
        if (plane->outline == NULL || plane->is_placed)
            continue;
        widen(&own, plane);
        double east = isfinite(all->right) ? all->right + GAP : 0;
        double south = isfinite(all->bottom) ? all->bottom : 0;
        plane->origin = (struct point){east - own.left, south - own.bottom};
        widen(all, plane);
        plan->beside++;
    }
}

static bool set_corners(struct plan *plan, struct canvas *canvas)
{
    for (size_t i = 0; i < plan->count; i++) {
        struct plan_plane *plane = &plan->planes[i];
        if (plane->outline == NULL)
            continue;
        plane->corners = arena_take(canvas->arena, plane->count * sizeof *plane->corners);
        if (plane->corners == NULL)
            return false;
        for (size_t j = 0; j < plane->count; j++) {
            plane->corners[j] = plan_at(plan, plane, plane->outline[j].x, plane->outline[j].y);
            plan->bottom = fmax(plan->bottom, plane->corners[j].y);
        }
        plan->drawn++;
    }
    return true;
}

bool plan_lay(struct plan *plan, struct canvas *canvas, double left, double top, double width,
              double height)
{
    *plan = (struct plan){.left = left, .top = top};
    const struct design *design = canvas->report->design;
    const struct objects *planes = design != NULL ? &design->of_kind[KIND_roof_plane] : NULL;
    struct box all = nowhere;
    if (planes == NULL || planes->count == 0)
        return false;
    plan->planes = arena_take(canvas->arena, planes->count * sizeof *plan->planes);
    if (plan->planes == NULL) {
        canvas->is_short = true;
        return false;
    }
    for (; plan->count < planes->count; plan->count++) {
        struct plan_plane *plane = &plan->planes[plan->count];
        read_plane(plane, planes->items[plan->count]);
        if (plane->is_placed)
            widen(&all, plane);
    }
    lay_beside(plan, &all);
    if (!(all.right > all.left && all.top > all.bottom))
        return false;
    plan->scale = fmin(width / (all.right - all.left), height / (all.top - all.bottom));
    plan->west = all.left;
    plan->north = all.top;
    plan->left += (width - (all.right - all.left) * plan->scale) / 2;
    canvas->is_short |= !set_corners(plan, canvas);
    return !canvas->is_short && plan->drawn > 0;
}

struct plan_plane *plan_find(const struct plan *plan, const struct object *plane)
{
    for (size_t i = 0; plane != NULL && i < plan->count; i++)
        if (plan->planes[i].object == plane && plan->planes[i].outline != NULL)
            return &plan->planes[i];
    return NULL;
}

bool plan_is_inside(const struct plan_plane *plane, struct point at)
{
    bool is_inside = false;
    for (size_t i = 0, j = plane->count - 1; i < plane->count; j = i++) {
        struct point a = plane->corners[i], b = plane->corners[j];
        if ((a.y > at.y) != (b.y > at.y) && at.x < (b.x - a.x) * (at.y - a.y) / (b.y - a.y) + a.x)
            is_inside = !is_inside;
    }
    return is_inside;
}

const char *plan_edge(const struct plan_plane *plane, size_t side)
{
    if (!object_has(plane->object, SLOT_roof_plane_edges))
        return NULL;
    const struct fact *edges = object_fact(plane->object, SLOT_roof_plane_edges);
    return side < edges->count ? edges->is.words[side] : NULL;
}

bool module_rect(struct point *at, double *width, double *length, const struct object *module)
{
    const struct object *model = object_in(module, SLOT_module_model);
    if (model == NULL || has_removed_status(module, SLOT_module_status) ||
        !object_has(module, SLOT_module_at) || !object_has(module, SLOT_module_orientation) ||
        !object_has(model, SLOT_module_model_length) || !object_has(model, SLOT_module_model_width))
        return false;
    double longer = object_quantity(model, SLOT_module_model_length).value;
    double shorter = object_quantity(model, SLOT_module_model_width).value;
    bool is_portrait = object_is(module, SLOT_module_orientation, "portrait");
    *at = object_fact(module, SLOT_module_at)->is.point;
    *width = is_portrait ? shorter : longer;
    *length = is_portrait ? longer : shorter;
    return true;
}

bool obstruction_rect(struct point *at, double *width, double *length, const struct object *one)
{
    if (object_has(one, SLOT_obstruction_outline)) {
        const struct fact *outline = object_fact(one, SLOT_obstruction_outline);
        struct box box = {INFINITY, INFINITY, -INFINITY, -INFINITY};
        for (size_t i = 0; i < outline->count; i++) {
            box.left = fmin(box.left, outline->is.points[i].x);
            box.right = fmax(box.right, outline->is.points[i].x);
            box.top = fmin(box.top, outline->is.points[i].y);
            box.bottom = fmax(box.bottom, outline->is.points[i].y);
        }
        *at = (struct point){box.left, box.top};
        *width = box.right - box.left;
        *length = box.bottom - box.top;
        return outline->count > 0;
    }
    if (!object_has(one, SLOT_obstruction_at) || !object_has(one, SLOT_obstruction_width) ||
        !object_has(one, SLOT_obstruction_length))
        return false;
    *at = object_fact(one, SLOT_obstruction_at)->is.point;
    *width = object_quantity(one, SLOT_obstruction_width).value;
    *length = object_quantity(one, SLOT_obstruction_length).value;
    return true;
}

struct box plan_reach(const struct plan_plane *plane)
{
    struct box box = {INFINITY, INFINITY, -INFINITY, -INFINITY};
    for (size_t i = 0; i < plane->count; i++) {
        box.left = fmin(box.left, plane->outline[i].x);
        box.right = fmax(box.right, plane->outline[i].x);
        box.top = fmin(box.top, plane->outline[i].y);
        box.bottom = fmax(box.bottom, plane->outline[i].y);
    }
    return box;
}
