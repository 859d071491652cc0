/* plumbrule calc: one calculator as a hand calculation. */
#include "desk.h"

#include <stdio.h>
#include <string.h>

#include "calculator.h"
#include "layout.h"
#include "page.h"
#include "text.h"

enum { WIDTH = 80, NAMES_MOST = 200, DIGITS = 6, SAYS_AT = 28 };

/* "length in ft, from 0 to 300", "number from 0 to 1", "one of copper, aluminum", "yes or no". */
static void write_kind(char *buffer, size_t size, const struct parameter *parameter)
{
    char low[32], high[32];
    size_t length = 0;
    switch (parameter->type) {
    case AMOUNT_QUANTITY:
    case AMOUNT_NUMBER:
        number_write(low, sizeof low, parameter->low);
        number_write(high, sizeof high, parameter->high);
        snprintf(buffer, size, "%s%s%s, from %s to %s",
                 parameter->type == AMOUNT_NUMBER ? "number" : measure_name(parameter->measure),
                 parameter->unit[0] ? " in " : "", parameter->unit, low, high);
        break;
    case AMOUNT_YESNO:
        snprintf(buffer, size, "yes or no");
        break;
    case AMOUNT_DATE:
        snprintf(buffer, size, "a day, YYYY-MM-DD");
        break;
    default:
        length = (size_t)snprintf(buffer, size, parameter->words != NULL ? "one of " : "a word");
        for (size_t i = 0; parameter->words != NULL && parameter->words[i] != NULL && length < size;
             i++)
            length += (size_t)snprintf(buffer + length, size - length, "%s%s", i > 0 ? ", " : "",
                                       parameter->words[i]);
    }
}

static void tell_parameter(struct page *page, const struct parameter *parameter)
{
    char kind[900], says[1200];
    write_kind(kind, sizeof kind, parameter);
    snprintf(says, sizeof says, "%s (%s%s)", parameter->sentence, kind,
             parameter->is_optional ? "; may be left out" : "");
    page_paragraph(page, 4, parameter->name, STYLE_PLAIN, SAYS_AT, says);
}

static void tell_calculator(struct page *page, const struct calculator *calculator)
{
    page_paragraph(page, 0, calculator->name, STYLE_STRONG, 2, calculator->sentence);
    if (calculator->source != NULL)
        page_paragraph(page, 2, "source:", STYLE_FAINT, 4, calculator->source);
    for (size_t i = 0; i < calculator->input_count; i++)
        tell_parameter(page, &calculator->inputs[i]);
    for (size_t i = 0; i < calculator->result_count; i++) {
        char says[400];
        snprintf(says, sizeof says, "gives: %s", calculator->results[i].sentence);
        page_paragraph(page, 4, calculator->results[i].name, STYLE_PLAIN, SAYS_AT, says);
    }
    page_gap(page);
}

static enum plumbrule_end list_calculators(struct desk *desk)
{
    struct page page = {&desk->out, WIDTH, false};
    const struct calculator *one;
    for (size_t i = 0; (one = calculator_at(i)) != NULL; i++)
        if (one->about_kind == KIND_NONE)
            tell_calculator(&page, one);
    text_add_word(&desk->out, "Run one with, say: plumbrule calc NAME input=\"10 ft\" …\n");
    return PLUMBRULE_STANDS;
}

static enum plumbrule_end refuse_calculator(struct desk *desk, const char *name)
{
    const char *names[NAMES_MOST];
    size_t count = 0;
    const struct calculator *one;
    for (size_t i = 0; count < NAMES_MOST && (one = calculator_at(i)) != NULL; i++)
        if (one->about_kind == KIND_NONE)
            names[count++] = one->name;
    const char *near = text_find_near(name, names, count);
    return near != NULL
               ? desk_refuse(desk, "calculator-unknown", NULL,
                             "there is no calculator '%s'; did you mean '%s'?", name, near)
               : desk_refuse(desk, "calculator-unknown", NULL,
                             "there is no calculator '%s'; plumbrule calc lists them all", name);
}

static bool refuse_value(struct desk *desk, const struct parameter *parameter, const char *why)
{
    char kind[900];
    write_kind(kind, sizeof kind, parameter);
    desk_refuse(desk, "input-bad", NULL, "%s: %s; it takes %s", parameter->name, why, kind);
    return false;
}

