/* Roof geometry: every method on cases that were worked by hand, and what is refused. */
#include "layout.h"

#include <geos_c.h>

#include "../layout/roof_trial.h"
#include "check.h"

static const double PI = 3.14159265358979323846;
static const double box_10_by_5[][2] = {{0, 0}, {10, 0}, {10, 5}, {0, 5}};
#define GABLE                  "eave rake ridge rake"
#define RECTANGLE(trial, name) add_plane(trial, name, box_10_by_5, 4, GABLE, PI / 3)

/* The answer of a method as a number; NAN where it stopped. */
static double answer(struct trial *trial, const struct object *about, const char *method,
                     const struct amount *given, size_t count)
{
    struct amount results[CALCULATOR_RESULTS];
    if (!ask(results, trial, about, method, given, count)) {
        fprintf(stderr, "    %s stopped: %d %s\n", method, (int)trial->working.stop.kind,
                trial->working.stop.why ? trial->working.stop.why : "");
        return NAN;
    }
    return results[0].type == AMOUNT_YESNO ? results[0].yes : results[0].quantity.value;
}

static double plain(struct trial *trial, const struct object *about, const char *method)
{
    return answer(trial, about, method, NULL, 0);
}

static double with_word(struct trial *trial, const struct object *about, const char *method,
                        const char *word)
{
    struct amount input = amount_of_word(word);
    return answer(trial, about, method, &input, 1);
}

static double with_length(struct trial *trial, const struct object *about, const char *method,
                          double length)
{
    struct amount input = metres(length);
    return answer(trial, about, method, &input, 1);
}

static const char *word_of(struct trial *trial, const struct object *about, const char *method,
                           const struct amount *given, size_t count, size_t result)
{
    static char kept[64];
    struct amount results[CALCULATOR_RESULTS];
    if (!ask(results, trial, about, method, given, count) || results[result].type != AMOUNT_WORD)
        return NULL;
    snprintf(kept, sizeof kept, "%s", results[result].word);
    return kept;
}

/* How a method stops. */
static enum stop_kind stop_of(struct trial *trial, const struct object *about, const char *method,
                              const struct amount *given, size_t count)
{
    struct amount results[CALCULATOR_RESULTS];
    return ask(results, trial, about, method, given, count) ? STOP_NONE : trial->working.stop.kind;
}

/* Does GEOS give no answer, without a want of memory? */
static bool *geos_fails(void)
{
    static bool fails;
    return &fails;
}

char __real_GEOSisValid_r(GEOSContextHandle_t handle, const GEOSGeometry *geometry);
char __wrap_GEOSisValid_r(GEOSContextHandle_t handle, const GEOSGeometry *geometry);

char __wrap_GEOSisValid_r(GEOSContextHandle_t handle, const GEOSGeometry *geometry)
{
    return *geos_fails() ? 2 : __real_GEOSisValid_r(handle, geometry);
}

static void test_areas(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front"); /* 60°: half in plan */
    struct object *back = RECTANGLE(&trial, "back");
    struct object *model = add_model(&trial, 2, 1);
    add_module(&trial, front, model, 1, 1, "portrait");    /* 1 × 2 */
    add_module(&trial, front, model, 1.5, 2, "landscape"); /* 2 × 1, over the first by 0.5 × 1 */
    add_module(&trial, front, model, 5, 1, "portrait");
    struct object *gone = add_module(&trial, front, model, 7, 1, "portrait");
    struct object *old = add_module(&trial, back, model, 7, 1, "portrait");
    give_word(gone, SLOT_module_status, "removed");
    give_word(old, SLOT_module_status, "existing");
    trial_link(&trial);
    CHECK_NEAR(plain(&trial, front, "area"), 50, 1e-12, "10 by 5");
    CHECK_NEAR(plain(&trial, front, "plan_area"), 25, 1e-9, "half of it at 60°");
    CHECK_NEAR(plain(&trial, front, "covered_area"), 5.5, 1e-9, "three of 2 m², 0.5 m² twice");
    CHECK_NEAR(plain(&trial, front, "covered_plan_area"), 2.75, 1e-9, "half of it");
    CHECK_NEAR(plain(&trial, trial.roof, "plan_area"), 50, 1e-9, "both planes in plan");
    CHECK_NEAR(plain(&trial, trial.roof, "array_area"), 7.5, 1e-9, "existing modules count");
    CHECK_NEAR(plain(&trial, trial.roof, "covered_plan_area"), 3.75, 1e-9, "in plan");
    CHECK_NEAR(plain(&trial, trial.roof, "covered_share"), 7.5 / 100, 1e-12,
               "of all planes, those without modules too");
    CHECK_NEAR(plain(&trial, front, "modules_overlapping"), 1, 0, "one pair laps");
    CHECK_NEAR(plain(&trial, front, "module_count"), 3, 0, "the one to be removed is none");
    CHECK(trial.working.step_count > 0 && trial.working.read_count > 5, "steps and reads are kept");
    trial_free(&trial);
}

