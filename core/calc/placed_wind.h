/* Inside the room: what wind on a roof and its array rests on, read from the design. */
#ifndef CALC_PLACED_WIND_H
#define CALC_PLACED_WIND_H
#include "placed.h"

enum { WIND_EDITION, WIND_SPEED, WIND_MINIMUM, WIND_INPUTS };
extern const struct parameter placed_wind_inputs[WIND_INPUTS];
extern const struct parameter placed_down_results[3];
extern const struct parameter placed_wind_study_inputs[1], placed_wind_study_results[1];
calculate placed_run_bare_down, placed_run_array_down, placed_run_find_wind, placed_run_has_wind;

/* What the pressure rests on. The plane is given; each reader below fills its part. */
struct wind_place {
    const struct object *site, *building, *roof, *racking, *plane;
    const char *exposure, *shape, *enclosure;
    struct quantity elevation, height, width, slope, above, tilt, gap;
    double topographic;
};

/* Each: false: stop is set. */
bool placed_read_site(struct wind_place *place, struct working *working);
bool placed_read_building(struct wind_place *place, struct working *working);
bool placed_read_racking(struct wind_place *place, struct working *working);
/* May the pressures be used where the spot's module lies? False: stop says why not. */
bool placed_is_covered(const struct wind_place *place, const struct placed_spot *spot,
                       struct amount edition, struct working *working);
/* The least distance of the spot's module to an edge of the roof or to a ridge, m. */
double placed_edge_distance(const struct placed_spot *spot);
/* GCp away from the roof and towards it. */
bool placed_find_coefficients(struct amount *uplift, struct amount *down,
                              const struct wind_place *place, struct amount edition,
                              struct amount zone, struct amount area, struct working *working);
bool placed_find_velocity_pressure(struct amount *out, const struct wind_place *place,
                                   const struct amount *inputs, struct working *working);
/* The effective wind area of the framing's members. */
bool placed_member_area(struct amount *out, const struct wind_place *place,
                        const struct object *framing, struct working *working);

#endif
