/* What stands beside a thing in the one-line diagram. */
#include "drawing_one_line.h"

static size_t count_modules(const struct object *object, unsigned slot)
{
    size_t count;
    objects_in(&count, object, slot);
    return count;
}

static const char *model_text(struct canvas *canvas, const struct object *object, unsigned slot)
{
    return arena_format(canvas->arena, "model %s", name_shown(canvas, object, slot));
}

static struct label label_of_source(struct canvas *canvas, const struct object *object)
{
    if (object->kind->id == KIND_string) {
        bool is_plain = object_amount(object, SLOT_string_has_converters).type == AMOUNT_YESNO &&
                        !object_amount(object, SLOT_string_has_converters).yes;
        /* Two strings that meet at an inverter are not in parallel where each has its own input. */
        bool has_input = object_has(object, SLOT_string_input);
        return (struct label){
            {object->name,
             arena_format(canvas->arena, "%zu %s%s", count_modules(object, SLOT_string_modules),
                          has_input ? "in series, input " : "modules in series",
                          has_input ? fact_shown(canvas, object, SLOT_string_input) : ""),
             is_plain ? "no converters"
                      : arena_format(canvas->arena, "converters %s",
                                     name_shown(canvas, object, SLOT_string_converter))}};
    }
    if (object->kind->id == KIND_branch)
        return (struct label){{object->name,
                               arena_format(canvas->arena, "%s microinverters",
                                            fact_shown(canvas, object, SLOT_branch_microinverters)),
                               model_text(canvas, object, SLOT_branch_microinverter)}};
    return (struct label){
        {object->name, fact_shown(canvas, object, SLOT_source_kind), "other source"}};
}

static struct label label_of_panel(struct canvas *canvas, const struct object *panel)
{
    size_t count;
    struct object *const *buses = objects_in(&count, panel, SLOT_panel_busbars);
    const struct object *bus = count > 0 ? buses[0] : NULL;
    return (struct label){
        {panel->name,
         arena_format(canvas->arena, "bus %s", fact_shown(canvas, bus, SLOT_busbar_rating)),
         arena_format(canvas->arena, "protected at %s",
                      fact_shown(canvas, bus, SLOT_busbar_protecting_device))}};
}

struct label one_line_label(const struct line_sheet *sheet, const struct node *node)
{
    struct canvas *canvas = sheet->canvas;
    const struct object *object = node->object;
    switch (node->shape) {
    case NODE_STRING:
    case NODE_BRANCH:
    case NODE_SOURCE:
        return label_of_source(canvas, object);
    case NODE_INVERTER: {
        const struct object *model = object_in(object, SLOT_inverter_model);
        return (struct label){
            {object->name, model_text(canvas, object, SLOT_inverter_model),
             arena_format(canvas->arena, "output %s at %s",
                          fact_shown(canvas, model, SLOT_inverter_model_output_current),
                          fact_shown(canvas, model, SLOT_inverter_model_nominal_voltage))}};
    }
    case NODE_COMBINER:
        return (struct label){{object->name, "combiner",
                               arena_format(canvas->arena, "fuses %s",
                                            fact_shown(canvas, object, SLOT_combiner_fuse))}};
    case NODE_DISCONNECT:
        return (struct label){
            {object->name,
             arena_format(canvas->arena, "%s, %s", fact_shown(canvas, object, SLOT_disconnect_role),
                          fact_shown(canvas, object, SLOT_disconnect_rating)),
             node->is_guessed ? "place in the run not given"
                              : fact_shown(canvas, object, SLOT_disconnect_location)}};
    case NODE_JOINT:
        return (struct label){{"junction", NULL, NULL}};
    case NODE_TAP:
        return (struct label){{"tap on the service", "conductors", NULL}};
    case NODE_PANEL:
        return label_of_panel(canvas, object);
    case NODE_METER:
        return (struct label){{object != NULL ? object->name : "meter",
                               arena_format(canvas->arena, "utility meter, %s",
                                            fact_shown(canvas, object, SLOT_meter_rating)),
                               fact_shown(canvas, object, SLOT_meter_location)}};
    case NODE_UTILITY: {
        const struct object *service = only_one(sheet->design, KIND_service);
        return (struct label){
            {"utility",
             arena_format(canvas->arena, "%s, fault current %s",
                          fact_shown(canvas, service, SLOT_service_voltage),
                          fact_shown(canvas, service, SLOT_service_available_fault_current)),
             NULL}};
    }
    }
    return (struct label){{NULL, NULL, NULL}};
}