/* A house of two planes and a garage of two, each plane 25 m² in plan. */
static void test_buildings(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front"), *back = RECTANGLE(&trial, "back");
    struct object *garage = RECTANGLE(&trial, "garage"), *lean_to = RECTANGLE(&trial, "lean-to");
    struct object *model = add_model(&trial, 2, 1);
    struct amount strip = metres(0.9);
    give_word(garage, SLOT_roof_plane_structure, "detached garage");
    give_word(lean_to, SLOT_roof_plane_structure, "carport");
    for (int i = 0; i < 5; i++)
        add_module(&trial, front, model, 1 + i, 1, "portrait"); /* 10 m² of 50 */
    trial_link(&trial);
    CHECK_NEAR(plain(&trial, front, "building_share"), 10.0 / 100, 1e-12, "front and back");
    CHECK_NEAR(plain(&trial, back, "building_share"), 10.0 / 100, 1e-12, "from either");
    CHECK_NEAR(plain(&trial, garage, "building_share"), 0, 1e-12, "none on the garage");
    CHECK_NEAR(plain(&trial, trial.roof, "covered_share"), 10.0 / 100, 1e-12, "of the house");
    CHECK_NEAR(with_length(&trial, trial.roof, "pathway_planes", 0.9), 2, 0, "of the house");
    struct amount planes[CALCULATOR_RESULTS];
    CHECK(ask(planes, &trial, trial.roof, "pathway_planes", &strip, 1) &&
              fabs(planes[2].quantity.value - 2) < 1e-9,
          "which has two planes");
    CHECK_NEAR(plain(&trial, garage, "stands_apart"), 1, 0, "by its name");
    CHECK_NEAR(plain(&trial, front, "stands_apart"), 0, 0, "the house itself");
    CHECK(stop_of(&trial, lean_to, "stands_apart", NULL, 0) == STOP_MISSING, "nobody tells");
    fact_of(lean_to, SLOT_roof_plane_detached)->is.yes = false;
    for (int i = 0; i < 9; i++)
        add_module(&trial, garage, model, 0.2 + i, 1, "portrait"); /* 18 m² of 50 */
    trial_link(&trial);
    working_close(&trial.working);
    CHECK_NEAR(plain(&trial, lean_to, "stands_apart"), 0, 0, "it leans on the house");
    CHECK_NEAR(plain(&trial, front, "building_share"), 10.0 / 150, 1e-12, "and is of its roof");
    CHECK_NEAR(plain(&trial, trial.roof, "covered_share"), 18.0 / 50, 1e-12, "the garage has more");
    CHECK_NEAR(with_length(&trial, trial.roof, "pathway_planes", 0.9), 3, 0, "the house counts");
    back->facts[SLOT_roof_plane_structure].state = FACT_MISSING;
    working_close(&trial.working);
    CHECK(stop_of(&trial, front, "building_share", NULL, 0) == STOP_MISSING, "it may be another's");
    CHECK(stop_of(&trial, trial.roof, "pathway_planes", &strip, 1) == STOP_MISSING, "the same");
    trial_free(&trial);
}

static void test_missing(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front"), *back = RECTANGLE(&trial, "back");
    struct object *model = add_model(&trial, 2, 1);
    struct object *module = add_module(&trial, front, model, 1, 1, "portrait");
    struct amount results[CALCULATOR_RESULTS];
    back->facts[SLOT_roof_plane_slope].state = FACT_MISSING;
    trial_link(&trial);
    CHECK(!ask(results, &trial, trial.roof, "covered_share", NULL, 0) &&
              trial.working.stop.kind == STOP_MISSING && trial.working.stop.object == back &&
              trial.working.stop.slot == SLOT_roof_plane_slope,
          "a plane without slope leaves the share open");
    back->facts[SLOT_roof_plane_slope].state = FACT_GIVEN;
    back->facts[SLOT_roof_plane_outline].state = FACT_MISSING;
    working_close(&trial.working); /* another design: nothing is kept from before */
    CHECK(!ask(results, &trial, trial.roof, "covered_share", NULL, 0) &&
              trial.working.stop.slot == SLOT_roof_plane_outline,
          "a plane without outline, too");
    module->facts[SLOT_module_at].state = FACT_MISSING;
    working_close(&trial.working);
    CHECK(!ask(results, &trial, front, "pathway_width", NULL, 0) &&
              trial.working.stop.object == module,
          "a module without a place is named");
    module->facts[SLOT_module_at].state = FACT_GIVEN;
    model->facts[SLOT_module_model_width].state = FACT_MISSING;
    working_close(&trial.working);
    CHECK(!ask(results, &trial, front, "covered_area", NULL, 0) &&
              trial.working.stop.object == model,
          "a model without width is named");
    model->facts[SLOT_module_model_width].state = FACT_GIVEN;
    CHECK_NEAR(plain(&trial, front, "covered_area"), 2, 1e-9, "and once it is there it is used");
    trial_free(&trial);
}

static void test_clearances(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front"), *back = RECTANGLE(&trial, "back");
    struct object *model = add_model(&trial, 2, 1);
    struct object *one = add_module(&trial, front, model, 1, 1, "portrait");
    struct object *two = add_module(&trial, front, model, 2.5, 1.25, "portrait");
    add_box(&trial, front, 5, 4, 1, 0.5);
    trial_link(&trial);
    struct amount ridge = amount_of_word("ridge"), hip = amount_of_word("hip");
    CHECK_NEAR(with_word(&trial, front, "clearance", "ridge"), 1.75, 1e-12, "5 less 3.25");
    CHECK_TEXT(word_of(&trial, front, "clearance", &ridge, 1, 1), two->path, "by the second");
    CHECK_NEAR(with_word(&trial, front, "clearance", "eave"), 1, 1e-12, "to the eave");
    CHECK_NEAR(with_word(&trial, front, "clearance", "rake"), 1, 1e-12, "to the left rake");
    CHECK_NEAR(plain(&trial, front, "clearance_to_obstructions"), hypot(1.5, 0.75), 1e-12,
               "corner to corner");
    CHECK_NEAR(with_word(&trial, front, "has_edge", "ridge"), 1, 0, "it has a ridge");
    CHECK_NEAR(with_word(&trial, front, "has_edge", "hip"), 0, 0, "it has no hip");
    CHECK(stop_of(&trial, front, "clearance", &hip, 1) == STOP_WRONG, "no hip to measure to");
    CHECK(stop_of(&trial, back, "clearance", &ridge, 1) == STOP_WRONG, "no module to measure");
    CHECK_NEAR(plain(&trial, one, "neighbour_distance"), 0.5, 1e-12, "half a metre to the next");
    CHECK_NEAR(plain(&trial, one, "edge_distance"), 1, 1e-12, "a metre to the edge");
    CHECK_NEAR(with_word(&trial, one, "edge_distance", "ridge"), 2, 1e-12, "two to the ridge");
    CHECK_NEAR(plain(&trial, front, "modules_over_edge"), 0, 0, "none stands out");
    CHECK_NEAR(plain(&trial, front, "modules_over_obstructions"), 0, 0, "none stands over");
    trial_free(&trial);
}

