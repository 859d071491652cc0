/* Methods about attachments, on a small roof made by hand. */
#include "timber_roof.h"

static bool lift_model(struct trial *trial, const struct roof *roof, const char *stands_on,
                       const char *safety)
{
    return trial_run(trial, roof->model, "uplift_capacity", "load_duration", "wind", "stands_on",
                     stands_on, "species", "Hem-Fir", "sheathing", "1/2 in", "safety_factor",
                     safety, NULL);
}

static void test_model_uplift(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    double one = 1800 * pow(0.43, 1.5) * pow(0.3125, 0.75) * 1.6 * 2.3125;
    CHECK(lift_model(trial, &roof, "rafter", "3"), "uplift of a model runs");
    CHECK_NEAR(trial_number(trial, "fasteners"), one, 1e-6, "W' × thread");
    CHECK_NEAR(trial_number(trial, "mount"), 1000, 1e-9, "ultimate over the safety factor");
    CHECK_NEAR(trial_number(trial, "capacity"), one, 1e-6, "the least counts");
    CHECK_TEXT(trial_word(trial, "governs"), "fasteners", "and it is the screw");
    CHECK_NEAR(trial_number(trial, "penetration"), 2.3125, 1e-9, "thread less tip");
    CHECK(lift_model(trial, &roof, "rafter", "6"), "with more safety");
    CHECK_TEXT(trial_word(trial, "governs"), "mount", "the mount governs");
    CHECK_NEAR(trial_number(trial, "capacity"), 500, 1e-9, "3000 / 6");
    CHECK(!lift_model(trial, &roof, "rafter", "-") &&
              trial_stopped(trial, STOP_WRONG, "safety_factor"),
          "an ultimate value without a safety factor is no capacity");
    set_word(roof.model, SLOT_attachment_model_test_basis, "allowable");
    CHECK(lift_model(trial, &roof, "truss", "-"), "an allowable one needs none; a truss is wood");
    CHECK_NEAR(trial_number(trial, "mount"), 3000, 1e-9, "as tested");
    set_number(roof.model, SLOT_attachment_model_prying_factor, 2);
    set_number(roof.model, SLOT_attachment_model_fasteners, 3);
    lift_model(trial, &roof, "rafter", "-");
    CHECK_NEAR(trial_number(trial, "fasteners"), one * 3 / 2, 1e-6, "three screws, prying 2");
    set_quantity(roof.model, SLOT_attachment_model_embedment, 2, "in");
    lift_model(trial, &roof, "rafter", "-");
    CHECK_NEAR(trial_number(trial, "penetration"), 2, 1e-9, "the maker's lesser embedment counts");
    set_quantity(roof.model, SLOT_attachment_model_embedment, 3, "in");
    lift_model(trial, &roof, "rafter", "-");
    CHECK_NEAR(trial_number(trial, "penetration"), 2.3125, 1e-9,
               "an embedment that the length does not give does not count");
    CHECK(trial_run(trial, roof.model, "withdrawal", "load_duration", "wind", "stands_on", "rafter",
                    "species", "Hem-Fir", "sheathing", "1/2 in", NULL),
          "withdrawal of a model runs");
    CHECK_NEAR(trial_number(trial, "capacity"), 3 * one, 1e-6, "prying is not counted in it");
    CHECK_NEAR(trial_number(trial, "per_fastener"), one, 1e-6, "one of three");
}

