/* Methods about attachments and about framing, on a small design made by hand. */
#include "calculator_trial.h"
#include "wood.h"

struct roof {
    struct design *design;
    struct object *plane, *framing, *racking, *model;
};

static void set_quantity(struct object *object, unsigned slot, double value, const char *unit)
{
    CHECK(object_row(object, slot)->type == TYPE_QUANTITY, object_row(object, slot)->name);
    object->facts[slot].state = FACT_GIVEN;
    object->facts[slot].is.number = quantity_of(value, unit).value;
}

static void set_number(struct object *object, unsigned slot, double value)
{
    object->facts[slot].state = FACT_GIVEN;
    object->facts[slot].is.number = value;
}

static void set_word(struct object *object, unsigned slot, const char *word)
{
    const char *own = vocabulary_find(object_row(object, slot)->vocabulary, word);
    CHECK(own != NULL, word);
    object->facts[slot].state = FACT_GIVEN;
    object->facts[slot].is.word = own;
}

static void set_object(struct object *object, unsigned slot, struct object *other)
{
    object->facts[slot].state = FACT_GIVEN;
    object->facts[slot].is.object = other;
}

static void forget(struct object *object, unsigned slot)
{
    object->facts[slot].state = FACT_MISSING;
}

static struct object *add(struct roof *roof, enum kind_id kind, struct object *parent,
                          const char *name)
{
    return design_add(roof->design, kind, parent, name, (struct place){"roof.yaml", 1, 1});
}

/* 5/16 in lag of 4 in through 1/2 in of fixture: 2-1/2 in of thread less the tip, 2.3125 in. */
static void make_model(struct roof *roof)
{
    struct object *model = roof->model = add(roof, KIND_attachment_model, roof->design->root, "A");
    set_word(model, SLOT_attachment_model_kind, "flashed mount");
    set_word(model, SLOT_attachment_model_fastener, "lag screw");
    set_number(model, SLOT_attachment_model_fasteners, 1);
    set_quantity(model, SLOT_attachment_model_fastener_diameter, 0.3125, "in");
    set_quantity(model, SLOT_attachment_model_fastener_length, 4, "in");
    set_quantity(model, SLOT_attachment_model_fixture_thickness, 0.5, "in");
    set_quantity(model, SLOT_attachment_model_tested_uplift, 3000, "lbf");
    set_quantity(model, SLOT_attachment_model_tested_down, 4500, "lbf");
    set_quantity(model, SLOT_attachment_model_tested_lateral, 900, "lbf");
    set_word(model, SLOT_attachment_model_test_basis, "ultimate");
    set_word(model, SLOT_attachment_model_tested_on, "rafter");
    set_number(model, SLOT_attachment_model_prying_factor, 1);
}

static void make_roof(struct roof *roof, struct trial *trial)
{
    static const struct point outline[] = {{0, 0}, {9, 0}, {9, 4}, {0, 4}};
    working_close(&trial->working); /* the layout of the design before */
    roof->design = design_new(trial->arena, "roof.yaml");
    trial->working.design = roof->design;
    struct object *house = add(roof, KIND_roof, roof->design->root, NULL);
    struct object *plane = roof->plane = add(roof, KIND_roof_plane, house, "south");
    struct object *framing = roof->framing = add(roof, KIND_framing, plane, NULL);
    roof->racking = add(roof, KIND_racking, roof->design->root, NULL);
    plane->facts[SLOT_roof_plane_outline].state = FACT_GIVEN;
    plane->facts[SLOT_roof_plane_outline].is.points = outline;
    plane->facts[SLOT_roof_plane_outline].count = 4;
    set_quantity(plane, SLOT_roof_plane_slope, 0, "°");
    set_quantity(plane, SLOT_roof_plane_deck_thickness, 0.5, "in");
    set_quantity(plane, SLOT_roof_plane_eave_overhang, 0, "in");
    set_object(plane, SLOT_roof_plane_framing, framing);
    plane->facts[SLOT_roof_plane_attachments].state = FACT_NONE;
    set_word(framing, SLOT_framing_kind, "rafter");
    set_word(framing, SLOT_framing_size, "2x6");
    set_word(framing, SLOT_framing_species, "Hem-Fir");
    set_word(framing, SLOT_framing_grade, "No. 2");
    set_quantity(framing, SLOT_framing_spacing, 24, "in");
    set_quantity(framing, SLOT_framing_span, 12, "ft");
    set_quantity(framing, SLOT_framing_first_at, 0, "in");
    framing->facts[SLOT_framing_wet_service].state = FACT_GIVEN;
    make_model(roof);
}

