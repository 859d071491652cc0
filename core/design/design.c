#include "design.h"

#include <assert.h>
#include <string.h>

#include "unit.h"

struct design *design_new(struct arena *arena, const char *path)
{
    struct design *design = arena_take(arena, sizeof *design);
    if (design == NULL)
        return NULL;
    design->arena = arena;
    design->path = path;
    design->root = design_add(design, KIND_design, NULL, NULL, (struct place){path, 1, 1});
    return design->root != NULL ? design : NULL;
}

/* A named thing inside a named thing carries both names. */
static const char *path_of(struct arena *arena, const struct object *parent, const char *name)
{
    while (parent != NULL && parent->kind->count != NAMED && parent->kind->count != MODEL)
        parent = parent->parent;
    return parent == NULL ? name : ARENA_JOIN(arena, parent->path, "/", name);
}

struct object *design_add(struct design *design, enum kind_id id, struct object *parent,
                          const char *name, struct place place)
{
    const struct kind *kind = kind_at(id);
    struct object *object =
        arena_take(design->arena, sizeof *object + kind->fact_count * sizeof(struct fact));
    struct objects *all = &design->of_kind[id];
    struct object **items =
        arena_grow(design->arena, all->items, all->count, &all->capacity, sizeof(struct object *));
    if (object == NULL || items == NULL)
        return NULL;
    object->kind = kind;
    object->parent = parent;
    object->name = name != NULL ? name : kind->name;
    object->path =
        path_of(design->arena, name != NULL || kind->count == ONLY ? parent : NULL, object->name);
    if (object->path == NULL)
        return NULL;
    object->place = place;
    object->ordinal = all->count;
    object->number = design->thing_count++;
    object->first_fact = design->fact_count;
    design->fact_count += kind->fact_count;
    for (size_t slot = 0; slot < kind->fact_count; slot++)
        object->facts[slot].place = place;
    all->items = items;
    items[all->count++] = object;
    return object;
}

struct object *design_find(const struct design *design, kind_set kinds, const char *name,
                           bool *is_ambiguous)
{
    struct object *found = NULL;
    *is_ambiguous = false;
    for (size_t id = 0; id < KIND_COUNT; id++) {
        const struct objects *all = &design->of_kind[id];
        for (size_t i = 0; (kinds >> id & 1) && i < all->count; i++) {
            struct object *object = all->items[i];
            if (strcmp(object->path, name) == 0)
                return object;
            if (strcmp(object->name, name) != 0)
                continue;
            *is_ambiguous = found != NULL;
            found = object;
            if (*is_ambiguous)
                return NULL;
        }
    }
    return found;
}

bool object_has(const struct object *object, unsigned slot)
{
    enum fact_state state = object_fact(object, slot)->state;
    return state == FACT_GIVEN || state == FACT_ASSUMED;
}

struct quantity object_quantity(const struct object *object, unsigned slot)
{
    const struct fact_row *row = object_row(object, slot);
    const struct fact *fact = object_fact(object, slot);
    assert(row->type == TYPE_QUANTITY && object_has(object, slot));
    return (struct quantity){fact->is.number, measure_dimension(row->measure), fact->unit,
                             fact->written};
}

struct amount object_amount(const struct object *object, unsigned slot)
{
    const struct fact *fact = object_fact(object, slot);
    struct amount nothing = {.type = AMOUNT_NONE};
    if (!object_has(object, slot))
        return nothing;
    switch (object_row(object, slot)->type) {
    case TYPE_QUANTITY:
        return amount_of_quantity(object_quantity(object, slot));
    case TYPE_NUMBER:
    case TYPE_COUNT:
        return amount_of_number(fact->is.number);
    case TYPE_CHOICE:
    case TYPE_TEXT:
        return amount_of_word(fact->is.word);
    case TYPE_YESNO:
        return amount_of_yesno(fact->is.yes);
    case TYPE_DATE:
        return amount_of_date(fact->is.date);
    default:
        return nothing;
    }
}

bool object_is(const struct object *object, unsigned slot, const char *word)
{
    const struct fact *fact = object_fact(object, slot);
    if (!object_has(object, slot))
        return false;
    if (object_row(object, slot)->type == TYPE_CHOICE)
        return strcmp(fact->is.word, word) == 0;
    for (size_t i = 0; i < fact->count; i++)
        if (strcmp(fact->is.words[i], word) == 0)
            return true;
    return false;
}
