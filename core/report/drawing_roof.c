/* The roof in plan: what lies on it, what must be kept clear, and what does not stand. */
#include "drawing_roof.h"

#include <string.h>

#include "drawing.h"

static const struct stroke alarm_line = {ALARM, 2.6, "6 2", NULL};
static const kind_set roof_kinds = KINDS(building) | KINDS(escape_opening) | KINDS(roof) |
                                   KINDS(roof_plane) | KINDS(obstruction) | KINDS(framing) |
                                   KINDS(module) | KINDS(racking) | KINDS(rail) | KINDS(attachment);

static void write_strips(struct roof *roof)
{
    struct canvas *canvas = roof->canvas;
    for (size_t i = 0; i < roof->strips.count; i++) {
        const struct strip *strip = &roof->strips.items[i];
        struct point corners[4];
        size_t plane = (size_t)(strip->plane - roof->plan.planes);
        const char *name = strip->is_pathway ? "pathway" : "setback";
        struct stroke stroke = {strip->is_pathway ? "#1f6f78" : "#a06a12", 0.8, NULL,
                                canvas_pattern(canvas, name)};
        roof_strip_corners(corners, roof, strip);
        canvas_begin(canvas, "g");
        canvas_reference(canvas, "clip-path", arena_format(canvas->arena, "plane-%zu", plane));
        canvas_polygon(canvas, corners, 4, stroke);
        if (key_is_fail(keys_find_finding(&roof->keys, strip->finding)))
            canvas_polygon(canvas, corners, 4, alarm_line);
        canvas_end(canvas);
        legend_add(&roof->legend, SAMPLE_AREA, stroke,
                   strip->is_pathway ? "access pathway asked for" : "setback asked for");
    }
}

/* Lines where the framing stands, a member each. */
static void write_members(struct roof *roof)
{
    enum { MEMBERS_MOST = 2000 };
    struct canvas *canvas = roof->canvas;
    const struct stroke line = {FAINT, 0.7, "9 3 2 3", NULL};
    for (size_t i = 0; i < roof->plan.count; i++) {
        const struct plan_plane *plane = &roof->plan.planes[i];
        const struct object *framing = object_in(plane->object, SLOT_roof_plane_framing);
        if (plane->outline == NULL || framing == NULL ||
            !object_has(framing, SLOT_framing_spacing) ||
            !object_has(framing, SLOT_framing_first_at) ||
            !(object_is(framing, SLOT_framing_kind, "rafter") ||
              object_is(framing, SLOT_framing_kind, "truss")))
            continue;
        struct box reach = plan_reach(plane);
        double spacing = object_quantity(framing, SLOT_framing_spacing).value;
        double first = object_quantity(framing, SLOT_framing_first_at).value;
        canvas_begin(canvas, "g");
        canvas_reference(canvas, "clip-path", arena_format(canvas->arena, "plane-%zu", i));
        for (int k = 0; k < MEMBERS_MOST && first + k * spacing <= reach.right; k++) {
            double x = first + k * spacing;
            struct point a = plan_at(&roof->plan, plane, x, reach.top);
            struct point b = plan_at(&roof->plan, plane, x, reach.bottom);
            canvas_line(canvas, a.x, a.y, b.x, b.y, line);
        }
        canvas_end(canvas);
        legend_add(&roof->legend, SAMPLE_LINE, line, "rafter or truss");
    }
}

