#include "design_reader.h"

#include <stdio.h>
#include <string.h>
#include <strings.h>

#include "text.h"
#include "unit.h"

bool node_is_none(const struct node *node)
{
    if (node->type == NODE_SCALAR)
        return node->is_plain && strcmp(node->text, "none") == 0;
    return node->type == NODE_SEQUENCE && node->length == 0;
}

bool node_is_blank(const struct node *node)
{
    return node->type == NODE_SCALAR && node->is_plain && node->length == 0;
}

/* The words of the trade for what was asked for: "slope of roof_plane". */
static const char *name_fact(char *buffer, size_t size, const struct object *object,
                             const struct fact_row *row)
{
    snprintf(buffer, size, "%s of %s", row->name, object->kind->name);
    return buffer;
}

static bool read_length(double *out, struct design_reader *reader, const struct node *node,
                        const struct fact_row *row)
{
    struct quantity_fault fault;
    struct quantity quantity;
    if (!expect_value(reader, reader->complaints, node, NODE_SCALAR, row))
        return false;
    if (!quantity_read(&quantity, node->text, node->length, measure_dimension(LENGTH), &fault))
        return complain_inside(reader->complaints, node, fault.offset, fault.code,
                               example_of(reader, row), "%s", fault.message);
    *out = quantity.value;
    return true;
}

static bool read_point(struct point *out, struct design_reader *reader, const struct node *node,
                       const struct fact_row *row)
{
    if (!expect_value(reader, reader->complaints, node, NODE_SEQUENCE, row))
        return false;
    if (node->length != 2)
        return complain(reader->complaints, node, "point", example_of(reader, row),
                        "a point is two lengths, along the eave and up the slope; here are %zu",
                        node->length);
    bool x = read_length(&out->x, reader, node->items[0], row);
    bool y = read_length(&out->y, reader, node->items[1], row);
    return x && y;
}

static bool read_points(struct fact *fact, struct design_reader *reader, const struct node *node,
                        const struct fact_row *row)
{
    if (!expect_value(reader, reader->complaints, node, NODE_SEQUENCE, row))
        return false;
    if (node->length < 3)
        return complain(reader->complaints, node, "points", example_of(reader, row),
                        "an outline has at least three corners; here are %zu", node->length);
    struct point *points = arena_take(reader->arena, node->length * sizeof *points);
    bool are_right = points != NULL;
    for (size_t i = 0; points != NULL && i < node->length; i++)
        are_right = read_point(&points[i], reader, node->items[i], row) && are_right;
    fact->is.points = points;
    fact->count = node->length;
    return are_right;
}

static bool check_range(struct design_reader *reader, const struct node *node,
                        const struct fact_row *row, double number)
{
    if (number > row->low && number < row->high)
        return true;
    if (number_compare(number, row->low) >= 0 && number_compare(number, row->high) <= 0)
        return true;
    const char *unit = row->type == TYPE_QUANTITY ? row->unit : "";
    const char *how = strchr(node->text, '/') != NULL && row->measure != ANGLE
                          ? ", since / makes a fraction"
                          : "";
    return complain(reader->complaints, node, "range", example_of(reader, row),
                    "%s is %.6g%s%s%s; believable values run from %g to %g%s%s", row->name, number,
                    *unit ? " " : "", unit, how, row->low, row->high, *unit ? " " : "", unit);
}

/* Behind what is wrong with a word such as "unknown" or "TBD": what to do instead. */
static const char *instead_of(const char *text)
{
    return strpbrk(text, "0123456789") == NULL ? " (leave it blank while nobody knows)" : "";
}

static bool complain_of_number(struct design_reader *reader, const struct node *node,
                               const struct fact_row *row, const struct quantity_fault *fault)
{
    return complain_inside(reader->complaints, node, fault->offset, fault->code,
                           example_of(reader, row), "%s%s", fault->message, instead_of(node->text));
}

static bool read_quantity(struct fact *fact, struct design_reader *reader, const struct node *node,
                          const struct fact_row *row)
{
    struct quantity_fault fault;
    struct quantity quantity;
    struct dimension want = measure_dimension(row->measure);
    if (!quantity_read(&quantity, node->text, node->length, want, &fault))
        return complain_of_number(reader, node, row, &fault);
    if (!check_range(reader, node, row, quantity_as(quantity, row->unit)))
        return false;
    fact->is.number = quantity.value;
    fact->unit = quantity.unit;
    return true;
}

