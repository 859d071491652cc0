#include "voltage.h"

#include "quantity.h"

#define ZERO_CELSIUS 273.15 /* K, exact */

static const double warmest = 24; /* °C: the upper end of the first row */

/* NEC Table 690.7(A). `to` is the cold end of the row. 1.02, 1.12, 1.14 and 1.18 are published in
 * secondary sources, the others are from memory. */
static const struct {
    double to; /* °C */
    double factor;
    bool is_from_memory;
} cold_rows[] = {
    {20, 1.02, false}, {15, 1.04, true},   {10, 1.06, true},  {5, 1.08, true},    {0, 1.10, true},
    {-5, 1.12, false}, {-10, 1.14, false}, {-15, 1.16, true}, {-20, 1.18, false}, {-25, 1.20, true},
    {-30, 1.21, true}, {-35, 1.23, true},  {-40, 1.25, true},
};

/* NEC Table 110.26(A)(1); secondary sources. */
static const struct {
    double to;      /* V to ground */
    double feet[3]; /* conditions 1, 2, 3 */
} working_spaces[] = {{150, {3, 3, 3}}, {600, {3, 3.5, 4}}, {1000, {3, 4, 5}}};

/* In kelvin, so that 32 °F and the like meet their row within the house's tolerance. */
static int compare_celsius(double a, double b)
{
    return number_compare(a + ZERO_CELSIUS, b + ZERO_CELSIUS);
}

bool cold_factor(double *factor, bool *is_from_memory, double celsius)
{
    if (compare_celsius(celsius, warmest) > 0)
        return false;
    for (size_t i = 0; i < sizeof cold_rows / sizeof cold_rows[0]; i++)
        if (compare_celsius(celsius, cold_rows[i].to) >= 0) {
            *factor = cold_rows[i].factor;
            *is_from_memory = cold_rows[i].is_from_memory;
            return true;
        }
    return false;
}

bool working_space_depth(double *feet, double volts_to_ground, int condition)
{
    if (condition < 1 || condition > 3 || volts_to_ground < 0)
        return false;
    for (size_t i = 0; i < sizeof working_spaces / sizeof working_spaces[0]; i++)
        if (number_compare(volts_to_ground, working_spaces[i].to) <= 0) {
            *feet = working_spaces[i].feet[condition - 1];
            return true;
        }
    return false;
}
