#include "quantity.h"

#include <assert.h>
#include <stdio.h>
#include <string.h>
#include "measure_table.h"

#define DIMENSION(l, m, t, i, k, a)                                                                \
    {                                                                                              \
        .power = { l, m, t, i, k, a }                                                              \
    }

/* Powers of length, mass, time, current, temperature, angle. The examples stand in messages. */
static const struct measure_row table[MEASURE_COUNT] = {
    [PURE_NUMBER] = {"number", "a plain number", "0.8", DIMENSION(0, 0, 0, 0, 0, 0)},
    [LENGTH] = {"length", "a length", "18 in", DIMENSION(1, 0, 0, 0, 0, 0)},
    [AREA] = {"area", "an area", "21.1 ft²", DIMENSION(2, 0, 0, 0, 0, 0)},
    [VOLUME] = {"volume", "a volume", "7.56 in³", DIMENSION(3, 0, 0, 0, 0, 0)},
    [SECOND_MOMENT] = {"second moment of area", "a second moment of area", "20.8 in⁴",
                       DIMENSION(4, 0, 0, 0, 0, 0)},
    [MASS] = {"mass", "a mass", "40 lb", DIMENSION(0, 1, 0, 0, 0, 0)},
    [TIME] = {"time", "a time", "30 s", DIMENSION(0, 0, 1, 0, 0, 0)},
    [CURRENT] = {"current", "a current", "32 A", DIMENSION(0, 0, 0, 1, 0, 0)},
    [TEMPERATURE] = {"temperature",
                     "a temperature",
                     "-23 °C",
                     {.power = {[POWER_TEMPERATURE] = 1}, .is_point = true}},
    [TEMPERATURE_DIFFERENCE] = {"temperature difference", "a temperature difference", "30 °C",
                                DIMENSION(0, 0, 0, 0, 1, 0)},
    [ANGLE] = {"angle", "an angle", "18°", DIMENSION(0, 0, 0, 0, 0, 1)},
    [SPEED] = {"speed", "a speed", "115 mph", DIMENSION(1, 0, -1, 0, 0, 0)},
    [FORCE] = {"force", "a force", "500 lbf", DIMENSION(1, 1, -2, 0, 0, 0)},
    [LINE_LOAD] = {"line load", "a line load", "20 lbf/ft", DIMENSION(0, 1, -2, 0, 0, 0)},
    [PRESSURE] = {"pressure", "a pressure", "40 psf", DIMENSION(-1, 1, -2, 0, 0, 0)},
    [WEIGHT_DENSITY] = {"weight density", "a weight density", "35 pcf",
                        DIMENSION(-2, 1, -2, 0, 0, 0)},
    [MOMENT] = {"moment", "a moment", "800 lbf·ft", DIMENSION(2, 1, -2, 0, 0, 0)},
    [VOLTAGE] = {"voltage", "a voltage", "240 V", DIMENSION(2, 1, -3, -1, 0, 0)},
    [POWER] = {"power", "a power", "9.3 kW", DIMENSION(2, 1, -3, 0, 0, 0)},
    [RESISTANCE] = {"resistance", "a resistance", "25 Ω", DIMENSION(2, 1, -3, -2, 0, 0)},
    [LINE_RESISTANCE] = {"line resistance", "a line resistance", "1.24 Ω/kft",
                         DIMENSION(1, 1, -3, -2, 0, 0)},
    [ENERGY] = {"energy", "an energy", "13.5 kWh", DIMENSION(2, 1, -2, 0, 0, 0)},
    [CHARGE] = {"charge", "a charge", "100 Ah", DIMENSION(0, 0, 1, 1, 0, 0)},
    [FREQUENCY] = {"frequency", "a frequency", "60 Hz", DIMENSION(0, 0, -1, 0, 0, 0)},
    [PER_TEMPERATURE] = {"per temperature", "a share per temperature", "-0.27 %/°C",
                         DIMENSION(0, 0, 0, 0, -1, 0)},
    [VOLTAGE_PER_TEMPERATURE] = {"voltage per temperature", "a voltage per temperature",
                                 "-0.12 V/°C", DIMENSION(2, 1, -3, -1, -1, 0)},
    [CURRENT_PER_TEMPERATURE] = {"current per temperature", "a current per temperature",
                                 "5.1 mA/°C", DIMENSION(0, 0, 0, 1, -1, 0)},
};

