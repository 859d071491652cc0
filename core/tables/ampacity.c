#include "ampacity.h"

#include <string.h>

#include "quantity.h"

#define ZERO_CELSIUS 273.15 /* K, exact */

enum { COLUMN_COUNT = 3 };
static const int columns[COLUMN_COUNT] = {60, 75, 90};

/* 0: no figure. */
struct ampacity_row {
    const char *size;
    double copper[COLUMN_COUNT], aluminum[COLUMN_COUNT];
};

/* NEC Table 310.16 (2017: 310.15(B)(16)); two secondary sources agree. From 600 kcmil on
 * they are from memory, but for 600 kcmil aluminum at 75 °C, which a published 310.12 table bears
 * out. */
static const struct ampacity_row in_raceway[] = {
    {"14 AWG", {15, 20, 25}, {0, 0, 0}},
    {"12 AWG", {20, 25, 30}, {15, 20, 25}},
    {"10 AWG", {30, 35, 40}, {25, 30, 35}},
    {"8 AWG", {40, 50, 55}, {35, 40, 45}},
    {"6 AWG", {55, 65, 75}, {40, 50, 55}},
    {"4 AWG", {70, 85, 95}, {55, 65, 75}},
    {"3 AWG", {85, 100, 115}, {65, 75, 85}},
    {"2 AWG", {95, 115, 130}, {75, 90, 100}},
    {"1 AWG", {110, 130, 145}, {85, 100, 115}},
    {"1/0 AWG", {125, 150, 170}, {100, 120, 135}},
    {"2/0 AWG", {145, 175, 195}, {115, 135, 150}},
    {"3/0 AWG", {165, 200, 225}, {130, 155, 175}},
    {"4/0 AWG", {195, 230, 260}, {150, 180, 205}},
    {"250 kcmil", {215, 255, 290}, {170, 205, 230}},
    {"300 kcmil", {240, 285, 320}, {195, 230, 260}},
    {"350 kcmil", {260, 310, 350}, {210, 250, 280}},
    {"400 kcmil", {280, 335, 380}, {225, 270, 305}},
    {"500 kcmil", {320, 380, 430}, {260, 310, 350}},
    {"600 kcmil", {350, 420, 475}, {285, 340, 385}},
    {"700 kcmil", {385, 460, 520}, {315, 375, 425}},
    {"750 kcmil", {400, 475, 535}, {320, 385, 435}},
};

/* NEC Table 310.17 (2017: 310.15(B)(17)), copper, secondary sources. 10 AWG at 75 °C is from
 * memory: the source prints 60 there, above its own 90 °C figure. */
static const struct ampacity_row in_free_air[] = {
    {"14 AWG", {25, 30, 35}, {0, 0, 0}},   {"12 AWG", {30, 35, 40}, {0, 0, 0}},
    {"10 AWG", {40, 50, 55}, {0, 0, 0}},   {"8 AWG", {60, 70, 80}, {0, 0, 0}},
    {"6 AWG", {80, 95, 105}, {0, 0, 0}},   {"4 AWG", {105, 125, 140}, {0, 0, 0}},
    {"3 AWG", {120, 145, 165}, {0, 0, 0}}, {"2 AWG", {140, 170, 190}, {0, 0, 0}},
    {"1 AWG", {165, 195, 220}, {0, 0, 0}}, {"1/0 AWG", {195, 230, 260}, {0, 0, 0}},
};

/* NEC Table 310.15(B)(1) (2017: 310.15(B)(2)(a)), 30 °C basis; secondary sources, every row checked
 * against the square-root formula of 310.15(B) at its upper end. `to` is the row's upper end. */
static const struct {
    double to; /* °C */
    double factor[COLUMN_COUNT];
} ambient_rows[] = {
    {10, {1.29, 1.2, 1.15}},  {15, {1.22, 1.15, 1.12}}, {20, {1.15, 1.11, 1.08}},
    {25, {1.08, 1.05, 1.04}}, {30, {1.0, 1.0, 1.0}},    {35, {0.91, 0.94, 0.96}},
    {40, {0.82, 0.88, 0.91}}, {45, {0.71, 0.82, 0.87}}, {50, {0.58, 0.75, 0.82}},
    {55, {0.41, 0.67, 0.76}}, {60, {0, 0.58, 0.71}},    {65, {0, 0.47, 0.65}},
    {70, {0, 0.33, 0.58}},    {75, {0, 0, 0.5}},        {80, {0, 0, 0.41}},
    {85, {0, 0, 0.29}},
};

