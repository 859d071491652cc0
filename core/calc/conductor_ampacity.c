#include "conductor_runs.h"

#include <math.h>
#include <string.h>

#include "conductor.h"

const char *const environment_words[] = {"raceway", "free air", NULL};

bool edition_read(int *edition, struct amount input, struct working *working)
{
    double is = amount_in(input, NULL, 0);
    *edition = (int)is;
    return !is_given(input) || is == 2017 || is == 2020 || is == 2023 ||
           working_wrong(working, "edition",
                         "edition is %.6g; the editions known are 2017, 2020 and 2023", is);
}

static bool find_base(double *amperes, const struct ampacity_case *given, int column,
                      struct working *working)
{
    enum ampacity_environment environment = given->environment;
    bool is_free = environment == IN_FREE_AIR &&
                   ampacity_at(amperes, given->size, given->material, column, IN_FREE_AIR);
    if (environment == IN_FREE_AIR && !is_free)
        working_step(working, NULL,
                     "free air: no figure at hand for %s %s; the raceway's is lower and serves",
                     given->size, given->material);
    if (!is_free && !ampacity_at(amperes, given->size, given->material, column, IN_RACEWAY))
        return working_beyond(
            working,
            "size is %s %s; the ampacity table at hand runs from 14 AWG copper or "
            "12 AWG aluminum to 750 kcmil",
            given->size, given->material);
    environment = is_free ? IN_FREE_AIR : IN_RACEWAY;
    bool is_memory = ampacity_is_from_memory(given->size, given->material, column, environment);
    working_step(working, is_free ? SOURCE_AMPACITY_FREE : SOURCE_AMPACITY,
                 "%s %s, %d °C column: %g A%s", given->size, given->material, column, *amperes,
                 is_memory ? " (from memory)" : "");
    return true;
}

/* Where the height alone decides, the edition need not be told. */
static bool find_adder(double *celsius, const struct ampacity_case *given, struct working *working)
{
    *celsius = 0;
    if (given->height < 0)
        return true;
    double old = 0, new = 0;
    if (!ampacity_rooftop_adder(&old, given->height, 2020, given->insulation_type) ||
        !ampacity_rooftop_adder(&new, given->height, 2023, given->insulation_type))
        return working_wrong(working, "height", "height is %.4g in", given->height);
    if (given->edition == 0 && old != new)
        return working_wrong(working, "edition",
                             "edition is not given, and at %.4g in above the roof it decides the "
                             "rooftop adder",
                             given->height);
    *celsius = given->edition == 2023 ? new : old;
    working_step(working, SOURCE_ROOFTOP, "%.4g in above the roof: adds %g °C", given->height,
                 *celsius);
    return true;
}

/* All that does not hang on the size. */
static bool find_factors(struct ampacity_found *found, const struct ampacity_case *given,
                         struct working *working)
{
    double adder;
    *found = (struct ampacity_found){0};
    if (!ampacity_column(&found->column, given->insulation))
        return working_wrong(working, "insulation",
                             "insulation is %.4g °C; it must be 60 °C or more", given->insulation);
    if (!find_adder(&adder, given, working))
        return false;
    found->temperature = given->ambient + adder;
    if (!ampacity_ambient_factor(&found->ambient_factor, found->temperature, found->column))
        return working_beyond(working,
                              "the ambient temperature, rooftop adder included, is %.4g °C; the "
                              "%d °C column of Table 310.15(B)(1) ends before it",
                              found->temperature, found->column);
    if (!ampacity_count_factor(&found->count_factor, given->conductors))
        return working_wrong(working, "conductors", "conductors is %.4g; it must be 1 or more",
                             given->conductors);
    working_step(working, SOURCE_AMBIENT, "%.4g °C in the %d °C column: factor %g",
                 found->temperature, found->column, found->ambient_factor);
    working_step(working, SOURCE_COUNT, "%.4g current-carrying conductors: factor %g",
                 given->conductors, found->count_factor);
    return true;
}

