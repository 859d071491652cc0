/* Rules made at random: calls of every word with hostile arguments. Whatever they are, the review
 * comes to its end, nothing passes that broke, and the other rule still runs.
 *   unit_room_hostile [CALLS [SEED]]  */
#include "room_trial.h"

#include <stdint.h>

struct dice {
    uint64_t state;
};

/* xorshift64* (Vigna 2016, from memory). */
static size_t roll(struct dice *dice, size_t sides)
{
    dice->state ^= dice->state >> 12;
    dice->state ^= dice->state << 25;
    dice->state ^= dice->state >> 27;
    return (size_t)((dice->state * 2685821657736338717u) >> 33) % sides;
}

static const char *const arguments[] = {"nil",
                                        "true",
                                        "false",
                                        "0",
                                        "-0.0",
                                        "1",
                                        "2",
                                        "-1",
                                        "0.5",
                                        "3",
                                        "1e308",
                                        "-1e308",
                                        "5e-324",
                                        "9223372036854775807",
                                        "-9223372036854775807 - 1",
                                        "1/0",
                                        "-1/0",
                                        "0/0",
                                        "2^53",
                                        "1e15",
                                        "\"\"",
                                        "\"x\"",
                                        "\"10\"",
                                        "\"%s%s%s\"",
                                        "\"%d %f %.9f\"",
                                        "\"%\"",
                                        "\"a\\0b\"",
                                        "\"\\xff\\xfe\"",
                                        "\"\\27[2J\"",
                                        "long",
                                        "\"10 AWG\"",
                                        "\"copper\"",
                                        "\"C\"",
                                        "\"ridge\"",
                                        "\"eave\"",
                                        "\"2023\"",
                                        "\"nec\"",
                                        "\"Hem-Fir\"",
                                        "{}",
                                        "{1, 2, 3}",
                                        "{\"a\", \"b\"}",
                                        "{{\"a\", yes}, {\"b\", no}}",
                                        "{{\"a\", yes}, {\"b\", yes}}",
                                        "{{\"a\", miss}, {\"b\", spin}}",
                                        "{{\"a\", miss}, {\"b\", miss}}",
                                        "{{}, {}}",
                                        "{3, 2, 1, \"x\"}",
                                        "{size = \"10 AWG\"}",
                                        "{current = 0/0}",
                                        "{[1] = 1, [3] = 3}",
                                        "self",
                                        "many",
                                        "math",
                                        "string",
                                        "shall",
                                        "calc",
                                        "_ENV",
                                        "thing",
                                        "design",
                                        "book",
                                        "thing.busbars",
                                        "design.meters",
                                        "design.panels[1]",
                                        "design.site",
                                        "design.site.exposure",
                                        "design.building",
                                        "design.roof.planes[1]",
                                        "design.roof.planes[2]",
                                        "design.project.scope",
                                        "design.project.permit_application_date",
                                        "thing.busbars[1]",
                                        "thing.busbars[1].methods",
                                        "design.service",
                                        "book.limit_current",
                                        "5 * A",
                                        "-5 * A",
                                        "0 * A",
                                        "1e300 * A",
                                        "240 * V",
                                        "1e-300 * m",
                                        "20 * psf",
                                        "115 * mph",
                                        "18 * inch",
                                        "30 * deg",
                                        "90 * deg",
                                        "celsius(-12)",
                                        "fahrenheit(500)",
                                        "10 * delta_C",
                                        "A * V",
                                        "m * m * m",
                                        "function() end",
                                        "function(a, b) return a end",
                                        "yes",
                                        "no",
                                        "spin",
                                        "miss",
                                        "shall.be",
                                        "format",
                                        "A",
                                        "inch",
                                        "thing.called",
                                        "select"};

/* Facts and methods to ask of whatever it is. */
static const char *const members[] = {
    "rating", "busbars", "site",          "slope",   "clearance", "is",
    "has",    "count",   "called",        "kind_of", "edition",   "source_current",
    "len",    "sub",     "limit_current", "not_yet", "outline",   "x"};

static const char head[] =
    "local long = \"xxxxxxxx\"\nfor i = 1, 9 do long = long .. long end\n"
    "local self = {} self[1] = self self.self = self\n"
    "local many = {} for i = 1, 300 do many[i] = i end\n"
    "return { title = \"Hostile\", cite = \"None\", about = \"panel\",\n"
    "check = function(thing, book, design)\n"
    "local yes = function() shall.be(\"Good\", true) end\n"
    "local no = function() shall.be(\"Bad\", false) end\n"
    "local spin = function() for i = 1, 100 do local x = i * A end return 1 end\n"
    "local miss = function() return thing.busbars[1].protecting_device end\n";

