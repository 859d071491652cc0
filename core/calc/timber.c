#include "timber.h"

#include <math.h>
#include <string.h>

bool timber_need_inches(double *out, const struct object *object, unsigned slot,
                        struct working *working)
{
    struct quantity quantity;
    if (!need_quantity(&quantity, object, slot, working))
        return false;
    *out = quantity.value / TIMBER_INCH;
    return true;
}

bool timber_service_take(struct timber_service *out, struct amount duration, struct amount wet,
                         struct amount temperature, struct working *working)
{
    out->duration = wood_duration_find(duration.word);
    out->is_wet = is_given(wet) && wet.yes;
    out->temperature = amount_in(temperature, "°F", NAN);
    if (!is_given(wet))
        working_step(working, NULL,
                     "wet_service is not given: taken as dry (at most 19 %% moisture)");
    if (!is_given(temperature))
        working_step(working, NULL,
                     "temperature is not given: taken as at most 100 °F while fully loaded");
    if (out->temperature > 150)
        return working_beyond(
            working, "wood kept at %.4g °F is hotter than the 150 °F that the factors reach",
            out->temperature);
    return true;
}

bool timber_gravity(double *out, struct amount species, struct amount gravity,
                    struct working *working)
{
    if (is_given(species) == is_given(gravity))
        return working_wrong(working, "species",
                             "give either species or specific_gravity, and only one of them");
    if (is_given(gravity)) {
        *out = gravity.quantity.value;
        return true;
    }
    const struct wood_species *row = wood_species_find(species.word);
    if (row == NULL)
        return working_beyond(working, "no specific gravity is in the table for %s", species.word);
    *out = row->gravity;
    working_step(working, row->gravity_source, "%s: G = %.2f", row->name, row->gravity);
    return true;
}

/* Reference values, each with the older bending value where asked for. */
static bool take_values(struct timber_member *member, const struct wood_value **value,
                        const struct wood_species **species, struct working *working)
{
    member->section = wood_section_find(member->size);
    *value = wood_value_find(member->species, member->grade, member->size);
    *species = wood_species_find(member->species);
    if (member->section == NULL)
        return working_beyond(working, "no dressed size is in the table for %s", member->size);
    working_step(working, "PS 20 dressed sizes",
                 "%s: %.4g × %.4g in, A = %.5g in², S = %.6g in³, I = %.6g in⁴", member->size,
                 member->section->width, member->section->depth, wood_section_area(member->section),
                 wood_section_modulus(member->section),
                 wood_section_second_moment(member->section));
    if (*value == NULL || *species == NULL)
        return working_beyond(working,
                              "no sourced design values for %s %s %s: an engineer needs its grade "
                              "stamp and the supplement's values",
                              member->species, member->grade, member->size);
    return true;
}

static void adjust_bending(struct timber_member *member, const struct wood_value *value,
                           struct working *working)
{
    double base = member->by_code_tables ? value->bending_in_code : value->bending;
    double size = value->size == NULL ? member->section->size_factor : 1;
    double repeated = member->spacing <= 24 * (1 + 1e-9) ? 1.15 : 1;
    /* NDS Supplement 4A footnote: no loss where Fb times CF is at most 1150 psi. */
    double wet = member->is_wet && base * size > 1150 ? 0.85 : 1;
    member->bending = base * member->duration->factor * wet * size * repeated;
    working_step(working, value->source, "%s %s %s: Fb = %.4g psi", member->species, member->grade,
                 member->size, base);
    working_step(working, member->duration->source, "load duration, %s: CD = %.4g",
                 member->duration->load, member->duration->factor);
    working_step(working,
                 "NDS 4.3.9 (repetitive members up to 24 in on center; from memory), Supplement "
                 "Table 4A (size, wet service); compression edge held by the deck, CL = 1",
                 "F'b = Fb CD CM CF Cr = %.4g × %.4g × %.4g × %.4g × %.4g = %.5g psi", base,
                 member->duration->factor, wet, size, repeated, member->bending);
}

bool timber_member_take(struct timber_member *member, struct working *working)
{
    const struct wood_value *value;
    const struct wood_species *species;
    if (!take_values(member, &value, &species, working))
        return false;
    double wet_shear = member->is_wet ? 0.97 : 1, wet_stiffness = member->is_wet ? 0.9 : 1;
    member->elasticity = value->elasticity * wet_stiffness;
    working_step(working, value->source, "%s %s: E' = E CM = %.6g × %.4g = %.6g psi",
                 member->species, member->grade, value->elasticity, wet_stiffness,
                 member->elasticity);
    if (member->duration == NULL)
        return true;
    adjust_bending(member, value, working);
    member->shear = species->shear * member->duration->factor * wet_shear;
    working_step(working, "NDS Supplement Tables 4A and 4B (Fv from memory; CM secondary source)",
                 "F'v = Fv CD CM = %.4g × %.4g × %.4g = %.5g psi", species->shear,
                 member->duration->factor, wet_shear, member->shear);
    return true;
}

double timber_shear_stress(const struct wood_section *section, double shear)
{
    return 1.5 * shear / wood_section_area(section);
}
