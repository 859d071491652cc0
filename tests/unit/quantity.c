/* Quantities: the readings and refusals of tests/units, arithmetic, and properties that hold for
 * any. */
#include <float.h>
#include <stdint.h>
#include "amount.h"
#include "check.h"
#include "measure_table.h"
#include "quantity.h"
#include "text.h"
#include "unit.h"

enum { FIELDS = 5, LINE_LONGEST = 400, ROUNDS = 2000 };

/* Deterministic numbers (xorshift64): a failure can be run again. */
static uint64_t next_random(uint64_t *state)
{
    *state ^= *state << 13;
    *state ^= *state >> 7;
    *state ^= *state << 17;
    return *state;
}

/* A number of 7 digits between 1e-4 and 1e6, of either sign. */
static double random_number(uint64_t *state)
{
    double digits = (double)(next_random(state) % 9000000 + 1000000);
    double scale = pow(10, (double)(next_random(state) % 10) - 10);

    return (next_random(state) % 2 ? 1 : -1) * digits * scale;
}

static bool is_near(double a, double b, double share)
{
    return fabs(a - b) <= share * fmax(fabs(a), fabs(b));
}

/* Splits a line at its first "; " marks; the last field keeps what is left. */
static size_t split(char *line, char *fields[], size_t most)
{
    size_t count = 0;

    line[strcspn(line, "\n")] = '\0';
    for (char *at = line; at && count < most; count++) {
        fields[count] = at;
        at = count + 1 < most ? strstr(at, "; ") : NULL;
        if (at) {
            *at = '\0';
            at += 2;
        }
    }
    return count;
}

static FILE *open_data(const char *name)
{
    char path[1000];

    snprintf(path, sizeof path, "%s/units/%s", TESTS_DIR, name);
    FILE *file = fopen(path, "r");
    CHECK(file != NULL, "the data of the test is there");
    return file;
}

static void check_reading(char *fields[FIELDS])
{
    enum measure measure = PURE_NUMBER;
    struct quantity quantity = {.written = "no"};
    struct quantity_fault fault = {0};
    char printed[80];

    if (!CHECK(measure_find(&measure, fields[0]), fields[0]))
        return;
    struct dimension want = measure_dimension(measure);
    if (!CHECK(quantity_read(&quantity, fields[1], strlen(fields[1]), want, &fault), fields[1])) {
        fprintf(stderr, "    %s\n", fault.message);
        return;
    }
    double should = strtod(fields[2], NULL);
    double is = quantity_as(quantity, fields[3]);
    CHECK_NEAR(is, should, 1e-13 * fmax(fabs(should), 100), fields[1]);
    CHECK(quantity.written == NULL, "a reading leaves the text to its owner");
    quantity_write(printed, sizeof printed, quantity, NULL, 12);
    CHECK_TEXT(printed, fields[4], fields[1]);
    quantity.written = fields[1];
    quantity_write(printed, sizeof printed, quantity, NULL, 3);
    CHECK_TEXT(printed, fields[1], "what is as it was written is printed so");
}

static void check_readings(void)
{
    char line[LINE_LONGEST], *fields[FIELDS];
    FILE *file = open_data("readings.txt");
    int count = 0;

    while (file && fgets(line, sizeof line, file)) {
        if (line[0] == '#')
            continue;
        if (CHECK(split(line, fields, FIELDS) == FIELDS, "a row has five fields"))
            check_reading(fields);
        count++;
    }
    CHECK(count > 80, "all rows were read");
    if (file)
        fclose(file);
}

static void check_fault(const struct quantity_fault *fault, size_t length)
{
    size_t bytes = strlen(fault->message);

    CHECK(fault->code && bytes > 10 && bytes < sizeof fault->message, "a fault has its sentence");
    CHECK(text_is_utf8(fault->message, bytes, NULL), "a message is text");
    CHECK(fault->offset <= length, "a fault lies inside the text");
    for (size_t i = 0; i < bytes; i++)
        if ((unsigned char)fault->message[i] < 0x20)
            CHECK(false, "a message has no control characters");
}

