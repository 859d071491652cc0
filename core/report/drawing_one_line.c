/* The one-line diagram: from the array at the head down to the utility. */
#include "drawing_one_line.h"

#include <math.h>
#include <string.h>

#include "drawing.h"

enum {
    PITCH = 92,           /* from one level to the next */
    LABELLED_PITCH = 142, /* where a run between them is labelled */
    TOP = 108,
    LABEL_LINE = 13,
    LABELLED_COLUMNS = 3,
    COLUMNS_MOST = 8
};

static const kind_set line_kinds =
    KINDS(string) | KINDS(branch) | KINDS(inverter) | KINDS(combiner) | KINDS(circuit) |
    KINDS(service) | KINDS(panel) | KINDS(busbar) | KINDS(breaker) | KINDS(disconnect) |
    KINDS(meter) | KINDS(source) | KINDS(interconnection) | KINDS(rapid_shutdown) |
    KINDS(grounding);

static double half_of(const struct node *node)
{
    return node->shape == NODE_JOINT ? 8 : node->shape == NODE_TAP ? 5 : SYMBOL_HALF;
}

static double height_of_level(const struct wiring *wiring, unsigned level)
{
    for (size_t i = 0; i < wiring->run_count && wiring->columns <= LABELLED_COLUMNS; i++)
        if (wiring->runs[i].tag[0] != '\0' && wiring->nodes[wiring->runs[i].from].level == level)
            return LABELLED_PITCH;
    return PITCH;
}

static void place_nodes(struct line_sheet *sheet)
{
    struct wiring *wiring = &sheet->wiring;
    double shift = wiring->columns == LABELLED_COLUMNS ? 0.27 : 0.33, y = TOP;
    sheet->column = (SHEET_WIDTH - 2 * MARGIN) / (double)wiring->columns;
    for (unsigned level = 0; level < wiring->levels; level++) {
        for (size_t i = 0; i < wiring->node_count; i++)
            if (wiring->nodes[i].level == level)
                wiring->nodes[i].y = y;
        y += height_of_level(wiring, level);
    }
    for (size_t i = 0; i < wiring->node_count; i++)
        wiring->nodes[i].x = MARGIN + (wiring->nodes[i].x + shift) * sheet->column;
}

/* How far to the right of a node there is nothing, down to where its run bends. */
static double room_beside(const struct line_sheet *sheet, const struct node *node)
{
    const struct wiring *wiring = &sheet->wiring;
    double edge = SHEET_WIDTH - MARGIN;
    for (size_t i = 0; i < wiring->run_count; i++) {
        const struct node *from = &wiring->nodes[wiring->runs[i].from];
        const struct node *to = &wiring->nodes[wiring->runs[i].to];
        if (from->is_reached && from->level <= node->level && to->level > node->level &&
            from->x > node->x + 1)
            edge = fmin(edge, from->x - 66);
    }
    return fmax(edge - node->x, 40);
}

/* Each finding of a thing gets its number, one beside the other to the left. */
static void mark_object(struct line_sheet *sheet, const struct object *object, double x, double y)
{
    for (size_t i = 0; object != NULL && i < sheet->keys.count; i++) {
        struct key *key = &sheet->keys.items[i];
        const struct object *about = key->object;
        bool is_part =
            about != NULL && (about->kind->id == KIND_busbar || about->kind->id == KIND_breaker) &&
            (about->parent == object || (about->parent != NULL && about->parent->parent == object));
        if ((about != object && !is_part) || key->is_outlined)
            continue;
        const struct point points[] = {
            {x - 12, y}, {x - 36, y}, {x - 12, y + 24}, {x - 36, y + 24}, {x - 12, y - 24}};
        key_mark(sheet->canvas, key, points, 5);
    }
}

static bool is_failing(const struct line_sheet *sheet, const struct object *object)
{
    for (size_t i = 0; object != NULL && i < sheet->keys.count; i++)
        if (sheet->keys.items[i].object == object && key_is_fail(&sheet->keys.items[i]))
            return true;
    return false;
}

