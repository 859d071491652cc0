/* Reviews in one process that is warm (books read, rules compiled), against libyaml alone.
 * review DESIGN BOOK CATALOGUES-DIR CATALOGUE… — the catalogues are those that the design names.
 * One round is: the event loop over the design, the event loop over the design and its catalogues
 * and one review with its text report, each round in another order: what follows which decides what
 * the processor's caches still hold. Reviews with JSON have rounds of their own behind those, in
 * the same way. All of them open and read their files. */
#include <string.h>
#include <sys/resource.h>
#include <yaml.h>

#include "measure.h"
#include "plumbrule/plumbrule.h"

enum { WARM_UP = 100, ROUNDS = 2000, THINGS = 6, MOST_FILES = 16 };

struct bench {
    struct plumbrule *plumbrule;
    struct plumbrule_options options;
    const char *files[MOST_FILES]; /* the design first */
    size_t file_count;
    size_t bytes, events; /* of the last loop */
};

static void loop_file(struct bench *bench, const char *path)
{
    yaml_parser_t parser;
    yaml_event_t event;
    yaml_event_type_t type = YAML_NO_EVENT;
    FILE *file = fopen(path, "rb");
    if (file == NULL || !yaml_parser_initialize(&parser)) {
        fprintf(stderr, "%s cannot be opened\n", path);
        exit(1);
    }
    yaml_parser_set_input_file(&parser, file);
    while (type != YAML_STREAM_END_EVENT) {
        if (!yaml_parser_parse(&parser, &event)) {
            fprintf(stderr, "%s is no YAML\n", path);
            exit(1);
        }
        type = event.type;
        bench->events++;
        bench->bytes += type == YAML_STREAM_END_EVENT ? event.end_mark.index : 0;
        yaml_event_delete(&event);
    }
    yaml_parser_delete(&parser);
    fclose(file);
}

static void loop_files(struct bench *bench, size_t count)
{
    bench->bytes = bench->events = 0;
    for (size_t i = 0; i < count; i++)
        loop_file(bench, bench->files[i]);
}

static void review(struct bench *bench, const char *format)
{
    const char *report;
    size_t length;
    bench->options.format = format;
    if (plumbrule_check(&report, &length, bench->plumbrule, bench->files[0], &bench->options) !=
            PLUMBRULE_STANDS ||
        length == 0) {
        fprintf(stderr, "the design does not stand:\n%s\n", report);
        exit(1);
    }
}

static double run_once(struct bench *bench, int thing)
{
    double start = now();
    if (thing < 2)
        loop_files(bench, thing == 0 ? 1 : bench->file_count);
    else
        review(bench, thing == 2 ? "text" : "json");
    return now() - start;
}

static void write_table(struct bench *bench, struct series *series)
{
    struct rusage usage;
    getrusage(RUSAGE_SELF, &usage);
    double design = series_at(&series[0], 0.5), all = series_at(&series[1], 0.5);
    double text = series_at(&series[2], 0.5), json = series_at(&series[5], 0.5);
    double beside_json = series_at(&series[4], 0.5);
    for (int i = 0; i < THINGS; i++)
        series_write(&series[i]);
    loop_files(bench, 1);
    printf("  input: the design %zu bytes, %zu events", bench->bytes, bench->events);
    loop_files(bench, bench->file_count);
    printf("; with its %zu catalogues %zu bytes, %zu events\n", bench->file_count - 1, bench->bytes,
           bench->events);
    printf("  review, text / loop over design+catalogues %9.2f   (aim: at most 5)\n", text / all);
    printf("  review, JSON / loop over design+catalogues %9.2f\n", json / beside_json);
    printf("  review, text / loop over the design alone  %9.2f\n", text / design);
    printf("  peak memory of this process: %ld KiB, after %d reviews\n", usage.ru_maxrss,
           2 * (WARM_UP + ROUNDS));
}

/* Any order of so many things, each as often as the others. */
static void shuffle(int *order, int count)
{
    for (int i = 0; i < count; i++)
        order[i] = i;
    for (int i = count - 1; i > 0; i--) {
        int other = rand() % (i + 1), kept = order[i];
        order[i] = order[other];
        order[other] = kept;
    }
}

/* The loops and one kind of review. */
static void run_rounds(struct bench *bench, struct series *loop, struct series *both,
                       struct series *review, int review_thing)
{
    struct series *const all[] = {loop, both, review};
    const int things[] = {0, 1, review_thing};
    for (int round = 0; round < WARM_UP + ROUNDS; round++) {
        int order[3];
        shuffle(order, 3);
        for (int i = 0; i < 3; i++) {
            struct series *one = all[order[i]];
            double took = run_once(bench, things[order[i]]);
            if (round >= WARM_UP)
                one->samples[one->count++] = took;
        }
    }
}

static void run_all(struct bench *bench)
{
    static const char *const names[THINGS] = {
        "libyaml events, the design",        "libyaml events, design+catalogues",
        "warm review, text report",          "libyaml events, the design",
        "libyaml events, design+catalogues", "warm review, JSON report"};
    struct series series[THINGS];
    for (int i = 0; i < THINGS; i++)
        series_open(&series[i], names[i], ROUNDS);
    run_rounds(bench, &series[0], &series[1], &series[2], 2);
    run_rounds(bench, &series[3], &series[4], &series[5], 3);
    write_table(bench, series);
    for (int i = 0; i < THINGS; i++)
        free(series[i].samples);
}

int main(int count, char **words)
{
    if (count < 4 || count - 3 > MOST_FILES) {
        fputs("review DESIGN BOOK CATALOGUES-DIR CATALOGUE…\n", stderr);
        return 64;
    }
    const char *books[] = {words[2], NULL}, *catalogues[] = {words[3], NULL};
    struct bench bench = {.options = {.books = books, .catalogue_directories = catalogues},
                          .files = {words[1]},
                          .file_count = (size_t)count - 3};
    for (int i = 4; i < count; i++)
        bench.files[i - 3] = words[i];
    if (!plumbrule_open(&bench.plumbrule))
        return 70;
    run_all(&bench);
    plumbrule_close(bench.plumbrule);
    return 0;
}
