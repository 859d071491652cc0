/* tables: handbook figures as data, each with its source, and the lookups that read them. A lookup
 * returns false outside its table and leaves *out alone: nothing is extrapolated. Sizes, materials
 * and insulations are spelled as the design's vocabularies spell them.
 *
 * Ampacity of conductors: NEC Tables 310.16 and 310.17, 310.15(B)(1), 310.15(B)(2), 310.15(C)(1)
 * (2017: 310.15(B)(16), (B)(17), (B)(2)(a), (B)(3)(c), (B)(3)(a)); figures from secondary
 * sources. */
#ifndef TABLES_AMPACITY_H
#define TABLES_AMPACITY_H
#include <stdbool.h>
#include <stddef.h>

#define SOURCE_AMPACITY      "NEC Table 310.16 (2017: 310.15(B)(16)), secondary source"
#define SOURCE_AMPACITY_FREE "NEC Table 310.17 (2017: 310.15(B)(17)), secondary source"
#define SOURCE_AMBIENT       "NEC Table 310.15(B)(1) (2017: 310.15(B)(2)(a)), secondary source"
#define SOURCE_COUNT         "NEC Table 310.15(C)(1) (2017: 310.15(B)(3)(a)), secondary source"
#define SOURCE_ROOFTOP       "NEC 310.15(B)(2) (2017: 310.15(B)(3)(c)), secondary source"

enum ampacity_environment { IN_RACEWAY, IN_FREE_AIR };

/* The column for an insulation rated `celsius`: the highest of 60, 75 and 90 °C that is not above
 * it. False below 60 °C. */
bool ampacity_column(int *column, double celsius);
/* Amperes at 30 °C, at most three current-carrying conductors (one in free air). `column` is 60, 75
 * or 90. In free air only copper from 14 AWG to 1/0 AWG is sourced. */
bool ampacity_at(double *amperes, const char *size, const char *material, int column,
                 enum ampacity_environment environment);
/* Is this figure from memory, seen in no source that is right about it? */
bool ampacity_is_from_memory(const char *size, const char *material, int column,
                             enum ampacity_environment environment);
/* Correction for ambient temperature on the 30 °C basis. The rows are whole degrees; a value
 * between two rows takes the hotter one. False above 85 °C, and where the column has no figure. */
bool ampacity_ambient_factor(double *factor, double celsius, int column);
/* Adjustment for the number of current-carrying conductors, from 1. */
bool ampacity_count_factor(double *factor, double conductors);
/* What sunlight adds to the ambient temperature of a raceway or cable `inches` above a roof, in °C:
 * 33 °C below 7/8 in (2017, 2020) or 3/4 in (2023), else 0; XHHW-2 is excepted (2023 from memory).
 * `insulation` may be NULL. False for a negative height or another edition. */
bool ampacity_rooftop_adder(double *celsius, double inches, int edition, const char *insulation);

#endif
