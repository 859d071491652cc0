#include "book_reading.h"
#include <string.h>

static const char mapping_example[] = "ridge_setback: {kind: length, stricter: larger, says: clear "
                                      "width at a ridge, entries: [{from: "
                                      "2026-07-01, is: 18 in, cite: \"Ordinance 2026-3\"}]}";

/* "length", "pressure", …, and the kinds that are no quantity; ends in NULL. */
static const char **list_kinds(struct book_reader *reader, size_t *count)
{
    const char **kinds = arena_take(reader->arena, (MEASURE_COUNT + 3) * sizeof *kinds);
    *count = 0;
    for (int i = 0; kinds && i < MEASURE_COUNT; i++) /* a number is among them */
        kinds[(*count)++] = measure_name((enum measure)i);
    if (kinds) {
        kinds[(*count)++] = "yes or no";
        kinds[(*count)++] = "word";
    }
    return kinds;
}

/* Leaves AMOUNT_NONE where it cannot be told. */
static void read_kind(struct book_reader *reader, const struct node *mapping,
                      struct declaration *declaration)
{
    if (!node_find(mapping, "kind")) {
        complain(
            &reader->complaints, mapping, "key-missing", mapping_example,
            "'kind' is missing here: say what the value is, or give a plain list of entries to "
            "amend a value of a book below");
        return;
    }
    const char *kind = find_text(reader, mapping, "kind", "length");
    if (!kind)
        return;
    if (strcmp(kind, "number") == 0) {
        declaration->type = AMOUNT_NUMBER;
    } else if (strcmp(kind, "yes or no") == 0) {
        declaration->type = AMOUNT_YESNO;
    } else if (strcmp(kind, "word") == 0) {
        declaration->type = AMOUNT_WORD;
    } else if (measure_find(&declaration->measure, kind)) {
        declaration->type = AMOUNT_QUANTITY;
    } else {
        size_t count;
        const char **kinds = list_kinds(reader, &count);
        if (kinds)
            complain_unknown(&reader->complaints, node_find(mapping, "kind"), "kind-unknown",
                             "kind of value", kinds, count);
    }
}

static void read_words(struct book_reader *reader, const struct node *mapping,
                       struct declaration *declaration)
{
    static const char example[] = "words: [heated, unheated]";
    const struct node *node = node_find(mapping, "words");
    if (node && declaration->type != AMOUNT_WORD && declaration->type != AMOUNT_NONE) {
        complain(&reader->complaints, node, "words-needless", NULL,
                 "words belong to a value of kind word");
        return;
    }
    if (declaration->type != AMOUNT_WORD)
        return;
    if (!node)
        complain(&reader->complaints, mapping, "key-missing", example,
                 "'words' is missing here: say what the word may be");
    declaration->words = read_texts(reader, find_list(reader, mapping, "words", example), "word");
    if (!declaration->words)
        declaration->type = AMOUNT_NONE;
    if (node && node->type == NODE_SEQUENCE && node->length == 0)
        complain(&reader->complaints, node, "words-none", example, "there is no word in it");
}

/* Only what can be larger or smaller has a stricter side, and then it must be said. */
static void read_stricter(struct book_reader *reader, const struct node *mapping,
                          struct declaration *declaration)
{
    static const char *const words[] = {"neither", "larger", "smaller", NULL};
    bool has_sides = declaration->type == AMOUNT_QUANTITY || declaration->type == AMOUNT_NUMBER;
    const char *text = find_text(reader, mapping, "stricter", has_sides ? "larger" : NULL);
    if (!text)
        return;
    const struct node *node = node_find(mapping, "stricter");
    for (size_t i = 0; words[i]; i++) {
        if (strcmp(text, words[i]) != 0)
            continue;
        declaration->stricter = (enum stricter)i;
        if (i > 0 && !has_sides && declaration->type != AMOUNT_NONE)
            complain(&reader->complaints, node, "stricter-needless", "stricter: neither",
                     "what is no number is neither larger nor smaller");
        return;
    }
    complain_unknown(&reader->complaints, node, "stricter-unknown", "stricter side", words, 3);
}

static void read_given_above(struct book_reader *reader, const struct node *mapping,
                             struct declaration *declaration)
{
    const char *text = find_text(reader, mapping, "given_above", NULL);
    if (!text)
        return;
    declaration->given_above = strcmp(text, "true") == 0;
    if (!declaration->given_above && strcmp(text, "false") != 0)
        complain(&reader->complaints, node_find(mapping, "given_above"), "true-needed",
                 "given_above: true", "true or false is needed here");
}