bool find_terminal_ampacity(double *amperes, const struct ampacity_case *given,
                            struct working *working)
{
    int column;
    struct ampacity_case uncorrected = *given;
    uncorrected.environment = IN_RACEWAY; /* terminals go by Table 310.16: 110.14(C) */
    if (!ampacity_column(&column, fmin(given->terminal, given->insulation)))
        return working_wrong(working, "terminal", "terminal is %.4g °C; it must be 60 °C or more",
                             given->terminal);
    working_step(working, "NEC 110.14(C)", "terminals rated %.4g °C, insulation %.4g °C",
                 given->terminal, given->insulation);
    if (!find_base(amperes, &uncorrected, column, working))
        return false;
    *amperes *= given->sets;
    return true;
}

bool find_ampacity(struct ampacity_found *found, const struct ampacity_case *given,
                   struct working *working)
{
    if (!find_factors(found, given, working) ||
        !find_base(&found->base, given, found->column, working))
        return false;
    found->corrected = found->base * found->ambient_factor * found->count_factor * given->sets;
    working_step(working, "NEC 310.15", "%g A x %g x %g x %g per pole = %.6g A", found->base,
                 found->ambient_factor, found->count_factor, given->sets, found->corrected);
    found->usable = found->corrected;
    if (given->terminal <= 0)
        return true;
    if (!find_terminal_ampacity(&found->terminal, given, working))
        return false;
    found->usable = fmin(found->corrected, found->terminal);
    working_step(working, "NEC 110.14(C)", "usable: the smaller of %.6g A and %.6g A",
                 found->corrected, found->terminal);
    return true;
}

/* Is a size enough? Sizes outside the table and stops on the way are not. */
static bool serves(struct ampacity_case *given, double amperes, double ocpd,
                   enum ocpd_device device, struct working *working)
{
    struct ampacity_found found = {0};
    double largest;
    return ampacity_at(&found.base, given->size, given->material, 60, IN_RACEWAY) &&
           find_ampacity(&found, given, working) &&
           number_compare(found.terminal, CONTINUOUS_FACTOR * amperes) >= 0 &&
           number_compare(found.corrected, amperes) >= 0 &&
           find_largest_ocpd(&largest, given->size, given->material, found.usable, device,
                             given->edition, working) &&
           number_compare(largest, ocpd) >= 0;
}

bool find_smallest_conductor(const char **size, struct ampacity_case *given, double amperes,
                             double ocpd, enum ocpd_device device, struct working *working)
{
    struct ampacity_found factors;
    bool keeps_steps = working->keeps_steps;
    if (ocpd <= 0 &&
        !find_ocpd_up(&ocpd, CONTINUOUS_FACTOR * amperes, device, given->edition, working))
        return false;
    working->keeps_steps = false; /* the sizes that do not serve are not told */
    bool is_covered = find_factors(&factors, given, working);
    *size = NULL;
    for (size_t i = 0; is_covered && *size == NULL && conductor_size_at(i) != NULL; i++) {
        given->size = conductor_size_at(i);
        if (serves(given, amperes, ocpd, device, working))
            *size = given->size;
        else if (working->stop.kind == STOP_WRONG || working->stop.kind == STOP_MEMORY)
            break;
    }
    working->keeps_steps = keeps_steps;
    if (!is_covered || working->stop.kind == STOP_WRONG || working->stop.kind == STOP_MEMORY)
        return false;
    working->stop = (struct stop){STOP_NONE, NULL, 0, NULL, NULL}; /* of the sizes passed over */
    if (*size == NULL)
        return working_beyond(working,
                              "no %s conductor up to 750 kcmil carries %.6g A behind %g A here",
                              given->material, amperes, ocpd);
    working_step(working, NULL, "smallest size that passes all three tests: %s", *size);
    return serves(given, amperes, ocpd, device, working);
}

static bool read_case(struct ampacity_case *given, const struct amount *inputs, const char *size,
                      struct working *working)
{
    bool is_free = is_given(inputs[AMPACITY_ENVIRONMENT]) &&
                   strcmp(inputs[AMPACITY_ENVIRONMENT].word, "free air") == 0;
    *given = (struct ampacity_case){.size = size,
                                    .material = inputs[AMPACITY_MATERIAL].word,
                                    .insulation = amount_in(inputs[AMPACITY_INSULATION], "°C", 0),
                                    .ambient = amount_in(inputs[AMPACITY_AMBIENT], "°C", 30),
                                    .conductors = amount_in(inputs[AMPACITY_CONDUCTORS], NULL, 1),
                                    .environment = is_free ? IN_FREE_AIR : IN_RACEWAY,
                                    .height = amount_in(inputs[AMPACITY_HEIGHT], "in", -1),
                                    .insulation_type = inputs[AMPACITY_INSULATION_TYPE].word,
                                    .sets = amount_in(inputs[AMPACITY_SETS], NULL, 1),
                                    .terminal = amount_in(inputs[AMPACITY_TERMINAL], "°C", 0)};
    return edition_read(&given->edition, inputs[AMPACITY_EDITION], working);
}

