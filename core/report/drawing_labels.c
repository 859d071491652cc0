/* The label sheet: every label at its true size, with its place, and those that are missing. */
#include "drawing.h"

#include <math.h>
#include <string.h>

#include "drawing_sheet.h"

enum { INCH = 96, LETTER_WIDTH = 816, PAD = 12 }; /* 96 units to an inch; a sheet 8.5 in wide */

/* A capital is so much of the size of common sans-serif letters; from memory of font metrics. */
#define CAPITAL 0.716
/* What stands in for letters whose height is not given, in. */
#define UNTOLD_LETTERS 0.25

struct label_colors {
    const char *name, *ground, *letters;
};

static const struct label_colors colors[] = {
    {"white on red", "#a3161a", "#ffffff"},   {"black on yellow", "#f3c623", "#000000"},
    {"black on white", "#ffffff", "#000000"}, {"white on black", "#111111", "#ffffff"},
    {"red on white", "#ffffff", "#a3161a"},
};

static struct label_colors colors_of(const struct object *label)
{
    for (size_t i = 0; i < sizeof colors / sizeof colors[0]; i++)
        if (object_is(label, SLOT_label_color, colors[i].name))
            return colors[i];
    return (struct label_colors){"any", "#ffffff", "#000000"};
}

static const char *yes_shown(const struct object *label, unsigned slot, const char *yes,
                             const char *no, const char *missing)
{
    struct amount amount = object_amount(label, slot);
    return amount.type != AMOUNT_YESNO ? missing : amount.yes ? yes : no;
}

static double write_caption(struct canvas *canvas, const struct keys *keys,
                            const struct object *label, double y)
{
    const double width = LETTER_WIDTH - 2 * MARGIN - 60;
    const struct lettering bold = {13, ANCHOR_START, true, false, NULL, width};
    const struct lettering plain = {11, ANCHOR_START, false, false, FAINT, width};
    double left = MARGIN;
    for (size_t i = 0; i < keys->count; i++)
        if (keys->items[i].object == label &&
            key_mark(canvas, &keys->items[i], (struct point[]){{left + 11, y + 8}}, 1))
            left += 26;
    canvas_text_format(canvas, left, y + 6, bold, "%s: %s, at %s", label->name,
                       fact_shown(canvas, label, SLOT_label_kind),
                       fact_shown(canvas, label, SLOT_label_place));
    canvas_text_format(
        canvas, left, y + 22, plain, "letters %s%s; colors %s; %s; %s%s%s",
        fact_shown(canvas, label, SLOT_label_letter_height),
        object_has(label, SLOT_label_letter_height) ? "" : ", drawn at 1/4 in",
        fact_shown(canvas, label, SLOT_label_color),
        yes_shown(label, SLOT_label_reflective, "reflective", "not reflective",
                  "reflective: not given"),
        yes_shown(label, SLOT_label_permanent, "permanent", "not permanent",
                  "permanent: not given"),
        object_has(label, SLOT_label_spacing) ? "; every " : "",
        object_has(label, SLOT_label_spacing) ? fact_shown(canvas, label, SLOT_label_spacing) : "");
    return y + 32;
}

static double write_label(struct canvas *canvas, const struct keys *keys,
                          const struct object *label, double y)
{
    struct label_colors paint = colors_of(label);
    double letters = object_has(label, SLOT_label_letter_height)
                         ? quantity_as(object_quantity(label, SLOT_label_letter_height), "in")
                         : UNTOLD_LETTERS;
    struct lettering lettering = {
        letters * INCH / CAPITAL, ANCHOR_MIDDLE, true, false, paint.letters, 0};
    const double most = LETTER_WIDTH - 2 * MARGIN - 2 * PAD;
    const char *text = object_has(label, SLOT_label_text)
                           ? object_fact(label, SLOT_label_text)->is.word
                           : "not given";
    y = write_caption(canvas, keys, label, y);
    const double wrap = 1.06 * most; /* letters are measured with room to spare */
    size_t lines = canvas_count_lines(wrap, lettering, text);
    double own = lettering_width(text, strlen(text), lettering.size, true);
    double width = lines > 1 ? most : fmin(own, most);
    double height = (double)lines * 1.35 * lettering.size + 2 * PAD - 0.3 * lettering.size;
    canvas_rect(
        canvas, MARGIN, y, width + 2 * PAD, height,
        (struct stroke){INK, 1.4, object_has(label, SLOT_label_text) ? NULL : "6 3", paint.ground});
    canvas_paragraph(canvas, MARGIN + PAD + width / 2, y + PAD + 0.85 * lettering.size, wrap, 0,
                     lettering, text);
    return y + height + 26;
}

