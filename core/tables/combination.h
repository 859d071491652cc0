/* tables: handbook tables as data, each with its source. Load combinations for allowable stress
 * design (ASCE 7 2.4). */
#ifndef TABLES_COMBINATION_H
#define TABLES_COMBINATION_H
#include <stdbool.h>
#include <stddef.h>

/* Factors on dead load, wind (ultimate level), snow and roof live load. */
struct combination {
    const char *name;
    double dead, wind, snow, live;
    const char *source;
};
/* Those in which all loads press down; with snow at strength level (7-22) or not. */
const struct combination *down_combinations(bool is_strength_snow, size_t *count);
/* The one in which wind lifts and dead load holds. */
extern const struct combination uplift_combination;

#endif
