/* A small roof built by hand, for the tests of layout: everything in m. */
#ifndef TESTS_ROOF_TRIAL_H
#define TESTS_ROOF_TRIAL_H
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include "calculator.h"
#include "layout.h"

struct trial {
    struct arena *arena, *scratch;
    struct design *design;
    struct object *roof, *building, *racking;
    struct working working;
};

static inline void *sure(void *made)
{
    if (made == NULL)
        abort();
    return made;
}

static inline struct fact *fact_of(struct object *object, unsigned slot)
{
    object->facts[slot].state = FACT_GIVEN;
    return &object->facts[slot];
}

static inline void give_number(struct object *object, unsigned slot, double number)
{
    fact_of(object, slot)->is.number = number;
}

static inline void give_word(struct object *object, unsigned slot, const char *word)
{
    fact_of(object, slot)->is.word = word;
}

static inline void give_point(struct object *object, unsigned slot, double x, double y)
{
    fact_of(object, slot)->is.point = (struct point){x, y};
}

static inline void give_object(struct object *object, unsigned slot, struct object *other)
{
    fact_of(object, slot)->is.object = other;
}

static inline void give_points(struct trial *trial, struct object *object, unsigned slot,
                               const double (*points)[2], size_t count)
{
    struct point *copy = sure(arena_take(trial->arena, (count + 1) * sizeof *copy));
    for (size_t i = 0; i < count; i++)
        copy[i] = (struct point){points[i][0], points[i][1]};
    struct fact *fact = fact_of(object, slot);
    fact->is.points = copy;
    fact->count = count;
}

/* Words apart by a blank. */
static inline void give_words(struct trial *trial, struct object *object, unsigned slot,
                              const char *words)
{
    const char **list = sure(arena_take(trial->arena, 64 * sizeof *list));
    struct fact *fact = fact_of(object, slot);
    fact->count = 0;
    while (*words != '\0' && fact->count < 64) {
        size_t length = strcspn(words, " ");
        list[fact->count++] = sure(arena_copy(trial->arena, words, length));
        words += length + (words[length] == ' ');
    }
    fact->is.words = list;
}

/* Adds to a LIST that design_link does not fill. */
static inline void give_item(struct trial *trial, struct object *object, unsigned slot,
                             struct object *item)
{
    struct fact *fact = fact_of(object, slot);
    struct object **items = sure(arena_take(trial->arena, (fact->count + 1) * sizeof *items));
    for (size_t i = 0; i < fact->count; i++)
        items[i] = fact->is.objects[i];
    items[fact->count++] = item;
    fact->is.objects = items;
}

static inline struct object *add_thing(struct trial *trial, enum kind_id kind,
                                       struct object *parent, const char *name)
{
    return sure(design_add(trial->design, kind, parent, name, (struct place){"trial", 1, 1}));
}

static inline const char *name_it(struct trial *trial, const char *stem)
{
    size_t count = 0;
    for (size_t id = 0; id < KIND_COUNT; id++)
        count += trial->design->of_kind[id].count;
    return sure(arena_format(trial->arena, "%s%zu", stem, count));
}

static inline struct trial trial_new(void)
{
    struct trial trial = {.arena = sure(arena_new()), .scratch = sure(arena_new())};
    trial.design = sure(design_new(trial.arena, "trial"));
    struct object *root = trial.design->root;
    trial.roof = add_thing(&trial, KIND_roof, root, NULL);
    trial.building = add_thing(&trial, KIND_building, root, NULL);
    trial.racking = add_thing(&trial, KIND_racking, root, NULL);
    give_object(root, SLOT_design_roof, trial.roof);
    give_object(root, SLOT_design_building, trial.building);
    give_object(root, SLOT_design_racking, trial.racking);
    root->facts[SLOT_design_modules].state = FACT_NONE;
    root->facts[SLOT_design_module_rows].state = FACT_NONE;
    trial.roof->facts[SLOT_roof_planes].state = FACT_NONE;
    trial.racking->facts[SLOT_racking_rails].state = FACT_NONE;
    trial.racking->facts[SLOT_racking_attachments].state = FACT_NONE;
    trial.racking->facts[SLOT_racking_attachment_rows].state = FACT_NONE;
    give_word(trial.racking, SLOT_racking_rail_direction, "across the slope");
    trial.working =
        (struct working){.arena = trial.scratch, .design = trial.design, .keeps_steps = true};
    return trial;
}

static inline void trial_free(struct trial *trial)
{
    working_close(&trial->working);
    arena_free(trial->scratch);
    arena_free(trial->arena);
}

