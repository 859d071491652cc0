/* Everything of ours that a rule can hold is one of the things below, made by us alone, so that the
 * tag at its head can be trusted. */
#ifndef JUDGE_ROOM_THINGS_H
#define JUDGE_ROOM_THINGS_H
#include "design.h"

enum thing_tag {
    THING_NONE, /* none of ours */
    THING_QUANTITY,
    THING_WORD,
    THING_DATE,
    THING_OBJECT,
    THING_LIST,
    THING_WORDS,
    THING_BOOK
};

struct thing_quantity {
    enum thing_tag tag;
    struct quantity quantity;
};

/* One word of a closed list. */
struct thing_word {
    enum thing_tag tag;
    bool is_lasting; /* the list is the vocabulary's, not a book's */
    const char *word;
    const char *const *words; /* ends in NULL */
    const char *of;           /* whose word: "exposure" */
};

struct thing_date {
    enum thing_tag tag;
    struct date date;
};

struct thing_object {
    enum thing_tag tag;
    const struct object *object;
};

struct thing_list {
    enum thing_tag tag;
    struct object *const *objects;
    size_t count;
};

struct thing_words {
    enum thing_tag tag;
    const struct fact *fact;
    const struct fact_row *row;
};

struct thing_book {
    enum thing_tag tag;
};

#endif