/* On the hip triangle the distance to a hip is square to it. */
static void test_hip_clearance(void)
{
    struct trial trial = trial_new();
    const double corners[][2] = {{0, 0}, {8, 0}, {4, 4}};
    struct object *end = add_plane(&trial, "end", corners, 3, "eave hip hip", 0.5);
    struct object *model = add_model(&trial, 1, 1);
    add_module(&trial, end, model, 3.5, 0.5, "portrait"); /* upper corners (3.5|4.5, 1.5) */
    trial_link(&trial);
    CHECK_NEAR(with_word(&trial, end, "clearance", "hip"), 2 / sqrt(2), 1e-12, "(3.5 - 1.5)/√2");
    CHECK_NEAR(plain(&trial, end, "area"), 16, 1e-12, "half of 8 by 4");
    CHECK_NEAR(plain(&trial, end, "pathway_width"), 2 / sqrt(2), 1e-12,
               "between module and hip, up to the apex");
    trial_free(&trial);
}

static void test_standing_over(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front");
    struct object *model = add_model(&trial, 2, 1);
    add_module(&trial, front, model, 0, 0, "portrait");       /* flush in the corner */
    add_module(&trial, front, model, 9.00005, 0, "portrait"); /* out by half the slack */
    struct object *out = add_module(&trial, front, model, 9.001, 3, "portrait"); /* by 1 mm */
    struct object *off = add_module(&trial, front, model, 20, 3, "portrait");
    struct object *over = add_module(&trial, front, model, 5, 1, "portrait");
    struct object *pipe = add_box(&trial, front, 5.5, 1.5, 0.1, 0.1); /* wholly below it */
    add_box(&trial, front, 1, 0, 1, 1);                               /* touches the first */
    trial_link(&trial);
    CHECK_NEAR(plain(&trial, front, "modules_over_edge"), 2, 0, "one out by 1 mm, one far off");
    CHECK_TEXT(word_of(&trial, front, "modules_over_edge", NULL, 0, 1), out->path, "the first");
    CHECK_NEAR(plain(&trial, front, "modules_over_obstructions"), 1, 0, "touching is not over");
    CHECK_TEXT(word_of(&trial, front, "modules_over_obstructions", NULL, 0, 1), over->path,
               "which");
    CHECK_TEXT(word_of(&trial, front, "modules_over_obstructions", NULL, 0, 2), pipe->path, "what");
    CHECK_NEAR(with_word(&trial, front, "clearance", "ridge"), 0, 0, "off the plane: no clearance");
    struct layout_fault *faults;
    size_t count = 0;
    CHECK(layout_check(&faults, &count, trial.design, trial.arena) && count == 1 &&
              faults[0].object == off && faults[0].slot == SLOT_module_at,
          "only the one far off is a fault of the design");
    trial_free(&trial);
}

static void test_pathways(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front"), *back = RECTANGLE(&trial, "back");
    struct object *model = add_model(&trial, 3, 1);
    for (int i = 0; i < 5; i++)
        add_module(&trial, front, model, 0.9 + 1.02 * i, 1, "portrait"); /* to x = 5.98 */
    add_box(&trial, front, 8, 2, 0.5, 0.5);
    trial_link(&trial);
    CHECK_NEAR(plain(&trial, front, "pathway_width"), 2.02, 1e-9, "5.98 to the box at 8");
    CHECK_NEAR(plain(&trial, back, "pathway_width"), 10, 1e-9, "an empty plane: all of it");
    CHECK_NEAR(with_length(&trial, front, "pathway_count", 0.9), 4, 0, "1 at left, 2, 1 at right");
    CHECK_NEAR(with_length(&trial, front, "pathway_count", 1.0), 3, 0, "2 and 1");
    CHECK_NEAR(with_length(&trial, front, "pathway_count", 2.1), 0, 0, "none so wide");
    CHECK_NEAR(with_length(&trial, back, "pathway_count", 2.5), 4, 0, "four of 2.5 in 10");
    CHECK_NEAR(with_length(&trial, trial.roof, "pathway_planes", 2), 2, 0, "both");
    CHECK_NEAR(with_length(&trial, trial.roof, "pathway_planes", 2.5), 1, 0, "only the back");
    struct amount asked[] = {metres(2), amount_of_word("street or driveway")};
    CHECK(stop_of(&trial, front, "pathway_faces", asked, 2) == STOP_MISSING, "faces not given");
    give_words(&trial, front, SLOT_roof_plane_faces, "street");
    give_words(&trial, back, SLOT_roof_plane_faces, "rear");
    CHECK_NEAR(answer(&trial, front, "pathway_faces", asked, 2), 1, 0, "on the street side");
    CHECK_NEAR(answer(&trial, back, "pathway_faces", asked, 2), 0, 0, "on the rear");
    CHECK_NEAR(answer(&trial, trial.roof, "pathway_planes", asked, 2), 1, 0, "one of the two");
    trial_free(&trial);
}

/* A bounding box of the modules would see no gap here: the way winds through. */
static void test_winding_pathway(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front");
    struct object *model = add_model(&trial, 8, 1);
    add_module(&trial, front, model, 0, 1, "landscape"); /* leaves 2 at right */
    add_module(&trial, front, model, 2, 3, "landscape"); /* leaves 2 at left, 1 between */
    trial_link(&trial);
    CHECK_NEAR(plain(&trial, front, "pathway_width"), 1, 1e-9, "the gap between the two rows");
    trial_free(&trial);
}