static void test_model_paths(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    CHECK(!lift_model(trial, &roof, "deck", "3") && trial_stopped(trial, STOP_BEYOND, "tested on"),
          "a test on a rafter says nothing of a deck");
    set_word(roof.model, SLOT_attachment_model_tested_on, "deck");
    set_word(roof.model, SLOT_attachment_model_kind, "deck mount");
    CHECK(lift_model(trial, &roof, "deck", "3"), "a deck mount has its own path");
    CHECK_NEAR(trial_number(trial, "capacity"), 1000, 1e-9, "the test alone");
    CHECK(isnan(trial_number(trial, "fasteners")), "no general value in a deck");
    set_word(roof.model, SLOT_attachment_model_tested_on, "seam");
    set_word(roof.model, SLOT_attachment_model_kind, "seam clamp");
    set_word(roof.model, SLOT_attachment_model_fastener, "clamp bolt");
    CHECK(lift_model(trial, &roof, "seam", "3"), "a seam clamp has its own path");
    set_word(roof.model, SLOT_attachment_model_kind, "ballast block");
    CHECK(!lift_model(trial, &roof, "none", "3") && trial_stopped(trial, STOP_BEYOND, "weight"),
          "ballast is for an engineer");
    make_model(&roof);
    set_word(roof.model, SLOT_attachment_model_fastener, "structural screw");
    CHECK(lift_model(trial, &roof, "rafter", "3"), "a maker's own screw stands in its test");
    CHECK_TEXT(trial_word(trial, "governs"), "mount", "which alone counts");
    CHECK(!trial_run(trial, roof.model, "withdrawal", "load_duration", "wind", "stands_on",
                     "rafter", "species", "Hem-Fir", NULL) &&
              trial_stopped(trial, STOP_BEYOND, "maker"),
          "it has no general withdrawal value");
}

/* Each fact taken away in turn stops with its name; none is passed over. */
static void test_model_missing(struct trial *trial)
{
    static const unsigned slots[] = {SLOT_attachment_model_kind,
                                     SLOT_attachment_model_tested_on,
                                     SLOT_attachment_model_tested_uplift,
                                     SLOT_attachment_model_test_basis,
                                     SLOT_attachment_model_fastener,
                                     SLOT_attachment_model_fasteners,
                                     SLOT_attachment_model_prying_factor,
                                     SLOT_attachment_model_fastener_diameter,
                                     SLOT_attachment_model_fastener_length,
                                     SLOT_attachment_model_fixture_thickness};
    struct roof roof;
    make_roof(&roof, trial);
    for (size_t i = 0; i < sizeof slots / sizeof slots[0]; i++) {
        enum fact_state state = roof.model->facts[slots[i]].state;
        forget(roof.model, slots[i]);
        CHECK(!lift_model(trial, &roof, "rafter", "3") && trial_misses(trial, roof.model, slots[i]),
              object_row(roof.model, slots[i])->name);
        roof.model->facts[slots[i]].state = state;
    }
    CHECK(lift_model(trial, &roof, "rafter", "3"), "with all of them it runs");
}

static bool slide_model(struct trial *trial, const struct roof *roof, const char *direction)
{
    return trial_run(trial, roof->model, "lateral_capacity", "load_duration", "snow", "stands_on",
                     "rafter", "species", "Hem-Fir", "sheathing", "1/2 in", "safety_factor", "3",
                     "direction", direction, NULL);
}

static void test_model_lateral(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    static const char *const along = "parallel to grain";
    CHECK(slide_model(trial, &roof, along), "lateral of a model runs");
    double one = trial_number(trial, "fasteners");
    /* The table prints tens of pounds. */
    CHECK(fabs(one / (1.15 * 2.3125 / 2.5) - 190) < 5, "Table 12K × CD × p/8D");
    CHECK_TEXT(trial_word(trial, "governs"), "fasteners", "less than 900/3");
    set_quantity(roof.model, SLOT_attachment_model_tested_lateral, 300, "lbf");
    slide_model(trial, &roof, along);
    CHECK_TEXT(trial_word(trial, "governs"), "mount", "300/3 is less");
    CHECK_NEAR(trial_number(trial, "capacity"), 100, 1e-9, "and counts");
    set_number(roof.model, SLOT_attachment_model_fasteners, 2);
    slide_model(trial, &roof, along);
    CHECK_NEAR(trial_number(trial, "fasteners"), 1.8 * one, 1e-6, "two keep nine tenths each");
    set_number(roof.model, SLOT_attachment_model_fasteners, 3);
    CHECK(!slide_model(trial, &roof, along) && trial_stopped(trial, STOP_BEYOND, "spacing"),
          "how three share a push is not known");
    set_number(roof.model, SLOT_attachment_model_fasteners, 1);
    CHECK(!slide_model(trial, &roof, "-") && trial_stopped(trial, STOP_WRONG, "direction"),
          "a screw in wood needs a direction");
    set_quantity(roof.model, SLOT_attachment_model_plate_thickness, 0.25, "in");
    slide_model(trial, &roof, along);
    CHECK(trial_number(trial, "fasteners") > 1.2 * one, "a thicker base carries more");
    CHECK(trial_run(trial, roof.model, "down_capacity", "safety_factor", "3", NULL), "down runs");
    CHECK_NEAR(trial_number(trial, "capacity"), 1500, 1e-9, "4500/3");
}

