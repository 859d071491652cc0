/* Rows of calculators: their inputs and results, the lists they stand in, and amounts by unit. */
#ifndef CALC_PARAMETER_H
#define CALC_PARAMETER_H
#include "calculator.h"
#include "words.h"

#define GIVEN_QUANTITY(name, measure, unit, low, high, sentence)                                   \
    {                                                                                              \
        name, AMOUNT_QUANTITY, measure, unit, low, high, NULL, false, sentence                     \
    }
#define MAYBE_QUANTITY(name, measure, unit, low, high, sentence)                                   \
    {                                                                                              \
        name, AMOUNT_QUANTITY, measure, unit, low, high, NULL, true, sentence                      \
    }
#define GIVEN_NUMBER(name, low, high, sentence)                                                    \
    {                                                                                              \
        name, AMOUNT_NUMBER, PURE_NUMBER, "", low, high, NULL, false, sentence                     \
    }
#define MAYBE_NUMBER(name, low, high, sentence)                                                    \
    {                                                                                              \
        name, AMOUNT_NUMBER, PURE_NUMBER, "", low, high, NULL, true, sentence                      \
    }
#define GIVEN_WORD(name, words, sentence)                                                          \
    {                                                                                              \
        name, AMOUNT_WORD, PURE_NUMBER, "", 0, 0, words, false, sentence                           \
    }
#define MAYBE_WORD(name, words, sentence)                                                          \
    {                                                                                              \
        name, AMOUNT_WORD, PURE_NUMBER, "", 0, 0, words, true, sentence                            \
    }
#define GIVEN_YESNO(name, sentence)                                                                \
    {                                                                                              \
        name, AMOUNT_YESNO, PURE_NUMBER, "", 0, 0, NULL, false, sentence                           \
    }
#define MAYBE_YESNO(name, sentence)                                                                \
    {                                                                                              \
        name, AMOUNT_YESNO, PURE_NUMBER, "", 0, 0, NULL, true, sentence                            \
    }

/* What stands in more than one calculator. */
#define GIVEN_EDITION GIVEN_NUMBER("edition", 2017, 2023, "Edition of the NEC: 2017, 2020, 2023.")
#define MAYBE_EDITION                                                                              \
    MAYBE_NUMBER("edition", 2017, 2023,                                                            \
                 "Edition of the NEC: 2017, 2020, 2023; asked for where they differ.")

/* Free calculator `id`, run by run_id, and method `id` of a kind, run by run_kind_id. `given` and
 * `found` are arrays of parameters; PLAIN_METHOD takes no inputs. */
#define ROWS(array) (array), sizeof(array) / sizeof((array)[0])
#define FREE_CALCULATOR(id, given, found, sentence, source)                                        \
    {                                                                                              \
#id, KIND_NONE, sentence, source, ROWS(given), ROWS(found), run_##id                       \
    }
#define METHOD_CALCULATOR(of, id, given, found, sentence, source)                                  \
    {                                                                                              \
#id, KIND_##of, sentence, source, ROWS(given), ROWS(found), run_##of##_##id                \
    }
#define PLAIN_METHOD(of, id, found, sentence, source)                                              \
    {                                                                                              \
#id, KIND_##of, sentence, source, NULL, 0, ROWS(found), run_##of##_##id                    \
    }

static inline bool is_given(struct amount input)
{
    return input.type != AMOUNT_NONE;
}

/* The number of a quantity or number input; `unit` NULL for a number; `absent` if not given. */
static inline double amount_in(struct amount input, const char *unit, double absent)
{
    return !is_given(input) ? absent
           : unit == NULL   ? input.quantity.value
                            : quantity_as(input.quantity, unit);
}

static inline struct amount amount_as(double value, const char *unit)
{
    return amount_of_quantity(quantity_of(value, unit));
}

#endif
