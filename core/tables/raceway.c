#include "raceway.h"

#include <string.h>

struct raceway_row {
    const char *trade_size;
    double diameter; /* in */
    double area;     /* in² */
    double fill[3];  /* in²: one conductor, two, more */
};

/* NEC Chapter 9 Table 4, Article 358; secondary sources. */
static const struct raceway_row emt[] = {
    {"1/2 in", 0.622, 0.304, {0.161, 0.094, 0.122}},
    {"3/4 in", 0.824, 0.533, {0.283, 0.165, 0.213}},
    {"1 in", 1.049, 0.864, {0.458, 0.268, 0.346}},
    {"1-1/4 in", 1.38, 1.496, {0.793, 0.464, 0.598}},
    {"1-1/2 in", 1.61, 2.036, {1.079, 0.631, 0.814}},
    {"2 in", 2.067, 3.356, {1.778, 1.04, 1.342}},
    {"2-1/2 in", 2.731, 5.858, {3.105, 1.816, 2.343}},
    {"3 in", 3.356, 8.846, {4.688, 2.742, 3.538}},
    {"3-1/2 in", 3.834, 11.545, {6.119, 3.579, 4.618}},
    {"4 in", 4.334, 14.753, {7.819, 4.573, 5.901}},
    {NULL, 0, 0, {0, 0, 0}},
};

/* NEC Chapter 9 Table 4, Article 352, schedule 40; secondary source, every area checked against the
 * diameter. */
static const struct raceway_row pvc_40[] = {
    {"1/2 in", 0.602, 0.285, {0.151, 0.088, 0.114}},
    {"3/4 in", 0.804, 0.508, {0.269, 0.157, 0.203}},
    {"1 in", 1.029, 0.832, {0.441, 0.258, 0.333}},
    {"1-1/4 in", 1.36, 1.453, {0.77, 0.45, 0.581}},
    {"1-1/2 in", 1.59, 1.986, {1.052, 0.616, 0.794}},
    {"2 in", 2.047, 3.291, {1.744, 1.02, 1.316}},
    {"2-1/2 in", 2.445, 4.695, {2.488, 1.455, 1.878}},
    {"3 in", 3.042, 7.268, {3.852, 2.253, 2.907}},
    {"3-1/2 in", 3.521, 9.737, {5.161, 3.018, 3.895}},
    {"4 in", 3.998, 12.554, {6.654, 3.892, 5.022}},
    {NULL, 0, 0, {0, 0, 0}},
};

/* NEC Chapter 9 Table 4, Articles 344, 342, 352 (schedule 80), 348 and 350; one secondary source,
 * the diameters of Articles 342 and 348 two (one of them prints 3.834 for FMC of 3-1/2 in against
 * its own area); every area checked against the diameter. Flexible conduit of 3/8 in has no row
 * here: Table 348.22 counts its conductors (from memory). */
static const struct raceway_row rmc[] = {
    {"1/2 in", 0.632, 0.314, {0.166, 0.097, 0.125}},
    {"3/4 in", 0.836, 0.549, {0.291, 0.17, 0.22}},
    {"1 in", 1.063, 0.887, {0.47, 0.275, 0.355}},
    {"1-1/4 in", 1.394, 1.526, {0.809, 0.473, 0.61}},
    {"1-1/2 in", 1.624, 2.071, {1.098, 0.642, 0.829}},
    {"2 in", 2.083, 3.408, {1.806, 1.056, 1.363}},
    {"2-1/2 in", 2.489, 4.866, {2.579, 1.508, 1.946}},
    {"3 in", 3.09, 7.499, {3.974, 2.325, 3}},
    {"3-1/2 in", 3.57, 10.01, {5.305, 3.103, 4.004}},
    {"4 in", 4.05, 12.882, {6.828, 3.994, 5.153}},
    {NULL, 0, 0, {0, 0, 0}},
};

static const struct raceway_row imc[] = {
    {"1/2 in", 0.66, 0.342, {0.181, 0.106, 0.137}},
    {"3/4 in", 0.864, 0.586, {0.311, 0.182, 0.235}},
    {"1 in", 1.105, 0.959, {0.508, 0.297, 0.384}},
    {"1-1/4 in", 1.448, 1.647, {0.873, 0.51, 0.659}},
    {"1-1/2 in", 1.683, 2.225, {1.179, 0.69, 0.89}},
    {"2 in", 2.15, 3.63, {1.924, 1.125, 1.452}},
    {"2-1/2 in", 2.557, 5.135, {2.722, 1.592, 2.054}},
    {"3 in", 3.176, 7.922, {4.199, 2.456, 3.169}},
    {"3-1/2 in", 3.671, 10.584, {5.61, 3.281, 4.234}},
    {"4 in", 4.166, 13.631, {7.224, 4.226, 5.452}},
    {NULL, 0, 0, {0, 0, 0}},
};