static void check_refusals(void)
{
    char line[LINE_LONGEST], *fields[4];
    FILE *file = open_data("refused.txt");
    int count = 0;

    while (file && fgets(line, sizeof line, file)) {
        enum measure measure = PURE_NUMBER;
        struct quantity quantity;
        struct quantity_fault fault = {0};
        if (line[0] == '#')
            continue;
        if (!CHECK(split(line, fields, 4) == 4 && measure_find(&measure, fields[0]), line))
            continue;
        count++;
        size_t length = strlen(fields[1]);
        if (!CHECK(!quantity_read(&quantity, fields[1], length, measure_dimension(measure), &fault),
                   fields[1]))
            continue;
        CHECK_TEXT(fault.code, fields[2], fields[1]);
        if (!CHECK(strstr(fault.message, fields[3]) != NULL, fields[3]))
            fprintf(stderr, "    is:     %s\n", fault.message);
        check_fault(&fault, length);
    }
    CHECK(count > 50, "all rows were read");
    if (file)
        fclose(file);
}

static void check_long_texts(void)
{
    struct quantity quantity;
    struct quantity_fault fault = {0};
    char digits[410];

    memset(digits, '7', 400);
    memcpy(digits + 400, " in", 4);
    CHECK(!quantity_read(&quantity, digits, 403, measure_dimension(LENGTH), &fault),
          "400 digits are refused");
    CHECK_TEXT(fault.code, "number-bad", "400 digits are no number of ours");
    check_fault(&fault, 403);

    memcpy(digits + 64, " in", 4);
    CHECK(quantity_read(&quantity, digits, 67, measure_dimension(LENGTH), &fault),
          "64 digits are read, the last ones rounded away");
    memcpy(digits + 64, "7 in", 5);
    CHECK(!quantity_read(&quantity, digits, 68, measure_dimension(LENGTH), &fault), "65 are not");
    CHECK_TEXT(fault.code, "range", "65 digits are too long");

    CHECK(!quantity_read(&quantity, "1\0 in", 5, measure_dimension(LENGTH), &fault), "NUL");
    CHECK_TEXT(fault.code, "number-bad", "NUL is refused");
    check_fault(&fault, 5);
    CHECK(!quantity_read(&quantity, "18 i\x01n", 6, measure_dimension(LENGTH), &fault),
          "a control character is refused");
    check_fault(&fault, 6);

    CHECK(!quantity_read(&quantity,
                         "\xE2\x88\x92"
                         "5 V",
                         6, measure_dimension(LENGTH), &fault),
          "wrong unit behind a minus sign of three bytes");
    CHECK(fault.offset == 5, "the offset counts bytes of the text as it was typed");
}

static void check_names(void)
{
    enum measure measure = POWER;
    char text[64];

    for (int i = 0; i < MEASURE_COUNT; i++) {
        const char *name = measure_name((enum measure)i);
        CHECK(measure_find(&measure, name) && measure == (enum measure)i, name);
        struct dimension dimension = measure_dimension((enum measure)i);
        CHECK(measure_of(&measure, dimension), name);
        CHECK(measure == (enum measure)i || (i == ENERGY && measure == MOMENT), name);

        struct quantity quantity;
        struct quantity_fault fault;
        const char *example = measure_row_at((enum measure)i)->example;
        CHECK(quantity_read(&quantity, example, strlen(example), dimension, &fault),
              "the example in the messages can be read");
    }
    CHECK(!measure_find(&measure, "lengt") && !measure_find(&measure, ""), "no such measure");
    CHECK(measure_find(&measure, "temperature_difference"), "underscores stand for spaces");

    dimension_write(text, sizeof text, measure_dimension(TEMPERATURE_DIFFERENCE));
    CHECK_TEXT(text, "temperature difference", "a dimension by its name");
    dimension_write(text, sizeof text, measure_dimension(ENERGY));
    CHECK_TEXT(text, "moment or energy", "both names of one dimension");
    dimension_write(text, sizeof text, (struct dimension){.power = {1, 1, -2, 0, 1, 0}});
    CHECK_TEXT(text, "m·kg·K/s²", "a dimension without a name");
    dimension_write(text, sizeof text, (struct dimension){.power = {-1, 0, -5, 0, 0, 0}});
    CHECK_TEXT(text, "1/(m·s^5)", "a dimension that only divides");
    dimension_write(text, sizeof text,
                    (struct dimension){.power = {-128, -128, -128, 127, 127, 127}});
    CHECK(strlen(text) < sizeof text, "the longest dimension fits");
}

