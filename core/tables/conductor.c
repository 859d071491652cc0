#include "conductor.h"

#include <stdlib.h>
#include <string.h>

#include "quantity.h"

#define COUNT_OF(rows) (sizeof(rows) / sizeof(rows)[0])

static const char *const sizes[] = {"18 AWG",    "16 AWG",    "14 AWG",    "12 AWG",    "10 AWG",
                                    "8 AWG",     "6 AWG",     "4 AWG",     "3 AWG",     "2 AWG",
                                    "1 AWG",     "1/0 AWG",   "2/0 AWG",   "3/0 AWG",   "4/0 AWG",
                                    "250 kcmil", "300 kcmil", "350 kcmil", "400 kcmil", "500 kcmil",
                                    "600 kcmil", "700 kcmil", "750 kcmil"};

enum { UNCOATED_COPPER, COATED_COPPER, ALUMINUM, METAL_COUNT };

/* NEC Chapter 9 Table 8, stranded; secondary source, from 600 kcmil on from memory. Ω/kft. */
static const struct {
    const char *size;
    double circular_mils;
    int strands;
    double ohms[METAL_COUNT];
} stranded_rows[] = {
    {"18 AWG", 1620, 7, {7.95, 8.45, 13.1}},
    {"16 AWG", 2580, 7, {4.99, 5.29, 8.21}},
    {"14 AWG", 4110, 7, {3.14, 3.26, 5.17}},
    {"12 AWG", 6530, 7, {1.98, 2.05, 3.25}},
    {"10 AWG", 10380, 7, {1.24, 1.29, 2.04}},
    {"8 AWG", 16510, 7, {0.778, 0.809, 1.28}},
    {"6 AWG", 26240, 7, {0.491, 0.51, 0.808}},
    {"4 AWG", 41740, 7, {0.308, 0.321, 0.508}},
    {"3 AWG", 52620, 7, {0.245, 0.254, 0.403}},
    {"2 AWG", 66360, 7, {0.194, 0.201, 0.319}},
    {"1 AWG", 83690, 19, {0.154, 0.16, 0.253}},
    {"1/0 AWG", 105600, 19, {0.122, 0.127, 0.201}},
    {"2/0 AWG", 133100, 19, {0.0967, 0.101, 0.159}},
    {"3/0 AWG", 167800, 19, {0.0766, 0.0797, 0.126}},
    {"4/0 AWG", 211600, 19, {0.0608, 0.0626, 0.1}},
    {"250 kcmil", 250000, 37, {0.0515, 0.0535, 0.0847}},
    {"300 kcmil", 300000, 37, {0.0429, 0.0446, 0.0707}},
    {"350 kcmil", 350000, 37, {0.0367, 0.0382, 0.0605}},
    {"400 kcmil", 400000, 37, {0.0321, 0.0331, 0.0529}},
    {"500 kcmil", 500000, 37, {0.0258, 0.0265, 0.0424}},
    {"600 kcmil", 600000, 61, {0.0214, 0.0223, 0.0353}},
    {"700 kcmil", 700000, 61, {0.0184, 0.0189, 0.0303}},
    {"750 kcmil", 750000, 61, {0.0171, 0.0176, 0.0282}},
};

/* NEC Chapter 9 Table 8, solid; secondary source. */
static const struct {
    const char *size;
    double ohms[METAL_COUNT];
} solid_rows[] = {
    {"18 AWG", {7.77, 8.08, 12.8}}, {"16 AWG", {4.89, 5.08, 8.05}}, {"14 AWG", {3.07, 3.19, 5.06}},
    {"12 AWG", {1.93, 2.01, 3.18}}, {"10 AWG", {1.21, 1.26, 2.0}},  {"8 AWG", {0.764, 0.786, 1.26}},
};

/* NEC Chapter 9 Table 9; secondary sources. Columns: PVC, aluminum, steel raceway. 0: no figure.
 * 1/0 AWG copper in aluminum is 0.13: one source prints 0.12, less than its neighbours bear out.
 * The table has no row for 700 kcmil. */
