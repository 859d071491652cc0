#include "structural.h"

#include <assert.h>
#include <string.h>

const char *const edition_words[] = {"7-10", "7-16", "7-22", NULL};
const char *const direction_words[] = {"uplift", "down", NULL};

double input_in(struct amount input, const char *unit, double absent)
{
    if (input.type == AMOUNT_NONE)
        return absent;
    if (input.type == AMOUNT_NUMBER)
        return input.quantity.value;
    assert(input.type == AMOUNT_QUANTITY);
    return quantity_as(input.quantity, unit);
}

struct amount result_in(double number, const char *unit)
{
    return amount_of_quantity(quantity_of(number, unit));
}

enum wind_edition edition_of(struct amount input)
{
    int at = 0;
    while (at < WIND_EDITIONS && strcmp(input.word, edition_words[at]) != 0)
        at++;
    assert(at < WIND_EDITIONS); /* the parameter's words let no other through */
    return (enum wind_edition)at;
}
