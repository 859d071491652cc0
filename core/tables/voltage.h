/* Voltage: the cold factors of NEC Table 690.7(A), and the depth of working space that a voltage
 * asks for, NEC Table 110.26(A)(1). */
#ifndef TABLES_VOLTAGE_H
#define TABLES_VOLTAGE_H
#include <stdbool.h>
#include <stddef.h>

#define SOURCE_COLD_FACTOR        "NEC Table 690.7(A), secondary source"
#define SOURCE_COLD_FACTOR_MEMORY "NEC Table 690.7(A), from memory"
#define SOURCE_WORKING_SPACE      "NEC Table 110.26(A)(1), secondary source"

/* What open-circuit voltage of crystalline silicon is multiplied by at a low temperature. A value
 * between two rows takes the colder one. False above 24 °C and below -40 °C. Nine rows are from
 * memory: *is_from_memory says so. */
bool cold_factor(double *factor, bool *is_from_memory, double celsius);
/* Depth in ft for a voltage to ground and a condition: 1 live parts to none, 2 to grounded parts, 3
 * to live parts. A voltage between 150 and 151 V takes the deeper row. False above 1000 V. */
bool working_space_depth(double *feet, double volts_to_ground, int condition);

#endif
