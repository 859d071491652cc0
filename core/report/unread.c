#include "unread.h"

#include <string.h>

/* The places of facts that were read. Facts are told apart by where they are written: rows of equal
 * modules share theirs. A set by hash whose capacity is a power of two and never full. */
struct places {
    const struct place **items;
    size_t capacity;
};

static bool is_same_place(const struct place *a, const struct place *b)
{
    return a->line == b->line && a->column == b->column &&
           (a->file == b->file || strcmp(a->file, b->file) == 0);
}

/* The place in the set, or the free one where it belongs. */
static const struct place **place_in(const struct places *set, const struct place *place)
{
    size_t at = (place->line * (size_t)2654435761 + place->column * (size_t)40503) >> 8;
    for (at &= set->capacity - 1; set->items[at] != NULL; at = (at + 1) & (set->capacity - 1))
        if (is_same_place(set->items[at], place))
            break;
    return &set->items[at];
}

static bool collect_read(struct places *out, const struct findings *findings, struct arena *arena)
{
    out->capacity = 16;
    while (out->capacity < 2 * findings->input_count)
        out->capacity *= 2;
    out->items = arena_take(arena, out->capacity * sizeof(struct place *));
    for (size_t i = 0; out->items != NULL && i < findings->input_count; i++) {
        const struct place *place = &findings->inputs[i]->place;
        if (place->file != NULL)
            *place_in(out, place) = place;
    }
    return out->items != NULL;
}

static bool is_read(const struct places *read, const struct fact *fact)
{
    return fact->place.file != NULL && *place_in(read, &fact->place) != NULL;
}

/* The equipment model that a thing is or stands in, or NULL. */
static const struct object *model_of(const struct object *object)
{
    while (object != NULL && object->kind->count != MODEL)
        object = object->parent;
    return object;
}

/* What one fact of all things of a kind refers to. */
static void mark_referred(bool *used, const struct objects *things, size_t slot,
                          enum fact_type type)
{
    for (size_t i = 0; i < things->count; i++) {
        const struct fact *fact = &things->items[i]->facts[slot];
        if (fact->state == FACT_GIVEN && type == TYPE_REFERENCE)
            used[fact->is.object->number] = true;
        for (size_t k = 0; fact->state == FACT_GIVEN && type == TYPE_REFERENCES && k < fact->count;
             k++)
            used[fact->is.objects[k]->number] = true;
    }
}

/* Equipment that something of the design refers to, by the number of the thing. */
static bool *collect_used(const struct design *design, struct arena *arena)
{
    bool *used = arena_take(arena, design->thing_count + 1);
    for (size_t id = 0; used != NULL && id < KIND_COUNT; id++) {
        const struct kind *kind = kind_at((enum kind_id)id);
        for (size_t slot = 0; design->of_kind[id].count > 0 && slot < kind->fact_count; slot++)
            if (kind->facts[slot].type == TYPE_REFERENCE ||
                kind->facts[slot].type == TYPE_REFERENCES)
                mark_referred(used, &design->of_kind[id], slot, kind->facts[slot].type);
    }
    return used;
}

static bool is_used(const bool *used, const struct object *object)
{
    const struct object *model = model_of(object);
    return model == NULL || used[model->number];
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

static bool add_unread(struct unread **out, size_t *count, size_t *capacity, struct unread unread,
                       struct arena *arena)
{
    struct unread *grown = arena_grow(arena, *out, *count, capacity, sizeof *grown);
    if (grown == NULL)
        return false;
    *out = grown;
    grown[(*count)++] = unread;
    return true;
}

bool unread_collect(struct unread **out, size_t *count, const struct report *report,
                    struct arena *arena)
{
    const struct design *design = report->design;
    struct places read;
    size_t most = 1, capacity = 0;
    *count = 0;
    *out = NULL;
    for (size_t id = 0; id < KIND_COUNT; id++)
        if (kind_at((enum kind_id)id)->fact_count > most)
            most = kind_at((enum kind_id)id)->fact_count;
    struct unread *of_kind = arena_take(arena, most * sizeof *of_kind);
    const bool *used = collect_used(design, arena);
    if (of_kind == NULL || used == NULL || !collect_read(&read, report->findings, arena))
        return false;
    for (size_t id = 0; id < KIND_COUNT; id++) {
        const struct kind *kind = kind_at((enum kind_id)id);
        if (design->of_kind[id].count == 0)
            continue;
        memset(of_kind, 0, kind->fact_count * sizeof *of_kind);
        for (size_t i = 0; i < design->of_kind[id].count; i++)
            if (is_used(used, design->of_kind[id].items[i]))
                count_object(of_kind, design->of_kind[id].items[i], &read);
        for (size_t slot = 0; slot < kind->fact_count; slot++)
            if (of_kind[slot].unread > 0 &&
                !add_unread(out, count, &capacity,
                            (struct unread){kind, &kind->facts[slot], of_kind[slot].given,
                                            of_kind[slot].unread},
                            arena))
                return false;
    }
    return true;
}