static void write_rails(struct roof *roof)
{
    struct canvas *canvas = roof->canvas;
    const struct objects *rails = &canvas->report->design->of_kind[KIND_rail];
    const struct stroke line = {"#3c4b54", 1.8, NULL, NULL};
    for (size_t i = 0; i < rails->count; i++) {
        const struct object *rail = rails->items[i];
        const struct plan_plane *plane = plan_find(&roof->plan, object_in(rail, SLOT_rail_plane));
        if (plane == NULL || !object_has(rail, SLOT_rail_at) ||
            !object_has(rail, SLOT_rail_length) ||
            !object_has(rail->parent, SLOT_racking_rail_direction))
            continue;
        struct point at = object_fact(rail, SLOT_rail_at)->is.point;
        double length = object_quantity(rail, SLOT_rail_length).value;
        bool is_up = object_is(rail->parent, SLOT_racking_rail_direction, "up the slope");
        struct point a = plan_at(&roof->plan, plane, at.x, at.y);
        struct point b =
            plan_at(&roof->plan, plane, at.x + (is_up ? 0 : length), at.y + (is_up ? length : 0));
        canvas_line(canvas, a.x, a.y, b.x, b.y, line);
        legend_add(&roof->legend, SAMPLE_LINE, line, "rail");
    }
}

bool roof_attachment_at(struct point *at, const struct plan *plan, const struct object *attachment)
{
    const struct plan_plane *plane = plan_find(plan, object_in(attachment, SLOT_attachment_plane));
    if (plane == NULL || !object_has(attachment, SLOT_attachment_at))
        return false;
    struct point own = object_fact(attachment, SLOT_attachment_at)->is.point;
    *at = plan_at(plan, plane, own.x, own.y);
    return true;
}

static void write_attachments(struct roof *roof)
{
    struct canvas *canvas = roof->canvas;
    const struct objects *all = &canvas->report->design->of_kind[KIND_attachment];
    const struct stroke dot = {PAPER, 0.8, NULL, INK};
    for (size_t i = 0; i < all->count; i++) {
        struct point at;
        if (!roof_attachment_at(&at, &roof->plan, all->items[i]))
            continue;
        canvas_circle(canvas, at.x, at.y, 2.6, dot);
        if (key_is_fail(keys_find(&roof->keys, all->items[i])))
            canvas_circle(canvas, at.x, at.y, 6, alarm_line);
        legend_add(&roof->legend, SAMPLE_DOT, dot, "attachment");
    }
}

static void write_obstructions(struct roof *roof)
{
    struct canvas *canvas = roof->canvas;
    const struct objects *all = &canvas->report->design->of_kind[KIND_obstruction];
    const struct stroke line = {INK, 1.4, NULL, "#b9c2c7"};
    for (size_t i = 0; i < all->count; i++) {
        const struct object *one = all->items[i];
        const struct plan_plane *plane = plan_find(&roof->plan, one->parent);
        struct point at, corners[4];
        double width, length;
        if (plane == NULL || !obstruction_rect(&at, &width, &length, one))
            continue;
        plan_rect(corners, &roof->plan, plane, at, width, length);
        if (object_has(one, SLOT_obstruction_outline)) {
            const struct fact *outline = object_fact(one, SLOT_obstruction_outline);
            struct point *points = arena_take(canvas->arena, outline->count * sizeof *points);
            canvas->is_short |= points == NULL;
            for (size_t j = 0; points != NULL && j < outline->count; j++)
                points[j] =
                    plan_at(&roof->plan, plane, outline->is.points[j].x, outline->is.points[j].y);
            if (points != NULL)
                canvas_polygon(canvas, points, outline->count, line);
        } else
            canvas_polygon(canvas, corners, 4, line);
        canvas_line(canvas, corners[0].x, corners[0].y, corners[2].x, corners[2].y, line);
        if (key_is_fail(keys_find(&roof->keys, one)))
            canvas_polygon(canvas, corners, 4, alarm_line);
        legend_add(&roof->legend, SAMPLE_AREA, line, "obstruction");
    }
}

