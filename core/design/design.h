/* A design as it was read: things, each with the facts of its kind, each fact with its place. */
#ifndef DESIGN_DESIGN_H
#define DESIGN_DESIGN_H
#include <assert.h>

#include "amount.h"
#include "model.h"
#include "place.h"

enum fact_state {
    FACT_MISSING, /* nobody told */
    FACT_GIVEN,
    FACT_NONE,   /* stated: there is none (an empty list, a reference to nothing) */
    FACT_ASSUMED /* not given, and its row says what that means */
};

struct point {
    double x, y; /* m, in the plane's coordinates */
};

struct fact {
    enum fact_state state;
    struct place place;      /* where it is written; missing or derived: where its thing stands */
    const char *written;     /* a scalar as written, else NULL */
    const char *source;      /* a word of fact_source (measured, data sheet …), or NULL */
    const struct unit *unit; /* QUANTITY: as written */
    size_t count;            /* WORDS, TEXTS, POINTS, LIST, REFERENCES, INVERSE: how many */
    union {
        double number;            /* QUANTITY in SI; NUMBER; COUNT */
        const char *word;         /* CHOICE (the vocabulary's pointer), TEXT */
        const char *const *words; /* WORDS, WORD_LIST, TEXTS */
        bool yes;
        struct date date;
        struct point point;
        const struct point *points;
        struct object *object;   /* ONE, REFERENCE */
        struct object **objects; /* LIST, REFERENCES, INVERSE */
        /* A missing INVERSE or LIST cannot be known because this fact of this thing is missing. */
        struct {
            const struct object *object;
            unsigned slot;
        } unsure;
    } is;
};

struct object {
    const struct kind *kind;
    const char *name; /* as given; of an ONLY thing its kind's name */
    const char *path; /* unique in its kind: "main/pv" for a named thing inside a named one */
    struct place place;
    struct object *parent; /* NULL: the design itself */
    size_t ordinal;        /* among its kind, from 0, in file order */
    size_t number;         /* among all things of the design, from 0 */
    size_t first_fact;     /* number of its first fact among all of the design */
    struct fact facts[];
};

struct objects {
    struct object **items;
    size_t count, capacity;
};

struct design {
    struct arena *arena; /* owns everything */
    const char *path;
    const char *text; /* of its file, so that later problems can show a line; NULL: none */
    size_t text_length;
    struct object *root;
    struct objects of_kind[KIND_COUNT]; /* all things of a kind, in file order */
    size_t thing_count;
    size_t fact_count; /* of all things together, told or not */
    /* Where things of a kind may still be untold: a list, or what would hold it, that is missing.
     * No object: all are told. Set by design_link. */
    struct {
        const struct object *object;
        unsigned slot;
    } untold[KIND_COUNT];
};

/* An empty design in an arena that stays the caller's. NULL: no memory. */
struct design *design_new(struct arena *arena, const char *path);
/* Adds a thing; name NULL for an ONLY thing. It is not put into its parent's list: the reader does
 * that. NULL: no memory. */
struct object *design_add(struct design *design, enum kind_id kind, struct object *parent,
                          const char *name, struct place place);
/* A thing by name or path among some kinds; a name that stands several times finds none and sets
 * *is_ambiguous. */
struct object *design_find(const struct design *design, kind_set kinds, const char *name,
                           bool *is_ambiguous);
/* After reading: puts assumptions into missing facts whose rows have one, and fills INVERSE facts.
 * An INVERSE is missing when a list that could hold one more thing of its kind, or the reference of
 * one that is there, is missing. False: no memory. */
bool design_link(struct design *design);

static inline const struct fact_row *object_row(const struct object *object, unsigned slot)
{
    assert(slot < object->kind->fact_count);
    return &object->kind->facts[slot];
}

static inline const struct fact *object_fact(const struct object *object, unsigned slot)
{
    assert(slot < object->kind->fact_count);
    return &object->facts[slot];
}
/* Is it given or assumed (FACT_NONE is not)? */
bool object_has(const struct object *object, unsigned slot);
/* The value of a given QUANTITY, NUMBER, COUNT, YESNO, CHOICE, TEXT or DATE fact. Others:
 * AMOUNT_NONE. */
struct amount object_amount(const struct object *object, unsigned slot);
/* The value of a given QUANTITY fact (asserts). */
struct quantity object_quantity(const struct object *object, unsigned slot);
/* Does a given CHOICE hold this word, a given WORDS contain it? */
bool object_is(const struct object *object, unsigned slot, const char *word);

#endif