/* Every spelling leads to its unit and to no other. */
static void check_table(void)
{
    for (size_t i = 0; unit_at(i); i++) {
        const struct unit *unit = unit_at(i);
        CHECK(unit->factor > 0 && unit->gnu, unit->name);
        CHECK(unit_find(unit->name, strlen(unit->name), unit->dimension) == unit, unit->name);
        for (const char *const *alias = unit->aliases; alias && *alias; alias++)
            CHECK(unit_find(*alias, strlen(*alias), unit->dimension) == unit, *alias);
        for (size_t j = 0; j < i; j++) {
            bool is_scale = unit->dimension.power[POWER_TEMPERATURE] == 1;
            if (!is_scale)
                CHECK(strcmp(unit->name, unit_at(j)->name) != 0, unit->name);
        }
        struct quantity one = quantity_of(1, unit->name);
        CHECK(one.unit == unit || one.dimension.is_point, "a unit by its name, else the point");
    }
    CHECK(unit_find("\xE2\x84\xA6", 3, measure_dimension(RESISTANCE)) ==
              unit_find("ohm", 3, measure_dimension(RESISTANCE)),
          "the ohm sign is the letter omega");
    CHECK(!unit_find("furlong", 7, measure_dimension(LENGTH)), "no such unit");
    CHECK(!unit_find("", 0, measure_dimension(LENGTH)), "nothing is no unit");
    CHECK(unit_usual(measure_dimension(PURE_NUMBER)) == NULL, "a number is shown bare");
    for (int i = 1; i < MEASURE_COUNT; i++)
        CHECK(unit_usual(measure_dimension((enum measure)i)) != NULL,
              measure_name((enum measure)i));

    char names[16];
    unit_write_names(names, sizeof names, measure_dimension(LENGTH));
    CHECK_TEXT(names, "in, ft, yd, …", "names are cut between names");
    unit_write_names(names, sizeof names, (struct dimension){.power = {9}});
    CHECK_TEXT(names, "", "a dimension without units");
}

