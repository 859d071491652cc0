/* Planes drawn over each other: the area that two share, which plane is told of which, and how few
 * pairs are looked at where planes only lie beside each other. */
#include "layout_plane.h"

#include <math.h>

#include "../layout/roof_trial.h"
#include "check.h"

static size_t measured;

double __real_flat_shared_area(const struct shape *a, const struct shape *b);
double __wrap_flat_shared_area(const struct shape *a, const struct shape *b);
double __wrap_flat_shared_area(const struct shape *a, const struct shape *b)
{
    measured++;
    return __real_flat_shared_area(a, b);
}

static double share_of_one(unsigned *seed)
{
    *seed = *seed * 1103515245u + 12345u;
    return (*seed >> 8 & 0xFFFF) / 65536.0;
}

/* What GEOS says of the same. */
static double shared_by_union(struct layout_geos *geos, const struct shape *a,
                              const struct shape *b)
{
    const struct shape both[] = {*a, *b};
    double together = 0;
    CHECK(layout_geos_union_area(&together, geos, both, 2), "there is a union");
    return fabs(flat_area(a->corners, a->count)) + fabs(flat_area(b->corners, b->count)) - together;
}

/* A star, either way round: it is simple, and often not convex. */
static size_t star(struct point *corners, unsigned *seed)
{
    size_t count = 3 + (size_t)(share_of_one(seed) * 9);
    double x = share_of_one(seed) * 6, y = share_of_one(seed) * 6 - 40;
    double turn = (share_of_one(seed) < 0.5 ? -2 : 2) * acos(-1) / (double)count;
    for (size_t i = 0; i < count; i++) {
        double far = 0.5 + 5 * share_of_one(seed), angle = turn * (double)i;
        corners[i] = (struct point){x + far * cos(angle), y + far * sin(angle)};
    }
    return count;
}

static void test_shared_area(void)
{
    struct point box[] = {{0, 0}, {4, 0}, {4, 3}, {0, 3}};
    struct point shifted[] = {{3, 1}, {7, 1}, {7, 9}, {3, 9}};
    struct point beside[] = {{4, 0}, {8, 0}, {8, 3}, {4, 3}};
    struct point fork[] = {{1, 1}, {9, 1}, {9, 8}, {6, 8}, {6, 2}, {3, 2}, {3, 8}, {1, 8}};
    struct shape a = {box, 4, true}, b = {shifted, 4, true}, c = {beside, 4, true},
                 d = {fork, 8, true};
    CHECK_NEAR(flat_shared_area(&a, &a), 12, 1e-12, "with itself");
    CHECK_NEAR(flat_shared_area(&a, &b), 2, 1e-12, "a corner");
    CHECK_NEAR(flat_shared_area(&a, &c), 0, 1e-12, "a side");
    CHECK_NEAR(flat_shared_area(&a, &d), 5, 1e-12, "the gap of a fork is none of it");
    struct layout_geos *geos = layout_geos_new();
    unsigned seed = 7;
    size_t crossing = 0;
    double worst = 0;
    for (size_t i = 0; i < 2000; i++) {
        struct point one[12], other[12];
        struct shape p = {one, star(one, &seed), true}, q = {other, star(other, &seed), true};
        double area = flat_shared_area(&p, &q);
        worst = fmax(worst, fabs(area - shared_by_union(geos, &p, &q)));
        crossing += area > 0.1;
    }
    layout_geos_free(geos);
    CHECK(crossing > 1000, "most of them lie over each other");
    CHECK(worst < 1e-9, "as by a union of both");
}

/* Many planes, and what is told of them. */
struct many {
    struct trial trial;
    struct layout_fault *faults;
    size_t count;
};

static struct many many_new(void)
{
    return (struct many){.trial = trial_new()};
}

static struct object *add_box_plane(struct many *many, double width, double length, double slope)
{
    const double box[][2] = {{0, 0}, {width, 0}, {width, length}, {0, length}};
    return add_plane(&many->trial, name_it(&many->trial, "p"), box, 4, "eave rake ridge rake",
                     slope);
}

static void look(struct many *many)
{
    measured = 0;
    trial_link(&many->trial);
    CHECK(layout_check(&many->faults, &many->count, many->trial.design, many->trial.arena),
          "there is memory");
}

enum { MANY = 600 };

