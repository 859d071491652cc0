#include "design_edits.h"

#include <stdio.h>
#include <string.h>

#include "design_reader.h"

/* One walk through a tree. */
struct walk {
    const struct design_edits *edits;
    bool *is_done;
    struct arena *arena;
    bool is_catalogue;
};

bool design_edit_name(struct design_edit *edit, const char *text, struct arena *arena)
{
    size_t length = strcspn(text, " ");
    const char *kind = arena_copy(arena, text, length);
    edit->name = text[length] == ' ' ? text + length + 1 : "";
    edit->kind = kind != NULL ? kind_find(kind) : KIND_NONE;
    return edit->kind != KIND_NONE;
}

/* The tree of the case must stay as it is, whatever is changed in that of the design. */
static struct node *copy_node(struct arena *arena, const struct node *node)
{
    struct node *copy = arena_take(arena, sizeof *copy);
    if (copy == NULL)
        return NULL;
    *copy = *node;
    size_t count = node->type == NODE_MAPPING    ? 2 * node->length
                   : node->type == NODE_SEQUENCE ? node->length
                                                 : 0;
    copy->items = arena_take(arena, (count + 1) * sizeof *copy->items);
    for (size_t i = 0; copy->items != NULL && i < count; i++)
        if ((copy->items[i] = copy_node(arena, node->items[i])) == NULL)
            return NULL;
    return copy->items != NULL ? copy : NULL;
}

static struct node **find_slot(struct node *mapping, const char *key)
{
    for (size_t i = 0; i < mapping->length; i++)
        if (strcmp(mapping->items[2 * i]->text, key) == 0)
            return &mapping->items[2 * i + 1];
    return NULL;
}

static void set_pair(struct walk *walk, struct node *mapping, const struct node *key,
                     const struct node *value)
{
    struct node **slot = find_slot(mapping, key->text);
    struct node *copy = copy_node(walk->arena, value);
    if (copy == NULL)
        return; /* the arena stays marked as short */
    if (slot != NULL) {
        *slot = copy;
        return;
    }
    struct node **items =
        arena_take(walk->arena, (2 * mapping->length + 2) * sizeof *mapping->items);
    struct node *name = copy_node(walk->arena, key);
    if (items == NULL || name == NULL)
        return;
    for (size_t i = 0; i < 2 * mapping->length; i++)
        items[i] = mapping->items[i];
    items[2 * mapping->length] = name;
    items[2 * mapping->length + 1] = copy;
    mapping->items = items;
    mapping->length++;
}

/* Nothing stands behind the key any more. */
static struct node *blank_node(struct walk *walk, const struct node *instead)
{
    struct node *blank = arena_take(walk->arena, sizeof *blank);
    if (blank != NULL)
        *blank = (struct node){
            .type = NODE_SCALAR, .is_plain = true, .place = instead->place, .text = ""};
    return blank;
}

static void blank_fact(struct walk *walk, struct node *mapping, const char *fact)
{
    struct node **slot = find_slot(mapping, fact);
    struct node *blank = slot != NULL ? blank_node(walk, *slot) : NULL;
    if (blank != NULL)
        *slot = blank;
}

/* The items of `more` behind those that are there. */
static void add_items(struct walk *walk, struct node *mapping, const struct node *key,
                      const struct node *more)
{
    struct node **slot = find_slot(mapping, key->text);
    if (slot == NULL || (*slot)->type != NODE_SEQUENCE || more->type != NODE_SEQUENCE) {
        set_pair(walk, mapping, key, more);
        return;
    }
    const struct node *there = *slot;
    struct node *both = copy_node(walk->arena, more);
    struct node **items =
        arena_take(walk->arena, (there->length + more->length + 1) * sizeof *items);
    if (both == NULL || items == NULL)
        return;
    memcpy(items, there->items, there->length * sizeof *items);
    memcpy(items + there->length, both->items, more->length * sizeof *items);
    both->items = items;
    both->length = there->length + more->length;
    both->place = there->place;
    *slot = both;
}

static bool names(const struct design_edit *edit, enum kind_id kind, const char *path,
                  const char *name)
{
    if (edit->kind != kind)
        return false;
    if (edit->name[0] == '\0')
        return kind_at(kind)->count == ROOT || kind_at(kind)->count == ONLY;
    size_t length = strlen(edit->name);
    return strcmp(edit->name, path) == 0 || strcmp(edit->name, name) == 0 ||
           /* "framing south": the framing of the plane south */
           (kind_at(kind)->count == ONLY && strncmp(path, edit->name, length) == 0 &&
            path[length] == '/');
}

/* Does an edit take the whole thing away? */
static bool is_removed(struct walk *walk, enum kind_id kind, const char *path, const char *name)
{
    bool any = false;
    for (size_t i = 0; i < walk->edits->count; i++) {
        const struct design_edit *edit = &walk->edits->items[i];
        if (edit->verb != EDIT_BLANKS || edit->fact != NULL || !names(edit, kind, path, name))
            continue;
        walk->is_done[i] = any = true;
    }
    return any;
}

