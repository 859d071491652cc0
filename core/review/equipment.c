#include "equipment.h"

#include <stdlib.h>
#include <string.h>

#include "text.h"

/* The things that the design comes to, each once, in the order in which they were met: as many may
 * hang on each other in a row as a file can hold, so they are followed one by one, not by calls
 * within calls. */
struct used {
    const char *own_file; /* what stands there is signed with the file itself */
    bool *is_seen;        /* by number of the thing */
    const struct object **things, **models;
    size_t thing_count, count;
};

static void note(struct used *used, const struct object *object)
{
    if (!used->is_seen[object->number])
        used->things[used->thing_count++] = object;
    used->is_seen[object->number] = true;
}

/* Notes what the thing refers to and holds. */
static void follow(struct used *used, const struct object *object)
{
    for (unsigned slot = 0; slot < object->kind->fact_count; slot++) {
        const struct fact *fact = object_fact(object, slot);
        enum fact_type type = object_row(object, slot)->type;
        /* A list of models holds all that stand in catalogues, used or not. */
        bool is_shelf = type == TYPE_LIST && object->kind->count == ROOT &&
                        kind_at(object_row(object, slot)->kind)->count == MODEL;
        if (fact->state != FACT_GIVEN || is_shelf)
            continue;
        if (type == TYPE_ONE || type == TYPE_REFERENCE)
            note(used, fact->is.object);
        for (size_t i = 0; (type == TYPE_LIST || type == TYPE_REFERENCES) && i < fact->count; i++)
            note(used, fact->is.objects[i]);
    }
}

/* Notes all models of other files that the design comes to. */
static void find_models(struct used *used, const struct object *root)
{
    note(used, root);
    for (size_t i = 0; i < used->thing_count; i++) {
        const struct object *object = used->things[i];
        if (object->kind->count == MODEL && object->place.file != NULL &&
            strcmp(object->place.file, used->own_file) != 0)
            used->models[used->count++] = object;
        follow(used, object);
    }
}

/* Each text with its length before it, so that no two lists of texts run together as one. */
static void add(struct text *text, const char *word)
{
    text_add_format(text, "%zu:", strlen(word));
    text_add_word(text, word);
}

static void add_object(struct text *text, const struct object *object);

static void add_points(struct text *text, const struct point *points, size_t count)
{
    for (size_t i = 0; i < count; i++)
        text_add_format(text, "%.12g,%.12g;", points[i].x, points[i].y);
}

static void add_value(struct text *text, const struct fact *fact, enum fact_type type)
{
    if (fact->state == FACT_NONE)
        text_add_word(text, "none");
    else if (fact->written != NULL)
        add(text, fact->written);
    else if (type == TYPE_ONE)
        add_object(text, fact->is.object);
    else if (type == TYPE_REFERENCE)
        add(text, fact->is.object->path);
    else if (type == TYPE_POINT)
        add_points(text, &fact->is.point, 1);
    else if (type == TYPE_POINTS)
        add_points(text, fact->is.points, fact->count);
    else
        for (size_t i = 0; i < fact->count; i++)
            if (type == TYPE_LIST)
                add_object(text, fact->is.objects[i]);
            else if (type == TYPE_REFERENCES)
                add(text, fact->is.objects[i]->path);
            else
                add(text, fact->is.words[i]);
}

static void add_object(struct text *text, const struct object *object)
{
    add(text, object->kind->name);
    add(text, object->path);
    for (unsigned slot = 0; slot < object->kind->fact_count; slot++) {
        const struct fact *fact = object_fact(object, slot);
        const struct fact_row *row = object_row(object, slot);
        bool is_told = fact->state == FACT_GIVEN || fact->state == FACT_NONE;
        if (!is_told || row->type == TYPE_INVERSE)
            continue;
        add(text, row->name);
        add_value(text, fact, row->type);
        add(text, fact->source != NULL ? fact->source : "");
    }
    text_add(text, "\n", 1);
}

static int compare_models(const void *left, const void *right)
{
    const struct object *a = *(const struct object *const *)left;
    const struct object *b = *(const struct object *const *)right;
    if (a->kind->id != b->kind->id)
        return a->kind->id < b->kind->id ? -1 : 1;
    return strcmp(a->path, b->path);
}

bool equipment_digest(char digest[DIGEST_TEXT_SIZE], const struct design *design,
                      struct arena *arena)
{
    struct text text = {0};
    struct used used = {.own_file = design->path,
                        .is_seen = arena_take(arena, design->thing_count * sizeof(bool)),
                        .things = arena_take(arena, design->thing_count * sizeof(struct object *)),
                        .models = arena_take(arena, design->thing_count * sizeof(struct object *))};
    digest[0] = '\0';
    if (used.is_seen == NULL || used.things == NULL || used.models == NULL)
        return false;
    find_models(&used, design->root);
    if (used.count == 0)
        return true;
    qsort(used.models, used.count, sizeof *used.models, compare_models);
    for (size_t i = 0; i < used.count; i++)
        add_object(&text, used.models[i]);
    bool is_whole = !text.is_short;
    if (is_whole)
        digest_write(digest, text.bytes, text.length);
    text_free(&text);
    return is_whole;
}