static const struct {
    const char *size;
    double reactance[3], copper[3], aluminum[3];
} impedance_rows[] = {
    {"14 AWG", {0.058, 0.058, 0.073}, {3.1, 3.1, 3.1}, {0, 0, 0}},
    {"12 AWG", {0.054, 0.054, 0.068}, {2.0, 2.0, 2.0}, {3.2, 3.2, 3.2}},
    {"10 AWG", {0.05, 0.05, 0.063}, {1.2, 1.2, 1.2}, {2.0, 2.0, 2.0}},
    {"8 AWG", {0.052, 0.052, 0.065}, {0.78, 0.78, 0.78}, {1.3, 1.3, 1.3}},
    {"6 AWG", {0.051, 0.051, 0.064}, {0.49, 0.49, 0.49}, {0.81, 0.81, 0.81}},
    {"4 AWG", {0.048, 0.048, 0.06}, {0.31, 0.31, 0.31}, {0.51, 0.51, 0.51}},
    {"3 AWG", {0.047, 0.047, 0.059}, {0.25, 0.25, 0.25}, {0.4, 0.41, 0.4}},
    {"2 AWG", {0.045, 0.045, 0.057}, {0.19, 0.2, 0.2}, {0.32, 0.32, 0.32}},
    {"1 AWG", {0.046, 0.046, 0.057}, {0.15, 0.16, 0.16}, {0.25, 0.26, 0.25}},
    {"1/0 AWG", {0.044, 0.044, 0.055}, {0.12, 0.13, 0.12}, {0.2, 0.21, 0.2}},
    {"2/0 AWG", {0.043, 0.043, 0.054}, {0.1, 0.1, 0.1}, {0.16, 0.16, 0.16}},
    {"3/0 AWG", {0.042, 0.042, 0.052}, {0.077, 0.082, 0.079}, {0.13, 0.13, 0.13}},
    {"4/0 AWG", {0.041, 0.041, 0.051}, {0.062, 0.067, 0.063}, {0.1, 0.11, 0.1}},
    {"250 kcmil", {0.041, 0.041, 0.052}, {0.052, 0.057, 0.054}, {0.085, 0.09, 0.086}},
    {"300 kcmil", {0.041, 0.041, 0.051}, {0.044, 0.049, 0.045}, {0.071, 0.076, 0.072}},
    {"350 kcmil", {0.04, 0.04, 0.05}, {0.038, 0.043, 0.039}, {0.061, 0.066, 0.063}},
    {"400 kcmil", {0.04, 0.04, 0.049}, {0.033, 0.038, 0.035}, {0.054, 0.059, 0.055}},
    {"500 kcmil", {0.039, 0.039, 0.048}, {0.027, 0.032, 0.029}, {0.043, 0.048, 0.045}},
    {"600 kcmil", {0.039, 0.039, 0.048}, {0.023, 0.028, 0.025}, {0.036, 0.041, 0.038}},
    {"750 kcmil", {0.038, 0.038, 0.048}, {0.019, 0.024, 0.021}, {0.029, 0.034, 0.031}},
};

enum { THHN_COLUMN, XHHW_COLUMN, RHW_COLUMN, DIMENSION_COLUMNS };

/* NEC Chapter 9 Table 5; secondary sources, from 600 kcmil on from memory. 0: no figure. */
static const struct {
    const char *size;
    double diameter[DIMENSION_COLUMNS]; /* in */
    double area[DIMENSION_COLUMNS];     /* in² */
} dimension_rows[] = {
    {"14 AWG", {0.111, 0.133, 0.163}, {0.0097, 0.0139, 0.0209}},
    {"12 AWG", {0.13, 0.152, 0.182}, {0.0133, 0.0181, 0.026}},
    {"10 AWG", {0.164, 0.176, 0.206}, {0.0211, 0.0243, 0.0333}},
    {"8 AWG", {0.216, 0.236, 0.266}, {0.0366, 0.0437, 0.0556}},
    {"6 AWG", {0.254, 0.274, 0.304}, {0.0507, 0.059, 0.0726}},
    {"4 AWG", {0.324, 0.322, 0.352}, {0.0824, 0.0814, 0.0973}},
    {"3 AWG", {0.352, 0.35, 0.38}, {0.0973, 0.0962, 0.1134}},
    {"2 AWG", {0.384, 0.382, 0.412}, {0.1158, 0.1146, 0.1333}},
    {"1 AWG", {0.446, 0.442, 0.492}, {0.1562, 0.1534, 0.1901}},
    {"1/0 AWG", {0.486, 0.482, 0.532}, {0.1855, 0.1825, 0.2223}},
    {"2/0 AWG", {0.532, 0.528, 0.578}, {0.2223, 0.219, 0.2624}},
    {"3/0 AWG", {0.584, 0.58, 0.63}, {0.2679, 0.2642, 0.3117}},
    {"4/0 AWG", {0.642, 0.638, 0.688}, {0.3237, 0.3197, 0.3718}},
    {"250 kcmil", {0.711, 0.705, 0.765}, {0.397, 0.3904, 0.4596}},
    {"300 kcmil", {0.766, 0.76, 0.82}, {0.4608, 0.4536, 0.5281}},
    {"350 kcmil", {0.817, 0.811, 0.871}, {0.5242, 0.5166, 0.5958}},
    {"400 kcmil", {0.864, 0.858, 0.918}, {0.5863, 0.5782, 0.6619}},
    {"500 kcmil", {0.949, 0.943, 1.003}, {0.7073, 0.6984, 0.7901}},
    {"600 kcmil", {1.051, 1.073, 0}, {0.8676, 0.9043, 0}},
    {"700 kcmil", {1.122, 1.145, 0}, {0.9887, 1.0297, 0}},
    {"750 kcmil", {1.156, 1.18, 0}, {1.0496, 1.0936, 0}},
};

