#include "shown.h"

struct amount value_shown(const struct value *value, const struct design *design)
{
    const struct amount nothing = {.type = AMOUNT_NONE};
    if (value->state != VALUE_IN_FORCE || value->entry == NULL)
        return nothing;
    if (value->entry->band_count == 0)
        return value->is;
    for (size_t i = 0; design != NULL && i < design->of_kind[KIND_site].count; i++) {
        const struct object *site = design->of_kind[KIND_site].items[i];
        const struct amount *there =
            object_has(site, SLOT_site_elevation)
                ? value_at_elevation(value, object_quantity(site, SLOT_site_elevation))
                : NULL;
        if (there != NULL)
            return *there;
    }
    return nothing;
}
