/* An amount: whatever one can compare, read in a book, or hand to a calculator. */
#ifndef MEASURE_AMOUNT_H
#define MEASURE_AMOUNT_H
#include "date.h"
#include "quantity.h"

enum amount_type {
    AMOUNT_NONE, /* not given */
    AMOUNT_QUANTITY,
    AMOUNT_NUMBER, /* count, ratio, percent */
    AMOUNT_YESNO,
    AMOUNT_WORD, /* a word of a closed vocabulary, or text */
    AMOUNT_DATE
};

/* A review holds thousands: what fits beside the type stands there. */
struct amount {
    enum amount_type type;
    union {
        bool yes;
        struct date date;
    };
    struct quantity quantity; /* of a number: value only, pure */
    const char *word;
};

struct amount amount_of_quantity(struct quantity quantity);
struct amount amount_of_number(double number);
struct amount amount_of_yesno(bool yes);
struct amount amount_of_word(const char *word);
struct amount amount_of_date(struct date date);
/* As people read it: "52.1 A", "yes", "opposite end"; at most `digits` significant digits unless it
 * is as written. Buffer of at least 128 bytes; longer words are cut at a code point. */
void amount_write(char *buffer, size_t size, struct amount amount, const struct unit *unit,
                  int digits);

#endif
