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
    return strcmp(raceway, "EMT") == 0 ? emt : strcmp(raceway, "PVC 40") == 0 ? pvc_40 : &none;
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