/* Keys of findings about labels: those about one, and those of the whole design whose rule is. */
static void keep_label_keys(struct keys *keys)
{
    size_t kept = 0;
    for (size_t i = 0; i < keys->count; i++) {
        const struct finding *finding = keys->items[i].finding;
        if (strcmp(finding->about_kind, "label") == 0 ||
            strstr(finding->rule->id, "label") != NULL ||
            strstr(finding->rule->id, "placard") != NULL)
            keys->items[kept++] = keys->items[i];
    }
    keys->count = kept;
}

/* Does the finding say that there is no such label at all? */
static bool is_missing(const struct finding *finding)
{
    for (size_t i = 0; i < finding->test_count; i++) {
        const struct test *test = &finding->tests[i];
        if (test->outcome == OUTCOME_FAIL && test->relation == RELATION_MORE_THAN &&
            test->actual.type == AMOUNT_NUMBER && test->actual.quantity.value == 0)
            return true;
    }
    return false;
}

static double write_missing(struct canvas *canvas, struct keys *keys, double y)
{
    const double width = LETTER_WIDTH - 2 * MARGIN;
    const struct lettering bold = {13, ANCHOR_START, true, false, NULL, width - 60};
    const struct lettering plain = {11, ANCHOR_START, false, false, NULL, 0};
    for (size_t i = 0; i < keys->count; i++) {
        const struct finding *finding = keys->items[i].finding;
        if (finding->outcome != OUTCOME_FAIL || !is_missing(finding))
            continue;
        canvas_rect(canvas, MARGIN, y, width, 64, (struct stroke){ALARM, 2, "8 4", NULL});
        key_mark(canvas, &keys->items[i], (struct point[]){{MARGIN + 22, y + 24}}, 1);
        canvas_text_format(canvas, MARGIN + 44, y + 24, bold, "missing: %s (%s)", finding->title,
                           finding->cite != NULL ? finding->cite : finding->rule->id);
        if (finding->remedy != NULL)
            canvas_paragraph(canvas, MARGIN + 44, y + 42, width - 60, 1, plain, finding->remedy);
        y += 84;
    }
    return y;
}

bool drawing_write_labels(struct text *out, const struct report *report)
{
    struct canvas canvas;
    struct keys keys = {0};
    size_t count = 0;
    if (!canvas_open(&canvas, "labels", LETTER_WIDTH, report))
        return false;
    double y = sheet_head(&canvas, "Label sheet");
    if (report->design != NULL) {
        const struct objects *labels = &report->design->of_kind[KIND_label];
        count = labels->count;
        keys_collect(&keys, &canvas, KINDS(label) | KINDS(design));
        keep_label_keys(&keys);
        y = sheet_note(&canvas, y,
                       count > 0 ? "At true size when printed at 100 %, 96 units to an inch."
                                 : "The design lists no label.");
        for (size_t i = 0; i < count; i++)
            y = write_label(&canvas, &keys, labels->items[i], y + 8);
        y = write_missing(&canvas, &keys, y);
    } else
        y = sheet_note(&canvas, y, "The design could not be read.");
    y = keys_write(&canvas, &keys, y + 14);
    sheet_block(&canvas, y + 6, "Label sheet");
    const char *description = arena_format(
        canvas.arena,
        "%zu labels at their true size, each with its kind, place, letters and colors; %zu "
        "findings about labels are keyed by number.",
        count, keys.count);
    canvas.is_short |= description == NULL;
    return canvas_close(&canvas, out, "Label sheet", description != NULL ? description : "", true);
}
