/* For tests of wind: the two calls they make most. NaN where the calculator stops. */
#ifndef TESTS_WIND_CALLS_H
#define TESTS_WIND_CALLS_H
#include "calculation.h"

static inline double coefficient(struct calculation *c, const char *edition, const char *shape,
                                 double slope, const char *zone, double area, const char *direction,
                                 const char *more)
{
    bool holds = calculate_with(c, "external_pressure_coefficient",
                                "edition %s, shape %s, slope %.12g °, zone %s, area %.12g ft², "
                                "direction %s%s",
                                edition, shape, slope, zone, area, direction, more);
    if (!holds) {
        fprintf(stderr, "%s %s %g %s %g %s%s: %s\n", edition, shape, slope, zone, area, direction,
                more, c->working.stop.why);
        return NAN;
    }
    return result_number(c, "coefficient");
}

static inline double velocity(struct calculation *c, const char *edition, double speed,
                              const char *exposure, double height)
{
    bool holds = calculate_with(c, "velocity_pressure",
                                "edition %s, speed %.12g mph, exposure %s, height %.12g ft, "
                                "topographic_factor 1",
                                edition, speed, exposure, height);
    return holds ? result_number(c, "pressure") : NAN;
}

#endif
