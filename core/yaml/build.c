#include "build.h"
#include "keys.h"
#include "scan.h"
#include "syntax.h"
#include <assert.h>
#include <string.h>
#include <yaml.h>

/* A collection whose end has not come yet. */
struct open_node {
    struct node *node;
    size_t first;   /* its items wait on the stack from here */
    bool is_in_key; /* is it, or what it stands in, the key of a mapping? */
};

struct builder {
    struct reading *reading;
    struct node **stack; /* nodes that wait for the end of their collection */
    size_t count, capacity;
    struct open_node open[YAML_DEPTH];
    size_t depth, nodes;
    struct place document; /* where the first one began */
    struct syntax_hint hint;
};

static struct place mark_place(const struct builder *builder, yaml_mark_t mark)
{
    return (struct place){builder->reading->source->path, (unsigned)mark.line + 1,
                          (unsigned)mark.column + 1};
}

static bool push(struct builder *builder, struct node *node)
{
    if (builder->depth == 0) {
        builder->reading->source->root = node;
        return true;
    }
    if (builder->count == builder->capacity) {
        struct node **grown = arena_grow(builder->reading->arena, builder->stack, builder->count,
                                         &builder->capacity, sizeof *builder->stack);
        if (!grown) {
            builder->reading->is_short = true;
            return false;
        }
        builder->stack = grown;
    }
    builder->stack[builder->count++] = node;
    return true;
}

/* A node with `extra` bytes behind it, pushed. NULL: too many nodes, or no memory. */
static struct node *add_node(struct builder *builder, enum node_type type, yaml_mark_t mark,
                             size_t extra)
{
    struct place place = mark_place(builder, mark);
    if (builder->nodes == YAML_NODES) {
        tell_mistake(builder->reading, "too-many-nodes", place, NULL,
                     "the file holds more than %d values", YAML_NODES);
        return NULL;
    }
    struct node *node = arena_take(builder->reading->arena, sizeof *node + extra);
    if (!node) {
        builder->reading->is_short = true;
        return NULL;
    }
    builder->nodes++;
    node->type = type;
    node->place = place;
    return push(builder, node) ? node : NULL;
}

/* Is the node that comes next a key? */
static bool is_key_next(const struct builder *builder)
{
    if (builder->depth == 0)
        return false;
    const struct open_node *open = &builder->open[builder->depth - 1];
    return open->node->type == NODE_MAPPING && (builder->count - open->first) % 2 == 0;
}

static void refuse_extras(struct builder *builder, yaml_mark_t mark, const yaml_char_t *anchor,
                          const yaml_char_t *tag)
{
    if (!anchor && !tag)
        return;
    struct place place = mark_place(builder, mark);
    if (anchor)
        tell_mistake(
            builder->reading, "anchor", place, "label: \"&1\"",
            "an anchor (&name) is not taken; write each value out, and put a text that begins "
            "with & in quotes");
    if (tag)
        tell_mistake(builder->reading, "tag", place, "label: \"!\"",
                     "a tag (!name) is not taken; put a text that begins with ! in quotes");
}

static void check_escapes(struct builder *builder, const struct node *node)
{
    struct bad_byte bad;
    if (bad_byte_find(&bad, node->text, node->length, 0))
        tell_mistake(builder->reading, "control-character", node->place, NULL,
                     "an escape in this text stands for a %s U+%04X, which cannot stand in it",
                     bad_kind_words(bad.kind), bad.point);
}

static bool add_scalar(struct builder *builder, const yaml_event_t *event)
{
    const char *text = (const char *)event->data.scalar.value;
    size_t length = event->data.scalar.length;
    yaml_scalar_style_t style = event->data.scalar.style;
    bool is_key = length <= YAML_SCALAR && is_key_next(builder);
    if (length > YAML_SCALAR) {
        tell_mistake(builder->reading, "text-too-long", mark_place(builder, event->start_mark),
                     NULL, "a text has at most 64 KiB");
        length = 0;
    }
    struct node *node = add_node(builder, NODE_SCALAR, event->start_mark, length + 1);
    if (!node)
        return false;
    char *copy = (char *)(node + 1);
    memcpy(copy, text, length);
    node->text = copy;
    node->length = length;
    node->is_plain = style == YAML_PLAIN_SCALAR_STYLE;
    refuse_extras(builder, event->start_mark, event->data.scalar.anchor, event->data.scalar.tag);
    if (style == YAML_DOUBLE_QUOTED_SCALAR_STYLE)
        check_escapes(builder, node);
    if (is_key)
        key_check(builder->reading, node,
                  style == YAML_LITERAL_SCALAR_STYLE || style == YAML_FOLDED_SCALAR_STYLE);
    if (style == YAML_DOUBLE_QUOTED_SCALAR_STYLE || style == YAML_SINGLE_QUOTED_SCALAR_STYLE) {
        builder->hint.quote = node->place;
        builder->hint.quote_end = mark_place(builder, event->end_mark);
    }
    return true;
}

