/* The modules of a string and its converters, as all that is said of a string reads them. */
#include <math.h>

#include "string_runs.h"

/* Modules */

bool need_model(const struct object **model, const struct object *module, unsigned slot,
                struct working *working)
{
    return need_object(model, module, slot, working) &&
           (*model != NULL || working_missing(working, module, slot));
}

/* A reference may name one module or a whole row. */
static bool read_reference(struct module_group *out, const struct object *reference,
                           struct working *working)
{
    double columns, rows;
    out->count = 1;
    if (reference->kind->id == KIND_module)
        return need_model(&out->model, reference, SLOT_module_model, working);
    if (!need_model(&out->model, reference, SLOT_module_row_model, working) ||
        !need_number(&columns, reference, SLOT_module_row_columns, working) ||
        !need_number(&rows, reference, SLOT_module_row_rows, working))
        return false;
    out->count = columns * rows;
    return true;
}

bool find_module_groups(struct module_group **groups, size_t *count, const struct object *thing,
                        unsigned slot, struct working *working)
{
    struct object *const *modules;
    size_t module_count;
    *count = 0;
    if (!need_objects(&modules, &module_count, thing, slot, working))
        return false;
    *groups = arena_take(working->arena, (module_count + 1) * sizeof **groups);
    if (*groups == NULL)
        return working_short(working);
    for (size_t i = 0; i < module_count; i++) {
        struct module_group one;
        size_t at = 0;
        if (!read_reference(&one, modules[i], working))
            return false;
        while (at < *count && (*groups)[at].model != one.model)
            at++;
        if (at == *count)
            (*groups)[(*count)++] = one;
        else
            (*groups)[at].count += one.count;
    }
    return true;
}

bool find_over_modules(double *sum, double *largest, const struct object *string, of_model *find,
                       const void *how, struct working *working)
{
    struct module_group *groups;
    size_t count;
    if (!find_module_groups(&groups, &count, string, SLOT_string_modules, working))
        return false;
    *sum = 0;
    *largest = 0;
    for (size_t i = 0; i < count; i++) {
        double one;
        if (!find(&one, groups[i].model, how, working))
            return false;
        *sum += groups[i].count * one;
        *largest = fmax(*largest, one);
        working_step(working, NULL, "%g x %.6g (%s) = %.6g", groups[i].count, one,
                     groups[i].model->path, groups[i].count * one);
    }
    return true;
}

bool count_one(double *out, const struct object *model, const void *how, struct working *working)
{
    (void)model;
    (void)how;
    (void)working;
    *out = 1;
    return true;
}

bool read_model_fact(double *out, const struct object *model, const void *how,
                     struct working *working)
{
    const struct model_fact *fact = how;
    struct quantity quantity;
    if (!need_quantity(&quantity, model, fact->slot, working))
        return false;
    *out = quantity_as(quantity, fact->unit);
    return true;
}

bool find_string_power(double *watts, const struct object *string, struct working *working)
{
    const struct model_fact power = {SLOT_module_model_rated_power, "W"};
    double largest;
    return find_over_modules(watts, &largest, string, read_model_fact, &power, working);
}

bool find_string_short_circuit(double *amperes, const struct object *string,
                               struct working *working)
{
    const struct model_fact current = {SLOT_module_model_short_circuit_current, "A"};
    double sum;
    return find_over_modules(&sum, amperes, string, read_model_fact, &current, working);
}

/* Converters */

bool find_string_converter(const struct object **model, const struct object *string,
                           struct working *working)
{
    bool has_converters;
    *model = NULL;
    enum fact_state state = object_fact(string, SLOT_string_converter)->state;
    if (state != FACT_MISSING)
        return need_object(model, string, SLOT_string_converter, working);
    return need_yesno(&has_converters, string, SLOT_string_has_converters, working) &&
           (!has_converters || working_missing(working, string, SLOT_string_converter));
}

bool need_converter(const struct object **model, const struct object *string,
                    struct working *working)
{
    return find_string_converter(model, string, working) &&
           (*model != NULL ||
            working_wrong(working, NULL, "string %s has no converters", string->path));
}

bool find_converter_count(double *converters, const struct object *string, struct working *working)
{
    double modules, largest, per;
    if (!find_over_modules(&modules, &largest, string, count_one, NULL, working) ||
        !need_number(&per, string, SLOT_string_modules_per_converter, working))
        return false;
    *converters = ceil(modules / per);
    working_step(working, NULL, "%g modules, %g per converter: %g converters", modules, per,
                 *converters);
    return true;
}

bool need_in(double *out, const struct object *model, unsigned slot, const char *unit,
             struct working *working)
{
    const struct model_fact fact = {slot, unit};
    return read_model_fact(out, model, &fact, working);
}
