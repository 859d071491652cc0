/* Facts as drawings show them: what nobody told stands as "not given". */
#include "drawing_sheet.h"

#include <math.h>
#include <string.h>

static const char not_given[] = "not given";

const char *fact_shown(struct canvas *canvas, const struct object *object, unsigned slot)
{
    char buffer[160];
    if (object == NULL)
        return not_given;
    const struct fact *fact = object_fact(object, slot);
    if (fact->state == FACT_NONE)
        return "none";
    if (!object_has(object, slot))
        return not_given;
    if (object_row(object, slot)->type == TYPE_TEXT)
        return fact->is.word;
    amount_write(buffer, sizeof buffer, object_amount(object, slot), NULL, 4);
    const char *kept = arena_copy(canvas->arena, buffer, strlen(buffer));
    canvas->is_short |= kept == NULL;
    return kept != NULL ? kept : not_given;
}

const struct object *object_in(const struct object *object, unsigned slot)
{
    if (object == NULL || !object_has(object, slot))
        return NULL;
    return object_fact(object, slot)->is.object;
}

const char *name_shown(struct canvas *canvas, const struct object *object, unsigned slot)
{
    (void)canvas;
    if (object != NULL && object_fact(object, slot)->state == FACT_NONE)
        return "none";
    const struct object *named = object_in(object, slot);
    return named != NULL ? named->name : not_given;
}

struct object *const *objects_in(size_t *count, const struct object *object, unsigned slot)
{
    *count = 0;
    if (object == NULL || object_fact(object, slot)->state != FACT_GIVEN)
        return NULL;
    const struct fact *fact = object_fact(object, slot);
    *count = fact->count;
    return fact->is.objects;
}

bool has_removed_status(const struct object *object, unsigned status_slot)
{
    return object_is(object, status_slot, "removed");
}

const char *feet_shown(struct canvas *canvas, double metres)
{
    static const char *const quarters[] = {"", " 1/4", " 1/2", " 3/4"};
    long all = lround(metres / 0.0254 * 4);
    long feet = all / 48, inches = all % 48 / 4, rest = all % 4;
    const char *text = arena_format(canvas->arena, "%ld'-%ld%s\"", feet, inches, quarters[rest]);
    canvas->is_short |= text == NULL;
    return text != NULL ? text : "";
}