static void edit_thing(struct walk *walk, enum kind_id kind, const char *path, const char *name,
                       struct node *node)
{
    for (size_t i = 0; i < walk->edits->count; i++) {
        const struct design_edit *edit = &walk->edits->items[i];
        if (!names(edit, kind, path, name) || (edit->verb == EDIT_BLANKS && edit->fact == NULL))
            continue;
        walk->is_done[i] = true;
        if (edit->verb == EDIT_BLANKS)
            blank_fact(walk, node, edit->fact);
        for (size_t k = 0; edit->facts != NULL && k < edit->facts->length; k++) {
            const struct node *key = edit->facts->items[2 * k];
            const struct node *value = edit->facts->items[2 * k + 1];
            if (strcmp(key->text, "thing") == 0)
                continue;
            if (edit->verb == EDIT_SETS)
                set_pair(walk, node, key, value);
            else
                add_items(walk, node, key, value);
        }
    }
}

static void walk_thing(struct walk *walk, enum kind_id kind, const char *above, const char *name,
                       struct node *node);

static const char *join(struct walk *walk, const char *above, const char *name)
{
    const char *path = above == NULL ? name : arena_format(walk->arena, "%s/%s", above, name);
    return path != NULL ? path : name;
}

/* The things of a list, without those that an edit takes away. */
static void walk_list(struct walk *walk, enum kind_id kind, const char *above, struct node **slot)
{
    const struct node *list = *slot;
    struct node *left = arena_take(walk->arena, sizeof *left);
    struct node **items = arena_take(walk->arena, (list->length + 1) * sizeof *items);
    if (left == NULL || items == NULL)
        return;
    *left = *list;
    left->items = items;
    left->length = 0;
    for (size_t i = 0; i < list->length; i++) {
        struct node *item = list->items[i];
        const struct node *name = item->type == NODE_MAPPING ? node_find(item, "name") : NULL;
        const char *called = name != NULL && name->type == NODE_SCALAR ? name->text : "";
        if (is_removed(walk, kind, join(walk, above, called), called))
            continue;
        items[left->length++] = item;
        if (item->type == NODE_MAPPING)
            walk_thing(walk, kind, above, called, item);
    }
    *slot = left;
}

static void walk_one(struct walk *walk, enum kind_id kind, const char *above, struct node **slot)
{
    const char *name = kind_at(kind)->name;
    if (is_removed(walk, kind, join(walk, above, name), name)) {
        struct node *blank = blank_node(walk, *slot);
        *slot = blank != NULL ? blank : *slot;
    } else if ((*slot)->type == NODE_MAPPING)
        walk_thing(walk, kind, above, name, *slot);
}

static void walk_thing(struct walk *walk, enum kind_id kind, const char *above, const char *name,
                       struct node *node)
{
    const struct kind *of = kind_at(kind);
    const char *path = join(walk, above, name);
    bool is_named = of->count == NAMED || of->count == MODEL;
    if (kind != KIND_design || !walk->is_catalogue)
        edit_thing(walk, kind, path, name, node);
    for (size_t i = 0; i < node->length; i++) {
        int slot = kind_find_fact(of, node->items[2 * i]->text);
        struct node **value = &node->items[2 * i + 1];
        if (slot < 0)
            continue;
        const struct fact_row *row = &of->facts[slot];
        if (row->type == TYPE_LIST && (*value)->type == NODE_SEQUENCE)
            walk_list(walk, row->kind, is_named ? path : above, value);
        else if (row->type == TYPE_ONE)
            walk_one(walk, row->kind, is_named ? path : above, value);
    }
}

void design_edits_apply(const struct design_edits *edits, bool *is_done, struct node *root,
                        bool is_catalogue, struct arena *arena)
{
    struct walk walk = {edits, is_done, arena, is_catalogue};
    if (root->type == NODE_MAPPING)
        walk_thing(&walk, KIND_design, NULL, "design", root);
}

void design_edits_complain(const struct design_edits *edits, const bool *is_done,
                           struct design_reader *reader)
{
    struct complaints complaints = {.source = edits->source, .problems = reader->problems};
    for (size_t i = 0; i < edits->count; i++) {
        const struct design_edit *edit = &edits->items[i];
        const char *known[64], *kind = kind_at(edit->kind)->name;
        const struct objects *all = &reader->design->of_kind[edit->kind];
        struct node named = *edit->at;
        size_t count = 0;
        bool comes_of_row = false;
        if (is_done[i])
            continue;
        for (; count < all->count && count < 64; count++) {
            known[count] = all->items[count]->path;
            comes_of_row = comes_of_row || strcmp(known[count], edit->name) == 0;
        }
        named.text = edit->name;
        if (comes_of_row)
            complain(&complaints, edit->at, "change-of-row", "thing: module_row low",
                     "the %s '%.80s' comes of a row: change the row", kind, edit->name);
        else if (edit->name[0] == '\0' && count > 0)
            complain(&complaints, edit->at, "change-of-nothing",
                     arena_format(reader->arena, "thing: %s %s", kind, known[0]),
                     "the design has %zu things of the kind %s: name the one that is meant",
                     all->count, kind);
        else if (edit->name[0] == '\0')
            complain(&complaints, edit->at, "change-of-nothing", "thing: roof_plane south",
                     "the design has no %s", kind);
        else
            complain_unknown(&complaints, &named, "change-of-nothing", kind, known, count);
    }
}
