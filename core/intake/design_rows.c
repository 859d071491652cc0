/* Rows of equal modules and attachments become modules and attachments, each with its own place on
 * the roof. What the row does not tell, its things do not know. */
#include "design_reader.h"

/* Copies a fact that row and thing have under the same meaning. */
static void hand_down(struct object *to, unsigned to_slot, const struct object *from,
                      unsigned from_slot)
{
    to->facts[to_slot] = from->facts[from_slot];
}

/* One side of a module, or false where the model does not say. */
static bool module_side(double *out, const struct object *row, bool is_up_slope)
{
    if (!object_has(row, SLOT_module_row_model) || !object_has(row, SLOT_module_row_orientation))
        return false;
    const struct object *model = object_fact(row, SLOT_module_row_model)->is.object;
    bool is_long = object_is(row, SLOT_module_row_orientation, "portrait") == is_up_slope;
    unsigned slot = is_long ? SLOT_module_model_length : SLOT_module_model_width;
    if (!object_has(model, slot))
        return false;
    *out = object_fact(model, slot)->is.number;
    return true;
}

/* Where the n-th of a row stands along one axis; n is 0 for the first. */
static bool place_along(double *at, const struct object *row, bool is_up_slope, size_t n)
{
    double side;
    if (n == 0)
        return true;
    if (!object_has(row, SLOT_module_row_gap) || !module_side(&side, row, is_up_slope))
        return false;
    *at += (double)n * (side + object_fact(row, SLOT_module_row_gap)->is.number);
    return true;
}

static void place_module(struct object *module, const struct object *row, size_t r, size_t c)
{
    hand_down(module, SLOT_module_at, row, SLOT_module_row_at);
    struct fact *at = &module->facts[SLOT_module_at];
    at->written = NULL;
    if (at->state == FACT_GIVEN && !(place_along(&at->is.point.x, row, false, c) &&
                                     place_along(&at->is.point.y, row, true, r)))
        at->state = FACT_MISSING;
}

/* The name of the n-th of a row: "south-3". NULL: no memory. */
static const char *name_of(struct arena *arena, const char *row, size_t n)
{
    char digits[24];
    size_t at = sizeof digits - 1;
    for (digits[at] = '\0'; n > 0; n /= 10)
        digits[--at] = (char)('0' + n % 10);
    return row != NULL ? ARENA_JOIN(arena, row, "-", digits + at) : NULL;
}

static void expand_module_row(struct design_reader *reader, struct object *row,
                              const struct node *node)
{
    struct expansion *expansion = &reader->module_rows[row->ordinal];
    struct fact *modules = &reader->design->root->facts[SLOT_design_modules];
    size_t columns = (size_t)object_fact(row, SLOT_module_row_columns)->is.number;
    size_t rows = object_has(row, SLOT_module_row_rows)
                      ? (size_t)object_fact(row, SLOT_module_row_rows)->is.number
                      : 1;
    expansion->first = reader->design->of_kind[KIND_module].count;
    expansion->is_known = true;
    const char *row_name = NULL;
    for (size_t i = 0; i < rows * columns; i++) {
        size_t r = i / columns, c = i % columns;
        if (c == 0)
            row_name = name_of(reader->arena, row->name, r + 1);
        const char *name = name_of(reader->arena, row_name, c + 1);
        struct object *module =
            name == NULL ? NULL : add_named(reader, KIND_module, reader->design->root, name, node);
        if (module == NULL || !append_object(reader, modules, module))
            return;
        expansion->count++;
        hand_down(module, SLOT_module_model, row, SLOT_module_row_model);
        hand_down(module, SLOT_module_plane, row, SLOT_module_row_plane);
        hand_down(module, SLOT_module_orientation, row, SLOT_module_row_orientation);
        hand_down(module, SLOT_module_status, row, SLOT_module_row_status);
        place_module(module, row, r, c);
    }
}

/* A list that its rows may add to is told once either is told, unless a row leaves its number open.
 */