static struct object *add_attachment(struct roof *roof, const char *name, double x, double y)
{
    struct object *attachment = add(roof, KIND_attachment, roof->racking, name);
    set_object(attachment, SLOT_attachment_model, roof->model);
    set_object(attachment, SLOT_attachment_plane, roof->plane);
    set_word(attachment, SLOT_attachment_stands_on, "rafter");
    attachment->facts[SLOT_attachment_at].state = FACT_GIVEN;
    attachment->facts[SLOT_attachment_at].is.point = (struct point){x * 0.0254, y * 0.0254};
    return attachment;
}

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

static void test_model_lateral(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    CHECK(trial_run(trial, roof.model, "lateral_capacity", "load_duration", "snow", "stands_on",
                    "rafter", "species", "Hem-Fir", "sheathing", "1/2 in", "safety_factor", "3",
                    "direction", "parallel to grain", "plate_thickness", "0.105 in", NULL),
          "lateral of a model runs");
    double penetration = 2.3125 / 2.5;
    CHECK_NEAR(trial_number(trial, "fasteners"), 190 * 1.15 * penetration, 1e-6,
               "Table 12K × CD × p/8D");
    CHECK_TEXT(trial_word(trial, "governs"), "fasteners", "less than 900/3");
    CHECK(trial_run(trial, roof.model, "lateral_capacity", "load_duration", "snow", "stands_on",
                    "rafter", "species", "Hem-Fir", "safety_factor", "3", NULL),
          "without a plate the test alone counts");
    CHECK_NEAR(trial_number(trial, "capacity"), 300, 1e-9, "900/3");
    CHECK(trial_run(trial, roof.model, "down_capacity", "safety_factor", "3", NULL), "down runs");
    CHECK_NEAR(trial_number(trial, "capacity"), 1500, 1e-9, "4500/3");
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

static bool bend(struct trial *trial, const struct roof *roof)
{
    return trial_run(trial, roof->framing, "bending", "load", "30 psf", "load_duration", "snow",
                     NULL);
}

static void test_framing(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    CHECK(bend(trial, &roof), "bending of framing runs");
    CHECK_NEAR(trial_number(trial, "moment"), 60 * 144 / 8.0 * 12, 1e-6, "wL²/8");
    CHECK_NEAR(trial_number(trial, "allowed"), 850 * 1.15 * 1.3 * 1.15, 1e-6, "F'b");
    CHECK(trial_run(trial, roof.framing, "shear", "load", "30 psf", "load_duration", "snow", NULL),
          "shear runs");
    CHECK_NEAR(trial_number(trial, "shear"), 360, 1e-9, "wL/2");
    CHECK(trial_run(trial, roof.framing, "deflection", "load", "20 psf", "deflection_limit", "180",
                    NULL),
          "deflection runs");
    CHECK_NEAR(trial_number(trial, "allowed"), 0.8, 1e-12, "L/180");
    CHECK(trial_run(trial, roof.framing, "allowable_span", "live", "30 psf", "dead", "10 psf",
                    "load_duration", "snow", "deflection_limit", "240", NULL),
          "span runs");
    CHECK_NEAR(round(trial_number(trial, "span") * 12), 9 * 12 + 7, 0, "EX15's 2x6 at 24 in: 9-7");
    static const unsigned slots[] = {
        SLOT_framing_kind,    SLOT_framing_size, SLOT_framing_species,    SLOT_framing_grade,
        SLOT_framing_spacing, SLOT_framing_span, SLOT_framing_wet_service};
    for (size_t i = 0; i < sizeof slots / sizeof slots[0]; i++) {
        forget(roof.framing, slots[i]);
        CHECK(!bend(trial, &roof) && trial_misses(trial, roof.framing, slots[i]),
              object_row(roof.framing, slots[i])->name);
        roof.framing->facts[slots[i]].state = FACT_GIVEN;
    }
    set_word(roof.framing, SLOT_framing_kind, "truss");
    CHECK(!bend(trial, &roof) && trial_stopped(trial, STOP_BEYOND, "truss drawings"),
          "a truss goes to an engineer, who is told what is needed");
    set_word(roof.framing, SLOT_framing_kind, "purlin");
    CHECK(!bend(trial, &roof) && trial_stopped(trial, STOP_BEYOND, "engineer"),
          "and so does a purlin");
}

static bool load_array(struct trial *trial, const struct roof *roof)
{
    return trial_run(trial, roof->framing, "under_array", "roof_load", "10 psf", "attachment_load",
                     "100 lbf", "load_duration", "roof live", NULL);
}

static void link_attachments(struct roof *roof, struct object **items, size_t count)
{
    struct fact *fact = &roof->plane->facts[SLOT_roof_plane_attachments];
    fact->state = FACT_GIVEN;
    fact->is.objects = items;
    fact->count = count;
}

static void test_under_array(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    double modulus = 7.5625, even = 20 * 144 / 8.0 * 12;
    CHECK(load_array(trial, &roof), "a roof without attachments runs");
    CHECK_NEAR(trial_number(trial, "stress"), even / modulus, 1e-6, "only the roof's own load");
    CHECK_NEAR(trial_number(trial, "attachments"), 0, 0, "none");
    /* In one line: each member one load at midspan. Unstaggered rows: two loads on each member. */
    struct object *items[4] = {
        add_attachment(&roof, "a", 24, 72), add_attachment(&roof, "b", 48, 72),
        add_attachment(&roof, "c", 24, 36), add_attachment(&roof, "d", 72, 36)};
    link_attachments(&roof, items, 2);
    CHECK(load_array(trial, &roof), "one row runs");
    CHECK_NEAR(trial_number(trial, "stress"), (even + 100 * 144 / 4.0) / modulus, 1e-6,
               "wL²/8 + PL/4");
    CHECK_NEAR(trial_number(trial, "attachments"), 1, 0, "one on each");
    double spread = trial_number(trial, "stress");
    link_attachments(&roof, items, 4);
    CHECK(load_array(trial, &roof), "two rows run");
    CHECK(trial_number(trial, "stress") > spread, "two loads on one member bend it more");
    CHECK_NEAR(trial_number(trial, "member"), 1, 0, "the member below both");
    CHECK_NEAR(trial_number(trial, "attachments"), 2, 0, "which carries two");
    CHECK_NEAR(trial_number(trial, "stress"), (even + 100 * (72 / 2.0 + 36 / 2.0)) / modulus, 1e-6,
               "moment below the load at midspan: its own and the other's");
    set_quantity(roof.plane, SLOT_roof_plane_eave_overhang, 40, "in");
    CHECK(load_array(trial, &roof), "with an overhang");
    CHECK(trial_says(trial, "2 attachment(s) on the overhang"), "those on it are told");
    items[0]->facts[SLOT_attachment_at].state = FACT_MISSING;
    CHECK(!load_array(trial, &roof) && trial_misses(trial, items[0], SLOT_attachment_at),
          "where an attachment stands is asked for");
    items[0]->facts[SLOT_attachment_at].state = FACT_GIVEN;
    static const unsigned slots[] = {SLOT_roof_plane_outline, SLOT_roof_plane_slope,
                                     SLOT_roof_plane_eave_overhang};
    for (size_t i = 0; i < 3; i++) {
        forget(roof.plane, slots[i]);
        CHECK(!load_array(trial, &roof) && trial_misses(trial, roof.plane, slots[i]),
              object_row(roof.plane, slots[i])->name);
        roof.plane->facts[slots[i]].state = FACT_GIVEN;
    }
}

/* Two modules of 60 × 40 in side by side, each carried by the attachments at them, without rails.
 */
static void lay_modules(struct roof *roof, struct object **modules)
{
    struct object *model = add(roof, KIND_module_model, roof->design->root, "M");
    set_quantity(model, SLOT_module_model_length, 60, "in");
    set_quantity(model, SLOT_module_model_width, 40, "in");
    for (int i = 0; i < 2; i++) {
        modules[i] = add(roof, KIND_module, roof->design->root, i == 0 ? "left" : "right");
        set_object(modules[i], SLOT_module_model, model);
        set_object(modules[i], SLOT_module_plane, roof->plane);
        set_word(modules[i], SLOT_module_orientation, "landscape");
        set_word(modules[i], SLOT_module_status, "new");
        modules[i]->facts[SLOT_module_at].state = FACT_GIVEN;
        modules[i]->facts[SLOT_module_at].is.point =
            (struct point){(12 + 60 * i) * 0.0254, 40 * 0.0254};
    }
    struct fact *lie = &roof->plane->facts[SLOT_roof_plane_modules];
    lie->state = FACT_GIVEN;
    lie->is.objects = modules;
    lie->count = 2;
    roof->plane->facts[SLOT_roof_plane_rails].state = FACT_NONE;
}

static bool spread_array(struct trial *trial, const struct roof *roof, const char *pressure)
{
    return trial_run(trial, roof->framing, "under_array", "roof_load", "0 psf", "array_load",
                     pressure, "load_duration", "snow", NULL);
}

/* Each module has one attachment in its middle: it carries the whole module. */
static void test_array_load(struct trial *trial)
{
    struct roof roof;
    struct object *modules[2];
    make_roof(&roof, trial);
    lay_modules(&roof, modules);
    struct object *items[2] = {add_attachment(&roof, "a", 42, 60),
                               add_attachment(&roof, "b", 102, 60)};
    link_attachments(&roof, items, 2);
    CHECK(spread_array(trial, &roof, "30 psf"), "the array's load by area runs");
    double load = 30 * 60 * 40 / 144.0;
    CHECK_NEAR(trial_number(trial, "stress"), load * 60 * 84 / 144 / 7.5625, 1e-6,
               "one module on one member: Pab/L");
    link_attachments(&roof, items, 1);
    CHECK(!spread_array(trial, &roof, "30 psf") && trial_stopped(trial, STOP_BEYOND, "right"),
          "a module that nothing carries is named");
    CHECK(!trial_run(trial, roof.framing, "under_array", "roof_load", "0 psf", "load_duration",
                     "snow", NULL) &&
              trial_stopped(trial, STOP_WRONG, "either attachment_load or array_load"),
          "one of the two loads is needed");
    forget(roof.plane, SLOT_roof_plane_rails);
    CHECK(!spread_array(trial, &roof, "30 psf") &&
              trial_misses(trial, roof.plane, SLOT_roof_plane_rails),
          "whether there are rails is asked for");
}

/* Bending grows with the load of an attachment (0 … 500 lbf) and with each further attachment
 * (0 … 20 of them, anywhere on the plane); the roof's own load 0 … 60 psf. */
static void test_array_monotony(struct trial *trial)
{
    unsigned long long state = 99;
    for (int i = 0; i < 60; i++) {
        struct roof roof;
        struct object *items[20];
        char roof_load[40], load[40];
        double last = 0, force = trial_random(&state, 0, 500);
        make_roof(&roof, trial);
        snprintf(roof_load, sizeof roof_load, "%.9g psf", trial_random(&state, 0, 60));
        for (size_t count = 0; count <= 20; count++) {
            if (count > 0)
                items[count - 1] = add_attachment(&roof, "x", trial_random(&state, 0, 350),
                                                  trial_random(&state, 0, 157));
            link_attachments(&roof, items, count);
            snprintf(load, sizeof load, "%.9g lbf", force);
            CHECK(trial_run(trial, roof.framing, "under_array", "roof_load", roof_load,
                            "attachment_load", load, "load_duration", "snow", NULL) &&
                      trial_number(trial, "stress") >= last,
                  "one more attachment never bends the worst member less");
            last = trial_number(trial, "stress");
        }
        snprintf(load, sizeof load, "%.9g lbf", force * 1.1);
        trial_run(trial, roof.framing, "under_array", "roof_load", roof_load, "attachment_load",
                  load, "load_duration", "snow", NULL);
        CHECK(trial_number(trial, "stress") >= last, "more load never bends it less");
    }
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
    CHECK(count == 27, "all calculators of connections and framing");
}

int main(void)
{
    struct trial trial;
    trial_open(&trial);
    test_model_uplift(&trial);
    test_model_paths(&trial);
    test_model_missing(&trial);
    test_model_lateral(&trial);
    test_placed(&trial);
    test_off_member(&trial);
    test_framing(&trial);
    test_under_array(&trial);
    test_array_load(&trial);
    test_array_monotony(&trial);
    test_rows();
    trial_close(&trial);
    return checks_end();
}
