/* What every roof in plan shows: edges by kind, modules, north, scale, dimensions, names. */
#include "drawing_plan.h"

#include <math.h>
#include <string.h>

struct edge_style {
    const char *kind; /* NULL: not given */
    struct stroke stroke;
    const char *says;
};

static const struct edge_style edge_styles[] = {
    {"eave", {INK, 2, NULL, NULL}, "eave"},
    {"ridge", {INK, 3.6, NULL, NULL}, "ridge"},
    {"hip", {INK, 2, "12 3 3 3", NULL}, "hip"},
    {"valley", {INK, 2, "7 4", NULL}, "valley"},
    {"rake", {INK, 1, NULL, NULL}, "rake"},
    {"wall", {FAINT, 5, NULL, NULL}, "wall"},
    {NULL, {INK, 1.4, "2 3", NULL}, "edge, kind not given"},
};

static const struct edge_style *style_of(const char *kind)
{
    size_t at = 0;
    while (edge_styles[at].kind != NULL &&
           (kind == NULL || strcmp(edge_styles[at].kind, kind) != 0))
        at++;
    return &edge_styles[at];
}

void plan_write_outlines(struct canvas *canvas, const struct plan *plan, struct legend *legend)
{
    for (size_t i = 0; i < plan->count; i++) {
        const struct plan_plane *plane = &plan->planes[i];
        for (size_t side = 0; side < plane->count; side++) {
            struct point a = plane->corners[side], b = plane->corners[(side + 1) % plane->count];
            const struct edge_style *style = style_of(plan_edge(plane, side));
            canvas_line(canvas, a.x, a.y, b.x, b.y, style->stroke);
            legend_add(legend, SAMPLE_LINE, style->stroke, style->says);
        }
    }
}

void plan_write_clips(struct canvas *canvas, const struct plan *plan)
{
    canvas_begin(canvas, "defs");
    for (size_t i = 0; i < plan->count; i++) {
        const struct plan_plane *plane = &plan->planes[i];
        if (plane->outline == NULL)
            continue;
        canvas_begin(canvas, "clipPath");
        canvas_id(canvas, arena_format(canvas->arena, "plane-%zu", i));
        canvas_begin_polygon(canvas, plane->corners, plane->count);
        canvas_end(canvas);
        canvas_end(canvas);
    }
    canvas_end(canvas);
}

void plan_write_modules(struct canvas *canvas, const struct plan *plan, struct legend *legend)
{
    const struct objects *modules = &canvas->report->design->of_kind[KIND_module];
    for (size_t i = 0; i < modules->count; i++) {
        const struct object *module = modules->items[i];
        const struct plan_plane *plane = plan_find(plan, object_in(module, SLOT_module_plane));
        struct point at, corners[4];
        double width, length;
        if (plane == NULL || !module_rect(&at, &width, &length, module))
            continue;
        bool is_old = object_is(module, SLOT_module_status, "existing");
        const struct stroke stroke = {INK, 0.8, NULL,
                                      is_old ? canvas_pattern(canvas, "existing") : GLASS};
        plan_rect(corners, plan, plane, at, width, length);
        canvas_begin_polygon(canvas, corners, 4);
        canvas_stroke(canvas, stroke);
        canvas_title(canvas, module->name);
        canvas_end(canvas);
        legend_add(legend, SAMPLE_AREA, stroke, is_old ? "module, existing" : "module");
    }
}

static void write_north(struct canvas *canvas, double x, double y)
{
    const struct lettering bold = {13, ANCHOR_MIDDLE, true, false, NULL, 0};
    const struct point half[] = {{x, y - 18}, {x, y + 12}, {x - 8, y + 18}};
    const struct point whole[] = {{x, y - 18}, {x + 8, y + 18}, {x, y + 12}};
    canvas_polygon(canvas, half, 3, (struct stroke){INK, 1, NULL, INK});
    canvas_polygon(canvas, whole, 3, (struct stroke){INK, 1, NULL, PAPER});
    canvas_text(canvas, x, y - 24, bold, "N");
}

