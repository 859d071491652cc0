#include "layout_support.h"

#include <math.h>
#include <string.h>

static bool read_rails(struct layout_support *out, const struct object *plane,
                       struct working *working)
{
    const struct objects *rackings = &working->design->of_kind[KIND_racking];
    struct object *const *rails;
    const char *direction;
    if (!need_objects(&rails, &out->rail_count, plane, SLOT_roof_plane_rails, working))
        return false;
    out->runs_up = false;
    if (out->rail_count == 0)
        return true;
    if (rackings->count == 0)
        return working_missing(working, working->design->root, SLOT_design_racking);
    if (!need_word(&direction, rackings->items[0], SLOT_racking_rail_direction, working))
        return false;
    out->runs_up = strcmp(direction, "up the slope") == 0;
    out->rails = arena_take(working->arena, out->rail_count * sizeof *out->rails);
    if (out->rails == NULL)
        return working_short(working);
    for (size_t i = 0; i < out->rail_count; i++) {
        const struct fact *at;
        struct quantity length;
        if (!layout_need_fact(&at, rails[i], SLOT_rail_at, working) ||
            !need_quantity(&length, rails[i], SLOT_rail_length, working))
            return false;
        struct point p = at->is.point;
        double from = out->runs_up ? p.y : p.x;
        out->rails[i] =
            (struct layout_rail){rails[i], out->runs_up ? p.x : p.y, from, from + length.value};
    }
    return true;
}

static bool read_attachments(struct layout_support *out, const struct object *plane,
                             struct working *working)
{
    struct object *const *objects;
    if (!need_objects(&objects, &out->attachment_count, plane, SLOT_roof_plane_attachments,
                      working))
        return false;
    out->attachments = arena_take(working->arena, out->attachment_count * sizeof *out->attachments);
    if (out->attachments == NULL)
        return working_short(working);
    for (size_t i = 0; i < out->attachment_count; i++) {
        const struct fact *at;
        const struct object *rail = NULL;
        if (!layout_need_fact(&at, objects[i], SLOT_attachment_at, working) ||
            (out->rail_count > 0 && !need_object(&rail, objects[i], SLOT_attachment_rail, working)))
            return false;
        out->attachments[i] = (struct layout_attachment){objects[i], at->is.point, rail, 0};
    }
    return true;
}

/* A module seen along the rails. */
struct stretch {
    double from, to, low, high; /* along, across */
};

static struct stretch stretch_of(const struct layout_support *support,
                                 const struct layout_module *module)
{
    struct point a = module->corners[0], b = module->corners[2];
    return support->runs_up ? (struct stretch){a.y, b.y, a.x, b.x}
                            : (struct stretch){a.x, b.x, a.y, b.y};
}

static bool is_below(const struct layout_rail *rail, const struct stretch *module)
{
    return rail->across >= module->low - LAYOUT_REACH &&
           rail->across <= module->high + LAYOUT_REACH && rail->from < module->to - LAYOUT_SLACK &&
           rail->to > module->from + LAYOUT_SLACK;
}

/* Rails in one line are one: is the attachment on a rail of that line? */
static bool is_on_line(const struct layout_support *support, const struct layout_attachment *one,
                       double across)
{
    for (size_t i = 0; i < support->rail_count; i++)
        if (support->rails[i].object == one->rail &&
            fabs(support->rails[i].across - across) <= LAYOUT_SLACK)
            return true;
    return false;
}

static bool has_attachment(const struct layout_support *support, double across)
{
    for (size_t i = 0; i < support->attachment_count; i++)
        if (is_on_line(support, &support->attachments[i], across))
            return true;
    return false;
}

/* The part of low..high that is nearer to `mine` than to any other rail line that carries the
 * module.
 */
static double width_of_line(const struct layout_support *support, const struct stretch *module,
                            double mine)
{
    double low = module->low, high = module->high;
    for (size_t i = 0; i < support->rail_count; i++) {
        double other = support->rails[i].across;
        if (fabs(other - mine) <= LAYOUT_SLACK || !is_below(&support->rails[i], module) ||
            !has_attachment(support, other))
            continue;
        if (other < mine)
            low = fmax(low, (other + mine) / 2);
        else
            high = fmin(high, (other + mine) / 2);
    }
    return fmax(0, high - low);
}

