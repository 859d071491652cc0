#include "array_weight.h"

#include <string.h>

const struct parameter array_weight_results[3] = {
    GIVEN_QUANTITY("weight", MASS, "lb", 0, 1e7, "Weight of modules and racking together."),
    GIVEN_QUANTITY("modules", MASS, "lb", 0, 1e7, "Weight of the modules."),
    GIVEN_QUANTITY("racking", MASS, "lb", 0, 1e7,
                   "Weight of the racking; on one plane its share by area of modules."),
};
const struct parameter array_area_results[2] = {
    GIVEN_QUANTITY("area", AREA, "ft²", 0, 1e7, "Area of the modules along their surface."),
    GIVEN_NUMBER("modules", 0, 1e6, "How many modules."),
};
const struct parameter array_dead_load_results[3] = {
    GIVEN_QUANTITY("load", PRESSURE, "psf", 0, 1000, "Weight per area of the modules."),
    GIVEN_QUANTITY("weight", MASS, "lb", 0, 1e7, "Weight of modules and racking together."),
    GIVEN_QUANTITY("area", AREA, "ft²", 0, 1e7, "Area of the modules along their surface."),
};
const struct parameter weight_on_attachment_results[3] = {
    GIVEN_QUANTITY("weight", FORCE, "lbf", 0, 1e6, "Weight on one attachment, on average."),
    GIVEN_QUANTITY("array", MASS, "lb", 0, 1e7, "Weight of modules and racking together."),
    GIVEN_NUMBER("attachments", 1, 1e6, "How many attachments."),
};
const struct parameter module_area_results[1] = {
    GIVEN_QUANTITY("area", AREA, "ft²", 0, 1000, "Area of the module along its surface.")};

/* Modules added up: SI units. */
struct sum {
    size_t count;
    double weight, area;
};

static bool find_model(const struct object **out, const struct object *module,
                       struct working *working)
{
    return need_object(out, module, SLOT_module_model, working) &&
           (*out != NULL || working_missing(working, module, SLOT_module_model));
}

static bool find_area(double *out, const struct object *module, struct working *working)
{
    const struct object *model;
    struct quantity length, width;
    if (!find_model(&model, module, working) ||
        !need_quantity(&length, model, SLOT_module_model_length, working) ||
        !need_quantity(&width, model, SLOT_module_model_width, working))
        return false;
    *out = length.value * width.value;
    return true;
}

/* A module of a model, as the one before it: its facts need not be read again. */
struct like {
    const struct object *model;
    double weight, area;
};

/* Adds one module unless it is to be removed. Its weight is asked for only where it is wanted. */
static bool add_module(struct sum *sum, struct like *last, const struct object *module,
                       bool wants_weight, struct working *working)
{
    const struct object *model;
    const char *status;
    struct quantity weight = {0};
    if (!need_word(&status, module, SLOT_module_status, working))
        return false;
    if (strcmp(status, "removed") == 0)
        return true;
    if (!find_model(&model, module, working))
        return false;
    if (model != last->model) {
        if (!find_area(&last->area, module, working) ||
            (wants_weight && !need_quantity(&weight, model, SLOT_module_model_weight, working)))
            return false;
        last->model = model;
        last->weight = weight.value;
    }
    sum->count++;
    sum->area += last->area;
    sum->weight += last->weight;
    return true;
}

static bool add_all(struct sum *sum, struct object *const *modules, size_t count, bool wants_weight,
                    struct working *working)
{
    struct like last = {NULL, 0, 0};
    for (size_t i = 0; i < count; i++)
        if (!add_module(sum, &last, modules[i], wants_weight, working))
            return false;
    return true;
}

/* All modules of the design, those made from rows too. */
static bool sum_design(struct sum *sum, bool wants_weight, struct working *working)
{
    const struct objects *all = &working->design->of_kind[KIND_module];
    struct object *const *listed;
    size_t count;
    *sum = (struct sum){0};
    return need_objects(&listed, &count, working->design->root, SLOT_design_modules, working) &&
           add_all(sum, all->items, all->count, wants_weight, working);
}

static bool sum_plane(struct sum *sum, const struct object *plane, bool wants_weight,
                      struct working *working)
{
    struct object *const *modules;
    size_t count;
    *sum = (struct sum){0};
    return need_objects(&modules, &count, plane, SLOT_roof_plane_modules, working) &&
           add_all(sum, modules, count, wants_weight, working);
}

static bool find_racking(const struct object **out, struct working *working)
{
    return need_object(out, working->design->root, SLOT_design_racking, working) &&
           (*out != NULL || working_missing(working, working->design->root, SLOT_design_racking));
}

/* Modules and racking in kg; on one plane, or NULL for the whole design. */
struct weight {
    struct sum modules;
    double racking, whole;
};

