/* The methods about strings, branches, inverters and circuits, on a small invented design. */
#include "electrical_call.h"

/* Gives a fact by its name, as a design file would. */
static void give(struct object *object, const char *name, const char *text)
{
    int slot = kind_find_fact(object->kind, name);
    if (!CHECK(slot >= 0, name))
        exit(EXIT_FAILURE);
    const struct fact_row *row = &object->kind->facts[slot];
    struct fact *fact = &object->facts[slot];
    struct quantity quantity;
    struct quantity_fault fault;
    fact->state = FACT_GIVEN;
    switch (row->type) {
    case TYPE_QUANTITY:
        CHECK(quantity_read(&quantity, text, strlen(text), measure_dimension(row->measure), &fault),
              text);
        fact->is.number = quantity.value;
        break;
    case TYPE_CHOICE:
        fact->is.word = vocabulary_find(row->vocabulary, text);
        CHECK(fact->is.word != NULL, text);
        break;
    case TYPE_YESNO:
        fact->is.yes = strcmp(text, "yes") == 0;
        break;
    default:
        fact->is.number = strtod(text, NULL);
    }
}

static void take_away(struct object *object, const char *name)
{
    object->facts[kind_find_fact(object->kind, name)].state = FACT_MISSING;
}

static void refer(struct object *object, const char *name, struct object *to)
{
    struct fact *fact = &object->facts[kind_find_fact(object->kind, name)];
    fact->state = to != NULL ? FACT_GIVEN : FACT_NONE;
    fact->is.object = to;
}

static void refer_all(struct design *design, struct object *object, const char *name,
                      struct object *const *to, size_t count)
{
    struct fact *fact = &object->facts[kind_find_fact(object->kind, name)];
    fact->state = FACT_GIVEN;
    fact->count = count;
    fact->is.objects = arena_take(design->arena, count * sizeof *to);
    for (size_t i = 0; i < count; i++)
        fact->is.objects[i] = to[i];
}

struct house {
    struct arena *arena;
    struct design *design;
    struct object *sparrow, *wren, *converter, *row, *pair[2];
    struct object *inverter_model, *inverter, *micro, *branch;
    struct object *east, *west, *loft;                    /* strings */
    struct object *source, *output, *branch_run, *feeder; /* circuits */
    struct object *panel;
};

static struct object *add(struct house *house, enum kind_id kind, const char *name)
{
    return design_add(house->design, kind, house->design->root, name, (struct place){"x", 1, 1});
}

static void add_models(struct house *house)
{
    house->sparrow = add(house, KIND_module_model, "Sparrow 400");
    give(house->sparrow, "rated_power", "400 W");
    give(house->sparrow, "open_circuit_voltage", "40 V");
    give(house->sparrow, "power_voltage", "33 V");
    give(house->sparrow, "power_current", "12.1 A");
    give(house->sparrow, "short_circuit_current", "13 A");
    give(house->sparrow, "voc_coefficient", "-0.3 %/°C");
    give(house->sparrow, "vmp_coefficient", "-0.4 %/°C");
    house->wren = add(house, KIND_module_model, "Wren 350");
    give(house->wren, "rated_power", "350 W");
    give(house->wren, "open_circuit_voltage", "36 V");
    give(house->wren, "power_voltage", "30 V");
    give(house->wren, "short_circuit_current", "12 A");
    give(house->wren, "voc_coefficient_volts", "-0.1 V/°C");
    give(house->wren, "power_coefficient", "-0.35 %/°C");
    house->converter = add(house, KIND_converter_model, "Tern 425");
    give(house->converter, "maximum_output_current", "15 A");
    give(house->converter, "maximum_output_voltage", "60 V");
    give(house->converter, "string_voltage", "380 V");
    house->inverter_model = add(house, KIND_inverter_model, "Brae 7.7");
    give(house->inverter_model, "output_current", "32 A");
    house->micro = add(house, KIND_inverter_model, "Brae Mote");
    give(house->micro, "output_current", "1.21 A");
}

static struct object *add_string(struct house *house, const char *name, const char *input,
                                 struct object *const *modules, size_t count)
{
    struct object *string = add(house, KIND_string, name);
    refer_all(house->design, string, "modules", modules, count);
    refer(string, "inverter", house->inverter);
    give(string, "input", input);
    return string;
}

