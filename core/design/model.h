/* design: the object model, said once (facts/ holds the one table), and plain storage for a design.
 */
#ifndef DESIGN_MODEL_H
#define DESIGN_MODEL_H
#include <stdint.h>
#include "quantity.h"

/* Kinds of things, in the order of facts/kinds.facts. */
enum kind_id {
#define KIND(kind, count, sentence) KIND_##kind,
#include "facts/kinds.facts"
#undef KIND
    KIND_COUNT,
    KIND_NONE = KIND_COUNT
};

/* A set of kinds. */
typedef uint64_t kind_set;
#define KINDS(kind) ((kind_set)1 << KIND_##kind)

enum kind_count { ROOT, ONLY, NAMED, MODEL };

enum vocabulary_id {
#define VOCABULARY(id, ...) WORDS_##id,
#include "facts/words.facts"
#undef VOCABULARY
    VOCABULARY_COUNT
};

struct vocabulary {
    const char *name;
    const char *const *words; /* ends in NULL */
    size_t count;
};

enum fact_type {
    TYPE_QUANTITY,
    TYPE_NUMBER, /* a ratio: 0.8 or 80 % */
    TYPE_COUNT,
    TYPE_CHOICE,
    TYPE_WORDS,     /* a set of words */
    TYPE_WORD_LIST, /* words in order, one may come again */
    TYPE_TEXT,
    TYPE_TEXTS,
    TYPE_YESNO,
    TYPE_DATE,
    TYPE_POINT,      /* [x, y], lengths */
    TYPE_POINTS,     /* [[x, y], …], at least three */
    TYPE_ONE,        /* a thing of its own inside this one */
    TYPE_LIST,       /* named things inside this one */
    TYPE_REFERENCE,  /* the name of a thing elsewhere */
    TYPE_REFERENCES, /* several names */
    TYPE_INVERSE     /* never written: the things whose reference `via` names this one */
};

/* One row of the one table. */
struct fact_row {
    const char *name;
    enum fact_type type;
    enum measure measure;                /* QUANTITY */
    const char *unit;                    /* QUANTITY: usual unit; low and high are in it */
    double low, high;                    /* QUANTITY, NUMBER, COUNT: inclusive range */
    const double *usual;                 /* QUANTITY, NUMBER, COUNT: an example; 0: none */
    const struct vocabulary *vocabulary; /* CHOICE, WORDS, WORD_LIST */
    enum kind_id kind;                   /* ONE, LIST, INVERSE */
    kind_set kinds;                      /* REFERENCE, REFERENCES */
    unsigned via;                        /* INVERSE: slot of `kind` that refers back */
    const char *example;                 /* TEXT, TEXTS */
    const char *sentence;
};

/* What the absence of a fact means, where it means something; else both are NULL: it is missing. */
struct absence {
    const char *means, *why;
};

struct kind {
    enum kind_id id;
    const char *name;
    enum kind_count count;
    const char *sentence;
    const struct fact_row *facts;
    const struct absence *absences; /* one per fact */
    size_t fact_count;
};

/* SLOT_roof_plane_slope and the like: where a fact stands among its kind's facts. */
#define SLOT_PASTE(of, name)  SLOT_##of##_##name
#define SLOT_OF(of, name)     SLOT_PASTE(of, name)
#define QUANTITY(slot, ...)   SLOT_OF(OF, slot),
#define NUMBER(slot, ...)     SLOT_OF(OF, slot),
#define COUNT(slot, ...)      SLOT_OF(OF, slot),
#define CHOICE(slot, ...)     SLOT_OF(OF, slot),
#define WORDS(slot, ...)      SLOT_OF(OF, slot),
#define WORD_LIST(slot, ...)  SLOT_OF(OF, slot),
#define TEXT(slot, ...)       SLOT_OF(OF, slot),
#define TEXTS(slot, ...)      SLOT_OF(OF, slot),
#define YESNO(slot, ...)      SLOT_OF(OF, slot),
#define DATE(slot, ...)       SLOT_OF(OF, slot),
#define POINT(slot, ...)      SLOT_OF(OF, slot),
#define POINTS(slot, ...)     SLOT_OF(OF, slot),
#define ONE(slot, ...)        SLOT_OF(OF, slot),
#define LIST(slot, ...)       SLOT_OF(OF, slot),
#define REFERENCE(slot, ...)  SLOT_OF(OF, slot),
#define REFERENCES(slot, ...) SLOT_OF(OF, slot),
#define INVERSE(slot, ...)    SLOT_OF(OF, slot),
#define ABSENT_MEANS(slot, ...)
#define EXAMPLE(slot, ...)
#define BEGIN(kind)                                                                                \
    enum slot_of_##kind                                                                            \
    {
#define END(kind)                                                                                  \
    SLOT_COUNT_##kind                                                                              \
    }                                                                                              \
    ;
#include "facts/all.facts"
#include "facts/forget.facts"

extern const struct kind all_kinds[KIND_COUNT];
static inline const struct kind *kind_at(enum kind_id id)
{
    return &all_kinds[id];
}
/* By name; KIND_NONE where there is none. */
enum kind_id kind_find(const char *name);
/* The slot of a fact by name, or -1. */
int kind_find_fact(const struct kind *kind, const char *name);
/* The same, found soonest at `first` or little behind it: people write facts in our order. */
int kind_find_fact_from(const struct kind *kind, size_t first, const char *name);
const struct vocabulary *vocabulary_at(enum vocabulary_id id);
/* The vocabulary's own copy of a word, or NULL. Compare such words by pointer or strcmp. */
const char *vocabulary_find(const struct vocabulary *vocabulary, const char *word);
/* A right example of the fact in YAML, for an error: "slope: 4/12". Buffer of at least 160 bytes.
 */
void fact_write_example(char *buffer, size_t size, const struct fact_row *row);
/* "inverter or branch": the kinds of a set. Buffer of at least 160 bytes. */
void kinds_write(char *buffer, size_t size, kind_set kinds);

#endif
