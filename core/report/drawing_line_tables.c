/* What stands below the one-line diagram: facts, what it could not draw, the schedule of circuits.
 */
#include "drawing_one_line.h"

/* A circuit that leads nowhere that is told has no tag; the schedule lists it all the same. */
static const char *tag_of(const struct wiring *wiring, const struct object *circuit)
{
    for (size_t i = 0; i < wiring->run_count; i++)
        if (wiring->runs[i].circuit == circuit && wiring->runs[i].tag[0] != '\0')
            return wiring->runs[i].tag;
    return "–";
}

double one_line_schedule(struct line_sheet *sheet, double y)
{
    struct canvas *canvas = sheet->canvas;
    const struct objects *circuits = &sheet->design->of_kind[KIND_circuit];
    if (circuits->count == 0)
        return y;
    static const char *const heads[] = {"run",     "from, to", "conductors", "EGC",
                                        "raceway", "length",   "OCPD"};
    static const double at[] = {0, 28, 172, 336, 396, 484, 536};
    static const double widths[] = {24, 138, 158, 56, 82, 48, 144};
    for (size_t i = 0; i < 7; i++)
        canvas_text(canvas, MARGIN + at[i], y,
                    (struct lettering){10, ANCHOR_START, true, false, FAINT, 0}, heads[i]);
    for (size_t i = 0; i < circuits->count; i++) {
        const struct object *circuit = circuits->items[i];
        y += 17;
        const char *cells[] = {
            tag_of(&sheet->wiring, circuit),
            arena_format(canvas->arena, "%s, %s%s", name_shown(canvas, circuit, SLOT_circuit_from),
                         name_shown(canvas, circuit, SLOT_circuit_to),
                         object_is(circuit, SLOT_circuit_status, "removed") ? " (removed)" : ""),
            circuit_conductor_text(canvas, circuit),
            circuit_ground_text(canvas, circuit),
            circuit_raceway_text(canvas, circuit),
            fact_shown(canvas, circuit, SLOT_circuit_length),
            circuit_ocpd_text(canvas, circuit)};
        for (size_t j = 0; j < 7; j++)
            canvas_text(canvas, MARGIN + at[j], y,
                        (struct lettering){10, ANCHOR_START, j == 0, false, NULL, widths[j]},
                        cells[j]);
    }
    return y + 18;
}

/* What stands beside the line: the side of the connection, shutdown, grounding. */
double one_line_facts(struct line_sheet *sheet, double y)
{
    struct canvas *canvas = sheet->canvas;
    const struct object *connection = only_one(sheet->design, KIND_interconnection);
    const struct object *shutdown = only_one(sheet->design, KIND_rapid_shutdown);
    const struct object *grounding = only_one(sheet->design, KIND_grounding);
    const struct lettering body = {11, ANCHOR_START, false, false, NULL, 0};
    const double left = MARGIN + 34, width = SHEET_WIDTH - left - MARGIN;
    symbol_ground(canvas, MARGIN + 12, y + 4);
    y = canvas_paragraph(
        canvas, left, y + 4, width, 2, body,
        arena_format(canvas->arena,
                     "Grounding: electrode conductor %s %s; equipment ground of the array "
                     "%s%s; bonding by %s.",
                     fact_shown(canvas, grounding, SLOT_grounding_gec_size),
                     fact_shown(canvas, grounding, SLOT_grounding_gec_material),
                     fact_shown(canvas, grounding, SLOT_grounding_array_egc_size),
                     grounding != NULL &&
                             object_is(grounding, SLOT_grounding_array_egc_material, "aluminum")
                         ? " aluminum"
                         : "",
                     fact_shown(canvas, grounding, SLOT_grounding_bonding)));
    y = canvas_paragraph(
        canvas, left, y + 4, width, 2, body,
        arena_format(canvas->arena, "Connection: %s, at %s, overcurrent device %s.",
                     fact_shown(canvas, connection, SLOT_interconnection_side),
                     name_shown(canvas, connection, SLOT_interconnection_at),
                     fact_shown(canvas, connection, SLOT_interconnection_ocpd_rating)));
    y = canvas_paragraph(
        canvas, left, y + 4, width, 2, body,
        arena_format(canvas->arena, "Rapid shutdown: %s, set off by %s (%s).",
                     fact_shown(canvas, shutdown, SLOT_rapid_shutdown_method),
                     name_shown(canvas, shutdown, SLOT_rapid_shutdown_initiator),
                     fact_shown(canvas, shutdown, SLOT_rapid_shutdown_initiator_location)));
    return y + 16;
}

/* Things that the design lists and that no run leads from to the utility. */
double one_line_apart(struct line_sheet *sheet, double y)
{
    struct text list = {0};
    for (size_t i = 0; i < sheet->wiring.node_count; i++) {
        const struct node *node = &sheet->wiring.nodes[i];
        if (!node->is_reached && node->object != NULL)
            text_add_format(&list, "%s%s", list.length > 0 ? ", " : "", node->object->name);
    }
    if (list.length > 0)
        y = sheet_note(sheet->canvas, y - 12,
                       arena_format(sheet->canvas->arena,
                                    "No way to the utility is told for: %s. They are not drawn.",
                                    list.bytes)) +
            8;
    text_free(&list);
    return y;
}
