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

/* Powers of ten that a double holds exactly. */
static const double tens[] = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                              1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                              1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};
enum { TENS = sizeof tens / sizeof tens[0] };

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

/* The number as `most` digits before the point: one exact power of ten away, and so rounded once,
 * by at most 2^-53 of less than 10^12, far less than the distance that is kept from a half. 0: a
 * number whose digits are not that plain. */
static int64_t plain_digits(int *exponent, double number, int most)
{
    const double unsure = 1e-3;
    int power = most - 1 - (int)floor(log10(number));
    if (power <= -TENS || power >= TENS)
        return 0;
    double scaled = power < 0 ? number / tens[-power] : number * tens[power];
    if (scaled < tens[most - 1]) /* log10 was rounded up */
        return 0;
    double whole = floor(scaled), rest = scaled - whole;
    if (fabs(rest - 0.5) < unsure)
        return 0;
    int64_t digits = (int64_t)whole + (rest > 0.5);
    *exponent = most - 1 - power;
    return digits < (int64_t)tens[most] ? digits : 0;
}

/* The significant digits of a number, and its decimal exponent, as the library rounds them. */
static int library_digits(char digits[DIGITS_MOST + 1], double number, int most)
{
    char text[40];
    int count = 0;

    snprintf(text, sizeof text, "%.*e", most - 1, number);
    const char *at = text;
    for (; *at != 'e'; at++)
        if (is_digit(*at)) /* the point may be any character in the host's locale */
            digits[count++] = *at;
    digits[count] = '\0';
    return (int)strtol(at + 1, NULL, 10);
}

/* The significant digits of a number without those zeros at the end, and its decimal exponent. */
static int digits_of(char digits[DIGITS_MOST + 1], double number, int most)
{
    int exponent = 0, count = most;
    int64_t plain = plain_digits(&exponent, fabs(number), most);
    if (plain == 0)
        exponent = library_digits(digits, fabs(number), most);
    for (int at = most - 1; plain != 0; plain /= 10)
        digits[at--] = (char)('0' + plain % 10);
    while (count > 1 && digits[count - 1] == '0')
        count--;
    digits[count] = '\0';
    return exponent;
}

/* "0.0012", "12.5", "1200": without an exponent. */
static void write_plainly(char *buffer, bool is_negative, const char *digits, int exponent)
{
    int count = (int)strlen(digits), whole = exponent >= 0 ? exponent + 1 : 1;
    if (is_negative)
        *buffer++ = '-';
    for (int at = exponent < 0 ? exponent : 0, written = 0; written < whole || at < count;
         at++, written++) {
        if (written == whole)
            *buffer++ = '.';
        *buffer++ = '0';
        if (at >= 0 && at < count)
            buffer[-1] = digits[at];
    }
    *buffer = '\0';
}

void number_write_digits(char *buffer, size_t size, double number, int most)
{
    char digits[DIGITS_MOST + 1] = "";

    assert(isfinite(number) && size >= 32);
    if (!isfinite(number)) {
        snprintf(buffer, size,
                 "?"); /* never a number in a report, even with asserts compiled out */
        return;
    }
    if (number == 0) {
        snprintf(buffer, size, "0");
        return;
    }
    most = most < 1 ? 1 : most > DIGITS_MOST ? DIGITS_MOST : most;
    int exponent = digits_of(digits, number, most);
    if (exponent < EXPONENT_LEAST || exponent > EXPONENT_MOST)
        snprintf(buffer, size, "%s%c%s%se%d", number < 0 ? "-" : "", digits[0],
                 digits[1] != '\0' ? "." : "", digits + 1, exponent);
    else
        write_plainly(buffer, number < 0, digits, exponent);
}

void number_write(char *buffer, size_t size, double number)
{
    number_write_digits(buffer, size, number, DIGITS_MOST);
}
