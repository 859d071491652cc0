#include "warm.h"

#include "search.h"

void bench_warm(struct bench *bench, const char *design_path, const struct bench_options *options)
{
    struct review review;
    bench_start(bench, &review);
    const struct catalogues catalogues = {
        search_catalogues(options->catalogue_directories, bench->arena), bench->catalogues};
    bool has_day = options->on != NULL || (catalogues.directories != NULL &&
                                           design_read(&review.design, design_path, &catalogues,
                                                       bench->arena, &review.problems));
    if (has_day && review_find_date(&review, options->on) && bench_resolve(&review, bench, options))
        for (size_t i = 0; i < review.rulebook->rule_count; i++) {
            struct card card;
            if (review.rulebook->rules[i].holds)
                judge_read_card(&card, bench->judge, &review.rulebook->rules[i], bench->arena,
                                &review.problems);
        }
    bench_start(bench, &review);
    /* Who only hands designs out to workers needs the room of one no longer. */
    struct arena *empty = arena_new();
    if (empty == NULL)
        return;
    arena_free(bench->arena);
    bench->arena = empty;
}
