#include "structural.h"

#include <math.h>
#include <string.h>

/* Is the word one of those in a list separated by spaces? */
static bool has_word(const char *list, const char *word)
{
    size_t length = strlen(word);
    for (const char *at = strstr(list, word); at != NULL; at = strstr(at + 1, word))
        if ((at == list || at[-1] == ' ') && (at[length] == '\0' || at[length] == ' '))
            return true;
    return false;
}

/* Does the row's band of slopes hold this one? A flat roof of 0° belongs to the first band. */
static bool is_in_band(const struct gcp_row *row, double slope)
{
    return row->slope_over < row->slope_to && number_compare(slope, row->slope_to) <= 0 &&
           (number_compare(slope, row->slope_over) > 0 || row->slope_over <= 0);
}

static bool is_asked(const struct gcp_row *row, const struct gcp_query *query,
                     enum height_band band)
{
    return row->is_uplift == query->is_uplift && row->is_overhang == query->is_overhang &&
           (row->band == ANY_HEIGHT || row->band == band) && has_word(row->shapes, query->shape) &&
           (query->zone == NULL || has_word(row->zones, query->zone));
}

/* The row that holds the slope, or one made between two rows that stand at single slopes. */
static bool find_row(struct gcp_row *out, const struct gcp_query *query, enum height_band band)
{
    const struct gcp_row *below = NULL, *above = NULL;
    size_t count;
    const struct gcp_row *rows = gcp_rows(query->edition, &count);
    for (size_t i = 0; i < count; i++) {
        const struct gcp_row *row = &rows[i];
        if (!is_asked(row, query, band))
            continue;
        if (is_in_band(row, query->slope)) {
            *out = *row;
            return true;
        }
        if (row->slope_over < row->slope_to)
            continue;
        if (number_compare(row->slope_to, query->slope) <= 0 &&
            (below == NULL || row->slope_to > below->slope_to))
            below = row;
        if (number_compare(row->slope_to, query->slope) >= 0 &&
            (above == NULL || row->slope_to < above->slope_to))
            above = row;
    }
    if (below == NULL || above == NULL)
        return false;
    *out = *below;
    if (above == below)
        return true;
    double share = (query->slope - below->slope_to) / (above->slope_to - below->slope_to);
    out->small_area += share * (above->small_area - below->small_area);
    out->small += share * (above->small - below->small);
    out->large_area += share * (above->large_area - below->large_area);
    out->large += share * (above->large - below->large);
    return true;
}

static double coefficient_at(const struct gcp_row *row, double area)
{
    if (area <= row->small_area)
        return row->small;
    if (area >= row->large_area)
        return row->large;
    return row->small + (row->large - row->small) * log(area / row->small_area) /
                            log(row->large_area / row->small_area);
}

const char *wind_zones_of(enum wind_edition edition, const char *shape, double slope_degrees)
{
    struct gcp_query query = {.edition = edition, .shape = shape, .slope = slope_degrees};
    struct gcp_row row;
    return find_row(&row, &query, LOW_BUILDING) ? row.zones : NULL;
}

/* Why no row was found: an unknown zone is the caller's mistake, the rest is not sourced. */
static bool refuse(const struct gcp_query *query, struct working *working)
{
    const char *edition = edition_words[query->edition];
    const char *zones = wind_zones_of(query->edition, query->shape, query->slope);
    if (zones == NULL)
        return working_beyond(working,
                              "no pressure coefficients of ASCE %s are at hand for a %s roof of "
                              "%.4g°",
                              edition, query->shape, query->slope);
    if (!has_word(zones, query->zone))
        return working_wrong(working, "zone",
                             "ASCE %s knows no zone %s on a %s roof of %.4g°; it has %s", edition,
                             query->zone, query->shape, query->slope, zones);
    return working_beyond(working,
                          "no pressure coefficient of ASCE %s is at hand for %s in zone %s%s of a "
                          "%s roof of %.4g°",
                          edition, query->is_uplift ? "uplift" : "pressure", query->zone,
                          query->is_overhang ? " over an overhang" : "", query->shape,
                          query->slope);
}

static void note_row(const struct gcp_row *row, const struct gcp_query *query, double coefficient,
                     struct working *working)
{
    working_step(working, gcp_source(query->edition),
                 "Fig. %s, %s roof of %.4g°, zone %s: GCp %+.3g to %.4g ft², %+.3g from %.4g ft²; "
                 "at %.4g ft² %+.4g%s",
                 row->figure, query->shape, query->slope, query->zone, row->small, row->small_area,
                 row->large, row->large_area, query->area, coefficient,
                 row->is_from_memory ? " (figures from memory)" : "");
}

/* ASCE 7-16 hip roofs: linear in h/B between 0.5 and 0.8. */
static bool between_heights(struct gcp_answer *out, const struct gcp_row *tall,
                            const struct gcp_query *query, struct working *working)
{
    struct gcp_row low;
    if (query->height_to_width <= 0)
        return working_wrong(working, "height_to_width",
                             "height_to_width is not given, and Fig. %s of ASCE %s needs it",
                             tall->figure, edition_words[query->edition]);
    double share = fmin(1, fmax(0, (query->height_to_width - 0.5) / 0.3));
    double at_low = 0;
    if (share < 1) {
        if (!find_row(&low, query, LOW_BUILDING))
            return refuse(query, working);
        at_low = coefficient_at(&low, query->area);
        note_row(&low, query, at_low, working);
    }
    out->coefficient = at_low + share * (coefficient_at(tall, query->area) - at_low);
    if (share > 0)
        note_row(tall, query, coefficient_at(tall, query->area), working);
    working_step(working, NULL, "h/B = %.4g, linear between 0.5 and 0.8: GCp = %+.4g",
                 query->height_to_width, out->coefficient);
    return true;
}

bool external_coefficient_of(struct gcp_answer *out, const struct gcp_query *query,
                             struct working *working)
{
    struct gcp_row row;
    if (!find_row(&row, query, TALL_BUILDING))
        return refuse(query, working);
    out->figure = row.figure;
    out->is_from_memory = row.is_from_memory;
    if (row.band != ANY_HEIGHT)
        return between_heights(out, &row, query, working);
    out->coefficient = coefficient_at(&row, query->area);
    note_row(&row, query, out->coefficient, working);
    return true;
}