/* A value has a number of its own, or is given above: one of the two. */
static void check_numbers(struct book_reader *reader, const struct node *mapping,
                          const struct declaration *declaration)
{
    const struct node *editions = node_find(mapping, "editions");
    const struct node *entries = node_find(mapping, "entries");
    if (declaration->given_above && (editions || entries))
        complain(&reader->complaints, editions ? editions : entries, "given-above-and-here", NULL,
                 "a value that is given_above has no number of its own");
    if (!declaration->given_above && !editions && !entries)
        complain(&reader->complaints, mapping, "number-missing", "given_above: true",
                 "the value has no number: give editions or entries, or say that books above give "
                 "it");
}

static void read_declaration(struct book_reader *reader, const struct node *mapping,
                             struct book_value *value)
{
    static const char *const keys[] = {"kind", "words",       "stricter", "says",    "basis",
                                       "cite", "given_above", "editions", "entries", NULL};
    struct declaration *declaration = arena_take(reader->arena, sizeof *declaration);
    if (!declaration)
        return;
    *declaration = (struct declaration){.name = value->name, .place = value->place};
    value->declaration = declaration;
    check_keys(reader, mapping, "key of a value", keys, mapping_example);
    read_kind(reader, mapping, declaration);
    read_words(reader, mapping, declaration);
    read_stricter(reader, mapping, declaration);
    declaration->says = find_text(reader, mapping, "says", "clear width at a ridge");
    declaration->basis = find_text(reader, mapping, "basis", NULL);
    declaration->cite = find_text(reader, mapping, "cite", NULL);
    read_given_above(reader, mapping, declaration);
    check_numbers(reader, mapping, declaration);
    if (node_find(mapping, "editions"))
        read_editions(reader, value, node_find(mapping, "editions"));
    if (node_find(mapping, "entries"))
        read_entries(reader, value, node_find(mapping, "entries"));
}

/* A rule reads it as book.NAME, so it must be one word. */
static bool check_name(struct book_reader *reader, const struct node *key)
{
    bool is_good = key->text[0] >= 'a' && key->text[0] <= 'z';
    for (const char *at = key->text; *at && is_good; at++)
        is_good = (*at >= 'a' && *at <= 'z') || (*at >= '0' && *at <= '9') || *at == '_';
    return is_good ||
           complain(&reader->complaints, key, "name-bad", "ridge_setback_small",
                    "a value's name is small letters, digits and _, not '%.80s'", key->text);
}

static const struct book_value *find_value(const struct book *book, const char *name)
{
    for (size_t i = 0; i < book->value_count; i++)
        if (strcmp(book->values[i].name, name) == 0)
            return &book->values[i];
    return NULL;
}

static void read_value(struct book_reader *reader, const struct node *key, const struct node *node)
{
    struct book *book = reader->book;
    const struct book_value *there = find_value(book, key->text);
    if (!check_name(reader, key))
        return;
    if (there) {
        complain_both(&reader->complaints, key, there->place, "value-twice",
                      "the value %s stands in this book twice", key->text);
        return;
    }
    struct book_value *values = arena_grow(reader->arena, book->values, book->value_count,
                                           &reader->value_capacity, sizeof *values);
    if (!values)
        return;
    book->values = values;
    struct book_value *value = &values[book->value_count++];
    *value = (struct book_value){.name = key->text, .place = key->place};
    if (node->type == NODE_MAPPING)
        read_declaration(reader, node, value);
    else if (node->type == NODE_SEQUENCE)
        read_entries(reader, value, node);
    else
        complain(&reader->complaints, node, "node-type",
                 arena_format(reader->arena,
                              "%s: [{from: 2026-07-01, is: %.40s, cite: \"Ordinance "
                              "2026-3\"}]",
                              key->text, node->length > 0 ? node->text : "18 in"),
                 "a list of dated entries is needed here, each with its citation");
    check_series(reader, value);
}

void read_values(struct book_reader *reader, const struct node *mapping)
{
    if (!expect_node(&reader->complaints, mapping, NODE_MAPPING, mapping_example))
        return;
    for (size_t i = 0; i < mapping->length; i++)
        read_value(reader, mapping->items[2 * i], mapping->items[2 * i + 1]);
}