static void check_writing(void)
{
    char text[128];
    struct quantity current = quantity_of(52.0833333333, "A");

    quantity_write(text, sizeof text, current, NULL, 3);
    CHECK_TEXT(text, "52.1 A", "three digits");
    quantity_write(text, sizeof text, current, unit_find("mA", 2, current.dimension), 3);
    CHECK_TEXT(text, "52100 mA", "in another unit");
    quantity_write(text, sizeof text, quantity_of(60, "A"), NULL, 3);
    CHECK_TEXT(text, "60 A", "no zeros behind the point");
    quantity_write(text, sizeof text, quantity_of(-0.0, "V"), NULL, 12);
    CHECK_TEXT(text, "0 V", "no minus zero");
    quantity_write(text, sizeof text, quantity_of(1e20, "W"), NULL, 12);
    CHECK_TEXT(text, "1e20 W", "a large one");
    quantity_write(text, sizeof text, quantity_of(2, "W/m²"), NULL, 12);
    CHECK_TEXT(text, "2 kg/s³", "a dimension without a usual unit in base units");
    quantity_write(text, sizeof text, quantity_of(0, "°C"), NULL, 12);
    CHECK_TEXT(text, "0 °C", "a temperature of zero");

    current.written = "52.1 amps";
    amount_write(text, sizeof text, amount_of_quantity(current), NULL, 3);
    CHECK_TEXT(text, "52.1 amps", "as written");
    amount_write(text, sizeof text, amount_of_quantity(current), current.unit, 3);
    CHECK_TEXT(text, "52.1 A", "in the unit asked for");
    amount_write(text, sizeof text, amount_of_number(1.25), NULL, 12);
    CHECK_TEXT(text, "1.25", "a number");
    amount_write(text, sizeof text, amount_of_yesno(true), NULL, 12);
    CHECK_TEXT(text, "yes", "yes");
    amount_write(text, sizeof text, amount_of_yesno(false), NULL, 12);
    CHECK_TEXT(text, "no", "no");
    amount_write(text, sizeof text, amount_of_word("opposite end"), NULL, 12);
    CHECK_TEXT(text, "opposite end", "a word");
    amount_write(text, sizeof text, amount_of_date((struct date){2026, 7, 1}), NULL, 12);
    CHECK_TEXT(text, "2026-07-01", "a date");
    amount_write(text, sizeof text, (struct amount){0}, NULL, 12);
    CHECK_TEXT(text, "not given", "nothing");

    char word[300];
    memset(word, 0, sizeof word);
    for (size_t i = 0; i < 100; i++)
        memcpy(word + 2 * i, "é", 2);
    amount_write(text, sizeof text, amount_of_word(word), NULL, 12);
    CHECK(strlen(text) == 127 && text_is_utf8(text, 127, NULL), "a long word ends at a letter");
}

/* The operation must be refused with this code. */
static void check_refused(bool done, const struct quantity_fault *fault, const char *code)
{
    CHECK(!done, code);
    CHECK_TEXT(fault->code, code, code);
    check_fault(fault, 0);
}

static void check_arithmetic(void)
{
    struct quantity out;
    struct quantity_fault fault = {0};
    struct quantity amps = quantity_of(32, "A"), volts = quantity_of(240, "V");
    struct quantity feet = quantity_of(3, "ft"), inches = quantity_of(6, "in");
    char text[64];

    CHECK(quantity_multiply(&out, amps, volts, &fault), "current by voltage");
    CHECK_NEAR(quantity_as(out, "kW"), 7.68, 1e-12, "is power");
    CHECK(out.unit == NULL && out.written == NULL, "in its usual unit");
    CHECK(quantity_divide(&out, out, volts, &fault) && quantity_as(out, "A") == 32, "and back");
    CHECK(quantity_add(&out, feet, inches, &fault), "feet and inches");
    CHECK_NEAR(quantity_as(out, "in"), 42, 1e-12, "add up");
    CHECK_TEXT(out.unit->name, "ft", "in the first one's unit");
    CHECK(quantity_multiply(&out, quantity_of(5, "kW"), quantity_of(2, "h"), &fault), "energy");
    quantity_write(text, sizeof text, out, NULL, 12);
    CHECK_TEXT(text, "10 kWh", "power by time is shown as energy");
    CHECK(quantity_multiply(&out, quantity_of(5, "lbf"), quantity_of(2, "ft"), &fault), "moment");
    quantity_write(text, sizeof text, out, NULL, 12);
    CHECK_TEXT(text, "10 lbf·ft", "force by length is shown as a moment");
    CHECK(quantity_divide(&out, feet, inches, &fault) && dimension_is_pure(out.dimension), "ratio");
    quantity_write(text, sizeof text, out, NULL, 12);
    CHECK_TEXT(text, "6", "a quotient of one dimension is a number");
    CHECK(quantity_scale(&out, amps, 1.25, &fault) && quantity_as(out, "A") == 40, "125 %");
    CHECK(quantity_root(&out, quantity_of(9, "ft²"), &fault), "root of an area");
    CHECK_NEAR(quantity_as(out, "ft"), 3, 1e-12, "is a length");

    check_refused(quantity_add(&out, amps, volts, &fault), &fault, "dimension");
    CHECK_TEXT(fault.message, "a current and a voltage cannot be added", "says which");
    check_refused(quantity_subtract(&out, amps, volts, &fault), &fault, "dimension");
    check_refused(quantity_divide(&out, amps, quantity_of(0, "V"), &fault), &fault,
                  "divide-by-zero");
    check_refused(quantity_root(&out, volts, &fault), &fault, "dimension");
    check_refused(quantity_root(&out, quantity_of(-1, "ft²"), &fault), &fault, "root-negative");
    struct quantity large = quantity_of(1e300, "A");
    check_refused(quantity_multiply(&out, large, large, &fault), &fault, "not-finite");
    check_refused(quantity_scale(&out, large, 1e300, &fault), &fault, "not-finite");
    check_refused(quantity_scale(&out, amps, NAN, &fault), &fault, "not-finite");
    check_refused(quantity_divide(&out, large, quantity_of(1e-300, "V"), &fault), &fault,
                  "not-finite");
    out = quantity_of(1, "A");
    bool done = true;
    for (int i = 0; i < 200 && done; i++)
        done = quantity_multiply(&out, out, quantity_of(1, "A"), &fault);
    check_refused(done, &fault, "dimension");
}

