/* Strips that the books ask to be kept clear: along edges, and from eave to ridge. */
#include "drawing_plan.h"

#include <math.h>
#include <string.h>

#define SLACK 1e-4 /* m: lengths closer than this are the same */

/* Does a value stand as the limit of a comparison? */
static bool is_limit(const struct value *value, const struct test *tests, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        const struct test *test = &tests[i];
        if (test->limit.type == AMOUNT_QUANTITY &&
            fabs(test->limit.quantity.value - value->is.quantity.value) < SLACK)
            return true;
        for (size_t j = 0; j < test->option_count; j++)
            if (is_limit(value, test->options[j].tests, test->options[j].test_count))
                return true;
    }
    return false;
}

static bool is_length_limit(const struct value *value, const struct finding *finding)
{
    enum measure measure;
    return value->state == VALUE_IN_FORCE && value->is.type == AMOUNT_QUANTITY &&
           measure_of(&measure, value->is.quantity.dimension) && measure == LENGTH &&
           value->is.quantity.value > 0 && is_limit(value, finding->tests, finding->test_count);
}

static struct strip *strip_new(struct strips *strips, struct canvas *canvas)
{
    struct strip *items =
        arena_grow(canvas->arena, strips->items, strips->count, &strips->capacity, sizeof *items);
    canvas->is_short |= items == NULL;
    if (items == NULL)
        return NULL;
    strips->items = items;
    return &items[strips->count++];
}

static void add_edge(struct strips *strips, struct canvas *canvas, const struct strip *like,
                     size_t side)
{
    const struct plan_plane *plane = like->plane;
    struct point a = plane->outline[side], b = plane->outline[(side + 1) % plane->count];
    double length = hypot(b.x - a.x, b.y - a.y), turn = plane->is_clockwise ? -1 : 1;
    struct strip *strip = length > 0 ? strip_new(strips, canvas) : NULL;
    if (strip == NULL)
        return;
    *strip = *like;
    strip->from = a;
    strip->to = b;
    strip->inward = (struct point){-turn * (b.y - a.y) / length, turn * (b.x - a.x) / length};
    double dx = strip->inward.x * like->width, dy = strip->inward.y * like->width;
    strip->corners[0] = a;
    strip->corners[1] = b;
    strip->corners[2] = (struct point){b.x + dx, b.y + dy};
    strip->corners[3] = (struct point){a.x + dx, a.y + dy};
}

/* The stretch along the eave from which one can walk straight up to the ridge. */
static void walkable(double *from, double *to, const struct plan_plane *plane)
{
    struct box reach = plan_reach(plane);
    *from = reach.left;
    *to = reach.right;
    for (size_t i = 0; i < plane->count; i++) {
        const char *edge = plan_edge(plane, i);
        struct point a = plane->outline[i], b = plane->outline[(i + 1) % plane->count];
        if (edge == NULL || (strcmp(edge, "ridge") != 0 && strcmp(edge, "eave") != 0))
            continue;
        *from = fmax(*from, fmin(a.x, b.x));
        *to = fmin(*to, fmax(a.x, b.x));
    }
}

/* The widest stretch without modules and obstructions, found by trying each left end. */
static void widest_gap(double *start, double *width, const struct plan_plane *plane, double from,
                       double to)
{
    size_t count[2];
    struct object *const *things[2] = {
        objects_in(&count[0], plane->object, SLOT_roof_plane_modules),
        objects_in(&count[1], plane->object, SLOT_roof_plane_obstructions)};
    *start = from;
    *width = -1;
    for (size_t k = 0; k <= count[0] + count[1]; k++) { /* k: whose right end it begins at */
        double begin = from, end = to, at_width, at_length;
        struct point at;
        for (size_t pass = 0; pass < 2; pass++)
            for (size_t i = 0; i < count[0] + count[1]; i++) {
                const struct object *one = i < count[0] ? things[0][i] : things[1][i - count[0]];
                bool is_told = i < count[0] ? module_rect(&at, &at_width, &at_length, one)
                                            : obstruction_rect(&at, &at_width, &at_length, one);
                if (!is_told)
                    continue;
                if (pass == 0 && i + 1 == k)
                    begin = fmax(begin, at.x + at_width);
                if (pass == 1 && at.x + at_width > begin + SLACK)
                    end = fmin(end, at.x);
            }
        if (end - begin > *width + SLACK) {
            *width = end - begin;
            *start = begin;
        }
    }
}

