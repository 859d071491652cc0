/* The panel schedule: each bus as a ladder of spaces, and its sums as bars against their limits. */
#include "drawing.h"

#include <math.h>
#include <string.h>

#include "drawing_sheet.h"

enum { ROW = 15, ROWS_MOST = 60, BARS_MOST = 8 };

static const kind_set panel_kinds = KINDS(panel) | KINDS(busbar) | KINDS(breaker);
static const double bus_at = MARGIN + 46, name_at = MARGIN + 92;

struct duty_style {
    const char *duty, *says, *pattern, *fill;
};

static const struct duty_style duties[] = {
    {"main", "main breaker", NULL, INK},          {"source", "source breaker", "zone-3", NULL},
    {"feeder", "feeder breaker", "zone-2", NULL}, {"load", "load breaker", NULL, WASH},
    {"spare", "spare breaker", NULL, PAPER},
};

static struct stroke duty_stroke(struct canvas *canvas, const char *duty, const char **says)
{
    for (size_t i = 0; i < sizeof duties / sizeof duties[0]; i++)
        if (duty != NULL && strcmp(duties[i].duty, duty) == 0) {
            *says = duties[i].says;
            return (struct stroke){INK, 1, NULL,
                                   duties[i].pattern != NULL
                                       ? canvas_pattern(canvas, duties[i].pattern)
                                       : duties[i].fill};
        }
    *says = "breaker, duty not given";
    return (struct stroke){INK, 1, "3 2", PAPER};
}

static int count_of(const struct object *object, unsigned slot, int missing)
{
    struct amount amount = object_amount(object, slot);
    return amount.type == AMOUNT_NUMBER ? (int)lround(amount.quantity.value) : missing;
}

static const char *duty_of(const struct object *breaker)
{
    return object_has(breaker, SLOT_breaker_duty) ? object_fact(breaker, SLOT_breaker_duty)->is.word
                                                  : NULL;
}

static const char *poles_shown(struct canvas *canvas, const struct object *breaker)
{
    int poles = count_of(breaker, SLOT_breaker_poles, 0);
    return poles == 0   ? "poles not given"
           : poles == 1 ? "1 pole"
                        : arena_format(canvas->arena, "%d poles", poles);
}

struct panel_sheet {
    struct canvas *canvas;
    struct keys keys;
    struct legend legend;
};

static void write_breaker(struct panel_sheet *sheet, const struct object *breaker, double top,
                          int poles)
{
    struct canvas *canvas = sheet->canvas;
    const char *says;
    struct stroke stroke = duty_stroke(canvas, duty_of(breaker), &says);
    double middle = top + poles * ROW / 2.0;
    const struct lettering bold = {11, ANCHOR_START, true, false, NULL, 130};
    const struct lettering plain = {10.5, ANCHOR_START, false, false, NULL, 370};
    canvas_rect(canvas, bus_at + 6, top + 1, 34, poles * ROW - 2, stroke);
    legend_add(&sheet->legend, SAMPLE_AREA, stroke, says);
    canvas_text(canvas, name_at, middle + 4, bold, breaker->name);
    canvas_text_format(canvas, name_at + 140, middle + 4, plain, "%s, %s; serves %s; %s; %s",
                       fact_shown(canvas, breaker, SLOT_breaker_rating),
                       poles_shown(canvas, breaker),
                       object_is(breaker, SLOT_breaker_duty, "main") ? "the bus"
                       : object_in(breaker, SLOT_breaker_serves) != NULL
                           ? name_shown(canvas, breaker, SLOT_breaker_serves)
                           : "loads",
                       fact_shown(canvas, breaker, SLOT_breaker_place),
                       fact_shown(canvas, breaker, SLOT_breaker_status));
    struct key *key = keys_find(&sheet->keys, breaker);
    if (key_is_fail(key))
        canvas_rect(canvas, bus_at + 2, top - 2, 42, poles * ROW + 4,
                    (struct stroke){ALARM, 2.2, "6 2", NULL});
    if (key != NULL)
        key_mark(canvas, key, (struct point[]){{SHEET_WIDTH - MARGIN - 12, middle}}, 1);
}

/* The ladder goes down the odd side of the panel and then down the even side. */
static int space_of(int rung, int rows)
{
    return rung <= rows ? 2 * rung - 1 : 2 * (rung - rows);
}

/* Which breaker of some begins at a space; a second one there is told apart. */
static const struct object *breaker_at(struct object *const *breakers, size_t count, int space)
{
    for (size_t i = 0; i < count; i++)
        if (count_of(breakers[i], SLOT_breaker_position, 0) == space)
            return breakers[i];
    return NULL;
}

