/* A small roof with rafters and a model of attachment, made by hand, for tests of their methods. */
#ifndef TESTS_TIMBER_ROOF_H
#define TESTS_TIMBER_ROOF_H
#include "calculator_trial.h"

struct roof {
    struct design *design;
    struct object *plane, *framing, *racking, *model;
};

static inline void set_quantity(struct object *object, unsigned slot, double value,
                                const char *unit)
{
    CHECK(object_row(object, slot)->type == TYPE_QUANTITY, object_row(object, slot)->name);
    object->facts[slot].state = FACT_GIVEN;
    object->facts[slot].is.number = quantity_of(value, unit).value;
}

static inline void set_number(struct object *object, unsigned slot, double value)
{
    object->facts[slot].state = FACT_GIVEN;
    object->facts[slot].is.number = value;
}

static inline void set_word(struct object *object, unsigned slot, const char *word)
{
    const char *own = vocabulary_find(object_row(object, slot)->vocabulary, word);
    CHECK(own != NULL, word);
    object->facts[slot].state = FACT_GIVEN;
    object->facts[slot].is.word = own;
}

static inline void set_object(struct object *object, unsigned slot, struct object *other)
{
    object->facts[slot].state = FACT_GIVEN;
    object->facts[slot].is.object = other;
}

static inline void forget(struct object *object, unsigned slot)
{
    object->facts[slot].state = FACT_MISSING;
}

static inline struct object *add(struct roof *roof, enum kind_id kind, struct object *parent,
                                 const char *name)
{
    return design_add(roof->design, kind, parent, name, (struct place){"roof.yaml", 1, 1});
}

/* 5/16 in lag of 4 in through 1/2 in of fixture: 2-1/2 in of thread less the tip, 2.3125 in. */
static inline void make_model(struct roof *roof)
{
    struct object *model = roof->model = add(roof, KIND_attachment_model, roof->design->root, "A");
    set_word(model, SLOT_attachment_model_kind, "flashed mount");
    set_word(model, SLOT_attachment_model_fastener, "lag screw");
    set_number(model, SLOT_attachment_model_fasteners, 1);
    set_quantity(model, SLOT_attachment_model_fastener_diameter, 0.3125, "in");
    set_quantity(model, SLOT_attachment_model_fastener_length, 4, "in");
    set_quantity(model, SLOT_attachment_model_fixture_thickness, 0.5, "in");
    set_quantity(model, SLOT_attachment_model_plate_thickness, 0.105, "in");
    set_word(model, SLOT_attachment_model_plate_material, "steel");
    set_quantity(model, SLOT_attachment_model_tested_uplift, 3000, "lbf");
    set_quantity(model, SLOT_attachment_model_tested_down, 4500, "lbf");
    set_quantity(model, SLOT_attachment_model_tested_lateral, 900, "lbf");
    set_word(model, SLOT_attachment_model_test_basis, "ultimate");
    set_word(model, SLOT_attachment_model_tested_on, "rafter");
    set_number(model, SLOT_attachment_model_prying_factor, 1);
}

static inline void make_roof(struct roof *roof, struct trial *trial)
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

static inline struct object *add_attachment(struct roof *roof, const char *name, double x, double y)
{
    struct object *attachment = add(roof, KIND_attachment, roof->racking, name);
    set_object(attachment, SLOT_attachment_model, roof->model);
    set_object(attachment, SLOT_attachment_plane, roof->plane);
    set_word(attachment, SLOT_attachment_stands_on, "rafter");
    attachment->facts[SLOT_attachment_at].state = FACT_GIVEN;
    attachment->facts[SLOT_attachment_at].is.point = (struct point){x * 0.0254, y * 0.0254};
    return attachment;
}

static inline void link_attachments(struct roof *roof, struct object **items, size_t count)
{
    struct fact *fact = &roof->plane->facts[SLOT_roof_plane_attachments];
    fact->state = FACT_GIVEN;
    fact->is.objects = items;
    fact->count = count;
}

#endif
