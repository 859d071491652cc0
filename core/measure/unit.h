/* Units: a table of the trade's units and expressions built from them (lbf/ft², Ω/kft). */
#ifndef MEASURE_UNIT_H
#define MEASURE_UNIT_H
#include "quantity.h"

struct unit {
    char name[8]; /* as we print it: "°C", "psf", "in"; in the row, so that a look for it stays
                     there */
    struct dimension dimension;
    double factor;              /* SI value = number × factor + offset */
    double offset;              /* temperature points only */
    const char *const *aliases; /* other spellings that are read, ends in NULL; may be NULL */
    const char *gnu;            /* the same unit as GNU units names it, for the tests */
};

/* A named unit by any of its spellings, or NULL. `want` tells °C the point from °C the difference.
 */
const struct unit *unit_find(const char *name, size_t length, struct dimension want);
/* The unit a dimension is usually shown in, or NULL where it has none with a name. */
const struct unit *unit_usual(struct dimension dimension);
/* All named units, in the table's order; NULL past the end. */
const struct unit *unit_at(size_t at);
/* The names of the units of one dimension, for an error: "in, ft, yd, mm, cm, m". */
void unit_write_names(char *buffer, size_t size, struct dimension dimension);

#endif