/* The bay in the eave: the nearest way between the modules leads over the notch, through air. */
static void test_notched_eave(void)
{
    struct trial trial = trial_new();
    const double corners[][2] = {{0, 0}, {4, 0}, {4, 2}, {5, 2}, {5, 0}, {9, 0}, {9, 5}, {0, 5}};
    struct object *plane =
        add_plane(&trial, "bay", corners, 8, "eave eave eave eave eave rake ridge rake", 0.5);
    struct object *model = add_model(&trial, 4, 1);
    add_module(&trial, plane, model, 0, 0.2, "landscape"); /* up to x = 4, y = 1.2 */
    add_module(&trial, plane, model, 5, 0.2, "landscape"); /* from x = 5 */
    trial_link(&trial);
    /* From the notch's top (y = 2) at x = 4.5 the corners (4, 1.2) and (5, 1.2) are hypot(0.5, 0.8)
     * away: twice that is the widest disc that starts there. From a side of the notch, y in 1.2..2,
     * it is farther to one and nearer to the other. */
    CHECK_NEAR(plain(&trial, plane, "pathway_width"), 2 * hypot(0.5, 0.8), 4e-4,
               "not the 1 m notch");
    trial_free(&trial);
}

static void test_irregular(void)
{
    struct trial trial = trial_new();
    const double low_l[][2] = {{0, 0}, {4, 0}, {4, 2}, {8, 2}, {8, 6}, {0, 6}};
    const double tee[][2] = {{3, 0}, {5, 0}, {5, 2}, {8, 2}, {8, 6}, {0, 6}, {0, 2}, {3, 2}};
    const double cut[][2] = {{0, 0}, {3, 0}, {3, 2}, {5, 2}, {5, 0}, {8, 0}, {8, 6}, {0, 6}};
    const double trapezoid[][2] = {{0, 0}, {8, 0}, {5, 3}, {3, 3}};
    struct object *l = add_plane(&trial, "l", low_l, 6, "eave rake eave rake ridge rake", 0.5);
    struct object *t =
        add_plane(&trial, "t", tee, 8, "eave rake wall rake ridge rake wall rake", 0.5);
    struct object *d =
        add_plane(&trial, "d", cut, 8, "eave wall wall wall eave rake ridge rake", 0.5);
    struct object *z = add_plane(&trial, "z", trapezoid, 4, "eave hip ridge hip", 0.5);
    struct object *model = add_model(&trial, 3, 1);
    add_module(&trial, l, model, 4.5, 3, "portrait");  /* right wing: 4.5 to 5.5, y 3 to 6 */
    add_module(&trial, d, model, 2.5, 3, "landscape"); /* above the cut: 2.5 to 5.5 */
    trial_link(&trial);
    CHECK_NEAR(plain(&trial, l, "area"), 8 + 32, 1e-12, "L");
    CHECK_NEAR(plain(&trial, t, "area"), 4 + 32, 1e-12, "T");
    CHECK_NEAR(plain(&trial, d, "area"), 48 - 4, 1e-12, "with a dormer cut out");
    CHECK_NEAR(plain(&trial, z, "area"), 15, 1e-12, "trapezoid");
    CHECK_NEAR(plain(&trial, l, "pathway_width"), hypot(0.5, 1) < 4 ? 4 : 0, 1e-9,
               "up the left leg, 4 wide, past the corner of the module at 4.5");
    CHECK_NEAR(plain(&trial, t, "pathway_width"), 2, 1e-9, "up the stem of the T");
    CHECK_NEAR(plain(&trial, d, "pathway_width"), 2.5, 1e-9, "beside cut and module");
    CHECK_NEAR(plain(&trial, z, "pathway_width"), 2, 1e-9, "no wider than its ridge");
    CHECK_NEAR(with_length(&trial, d, "pathway_count", 2), 2, 0, "one at either side");
    trial_free(&trial);
}

/* The long side of a hip roof, 8 by 6 in plan at 45°, and its end. */
static void test_neighbours(void)
{
    struct trial trial = trial_new();
    double rise = 3 * sqrt(2);
    const double long_side[][2] = {{0, 0}, {8, 0}, {5, rise}, {3, rise}};
    const double end_side[][2] = {{0, 0}, {6, 0}, {3, rise}};
    struct object *south = add_plane(&trial, "south", long_side, 4, "eave hip ridge hip", PI / 4);
    struct object *east = add_plane(&trial, "east", end_side, 3, "eave hip hip", PI / 4);
    struct object *north = add_plane(&trial, "north", long_side, 4, "eave hip ridge hip", PI / 4);
    place_in_plan(south, 0, 0, PI);
    place_in_plan(east, 8, 0, PI / 2);
    place_in_plan(north, 8, 6, 0);
    struct object *model = add_model(&trial, 2, 1);
    for (int i = 0; i < 3; i++) /* x 1.2 to 7.2 at the bottom: bars the way on the south */
        add_module(&trial, south, model, 1.2 + 2 * i, 0.5, "landscape");
    trial_link(&trial);
    struct amount hip = amount_of_word("hip"), ridge = amount_of_word("ridge");
    /* At right they stand out over the hip; at left the corner (1.2, 1.5) leaves a little. */
    CHECK_NEAR(plain(&trial, south, "pathway_width"), (1.2 * rise - 1.5 * 3) / hypot(3, rise),
               1e-12, "square from the hip to the first module's corner");
    CHECK_NEAR(answer(&trial, south, "adjacent_pathway_width", &hip, 1),
               plain(&trial, east, "pathway_width"), 1e-12, "over the hip lies the east");
    CHECK_NEAR(answer(&trial, south, "adjacent_pathway_width", &ridge, 1), 2, 1e-9,
               "over the ridge lies the north, as wide as its ridge");
    CHECK_TEXT(word_of(&trial, south, "adjacent_pathway_width", &ridge, 1, 1), north->path,
               "north");
    struct amount rake = amount_of_word("rake");
    CHECK_NEAR(answer(&trial, south, "adjacent_pathway_width", &rake, 1), 0, 0, "nothing there");
    /* Laid flat about the hip, the ridge's end is free up to the end's other hip. */
    double straddling = answer(&trial, south, "straddling_pathway_width", &hip, 1);
    CHECK(straddling > 1.5 && straddling <= 2 + 1e-9, "up the hip, over both");
    working_close(&trial.working);
    plain(&trial, south, "pathway_width"); /* every outline is looked at but the one laid flat */
    answer(&trial, south, "adjacent_pathway_width", &hip, 1);
    *geos_fails() = true;
    CHECK(stop_of(&trial, south, "straddling_pathway_width", &hip, 1) == STOP_BEYOND,
          "what cannot be worked out is no want of memory");
    *geos_fails() = false;
    north->facts[SLOT_roof_plane_plan_origin].state = FACT_MISSING;
    working_close(&trial.working);
    CHECK(stop_of(&trial, south, "adjacent_pathway_width", NULL, 0) == STOP_MISSING,
          "a plane that is not placed might be adjacent");
    trial_free(&trial);
}