bool run_ampacity(struct amount *results, const struct object *about, const struct amount *inputs,
                  struct working *working)
{
    (void)about;
    struct ampacity_case given;
    struct ampacity_found found;
    if (!read_case(&given, inputs, inputs[AMPACITY_SIZE].word, working) ||
        !find_ampacity(&found, &given, working))
        return false;
    results[0] = amount_as(found.corrected, "A");
    results[1] = amount_as(found.base, "A");
    results[2] = amount_as(found.temperature, "°C");
    results[3] = amount_of_number(found.ambient_factor);
    results[4] = amount_of_number(found.count_factor);
    if (given.terminal > 0) {
        results[5] = amount_as(found.terminal, "A");
        results[6] = amount_as(found.usable, "A");
    }
    return true;
}

bool run_corrected_ampacity(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    (void)about;
    struct ampacity_case given;
    struct ampacity_found found;
    double amperes = amount_in(inputs[AMPACITY_OWN], "A", 0);
    if (!read_case(&given, inputs, inputs[AMPACITY_SIZE].word, working) ||
        !find_ampacity(&found, &given, working))
        return false;
    bool is_enough = number_compare(found.corrected, amperes) >= 0;
    working_step(working, "NEC 690.8(B)(2), 705.28", "%.6g A after corrections: %s for %.6g A",
                 found.corrected, is_enough ? "enough" : "not enough", amperes);
    results[0] = amount_as(found.corrected, "A");
    results[1] = amount_of_yesno(is_enough);
    return true;
}

bool run_terminal_ampacity(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    (void)about;
    enum { SIZE, MATERIAL, INSULATION, TERMINAL, CURRENT_INPUT, SETS };
    struct ampacity_case given = {.size = inputs[SIZE].word,
                                  .material = inputs[MATERIAL].word,
                                  .insulation = amount_in(inputs[INSULATION], "°C", 0),
                                  .terminal = amount_in(inputs[TERMINAL], "°C", 0),
                                  .sets = amount_in(inputs[SETS], NULL, 1)};
    double column;
    if (!find_terminal_ampacity(&column, &given, working))
        return false;
    results[0] = amount_as(column, "A");
    if (!is_given(inputs[CURRENT_INPUT]))
        return true;
    double needed = CONTINUOUS_FACTOR * amount_in(inputs[CURRENT_INPUT], "A", 0);
    bool is_enough = number_compare(column, needed) >= 0;
    working_step(working, "NEC 690.8(B)(1), 705.28",
                 "%.6g A before corrections: %s for 125 %% of the current, %.6g A", column,
                 is_enough ? "enough" : "not enough", needed);
    results[1] = amount_as(needed, "A");
    results[2] = amount_of_yesno(is_enough);
    return true;
}

bool run_smallest_conductor(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    (void)about;
    enum { THE_CURRENT = AMPACITY_SIZE, OCPD = AMPACITY_OWN, DEVICE };
    struct ampacity_case given;
    struct ampacity_found found;
    const char *size;
    if (!read_case(&given, inputs, NULL, working))
        return false;
    if (given.terminal <= 0)
        return working_wrong(working, "terminal", "terminal is not given");
    if (!find_smallest_conductor(&size, &given, amount_in(inputs[THE_CURRENT], "A", 0),
                                 amount_in(inputs[OCPD], "A", 0), device_of(inputs[DEVICE]),
                                 working) ||
        !find_ampacity(&found, &given, working))
        return false;
    results[0] = amount_of_word(size);
    results[1] = amount_as(found.corrected, "A");
    results[2] = amount_as(found.terminal, "A");
    return true;
}
