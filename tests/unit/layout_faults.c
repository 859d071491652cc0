/* Slips in the geometry that are told before any rule runs: what lies beside its plane or its rail,
 * and edges whose kind their place forbids. */
#include "layout.h"

#include <math.h>

#include "../layout/roof_trial.h"
#include "check.h"

static const double box_10_by_5[][2] = {{0, 0}, {10, 0}, {10, 5}, {0, 5}};
#define STEEP 0.5

static struct layout_fault *look(struct trial *trial, size_t *count)
{
    struct layout_fault *faults = NULL;
    *count = 0;
    trial_link(trial);
    CHECK(layout_check(&faults, count, trial->design, trial->arena), "there is memory");
    return faults;
}

/* The one fault that is expected, or none where `object` is NULL. */
static void check_one(struct trial *trial, const struct object *object, unsigned slot,
                      const char *part, const char *sentence)
{
    size_t count;
    const struct layout_fault *faults = look(trial, &count);
    if (object == NULL)
        CHECK(count == 0, sentence);
    else
        CHECK(count == 1 && faults[0].object == object && faults[0].slot == slot &&
                  strstr(faults[0].message, part) != NULL && faults[0].example != NULL,
              sentence);
    trial_free(trial);
}

static struct object *add_front(struct trial *trial, const char *edges, double slope)
{
    return add_plane(trial, "front", box_10_by_5, 4, edges, slope);
}

static void test_obstructions(void)
{
    const double far_off[][2] = {{20, 1}, {21, 1}, {21, 2}};
    struct trial trial = trial_new();
    add_box(&trial, add_front(&trial, "eave rake ridge rake", STEEP), 10, 1, 1, 1);
    check_one(&trial, NULL, 0, NULL, "one that touches the rim from outside may be a neighbour's");
    trial = trial_new();
    struct object *box =
        add_box(&trial, add_front(&trial, "eave rake ridge rake", STEEP), 10.01, 1, 1, 1);
    check_one(&trial, box, SLOT_obstruction_at, "does not lie on roof plane front", "1 cm off");
    trial = trial_new();
    struct object *shaped =
        add_obstruction(&trial, add_front(&trial, "eave rake ridge rake", STEEP));
    give_points(&trial, shaped, SLOT_obstruction_outline, far_off, 3);
    check_one(&trial, shaped, SLOT_obstruction_outline, "does not lie on", "one with an outline");
}

/* A rail that begins at (1, 2) and is 3 long. */
static struct object *railed(struct trial *trial, struct object **rail, bool runs_up)
{
    struct object *front = add_front(trial, "eave rake ridge rake", STEEP);
    give_word(trial->racking, SLOT_racking_rail_direction,
              runs_up ? "up the slope" : "across the slope");
    *rail = add_rail(trial, front, 1, 2, 3);
    return front;
}

static void test_rails(void)
{
    struct object *rail;
    struct trial trial = trial_new();
    struct object *front = railed(&trial, &rail, false);
    give_point(rail, SLOT_rail_at, -2.9, 2);
    add_attachment(&trial, front, rail, 0.05, 2);
    check_one(&trial, NULL, 0, NULL, "a rail that stands out past the rim still lies on the plane");
    trial = trial_new();
    front = railed(&trial, &rail, false);
    give_point(rail, SLOT_rail_at, -3.1, 2);
    check_one(&trial, rail, SLOT_rail_at, "the rail does not lie on", "0.1 m short of the plane");
    trial = trial_new();
    front = railed(&trial, &rail, true);
    give_point(rail, SLOT_rail_at, 1, -3.1);
    check_one(&trial, rail, SLOT_rail_at, "the rail does not lie on", "up the slope, too");
}