static void test_sections(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front");
    struct object *model = add_model(&trial, 2, 1);
    for (int i = 0; i < 3; i++)
        add_module(&trial, front, model, 0.5 + 1.02 * i, 1, "portrait"); /* to 3.54 */
    for (int i = 0; i < 2; i++)
        add_module(&trial, front, model, 5 + 1.02 * i, 1, "portrait");
    trial_link(&trial);
    CHECK_NEAR(with_length(&trial, front, "section_count", 0.5), 2, 0, "two sections");
    CHECK_NEAR(with_length(&trial, front, "largest_section_length", 0.5), 3.04, 1e-9, "three wide");
    CHECK_NEAR(with_length(&trial, front, "gap_between_sections", 0.5), 1.46, 1e-9, "3.54 to 5");
    CHECK_NEAR(with_length(&trial, front, "section_count", 2), 1, 0, "one, if 2 m join");
    struct amount two = metres(2);
    CHECK(stop_of(&trial, front, "gap_between_sections", &two, 1) == STOP_WRONG, "no gap then");
    trial_free(&trial);
}

static void test_escape(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front");
    struct object *model = add_model(&trial, 2, 1);
    add_module(&trial, front, model, 2, 1, "portrait"); /* 2 to 3 */
    add_module(&trial, front, model, 4.5, 1, "portrait");
    /* Leans over the opening, but only above it: below y = 4 it reaches from 1 to 1.9. */
    const double leaning[][2] = {{1, 3.8}, {1.5, 3.8}, {3.9, 5}, {3.5, 5}};
    struct object *flue = add_obstruction(&trial, front);
    give_points(&trial, flue, SLOT_obstruction_outline, leaning, 4);
    struct object *opening = add_thing(&trial, KIND_escape_opening, trial.building, "bedroom");
    give_object(opening, SLOT_escape_opening_plane, front);
    give_point(opening, SLOT_escape_opening_at, 3.35, 4);
    give_number(opening, SLOT_escape_opening_width, 0.8);
    trial_link(&trial);
    CHECK_NEAR(plain(&trial, opening, "clear_width_below"), 1.5, 1e-9, "from 3 to 4.5");
    CHECK_NEAR(with_length(&trial, opening, "clear_below", 1.4), 1, 0, "3.05 to 4.45 is free");
    CHECK_NEAR(with_length(&trial, opening, "clear_below", 1.5), 1, 0, "3 to 4.5 just so");
    CHECK_NEAR(with_length(&trial, opening, "clear_below", 1.6), 0, 0, "2.95 to 4.55 is not");
    give_point(opening, SLOT_escape_opening_at, 2.7, 4);
    CHECK_NEAR(plain(&trial, opening, "clear_width_below"), 0, 0, "a module right below");
    give_point(opening, SLOT_escape_opening_at, 2.7, 0.9);
    CHECK_NEAR(plain(&trial, opening, "clear_width_below"), 10, 1e-9,
               "modules above do not matter");
    trial_free(&trial);
}

static const char *zone_of(struct trial *trial, const struct object *about, const char *scheme,
                           double width, double corner, double inner)
{
    struct amount inputs[4] = {
        amount_of_word(scheme), metres(width), {.type = AMOUNT_NONE}, {.type = AMOUNT_NONE}};
    if (corner > 0)
        inputs[2] = metres(corner);
    if (inner > 0)
        inputs[3] = metres(inner);
    return word_of(trial, about, "zone", inputs, 4, 0);
}

