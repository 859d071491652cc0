#include "unit.h"

#include <stdatomic.h>
#include <string.h>
#include "text.h"
#include "unit_reading.h"
#include "unit_table.h"

const struct unit *unit_at(size_t at)
{
    return at < unit_table_count ? &unit_table[at] : NULL;
}

/* Its rows are from here on; unit_table_count: it has none. */
static size_t find_first(struct dimension dimension)
{
    for (size_t i = 0; i < unit_group_count; i++)
        if (dimension_is_same(unit_groups[i].dimension, dimension))
            return unit_groups[i].first;
    return unit_table_count;
}

const struct unit *unit_usual(struct dimension dimension)
{
    return dimension_is_pure(dimension) ? NULL : unit_at(find_first(dimension));
}

static bool is_word(const char *word, const char *name, size_t length)
{
    return word[0] == name[0] && strlen(word) == length && memcmp(word, name, length) == 0;
}

static bool is_spelled(const struct unit *unit, const char *name, size_t length)
{
    if (is_word(unit->name, name, length))
        return true;
    if (!unit->aliases)
        return false;
    for (const char *const *alias = unit->aliases; *alias; alias++)
        if (is_word(*alias, name, length))
            return true;
    return false;
}

static const struct unit *seek_named(const char *name, const struct dimension *want)
{
    for (size_t i = want ? find_first(*want) : 0; i < unit_table_count; i++)
        if (want && !dimension_is_same(unit_table[i].dimension, *want))
            return NULL;
        else if (unit_table[i].name[0] == name[0] && strcmp(unit_table[i].name, name) == 0)
            return &unit_table[i];
    return NULL;
}

enum { MEMO = 64 };

/* Where to note a name; any three letters will do. */
static size_t memo_of(const char *name)
{
    unsigned sum = (unsigned char)name[0];
    for (int i = 1; i < 3 && name[i - 1] != '\0'; i++)
        sum = sum * 7 + (unsigned char)name[i];
    return sum % MEMO;
}

const struct unit *unit_find_named(const char *name, const struct dimension *want)
{
    /* The code asks for the same few units thousands of times. Whoever writes a note here writes
     * what anyone would: a unit whose name no other has. */
    static const struct unit *_Atomic notes[MEMO];
    const struct unit *_Atomic *note = &notes[memo_of(name)];
    const struct unit *unit = atomic_load_explicit(note, memory_order_relaxed);
    if (unit && text_is_same(unit->name, name) &&
        (!want || dimension_is_same(unit->dimension, *want)))
        return unit;
    unit = seek_named(name, want);
    if (unit && unit->dimension.power[POWER_TEMPERATURE] == 0) /* °C is a point and a difference */
        atomic_store_explicit(note, unit, memory_order_relaxed);
    return unit;
}

const struct unit *unit_find_within(const char *name, size_t length, struct dimension dimension)
{
    for (size_t at = find_first(dimension);
         at < unit_table_count && dimension_is_same(unit_table[at].dimension, dimension); at++)
        if (is_spelled(&unit_table[at], name, length))
            return &unit_table[at];
    return NULL;
}

const struct unit *unit_find_plain(const char *name, size_t length, struct dimension want)
{
    if (length == 0)
        return NULL;
    /* Nearly always the unit is of the dimension wanted, and that takes few comparisons. */
    const struct unit *unit = unit_find_within(name, length, want);
    if (unit)
        return unit;
    for (size_t i = 0; i < unit_table_count; i++)
        if (is_spelled(&unit_table[i], name, length))
            return &unit_table[i];
    return NULL;
}

const struct unit *unit_find(const char *name, size_t length, struct dimension want)
{
    struct plain plain;

    if (!plain_read(&plain, name, length))
        return NULL;
    return unit_find_plain(plain.bytes, plain.length, want);
}

void unit_write_names(char *buffer, size_t size, struct dimension dimension)
{
    static const char more[] = ", …";
    size_t used = 0;

    buffer[0] = '\0';
    for (size_t i = 0; i < unit_table_count; i++) {
        if (!dimension_is_same(unit_table[i].dimension, dimension))
            continue;
        const char *name = unit_table[i].name;
        size_t length = strlen(name) + (used > 0 ? 2 : 0);
        if (used + length + sizeof more > size) {
            if (used > 0)
                memcpy(buffer + used, more, sizeof more);
            return;
        }
        if (used > 0)
            memcpy(buffer + used, ", ", 2);
        memcpy(buffer + used + length - strlen(name), name, strlen(name) + 1);
        used += length;
    }
}