static void write_openings(struct roof *roof)
{
    const struct objects *all = &roof->canvas->report->design->of_kind[KIND_escape_opening];
    const struct stroke line = {"#1f6f78", 5, NULL, NULL};
    for (size_t i = 0; i < all->count; i++) {
        const struct object *one = all->items[i];
        const struct plan_plane *plane =
            plan_find(&roof->plan, object_in(one, SLOT_escape_opening_plane));
        if (plane == NULL || !object_has(one, SLOT_escape_opening_at) ||
            !object_has(one, SLOT_escape_opening_width))
            continue;
        struct point at = object_fact(one, SLOT_escape_opening_at)->is.point;
        double width = object_quantity(one, SLOT_escape_opening_width).value;
        struct point a = plan_at(&roof->plan, plane, at.x, at.y);
        struct point b = plan_at(&roof->plan, plane, at.x + width, at.y);
        canvas_line(roof->canvas, a.x, a.y, b.x, b.y, line);
        legend_add(&roof->legend, SAMPLE_LINE, line, "escape opening");
    }
}

static bool is_in_failing_strip(const struct roof *roof, const struct plan_plane *plane,
                                struct point at, double width, double length)
{
    for (size_t i = 0; i < roof->strips.count; i++) {
        const struct strip *strip = &roof->strips.items[i];
        if (strip->plane == plane && strip->finding->outcome == OUTCOME_FAIL &&
            strip_meets(strip, at, width, length))
            return true;
    }
    return false;
}

/* Does a finding of the plane fail that no strip shows? */
static bool fails_as_a_whole(const struct roof *roof, const struct plan_plane *plane)
{
    for (size_t i = 0; i < roof->keys.count; i++) {
        const struct key *key = &roof->keys.items[i];
        bool has_strip = false;
        for (size_t j = 0; j < roof->strips.count; j++)
            has_strip |= roof->strips.items[j].finding == key->finding;
        if (key->object == plane->object && key_is_fail(key) && !has_strip)
            return true;
    }
    return false;
}

/* What fails of the racking is no one module's. */
static bool does_racking_fail(const struct roof *roof)
{
    for (size_t i = 0; i < roof->keys.count; i++) {
        const struct key *key = &roof->keys.items[i];
        if (key->object != NULL && key_is_fail(key) &&
            (key->object->kind->id == KIND_racking || key->object->kind->id == KIND_rail))
            return true;
    }
    return false;
}

static void outline_failing(struct roof *roof)
{
    struct canvas *canvas = roof->canvas;
    const struct objects *modules = &canvas->report->design->of_kind[KIND_module];
    bool is_any = false, is_all = does_racking_fail(roof);
    for (size_t i = 0; i < modules->count; i++) {
        const struct object *module = modules->items[i];
        const struct plan_plane *plane =
            plan_find(&roof->plan, object_in(module, SLOT_module_plane));
        struct point at, corners[4];
        double width, length;
        if (plane == NULL || !module_rect(&at, &width, &length, module))
            continue;
        if (!is_all && !key_is_fail(keys_find(&roof->keys, module)) &&
            !is_in_failing_strip(roof, plane, at, width, length))
            continue;
        plan_rect(corners, &roof->plan, plane, at, width, length);
        canvas_polygon(canvas, corners, 4, alarm_line);
        is_any = true;
    }
    for (size_t i = 0; i < roof->plan.count; i++) {
        const struct plan_plane *plane = &roof->plan.planes[i];
        if (plane->outline == NULL || !fails_as_a_whole(roof, plane))
            continue;
        canvas_polygon(canvas, plane->corners, plane->count, alarm_line);
        is_any = true;
    }
    if (is_any)
        legend_add(&roof->legend, SAMPLE_AREA, alarm_line, "does not stand: see its number");
}