static void settle_list(struct fact *list, const struct fact *rows, const struct object *vague,
                        unsigned vague_slot)
{
    if (vague != NULL) {
        list->state = FACT_MISSING;
        list->is.unsure.object = vague;
        list->is.unsure.slot = vague_slot;
    } else if (list->count > 0)
        list->state = FACT_GIVEN;
    else if (rows->state == FACT_NONE && list->state == FACT_MISSING)
        list->state = FACT_NONE;
}

static void place_attachment(struct object *attachment, const struct object *row,
                             const struct object *racking, size_t n)
{
    hand_down(attachment, SLOT_attachment_at, row, SLOT_attachment_row_at);
    struct fact *at = &attachment->facts[SLOT_attachment_at];
    at->written = NULL;
    if (at->state != FACT_GIVEN || n == 0)
        return;
    if (!object_has(row, SLOT_attachment_row_spacing) ||
        !object_has(racking, SLOT_racking_rail_direction)) {
        at->state = FACT_MISSING;
        return;
    }
    double along = (double)n * object_fact(row, SLOT_attachment_row_spacing)->is.number;
    if (object_is(racking, SLOT_racking_rail_direction, "across the slope"))
        at->is.point.x += along;
    else
        at->is.point.y += along;
}

static void expand_attachment_row(struct design_reader *reader, struct object *row,
                                  struct object *racking, const struct node *node)
{
    size_t count = (size_t)object_fact(row, SLOT_attachment_row_count)->is.number;
    for (size_t n = 0; n < count; n++) {
        const char *name = name_of(reader->arena, row->name, n + 1);
        struct object *attachment =
            name == NULL ? NULL : add_named(reader, KIND_attachment, racking, name, node);
        if (attachment == NULL ||
            !append_object(reader, &racking->facts[SLOT_racking_attachments], attachment))
            return;
        hand_down(attachment, SLOT_attachment_model, row, SLOT_attachment_row_model);
        hand_down(attachment, SLOT_attachment_plane, row, SLOT_attachment_row_plane);
        hand_down(attachment, SLOT_attachment_rail, row, SLOT_attachment_row_rail);
        hand_down(attachment, SLOT_attachment_stands_on, row, SLOT_attachment_row_stands_on);
        place_attachment(attachment, row, racking, n);
    }
}

/* Rows have no node any more; what goes wrong with their things is told at the row's place. */
static struct node node_of(const struct object *row)
{
    return (struct node){.type = NODE_MAPPING, .place = row->place};
}

void expand_rows(struct design_reader *reader)
{
    struct design *design = reader->design;
    const struct objects *rows = &design->of_kind[KIND_module_row];
    const struct objects *feet = &design->of_kind[KIND_attachment_row];
    const struct object *vague = NULL;
    reader->module_rows =
        arena_take(reader->arena, (rows->count + 1) * sizeof *reader->module_rows);
    for (size_t i = 0; reader->module_rows != NULL && i < rows->count; i++) {
        struct node node = node_of(rows->items[i]);
        if (object_has(rows->items[i], SLOT_module_row_columns))
            expand_module_row(reader, rows->items[i], &node);
        else
            vague = rows->items[i];
    }
    settle_list(&design->root->facts[SLOT_design_modules],
                object_fact(design->root, SLOT_design_module_rows), vague, SLOT_module_row_columns);
    if (design->of_kind[KIND_racking].count == 0)
        return;
    struct object *racking = design->of_kind[KIND_racking].items[0];
    vague = NULL;
    for (size_t i = 0; i < feet->count; i++) {
        struct node node = node_of(feet->items[i]);
        if (object_has(feet->items[i], SLOT_attachment_row_count))
            expand_attachment_row(reader, feet->items[i], racking, &node);
        else
            vague = feet->items[i];
    }
    settle_list(&racking->facts[SLOT_racking_attachments],
                object_fact(racking, SLOT_racking_attachment_rows), vague,
                SLOT_attachment_row_count);
}
