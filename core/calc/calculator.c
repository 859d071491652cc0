#include "calculator.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "kept.h"
#include "unit.h"

static const struct calculator *const lists[] = {
    string_calculators, conductor_calculators, service_calculators, wind_calculators,
    snow_calculators,   fastener_calculators,  framing_calculators, load_calculators,
    layout_calculators, placed_calculators};

/* Runs through the lists: those of one kind of calculator after the other. */
static const struct calculator *find_nth(bool is_method, size_t *at)
{
    for (size_t i = 0; i < sizeof lists / sizeof lists[0]; i++)
        for (const struct calculator *one = lists[i]; one->name != NULL; one++)
            if ((one->about_kind != KIND_NONE) == is_method && (*at)-- == 0)
                return one;
    return NULL;
}

const struct calculator *calculator_at(size_t at)
{
    const struct calculator *one = find_nth(false, &at);
    return one != NULL ? one : find_nth(true, &at);
}

const struct calculator *calculator_next(const struct calculator *before, enum kind_id about_kind)
{
    bool is_behind = before == NULL;
    for (size_t i = 0; i < sizeof lists / sizeof lists[0]; i++)
        for (const struct calculator *one = lists[i]; one->name != NULL; one++) {
            if (is_behind && one->about_kind == about_kind)
                return one;
            is_behind = is_behind || one == before;
        }
    return NULL;
}

const struct calculator *calculator_find(enum kind_id about_kind, const char *name)
{
    for (size_t i = 0; i < sizeof lists / sizeof lists[0]; i++)
        for (const struct calculator *one = lists[i]; one->name != NULL; one++)
            if (one->about_kind == about_kind && one->name[0] == name[0] &&
                strcmp(one->name, name) == 0)
                return one;
    return NULL;
}

static const char *type_name(const struct parameter *parameter)
{
    switch (parameter->type) {
    case AMOUNT_QUANTITY:
        return measure_name(parameter->measure);
    case AMOUNT_NUMBER:
        return "number";
    case AMOUNT_YESNO:
        return "yes or no";
    case AMOUNT_DATE:
        return "date";
    default:
        return "word";
    }
}

static bool is_word_allowed(const struct parameter *parameter, const char *word)
{
    for (size_t i = 0; parameter->words != NULL && parameter->words[i] != NULL; i++)
        if (strcmp(parameter->words[i], word) == 0)
            return true;
    return parameter->words == NULL;
}

static bool refuse_word(const struct parameter *parameter, const char *word,
                        struct working *working)
{
    char choices[400] = "";
    size_t length = 0;
    for (size_t i = 0; parameter->words[i] != NULL && length < sizeof choices; i++)
        length += (size_t)snprintf(choices + length, sizeof choices - length, "%s%s",
                                   i > 0 ? ", " : "", parameter->words[i]);
    return working_wrong(working, parameter->name, "'%s' is no %s; it takes one of %s", word,
                         parameter->name, choices);
}

static bool check_range(const struct parameter *parameter, double number, struct working *working)
{
    if (number > parameter->low && number < parameter->high)
        return true;
    /* What equals a bound within the house's tolerance is inside. */
    bool is_inside = isfinite(number) && number_compare(number, parameter->low) >= 0 &&
                     number_compare(number, parameter->high) <= 0;
    const char *space = parameter->unit[0] != '\0' ? " " : "";
    return is_inside ||
           working_wrong(working, parameter->name, "%s is %.6g%s%s; it must be from %g to %g%s%s",
                         parameter->name, number, space, parameter->unit, parameter->low,
                         parameter->high, space, parameter->unit);
}

