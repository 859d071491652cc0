#include "quantity.h"

#include <assert.h>
#include <math.h>
#include <string.h>
#include "quantity_fault.h"
#include "unit.h"

static const double equal_share = 1e-9; /* of the larger magnitude */

static bool refuse_pair(struct quantity_fault *fault, const char *operation, struct quantity a,
                        struct quantity b)
{
    char left[80], right[80];
    bool has_point = a.dimension.is_point || b.dimension.is_point;

    fault_write_kind(left, sizeof left, a.dimension);
    fault_write_kind(right, sizeof right, b.dimension);
    return fault_set(fault, has_point ? "temperature-point" : "dimension", 0,
                     "%s and %s cannot be %s", left, right, operation);
}

static bool refuse_point(struct quantity_fault *fault, const char *operation)
{
    return fault_set(fault, "temperature-point", 0,
                     "a temperature cannot be %s; only the difference of two can", operation);
}

/* Gives the result out, if it is one. */
static bool finish(struct quantity *out, double value, struct dimension dimension,
                   const struct unit *unit, struct quantity_fault *fault)
{
    if (!isfinite(value))
        return fault_set(fault, "not-finite", 0, "the result is too large for a number");
    if (dimension.is_point && value < 0)
        return fault_set(fault, "range", 0, "the result is below absolute zero");
    *out = (struct quantity){.value = value, .dimension = dimension, .unit = unit};
    return true;
}

static bool is_difference(struct dimension dimension)
{
    return dimension_is_same(dimension, measure_dimension(TEMPERATURE_DIFFERENCE));
}

bool quantity_add(struct quantity *out, struct quantity a, struct quantity b,
                  struct quantity_fault *fault)
{
    double sum = a.value + b.value;

    if (a.dimension.is_point && is_difference(b.dimension))
        return finish(out, sum, a.dimension, a.unit, fault);
    if (is_difference(a.dimension) && b.dimension.is_point)
        return finish(out, sum, b.dimension, b.unit, fault);
    if (!dimension_is_same(a.dimension, b.dimension) || a.dimension.is_point)
        return refuse_pair(fault, "added", a, b);
    return finish(out, sum, a.dimension, a.unit, fault);
}

bool quantity_subtract(struct quantity *out, struct quantity a, struct quantity b,
                       struct quantity_fault *fault)
{
    double difference = a.value - b.value;

    if (a.dimension.is_point && b.dimension.is_point) {
        struct dimension apart = measure_dimension(TEMPERATURE_DIFFERENCE);
        const struct unit *unit = NULL; /* degrees of the scale the first was read in */
        if (a.unit)
            unit = unit_find(a.unit->name, strlen(a.unit->name), apart);
        return finish(out, difference, apart, unit, fault);
    }
    if (a.dimension.is_point && is_difference(b.dimension))
        return finish(out, difference, a.dimension, a.unit, fault);
    if (!dimension_is_same(a.dimension, b.dimension))
        return refuse_pair(fault, "subtracted", a, b);
    return finish(out, difference, a.dimension, a.unit, fault);
}

/* The powers of a with those of b added (sign 1) or taken away (-1). False: past what we hold. */
static bool combine(struct dimension *out, struct dimension a, struct dimension b, int sign)
{
    *out = (struct dimension){{0}, false};
    for (size_t i = 0; i < POWER_COUNT; i++) {
        int sum = a.power[i] + sign * b.power[i];
        if (sum < INT8_MIN || sum > INT8_MAX)
            return false;
        out->power[i] = (int8_t)sum;
    }
    return true;
}

/* The unit a product or quotient is shown in: that of an operand of the same dimension. Power and
 * time, or voltage and charge, make energy; else its dimension would be shown as a moment. */
static const struct unit *result_unit(struct quantity a, struct quantity b, struct dimension is)
{
    struct dimension power = measure_dimension(POWER), charge = measure_dimension(CHARGE);

    if (dimension_is_same(is, a.dimension) && a.unit)
        return a.unit;
    if (dimension_is_same(is, b.dimension))
        return b.unit;
    if (!dimension_is_same(is, measure_dimension(ENERGY)))
        return NULL;
    if (dimension_is_same(a.dimension, power) || dimension_is_same(b.dimension, power) ||
        dimension_is_same(a.dimension, charge) || dimension_is_same(b.dimension, charge))
        return unit_find("kWh", 3, is);
    return NULL;
}

static bool refuse_powers(struct quantity_fault *fault)
{
    return fault_set(fault, "dimension", 0, "the powers of the result's dimension are too large");
}

bool quantity_multiply(struct quantity *out, struct quantity a, struct quantity b,
                       struct quantity_fault *fault)
{
    struct dimension dimension;

    if (a.dimension.is_point || b.dimension.is_point)
        return refuse_point(fault, "multiplied");
    if (!combine(&dimension, a.dimension, b.dimension, 1))
        return refuse_powers(fault);
    return finish(out, a.value * b.value, dimension, result_unit(a, b, dimension), fault);
}

bool quantity_divide(struct quantity *out, struct quantity a, struct quantity b,
                     struct quantity_fault *fault)
{
    struct dimension dimension;

    if (a.dimension.is_point || b.dimension.is_point)
        return refuse_point(fault, "divided");
    if (b.value == 0)
        return fault_set(fault, "divide-by-zero", 0, "the divisor is zero");
    if (!combine(&dimension, a.dimension, b.dimension, -1))
        return refuse_powers(fault);
    return finish(out, a.value / b.value, dimension, result_unit(a, b, dimension), fault);
}

bool quantity_scale(struct quantity *out, struct quantity a, double factor,
                    struct quantity_fault *fault)
{
    if (a.dimension.is_point)
        return refuse_point(fault, "multiplied");
    return finish(out, a.value * factor, a.dimension, a.unit, fault);
}

bool quantity_root(struct quantity *out, struct quantity a, struct quantity_fault *fault)
{
    struct dimension half = {{0}, false};
    char kind[80];

    if (a.dimension.is_point)
        return refuse_point(fault, "put under a root");
    fault_write_kind(kind, sizeof kind, a.dimension);
    for (size_t i = 0; i < POWER_COUNT; i++) {
        if (a.dimension.power[i] % 2 != 0)
            return fault_set(fault, "dimension", 0, "%s has no square root", kind);
        half.power[i] = (int8_t)(a.dimension.power[i] / 2);
    }
    if (a.value < 0)
        return fault_set(fault, "root-negative", 0, "a negative number has no square root");
    return finish(out, sqrt(a.value), half, dimension_is_pure(half) ? a.unit : NULL, fault);
}

int number_compare(double a, double b)
{
    assert(!isnan(a) && !isnan(b));
    bool are_finite = isfinite(a) && isfinite(b);
    if (a == b || (are_finite && fabs(a - b) <= equal_share * fmax(fabs(a), fabs(b))))
        return 0;
    return a < b ? -1 : 1;
}

bool quantity_compare(int *out, struct quantity a, struct quantity b, struct quantity_fault *fault)
{
    if (!dimension_is_same(a.dimension, b.dimension))
        return refuse_pair(fault, "compared", a, b);
    if (!isfinite(a.value) || !isfinite(b.value))
        return fault_set(fault, "not-finite", 0, "a value that is not finite cannot be compared");
    *out = number_compare(a.value, b.value);
    return true;
}
