/* References by name: resolved once everything is read. */
#include "design_reader.h"

#include <stdio.h>
#include <string.h>

#include "text.h"

/* Do catalogues hold such things? */
static bool are_models(kind_set kinds)
{
    for (size_t id = 0; id < KIND_COUNT; id++)
        if ((kinds >> id & 1) && kind_at((enum kind_id)id)->count == MODEL)
            return true;
    return false;
}

/* Names of all things of some kinds, for a message. */
static void complain_of_name(const struct design_reader *reader, const struct pending *pending,
                             kind_set kinds, const struct node *node)
{
    const struct design *design = reader->design;
    const char *known[64];
    char what[200];
    size_t count = 0;
    if (reader->lacks_catalogue && are_models(kinds))
        return; /* it may stand in the one that was not found, which was told */
    kinds_write(what, sizeof what, kinds);
    for (size_t id = 0; id < KIND_COUNT; id++)
        for (size_t i = 0; (kinds >> id & 1) && i < design->of_kind[id].count && count < 64; i++)
            known[count++] = design->of_kind[id].items[i]->name;
    if (count == 0 && are_models(kinds))
        complain(pending->complaints, node, "unknown-name", "catalogue: [modules, inverters]",
                 "there is no %s '%.80s'; name the catalogue file that holds it", what, node->text);
    else
        complain_unknown(pending->complaints, node, "unknown-name", what, known, count);
}

/* The thing that a name names, or NULL after a complaint. */
static struct object *find_named(struct design_reader *reader, const struct pending *pending,
                                 const struct node *node)
{
    const struct fact_row *row = object_row(pending->object, pending->slot);
    if (!expect_value(reader, pending->complaints, node, NODE_SCALAR, row))
        return NULL;
    for (size_t id = 0; id < KIND_COUNT; id++) {
        struct object *object =
            row->kinds >> id & 1 ? index_find(&reader->names[id], node->text) : NULL;
        if (object != NULL)
            return object;
    }
    bool is_ambiguous;
    struct object *object = design_find(reader->design, row->kinds, node->text, &is_ambiguous);
    if (is_ambiguous)
        complain(pending->complaints, node, "ambiguous-name", NULL,
                 "several things are called '%.80s'; write what it stands in before it, as in "
                 "main/%.80s",
                 node->text, node->text);
    else if (object == NULL)
        complain_of_name(reader, pending, row->kinds, node);
    return object;
}

/* Adds a thing that is referred to; the name of a row stands for all its modules. False: the row
 * does not say how many it has. */
static bool add_referred(struct design_reader *reader, struct fact *fact, struct object *object)
{
    if (object->kind->id != KIND_module_row)
        return append_object(reader, fact, object);
    const struct expansion *expansion = &reader->module_rows[object->ordinal];
    const struct objects *modules = &reader->design->of_kind[KIND_module];
    for (size_t i = 0; i < expansion->count; i++)
        append_object(reader, fact, modules->items[expansion->first + i]);
    return expansion->is_known;
}

static void resolve_list(struct design_reader *reader, const struct pending *pending,
                         const struct node *node)
{
    struct fact *fact = &pending->object->facts[pending->slot];
    bool is_known = true;
    size_t count = node->type == NODE_SEQUENCE ? node->length : 1;
    for (size_t i = 0; i < count; i++) {
        const struct node *item = node->type == NODE_SEQUENCE ? node->items[i] : node;
        struct object *object = find_named(reader, pending, item);
        if (object != NULL)
            is_known = add_referred(reader, fact, object) && is_known;
    }
    fact->state = is_known ? FACT_GIVEN : FACT_MISSING;
    if (!is_known)
        fact->count = 0;
}

static void resolve(struct design_reader *reader, const struct pending *pending)
{
    const struct fact_row *row = object_row(pending->object, pending->slot);
    struct fact *fact = &pending->object->facts[pending->slot];
    if (row->type == TYPE_REFERENCES) {
        resolve_list(reader, pending, pending->node);
        return;
    }
    fact->is.object = find_named(reader, pending, pending->node);
    fact->state = fact->is.object != NULL ? FACT_GIVEN : FACT_MISSING;
}

void resolve_references(struct design_reader *reader, bool of_rows)
{
    if (arena_is_short(reader->arena))
        return; /* rows may not be there; the design is given up */
    for (size_t i = 0; i < reader->pending_count; i++) {
        const struct pending *pending = &reader->pending[i];
        enum kind_id kind = pending->object->kind->id;
        if ((kind == KIND_module_row || kind == KIND_attachment_row) == of_rows)
            resolve(reader, pending);
    }
}