/* Does one that begins before it reach into its space? */
static bool is_covered(struct object *const *breakers, size_t count, const struct object *breaker)
{
    int space = count_of(breaker, SLOT_breaker_position, 0);
    for (size_t i = 0; i < count; i++) {
        int begin = count_of(breakers[i], SLOT_breaker_position, 0),
            end = begin + 2 * (count_of(breakers[i], SLOT_breaker_poles, 1) - 1);
        if (begin > 0 && begin % 2 == space % 2 && begin < space && space <= end)
            return true;
    }
    return false;
}

/* The last space of the panel, by how many it has and by what is in it. */
static int last_space(const struct object *panel, struct object *const *breakers, size_t count)
{
    int last = count_of(panel, SLOT_panel_spaces, 0);
    for (size_t i = 0; i < count; i++) {
        int end = count_of(breakers[i], SLOT_breaker_position, 0) +
                  2 * (count_of(breakers[i], SLOT_breaker_poles, 1) - 1);
        if (count_of(breakers[i], SLOT_breaker_position, 0) > 0 && end > last)
            last = end;
    }
    return last < ROWS_MOST ? last : ROWS_MOST;
}

/* A run of free spaces of four or more is drawn as one with their first and last number; it ends
 * with its side of the panel. */
static int free_run(struct object *const *breakers, size_t count, int from, int spaces)
{
    int rung = from, rows = (spaces + 1) / 2, last = from <= rows ? rows : spaces;
    while (rung <= last && breaker_at(breakers, count, space_of(rung, rows)) == NULL)
        rung++;
    return rung - from;
}

static void write_space(struct canvas *canvas, double y, int from, int to)
{
    const struct lettering number = {10, ANCHOR_END, false, false, FAINT, 0};
    canvas_rect(canvas, bus_at + 6, y + 1, 34, ROW - 2, (struct stroke){HAIR, 0.8, NULL, PAPER});
    if (from == to)
        canvas_text_format(canvas, bus_at - 8, y + 11, number, "%d", from);
    else {
        canvas_text_format(canvas, bus_at - 8, y + 11, number, "%d–%d", from, to);
        canvas_text_format(canvas, name_at, y + 11,
                           (struct lettering){10.5, ANCHOR_START, false, false, FAINT, 0},
                           "%d spaces with no breaker listed", (to - from) / 2 + 1);
    }
}

/* A main that stands in no space, before all others. */
static double write_main(struct panel_sheet *sheet, struct object *const *breakers, size_t count,
                         double y)
{
    const struct lettering number = {10, ANCHOR_END, false, false, FAINT, 0};
    for (size_t i = 0; i < count; i++)
        if (count_of(breakers[i], SLOT_breaker_position, 0) == 0 &&
            object_is(breakers[i], SLOT_breaker_duty, "main")) {
            int poles = count_of(breakers[i], SLOT_breaker_poles, 1);
            write_breaker(sheet, breakers[i], y, poles);
            canvas_text(sheet->canvas, bus_at - 8, y + 11, number, "main");
            y += poles * ROW + 6;
        }
    return y;
}

static double write_ladder(struct panel_sheet *sheet, const struct object *panel,
                           struct object *const *breakers, size_t count, double y)
{
    struct canvas *canvas = sheet->canvas;
    const struct lettering number = {10, ANCHOR_END, false, false, FAINT, 0};
    const double begin = y;
    int spaces = last_space(panel, breakers, count), rows = (spaces + 1) / 2;
    y = write_main(sheet, breakers, count, y);
    for (int rung = 1; rung <= spaces;) {
        int space = space_of(rung, rows);
        const struct object *breaker = breaker_at(breakers, count, space);
        int step = breaker != NULL ? count_of(breaker, SLOT_breaker_poles, 1)
                                   : free_run(breakers, count, rung, spaces);
        if (breaker == NULL) {
            write_space(canvas, y, space, space + 2 * (step - 1));
            y += ROW;
        } else {
            for (int pole = 0; pole < step; pole++)
                canvas_text_format(canvas, bus_at - 8, y + pole * ROW + 11, number, "%d",
                                   space + 2 * pole);
            write_breaker(sheet, breaker, y, step);
            y += step * ROW;
        }
        rung = rung <= rows && rung + step > rows ? rows + 1 : rung + step;
    }
    canvas_line(canvas, bus_at, begin, bus_at, fmax(y, begin + ROW),
                (struct stroke){INK, 5, NULL, NULL});
    return fmax(y, begin + ROW) + 8;
}