/* NEC Table 310.15(C)(1) (2017: 310.15(B)(3)(a)); secondary source. */
static const struct {
    double from; /* conductors */
    double factor;
} count_rows[] = {{1, 1.0}, {4, 0.8}, {7, 0.7}, {10, 0.5}, {21, 0.45}, {31, 0.4}, {41, 0.35}};

static int find_column(int column)
{
    for (int i = 0; i < COLUMN_COUNT; i++)
        if (columns[i] == column)
            return i;
    return -1;
}

bool ampacity_column(int *column, double celsius)
{
    for (int i = COLUMN_COUNT; i > 0; i--)
        if (number_compare(celsius + ZERO_CELSIUS, columns[i - 1] + ZERO_CELSIUS) >= 0) {
            *column = columns[i - 1];
            return true;
        }
    return false;
}

bool ampacity_at(double *amperes, const char *size, const char *material, int column,
                 enum ampacity_environment environment)
{
    const struct ampacity_row *rows = environment == IN_FREE_AIR ? in_free_air : in_raceway;
    size_t count = environment == IN_FREE_AIR ? sizeof in_free_air / sizeof in_free_air[0]
                                              : sizeof in_raceway / sizeof in_raceway[0];
    int at = find_column(column);
    for (size_t i = 0; at >= 0 && i < count; i++) {
        if (strcmp(rows[i].size, size) != 0)
            continue;
        double found = strcmp(material, "copper") == 0     ? rows[i].copper[at]
                       : strcmp(material, "aluminum") == 0 ? rows[i].aluminum[at]
                                                           : 0;
        if (found > 0)
            *amperes = found;
        return found > 0;
    }
    return false;
}

bool ampacity_is_from_memory(const char *size, const char *material, int column,
                             enum ampacity_environment environment)
{
    if (environment == IN_FREE_AIR)
        return column == 75 && strcmp(size, "10 AWG") == 0;
    bool is_borne_out = column == 75 && strcmp(material, "aluminum") == 0;
    return (strcmp(size, "600 kcmil") == 0 && !is_borne_out) || strcmp(size, "700 kcmil") == 0 ||
           strcmp(size, "750 kcmil") == 0;
}

bool ampacity_ambient_factor(double *factor, double celsius, int column)
{
    int at = find_column(column);
    for (size_t i = 0; at >= 0 && i < sizeof ambient_rows / sizeof ambient_rows[0]; i++) {
        /* In kelvin, so that 32 °F and the like meet their row within the house's tolerance. */
        if (number_compare(celsius + ZERO_CELSIUS, ambient_rows[i].to + ZERO_CELSIUS) > 0)
            continue;
        if (ambient_rows[i].factor[at] > 0)
            *factor = ambient_rows[i].factor[at];
        return ambient_rows[i].factor[at] > 0;
    }
    return false;
}

bool ampacity_count_factor(double *factor, double conductors)
{
    for (size_t i = sizeof count_rows / sizeof count_rows[0]; i > 0; i--)
        if (conductors >= count_rows[i - 1].from) {
            *factor = count_rows[i - 1].factor;
            return true;
        }
    return false;
}

bool ampacity_rooftop_adder(double *celsius, double inches, int edition, const char *insulation)
{
    double limit = edition == 2023 ? 0.75 : 0.875; /* in */
    bool is_known = edition == 2017 || edition == 2020 || edition == 2023;
    if (!is_known || inches < 0)
        return false;
    bool is_excepted = insulation != NULL && strcmp(insulation, "XHHW-2") == 0;
    *celsius = !is_excepted && number_compare(inches, limit) < 0 ? 33 : 0;
    return true;
}
