#include "quantity.h"

#include <assert.h>
#include <float.h>
#include <math.h>
#include <string.h>
#include "quantity_fault.h"
#include "reading.h"
#include "text.h"
#include "unit.h"

/* Where a second part begins ("6 in" of "1 ft 6 in"), or the end. A digit belongs to a unit unless
 * a space or a foot mark, with or without a dash, stands before it. */
static size_t next_part(const struct plain *plain, size_t from)
{
    for (size_t at = from + 1; at < plain->length; at++) {
        char before = plain->bytes[at - 1];
        if (!is_digit_at(plain->bytes, plain->length, at))
            continue;
        if (before == '-' && at > from + 1 && plain->bytes[at - 2] == ' ')
            return at - 1; /* "1 ft -6 in": a sign, no dash */
        if (before == ' ' || before == '\'' || before == '-')
            return at;
    }
    return plain->length;
}

/* Bytes of the unit between a number and the next part. */
static size_t unit_end(const struct plain *plain, size_t from, size_t next)
{
    size_t end = next;

    if (next == plain->length)
        return end;
    while (end > from && (plain->bytes[end - 1] == ' ' || plain->bytes[end - 1] == '-'))
        end--;
    return end;
}

static bool refuse_unit(const struct reading *reading, const char *unit, size_t length)
{
    char need[180], typed[32];
    size_t at = (size_t)(unit - reading->plain.bytes);
    static const struct dimension any = {{0}, false};
    const char *near = unit_find_near(unit, length, reading->want ? *reading->want : any);

    fault_write_need(need, sizeof need, reading->want);
    fault_write_text(typed, sizeof typed, unit, length);
    if (length == 0) {
        fault_write_text(typed, sizeof typed, reading->plain.bytes, reading->plain.length);
        return fault_set(reading->fault, "unit-missing", reading->plain.from[at],
                         "\"%s\" has no unit behind its first number; %s", typed, need);
    }
    if (near)
        return fault_set(reading->fault, "unit-unknown", reading->plain.from[at],
                         "\"%s\" is no unit known here, did you mean %s? %s", typed, near, need);
    return fault_set(reading->fault, "unit-unknown", reading->plain.from[at],
                     "\"%s\" is no unit known here; %s", typed, need);
}

/* The dimension with the powers of an acceleration added `times` times. */
static struct dimension accelerated(struct dimension dimension, int times)
{
    dimension.power[POWER_LENGTH] = (int8_t)(dimension.power[POWER_LENGTH] + times);
    dimension.power[POWER_TIME] = (int8_t)(dimension.power[POWER_TIME] - 2 * times);
    return dimension;
}

/* A unit that is known, of another dimension than the one wanted. */
static bool refuse_dimension(const struct reading *reading, struct dimension is, size_t at)
{
    char typed[48], kind[80], wanted[80], need[180];
    const struct unit *usual = unit_usual(*reading->want);
    const char *name = usual ? usual->name : "";

    fault_write_text(typed, sizeof typed, reading->text, reading->text_length);
    fault_write_kind(kind, sizeof kind, is);
    fault_write_kind(wanted, sizeof wanted, *reading->want);
    if (usual && dimension_is_same(accelerated(is, 1), *reading->want))
        return fault_set(reading->fault, "unit-wrong", reading->plain.from[at],
                         "\"%s\": lb is a mass, and %s is needed: write lbf%s%s", typed, wanted,
                         strcmp(name, "lbf") == 0 ? "" : ", here ",
                         strcmp(name, "lbf") == 0 ? "" : name);
    if (usual && dimension_is_same(accelerated(is, -1), *reading->want))
        return fault_set(reading->fault, "unit-wrong", reading->plain.from[at],
                         "\"%s\" is %s, and %s is needed: write %s", typed, kind, wanted, name);
    fault_write_need(need, sizeof need, reading->want);
    return fault_set(reading->fault, "unit-wrong", reading->plain.from[at], "\"%s\" is %s; %s",
                     typed, kind, need);
}

/* A number without a unit: a pure number, a slope, or a fault. */
static bool finish_bare(const struct reading *reading, const struct part_number *number, size_t at,
                        struct quantity *out)
{
    bool wants_angle = reading->want && dimension_is_same(*reading->want, measure_dimension(ANGLE));

    if (number->run != 0 && (wants_angle || (!reading->want && number->is_ratio))) {
        *out = (struct quantity){.value = atan2(number->rise, number->run),
                                 .dimension = measure_dimension(ANGLE)};
        return true;
    }
    if (number->is_ratio)
        return reading_refuse(reading, "number-bad", at, "is a slope");
    if (reading->want && !dimension_is_pure(*reading->want))
        return reading_refuse(reading, "unit-missing", at, "has no unit");
    *out = (struct quantity){.value = number->value};
    return true;
}

/* Makes the value from the number and its unit. */
static bool finish(const struct reading *reading, const struct part_number *number,
                   const struct unit_reading *unit, size_t at, struct quantity *out)
{
    double value = number->value * unit->factor + unit->offset;
    double smallest = fabs(number->value) > 0 && unit->offset == 0 ? DBL_MIN : 0;

    if (number->is_ratio)
        return reading_refuse(reading, "number-bad", at, "is a slope, which takes no unit");
    if (reading->want && !dimension_is_same(unit->dimension, *reading->want))
        return refuse_dimension(reading, unit->dimension, at);
    if (!isfinite(value) || fabs(value) < smallest)
        return reading_refuse(reading, "range", at, "is too large or too small");
    if (unit->dimension.is_point && value < 0) {
        if (value < -1e-9)
            return reading_refuse(reading, "range", at, "is below absolute zero");
        value = 0; /* -459.67 °F, rounded */
    }
    *out = (struct quantity){.value = value, .dimension = unit->dimension, .unit = unit->unit};
    return true;
}

