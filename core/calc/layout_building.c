/* Which planes are of one building: what the law says of a roof it says of each building's own. */
#include <string.h>

#include "layout_methods.h"

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

bool layout_is_one_building(bool *is, const struct object *plane, const struct object *other,
                            struct working *working)
{
    const char *mine, *its;
    *is = true;
    if (plane == other)
        return true;
    if (!find_apart(&mine, plane, working) || !find_apart(&its, other, working))
        return false;
    *is = (mine == NULL && its == NULL) || (mine != NULL && its != NULL && strcmp(mine, its) == 0);
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
