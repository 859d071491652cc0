/* Lines, rectangles, polygons and patterns. */
#include "drawing_canvas.h"

#include <string.h>

void canvas_line(struct canvas *canvas, double x1, double y1, double x2, double y2,
                 struct stroke stroke)
{
    canvas_begin(canvas, "line");
    canvas_number(canvas, "x1", x1);
    canvas_number(canvas, "y1", y1);
    canvas_number(canvas, "x2", x2);
    canvas_number(canvas, "y2", y2);
    canvas_pen(canvas, stroke);
    canvas_end(canvas);
    canvas_reach(canvas, y1 > y2 ? y1 : y2);
}

void canvas_rect(struct canvas *canvas, double x, double y, double width, double height,
                 struct stroke stroke)
{
    canvas_begin(canvas, "rect");
    canvas_number(canvas, "x", x);
    canvas_number(canvas, "y", y);
    canvas_number(canvas, "width", width);
    canvas_number(canvas, "height", height);
    canvas_stroke(canvas, stroke);
    canvas_end(canvas);
    canvas_reach(canvas, y + height);
}

void canvas_circle(struct canvas *canvas, double x, double y, double radius, struct stroke stroke)
{
    canvas_begin(canvas, "circle");
    canvas_number(canvas, "cx", x);
    canvas_number(canvas, "cy", y);
    canvas_number(canvas, "r", radius);
    canvas_stroke(canvas, stroke);
    canvas_end(canvas);
    canvas_reach(canvas, y + radius);
}

void canvas_begin_polygon(struct canvas *canvas, const struct point *points, size_t count)
{
    struct text list = {0};
    for (size_t i = 0; i < count; i++) {
        char x[40], y[40];
        canvas_write_number(x, sizeof x, points[i].x);
        canvas_write_number(y, sizeof y, points[i].y);
        text_add_format(&list, "%s%s,%s", i > 0 ? " " : "", x, y);
        canvas_reach(canvas, points[i].y);
    }
    canvas_begin(canvas, "polygon");
    canvas_attribute(canvas, "points", list.is_short ? NULL : list.bytes != NULL ? list.bytes : "");
    text_free(&list);
}

void canvas_polygon(struct canvas *canvas, const struct point *points, size_t count,
                    struct stroke stroke)
{
    canvas_begin_polygon(canvas, points, count);
    canvas_stroke(canvas, stroke);
    canvas_end(canvas);
}

void canvas_path(struct canvas *canvas, const char *path, struct stroke stroke)
{
    canvas_begin(canvas, "path");
    canvas_attribute(canvas, "d", path);
    canvas_stroke(canvas, stroke);
    canvas_end(canvas);
}

/* A pattern tells what colour alone must not: parallel lines by direction and distance, or dots. */
struct pattern {
    const char *name;
    double size, angle, line; /* line 0: a dot */
    const char *color, *ground;
};

static const struct pattern patterns[] = {
    {"setback", 7, 45, 1.3, "#a06a12", "#f8f1e2"}, {"pathway", 7, 0, 0, "#1f6f78", "#e7f3f3"},
    {"existing", 5, 135, 0.9, "#5d6b73", PAPER},   {"zone-1", 9, 0, 9, PAPER, PAPER},
    {"zone-2", 7, 45, 1, "#1f6f78", PAPER},        {"zone-3", 5, 90, 1.4, "#a06a12", PAPER},
    {"zone-4", 4, 135, 1.6, "#6a3f82", PAPER},
};

void canvas_patterns(struct canvas *canvas)
{
    const double bottom = canvas->bottom; /* patterns are no part of the sheet's length */
    if (canvas->used_patterns == 0)
        return;
    canvas_begin(canvas, "defs");
    for (size_t i = 0; i < sizeof patterns / sizeof patterns[0]; i++) {
        const struct pattern *one = &patterns[i];
        if ((canvas->used_patterns & 1U << i) == 0)
            continue;
        canvas_begin(canvas, "pattern");
        canvas_id(canvas, one->name);
        canvas_attribute(canvas, "patternUnits", "userSpaceOnUse");
        canvas_number(canvas, "width", one->size);
        canvas_number(canvas, "height", one->size);
        canvas_attribute(canvas, "patternTransform",
                         arena_format(canvas->arena, "rotate(%g)", one->angle));
        canvas_rect(canvas, 0, 0, one->size, one->size, (struct stroke){.fill = one->ground});
        if (one->line > 0)
            canvas_rect(canvas, 0, 0, one->line, one->size, (struct stroke){.fill = one->color});
        else
            canvas_circle(canvas, one->size / 2, one->size / 2, 1.2,
                          (struct stroke){.fill = one->color});
        canvas_end(canvas);
    }
    canvas_end(canvas);
    canvas->bottom = bottom;
}

const char *canvas_pattern(struct canvas *canvas, const char *name)
{
    for (size_t i = 0; i < sizeof patterns / sizeof patterns[0]; i++)
        if (strcmp(patterns[i].name, name) == 0)
            canvas->used_patterns |= 1U << i;
    const char *reference = arena_format(canvas->arena, "url(#%s-%s)", canvas->prefix, name);
    if (reference == NULL)
        canvas->is_short = true;
    return reference != NULL ? reference : "none";
}