static bool read_yesno(struct amount *out, const char *text)
{
    bool yes = strcmp(text, "yes") == 0;
    *out = amount_of_yesno(yes);
    return yes || strcmp(text, "no") == 0;
}

/* The value of one input, by what its parameter is. */
static bool read_value(struct amount *out, const struct parameter *parameter, const char *text,
                       struct desk *desk)
{
    struct quantity_fault fault;
    enum measure measure = parameter->type == AMOUNT_QUANTITY ? parameter->measure : PURE_NUMBER;
    struct quantity quantity;
    struct date date;
    switch (parameter->type) {
    case AMOUNT_QUANTITY:
    case AMOUNT_NUMBER:
        if (!quantity_read(&quantity, text, strlen(text), measure_dimension(measure), &fault))
            return refuse_value(desk, parameter, fault.message);
        quantity.written = parameter->type == AMOUNT_QUANTITY ? text : NULL;
        *out = parameter->type == AMOUNT_QUANTITY ? amount_of_quantity(quantity)
                                                  : amount_of_number(quantity.value);
        return true;
    case AMOUNT_YESNO:
        return read_yesno(out, text) || refuse_value(desk, parameter, "it is neither yes nor no");
    case AMOUNT_DATE:
        if (!date_read(&date, text, strlen(text)))
            return refuse_value(desk, parameter, "that is no day");
        *out = amount_of_date(date);
        return true;
    default:
        *out = amount_of_word(text);
        return true;
    }
}

static bool refuse_input(struct desk *desk, const struct calculator *calculator, const char *name)
{
    const char *names[CALCULATOR_INPUTS];
    char list[600] = "";
    size_t length = 0;
    for (size_t i = 0; i < calculator->input_count && length < sizeof list; i++) {
        names[i] = calculator->inputs[i].name;
        length += (size_t)snprintf(list + length, sizeof list - length, "%s%s", i > 0 ? ", " : "",
                                   names[i]);
    }
    const char *near = text_find_near(name, names, calculator->input_count);
    desk_refuse(desk, "input-unknown", NULL, "%s has no input '%s'; %s%s", calculator->name, name,
                near != NULL ? "did you mean " : "it has ", near != NULL ? near : list);
    return false;
}

/* What the command line gives. */
struct given {
    struct amount inputs[CALCULATOR_INPUTS];
    bool is_refused[CALCULATOR_INPUTS]; /* it is told already what is wrong with it */
    bool has_stray;                     /* a word that names no input may have been meant for one */
};

static bool read_input(struct given *given, const struct calculator *calculator,
                       const char *operand, struct desk *desk)
{
    const char *equals = strchr(operand, '=');
    if (equals == NULL) {
        given->has_stray = true;
        desk_refuse(desk, "input-bad", "height=\"18 ft\"", "'%s' is no INPUT=VALUE", operand);
        return false;
    }
    char *name = arena_copy(desk->arena, operand, (size_t)(equals - operand));
    for (size_t i = 0; name != NULL && i < calculator->input_count; i++) {
        if (strcmp(calculator->inputs[i].name, name) != 0)
            continue;
        const struct parameter *parameter = &calculator->inputs[i];
        bool is_twice = given->inputs[i].type != AMOUNT_NONE || given->is_refused[i];
        bool is_read = is_twice ? refuse_value(desk, parameter, "it is given twice")
                                : read_value(&given->inputs[i], parameter, equals + 1, desk);
        given->is_refused[i] = given->is_refused[i] || !is_read;
        return is_read;
    }
    given->has_stray = true;
    return name != NULL && refuse_input(desk, calculator, name);
}

/* Reads all inputs and tells what cannot be read. */
static bool read_inputs(struct given *given, const struct calculator *calculator, struct desk *desk)
{
    bool all_read = true;
    for (size_t i = 1; i < desk->operands.count; i++)
        all_read = read_input(given, calculator, desk->operands.items[i], desk) && all_read;
    return all_read && desk->problems.count == 0;
}

