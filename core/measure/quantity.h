/* measure: quantities with physical dimension, units, dates. */
#ifndef MEASURE_QUANTITY_H
#define MEASURE_QUANTITY_H
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include "arena.h"

enum {
    POWER_LENGTH,
    POWER_MASS,
    POWER_TIME,
    POWER_CURRENT,
    POWER_TEMPERATURE,
    POWER_ANGLE,
    POWER_COUNT
};

/* Powers of the base dimensions. A temperature (a point on the scale) is told from a temperature
 * difference by `is_point`. Compare with dimension_is_same. */
struct dimension {
    int8_t power[POWER_COUNT];
    bool is_point;
};

/* The dimensions that have a name in the trade; the names stand in fact rows and in books. */
enum measure {
    PURE_NUMBER,
    LENGTH,
    AREA,
    VOLUME,        /* also a section modulus, in³ */
    SECOND_MOMENT, /* in⁴ */
    MASS,
    TIME,
    CURRENT,
    TEMPERATURE, /* a point on the scale */
    TEMPERATURE_DIFFERENCE,
    ANGLE,
    SPEED,
    FORCE,
    LINE_LOAD,      /* lbf/ft; also fastener withdrawal, lbf/in */
    PRESSURE,       /* psf, psi */
    WEIGHT_DENSITY, /* lbf/ft³ */
    MOMENT,
    VOLTAGE,
    POWER,
    RESISTANCE,
    LINE_RESISTANCE, /* Ω/kft */
    ENERGY,
    CHARGE, /* Ah */
    FREQUENCY,
    PER_TEMPERATURE,         /* %/°C */
    VOLTAGE_PER_TEMPERATURE, /* V/°C */
    CURRENT_PER_TEMPERATURE, /* A/°C */
    MEASURE_COUNT
};

struct unit; /* unit.h */

/* A finite value in coherent SI (m, kg, s, A, K, rad; a temperature point in K), with the unit it
 * is best shown in. `written` is the text it was read from while it is unchanged since; else NULL.
 */
struct quantity {
    double value;
    struct dimension dimension;
    const struct unit *unit; /* NULL: the dimension's usual unit */
    const char *written;
};

const char *measure_name(enum measure measure);         /* "length" */
bool measure_find(enum measure *out, const char *name); /* by that name */
struct dimension measure_dimension(enum measure measure);
bool measure_of(enum measure *out, struct dimension dimension); /* its name, if it has one */
static inline bool dimension_is_same(struct dimension a, struct dimension b)
{
    return memcmp(a.power, b.power, sizeof a.power) == 0 && a.is_point == b.is_point;
}
bool dimension_is_pure(struct dimension dimension); /* a plain number */
/* "length", "temperature difference", else "m·kg/s²" and the like. Buffer of at least 64 bytes. */
void dimension_write(char *buffer, size_t size, struct dimension dimension);

/* Why a reading or an operation did not come off. */
struct quantity_fault {
    /* Reading: "number-bad", "unit-missing", "unit-unknown", "unit-wrong", "range". Arithmetic:
     * "dimension", "temperature-point", "not-finite", "divide-by-zero", "root-negative", "range"
     * (absolute zero). */
    const char *code;
    size_t offset;     /* bytes into the text read */
    char message[200]; /* one sentence that says what was expected */
};

/* Reads "18 in", "1 ft 6 in", "5/16 in", "1-1/2 in", "4/12" (a slope, where an angle is wanted),
 * "-23 °C", "9.3 kW", "-0.27 %/°C". A temperature difference is written in °C or °F too. `want` is
 * the dimension that it must have. `written` is left NULL. False: *fault says why. */
bool quantity_read(struct quantity *out, const char *text, size_t length, struct dimension want,
                   struct quantity_fault *fault);
/* The same for any dimension at all (a desk calculator's input, a Lua literal). "4:12" is a slope,
 * "4/12" a plain number; °C is a point on the scale, Δ°C a difference. */
bool quantity_read_any(struct quantity *out, const char *text, size_t length,
                       struct quantity_fault *fault);
/* The value in a unit of its dimension. The unit must fit. */
double quantity_in(struct quantity quantity, const struct unit *unit);
/* As written, else the value in `unit` (NULL: its own, else the dimension's usual one) to at most
 * `digits` significant digits (12: exact). Buffer of at least 64 bytes. */
void quantity_write(char *buffer, size_t size, struct quantity quantity, const struct unit *unit,
                    int digits);
/* A quantity from a value in a unit named by text the caller knows to be right (asserts). */
struct quantity quantity_of(double value, const char *unit);
/* The value of a quantity in a unit named by text the caller knows to be right (asserts). */
double quantity_as(struct quantity quantity, const char *unit);

/* Arithmetic. Operands of the wrong dimension and results that are not finite: false and *fault.
 * Temperature points: t-t=d, t±d=t, d+t=t; anything else with a point is a fault. */
bool quantity_add(struct quantity *out, struct quantity a, struct quantity b,
                  struct quantity_fault *fault);
bool quantity_subtract(struct quantity *out, struct quantity a, struct quantity b,
                       struct quantity_fault *fault);
bool quantity_multiply(struct quantity *out, struct quantity a, struct quantity b,
                       struct quantity_fault *fault);
bool quantity_divide(struct quantity *out, struct quantity a, struct quantity b,
                     struct quantity_fault *fault);
bool quantity_scale(struct quantity *out, struct quantity a, double factor,
                    struct quantity_fault *fault);
bool quantity_root(struct quantity *out, struct quantity a, struct quantity_fault *fault);
/* -1, 0, 1 in *out; equal within 1e-9 of the larger magnitude. Different dimensions: false. */
bool quantity_compare(int *out, struct quantity a, struct quantity b, struct quantity_fault *fault);
/* The same comparison for plain numbers. */
int number_compare(double a, double b);

#endif
