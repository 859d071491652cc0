/* Conversions over all units we know, held against GNU units: the text is read here, converted
 * here, and converted there. Without the program `units` this test fails. */
#include <unistd.h>
#include "check.h"
#include "quantity.h"
#include "unit.h"

enum { PAIRS_MOST = 2000, LINE_LONGEST = 300 };

struct conversion {
    char from[100], to[60]; /* as we spell them */
    double value;           /* as we convert */
    bool is_point;          /* of temperature: near its zero the offset's digits count */
};

static const char *const numbers[] = {"1", "7.25", "1234.5", "0.03", "88", "6.02e3"};

/* Units put together from others: ours, theirs. */
static const char *const expressions[][2] = {
    {"W/m²", "W/m^2"},
    {"W/ft²", "W/ft^2"},
    {"kWh/day", "kW hour/day"},
    {"lb/ft²", "lb/ft^2"},
    {"kg/m²", "kg/m^2"},
    {"oz/in³", "oz/in^3"},
    {"lb/ft³", "lb/ft^3"},
    {"kg/m3", "kg/m^3"},
    {"kip·ft", "kip ft"},
    {"kip*in", "kip in"},
    {"kN·m", "kN m"},
    {"ft-lbf", "ft lbf"},
    {"kip/ft²", "kip/ft^2"},
    {"N/mm²", "N/mm^2"},
    {"kip/ft", "kip/ft"},
    {"N/mm", "N/mm"},
    {"lbf/in/ft", "lbf/in/ft"},
    {"A·h", "A hour"},
    {"V·A", "V A"},
    {"V·s", "V s"},
    {"V*s/m²", "V s/m^2"},
    {"mΩ/m", "mohm/m"},
    {"ohm/mi", "ohm/mile"},
    {"yd²", "yd^2"},
    {"mil²", "mil^2"},
    {"yd^3", "yd^3"},
    {"cm^4", "cm^4"},
    {"ft⁴", "ft^4"},
    {"m/s/s", "m/s^2"},
    {"ft/s/s", "ft/s^2"},
    {"mi/h", "mile/hour"},
    {"in/min", "in/min"},
    {"°/min", "degree/min"},
    {"rad/s", "radian/s"},
    {"1/min", "1/min"},
    {"lbf/°F", "lbf/degF"},
    {"N/K", "N/K"},
    {"mm/m/°C", "mm/m/degC"},
    {"in/ft/°F", "in/ft/degF"},
};

enum { EXPRESSIONS = sizeof expressions / sizeof expressions[0] };

/* Writes what GNU units shall convert, and keeps what we make of it. */
static void add_pair(FILE *questions, struct conversion *conversions, size_t *count,
                     const char *from, const char *to, const char *from_gnu, const char *to_gnu,
                     struct dimension dimension)
{
    struct conversion *conversion = &conversions[*count];
    const char *number = numbers[*count % (sizeof numbers / sizeof numbers[0])];
    struct quantity quantity;
    struct quantity_fault fault;

    if (!CHECK(*count < PAIRS_MOST, "there is room for all pairs"))
        return;
    snprintf(conversion->from, sizeof conversion->from, "%s %s", number, from);
    snprintf(conversion->to, sizeof conversion->to, "%s", to);
    if (!CHECK(
            quantity_read(&quantity, conversion->from, strlen(conversion->from), dimension, &fault),
            conversion->from))
        return;
    conversion->value = quantity_as(quantity, to);
    conversion->is_point = dimension.is_point;
    if (dimension.is_point)
        fprintf(questions, "%s(%s)\n%s\n", from_gnu, number, to_gnu);
    else
        fprintf(questions, "%s %s\n%s\n", number, from_gnu, to_gnu);
    (*count)++;
}

static size_t add_named(FILE *questions, struct conversion *conversions)
{
    size_t count = 0;

    for (size_t i = 0; unit_at(i); i++)
        for (size_t j = 0; unit_at(j); j++) {
            const struct unit *from = unit_at(i), *to = unit_at(j);
            if (!dimension_is_same(from->dimension, to->dimension))
                continue;
            add_pair(questions, conversions, &count, from->name, to->name, from->gnu, to->gnu,
                     from->dimension);
        }
    return count;
}

/* Each expression to all others of its dimension, and to the named units of it. */
static size_t add_expressions(FILE *questions, struct conversion *conversions, size_t count)
{
    for (size_t i = 0; i < EXPRESSIONS; i++) {
        struct dimension dimension = quantity_of(1, expressions[i][0]).dimension;
        for (size_t j = 0; j < EXPRESSIONS; j++)
            if (dimension_is_same(dimension, quantity_of(1, expressions[j][0]).dimension))
                add_pair(questions, conversions, &count, expressions[i][0], expressions[j][0],
                         expressions[i][1], expressions[j][1], dimension);
        for (size_t j = 0; unit_at(j); j++)
            if (dimension_is_same(dimension, unit_at(j)->dimension))
                add_pair(questions, conversions, &count, expressions[i][0], unit_at(j)->name,
                         expressions[i][1], unit_at(j)->gnu, dimension);
    }
    return count;
}

static void compare(FILE *answers, const struct conversion *conversions, size_t count)
{
    char line[LINE_LONGEST], sentence[250];

    for (size_t i = 0; i < count; i++) {
        const struct conversion *is = &conversions[i];
        char *end = line;
        if (!CHECK(fgets(line, sizeof line, answers) != NULL, "GNU units answers each question"))
            return;
        double should = strtod(line, &end);
        snprintf(sentence, sizeof sentence, "%s in %s", is->from, is->to);
        if (!CHECK(end != line && (*end == '\n' || *end == '\0'), sentence)) {
            fprintf(stderr, "    GNU units: %s", line);
            return;
        }
        double magnitude = is->is_point ? fmax(fabs(should), 273.15) : fabs(should);
        CHECK_NEAR(is->value, should, 1e-12 * magnitude, sentence);
    }
    CHECK(fgets(line, sizeof line, answers) == NULL, "and says no more");
}

int main(void)
{
    char path[] = "/tmp/gnu-units-XXXXXX", command[200];
    int file = mkstemp(path);
    FILE *questions = file >= 0 ? fdopen(file, "w") : NULL;
    struct conversion *conversions = calloc(PAIRS_MOST, sizeof *conversions);

    if (!CHECK(questions && conversions, "there is room for the questions"))
        return checks_end();
    size_t named = add_named(questions, conversions);
    size_t count = add_expressions(questions, conversions, named);
    CHECK(named >= 200, "at least 200 conversions between named units");
    CHECK(fclose(questions) == 0, "the questions are written");

    /* HOME away: units of a person's own do not count. -q: no prompts; -t: numbers alone. */
    snprintf(command, sizeof command,
             "HOME=/nonexistent LC_ALL=C units -q -t -s -o %%.17g < %s 2>&1", path);
    FILE *answers = popen(command, "r");
    if (CHECK(answers != NULL, "the shell can be started")) {
        compare(answers, conversions, count);
        CHECK(pclose(answers) == 0, "GNU units ran (the package is called units)");
    }
    fprintf(stderr, "%zu conversions, %zu between named units\n", count, named);
    unlink(path);
    free(conversions);
    return checks_end();
}