static void tell_working(struct page *page, const struct calculator *calculator,
                         const struct amount *results, const struct working *working)
{
    for (size_t i = 0; i < calculator->result_count; i++) {
        char is[128];
        if (results[i].type == AMOUNT_NONE)
            continue;
        amount_write(is, sizeof is, results[i], NULL, DIGITS);
        text_add_format(page->out, "%s = %s\n", calculator->results[i].name, is);
    }
    text_add_word(page->out, "\nWorking\n");
    for (size_t i = 0; i < working->step_count; i++) {
        const struct step *step = &working->steps[i];
        page_paragraph(page, 0, NULL, STYLE_PLAIN, 2, step->text);
        if (step->source != NULL)
            page_paragraph(page, 0, NULL, STYLE_PLAIN, 6, step->source);
    }
}

/* What a calculator refuses often tells what it takes, and then once is enough. */
static bool tells_what_it_takes(const char *why)
{
    static const char *const words[] = {"it takes", "it must be", "editions known"};
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
        if (strstr(why, words[i]) != NULL)
            return true;
    return false;
}

static enum plumbrule_end refuse_stopped(struct desk *desk, const struct parameter *parameter,
                                         const char *why)
{
    if (tells_what_it_takes(why))
        return desk_refuse(desk, "input-bad", NULL, "%s: %s", parameter->name, why);
    refuse_value(desk, parameter, why);
    return PLUMBRULE_COMMAND;
}

/* Why there is no result. */
static enum plumbrule_end tell_stop(struct desk *desk, const struct calculator *calculator,
                                    const struct stop *stop)
{
    switch (stop->kind) {
    case STOP_MEMORY:
        return PLUMBRULE_NO_MEMORY;
    case STOP_BEYOND:
        problems_add(&desk->problems, PROBLEM_NOTE, "beyond", (struct place){0},
                     "%s cannot tell; a person must judge: %s", calculator->name, stop->why);
        return PLUMBRULE_OPEN;
    case STOP_WRONG:
        for (size_t i = 0; stop->input != NULL && i < calculator->input_count; i++)
            if (strcmp(calculator->inputs[i].name, stop->input) == 0)
                return refuse_stopped(desk, &calculator->inputs[i], stop->why);
        return desk_refuse(desk, "input-bad", NULL, "%s: %s", calculator->name, stop->why);
    default:
        problems_add(&desk->problems, PROBLEM_NOTE, "missing", (struct place){0},
                     "%s cannot tell: something is not given", calculator->name);
        return PLUMBRULE_OPEN;
    }
}

/* Whether each input that was read is what it may be, and all that are not, told at once. */
static bool check_inputs(struct desk *desk, const struct calculator *calculator,
                         const struct given *given, struct working *working)
{
    bool are_right = true;
    for (size_t i = 0; i < calculator->input_count; i++) {
        const struct parameter *parameter = &calculator->inputs[i];
        bool is_absent = given->inputs[i].type == AMOUNT_NONE;
        if (given->is_refused[i] || (is_absent && given->has_stray) ||
            calculator_takes(calculator, given->inputs, i, working))
            continue;
        if (is_absent)
            refuse_value(desk, parameter, "it is not given");
        else
            tell_stop(desk, calculator, &working->stop);
        are_right = false;
    }
    working->stop = (struct stop){STOP_NONE, NULL, 0, NULL, NULL};
    return are_right;
}

enum plumbrule_end run_calc(struct desk *desk)
{
    struct given given = {.inputs = {{.type = AMOUNT_NONE}}};
    struct amount results[CALCULATOR_RESULTS];
    struct working working = {.arena = desk->arena, .keeps_steps = true};
    struct page page = {&desk->out, WIDTH, false};
    if (desk->operands.count == 0)
        return list_calculators(desk);
    const struct calculator *calculator = calculator_find(KIND_NONE, desk->operands.items[0]);
    if (calculator == NULL)
        return refuse_calculator(desk, desk->operands.items[0]);
    bool are_read = read_inputs(&given, calculator, desk);
    if (!check_inputs(desk, calculator, &given, &working) || !are_read)
        return arena_is_short(desk->arena) ? PLUMBRULE_NO_MEMORY : PLUMBRULE_COMMAND;
    bool is_done = calculator_run(calculator, results, NULL, given.inputs, &working);
    enum plumbrule_end end = PLUMBRULE_STANDS;
    if (is_done)
        tell_working(&page, calculator, results, &working);
    else
        end = tell_stop(desk, calculator, &working.stop);
    working_close(&working);
    return end;
}
