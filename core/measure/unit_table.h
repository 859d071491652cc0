/* measure, inside the room: the rows of the unit table. */
#ifndef MEASURE_UNIT_TABLE_H
#define MEASURE_UNIT_TABLE_H
#include "unit.h"

/* Rows of one dimension stand together, the usual unit first. */
extern const struct unit unit_table[];
extern const size_t unit_table_count;

/* Where the rows of a dimension begin. */
struct unit_group {
    struct dimension dimension;
    uint8_t first;
};
extern const struct unit_group unit_groups[];
extern const size_t unit_group_count;

#endif