static struct object *add_circuit(struct house *house, const char *name, const char *role,
                                  struct object *carries)
{
    struct object *circuit = add(house, KIND_circuit, name);
    give(circuit, "role", role);
    refer_all(house->design, circuit, "carries", &carries, 1);
    give(circuit, "conductor_size", "10 AWG");
    give(circuit, "conductor_material", "copper");
    give(circuit, "insulation", "THWN-2");
    give(circuit, "insulation_temperature", "90 °C");
    give(circuit, "ambient_temperature", "44 °C");
    give(circuit, "current_carrying_conductors", "4");
    give(circuit, "conductors", "5");
    give(circuit, "wiring_method", "EMT");
    give(circuit, "raceway_size", "1/2 in");
    give(circuit, "on_roof", "no");
    give(circuit, "terminal_temperature", "60 °C");
    give(circuit, "egc_size", "10 AWG");
    give(circuit, "egc_material", "copper");
    give(circuit, "length", "80 ft");
    give(circuit, "nominal_voltage", "240 V");
    give(circuit, "ocpd", "circuit breaker");
    give(circuit, "ocpd_rating", "40 A");
    return circuit;
}

static void build(struct house *house)
{
    house->arena = arena_new();
    house->design = design_new(house->arena, "house.yaml");
    add_models(house);
    house->inverter = add(house, KIND_inverter, "garage");
    refer(house->inverter, "model", house->inverter_model);
    house->row = add(house, KIND_module_row, "row");
    refer(house->row, "model", house->sparrow);
    give(house->row, "columns", "5");
    give(house->row, "rows", "2");
    for (int i = 0; i < 2; i++) {
        house->pair[i] = add(house, KIND_module, i == 0 ? "odd" : "even");
        refer(house->pair[i], "model", house->wren);
    }
    struct object *const mixed[] = {house->row, house->pair[0], house->pair[1]};
    house->east = add_string(house, "east", "1", mixed, 3);
    house->west = add_string(house, "west", "1", mixed, 1);
    house->loft = add_string(house, "loft", "2", mixed, 1);
    give(house->east, "has_converters", "no");
    give(house->west, "has_converters", "no");
    refer(house->loft, "converter", house->converter);
    give(house->loft, "modules_per_converter", "2");
    house->branch = add(house, KIND_branch, "porch");
    refer(house->branch, "microinverter", house->micro);
    give(house->branch, "microinverters", "13");
    house->panel = add(house, KIND_panel, "main");
    house->source = add_circuit(house, "east-run", "PV source", house->east);
    house->output = add_circuit(house, "garage-run", "inverter output", house->inverter);
    house->branch_run = add_circuit(house, "porch-run", "microinverter branch", house->branch);
    house->feeder = add_circuit(house, "feeder", "feeder", house->panel);
    static const char *const lists[] = {"panels", "other_sources"};
    for (int i = 0; i < 2; i++)
        house->design->root->facts[kind_find_fact(house->design->root->kind, lists[i])].state =
            FACT_NONE;
    struct object *const strings[] = {house->east, house->west, house->loft};
    refer_all(house->design, house->design->root, "strings", strings, 3);
    CHECK(design_link(house->design), "the design is linked");
}

/* Runs a method and gives its first result's number; NAN where it stops. */
static double ask(struct call *call, const struct object *about, const char *method, ...)
{
    va_list pairs;
    va_start(pairs, method);
    bool ran = call_about(call, about, method, pairs);
    va_end(pairs);
    CHECK(ran, method);
    return ran ? number_of(call, call->calculator->results[0].name) : NAN;
}

