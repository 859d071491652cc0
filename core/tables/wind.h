/* tables: handbook tables as data, each with its source. Wind on roofs (ASCE 7). */
#ifndef TABLES_WIND_H
#define TABLES_WIND_H
#include <stdbool.h>
#include <stddef.h>

enum wind_edition { ASCE_7_10, ASCE_7_16, ASCE_7_22, WIND_EDITIONS };

/* Terrain constants: Kz = scale × (z / gradient_height)^(2 / exponent), z no lower than 15 ft. */
struct terrain {
    double scale;
    double exponent;
    double gradient_height; /* ft */
};
/* By exposure B, C or D; NULL where there is no such exposure. */
const struct terrain *terrain_find(enum wind_edition edition, const char *exposure);

/* GCp of one figure: from `small` at small_area and below to `large` at large_area and above,
 * straight over the logarithm of the effective wind area (ft²) between. */
enum height_band { ANY_HEIGHT, TALL_BUILDING, LOW_BUILDING }; /* h/B at least 0.8, at most 0.5 */
struct gcp_row {
    const char *figure;
    const char *shapes; /* words of roof_shape, separated by spaces */
    double slope_over;  /* degrees: over this … */
    double slope_to;    /* … up to this; both alike: at this slope, linear to the next row */
    enum height_band band;
    bool is_overhang;
    const char *zones; /* separated by spaces */
    bool is_uplift;    /* else towards the roof */
    double small_area, small, large_area, large;
    bool is_from_memory;
};
const struct gcp_row *gcp_rows(enum wind_edition edition, size_t *count);
/* Where the rows of an edition come from. */
const char *gcp_source(enum wind_edition edition);

/* Figures that stand alone, with their sources in wind.c. */
extern const double velocity_pressure_scale;                        /* psf per mph² */
extern const double directionality_factor;                          /* Kd */
extern const double elevation_rate;                                 /* per ft */
extern const double internal_enclosed, internal_partially_enclosed; /* GCpi */
extern const double cladding_floor, cladding_floor_height;          /* Kz, ft */
extern const double highest_building;                               /* ft */

#endif
