/* What the structural calculators share: amounts by unit, editions of ASCE 7, plain functions. */
#ifndef CALC_STRUCTURAL_H
#define CALC_STRUCTURAL_H
#include "parameter.h"
#include "wind.h"

/* A free calculator `id` with run_id, id_inputs and id_results. */
#define CALCULATOR(id, sentence, source)                                                           \
    FREE_CALCULATOR(id, id##_inputs, id##_results, sentence, source)

/* The number of an input in a unit known to be right; an optional input that is absent: `absent`.
 */
double input_in(struct amount input, const char *unit, double absent);
/* A result. */
struct amount result_in(double number, const char *unit);

/* Editions of ASCE 7 as words, and back. */
extern const char *const edition_words[];
enum wind_edition edition_of(struct amount input);
/* "uplift", "down" */
extern const char *const direction_words[];

/* The edge and corner strips of a roof for wind on components and cladding (ASCE 7 figures of
 * chapter 30), all in metres, measured in plan. */
struct wind_strips {
    double width; /* edge strip: a; on a roof to 7° from 7-16 on 0.6 h */
    double
        corner; /* along which a corner zone reaches: a; 0.2 h deep on a roof to 7° from 7-16 on */
    double inner; /* where zone 1' begins: 1.2 h on a roof to 7° from 7-16 on; else 0 */
};
/* Height is the mean roof height, least_width the least horizontal dimension; m; slope in rad. */
struct wind_strips wind_strips_of(enum wind_edition edition, double slope, double height,
                                  double least_width);
/* External pressure coefficient; see external_pressure_coefficient in wind.c. False: stop is set.
 */
struct gcp_query {
    enum wind_edition edition;
    const char *shape; /* a word of roof_shape */
    double slope;      /* degrees */
    const char *zone;
    double area;            /* ft² */
    bool is_uplift;         /* else pressure towards the roof */
    bool is_overhang;       /* the panel stands over an overhang */
    double height_to_width; /* h/B; 0: not known */
};
struct gcp_answer {
    double coefficient;
    const char *figure;
    bool is_from_memory;
};
bool external_coefficient_of(struct gcp_answer *out, const struct gcp_query *query,
                             struct working *working);
/* The zones into which an edition parts such a roof ("1 2e 2r 3"), or NULL where it is not covered.
 */
const char *wind_zones_of(enum wind_edition edition, const char *shape, double slope_degrees);
/* Why the snow that drifts over a ridge is not known there, or NULL; slope in degrees. */
const char *snow_drift_gap(enum wind_edition edition, double importance, const char *shape,
                           double slope);

#endif
