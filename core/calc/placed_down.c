/* Wind towards the roof, for the members that carry it: on the bare roof, and on the array. */
#include "placed_wind.h"

#include <math.h>
#include <string.h>

#include "layout_support.h"

static const double foot = 0.3048;
static const double square_foot = 0.3048 * 0.3048;

const struct parameter placed_down_results[3] = {
    GIVEN_QUANTITY("down", PRESSURE, "psf", 0, 5000, "Towards the roof and square to it."),
    GIVEN_NUMBER("coefficient", 0, 10, "GCp towards the roof."),
    GIVEN_QUANTITY("area", AREA, "ft²", 0, 10000, "The area that carries the wind."),
};

/* GCp towards the roof: each figure has one line of it for all its zones. */
static bool find_down(struct amount *out, const struct wind_place *place, struct amount edition,
                      struct amount area, struct working *working)
{
    struct amount uplift;
    const char *zones =
        wind_zones_of(edition_of(edition), place->shape, place->slope.value / (acos(-1) / 180));
    if (zones == NULL)
        return working_beyond(working,
                              "no pressure coefficients of ASCE %s are at hand for a %s roof of "
                              "%.4g°",
                              edition.word, place->shape, place->slope.value / (acos(-1) / 180));
    char *first = arena_copy(working->arena, zones, strcspn(zones, " "));
    if (first == NULL)
        return working_short(working);
    return placed_find_coefficients(&uplift, out, place, edition, amount_of_word(first), area,
                                    working);
}

/* A member's effective wind area: its length times its spacing, or a third of its length where that
 * is more (26.2, from memory). */
bool placed_member_area(struct amount *out, const struct wind_place *place,
                        const struct object *framing, struct working *working)
{
    struct quantity span, spacing;
    if (!need_quantity(&span, framing, SLOT_framing_span, working) ||
        !need_quantity(&spacing, framing, SLOT_framing_spacing, working))
        return false;
    double length = span.value / cos(place->slope.value) / foot;
    double width = fmax(spacing.value / foot, length / 3);
    working_step(working, "ASCE 7 26.2 (from memory)",
                 "effective wind area of a member %.4g ft × %.4g ft = %.4g ft²", length, width,
                 length * width);
    *out = result_in(fmin(fmax(length * width, 0.1), 10000), "ft²");
    return true;
}

bool placed_run_bare_down(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    struct wind_place place = {.plane = about->parent};
    struct amount area, down, q, found[CALCULATOR_RESULTS];
    if (!placed_read_site(&place, working) || !placed_read_building(&place, working) ||
        !placed_member_area(&area, &place, about, working) ||
        !placed_find_velocity_pressure(&q, &place, inputs, working) ||
        !find_down(&down, &place, inputs[WIND_EDITION], area, working))
        return false;
    struct amount asked[] = {
        inputs[WIND_EDITION], q, amount_of_number(0), down, amount_of_word(place.enclosure),
        inputs[WIND_MINIMUM]};
    if (!placed_ask(found, wind_calculators, "bare_roof_pressure", NULL, asked, 6, working))
        return false;
    results[0] = found[1];
    results[1] = down;
    results[2] = area;
    return true;
}

/* Do the pressures hold for every module of the plane? The one nearest an edge and the longest one
 * stand for all. */
static bool is_covered(const struct wind_place *place, struct layout_plane *plane,
                       struct amount edition, struct working *working)
{
    double nearest = INFINITY, longest = -1;
    struct layout_module *ends[2] = {NULL, NULL};
    for (size_t i = 0; i < plane->module_count; i++) {
        struct layout_module *module = &plane->modules[i];
        struct placed_spot spot = {plane, module, module->corners[0], module->corners[2]};
        double edge = placed_edge_distance(&spot);
        double length = fmax(module->corners[2].x - module->corners[0].x,
                             module->corners[2].y - module->corners[0].y);
        if (edge < nearest) {
            nearest = edge;
            ends[0] = module;
        }
        if (length > longest) {
            longest = length;
            ends[1] = module;
        }
    }
    for (size_t i = 0; i < 2 && ends[i] != NULL; i++) {
        struct placed_spot spot = {plane, ends[i], ends[i]->corners[0], ends[i]->corners[2]};
        if ((i == 0 || ends[1] != ends[0]) && !placed_is_covered(place, &spot, edition, working))
            return false;
    }
    return true;
}