/* What the base is made of and how it is pushed: nothing is guessed. */
static void test_model_base(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    static const char *const along = "parallel to grain", *const across = "perpendicular to grain";
    static const unsigned slots[] = {
        SLOT_attachment_model_plate_thickness, SLOT_attachment_model_plate_material,
        SLOT_attachment_model_tested_lateral, SLOT_attachment_model_fastener_diameter};
    for (size_t i = 0; i < sizeof slots / sizeof slots[0]; i++) {
        forget(roof.model, slots[i]);
        CHECK(!slide_model(trial, &roof, along) && trial_misses(trial, roof.model, slots[i]),
              object_row(roof.model, slots[i])->name);
        roof.model->facts[slots[i]].state = FACT_GIVEN;
    }
    slide_model(trial, &roof, along);
    double steel = trial_number(trial, "fasteners");
    set_word(roof.model, SLOT_attachment_model_plate_material, "aluminum");
    CHECK(!slide_model(trial, &roof, along) &&
              trial_stopped(trial, STOP_BEYOND, "plate_bearing_strength"),
          "of aluminum no strength is in the table");
    set_quantity(roof.model, SLOT_attachment_model_plate_bearing_strength, 61850, "psi");
    CHECK(slide_model(trial, &roof, along), "unless it is told");
    CHECK_NEAR(trial_number(trial, "fasteners"), steel, 1e-9, "as strong as gage steel");
    set_quantity(roof.model, SLOT_attachment_model_fixture_thickness, 0.606, "in");
    CHECK(!slide_model(trial, &roof, along) && trial_stopped(trial, STOP_BEYOND, "in contact"),
          "more than half an inch below the base is a gap");
    set_quantity(roof.model, SLOT_attachment_model_fixture_thickness, 0.605, "in");
    CHECK(slide_model(trial, &roof, along), "half an inch is not");
    set_quantity(roof.model, SLOT_attachment_model_fixture_thickness, 0.1, "in");
    CHECK(!slide_model(trial, &roof, along) && trial_stopped(trial, STOP_BEYOND, "thicker"),
          "a base thicker than the whole is a contradiction");
    set_quantity(roof.model, SLOT_attachment_model_fixture_thickness, 0.5, "in");
    CHECK(!slide_model(trial, &roof, across) &&
              trial_misses(trial, roof.model, SLOT_attachment_model_edge_distance),
          "across the grain the edge is asked for");
    set_quantity(roof.model, SLOT_attachment_model_edge_distance, 1.2, "in");
    CHECK(!slide_model(trial, &roof, across) && trial_stopped(trial, STOP_BEYOND, "edge"),
          "nearer than 4 D it splits");
    set_quantity(roof.model, SLOT_attachment_model_edge_distance, 1.25, "in");
    CHECK(slide_model(trial, &roof, across) && trial_number(trial, "fasteners") < steel * 0.75,
          "from there on it carries less than along the grain");
    make_model(&roof);
    set_word(roof.model, SLOT_attachment_model_fastener, "wood screw");
    set_quantity(roof.model, SLOT_attachment_model_fastener_diameter, 0.19, "in");
    CHECK(slide_model(trial, &roof, along) && trial_number(trial, "fasteners") > 0,
          "a wood screw has a lateral value, too");
    set_word(roof.model, SLOT_attachment_model_fastener, "structural screw");
    forget(roof.model, SLOT_attachment_model_plate_thickness);
    CHECK(slide_model(trial, &roof, along), "a maker's own screw stands in its test");
    CHECK_TEXT(trial_word(trial, "governs"), "mount", "which alone counts");
    set_word(roof.model, SLOT_attachment_model_fastener, "lag screw");
    set_word(roof.model, SLOT_attachment_model_kind, "deck mount");
    set_word(roof.model, SLOT_attachment_model_tested_on, "deck");
    CHECK(trial_run(trial, roof.model, "lateral_capacity", "load_duration", "snow", "stands_on",
                    "deck", "safety_factor", "3", NULL),
          "a deck mount needs no base");
}

