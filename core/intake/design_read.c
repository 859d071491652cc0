#include "intake.h"

#include <stdio.h>
#include <string.h>

#include "design_reader.h"
#include "file.h"
#include "kept_sources.h"
#include "text.h"

bool append_object(struct design_reader *reader, struct fact *list, struct object *object)
{
    size_t capacity = list->count; /* arrays of LIST facts are full at powers of two */
    if (list->count != 0 && (list->count & (list->count - 1)) != 0)
        capacity = list->count + 1;
    struct object **items = arena_grow(reader->arena, list->is.objects, list->count, &capacity,
                                       sizeof(struct object *));
    if (items == NULL)
        return false;
    list->is.objects = items;
    items[list->count++] = object;
    return true;
}

static bool is_name_right(const char *name)
{
    for (const char *at = name; *at != '\0'; at++)
        if ((unsigned char)*at < 0x20 || *at == 0x7F)
            return false;
    return name[0] != '\0' && strchr(name, '/') == NULL && strchr(name, '|') == NULL &&
           strlen(name) <= 80;
}

struct object *add_named(struct design_reader *reader, enum kind_id kind, struct object *parent,
                         const char *name, const struct node *node)
{
    struct object *object = design_add(reader->design, kind, parent, name, node->place);
    if (object == NULL)
        return NULL;
    const struct object *first = index_find(&reader->names[kind], object->path);
    if (first != NULL) {
        complain_both(reader->complaints, node, first->place, "name-twice",
                      "there is a %s '%s' already; names tell things apart", object->kind->name,
                      object->path);
        return NULL;
    }
    return index_add(&reader->names[kind], object->path, object) ? object : NULL;
}

const char *example_of(struct design_reader *reader, const struct fact_row *row)
{
    char example[200];
    fact_write_example(example, sizeof example, row);
    return arena_copy(reader->arena, example, strlen(example));
}

bool expect_value(struct design_reader *reader, struct complaints *complaints,
                  const struct node *node, enum node_type type, const struct fact_row *row)
{
    return node->type == type || expect_node(complaints, node, type, example_of(reader, row));
}

/* Reads one thing of a list: a mapping with a name. */
static void read_item(struct design_reader *reader, struct object *parent, unsigned slot,
                      const struct node *node)
{
    const struct fact_row *row = object_row(parent, slot);
    if (!expect_value(reader, reader->complaints, node, NODE_MAPPING, row))
        return;
    const struct node *name = node_find(node, "name");
    if (name == NULL || name->type != NODE_SCALAR || name->length == 0) {
        complain(reader->complaints, name != NULL ? name : node, "name", example_of(reader, row),
                 "each %s needs a name of its own", kind_at(row->kind)->name);
        return;
    }
    if (!is_name_right(name->text)) {
        complain(
            reader->complaints, name, "name", example_of(reader, row),
            "a name is on one line, has at most 80 letters (one with an accent counts as two or "
            "more) and no '/' or '|', unlike '%.80s'",
            name->text);
        return;
    }
    struct object *object = add_named(reader, row->kind, parent, name->text, node);
    if (object != NULL && append_object(reader, &parent->facts[slot], object))
        read_object(reader, object, node);
}

void read_list(struct design_reader *reader, struct object *object, unsigned slot,
               const struct node *node)
{
    struct fact *fact = &object->facts[slot];
    if (fact->count == 0)
        fact->place = node->place;
    if (node_is_blank(node))
        return;
    if (node_is_none(node)) {
        if (fact->state == FACT_MISSING)
            fact->state = FACT_NONE;
        return;
    }
    if (node->type != NODE_SEQUENCE) {
        complain(reader->complaints, node, "node-type",
                 example_of(reader, object_row(object, slot)),
                 "a list is needed here, not %s; an empty one says none, an unknown one is left "
                 "blank",
                 node->type == NODE_SCALAR ? "a single value" : "a block of keys");
        return;
    }
    fact->state = FACT_GIVEN;
    for (size_t i = 0; i < node->length; i++)
        read_item(reader, object, slot, node->items[i]);
}

static void read_one(struct design_reader *reader, struct object *object, unsigned slot,
                     const struct node *node)
{
    struct fact *fact = &object->facts[slot];
    const struct fact_row *row = object_row(object, slot);
    fact->place = node->place;
    if (node_is_blank(node))
        return;
    if (node_is_none(node)) {
        fact->state = FACT_NONE;
        return;
    }
    if (!expect_value(reader, reader->complaints, node, NODE_MAPPING, row))
        return;
    struct object *child = design_add(reader->design, row->kind, object, NULL, node->place);
    if (child == NULL)
        return;
    fact->state = FACT_GIVEN;
    fact->is.object = child;
    read_object(reader, child, node);
}

