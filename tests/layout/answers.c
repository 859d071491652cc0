/* Reads roofs as lines of numbers and prints what layout answers, for the second opinion:
 *   roof / plane N slope east north azimuth / x y edge (N lines) / module length width x y p|l
 *   / shape N / x y (N lines) / opening x y width / end
 * Modules, shapes and openings belong to the plane before them. One line per answer:
 *   name value. */
#include <math.h>
#include "roof_trial.h"

struct intake {
    struct trial trial;
    struct object *planes[16], *openings[16];
    size_t plane_count, opening_count;
};

static void say(struct intake *reading, const struct object *about, const char *method,
                const struct amount *given, size_t count, const char *suffix)
{
    struct amount results[CALCULATOR_RESULTS];
    if (!ask(results, &reading->trial, about, method, given, count)) {
        printf("%s %s%s stop %d %s\n", about->path, method, suffix,
               (int)reading->trial.working.stop.kind,
               reading->trial.working.stop.why ? reading->trial.working.stop.why : "-");
        return;
    }
    if (results[0].type == AMOUNT_YESNO)
        printf("%s %s%s %d\n", about->path, method, suffix, results[0].yes);
    else
        printf("%s %s%s %.12g\n", about->path, method, suffix, results[0].quantity.value);
}

static void read_points(double (*points)[2], char (*edges)[16], int count)
{
    for (int i = 0; i < count; i++)
        if (edges != NULL ? scanf("%lf %lf %15s", &points[i][0], &points[i][1], edges[i]) != 3
                          : scanf("%lf %lf", &points[i][0], &points[i][1]) != 2)
            abort();
}

static void read_plane(struct intake *reading)
{
    double points[64][2], slope, east, north, azimuth;
    char edges[64][16], all[64 * 16] = "", name[16];
    int count;
    if (scanf("%d %lf %lf %lf %lf", &count, &slope, &east, &north, &azimuth) != 5 || count > 64 ||
        reading->plane_count >= 16)
        abort();
    read_points(points, edges, count);
    for (int i = 0; i < count; i++) {
        strcat(all, i > 0 ? " " : "");
        strcat(all, edges[i]);
    }
    snprintf(name, sizeof name, "p%zu", reading->plane_count);
    char *kept = sure(arena_copy(reading->trial.arena, name, strlen(name)));
    struct object *plane =
        add_plane(&reading->trial, kept, (const double(*)[2])points, (size_t)count, all, slope);
    place_in_plan(plane, east, north, azimuth);
    reading->planes[reading->plane_count++] = plane;
}

static void read_module(struct intake *reading)
{
    double length, width, x, y;
    char orientation[4];
    if (scanf("%lf %lf %lf %lf %3s", &length, &width, &x, &y, orientation) != 5)
        abort();
    struct object *model = add_model(&reading->trial, length, width);
    add_module(&reading->trial, reading->planes[reading->plane_count - 1], model, x, y,
               orientation[0] == 'p' ? "portrait" : "landscape");
}

static void read_shape(struct intake *reading)
{
    double points[64][2];
    int count;
    if (scanf("%d", &count) != 1 || count > 64)
        abort();
    read_points(points, NULL, count);
    struct object *thing =
        add_obstruction(&reading->trial, reading->planes[reading->plane_count - 1]);
    give_points(&reading->trial, thing, SLOT_obstruction_outline, (const double(*)[2])points,
                (size_t)count);
}

static void read_opening(struct intake *reading)
{
    double x, y, width;
    if (scanf("%lf %lf %lf", &x, &y, &width) != 3 || reading->opening_count >= 16)
        abort();
    struct object *opening = add_thing(&reading->trial, KIND_escape_opening,
                                       reading->trial.building, name_it(&reading->trial, "e"));
    give_object(opening, SLOT_escape_opening_plane, reading->planes[reading->plane_count - 1]);
    give_point(opening, SLOT_escape_opening_at, x, y);
    give_number(opening, SLOT_escape_opening_width, width);
    reading->openings[reading->opening_count++] = opening;
}

static void answer_plane(struct intake *reading, struct object *plane)
{
    static const char *const plain[] = {"area",
                                        "plan_area",
                                        "covered_area",
                                        "pathway_width",
                                        "modules_over_edge",
                                        "modules_over_obstructions",
                                        "modules_overlapping",
                                        "clearance_to_obstructions",
                                        "adjacent_pathway_width",
                                        "straddling_pathway_width"};
    static const char *const edges[] = {"eave", "ridge", "hip", "valley", "rake", "wall"};
    for (size_t i = 0; i < sizeof plain / sizeof plain[0]; i++)
        say(reading, plane, plain[i], NULL, 0, "");
    for (size_t i = 0; i < sizeof edges / sizeof edges[0]; i++) {
        struct amount edge = amount_of_word(edges[i]);
        char suffix[16];
        snprintf(suffix, sizeof suffix, ":%s", edges[i]);
        say(reading, plane, "clearance", &edge, 1, suffix);
    }
    struct amount yard = metres(0.9144), gap = metres(0.3);
    say(reading, plane, "pathway_count", &yard, 1, "");
    say(reading, plane, "section_count", &gap, 1, "");
    say(reading, plane, "gap_between_sections", &gap, 1, "");
}

static void answer(struct intake *reading)
{
    trial_link(&reading->trial);
    say(reading, reading->trial.roof, "covered_share", NULL, 0, "");
    for (size_t i = 0; i < reading->plane_count; i++)
        answer_plane(reading, reading->planes[i]);
    struct amount yard = metres(0.9144);
    for (size_t i = 0; i < reading->opening_count; i++) {
        printf("opening%zu ", i);
        say(reading, reading->openings[i], "clear_below", &yard, 1, "");
        printf("opening%zu ", i);
        say(reading, reading->openings[i], "clear_width_below", NULL, 0, "");
    }
    puts("end");
}

int main(void)
{
    char word[16];
    struct intake reading = {0};
    while (scanf("%15s", word) == 1) {
        if (strcmp(word, "roof") == 0)
            reading = (struct intake){.trial = trial_new()};
        else if (strcmp(word, "plane") == 0)
            read_plane(&reading);
        else if (strcmp(word, "module") == 0)
            read_module(&reading);
        else if (strcmp(word, "shape") == 0)
            read_shape(&reading);
        else if (strcmp(word, "opening") == 0)
            read_opening(&reading);
        else if (strcmp(word, "end") == 0) {
            answer(&reading);
            trial_free(&reading.trial);
        } else
            abort();
    }
    return 0;
}
