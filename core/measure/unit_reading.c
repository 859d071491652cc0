#include "unit_reading.h"

#include <ctype.h>
#include <math.h>
#include <string.h>
#include "text.h"
#include "unit_table.h"

enum { POWER_MOST = 100 }; /* far from what an int8_t holds, so one more step may be added */

struct spelling {
    const char *typed, *plain;
};

/* Longer ones first. None grows. */
static const struct spelling spellings[] = {
    {"\xE2\x88\x92", "-"},  {"\xE2\x80\x90", "-"},  {"\xE2\x80\x91", "-"}, {"\xE2\x80\x93", "-"},
    {"\xC2\xA0", " "},      {"\xE2\x80\xAF", " "},  {"\xE2\x80\x89", " "}, {"\t", " "},
    {"\xC2\xBA", "°"},      {"\xE2\x84\xA6", "Ω"},  {"\xE2\x80\xB2", "'"}, {"\xE2\x80\xB3", "\""},
    {"\xE2\x84\x83", "°C"}, {"\xE2\x84\x89", "°F"}, {"^2", "²"},           {"^3", "³"},
    {"\xE2\x8B\x85", "·"},  {"\xE2\x88\x99", "·"},  {" per ", "/"},
};

/* Can a spelling of the list above begin here? Few bytes can, and of the spaces only that of
 * " per ". The text ends after `left` bytes. */
static bool may_be_respelled(const char *text, size_t left)
{
    return (unsigned char)*text >= 0x80 || *text == '^' || *text == '\t' ||
           (*text == ' ' && left > 1 && text[1] == 'p');
}

static size_t plain_step(struct plain *out, const char *text, size_t length, size_t at)
{
    bool may_be = may_be_respelled(text + at, length - at);
    for (size_t i = 0; may_be && i < sizeof spellings / sizeof spellings[0]; i++) {
        size_t typed = strlen(spellings[i].typed), plain = strlen(spellings[i].plain);
        if (spellings[i].typed[0] != text[at] || typed > length - at ||
            memcmp(text + at, spellings[i].typed, typed) != 0)
            continue;
        memcpy(out->bytes + out->length, spellings[i].plain, plain);
        memset(out->from + out->length, (int)at, plain);
        out->length += plain;
        return typed;
    }
    out->bytes[out->length] = text[at];
    out->from[out->length++] = (unsigned char)at;
    return 1;
}

static bool is_joint(char byte)
{
    return byte == '/' || byte == '*' || byte == '^';
}

/* Drops spaces at the ends, double ones and those around / * ^. */
static void drop_spaces(struct plain *plain)
{
    size_t kept = 0;

    for (size_t i = 0; i < plain->length; i++) {
        char byte = plain->bytes[i];
        char next = i + 1 < plain->length ? plain->bytes[i + 1] : ' ';
        if (byte == ' ' &&
            (kept == 0 || next == ' ' || is_joint(next) || is_joint(plain->bytes[kept - 1])))
            continue;
        plain->bytes[kept] = byte;
        plain->from[kept++] = plain->from[i];
    }
    plain->length = kept;
    plain->bytes[kept] = '\0';
}

bool plain_read(struct plain *out, const char *text, size_t length)
{
    out->length = 0;
    if (length > PLAIN_LONGEST)
        return false;
    for (size_t at = 0; at < length;)
        at += plain_step(out, text, length, at);
    drop_spaces(out);
    return true;
}

/* A power behind a unit: ² ³ ⁴ or a digit. Returns its bytes. */
static size_t power_at(const char *text, size_t length, int *power)
{
    static const struct {
        const char *text;
        int power;
    } powers[] = {{"²", 2}, {"³", 3}, {"⁴", 4}, {"2", 2}, {"3", 3}, {"4", 4}, {"^4", 4}};

    *power = 1;
    for (size_t i = 0; i < sizeof powers / sizeof powers[0]; i++) {
        size_t bytes = strlen(powers[i].text);
        if (bytes <= length && memcmp(text, powers[i].text, bytes) == 0) {
            *power = powers[i].power;
            return bytes;
        }
    }
    return 0;
}

/* Bytes up to the next power or joint. */
static size_t name_length(const char *text, size_t length)
{
    int power;
    size_t at = 0;

    while (at < length && !strchr("/*-^", text[at]) && strncmp(text + at, "·", 2) != 0 &&
           power_at(text + at, length - at, &power) == 0)
        at++;
    return at;
}

