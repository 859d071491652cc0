/* Where the array's loads stand on the members of a plane, and how much of it comes to one. */
#include "stands.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "layout_support.h"
#include "rafter.h"

int stand_by_member(const void *a, const void *b)
{
    const struct stand *one = a, *other = b;
    if (one->member < other->member || one->member > other->member)
        return one->member < other->member ? -1 : 1;
    return (one->bay > other->bay) - (one->bay < other->bay);
}

bool bearing_take(struct bearing *out, const struct object *framing, double spacing, double span,
                  struct working *working)
{
    const struct object *plane = framing->parent;
    struct quantity slope;
    double overhang;
    working_read(working, plane, SLOT_roof_plane_outline);
    if (!object_has(plane, SLOT_roof_plane_outline))
        return working_missing(working, plane, SLOT_roof_plane_outline);
    if (!need_quantity(&slope, plane, SLOT_roof_plane_slope, working) ||
        !timber_need_inches(&overhang, plane, SLOT_roof_plane_eave_overhang, working) ||
        !timber_need_inches(&out->first, framing, SLOT_framing_first_at, working))
        return false;
    const struct fact *outline = object_fact(plane, SLOT_roof_plane_outline);
    double lowest = outline->is.points[0].y;
    for (size_t i = 1; i < outline->count; i++)
        lowest = fmin(lowest, outline->is.points[i].y);
    out->cosine = cos(slope.value);
    out->eave = lowest / TIMBER_INCH * out->cosine + overhang;
    out->spacing = spacing;
    out->span = span;
    return true;
}

bool stands_take(struct stand **out, size_t *count, const struct bearing *bearing,
                 const struct object *plane, const double *loads, struct working *working)
{
    const struct fact *attachments = object_fact(plane, SLOT_roof_plane_attachments);
    size_t all = *count, outside = 0;
    *count = 0;
    *out = arena_take(working->arena, (all + 1) * sizeof **out);
    if (*out == NULL)
        return working_short(working);
    for (size_t i = 0; i < all; i++) {
        const struct object *attachment = attachments->is.objects[i];
        working_read(working, attachment, SLOT_attachment_at);
        if (!object_has(attachment, SLOT_attachment_at))
            return working_missing(working, attachment, SLOT_attachment_at);
        struct point at = object_fact(attachment, SLOT_attachment_at)->is.point;
        double along = at.y / TIMBER_INCH * bearing->cosine - bearing->eave;
        double bay = floor(along / bearing->span);
        double member = round((at.x / TIMBER_INCH - bearing->first) / bearing->spacing);
        if (along < 0) {
            outside++;
            continue;
        }
        (*out)[(*count)++] = (struct stand){
            fmax(member, 0), bay, fmin(along - bay * bearing->span, bearing->span), loads[i]};
    }
    if (outside > 0)
        working_step(working, NULL,
                     "%zu attachment(s) on the overhang relieve the span and are left out of it",
                     outside);
    qsort(*out, *count, sizeof **out, stand_by_member);
    return true;
}

/* The areas of array that the attachments of a plane carry, ft². */
static bool take_areas(double **out, size_t *count, const struct object *plane,
                       struct working *working)
{
    struct layout_plane *opened;
    const struct layout_support *support;
    if (!layout_support_open(&support, &opened, plane, working))
        return false;
    for (size_t i = 0; i < opened->module_count; i++)
        if (!support->is_carried[i])
            return working_beyond(working, "no attachment is found that carries module %s",
                                  opened->modules[i].object->path);
    *count = support->attachment_count;
    *out = arena_take(working->arena, (*count + 1) * sizeof **out);
    if (*out == NULL)
        return working_short(working);
    for (size_t i = 0; i < *count; i++)
        (*out)[i] = support->attachments[i].area / (TIMBER_INCH * TIMBER_INCH * 144);
    return true;
}

/* Rafters and trusses run up the slope; purlins and panels do not. */
static bool take_members(struct bearing *out, const struct object *framing, struct working *working)
{
    const char *kind;
    double spacing, span;
    if (!need_word(&kind, framing, SLOT_framing_kind, working))
        return false;
    if (strcmp(kind, "rafter") != 0 && strcmp(kind, "truss") != 0)
        return working_beyond(working, "which part of the array a %s carries is not at hand", kind);
    return timber_need_inches(&spacing, framing, SLOT_framing_spacing, working) &&
           timber_need_inches(&span, framing, SLOT_framing_span, working) &&
           bearing_take(out, framing, spacing, span, working);
}

bool run_framing_array_share(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    struct bearing bearing;
    struct stand *stands;
    double *areas, most = 0, all = 0;
    size_t count, attachments;
    (void)inputs;
    if (!take_members(&bearing, about, working) ||
        !take_areas(&areas, &count, about->parent, working))
        return false;
    attachments = count;
    if (!stands_take(&stands, &count, &bearing, about->parent, areas, working))
        return false;
    double own = bearing.spacing * bearing.span / bearing.cosine / 144;
    for (size_t i = 0; i < count; i++) {
        bool is_next = i > 0 && stand_by_member(&stands[i], &stands[i - 1]) == 0;
        all = (is_next ? all : 0) + stands[i].load;
        most = fmax(most, all);
    }
    working_step(working, "statics",
                 "a member carries %.5g in × %.5g in along the slope = %.5g ft² of roof, and at "
                 "most %.5g ft² of array through its attachments: %.4g",
                 bearing.spacing, bearing.span / bearing.cosine, own, most, most / own);
    results[0] = amount_of_number(most / own);
    results[1] = amount_of_number((double)(attachments - count));
    return true;
}
