#include "layout_geos.h"

#include <geos_c.h>
#include <stdlib.h>
#include <string.h>

struct layout_geos {
    GEOSContextHandle_t context;
    bool is_short; /* some call failed for want of memory */
};

enum { CHORDS_A_QUARTER = 64, ROOM_FOR_CONTEXT = 64 * 1024 };

/* GEOS tells what it caught in the words of the exception. */
static void hear(const char *message, void *context)
{
    struct layout_geos *geos = context;
    if (strstr(message, "bad_alloc") != NULL)
        geos->is_short = true;
}

struct layout_geos *layout_geos_new(void)
{
    struct layout_geos *geos = calloc(1, sizeof *geos);
    /* GEOS_init_r is the one call that does not catch its own want of memory: see first that there
     * is some. */
    void *room = malloc(ROOM_FOR_CONTEXT);
    if (geos == NULL || room == NULL) {
        free(room);
        free(geos);
        return NULL;
    }
    free(room);
    geos->context = GEOS_init_r(); /* nothing is printed without a handler */
    if (geos->context != NULL) {
        GEOSContext_setErrorMessageHandler_r(geos->context, hear, geos);
        return geos;
    }
    free(geos);
    return NULL;
}

bool layout_geos_is_short(const struct layout_geos *geos)
{
    return geos->is_short;
}

void layout_geos_free(struct layout_geos *geos)
{
    if (geos == NULL)
        return;
    GEOS_finish_r(geos->context);
    free(geos);
}

static void drop(struct layout_geos *geos, GEOSGeometry *geometry)
{
    if (geometry != NULL)
        GEOSGeom_destroy_r(geos->context, geometry);
}

static GEOSCoordSequence *sequence_of(struct layout_geos *geos, const struct shape *shape)
{
    size_t count = shape->count + (shape->is_closed ? 1 : 0);
    GEOSCoordSequence *sequence = GEOSCoordSeq_create_r(geos->context, (unsigned)count, 2);
    for (size_t i = 0; sequence != NULL && i < count; i++) {
        struct point at = shape->corners[i % shape->count];
        if (!GEOSCoordSeq_setXY_r(geos->context, sequence, (unsigned)i, at.x, at.y)) {
            GEOSCoordSeq_destroy_r(geos->context, sequence);
            return NULL;
        }
    }
    return sequence;
}

/* A polygon, line or point. NULL: GEOS could not make it. */
static GEOSGeometry *geometry_of(struct layout_geos *geos, const struct shape *shape)
{
    GEOSCoordSequence *sequence = sequence_of(geos, shape);
    if (sequence == NULL)
        return NULL;
    if (shape->count == 1) /* the constructors take the sequence even when they fail */
        return GEOSGeom_createPoint_r(geos->context, sequence);
    if (!shape->is_closed)
        return GEOSGeom_createLineString_r(geos->context, sequence);
    GEOSGeometry *ring = GEOSGeom_createLinearRing_r(geos->context, sequence);
    if (ring == NULL)
        return NULL;
    return GEOSGeom_createPolygon_r(geos->context, ring, NULL, 0);
}

/* All shapes in one collection. NULL: GEOS could not make it. */
static GEOSGeometry *collection_of(struct layout_geos *geos, const struct shape *shapes,
                                   size_t count)
{
    GEOSGeometry **items = calloc(count + 1, sizeof(GEOSGeometry *));
    GEOSGeometry *all = NULL;
    size_t made = 0;
    if (items == NULL) {
        geos->is_short = true;
        return NULL;
    }
    while (made < count && (items[made] = geometry_of(geos, &shapes[made])) != NULL)
        made++;
    if (made == count)
        all = GEOSGeom_createCollection_r(geos->context, GEOS_GEOMETRYCOLLECTION, items,
                                          (unsigned)count);
    else
        for (size_t i = 0; i < made; i++)
            drop(geos, items[i]);
    free(items);
    return all;
}

bool layout_geos_is_simple(bool *is_simple, struct layout_geos *geos, const struct shape *outline)
{
    GEOSGeometry *polygon = geometry_of(geos, outline);
    char answer = polygon != NULL ? GEOSisValid_r(geos->context, polygon) : 2;
    drop(geos, polygon);
    *is_simple = answer == 1;
    return answer != 2;
}

bool layout_geos_union_area(double *area, struct layout_geos *geos, const struct shape *polygons,
                            size_t count)
{
    GEOSGeometry *all = collection_of(geos, polygons, count);
    GEOSGeometry *whole = all != NULL ? GEOSUnaryUnion_r(geos->context, all) : NULL;
    bool is_good = whole != NULL && GEOSArea_r(geos->context, whole, area) == 1;
    drop(geos, whole);
    drop(geos, all);
    return is_good;
}

