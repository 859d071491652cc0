/* What is settled once the whole design is read: assumptions, and the lists that look backwards. */
#include "design.h"

#include <assert.h>
#include <stdlib.h>

/* Only words, texts, counts, yes/no and references have an assumption in the table. */
static void assume(struct fact *fact, const struct fact_row *row, const struct absence *absence)
{
    fact->state = FACT_ASSUMED;
    fact->written = absence->means;
    if (row->type == TYPE_CHOICE)
        fact->is.word = vocabulary_find(row->vocabulary, absence->means);
    else if (row->type == TYPE_COUNT || row->type == TYPE_NUMBER)
        fact->is.number = strtod(absence->means, NULL);
    else if (row->type == TYPE_YESNO)
        fact->is.yes = absence->means[0] == 'y';
    else if (row->type == TYPE_TEXT)
        fact->is.word = absence->means;
    else {
        assert(row->type == TYPE_REFERENCE);
        fact->state = FACT_NONE;
    }
}

static void assume_absences(struct object *object)
{
    for (size_t slot = 0; slot < object->kind->fact_count; slot++) {
        const struct absence *absence = &object->kind->absences[slot];
        if (absence->means != NULL && object->facts[slot].state == FACT_MISSING)
            assume(&object->facts[slot], &object->kind->facts[slot], absence);
    }
}

static bool add_item(struct arena *arena, struct fact *fact, struct object *item)
{
    bool is_full = (fact->count & (fact->count - 1)) == 0; /* capacities are powers of two */
    if (is_full) {
        size_t capacity = fact->count == 0 ? 1 : 2 * fact->count;
        struct object **items = arena_take(arena, capacity * sizeof *items);
        if (items == NULL)
            return false;
        for (size_t i = 0; i < fact->count; i++)
            items[i] = fact->is.objects[i];
        fact->is.objects = items;
    }
    fact->is.objects[fact->count++] = item;
    return true;
}

/* Adds `from` to the INVERSE facts of `to` that look at this slot. */
static bool add_inverse(struct arena *arena, struct object *to, struct object *from, unsigned via)
{
    for (size_t slot = 0; slot < to->kind->fact_count; slot++) {
        const struct fact_row *row = &to->kind->facts[slot];
        if (row->type == TYPE_INVERSE && row->kind == from->kind->id && row->via == via &&
            !add_item(arena, &to->facts[slot], from))
            return false;
    }
    return true;
}

static bool add_inverses_of(struct arena *arena, struct object *from)
{
    for (unsigned slot = 0; slot < from->kind->fact_count; slot++) {
        const struct fact_row *row = &from->kind->facts[slot];
        const struct fact *fact = &from->facts[slot];
        if (fact->state != FACT_GIVEN)
            continue;
        if (row->type == TYPE_REFERENCE && !add_inverse(arena, fact->is.object, from, slot))
            return false;
        for (size_t i = 0; row->type == TYPE_REFERENCES && i < fact->count; i++)
            if (!add_inverse(arena, fact->is.objects[i], from, slot))
                return false;
    }
    return true;
}

static void note_missing_holders(struct design *design, const struct object *object)
{
    for (unsigned slot = 0; slot < object->kind->fact_count; slot++) {
        const struct fact_row *row = &object->kind->facts[slot];
        if ((row->type != TYPE_LIST && row->type != TYPE_ONE) ||
            object->facts[slot].state != FACT_MISSING)
            continue;
        design->untold[row->kind].object = object;
        design->untold[row->kind].slot = slot;
    }
}

/* Where a holder may be untold, so may what it holds. */
static bool hand_down_untold(struct design *design, const struct kind *holder)
{
    bool is_changed = false;
    for (size_t slot = 0; slot < holder->fact_count; slot++) {
        const struct fact_row *row = &holder->facts[slot];
        if ((row->type != TYPE_LIST && row->type != TYPE_ONE) ||
            design->untold[holder->id].object == NULL || design->untold[row->kind].object != NULL)
            continue;
        design->untold[row->kind] = design->untold[holder->id];
        is_changed = true;
    }
    return is_changed;
}

static void find_untold(struct design *design)
{
    for (size_t id = 0; id < KIND_COUNT; id++)
        for (size_t i = 0; i < design->of_kind[id].count; i++)
            note_missing_holders(design, design->of_kind[id].items[i]);
    for (bool is_changed = true; is_changed;) {
        is_changed = false;
        for (size_t id = 0; id < KIND_COUNT; id++)
            is_changed = hand_down_untold(design, kind_at((enum kind_id)id)) || is_changed;
    }
}

/* A thing of the kind whose reference is missing: it may refer to anything. */
static bool find_missing_reference(const struct design *design, enum kind_id kind, unsigned via,
                                   struct fact *unsure)
{
    const struct objects *all = &design->of_kind[kind];
    for (size_t i = 0; i < all->count; i++)
        if (all->items[i]->facts[via].state == FACT_MISSING) {
            unsure->is.unsure.object = all->items[i];
            unsure->is.unsure.slot = via;
            return true;
        }
    return false;
}

/* Settles one INVERSE row for all things of its kind. */
static void settle_inverse(struct design *design, enum kind_id id, unsigned slot)
{
    const struct fact_row *row = &kind_at(id)->facts[slot];
    const struct objects *all = &design->of_kind[id];
    struct fact unsure = {.state = FACT_MISSING};
    unsure.is.unsure.object = design->untold[row->kind].object;
    unsure.is.unsure.slot = design->untold[row->kind].slot;
    bool is_unsure = unsure.is.unsure.object != NULL ||
                     find_missing_reference(design, row->kind, row->via, &unsure);
    for (size_t i = 0; i < all->count; i++) {
        struct fact *fact = &all->items[i]->facts[slot];
        if (is_unsure) {
            fact->state = FACT_MISSING;
            fact->count = 0;
            fact->is = unsure.is;
        } else
            fact->state = fact->count > 0 ? FACT_GIVEN : FACT_NONE;
    }
}

bool design_link(struct design *design)
{
    for (size_t id = 0; id < KIND_COUNT; id++)
        for (size_t i = 0; i < design->of_kind[id].count; i++)
            assume_absences(design->of_kind[id].items[i]);
    for (size_t id = 0; id < KIND_COUNT; id++)
        for (size_t i = 0; i < design->of_kind[id].count; i++)
            if (!add_inverses_of(design->arena, design->of_kind[id].items[i]))
                return false;
    find_untold(design);
    for (size_t id = 0; id < KIND_COUNT; id++)
        for (unsigned slot = 0; slot < kind_at((enum kind_id)id)->fact_count; slot++)
            if (kind_at((enum kind_id)id)->facts[slot].type == TYPE_INVERSE &&
                design->of_kind[id].count > 0)
                settle_inverse(design, (enum kind_id)id, slot);
    return true;
}