/* May these two be parts of one reading: whole feet and inches, whole hours and minutes? */
static bool are_parts(const struct part_number *first, const struct unit_reading *large,
                      const struct quantity *rest)
{
    bool is_length = dimension_is_same(large->dimension, measure_dimension(LENGTH));
    bool is_time = dimension_is_same(large->dimension, measure_dimension(TIME));

    if ((!is_length && !is_time) || !dimension_is_same(rest->dimension, large->dimension))
        return false;
    if (first->run != 0 || first->value != floor(first->value))
        return false;
    return rest->value >= 0 && number_compare(rest->value, large->factor) < 0 && rest->unit &&
           rest->unit->factor < large->factor;
}

static bool read_part(const struct reading *reading, size_t from, int depth, struct quantity *out)
{
    enum { PARTS_MOST = 3 };
    const struct plain *plain = &reading->plain;
    static const struct dimension any = {{0}, false};
    struct part_number number;
    struct unit_reading unit;

    if (!reading_number(reading, from, &number) || !reading_rise_in_run(reading, from, &number))
        return false;
    size_t start = from + number.length;
    while (start < plain->length && plain->bytes[start] == ' ')
        start++;
    if (start == plain->length)
        return finish_bare(reading, &number, from, out);

    struct dimension want = reading->want ? *reading->want : any;
    size_t next = next_part(plain, start), end = unit_end(plain, start, next);
    if (!unit_read(&unit, plain->bytes + start, end - start, want))
        return refuse_unit(reading, plain->bytes + start, end - start);
    if (next == plain->length)
        return finish(reading, &number, &unit, start, out);
    if (depth == PARTS_MOST)
        return reading_refuse(reading, "number-bad", next, "has too many parts");

    struct quantity large = {0}, rest = {0};
    if (!read_part(reading, next, depth + 1, &rest))
        return false;
    if (!are_parts(&number, &unit, &rest))
        return reading_refuse(reading, "number-bad", from, "has parts that do not go together");
    if (!finish(reading, &number, &unit, start, &large))
        return false;
    large.value += signbit(number.value) ? -rest.value : rest.value;
    *out = large;
    return true;
}

static bool read(struct quantity *out, const char *text, size_t length,
                 const struct dimension *want, struct quantity_fault *fault)
{
    struct reading reading = {.want = want, .text = text, .text_length = length, .fault = fault};

    if (!plain_read(&reading.plain, text, length)) {
        reading.plain.from[0] = 0;
        return reading_refuse(&reading, "number-bad", 0, "is too long for a number and a unit");
    }
    if (reading.plain.length == 0)
        return reading_refuse(&reading, "number-bad", 0, "says nothing");
    if (memchr(reading.plain.bytes, '\0', reading.plain.length))
        return reading_refuse(&reading, "number-bad", 0, "has a NUL in it");
    return read_part(&reading, 0, 1, out);
}

/* "32 A", "-23 °C": one number and one unit of the table, as nearly all that people write. False:
 * read it with care; what is read here would come out the same there. */
static bool read_simple(struct quantity *out, const char *text, size_t length,
                        struct dimension want)
{
    double number, value;
    size_t at = number_length(text, length);
    if (!number_read(&number, text, at))
        return false;
    at += at < length && text[at] == ' ';
    for (size_t i = at; i < length; i++)
        if (text[i] == ' ' || text[i] == '-' || is_digit_at(text, length, i))
            return false; /* it may go on with a fraction or another part */
    const struct unit *unit = at < length ? unit_find_within(text + at, length - at, want) : NULL;
    if (!unit)
        return false;
    value = number * unit->factor + unit->offset;
    bool is_plain = isnormal(value) || (number == 0 && unit->offset == 0);
    if (!is_plain || (unit->dimension.is_point && value < 0))
        return false;
    *out = (struct quantity){.value = value, .dimension = unit->dimension, .unit = unit};
    return true;
}

bool quantity_read(struct quantity *out, const char *text, size_t length, struct dimension want,
                   struct quantity_fault *fault)
{
    if (read_simple(out, text, length, want))
        return true;
    return read(out, text, length, &want, fault);
}

bool quantity_read_any(struct quantity *out, const char *text, size_t length,
                       struct quantity_fault *fault)
{
    return read(out, text, length, NULL, fault);
}

/* A unit that the code itself names. */
static struct unit_reading own_unit(const char *name, const struct dimension *want)
{
    static const struct dimension any = {{0}, false};
    const struct unit *unit = unit_find_named(name, want);
    struct plain plain;
    struct unit_reading reading = {.factor = NAN};

    if (unit)
        return (struct unit_reading){unit->dimension, unit->factor, unit->offset, unit};
    bool is_known = plain_read(&plain, name, strlen(name)) &&
                    unit_read(&reading, plain.bytes, plain.length, want ? *want : any);
    assert(is_known);
    (void)is_known;
    return reading;
}

struct quantity quantity_of(double value, const char *unit)
{
    struct unit_reading reading = own_unit(unit, NULL);

    assert(isfinite(value));
    return (struct quantity){.value = value * reading.factor + reading.offset,
                             .dimension = reading.dimension,
                             .unit = reading.unit};
}

double quantity_as(struct quantity quantity, const char *unit)
{
    const struct unit *written = quantity.unit;

    /* Mostly it is asked for in the unit in which it was told. */
    if (written && strcmp(written->name, unit) == 0 &&
        dimension_is_same(written->dimension, quantity.dimension))
        return (quantity.value - written->offset) / written->factor;
    struct unit_reading reading = own_unit(unit, &quantity.dimension);

    assert(dimension_is_same(reading.dimension, quantity.dimension));
    return (quantity.value - reading.offset) / reading.factor;
}