static void check_temperatures(void)
{
    struct quantity out, warm = quantity_of(33, "°C"), cold = quantity_of(-23, "°C");
    struct quantity apart = quantity_of(10, "Δ°C");
    struct quantity_fault fault = {0};
    char text[64];

    CHECK(quantity_subtract(&out, warm, cold, &fault) && !out.dimension.is_point, "t - t = d");
    CHECK_NEAR(quantity_as(out, "°C"), 56, 1e-9, "33 °C is 56 °C above -23 °C");
    CHECK(quantity_subtract(&out, quantity_of(50, "°F"), quantity_of(14, "°F"), &fault), "in °F");
    quantity_write(text, sizeof text, out, NULL, 6);
    CHECK_TEXT(text, "36 °F", "a difference is shown in the degrees of its temperatures");
    CHECK(quantity_add(&out, cold, apart, &fault) && out.dimension.is_point, "t + d = t");
    CHECK_NEAR(quantity_as(out, "°C"), -13, 1e-9, "10 °C above -23 °C");
    CHECK(quantity_add(&out, apart, cold, &fault) && out.dimension.is_point, "d + t = t");
    CHECK(quantity_subtract(&out, cold, apart, &fault) && out.dimension.is_point, "t - d = t");
    CHECK_NEAR(quantity_as(out, "°F"), -27.4, 1e-9, "10 °C below -23 °C");
    check_refused(quantity_add(&out, warm, cold, &fault), &fault, "temperature-point");
    check_refused(quantity_subtract(&out, apart, cold, &fault), &fault, "temperature-point");
    check_refused(quantity_multiply(&out, warm, apart, &fault), &fault, "temperature-point");
    check_refused(quantity_divide(&out, apart, warm, &fault), &fault, "temperature-point");
    check_refused(quantity_scale(&out, warm, 1, &fault), &fault, "temperature-point");
    check_refused(quantity_root(&out, warm, &fault), &fault, "temperature-point");
    check_refused(quantity_add(&out, warm, quantity_of(1, "A"), &fault), &fault,
                  "temperature-point");
    check_refused(quantity_subtract(&out, cold, quantity_of(300, "ΔK"), &fault), &fault, "range");

    CHECK(quantity_multiply(&out, quantity_of(-0.27, "%/°C"), apart, &fault), "a share");
    CHECK_NEAR(out.value, -0.027, 1e-15, "0.27 % for each of 10 degrees");
    CHECK(dimension_is_pure(out.dimension), "is a plain number");
}