static void write_node(struct line_sheet *sheet, const struct node *node)
{
    struct canvas *canvas = sheet->canvas;
    double half = node->shape == NODE_PANEL ? 30 : node->shape == NODE_COMBINER ? 22 : 20;
    double left = node->x + half + 10, room = room_beside(sheet, node) - half - 10;
    struct label label = one_line_label(sheet, node);
    double y = label.lines[1] == NULL ? node->y + 4 : node->y - 7;
    symbol_draw(canvas, node);
    for (size_t i = 0; i < 3 && label.lines[i] != NULL; i++) {
        const struct lettering lettering = {
            i == 0 ? 12 : 10.5, ANCHOR_START, i == 0, false, NULL, room};
        canvas_text(canvas, left, y, lettering, label.lines[i]);
        y += i == 0 ? 15 : LABEL_LINE;
    }
    if (is_failing(sheet, node->object))
        canvas_rect(canvas, node->x - half - 4, node->y - 22, 2 * half + 8, 44,
                    (struct stroke){ALARM, 2.2, "6 2", NULL});
    mark_object(sheet, node->object, node->x - half - 6, node->y);
}

static void write_tag(struct canvas *canvas, double x, double y, const char *tag)
{
    canvas_rect(canvas, x - 9, y - 9, 18, 18, (struct stroke){INK, 1.2, NULL, WASH});
    canvas_text(canvas, x, y + 4, (struct lettering){11, ANCHOR_MIDDLE, true, false, NULL, 0}, tag);
}

static void write_run_label(struct line_sheet *sheet, const struct run *run, double x, double y)
{
    struct canvas *canvas = sheet->canvas;
    const struct object *circuit = run->circuit;
    const struct lettering plain = {
        10,    ANCHOR_START, false,
        false, FAINT,        room_beside(sheet, &sheet->wiring.nodes[run->from]) - 16};
    if (circuit == NULL) {
        if (sheet->wiring.columns <= LABELLED_COLUMNS &&
            sheet->wiring.nodes[run->to].shape != NODE_UTILITY &&
            sheet->wiring.nodes[run->to].shape != NODE_DISCONNECT)
            canvas_text(canvas, x + 24, y + 16, plain, "run not given");
        return;
    }
    if (run->tag[0] == '\0')
        return;
    write_tag(canvas, x, y + 14, run->tag);
    mark_object(sheet, circuit, x - 12, y + 14);
    if (sheet->wiring.columns > LABELLED_COLUMNS)
        return;
    struct lettering dark = plain;
    dark.fill = INK;
    canvas_text(canvas, x + 16, y + 10, dark, circuit_conductor_text(canvas, circuit));
    canvas_text_format(canvas, x + 16, y + 10 + LABEL_LINE, dark, "EGC %s%s",
                       circuit_ground_text(canvas, circuit), circuit_neutral_text(canvas, circuit));
    canvas_text_format(canvas, x + 16, y + 10 + 2 * LABEL_LINE, dark, "%s, %s, %s",
                       circuit_raceway_text(canvas, circuit),
                       fact_shown(canvas, circuit, SLOT_circuit_length),
                       fact_shown(canvas, circuit, SLOT_circuit_nominal_voltage));
    canvas_text_format(canvas, x + 16, y + 10 + 3 * LABEL_LINE, dark, "OCPD %s",
                       circuit_ocpd_text(canvas, circuit));
}

/* Of several runs that leave one thing only the first is labelled beside it. */
static bool is_first_out(const struct wiring *wiring, const struct run *run)
{
    for (const struct run *other = wiring->runs; other < run; other++)
        if (other->from == run->from && other->tag[0] != '\0')
            return false;
    return true;
}

