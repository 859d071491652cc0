#include "layout_gap.h"

#include <math.h>

enum { PAIR_COUNT = 2 };

static void set_gap(struct pathway_graph *graph, size_t a, size_t b, double gap, bool is_doubtful)
{
    size_t there = a * graph->node_count + b, back = b * graph->node_count + a;
    graph->gaps[there] = graph->gaps[back] = gap;
    graph->is_doubtful[there] = graph->is_doubtful[back] = is_doubtful;
    graph->has_doubt = graph->has_doubt || is_doubtful;
}

/* Things are cut at the outline, so between two of them a convex roof has no outside. */
static bool is_convex(const struct pathway_roof *roof)
{
    for (size_t i = 0; i < roof->count; i++) {
        struct point three[3] = {roof->corners[i], roof->corners[i + 1],
                                 roof->corners[(i + 2) % roof->count]};
        if (flat_area(three, 3) < 0)
            return false;
    }
    return true;
}

/* Does the way between two nearest points leave the roof over an open side? One that crosses a
 * closed side does not matter: that side is nearer to both. */
static bool leads_outside(const struct pathway_graph *graph, struct point p, struct point q)
{
    const struct pathway_roof *roof = &graph->roof;
    struct shape outline = {roof->corners, roof->count, true};
    struct point middle = {(p.x + q.x) / 2, (p.y + q.y) / 2};
    if (graph->is_convex)
        return false;
    bool is_outside = !flat_contains(&outline, middle, 1e-6);
    for (size_t i = 0; i < roof->count; i++) {
        if (!flat_crosses(p, q, roof->corners[i], roof->corners[i + 1]))
            continue;
        if (graph->arcs.side_types[i] == ARC_SIDE)
            return false;
        is_outside = true;
    }
    return is_outside;
}

/* The lesser distance of a point on the base from two side arcs. */
static double lesser_at(const struct shape *before, const struct shape *after, double share)
{
    struct point from = before->corners[0], to = after->corners[after->count - 1];
    struct point at = {from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)};
    struct shape point = {&at, 1, false};
    struct point nearest[2];
    return fmin(flat_distance(&point, before, nearest), flat_distance(&point, after, nearest));
}

enum { BASE_STEPS = 64, BASE_THIRDS = 40 };

/* Two side arcs that meet in an apex: as wide as the largest disc whose centre lies on the base
 * between their feet. */
static double apex_width(const struct shape *before, const struct shape *after)
{
    int best = 0;
    double widest = 0;
    for (int i = 0; i <= BASE_STEPS; i++) {
        double here = lesser_at(before, after, (double)i / BASE_STEPS);
        best = here > widest ? i : best;
        widest = fmax(widest, here);
    }
    double low = fmax(0, (double)(best - 1) / BASE_STEPS);
    double high = fmin(1, (double)(best + 1) / BASE_STEPS);
    for (int i = 0; i < BASE_THIRDS; i++) {
        double one = low + (high - low) / 3, two = high - (high - low) / 3;
        if (lesser_at(before, after, one) >= lesser_at(before, after, two))
            high = two;
        else
            low = one;
    }
    if (widest > 0)
        return 2 * fmax(widest, lesser_at(before, after, (low + high) / 2));
    for (size_t i = 0; i < before->count; i++) { /* a corner at either end: as wide as between */
        struct shape corner = {&before->corners[i], 1, false};
        struct point nearest[2];
        widest = fmax(widest, flat_distance(&corner, after, nearest));
    }
    return widest;
}

/* Two side arcs with one open arc between them; they are numbered so that open arc k follows side
 * k. */
static void measure_sides(struct pathway_graph *graph, size_t a, size_t b)
{
    size_t count = graph->side_count;
    struct point nearest[2];
    double gap = flat_distance(&graph->nodes[a], &graph->nodes[b], nearest);
    bool is_doubtful = gap > 0 && leads_outside(graph, nearest[0], nearest[1]);
    for (size_t turn = 0; turn < PAIR_COUNT; turn++) {
        size_t before = turn == 0 ? a : b, after = turn == 0 ? b : a;
        if ((before + 1) % count != after)
            continue;
        const struct pathway_arc *open = &graph->arcs.open[before];
        const struct point *corners = open->shape.corners;
        if (open->is_apex)
            gap = apex_width(&graph->nodes[before], &graph->nodes[after]);
        else if (is_doubtful && count > PAIR_COUNT && open->shape.count == 2)
            gap = flat_length(corners[0], corners[1]);
        else
            continue;
        is_doubtful = false;
        break;
    }
    set_gap(graph, a, b, gap, is_doubtful);
}

static void measure_gap(struct pathway_graph *graph, size_t a, size_t b)
{
    struct point nearest[2];
    if (a < graph->side_count && b < graph->side_count) {
        measure_sides(graph, a, b);
        return;
    }
    double gap;
    if (graph->is_convex && flat_boxes_distance(&gap, &graph->nodes[a], &graph->nodes[b])) {
        set_gap(graph, a, b, gap, false);
        return;
    }
    gap = flat_distance(&graph->nodes[a], &graph->nodes[b], nearest);
    bool is_doubtful = gap > 0 && leads_outside(graph, nearest[0], nearest[1]);
    set_gap(graph, a, b, gap, is_doubtful);
}

struct pathway_graph *pathway_graph_new(const struct pathway_roof *roof, struct arena *arena)
{
    struct pathway_graph *graph = arena_take(arena, sizeof *graph);
    if (graph == NULL || !pathway_arcs_make(&graph->arcs, roof, arena))
        return NULL;
    graph->roof = *roof;
    graph->is_convex = is_convex(roof);
    graph->side_count = graph->arcs.count;
    graph->node_count = graph->side_count + roof->thing_count;
    size_t count = graph->node_count;
    graph->nodes = arena_take(arena, count * sizeof *graph->nodes);
    graph->gaps = arena_take(arena, count * count * sizeof *graph->gaps);
    graph->is_doubtful = arena_take(arena, count * count * sizeof *graph->is_doubtful);
    if (graph->nodes == NULL || graph->gaps == NULL || graph->is_doubtful == NULL)
        return NULL;
    for (size_t i = 0; i < count; i++)
        graph->nodes[i] =
            i < graph->side_count ? graph->arcs.sides[i] : roof->things[i - graph->side_count];
    for (size_t i = 0; i < count; i++)
        for (size_t j = 0; j < i; j++)
            measure_gap(graph, i, j);
    return graph;
}