static bool read_number(struct fact *fact, struct design_reader *reader, const struct node *node,
                        const struct fact_row *row)
{
    struct quantity_fault fault;
    struct quantity number;
    if (!quantity_read(&number, node->text, node->length, measure_dimension(PURE_NUMBER), &fault))
        return complain_of_number(reader, node, row, &fault);
    fact->is.number = number.value;
    return check_range(reader, node, row, number.value);
}

static bool read_count(struct fact *fact, struct design_reader *reader, const struct node *node,
                       const struct fact_row *row)
{
    for (size_t i = 0; i < node->length; i++)
        if (node->text[i] < '0' || node->text[i] > '9')
            return complain_inside(reader->complaints, node, i, "count", example_of(reader, row),
                                   "%s is counted: a whole number is needed, not '%.40s'%s",
                                   row->name, node->text, instead_of(node->text));
    return number_read(&fact->is.number, node->text, node->length)
               ? check_range(reader, node, row, fact->is.number)
               : complain(reader->complaints, node, "count", example_of(reader, row),
                          "a whole number is needed, not '%.40s'", node->text);
}

static bool read_word(const char **out, struct design_reader *reader, const struct node *node,
                      const struct fact_row *row)
{
    if (!expect_value(reader, reader->complaints, node, NODE_SCALAR, row))
        return false;
    *out = vocabulary_find(row->vocabulary, node->text);
    if (*out != NULL)
        return true;
    /* Of a list each item is one: "edges" holds an edge. */
    char what[80];
    snprintf(what, sizeof what, "%s", row->type == TYPE_CHOICE ? row->name : row->vocabulary->name);
    for (char *at = what; row->type != TYPE_CHOICE && *at != '\0'; at++)
        *at = *at == '_' ? ' ' : *at;
    return complain_word(reader->complaints, node, what, row->vocabulary->words,
                         row->vocabulary->count);
}

static bool read_words(struct fact *fact, struct design_reader *reader, const struct node *node,
                       const struct fact_row *row)
{
    if (!expect_value(reader, reader->complaints, node, NODE_SEQUENCE, row))
        return false;
    const char **words = arena_take(reader->arena, (node->length + 1) * sizeof *words);
    bool are_right = words != NULL;
    for (size_t i = 0; words != NULL && i < node->length; i++) {
        const struct node *item = node->items[i];
        if (row->type == TYPE_TEXTS) {
            are_right =
                expect_value(reader, reader->complaints, item, NODE_SCALAR, row) && are_right;
            words[i] = item->text;
        } else
            are_right = read_word(&words[i], reader, item, row) && are_right;
    }
    fact->is.words = words;
    fact->count = node->length;
    return are_right;
}

/* Is it a no of another habit? */
static bool means_no(const char *text)
{
    static const char *const words[] = {"no", "n", "false", "off", "0"};
    for (size_t i = 0; i < sizeof words / sizeof *words; i++)
        if (strcasecmp(text, words[i]) == 0)
            return true;
    return false;
}

static bool read_yesno(struct fact *fact, struct design_reader *reader, const struct node *node,
                       const struct fact_row *row)
{
    bool is_yes = strcmp(node->text, "yes") == 0 || strcmp(node->text, "true") == 0;
    bool is_no = strcmp(node->text, "no") == 0 || strcmp(node->text, "false") == 0;
    fact->is.yes = is_yes;
    if (is_yes || is_no)
        return true;
    const char *example = means_no(node->text) ? arena_format(reader->arena, "%s: no", row->name)
                                               : example_of(reader, row);
    return complain(reader->complaints, node, "yes-or-no", example,
                    "%s is yes or no, not '%.40s' (leave it blank while nobody knows)", row->name,
                    node->text);
}

