/* Head, legend and title block. */
#include "drawing_sheet.h"

#include <math.h>
#include <string.h>

double sheet_head(struct canvas *canvas, const char *title)
{
    const struct design *design = canvas->report->design;
    const struct lettering large = {17, ANCHOR_START, true, false, NULL, 300};
    const struct lettering small = {12, ANCHOR_END, false, false, FAINT, 340};
    canvas_text(canvas, MARGIN, 32, large, title);
    if (design != NULL)
        canvas_text(canvas, canvas->width - MARGIN, 32, small,
                    fact_shown(canvas, design->root, SLOT_design_title));
    canvas_line(canvas, MARGIN, 42, canvas->width - MARGIN, 42, (struct stroke){INK, 1.5, 0, 0});
    return 58;
}

double sheet_note(struct canvas *canvas, double y, const char *note)
{
    const struct lettering body = {12, ANCHOR_START, false, false, NULL, 0};
    return canvas_paragraph(canvas, MARGIN, y + 12, canvas->width - 2 * MARGIN, 0, body, note) + 8;
}

static const char *rules_text(struct canvas *canvas)
{
    const struct report *report = canvas->report;
    char on[16];
    struct text text = {0};
    if (!report->has_date || report->rulebook == NULL)
        return "held against no rulebook";
    date_write(on, sizeof on, report->on);
    text_add_format(&text, "rules of %s:", on);
    for (size_t i = 0; i < report->rulebook->book_count; i++) {
        const struct book_in_force *one = &report->rulebook->books[i];
        text_add_format(&text, "%s %s%s%s", i > 0 ? "," : "", one->book->name,
                        one->edition != NULL ? " " : "", one->edition != NULL ? one->edition : "");
    }
    const char *kept = text.is_short ? NULL : arena_copy(canvas->arena, text.bytes, text.length);
    canvas->is_short |= kept == NULL;
    text_free(&text);
    return kept != NULL ? kept : "";
}

static void block_cell(struct canvas *canvas, double x, double y, double width, const char *label,
                       const char *text)
{
    const struct lettering small = {9, ANCHOR_START, false, false, FAINT, width};
    const struct lettering plain = {11, ANCHOR_START, false, false, NULL, width};
    canvas_text(canvas, x, y + 13, small, label);
    canvas_text(canvas, x, y + 28, plain, text);
}

void sheet_block(struct canvas *canvas, double y, const char *title)
{
    const struct design *design = canvas->report->design;
    const struct object *project =
        design != NULL ? object_in(design->root, SLOT_design_project) : NULL;
    const double right = canvas->width - MARGIN, width = right - MARGIN;
    const struct stroke line = {INK, 1, NULL, NULL};
    const struct lettering small = {9, ANCHOR_START, false, false, FAINT, width};
    canvas_rect(canvas, MARGIN, y, width, 72, line);
    canvas_line(canvas, MARGIN, y + 36, right, y + 36, (struct stroke){HAIR, 1, NULL, NULL});
    static const double at[] = {0, 0.2, 0.57, 0.79, 1};
    const char *cells[][2] = {{"drawing", title},
                              {"address", fact_shown(canvas, project, SLOT_project_address)},
                              {"designer", fact_shown(canvas, project, SLOT_project_designer)},
                              {"permit", fact_shown(canvas, project, SLOT_project_permit_number)}};
    for (size_t i = 0; i < 4; i++)
        block_cell(canvas, MARGIN + 8 + at[i] * width, y, (at[i + 1] - at[i]) * width - 12,
                   cells[i][0], cells[i][1]);
    block_cell(canvas, MARGIN + 8, y + 36, width - 16, "held against", rules_text(canvas));
    canvas_text_format(canvas, MARGIN, y + 88, small,
                       "Drawn by Plumbrule %s from %s. An aid, not an approval: the authority "
                       "having jurisdiction decides.",
                       canvas->report->version, canvas->report->design_path);
}

void legend_add(struct legend *legend, int sample, struct stroke stroke, const char *says)
{
    for (size_t i = 0; i < legend->count; i++)
        if (strcmp(legend->entries[i].says, says) == 0)
            return;
    if (legend->count < LEGEND_MOST) {
        struct legend_entry *entry = &legend->entries[legend->count++];
        entry->stroke = stroke;
        entry->sample = sample;
        entry->says = says;
    }
}

double legend_write(struct canvas *canvas, const struct legend *legend, double y)
{
    enum { COLUMNS = 3, ROW = 20 };
    const double width = (canvas->width - 2 * MARGIN) / COLUMNS;
    const size_t rows = (legend->count + COLUMNS - 1) / COLUMNS;
    for (size_t i = 0; i < legend->count; i++) {
        const struct legend_entry *entry = &legend->entries[i];
        const size_t column = i / rows, row = i % rows;
        double x = MARGIN + (double)column * width, top = y + (double)row * ROW;
        const struct lettering lettering = {11, ANCHOR_START, false, false, NULL, width - 48};
        if (entry->sample == SAMPLE_LINE)
            canvas_line(canvas, x, top + 8, x + 32, top + 8, entry->stroke);
        else if (entry->sample == SAMPLE_DOT)
            canvas_circle(canvas, x + 16, top + 8, 3, entry->stroke);
        else
            canvas_rect(canvas, x, top + 1, 32, 14, entry->stroke);
        canvas_text(canvas, x + 40, top + 12, lettering, entry->says);
    }
    return y + (double)rows * ROW + 6;
}
