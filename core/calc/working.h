/* calc: calculators as pure functions that record their working steps. Alone knows GEOS. */
#ifndef CALC_WORKING_H
#define CALC_WORKING_H
#include <stdint.h>

#include "design.h"

/* How a calculation ended other than with a result. */
enum stop_kind {
    STOP_NONE,
    STOP_MISSING, /* a fact is not given: `object` and `slot` say which */
    STOP_BEYOND,  /* outside what the calculation or its table covers: a person must judge; `why` */
    STOP_WRONG,   /* the caller's mistake (an input of the wrong kind or out of its range); `why` */
    STOP_MEMORY
};

struct stop {
    enum stop_kind kind;
    const struct object *object;
    unsigned slot;
    const char *input; /* the calculator's input it is about, or NULL */
    const char *why;   /* one sentence; in the working's arena */
};

/* One line of a hand calculation. */
struct step {
    const char *text;   /* "125 % of 32 A = 40 A" */
    const char *source; /* table or section it rests on, or NULL */
};

/* One fact that was read. */
struct fact_read {
    const struct object *object;
    unsigned slot;
};

/* What a piece of work has read, to be noted again as a whole by whatever rests on it. */
struct readings {
    struct reading *items;
    size_t count;
    uint32_t noted; /* the turn in which it last was, plus one */
};

/* One fact, or where `object` is NULL all that another piece of work has read. */
struct reading {
    const struct object *object;
    union {
        unsigned slot;
        struct readings *others;
    };
};

struct layout; /* layout.h: roof geometry, made once per review */
struct kept;   /* kept.h: answers given before in this review */

/* Filled while calculating, read by whoever shows the working. */
struct working {
    struct arena *arena;
    const struct design *design;
    bool keeps_steps; /* false: steps are not written down, to save time */
    struct step *steps;
    size_t step_count, step_capacity;
    struct fact_read *reads; /* each fact once, in the order of first reading */
    size_t read_count, read_capacity;
    struct reading
        *trail; /* what each piece of work that still runs has read, one behind the other */
    size_t trail_count, trail_capacity, trail_start; /* where the innermost one's begins */
    bool is_lasting;   /* the arena outlives the finding, and so the arrays are used again */
    uint32_t *seen;    /* of each fact the turn in which it was last read, plus one; 0: never */
    size_t seen_count; /* facts that `seen` has room for */
    /* Each finding begins a turn, and so does each piece of work in it. `since` is the turn of the
     * innermost piece that runs, or else `begun`, the finding's. */
    uint32_t turn, begun, since;
    struct stop stop;
    struct layout *layout;         /* these live as long as the review, not as one calculation */
    struct readings *sources_told; /* what told that all sources are; NULL: not yet looked at */
    struct kept *kept;
};

/* Empties steps, reads and stop for the next finding; layout and kept answers stay. */
void working_start(struct working *working);
/* Frees what does not live in the arena (the layout, kept answers). */
void working_close(struct working *working);

/* Writes one step down; does nothing where steps are not kept. */
void working_step(struct working *working, const char *source, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
/* Notes a step that stands already: told before, with a text that lasts. */
void working_tell(struct working *working, struct step step);
/* A piece of work begins whose readings are wanted by themselves. */
struct trail {
    size_t start;
    uint32_t since;
};
struct trail working_trail_open(struct working *working);
/* What it has read so far, in an arena; NULL: no memory. */
struct readings *working_trail_keep(const struct working *working, struct arena *arena);
/* It has ended: `outer` is what opening gave, `kept` what it has read or NULL. */
void working_trail_close(struct working *working, struct trail outer, struct readings *kept);
/* Was what a turn, plus one, noted noted by the innermost piece of work? Then not again. */
static inline bool working_stands(const struct working *working, uint32_t noted)
{
    return noted > working->since;
}
/* Notes again what a piece of work has read. */
void working_read_again(struct working *working, struct readings *readings);
/* Notes that a fact was read. */
void working_read(struct working *working, const struct object *object, unsigned slot);

/* Each sets the stop and returns false, so that a calculator can `return working_beyond(…)`. */
bool working_missing(struct working *working, const struct object *object, unsigned slot);
bool working_beyond(struct working *working, const char *format, ...)
    __attribute__((format(printf, 2, 3)));
bool working_wrong(struct working *working, const char *input, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
bool working_short(struct working *working); /* no memory */
/* That it is false stands here too, for compilers and analysers, which see one file at a time. */
#define working_missing(...) ((working_missing)(__VA_ARGS__), false)
#define working_beyond(...)  ((working_beyond)(__VA_ARGS__), false)
#define working_wrong(...)   ((working_wrong)(__VA_ARGS__), false)
#define working_short(...)   ((working_short)(__VA_ARGS__), false)

/* Reads a fact that the calculation cannot do without, and notes the reading. False: stop is set
 * (missing; where the missing thing is a whole ONE or a reference to nothing, that is named). */
bool need_quantity(struct quantity *out, const struct object *object, unsigned slot,
                   struct working *working);
bool need_number(double *out, const struct object *object, unsigned slot,
                 struct working *working); /* NUMBER, COUNT */
bool need_word(const char **out, const struct object *object, unsigned slot,
               struct working *working);
bool need_yesno(bool *out, const struct object *object, unsigned slot, struct working *working);
/* The thing in a ONE or REFERENCE. A reference stated as none: *out is NULL and true. */
bool need_object(const struct object **out, const struct object *object, unsigned slot,
                 struct working *working);
/* The things in a LIST, REFERENCES or INVERSE; stated as none: count 0. */
bool need_objects(struct object *const **out, size_t *count, const struct object *object,
                  unsigned slot, struct working *working);

#endif