static bool read_scalar(struct fact *fact, struct design_reader *reader, const struct node *node,
                        const struct fact_row *row)
{
    switch (row->type) {
    case TYPE_QUANTITY:
        return read_quantity(fact, reader, node, row);
    case TYPE_NUMBER:
        return read_number(fact, reader, node, row);
    case TYPE_COUNT:
        return read_count(fact, reader, node, row);
    case TYPE_CHOICE:
        return read_word(&fact->is.word, reader, node, row);
    case TYPE_YESNO:
        return read_yesno(fact, reader, node, row);
    case TYPE_DATE:
        return date_read(&fact->is.date, node->text, node->length) ||
               complain(reader->complaints, node, "date", example_of(reader, row),
                        "'%.40s' is no day of the calendar; write year-month-day", node->text);
    default:
        fact->is.word = node->text;
        return true;
    }
}

static void wait_for_reference(struct design_reader *reader, struct object *object, unsigned slot,
                               const struct node *node)
{
    struct pending *pending = arena_grow(reader->arena, reader->pending, reader->pending_count,
                                         &reader->pending_capacity, sizeof *pending);
    if (pending == NULL)
        return;
    reader->pending = pending;
    pending[reader->pending_count++] = (struct pending){object, slot, node, reader->complaints};
}

/* `{is: 10 ft, from: measured}`: the value with where it comes from. */
static const struct node *unwrap(struct fact *fact, struct design_reader *reader,
                                 const struct node *node)
{
    static const char *const keys[] = {"is", "from"};
    const struct vocabulary *sources = vocabulary_at(WORDS_fact_source);
    const struct node *is = NULL;
    for (size_t i = 0; i < node->length; i++) {
        const struct node *key = node->items[2 * i], *value = node->items[2 * i + 1];
        if (strcmp(key->text, "is") == 0)
            is = value;
        else if (strcmp(key->text, "from") != 0)
            complain_unknown(reader->complaints, key, "unknown-key", "key", keys, 2);
        else if (expect_node(reader->complaints, value, NODE_SCALAR, "from: measured")) {
            fact->source = vocabulary_find(sources, value->text);
            if (fact->source == NULL)
                complain_word(reader->complaints, value, "source of a fact", sources->words,
                              sources->count);
        }
    }
    if (is == NULL)
        complain(reader->complaints, node, "value-missing", "{is: 10 ft, from: measured}",
                 "a fact with its source needs the value under 'is'");
    return is;
}

static bool read_value(struct fact *fact, struct design_reader *reader, const struct node *node,
                       const struct fact_row *row)
{
    switch (row->type) {
    case TYPE_WORDS:
    case TYPE_WORD_LIST:
    case TYPE_TEXTS:
        return read_words(fact, reader, node, row);
    case TYPE_POINT:
        return read_point(&fact->is.point, reader, node, row);
    case TYPE_POINTS:
        return read_points(fact, reader, node, row);
    default:
        return expect_value(reader, reader->complaints, node, NODE_SCALAR, row) &&
               read_scalar(fact, reader, node, row);
    }
}

static bool takes_none(enum fact_type type)
{
    return type == TYPE_WORDS || type == TYPE_TEXTS || type == TYPE_REFERENCE ||
           type == TYPE_REFERENCES;
}

void read_fact(struct design_reader *reader, struct object *object, unsigned slot,
               const struct node *node)
{
    const struct fact_row *row = object_row(object, slot);
    struct fact *fact = &object->facts[slot];
    char named[160];
    if (row->type == TYPE_INVERSE) {
        complain(reader->complaints, node, "derived", example_of(reader, row),
                 "%s is worked out from the other side, from what each %s says under '%s'; it is "
                 "not written here",
                 name_fact(named, sizeof named, object, row), kind_at(row->kind)->name,
                 kind_at(row->kind)->facts[row->via].name);
        return;
    }
    fact->place = node->place;
    if (node->type == NODE_MAPPING && (node = unwrap(fact, reader, node)) == NULL)
        return;
    if (node_is_blank(node))
        return;
    if (node->type == NODE_SCALAR)
        fact->written = node->text;
    if (takes_none(row->type) && node_is_none(node))
        fact->state = FACT_NONE;
    else if (row->type == TYPE_REFERENCE || row->type == TYPE_REFERENCES)
        wait_for_reference(reader, object, slot, node);
    else if (read_value(fact, reader, node, row))
        fact->state = FACT_GIVEN;
}