static void check_comparison(void)
{
    struct quantity_fault fault = {0};
    int order = 9;

    CHECK(quantity_compare(&order, quantity_of(12, "in"), quantity_of(1, "ft"), &fault) &&
              order == 0,
          "12 in are 1 ft");
    CHECK(quantity_compare(&order, quantity_of(11.99, "in"), quantity_of(1, "ft"), &fault) &&
              order == -1,
          "less");
    CHECK(quantity_compare(&order, quantity_of(-23, "°C"), quantity_of(-10, "°F"), &fault) &&
              order == 1,
          "-23 °C is above -10 °F");
    check_refused(quantity_compare(&order, quantity_of(1, "A"), quantity_of(1, "V"), &fault),
                  &fault, "dimension");
    check_refused(quantity_compare(&order, quantity_of(1, "°C"), quantity_of(1, "Δ°C"), &fault),
                  &fault, "temperature-point");
    struct quantity none = quantity_of(1, "A");
    none.value = NAN;
    check_refused(quantity_compare(&order, none, quantity_of(1, "A"), &fault), &fault,
                  "not-finite");
    CHECK(number_compare(1, 1 + 0.9e-9) == 0 && number_compare(1, 1 + 1.1e-9) == -1, "the bound");
    CHECK(number_compare(0, 0) == 0 && number_compare(0, 1e-300) == -1, "at zero");
    CHECK(number_compare(-1, 1) == -1 && number_compare(5, 4) == 1, "order");
    CHECK(number_compare(INFINITY, 1) == 1 && number_compare(INFINITY, INFINITY) == 0, "no end");
}

/* What is written to 12 digits is read back to 12 digits, in every unit and spelling. */
static void check_round_trip(uint64_t *state)
{
    for (size_t i = 0; unit_at(i); i++) {
        const struct unit *unit = unit_at(i);
        for (int round = 0; round < 20; round++) {
            struct quantity back, quantity = {.dimension = unit->dimension, .unit = unit};
            struct quantity_fault fault;
            char text[64], spelled[128];
            double number = random_number(state);
            if (unit->dimension.is_point)
                number = fabs(number);
            quantity.value = number * unit->factor + unit->offset;
            CHECK(is_near(quantity_in(quantity, unit), number, 1e-6), "there and back");
            quantity_write(text, sizeof text, quantity, NULL, 12);
            CHECK(quantity_read(&back, text, strlen(text), unit->dimension, &fault), text);
            CHECK(is_near(back.value, quantity.value, 1e-11), text);
            CHECK(back.unit == unit, text);
            for (const char *const *alias = unit->aliases; alias && *alias; alias++) {
                snprintf(spelled, sizeof spelled, "%.7g %s", number, *alias);
                if (!CHECK(
                        quantity_read(&back, spelled, strlen(spelled), unit->dimension, &fault) &&
                            is_near(back.value, quantity.value, 1e-12),
                        spelled))
                    fprintf(stderr, "    %s\n", fault.message);
            }
        }
    }
}

static struct quantity random_quantity(uint64_t *state)
{
    size_t count = 0;

    while (unit_at(count))
        count++;
    for (;;) {
        const struct unit *unit = unit_at(next_random(state) % count);
        if (!unit->dimension.is_point)
            return (struct quantity){.value = random_number(state) * unit->factor,
                                     .dimension = unit->dimension,
                                     .unit = unit};
    }
}