static const char *any(struct dice *dice)
{
    return arguments[roll(dice, sizeof arguments / sizeof arguments[0])];
}

static void add_arguments(struct text *rule, struct dice *dice)
{
    size_t count = roll(dice, 16) == 0 ? 40 : roll(dice, 6);
    text_add_word(rule, "(");
    for (size_t i = 0; i < count; i++)
        text_add_format(rule, "%s%s", i > 0 ? ", " : "", any(dice));
    text_add_word(rule, ")");
}

/* Of a unit that a calculator names, the word in a rule. */
static const char *unit_word(const char *unit)
{
    static const struct {
        const char *unit, *word;
    } words[] = {{"in", "inch"},     {"in²", "sq_in"},
                 {"ft²", "sq_ft"},   {"m²", "sq_m"},
                 {"Ω", "ohm"},       {"lbf/ft", "plf"},
                 {"°", "deg"},       {"Ω/kft", "ohm / ft"},
                 {"lbf/ft³", "pcf"}, {"in³", "inch * inch * inch"}};
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
        if (strcmp(words[i].unit, unit) == 0)
            return words[i].word;
    return unit;
}

/* An input as its parameter wants it: at a bound, between, or just beyond. */
static void add_input(struct text *rule, struct dice *dice, const struct parameter *parameter)
{
    double share[] = {0, 1, 0.5, 0.01, 0.99, -0.001, 1.001};
    double number = parameter->low + (parameter->high - parameter->low) *
                                         share[roll(dice, sizeof share / sizeof share[0])];
    size_t words = 0;
    switch (parameter->type) {
    case AMOUNT_QUANTITY:
        if (parameter->measure == TEMPERATURE)
            text_add_format(rule, "celsius(%.17g)", number);
        else
            text_add_format(rule, "%.17g * %s", number, unit_word(parameter->unit));
        break;
    case AMOUNT_NUMBER:
        text_add_format(rule, "%.17g", roll(dice, 2) ? number : floor(number));
        break;
    case AMOUNT_YESNO:
        text_add_word(rule, roll(dice, 2) ? "true" : "false");
        break;
    default:
        while (parameter->words != NULL && parameter->words[words] != NULL)
            words++;
        text_add_format(rule, "\"%s\"", words > 0 ? parameter->words[roll(dice, words)] : "x");
    }
}

/* A calculator's name and inputs that it might take, by name. */
static void add_calculation(struct text *rule, struct dice *dice)
{
    size_t count = 0;
    while (calculator_at(count) != NULL)
        count++;
    const struct calculator *calculator = calculator_at(roll(dice, count));
    if (calculator->about_kind == KIND_NONE)
        text_add_format(rule, "local x = calc.%s {", calculator->name);
    else
        text_add_format(rule, "local x = %s:%s {",
                        calculator->about_kind == KIND_roof_plane ? "design.roof.planes[1]"
                        : calculator->about_kind == KIND_busbar   ? "thing.busbars[1]"
                        : calculator->about_kind == KIND_service  ? "design.service"
                                                                  : "design.roof",
                        calculator->name);
    for (size_t i = 0; i < calculator->input_count; i++) {
        const struct parameter *parameter = &calculator->inputs[i];
        if (roll(dice, 40) == 0 || (parameter->is_optional && roll(dice, 2)))
            continue;
        text_add_format(rule, " %s = ", parameter->name);
        add_input(rule, dice, parameter);
        text_add_word(rule, ",");
    }
    text_add_word(rule, " }");
}

/* An operator or a member asked of anything. */
static void add_other(struct text *rule, struct dice *dice)
{
    static const char *const operators[] = {"+", "-",  "*",  "/", "//", "%",   "^",
                                            "<", "<=", "..", "&", "<<", "and", "or"};
    const char *member = members[roll(dice, sizeof members / sizeof members[0])];
    switch (roll(dice, 4)) {
    case 0:
        text_add_format(rule, "local x = (%s) %s (%s)", any(dice),
                        operators[roll(dice, sizeof operators / sizeof operators[0])], any(dice));
        break;
    case 1:
        text_add_format(rule, "local y = (%s); y = y.%s", any(dice), member);
        break;
    case 2:
        text_add_format(rule, "local y = (%s); y = y:%s", any(dice), member);
        add_arguments(rule, dice);
        break;
    default:
        text_add_format(rule, "local y = (%s); y[%s] = %s", any(dice), any(dice), any(dice));
    }
}