static bool weigh(struct weight *out, const struct object *plane, struct working *working)
{
    const struct object *racking;
    struct quantity weight;
    struct sum all;
    if (!sum_design(&all, true, working) || !find_racking(&racking, working) ||
        !need_quantity(&weight, racking, SLOT_racking_weight, working))
        return false;
    out->modules = all;
    out->racking = weight.value;
    if (plane != NULL) {
        if (!sum_plane(&out->modules, plane, true, working))
            return false;
        out->racking = all.area > 0 ? weight.value * out->modules.area / all.area : 0;
        working_step(working, "common practice, no source",
                     "racking shared by area of modules: %.4g of %.4g lb",
                     quantity_as(quantity_of(out->racking, "kg"), "lb"), quantity_as(weight, "lb"));
    }
    out->whole = out->modules.weight + out->racking;
    return true;
}

static struct amount pounds(double kilograms)
{
    return result_in(quantity_as(quantity_of(kilograms, "kg"), "lb"), "lb");
}

static struct amount square_feet(double square_metres)
{
    return result_in(quantity_as(quantity_of(square_metres, "m²"), "ft²"), "ft²");
}

static bool give_weight(struct amount *results, const struct object *plane, struct working *working)
{
    struct weight weight;
    if (!weigh(&weight, plane, working))
        return false;
    results[0] = pounds(weight.whole);
    results[1] = pounds(weight.modules.weight);
    results[2] = pounds(weight.racking);
    working_step(working, NULL, "%zu modules %.4g lb + racking %.4g lb = %.4g lb",
                 weight.modules.count, quantity_as(results[1].quantity, "lb"),
                 quantity_as(results[2].quantity, "lb"), quantity_as(results[0].quantity, "lb"));
    return true;
}

static bool give_dead_load(struct amount *results, const struct object *plane,
                           struct working *working)
{
    struct weight weight;
    if (!weigh(&weight, plane, working))
        return false;
    if (weight.modules.area <= 0)
        return working_beyond(working, "there is no module to spread the array's weight over");
    results[1] = pounds(weight.whole);
    results[2] = square_feet(weight.modules.area);
    double pounds_on = quantity_as(results[1].quantity, "lb");
    double feet = quantity_as(results[2].quantity, "ft²");
    results[0] = result_in(pounds_on / feet, "psf");
    working_step(working, NULL, "%.5g lb / %.5g ft² = %.4g psf", pounds_on, feet, pounds_on / feet);
    return true;
}

static void give_area(struct amount *results, const struct sum *sum)
{
    results[0] = square_feet(sum->area);
    results[1] = amount_of_number((double)sum->count);
}

bool run_design_array_weight(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    (void)about;
    (void)inputs;
    return give_weight(results, NULL, working);
}

bool run_roof_plane_array_weight(struct amount *results, const struct object *about,
                                 const struct amount *inputs, struct working *working)
{
    (void)inputs;
    return give_weight(results, about, working);
}

bool run_design_array_dead_load(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    (void)about;
    (void)inputs;
    return give_dead_load(results, NULL, working);
}

bool run_roof_plane_array_dead_load(struct amount *results, const struct object *about,
                                    const struct amount *inputs, struct working *working)
{
    (void)inputs;
    return give_dead_load(results, about, working);
}

bool run_design_array_area(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    (void)about;
    (void)inputs;
    struct sum sum;
    if (!sum_design(&sum, false, working))
        return false;
    give_area(results, &sum);
    return true;
}

bool run_roof_plane_array_area(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    (void)inputs;
    struct sum sum;
    if (!sum_plane(&sum, about, false, working))
        return false;
    give_area(results, &sum);
    return true;
}

bool run_module_area(struct amount *results, const struct object *about,
                     const struct amount *inputs, struct working *working)
{
    (void)inputs;
    double area;
    if (!find_area(&area, about, working))
        return false;
    results[0] = square_feet(area);
    return true;
}

bool run_design_weight_per_attachment(struct amount *results, const struct object *about,
                                      const struct amount *inputs, struct working *working)
{
    (void)inputs;
    const struct object *racking;
    struct object *const *listed;
    size_t count;
    struct weight weight;
    (void)about;
    if (!weigh(&weight, NULL, working) || !find_racking(&racking, working) ||
        !need_objects(&listed, &count, racking, SLOT_racking_attachments, working))
        return false;
    count = working->design->of_kind[KIND_attachment].count;
    if (count == 0)
        return working_beyond(working, "there is no attachment to carry the array's weight");
    results[1] = pounds(weight.whole);
    double pounds_on = quantity_as(results[1].quantity, "lb");
    results[0] = result_in(pounds_on / (double)count, "lbf");
    results[2] = amount_of_number((double)count);
    working_step(working, NULL, "%.5g lb / %zu attachments = %.4g lbf", pounds_on, count,
                 pounds_on / (double)count);
    return true;
}
