/* measure, inside the room: one reading of a quantity under way, and the numbers in it. */
#ifndef MEASURE_READING_H
#define MEASURE_READING_H
#include "quantity.h"
#include "unit_reading.h"

/* One reading under way: the text in plain spelling and what it must be. */
struct reading {
    struct plain plain;
    const struct dimension *want; /* NULL: any dimension */
    const char *text;             /* as it was typed, for messages */
    size_t text_length;
    struct quantity_fault *fault;
};

/* The number at the start of a part: "18", "5/16", "1-1/2", "1 1/2", "4/12", "4:12". */
struct part_number {
    double value;
    size_t length;
    double rise, run; /* of n/m or n:m; run 0: neither */
    bool is_ratio;    /* written with a colon or as "4 in 12" */
};

/* "TEXT" why; what is needed. `at` is a byte of the plain text. Always false. */
bool reading_refuse(const struct reading *reading, const char *code, size_t at, const char *why);
/* Reads the number at `from`. */
bool reading_number(const struct reading *reading, size_t from, struct part_number *out);
/* Where an angle is wanted, "4 in 12" says the slope 4:12, as roofers do; elsewhere the number
 * stays as it is. False: it divides by zero. */
bool reading_rise_in_run(const struct reading *reading, size_t from, struct part_number *number);
bool is_digit_at(const char *text, size_t length, size_t at);

#endif
