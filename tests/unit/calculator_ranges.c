/* Every input of every calculator that runs by hand, outside its range: refused by its name with
 * its unit and its range, and never a number. */
#include <math.h>

#include "electrical_call.h"

/* A difference of temperatures is told in °C, and made in K. */
static struct amount number_for(const struct parameter *parameter, double value)
{
    if (parameter->type != AMOUNT_QUANTITY)
        return amount_of_number(value);
    bool is_difference = parameter->measure == TEMPERATURE_DIFFERENCE;
    struct quantity quantity = quantity_of(value, is_difference ? "K" : parameter->unit);
    quantity.dimension = measure_dimension(parameter->measure);
    return amount_of_quantity(quantity);
}

/* Something inside its range, whatever comes of it. */
static struct amount inside(const struct parameter *parameter)
{
    switch (parameter->type) {
    case AMOUNT_QUANTITY:
    case AMOUNT_NUMBER:
        return number_for(parameter, (parameter->low + parameter->high) / 2);
    case AMOUNT_YESNO:
        return amount_of_yesno(false);
    default:
        return amount_of_word(parameter->words != NULL ? parameter->words[0] : "1 lbf at 1 ft");
    }
}

static bool has_result(const struct call *call)
{
    for (size_t i = 0; i < CALCULATOR_RESULTS; i++)
        if (call->results[i].type != AMOUNT_NONE)
            return true;
    return false;
}

/* Runs with all that must be given inside its range, and the input `at` as told. */
static void run_with(struct call *call, size_t at, struct amount told)
{
    struct amount inputs[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    for (size_t i = 0; i < call->calculator->input_count; i++)
        if (!call->calculator->inputs[i].is_optional)
            inputs[i] = inside(&call->calculator->inputs[i]);
    inputs[at] = told;
    working_start(&call->working);
    call->ran = calculator_run(call->calculator, call->results, NULL, inputs, &call->working);
}

static bool is_refused_by_name(const struct call *call, const struct parameter *parameter)
{
    const struct stop *stop = &call->working.stop;
    return !call->ran && !has_result(call) && stop->kind == STOP_WRONG && stop->input != NULL &&
           strcmp(stop->input, parameter->name) == 0 && stop->why != NULL &&
           strstr(stop->why, parameter->name) != NULL;
}

static void check_refused(struct call *call, size_t at, double value)
{
    const struct parameter *parameter = &call->calculator->inputs[at];
    char low[32], high[32];
    run_with(call, at, number_for(parameter, value));
    snprintf(low, sizeof low, "%g", parameter->low);
    snprintf(high, sizeof high, "%g", parameter->high);
    bool is_told = is_refused_by_name(call, parameter) &&
                   strstr(call->working.stop.why, low) != NULL &&
                   strstr(call->working.stop.why, high) != NULL &&
                   strstr(call->working.stop.why, parameter->unit) != NULL;
    if (!CHECK(is_told, "name, unit and range are told, and no number"))
        fprintf(stderr, "    %s %s %g: %s\n", call->calculator->name, parameter->name, value,
                call->working.stop.why != NULL ? call->working.stop.why : "(no word)");
}

static void check_numbers(struct call *call, size_t at)
{
    const struct parameter *parameter = &call->calculator->inputs[at];
    double step = 1e-3 * (fabs(parameter->high) + fabs(parameter->low));
    const double outside[] = {parameter->high + step,
                              1e6 * (parameter->high + step),
                              parameter->low - step,
                              NAN,
                              HUGE_VAL,
                              -HUGE_VAL};
    /* Quantities are finite by their making. */
    size_t count = parameter->type == AMOUNT_NUMBER ? sizeof outside / sizeof outside[0] : 3;
    for (size_t i = 0; i < count; i++)
        check_refused(call, at, outside[i]);
    if (parameter->low > 0)
        check_refused(call, at, 0);
    if (parameter->low >= 0)
        check_refused(call, at, -1);
}

static void check_others(struct call *call, size_t at)
{
    const struct parameter *parameter = &call->calculator->inputs[at];
    if (parameter->type == AMOUNT_WORD && parameter->words != NULL) {
        run_with(call, at, amount_of_word("florin"));
        CHECK(is_refused_by_name(call, parameter), parameter->name);
    }
    if (parameter->type == AMOUNT_QUANTITY) {
        bool is_time = parameter->measure == TIME;
        run_with(call, at, amount_of_quantity(quantity_of(5, is_time ? "kg" : "s")));
        CHECK(is_refused_by_name(call, parameter), "of another dimension");
    }
    if (!parameter->is_optional) {
        run_with(call, at, (struct amount){.type = AMOUNT_NONE});
        CHECK(is_refused_by_name(call, parameter), "left out");
    }
}

int main(void)
{
    struct call call;
    size_t calculators = 0, inputs = 0;
    call_open(&call);
    call.working.keeps_steps = false;
    for (size_t i = 0; (call.calculator = calculator_at(i)) != NULL; i++) {
        if (call.calculator->about_kind != KIND_NONE)
            continue;
        calculators++;
        for (size_t at = 0; at < call.calculator->input_count; at++, inputs++) {
            enum amount_type type = call.calculator->inputs[at].type;
            if (type == AMOUNT_QUANTITY || type == AMOUNT_NUMBER)
                check_numbers(&call, at);
            check_others(&call, at);
        }
        arena_clear(call.arena);
    }
    CHECK(calculators >= 70 && inputs >= 390, "all of them were tried");
    call_close(&call);
    return checks_end();
}
