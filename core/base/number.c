#include "text.h"

#include <assert.h>
#include <float.h>
#include <locale.h>
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { NUMBER_LONGEST = 64, DIGITS_MOST = 12, EXPONENT_LEAST = -5, EXPONENT_MOST = 14 };

static bool is_digit(char byte)
{
    return byte >= '0' && byte <= '9';
}

static size_t skip_digits(const char *bytes, size_t length, size_t at)
{
    while (at < length && is_digit(bytes[at]))
        at++;
    return at;
}

size_t number_length(const char *bytes, size_t length)
{
    size_t at = 0, end;

    if (at < length && (bytes[at] == '+' || bytes[at] == '-'))
        at++;
    end = skip_digits(bytes, length, at);
    if (end == at)
        return 0;
    at = end;
    if (at + 1 < length && bytes[at] == '.' && is_digit(bytes[at + 1]))
        at = skip_digits(bytes, length, at + 1);
    if (at + 1 < length && (bytes[at] == 'e' || bytes[at] == 'E')) {
        size_t digits = at + 1;
        if (bytes[digits] == '+' || bytes[digits] == '-')
            digits++;
        end = skip_digits(bytes, length, digits);
        if (end > digits) /* else it is no exponent but what stands behind the number */
            at = end;
    }
    return at;
}

/* strtod with a point for a point, whatever the host has made of its locale. In a thread of its
 * own making the "C" locale costs no memory. */
static double read_free_of_locale(const char *text)
{
    locale_t plain = newlocale(LC_ALL_MASK, "C", (locale_t)0);
    locale_t before = plain ? uselocale(plain) : (locale_t)0;
    double number = strtod(text, NULL);

    if (plain) {
        uselocale(before);
        freelocale(plain);
    }
    return number;
}

/* A number of at most 15 digits over a power of ten of at most 22: both are exact in a double, so
 * one division rounds it right (W. D. Clinger, How to Read Floating Point Numbers Accurately,
 * 1990). Nearly all that people write is such a number. False: not so. */
static bool read_short(double *out, const char *bytes, size_t length)
{
    static const double tens[] = {1e0, 1e1, 1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                  1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};
    enum { EXACT_DIGITS = 15 };
    int64_t digits = 0;
    size_t behind = 0, sign = bytes[0] == '-' || bytes[0] == '+';
    bool is_behind = false;

    if (length - sign > EXACT_DIGITS)
        return false;
    for (size_t i = sign; i < length; i++) {
        if (bytes[i] == '.')
            is_behind = true;
        else if (!is_digit(bytes[i]))
            return false;
        else {
            digits = digits * 10 + (bytes[i] - '0');
            behind += is_behind;
        }
    }
    double number = (double)digits / tens[behind];
    *out = bytes[0] == '-' ? -number : number;
    return true;
}

/* Has the number a digit other than 0 before its exponent? */
static bool is_other_than_zero(const char *text)
{
    return text[strcspn(text, "123456789eE")] != '\0' &&
           strcspn(text, "123456789") < strcspn(text, "eE");
}

bool number_read(double *out, const char *bytes, size_t length)
{
    char text[NUMBER_LONGEST + 1];

    if (length == 0 || length > NUMBER_LONGEST || number_length(bytes, length) != length)
        return false;
    if (read_short(out, bytes, length))
        return true;
    memcpy(text, bytes, length);
    text[length] = '\0';

    double number = read_free_of_locale(text);
    if (!isfinite(number))
        return false;
    if (fabs(number) < DBL_MIN && is_other_than_zero(text)) /* too small to hold all digits? */
        return false;
    *out = number;
    return true;
}

/* The significant digits of a number without those zeros at the end, and its decimal exponent. */
static int digits_of(char digits[DIGITS_MOST + 1], double number, int most)
{
    char text[40];
    int count = 0;

    snprintf(text, sizeof text, "%.*e", most - 1, fabs(number));
    const char *at = text;
    for (; *at != 'e'; at++)
        if (is_digit(*at)) /* the point may be any character in the host's locale */
            digits[count++] = *at;
    while (count > 1 && digits[count - 1] == '0')
        count--;
    digits[count] = '\0';
    return (int)strtol(at + 1, NULL, 10);
}

void number_write_digits(char *buffer, size_t size, double number, int most)
{
    char digits[DIGITS_MOST + 1];
    const char *sign = number < 0 ? "-" : "";

    assert(isfinite(number) && size >= 32);
    if (!isfinite(number)) {
        snprintf(buffer, size,
                 "?"); /* never a number in a report, even with asserts compiled out */
        return;
    }
    most = most < 1 ? 1 : most > DIGITS_MOST ? DIGITS_MOST : most;
    int exponent = digits_of(digits, number, most);
    int count = (int)strlen(digits);

    if (number == 0)
        snprintf(buffer, size, "0");
    else if (exponent < EXPONENT_LEAST || exponent > EXPONENT_MOST)
        snprintf(buffer, size, "%s%c%s%se%d", sign, digits[0], count > 1 ? "." : "", digits + 1,
                 exponent);
    else if (exponent < 0)
        snprintf(buffer, size, "%s0.%.*s%s", sign, -exponent - 1, "0000", digits);
    else if (count > exponent + 1)
        snprintf(buffer, size, "%s%.*s.%s", sign, exponent + 1, digits, digits + exponent + 1);
    else
        snprintf(buffer, size, "%s%s%.*s", sign, digits, exponent + 1 - count, "00000000000000");
}

void number_write(char *buffer, size_t size, double number)
{
    number_write_digits(buffer, size, number, DIGITS_MOST);
}