static const struct raceway_row pvc_80[] = {
    {"1/2 in", 0.526, 0.217, {0.115, 0.067, 0.087}},
    {"3/4 in", 0.722, 0.409, {0.217, 0.127, 0.164}},
    {"1 in", 0.936, 0.688, {0.365, 0.213, 0.275}},
    {"1-1/4 in", 1.255, 1.237, {0.656, 0.383, 0.495}},
    {"1-1/2 in", 1.476, 1.711, {0.907, 0.53, 0.684}},
    {"2 in", 1.913, 2.874, {1.523, 0.891, 1.15}},
    {"2-1/2 in", 2.29, 4.119, {2.183, 1.277, 1.647}},
    {"3 in", 2.864, 6.442, {3.414, 1.997, 2.577}},
    {"3-1/2 in", 3.326, 8.688, {4.605, 2.693, 3.475}},
    {"4 in", 3.786, 11.258, {5.967, 3.49, 4.503}},
    {NULL, 0, 0, {0, 0, 0}},
};

static const struct raceway_row fmc[] = {
    {"1/2 in", 0.635, 0.317, {0.168, 0.098, 0.127}},
    {"3/4 in", 0.824, 0.533, {0.283, 0.165, 0.213}},
    {"1 in", 1.02, 0.817, {0.433, 0.253, 0.327}},
    {"1-1/4 in", 1.275, 1.277, {0.677, 0.396, 0.511}},
    {"1-1/2 in", 1.538, 1.858, {0.985, 0.576, 0.743}},
    {"2 in", 2.04, 3.269, {1.732, 1.013, 1.307}},
    {"2-1/2 in", 2.5, 4.909, {2.602, 1.522, 1.963}},
    {"3 in", 3, 7.069, {3.746, 2.191, 2.827}},
    {"3-1/2 in", 3.5, 9.621, {5.099, 2.983, 3.848}},
    {"4 in", 4, 12.566, {6.66, 3.896, 5.027}},
    {NULL, 0, 0, {0, 0, 0}},
};

static const struct raceway_row lfmc[] = {
    {"1/2 in", 0.632, 0.314, {0.166, 0.097, 0.125}},
    {"3/4 in", 0.83, 0.541, {0.287, 0.168, 0.216}},
    {"1 in", 1.054, 0.873, {0.462, 0.27, 0.349}},
    {"1-1/4 in", 1.395, 1.528, {0.81, 0.474, 0.611}},
    {"1-1/2 in", 1.588, 1.981, {1.05, 0.614, 0.792}},
    {"2 in", 2.033, 3.246, {1.72, 1.006, 1.298}},
    {"2-1/2 in", 2.493, 4.881, {2.587, 1.513, 1.953}},
    {"3 in", 3.085, 7.475, {3.962, 2.317, 2.99}},
    {"3-1/2 in", 3.52, 9.731, {5.158, 3.017, 3.893}},
    {"4 in", 4.02, 12.692, {6.727, 3.935, 5.077}},
    {NULL, 0, 0, {0, 0, 0}},
};

/* NEC Chapter 9 Table 1; secondary source. */
static const double fill_shares[] = {0.53, 0.31, 0.40};
static const double nipple_share = 0.60;

static size_t find_fill(double conductors)
{
    return conductors < 1.5 ? 0 : conductors < 2.5 ? 1 : 2;
}

bool raceway_fill_share(double *share, double conductors, bool is_nipple)
{
    if (conductors < 1)
        return false;
    *share = is_nipple ? nipple_share : fill_shares[find_fill(conductors)];
    return true;
}

static const struct raceway_row *find_rows(const char *raceway)
{
    static const struct raceway_row none = {NULL, 0, 0, {0, 0, 0}};
    static const struct {
        const char *raceway;
        const struct raceway_row *rows;
    } kinds[] = {{"EMT", emt},       {"RMC", rmc}, {"IMC", imc},  {"PVC 40", pvc_40},
                 {"PVC 80", pvc_80}, {"FMC", fmc}, {"LFMC", lfmc}};
    for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
        if (strcmp(raceway, kinds[i].raceway) == 0)
            return kinds[i].rows;
    return &none;
}

static const struct raceway_row *find_row(const char *raceway, const char *trade_size)
{
    const struct raceway_row *row = find_rows(raceway);
    while (row->trade_size != NULL && strcmp(row->trade_size, trade_size) != 0)
        row++;
    return row->trade_size != NULL ? row : NULL;
}

const char *raceway_size_at(const char *raceway, size_t at)
{
    const struct raceway_row *row = find_rows(raceway);
    while (at > 0 && row->trade_size != NULL) {
        row++;
        at--;
    }
    return row->trade_size;
}

bool raceway_inside(double *diameter, double *area, const char *raceway, const char *trade_size)
{
    const struct raceway_row *row = find_row(raceway, trade_size);
    if (row == NULL)
        return false;
    *diameter = row->diameter;
    *area = row->area;
    return true;
}

bool raceway_fill_area(double *area, const char *raceway, const char *trade_size, double conductors)
{
    const struct raceway_row *row = find_row(raceway, trade_size);
    if (row == NULL || conductors < 1)
        return false;
    *area = row->fill[find_fill(conductors)];
    return true;
}
