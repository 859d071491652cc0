/* What a case changes in the design it begins with. */
#include "case_reading.h"

#include <stdio.h>
#include <string.h>

static const char with_example[] = "with: [{thing: roof_plane south, layers: 2}]";
static const char without_example[] = "without: [\"roof_plane south: layers\"]";
static const char adding_example[] =
    "adding: [{thing: design, labels: [{name: extra, kind: inverter}]}]";

static void complain_of_kind(const struct case_file *file, const struct node *node,
                             const char *text)
{
    const char *kinds[KIND_COUNT];
    struct node named = *node;
    size_t length = strcspn(text, " :");
    for (size_t i = 0; i < KIND_COUNT; i++)
        kinds[i] = kind_at((enum kind_id)i)->name;
    named.text = arena_copy(file->reader->arena, text, length);
    if (named.text != NULL)
        complain_unknown(&file->reader->complaints, &named, "kind-unknown", "kind of thing", kinds,
                         KIND_COUNT);
}

static void add_edit(struct rule_case *one, const struct case_file *file,
                     const struct design_edit *edit)
{
    struct design_edit *items = arena_grow(file->reader->arena, one->edits.items, one->edits.count,
                                           &one->edits.capacity, sizeof *items);
    if (items == NULL)
        return;
    one->edits.items = items;
    items[one->edits.count++] = *edit;
}

/* One thing with the facts that are set, or the lists that are added to. */
static void read_facts(struct rule_case *one, const struct case_file *file, const struct node *item,
                       enum design_edit_verb verb)
{
    struct complaints *complaints = &file->reader->complaints;
    const char *example = verb == EDIT_SETS ? with_example : adding_example;
    struct design_edit edit = {.verb = verb, .facts = item};
    if (!expect_node(complaints, item, NODE_MAPPING, example))
        return;
    edit.at = node_find(item, "thing");
    if (edit.at == NULL || edit.at->type != NODE_SCALAR || edit.at->length == 0)
        complain(complaints, item, "thing-missing", example,
                 "'thing' is missing here: say which thing of the design is meant");
    else if (item->length < 2)
        complain(complaints, item, "change-empty", example, "nothing is changed here");
    else if (!design_edit_name(&edit, edit.at->text, file->reader->arena))
        complain_of_kind(file, edit.at, edit.at->text);
    else
        add_edit(one, file, &edit);
}

static bool check_fact(const struct case_file *file, const struct node *item, enum kind_id kind,
                       const char *fact)
{
    const struct kind *of = kind_at(kind);
    const char *known[64];
    char what[80];
    size_t count = 0;
    struct node named = *item;
    if (kind_find_fact(of, fact) >= 0)
        return true;
    for (; count < of->fact_count && count < 64; count++)
        known[count] = of->facts[count].name;
    snprintf(what, sizeof what, "fact of %s called", of->name);
    named.text = fact;
    return complain_unknown(&file->reader->complaints, &named, "unknown-key", what, known, count);
}

/* "roof_plane south: layers", "site: exposure", "label placard", or a fact of the design. */
static void read_blank(struct rule_case *one, const struct case_file *file, const struct node *item)
{
    struct complaints *complaints = &file->reader->complaints;
    struct design_edit edit = {.verb = EDIT_BLANKS, .at = item};
    if (item->type == NODE_MAPPING)
        complain(complaints, item, "quotes-needed", without_example,
                 "this must stand in quotes, since there is a colon in it");
    if (item->type == NODE_MAPPING || !expect_node(complaints, item, NODE_SCALAR, without_example))
        return;
    const char *colon = strstr(item->text, ": ");
    const char *thing = arena_copy(file->reader->arena, item->text,
                                   colon != NULL ? (size_t)(colon - item->text) : item->length);
    if (thing == NULL)
        return;
    edit.fact = colon != NULL ? colon + 2 : NULL;
    if (!design_edit_name(&edit, thing, file->reader->arena)) {
        if (colon != NULL || kind_find_fact(kind_at(KIND_design), thing) < 0) {
            complain_of_kind(file, item, thing);
            return;
        }
        edit.kind = KIND_design;
        edit.name = "";
        edit.fact = thing;
    }
    if (edit.fact == NULL || check_fact(file, item, edit.kind, edit.fact))
        add_edit(one, file, &edit);
}

void case_read_edits(struct rule_case *one, const struct case_file *file, const struct node *node)
{
    const struct node *with = find_list(file->reader, node, "with", with_example);
    const struct node *without = find_list(file->reader, node, "without", without_example);
    const struct node *adding = find_list(file->reader, node, "adding", adding_example);
    one->edits.source = file->source;
    for (size_t i = 0; with != NULL && i < with->length; i++)
        read_facts(one, file, with->items[i], EDIT_SETS);
    for (size_t i = 0; adding != NULL && i < adding->length; i++)
        read_facts(one, file, adding->items[i], EDIT_ADDS);
    for (size_t i = 0; without != NULL && i < without->length; i++)
        read_blank(one, file, without->items[i]);
}
