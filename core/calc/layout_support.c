#include "layout_support.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "layout_build.h"

static bool read_rail(struct layout_rail *out, const struct object *rail, bool runs_up,
                      struct working *working)
{
    const struct fact *at;
    struct quantity length;
    if (!layout_need_fact(&at, rail, SLOT_rail_at, working) ||
        !need_quantity(&length, rail, SLOT_rail_length, working))
        return false;
    struct point p = at->is.point;
    double from = runs_up ? p.y : p.x;
    *out = (struct layout_rail){
        .object = rail, .across = runs_up ? p.x : p.y, .from = from, .to = from + length.value};
    return true;
}

static bool read_direction(struct layout_support *out, struct working *working)
{
    const struct objects *rackings = &working->design->of_kind[KIND_racking];
    const char *direction;
    if (rackings->count == 0)
        return working_missing(working, working->design->root, SLOT_design_racking);
    if (!need_word(&direction, rackings->items[0], SLOT_racking_rail_direction, working))
        return false;
    out->runs_up = strcmp(direction, "up the slope") == 0;
    return true;
}

static bool read_rails(struct layout_support *out, const struct object *plane,
                       struct working *working)
{
    struct object *const *rails;
    size_t count;
    if (!need_objects(&rails, &count, plane, SLOT_roof_plane_rails, working) ||
        (count > 0 && !read_direction(out, working)))
        return false;
    out->rails = arena_take(working->layout->arena, count * sizeof *out->rails);
    if (out->rails == NULL)
        return working_short(working);
    for (size_t i = 0; i < count; i++)
        if (!read_rail(&out->rails[i], rails[i], out->runs_up, working))
            return false;
    out->rail_count = count;
    return true;
}

static bool read_attachments(struct layout_support *out, const struct object *plane,
                             struct working *working)
{
    struct object *const *objects;
    size_t count;
    if (!need_objects(&objects, &count, plane, SLOT_roof_plane_attachments, working))
        return false;
    out->attachments = arena_take(working->layout->arena, count * sizeof *out->attachments);
    if (out->attachments == NULL)
        return working_short(working);
    for (size_t i = 0; i < count; i++) {
        const struct fact *at;
        const struct object *rail = NULL;
        if (!layout_need_fact(&at, objects[i], SLOT_attachment_at, working) ||
            (out->rail_count > 0 && !need_object(&rail, objects[i], SLOT_attachment_rail, working)))
            return false;
        out->attachments[i] =
            (struct layout_attachment){.object = objects[i], .at = at->is.point, .rail = rail};
    }
    out->attachment_count = count;
    return true;
}

/* Finds the line of each rail and each attachment. */
static void find_lines(struct layout_support *support)
{
    struct layout_rail *rails = support->rails;
    for (size_t i = 0; i < support->rail_count; i++) {
        rails[i].line = i;
        for (size_t j = i; j > 0; j--)
            if (fabs(rails[j - 1].across - rails[i].across) <= LAYOUT_SLACK)
                rails[i].line = rails[j - 1].line;
    }
    for (size_t i = 0; i < support->attachment_count; i++) {
        struct layout_attachment *one = &support->attachments[i];
        one->line = support->rail_count; /* none */
        for (size_t j = 0; j < support->rail_count; j++)
            if (rails[j].object == one->rail)
                one->line = rails[j].line;
        for (size_t j = 0; j < support->rail_count; j++)
            rails[j].has_attachment = rails[j].has_attachment || rails[j].line == one->line;
    }
}

struct layout_stretch layout_stretch_of(const struct layout_support *support,
                                        const struct layout_module *module)
{
    struct point a = module->corners[0], b = module->corners[2];
    return support->runs_up ? (struct layout_stretch){a.y, b.y, a.x, b.x}
                            : (struct layout_stretch){a.x, b.x, a.y, b.y};
}