static bool check_input(const struct parameter *parameter, const struct amount *input,
                        struct working *working)
{
    if (input->type == AMOUNT_NONE)
        return parameter->is_optional ||
               working_wrong(working, parameter->name, "%s is not given; it is a %s: %s",
                             parameter->name, type_name(parameter), parameter->sentence);
    if (input->type != parameter->type)
        return working_wrong(working, parameter->name, "%s must be a %s", parameter->name,
                             type_name(parameter));
    if (input->type == AMOUNT_WORD)
        return is_word_allowed(parameter, input->word) ||
               refuse_word(parameter, input->word, working);
    if (input->type == AMOUNT_NUMBER)
        return check_range(parameter, input->quantity.value, working);
    if (input->type != AMOUNT_QUANTITY)
        return true;
    if (!dimension_is_same(input->quantity.dimension, measure_dimension(parameter->measure))) {
        char is[64];
        dimension_write(is, sizeof is, input->quantity.dimension);
        return working_wrong(working, parameter->name, "%s must be a %s, not a %s", parameter->name,
                             type_name(parameter), is);
    }
    return check_range(parameter, quantity_as(input->quantity, parameter->unit), working);
}

bool calculator_takes(const struct calculator *calculator, const struct amount *inputs, size_t at,
                      struct working *working)
{
    return check_input(&calculator->inputs[at], &inputs[at], working);
}

/* "ampacity(size 10 AWG, ambient 52 °C)" */
static void note_call(const struct calculator *calculator, const struct object *about,
                      const struct amount *inputs, struct working *working)
{
    char line[600];
    size_t length = (size_t)snprintf(
        line, sizeof line, "%s%s%s%s", calculator->name, about != NULL ? " of " : "",
        about != NULL ? about->kind->name : "", about != NULL ? " " : "");
    if (about != NULL && length < sizeof line)
        length += (size_t)snprintf(line + length, sizeof line - length, "%s", about->path);
    for (size_t i = 0; i < calculator->input_count && length < sizeof line; i++) {
        char text[128];
        if (inputs[i].type == AMOUNT_NONE)
            continue;
        amount_write(text, sizeof text, inputs[i], NULL, 6);
        length += (size_t)snprintf(line + length, sizeof line - length, ", %s %s",
                                   calculator->inputs[i].name, text);
    }
    working_step(working, calculator->source, "%s:", line);
}

static void note_results(const struct calculator *calculator, const struct amount *results,
                         struct working *working)
{
    for (size_t i = 0; i < calculator->result_count; i++) {
        char text[128];
        const struct parameter *parameter = &calculator->results[i];
        if (results[i].type == AMOUNT_NONE)
            continue;
        amount_write(text, sizeof text, results[i], NULL, 6);
        working_step(working, NULL, "%s = %s", parameter->name, text);
    }
}

static bool check_results(const struct calculator *calculator, const struct amount *results,
                          struct working *working)
{
    for (size_t i = 0; i < calculator->result_count; i++)
        if ((results[i].type == AMOUNT_QUANTITY || results[i].type == AMOUNT_NUMBER) &&
            !isfinite(results[i].quantity.value))
            return working_wrong(working, calculator->results[i].name, "%s came out not finite",
                                 calculator->results[i].name);
    return true;
}

/* Works the answer out, with its steps where they are kept. */
static bool run(const struct calculator *calculator, struct amount *results,
                const struct object *about, const struct amount *inputs, struct working *working)
{
    for (size_t i = 0; i < calculator->input_count; i++)
        if (!check_input(&calculator->inputs[i], &inputs[i], working))
            return false;
    if (working->keeps_steps)
        note_call(calculator, about, inputs, working);
    if (!calculator->run(results, about, inputs, working) ||
        !check_results(calculator, results, working))
        return false;
    if (working->keeps_steps)
        note_results(calculator, results, working);
    return true;
}

bool calculator_run(const struct calculator *calculator, struct amount *results,
                    const struct object *about, const struct amount *inputs,
                    struct working *working)
{
    size_t first_step = working->step_count;
    if (kept_tell(results, calculator, about, inputs, working))
        return true;
    for (size_t i = 0; i < calculator->result_count; i++)
        results[i] = (struct amount){.type = AMOUNT_NONE};
    /* A piece of work of its own: its answer is kept with the facts that it read. */
    struct trail outer = working_trail_open(working);
    bool is_answered = run(calculator, results, about, inputs, working);
    struct readings *kept =
        is_answered ? kept_add(calculator, about, inputs, results, first_step, working) : NULL;
    working_trail_close(working, outer, kept);
    return is_answered;
}
