/* YAML: a tree whose nodes stand in the text, no deeper than allowed, or problems with their
 * places. */
#include "entry.h"
#include "text.h"
#include "tree.h"

static size_t walk(const struct node *node, const struct source *source, unsigned depth)
{
    size_t count = 1, items = 0, bad;
    MUST(depth <= YAML_DEPTH + 1 && node->place.line >= 1 && node->place.column >= 1);
    MUST(node->place.line <= source->length + 1);
    if (node->type == NODE_SCALAR) {
        MUST(strlen(node->text) == node->length && text_is_utf8(node->text, node->length, &bad));
        return 1;
    }
    items = node->type == NODE_MAPPING ? 2 * node->length : node->length;
    for (size_t i = 0; i < items; i++)
        count += walk(node->items[i], source, depth + 1);
    if (node->type == NODE_MAPPING && node->length > 0)
        MUST(node_find(node, node->items[0]->text) == node->items[1]);
    return count;
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    struct arena *arena = arena_new();
    struct problems problems = {.arena = arena};
    struct source *source;
    size_t bad;
    bool is_read = yaml_read(&source, "fuzz.yaml", (const char *)bytes, length, arena, &problems);
    MUST(is_read == (problems.count == 0) && problems.count <= YAML_PROBLEMS + 1);
    for (size_t i = 0; i < problems.count; i++) {
        const struct problem *problem = &problems.items[i];
        MUST(problem->weight == PROBLEM_INPUT && problem->message[0] != '\0');
        MUST(text_is_utf8(problem->message, strlen(problem->message), &bad));
        MUST(problem->excerpt == NULL ||
             text_is_utf8(problem->excerpt, strlen(problem->excerpt), &bad));
    }
    if (source != NULL && source->root != NULL)
        MUST(walk(source->root, source, 1) <= YAML_NODES + 1);
    arena_free(arena);
    return 0;
}
