#include "model.h"

#include <stdio.h>
#include <string.h>

#include "text.h"
#include "unit.h"

#define VOCABULARY(id, ...) static const char *const words_of_##id[] = {__VA_ARGS__, NULL};
#include "facts/words.facts"
#undef VOCABULARY

static const struct vocabulary vocabularies[VOCABULARY_COUNT] = {
#define VOCABULARY(id, ...)                                                                        \
    [WORDS_##id] = {#id, words_of_##id, sizeof words_of_##id / sizeof words_of_##id[0] - 1},
#include "facts/words.facts"
#undef VOCABULARY
};

#include "facts/pass_over.facts"
#undef ABSENT_MEANS
#define ABSENT_MEANS(slot, means, why) [SLOT_OF(OF, slot)] = {means, why},
#define BEGIN(kind)                    static const struct absence absence_of_##kind[SLOT_COUNT_##kind + 1] = {
#define END(kind)                                                                                  \
    [SLOT_COUNT_##kind] = {NULL, NULL}                                                             \
    }                                                                                              \
    ;
#include "facts/all.facts"
#include "facts/forget.facts"

/* What a person might write, where a number out of the range alone would be a strange one. */
#include "facts/pass_over.facts"
#undef EXAMPLE
#define EXAMPLE(slot, number) [SLOT_OF(OF, slot)] = (number),
#define BEGIN(kind)           static const double example_of_##kind[SLOT_COUNT_##kind + 1] = {
#define END(kind)                                                                                  \
    [SLOT_COUNT_##kind] = 0                                                                        \
    }                                                                                              \
    ;
#include "facts/all.facts"
#include "facts/forget.facts"

#define USUAL_PASTE(of)    example_of_##of
#define USUAL_OF(of)       USUAL_PASTE(of)
#define USUAL(slot)        .usual = &USUAL_OF(OF)[SLOT_OF(OF, slot)]
#define COMMON(slot, says) .name = #slot, .sentence = says
#define ROW(slot, ...)     [SLOT_OF(OF, slot)] = {__VA_ARGS__},
#define QUANTITY(slot, of_measure, of_unit, from, to, says)                                        \
    ROW(slot, COMMON(slot, says), .type = TYPE_QUANTITY, .measure = of_measure, .unit = of_unit,   \
        .low = from, .high = to, USUAL(slot))
#define NUMBER(slot, from, to, says)                                                               \
    ROW(slot, COMMON(slot, says), .type = TYPE_NUMBER, .low = from, .high = to, USUAL(slot))
#define COUNT(slot, from, to, says)                                                                \
    ROW(slot, COMMON(slot, says), .type = TYPE_COUNT, .low = from, .high = to, USUAL(slot))
#define CHOICE(slot, words, says)                                                                  \
    ROW(slot, COMMON(slot, says), .type = TYPE_CHOICE, .vocabulary = &vocabularies[WORDS_##words])
#define WORDS(slot, words, says)                                                                   \
    ROW(slot, COMMON(slot, says), .type = TYPE_WORDS, .vocabulary = &vocabularies[WORDS_##words])
#define WORD_LIST(slot, words, says)                                                               \
    ROW(slot, COMMON(slot, says), .type = TYPE_WORD_LIST,                                          \
        .vocabulary = &vocabularies[WORDS_##words])
#define TEXT(slot, right, says)   ROW(slot, COMMON(slot, says), .type = TYPE_TEXT, .example = right)
#define TEXTS(slot, right, says)  ROW(slot, COMMON(slot, says), .type = TYPE_TEXTS, .example = right)
#define YESNO(slot, says)         ROW(slot, COMMON(slot, says), .type = TYPE_YESNO)
#define DATE(slot, says)          ROW(slot, COMMON(slot, says), .type = TYPE_DATE)
#define POINT(slot, says)         ROW(slot, COMMON(slot, says), .type = TYPE_POINT)
#define POINTS(slot, says)        ROW(slot, COMMON(slot, says), .type = TYPE_POINTS)
#define ONE(slot, of, says)       ROW(slot, COMMON(slot, says), .type = TYPE_ONE, .kind = KIND_##of)
#define LIST(slot, of, says)      ROW(slot, COMMON(slot, says), .type = TYPE_LIST, .kind = KIND_##of)
#define REFERENCE(slot, to, says) ROW(slot, COMMON(slot, says), .type = TYPE_REFERENCE, .kinds = to)
#define REFERENCES(slot, to, says)                                                                 \
    ROW(slot, COMMON(slot, says), .type = TYPE_REFERENCES, .kinds = to)
#define INVERSE(slot, of, by, says)                                                                \
    ROW(slot, COMMON(slot, says), .type = TYPE_INVERSE, .kind = KIND_##of, .via = SLOT_##of##_##by)
#define EXAMPLE(...)
#define ABSENT_MEANS(...)
#define BEGIN(kind) static const struct fact_row rows_of_##kind[] = {
#define END(kind)                                                                                  \
    }                                                                                              \
    ;
#include "facts/all.facts"
#include "facts/forget.facts"

const struct kind all_kinds[KIND_COUNT] = {
#define KIND(kind, how_many, says)                                                                 \
    [KIND_##kind] = {KIND_##kind,      #kind, how_many, says, rows_of_##kind, absence_of_##kind,   \
                     SLOT_COUNT_##kind},
#include "facts/kinds.facts"
#undef KIND
};

enum kind_id kind_find(const char *name)
{
    int id = 0;
    while (id < KIND_COUNT && !text_is_same(all_kinds[id].name, name))
        id++;
    return (enum kind_id)id;
}

int kind_find_fact_from(const struct kind *kind, size_t first, const char *name)
{
    size_t slot = first;
    for (size_t i = 0; i < kind->fact_count; i++, slot++) {
        slot = slot < kind->fact_count ? slot : 0;
        if (text_is_same(kind->facts[slot].name, name))
            return (int)slot;
    }
    return -1;
}

int kind_find_fact(const struct kind *kind, const char *name)
{
    return kind_find_fact_from(kind, 0, name);
}

const struct vocabulary *vocabulary_at(enum vocabulary_id id)
{
    return &vocabularies[id];
}

const char *vocabulary_find(const struct vocabulary *vocabulary, const char *word)
{
    for (size_t i = 0; i < vocabulary->count; i++)
        if (text_is_same(vocabulary->words[i], word))
            return vocabulary->words[i];
    return NULL;
}

/* The one that is said, else a round number in the range. */
static double example_number(const struct fact_row *row)
{
    if (*row->usual != 0)
        return *row->usual;
    static const double round[] = {1, 2, 4, 10, 24, 40, 60, 120, 240, 0.5, 0.1, 0, -0.3};
    for (size_t i = 0; i < sizeof round / sizeof round[0]; i++)
        if (round[i] >= row->low && round[i] <= row->high)
            return round[i];
    return row->low;
}

static void write_number_example(char *buffer, size_t size, const struct fact_row *row)
{
    enum { DIGITS = 6 };
    char number[32];
    number_write_digits(number, sizeof number, example_number(row), DIGITS);
    text_append(buffer, size, number);
    if (row->type != TYPE_QUANTITY)
        return;
    text_append(buffer, size, " ");
    text_append(buffer, size, row->unit);
}

static void write_quantity_example(char *buffer, size_t size, const struct fact_row *row)
{
    if (row->measure == ANGLE)
        text_append(buffer, size, row->high > 80 ? "180°" : "4/12");
    else
        write_number_example(buffer, size, row);
}

static void append_three(char *buffer, size_t size, const char *a, const char *b, const char *c)
{
    text_append(buffer, size, a);
    text_append(buffer, size, b);
    text_append(buffer, size, c);
}

/* The first fact of a thing with its own example, and that others follow. */
static void write_thing_example(char *buffer, size_t size, const char *before,
                                const struct fact_row *row, const char *after)
{
    char first[160];
    const struct fact_row *fact = &all_kinds[row->kind].facts[0];
    if (fact->type == TYPE_POINTS) /* too long to show within another */
        snprintf(first, sizeof first, "%s: …", fact->name);
    else
        fact_write_example(first, sizeof first, fact);
    append_three(buffer, size, before, first, after);
}

void fact_write_example(char *buffer, size_t size, const struct fact_row *row)
{
    const char *word = row->vocabulary ? row->vocabulary->words[0] : "";
    const char *second =
        row->vocabulary && row->vocabulary->count > 1 ? row->vocabulary->words[1] : word;
    buffer[0] = '\0';
    if (row->type != TYPE_INVERSE)
        append_three(buffer, size, row->name, ": ", "");
    switch (row->type) {
    case TYPE_QUANTITY:
        write_quantity_example(buffer, size, row);
        break;
    case TYPE_NUMBER:
    case TYPE_COUNT:
        write_number_example(buffer, size, row);
        break;
    case TYPE_CHOICE:
        text_append(buffer, size, word);
        break;
    case TYPE_WORDS:
    case TYPE_WORD_LIST:
        append_three(buffer, size, "[", word, ", ");
        append_three(buffer, size, second, "]", "");
        break;
    case TYPE_TEXT:
    case TYPE_TEXTS:
        text_append(buffer, size, row->example);
        break;
    case TYPE_YESNO:
        text_append(buffer, size, "yes");
        break;
    case TYPE_DATE:
        text_append(buffer, size, "2026-08-01");
        break;
    case TYPE_POINT:
        text_append(buffer, size, "[3 ft, 18 in]");
        break;
    case TYPE_POINTS:
        text_append(buffer, size, "[[0 ft, 0 ft], [30 ft, 0 ft], [30 ft, 16 ft], [0 ft, 16 ft]]");
        break;
    case TYPE_ONE:
        write_thing_example(buffer, size, "{", row, ", …}");
        break;
    case TYPE_LIST:
        append_three(buffer, size, "[{name: ", all_kinds[row->kind].name, "-1, ");
        write_thing_example(buffer, size, "", row, ", …}]");
        break;
    case TYPE_REFERENCE:
        text_append(buffer, size, "the-name");
        break;
    case TYPE_REFERENCES:
        text_append(buffer, size, "[one-name, another-name]");
        break;
    case TYPE_INVERSE: /* told from the other side */
        append_three(buffer, size, all_kinds[row->kind].facts[row->via].name, ": its-name, of a ",
                     all_kinds[row->kind].name);
        break;
    }
}

void kinds_write(char *buffer, size_t size, kind_set set)
{
    size_t length = 0;
    buffer[0] = '\0';
    for (size_t id = 0; id < KIND_COUNT && length < size; id++) {
        if (!(set >> id & 1))
            continue;
        set &= ~((kind_set)1 << id);
        const char *between = length == 0 ? "" : set != 0 ? ", " : " or ";
        length +=
            (size_t)snprintf(buffer + length, size - length, "%s%s", between, all_kinds[id].name);
    }
}