static void test_zones(void)
{
    struct trial trial = trial_new();
    /* 60°: a strip of 1 m in plan is 2 m up the slope. */
    struct object *front = RECTANGLE(&trial, "front");
    struct object *model = add_model(&trial, 1, 1);
    const struct {
        double x, y;
        const char *gable, *hip, *simple, *low, *plain_gable, *plain_hip;
    } rows[] = {
        {5, 2.5, "1", "1", "1", "1'", "1", "1"},   {5, 1.9, "2e", "2e", "2", "2", "1", "3"},
        {5, 3.1, "2r", "2r", "2", "1'", "2", "2"}, {0.9, 2.5, "2n", "2e", "2", "2", "2", "2"},
        {0.9, 1, "3e", "3", "3", "2", "2", "3"},   {0.4, 1.9, "3e", "3", "3", "3", "2", "3"},
        {9.1, 4, "3r", "3", "3", "2", "3", "3"},   {1, 2.5, "2n", "2e", "2", "2", "2", "2"}};
    struct object *spots[8];
    for (size_t i = 0; i < 8; i++)
        spots[i] = add_attachment(&trial, front, NULL, rows[i].x, rows[i].y);
    struct object *middle =
        add_module(&trial, front, model, 5, 2.2, "portrait"); /* to 3.2: ridge */
    struct object *corner = add_module(&trial, front, model, 0.5, 1.5, "portrait");
    /* Reaches into the rake strip and, at its other end, into the eave strip, but not the corner.
     */
    trial_link(&trial);
    for (size_t i = 0; i < 8; i++) {
        CHECK_TEXT(zone_of(&trial, spots[i], "gable", 1, 0, 0), rows[i].gable, "gable");
        CHECK_TEXT(zone_of(&trial, spots[i], "hip", 1, 0, 0), rows[i].hip, "hip");
        CHECK_TEXT(zone_of(&trial, spots[i], "simple", 1, 0, 0), rows[i].simple, "simple");
        CHECK_TEXT(zone_of(&trial, spots[i], "low slope", 1, 0.45, 1.2), rows[i].low, "low slope");
        CHECK_TEXT(zone_of(&trial, spots[i], "plain gable", 1, 0, 0), rows[i].plain_gable,
                   "plain gable");
        CHECK_TEXT(zone_of(&trial, spots[i], "plain hip", 1, 0, 0), rows[i].plain_hip, "plain hip");
    }
    CHECK_TEXT(zone_of(&trial, middle, "gable", 1, 0, 0), "2r", "a module takes its worst");
    CHECK_TEXT(zone_of(&trial, middle, "gable", 0.5, 0, 0), "1", "narrow strips");
    CHECK_TEXT(zone_of(&trial, corner, "gable", 1, 0, 0), "3e", "in the corner");
    CHECK_TEXT(zone_of(&trial, corner, "gable", 0.6, 0, 0), "2n", "at the rake only");
    CHECK_TEXT(zone_of(&trial, corner, "plain gable", 1, 0, 0), "2", "no zone along the eave");
    CHECK_TEXT(zone_of(&trial, corner, "plain hip", 1, 0, 0), "3", "the worst zone along the eave");
    CHECK_TEXT(zone_of(&trial, corner, "plain hip", 0.6, 0, 0), "2", "short of the eave's strip");
    CHECK_TEXT(zone_of(&trial, middle, "plain gable", 1, 0, 0), "2", "up to the ridge");
    CHECK_TEXT(zone_of(&trial, middle, "plain hip", 0.5, 0, 0), "1", "narrow strips");
    CHECK_TEXT(zone_of(&trial, corner, "low slope", 1, 0.45, 0), "2", "past the corner's depth");
    CHECK_TEXT(zone_of(&trial, corner, "low slope", 1, 0.5, 0), "3", "just within it");
    trial_free(&trial);
}

/* The corners of a low roof, whatever its edges are called; flat, so plan and plane agree. */
static void test_low_corners(void)
{
    struct trial trial = trial_new();
    static const double notched[][2] = {{0, 0}, {10, 0}, {10, 5}, {6, 5}, {6, 9}, {0, 9}};
    static const double half_hip[][2] = {{0, 0}, {10, 0}, {10, 4}, {4, 4}};
    struct object *roof = add_plane(&trial, "roof", notched, 6, "eave eave eave eave eave eave", 0);
    struct object *hip = add_plane(&trial, "hip", half_hip, 4, "eave rake ridge hip", 0);
    struct object *model = add_model(&trial, 1, 1);
    const struct {
        struct object *plane;
        double x, y;
        const char *zone;
    } rows[] = {
        {roof, 0.4, 0.9, "3"}, {roof, 0.9, 0.4, "3"}, {roof, 0.6, 0.6, "2"}, {roof, 1.1, 0.3, "2"},
        {roof, 9.8, 4.8, "3"}, {roof, 5.8, 8.8, "3"}, {roof, 5.7, 4.9, "2"}, {roof, 3, 2.5, "1'"},
        {hip, 0.9, 0.4, "3"},  {hip, 1.4, 0.4, "2"},  {hip, 9.8, 0.2, "3"},  {hip, 2.6, 2.4, "1'"},
    };
    enum { SPOTS = sizeof rows / sizeof rows[0] };
    struct object *spots[SPOTS];
    for (size_t i = 0; i < SPOTS; i++)
        spots[i] = add_attachment(&trial, rows[i].plane, NULL, rows[i].x, rows[i].y);
    struct object *in_corner = add_module(&trial, roof, model, 0.4, 0.8, "portrait");
    struct object *past_it = add_module(&trial, roof, model, 0.4, 1.1, "portrait");
    struct object *inside = add_module(&trial, roof, model, 0.6, 0.6, "portrait");
    struct object *at_hip = add_module(&trial, hip, model, 0.9, 0.2, "portrait");
    trial_link(&trial);
    for (size_t i = 0; i < SPOTS; i++)
        CHECK_TEXT(zone_of(&trial, spots[i], "low slope", 1, 0.5, 1.2), rows[i].zone, "low corner");
    CHECK_TEXT(zone_of(&trial, in_corner, "low slope", 1, 0.5, 1.2), "3", "reaches into it");
    CHECK_TEXT(zone_of(&trial, past_it, "low slope", 1, 0.5, 1.2), "2", "farther along the edge");
    CHECK_TEXT(zone_of(&trial, inside, "low slope", 1, 0.5, 1.2), "2", "deeper than the corner");
    CHECK_TEXT(zone_of(&trial, at_hip, "low slope", 1, 0.5, 1.2), "3", "below the end of a hip");
    trial_free(&trial);
}

