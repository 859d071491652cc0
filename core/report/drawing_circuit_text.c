/* What a one-line diagram says of a circuit's conductors. */
#include <string.h>

#include "drawing_circuit.h"

const char *circuit_conductor_text(struct canvas *canvas, const struct object *circuit)
{
    struct amount sets = object_amount(circuit, SLOT_circuit_parallel_sets);
    const char *several = sets.type == AMOUNT_NUMBER && sets.quantity.value > 1
                              ? arena_format(canvas->arena, "%g sets of ", sets.quantity.value)
                              : "";
    return arena_format(canvas->arena, "%s%s %s %s", several != NULL ? several : "",
                        fact_shown(canvas, circuit, SLOT_circuit_conductor_size),
                        fact_shown(canvas, circuit, SLOT_circuit_conductor_material),
                        fact_shown(canvas, circuit, SLOT_circuit_insulation));
}

const char *circuit_raceway_text(struct canvas *canvas, const struct object *circuit)
{
    const char *method = fact_shown(canvas, circuit, SLOT_circuit_wiring_method);
    bool is_open = strcmp(method, "free air") == 0 || strstr(method, "cable") != NULL;
    return is_open ? method
                   : arena_format(canvas->arena, "%s %s", method,
                                  fact_shown(canvas, circuit, SLOT_circuit_raceway_size));
}

const char *circuit_ocpd_text(struct canvas *canvas, const struct object *circuit)
{
    if (object_is(circuit, SLOT_circuit_ocpd, "none"))
        return "none";
    return arena_format(canvas->arena, "%s %s", fact_shown(canvas, circuit, SLOT_circuit_ocpd),
                        fact_shown(canvas, circuit, SLOT_circuit_ocpd_rating));
}

const char *circuit_neutral_text(struct canvas *canvas, const struct object *circuit)
{
    bool has_size = object_fact(circuit, SLOT_circuit_neutral_size)->state == FACT_GIVEN;
    bool is_dc = object_is(circuit, SLOT_circuit_role, "PV source") ||
                 object_is(circuit, SLOT_circuit_role, "PV output") ||
                 object_is(circuit, SLOT_circuit_role, "converter output");
    if (!has_size && is_dc)
        return "";
    if (!has_size && object_is(circuit, SLOT_circuit_neutral, "none"))
        return "; no N";
    const char *text = arena_format(canvas->arena, "; N %s",
                                    fact_shown(canvas, circuit, SLOT_circuit_neutral_size));
    return text != NULL ? text : ""; /* the arena stays marked as short */
}

/* Copper goes without saying; aluminum of the same size is another conductor. */
const char *circuit_ground_text(struct canvas *canvas, const struct object *circuit)
{
    const char *size = fact_shown(canvas, circuit, SLOT_circuit_egc_size);
    if (!object_is(circuit, SLOT_circuit_egc_material, "aluminum"))
        return size;
    const char *text = arena_format(canvas->arena, "%s Al", size);
    return text != NULL ? text : "";
}