static void test_strings(struct call *call, struct house *h)
{
    CHECK_NEAR(ask(call, h->east, "module_count", NULL), 12, 0, "a row of ten and two");
    CHECK_NEAR(ask(call, h->east, "power", NULL), 4700, 1e-9, "10 x 400 W + 2 x 350 W");
    /* 10 x 40 x (1 + 0.003 x 35) + 2 x (36 + 0.1 x 35) = 442 + 79. */
    CHECK_NEAR(ask(call, h->east, "cold_voltage", "temperature", "-10 °C", NULL), 521, 1e-9,
               "each model by its own coefficient");
    CHECK_NEAR(ask(call, h->east, "maximum_voltage", "temperature", "-10 °C", NULL), 521, 1e-9,
               "without converters");
    /* 65 °C: 10 x 33 x (1 - 0.16) + 2 x 30 x (1 - 0.14) = 277.2 + 51.6. */
    CHECK_NEAR(ask(call, h->east, "hot_voltage", "temperature", "35 °C", "rise", "30 °C", NULL),
               328.8, 1e-9, "in the heat");
    CHECK(has_step(call, "coefficient of power stands in"), "the stand-in is told");
    CHECK_NEAR(ask(call, h->east, "short_circuit_current", NULL), 13, 1e-9, "the strongest");
    CHECK_NEAR(ask(call, h->east, "source_current", NULL), 16.25, 1e-9, "125 % of it");
    CHECK_NEAR(ask(call, h->east, "converter_count", NULL), 0, 0, "no converters");
    CHECK_NEAR(ask(call, h->east, "backfeed_current", NULL), 16.25, 1e-9, "one other string");
    CHECK_NEAR(ask(call, h->loft, "converter_count", NULL), 5, 0, "ten modules, two each");
    CHECK_NEAR(ask(call, h->loft, "converter_power", NULL), 800, 1e-9, "two modules");
    CHECK_NEAR(ask(call, h->loft, "converter_voltage", "temperature", "-10 °C", NULL), 88.4, 1e-9,
               "two in series");
    CHECK_NEAR(ask(call, h->loft, "maximum_voltage", "temperature", "-10 °C", NULL), 300, 1e-9,
               "sum of converters' outputs");
    give(h->converter, "maximum_string_voltage", "480 V");
    CHECK_NEAR(ask(call, h->loft, "maximum_voltage", "temperature", "-10 °C", NULL), 480, 1e-9,
               "by instructions");
    CHECK_NEAR(ask(call, h->loft, "source_current", NULL), 15, 1e-9, "no irradiance factor");
    CHECK_NEAR(ask(call, h->loft, "operating_current", NULL), 4000 / 380.0, 1e-9, "P / U");
}

static void test_inverters(struct call *call, struct house *h)
{
    give(h->wren, "power_current", "11.7 A");
    CHECK_NEAR(ask(call, h->inverter, "output_current", NULL), 32, 1e-9, "marked");
    CHECK_NEAR(ask(call, h->inverter, "string_count", "input", "1", NULL), 2, 0, "two");
    CHECK_NEAR(ask(call, h->inverter, "input_current", "input", "1", NULL), 24.2, 1e-9,
               "two strings");
    CHECK_NEAR(ask(call, h->inverter, "short_circuit_current", "input", "1", NULL), 26, 1e-9,
               "two strings");
    CHECK_NEAR(ask(call, h->inverter, "short_circuit_current", "input", "2", NULL), 15, 1e-9,
               "converters' output");
    CHECK_NEAR(ask(call, h->inverter, "array_power", NULL), 12700, 1e-9, "all strings");
    CHECK_NEAR(ask(call, h->branch, "count", NULL), 13, 0, "microinverters");
    CHECK_NEAR(ask(call, h->branch, "output_current", NULL), 15.73, 1e-9, "13 x 1.21 A");
}

