/* measure, inside the room: text in one spelling, and units read from it. */
#ifndef MEASURE_UNIT_READING_H
#define MEASURE_UNIT_READING_H
#include "unit.h"

enum { PLAIN_LONGEST = 128 };

/* Text with one spelling for what people type in several: signs, spaces, degree, ohm, powers. */
struct plain {
    char bytes[PLAIN_LONGEST + 1];
    unsigned char from[PLAIN_LONGEST + 1]; /* where a byte stood in the text read */
    size_t length;
};

/* A unit, named or put together from named ones. */
struct unit_reading {
    struct dimension dimension;
    double factor, offset;
    const struct unit *unit; /* NULL: none of our table is the same */
};

/* False: the text is longer than PLAIN_LONGEST. */
bool plain_read(struct plain *out, const char *text, size_t length);
/* The first unit of exactly this name (no alias), in one dimension or (NULL) any; or NULL. Nearly
 * all units that the code itself writes are found so, and that takes few comparisons. */
const struct unit *unit_find_named(const char *name, const struct dimension *want);
/* A unit of one dimension by its name or another spelling in the table; NULL: none. */
const struct unit *unit_find_within(const char *name, size_t length, struct dimension dimension);
/* unit_find for a name in plain spelling. */
const struct unit *unit_find_plain(const char *name, size_t length, struct dimension want);
/* Reads a unit, or an expression of units, from text in plain spelling. `want` tells °C the point
 * from °C the difference, and is tried first. False: not a unit we know. */
bool unit_read(struct unit_reading *out, const char *text, size_t length, struct dimension want);
/* A spelling that is near to the text, of a unit of `want` if there is one, or NULL. */
const char *unit_find_near(const char *text, size_t length, struct dimension want);

#endif