static bool carries(const struct layout_rail *rail, const struct layout_stretch *module)
{
    return rail->has_attachment && rail->across >= module->low - LAYOUT_REACH &&
           rail->across <= module->high + LAYOUT_REACH && rail->from < module->to - LAYOUT_SLACK &&
           rail->to > module->from + LAYOUT_SLACK;
}

bool layout_rail_counts(const struct layout_support *support, size_t at,
                        const struct layout_stretch *module)
{
    if (!carries(&support->rails[at], module))
        return false;
    for (size_t i = 0; i < at; i++)
        if (support->rails[i].line == support->rails[at].line &&
            carries(&support->rails[i], module))
            return false;
    return true;
}

/* The part of low..high that is nearer to a rail than to any other line that carries the module. */
static double width_of_line(const struct layout_support *support,
                            const struct layout_stretch *module, const struct layout_rail *rail)
{
    double low = module->low, high = module->high, mine = rail->across;
    for (size_t i = 0; i < support->rail_count; i++) {
        double other = support->rails[i].across;
        if (support->rails[i].line == rail->line || !carries(&support->rails[i], module))
            continue;
        if (other < mine)
            low = fmax(low, (other + mine) / 2);
        else
            high = fmin(high, (other + mine) / 2);
    }
    return fmax(0, high - low);
}

static int compare_standings(const void *a, const void *b)
{
    const struct layout_standing *one = a, *other = b;
    if (one->line != other->line)
        return one->line < other->line ? -1 : 1;
    if (one->along < other->along || one->along > other->along)
        return one->along < other->along ? -1 : 1;
    return one->attachment < other->attachment ? -1 : one->attachment > other->attachment;
}

static bool line_up(struct layout_support *support, struct working *working)
{
    struct layout_standing *standings =
        arena_take(working->layout->arena, support->attachment_count * sizeof *standings);
    if (standings == NULL)
        return working_short(working);
    for (size_t i = 0; i < support->attachment_count; i++) {
        const struct layout_attachment *one = &support->attachments[i];
        standings[i] =
            (struct layout_standing){one->line, support->runs_up ? one->at.y : one->at.x, i};
    }
    qsort(standings, support->attachment_count, sizeof *standings, compare_standings);
    support->standings = standings;
    return true;
}

