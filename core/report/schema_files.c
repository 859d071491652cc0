/* The schemas of books, values, cases and results: their shape stands in schema_shapes.c, the words
 * they may hold come from the code that reads and writes them. */
#include "schema.h"

#include <string.h>

#include "parts.h"
#include "schema_shapes.h"

static void add_lines(struct text *text, const char *const *lines)
{
    for (; *lines != NULL; lines++)
        text_add_word(text, *lines);
}

/* The shape as JSON; NULL: no memory. `rest` may be NULL. */
static json_t *load(const char *const *shape, const char *const *rest)
{
    struct text text = {0};
    json_error_t error;
    add_lines(&text, shape);
    if (rest != NULL)
        add_lines(&text, rest);
    for (size_t i = 0; i < text.length; i++)
        if (text.bytes[i] == '\'')
            text.bytes[i] = '"';
    json_t *json = text.is_short ? NULL : json_loads(text.bytes, 0, &error);
    text_free(&text);
    return json;
}

/* The list of words of a definition, or of one of its properties. */
static json_t *find_words(json_t *json, const char *definition, const char *property)
{
    json_t *found = json_object_get(json_object_get(json, "$defs"), definition);
    if (property != NULL)
        found = json_object_get(json_object_get(found, "properties"), property);
    return json_object_get(found, "enum");
}

static bool write(struct text *out, json_t *json, bool is_whole)
{
    is_whole = json_write(out, json_whole(json, is_whole && json != NULL), JSON_INDENT(1));
    text_add(out, "\n", 1);
    return is_whole && !out->is_short;
}

/* Kinds of value: all measures, and what is no quantity. */
static bool fill_kinds(json_t *json)
{
    json_t *list = find_words(json, "declaration", "kind");
    bool is_whole = list != NULL;
    for (int i = 0; is_whole && i < MEASURE_COUNT; i++)
        is_whole = json_push(list, json_string(measure_name((enum measure)i)));
    return is_whole && json_push(list, json_string("yes or no")) &&
           json_push(list, json_string("word"));
}

static bool fill_outcomes(json_t *list)
{
    bool is_whole = list != NULL;
    for (int i = 0; is_whole && i < OUTCOME_COUNT; i++)
        is_whole = json_push(list, json_string(outcome_name((enum outcome)i)));
    return is_whole;
}

bool schema_write_book(struct text *out)
{
    json_t *json = load(schema_book_shape, schema_shared_shape);
    return write(out, json, fill_kinds(json));
}

bool schema_write_values(struct text *out)
{
    json_t *json = load(schema_values_shape, schema_shared_shape);
    return write(out, json, fill_kinds(json));
}

bool schema_write_cases(struct text *out)
{
    json_t *json = load(schema_cases_shape, schema_shared_shape);
    json_t *list = find_words(json, "expect", "kind");
    return write(out, json,
                 fill_kinds(json) && fill_outcomes(list) &&
                     json_push(list, json_string("deleted")));
}

bool schema_write_result(struct text *out)
{
    json_t *json = load(schema_result_shape, NULL);
    json_t *list = find_words(json, "relation", NULL);
    bool is_whole = list != NULL && fill_outcomes(find_words(json, "kind", NULL));
    for (int i = 0; is_whole && i <= RELATION_BROKEN; i++)
        is_whole = json_push(list, json_string(relation_name((enum relation)i)));
    return write(out, json, is_whole);
}
