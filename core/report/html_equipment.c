/* What is to be bought and where it goes: models counted, runs of conductors, devices. */
#include <string.h>

#include "html_tables.h"

struct use {
    const struct object *model;
    size_t count;
    const char *as;
};

struct uses {
    struct use items[64]; /* models of one design; more are told as such */
    size_t count, dropped;
};

static void add(struct uses *uses, const struct object *model, size_t count, const char *as)
{
    for (size_t i = 0; i < uses->count; i++)
        if (uses->items[i].model == model && strcmp(uses->items[i].as, as) == 0) {
            uses->items[i].count += count;
            return;
        }
    if (uses->count == sizeof uses->items / sizeof uses->items[0])
        uses->dropped++;
    else
        uses->items[uses->count++] = (struct use){model, count, as};
}

static void add_kind(struct uses *uses, const struct design *design, enum kind_id kind,
                     unsigned slot, const char *as)
{
    const struct objects *all = &design->of_kind[kind];
    for (size_t i = 0; i < all->count; i++) {
        const struct fact *model = object_fact(all->items[i], slot);
        if (model->state == FACT_GIVEN)
            add(uses, model->is.object, 1, as);
    }
}

/* One converter for so many modules; a last one may serve fewer. */
static void add_converters(struct uses *uses, const struct design *design)
{
    const struct objects *all = &design->of_kind[KIND_string];
    for (size_t i = 0; i < all->count; i++) {
        const struct fact *model = object_fact(all->items[i], SLOT_string_converter);
        const struct fact *modules = object_fact(all->items[i], SLOT_string_modules);
        double each = object_has(all->items[i], SLOT_string_modules_per_converter)
                          ? object_fact(all->items[i], SLOT_string_modules_per_converter)->is.number
                          : 1;
        size_t per = each < 1 ? 1 : (size_t)each;
        if (model->state == FACT_GIVEN && modules->state == FACT_GIVEN)
            add(uses, model->is.object, (modules->count + per - 1) / per, "DC-to-DC converter");
    }
}

static void add_microinverters(struct uses *uses, const struct design *design)
{
    const struct objects *all = &design->of_kind[KIND_branch];
    for (size_t i = 0; i < all->count; i++) {
        const struct fact *model = object_fact(all->items[i], SLOT_branch_microinverter);
        const struct fact *count = object_fact(all->items[i], SLOT_branch_microinverters);
        if (model->state == FACT_GIVEN && count->state == FACT_GIVEN)
            add(uses, model->is.object, (size_t)count->is.number, "Microinverter");
    }
}

/* How many there are the design does not tell. */
static void add_shutdown(struct uses *uses, const struct design *design)
{
    const struct objects *all = &design->of_kind[KIND_rapid_shutdown];
    for (size_t i = 0; i < all->count; i++) {
        const struct fact *device = object_fact(all->items[i], SLOT_rapid_shutdown_device);
        if (device->state == FACT_GIVEN && device->is.object->kind->id == KIND_shutdown_model)
            add(uses, device->is.object, 0, "Rapid shutdown device");
    }
}

static void collect(struct uses *uses, const struct design *design)
{
    add_kind(uses, design, KIND_module, SLOT_module_model, "Module");
    add_converters(uses, design);
    add_microinverters(uses, design);
    add_kind(uses, design, KIND_inverter, SLOT_inverter_model, "Inverter");
    add_kind(uses, design, KIND_racking, SLOT_racking_model, "Racking");
    add_kind(uses, design, KIND_attachment, SLOT_attachment_model, "Attachment");
    add_shutdown(uses, design);
    add_kind(uses, design, KIND_panel, SLOT_panel_model, "Panelboard");
}

static const char *fact_named(struct html *html, const struct object *model, const char *name)
{
    int slot = kind_find_fact(model->kind, name);
    const char *text = slot >= 0 ? html_fact(html, model, (unsigned)slot) : NULL;
    return text != NULL ? text : "–";
}

static void write_uses(struct html *html, const struct uses *uses)
{
    static const char *const heads[] = {"Model",       "Used as",   "Count", "Maker",
                                        "Weight each", "Listed to", NULL};
    if (uses->count == 0)
        return;
    html_table(html, NULL, "Equipment by model", heads);
    for (size_t i = 0; i < uses->count; i++) {
        const struct use *use = &uses->items[i];
        const char *count = use->count > 0
                                ? html_text(html, arena_format(html->arena, "%zu", use->count))
                                : "not told";
        const char *const cells[] = {use->model->name,
                                     use->as,
                                     count,
                                     fact_named(html, use->model, "maker"),
                                     fact_named(html, use->model, "weight"),
                                     fact_named(html, use->model, "listings")};
        html_row(html, cells, sizeof cells / sizeof cells[0]);
    }
    html_table_end(html);
    if (uses->dropped > 0)
        html_put(html, "p", NULL, "There are more models than this list holds.");
}

static void write_circuits(struct html *html)
{
    static const char *const heads[] = {
        "Run",          "Carries", "From", "To",     "Conductors", "Material", "Kind", "Ground",
        "Its material", "Raceway", "Size", "Length", "Device",     "Rating",   NULL};
    static const unsigned slots[] = {SLOT_circuit_role,
                                     SLOT_circuit_from,
                                     SLOT_circuit_to,
                                     SLOT_circuit_conductor_size,
                                     SLOT_circuit_conductor_material,
                                     SLOT_circuit_insulation,
                                     SLOT_circuit_egc_size,
                                     SLOT_circuit_egc_material,
                                     SLOT_circuit_wiring_method,
                                     SLOT_circuit_raceway_size,
                                     SLOT_circuit_length,
                                     SLOT_circuit_ocpd,
                                     SLOT_circuit_ocpd_rating};
    static const struct fact_table table = {KIND_circuit, "Conductors and raceways", heads, slots};
    html_fact_table(html, &table);
}

static void write_devices(struct html *html)
{
    static const char *const heads[] = {"Disconnect", "Role",         "Rating",    "Voltage",
                                        "Location",   "Interrupting", "Listed to", NULL};
    static const unsigned slots[] = {SLOT_disconnect_role,
                                     SLOT_disconnect_rating,
                                     SLOT_disconnect_voltage_rating,
                                     SLOT_disconnect_location,
                                     SLOT_disconnect_interrupting_rating,
                                     SLOT_disconnect_listings};
    static const struct fact_table table = {KIND_disconnect, "Disconnecting means", heads, slots};
    static const char *const breaker_heads[] = {"Breaker", "Duty",   "Rating", "Poles", "Space",
                                                "Place",   "Serves", "Status", NULL};
    static const unsigned breaker_slots[] = {
        SLOT_breaker_duty,  SLOT_breaker_rating, SLOT_breaker_poles, SLOT_breaker_position,
        SLOT_breaker_place, SLOT_breaker_serves, SLOT_breaker_status};
    static const struct fact_table breakers = {KIND_breaker, "Breakers", breaker_heads,
                                               breaker_slots};
    html_fact_table(html, &table);
    html_fact_table(html, &breakers);
}

void html_equipment(struct html *html)
{
    struct uses uses = {.count = 0};
    if (html->report->design == NULL)
        return;
    collect(&uses, html->report->design);
    html_section(html, "equipment", "Equipment");
    write_uses(html, &uses);
    write_circuits(html);
    write_devices(html);
    html_close(html);
}