/* Those without a space, and those whose space another one has. */
static double write_unplaced(struct panel_sheet *sheet, struct object *const *breakers,
                             size_t count, double y)
{
    struct canvas *canvas = sheet->canvas;
    const struct lettering plain = {10.5,  ANCHOR_START, false,
                                    false, NULL,         SHEET_WIDTH - 2 * MARGIN};
    for (size_t i = 0; i < count; i++) {
        const struct object *one = breakers[i];
        int position = count_of(one, SLOT_breaker_position, 0);
        bool is_main = object_is(one, SLOT_breaker_duty, "main");
        bool is_there = position <= ROWS_MOST && breaker_at(breakers, i, position) == NULL;
        if (position == 0 && !is_main)
            canvas_text_format(canvas, MARGIN, y + 8, plain, "%s, %s: position not given",
                               one->name, fact_shown(canvas, one, SLOT_breaker_rating));
        else if (position > 0 && (!is_there || is_covered(breakers, count, one)))
            canvas_text_format(canvas, MARGIN, y + 8, plain, "%s, %s: not drawn at space %d",
                               one->name, fact_shown(canvas, one, SLOT_breaker_rating), position);
        else
            continue;
        y += 16;
    }
    return y;
}

/* A sum of currents that a finding compared with its limit. */
struct bar {
    const char *name; /* of the option, or NULL */
    const struct test *test;
    enum outcome outcome; /* of the option it stands in, or of the pair itself */
};

static bool is_current_pair(const struct test *test)
{
    enum measure measure;
    return test->actual.type == AMOUNT_QUANTITY && test->limit.type == AMOUNT_QUANTITY &&
           test->relation == RELATION_NOT_EXCEED &&
           measure_of(&measure, test->actual.quantity.dimension) && measure == CURRENT;
}

static size_t collect_bars(struct bar *bars, const struct report *report, const struct object *bus)
{
    size_t count = 0;
    for (size_t i = 0; report->findings != NULL && i < report->findings->count; i++) {
        const struct finding *finding = report->findings->items[i];
        if (strcmp(finding->about_kind, "busbar") != 0 ||
            strcmp(finding->about_name, bus->path) != 0)
            continue;
        for (size_t t = 0; t < finding->test_count; t++) {
            const struct test *test = &finding->tests[t];
            if (is_current_pair(test) && count < BARS_MOST)
                bars[count++] = (struct bar){NULL, test, test->outcome};
            for (size_t o = 0; o < test->option_count; o++)
                for (size_t k = 0; k < test->options[o].test_count && count < BARS_MOST; k++)
                    if (is_current_pair(&test->options[o].tests[k]))
                        bars[count++] =
                            (struct bar){test->options[o].name, &test->options[o].tests[k],
                                         test->options[o].outcome};
        }
    }
    return count;
}

static const char *bar_word(enum outcome outcome)
{
    return outcome == OUTCOME_PASS   ? "stands"
           : outcome == OUTCOME_FAIL ? "is not met"
           : outcome == OUTCOME_OPEN ? "is open"
                                     : "is for review";
}

static double write_bar(struct canvas *canvas, const struct bar *bar, double most, double y)
{
    const double width = SHEET_WIDTH - 2 * MARGIN - 10, scale = width / most;
    double actual = quantity_as(bar->test->actual.quantity, "A");
    double limit = quantity_as(bar->test->limit.quantity, "A");
    char is[128], at_most[128];
    const struct lettering plain = {11, ANCHOR_START, false, false, NULL, 0};
    bool is_within = bar->name != NULL && bar->outcome == OUTCOME_FAIL && actual <= limit;
    test_write_amounts(is, at_most, sizeof is, bar->test);
    y = canvas_paragraph(
            canvas, MARGIN, y, width, 2, plain,
            arena_format(canvas->arena, "%s against a limit of %s; %s%s%s: %s%s%s", is, at_most,
                         bar->name != NULL ? "this way " : "", bar_word(bar->outcome),
                         is_within ? " for another reason" : "", bar->name != NULL ? bar->name : "",
                         bar->name != NULL ? ", " : "", bar->test->what)) -
        1.35 * plain.size;
    y += 10;
    canvas_rect(canvas, MARGIN, y, fmin(actual, limit) * scale, 14,
                (struct stroke){INK, 1, NULL, GLASS});
    if (actual > limit)
        canvas_rect(canvas, MARGIN + limit * scale, y, (actual - limit) * scale, 14,
                    (struct stroke){ALARM, 1.4, NULL, canvas_pattern(canvas, "zone-3")});
    canvas_line(canvas, MARGIN + limit * scale, y - 4, MARGIN + limit * scale, y + 18,
                (struct stroke){INK, 3, NULL, NULL});
    return y + 38;
}

