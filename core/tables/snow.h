/* tables: handbook tables as data, each with its source. Snow on roofs (ASCE 7 chapter 7). */
#ifndef TABLES_SNOW_H
#define TABLES_SNOW_H
#include <stdbool.h>
#include <stddef.h>

/* Ce by terrain (B, C, D) and by how the roof stands to the wind ("fully exposed", "partially
 * exposed", "sheltered"). False: there is no such row. 7-10 and 7-16. */
bool snow_exposure_find(double *out, const char *terrain, const char *roof);
/* Is by risk category; 7-10 and 7-16. False: there is no such category. */
bool snow_importance_find(double *out, const char *risk_category);

/* Cs falls in a straight line from 1 at full_to to 0 at none_from (degrees). */
struct slope_line {
    double least_thermal, most_thermal; /* Ct for which it holds */
    bool is_slippery;
    double full_to, none_from;
};
/* NULL where no line is given for that Ct. 7-10 and 7-16. */
const struct slope_line *slope_line_find(double thermal_factor, bool is_slippery);

extern const double thermal_heated, thermal_cold_ventilated, thermal_unheated;
extern const double snow_minimum_ground; /* psf: up to here pm = Is pg, over it Is times it */
extern const double snow_minimum_slope;  /* degrees: the minimum is for roofs below it */
extern const double rain_on_snow;        /* psf */
extern const double rain_on_snow_ground; /* psf: no surcharge over it */
extern const double rain_on_snow_width;  /* ft: slope in degrees below W / this */
extern const double unbalanced_from, unbalanced_to; /* degrees */
extern const double unbalanced_narrow;              /* ft */

#endif