static void test_circuits(struct call *call, struct house *h)
{
    CHECK_NEAR(ask(call, h->source, "design_current", NULL), 16.25, 1e-9, "1.25 x Isc");
    CHECK_NEAR(ask(call, h->output, "design_current", NULL), 32, 1e-9, "marked output");
    CHECK_NEAR(ask(call, h->branch_run, "design_current", NULL), 15.73, 1e-9, "all units");
    CHECK_NEAR(ask(call, h->output, "needed_ocpd", "edition", "2020", NULL), 40, 0, "40 A");
    CHECK_NEAR(ask(call, h->branch_run, "needed_ocpd", "edition", "2020", NULL), 20, 0, "19.66 A");
    /* 40 A x 0.87 x 0.8. */
    CHECK_NEAR(ask(call, h->output, "corrected_ampacity", "edition", "2020", NULL), 27.84, 1e-9,
               "corrected");
    CHECK_NEAR(ask(call, h->output, "terminal_ampacity", NULL), 30, 0, "60 °C terminals");
    CHECK_NEAR(ask(call, h->output, "usable_ampacity", "edition", "2020", NULL), 27.84, 1e-9,
               "the smaller");
    CHECK_NEAR(ask(call, h->output, "largest_ocpd", "edition", "2020", NULL), 30, 0, "30 A");
    CHECK(call_of(call, h->output, "smallest_size", "edition", "2020", NULL), "a size");
    CHECK_TEXT(word_of(call, "size"), "8 AWG", "40 A at 60 °C terminals; 38.28 A corrected");
    CHECK(call_of(call, h->output, "needed_egc", "edition", "2020", NULL), "an EGC");
    CHECK_TEXT(word_of(call, "size"), "10 AWG", "40 A: 10 AWG copper");
    give(h->source, "ocpd", "none");
    take_away(h->source, "ocpd_rating");
    CHECK(call_of(call, h->source, "needed_egc", "edition", "2020", NULL), "no device");
    CHECK_TEXT(word_of(call, "size"), "10 AWG", "690.45: 20.3 A assumes 25 A");
    /* Table 9: 32 A x 2 x 80 ft x 1.2 Ω/kft; Table 8: 12.1 A x 160 ft x 1.24 Ω/kft. */
    CHECK_NEAR(ask(call, h->output, "voltage_drop", NULL), 6.144 / 240, 1e-9, "ac");
    give(h->source, "nominal_voltage", "400 V");
    CHECK_NEAR(ask(call, h->source, "voltage_drop", NULL), 2.40064 / 400, 1e-9, "dc");
    CHECK_NEAR(ask(call, h->output, "fill", NULL), 5 * 0.0211 / 0.304, 1e-9, "five in 1/2 in");
    CHECK_NEAR(ask(call, h->output, "fill_limit", NULL), 0.4, 1e-12, "40 %");
    give(h->output, "on_roof", "yes");
    give(h->output, "height_above_roof", "0.8 in");
    CHECK_NEAR(ask(call, h->output, "corrected_ampacity", "edition", "2020", NULL), 40 * 0.41 * 0.8,
               1e-9, "77 °C on the roof in 2020");
    CHECK_NEAR(ask(call, h->output, "corrected_ampacity", "edition", "2023", NULL), 27.84, 1e-9,
               "not in 2023");
    give(h->branch_run, "ampacity", "400 A");
    CHECK_NEAR(ask(call, h->branch_run, "terminal_ampacity", NULL), 30, 0,
               "what is told above the table is not believed");
    give(h->branch_run, "ampacity", "20 A");
    CHECK_NEAR(ask(call, h->branch_run, "terminal_ampacity", NULL), 20, 0, "below it, it is");
    CHECK_NEAR(ask(call, h->branch_run, "corrected_ampacity", "edition", "2023", NULL), 20, 1e-9,
               "so after corrections");
    give(h->branch_run, "insulation", "trunk cable");
    give(h->branch_run, "ampacity", "56 A");
    CHECK_NEAR(ask(call, h->branch_run, "usable_ampacity", "edition", "2023", NULL), 55, 1e-9,
               "a trunk cable carries no more than its conductors in free air");
    give(h->branch_run, "ampacity", "20 A");
    take_away(h->branch_run, "conductor_size");
    CHECK_NEAR(ask(call, h->branch_run, "usable_ampacity", "edition", "2023", NULL), 20, 1e-9,
               "as the maker states it");
}

/* What is missing is named by thing and fact; what a table does not cover is a person's. */
static void check_missing(struct call *call, const struct object *about, const char *method,
                          const struct object *of, const char *fact, bool takes_edition)
{
    bool ran = takes_edition ? call_of(call, about, method, "edition", "2020", NULL)
                             : call_of(call, about, method, NULL);
    CHECK(!ran && call->working.stop.kind == STOP_MISSING, method);
    CHECK(call->working.stop.object == of, "the thing is named");
    if (call->working.stop.object != NULL)
        CHECK_TEXT(object_row(call->working.stop.object, call->working.stop.slot)->name, fact,
                   "the fact is named");
}