/* The least area that any attachment carries, m²: on it the pressure is largest. */
static bool least_area(double *out, const struct object *about, struct layout_plane **plane,
                       struct working *working)
{
    const struct layout_support *support;
    double least = INFINITY;
    if (!layout_support_open(&support, plane, about, working))
        return false;
    for (size_t i = 0; i < support->attachment_count; i++)
        if (support->attachments[i].area > 0)
            least = fmin(least, support->attachments[i].area);
    if (!isfinite(least))
        return working_beyond(working, "no attachment on roof plane %s carries a module",
                              about->path);
    *out = least;
    return true;
}

bool placed_run_array_down(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    struct wind_place place = {.plane = about};
    struct layout_plane *plane;
    struct amount q, down, panel[CALCULATOR_RESULTS];
    double least;
    if (!placed_read_site(&place, working) || !placed_read_building(&place, working) ||
        !placed_read_racking(&place, working) ||
        !layout_plane_open(&plane, about, LAYOUT_MODULES | LAYOUT_EDGES | LAYOUT_SLOPE, working) ||
        !least_area(&least, about, &plane, working) ||
        !is_covered(&place, plane, inputs[WIND_EDITION], working))
        return false;
    struct amount area = result_in(fmax(least / square_foot, 0.1), "ft²");
    if (!placed_find_velocity_pressure(&q, &place, inputs, working) ||
        !find_down(&down, &place, inputs[WIND_EDITION], area, working))
        return false;
    struct amount asked[] = {
        inputs[WIND_EDITION], q, amount_of_number(0), down, area, amount_of_yesno(false),
        inputs[WIND_MINIMUM]};
    if (!placed_ask(panel, wind_calculators, "panel_pressure", NULL, asked, 7, working))
        return false;
    results[0] = panel[1];
    results[1] = down;
    results[2] = area;
    return true;
}

static bool open_wind(struct wind_place *place, struct layout_plane **plane,
                      const struct object *about, struct working *working)
{
    *place = (struct wind_place){.plane = about};
    return placed_read_building(place, working) && placed_read_racking(place, working) &&
           layout_plane_open(plane, about, LAYOUT_MODULES | LAYOUT_EDGES | LAYOUT_SLOPE, working);
}

/* Wind gets below the roof of what is open, whatever the house is. */
static bool is_closed_below(const struct wind_place *place, struct working *working)
{
    static const char *const open[] = {"porch", "carport", "shade structure"};
    const char *structure;
    if (strcmp(place->enclosure, "open") == 0)
        return working_beyond(working,
                              "no wind pressures of ASCE 7 are at hand for an open building");
    if (!need_word(&structure, place->plane, SLOT_roof_plane_structure, working))
        return false;
    for (size_t i = 0; i < sizeof open / sizeof open[0]; i++)
        if (strcmp(structure, open[i]) == 0)
            return working_beyond(working,
                                  "no wind pressures of ASCE 7 are at hand for the roof of a %s, "
                                  "which is open below",
                                  structure);
    return true;
}

/* Are the wind's pressures at hand for the plane as it is and for all that lies on it? False: stop
 * says why not. */
static bool find_wind(const struct wind_place *place, struct layout_plane *plane,
                      struct amount edition, struct working *working)
{
    struct amount down;
    if (!is_closed_below(place, working))
        return false;
    if (number_compare(place->height.value / foot, highest_building) > 0)
        return working_beyond(working,
                              "mean roof height is %.4g ft; the wind figures at hand are for "
                              "buildings up to %g ft",
                              place->height.value / foot, highest_building);
    return is_covered(place, plane, edition, working) &&
           find_down(&down, place, edition, result_in(10, "ft²"), working);
}

const struct parameter placed_wind_study_inputs[1] = {
    GIVEN_WORD("edition", edition_words, "Edition of ASCE 7.")};
const struct parameter placed_wind_study_results[1] = {
    GIVEN_YESNO("known", "Are its pressures at hand?")};

bool placed_run_find_wind(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    struct wind_place place;
    struct layout_plane *plane;
    results[0] = amount_of_yesno(true);
    return open_wind(&place, &plane, about, working) &&
           find_wind(&place, plane, inputs[0], working);
}

/* What is not covered stops the rule that asks for it by the other name, once for the plane; the
 * others leave wind out. */
bool placed_run_has_wind(struct amount *results, const struct object *about,
                         const struct amount *inputs, struct working *working)
{
    struct wind_place place;
    struct layout_plane *plane;
    if (!open_wind(&place, &plane, about, working))
        return false;
    bool is_known = find_wind(&place, plane, inputs[0], working);
    results[0] = amount_of_yesno(is_known);
    if (is_known || working->stop.kind != STOP_BEYOND)
        return is_known;
    working_step(working, NULL, "%s: said once for the plane, wind is left out here",
                 working->stop.why);
    working->stop = (struct stop){.kind = STOP_NONE};
    return true;
}
