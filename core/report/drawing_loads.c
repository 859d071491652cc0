/* The load diagram: what each attachment carries, by wind zone. */
#include "drawing.h"

#include <math.h>
#include <string.h>

#include "calculator.h"
#include "drawing_plan.h"
#include "shown.h"

enum { ZONES_MOST = 8, TESTS_MOST = 14 };

static const kind_set load_kinds = KINDS(attachment) | KINDS(attachment_model) | KINDS(rail) |
                                   KINDS(racking) | KINDS(framing) | KINDS(module_model) |
                                   KINDS(module);

/* What could be told of one attachment. */
struct carried {
    bool has_area, has_wind;
    double area;     /* m² of module */
    double pressure; /* Pa, uplift, ultimate level */
    const char *zone;
};

struct zone {
    const char *name; /* NULL: not told */
    size_t count;
    double area, pressure, force;
    const char *most; /* the attachment with the largest force, else area */
};

struct loads {
    struct canvas *canvas;
    struct plan plan;
    struct keys keys;
    struct legend legend;
    struct working working;
    struct amount wind[CALCULATOR_INPUTS]; /* edition, speed, least pressure */
    const char *why;                       /* why there is no wind, or NULL */
    struct zone zones[ZONES_MOST];
    size_t zone_count;
};

static struct amount value_of(const struct report *report, const char *name)
{
    const struct value *value = rulebook_find_value(report->rulebook, name);
    return value != NULL ? value_shown(value, report->design)
                         : (struct amount){.type = AMOUNT_NONE};
}

/* Wind speed and edition as the books have them; a site study where they ask for one. */
static void read_wind(struct loads *loads, const struct report *report)
{
    if (report->rulebook == NULL) {
        loads->why = "Without a rulebook no wind is known: areas alone are drawn.";
        return;
    }
    for (size_t i = 0; i < report->rulebook->book_count; i++)
        if (strcmp(report->rulebook->books[i].book->name, "asce") == 0 &&
            report->rulebook->books[i].edition != NULL)
            loads->wind[0] = amount_of_word(report->rulebook->books[i].edition);
    loads->wind[1] = value_of(report, "basic_wind_speed");
    struct amount study = value_of(report, "site_wind_study");
    const struct objects *sites = &report->design->of_kind[KIND_site];
    if (study.type == AMOUNT_YESNO && study.yes)
        loads->wind[1] = sites->count > 0
                             ? object_amount(sites->items[0], SLOT_site_basic_wind_speed)
                             : (struct amount){.type = AMOUNT_NONE};
    loads->wind[2] = value_of(report, "panel_wind_minimum");
    if (loads->wind[0].type == AMOUNT_NONE || loads->wind[1].type == AMOUNT_NONE)
        loads->why = "No wind speed or edition of ASCE 7 is in force here: areas alone are drawn.";
}

