#include "reading.h"

#include <math.h>
#include <string.h>
#include "quantity_fault.h"
#include "text.h"

bool reading_refuse(const struct reading *reading, const char *code, size_t at, const char *why)
{
    char need[180], typed[48];

    fault_write_need(need, sizeof need, reading->want);
    fault_write_text(typed, sizeof typed, reading->text, reading->text_length);
    return fault_set(reading->fault, code, reading->plain.from[at], "\"%s\" %s; %s", typed, why,
                     need);
}

bool is_digit_at(const char *text, size_t length, size_t at)
{
    return at < length && text[at] >= '0' && text[at] <= '9';
}

/* Bytes of a number without sign or exponent, as they stand in a fraction. */
static size_t plain_number_length(const char *text, size_t length)
{
    size_t at = 0;

    while (is_digit_at(text, length, at))
        at++;
    if (at > 0 && at < length && text[at] == '.' && is_digit_at(text, length, at + 1))
        for (at++; is_digit_at(text, length, at);)
            at++;
    return at;
}

/* "n/m" or "n:m" at the start. Returns its bytes, 0: none. */
static size_t read_fraction(const char *text, size_t length, double *rise, double *run)
{
    size_t above = plain_number_length(text, length);

    if (above == 0 || above + 1 >= length || (text[above] != '/' && text[above] != ':'))
        return 0;
    size_t below = plain_number_length(text + above + 1, length - above - 1);
    if (below == 0 || !number_read(rise, text, above) || !number_read(run, text + above + 1, below))
        return 0;
    return above + 1 + below;
}

/* The words a number may be written in elsewhere, for a better message. */
static const char *why_no_number(const char *text, size_t length)
{
    size_t sign = length > 0 && (text[0] == '-' || text[0] == '+');
    const char *digits = text + sign;
    size_t left = length - sign;

    if (left >= 3 && (strncmp(digits, "nan", 3) == 0 || strncmp(digits, "NaN", 3) == 0 ||
                      strncmp(digits, ".nan", 4) == 0 || strncmp(digits, ".NaN", 4) == 0 ||
                      strncmp(digits, "NAN", 3) == 0))
        return "is not a number";
    if (left >= 3 && (strncmp(digits, "inf", 3) == 0 || strncmp(digits, "Inf", 3) == 0 ||
                      strncmp(digits, ".inf", 4) == 0 || strncmp(digits, "INF", 3) == 0))
        return "is not a finite number";
    if (left > 1 && digits[0] == '.' && is_digit_at(digits, left, 1))
        return "lacks the 0 before the point";
    return "does not begin with a number";
}

/* What stands behind a number and makes it a wrong one, or NULL. */
static const char *why_bad_end(const char *text, size_t length, size_t at)
{
    if (at >= length)
        return NULL;
    if (at == 1 && text[0] == '0' && (text[at] == 'x' || text[at] == 'X'))
        return "is a hexadecimal number, write a decimal one";
    if (text[at] == ',')
        return "has a comma in its number, write it with a point or without";
    if (text[at] == '.' || text[at] == '_')
        return "has a number that goes on in a way not understood";
    return NULL;
}

/* A whole number that goes on with a fraction: "1-1/2", "1 1/2". Adds the bytes it takes. */
static bool add_mixed_fraction(const struct reading *reading, const char *text, size_t length,
                               struct part_number *out)
{
    double rise, run;
    size_t at = out->length;

    if (at + 1 >= length || (text[at] != ' ' && text[at] != '-'))
        return true;
    size_t fraction = read_fraction(text + at + 1, length - at - 1, &rise, &run);
    if (fraction == 0)
        return true;
    size_t from = (size_t)(text - reading->plain.bytes);
    if (rise != floor(rise) || run != floor(run) || rise >= run || out->value != floor(out->value))
        return reading_refuse(reading, "number-bad", from, "has a fraction that is not understood");
    out->value += rise / run;
    out->length += 1 + fraction;
    return true;
}

bool reading_number(const struct reading *reading, size_t from, struct part_number *out)
{
    const char *text = reading->plain.bytes + from;
    size_t length = reading->plain.length - from;
    size_t sign = length > 0 && (text[0] == '-' || text[0] == '+');
    double factor = sign > 0 && text[0] == '-' ? -1 : 1;

    *out = (struct part_number){0};
    size_t bytes = number_length(text, length);
    if (bytes == 0)
        return reading_refuse(reading, "number-bad", from, why_no_number(text, length));
    const char *bad = why_bad_end(text, length, bytes);
    if (bad)
        return reading_refuse(reading, "number-bad", from, bad);
    size_t fraction = read_fraction(text + sign, length - sign, &out->rise, &out->run);
    if (fraction > 0) {
        if (out->run == 0)
            return reading_refuse(reading, "number-bad", from, "divides by zero");
        out->is_ratio = memchr(text, ':', sign + fraction) != NULL;
        out->length = sign + fraction;
        out->rise *= factor;
        out->value = out->rise / out->run;
        bad = why_bad_end(text, length, out->length);
        return !bad || reading_refuse(reading, "number-bad", from, bad);
    }
    if (!number_read(&out->value, text, bytes))
        return reading_refuse(reading, "range", from,
                              "has a number too long, too large or too small");
    out->value = fabs(out->value);
    out->length = bytes;
    if (!add_mixed_fraction(reading, text, length, out))
        return false;
    out->value *= factor;
    return true;
}

bool reading_rise_in_run(const struct reading *reading, size_t from, struct part_number *number)
{
    static const char between[] = "in";
    enum { LETTERS = sizeof between - 1 };
    const char *text = reading->plain.bytes + from + number->length;
    size_t length = reading->plain.length - from - number->length, at = 0;
    double run;

    if (from != 0 || number->run != 0 || reading->want == NULL ||
        !dimension_is_same(*reading->want, measure_dimension(ANGLE)))
        return true;
    char gap = length > 0 ? text[0] : '\0'; /* "4 in 12", "4-in-12", "4in12" */
    at += gap == ' ' || gap == '-';
    if (length < at + LETTERS || strncmp(text + at, between, LETTERS) != 0)
        return true;
    at += LETTERS;
    at += at < length && (text[at] == ' ' || text[at] == '-');
    size_t digits = plain_number_length(text + at, length - at);
    if (digits == 0 || at + digits != length || !number_read(&run, text + at, digits))
        return true;
    if (!(run > 0))
        return reading_refuse(reading, "number-bad", from, "divides by zero");
    *number = (struct part_number){.value = number->value / run,
                                   .length = reading->plain.length,
                                   .rise = number->value,
                                   .run = run,
                                   .is_ratio = true};
    return true;
}
