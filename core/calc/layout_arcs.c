#include "layout_arcs.h"

#include <math.h>
#include <string.h>

/* One piece of the rim before like neighbours are joined: a side, or a corner that counts alone. */
struct piece {
    enum arc_type type;
    size_t start, sides;
    bool is_apex;
};

struct pieces {
    struct piece *items;
    size_t count;
};

static bool is_level_at(const struct pathway_roof *roof, size_t side, double y)
{
    return fabs(roof->corners[side].y - y) <= LAYOUT_POINT &&
           fabs(roof->corners[side + 1].y - y) <= LAYOUT_POINT;
}

/* Marks the sides of a kind. Without any: those at a height; without those, the corner there. */
static void mark(enum arc_type *sides, enum arc_type *corners, const struct pathway_roof *roof,
                 enum arc_type type, const char *kind, size_t farthest)
{
    double y = roof->corners[farthest].y;
    bool is_marked = false;
    for (size_t i = 0; i < roof->count; i++)
        if (strcmp(roof->edges[i], kind) == 0 && sides[i] == ARC_SIDE) {
            sides[i] = type;
            is_marked = true;
        }
    for (size_t i = 0; !is_marked && i < roof->count; i++)
        if (sides[i] == ARC_SIDE || type == ARC_TO)
            sides[i] = is_level_at(roof, i, y) ? type : sides[i];
    for (size_t i = 0; i < roof->count; i++)
        is_marked = is_marked || sides[i] == type;
    if (!is_marked)
        corners[farthest] = type;
}

static void mark_all(enum arc_type *sides, enum arc_type *corners, const struct pathway_roof *roof)
{
    size_t lowest = 0, highest = 0;
    for (size_t i = 0; i < roof->count; i++) {
        lowest = roof->corners[i].y < roof->corners[lowest].y ? i : lowest;
        highest = roof->corners[i].y > roof->corners[highest].y ? i : highest;
    }
    mark(sides, corners, roof, ARC_TO, "ridge", highest);
    mark(sides, corners, roof, ARC_FROM, "eave", lowest);
}

/* An eave that meets a ridge: the corner between them is a side of no length. */
static void add_piece(struct pieces *pieces, struct piece piece)
{
    const struct piece *last = pieces->count > 0 ? &pieces->items[pieces->count - 1] : NULL;
    if (last != NULL && last->type != piece.type && last->type != ARC_SIDE &&
        piece.type != ARC_SIDE)
        pieces->items[pieces->count++] = (struct piece){ARC_SIDE, piece.start, 0, false};
    pieces->items[pieces->count++] = piece;
}

static void cut_rim(struct pieces *pieces, const struct pathway_roof *roof,
                    const enum arc_type *sides, const enum arc_type *corners)
{
    for (size_t i = 0; i < roof->count; i++) {
        if (corners[i] != ARC_SIDE)
            add_piece(pieces, (struct piece){corners[i], i, 0, true});
        add_piece(pieces, (struct piece){sides[i], i, 1, false});
    }
    const struct piece *first = &pieces->items[0], *last = &pieces->items[pieces->count - 1];
    if (first->type != last->type && first->type != ARC_SIDE && last->type != ARC_SIDE)
        pieces->items[pieces->count++] = (struct piece){ARC_SIDE, 0, 0, false};
}

/* Joins like neighbours into arcs, beginning with a side. `rim` goes round twice. */
static void join(struct pathway_arcs *arcs, const struct pieces *pieces, const struct point *rim)
{
    size_t count = pieces->count, begin = 0;
    while (pieces->items[begin].type != ARC_SIDE ||
           pieces->items[(begin + count - 1) % count].type == ARC_SIDE)
        begin++;
    for (size_t i = 0; i < count;) {
        const struct piece *first = &pieces->items[(begin + i) % count];
        size_t length = 0;
        bool is_apex = true;
        for (; i < count && pieces->items[(begin + i) % count].type == first->type; i++) {
            length += pieces->items[(begin + i) % count].sides;
            is_apex = is_apex && pieces->items[(begin + i) % count].is_apex;
        }
        struct shape shape = {&rim[first->start], length + 1, false};
        if (first->type == ARC_SIDE)
            arcs->sides[arcs->count] = shape;
        else
            arcs->open[arcs->count++] = (struct pathway_arc){first->type, shape, is_apex};
    }
}

bool pathway_arcs_make(struct pathway_arcs *arcs, const struct pathway_roof *roof,
                       struct arena *arena)
{
    size_t count = roof->count, most = 3 * count + 2;
    enum arc_type *sides = arena_take(arena, count * sizeof *sides);
    enum arc_type *corners = arena_take(arena, count * sizeof *corners);
    struct point *rim = arena_take(arena, (2 * count + 1) * sizeof *rim);
    struct pieces pieces = {arena_take(arena, most * sizeof(struct piece)), 0};
    arcs->sides = arena_take(arena, most * sizeof *arcs->sides);
    arcs->open = arena_take(arena, most * sizeof *arcs->open);
    if (sides == NULL || corners == NULL || rim == NULL || pieces.items == NULL ||
        arcs->sides == NULL || arcs->open == NULL)
        return false;
    for (size_t i = 0; i <= 2 * count; i++)
        rim[i] = roof->corners[i % count];
    mark_all(sides, corners, roof);
    cut_rim(&pieces, roof, sides, corners);
    join(arcs, &pieces, rim);
    arcs->side_types = sides;
    return true;
}
