/* Which planes are of one building: what the law says of a roof it says of each building's own. */
#include <string.h>

#include "layout_build.h"
#include "layout_methods.h"

/* Roofs nearer than this in plan are of one building, m: a foot. Our own choice. */
static const double one_roof = 0.3048;

static const char *const apart_kinds[LAYOUT_APART] = {"detached garage", "accessory", "carport",
                                                      "shade structure"};

static bool is_open(const char *structure)
{
    return strcmp(structure, "carport") == 0 || strcmp(structure, "shade structure") == 0;
}

/* Does the plane cover something that stands apart from the house? An open structure that is said
 * to lean on it does not; one of which nobody has told is left out of the house's roof, too. */
static bool find_apart(const char **apart, const struct object *plane, struct working *working)
{
    const char *structure;
    bool is_detached = true;
    *apart = NULL;
    if (!need_word(&structure, plane, SLOT_roof_plane_structure, working))
        return false;
    if (is_open(structure) && object_has(plane, SLOT_roof_plane_detached) &&
        !need_yesno(&is_detached, plane, SLOT_roof_plane_detached, working))
        return false;
    if ((is_open(structure) && is_detached) || strcmp(structure, "detached garage") == 0 ||
        strcmp(structure, "accessory") == 0)
        *apart = structure;
    return true;
}

bool layout_is_apart(bool *is, const struct object *plane, struct working *working)
{
    const char *apart;
    if (!find_apart(&apart, plane, working))
        return false;
    *is = apart != NULL;
    return true;
}

/* The planes of one kind of structure, each with its outline in plan. */
struct apart {
    struct layout_plane *plane;
    struct shape outline;
};

static bool open_apart(struct apart **out, size_t *count, const char *structure,
                       struct working *working)
{
    struct layout_plane **planes;
    size_t all;
    *count = 0;
    if (!layout_planes_open(&planes, &all, 0, working))
        return false;
    if ((*out = arena_take(working->arena, all * sizeof **out)) == NULL)
        return working_short(working);
    for (size_t i = 0; i < all; i++) {
        const char *apart;
        struct layout_plane *plane = planes[i];
        if (!find_apart(&apart, plane->object, working))
            return false;
        if (apart == NULL || strcmp(apart, structure) != 0)
            continue;
        if (!layout_plane_open(&plane, plane->object, LAYOUT_OUTLINE | LAYOUT_PLAN, working))
            return false;
        plane->building = NULL;
        (*out)[*count].plane = plane;
        if (!layout_plan_of(&(*out)[(*count)++].outline, plane, working->layout))
            return working_short(working);
    }
    return true;
}

/* All that is joined to the plane at `first`, by way of others, too: the reached stand in front. */
static void join(struct apart *planes, size_t count, size_t first)
{
    const struct layout_plane *building = planes[first].plane;
    size_t reached = first + 1;
    planes[first].plane->building = building;
    for (size_t i = first; i < reached; i++)
        for (size_t j = reached; j < count; j++) {
            struct point nearest[2];
            struct apart other = planes[j];
            if (flat_distance(&planes[i].outline, &other.outline, nearest) > one_roof)
                continue;
            other.plane->building = building;
            planes[j] = planes[reached];
            planes[reached++] = other;
        }
}

static bool find_buildings(struct layout_plane *plane, struct working *working)
{
    struct apart *planes;
    size_t count;
    const char *apart;
    if (!find_apart(&apart, plane->object, working) || apart == NULL ||
        !open_apart(&planes, &count, apart, working))
        return false;
    for (size_t i = 0; i < count; i++)
        if (planes[i].plane->building == NULL)
            join(planes, count, i);
    return true;
}

/* Two that stand apart, of one kind: are their roofs joined? */
static bool is_joined(bool *is, const struct object *plane, const struct object *other,
                      const char *apart, struct working *working)
{
    struct layout_plane *mine, *its;
    size_t kind = 0;
    while (kind + 1 < LAYOUT_APART && strcmp(apart_kinds[kind], apart) != 0)
        kind++;
    if (!layout_plane_open(&mine, plane, 0, working) ||
        !layout_plane_open(&its, other, 0, working) ||
        !layout_build(&working->layout->buildings_read[kind], find_buildings, mine, working))
        return false;
    *is = mine->building == its->building;
    return true;
}

bool layout_is_one_building(bool *is, const struct object *plane, const struct object *other,
                            struct working *working)
{
    const char *mine, *its;
    *is = true;
    if (plane == other)
        return true;
    if (!find_apart(&mine, plane, working) || !find_apart(&its, other, working))
        return false;
    if (mine != NULL && its != NULL && strcmp(mine, its) == 0)
        return is_joined(is, plane, other, mine, working);
    *is = mine == NULL && its == NULL;
    return true;
}

/* Here it must be told: what is asked of less than a house rests on it. */
bool layout_run_stands_apart(struct amount *results, const struct object *about,
                             const struct amount *inputs, struct working *working)
{
    const char *structure, *apart;
    bool is_told;
    (void)inputs;
    if (!need_word(&structure, about, SLOT_roof_plane_structure, working) ||
        (is_open(structure) && !need_yesno(&is_told, about, SLOT_roof_plane_detached, working)) ||
        !find_apart(&apart, about, working))
        return false;
    results[0] = amount_of_yesno(apart != NULL);
    return true;
}

/* What stands apart has no house within a foot of it in plan: else the two are one building. */
bool layout_run_meets_house(struct amount *results, const struct object *about,
                            const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane, **planes;
    struct shape outline, other;
    struct point nearest[2];
    size_t count;
    bool is = false;
    (void)inputs;
    results[0] = amount_of_yesno(false);
    if (!layout_is_apart(&is, about, working) || !layout_planes_open(&planes, &count, 0, working))
        return false;
    if (!is)
        return true;
    if (!layout_plane_open(&plane, about, LAYOUT_OUTLINE | LAYOUT_PLAN, working))
        return false;
    if (!layout_plan_of(&outline, plane, working->layout))
        return working_short(working);
    for (size_t i = 0; i < count; i++) {
        if (!layout_is_apart(&is, planes[i]->object, working))
            return false;
        if (is)
            continue;
        if (!layout_plane_open(&planes[i], planes[i]->object, LAYOUT_OUTLINE | LAYOUT_PLAN,
                               working))
            return false;
        if (!layout_plan_of(&other, planes[i], working->layout))
            return working_short(working);
        if (flat_distance(&outline, &other, nearest) > one_roof)
            continue;
        results[0] = amount_of_yesno(true);
        results[1] = amount_of_word(planes[i]->object->path);
        return true;
    }
    return true;
}