/* All names that may stand as a key in this kind, for a suggestion. */
static void complain_of_key(struct design_reader *reader, const struct object *object,
                            const struct node *key)
{
    const char *known[64];
    char what[80];
    size_t count = 0;
    if (object->kind->count == NAMED || object->kind->count == MODEL)
        known[count++] = "name";
    for (size_t i = 0; i < object->kind->fact_count && count < 64; i++)
        if (object->kind->facts[i].type != TYPE_INVERSE)
            known[count++] = object->kind->facts[i].name;
    snprintf(what, sizeof what, "fact of %s called", object->kind->name);
    complain_unknown(reader->complaints, key, "unknown-key", what, known, count);
}

void read_object(struct design_reader *reader, struct object *object, const struct node *node)
{
    bool has_name = object->kind->count == NAMED || object->kind->count == MODEL;
    size_t first = 0;
    for (size_t i = 0; i < node->length; i++) {
        const struct node *key = node->items[2 * i], *value = node->items[2 * i + 1];
        if (has_name && strcmp(key->text, "name") == 0)
            continue;
        int slot = kind_find_fact_from(object->kind, first, key->text);
        first = slot < 0 ? first : (size_t)slot + 1;
        if (slot < 0)
            complain_of_key(reader, object, key);
        else if (object_row(object, (unsigned)slot)->type == TYPE_ONE)
            read_one(reader, object, (unsigned)slot, value);
        else if (object_row(object, (unsigned)slot)->type == TYPE_LIST)
            read_list(reader, object, (unsigned)slot, value);
        else
            read_fact(reader, object, (unsigned)slot, value);
    }
}

/* Opens a file as a mapping and sets the complaints to it; `kept`: where it may lie already, or
 * NULL. NULL: problems say why. */
static const struct node *open_file(struct design_reader *reader, const char *path,
                                    struct kept_sources *kept, const char *example)
{
    struct source *source = NULL;
    bool is_read = kept != NULL && reader->is_edited == NULL /* edits change the tree */
                       ? yaml_read_kept(&source, kept, path, reader->arena, reader->problems)
                       : yaml_read_file(&source, path, reader->arena, reader->problems);
    if (source == NULL)
        return NULL;
    struct complaints *complaints = arena_take(reader->arena, sizeof *complaints);
    if (complaints == NULL)
        return NULL;
    *complaints = (struct complaints){.source = source, .problems = reader->problems};
    complaints->also = reader->edits != NULL ? reader->edits->source : NULL;
    reader->complaints = complaints;
    if (strcmp(path, reader->design->path) == 0) {
        reader->design->text = source->bytes;
        reader->design->text_length = source->length;
    }
    if (reader->is_edited != NULL && source->root != NULL)
        design_edits_apply(reader->edits, reader->is_edited, source->root,
                           strcmp(path, reader->design->path) != 0, reader->arena);
    if (source->root == NULL) {
        if (is_read)
            complain(complaints, NULL, "empty", example, "the file says nothing");
        return NULL;
    }
    return expect_node(complaints, source->root, NODE_MAPPING, example) ? source->root : NULL;
}

/* The path of a catalogue file, or NULL where there is none. */
static const char *find_catalogue(struct design_reader *reader, const char *name,
                                  const struct catalogues *catalogues)
{
    const char *file = ARENA_JOIN(reader->arena, name, ".yaml");
    const char *path = file ? path_beside(reader->arena, reader->design->path, file) : NULL;
    if (path != NULL && file_is_there(path))
        return path;
    for (size_t i = 0; file && catalogues && catalogues->directories[i] != NULL; i++) {
        path = path_join(reader->arena, catalogues->directories[i], file);
        if (path != NULL && file_is_there(path))
            return path;
    }
    return NULL;
}

/* What else than lists of models stands in a catalogue. */
static void complain_of_list(struct design_reader *reader, const struct node *key)
{
    const struct kind *root = kind_at(KIND_design);
    const char *known[KIND_COUNT];
    size_t count = 0;
    for (size_t i = 0; i < root->fact_count; i++)
        if (root->facts[i].type == TYPE_LIST && kind_at(root->facts[i].kind)->count == MODEL)
            known[count++] = root->facts[i].name;
    complain_unknown(reader->complaints, key, "catalogue-key", "list of models called", known,
                     count);
}

