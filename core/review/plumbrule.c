/* The public interface. */
#include "plumbrule/plumbrule.h"

#include <locale.h>
#include <stdlib.h>
#include <string.h>

#include "report.h"
#include "review.h"
#include "warm.h"

struct plumbrule {
    struct bench bench;
    struct text report;
    locale_t plain; /* "C": nothing hangs on the host program's locale */
};

bool plumbrule_open(struct plumbrule **out)
{
    struct plumbrule *plumbrule = calloc(1, sizeof *plumbrule);
    *out = plumbrule;
    if (plumbrule == NULL)
        return false;
    plumbrule->plain = newlocale(LC_ALL_MASK, "C", (locale_t)0);
    if (plumbrule->plain != (locale_t)0 && bench_open(&plumbrule->bench))
        return true;
    plumbrule_close(plumbrule);
    *out = NULL;
    return false;
}

void plumbrule_close(struct plumbrule *plumbrule)
{
    if (plumbrule == NULL)
        return;
    bench_close(&plumbrule->bench);
    text_free(&plumbrule->report);
    if (plumbrule->plain != (locale_t)0)
        freelocale(plumbrule->plain);
    free(plumbrule);
}

static bool is_known_format(const char *format)
{
    return format == NULL || report_format_find(format) != NULL;
}

static const struct report_format *format_of(const struct plumbrule_options *options)
{
    return report_format_find(options->format != NULL ? options->format : "text");
}

static bool write_report(struct plumbrule *plumbrule, const struct review *review,
                         const char *design_path, const struct plumbrule_options *options,
                         const struct part_taker *taker)
{
    const struct report report = {
        .design_path = design_path,
        .design = review->design,
        .rulebook = review->rulebook,
        .findings = review->design != NULL && review->rulebook != NULL ? &review->findings : NULL,
        .problems = &review->problems,
        .has_date = review->has_date,
        .on = review->on,
        .version = plumbrule_version(),
        .with_working = options->with_working,
        .with_color = options->with_color,
        .width = options->width,
        .failures_only = options->failures_only,
        .hand_on = taker->hand_on,
        .taker = taker->context};
    return format_of(options)->write(&plumbrule->report, &report);
}

static enum plumbrule_end check(struct plumbrule *plumbrule, const char *design_path,
                                const struct plumbrule_options *options,
                                const struct part_taker *taker)
{
    if (!is_known_format(options->format))
        return PLUMBRULE_COMMAND;
    const struct bench_options bench_options = {
        .book_directories = options->book_directories,
        .catalogue_directories = options->catalogue_directories,
        .books = options->books,
        .on = options->on,
        .with_working = options->with_working || format_of(options)->needs_working,
        .without_messages = format_of(options)->tells_few};
    struct review review;
    if (!bench_review(&review, &plumbrule->bench, design_path, &bench_options) ||
        !write_report(plumbrule, &review, design_path, options, taker))
        return PLUMBRULE_NO_MEMORY;
    return (enum plumbrule_end)exit_code(&review.findings, &review.problems,
                                         any_rule_holds(review.rulebook));
}

enum plumbrule_end plumbrule_check_in_parts(const char **report, size_t *length,
                                            struct plumbrule *plumbrule, const char *design_path,
                                            const struct plumbrule_options *options,
                                            const struct part_taker *taker)
{
    locale_t before = uselocale(plumbrule->plain);
    text_clear(&plumbrule->report);
    enum plumbrule_end end = check(plumbrule, design_path, options, taker);
    if (end == PLUMBRULE_NO_MEMORY)
        text_clear(&plumbrule->report);
    *report = plumbrule->report.bytes != NULL ? plumbrule->report.bytes : "";
    *length = plumbrule->report.length;
    uselocale(before);
    return end;
}

enum plumbrule_end plumbrule_check(const char **report, size_t *length, struct plumbrule *plumbrule,
                                   const char *design_path, const struct plumbrule_options *options)
{
    const struct part_taker nobody = {NULL, NULL};
    return plumbrule_check_in_parts(report, length, plumbrule, design_path, options, &nobody);
}

void plumbrule_warm(struct plumbrule *plumbrule, const char *design_path,
                    const struct plumbrule_options *options)
{
    const struct bench_options bench_options = {.book_directories = options->book_directories,
                                                .catalogue_directories =
                                                    options->catalogue_directories,
                                                .books = options->books,
                                                .on = options->on,
                                                .with_working = options->with_working};
    locale_t before = uselocale(plumbrule->plain);
    bench_warm(&plumbrule->bench, design_path, &bench_options);
    uselocale(before);
}

const char *plumbrule_version(void)
{
    return PLUMBRULE_VERSION;
}
