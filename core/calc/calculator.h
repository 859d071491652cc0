/* Calculators as the desk and the rules know them: a name, named inputs, named results. */
#ifndef CALC_CALCULATOR_H
#define CALC_CALCULATOR_H
#include "working.h"

/* One input or result. Words are matched against `vocabulary`. Numbers outside low..high (in
 * `unit`) are refused with the input's name, its unit and its range. */
struct parameter {
    const char *name;
    enum amount_type type;
    enum measure measure; /* QUANTITY */
    const char *unit;     /* QUANTITY: usual unit; "" for numbers */
    double low, high;
    const char *const *words; /* WORD: ends in NULL; NULL: any text */
    bool is_optional;         /* an absent optional input has type AMOUNT_NONE */
    const char *sentence;
};

enum { CALCULATOR_INPUTS = 16, CALCULATOR_RESULTS = 8 };

/* `about` is NULL for a free calculator (about_kind KIND_NONE). False: working->stop says why. */
typedef bool calculate(struct amount *results, const struct object *about,
                       const struct amount *inputs, struct working *working);

struct calculator {
    const char *name; /* "ampacity"; a rule calls calc.ampacity{…} or bus:source_current() */
    enum kind_id about_kind; /* the kind whose method it is, or KIND_NONE */
    const char *sentence;
    const char *source;
    const struct parameter *inputs;
    size_t input_count;
    const struct parameter *results; /* the first is the answer */
    size_t result_count;
    calculate *run;
};

/* All calculators: free ones first, then methods by kind; NULL past the end. */
const struct calculator *calculator_at(size_t at);
/* The next one about a kind behind `before` (NULL: the first), or NULL. */
const struct calculator *calculator_next(const struct calculator *before, enum kind_id about_kind);
/* By name among the free ones (KIND_NONE) or the methods of a kind; or NULL. */
const struct calculator *calculator_find(enum kind_id about_kind, const char *name);
/* Is the input at this place what its parameter takes? False: working->stop says why not. */
bool calculator_takes(const struct calculator *calculator, const struct amount *inputs, size_t at,
                      struct working *working);
/* Checks the inputs against the parameters, runs, notes the call and its results as steps. `inputs`
 * has CALCULATOR_INPUTS entries in the order of the parameters, `results` CALCULATOR_RESULTS. A
 * result may be AMOUNT_NONE where there is none to give (its parameter is then optional). */
bool calculator_run(const struct calculator *calculator, struct amount *results,
                    const struct object *about, const struct amount *inputs,
                    struct working *working);

/* The lists that calculator_at runs through, one per file of calculators; each ends with a NULL
 * name. */
extern const struct calculator string_calculators[]; /* string.c: voltages, lengths, currents */
extern const struct calculator
    conductor_calculators[]; /* conductor.c: ampacity, OCPD, drop, fill, EGC, GEC */
extern const struct calculator
    service_calculators[]; /* service.c: buses, feeders, taps, loads, working space */
extern const struct calculator wind_calculators[];     /* wind.c */
extern const struct calculator snow_calculators[];     /* snow.c */
extern const struct calculator fastener_calculators[]; /* fastener.c */
extern const struct calculator framing_calculators[];  /* framing.c */
extern const struct calculator
    load_calculators[]; /* load.c: weights, combinations, tributary areas */
extern const struct calculator layout_calculators[]; /* layout.c: roof geometry */
extern const struct calculator
    placed_calculators[]; /* placed_wind.c: wind and snow where things lie */

#endif