/* All words, and methods of calculators as "kind:name". */
static const char *const *all_words(size_t *count, struct room_trial *trial)
{
    const char *const *listed;
    if (!judge_list_words(&listed, count, trial->judge, trial->arena))
        abort();
    size_t methods = 0;
    while (calculator_at(methods) != NULL)
        methods++;
    const char **words = arena_take(trial->arena, (*count + methods) * sizeof *words);
    if (words == NULL)
        abort();
    memcpy(words, listed, *count * sizeof *words);
    for (size_t i = 0; i < methods; i++) {
        const struct calculator *calculator = calculator_at(i);
        const char *owner = calculator->about_kind == KIND_roof_plane ? "design.roof.planes[1]"
                            : calculator->about_kind == KIND_busbar   ? "thing.busbars[1]"
                            : calculator->about_kind == KIND_service  ? "design.service"
                            : calculator->about_kind == KIND_design   ? "design"
                                                                      : NULL;
        if (owner != NULL)
            words[(*count)++] = arena_format(trial->arena, "%s:%s", owner, calculator->name);
    }
    return words;
}

/* Three quarters of the statements stand in an option of a group of their own, where a missing fact
 * or a point for review does not end the check. */
static void write_hostile(struct text *rule, struct dice *dice, const char *const *words,
                          size_t word_count)
{
    text_clear(rule);
    text_add_word(rule, head);
    size_t before = roll(dice, 3);
    for (size_t i = 0; i < before; i++)
        text_add_format(rule, "local v%zu = tostring(%s)\n", i, any(dice));
    text_add_word(rule, "shall.be(\"Good\", true)\n");
    bool is_option = roll(dice, 4) > 0;
    if (is_option)
        text_add_word(rule, "shall.meet_one_of { {\"good\", yes}, {\"hostile\", function()\n");
    text_add_word(rule, "do ");
    size_t way = roll(dice, 6);
    if (way == 0)
        add_other(rule, dice);
    else if (way < 3)
        add_calculation(rule, dice);
    else {
        text_add_format(rule, "local x = %s", words[roll(dice, word_count)]);
        add_arguments(rule, dice);
    }
    text_add_word(rule, " end\n");
    if (is_option)
        text_add_word(rule, "shall.be(\"Bad\", false) end} }\n");
    text_add_word(rule, "end }\n");
}

static bool has_broken(const struct finding *finding)
{
    for (size_t i = 0; i < finding->test_count; i++)
        if (finding->tests[i].relation == RELATION_BROKEN)
            return true;
    return false;
}

static bool came_well(const struct room_trial *trial)
{
    const struct finding *finding = finding_of(trial, "room/attack", 0);
    if (!trial->is_done || finding == NULL || !witness_passes(trial) || finding->message == NULL)
        return false;
    bool is_broken = has_broken(finding);
    if (is_broken)
        return finding->outcome <= OUTCOME_OPEN && trial->problems.count == 1;
    return trial->problems.count == 0 && finding->outcome < OUTCOME_COUNT;
}

int main(int argc, char **argv)
{
    size_t calls = argc > 1 ? strtoul(argv[1], NULL, 10) : 20000, broken = 0, word_count;
    struct dice dice = {argc > 2 ? strtoul(argv[2], NULL, 10) : 20260804};
    struct judge_limits limits = {.instructions = 200000, .memory = 4 << 20, .results = 50};
    struct text rule = {0};
    struct room_trial trial = room_open(&limits);
    const char *const *words = all_words(&word_count, &trial);
    trial.keeps_steps = true;
    for (size_t i = 0; i < calls; i++) {
        if (i % 500 == 499) { /* each rule's text is kept: begin anew now and then */
            judge_free(trial.judge);
            trial.judge = judge_new(&limits);
            if (trial.judge == NULL)
                abort();
        }
        write_hostile(&rule, &dice, words, word_count);
        if (rule.is_short)
            abort();
        const char *path = write_rule(rule.bytes, rule.length);
        /* A name of its own, so that it is read anew. */
        const char *name = arena_format(trial.arena, "%s.%zu", path, i % 500);
        if (name == NULL || rename(path, name) != 0)
            abort();
        alarm(60);
        room_review(&trial, name);
        broken += trial.problems.count;
        bool is_well = came_well(&trial);
        CHECK(is_well, "the review ends well");
        remove(name);
        if (!is_well) {
            fprintf(stderr, "call %zu:\n%s", i, rule.bytes + sizeof head - 1);
            for (size_t k = 0; k < trial.problems.count; k++)
                fprintf(stderr, "    %s\n", trial.problems.items[k].message);
        }
        if (checks_failed > 5)
            break;
    }
    fprintf(stderr, "%zu hostile calls of %zu words, %zu of them broke their rule\n", calls,
            word_count, broken);
    text_free(&rule);
    room_close(&trial);
    return checks_end();
}
