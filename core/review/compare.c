#include "compare.h"

#include <string.h>

#include "comparing.h"

const char *compare_keep(struct comparing *comparing, const char *text)
{
    return text != NULL ? arena_copy(comparing->arena, text, strlen(text)) : NULL;
}

struct place compare_keep_place(struct comparing *comparing, struct place place)
{
    place.file = compare_keep(comparing, place.file);
    return place;
}

static bool is_same_place(struct place a, struct place b)
{
    if (a.file == NULL || b.file == NULL)
        return a.file == b.file;
    return a.line == b.line && a.column == b.column && strcmp(a.file, b.file) == 0;
}

static bool is_told(const struct problems *problems, const struct problem *problem)
{
    for (size_t i = 0; i < problems->count; i++)
        if (is_same_place(problems->items[i].place, problem->place) &&
            strcmp(problems->items[i].message, problem->message) == 0)
            return true;
    return false;
}

/* A waiver or a sign-off may be about a rule that the other side alone has. */
static bool is_of_one_side(const struct problem *problem)
{
    return problem->weight == PROBLEM_NOTE && (strcmp(problem->code, "signoff-orphaned") == 0 ||
                                               strcmp(problem->code, "waiver-orphaned") == 0);
}

bool compare_keep_problems(struct comparing *comparing, const struct problems *problems)
{
    for (size_t i = 0; i < problems->count; i++) {
        const struct problem *from = &problems->items[i];
        if (is_of_one_side(from) || is_told(comparing->problems, from))
            continue;
        struct problem *to =
            problems_add(comparing->problems, from->weight, compare_keep(comparing, from->code),
                         compare_keep_place(comparing, from->place), "%s", from->message);
        if (to == NULL)
            return false;
        to->other = compare_keep_place(comparing, from->other);
        to->example = compare_keep(comparing, from->example);
        to->excerpt = compare_keep(comparing, from->excerpt);
    }
    return problems->dropped == 0 && !arena_is_short(comparing->arena);
}

/* Without a day asked for, all designs must be of one: a comparison is of two books, not of two
 * days by chance. */
static bool is_of_one_day(struct comparing *comparing, const struct review *review,
                          const char *path)
{
    struct compared_side *was = &comparing->comparison->was;
    char first[16], other[16];
    if (comparing->options->was_on != NULL || !review->has_date)
        return true;
    if (!was->has_date) {
        was->has_date = comparing->comparison->is.has_date = true;
        was->on = comparing->comparison->is.on = review->on;
    }
    if (date_compare(was->on, review->on) == 0)
        return true;
    date_write(first, sizeof first, was->on);
    date_write(other, sizeof other, review->on);
    struct problem *problem =
        problems_add(comparing->problems, PROBLEM_COMMAND, "days-differ", (struct place){0},
                     "%s is of %s, and the designs before it are of %s: say "
                     "for which day to compare",
                     path, other, first);
    if (problem != NULL)
        problem->example = "--on 2026-08-03";
    return false;
}

static bool review_side(struct review *out, struct bench *bench, struct comparing *comparing,
                        const char *path, const char *const *books, const char *on)
{
    const struct compare_options *options = comparing->options;
    const struct bench_options bench_options = {.book_directories = options->book_directories,
                                                .catalogue_directories =
                                                    options->catalogue_directories,
                                                .books = books,
                                                .on = on};
    return bench_review(out, bench, path, &bench_options) &&
           compare_keep_problems(comparing, &out->problems);
}

static bool is_whole(const struct review *review)
{
    return review->design != NULL && review->rulebook != NULL;
}

static bool compare_design(struct compared_design *design, struct comparing *comparing,
                           const char *path)
{
    const struct compare_options *options = comparing->options;
    struct review was, is;
    *design = (struct compared_design){.path = compare_keep(comparing, path)};
    if (design->path == NULL ||
        !review_side(&was, &comparing->was, comparing, path, options->was_books, options->was_on) ||
        !review_side(&is, &comparing->is, comparing, path, options->is_books, options->is_on))
        return false;
    if (!is_of_one_day(comparing, &was, path) || !is_whole(&was) || !is_whole(&is))
        return true;
    design->is_compared = true;
    return compare_findings(design, comparing, &was.findings, &is.findings);
}

static bool compare_all(struct comparing *comparing, const char *const *designs, size_t count)
{
    struct comparison *comparison = comparing->comparison;
    comparison->designs = arena_take(comparing->arena, (count + 1) * sizeof *comparison->designs);
    if (comparison->designs == NULL)
        return false;
    for (; comparison->design_count < count; comparison->design_count++)
        if (!compare_design(&comparison->designs[comparison->design_count], comparing,
                            designs[comparison->design_count]))
            return false;
    return !comparison->was.has_date || compare_books(comparing);
}

static bool set_day(struct compared_side *side, const char *on)
{
    side->has_date = on != NULL && date_read(&side->on, on, strlen(on));
    return side->has_date;
}

bool review_compare(struct comparison *out, const struct compare_options *options,
                    const char *const *designs, size_t count, struct arena *arena,
                    struct problems *problems)
{
    struct comparing comparing = {out, options, arena, problems, {0}, {0}};
    bool is_done = false;
    out->arena = arena;
    set_day(&out->was, options->was_on);
    set_day(&out->is, options->is_on);
    if (bench_open(&comparing.was)) {
        if (bench_open(&comparing.is)) {
            is_done = compare_all(&comparing, designs, count);
            bench_close(&comparing.is);
        }
        bench_close(&comparing.was);
    }
    return is_done && !arena_is_short(arena);
}