static void write_run(struct line_sheet *sheet, const struct run *run)
{
    const struct node *from = &sheet->wiring.nodes[run->from];
    const struct node *to = &sheet->wiring.nodes[run->to];
    double top = from->y + half_of(from), foot = to->y - half_of(to), bend = to->y - 40;
    bool is_bad = is_failing(sheet, run->circuit);
    const struct stroke stroke = {is_bad ? ALARM : INK, is_bad ? 2.6 : 1.6,
                                  is_bad                 ? "8 3"
                                  : run->circuit == NULL ? "5 3"
                                                         : NULL,
                                  NULL};
    canvas_path(sheet->canvas,
                fabs(from->x - to->x) < 0.5
                    ? arena_format(sheet->canvas->arena, "M%g %g V%g", from->x, top, foot)
                    : arena_format(sheet->canvas->arena, "M%g %g V%g H%g V%g", from->x, top, bend,
                                   to->x, foot),
                stroke);
    if (is_first_out(&sheet->wiring, run))
        write_run_label(sheet, run, from->x, top + (half_of(from) < SYMBOL_HALF ? 6 : 14));
    else if (run->tag[0] != '\0' &&
             canvas_is_free(sheet->canvas, (struct box){to->x - 9, bend + 4, to->x + 9, bend + 22}))
        write_tag(sheet->canvas, to->x, bend + 13, run->tag);
}

static double write_diagram(struct line_sheet *sheet)
{
    const struct wiring *wiring = &sheet->wiring;
    place_nodes(sheet);
    for (size_t i = 0; i < wiring->run_count; i++)
        if (wiring->nodes[wiring->runs[i].from].is_reached &&
            wiring->nodes[wiring->runs[i].to].is_reached)
            write_run(sheet, &wiring->runs[i]);
    for (size_t i = 0; i < wiring->node_count; i++)
        if (wiring->nodes[i].is_reached)
            write_node(sheet, &wiring->nodes[i]);
    return wiring->nodes[wiring->utility].y + 54;
}

static void write_all(struct line_sheet *sheet)
{
    struct canvas *canvas = sheet->canvas;
    double y = sheet_head(canvas, "One-line diagram");
    bool is_drawn = false;
    if (sheet->design != NULL) {
        wiring_collect(&sheet->wiring, sheet->design);
        keys_collect(&sheet->keys, canvas, line_kinds);
        is_drawn = sheet->wiring.run_count > 1 && !sheet->wiring.is_too_large &&
                   sheet->wiring.columns <= COLUMNS_MOST;
    }
    if (is_drawn)
        y = write_diagram(sheet);
    else
        y = sheet_note(canvas, y,
                       sheet->wiring.is_circle
                           ? "The circuits lead in a circle, so that there is no line to draw; the "
                             "schedule below has them all."
                       : sheet->wiring.columns > COLUMNS_MOST || sheet->wiring.is_too_large
                           ? "There are more circuits than one sheet holds; the schedule below "
                             "has them all."
                           : "No circuit is given: there is nothing to draw yet.") +
            20;
    if (sheet->design != NULL) {
        y = one_line_facts(sheet, y);
        y = one_line_apart(sheet, y);
        y = one_line_schedule(sheet, y + 4);
    }
    y = keys_write(canvas, &sheet->keys, y + 14);
    sheet_block(canvas, y + 6, "One-line diagram");
}

bool drawing_write_one_line(struct text *out, const struct report *report)
{
    struct canvas canvas;
    if (!canvas_open(&canvas, "one-line", SHEET_WIDTH, report))
        return false;
    struct line_sheet *sheet = arena_take(canvas.arena, sizeof *sheet);
    if (sheet == NULL) {
        canvas_drop(&canvas);
        return false;
    }
    sheet->canvas = &canvas;
    sheet->design = report->design;
    write_all(sheet);
    const char *description = arena_format(
        canvas.arena,
        "One line from the array at the head down to the utility: %zu pieces of equipment and %zu "
        "runs, each with conductor, raceway and overcurrent device, also listed in a schedule; "
        "%zu findings are keyed by number.",
        sheet->wiring.node_count, sheet->wiring.run_count, sheet->keys.count);
    canvas.is_short |= description == NULL;
    return canvas_close(&canvas, out, "One-line diagram", description != NULL ? description : "",
                        false);
}
