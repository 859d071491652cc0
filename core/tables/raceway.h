/* Raceways: NEC Chapter 9 Table 1 (fill) and Table 4 (EMT, RMC, IMC, PVC schedules 40 and 80, FMC,
 * LFMC). Secondary sources. LFNC comes in types that a design does not tell apart: no figures. */
#ifndef TABLES_RACEWAY_H
#define TABLES_RACEWAY_H
#include <stdbool.h>
#include <stddef.h>

#define SOURCE_FILL    "NEC Chapter 9 Table 1, secondary source"
#define SOURCE_RACEWAY "NEC Chapter 9 Table 4, secondary source"

/* The share that conductors may fill: 53 % for one, 31 % for two, 40 % for more; a nipple of at
 * most 24 in 60 % (note 4). False below one conductor. */
bool raceway_fill_share(double *share, double conductors, bool is_nipple);
/* The trade sizes of a raceway ("EMT", "PVC 80"), rising; NULL past the end or for another one. */
const char *raceway_size_at(const char *raceway, size_t at);
/* Internal diameter in in and whole area in in². */
bool raceway_inside(double *diameter, double *area, const char *raceway, const char *trade_size);
/* The printed area in in² that this many conductors may fill (53, 31 or 40 %). */
bool raceway_fill_area(double *area, const char *raceway, const char *trade_size,
                       double conductors);

#endif
