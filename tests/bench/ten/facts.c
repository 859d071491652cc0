/* The facts that the ten checks read, as JSON for the peers: SI numbers, words, null where nobody
 * told. */
#include "ten.h"

static void write_number(FILE *out, const char *name, const struct object *object, unsigned slot)
{
    if (object_has(object, slot))
        fprintf(out, ",\"%s\":%.17g", name, object->facts[slot].is.number);
    else
        fprintf(out, ",\"%s\":null", name);
}

static void write_word(FILE *out, const char *name, const struct object *object, unsigned slot)
{
    if (object_has(object, slot))
        fprintf(out, ",\"%s\":\"%s\"", name, object->facts[slot].is.word);
    else
        fprintf(out, ",\"%s\":null", name);
}

/* The output currents of what a circuit carries, or null; of what has no such current (a string):
 * none. */
static void write_carried(FILE *out, const struct object *circuit)
{
    const struct fact *carries = &circuit->facts[SLOT_circuit_carries];
    if (carries->state == FACT_MISSING) {
        fputs(",\"carries\":null", out);
        return;
    }
    fputs(",\"carries\":[", out);
    for (size_t i = 0, count = 0; i < carries->count; i++) {
        const struct object *one = carries->is.objects[i];
        if (one->kind->id != KIND_inverter)
            continue;
        if (count++ > 0)
            fputc(',', out);
        const struct object *model =
            object_has(one, SLOT_inverter_model) ? one->facts[SLOT_inverter_model].is.object : NULL;
        if (model != NULL && object_has(model, SLOT_inverter_model_output_current))
            fprintf(out, "%.17g", model->facts[SLOT_inverter_model_output_current].is.number);
        else
            fputs("null", out);
    }
    fputc(']', out);
}

static void write_breakers(FILE *out, const struct object *bus)
{
    const struct fact *breakers = &bus->facts[SLOT_busbar_breakers];
    if (breakers->state == FACT_MISSING) {
        fputs(",\"breakers\":null", out);
        return;
    }
    fputs(",\"breakers\":[", out);
    for (size_t i = 0; i < breakers->count; i++) {
        fprintf(out, "%s{\"n\":%zu", i > 0 ? "," : "", i);
        write_word(out, "duty", breakers->is.objects[i], SLOT_breaker_duty);
        write_number(out, "rating", breakers->is.objects[i], SLOT_breaker_rating);
        fputc('}', out);
    }
    fputc(']', out);
}

static void write_facts(FILE *out, const struct object *object)
{
    switch ((int)object->kind->id) {
    case KIND_circuit: {
        const struct fact *roof = &object->facts[SLOT_circuit_on_roof];
        write_word(out, "role", object, SLOT_circuit_role);
        write_number(out, "ocpd_rating", object, SLOT_circuit_ocpd_rating);
        write_number(out, "ridge_distance", object, SLOT_circuit_ridge_distance);
        fprintf(out, ",\"on_roof\":%s",
                roof->state == FACT_MISSING ? "null"
                : roof->is.yes              ? "true"
                                            : "false");
        write_carried(out, object);
        break;
    }
    case KIND_busbar:
        write_number(out, "rating", object, SLOT_busbar_rating);
        write_number(out, "protecting_device", object, SLOT_busbar_protecting_device);
        write_breakers(out, object);
        break;
    case KIND_racking:
        write_number(out, "height_above_roof", object, SLOT_racking_height_above_roof);
        break;
    case KIND_roof_plane:
        write_word(out, "covering", object, SLOT_roof_plane_covering);
        write_number(out, "slope", object, SLOT_roof_plane_slope);
        write_number(out, "dead_load", object, SLOT_roof_plane_dead_load);
        break;
    case KIND_string:
        if (object->facts[SLOT_string_modules].state == FACT_MISSING)
            fputs(",\"modules\":null", out);
        else
            fprintf(out, ",\"modules\":%zu", object->facts[SLOT_string_modules].count);
        break;
    case KIND_disconnect:
        write_word(out, "role", object, SLOT_disconnect_role);
        write_number(out, "distance_to_meter", object, SLOT_disconnect_distance_to_meter);
        break;
    case KIND_rapid_shutdown:
        write_number(out, "voltage_inside", object, SLOT_rapid_shutdown_voltage_inside);
        break;
    case KIND_label:
        write_number(out, "letter_height", object, SLOT_label_letter_height);
        break;
    }
}

void facts_write(FILE *out, const struct design *design)
{
    static const enum kind_id kinds[] = {KIND_racking,    KIND_busbar,        KIND_circuit,
                                         KIND_roof_plane, KIND_disconnect,    KIND_label,
                                         KIND_string,     KIND_rapid_shutdown};
    bool is_first = true;
    fputc('[', out);
    for (size_t k = 0; k < sizeof kinds / sizeof *kinds; k++)
        for (size_t i = 0; i < design->of_kind[kinds[k]].count; i++) {
            const struct object *object = design->of_kind[kinds[k]].items[i];
            fprintf(out, "%s{\"kind\":\"%s\",\"name\":\"%s\"", is_first ? "" : ",\n",
                    object->kind->name, object->path);
            write_facts(out, object);
            fputc('}', out);
            is_first = false;
        }
    fputs("]\n", out);
}
