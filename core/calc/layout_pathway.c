#include "layout_pathway.h"

#include <math.h>
#include <string.h>

#include "layout_arcs.h"

enum { PAIR_COUNT = 2 };

/* What stands in the way and how far it is apart. Nodes: the side arcs, then the things. */
struct pathway_graph {
    struct pathway_arcs arcs;
    struct pathway_roof roof;
    struct shape *nodes;
    size_t side_count, node_count;
    double *gaps;      /* node_count × node_count */
    bool *is_doubtful; /* the gap leads outside the roof over an eave or a ridge */
};

static double *gap_at(const struct pathway_graph *graph, size_t a, size_t b)
{
    return &graph->gaps[a * graph->node_count + b];
}

/* Does the way between two nearest points leave the roof over an open side? One that crosses a
 * closed side does not matter: that side is nearer to both. */
static bool leads_outside(const struct pathway_graph *graph, struct point p, struct point q)
{
    const struct pathway_roof *roof = &graph->roof;
    struct shape outline = {roof->corners, roof->count, true};
    struct point middle = {(p.x + q.x) / 2, (p.y + q.y) / 2};
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
    *gap_at(graph, a, b) = *gap_at(graph, b, a) = gap;
    graph->is_doubtful[a * graph->node_count + b] = is_doubtful;
    graph->is_doubtful[b * graph->node_count + a] = is_doubtful;
}

static void measure_gap(struct pathway_graph *graph, size_t a, size_t b)
{
    struct point nearest[2];
    if (a < graph->side_count && b < graph->side_count) {
        measure_sides(graph, a, b);
        return;
    }
    double gap = flat_distance(&graph->nodes[a], &graph->nodes[b], nearest);
    bool is_doubtful = gap > 0 && leads_outside(graph, nearest[0], nearest[1]);
    *gap_at(graph, a, b) = *gap_at(graph, b, a) = gap;
    graph->is_doubtful[a * graph->node_count + b] = is_doubtful;
    graph->is_doubtful[b * graph->node_count + a] = is_doubtful;
}