static const struct {
    const char *insulation;
    int column;
} dimension_columns[] =
    {
        {"THHN", THHN_COLUMN}, {"THWN", THHN_COLUMN},   {"THWN-2", THHN_COLUMN},
        {"XHHW", XHHW_COLUMN}, {"XHHW-2", XHHW_COLUMN}, {"RHW-2", RHW_COLUMN},
        {"USE-2", RHW_COLUMN}, /* from memory: sold listed as RHW-2 too */
};

/* NEC Table 250.122; secondary source. */
static const struct {
    double ocpd; /* A, not exceeding */
    const char *copper, *aluminum;
} egc_rows[] = {
    {15, "14 AWG", "12 AWG"},          {20, "12 AWG", "10 AWG"},
    {60, "10 AWG", "8 AWG"},           {100, "8 AWG", "6 AWG"},
    {200, "6 AWG", "4 AWG"},           {300, "4 AWG", "2 AWG"},
    {400, "3 AWG", "1 AWG"},           {500, "2 AWG", "1/0 AWG"},
    {600, "1 AWG", "2/0 AWG"},         {800, "1/0 AWG", "3/0 AWG"},
    {1000, "2/0 AWG", "4/0 AWG"},      {1200, "3/0 AWG", "250 kcmil"},
    {1600, "4/0 AWG", "350 kcmil"},    {2000, "250 kcmil", "400 kcmil"},
    {2500, "350 kcmil", "600 kcmil"},  {3000, "400 kcmil", "600 kcmil"},
    {4000, "500 kcmil", "750 kcmil"},  {5000, "700 kcmil", "1250 kcmil"},
    {6000, "800 kcmil", "1250 kcmil"},
};

/* NEC Table 250.66; secondary source. The last row is for all that is larger. */
static const struct {
    const char *service_copper, *service_aluminum; /* not exceeding; NULL: over the row before */
    const char *copper, *aluminum;
} gec_rows[] = {
    {"2 AWG", "1 AWG", "8 AWG", "6 AWG"},
    {"1/0 AWG", "3/0 AWG", "6 AWG", "4 AWG"},
    {"3/0 AWG", "250 kcmil", "4 AWG", "2 AWG"},
    {"350 kcmil", "500 kcmil", "2 AWG", "1/0 AWG"},
    {"600 kcmil", "900 kcmil", "1/0 AWG", "3/0 AWG"},
    {"1100 kcmil", "1750 kcmil", "2/0 AWG", "4/0 AWG"},
    {NULL, NULL, "3/0 AWG", "250 kcmil"},
};

/* NEC Table 310.12 (2017: 310.15(B)(7)); secondary source, every row checked against 83 % of the
 * rating in the 75 °C column. */
static const struct {
    double rating; /* A */
    const char *copper, *aluminum;
} dwelling_rows[] = {
    {100, "4 AWG", "2 AWG"},         {110, "3 AWG", "1 AWG"},
    {125, "2 AWG", "1/0 AWG"},       {150, "1 AWG", "2/0 AWG"},
    {175, "1/0 AWG", "3/0 AWG"},     {200, "2/0 AWG", "4/0 AWG"},
    {225, "3/0 AWG", "250 kcmil"},   {250, "4/0 AWG", "300 kcmil"},
    {300, "250 kcmil", "350 kcmil"}, {350, "350 kcmil", "500 kcmil"},
    {400, "400 kcmil", "600 kcmil"},
};

const char *conductor_size_at(size_t at)
{
    return at < COUNT_OF(sizes) ? sizes[at] : NULL;
}

static bool is_copper(const char *material)
{
    return strcmp(material, "copper") == 0;
}

