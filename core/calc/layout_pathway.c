#include "layout_pathway.h"

#include <math.h>

#include "layout_gap.h"

/* How a chain of gaps is weighed. */
struct weighing {
    double strip; /* > 0: strips of this width are counted; 0: the widest gap is sought */
    bool skips_doubtful;
    size_t node_count; /* only the first nodes: the sides, or all */
};

static double extend(const struct pathway_graph *graph, const struct weighing *weighing,
                     double so_far, size_t from, size_t to)
{
    double gap = graph->gaps[from * graph->node_count + to];
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
    if (!weigh(width, graph, &all, scratch) || !weigh(bare, graph, &sides, scratch))
        return false;
    if (!graph->has_doubt)
        return true;
    if (!weigh(&most, graph, &sure, scratch))
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