static double write_table(struct roof *roof, double y)
{
    struct canvas *canvas = roof->canvas;
    static const char *const heads[] = {"plane",    "slope",   "falls to",
                                        "covering", "framing", "modules"};
    static const double at[] = {0, 130, 210, 290, 440, 620};
    static const double widths[] = {124, 74, 74, 144, 174, 60};
    for (size_t i = 0; i < 6; i++)
        canvas_text(canvas, MARGIN + at[i], y,
                    (struct lettering){10, ANCHOR_START, true, false, FAINT, 0}, heads[i]);
    for (size_t i = 0; i < roof->plan.count; i++) {
        const struct object *plane = roof->plan.planes[i].object;
        const struct object *framing = object_in(plane, SLOT_roof_plane_framing);
        size_t count;
        objects_in(&count, plane, SLOT_roof_plane_modules);
        y += 17;
        const char *cells[] = {
            plane->name,
            fact_shown(canvas, plane, SLOT_roof_plane_slope),
            fact_shown(canvas, plane, SLOT_roof_plane_azimuth),
            fact_shown(canvas, plane, SLOT_roof_plane_covering),
            framing == NULL ? "not given"
                            : arena_format(canvas->arena, "%s %s at %s",
                                           fact_shown(canvas, framing, SLOT_framing_kind),
                                           fact_shown(canvas, framing, SLOT_framing_size),
                                           fact_shown(canvas, framing, SLOT_framing_spacing)),
            object_fact(plane, SLOT_roof_plane_modules)->state == FACT_MISSING
                ? "not given"
                : arena_format(canvas->arena, "%zu", count)};
        for (size_t j = 0; j < 6; j++)
            canvas_text(canvas, MARGIN + at[j], y,
                        (struct lettering){11, ANCHOR_START, false, false, NULL, widths[j]},
                        cells[j]);
    }
    return y + 14;
}

static void write_map(struct roof *roof)
{
    write_strips(roof);
    plan_write_modules(roof->canvas, &roof->plan, &roof->legend);
    write_members(roof);
    write_rails(roof);
    write_attachments(roof);
    write_obstructions(roof);
    write_openings(roof);
    plan_write_outlines(roof->canvas, &roof->plan, &roof->legend);
    outline_failing(roof);
    plan_write_north_and_scale(roof->canvas, &roof->plan);
    roof_write_marks(roof);
    roof_write_dimensions(roof);
}

bool drawing_write_roof(struct text *out, const struct report *report)
{
    struct canvas canvas;
    if (!canvas_open(&canvas, "roof", SHEET_WIDTH, report))
        return false;
    struct roof roof = {.canvas = &canvas};
    double y = sheet_head(&canvas, "Roof plan");
    bool is_drawn = plan_lay(&roof.plan, &canvas, 60, y + 34, SHEET_WIDTH - 160, 460);
    if (report->design != NULL)
        keys_collect(&roof.keys, &canvas, roof_kinds);
    if (is_drawn) {
        plan_write_clips(&canvas, &roof.plan);
        canvas.bottom = 0;
        strips_collect(&roof.strips, &canvas, &roof.plan);
        write_map(&roof);
        y = legend_write(&canvas, &roof.legend, roof.plan.bottom + 84);
        y = plan_write_notes(&canvas, &roof.plan, y);
        if (roof.has_sloped_length)
            y = sheet_note(
                &canvas, y,
                "The length of a sloped side is given along the roof; in plan, as drawn, "
                "it is shorter.");
        if (roof.strips.has_bent)
            y = sheet_note(&canvas, y,
                           "An access pathway stands that is not one straight strip; it is not "
                           "drawn.");
        y = write_table(&roof, y + 24);
    } else
        y = sheet_note(&canvas, y, "No roof plane has an outline: there is nothing to draw yet.");
    y = keys_write(&canvas, &roof.keys, y + 20);
    sheet_block(&canvas, y + 6, "Roof plan");
    const char *description = arena_format(
        canvas.arena,
        "The roof seen from above, north up: %zu planes with their edges, modules, rails, "
        "attachments, framing, obstructions and the strips to be kept clear; %zu findings are "
        "keyed by number.",
        roof.plan.drawn, roof.keys.count);
    canvas.is_short |= description == NULL;
    return canvas_close(&canvas, out, "Roof plan", description, false);
}
