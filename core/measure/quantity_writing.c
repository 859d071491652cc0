#include "quantity.h"

#include <assert.h>
#include <stdio.h>
#include <string.h>
#include "measure_table.h"
#include "text.h"
#include "unit.h"

double quantity_in(struct quantity quantity, const struct unit *unit)
{
    assert(dimension_is_same(quantity.dimension, unit->dimension));
    return (quantity.value - unit->offset) / unit->factor;
}

static void write_as_written(char *buffer, size_t size, const char *written)
{
    size_t kept = text_cut(written, strlen(written), size - 1);

    memcpy(buffer, written, kept);
    buffer[kept] = '\0';
}

void quantity_write(char *buffer, size_t size, struct quantity quantity, const struct unit *unit,
                    int digits)
{
    char number[32], units[64] = "";

    assert(size >= 64);
    if (quantity.written && !unit) {
        write_as_written(buffer, size, quantity.written);
        return;
    }
    if (!unit)
        unit = quantity.unit ? quantity.unit : unit_usual(quantity.dimension);
    if (unit) {
        number_write_digits(number, sizeof number, quantity_in(quantity, unit), digits);
        const char *space = strcmp(unit->name, "°") == 0 ? "" : " ";
        snprintf(buffer, size, "%s%s%s", number, space, unit->name);
        return;
    }
    number_write_digits(number, sizeof number, quantity.value, digits);
    dimension_write_units(units, sizeof units, quantity.dimension);
    snprintf(buffer, size, "%s%s%s", number, units[0] ? " " : "", units);
}