static bool is_metal(const char *material)
{
    return is_copper(material) || strcmp(material, "aluminum") == 0;
}

bool conductor_kcmil(double *kcmil, const char *size)
{
    for (size_t i = 0; i < COUNT_OF(stranded_rows); i++)
        if (strcmp(stranded_rows[i].size, size) == 0) {
            *kcmil = stranded_rows[i].circular_mils / 1000;
            return true;
        }
    char *end;
    long number = strtol(size, &end, 10);
    if (end == size || number < 250 || number > 2000 || strcmp(end, " kcmil") != 0)
        return false;
    *kcmil = (double)number;
    return true;
}

bool conductor_is_from_memory(const char *size)
{
    double kcmil;
    return conductor_kcmil(&kcmil, size) && kcmil > 500;
}

bool conductor_dc_resistance(double *ohms, const char *size, const char *material, bool is_coated,
                             enum stranding stranding)
{
    int column = !is_copper(material) ? ALUMINUM : is_coated ? COATED_COPPER : UNCOATED_COPPER;
    size_t count = stranding == SOLID ? COUNT_OF(solid_rows) : COUNT_OF(stranded_rows);
    for (size_t i = 0; is_metal(material) && i < count; i++) {
        const char *name = stranding == SOLID ? solid_rows[i].size : stranded_rows[i].size;
        const double *row = stranding == SOLID ? solid_rows[i].ohms : stranded_rows[i].ohms;
        if (strcmp(name, size) != 0)
            continue;
        *ohms = row[column];
        return true;
    }
    return false;
}

bool conductor_ac_impedance(double *resistance, double *reactance, const char *size,
                            const char *material, enum raceway_metal metal)
{
    for (size_t i = 0; is_metal(material) && i < COUNT_OF(impedance_rows); i++) {
        if (strcmp(impedance_rows[i].size, size) != 0)
            continue;
        double found = is_copper(material) ? impedance_rows[i].copper[metal]
                                           : impedance_rows[i].aluminum[metal];
        if (found <= 0)
            return false;
        *resistance = found;
        *reactance = impedance_rows[i].reactance[metal];
        return true;
    }
    return false;
}

static int find_dimension_column(const char *insulation)
{
    for (size_t i = 0; i < COUNT_OF(dimension_columns); i++)
        if (strcmp(dimension_columns[i].insulation, insulation) == 0)
            return dimension_columns[i].column;
    return -1;
}

bool conductor_dimensions(double *diameter, double *area, const char *size, const char *insulation)
{
    int column = find_dimension_column(insulation);
    for (size_t i = 0; column >= 0 && i < COUNT_OF(dimension_rows); i++)
        if (strcmp(dimension_rows[i].size, size) == 0 && dimension_rows[i].area[column] > 0) {
            *diameter = dimension_rows[i].diameter[column];
            *area = dimension_rows[i].area[column];
            return true;
        }
    return false;
}

bool conductor_egc(const char **size, double ocpd_amperes, const char *material)
{
    for (size_t i = 0; is_metal(material) && ocpd_amperes > 0 && i < COUNT_OF(egc_rows); i++)
        if (number_compare(ocpd_amperes, egc_rows[i].ocpd) <= 0) {
            *size = is_copper(material) ? egc_rows[i].copper : egc_rows[i].aluminum;
            return true;
        }
    return false;
}

bool conductor_gec(const char **size, double service_kcmil, const char *service_material,
                   const char *material)
{
    if (!is_metal(service_material) || !is_metal(material) || service_kcmil <= 0)
        return false;
    for (size_t i = 0; i < COUNT_OF(gec_rows); i++) {
        const char *most =
            is_copper(service_material) ? gec_rows[i].service_copper : gec_rows[i].service_aluminum;
        double limit = 0;
        if (most != NULL &&
            !(conductor_kcmil(&limit, most) && number_compare(service_kcmil, limit) <= 0))
            continue;
        *size = is_copper(material) ? gec_rows[i].copper : gec_rows[i].aluminum;
        return true;
    }
    return false;
}

bool conductor_dwelling(const char **size, double rating, const char *material)
{
    if (!is_metal(material) || number_compare(rating, dwelling_rows[0].rating) < 0)
        return false;
    for (size_t i = 0; i < COUNT_OF(dwelling_rows); i++)
        if (number_compare(rating, dwelling_rows[i].rating) <= 0) {
            *size = is_copper(material) ? dwelling_rows[i].copper : dwelling_rows[i].aluminum;
            return true;
        }
    return false;
}