/* Strips side by side that run aslant: an upright box round one meets those of all others. */
static void test_strips_aslant(void)
{
    const double turns[] = {225, 200, 217.5};
    for (size_t k = 0; k < sizeof turns / sizeof *turns; k++) {
        struct many many = many_new();
        double azimuth = turns[k] * acos(-1) / 180, apart = 0.5 * cos(0.1);
        for (size_t i = 0; i < MANY; i++)
            place_in_plan(add_box_plane(&many, 60, 0.5, 0.1), -sin(azimuth) * apart * (double)i,
                          -cos(azimuth) * apart * (double)i, azimuth);
        look(&many);
        CHECK(many.count == 0, "planes beside each other are not told");
        CHECK(measured < 20 * MANY, "and each is held against few others");
        trial_free(&many.trial);
    }
}

static void test_rows_of_boxes(void)
{
    struct many many = many_new();
    for (size_t i = 0; i < MANY; i++)
        place_in_plan(add_box_plane(&many, 10, 5, 0.5), 10 * (double)(i % 25),
                      5 * cos(0.5) * (double)(i / 25), acos(-1));
    look(&many);
    CHECK(many.count == 0 && measured < 20 * MANY, "a field of boxes");
    trial_free(&many.trial);
}

/* The first before it that a plane lies over, by the union of both; NULL: none. */
static const struct object *first_below(struct trial *trial, struct layout_geos *geos, size_t at)
{
    struct object *const *planes = trial->design->of_kind[KIND_roof_plane].items;
    struct layout_plane *plane, *other;
    for (size_t i = 0; i < at; i++) {
        struct point corners[2][4];
        struct shape a = {corners[0], 4, true}, b = {corners[1], 4, true};
        working_start(&trial->working);
        CHECK(
            layout_plane_open(&plane, planes[at], LAYOUT_OUTLINE | LAYOUT_PLAN, &trial->working) &&
                layout_plane_open(&other, planes[i], LAYOUT_OUTLINE | LAYOUT_PLAN, &trial->working),
            "they are open");
        for (size_t j = 0; j < 4; j++) {
            corners[0][j] = layout_in_plan(plane, plane->corners[j]);
            corners[1][j] = layout_in_plan(other, other->corners[j]);
        }
        double faces = plane->plan_up.x * other->plan_up.x + plane->plan_up.y * other->plan_up.y;
        double smaller = fmin(fabs(flat_area(a.corners, 4)), fabs(flat_area(b.corners, 4)));
        if (faces >= cos(acos(-1) / 4) && shared_by_union(geos, &a, &b) > 0.5 * smaller)
            return planes[i];
    }
    return NULL;
}

/* Planes of all sizes strewn about, most over some others: each is told of the first. */
static void test_strewn(void)
{
    struct layout_geos *geos = layout_geos_new();
    unsigned seed = 3;
    size_t told = 0, right = 0;
    struct many many = many_new();
    for (size_t i = 0; i < 300; i++) {
        struct object *plane = add_box_plane(&many, 1 + 9 * share_of_one(&seed),
                                             1 + 5 * share_of_one(&seed), share_of_one(&seed));
        double east = 60 * share_of_one(&seed), north = 60 * share_of_one(&seed);
        place_in_plan(plane, east, north, 2 * acos(-1) * share_of_one(&seed));
    }
    look(&many);
    struct trial *trial = &many.trial;
    trial->working.is_lasting = true;
    for (size_t i = 0; i < 300; i++) {
        const struct object *plane = trial->design->of_kind[KIND_roof_plane].items[i];
        const struct object *below = first_below(trial, geos, i);
        if (below == NULL)
            continue;
        right +=
            told < many.count && many.faults[told].object == plane &&
            strstr(many.faults[told].message,
                   arena_format(trial->arena, "lies over roof plane %s,", below->path)) != NULL;
        told++;
    }
    CHECK(told > 30 && told < 270, "some lie over others");
    CHECK(told == many.count && right == told, "each is told of the first, in order");
    layout_geos_free(geos);
    trial_free(trial);
}

/* What cannot be drawn is left out, and the others are still told. */
static void test_one_without_its_place(void)
{
    struct many many = many_new();
    struct object *nowhere = add_box_plane(&many, 10, 5, 0.5);
    for (size_t i = 0; i < 2; i++)
        place_in_plan(add_box_plane(&many, 10, 5, 0.5), 0, 0, acos(-1));
    nowhere->facts[SLOT_roof_plane_plan_origin].state = FACT_MISSING;
    look(&many);
    CHECK(many.count == 1, "the second of the two others");
    trial_free(&many.trial);
}

int main(void)
{
    test_shared_area();
    test_strips_aslant();
    test_rows_of_boxes();
    test_strewn();
    test_one_without_its_place();
    return checks_end();
}