static double write_bars(struct panel_sheet *sheet, const struct object *bus, double y)
{
    struct bar bars[BARS_MOST];
    size_t count = collect_bars(bars, sheet->canvas->report, bus);
    double most = 0;
    const struct lettering heading = {12, ANCHOR_START, true, false, FAINT, 0};
    if (count == 0)
        return sheet_note(sheet->canvas, y - 4,
                          "No sum of currents on this bus was held against a limit.");
    for (size_t i = 0; i < count; i++)
        most = fmax(most, fmax(quantity_as(bars[i].test->actual.quantity, "A"),
                               quantity_as(bars[i].test->limit.quantity, "A")));
    canvas_text(sheet->canvas, MARGIN, y + 8, heading,
                "Sums on this bus; the heavy stroke is the limit");
    y += 30;
    for (size_t i = 0; i < count; i++)
        y = write_bar(sheet->canvas, &bars[i], most > 0 ? most : 1, y);
    return y;
}

static double write_bus(struct panel_sheet *sheet, const struct object *panel,
                        const struct object *bus, double y)
{
    struct canvas *canvas = sheet->canvas;
    const struct lettering bold = {14, ANCHOR_START, true, false, NULL, 420};
    const struct lettering plain = {11, ANCHOR_START, false, false, NULL, 0};
    size_t count;
    struct object *const *breakers = objects_in(&count, bus, SLOT_busbar_breakers);
    canvas_text_format(canvas, MARGIN, y + 10, bold, "%s, %s", panel->name, bus->name);
    struct key *key = keys_find(&sheet->keys, bus);
    if (key == NULL)
        key = keys_find(&sheet->keys, panel);
    if (key != NULL)
        key_mark(canvas, key, (struct point[]){{SHEET_WIDTH - MARGIN - 12, y + 4}}, 1);
    y = canvas_paragraph(
        canvas, MARGIN, y + 28, SHEET_WIDTH - 2 * MARGIN, 3, plain,
        arena_format(
            canvas->arena,
            "Model %s; bus rated %s, protected at %s, fed at %s; %s spaces, %s free; interrupting "
            "rating %s; %s, %s.",
            name_shown(canvas, panel, SLOT_panel_model),
            fact_shown(canvas, bus, SLOT_busbar_rating),
            fact_shown(canvas, bus, SLOT_busbar_protecting_device),
            fact_shown(canvas, bus, SLOT_busbar_fed_at),
            fact_shown(canvas, panel, SLOT_panel_spaces),
            fact_shown(canvas, panel, SLOT_panel_free_spaces),
            fact_shown(canvas, panel, SLOT_panel_interrupting_rating),
            fact_shown(canvas, panel, SLOT_panel_location),
            fact_shown(canvas, panel, SLOT_panel_status)));
    y = write_ladder(sheet, panel, breakers, count, y + 4);
    y = write_unplaced(sheet, breakers, count, y);
    return write_bars(sheet, bus, y + 8) + 14;
}

static double write_panels(struct panel_sheet *sheet, double y)
{
    const struct objects *panels = &sheet->canvas->report->design->of_kind[KIND_panel];
    bool is_any = false;
    for (size_t i = 0; i < panels->count; i++) {
        size_t count;
        struct object *const *buses = objects_in(&count, panels->items[i], SLOT_panel_busbars);
        for (size_t j = 0; j < count; j++) {
            y = write_bus(sheet, panels->items[i], buses[j], y);
            is_any = true;
        }
        if (count == 0)
            y = sheet_note(sheet->canvas, y,
                           arena_format(sheet->canvas->arena, "Panel %s: no bus is given.",
                                        panels->items[i]->name));
    }
    return is_any || panels->count > 0 ? y : sheet_note(sheet->canvas, y, "No panel is given.");
}

bool drawing_write_panel(struct text *out, const struct report *report)
{
    struct canvas canvas;
    if (!canvas_open(&canvas, "panel", SHEET_WIDTH, report))
        return false;
    struct panel_sheet sheet = {.canvas = &canvas};
    double y = sheet_head(&canvas, "Panel schedule");
    size_t panels = 0;
    if (report->design != NULL) {
        panels = report->design->of_kind[KIND_panel].count;
        keys_collect(&sheet.keys, &canvas, panel_kinds);
        y = write_panels(&sheet, y + 8);
        y = legend_write(&canvas, &sheet.legend, y);
    } else
        y = sheet_note(&canvas, y, "The design could not be read.");
    y = keys_write(&canvas, &sheet.keys, y + 14);
    sheet_block(&canvas, y + 6, "Panel schedule");
    const char *description =
        arena_format(canvas.arena,
                     "%zu panels: each bus with its breakers by space, odd side and then even, and "
                     "its sums of currents as bars against their limits; %zu findings are keyed by "
                     "number.",
                     panels, sheet.keys.count);
    canvas.is_short |= description == NULL;
    return canvas_close(&canvas, out, "Panel schedule", description != NULL ? description : "",
                        false);
}
