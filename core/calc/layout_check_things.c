/* Faults of what stands on a plane: things beside it, attachments beside their rail, edges whose
 * kind their place forbids. */
#include "layout_check_things.h"

#include <math.h>
#include <string.h>

#include "layout_support.h"

/* Below this slope an edge may bear any name: up and down are no longer told apart by eye. */
#define FOOT        0.3048
#define INCH        0.0254
#define NEARLY_FLAT 0.166 /* rad, a little above 2/12; our own choice */

static bool is_apart(const struct layout_plane *plane, struct point a, struct point b)
{
    struct shape outline = layout_outline_of(plane);
    struct shape line = {(const struct point[]){a, b}, 2, false};
    struct point nearest[2];
    return flat_distance(&outline, &line, nearest) > LAYOUT_SLACK;
}

/* "at: [240 in, 96 in], in the middle of a plane from … to …". */
const char *layout_example_on(struct arena *arena, const struct layout_plane *plane)
{
    double left = INFINITY, right = -INFINITY, low = INFINITY, high = -INFINITY;
    for (size_t i = 0; i < plane->count; i++) {
        left = fmin(left, plane->corners[i].x);
        right = fmax(right, plane->corners[i].x);
        low = fmin(low, plane->corners[i].y);
        high = fmax(high, plane->corners[i].y);
    }
    return arena_format(arena,
                        "at: [%.0f in, %.0f in], in the middle of a plane from [%.0f in, %.0f in] "
                        "to [%.0f in, %.0f in]",
                        (left + right) / 2 / INCH, (low + high) / 2 / INCH, left / INCH, low / INCH,
                        right / INCH, high / INCH);
}

static bool add_apart(struct layout_faults *faults, const struct object *object, unsigned slot,
                      const struct layout_plane *plane, const char *what)
{
    return layout_fault_add(
        faults, object, slot,
        arena_format(faults->arena,
                     "%s does not lie on roof plane %s; `at` is given in that plane's "
                     "coordinates: x along the eave, y up the slope, both from its (0, 0)",
                     what, plane->object->path),
        layout_example_on(faults->arena, plane));
}

static bool check_obstructions(struct layout_faults *faults, const struct layout_plane *plane)
{
    struct shape outline = layout_outline_of(plane);
    for (size_t i = 0; i < plane->obstruction_count; i++) {
        const struct layout_obstruction *one = &plane->obstructions[i];
        struct point nearest[2];
        unsigned slot = object_has(one->object, SLOT_obstruction_outline) ? SLOT_obstruction_outline
                                                                          : SLOT_obstruction_at;
        if (flat_distance(&outline, &one->shape, nearest) > LAYOUT_SLACK &&
            !add_apart(faults, one->object, slot, plane, "the obstruction"))
            return false;
    }
    return true;
}

static bool check_rails(struct layout_faults *faults, const struct layout_plane *plane,
                        const struct layout_support *support)
{
    for (size_t i = 0; i < support->rail_count; i++) {
        const struct layout_rail *rail = &support->rails[i];
        struct point from = {rail->from, rail->across}, to = {rail->to, rail->across};
        if (support->runs_up) {
            from = (struct point){rail->across, rail->from};
            to = (struct point){rail->across, rail->to};
        }
        if (is_apart(plane, from, to) &&
            !add_apart(faults, rail->object, SLOT_rail_at, plane, "the rail"))
            return false;
    }
    return true;
}

/* Does the rail that it names, or one in line with it, run over the attachment? */
static bool is_below_rail(const struct layout_support *support,
                          const struct layout_attachment *attachment)
{
    double along = support->runs_up ? attachment->at.y : attachment->at.x;
    double across = support->runs_up ? attachment->at.x : attachment->at.y;
    for (size_t i = 0; i < support->rail_count; i++) {
        const struct layout_rail *rail = &support->rails[i];
        if (rail->line == attachment->line && fabs(rail->across - across) <= LAYOUT_REACH &&
            along >= rail->from - LAYOUT_REACH && along <= rail->to + LAYOUT_REACH)
            return true;
    }
    return false;
}

/* The place below its rail that is nearest: "at: [72 in, 38.5 in]". */
static const char *example_below(struct arena *arena, const struct layout_support *support,
                                 const struct layout_attachment *attachment)
{
    struct point best = attachment->at;
    double least = INFINITY;
    for (size_t i = 0; i < support->rail_count; i++) {
        const struct layout_rail *rail = &support->rails[i];
        double along = support->runs_up ? attachment->at.y : attachment->at.x;
        double on_rail = fmin(fmax(along, rail->from), rail->to);
        struct point at = support->runs_up ? (struct point){rail->across, on_rail}
                                           : (struct point){on_rail, rail->across};
        double away = hypot(at.x - attachment->at.x, at.y - attachment->at.y);
        if (rail->object == attachment->rail && away < least) {
            least = away;
            best = at;
        }
    }
    return arena_format(arena, "at: [%.5g in, %.5g in]", best.x / INCH, best.y / INCH);
}