/* The laws of arithmetic, for quantities of any dimension. */
static void check_algebra(uint64_t *state)
{
    struct quantity_fault fault;

    for (int round = 0; round < ROUNDS; round++) {
        struct quantity a = random_quantity(state), b = random_quantity(state), c, d;
        struct quantity like = a;
        like.value = random_number(state) * a.unit->factor;

        CHECK(quantity_add(&c, a, like, &fault) && quantity_subtract(&d, c, like, &fault), "sum");
        CHECK(fabs(d.value - a.value) <= 1e-12 * (fabs(a.value) + fabs(like.value)), "(a+b)-b = a");
        CHECK(quantity_multiply(&c, a, b, &fault) && quantity_multiply(&d, b, a, &fault),
              "product");
        CHECK(c.value == d.value && dimension_is_same(c.dimension, d.dimension), "ab = ba");
        for (int i = 0; i < POWER_COUNT; i++)
            CHECK(c.dimension.power[i] == a.dimension.power[i] + b.dimension.power[i],
                  "powers add up");
        CHECK(quantity_divide(&d, c, b, &fault), "quotient");
        CHECK(dimension_is_same(d.dimension, a.dimension) && is_near(d.value, a.value, 1e-15 * 4),
              "ab/b = a");
        CHECK(!quantity_add(&d, a, b, &fault) == !dimension_is_same(a.dimension, b.dimension),
              "only like is added to like");
        CHECK(quantity_multiply(&c, a, a, &fault) && quantity_root(&d, c, &fault), "square, root");
        CHECK(dimension_is_same(d.dimension, a.dimension) &&
                  is_near(d.value, fabs(a.value), 1e-15 * 4),
              "the root of a² is |a|");
    }
}

/* What is read without much care comes out as with all of it, which a space before it asks for. */
static void check_same_behind_space(const char *text, size_t length, struct dimension want)
{
    char spaced[80] = " ";
    struct quantity plain = {0}, careful = {0};
    struct quantity_fault fault;

    memcpy(spaced + 1, text, length);
    bool is_read = quantity_read(&plain, text, length, want, &fault);
    CHECK(is_read == quantity_read(&careful, spaced, length + 1, want, &fault),
          "read with and without a space before it");
    CHECK(!is_read ||
              (memcmp(&plain.value, &careful.value, sizeof plain.value) == 0 &&
               plain.unit == careful.unit && dimension_is_same(plain.dimension, careful.dimension)),
          "it is the same to the last bit");
}

/* Changed and broken texts: read or refused with a sentence, never anything else. */
static void check_broken_texts(uint64_t *state)
{
    static const char *const texts[] = {"1 ft 6-1/2 in", "-0.27 %/°C",     "4/12",
                                        "5'-6 1/2\"",    "1.24 Ω/1000 ft", "-23 °C",
                                        "3e-5 lbf·ft",   "1 h 30 min 15 s"};
    static const char bytes[] = "0159 .-+/:'\"eEftinm\xC2\xB0\xB2\xE2\x88\x92·%^*,x\0\x7F\xFF";

    for (int round = 0; round < 20 * ROUNDS; round++) {
        char text[64];
        const char *start = texts[next_random(state) % (sizeof texts / sizeof texts[0])];
        size_t length = strlen(start);
        struct quantity quantity;
        struct quantity_fault fault = {0};
        memcpy(text, start, length);
        for (size_t changes = next_random(state) % 4 + 1; changes > 0; changes--)
            text[next_random(state) % length] = bytes[next_random(state) % (sizeof bytes - 1)];
        enum measure measure = (enum measure)(next_random(state) % MEASURE_COUNT);
        check_same_behind_space(text, length, measure_dimension(measure));
        bool done =
            round % 2 ? quantity_read_any(&quantity, text, length, &fault)
                      : quantity_read(&quantity, text, length, measure_dimension(measure), &fault);
        if (done)
            CHECK(isfinite(quantity.value), "what is read is finite");
        else
            check_fault(&fault, length);
    }
}

int main(void)
{
    uint64_t state = 20260701;

    check_readings();
    check_refusals();
    check_long_texts();
    check_names();
    check_table();
    check_writing();
    check_arithmetic();
    check_temperatures();
    check_comparison();
    check_round_trip(&state);
    check_algebra(&state);
    check_broken_texts(&state);
    return checks_end();
}
