/* A dwelling's loads: in VA, ft² and V. */
#ifndef CALC_SERVICE_LOAD_H
#define CALC_SERVICE_LOAD_H
#include "service.h"

struct dwelling {
    int edition;     /* 0: not told */
    double area;     /* ft² */
    double circuits; /* for small appliances and laundry */
    double appliances, motors, charging, heating, cooling;
    const char *heating_kind; /* one of heating_words */
    double voltage;
};

/* How electric heating is controlled; ends in NULL. */
extern const char *const heating_words[];

/* results: current, load, and the current by the strictest reading. */
void calculate_optional(struct amount *results, const struct dwelling *dwelling,
                        struct working *working);
void calculate_existing(struct amount *results, const struct dwelling *dwelling, bool adds_climate,
                        struct working *working);

#endif