static bool check_attachments(struct layout_faults *faults, const struct layout_plane *plane,
                              const struct layout_support *support)
{
    for (size_t i = 0; i < support->attachment_count; i++) {
        const struct layout_attachment *one = &support->attachments[i];
        if (is_apart(plane, one->at, one->at)) {
            if (!add_apart(faults, one->object, SLOT_attachment_at, plane, "the attachment"))
                return false;
        } else if (one->rail != NULL && !is_below_rail(support, one) &&
                   !layout_fault_add(
                       faults, one->object, SLOT_attachment_at,
                       arena_format(faults->arena,
                                    "the attachment does not stand below rail %s, which it is to "
                                    "carry: move it below the rail, or name the rail above it",
                                    one->rail->path),
                       example_below(faults->arena, support, one))) {
            return false;
        }
    }
    return true;
}

/* What an edge cannot be where it lies; NULL: it can. `a` to `b` has the plane on its left. */
static const char *contradiction(const char *kind, struct point a, struct point b)
{
    double right = b.x - a.x, up = fabs(b.y - a.y);
    bool is_level = up <= LAYOUT_SLACK + 0.01 * fabs(right);
    bool is_eave = strcmp(kind, "eave") == 0, is_ridge = strcmp(kind, "ridge") == 0;
    if (hypot(right, up) <= LAYOUT_SLACK)
        return NULL; /* a corner given twice is told as such */
    if ((is_eave || is_ridge) && up > fabs(right))
        return "it runs up the slope";
    if (!is_level)
        return NULL;
    if (is_ridge && right > 0)
        return "the plane lies above it";
    if (is_eave && right < 0)
        return "the plane lies below it";
    return strcmp(kind, "hip") == 0 || strcmp(kind, "rake") == 0 ? "it is level" : NULL;
}

static bool check_edge_kinds(struct layout_faults *faults, const struct layout_plane *plane)
{
    if (plane->cos_slope > cos(NEARLY_FLAT))
        return true;
    for (size_t i = 0; i < plane->count; i++) {
        struct point a = plane->corners[i], b = plane->corners[i + 1];
        const char *why = contradiction(plane->edges[i], a, b);
        if (why == NULL)
            continue;
        return layout_fault_add(
            faults, plane->object, SLOT_roof_plane_edges,
            arena_format(faults->arena,
                         "the side between corners [%.4g ft, %.4g ft] and [%.4g ft, %.4g ft] "
                         "cannot be %s %s, since %s: name the edges in the order of the corners, "
                         "the first from the first corner to the second",
                         a.x / FOOT, a.y / FOOT, b.x / FOOT, b.y / FOOT,
                         strcmp(plane->edges[i], "eave") == 0 ? "an" : "a", plane->edges[i], why),
            "edges: [eave, rake, ridge, rake]");
    }
    return true;
}

bool layout_check_things(struct layout_faults *faults, const struct object *object,
                         struct working *working)
{
    struct layout_plane *plane;
    const struct layout_support *support;
    working_start(working);
    if (layout_plane_open(&plane, object, LAYOUT_EDGES | LAYOUT_SLOPE, working) &&
        !check_edge_kinds(faults, plane))
        return false;
    if (working->stop.kind == STOP_MEMORY)
        return false;
    working_start(working);
    if (layout_plane_open(&plane, object, LAYOUT_OUTLINE | LAYOUT_OBSTRUCTIONS, working) &&
        !check_obstructions(faults, plane))
        return false;
    if (working->stop.kind == STOP_MEMORY)
        return false;
    working_start(working);
    if (layout_support_open(&support, &plane, object, working) &&
        (!check_rails(faults, plane, support) || !check_attachments(faults, plane, support)))
        return false;
    return working->stop.kind != STOP_MEMORY; /* what is missing is told elsewhere */
}

bool layout_check_opening(struct layout_faults *faults, const struct object *opening,
                          struct working *working)
{
    const struct object *object;
    const struct fact *at;
    struct quantity width;
    struct layout_plane *plane;
    working_start(working);
    if (!need_object(&object, opening, SLOT_escape_opening_plane, working) || object == NULL ||
        !layout_need_fact(&at, opening, SLOT_escape_opening_at, working) ||
        !need_quantity(&width, opening, SLOT_escape_opening_width, working) ||
        !layout_plane_open(&plane, object, LAYOUT_OUTLINE, working))
        return working->stop.kind != STOP_MEMORY;
    struct point left = at->is.point, right = {left.x + width.value, left.y};
    return !is_apart(plane, left, right) ||
           add_apart(faults, opening, SLOT_escape_opening_at, plane, "the opening's lower edge");
}