static double slide(struct trial *trial, struct object *attachment, const char *push)
{
    return trial_run(trial, attachment, "lateral_capacity", "load_duration", "snow", "push", push,
                     "safety_factor", "3", NULL)
               ? trial_number(trial, "fasteners")
               : NAN;
}

/* Rafters run up the slope, purlins across it; of blocking nobody tells. */
static void test_placed_push(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    set_quantity(roof.model, SLOT_attachment_model_edge_distance, 1.25, "in");
    struct object *one = add_attachment(&roof, "one", 48.5, 30);
    double along = slide(trial, one, "along the slope");
    double across = slide(trial, one, "across the slope");
    CHECK(across < along * 0.75, "a rafter is pushed along its grain by the slope");
    set_word(one, SLOT_attachment_stands_on, "truss");
    CHECK_NEAR(slide(trial, one, "along the slope"), along, 1e-9, "a truss as a rafter");
    set_word(one, SLOT_attachment_stands_on, "purlin");
    CHECK_NEAR(slide(trial, one, "along the slope"), across, 1e-9, "a purlin the other way");
    CHECK_NEAR(slide(trial, one, "across the slope"), along, 1e-9, "both ways");
    set_word(one, SLOT_attachment_stands_on, "blocking");
    CHECK_NEAR(slide(trial, one, "along the slope"), across, 1e-9, "blocking: the lesser");
    CHECK_NEAR(slide(trial, one, "across the slope"), across, 1e-9, "either way");
    set_word(one, SLOT_attachment_stands_on, "rafter");
    set_word(roof.framing, SLOT_framing_kind, "purlin");
    CHECK(isnan(slide(trial, one, "along the slope")) &&
              trial_stopped(trial, STOP_BEYOND, "another kind"),
          "a rafter among purlins is a contradiction");
    forget(roof.framing, SLOT_framing_kind);
    CHECK(isnan(slide(trial, one, "along the slope")) &&
              trial_misses(trial, roof.framing, SLOT_framing_kind),
          "what the members are is asked for");
    set_word(roof.framing, SLOT_framing_kind, "rafter");
    roof.framing->facts[SLOT_framing_wet_service].is.yes = true;
    CHECK_NEAR(slide(trial, one, "along the slope"), along * 0.7, 1e-9, "wet wood");
    roof.framing->facts[SLOT_framing_wet_service].is.yes = false;
    set_word(roof.framing, SLOT_framing_species, "Southern Pine");
    CHECK(slide(trial, one, "along the slope") > along, "denser wood carries more");
}

static void test_placed(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    struct object *one = add_attachment(&roof, "one", 48.5, 30);
    static const char *const name = "uplift_capacity";
    CHECK(trial_run(trial, one, name, "load_duration", "wind", "safety_factor", "3", NULL),
          "an attachment where it stands runs");
    double whole = 1800 * pow(0.43, 1.5) * pow(0.3125, 0.75) * 1.6 * 2.3125;
    CHECK_NEAR(trial_number(trial, "capacity"), whole, 1e-6, "species and deck from the design");
    roof.framing->facts[SLOT_framing_wet_service].is.yes = true;
    trial_run(trial, one, name, "load_duration", "wind", "safety_factor", "3", NULL);
    CHECK_NEAR(trial_number(trial, "capacity"), whole * 0.7, 1e-6, "wet wood from the design");
    forget(roof.plane, SLOT_roof_plane_deck_thickness);
    CHECK(!trial_run(trial, one, name, "load_duration", "wind", "safety_factor", "3", NULL) &&
              trial_misses(trial, roof.plane, SLOT_roof_plane_deck_thickness),
          "an unknown deck is asked for");
    set_quantity(roof.model, SLOT_attachment_model_embedment, 2, "in");
    CHECK(trial_run(trial, one, name, "load_duration", "wind", "safety_factor", "3", NULL),
          "unless the maker details the embedment");
    static const unsigned slots[] = {SLOT_framing_species, SLOT_framing_wet_service};
    for (size_t i = 0; i < 2; i++) {
        forget(roof.framing, slots[i]);
        CHECK(!trial_run(trial, one, name, "load_duration", "wind", "safety_factor", "3", NULL) &&
                  trial_misses(trial, roof.framing, slots[i]),
              object_row(roof.framing, slots[i])->name);
        roof.framing->facts[slots[i]].state = FACT_GIVEN;
    }
    forget(one, SLOT_attachment_stands_on);
    CHECK(!trial_run(trial, one, name, "load_duration", "wind", NULL) &&
              trial_misses(trial, one, SLOT_attachment_stands_on),
          "what it stands on is asked for");
}