static void test_missing(struct call *call, struct house *h)
{
    take_away(h->sparrow, "short_circuit_current");
    check_missing(call, h->source, "design_current", h->sparrow, "short_circuit_current", false);
    give(h->sparrow, "short_circuit_current", "13 A");
    take_away(h->inverter_model, "output_current");
    check_missing(call, h->output, "needed_ocpd", h->inverter_model, "output_current", true);
    give(h->inverter_model, "output_current", "32 A");
    take_away(h->output, "terminal_temperature");
    check_missing(call, h->output, "terminal_ampacity", h->output, "terminal_temperature", false);
    give(h->output, "terminal_temperature", "75 °C");
    take_away(h->output, "height_above_roof");
    check_missing(call, h->output, "corrected_ampacity", h->output, "height_above_roof", true);
    take_away(h->east, "has_converters");
    check_missing(call, h->east, "source_current", h->east, "has_converters", false);
    give(h->east, "has_converters", "yes");
    check_missing(call, h->east, "source_current", h->east, "converter", false);
    give(h->east, "has_converters", "no");
    take_away(h->wren, "voc_coefficient_volts");
    CHECK(!call_of(call, h->east, "cold_voltage", "temperature", "-10 °C", NULL), "no coefficient");
    CHECK(call->working.stop.kind == STOP_MISSING && call->working.stop.object == h->wren,
          "the model without a coefficient");
    give(h->wren, "technology", "thin film");
    CHECK(!call_of(call, h->east, "cold_voltage", "temperature", "-10 °C", NULL) &&
              call->working.stop.kind == STOP_BEYOND,
          "the table does not hold for thin film");
    give(h->wren, "technology", "multicrystalline silicon");
    /* 442 + 2 x 36 x 1.14. */
    CHECK_NEAR(ask(call, h->east, "cold_voltage", "temperature", "-10 °C", NULL), 524.08, 1e-9,
               "the table holds for silicon");
    CHECK(!call_of(call, h->feeder, "design_current", NULL) &&
              call->working.stop.kind == STOP_BEYOND,
          "a feeder's current comes from its loads");
}

/* A circuit's voltage is that of the highest string it carries, alone or by way of a combiner. */
static void test_largest_voltage(struct call *call, struct house *h)
{
    struct object *root = h->design->root;
    struct object *box = add(h, KIND_combiner, "attic");
    struct object *carrier = add_circuit(h, "attic-run", "PV output", box);
    struct object *const both[] = {h->west, h->east};
    CHECK_NEAR(ask(call, h->output, "largest_voltage", NULL), 240, 1e-9, "no string: nominal");
    check_missing(call, h->source, "largest_voltage", root, "site", false);
    refer(root, "site", NULL);
    check_missing(call, h->source, "largest_voltage", root, "site", false);
    struct object *site = add(h, KIND_site, NULL);
    refer(root, "site", site);
    check_missing(call, h->source, "largest_voltage", site, "design_low_temperature", false);
    check_missing(call, carrier, "largest_voltage", box, "strings", false);
    refer_all(h->design, box, "strings", both, 2);
    check_missing(call, carrier, "largest_voltage", site, "design_low_temperature", false);
    give(site, "design_low_temperature", "-10 °C");
    give(h->wren, "voc_coefficient_volts", "-0.1 V/°C");
    /* As above: 521 V of the mixed string, 442 V of the ten modules alone. */
    CHECK_NEAR(ask(call, h->source, "largest_voltage", NULL), 521, 1e-9, "its string in the cold");
    CHECK_NEAR(ask(call, carrier, "largest_voltage", NULL), 521, 1e-9, "the highest of two");
    refer_all(h->design, box, "strings", both, 1);
    CHECK_NEAR(ask(call, carrier, "largest_voltage", NULL), 442, 1e-9, "the one that is left");
    give(carrier, "nominal_voltage", "600 V");
    CHECK_NEAR(ask(call, carrier, "largest_voltage", NULL), 600, 1e-9, "nominal, if that is more");
    take_away(carrier, "nominal_voltage");
    check_missing(call, carrier, "largest_voltage", carrier, "nominal_voltage", false);
}

