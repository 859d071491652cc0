/* Nearly all quantities are one number and one unit, and are read at once. Each such text must come
 * out as it does where it is read with care, which a blank before it brings about: texts made at
 * random around the borders of what is read at once. */
#include "check.h"
#include "quantity.h"
#include "unit.h"

#include <inttypes.h>

static unsigned next(uint64_t *state, unsigned below)
{
    *state ^= *state << 13;
    *state ^= *state >> 7;
    *state ^= *state << 17;
    return (unsigned)((*state >> 20) % below);
}

#define ONE_OF(list, state) list[next(state, sizeof(list) / sizeof(list)[0])]

/* What stands where the units of the table end. */
static const char *const after[] = {".",  "s",   "²",     "2", "^2", "³", " ",
                                    "/h", "-in", " 6 in", "'", "·s", "e"};

/* Numbers of other shapes than digits around a point. */
static const char *const odd_numbers[] = {"007", "1/2", "4:12", "3 in 12", "0x1", "-1/2"};

static size_t add_digits(char *text, uint64_t *state)
{
    static const char *const signs[] = {"", "", "", "", "-", "+", "−", "--"};
    static const char *const points[] = {"", "", "", ".", ".", ".", ".", ","};
    static const char *const exponents[] = {"e", "E", "e-", "e+", "E-"};
    unsigned whole = next(state, 6) == 0 ? next(state, 19) : 1 + next(state, 4);
    unsigned behind = next(state, 6) == 0 ? next(state, 17) : next(state, 4);
    size_t length = (size_t)sprintf(text, "%s", ONE_OF(signs, state));
    while (whole-- > 0)
        text[length++] = (char)('0' + next(state, 10));
    length += (size_t)sprintf(text + length, "%s", ONE_OF(points, state));
    while (behind-- > 0)
        text[length++] = (char)('0' + next(state, 10));
    if (next(state, 10) == 0)
        length += (size_t)sprintf(text + length, "%s%u", ONE_OF(exponents, state),
                                  next(state, next(state, 8) == 0 ? 330 : 30));
    return length;
}

/* Around absolute zero, and around the least and the largest number. */
static const char *const borders[] = {"-273.15 °C",
                                      "-273.16 °C",
                                      "-273.14999999 °C",
                                      "-459.67 °F",
                                      "-459.68 °F",
                                      "-459.66 °F",
                                      "-0 °C",
                                      "0 °F",
                                      "-1 °C",
                                      "-40 °F",
                                      "0 K",
                                      "-0 K",
                                      "-1 K",
                                      "1e-320 A",
                                      "2.2250738585072014e-308 A",
                                      "2.3e-308 in",
                                      "2.3e-308 mA",
                                      "1e308 kA",
                                      "1e308 A",
                                      "-1e308 mi",
                                      "1e309 A",
                                      "-0 A",
                                      "+0 in",
                                      "0.0 V",
                                      "999999999999999 A",
                                      "9999999999999999 A",
                                      "0.00000000000001 A"};

static size_t make(char *text, const struct unit *unit, uint64_t *state)
{
    static const char *const gaps[] = {"", " ", " ", " ", "  ", "\t", "-", "\xC2\xA0"};
    if (next(state, 10) == 0)
        return (size_t)sprintf(text, "%s", ONE_OF(borders, state));
    size_t length = next(state, 12) == 0 ? (size_t)sprintf(text, "%s", ONE_OF(odd_numbers, state))
                                         : add_digits(text, state);
    return length + (size_t)sprintf(text + length, "%s%s%s", ONE_OF(gaps, state), unit->name,
                                    next(state, 4) == 0 ? ONE_OF(after, state) : "");
}

static void test_texts(void)
{
    enum { TEXTS = 40000 };
    uint64_t state = 20260803;
    size_t units = 0, read = 0;
    while (unit_at(units) != NULL)
        units++;
    for (size_t i = 0; i < TEXTS; i++) {
        char text[200] = " ";
        struct quantity at_once = {0}, with_care = {0};
        struct quantity_fault fault;
        const struct unit *unit = unit_at(next(&state, (unsigned)units));
        size_t length = make(text + 1, unit, &state);
        struct dimension want = next(&state, 8) > 0
                                    ? unit->dimension
                                    : measure_dimension((enum measure)next(&state, MEASURE_COUNT));
        bool one = quantity_read(&at_once, text + 1, length, want, &fault);
        bool other = quantity_read(&with_care, text, length + 1, want, &fault);
        read += one;
        if (!CHECK(one == other, text) || !one)
            continue;
        CHECK(memcmp(&at_once.value, &with_care.value, sizeof at_once.value) == 0 &&
                  at_once.unit == with_care.unit && at_once.written == with_care.written &&
                  dimension_is_same(at_once.dimension, with_care.dimension),
              text);
    }
    CHECK(read > TEXTS / 5 && read < TEXTS * 4 / 5,
          "many of the texts are quantities, and many are none");
}

int main(void)
{
    test_texts();
    return checks_end();
}