static void test_off_member(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    struct object *near = add_attachment(&roof, "near", 48.5, 30);
    struct object *beside = add_attachment(&roof, "beside", 58, 30);
    CHECK(trial_run(trial, near, "off_member", NULL), "off_member runs");
    CHECK_NEAR(trial_number(trial, "offset"), 0.5, 1e-9, "half an inch from the center line");
    CHECK_NEAR(trial_number(trial, "edge"), 0.25, 1e-9, "a quarter inch to the edge");
    CHECK_NEAR(trial_number(trial, "member"), 2, 0, "the third member");
    trial_run(trial, beside, "off_member", NULL);
    CHECK_NEAR(trial_number(trial, "edge"), 0.75 - 10, 1e-9, "it stands beside every member");
    forget(roof.framing, SLOT_framing_first_at);
    CHECK(!trial_run(trial, near, "off_member", NULL) &&
              trial_misses(trial, roof.framing, SLOT_framing_first_at),
          "where the members stand is asked for");
}

static void test_weakest_part(struct trial *trial)
{
    trial_run(trial, NULL, "weakest_part", "capacity", "500 lbf", "governs", "mount", "fasteners",
              "700 lbf", "mount", "500 lbf", "joint", "rail connection", "joint_holds", "600 lbf",
              NULL);
    CHECK_NEAR(trial_number(trial, "least"), 500, 1e-9, "the mount holds least");
    CHECK_TEXT(trial_word(trial, "part"), "mount", "and is named");
    CHECK_TEXT(trial_word(trial, "others"), "fasteners 700 lbf, rail connection 600 lbf",
               "the others beside it");
    trial_run(trial, NULL, "weakest_part", "capacity", "500 lbf", "governs", "mount", "mount",
              "500 lbf", "joint", "module clamp", "joint_holds", "499 lbf", NULL);
    CHECK_NEAR(trial_number(trial, "least"), 499, 1e-9, "what joins the array to it may, too");
    CHECK_TEXT(trial_word(trial, "part"), "module clamp", "and is named then");
    CHECK_TEXT(trial_word(trial, "others"), "mount 500 lbf", "beside what is there alone");
    trial_run(trial, NULL, "weakest_part", "capacity", "500 lbf", "governs", "fasteners", NULL);
    CHECK(trial->results[2].type == AMOUNT_NONE, "nothing else is told: no others");
}

/* What rule writers and the desk read of each calculator is there. */
static void test_rows(void)
{
    const struct calculator *const lists[] = {fastener_calculators, framing_calculators};
    size_t count = 0;
    for (size_t i = 0; i < 2; i++)
        for (const struct calculator *one = lists[i]; one->name != NULL; one++) {
            CHECK(calculator_find(one->about_kind, one->name) == one, one->name);
            CHECK(one->input_count <= CALCULATOR_INPUTS && one->result_count >= 1 &&
                      one->result_count <= CALCULATOR_RESULTS && one->source[0] != '\0' &&
                      one->sentence[0] != '\0',
                  one->name);
            count++;
        }
    CHECK(count == 31, "all calculators of connections and framing");
}

int main(void)
{
    struct trial trial;
    trial_open(&trial);
    test_model_uplift(&trial);
    test_model_paths(&trial);
    test_model_missing(&trial);
    test_model_lateral(&trial);
    test_model_base(&trial);
    test_placed(&trial);
    test_placed_push(&trial);
    test_off_member(&trial);
    test_weakest_part(&trial);
    test_rows();
    trial_close(&trial);
    return checks_end();
}