static inline struct object *add_plane(struct trial *trial, const char *name,
                                       const double (*points)[2], size_t count, const char *edges,
                                       double slope)
{
    struct object *plane = add_thing(trial, KIND_roof_plane, trial->roof, name);
    give_points(trial, plane, SLOT_roof_plane_outline, points, count);
    give_words(trial, plane, SLOT_roof_plane_edges, edges);
    give_number(plane, SLOT_roof_plane_slope, slope);
    give_word(plane, SLOT_roof_plane_structure, "dwelling");
    plane->facts[SLOT_roof_plane_obstructions].state = FACT_NONE;
    give_item(trial, trial->roof, SLOT_roof_planes, plane);
    return plane;
}

static inline void place_in_plan(struct object *plane, double east, double north, double azimuth)
{
    give_point(plane, SLOT_roof_plane_plan_origin, east, north);
    give_number(plane, SLOT_roof_plane_azimuth, azimuth);
}

static inline struct object *add_model(struct trial *trial, double length, double width)
{
    struct object *model =
        add_thing(trial, KIND_module_model, trial->design->root, name_it(trial, "model"));
    give_number(model, SLOT_module_model_length, length);
    give_number(model, SLOT_module_model_width, width);
    return model;
}

static inline struct object *add_module(struct trial *trial, struct object *plane,
                                        struct object *model, double x, double y,
                                        const char *orientation)
{
    struct object *module = add_thing(trial, KIND_module, trial->design->root, name_it(trial, "m"));
    give_object(module, SLOT_module_plane, plane);
    give_object(module, SLOT_module_model, model);
    give_point(module, SLOT_module_at, x, y);
    give_word(module, SLOT_module_orientation, orientation);
    give_item(trial, trial->design->root, SLOT_design_modules, module);
    return module;
}

static inline struct object *add_obstruction(struct trial *trial, struct object *plane)
{
    struct object *thing = add_thing(trial, KIND_obstruction, plane, name_it(trial, "o"));
    give_item(trial, plane, SLOT_roof_plane_obstructions, thing);
    return thing;
}

static inline struct object *add_box(struct trial *trial, struct object *plane, double x, double y,
                                     double width, double length)
{
    struct object *thing = add_obstruction(trial, plane);
    give_point(thing, SLOT_obstruction_at, x, y);
    give_number(thing, SLOT_obstruction_width, width);
    give_number(thing, SLOT_obstruction_length, length);
    return thing;
}

static inline struct object *add_rail(struct trial *trial, struct object *plane, double x, double y,
                                      double length)
{
    struct object *rail = add_thing(trial, KIND_rail, trial->racking, name_it(trial, "r"));
    give_object(rail, SLOT_rail_plane, plane);
    give_point(rail, SLOT_rail_at, x, y);
    give_number(rail, SLOT_rail_length, length);
    give_item(trial, trial->racking, SLOT_racking_rails, rail);
    return rail;
}

static inline struct object *add_attachment(struct trial *trial, struct object *plane,
                                            struct object *rail, double x, double y)
{
    struct object *one = add_thing(trial, KIND_attachment, trial->racking, name_it(trial, "a"));
    give_object(one, SLOT_attachment_plane, plane);
    give_point(one, SLOT_attachment_at, x, y);
    if (rail != NULL)
        give_object(one, SLOT_attachment_rail, rail);
    else
        one->facts[SLOT_attachment_rail].state = FACT_NONE;
    give_item(trial, trial->racking, SLOT_racking_attachments, one);
    return one;
}

/* After the last thing was added. */
static inline void trial_link(struct trial *trial)
{
    if (!design_link(trial->design))
        abort();
}

/* Asks a method by name; inputs beyond those given are absent. */
static inline bool ask(struct amount *results, struct trial *trial, const struct object *about,
                       const char *method, const struct amount *given, size_t count)
{
    struct amount inputs[CALCULATOR_INPUTS] = {{.type = AMOUNT_NONE}};
    const struct calculator *calculator = calculator_find(about->kind->id, method);
    if (calculator == NULL) {
        fprintf(stderr, "no method %s of %s\n", method, about->kind->name);
        abort();
    }
    for (size_t i = 0; i < count; i++)
        inputs[i] = given[i];
    arena_clear(trial->scratch);
    working_start(&trial->working);
    return calculator_run(calculator, results, about, inputs, &trial->working);
}

static inline struct amount metres(double length)
{
    return amount_of_quantity(
        (struct quantity){.value = length, .dimension = measure_dimension(LENGTH)});
}

#endif
