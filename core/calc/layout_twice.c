/* Planes drawn twice: one that lies over another which faces the same way. */
#include "layout_check_things.h"

#include <math.h>
#include <stdint.h>
#include <stdlib.h>

/* The most of the smaller that two planes of one facing may lie over each other: a roof may reach
 * out above another, but not over half of it. Our own choice. */
static const double most_shared = 0.5;

/* Ways in plan, evenly over half a turn: so a slanted plane is told from its neighbours, too. */
enum { WAYS = 8, EAST = 0, NORTH = WAYS / 2 };

/* How far something reaches each way. */
struct reach {
    double low[WAYS], high[WAYS];
};

/* A plane as it is seen from above. */
struct drawn {
    const struct layout_plane *plane;
    struct shape outline;
    double area;
    struct reach reach;
    uint32_t spot; /* near spots have near numbers, mostly */
    size_t at;     /* among the design's planes */
};

/* A stretch of the planes by their spots, halved again and again. */
struct stretch {
    struct reach reach;
    size_t first; /* the least `at` */
    const struct drawn *only;
    struct stretch *halves[2]; /* where there are more */
};

struct layout_twice {
    struct drawn **planes; /* by `at`; NULL: a fact is missing, which is told elsewhere */
    struct stretch *all;   /* NULL: there are none */
};

static struct reach reach_of(const struct shape *shape)
{
    struct reach reach;
    for (int way = 0; way < WAYS; way++) {
        double x = cos(acos(-1) * way / WAYS), y = sin(acos(-1) * way / WAYS);
        reach.low[way] = INFINITY;
        reach.high[way] = -INFINITY;
        for (size_t i = 0; i < shape->count; i++) {
            double along = shape->corners[i].x * x + shape->corners[i].y * y;
            reach.low[way] = fmin(reach.low[way], along);
            reach.high[way] = fmax(reach.high[way], along);
        }
    }
    return reach;
}

static struct reach reach_of_both(const struct reach *a, const struct reach *b)
{
    struct reach reach;
    for (int way = 0; way < WAYS; way++) {
        reach.low[way] = fmin(a->low[way], b->low[way]);
        reach.high[way] = fmax(a->high[way], b->high[way]);
    }
    return reach;
}

static bool is_apart(const struct reach *a, const struct reach *b)
{
    for (int way = 0; way < WAYS; way++)
        if (a->low[way] >= b->high[way] || b->low[way] >= a->high[way])
            return true;
    return false;
}

/* *out is NULL where a fact is missing. False: no memory. */
static bool draw(struct drawn **out, const struct objects *planes, size_t at,
                 struct working *working)
{
    struct layout_plane *plane;
    *out = NULL;
    working_start(working);
    if (!layout_plane_open(&plane, planes->items[at], LAYOUT_OUTLINE | LAYOUT_PLAN, working))
        return working->stop.kind != STOP_MEMORY;
    struct drawn *drawn = arena_take(working->arena, sizeof *drawn);
    if (drawn == NULL || !layout_plan_of(&drawn->outline, plane, working->layout))
        return false;
    drawn->plane = plane;
    drawn->area = fabs(flat_area(drawn->outline.corners, drawn->outline.count));
    drawn->reach = reach_of(&drawn->outline);
    drawn->at = at;
    *out = drawn;
    return true;
}

/* Where the middle of a reach lies in the whole, in 2^16 steps. */
static uint32_t step_of(const struct reach *reach, const struct reach *whole, int way)
{
    double middle = (reach->low[way] + reach->high[way]) / 2;
    double share = (middle - whole->low[way]) / (whole->high[way] - whole->low[way]);
    return (uint32_t)(fmin(fmax(share, 0), 1) * 0xFFFF);
}

/* The bits of both steps by turns. */
static uint32_t spot_of(const struct reach *reach, const struct reach *whole)
{
    uint32_t east = step_of(reach, whole, EAST), north = step_of(reach, whole, NORTH), spot = 0;
    for (int bit = 0; bit < 16; bit++)
        spot |= (east >> bit & 1) << (2 * bit) | (north >> bit & 1) << (2 * bit + 1);
    return spot;
}

static int compare_spots(const void *a, const void *b)
{
    const struct drawn *one = *(struct drawn *const *)a, *other = *(struct drawn *const *)b;
    if (one->spot != other->spot)
        return one->spot < other->spot ? -1 : 1;
    return one->at < other->at ? -1 : one->at > other->at;
}

