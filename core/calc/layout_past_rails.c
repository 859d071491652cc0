/* How far modules stand out past the rails below them, along them and across. */
#include "layout_methods.h"

#include <math.h>

#include "layout_support.h"

enum { MOST_RAILS = 12 }; /* below a module, as asked for */

/* A module along and across the rails. */
struct seat {
    double from, to, low, high;
};

static struct seat seat_of(const struct layout_support *support, const struct layout_module *module)
{
    struct point a = module->corners[0], b = module->corners[2];
    return support->runs_up ? (struct seat){a.y, b.y, a.x, b.x} : (struct seat){a.x, b.x, a.y, b.y};
}

static bool lies_below(const struct layout_rail *rail, const struct seat *seat)
{
    return rail->has_attachment && rail->across >= seat->low - LAYOUT_REACH &&
           rail->across <= seat->high + LAYOUT_REACH && rail->from < seat->to - LAYOUT_SLACK &&
           rail->to > seat->from + LAYOUT_SLACK;
}

/* The longest part of the module with no rail of a line below it. */
static double bare_part(const struct layout_support *support, const struct seat *seat, size_t line)
{
    double at = seat->from, bare = 0;
    while (at < seat->to - LAYOUT_SLACK) {
        const struct layout_rail *next = NULL;
        for (size_t i = 0; i < support->rail_count; i++) {
            const struct layout_rail *rail = &support->rails[i];
            if (rail->line == line && rail->to > at + LAYOUT_SLACK &&
                (next == NULL || rail->from < next->from))
                next = rail;
        }
        if (next == NULL)
            return fmax(bare, seat->to - at);
        bare = fmax(bare, fmin(next->from, seat->to) - at);
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
    struct seat seat = seat_of(support, module);
    for (size_t i = 0; i < support->rail_count; i++) {
        bool is_counted = !lies_below(&support->rails[i], &seat);
        for (size_t j = 0; j < i && !is_counted; j++)
            is_counted = support->rails[j].line == support->rails[i].line &&
                         lies_below(&support->rails[j], &seat);
        if (is_counted)
            continue;
        double bare = bare_part(support, &seat, support->rails[i].line);
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
        struct seat seat = seat_of(support, &plane->modules[i]);
        double share = support->overhangs[i] / (seat.high - seat.low);
        if (share <= most)
            continue;
        most = share;
        results[1] = layout_metres(support->overhangs[i]);
        results[2] = amount_of_word(plane->modules[i].object->path);
    }
    results[0] = amount_of_number(most);
    return true;
}
