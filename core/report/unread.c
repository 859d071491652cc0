#include "unread.h"

#include <stdlib.h>
#include <string.h>

/* Facts are told apart by where they are written: rows of equal modules share theirs. */
static int compare_places(const void *a, const void *b)
{
    const struct place *one = a, *other = b;
    int order = one->file == other->file ? 0 : strcmp(one->file, other->file);
    if (order == 0)
        order = one->line < other->line ? -1 : one->line > other->line;
    if (order == 0)
        order = one->column < other->column ? -1 : one->column > other->column;
    return order;
}

struct places {
    struct place *items;
    size_t count;
};

static bool collect_read(struct places *out, const struct findings *findings, struct arena *arena)
{
    out->count = 0;
    out->items = arena_take(arena, (findings->input_count + 1) * sizeof *out->items);
    if (out->items == NULL)
        return false;
    for (size_t i = 0; i < findings->input_count; i++)
        if (findings->inputs[i]->place.file != NULL)
            out->items[out->count++] = findings->inputs[i]->place;
    qsort(out->items, out->count, sizeof *out->items, compare_places);
    return true;
}

static bool is_read(const struct places *read, const struct fact *fact)
{
    return fact->place.file != NULL &&
           bsearch(&fact->place, read->items, read->count, sizeof *read->items, compare_places);
}

/* The equipment model that a thing is or stands in, or NULL. */
static const struct object *model_of(const struct object *object)
{
    while (object != NULL && object->kind->count != MODEL)
        object = object->parent;
    return object;
}

static bool refers_to(const struct object *from, const struct object *to)
{
    for (unsigned slot = 0; slot < from->kind->fact_count; slot++) {
        const struct fact *fact = &from->facts[slot];
        enum fact_type type = from->kind->facts[slot].type;
        if (fact->state != FACT_GIVEN)
            continue;
        if (type == TYPE_REFERENCE && fact->is.object == to)
            return true;
        for (size_t i = 0; type == TYPE_REFERENCES && i < fact->count; i++)
            if (fact->is.objects[i] == to)
                return true;
    }
    return false;
}

static bool is_used(const struct design *design, const struct object *object)
{
    const struct object *model = model_of(object);
    if (model == NULL)
        return true;
    for (size_t id = 0; id < KIND_COUNT; id++)
        for (size_t i = 0; i < design->of_kind[id].count; i++)
            if (refers_to(design->of_kind[id].items[i], model))
                return true;
    return false;
}

/* What the review itself reads. */
static bool is_read_by_review(const struct kind *kind, size_t slot)
{
    return (kind->id == KIND_design &&
            (slot == SLOT_design_title || slot == SLOT_design_catalogue)) ||
           (kind->id == KIND_project && slot == SLOT_project_permit_application_date);
}

/* A list or a thing inside this one is no fact by itself; what looks backwards is never written. */
static bool is_plain_fact(const struct fact_row *row)
{
    return row->type != TYPE_ONE && row->type != TYPE_LIST && row->type != TYPE_INVERSE;
}

static void count_object(struct unread *of_kind, const struct object *object,
                         const struct places *read)
{
    for (size_t slot = 0; slot < object->kind->fact_count; slot++) {
        const struct fact *fact = &object->facts[slot];
        if (fact->state != FACT_GIVEN || !is_plain_fact(&object->kind->facts[slot]) ||
            is_read_by_review(object->kind, slot))
            continue;
        of_kind[slot].given++;
        of_kind[slot].unread += !is_read(read, fact);
    }
}

bool unread_collect(struct unread **out, size_t *count, const struct report *report,
                    struct arena *arena)
{
    const struct design *design = report->design;
    struct places read;
    size_t all = 1;
    *count = 0;
    for (size_t id = 0; id < KIND_COUNT; id++)
        all += kind_at((enum kind_id)id)->fact_count;
    *out = arena_take(arena, all * sizeof **out);
    if (*out == NULL || !collect_read(&read, report->findings, arena))
        return false;
    for (size_t id = 0; id < KIND_COUNT; id++) {
        const struct kind *kind = kind_at((enum kind_id)id);
        struct unread *of_kind = arena_take(arena, (kind->fact_count + 1) * sizeof *of_kind);
        if (of_kind == NULL)
            return false;
        for (size_t i = 0; i < design->of_kind[id].count; i++)
            if (is_used(design, design->of_kind[id].items[i]))
                count_object(of_kind, design->of_kind[id].items[i], &read);
        for (size_t slot = 0; slot < kind->fact_count; slot++)
            if (of_kind[slot].unread > 0)
                (*out)[(*count)++] = (struct unread){kind, &kind->facts[slot], of_kind[slot].given,
                                                     of_kind[slot].unread};
    }
    return true;
}
