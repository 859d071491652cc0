#include "complain.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "text.h"

static struct problem *tell(struct complaints *complaints, struct place place, const char *code,
                            const char *message)
{
    if (complaints->told > YAML_PROBLEMS)
        return NULL;
    if (complaints->told++ == YAML_PROBLEMS) {
        problems_add(complaints->problems, PROBLEM_INPUT, "more", (struct place){place.file, 0, 0},
                     "there is more: only the first %d mistakes are shown", YAML_PROBLEMS);
        return NULL;
    }
    struct problem *problem =
        problems_add(complaints->problems, PROBLEM_INPUT, code, place, "%s", message);
    const struct source *source = complaints->source;
    if (complaints->also != NULL && place.file != NULL &&
        strcmp(place.file, complaints->also->path) == 0)
        source = complaints->also;
    if (problem != NULL)
        problem->excerpt = source_line(source, place.line, complaints->problems->arena);
    return problem;
}

static void set_example(struct complaints *complaints, struct problem *problem, const char *example)
{
    char *kept = problem != NULL && example != NULL
                     ? arena_copy(complaints->problems->arena, example, strlen(example))
                     : NULL;
    if (kept == NULL)
        return;
    text_mend(kept);
    problem->example = kept;
}

static struct place place_of(const struct complaints *complaints, const struct node *node)
{
    return node != NULL ? node->place : (struct place){complaints->source->path, 0, 0};
}

bool complain(struct complaints *complaints, const struct node *node, const char *code,
              const char *example, const char *format, ...)
{
    char message[600];
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(message, sizeof message, format, arguments);
    va_end(arguments);
    set_example(complaints, tell(complaints, place_of(complaints, node), code, message), example);
    return false;
}

bool complain_inside(struct complaints *complaints, const struct node *node, size_t offset,
                     const char *code, const char *example, const char *format, ...)
{
    char message[600];
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(message, sizeof message, format, arguments);
    va_end(arguments);
    struct place place = node->place;
    if (offset <= node->length && memchr(node->text, '\n', offset) == NULL)
        place.column += (unsigned)text_count_points(node->text, offset) + (node->is_plain ? 0 : 1);
    set_example(complaints, tell(complaints, place, code, message), example);
    return false;
}

bool complain_both(struct complaints *complaints, const struct node *node, struct place other,
                   const char *code, const char *format, ...)
{
    char message[600];
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(message, sizeof message, format, arguments);
    va_end(arguments);
    struct problem *problem = tell(complaints, place_of(complaints, node), code, message);
    if (problem != NULL)
        problem->other = other;
    return false;
}

static void list_known(char *buffer, size_t size, const char *const *known, size_t count)
{
    size_t length = 0;
    buffer[0] = '\0';
    for (size_t i = 0; i < count && length + 40 < size; i++) {
        length +=
            (size_t)snprintf(buffer + length, size - length, "%s%s", i > 0 ? ", " : "", known[i]);
        if (i + 1 < count && length + 40 >= size)
            snprintf(buffer + size - 8, 8, " …");
    }
}

bool complain_unknown(struct complaints *complaints, const struct node *node, const char *code,
                      const char *what, const char *const *known, size_t count)
{
    const char *near = text_find_near(node->text, known, count);
    if (near != NULL)
        return complain(complaints, node, code, NULL, "there is no %s '%.80s'; did you mean '%s'?",
                        what, node->text, near);
    char list[420];
    list_known(list, sizeof list, known, count);
    return complain(complaints, node, code, NULL, "there is no %s '%.80s'; there is: %s", what,
                    node->text, count > 0 ? list : "none");
}

bool complain_word(struct complaints *complaints, const struct node *node, const char *what,
                   const char *const *known, size_t count)
{
    const char *whole = text_find_near(node->text, known, count) == NULL
                            ? text_find_part(node->text, known, count)
                            : NULL;
    if (whole == NULL)
        return complain_unknown(complaints, node, "word", what, known, count);
    char list[420];
    list_known(list, sizeof list, known, count);
    return complain(complaints, node, "word", NULL,
                    "there is no %s '%.80s'; there is: %s; did you mean '%s'?", what, node->text,
                    list, whole);
}

bool expect_node(struct complaints *complaints, const struct node *node, enum node_type type,
                 const char *example)
{
    static const char *const names[] = {[NODE_SCALAR] = "a single value",
                                        [NODE_SEQUENCE] = "a list",
                                        [NODE_MAPPING] = "a block of keys"};
    return node->type == type ||
           complain(complaints, node, "node-type", example, "%s is needed here, not %s",
                    names[type], names[node->type]);
}