/* The bar is a whole number of feet, about a sixth of the sheet. */
static void write_scale(struct canvas *canvas, double scale, double x, double y)
{
    static const int feet[] = {1, 2, 4, 5, 10, 20, 40, 50, 100, 200, 500};
    const struct lettering small = {10, ANCHOR_MIDDLE, false, false, NULL, 0};
    size_t at = 0;
    while (at + 1 < sizeof feet / sizeof feet[0] && feet[at + 1] * 0.3048 * scale <= 130)
        at++;
    double length = feet[at] * 0.3048 * scale;
    for (int i = 0; i < 4; i++)
        canvas_rect(canvas, x + i * length / 4, y, length / 4, 5,
                    (struct stroke){INK, 0.8, NULL, i % 2 == 0 ? INK : PAPER});
    canvas_text(canvas, x, y + 17, small, "0");
    canvas_text_format(canvas, x + length, y + 17, small, "%d ft", feet[at]);
}

void plan_write_north_and_scale(struct canvas *canvas, const struct plan *plan)
{
    write_north(canvas, canvas->width - MARGIN - 14, 98);
    write_scale(canvas, plan->scale, MARGIN + 6, plan->bottom + 48);
    canvas_keep(canvas, (struct box){MARGIN, plan->bottom + 44, MARGIN + 160, plan->bottom + 68});
}

void plan_dimension(struct canvas *canvas, struct point a, struct point b, struct point normal,
                    double away, const char *text)
{
    const struct stroke thin = {FAINT, 0.8, NULL, NULL}, tick = {INK, 1.6, NULL, NULL};
    struct point from = {a.x + normal.x * away, a.y + normal.y * away};
    struct point to = {b.x + normal.x * away, b.y + normal.y * away};
    double length = hypot(b.x - a.x, b.y - a.y);
    if (length < 4)
        return;
    struct point along = {(b.x - a.x) / length, (b.y - a.y) / length};
    struct point middle = {(from.x + to.x) / 2, (from.y + to.y) / 2};
    struct point places[3];
    enum anchor anchors[3];
    for (int i = 0; i < 3; i++) {
        double shift = (i == 0 ? 0 : i == 1 ? -0.3 : 0.3) * length;
        bool is_side = fabs(normal.x) > 0.5;
        places[i] = (struct point){middle.x + along.x * shift + normal.x * 7,
                                   middle.y + along.y * shift + 4 + normal.y * 9};
        anchors[i] = !is_side ? ANCHOR_MIDDLE : normal.x > 0 ? ANCHOR_START : ANCHOR_END;
    }
    const struct lettering lettering = {11, ANCHOR_MIDDLE, false, true, NULL, 0};
    if (!canvas_place(canvas, places, anchors, 3, lettering, text))
        return;
    canvas_line(canvas, from.x, from.y, to.x, to.y, thin);
    for (int i = 0; i < 2; i++) {
        struct point end = i == 0 ? from : to, foot = i == 0 ? a : b;
        canvas_line(canvas, foot.x + normal.x * 4, foot.y + normal.y * 4, end.x + normal.x * 4,
                    end.y + normal.y * 4, thin);
        canvas_line(canvas, end.x - 3 * along.x - 3 * normal.x, end.y - 3 * along.y - 3 * normal.y,
                    end.x + 3 * along.x + 3 * normal.x, end.y + 3 * along.y + 3 * normal.y, tick);
    }
}

static bool is_text_inside(const struct plan_plane *plane, struct point at, double half)
{
    return plan_is_inside(plane, (struct point){at.x - half, at.y - 12}) &&
           plan_is_inside(plane, (struct point){at.x + half, at.y - 12}) &&
           plan_is_inside(plane, (struct point){at.x - half, at.y + 4}) &&
           plan_is_inside(plane, (struct point){at.x + half, at.y + 4});
}

