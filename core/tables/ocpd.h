/* Overcurrent devices: standard ratings (NEC 240.6(A)), the caps on small conductors (240.4(D)).
 * Editions are 2017, 2020 and 2023. */
#ifndef TABLES_OCPD_H
#define TABLES_OCPD_H
#include <stdbool.h>
#include <stddef.h>

#define SOURCE_OCPD            "NEC 240.6(A), secondary source"
#define SOURCE_SMALL_CONDUCTOR "NEC 240.4(D), secondary source"

enum ocpd_device { CIRCUIT_BREAKER, FUSE };

/* Is the rating a standard one? 10 A breakers are from 2023 on; 1, 3, 6, 601 A (and 10 A before
 * 2023) are fuses only. */
bool ocpd_is_standard(double amperes, enum ocpd_device device, int edition);
/* The smallest standard rating that is not below `amperes`. False above 6000 A. */
bool ocpd_next_up(double *rating, double amperes, enum ocpd_device device, int edition);
/* The largest standard rating that is not above `amperes`. False below the smallest. */
bool ocpd_next_down(double *rating, double amperes, enum ocpd_device device, int edition);
/* The largest device on a small conductor. False where 240.4(D) sets none. *section is the item,
 * as "(D)(7)". Material may also be "copper-clad aluminum". */
bool ocpd_small_conductor(double *rating, const char **section, const char *size,
                          const char *material, int edition);

#endif