/* Corners of a polygon's outer ring. False: no memory. */
static bool take_ring(struct shape *out, struct layout_geos *geos, const GEOSGeometry *polygon,
                      struct arena *arena)
{
    const GEOSGeometry *ring = GEOSGetExteriorRing_r(geos->context, polygon);
    const GEOSCoordSequence *sequence =
        ring != NULL ? GEOSGeom_getCoordSeq_r(geos->context, ring) : NULL;
    unsigned count = 0;
    if (sequence == NULL || !GEOSCoordSeq_getSize_r(geos->context, sequence, &count) || count < 4)
        return false;
    struct point *corners = arena_take(arena, count * sizeof *corners);
    if (corners == NULL)
        return false;
    for (unsigned i = 0; i + 1 < count; i++) /* the last is the first */
        if (!GEOSCoordSeq_getXY_r(geos->context, sequence, i, &corners[i].x, &corners[i].y))
            return false;
    *out = (struct shape){corners, count - 1, true};
    return true;
}

struct cutting {
    struct shape *parts;
    size_t count, capacity;
    struct arena *arena;
};

static bool add_part(struct cutting *cutting, struct shape part)
{
    struct shape *parts = arena_grow(cutting->arena, cutting->parts, cutting->count,
                                     &cutting->capacity, sizeof *parts);
    if (parts == NULL)
        return false;
    cutting->parts = parts;
    parts[cutting->count++] = part;
    return true;
}

static bool add_polygons(struct cutting *cutting, struct layout_geos *geos, const GEOSGeometry *all)
{
    int pieces = GEOSGetNumGeometries_r(geos->context, all);
    for (int i = 0; i < pieces; i++) {
        struct shape part;
        const GEOSGeometry *piece = GEOSGetGeometryN_r(geos->context, all, i);
        if (piece == NULL)
            return false;
        if (GEOSGeomTypeId_r(geos->context, piece) != GEOS_POLYGON ||
            GEOSisEmpty_r(geos->context, piece) == 1)
            continue; /* where they only touch */
        if (!take_ring(&part, geos, piece, cutting->arena) || !add_part(cutting, part))
            return false;
    }
    return pieces >= 0;
}

static bool cut_one(struct cutting *cutting, struct layout_geos *geos, const struct shape *outline,
                    const struct shape *polygon)
{
    GEOSGeometry *inside = geometry_of(geos, outline), *whole = geometry_of(geos, polygon);
    GEOSGeometry *cut =
        inside != NULL && whole != NULL ? GEOSIntersection_r(geos->context, inside, whole) : NULL;
    bool is_good = cut != NULL && add_polygons(cutting, geos, cut);
    drop(geos, cut);
    drop(geos, whole);
    drop(geos, inside);
    return is_good;
}

bool layout_geos_cut(struct shape **parts, size_t *count, struct layout_geos *geos,
                     const struct shape *outline, const struct shape *polygons,
                     size_t polygon_count, struct arena *arena)
{
    struct cutting cutting = {NULL, 0, 0, arena};
    struct shape ring = {outline->corners, outline->count + 1, false};
    for (size_t i = 0; i < polygon_count; i++) {
        struct point nearest[2];
        bool is_in = flat_contains(outline, polygons[i].corners[0], 0) &&
                     flat_distance(&polygons[i], &ring, nearest) > 0;
        if (is_in ? !add_part(&cutting, polygons[i])
                  : !cut_one(&cutting, geos, outline, &polygons[i]))
            return false;
    }
    *parts = cutting.parts;
    *count = cutting.count;
    return true;
}

/* How far a piece may stay from an edge and still touch it: rounding in the difference, m. */
static const double TOUCH = 1e-7;

static bool touches_any(struct layout_geos *geos, const GEOSGeometry *piece,
                        const GEOSGeometry *ends)
{
    double distance = 1;
    return GEOSDistance_r(geos->context, piece, ends, &distance) == 1 && distance <= TOUCH;
}

static bool has_joining_piece(struct layout_geos *geos, const GEOSGeometry *left,
                              const GEOSGeometry *from, const GEOSGeometry *to)
{
    int count = GEOSGetNumGeometries_r(geos->context, left);
    for (int i = 0; i < count; i++) {
        const GEOSGeometry *piece = GEOSGetGeometryN_r(geos->context, left, i);
        if (piece != NULL && GEOSisEmpty_r(geos->context, piece) == 0 &&
            touches_any(geos, piece, from) && touches_any(geos, piece, to))
            return true;
    }
    return false;
}

bool layout_geos_is_joined(bool *is_joined, struct layout_geos *geos, const struct shape *outline,
                           const struct shape *barriers, size_t barrier_count,
                           const struct shape *from, size_t from_count, const struct shape *to,
                           size_t to_count, double radius)
{
    GEOSGeometry *all = collection_of(geos, barriers, barrier_count);
    GEOSGeometry *wide =
        all != NULL ? GEOSBuffer_r(geos->context, all, radius, CHORDS_A_QUARTER) : NULL;
    GEOSGeometry *polygon = geometry_of(geos, outline);
    GEOSGeometry *left =
        wide != NULL && polygon != NULL ? GEOSDifference_r(geos->context, polygon, wide) : NULL;
    GEOSGeometry *start = collection_of(geos, from, from_count);
    GEOSGeometry *end = collection_of(geos, to, to_count);
    bool is_good = left != NULL && start != NULL && end != NULL;
    *is_joined = is_good && has_joining_piece(geos, left, start, end);
    drop(geos, end);
    drop(geos, start);
    drop(geos, left);
    drop(geos, polygon);
    drop(geos, wide);
    drop(geos, all);
    return is_good;
}
