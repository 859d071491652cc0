/* The schema of a design: one definition per kind, one property per fact. */
#include "schema.h"

#include <stdio.h>
#include <string.h>

#include "parts.h"

static json_t *refer(const char *name)
{
    char path[120];
    snprintf(path, sizeof path, "#/$defs/%s", name);
    return json_pack("{s:s}", "$ref", path);
}

/* The words of a fact stand once, whoever takes them. */
static json_t *refer_words(const struct vocabulary *vocabulary)
{
    char name[80];
    snprintf(name, sizeof name, "words_of_%s", vocabulary->name);
    return refer(name);
}

static json_t *words_json(const struct vocabulary *vocabulary)
{
    json_t *list = json_array();
    bool is_whole = list != NULL;
    for (size_t i = 0; is_whole && i < vocabulary->count; i++)
        is_whole = json_push(list, json_string(vocabulary->words[i]));
    return json_pack("{s:o}", "enum", json_whole(list, is_whole));
}

static json_t *number_json(const struct fact_row *row)
{
    return json_pack("{s:s, s:f, s:f}", "type", row->type == TYPE_COUNT ? "integer" : "number",
                     "minimum", row->low, "maximum", row->high);
}

/* Any of two; takes both over. */
static json_t *either(json_t *a, json_t *b)
{
    if (a == NULL || b == NULL) {
        json_decref(a);
        json_decref(b);
        return NULL;
    }
    return json_pack("{s:[o, o]}", "anyOf", a, b);
}

static json_t *list_of(json_t *items)
{
    return items != NULL ? json_pack("{s:s, s:o}", "type", "array", "items", items) : NULL;
}

/* The value itself, when it is told. */
static json_t *value_json(const struct fact_row *row)
{
    switch (row->type) {
    case TYPE_QUANTITY:
        return refer("quantity");
    case TYPE_NUMBER:
        return either(number_json(row), refer("quantity"));
    case TYPE_COUNT:
        return number_json(row);
    case TYPE_CHOICE:
        return refer_words(row->vocabulary);
    case TYPE_WORDS:
        return either(list_of(refer_words(row->vocabulary)), refer("none"));
    case TYPE_WORD_LIST:
        return list_of(refer_words(row->vocabulary));
    case TYPE_TEXT:
    case TYPE_REFERENCE:
        return refer("text");
    case TYPE_TEXTS:
    case TYPE_REFERENCES:
        return either(list_of(refer("text")), refer("text"));
    case TYPE_YESNO:
        return refer("yes_or_no");
    case TYPE_DATE:
        return refer("day");
    case TYPE_POINT:
        return refer("point");
    case TYPE_POINTS:
        return json_pack("{s:s, s:i, s:o}", "type", "array", "minItems", 3, "items",
                         refer("point"));
    case TYPE_ONE:
        return either(refer(kind_at(row->kind)->name), refer("none"));
    default:
        return either(list_of(refer(kind_at(row->kind)->name)), refer("none"));
    }
}

/* "Slope: 4/12 or 18.4°. In °, from 0 to 80. Example: slope: 4/12" */
static json_t *description(const struct fact_row *row)
{
    char example[200], range[120] = "", low[32], high[32], text[700];
    fact_write_example(example, sizeof example, row);
    if (row->type == TYPE_QUANTITY || row->type == TYPE_NUMBER || row->type == TYPE_COUNT) {
        number_write(low, sizeof low, row->low);
        number_write(high, sizeof high, row->high);
        snprintf(range, sizeof range, " From %s to %s%s%s.", low, high,
                 row->type == TYPE_QUANTITY ? " " : "",
                 row->type == TYPE_QUANTITY ? row->unit : "");
    }
    snprintf(text, sizeof text, "%s%s Example: %s", row->sentence, range, example);
    return json_text(text);
}

/* A value that may be left blank, or say where it comes from; takes it over. */
static json_t *told_json(json_t *value)
{
    json_t *all = value != NULL ? json_pack("[o, {s:s}]", value, "type", "null") : NULL;
    bool is_whole =
        all != NULL && json_push(all, json_pack("{s:s, s:{s:O, s:o}, s:[s], s:b}", "type", "object",
                                                "properties", "is", json_array_get(all, 0), "from",
                                                refer_words(vocabulary_at(WORDS_fact_source)),
                                                "required", "is", "additionalProperties", 0));
    return json_pack("{s:o}", "anyOf", json_whole(all, is_whole));
}

/* What is made of a definition alone is a definition, too: "told_quantity". */
static json_t *refer_told(const json_t *value)
{
    char name[100];
    const char *path = json_string_value(json_object_get(value, "$ref"));
    if (path == NULL)
        return NULL;
    snprintf(name, sizeof name, "told_%s", path + strlen("#/$defs/"));
    return refer(name);
}