struct pathway_graph *pathway_graph_new(const struct pathway_roof *roof, struct arena *arena)
{
    struct pathway_graph *graph = arena_take(arena, sizeof *graph);
    if (graph == NULL || !pathway_arcs_make(&graph->arcs, roof, arena))
        return NULL;
    graph->roof = *roof;
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

/* How a chain of gaps is weighed. */
struct weighing {
    double strip; /* > 0: strips of this width are counted; 0: the widest gap is sought */
    bool skips_doubtful;
    size_t node_count; /* only the first nodes: the sides, or all */
};

static double extend(const struct pathway_graph *graph, const struct weighing *weighing,
                     double so_far, size_t from, size_t to)
{
    double gap = *gap_at(graph, from, to);
    if (weighing->skips_doubtful && graph->is_doubtful[from * graph->node_count + to])
        return INFINITY;
    if (weighing->strip > 0)
        return so_far + floor((gap + LAYOUT_POINT) / weighing->strip);
    return fmax(so_far, gap);
}

/* Side arcs first..last round the outline. */
struct bank {
    size_t first, last;
};

static bool is_on_bank(const struct pathway_graph *graph, struct bank bank, size_t node)
{
    size_t count = graph->side_count;
    return node < count &&
           (node + count - bank.first) % count <= (bank.last + count - bank.first) % count;
}

struct search {
    const struct pathway_graph *graph;
    const struct weighing *weighing;
    double *best;
    bool *is_done;
};

/* The lightest chain from one bank to the other (shortest path on a dense graph). */
static double lightest_chain(struct search *search, struct bank left, struct bank right)
{
    size_t count = search->weighing->node_count;
    double *best = search->best;
    for (size_t i = 0; i < count; i++) {
        best[i] = is_on_bank(search->graph, left, i) ? 0 : INFINITY;
        search->is_done[i] = false;
    }
    for (;;) {
        size_t nearest = count;
        for (size_t i = 0; i < count; i++)
            if (!search->is_done[i] && (nearest == count || best[i] < best[nearest]))
                nearest = i;
        if (nearest == count || isinf(best[nearest]))
            return INFINITY;
        if (is_on_bank(search->graph, right, nearest))
            return best[nearest];
        search->is_done[nearest] = true;
        for (size_t i = 0; i < count; i++)
            if (!search->is_done[i])
                best[i] = fmin(best[i],
                               extend(search->graph, search->weighing, best[nearest], nearest, i));
    }
}

/* Where open arcs of one type give way to the other: the side arc between; how often. */
static size_t find_turns(const struct pathway_arcs *arcs, size_t *from_to, size_t *to_from)
{
    size_t turns = 0;
    for (size_t i = 0; i < arcs->count; i++) {
        enum arc_type here = arcs->open[i].type, next = arcs->open[(i + 1) % arcs->count].type;
        if (here == next)
            continue;
        *(here == ARC_FROM ? from_to : to_from) = (i + 1) % arcs->count;
        turns++;
    }
    return turns;
}

/* The weight of the lightest chain that parts every eave from every ridge. Where eaves and ridges
 * alternate round the outline: the heaviest over all pairs of them, so a count is a least one. */
static bool weigh(double *weight, const struct pathway_graph *graph,
                  const struct weighing *weighing, struct arena *scratch)
{
    struct search search = {graph, weighing,
                            arena_take(scratch, graph->node_count * sizeof(double)),
                            arena_take(scratch, graph->node_count * sizeof(bool))};
    const struct pathway_arcs *arcs = &graph->arcs;
    size_t count = arcs->count, left = 0, right = 0;
    *weight = 0;
    if (search.best == NULL || search.is_done == NULL)
        return false;
    if (find_turns(arcs, &left, &right) == 2) {
        *weight = lightest_chain(&search, (struct bank){left, left}, (struct bank){right, right});
        return true;
    }
    for (size_t i = 0; i < count; i++)
        for (size_t j = 0; j < count; j++)
            if (arcs->open[i].type == ARC_FROM && arcs->open[j].type == ARC_TO)
                *weight = fmax(*weight, lightest_chain(&search, (struct bank){(i + 1) % count, j},
                                                       (struct bank){(j + 1) % count, i}));
    return true;
}

/* Does a strip of this width fit, by erosion and connectivity? */
static bool is_wide(bool *is, const struct pathway_graph *graph, struct layout_geos *geos,
                    double width, struct shape *ends)
{
    size_t from_count = 0, to_count = 0, count = graph->arcs.count;
    struct shape *from = ends, *to = ends + count;
    for (size_t i = 0; i < count; i++)
        if (graph->arcs.open[i].type == ARC_FROM)
            from[from_count++] = graph->arcs.open[i].shape;
        else
            to[to_count++] = graph->arcs.open[i].shape;
    struct shape outline = {graph->roof.corners, graph->roof.count, true};
    return layout_geos_is_joined(is, geos, &outline, graph->nodes, graph->node_count, from,
                                 from_count, to, to_count, width / 2);
}

static bool has_apex(const struct pathway_arcs *arcs)
{
    for (size_t i = 0; i < arcs->count; i++)
        if (arcs->open[i].is_apex)
            return true;
    return false;
}

static bool bisect(double *width, const struct pathway_graph *graph, struct layout_geos *geos,
                   double low, double high, struct arena *scratch)
{
    struct shape *ends = arena_take(scratch, 2 * graph->arcs.count * sizeof *ends);
    if (ends == NULL)
        return false;
    while (high - low > LAYOUT_POINT) {
        bool is = false;
        if (!is_wide(&is, graph, geos, (low + high) / 2, ends))
            return false;
        if (is)
            low = (low + high) / 2;
        else
            high = (low + high) / 2;
    }
    *width = low;
    return true;
}

bool pathway_width(double *width, double *bare, const struct pathway_graph *graph,
                   struct layout_geos *geos, struct arena *scratch)
{
    struct weighing all = {0, false, graph->node_count}, sure = {0, true, graph->node_count};
    struct weighing sides = {0, false, graph->side_count};
    double most = 0;
    if (!weigh(width, graph, &all, scratch) || !weigh(&most, graph, &sure, scratch) ||
        !weigh(bare, graph, &sides, scratch))
        return false;
    most = fmin(most, *bare);
    /* Gaps that lead outside may part less than they seem to: the truth lies between. */
    if (most - *width <= LAYOUT_POINT || has_apex(&graph->arcs))
        return true;
    return bisect(width, graph, geos, *width, most, scratch);
}

bool pathway_count(size_t *count, const struct pathway_graph *graph, double width,
                   struct arena *scratch)
{
    struct weighing weighing = {width, false, graph->node_count};
    double weight = 0;
    if (!weigh(&weight, graph, &weighing, scratch))
        return false;
    *count = weight < 1e6 ? (size_t)weight : 1000000;
    return true;
}