static bool add_alias(struct builder *builder, const yaml_event_t *event)
{
    tell_mistake(
        builder->reading, "alias", mark_place(builder, event->start_mark), "label: \"*1\"",
        "an alias (*name) is not taken; write each value out, and put a text that begins with "
        "* in quotes");
    /* A stand-in keeps keys and values in step. */
    struct node *node = add_node(builder, NODE_SCALAR, event->start_mark, 1);
    if (node)
        node->text = (const char *)(node + 1);
    return node != NULL;
}

static bool begin_collection(struct builder *builder, enum node_type type, yaml_mark_t mark)
{
    bool is_inner = builder->depth > 0 && builder->open[builder->depth - 1].is_in_key;
    bool is_key = is_key_next(builder);
    if (is_key && !is_inner)
        tell_mistake(builder->reading, "key-not-text", mark_place(builder, mark),
                     "title: Clear width", "a key is text, not a list or a mapping");
    if (builder->depth == YAML_DEPTH) {
        tell_mistake(builder->reading, "too-deep", mark_place(builder, mark), NULL,
                     "lists and mappings stand in each other more than %d deep here", YAML_DEPTH);
        return false;
    }
    struct node *node = add_node(builder, type, mark, 0);
    if (!node)
        return false;
    builder->open[builder->depth++] = (struct open_node){node, builder->count, is_key || is_inner};
    return true;
}

static bool end_collection(struct builder *builder)
{
    assert(builder->depth > 0);
    struct open_node open = builder->open[--builder->depth];
    size_t count = builder->count - open.first;
    if (count == 0)
        return true;
    struct node **items = builder->stack + open.first;
    builder->count = open.first;
    bool is_mapping = open.node->type == NODE_MAPPING;
    if (is_mapping)
        count = keys_keep_first(builder->reading, items, count);
    open.node->length = is_mapping ? count / 2 : count;
    open.node->items = arena_take(builder->reading->arena, count * sizeof *items);
    if (!open.node->items) {
        builder->reading->is_short = true;
        return false;
    }
    memcpy(open.node->items, items, count * sizeof *items);
    return true;
}

static bool begin_document(struct builder *builder, const yaml_event_t *event)
{
    struct place place = mark_place(builder, event->start_mark);
    if (builder->document.line > 0) {
        struct problem *problem = tell_mistake(builder->reading, "second-document", place, NULL,
                                               "a second document begins here; a file holds one");
        complain_other(builder->reading, problem, builder->document);
        return false;
    }
    builder->document = place;
    builder->hint.has_begun = true;
    if (event->data.document_start.version_directive ||
        event->data.document_start.tag_directives.start !=
            event->data.document_start.tag_directives.end)
        tell_directive(builder->reading, place);
    return true;
}

/* False: no further event is wanted. */
static bool take_event(struct builder *builder, const yaml_event_t *event)
{
    switch (event->type) {
    case YAML_DOCUMENT_START_EVENT:
        return begin_document(builder, event);
    case YAML_ALIAS_EVENT:
        return add_alias(builder, event);
    case YAML_SCALAR_EVENT:
        return add_scalar(builder, event);
    case YAML_SEQUENCE_START_EVENT:
        refuse_extras(builder, event->start_mark, event->data.sequence_start.anchor,
                      event->data.sequence_start.tag);
        return begin_collection(builder, NODE_SEQUENCE, event->start_mark);
    case YAML_MAPPING_START_EVENT:
        refuse_extras(builder, event->start_mark, event->data.mapping_start.anchor,
                      event->data.mapping_start.tag);
        return begin_collection(builder, NODE_MAPPING, event->start_mark);
    case YAML_SEQUENCE_END_EVENT:
    case YAML_MAPPING_END_EVENT:
        return end_collection(builder);
    case YAML_STREAM_END_EVENT:
        return false;
    default:
        return true;
    }
}

static void read_events(struct builder *builder, yaml_parser_t *parser)
{
    bool goes_on = true;
    while (goes_on && !builder->reading->is_full && !builder->reading->is_short) {
        yaml_event_t event;
        if (!yaml_parser_parse(parser, &event)) {
            if (builder->depth > 0)
                builder->hint.open = builder->open[builder->depth - 1].node->place;
            tell_syntax(builder->reading, parser, &builder->hint);
            break;
        }
        goes_on = take_event(builder, &event);
        yaml_event_delete(&event);
    }
    /* After an early end the open mappings still have keys to tell about. */
    while (builder->depth > 0 && !builder->reading->is_short)
        end_collection(builder);
}

void build_tree(struct reading *reading)
{
    struct builder builder = {.reading = reading};
    yaml_parser_t parser;
    if (!yaml_parser_initialize(&parser)) {
        reading->is_short = true;
        return;
    }
    yaml_parser_set_encoding(&parser, YAML_UTF8_ENCODING);
    yaml_parser_set_input_string(&parser, (const unsigned char *)reading->source->bytes,
                                 reading->source->length);
    read_events(&builder, &parser);
    yaml_parser_delete(&parser);
}
