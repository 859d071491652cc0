#include "ocpd.h"

#include <string.h>

#include "quantity.h"

/* NEC 240.6(A); secondary sources. Rising. The 10 A breaker came in 2023. */
static const struct {
    double rating; /* A */
    bool is_fuse_only;
    int breaker_since; /* edition */
} ratings[] = {
    {1, true, 0},     {3, true, 0},     {6, true, 0},     {10, false, 2023}, {15, false, 0},
    {20, false, 0},   {25, false, 0},   {30, false, 0},   {35, false, 0},    {40, false, 0},
    {45, false, 0},   {50, false, 0},   {60, false, 0},   {70, false, 0},    {80, false, 0},
    {90, false, 0},   {100, false, 0},  {110, false, 0},  {125, false, 0},   {150, false, 0},
    {175, false, 0},  {200, false, 0},  {225, false, 0},  {250, false, 0},   {300, false, 0},
    {350, false, 0},  {400, false, 0},  {450, false, 0},  {500, false, 0},   {600, false, 0},
    {601, true, 0},   {700, false, 0},  {800, false, 0},  {1000, false, 0},  {1200, false, 0},
    {1600, false, 0}, {2000, false, 0}, {2500, false, 0}, {3000, false, 0},  {4000, false, 0},
    {5000, false, 0}, {6000, false, 0},
};
enum { RATING_COUNT = sizeof ratings / sizeof ratings[0] };

/* NEC 240.4(D); secondary sources. 18 and 16 AWG only under further conditions. */
static const struct {
    const char *size, *material;
    double rating;                           /* A */
    const char *section_2017, *section_2023; /* NULL: not in that edition */
} small_conductors[] = {
    {"18 AWG", "copper", 7, "(D)(1)", "(D)(1)"},
    {"16 AWG", "copper", 10, "(D)(2)", "(D)(2)"},
    {"14 AWG", "copper-clad aluminum", 10, NULL, "(D)(3)"},
    {"14 AWG", "copper", 15, "(D)(3)", "(D)(4)"},
    {"12 AWG", "aluminum", 15, "(D)(4)", "(D)(5)"},
    {"12 AWG", "copper-clad aluminum", 15, "(D)(4)", "(D)(5)"},
    {"12 AWG", "copper", 20, "(D)(5)", "(D)(6)"},
    {"10 AWG", "aluminum", 25, "(D)(6)", "(D)(7)"},
    {"10 AWG", "copper-clad aluminum", 25, "(D)(6)", "(D)(7)"},
    {"10 AWG", "copper", 30, "(D)(7)", "(D)(8)"},
};

static bool is_made(size_t i, enum ocpd_device device, int edition)
{
    return device == FUSE || (!ratings[i].is_fuse_only && edition >= ratings[i].breaker_since);
}

bool ocpd_is_standard(double amperes, enum ocpd_device device, int edition)
{
    for (size_t i = 0; i < RATING_COUNT; i++)
        if (number_compare(ratings[i].rating, amperes) == 0)
            return is_made(i, device, edition);
    return false;
}

bool ocpd_next_up(double *rating, double amperes, enum ocpd_device device, int edition)
{
    for (size_t i = 0; i < RATING_COUNT; i++)
        if (is_made(i, device, edition) && number_compare(ratings[i].rating, amperes) >= 0) {
            *rating = ratings[i].rating;
            return true;
        }
    return false;
}

bool ocpd_next_down(double *rating, double amperes, enum ocpd_device device, int edition)
{
    for (size_t i = RATING_COUNT; i > 0; i--)
        if (is_made(i - 1, device, edition) &&
            number_compare(ratings[i - 1].rating, amperes) <= 0) {
            *rating = ratings[i - 1].rating;
            return true;
        }
    return false;
}

bool ocpd_small_conductor(double *rating, const char **section, const char *size,
                          const char *material, int edition)
{
    for (size_t i = 0; i < sizeof small_conductors / sizeof small_conductors[0]; i++) {
        const char *found =
            edition >= 2023 ? small_conductors[i].section_2023 : small_conductors[i].section_2017;
        if (found == NULL || strcmp(small_conductors[i].size, size) != 0 ||
            strcmp(small_conductors[i].material, material) != 0)
            continue;
        *rating = small_conductors[i].rating;
        *section = found;
        return true;
    }
    return false;
}
