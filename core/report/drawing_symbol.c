/* Symbols of the trade for a one-line diagram, in our own hand. */
#include "drawing_circuit.h"

static const struct stroke line = {INK, 1.6, NULL, NULL};
static const struct stroke thin = {INK, 1, NULL, NULL};
static const struct stroke blank = {INK, 1.6, NULL, PAPER};
static const struct stroke solid = {.fill = INK};

static void draw_modules(struct canvas *canvas, double x, double y)
{
    for (int i = -1; i <= 1; i++)
        canvas_rect(canvas, x - 7 + 13 * i, y - 14, 13, 28, (struct stroke){INK, 1.2, NULL, GLASS});
    canvas_path(
        canvas,
        arena_format(canvas->arena, "M%g %g L%g %g L%g %g", x - 6, y - 14, x, y - 6, x + 6, y - 14),
        thin);
}

/* = above, ~ below a diagonal: direct current becomes alternating current. */
static void draw_inverter(struct canvas *canvas, double x, double y, double half)
{
    double u = half / 18;
    canvas_rect(canvas, x - half, y - half, 2 * half, 2 * half, blank);
    canvas_line(canvas, x - half, y + half, x + half, y - half, line);
    canvas_line(canvas, x - 13 * u, y - 10 * u, x - 3 * u, y - 10 * u, thin);
    canvas_line(canvas, x - 13 * u, y - 6 * u, x - 3 * u, y - 6 * u, thin);
    canvas_path(canvas,
                arena_format(canvas->arena, "M%g %g q%g %g %g 0 t%g 0", x + 2 * u, y + 9 * u, 3 * u,
                             -7 * u, 6 * u, 6 * u),
                thin);
}

static void draw_switch(struct canvas *canvas, double x, double y, bool is_fused)
{
    double foot = is_fused ? y + 2 : y + 10;
    canvas_rect(canvas, x - 16, y - 18, 32, 36, (struct stroke){FAINT, 1, "3 2", PAPER});
    canvas_line(canvas, x, y - 18, x, y - 9, line);
    canvas_circle(canvas, x, y - 9, 1.8, solid);
    canvas_line(canvas, x - 8, y - 7, x, foot, line);
    canvas_circle(canvas, x, foot, 1.8, solid);
    canvas_line(canvas, x, foot, x, y + 18, line);
    if (is_fused)
        canvas_rect(canvas, x - 3.5, y + 5, 7, 10, thin);
}

/* A breaker's contact is an arc beside two points. */
static void draw_breaker(struct canvas *canvas, double x, double y)
{
    canvas_circle(canvas, x, y - 5, 1.5, solid);
    canvas_circle(canvas, x, y + 5, 1.5, solid);
    canvas_path(canvas, arena_format(canvas->arena, "M%g %g q9 5 0 10", x, y - 5), line);
}

static void draw_panel(struct canvas *canvas, double x, double y)
{
    canvas_rect(canvas, x - 30, y - 18, 60, 36, blank);
    canvas_line(canvas, x - 24, y, x + 24, y, (struct stroke){INK, 4, NULL, NULL});
    canvas_line(canvas, x, y - 18, x, y - 14, line);
    draw_breaker(canvas, x, y - 9);
    draw_breaker(canvas, x, y + 9);
    canvas_line(canvas, x, y + 14, x, y + 18, line);
    draw_breaker(canvas, x + 18, y + 9);
    draw_breaker(canvas, x - 18, y + 9);
}

static void draw_utility(struct canvas *canvas, double x, double y)
{
    canvas_line(canvas, x, y - 18, x, y - 12, line);
    canvas_circle(canvas, x, y - 4, 8, line);
    canvas_circle(canvas, x, y + 7, 8, line);
    canvas_line(canvas, x, y + 15, x, y + 19, line);
}

static void draw_letter(struct canvas *canvas, double x, double y, const char *letter)
{
    canvas_text(canvas, x, y + 5, (struct lettering){14, ANCHOR_MIDDLE, true, false, NULL, 0},
                letter);
}

void symbol_ground(struct canvas *canvas, double x, double y)
{
    canvas_line(canvas, x, y - 8, x, y, line);
    for (int i = 0; i < 3; i++)
        canvas_line(canvas, x - 9 + 3 * i, y + 4 * i, x + 9 - 3 * i, y + 4 * i, line);
}

static bool is_fused_switch(const struct design *design, const struct object *disconnect)
{
    const struct objects *circuits = &design->of_kind[KIND_circuit];
    for (size_t i = 0; i < circuits->count; i++)
        if (object_in(circuits->items[i], SLOT_circuit_to) == disconnect &&
            object_is(circuits->items[i], SLOT_circuit_ocpd, "fused disconnect"))
            return true;
    return false;
}

void symbol_draw(struct canvas *canvas, const struct node *node)
{
    double x = node->x, y = node->y;
    switch (node->shape) {
    case NODE_STRING:
        draw_modules(canvas, x, y);
        break;
    case NODE_BRANCH:
        draw_modules(canvas, x, y);
        draw_inverter(canvas, x, y + 8, 10);
        break;
    case NODE_INVERTER:
        draw_inverter(canvas, x, y, 18);
        break;
    case NODE_SOURCE:
        canvas_circle(canvas, x, y, 17, blank);
        draw_letter(canvas, x, y, "S");
        break;
    case NODE_COMBINER:
        canvas_rect(canvas, x - 22, y - 16, 44, 32, blank);
        canvas_line(canvas, x - 16, y, x + 16, y, (struct stroke){INK, 3, NULL, NULL});
        break;
    case NODE_DISCONNECT:
        draw_switch(canvas, x, y, is_fused_switch(canvas->report->design, node->object));
        break;
    case NODE_JOINT:
        canvas_rect(canvas, x - 8, y - 8, 16, 16, blank);
        canvas_circle(canvas, x, y, 2.5, solid);
        break;
    case NODE_TAP:
        canvas_circle(canvas, x, y, 5, solid);
        break;
    case NODE_PANEL:
        draw_panel(canvas, x, y);
        break;
    case NODE_METER:
        canvas_circle(canvas, x, y, 17, blank);
        draw_letter(canvas, x, y, "M");
        break;
    case NODE_UTILITY:
        draw_utility(canvas, x, y);
        break;
    }
}
