/* Calls calculators as the desk does: by name, with inputs as text. */
#ifndef TESTS_ELECTRICAL_CALL_H
#define TESTS_ELECTRICAL_CALL_H
#include <stdarg.h>

#include "calculator.h"
#include "check.h"

struct call {
    struct arena *arena;
    struct working working;
    struct amount results[CALCULATOR_RESULTS];
    const struct calculator *calculator;
    bool ran;
};

static inline void call_open(struct call *call)
{
    memset(call, 0, sizeof *call);
    call->arena = arena_new();
    call->working.arena = call->arena;
    call->working.keeps_steps = true;
}

static inline void call_close(struct call *call)
{
    working_close(&call->working);
    arena_free(call->arena);
}

static inline struct amount amount_from(const struct parameter *parameter, const char *text)
{
    struct quantity quantity;
    struct quantity_fault fault;
    switch (parameter->type) {
    case AMOUNT_QUANTITY:
        CHECK(quantity_read(&quantity, text, strlen(text), measure_dimension(parameter->measure),
                            &fault),
              text);
        return amount_of_quantity(quantity);
    case AMOUNT_NUMBER:
        return amount_of_number(strtod(text, NULL));
    case AMOUNT_YESNO:
        return amount_of_yesno(strcmp(text, "yes") == 0);
    default:
        return amount_of_word(text);
    }
}

/* Pairs of name and text after `name`, ended by NULL. */
static inline bool call_about(struct call *call, const struct object *about, const char *name,
                              va_list pairs)
{
    struct amount inputs[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    call->calculator = calculator_find(about != NULL ? about->kind->id : KIND_NONE, name);
    if (!CHECK(call->calculator != NULL, name))
        exit(EXIT_FAILURE);
    const char *input;
    while ((input = va_arg(pairs, const char *)) != NULL) {
        const char *text = va_arg(pairs, const char *);
        size_t i = 0;
        while (i < call->calculator->input_count &&
               strcmp(call->calculator->inputs[i].name, input) != 0)
            i++;
        if (CHECK(i < call->calculator->input_count, input))
            inputs[i] = amount_from(&call->calculator->inputs[i], text);
    }
    working_start(&call->working);
    call->ran = calculator_run(call->calculator, call->results, about, inputs, &call->working);
    return call->ran;
}

static inline bool call_it(struct call *call, const char *name, ...)
{
    va_list pairs;
    va_start(pairs, name);
    bool ran = call_about(call, NULL, name, pairs);
    va_end(pairs);
    if (!ran)
        fprintf(stderr, "    %s: %s\n", name,
                call->working.stop.why != NULL ? call->working.stop.why : "(missing)");
    return ran;
}

/* One that must not run. */
static inline enum stop_kind call_refused(struct call *call, const char *name, ...)
{
    va_list pairs;
    va_start(pairs, name);
    bool ran = call_about(call, NULL, name, pairs);
    va_end(pairs);
    CHECK(!ran, name);
    return call->working.stop.kind;
}

static inline bool call_of(struct call *call, const struct object *about, const char *name, ...)
{
    va_list pairs;
    va_start(pairs, name);
    bool ran = call_about(call, about, name, pairs);
    va_end(pairs);
    return ran;
}

static inline const struct amount *result_of(const struct call *call, const char *name)
{
    for (size_t i = 0; i < call->calculator->result_count; i++)
        if (strcmp(call->calculator->results[i].name, name) == 0)
            return &call->results[i];
    CHECK(false, name);
    return &call->results[0];
}

/* A result by name, in its parameter's unit; NAN where it was not given. */
static inline double number_of(const struct call *call, const char *name)
{
    const struct amount *result = result_of(call, name);
    size_t at = (size_t)(result - call->results);
    if (!call->ran || (result->type != AMOUNT_QUANTITY && result->type != AMOUNT_NUMBER))
        return NAN;
    return result->type == AMOUNT_NUMBER
               ? result->quantity.value
               : quantity_as(result->quantity, call->calculator->results[at].unit);
}

static inline const char *word_of(const struct call *call, const char *name)
{
    const struct amount *result = result_of(call, name);
    return call->ran && result->type == AMOUNT_WORD ? result->word : NULL;
}

static inline bool is_yes(const struct call *call, const char *name)
{
    const struct amount *result = result_of(call, name);
    CHECK(call->ran && result->type == AMOUNT_YESNO, name);
    return result->yes;
}

static inline bool has_step(const struct call *call, const char *part)
{
    for (size_t i = 0; i < call->working.step_count; i++)
        if (strstr(call->working.steps[i].text, part) != NULL)
            return true;
    return false;
}

#endif