static void test_tributary(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front");
    struct object *model = add_model(&trial, 2, 1);
    for (int i = 0; i < 3; i++)
        add_module(&trial, front, model, 1 + i, 1, "portrait"); /* x 1 to 4, y 1 to 3 */
    struct object *low = add_rail(&trial, front, 0.9, 1.5, 3.2);
    struct object *high = add_rail(&trial, front, 0.9, 2.5, 3.2);
    struct object *first = add_attachment(&trial, front, low, 1.2, 1.5);
    struct object *second = add_attachment(&trial, front, low, 2.4, 1.5);
    add_attachment(&trial, front, low, 3.6, 1.5);
    struct object *half = add_attachment(&trial, front, high, 1.5, 2.5);
    add_attachment(&trial, front, high, 3.5, 2.5);
    struct object *alone = add_module(&trial, front, model, 7, 1, "portrait");
    struct object *framing = add_thing(&trial, KIND_framing, front, NULL);
    give_object(front, SLOT_roof_plane_framing, framing);
    give_word(framing, SLOT_framing_kind, "rafter");
    give_number(framing, SLOT_framing_first_at, 0.1);
    give_number(framing, SLOT_framing_spacing, 0.6);
    trial_link(&trial);
    CHECK_NEAR(plain(&trial, first, "tributary_area"), 0.8, 1e-12, "1 wide, x 1 to 1.8");
    CHECK_NEAR(plain(&trial, second, "tributary_area"), 1.2, 1e-12, "x 1.8 to 3");
    CHECK_NEAR(plain(&trial, half, "tributary_area"), 1.5, 1e-12, "half of the upper rail");
    CHECK_NEAR(plain(&trial, front, "supported_area"), 6, 1e-12, "three modules, no more, no less");
    CHECK_NEAR(plain(&trial, front, "unsupported_modules"), 1, 0, "the fourth hangs in the air");
    CHECK_TEXT(word_of(&trial, front, "unsupported_modules", NULL, 0, 1), alone->path, "that one");
    struct amount two = amount_of_number(2), three = amount_of_number(3);
    CHECK_NEAR(answer(&trial, front, "modules_short_of_rails", &two, 1), 1, 0, "only that one");
    CHECK_NEAR(answer(&trial, front, "modules_short_of_rails", &three, 1), 4, 0, "two lie below");
    CHECK_NEAR(plain(&trial, low, "largest_span"), 1.2, 1e-12, "1.2 to 2.4");
    CHECK_NEAR(plain(&trial, low, "cantilever"), 0.5, 1e-12, "3.6 to 4.1, more than 0.3");
    CHECK_NEAR(plain(&trial, first, "member_distance"), 0.1, 1e-12, "1.2 stands 0.1 from 1.3");
    CHECK_NEAR(plain(&trial, second, "member_distance"), 0.1, 1e-12, "2.4 from 2.5");
    give_word(framing, SLOT_framing_kind, "purlin");
    CHECK(stop_of(&trial, first, "member_distance", NULL, 0) == STOP_BEYOND, "purlins run across");
    trial_free(&trial);
}

/* Three modules from x 1 to 4; a rail that ends below the third, a line with a gap below the
 * second, and one from edge to edge. */
static void test_past_rails(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front"), *bare = RECTANGLE(&trial, "bare");
    struct object *model = add_model(&trial, 2, 1);
    struct object *last = NULL;
    for (int i = 0; i < 3; i++)
        last = add_module(&trial, front, model, 1 + i, 1, "portrait");
    static const double rails[][3] = {
        {0.9, 1.5, 2.6}, {0.9, 2.5, 1.5}, {2.6, 2.5, 1.6}, {0.9, 2, 3.3}};
    for (size_t i = 0; i < 4; i++)
        add_attachment(&trial, front,
                       add_rail(&trial, front, rails[i][0], rails[i][1], rails[i][2]),
                       rails[i][0] + 0.3, rails[i][1]);
    trial_link(&trial);
    const double past[] = {0, 0, 0.5, 0};
    for (int i = 0; i < 4; i++) {
        struct amount count = amount_of_number(i + 1);
        CHECK_NEAR(answer(&trial, front, "past_rails", &count, 1), past[i], 1e-12,
                   "all three lines are asked for, then more than there are");
    }
    struct amount three = amount_of_number(3);
    CHECK_TEXT(word_of(&trial, front, "past_rails", &three, 1, 1), last->path, "the third module");
    CHECK_NEAR(answer(&trial, bare, "past_rails", &three, 1), 0, 0, "nothing lies there");
    CHECK_NEAR(plain(&trial, front, "largest_rail_overhang"), 0.25, 1e-12, "y 1 to 1.5, of 2");
    CHECK_NEAR(plain(&trial, bare, "largest_rail_overhang"), 0, 0, "nothing lies there");
    struct object *far = add_module(&trial, front, model, 1, 1.3, "portrait"); /* y to 3.3 */
    trial_link(&trial);
    working_close(&trial.working);
    CHECK_NEAR(plain(&trial, front, "largest_rail_overhang"), 0.4, 1e-12, "2.5 to 3.3");
    CHECK_TEXT(word_of(&trial, front, "largest_rail_overhang", NULL, 0, 2), far->path, "that one");
    trial_free(&trial);
}

/* Without rails: four attachments at the corners of a pair of modules and two between them. */
static void test_direct_tributary(void)
{
    struct trial trial = trial_new();
    struct object *front = RECTANGLE(&trial, "front");
    struct object *model = add_model(&trial, 2, 1);
    add_module(&trial, front, model, 1, 1, "portrait");
    add_module(&trial, front, model, 2, 1, "portrait");
    struct object *spots[6];
    for (int i = 0; i < 6; i++)
        spots[i] = add_attachment(&trial, front, NULL, 1 + i / 2, i % 2 ? 2.5 : 1.5);
    struct object *twin = add_attachment(&trial, front, NULL, 1, 1.5);
    trial_link(&trial);
    CHECK_NEAR(plain(&trial, spots[0], "tributary_area"), 0.5, 1e-12, "a quarter of a module");
    CHECK_NEAR(plain(&trial, spots[2], "tributary_area"), 1, 1e-12, "a quarter of two");
    CHECK_NEAR(plain(&trial, twin, "tributary_area"), 0, 0, "one at the same spot takes nothing");
    CHECK_NEAR(plain(&trial, front, "supported_area"), 4, 1e-12, "both modules");
    trial_free(&trial);
}