static struct carried carry(struct loads *loads, const struct object *attachment)
{
    struct carried carried = {0};
    struct amount results[CALCULATOR_RESULTS];
    const struct amount none[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    working_start(&loads->working);
    if (calculator_run(calculator_find(KIND_attachment, "tributary_area"), results, attachment,
                       none, &loads->working)) {
        carried.has_area = true;
        carried.area = results[0].quantity.value;
    }
    if (loads->why != NULL || !carried.has_area || carried.area <= 0)
        return carried;
    working_start(&loads->working);
    if (calculator_run(calculator_find(KIND_attachment, "wind_pressure"), results, attachment,
                       loads->wind, &loads->working)) {
        carried.has_wind = true;
        carried.pressure = results[0].quantity.value;
        carried.zone = results[2].word;
    }
    return carried;
}

static struct zone *zone_find(struct loads *loads, const char *name)
{
    for (size_t i = 0; i < loads->zone_count; i++) {
        const char *own = loads->zones[i].name;
        if (own == name || (own != NULL && name != NULL && strcmp(own, name) == 0))
            return &loads->zones[i];
    }
    if (loads->zone_count == ZONES_MOST)
        return &loads->zones[ZONES_MOST - 1];
    loads->zones[loads->zone_count].name = name;
    return &loads->zones[loads->zone_count++];
}

static void zone_add(struct zone *zone, const struct carried *carried, const char *name)
{
    double force = carried->pressure * carried->area;
    if (zone->count == 0 || force > zone->force || (force == 0 && carried->area > zone->area))
        zone->most = name;
    zone->count++;
    zone->area = fmax(zone->area, carried->area);
    zone->pressure = fmax(zone->pressure, carried->pressure);
    zone->force = fmax(zone->force, force);
}

/* The shape tells a zone's figure, the pattern its letter: colour alone tells nothing. */
static void draw_zone_mark(struct canvas *canvas, double x, double y, const char *zone)
{
    const double half = 6.5;
    char first = zone != NULL ? zone[0] : '?';
    const char *pattern = zone == NULL                ? NULL
                          : strchr(zone, 'r') != NULL ? "zone-4"
                          : strchr(zone, 'n') != NULL ? "zone-3"
                          : strcmp(zone, "1") == 0    ? "zone-1"
                                                      : "zone-2";
    const struct stroke stroke = {INK, 1.2, NULL,
                                  pattern != NULL ? canvas_pattern(canvas, pattern) : PAPER};
    const struct point square[] = {
        {x - half, y - half}, {x + half, y - half}, {x + half, y + half}, {x - half, y + half}};
    const struct point peak[] = {{x, y - 8.5}, {x + 8, y + 6}, {x - 8, y + 6}};
    if (first == '2')
        canvas_polygon(canvas, square, 4, stroke);
    else if (first == '3')
        canvas_polygon(canvas, peak, 3, stroke);
    else
        canvas_circle(canvas, x, y, half, stroke);
    if (pattern == NULL)
        canvas_line(canvas, x - 4, y + 4, x + 4, y - 4, stroke);
}

static void write_attachment(struct loads *loads, const struct object *attachment)
{
    struct canvas *canvas = loads->canvas;
    const struct plan_plane *plane =
        plan_find(&loads->plan, object_in(attachment, SLOT_attachment_plane));
    if (plane == NULL || !object_has(attachment, SLOT_attachment_at))
        return;
    struct point own = object_fact(attachment, SLOT_attachment_at)->is.point;
    struct point at = plan_at(&loads->plan, plane, own.x, own.y);
    struct carried carried = carry(loads, attachment);
    zone_add(zone_find(loads, carried.zone), &carried, attachment->name);
    draw_zone_mark(canvas, at.x, at.y, carried.zone);
    canvas_keep(canvas, (struct box){at.x - 8, at.y - 8, at.x + 8, at.y + 8});
}

/* Figures stand beside the marks after all marks are drawn, where there is room. */
static void write_figure(struct loads *loads, const struct object *attachment)
{
    const struct plan_plane *plane =
        plan_find(&loads->plan, object_in(attachment, SLOT_attachment_plane));
    if (plane == NULL || !object_has(attachment, SLOT_attachment_at))
        return;
    struct point own = object_fact(attachment, SLOT_attachment_at)->is.point;
    struct point at = plan_at(&loads->plan, plane, own.x, own.y);
    struct carried carried = carry(loads, attachment);
    const struct lettering small = {9, ANCHOR_MIDDLE, false, true, NULL, 0};
    const struct point points[] = {
        {at.x, at.y - 10}, {at.x, at.y + 18}, {at.x + 10, at.y + 3}, {at.x - 10, at.y + 3}};
    const enum anchor anchors[] = {ANCHOR_MIDDLE, ANCHOR_MIDDLE, ANCHOR_START, ANCHOR_END};
    if (!carried.has_area)
        return;
    double figure = carried.has_wind ? carried.pressure * carried.area / 4.4482216152605
                                     : carried.area / 0.09290304;
    canvas_place(loads->canvas, points, anchors, 4, small,
                 arena_format(loads->canvas->arena, carried.has_wind ? "%.0f" : "%.1f", figure));
}

static double write_zones(struct loads *loads, double y)
{
    struct canvas *canvas = loads->canvas;
    static const char *const heads[] = {"zone",   "attachments",   "largest area",
                                        "uplift", "largest force", "on"};
    static const double at[] = {34, 90, 190, 300, 400, 510};
    const struct lettering head = {10, ANCHOR_START, true, false, FAINT, 0};
    for (size_t i = 0; i < 6; i++)
        canvas_text(canvas, MARGIN + at[i], y, head, heads[i]);
    for (size_t i = 0; i < loads->zone_count; i++) {
        const struct zone *zone = &loads->zones[i];
        y += 20;
        draw_zone_mark(canvas, MARGIN + 12, y - 4, zone->name);
        const char *cells[] = {zone->name != NULL ? zone->name : "not told",
                               arena_format(canvas->arena, "%zu", zone->count),
                               arena_format(canvas->arena, "%.1f sq ft", zone->area / 0.09290304),
                               zone->name != NULL ? arena_format(canvas->arena, "%.1f psf",
                                                                 zone->pressure / 47.880258980336)
                                                  : "not told",
                               zone->name != NULL ? arena_format(canvas->arena, "%.0f lbf",
                                                                 zone->force / 4.4482216152605)
                                                  : "not told",
                               zone->most != NULL ? zone->most : ""};
        for (size_t j = 0; j < 6; j++)
            canvas_text(canvas, MARGIN + at[j], y,
                        (struct lettering){11, ANCHOR_START, false, false, NULL,
                                           j == 5 ? SHEET_WIDTH - 2 * MARGIN - 510 : 96},
                        cells[j]);
    }
    return y + 16;
}

static bool is_load(const struct test *test)
{
    enum measure measure;
    return test->actual.type == AMOUNT_QUANTITY && test->limit.type == AMOUNT_QUANTITY &&
           measure_of(&measure, test->actual.quantity.dimension) &&
           (measure == FORCE || measure == LINE_LOAD);
}

/* Forces that findings compared with what takes them. */
static double write_tests(struct loads *loads, double y)
{
    struct canvas *canvas = loads->canvas;
    const struct findings *findings = canvas->report->findings;
    const struct lettering heading = {12, ANCHOR_START, true, false, FAINT, 0};
    const struct lettering plain = {11, ANCHOR_START, false, false, NULL, 0};
    size_t count = 0;
    for (size_t i = 0; findings != NULL && i < findings->count; i++)
        for (size_t t = 0; t < findings->items[i]->test_count && count < TESTS_MOST; t++) {
            const struct test *test = &findings->items[i]->tests[t];
            if (!is_load(test) || (test->outcome != OUTCOME_PASS && test->outcome != OUTCOME_FAIL))
                continue;
            if (count++ == 0)
                canvas_text(canvas, MARGIN, y + 8, heading,
                            "Design loads that findings compared, factored as the books ask");
            y = canvas_paragraph(
                canvas, MARGIN, y + (count == 1 ? 28 : 6), SHEET_WIDTH - 2 * MARGIN, 2, plain,
                arena_format(canvas->arena, "%s, %s: %s.", findings->items[i]->about_name,
                             test->outcome == OUTCOME_PASS ? "stands" : "does not stand",
                             test_sentence(test, canvas->arena)));
        }
    return count > 0 ? y + 8 : y;
}

static void write_map(struct loads *loads)
{
    const struct objects *all = &loads->canvas->report->design->of_kind[KIND_attachment];
    plan_write_modules(loads->canvas, &loads->plan, &loads->legend);
    plan_write_outlines(loads->canvas, &loads->plan, &loads->legend);
    plan_write_north_and_scale(loads->canvas, &loads->plan);
    for (size_t i = 0; i < all->count; i++)
        write_attachment(loads, all->items[i]);
    for (size_t i = 0; i < loads->keys.count; i++) {
        struct key *key = &loads->keys.items[i];
        if (key->object == NULL || key->object->kind->id != KIND_attachment ||
            !object_has(key->object, SLOT_attachment_at))
            continue;
        const struct plan_plane *plane =
            plan_find(&loads->plan, object_in(key->object, SLOT_attachment_plane));
        struct point own = object_fact(key->object, SLOT_attachment_at)->is.point;
        if (plane == NULL)
            continue;
        struct point at = plan_at(&loads->plan, plane, own.x, own.y);
        key_mark(loads->canvas, key, (struct point[]){{at.x, at.y - 20}, {at.x, at.y + 20}}, 2);
    }
    for (size_t i = 0; i < all->count; i++)
        write_figure(loads, all->items[i]);
    const struct strips none = {0};
    plan_name_planes(loads->canvas, &loads->plan, &none);
}

static double write_body(struct loads *loads, double y)
{
    struct canvas *canvas = loads->canvas;
    size_t count = canvas->report->design->of_kind[KIND_attachment].count;
    read_wind(loads, canvas->report);
    if (!plan_lay(&loads->plan, canvas, 60, y + 34, SHEET_WIDTH - 160, 460))
        return sheet_note(canvas, y, "No roof plane has an outline: there is nothing to draw yet.");
    write_map(loads);
    y = legend_write(canvas, &loads->legend, loads->plan.bottom + 84);
    if (count == 0)
        return sheet_note(canvas, y, "No attachment is given.");
    y = write_zones(loads, y + 14);
    if (loads->why != NULL)
        return sheet_note(canvas, y, loads->why);
    return sheet_note(
        canvas, y,
        "Figures on the roof are wind uplift on one attachment in lbf, ultimate level, before load "
        "combinations: pressure on its zone times the module area that it carries.");
}

bool drawing_write_loads(struct text *out, const struct report *report)
{
    struct canvas canvas;
    if (!canvas_open(&canvas, "loads", SHEET_WIDTH, report))
        return false;
    struct loads *loads = arena_take(canvas.arena, sizeof *loads);
    if (loads == NULL) {
        canvas_drop(&canvas);
        return false;
    }
    *loads = (struct loads){
        .canvas = &canvas,
        .working = {.arena = canvas.arena, .design = report->design, .is_lasting = true}};
    double y = sheet_head(&canvas, "Load diagram");
    if (report->design != NULL) {
        keys_collect(&loads->keys, &canvas, load_kinds);
        y = write_body(loads, y);
        y = write_tests(loads, y + 12);
    } else
        y = sheet_note(&canvas, y, "The design could not be read.");
    y = keys_write(&canvas, &loads->keys, y + 16);
    sheet_block(&canvas, y + 6, "Load diagram");
    const char *description =
        arena_format(canvas.arena,
                     "The attachments in plan, each with the wind uplift or the area that it "
                     "carries, in %zu wind zones told apart by shape and pattern; %zu findings are "
                     "keyed by number.",
                     loads->zone_count, loads->keys.count);
    canvas.is_short |= description == NULL || loads->working.stop.kind == STOP_MEMORY;
    working_close(&loads->working);
    return canvas_close(&canvas, out, "Load diagram", description != NULL ? description : "",
                        false);
}