/* The first that stands in the line, or behind it. */
static size_t line_begin(const struct layout_support *support, size_t line)
{
    size_t low = 0, high = support->attachment_count;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        if (support->standings[middle].line < line)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

/* The half way from a standing to its next neighbour on one side (`step` 1 or -1) that does not
 * stand at the same spot; `end` where there is none. Of two at one spot the first takes all: then
 * *is_first is false. */
static double half_way(const struct layout_support *support, size_t at, int step, double end,
                       bool *is_first)
{
    const struct layout_standing *mine = &support->standings[at];
    for (size_t i = at + (size_t)step; i < support->attachment_count; i += (size_t)step) {
        const struct layout_standing *other = &support->standings[i]; /* before 0 wraps past all */
        if (other->line != mine->line)
            return end;
        if (fabs(other->along - mine->along) > LAYOUT_SLACK)
            return (other->along + mine->along) / 2;
        *is_first = *is_first && mine->attachment < other->attachment;
    }
    return end;
}

/* Shares a line's strip of a module among the line's attachments. */
static void share_strip(struct layout_support *support, const struct layout_stretch *module,
                        size_t line, double width, double top)
{
    for (size_t i = line_begin(support, line);
         i < support->attachment_count && support->standings[i].line == line; i++) {
        bool is_first = true;
        double from = half_way(support, i, -1, module->from, &is_first);
        double to = half_way(support, i, 1, module->to, &is_first);
        from = fmax(from, module->from);
        to = fmin(to, module->to);
        if (is_first && to > from) {
            struct layout_attachment *mine =
                &support->attachments[support->standings[i].attachment];
            mine->area += width * (to - from);
            mine->top = fmax(mine->top, support->runs_up ? to : top);
        }
    }
}

/* How many lines of rails carry it, how far apart the outermost lie, and how far it stands out past
 * them. */
static size_t share_by_rails(double *spread, double *overhang, struct layout_support *support,
                             const struct layout_module *module)
{
    double low = INFINITY, high = -INFINITY;
    struct layout_stretch stretch = layout_stretch_of(support, module);
    size_t lines = 0;
    for (size_t i = 0; i < support->rail_count; i++) {
        const struct layout_rail *rail = &support->rails[i];
        if (!layout_rail_counts(support, i, &stretch))
            continue;
        share_strip(support, &stretch, rail->line, width_of_line(support, &stretch, rail),
                    module->corners[2].y);
        low = fmin(low, rail->across);
        high = fmax(high, rail->across);
        lines++;
    }
    *spread = lines > 1 ? high - low : 0;
    *overhang = lines > 0 ? fmax(low - stretch.low, stretch.high - high) : 0;
    return lines;
}

enum { CELL_CORNERS = 16 };

static bool is_at_module(const struct layout_attachment *one, const struct layout_module *module)
{
    struct shape shape = layout_module_shape(module);
    return flat_contains(&shape, one->at, LAYOUT_REACH);
}

/* Shares a module among the attachments at it: each takes what is nearest to it. */
static bool share_directly(struct layout_support *support, const struct layout_module *module,
                           size_t *held, struct working *working)
{
    for (size_t i = 0; i < support->attachment_count; i++) {
        struct point cell[CELL_CORNERS];
        size_t count = 4;
        struct layout_attachment *mine = &support->attachments[i];
        if (!is_at_module(mine, module))
            continue;
        (*held)++;
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
        mine->top = fmax(mine->top, module->corners[2].y);
    }
    return true;
}

static bool share_all(struct layout_support *out, const struct layout_plane *plane,
                      struct working *working)
{
    out->is_carried = arena_take(working->layout->arena, plane->module_count * sizeof(bool));
    out->lines = arena_take(working->layout->arena, plane->module_count * sizeof *out->lines);
    out->spreads = arena_take(working->layout->arena, plane->module_count * sizeof *out->spreads);
    out->overhangs =
        arena_take(working->layout->arena, plane->module_count * sizeof *out->overhangs);
    if (out->is_carried == NULL || out->lines == NULL || out->spreads == NULL ||
        out->overhangs == NULL)
        return working_short(working);
    find_lines(out);
    if (!line_up(out, working))
        return false;
    for (size_t i = 0; i < plane->module_count; i++) {
        const struct layout_module *module = &plane->modules[i];
        if (out->rail_count > 0)
            out->is_carried[i] = (out->lines[i] = share_by_rails(
                                      &out->spreads[i], &out->overhangs[i], out, module)) > 0;
        else if (!share_directly(out, module, &out->lines[i], working))
            return false;
        else
            out->is_carried[i] = out->lines[i] > 0;
        if (out->is_carried[i])
            out->carried_area += flat_area(module->corners, 4);
    }
    return true;
}

/* Attachments that carry the same by their places differ in the last digits of their sums: to a
 * millionth of a square millimetre they are alike, and one answer about wind serves them all. */
static void settle_areas(struct layout_support *support)
{
    for (size_t i = 0; i < support->attachment_count; i++)
        support->attachments[i].area = round(support->attachments[i].area * 1e12) / 1e12;
}

static bool build_support(struct layout_plane *plane, struct working *working)
{
    struct layout_support *support = arena_take(working->layout->arena, sizeof *support);
    if (support == NULL)
        return working_short(working);
    plane->support = support;
    if (!read_rails(support, plane->object, working) ||
        !read_attachments(support, plane->object, working) || !share_all(support, plane, working))
        return false;
    settle_areas(support);
    return true;
}

bool layout_support_open(const struct layout_support **out, struct layout_plane **plane,
                         const struct object *about, struct working *working)
{
    if (!layout_plane_open(plane, about, LAYOUT_MODULES, working) ||
        !layout_build(&(*plane)->support_read, build_support, *plane, working))
        return false;
    *out = (*plane)->support;
    return true;
}
