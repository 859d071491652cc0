/* Methods about framing, on a small roof made by hand. */
#include "timber_roof.h"

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
    /* 30 psf everywhere and 30 psf more on the upper 4 of 12 ft, 60 plf each: upper V = 360 + 60 x
     * 4 x (1 - 4 / 24) = 560, zero in the drift only past 480; lower V = 400, M = 400² / 120. */
    CHECK(trial_run(trial, roof.framing, "shear", "load", "30 psf", "load_duration", "snow",
                    "drift", "30 psf", "reach", "4 ft", NULL),
          "shear with a drift");
    CHECK_NEAR(trial_number(trial, "shear"), 560, 1e-9, "the upper reaction");
    CHECK(trial_run(trial, roof.framing, "bending", "load", "30 psf", "load_duration", "snow",
                    "drift", "30 psf", "reach", "4 ft", NULL),
          "bending with a drift");
    CHECK_NEAR(trial_number(trial, "moment"), 400 * 400 / 120.0 * 12, 1e-6, "below the drift");
    /* On the upper 6 ft: V = 360 + 360 x 0.75 = 630 < 720: M = 630² / 240 lbf·ft. */
    CHECK(trial_run(trial, roof.framing, "bending", "load", "30 psf", "load_duration", "snow",
                    "drift", "30 psf", "reach", "6 ft", NULL),
          "a longer drift");
    CHECK_NEAR(trial_number(trial, "moment"), 630 * 630 / 240.0 * 12, 1e-6, "in the drift");
    CHECK(trial_run(trial, roof.framing, "bending", "load", "30 psf", "load_duration", "snow",
                    "drift", "30 psf", "reach", "40 ft", NULL),
          "a drift past the span");
    CHECK_NEAR(trial_number(trial, "moment"), 120 * 144 / 8.0 * 12, 1e-6, "as an even load");
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

/* On a slope a span is measured in plan; beyond it the next span begins. */
static void test_slope_and_spans(struct trial *trial)
{
    struct roof roof;
    make_roof(&roof, trial);
    double even = 20 * 144 / 8.0 * 12, middle = 100 * 144 / 4.0;
    set_quantity(roof.plane, SLOT_roof_plane_slope, 60, "°");
    struct object *items[2] = {add_attachment(&roof, "low", 24, 144),
                               add_attachment(&roof, "high", 24, 144)};
    link_attachments(&roof, items, 1);
    load_array(trial, &roof);
    CHECK_NEAR(trial_number(trial, "stress"), (even + middle) / 7.5625, 1e-6,
               "144 in up a slope of 60° is 72 in of plan: midspan");
    link_attachments(&roof, items, 2);
    load_array(trial, &roof);
    CHECK_NEAR(trial_number(trial, "stress"), (even + 2 * middle) / 7.5625, 1e-6, "both there");
    items[1]->facts[SLOT_attachment_at].is.point.y = (144 + 288) * 0.0254;
    load_array(trial, &roof);
    CHECK_NEAR(trial_number(trial, "stress"), (even + middle) / 7.5625, 1e-6,
               "one in the next span does not bend this one");
    CHECK_NEAR(trial_number(trial, "attachments"), 1, 0, "one on each span");
    static const struct point lifted[] = {{0, 1}, {9, 1}, {9, 4}, {0, 4}};
    roof.plane->facts[SLOT_roof_plane_outline].is.points = lifted;
    items[0]->facts[SLOT_attachment_at].is.point.y = 1 + 144 * 0.0254;
    link_attachments(&roof, items, 1);
    load_array(trial, &roof);
    CHECK_NEAR(trial_number(trial, "stress"), (even + middle) / 7.5625, 1e-6,
               "the eave is the lowest of the outline, wherever its zero lies");
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
    CHECK(trial_run(trial, roof.framing, "array_share", NULL), "its share of the array runs");
    CHECK_NEAR(trial_number(trial, "share"), 60 * 40 / (24 * 144.0), 1e-9,
               "60 in x 40 in of module on 2 ft x 12 ft of roof");
    CHECK_NEAR(trial_number(trial, "on_overhang"), 0, 0, "none stands past the wall");
    set_word(roof.framing, SLOT_framing_kind, "truss");
    CHECK(trial_run(trial, roof.framing, "array_share", NULL), "trusses stand as rafters do");
    set_word(roof.framing, SLOT_framing_kind, "purlin");
    CHECK(!trial_run(trial, roof.framing, "array_share", NULL) &&
              trial_stopped(trial, STOP_BEYOND, "purlin"),
          "purlins do not");
    set_word(roof.framing, SLOT_framing_kind, "rafter");
    set_quantity(roof.plane, SLOT_roof_plane_eave_overhang, 70, "in");
    CHECK(trial_run(trial, roof.framing, "array_share", NULL), "with an overhang");
    CHECK_NEAR(trial_number(trial, "on_overhang"), 2, 0, "both stand on it");
    CHECK_NEAR(trial_number(trial, "share"), 0, 0, "and bring the span nothing");
    set_quantity(roof.plane, SLOT_roof_plane_eave_overhang, 0, "in");
    working_close(&trial->working); /* geometry is kept for one review; this is another design */
    link_attachments(&roof, items, 1);
    CHECK(!spread_array(trial, &roof, "30 psf") && trial_stopped(trial, STOP_BEYOND, "right"),
          "a module that nothing carries is named");
    CHECK(!trial_run(trial, roof.framing, "array_share", NULL) &&
              trial_stopped(trial, STOP_BEYOND, "right"),
          "there, too");
    CHECK(!trial_run(trial, roof.framing, "under_array", "roof_load", "0 psf", "load_duration",
                     "snow", NULL) &&
              trial_stopped(trial, STOP_WRONG, "either attachment_load or array_load"),
          "one of the two loads is needed");
    working_close(&trial->working);
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

int main(void)
{
    struct trial trial;
    trial_open(&trial);
    test_framing(&trial);
    test_under_array(&trial);
    test_slope_and_spans(&trial);
    test_array_load(&trial);
    test_array_monotony(&trial);
    trial_close(&trial);
    return checks_end();
}