/* Names those that the catalogue folders hold: in the design's own any file might be one. */
static void complain_of_catalogue(struct design_reader *reader, const struct node *item,
                                  const struct catalogues *catalogues)
{
    const char *known[32], *ending = strrchr(item->text, '.');
    size_t count = 0;
    if (ending != NULL && strcmp(ending, ".yaml") == 0) {
        complain(reader->complaints, item, "catalogue-name",
                 arena_format(reader->arena, "catalogue: [%.*s]", (int)(ending - item->text),
                              item->text),
                 "a catalogue is named without folder or ending");
        return;
    }
    for (size_t i = 0; catalogues && catalogues->directories[i] != NULL; i++) {
        char **names;
        size_t found;
        file_list(&names, &found, catalogues->directories[i], ".yaml", reader->arena);
        for (size_t k = 0; k < found && count < 32; k++) {
            names[k][strlen(names[k]) - strlen(".yaml")] = '\0';
            known[count++] = names[k];
        }
    }
    complain_unknown(reader->complaints, item, "catalogue-missing",
                     "catalogue beside the design or in the catalogue folders called", known,
                     count);
}

static void read_catalogue(struct design_reader *reader, const struct node *item,
                           const struct catalogues *catalogues)
{
    struct complaints *designs = reader->complaints;
    struct object *root = reader->design->root;
    if (item->type != NODE_SCALAR || !is_name_right(item->text) || item->text[0] == '.') {
        complain(designs, item, "catalogue-name", "catalogue: [modules, inverters]",
                 "a catalogue is named without folder or ending");
        return;
    }
    const char *path = find_catalogue(reader, item->text, catalogues);
    if (path == NULL) {
        reader->lacks_catalogue = true;
        complain_of_catalogue(reader, item, catalogues);
        return;
    }
    const struct node *node = open_file(reader, path, catalogues != NULL ? catalogues->kept : NULL,
                                        "module_models: [{name: Q-440, rated_power: 440 W}]");
    for (size_t i = 0; node != NULL && i < node->length; i++) {
        const struct node *key = node->items[2 * i];
        int slot = kind_find_fact(root->kind, key->text);
        const struct fact_row *row = slot < 0 ? NULL : &root->kind->facts[slot];
        if (row != NULL && row->type == TYPE_LIST && kind_at(row->kind)->count == MODEL)
            read_list(reader, root, (unsigned)slot, node->items[2 * i + 1]);
        else
            complain_of_list(reader, key);
    }
    reader->complaints = designs;
}

static void read_catalogues(struct design_reader *reader, const struct node *node,
                            const struct catalogues *catalogues)
{
    const struct node *names = node_find(node, "catalogue");
    if (names == NULL || names->type != NODE_SEQUENCE)
        return;
    for (size_t i = 0; i < names->length; i++)
        read_catalogue(reader, names->items[i], catalogues);
}

bool design_read(struct design **out, const char *path, const struct catalogues *catalogues,
                 struct arena *arena, struct problems *problems)
{
    return design_read_edited(out, path, catalogues, NULL, arena, problems);
}

bool design_read_edited(struct design **out, const char *path, const struct catalogues *catalogues,
                        const struct design_edits *edits, struct arena *arena,
                        struct problems *problems)
{
    size_t before = problems->count;
    struct design_reader reader = {.arena = arena, .problems = problems};
    *out = NULL;
    for (size_t i = 0; i < KIND_COUNT; i++)
        reader.names[i].arena = arena;
    reader.design = design_new(arena, path);
    if (edits != NULL && edits->count > 0) {
        reader.edits = edits;
        reader.is_edited = arena_take(arena, edits->count * sizeof *reader.is_edited);
    }
    const struct node *node =
        reader.design == NULL ? NULL : open_file(&reader, path, NULL, "title: Quill Hollow house");
    if (node != NULL) {
        read_object(&reader, reader.design->root, node);
        read_catalogues(&reader, node, catalogues);
        resolve_references(&reader, true);
        expand_rows(&reader);
        resolve_references(&reader, false);
        if (reader.is_edited != NULL)
            design_edits_complain(edits, reader.is_edited, &reader);
    }
    if (arena_is_short(arena) || (node != NULL && !design_link(reader.design))) {
        problems_add(problems, PROBLEM_MEMORY, "memory", (struct place){path, 0, 0},
                     "there was not enough memory to read the design");
        return false;
    }
    if (node == NULL || problems->count > before || problems->dropped > 0)
        return false;
    *out = reader.design;
    return true;
}
