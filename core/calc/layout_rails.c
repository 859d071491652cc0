/* Attachments and rails: what each carries, how far it stands from a framing member, spans. */
#include "layout_methods.h"

#include <math.h>
#include <string.h>

#include "layout_support.h"

bool layout_run_member_distance(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    const struct object *plane, *framing;
    const struct fact *at;
    const char *kind;
    struct quantity first, spacing;
    (void)inputs;
    if (!layout_plane_of(&plane, about, SLOT_attachment_plane, working) ||
        !layout_need_fact(&at, about, SLOT_attachment_at, working) ||
        !need_object(&framing, plane, SLOT_roof_plane_framing, working))
        return false;
    if (framing == NULL)
        return working_missing(working, plane, SLOT_roof_plane_framing);
    if (!need_word(&kind, framing, SLOT_framing_kind, working))
        return false;
    if (strcmp(kind, "rafter") != 0 && strcmp(kind, "truss") != 0)
        return working_beyond(working,
                              "members of kind %s do not run up the slope of roof plane %s", kind,
                              plane->path);
    if (!need_quantity(&first, framing, SLOT_framing_first_at, working) ||
        !need_quantity(&spacing, framing, SLOT_framing_spacing, working))
        return false;
    double beside = at->is.point.x - first.value;
    double nearest = round(beside / spacing.value);
    working_step(working, NULL, "x %.6g m; the nearest member stands at %.6g m", at->is.point.x,
                 first.value + nearest * spacing.value);
    results[0] = layout_metres(fabs(beside - nearest * spacing.value));
    results[1] = layout_metres(first.value + nearest * spacing.value);
    return true;
}

bool layout_run_attachment_area(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    const struct object *plane;
    struct layout_plane *opened;
    const struct layout_support *support;
    (void)inputs;
    if (!layout_plane_of(&plane, about, SLOT_attachment_plane, working) ||
        !layout_support_open(&support, &opened, plane, working))
        return false;
    size_t at = layout_place_of(about, support->attachments, support->attachment_count,
                                sizeof *support->attachments);
    if (at < support->attachment_count)
        results[0] = layout_square_metres(support->attachments[at].area);
    return true;
}

bool layout_run_supported_area(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    const struct layout_support *support;
    double total = 0, most = 0;
    (void)inputs;
    if (!layout_support_open(&support, &plane, about, working))
        return false;
    for (size_t i = 0; i < support->attachment_count; i++) {
        if (support->attachments[i].area > most || i == 0) {
            most = support->attachments[i].area;
            results[2] = amount_of_word(support->attachments[i].object->path);
        }
        total += support->attachments[i].area;
    }
    results[0] = layout_square_metres(total);
    results[1] = layout_square_metres(most);
    working_step(working, NULL, "%zu attachments carry %.6g m² of modules, the busiest %.6g m²",
                 support->attachment_count, total, most);
    return true;
}

bool layout_run_unsupported(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    const struct layout_support *support;
    size_t count = 0;
    (void)inputs;
    if (!layout_support_open(&support, &plane, about, working))
        return false;
    for (size_t i = 0; i < plane->module_count; i++)
        if (!support->is_carried[i] && count++ == 0)
            results[1] = amount_of_word(plane->modules[i].object->path);
    results[0] = amount_of_number((double)count);
    return true;
}

bool layout_run_short_of_rails(struct amount *results, const struct object *about,
                               const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    const struct layout_support *support;
    size_t count = 0;
    if (!layout_support_open(&support, &plane, about, working))
        return false;
    for (size_t i = 0; i < plane->module_count; i++)
        if ((double)support->lines[i] < inputs[0].quantity.value && count++ == 0)
            results[1] = amount_of_word(plane->modules[i].object->path);
    results[0] = amount_of_number((double)count);
    return true;
}

bool layout_run_rail_spread(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    const struct layout_support *support;
    (void)inputs;
    if (!layout_support_open(&support, &plane, about, working))
        return false;
    results[0] = amount_of_number(1);
    results[1] = layout_metres(0);
    double largest = 0;
    for (size_t i = 0; i < plane->module_count; i++) {
        const struct point *corners = plane->modules[i].corners;
        double across =
            support->runs_up ? corners[2].x - corners[0].x : corners[2].y - corners[0].y;
        if (support->rail_count == 0 || support->lines[i] < 2)
            continue;
        largest = fmax(largest, support->spreads[i]);
        if (support->spreads[i] / across >= results[0].quantity.value)
            continue;
        results[0] = amount_of_number(support->spreads[i] / across);
        results[1] = layout_metres(support->spreads[i]);
        results[2] = amount_of_word(plane->modules[i].object->path);
    }
    results[3] = layout_metres(largest);
    return true;
}

/* One rail with the ends of its run and the attachments on it, in order. */
struct spans {
    double largest, cantilever;
    size_t count;
};

static bool find_spans(struct spans *out, const struct object *about, struct working *working)
{
    const struct object *plane;
    struct layout_plane *opened;
    const struct layout_support *support;
    if (!layout_plane_of(&plane, about, SLOT_rail_plane, working) ||
        !layout_support_open(&support, &opened, plane, working))
        return false;
    const struct layout_rail *rail = NULL;
    for (size_t i = 0; i < support->rail_count; i++)
        rail = support->rails[i].object == about ? &support->rails[i] : rail;
    if (rail == NULL)
        return working_beyond(working, "rail %s is not among the rails of its plane", about->path);
    double at = rail->from; /* walks from one attachment to the next */
    *out = (struct spans){0, 0, 0};
    for (;;) {
        double next = INFINITY;
        for (size_t i = 0; i < support->attachment_count; i++) {
            struct point p = support->attachments[i].at;
            double along = support->runs_up ? p.y : p.x;
            if (support->attachments[i].rail == about && (out->count == 0 || along > at))
                next = fmin(next, along);
        }
        if (isinf(next))
            break;
        if (out->count++ == 0)
            out->cantilever = fmax(0, next - rail->from);
        else
            out->largest = fmax(out->largest, next - at);
        at = next;
    }
    if (out->count == 0)
        return working_wrong(working, NULL, "rail %s has no attachment", about->path);
    out->cantilever = fmax(out->cantilever, rail->to - at);
    return true;
}

bool layout_run_rail_span(struct amount *results, const struct object *about,
                          const struct amount *inputs, struct working *working)
{
    struct spans spans;
    (void)inputs;
    if (!find_spans(&spans, about, working))
        return false;
    results[0] = layout_metres(spans.largest);
    return true;
}

bool layout_run_rail_cantilever(struct amount *results, const struct object *about,
                                const struct amount *inputs, struct working *working)
{
    struct spans spans;
    (void)inputs;
    if (!find_spans(&spans, about, working))
        return false;
    results[0] = layout_metres(spans.cantilever);
    return true;
}