/* Multiplies the reading by a unit to a power. */
static bool include(struct unit_reading *out, const struct unit *unit, int power)
{
    if (unit->dimension.is_point)
        return false;
    for (size_t i = 0; i < POWER_COUNT; i++) {
        int sum = out->dimension.power[i] + power * unit->dimension.power[i];
        if (sum > POWER_MOST || sum < -POWER_MOST)
            return false;
        out->dimension.power[i] = (int8_t)sum;
    }
    out->factor *= pow(unit->factor, power);
    return isfinite(out->factor) && out->factor > 0;
}

/* The sign of the next unit's power; takes the joint away. 0: no joint we read. Behind a slash only
 * slashes may follow, since a/b·c is read in two ways. */
static int joint_at(const char *text, size_t length, size_t *at, int before)
{
    size_t left = length - *at;

    if (left > 0 && text[*at] == '/') {
        *at += 1;
        return -1;
    }
    if (before < 0)
        return 0;
    if (left > 0 && (text[*at] == '*' || text[*at] == '-')) {
        *at += 1;
        return 1;
    }
    if (left > 1 && memcmp(text + *at, "·", 2) == 0) {
        *at += 2;
        return 1;
    }
    return 0;
}

/* unit[power] { joint unit[power] }, where the first may be 1 or nothing before a slash. */
static bool read_expression(struct unit_reading *out, const char *text, size_t length)
{
    static const struct dimension difference = {.power = {[POWER_TEMPERATURE] = 1}};
    size_t at = 0;
    int sign = 1;

    *out = (struct unit_reading){.factor = 1};
    if (length > 1 && text[0] == '1' && text[1] == '/')
        at = 1;
    if (length > at && text[at] == '/') {
        at++;
        sign = -1;
    }
    for (;;) {
        int power;
        size_t name = name_length(text + at, length - at);
        const struct unit *unit = unit_find_plain(text + at, name, difference);
        if (!unit)
            return false;
        at += name;
        at += power_at(text + at, length - at, &power);
        if (!include(out, unit, sign * power))
            return false;
        if (at == length)
            return true;
        sign = joint_at(text, length, &at, sign);
        if (sign == 0)
            return false;
    }
}

/* The unit of our table that is the same as what was read. */
static const struct unit *same_unit(const struct unit_reading *reading)
{
    for (size_t i = 0; i < unit_table_count; i++) {
        const struct unit *unit = &unit_table[i];
        if (dimension_is_same(unit->dimension, reading->dimension) &&
            fabs(unit->factor - reading->factor) <= 1e-12 * reading->factor)
            return unit;
    }
    return NULL;
}

bool unit_read(struct unit_reading *out, const char *text, size_t length, struct dimension want)
{
    const struct unit *unit = unit_find_plain(text, length, want);

    if (unit) {
        *out = (struct unit_reading){.dimension = unit->dimension,
                                     .factor = unit->factor,
                                     .offset = unit->offset,
                                     .unit = unit};
        return true;
    }
    if (length == 0 || !read_expression(out, text, length))
        return false;
    out->unit = same_unit(out);
    return true;
}

static bool is_same_but_for_case(const char *a, const char *b)
{
    for (; *a && *b; a++, b++)
        if (tolower((unsigned char)*a) != tolower((unsigned char)*b))
            return false;
    return *a == *b;
}

/* The spellings of the table, of one dimension or of all. */
static size_t list_spellings(const char **words, size_t most, const struct dimension *only)
{
    size_t count = 0;

    for (size_t i = 0; i < unit_table_count; i++) {
        const struct unit *unit = &unit_table[i];
        if (only && !dimension_is_same(unit->dimension, *only))
            continue;
        if (count < most)
            words[count++] = unit->name;
        for (const char *const *alias = unit->aliases; alias && *alias; alias++)
            if (count < most)
                words[count++] = *alias;
    }
    return count;
}

const char *unit_find_near(const char *text, size_t length, struct dimension want)
{
    enum { SPELLINGS = 512, SHORT = 2 };
    const char *words[SPELLINGS] = {NULL};
    char word[PLAIN_LONGEST + 1];

    if (length == 0 || length > PLAIN_LONGEST)
        return NULL;
    memcpy(word, text, length);
    word[length] = '\0';
    for (int round = 0; round < 2; round++) {
        size_t count = list_spellings(words, SPELLINGS, round == 0 ? &want : NULL);
        for (size_t i = 0; i < count; i++)
            if (is_same_but_for_case(word, words[i]))
                return words[i];
        /* Any two letters are near to some unit: no guess for so short a word. */
        const char *near = length > SHORT ? text_find_near(word, words, count) : NULL;
        if (near && strlen(near) >= SHORT)
            return near;
    }
    return NULL;
}
