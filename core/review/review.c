#include "review.h"

#include <string.h>

#include "kept_sources.h"
#include "search.h"

bool bench_open(struct bench *out)
{
    *out = (struct bench){.arena = arena_new(),
                          .shelf_arena = arena_new(),
                          .rulebook_arena = arena_new(),
                          .judge = judge_new(NULL),
                          .catalogues = kept_sources_new()};
    if (out->arena != NULL && out->shelf_arena != NULL && out->rulebook_arena != NULL &&
        out->judge != NULL && out->catalogues != NULL)
        return true;
    bench_close(out);
    return false;
}

static void drop_rulebook(struct bench *bench)
{
    bench->rulebook = NULL;
    if (bench->rulebook_arena != NULL)
        arena_clear(bench->rulebook_arena);
}

/* A new shelf reads every book anew, and tells again what is wrong in it. */
static void drop_shelf(struct bench *bench)
{
    drop_rulebook(bench);
    if (bench->shelf != NULL)
        shelf_free(bench->shelf);
    bench->shelf = NULL;
    bench->shelf_is_stale = false;
    bench->directories = NULL;
    if (bench->shelf_arena != NULL)
        arena_clear(bench->shelf_arena);
}

void bench_close(struct bench *bench)
{
    drop_shelf(bench);
    if (bench->judge != NULL)
        judge_free(bench->judge);
    kept_sources_free(bench->catalogues);
    arena_free(bench->rulebook_arena);
    arena_free(bench->shelf_arena);
    arena_free(bench->arena);
    *bench = (struct bench){0};
}

void bench_start(struct bench *bench, struct review *review)
{
    arena_clear(bench->arena);
    kept_sources_tidy(bench->catalogues);
    *review =
        (struct review){.findings = {.arena = bench->arena}, .problems = {.arena = bench->arena}};
}

bool bench_fetch_shelf(struct bench *bench, const char *const *given)
{
    const char *const *wanted = search_books(given, bench->arena);
    if (wanted == NULL)
        return false;
    if (bench->shelf != NULL && !bench->shelf_is_stale &&
        search_is_same(bench->directories, wanted))
        return true;
    drop_shelf(bench);
    bench->directories = search_books(given, bench->shelf_arena);
    if (bench->directories != NULL)
        bench->shelf = shelf_new(bench->directories);
    return bench->shelf != NULL;
}

static void tell_no_memory(struct review *review)
{
    problems_add(&review->problems, PROBLEM_MEMORY, "memory", (struct place){0},
                 "there is no memory left");
}

static bool tell_command(struct review *review, const char *code, const char *example,
                         const char *message)
{
    struct problem *problem =
        problems_add(&review->problems, PROBLEM_COMMAND, code, (struct place){0}, "%s", message);
    if (problem != NULL)
        problem->example = example;
    return false;
}

/* The day that the design's permit is applied for. */
static bool date_of_design(struct review *review)
{
    const struct object *root = review->design->root;
    const struct fact *project = object_fact(root, SLOT_design_project);
    struct place place = root->place;
    if (project->state == FACT_GIVEN) {
        const struct fact *day =
            object_fact(project->is.object, SLOT_project_permit_application_date);
        place = project->is.object->place;
        if (day->state == FACT_GIVEN) {
            review->on = day->is.date;
            return review->has_date = true;
        }
    }
    struct problem *problem =
        problems_add(&review->problems, PROBLEM_INPUT, "date-missing", place,
                     "no day is given whose rules hold: give --on YYYY-MM-DD, or the project's "
                     "permit_application_date");
    if (problem != NULL)
        problem->example = "permit_application_date: 2026-05-04";
    return false;
}

bool review_find_date(struct review *review, const char *on)
{
    if (on == NULL)
        return review->design != NULL && date_of_design(review);
    if (!date_read(&review->on, on, strlen(on)))
        return tell_command(review, "date-bad", "--on 2026-05-04",
                            "--on takes a day of the calendar, written YYYY-MM-DD");
    return review->has_date = true;
}

static size_t count_names(const char *const *names)
{
    size_t count = 0;
    while (names != NULL && names[count] != NULL)
        count++;
    return count;
}

/* Is the rulebook that was resolved last the one that is asked for? */
static bool is_resolved(const struct bench *bench, const char *const *books, struct date on)
{
    return bench->rulebook != NULL && search_is_same(bench->rulebook_books, books) &&
           date_compare(bench->rulebook_on, on) == 0;
}

/* Copies names into the rulebook's arena. NULL: no memory. */
static const char *const *keep_names(struct bench *bench, const char *const *names, size_t count)
{
    const char **kept = arena_take(bench->rulebook_arena, (count + 1) * sizeof *kept);
    for (size_t i = 0; kept != NULL && i < count; i++) {
        kept[i] = arena_copy(bench->rulebook_arena, names[i], strlen(names[i]));
        if (kept[i] == NULL)
            return NULL;
    }
    return kept;
}

/* Makes the rulebook; designs of one town and day ask for the same again and again. NULL: problems
 * say why. */
static struct rulebook *resolve(struct review *review, struct bench *bench,
                                const char *const *books)
{
    struct rulebook *rulebook;
    size_t count = count_names(books);
    if (is_resolved(bench, books, review->on))
        return bench->rulebook;
    drop_rulebook(bench);
    bench->rulebook_books = keep_names(bench, books, count);
    bench->rulebook_on = review->on;
    if (bench->rulebook_books == NULL) {
        tell_no_memory(review);
        return NULL;
    }
    if (!rulebook_resolve(&rulebook, bench->rulebook_books, count, review->on, shelf_find,
                          bench->shelf, bench->rulebook_arena, &review->problems))
        rulebook = NULL;
    if (arena_is_short(bench->rulebook_arena))
        tell_no_memory(review);
    if (rulebook != NULL && !any_rule_holds(rulebook))
        problems_add(&review->problems, PROBLEM_INPUT, "no-rule", (struct place){0},
                     "no rule of the books named is in force on that day");
    return rulebook;
}

bool bench_resolve(struct review *review, struct bench *bench, const struct bench_options *options)
{
    size_t before = review->problems.count;
    if (count_names(options->books) == 0)
        return tell_command(review, "book-none", "--book marrow-bay", "no rulebook is named");
    if (!bench_fetch_shelf(bench, options->book_directories)) {
        tell_no_memory(review);
        return false;
    }
    review->rulebook = resolve(review, bench, options->books);
    bench->shelf_is_stale = review->problems.count > before || review->problems.dropped > 0;
    bench->rulebook = bench->shelf_is_stale ? NULL : review->rulebook;
    return review->rulebook != NULL;
}