static void add_pathway(struct strips *strips, struct canvas *canvas, const struct strip *like)
{
    double from, to, start, gap;
    struct box reach = plan_reach(like->plane);
    walkable(&from, &to, like->plane);
    widest_gap(&start, &gap, like->plane, from, to);
    bool is_fail = like->finding->outcome == OUTCOME_FAIL;
    if (gap < like->width - SLACK && !is_fail) {
        strips->has_bent = true;
        return;
    }
    bool is_first = start <= from + SLACK, is_last = start + gap >= to - SLACK;
    double left = is_first ? from : is_last ? to - like->width : start + (gap - like->width) / 2;
    struct strip *strip = strip_new(strips, canvas);
    if (strip == NULL)
        return;
    *strip = *like;
    strip->is_pathway = true;
    strip->corners[0] = (struct point){left, reach.top};
    strip->corners[1] = (struct point){left + like->width, reach.top};
    strip->corners[2] = (struct point){left + like->width, reach.bottom};
    strip->corners[3] = (struct point){left, reach.bottom};
}

/* Two values may ask for the same strip of the same finding. */
static bool is_there(const struct strips *strips, const struct strip *like)
{
    for (size_t i = 0; i < strips->count; i++)
        if (strips->items[i].finding == like->finding &&
            fabs(strips->items[i].width - like->width) < SLACK)
            return true;
    return false;
}

static void add_strips(struct strips *strips, struct canvas *canvas, const struct strip *like)
{
    static const char *const edges[] = {"eave", "ridge", "hip", "valley", "rake", "wall"};
    if (strstr(like->value->name, "pathway") != NULL) {
        add_pathway(strips, canvas, like);
        return;
    }
    for (size_t k = 0; k < sizeof edges / sizeof edges[0]; k++)
        for (size_t i = 0; i < like->plane->count; i++) {
            const char *edge = plan_edge(like->plane, i);
            if (edge != NULL && strcmp(edge, edges[k]) == 0 &&
                strstr(like->value->name, edges[k]) != NULL)
                add_edge(strips, canvas, like, i);
        }
}

void strips_collect(struct strips *out, struct canvas *canvas, const struct plan *plan)
{
    const struct findings *findings = canvas->report->findings;
    *out = (struct strips){0};
    for (size_t i = 0; findings != NULL && i < findings->count; i++) {
        const struct finding *finding = findings->items[i];
        if (strcmp(finding->about_kind, "roof_plane") != 0 ||
            (finding->outcome != OUTCOME_FAIL && finding->outcome != OUTCOME_PASS))
            continue;
        for (size_t p = 0; p < plan->count; p++) {
            const struct plan_plane *plane = &plan->planes[p];
            if (plane->outline == NULL || strcmp(plane->object->path, finding->about_name) != 0)
                continue;
            for (size_t v = 0; v < finding->value_count; v++) {
                const struct value *value = finding->values[v];
                const struct strip like = {.finding = finding,
                                           .plane = plane,
                                           .value = value,
                                           .width = value->is.quantity.value};
                if (is_length_limit(value, finding) && !is_there(out, &like))
                    add_strips(out, canvas, &like);
            }
        }
    }
}

bool strip_meets(const struct strip *strip, struct point at, double width, double length)
{
    if (strip->is_pathway)
        return at.x < strip->corners[1].x - SLACK && at.x + width > strip->corners[0].x + SLACK;
    const struct point corners[4] = {
        at, {at.x + width, at.y}, {at.x + width, at.y + length}, {at.x, at.y + length}};
    for (size_t i = 0; i < 4; i++) {
        double away = (corners[i].x - strip->from.x) * strip->inward.x +
                      (corners[i].y - strip->from.y) * strip->inward.y;
        if (away < strip->width - SLACK)
            return true;
    }
    return false;
}
