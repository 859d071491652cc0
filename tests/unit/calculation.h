/* For tests of calculators: a call written as one line of text, and rows of a CSV file. */
#ifndef TESTS_CALCULATION_H
#define TESTS_CALCULATION_H
#include "check.h"

#include "calculator.h"
#include "unit.h"

/* One arena, one working and the last call's results; main makes and ends it. */
struct calculation {
    struct arena *arena;
    struct working working;
    const struct calculator *calculator;
    struct amount results[CALCULATOR_RESULTS];
};

static inline void calculation_begin(struct calculation *calculation)
{
    *calculation = (struct calculation){.arena = arena_new()};
    calculation->working.arena = calculation->arena;
    calculation->working.keeps_steps = true;
    if (calculation->arena == NULL)
        abort();
}

static inline void calculation_end(struct calculation *calculation)
{
    arena_free(calculation->arena);
}

static inline struct amount calculation_read(const struct parameter *parameter, const char *text)
{
    struct quantity quantity;
    struct quantity_fault fault;
    switch (parameter->type) {
    case AMOUNT_QUANTITY:
        if (quantity_read(&quantity, text, strlen(text), measure_dimension(parameter->measure),
                          &fault))
            return amount_of_quantity(quantity);
        fprintf(stderr, "%s: '%s': %s\n", parameter->name, text, fault.message);
        abort();
    case AMOUNT_NUMBER:
        return amount_of_number(strtod(text, NULL));
    case AMOUNT_YESNO:
        return amount_of_yesno(strcmp(text, "yes") == 0);
    default:
        return amount_of_word(text);
    }
}

/* Runs a free calculator: "speed 120 mph, exposure C". An unknown name is the test's mistake. */
static inline bool calculate_text(struct calculation *calculation, const char *name,
                                  const char *text)
{
    const struct calculator *calculator = calculator_find(KIND_NONE, name);
    struct amount inputs[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    if (calculator == NULL) {
        fprintf(stderr, "there is no calculator %s\n", name);
        abort();
    }
    arena_clear(calculation->arena);
    working_start(&calculation->working);
    calculation->calculator = calculator;
    char *copy = arena_copy(calculation->arena, text, strlen(text));
    for (char *next, *one = copy; one != NULL && *one != '\0'; one = next) {
        next = strstr(one, ", ");
        if (next != NULL) {
            *next = '\0';
            next += 2;
        }
        char *value = strchr(one, ' ');
        size_t i = 0;
        if (value != NULL)
            *value++ = '\0';
        while (i < calculator->input_count && strcmp(calculator->inputs[i].name, one) != 0)
            i++;
        if (i == calculator->input_count || value == NULL) {
            fprintf(stderr, "%s takes no input '%s'\n", name, one);
            abort();
        }
        inputs[i] = calculation_read(&calculator->inputs[i], value);
    }
    return calculator_run(calculator, calculation->results, NULL, inputs, &calculation->working);
}

/* A call whose text is made like printf's. */
__attribute__((format(printf, 3, 4))) static inline bool
calculate_with(struct calculation *calculation, const char *name, const char *format, ...)
{
    char text[600];
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(text, sizeof text, format, arguments);
    va_end(arguments);
    if (calculate_text(calculation, name, text))
        return true;
    return false;
}

/* A result of the last call by name; a number in its parameter's unit. NaN: there is none. */
static inline double result_number(const struct calculation *calculation, const char *name)
{
    for (size_t i = 0; i < calculation->calculator->result_count; i++) {
        const struct parameter *parameter = &calculation->calculator->results[i];
        const struct amount *result = &calculation->results[i];
        if (strcmp(parameter->name, name) != 0)
            continue;
        if (result->type == AMOUNT_NUMBER)
            return result->quantity.value;
        if (result->type == AMOUNT_QUANTITY)
            return quantity_as(result->quantity, parameter->unit);
        return NAN;
    }
    fprintf(stderr, "no result %s\n", name);
    abort();
}

static inline const struct amount *result_amount(const struct calculation *calculation,
                                                 const char *name)
{
    for (size_t i = 0; i < calculation->calculator->result_count; i++)
        if (strcmp(calculation->calculator->results[i].name, name) == 0)
            return &calculation->results[i];
    fprintf(stderr, "no result %s\n", name);
    abort();
}

/* Did the last call stop so, with these words in its reason? */
static inline bool stopped_with(const struct calculation *calculation, enum stop_kind kind,
                                const char *words)
{
    const struct stop *stop = &calculation->working.stop;
    bool holds = stop->kind == kind && stop->why != NULL && strstr(stop->why, words) != NULL;
    if (!holds)
        fprintf(stderr, "    stop %d: %s\n", (int)stop->kind, stop->why ? stop->why : "(nothing)");
    return holds;
}

/* A file of plain comma-separated rows: the heading is passed over. */
enum { ROW_FIELDS = 24 };
typedef void on_row(struct calculation *calculation, char *const fields[ROW_FIELDS]);
static inline size_t each_row(struct calculation *calculation, const char *path, on_row *then)
{
    char line[2000];
    size_t rows = 0;
    FILE *file = fopen(path, "r");
    if (file == NULL) {
        perror(path);
        abort();
    }
    while (fgets(line, sizeof line, file) != NULL) {
        static char empty[1] = "";
        char *fields[ROW_FIELDS];
        size_t count = 0;
        line[strcspn(line, "\n")] = '\0';
        for (char *at = line; count < ROW_FIELDS && at != NULL;) {
            char *comma = strchr(at, ',');
            fields[count++] = at;
            if (comma != NULL)
                *comma++ = '\0';
            at = comma;
        }
        while (count < ROW_FIELDS)
            fields[count++] = empty;
        if (rows++ > 0)
            then(calculation, fields);
    }
    fclose(file);
    return rows - 1;
}

/* Numbers that only look random: the same run every time. */
static inline double random_between(unsigned long long *seed, double low, double high)
{
    *seed = *seed * 6364136223846793005ULL + 1442695040888963407ULL;
    return low + (high - low) * ((double)(*seed >> 33) / 2147483648.0);
}

#endif
