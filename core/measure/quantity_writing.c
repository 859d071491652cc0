#include "quantity.h"

#include <assert.h>
#include <string.h>
#include "measure_table.h"
#include "text.h"
#include "unit.h"

double quantity_in(struct quantity quantity, const struct unit *unit)
{
    assert(dimension_is_same(quantity.dimension, unit->dimension));
    return (quantity.value - unit->offset) / unit->factor;
}

void quantity_write(char *buffer, size_t size, struct quantity quantity, const struct unit *unit,
                    int digits)
{
    char units[64] = "";

    assert(size >= 64);
    if (quantity.written && !unit) {
        buffer[0] = '\0';
        text_append(buffer, size, quantity.written);
        return;
    }
    if (!unit)
        unit = quantity.unit ? quantity.unit : unit_usual(quantity.dimension);
    if (!unit)
        dimension_write_units(units, sizeof units, quantity.dimension);
    const char *name = unit ? unit->name : units;
    number_write_digits(buffer, size, unit ? quantity_in(quantity, unit) : quantity.value, digits);
    if (name[0] != '\0' && strcmp(name, "°") != 0)
        text_append(buffer, size, " ");
    text_append(buffer, size, name);
}