const struct measure_row *measure_row_at(enum measure measure)
{
    assert((unsigned)measure < MEASURE_COUNT);
    return &table[measure];
}

const char *measure_name(enum measure measure)
{
    return measure_row_at(measure)->name;
}

struct dimension measure_dimension(enum measure measure)
{
    return measure_row_at(measure)->dimension;
}

/* The same word, where an underscore stands for a space? */
static bool is_same_name(const char *name, const char *row)
{
    for (; *name && *row; name++, row++)
        if (*name != *row && !(*name == '_' && *row == ' '))
            return false;
    return *name == *row;
}

bool measure_find(enum measure *out, const char *name)
{
    for (size_t i = 0; i < MEASURE_COUNT; i++)
        if (is_same_name(name, table[i].name)) {
            *out = (enum measure)i;
            return true;
        }
    return false;
}

bool measure_of(enum measure *out, struct dimension dimension)
{
    for (size_t i = 0; i < MEASURE_COUNT; i++)
        if (dimension_is_same(table[i].dimension, dimension)) {
            *out = (enum measure)i;
            return true;
        }
    return false;
}

bool dimension_is_pure(struct dimension dimension)
{
    return dimension_is_same(dimension, table[PURE_NUMBER].dimension);
}

static void add(char *buffer, size_t size, size_t *used, const char *word)
{
    int length = snprintf(buffer + *used, size - *used, "%s", word);

    if (length > 0 && (size_t)length < size - *used)
        *used += (size_t)length;
    else
        buffer[*used] = '\0'; /* whole words only */
}

/* The base units that have powers of this sign, joined by dots. */
static size_t add_powers(char *buffer, size_t size, size_t *used, struct dimension dimension,
                         int sign)
{
    static const char *const names[POWER_COUNT] = {"m", "kg", "s", "A", "K", "rad"};
    static const char *const raised[] = {"", "", "²", "³", "⁴"};
    size_t count = 0;

    for (size_t i = 0; i < POWER_COUNT; i++) {
        char word[24];
        int power = sign * dimension.power[i];
        if (power <= 0)
            continue;
        if (power <= 4)
            snprintf(word, sizeof word, "%s%s%s", count > 0 ? "·" : "", names[i], raised[power]);
        else
            snprintf(word, sizeof word, "%s%s^%d", count > 0 ? "·" : "", names[i], power);
        add(buffer, size, used, word);
        count++;
    }
    return count;
}

void dimension_write_units(char *buffer, size_t size, struct dimension dimension)
{
    static const struct dimension none = {{0}, false};
    size_t used = 0, denominators = 0;
    struct dimension below = dimension;

    buffer[0] = '\0';
    for (size_t i = 0; i < POWER_COUNT; i++)
        denominators += below.power[i] < 0;
    if (dimension_is_same(dimension, none))
        return;
    if (add_powers(buffer, size, &used, dimension, 1) == 0)
        add(buffer, size, &used, "1");
    if (denominators == 0)
        return;
    add(buffer, size, &used, denominators > 1 ? "/(" : "/");
    add_powers(buffer, size, &used, dimension, -1);
    if (denominators > 1)
        add(buffer, size, &used, ")");
}

void dimension_write(char *buffer, size_t size, struct dimension dimension)
{
    enum measure measure;

    if (!measure_of(&measure, dimension))
        dimension_write_units(buffer, size, dimension);
    else if (measure == MOMENT) /* physics gives both one dimension */
        snprintf(buffer, size, "%s or %s", measure_name(MOMENT), measure_name(ENERGY));
    else
        snprintf(buffer, size, "%s", measure_name(measure));
}