/* NULL: no memory. */
static struct stretch *stretch_of(struct drawn *const *planes, size_t count, struct arena *arena)
{
    struct stretch *stretch = arena_take(arena, sizeof *stretch);
    if (stretch == NULL)
        return NULL;
    if (count == 1) {
        *stretch = (struct stretch){planes[0]->reach, planes[0]->at, planes[0], {NULL, NULL}};
        return stretch;
    }
    struct stretch *one = stretch_of(planes, count / 2, arena);
    struct stretch *other = stretch_of(planes + count / 2, count - count / 2, arena);
    if (one == NULL || other == NULL)
        return NULL;
    bool is_turned = other->first < one->first; /* what was drawn first is looked at first */
    stretch->reach = reach_of_both(&one->reach, &other->reach);
    stretch->halves[0] = is_turned ? other : one;
    stretch->halves[1] = is_turned ? one : other;
    stretch->first = stretch->halves[0]->first;
    return stretch;
}

bool layout_twice_open(struct layout_twice **out, const struct objects *planes,
                       struct working *working)
{
    struct arena *arena = working->arena;
    struct layout_twice *twice = arena_take(arena, sizeof *twice);
    struct drawn **sorted = arena_take(arena, planes->count * sizeof *sorted);
    size_t count = 0;
    *out = twice;
    if (twice == NULL || sorted == NULL)
        return false;
    twice->planes = arena_take(arena, planes->count * sizeof *twice->planes);
    if (twice->planes == NULL)
        return false;
    for (size_t i = 0; i < planes->count; i++) {
        if (!draw(&twice->planes[i], planes, i, working))
            return false;
        if (twice->planes[i] != NULL)
            sorted[count++] = twice->planes[i];
    }
    if (count == 0)
        return true;
    struct reach whole = sorted[0]->reach;
    for (size_t i = 1; i < count; i++)
        whole = reach_of_both(&whole, &sorted[i]->reach);
    for (size_t i = 0; i < count; i++)
        sorted[i]->spot = spot_of(&sorted[i]->reach, &whole);
    qsort(sorted, count, sizeof *sorted, compare_spots);
    twice->all = stretch_of(sorted, count, arena);
    return twice->all != NULL;
}

static bool is_over(const struct drawn *one, const struct drawn *other)
{
    const struct layout_plane *a = one->plane, *b = other->plane;
    double faces = a->plan_up.x * b->plan_up.x + a->plan_up.y * b->plan_up.y;
    if (faces < cos(acos(-1) / 4))
        return false;
    return flat_shared_area(&one->outline, &other->outline) >
           most_shared * fmin(one->area, other->area);
}

/* The first plane before *first that `drawn` lies over becomes *first and *found. */
static void find_first(const struct drawn **found, size_t *first, const struct stretch *stretch,
                       const struct drawn *drawn)
{
    if (stretch->first >= *first || is_apart(&stretch->reach, &drawn->reach))
        return;
    for (size_t i = 0; i < 2 && stretch->only == NULL; i++)
        find_first(found, first, stretch->halves[i], drawn);
    if (stretch->only == NULL || !is_over(drawn, stretch->only))
        return;
    *found = stretch->only;
    *first = stretch->first;
}

bool layout_check_twice(struct layout_faults *faults, const struct layout_twice *twice, size_t at)
{
    const struct drawn *drawn = twice->planes[at], *other = NULL;
    size_t before = at;
    if (drawn != NULL)
        find_first(&other, &before, twice->all, drawn);
    if (other == NULL)
        return true;
    return layout_fault_add(
        faults, drawn->plane->object, SLOT_roof_plane_plan_origin,
        arena_format(faults->arena,
                     "seen from above, roof plane %s lies over roof plane %s, which faces "
                     "the same way: `plan_origin` is where its (0, 0) lies in the plan, "
                     "`azimuth` the way down its slope; planes at one ridge face opposite "
                     "ways",
                     drawn->plane->object->path, other->plane->object->path),
        "plan_origin: [48 ft, 32.3 ft] with azimuth: 0°, for a plane behind a ridge 16.15 "
        "ft from an eave at [0 ft, 0 ft]");
}
