/* What a roof weighs at least: its covering and deck, without what carries them. */
#include "roof_weight.h"

#include <string.h>

/* The lightest kind of each covering, psf for each layer. Slate, tile, metal, wood and rolled
 * roofing: F. E. Kidder, Building Construction and Superintendence, table of roof loads;
 * composition and metal shingles: published table of roofing weights (secondary source); membrane
 * and built-up, which may be bare felt: as rolled roofing. Lecture notes on dead loads have more
 * for each: shingles 2 to 3, wood 3, slate 10, tile 15. */
static const struct covering_weight {
    const char *covering;
    double psf;
} coverings[] = {
    {"composition shingle", 1.95},
    {"concrete tile", 8},
    {"clay tile", 8},
    {"slate", 7.25},
    {"standing seam metal", 1},
    {"metal shingle", 0.45},
    {"corrugated metal", 1},
    {"wood shake", 2.5},
    {"wood shingle", 2.5},
    {"rolled roofing", 0.6},
    {"membrane", 0.6},
    {"built-up", 0.6},
};
/* Sheathing of light wood an inch thick (Kidder); plywood is heavier. */
static const double deck_psf_per_inch = 3;
static const double inch = 0.0254;

const struct parameter least_dead_load_results[1] = {
    GIVEN_QUANTITY("weight", PRESSURE, "psf", 0, 200, "Per area of the surface.")};

static bool weigh_deck(double *psf, const struct object *plane, struct working *working)
{
    const char *deck;
    struct quantity thickness;
    *psf = 0;
    if (!need_word(&deck, plane, SLOT_roof_plane_deck, working))
        return false;
    bool is_wood =
        strcmp(deck, "plywood") == 0 || strcmp(deck, "OSB") == 0 || strcmp(deck, "boards") == 0;
    if (!is_wood)
        return true;
    if (!need_quantity(&thickness, plane, SLOT_roof_plane_deck_thickness, working))
        return false;
    *psf = deck_psf_per_inch * thickness.value / inch;
    return true;
}

bool run_roof_plane_least_dead_load(struct amount *results, const struct object *about,
                                    const struct amount *inputs, struct working *working)
{
    const char *covering;
    double layers, deck, each = 0;
    (void)inputs;
    if (!need_word(&covering, about, SLOT_roof_plane_covering, working) ||
        !need_number(&layers, about, SLOT_roof_plane_layers, working) ||
        !weigh_deck(&deck, about, working))
        return false;
    for (size_t i = 0; i < sizeof coverings / sizeof *coverings; i++)
        if (strcmp(coverings[i].covering, covering) == 0)
            each = coverings[i].psf;
    results[0] = result_in(layers * each + deck, "psf");
    working_step(working, "published tables of roofing weights (secondary source)",
                 "%.4g of %s at %.4g psf and a deck of %.4g psf: %.4g psf, without what carries "
                 "them",
                 layers, covering, each, deck, layers * each + deck);
    return true;
}