static void check_opened(struct call *call, const struct object *thing, bool is, const char *why)
{
    CHECK(call_of(call, thing, "opened_by", "role", "utility", NULL), why);
    CHECK(call->results[0].type == AMOUNT_YESNO && call->results[0].yes == is, why);
}

static void check_untold(struct call *call, const struct object *thing, const struct object *of,
                         const char *fact)
{
    CHECK(!call_of(call, thing, "opened_by", "role", "utility", NULL), fact);
    CHECK(call->working.stop.kind == STOP_MISSING && call->working.stop.object == of, fact);
    if (call->working.stop.object != NULL)
        CHECK_TEXT(object_row(call->working.stop.object, call->working.stop.slot)->name, fact,
                   "the fact is named");
}

/* A disconnect opens what it is of, an inverter whose string it is of, and what is behind a panel
 * that it is of, however many panels are between. */
static void test_opened_by(struct call *call, struct house *h)
{
    struct object *root = h->design->root;
    struct object *knife = add(h, KIND_disconnect, "knife"), *shed = add(h, KIND_panel, "shed");
    struct object *bus = add(h, KIND_busbar, "main"), *shed_bus = add(h, KIND_busbar, "shed");
    struct object *breaker = add(h, KIND_breaker, "pv"), *feed = add(h, KIND_breaker, "feed");
    check_untold(call, h->inverter, root, "disconnects");
    refer_all(h->design, root, "disconnects", &knife, 1);
    check_untold(call, h->inverter, knife, "role");
    give(knife, "role", "PV system");
    check_opened(call, h->inverter, false, "of another role");
    give(knife, "role", "utility");
    check_untold(call, h->inverter, knife, "of");
    refer(knife, "of", NULL);
    check_opened(call, h->inverter, false, "of nothing");
    refer(knife, "of", h->branch);
    check_opened(call, h->branch, true, "its own");
    check_opened(call, h->inverter, false, "another's");
    take_away(h->east, "inverter");
    refer(knife, "of", h->east);
    check_opened(call, h->branch, false, "a string's is no branch's");
    check_untold(call, h->inverter, h->east, "inverter");
    refer(h->east, "inverter", h->inverter);
    check_opened(call, h->inverter, true, "by its string");
    refer(knife, "of", h->panel);
    check_untold(call, h->inverter, h->panel, "status");
    give(h->panel, "status", "existing");
    check_untold(call, h->inverter, h->panel, "busbars");
    refer_all(h->design, h->panel, "busbars", &bus, 1);
    check_untold(call, h->inverter, bus, "breakers");
    refer_all(h->design, bus, "breakers", &feed, 1);
    check_untold(call, h->inverter, feed, "status");
    give(feed, "status", "new");
    check_untold(call, h->inverter, feed, "serves");
    refer(feed, "serves", shed);
    check_untold(call, h->inverter, shed, "status");
    give(shed, "status", "new");
    refer_all(h->design, shed, "busbars", &shed_bus, 1);
    refer_all(h->design, shed_bus, "breakers", &breaker, 1);
    give(breaker, "status", "removed");
    check_opened(call, h->inverter, false, "its breaker is taken out");
    give(breaker, "status", "new");
    refer(breaker, "serves", h->inverter);
    check_opened(call, h->inverter, true, "behind two panels");
    check_opened(call, h->branch, false, "behind neither");
    give(shed, "status", "removed");
    check_opened(call, h->inverter, false, "the panel between is taken out");
    give(shed, "status", "new");
    refer(breaker, "serves", shed);
    check_opened(call, h->inverter, false, "a panel that feeds itself ends the search");
}

int main(void)
{
    struct call call;
    struct house house;
    call_open(&call);
    build(&house);
    call.working.design = house.design;
    test_strings(&call, &house);
    test_inverters(&call, &house);
    test_circuits(&call, &house);
    test_missing(&call, &house);
    test_largest_voltage(&call, &house);
    test_opened_by(&call, &house);
    call_close(&call);
    arena_free(house.arena);
    return checks_end();
}
