#include "combination.h"

static const char memory[] = "ASCE 7 2.4 (from memory)";
static const char printed[] = "ASCE 7-16 2.4 (secondary source: worked rail calculation)";
static const char snow_article[] = "ASCE 7-22 2.4, combinations 3a, 4a, 6a (secondary source: "
                                   "structural magazine article on minimum snow)";

const struct combination uplift_combination = {
    "0.6D + 0.6W", 0.6, 0.6, 0, 0, "ASCE 7-16 2.4 (secondary source: worked calculations)"};

static const struct combination service_snow[] = {
    {"D", 1, 0, 0, 0, memory},
    {"D + Lr", 1, 0, 0, 1, memory},
    {"D + S", 1, 0, 1, 0, memory},
    {"D + 0.6W", 1, 0.6, 0, 0, printed},
    {"D + 0.75(0.6W) + 0.75Lr", 1, 0.45, 0, 0.75, memory},
    {"D + 0.75(0.6W) + 0.75S", 1, 0.45, 0.75, 0, memory},
};
static const struct combination strength_snow[] = {
    {"D", 1, 0, 0, 0, memory},
    {"D + Lr", 1, 0, 0, 1, memory},
    {"D + 0.7S", 1, 0, 0.7, 0, snow_article},
    {"D + 0.6W", 1, 0.6, 0, 0, printed},
    {"D + 0.75(0.6W) + 0.75Lr", 1, 0.45, 0, 0.75, memory},
    {"D + 0.75(0.6W) + 0.75(0.7S)", 1, 0.45, 0.525, 0, snow_article},
};

const struct combination *down_combinations(bool is_strength_snow, size_t *count)
{
    *count = sizeof service_snow / sizeof service_snow[0];
    return is_strength_snow ? strength_snow : service_snow;
}
