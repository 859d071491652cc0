#include "conductor_runs.h"

#include <math.h>
#include <string.h>

const char *const device_words[] = {"circuit breaker", "fuse", NULL};

static const double next_up_limit = 800; /* A: NEC 240.4(B)(3) */

enum ocpd_device device_of(struct amount word)
{
    return is_given(word) && strcmp(word.word, "fuse") == 0 ? FUSE : CIRCUIT_BREAKER;
}

/* Without an edition the answer must be the same in all. */
static bool is_same_in_all(double old, double new, int edition)
{
    return edition != 0 || number_compare(old, new) == 0;
}

bool find_ocpd_up(double *rating, double amperes, enum ocpd_device device, int edition,
                  struct working *working)
{
    double old = 0, new = 0;
    if (!ocpd_next_up(&old, amperes, device, edition != 0 ? edition : 2017) ||
        !ocpd_next_up(&new, amperes, device, edition != 0 ? edition : 2023))
        return working_beyond(working, "%.6g A is above the largest standard size, 6000 A",
                              amperes);
    if (!is_same_in_all(old, new, edition))
        return working_wrong(working, "edition",
                             "edition is not given, and for %.6g A it decides the standard size",
                             amperes);
    *rating = new;
    working_step(working, SOURCE_OCPD, "next standard size up from %.6g A: %g A", amperes, new);
    return true;
}

static bool find_ocpd_down(double *rating, double amperes, enum ocpd_device device, int edition,
                           struct working *working)
{
    double old = 0, new = 0;
    bool has_old = ocpd_next_down(&old, amperes, device, edition != 0 ? edition : 2017);
    bool has_new = ocpd_next_down(&new, amperes, device, edition != 0 ? edition : 2023);
    if (!is_same_in_all(old, new, edition))
        return working_wrong(working, "edition",
                             "edition is not given, and for %.6g A it decides the standard size",
                             amperes);
    if (!has_old || !has_new)
        return working_beyond(working, "%.6g A is below the smallest standard size", amperes);
    *rating = new;
    working_step(working, SOURCE_OCPD, "next standard size down from %.6g A: %g A", amperes, new);
    return true;
}

bool find_largest_ocpd(double *rating, const char *size, const char *material, double usable,
                       enum ocpd_device device, int edition, struct working *working)
{
    bool is_small = number_compare(usable, next_up_limit) <= 0;
    if (is_small ? !find_ocpd_up(rating, usable, device, edition, working)
                 : !find_ocpd_down(rating, usable, device, edition, working))
        return false;
    working_step(working, is_small ? "NEC 240.4(B)" : "NEC 240.4(C)",
                 "%.6g A may be protected at %g A", usable, *rating);
    double cap;
    const char *section;
    /* The caps are the same in all editions for copper and aluminum. */
    if (ocpd_small_conductor(&cap, &section, size, material, edition != 0 ? edition : 2020)) {
        working_step(working, SOURCE_SMALL_CONDUCTOR, "240.4%s: %s %s at most %g A", section, size,
                     material, cap);
        *rating = fmin(*rating, cap);
    }
    return true;
}

bool run_ocpd_up(struct amount *results, const struct object *about, const struct amount *inputs,
                 struct working *working)
{
    (void)about;
    int edition;
    double rating;
    if (!edition_read(&edition, inputs[1], working) ||
        !find_ocpd_up(&rating, amount_in(inputs[0], "A", 0), device_of(inputs[2]), edition,
                      working))
        return false;
    results[0] = amount_as(rating, "A");
    return true;
}

bool run_ocpd_down(struct amount *results, const struct object *about, const struct amount *inputs,
                   struct working *working)
{
    (void)about;
    int edition;
    double rating;
    if (!edition_read(&edition, inputs[1], working) ||
        !find_ocpd_down(&rating, amount_in(inputs[0], "A", 0), device_of(inputs[2]), edition,
                        working))
        return false;
    results[0] = amount_as(rating, "A");
    return true;
}

bool run_largest_ocpd_for(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    struct amount ampacity[CALCULATOR_RESULTS] = {{.type = AMOUNT_NONE}};
    int edition;
    double rating;
    if (!run_ampacity(ampacity, about, inputs, working) ||
        !edition_read(&edition, inputs[AMPACITY_EDITION], working))
        return false;
    double usable = amount_in(ampacity[is_given(ampacity[6]) ? 6 : 0], "A", 0);
    if (!find_largest_ocpd(&rating, inputs[AMPACITY_SIZE].word, inputs[AMPACITY_MATERIAL].word,
                           usable, device_of(inputs[AMPACITY_OWN]), edition, working))
        return false;
    results[0] = amount_as(rating, "A");
    results[1] = amount_as(usable, "A");
    return true;
}