static double along_of(const struct layout_support *support, size_t attachment)
{
    struct point at = support->attachments[attachment].at;
    return support->runs_up ? at.y : at.x;
}

/* Shares a line's strip of a module among the line's attachments. */
static void share_strip(struct layout_support *support, const struct stretch *module, double across,
                        double width)
{
    for (size_t i = 0; i < support->attachment_count; i++) {
        if (!is_on_line(support, &support->attachments[i], across))
            continue;
        double from = module->from, to = module->to, mine = along_of(support, i);
        for (size_t j = 0; j < support->attachment_count; j++) {
            double other = along_of(support, j);
            if (j == i || !is_on_line(support, &support->attachments[j], across))
                continue;
            if (fabs(other - mine) <= LAYOUT_SLACK) /* two at one spot: the first takes all */
                to = j < i ? from : to;
            else if (other < mine)
                from = fmax(from, (other + mine) / 2);
            else
                to = fmin(to, (other + mine) / 2);
        }
        support->attachments[i].area += width * fmax(0, to - from);
    }
}

static bool share_by_rails(struct layout_support *support, const struct layout_module *module)
{
    struct stretch stretch = stretch_of(support, module);
    bool is_carried = false;
    for (size_t i = 0; i < support->rail_count; i++) {
        double across = support->rails[i].across;
        bool is_counted = false; /* by a rail before it in the same line */
        for (size_t j = 0; j < i; j++)
            is_counted = is_counted || (fabs(support->rails[j].across - across) <= LAYOUT_SLACK &&
                                        is_below(&support->rails[j], &stretch));
        if (is_counted || !is_below(&support->rails[i], &stretch) ||
            !has_attachment(support, across))
            continue;
        share_strip(support, &stretch, across, width_of_line(support, &stretch, across));
        is_carried = true;
    }
    return is_carried;
}

enum { CELL_CORNERS = 16 };

static bool is_at_module(const struct layout_attachment *one, const struct layout_module *module)
{
    struct shape shape = layout_module_shape(module);
    return flat_contains(&shape, one->at, LAYOUT_REACH);
}

/* Shares a module among the attachments at it: each takes what is nearest to it. */
static bool share_directly(struct layout_support *support, const struct layout_module *module,
                           bool *is_carried, struct working *working)
{
    for (size_t i = 0; i < support->attachment_count; i++) {
        struct point cell[CELL_CORNERS];
        size_t count = 4;
        struct layout_attachment *mine = &support->attachments[i];
        if (!is_at_module(mine, module))
            continue;
        *is_carried = true;
        memcpy(cell, module->corners, sizeof module->corners);
        for (size_t j = 0; j < support->attachment_count && count > 0; j++) {
            const struct layout_attachment *other = &support->attachments[j];
            if (j == i || !is_at_module(other, module))
                continue;
            if (flat_length(mine->at, other->at) <= LAYOUT_SLACK)
                count = j < i ? 0 : count;
            else if (count < CELL_CORNERS - 2)
                count = flat_cut_nearer(cell, count, mine->at, other->at);
            else
                return working_beyond(working, "too many attachments stand at module %s",
                                      module->object->path);
        }
        mine->area += count >= 3 ? flat_area(cell, count) : 0;
    }
    return true;
}

bool layout_support_open(struct layout_support *out, struct layout_plane **plane,
                         const struct object *about, struct working *working)
{
    *out = (struct layout_support){0};
    if (!layout_plane_open(plane, about, LAYOUT_MODULES, working) ||
        !read_rails(out, about, working) || !read_attachments(out, about, working))
        return false;
    out->is_carried = arena_take(working->arena, (*plane)->module_count * sizeof(bool));
    if (out->is_carried == NULL)
        return working_short(working);
    for (size_t i = 0; i < (*plane)->module_count; i++) {
        const struct layout_module *module = &(*plane)->modules[i];
        if (out->rail_count > 0)
            out->is_carried[i] = share_by_rails(out, module);
        else if (!share_directly(out, module, &out->is_carried[i], working))
            return false;
        if (out->is_carried[i])
            out->carried_area += flat_area(module->corners, 4);
    }
    return true;
}
