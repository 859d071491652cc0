/* How far modules stand out past the rails below them, along them and across. */
#include "layout_methods.h"

#include <math.h>

#include "layout_support.h"

enum { MOST_RAILS = 12 }; /* below a module, as asked for */

/* The longest part of the module with no rail of a line below it. */
static double bare_part(const struct layout_support *support, const struct layout_stretch *module,
                        size_t line)
{
    double at = module->from, bare = 0;
    while (at < module->to - LAYOUT_SLACK) {
        const struct layout_rail *next = NULL;
        for (size_t i = 0; i < support->rail_count; i++) {
            const struct layout_rail *rail = &support->rails[i];
            if (rail->line == line && rail->to > at + LAYOUT_SLACK &&
                (next == NULL || rail->from < next->from))
                next = rail;
        }
        if (next == NULL)
            return fmax(bare, module->to - at);
        bare = fmax(bare, fmin(next->from, module->to) - at);
        at = next->to;
    }
    return bare;
}

/* How far a module stands out past the `rails` lines that reach farthest below it; 0 where fewer
 * lie there, which is told elsewhere. */
static double stands_out(const struct layout_support *support, const struct layout_module *module,
                         size_t rails)
{
    double least[MOST_RAILS] = {0};
    size_t count = 0, lines = 0;
    struct layout_stretch stretch = layout_stretch_of(support, module);
    for (size_t i = 0; i < support->rail_count; i++) {
        if (!layout_rail_counts(support, i, &stretch))
            continue;
        double bare = bare_part(support, &stretch, support->rails[i].line);
        size_t at = count < rails ? count++ : rails;
        lines++;
        for (; at > 0 && least[at - 1] > bare; at--)
            if (at < rails)
                least[at] = least[at - 1];
        if (at < rails)
            least[at] = bare;
    }
    return rails == 0 || lines < rails ? 0 : least[rails - 1];
}

bool layout_run_past_rails(struct amount *results, const struct object *about,
                           const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    const struct layout_support *support;
    double most = 0;
    size_t rails = (size_t)inputs[0].quantity.value;
    if (!layout_support_open(&support, &plane, about, working))
        return false;
    for (size_t i = 0; support->rail_count > 0 && i < plane->module_count; i++) {
        double past = stands_out(support, &plane->modules[i], rails);
        if (past <= most)
            continue;
        most = past;
        results[1] = amount_of_word(plane->modules[i].object->path);
    }
    results[0] = layout_metres(most);
    return true;
}

bool layout_run_rail_overhang(struct amount *results, const struct object *about,
                              const struct amount *inputs, struct working *working)
{
    struct layout_plane *plane;
    const struct layout_support *support;
    double most = 0;
    (void)inputs;
    if (!layout_support_open(&support, &plane, about, working))
        return false;
    results[1] = layout_metres(0);
    for (size_t i = 0; support->rail_count > 0 && i < plane->module_count; i++) {
        struct layout_stretch stretch = layout_stretch_of(support, &plane->modules[i]);
        double share = support->overhangs[i] / (stretch.high - stretch.low);
        if (share <= most)
            continue;
        most = share;
        results[1] = layout_metres(support->overhangs[i]);
        results[2] = amount_of_word(plane->modules[i].object->path);
    }
    results[0] = amount_of_number(most);
    return true;
}
