/* What a finding read of the design: equal facts of equal things share a row. */
#include <string.h>

#include "html.h"

struct shared {
    const struct input *first;
    size_t count;
};

/* What makes two inputs one row: kind of thing, fact, text and where it comes from. */
static const char *key_of(struct html *html, const struct input *input)
{
    const char *kind = input->kind != NULL ? input->kind : input->thing;
    return html_text(html, ARENA_JOIN(html->arena, kind != NULL ? kind : "", "\n",
                                      input->fact != NULL ? input->fact : input->thing, "\n",
                                      input->text != NULL ? input->text : "", "\n",
                                      input->source != NULL ? input->source : ""));
}

/* Room for the classes of all inputs of the review. False: no memory. */
static bool begin_classes(struct html *html)
{
    struct html_classes *classes = &html->classes;
    size_t room = html->report->findings->input_count + 1;
    if (classes->of_input != NULL)
        return true;
    classes->by_key.arena = html->arena;
    classes->of_input = arena_take(html->arena, room * sizeof *classes->of_input);
    classes->rows = arena_take(html->arena, room * sizeof *classes->rows);
    classes->written = arena_take(html->arena, room * sizeof *classes->written);
    return classes->of_input != NULL && classes->rows != NULL && classes->written != NULL;
}

/* 0: no memory. */
static size_t class_of(struct html *html, const struct input *input)
{
    struct html_classes *classes = &html->classes;
    size_t *of_input = &classes->of_input[input->number];
    if (*of_input != 0)
        return *of_input;
    const char *key = key_of(html, input);
    const size_t *like = index_find(&classes->by_key, key);
    *of_input = like != NULL ? *like : ++classes->count;
    return like != NULL || index_add(&classes->by_key, key, of_input) ? *of_input : 0;
}

/* Fills the rows of a finding and counts them. */
static size_t collect(struct shared *shared, struct html *html, const struct finding *finding)
{
    struct html_classes *classes = &html->classes;
    size_t count = 0;
    classes->round++;
    for (size_t i = 0; i < finding->input_count; i++) {
        size_t class = class_of(html, finding->inputs[i]);
        if (class == 0) {
            html->is_short = true;
            return 0;
        }
        if (classes->written[class] != classes->round) {
            classes->written[class] = classes->round;
            classes->rows[class] = &shared[count++];
            classes->rows[class]->first = finding->inputs[i];
        }
        classes->rows[class]->count++;
    }
    return count;
}

static void write_input(struct html *html, const struct shared *one)
{
    const struct input *input = one->first;
    const char *how = input->is_assumed
                          ? (input->assumed_why != NULL
                                 ? arena_format(html->arena, "assumed: %s", input->assumed_why)
                                 : "assumed")
                          : input->source;
    const char *const cells[] = {html_text(html, input_names(input, one->count, html->arena)),
                                 input->text != NULL ? input->text : "not told", how,
                                 html_place(html, input->place)};
    html_row(html, cells, sizeof cells / sizeof cells[0]);
}

void html_inputs(struct html *html, const struct finding *finding)
{
    static const char *const heads[] = {"Fact", "Is", "From", "Place", NULL};
    if (finding->input_count == 0)
        return;
    struct shared *shared = arena_take(html->arena, finding->input_count * sizeof *shared);
    if (shared == NULL || !begin_classes(html)) {
        html->is_short = true;
        return;
    }
    size_t count = collect(shared, html, finding);
    html_table(html, NULL, "Read from the design", heads);
    for (size_t i = 0; i < count; i++)
        write_input(html, &shared[i]);
    html_table_end(html);
}
