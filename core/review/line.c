/* The line: design, books, judge, findings. */
#include "review.h"

#include <stdio.h>
#include <string.h>

#include "index.h"
#include "layout.h"
#include "scope.h"
#include "search.h"
#include "sign.h"

static struct place place_of(const struct layout_fault *fault)
{
    const struct object *object = fault->object;
    return object_has(object, fault->slot) ? object_fact(object, fault->slot)->place
                                           : object->place;
}

/* What comes of one row has the row's place: the same slip there is one. */
static const char *name_slip(const struct layout_fault *fault, struct arena *arena)
{
    struct place place = place_of(fault);
    return arena_format(arena, "%u:%u:%s:%s", place.line, place.column,
                        place.file != NULL ? place.file : "", fault->message);
}

/* Of each fault that is the first of its slip how many there are; of the others 0. NULL: no memory.
 */
static size_t *count_slips(const struct layout_fault *faults, size_t count, struct arena *arena)
{
    struct index seen = {.arena = arena};
    size_t *counts = arena_take(arena, count * sizeof *counts);
    for (size_t i = 0; counts != NULL && i < count; i++) {
        const char *name = name_slip(&faults[i], arena);
        size_t *first = name != NULL ? index_find(&seen, name) : NULL;
        if (first == NULL) {
            first = &counts[i];
            if (name == NULL || !index_add(&seen, name, first))
                return NULL;
        }
        ++*first;
    }
    return counts;
}

/* The line of the design's file at the place, or NULL. */
static const char *line_at(const struct review *review, struct place place)
{
    const struct design *design = review->design;
    const struct source source = {design->path, design->text, design->text_length, NULL};
    bool is_there =
        design->text != NULL && place.file != NULL && strcmp(place.file, design->path) == 0;
    return is_there ? source_line(&source, place.line, review->problems.arena) : NULL;
}

static void tell_fault(struct review *review, const struct layout_fault *fault, size_t more)
{
    const struct object *object = fault->object;
    char others[60] = "";
    if (more > 0)
        snprintf(others, sizeof others, " and %zu more of its row", more);
    struct problem *problem =
        problems_add(&review->problems, PROBLEM_INPUT, "geometry", place_of(fault), "%s %s%s: %s",
                     object->kind->name, object->path, others, fault->message);
    if (problem == NULL)
        return;
    problem->example = fault->example;
    problem->excerpt = line_at(review, problem->place);
}

/* What is wrong with the geometry of the roof is said before any rule stumbles over it. */
static bool check_layout(struct review *review, struct arena *arena)
{
    struct layout_fault *faults;
    size_t count;
    if (!layout_check(&faults, &count, review->design, arena))
        return false;
    const size_t *alike = count_slips(faults, count, arena);
    for (size_t i = 0; alike != NULL && i < count; i++)
        if (alike[i] > 0)
            tell_fault(review, &faults[i], alike[i] - 1);
    return alike != NULL;
}

/* The permit's number, or NULL. */
static const char *permit_of(const struct design *design)
{
    const struct objects *projects = &design->of_kind[KIND_project];
    for (size_t i = 0; i < projects->count; i++)
        if (object_has(projects->items[i], SLOT_project_permit_number))
            return object_fact(projects->items[i], SLOT_project_permit_number)->is.word;
    return NULL;
}

static bool judge_all(struct review *review, struct bench *bench,
                      const struct bench_options *options)
{
    struct working working = {.arena = bench->arena,
                              .design = review->design,
                              .keeps_steps = options->with_working,
                              .is_lasting = true};
    bool is_judged = judge_review(&review->findings, bench->judge, review->design, review->rulebook,
                                  &working, &review->problems);
    working_close(&working);
    if (!is_judged || !scope_review(&review->findings, review->design, review->rulebook))
        return false;
    findings_sort(&review->findings);
    return findings_waive(&review->findings, review->rulebook, permit_of(review->design),
                          &review->problems) &&
           review_sign(review) && (options->without_messages || findings_say(&review->findings));
}

static bool read_design(struct review *review, struct bench *bench, const char *path,
                        const struct bench_options *options)
{
    const struct catalogues catalogues = {
        search_catalogues(options->catalogue_directories, bench->arena), bench->catalogues};
    if (catalogues.directories == NULL)
        return false;
    if (!design_read(&review->design, path, &catalogues, bench->arena, &review->problems))
        review->design = NULL;
    return true;
}

/* A day before a book adopts anything: hardly a rule holds, so that all would seem to stand. */
static void tell_day_too_early(struct review *review)
{
    for (size_t i = 0; i < review->rulebook->book_count; i++) {
        const struct book *book = review->rulebook->books[i].book;
        const struct adoption *first = NULL;
        for (size_t j = 0; j < book->adoption_count; j++)
            if (first == NULL || date_compare(book->adoptions[j].from, first->from) < 0)
                first = &book->adoptions[j];
        if (first == NULL || date_compare(first->from, review->on) <= 0)
            continue;
        char day[16], from[16];
        date_write(day, sizeof day, review->on);
        date_write(from, sizeof from, first->from);
        problems_add(
            &review->problems, PROBLEM_INPUT, "day-too-early", first->place,
            "%s adopts nothing on %s, its first adoption is from %s: nothing it adopts was "
            "checked",
            book->name, day, from);
    }
}

/* Of a design that cannot be read nobody knows the day; books that cannot be read are told with it.
 */
static bool seek_books(struct review *review, struct bench *bench,
                       const struct bench_options *options)
{
    size_t before = review->problems.count;
    if (!bench_fetch_shelf(bench, options->book_directories))
        return false;
    for (size_t i = 0; options->books != NULL && options->books[i] != NULL; i++)
        shelf_find(bench->shelf, options->books[i], (struct place){0}, &review->problems);
    bench->shelf_is_stale = bench->shelf_is_stale || review->problems.count > before;
    return true;
}

bool bench_review(struct review *out, struct bench *bench, const char *design_path,
                  const struct bench_options *options)
{
    bench_start(bench, out);
    if (!read_design(out, bench, design_path, options) ||
        (out->design != NULL && !check_layout(out, bench->arena)))
        return false;
    if (out->design == NULL && options->on == NULL && !seek_books(out, bench, options))
        return false;
    bool is_resolved = review_find_date(out, options->on) && bench_resolve(out, bench, options);
    if (is_resolved && out->design != NULL)
        tell_day_too_early(out);
    if (is_resolved && out->design != NULL && !judge_all(out, bench, options))
        return false;
    return !arena_is_short(bench->arena) && out->problems.dropped == 0;
}
