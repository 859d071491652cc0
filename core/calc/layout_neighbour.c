#include "layout_neighbour.h"

#include <math.h>
#include <string.h>

static struct point between(struct point a, struct point b, double share)
{
    return (struct point){a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
}

/* A side in plan. */
struct run {
    struct point from, to;
    double length;
};

static struct run run_of(const struct layout_plane *plane, size_t side)
{
    struct run run = {layout_in_plan(plane, plane->corners[side]),
                      layout_in_plan(plane, plane->corners[side + 1]), 0};
    run.length = flat_length(run.from, run.to);
    return run;
}

/* Where a point lies along a run (share of its length) and how far beside it (m). */
static double along(const struct run *run, struct point at, double *beside)
{
    double dx = (run->to.x - run->from.x) / run->length,
           dy = (run->to.y - run->from.y) / run->length;
    double px = at.x - run->from.x, py = at.y - run->from.y;
    *beside = fabs(dx * py - dy * px);
    return (px * dx + py * dy) / run->length;
}

/* The stretch that two sides share; they run against each other, since either roof lies to the left
 * of its own. Returns its length in plan, 0: none. */
static double shared(struct layout_joint *joint, const struct layout_plane *plane, size_t side,
                     const struct layout_plane *other, size_t other_side)
{
    struct run run = run_of(plane, side), against = run_of(other, other_side);
    double beside_from, beside_to;
    if (run.length < LAYOUT_JOINT_LENGTH || against.length < LAYOUT_JOINT_LENGTH)
        return 0;
    double begin = along(&run, against.to, &beside_to),
           end = along(&run, against.from, &beside_from);
    double from = fmax(begin, 0), to = fmin(end, 1);
    if (fmax(beside_from, beside_to) > LAYOUT_JOINT_SLACK ||
        (to - from) * run.length < LAYOUT_JOINT_LENGTH)
        return 0;
    double beside;
    const struct point *a = plane->corners, *b = other->corners;
    struct point plan_start = between(run.from, run.to, from);
    struct point plan_end = between(run.from, run.to, to);
    joint->side = side;
    joint->other_side = other_side;
    joint->start = between(a[side], a[side + 1], from);
    joint->end = between(a[side], a[side + 1], to);
    joint->other_start =
        between(b[other_side], b[other_side + 1], along(&against, plan_start, &beside));
    joint->other_end =
        between(b[other_side], b[other_side + 1], along(&against, plan_end, &beside));
    return (to - from) * run.length;
}

double layout_side_joint(struct layout_joint *joint, const struct layout_plane *plane, size_t side,
                         const struct layout_plane *other)
{
    double longest = 0;
    for (size_t j = 0; j < other->count; j++) {
        struct layout_joint found;
        double length = shared(&found, plane, side, other, j);
        if (length <= longest)
            continue;
        longest = length;
        *joint = found;
    }
    return longest;
}

bool layout_find_joint(struct layout_joint *joint, const struct layout_plane *plane,
                       const struct layout_plane *other, const char *across)
{
    double longest = 0;
    for (size_t i = 0; i < plane->count; i++) {
        struct layout_joint found;
        if (across != NULL && strcmp(plane->edges[i], across) != 0)
            continue;
        double length = layout_side_joint(&found, plane, i, other);
        if (length <= longest)
            continue;
        longest = length;
        *joint = found;
    }
    return longest > 0;
}

/* The motion that lays the other plane beside the first. */
struct motion {
    double cosine, sine;
    struct point from, to;
};

static struct motion motion_of(const struct layout_joint *joint)
{
    double angle =
        atan2(joint->end.y - joint->start.y, joint->end.x - joint->start.x) -
        atan2(joint->other_end.y - joint->other_start.y, joint->other_end.x - joint->other_start.x);
    return (struct motion){cos(angle), sin(angle), joint->other_start, joint->start};
}

static struct point moved(const struct motion *motion, struct point at)
{
    double dx = at.x - motion->from.x, dy = at.y - motion->from.y;
    return (struct point){motion->to.x + dx * motion->cosine - dy * motion->sine,
                          motion->to.y + dx * motion->sine + dy * motion->cosine};
}

struct loop {
    struct point *corners;
    const char **edges;
    size_t count;
};

/* Walks a plane's rim from behind the joint round to before it. Stubs shorter than the joint's
 * slack are left out: they come from rounding in plan. */
static void add_rim(struct loop *loop, const struct layout_plane *plane, size_t side,
                    struct point leave, struct point come, const struct motion *motion)
{
    const struct point *c = plane->corners;
    size_t count = plane->count, next = (side + 1) % count;
    if (flat_length(leave, c[next]) > LAYOUT_JOINT_SLACK) {
        loop->corners[loop->count] = motion != NULL ? moved(motion, leave) : leave;
        loop->edges[loop->count++] = plane->edges[side];
    }
    bool has_stub = flat_length(c[side], come) > LAYOUT_JOINT_SLACK;
    for (size_t i = 0; i + 1 < count || (has_stub && i < count); i++) {
        size_t corner = (next + i) % count;
        loop->corners[loop->count] = motion != NULL ? moved(motion, c[corner]) : c[corner];
        loop->edges[loop->count++] = plane->edges[corner];
    }
}

static bool add_things(struct pathway_roof *roof, const struct layout_plane *plane,
                       const struct motion *motion, struct shape *things, struct arena *arena)
{
    size_t total = plane->module_count + plane->obstruction_count;
    for (size_t i = 0; i < total; i++) {
        bool is_module = i < plane->module_count;
        if (is_module && plane->modules[i].is_off_plane)
            continue;
        struct shape shape = is_module ? layout_module_shape(&plane->modules[i])
                                       : plane->obstructions[i - plane->module_count].shape;
        struct point *corners = arena_take(arena, shape.count * sizeof *corners);
        if (corners == NULL)
            return false;
        for (size_t j = 0; j < shape.count; j++)
            corners[j] = motion != NULL ? moved(motion, shape.corners[j]) : shape.corners[j];
        things[roof->thing_count++] = (struct shape){corners, shape.count, true};
    }
    return true;
}

bool layout_unfold(struct pathway_roof *roof, const struct layout_plane *plane,
                   const struct layout_plane *other, const struct layout_joint *joint,
                   struct arena *arena)
{
    struct motion motion = motion_of(joint);
    size_t most = plane->count + other->count + 4;
    size_t things = plane->module_count + plane->obstruction_count + other->module_count +
                    other->obstruction_count;
    struct loop loop = {arena_take(arena, (most + 1) * sizeof(struct point)),
                        arena_take(arena, most * sizeof(char *)), 0};
    struct shape *shapes = arena_take(arena, things * sizeof *shapes);
    *roof = (struct pathway_roof){NULL, NULL, 0, NULL, 0};
    if (loop.corners == NULL || loop.edges == NULL || shapes == NULL)
        return false;
    /* Against the clock: round the first from the joint's end to its start, then round the other.
     */
    add_rim(&loop, plane, joint->side, joint->end, joint->start, NULL);
    add_rim(&loop, other, joint->other_side, joint->other_start, joint->other_end, &motion);
    loop.corners[loop.count] = loop.corners[0];
    if (!add_things(roof, plane, NULL, shapes, arena) ||
        !add_things(roof, other, &motion, shapes, arena))
        return false;
    roof->corners = loop.corners;
    roof->edges = loop.edges;
    roof->count = loop.count;
    roof->things = shapes;
    return true;
}