static void test_conservation(void)
{
    unsigned state = 12345;
    for (int round = 0; round < 50; round++) {
        struct trial trial = trial_new();
        struct object *front = RECTANGLE(&trial, "front");
        struct object *model = add_model(&trial, 1.7, 1);
        double area = 0;
        for (int i = 0; i < 8; i++, area += 1.7)
            add_module(&trial, front, model, 0.5 + 1.02 * (i % 4), 0.2 + 1.9 * (i / 4), "portrait");
        for (int i = 0; i < 4; i++) {
            struct object *rail =
                add_rail(&trial, front, 0.4, 0.5 + 0.9 * (i % 2) + 1.9 * (i / 2), 4.4);
            for (int j = 0; j <= round % 5; j++) {
                state = state * 1664525U + 1013904223U;
                add_attachment(&trial, front, rail, 0.5 + 4.0 * (state >> 8) / 16777216.0, 0.5);
            }
        }
        trial_link(&trial);
        CHECK_NEAR(plain(&trial, front, "supported_area"), area, 1e-9, "areas add up to the array");
        trial_free(&trial);
    }
}

static void test_faults(void)
{
    struct trial trial = trial_new();
    const double bow[][2] = {{0, 0}, {4, 4}, {4, 0}, {0, 4}};
    const double line[][2] = {{0, 0}, {4, 0}, {8, 0}};
    struct object *crossing = add_plane(&trial, "crossing", bow, 4, GABLE, 0.5);
    struct object *flat = add_plane(&trial, "flat", line, 3, "eave hip hip", 0.5);
    struct object *short_of = add_plane(&trial, "short", box_10_by_5, 4, "eave rake ridge", 0.5);
    struct object *good = RECTANGLE(&trial, "good");
    struct object *chimney = add_obstruction(&trial, good);
    give_points(&trial, chimney, SLOT_obstruction_outline, bow, 4);
    add_module(&trial, crossing, add_model(&trial, 2, 1), 1, 1, "portrait");
    trial_link(&trial);
    struct layout_fault *faults = NULL;
    size_t count = 0;
    CHECK(layout_check(&faults, &count, trial.design, trial.arena) && count == 4, "four faults");
    CHECK(count == 4 && faults[0].object == crossing && faults[0].slot == SLOT_roof_plane_outline &&
              strstr(faults[0].message, "crosses") != NULL,
          "an outline that crosses itself");
    CHECK(count == 4 && faults[1].object == flat && strstr(faults[1].message, "no area") != NULL,
          "an outline without area");
    CHECK(count == 4 && faults[2].object == short_of && faults[2].slot == SLOT_roof_plane_edges,
          "an edge too few");
    CHECK(count == 4 && faults[3].object == chimney, "an obstruction that crosses itself");
    CHECK(stop_of(&trial, crossing, "area", NULL, 0) == STOP_BEYOND, "it is not measured");
    CHECK(stop_of(&trial, crossing, "area", NULL, 0) == STOP_BEYOND, "nor when asked again");
    CHECK(stop_of(&trial, flat, "area", NULL, 0) == STOP_BEYOND, "nor is a line");
    CHECK(stop_of(&trial, short_of, "pathway_width", NULL, 0) == STOP_BEYOND, "nor its edges");
    CHECK(stop_of(&trial, good, "pathway_width", NULL, 0) == STOP_BEYOND, "nor the chimney");
    trial_free(&trial);
}

/* The outline written with the clock, from another corner: edges keep their sides. */
static void test_with_clock(void)
{
    struct trial trial = trial_new();
    const double corners[][2] = {{0, 5}, {10, 5}, {10, 0}, {0, 0}};
    struct object *front = add_plane(&trial, "front", corners, 4, "ridge rake eave wall", 0.5);
    add_module(&trial, front, add_model(&trial, 2, 1), 3, 1, "portrait");
    trial_link(&trial);
    CHECK_NEAR(with_word(&trial, front, "clearance", "ridge"), 2, 1e-12, "ridge on top");
    CHECK_NEAR(with_word(&trial, front, "clearance", "eave"), 1, 1e-12, "eave below");
    CHECK_NEAR(with_word(&trial, front, "clearance", "wall"), 3, 1e-12, "wall at left");
    CHECK_NEAR(with_word(&trial, front, "clearance", "rake"), 6, 1e-12, "rake at right");
    trial_free(&trial);
}

/* Each odd roof still answers or stops, and never breaks. */
static void test_odd_planes(void)
{
    const double three[][2] = {{0, 0}, {8, 0}, {4, 4}},
                 four[][2] = {{4, 0}, {8, 3}, {4, 6}, {0, 3}};
    const char *const kinds[] = {"eave eave eave",  "ridge ridge ridge", "hip hip hip",
                                 "ridge eave eave", "eave ridge ridge",  "eave ridge hip",
                                 "wall wall rake",  "eave hip ridge"};
    for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++) {
        struct trial trial = trial_new();
        struct object *plane = add_plane(&trial, "odd", three, 3, kinds[i], 0.5);
        struct object *kite = add_plane(&trial, "kite", four, 4, "hip hip valley valley", 0.5);
        add_module(&trial, plane, add_model(&trial, 1, 1), 3.5, 0.5, "portrait");
        trial_link(&trial);
        double width = plain(&trial, plane, "pathway_width");
        CHECK(width >= 0 && width <= 8, "a width within the plane");
        CHECK(plain(&trial, kite, "pathway_width") > 0, "from corner to corner");
        CHECK(with_length(&trial, kite, "pathway_count", 0.5) >= 1, "at least one");
        trial_free(&trial);
    }
}

int main(void)
{
    test_areas();
    test_buildings();
    test_missing();
    test_clearances();
    test_hip_clearance();
    test_standing_over();
    test_pathways();
    test_winding_pathway();
    test_notched_eave();
    test_irregular();
    test_neighbours();
    test_sections();
    test_escape();
    test_zones();
    test_low_corners();
    test_tributary();
    test_past_rails();
    test_direct_tributary();
    test_conservation();
    test_faults();
    test_with_clock();
    test_odd_planes();
    return checks_end();
}
