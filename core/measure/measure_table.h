/* measure, inside the room: the rows behind the names of dimensions. */
#ifndef MEASURE_MEASURE_TABLE_H
#define MEASURE_MEASURE_TABLE_H
#include "quantity.h"

struct measure_row {
    const char *name;    /* "area" */
    const char *article; /* "an area" */
    const char *example; /* "21.1 ft²" */
    struct dimension dimension;
};

const struct measure_row *measure_row_at(enum measure measure);
/* In base units alone: "m·kg/s²", empty for a pure number. Buffer of at least 64 bytes. */
void dimension_write_units(char *buffer, size_t size, struct dimension dimension);

#endif