static void test_attachments(void)
{
    /* x, y, whether the rail runs up the slope, what is said */
    const struct {
        double x, y;
        bool runs_up;
        const char *part, *sentence;
    } rows[] = {
        {1, 2, false, NULL, "at the rail's end"},
        {4.04, 2.04, false, NULL, "a clamp's reach beside it"},
        {3, 2.06, false, "does not stand below rail", "further beside it"},
        {4.06, 2, false, "does not stand below rail", "past its end"},
        {0.94, 2, false, "does not stand below rail", "before its beginning"},
        {1, 4, true, NULL, "up the slope, below the rail"},
        {3, 2, true, "does not stand below rail", "up the slope, beside it"},
        {-0.01, 2, false, "the attachment does not lie on roof plane front", "past the rake"},
        {3, 5.01, false, "the attachment does not lie on roof plane front", "past the ridge"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct object *rail;
        struct trial trial = trial_new();
        struct object *front = railed(&trial, &rail, rows[i].runs_up);
        struct object *one = add_attachment(&trial, front, rail, rows[i].x, rows[i].y);
        check_one(&trial, rows[i].part != NULL ? one : NULL, SLOT_attachment_at, rows[i].part,
                  rows[i].sentence);
    }
    struct object *rail;
    struct trial trial = trial_new();
    struct object *front = railed(&trial, &rail, false);
    add_rail(&trial, front, 4, 2, 3); /* goes on where the first one ends */
    add_attachment(&trial, front, rail, 6, 2);
    check_one(&trial, NULL, 0, NULL, "rails in one line are one");
    trial = trial_new();
    front = add_front(&trial, "eave rake ridge rake", STEEP);
    add_attachment(&trial, front, NULL, 6, 2);
    check_one(&trial, NULL, 0, NULL, "one that carries modules directly needs no rail");
}

static void test_openings(void)
{
    for (int i = 0; i < 2; i++) {
        struct trial trial = trial_new();
        struct object *front = add_front(&trial, "eave rake ridge rake", STEEP);
        struct object *opening = add_thing(&trial, KIND_escape_opening, trial.design->root, "w");
        give_object(opening, SLOT_escape_opening_plane, front);
        give_point(opening, SLOT_escape_opening_at, i == 0 ? -0.9 : -1.1, 2);
        give_number(opening, SLOT_escape_opening_width, 1);
        check_one(&trial, i == 0 ? NULL : opening, SLOT_escape_opening_at, "lower edge",
                  i == 0 ? "one corner on the plane" : "none on it");
    }
}

static void test_edge_kinds(void)
{
    const struct {
        const char *edges;
        double slope;
        const char *part, *sentence;
    } rows[] = {
        {"eave rake ridge rake", STEEP, NULL, "a gable's side"},
        {"eave wall wall wall", STEEP, NULL, "walls may stand anywhere"},
        {"valley hip ridge hip", STEEP, NULL, "two planes may meet in a level valley"},
        {"ridge rake eave rake", STEEP, "cannot be a ridge, since the plane lies above it",
         "upside down"},
        {"eave rake eave rake", STEEP, "cannot be an eave, since the plane lies below it",
         "two eaves"},
        {"eave ridge rake rake", STEEP, "cannot be a ridge, since it runs up the slope",
         "a turn off"},
        {"eave rake hip rake", STEEP, "cannot be a hip, since it is level", "a level hip"},
        {"rake rake ridge rake", STEEP, "cannot be a rake, since it is level", "a level rake"},
        {"eave eave eave eave", 0.16, NULL, "on a roof that is all but flat edges bear any name"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct trial trial = trial_new();
        struct object *front = add_front(&trial, rows[i].edges, rows[i].slope);
        check_one(&trial, rows[i].part != NULL ? front : NULL, SLOT_roof_plane_edges, rows[i].part,
                  rows[i].sentence);
    }
}

/* 10 m by 5 m at 0.5 rad is 4.388 m deep in plan. Half of the smaller may lie over the other. */
static void test_drawn_twice(void)
{
    static const double box_4_by_5[][2] = {{0, 0}, {4, 0}, {4, 5}, {0, 5}};
    static const struct {
        double azimuth, x, y; /* degrees, m */
        bool is_small, is_told;
        const char *sentence;
    } rows[] = {
        {180, 0, 0, false, true, "the same plane twice"},
        {180, 4.9, 0, false, true, "a little more than half of it"},
        {180, 5.1, 0, false, false, "a little less than half of it"},
        {180, 10, 0, false, false, "beside it"},
        {180, 3, 1, true, true, "a small one over a large one"},
        {225, 3, 0, true, true, "an eighth of a turn apart"},
        {0, 10, 4.388, false, false, "over it, but facing the other way: a dormer may be drawn so"},
        {0, 10, 8.776, false, false, "behind its ridge"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct trial trial = trial_new();
        struct object *front = add_front(&trial, "eave rake ridge rake", STEEP);
        struct object *other =
            add_plane(&trial, "other", rows[i].is_small ? box_4_by_5 : box_10_by_5, 4,
                      "eave rake ridge rake", STEEP);
        place_in_plan(front, 0, 0, acos(-1));
        place_in_plan(other, rows[i].x, rows[i].y, rows[i].azimuth * acos(-1) / 180);
        check_one(&trial, rows[i].is_told ? other : NULL, SLOT_roof_plane_plan_origin,
                  "lies over roof plane", rows[i].sentence);
    }
}

/* Each of many planes drawn as one is told once, not once for each of the others. */
static void test_drawn_many_times(void)
{
    enum { MANY = 60 };
    struct trial trial = trial_new();
    for (size_t i = 0; i < MANY; i++)
        place_in_plan(add_plane(&trial, arena_format(trial.arena, "p%zu", i), box_10_by_5, 4,
                                "eave rake ridge rake", STEEP),
                      0, 0, acos(-1));
    size_t count;
    look(&trial, &count);
    CHECK(count == MANY - 1, "all but the first are told, each once");
    trial_free(&trial);
}

static void test_corners_given_twice(void)
{
    static const double closed[][2] = {{0, 0}, {10, 0}, {10, 5}, {0, 5}, {0, 0}};
    static const double again[][2] = {{0, 0}, {10, 0}, {10, 0.00005}, {10, 5}, {0, 5}};
    static const double near[][2] = {{0, 0}, {10, 0}, {10, 0.001}, {10, 5}, {0, 5}};
    static const struct {
        const double (*points)[2];
        const char *edges;
        bool is_told;
        const char *sentence;
    } rows[] = {
        {closed, "eave rake ridge rake", true, "the first again at the end"},
        {closed, "eave rake ridge rake rake", true, "and its side named, too"},
        {again, "eave rake rake ridge rake", true, "twice in a row"},
        {near, "eave rake rake ridge rake", false, "a very short side"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct trial trial = trial_new();
        struct object *front = add_plane(&trial, "front", rows[i].points, 5, rows[i].edges, STEEP);
        check_one(&trial, rows[i].is_told ? front : NULL, SLOT_roof_plane_outline, "is given twice",
                  rows[i].sentence);
    }
}

int main(void)
{
    test_obstructions();
    test_rails();
    test_attachments();
    test_openings();
    test_edge_kinds();
    test_drawn_twice();
    test_drawn_many_times();
    test_corners_given_twice();
    return checks_end();
}