static json_t *fact_json(const struct fact_row *row)
{
    json_t *value = value_json(row), *fact = NULL;
    if (row->type == TYPE_ONE || row->type == TYPE_LIST)
        fact = value != NULL ? json_pack("{s:[o, {s:s}]}", "anyOf", value, "type", "null") : NULL;
    else if ((fact = refer_told(value)) != NULL)
        json_decref(value);
    else
        fact = told_json(value);
    return json_whole(fact, json_put(fact, "description", description(row)));
}

/* Adds what a definition is when it is told. */
static bool put_told(json_t *definitions, const char *of)
{
    char name[100];
    snprintf(name, sizeof name, "told_%s", of);
    return json_put(definitions, name, told_json(refer(of)));
}

static json_t *properties_json(const struct kind *kind)
{
    json_t *properties = json_object();
    bool is_whole = properties != NULL;
    if (kind->count == NAMED || kind->count == MODEL)
        is_whole = json_put(properties, "name", refer("text"));
    for (size_t i = 0; is_whole && i < kind->fact_count; i++)
        if (kind->facts[i].type != TYPE_INVERSE)
            is_whole = json_put(properties, kind->facts[i].name, fact_json(&kind->facts[i]));
    return json_whole(properties, is_whole);
}

static json_t *kind_json(const struct kind *kind)
{
    json_t *object = json_object();
    bool is_whole = json_put(object, "description", json_text(kind->sentence)) &&
                    json_put(object, "type", json_text("object")) &&
                    json_put(object, "properties", properties_json(kind)) &&
                    json_put(object, "additionalProperties", json_false());
    if (is_whole && (kind->count == NAMED || kind->count == MODEL))
        is_whole = json_put(object, "required", json_pack("[s]", "name"));
    return json_whole(object, is_whole);
}

/* What several facts share. A name may look like a number or a yes to a reader of YAML. */
static bool put_shared(json_t *definitions)
{
    return json_put(definitions, "quantity",
                    json_pack("{s:[s, s], s:s, s:s}", "type", "string", "number", "pattern",
                              "^[-+]?[0-9.]", "description",
                              "A number with its unit: 18 in, 4/12, -12 °C")) &&
           json_put(definitions, "text",
                    json_pack("{s:[s, s, s]}", "type", "string", "number", "boolean")) &&
           json_put(definitions, "none",
                    json_pack("{s:[{s:s}, {s:s, s:i}]}", "anyOf", "const", "none", "type", "array",
                              "maxItems", 0)) &&
           json_put(definitions, "yes_or_no",
                    json_pack("{s:[{s:s}, {s:[s, s, s, s]}]}", "anyOf", "type", "boolean", "enum",
                              "yes", "no", "true", "false")) &&
           json_put(definitions, "day",
                    json_pack("{s:s, s:s}", "type", "string", "pattern",
                              "^[0-9]{4}-[0-9]{2}-[0-9]{2}$")) &&
           json_put(definitions, "point",
                    json_pack("{s:s, s:i, s:i, s:o}", "type", "array", "minItems", 2, "maxItems", 2,
                              "items", refer("quantity"))) &&
           put_told(definitions, "quantity") && put_told(definitions, "text") &&
           put_told(definitions, "yes_or_no") && put_told(definitions, "day") &&
           put_told(definitions, "point");
}

static bool put_words(json_t *definitions)
{
    char name[80];
    bool is_whole = true;
    for (int id = 0; is_whole && id < VOCABULARY_COUNT; id++) {
        const struct vocabulary *vocabulary = vocabulary_at((enum vocabulary_id)id);
        snprintf(name, sizeof name, "words_of_%s", vocabulary->name);
        is_whole =
            json_put(definitions, name, words_json(vocabulary)) && put_told(definitions, name);
    }
    return is_whole;
}

bool schema_write_design(struct text *out)
{
    json_t *schema = json_object(), *definitions = json_object();
    bool is_whole = definitions != NULL && put_shared(definitions) && put_words(definitions);
    for (size_t id = 0; is_whole && id < KIND_COUNT; id++)
        is_whole = json_put(definitions, kind_at((enum kind_id)id)->name,
                            kind_json(kind_at((enum kind_id)id)));
    is_whole =
        is_whole &&
        json_put(schema, "$schema", json_text("https://json-schema.org/draft/2020-12/schema")) &&
        json_put(schema, "title", json_text("A design, or a catalogue of equipment")) &&
        json_put(schema, "$ref", json_text("#/$defs/design"));
    is_whole = json_put(schema, "$defs", json_whole(definitions, is_whole)) && is_whole;
    is_whole = json_write(out, json_whole(schema, is_whole), JSON_INDENT(1)) && is_whole;
    text_add(out, "\n", 1);
    return is_whole && !out->is_short;
}