static bool is_over_strip(const struct plan *plan, const struct strips *strips, struct point at,
                          double half)
{
    for (size_t i = 0; strips != NULL && i < strips->count; i++) {
        const struct strip *strip = &strips->items[i];
        struct box box = {INFINITY, INFINITY, -INFINITY, -INFINITY};
        for (size_t j = 0; j < 4; j++) {
            struct point corner =
                plan_at(plan, strip->plane, strip->corners[j].x, strip->corners[j].y);
            box.left = fmin(box.left, corner.x);
            box.right = fmax(box.right, corner.x);
            box.top = fmin(box.top, corner.y);
            box.bottom = fmax(box.bottom, corner.y);
        }
        if (at.x - half < box.right && at.x + half > box.left && at.y - 12 < box.bottom &&
            at.y + 4 > box.top)
            return true;
    }
    return false;
}

/* Tries the middle first, then further and further out. */
static bool name_plane(struct canvas *canvas, const struct plan *plan,
                       const struct plan_plane *plane, const struct strips *strips)
{
    enum { STEPS = 14 };
    const struct lettering lettering = {13, ANCHOR_MIDDLE, true, true, NULL, 220};
    const enum anchor middle = ANCHOR_MIDDLE;
    struct box box = {INFINITY, INFINITY, -INFINITY, -INFINITY};
    for (size_t i = 0; i < plane->count; i++) {
        box.left = fmin(box.left, plane->corners[i].x);
        box.right = fmax(box.right, plane->corners[i].x);
        box.top = fmin(box.top, plane->corners[i].y);
        box.bottom = fmax(box.bottom, plane->corners[i].y);
    }
    const char *text =
        arena_format(canvas->arena, "%s, %s", plane->object->name,
                     plane->has_slope ? fact_shown(canvas, plane->object, SLOT_roof_plane_slope)
                                      : "slope not given");
    if (text == NULL)
        return true;
    double half = fmin(220, lettering_width(text, strlen(text), 13, true)) / 2;
    for (int step = 0; step < STEPS * STEPS; step++) {
        int row = step / STEPS, column = step % STEPS; /* both from the middle outwards */
        int aside = (column + 1) / 2, below = (row + 1) / 2;
        double across = (column % 2 == 0 ? aside : -aside) / (double)(STEPS + 1);
        double down = (row % 2 == 0 ? below : -below) / (double)(STEPS + 1);
        struct point at = {(box.left + box.right) / 2 + across * (box.right - box.left),
                           (box.top + box.bottom) / 2 + 4 + down * (box.bottom - box.top)};
        if (is_text_inside(plane, at, half) && !is_over_strip(plan, strips, at, half) &&
            canvas_place(canvas, &at, &middle, 1, lettering, text))
            return true;
    }
    return false;
}

/* Names keep off the strips where they can. */
void plan_name_planes(struct canvas *canvas, const struct plan *plan, const struct strips *strips)
{
    for (size_t i = 0; i < plan->count; i++)
        if (plan->planes[i].outline != NULL && !name_plane(canvas, plan, &plan->planes[i], strips))
            name_plane(canvas, plan, &plan->planes[i], NULL);
}

double plan_write_notes(struct canvas *canvas, const struct plan *plan, double y)
{
    const struct lettering body = {11, ANCHOR_START, false, false, NULL, 0};
    const double width = canvas->width - 2 * MARGIN;
    for (size_t i = 0; i < plan->count; i++) {
        const struct plan_plane *plane = &plan->planes[i];
        const char *name = plane->object->name;
        const char *note =
            plane->outline == NULL ? "is not drawn: its outline is not given"
            : plane->is_placed     ? NULL
            : !plane->has_slope    ? "is drawn in its true length, beside the others: its slope is "
                                     "not given"
            : !plane->has_azimuth  ? "is drawn beside the others with its eave below: its azimuth "
                                     "is not given"
                                   : "is laid beside the others: its plan_origin is not given";
        if (note != NULL)
            y = canvas_paragraph(canvas, MARGIN, y + 12, width, 2, body,
                                 arena_format(canvas->arena, "Plane %s %s.", name, note)) -
                12;
    }
    return y;
}
