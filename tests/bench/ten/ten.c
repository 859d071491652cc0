/* The ten checks over designs in memory: as rules of a book, judged and recorded, and by hand.
 * ten LIST CATALOGUES-DIR BOOK-DIR OUT-DIR PASSES — writes OUT-DIR/facts (one JSON array per
 * design, a line each thing), and the verdicts OUT-DIR/rules and OUT-DIR/hand, sorted by the
 * caller; then prints, per pass, "rules" or "hand" with the time of a pass over all designs in
 * microseconds, and last "checks" with how many verdicts a pass gives. */
#include "ten.h"

#include <string.h>

#include "../measure.h"
#include "intake.h"
#include "judge.h"
#include "working.h"

struct ten {
    struct arena *designs_arena, *arena; /* of all designs; of one review */
    struct design **designs;
    size_t count, capacity, verdicts;
    struct rulebook *rulebook;
    struct judge *judge;
};

static void stop(const char *why, const char *what)
{
    fprintf(stderr, "ten: %s %s\n", why, what);
    exit(1);
}

static void read_designs(struct ten *ten, const char *list, const char *catalogue_directory)
{
    const char *directories[] = {catalogue_directory, NULL};
    struct catalogues catalogues = {.directories = directories};
    char path[4096];
    FILE *file = fopen(list, "r");
    if (file == NULL)
        stop("there is no list", list);
    while (fgets(path, sizeof path, file) != NULL) {
        struct problems problems = {.arena = ten->designs_arena};
        path[strcspn(path, "\n")] = '\0';
        ten->designs = arena_grow(ten->designs_arena, ten->designs, ten->count, &ten->capacity,
                                  sizeof *ten->designs);
        char *kept = arena_copy(ten->designs_arena, path, strlen(path));
        if (!design_read(&ten->designs[ten->count], kept, &catalogues, ten->designs_arena,
                         &problems))
            stop("not read:", path);
        ten->count++;
    }
    fclose(file);
}

static const char *short_name(const char *id)
{
    const char *slash = strrchr(id, '/');
    return slash != NULL ? slash + 1 : id;
}

/* One review of one design by the rules; verdicts go to `out`, if there is one. */
static void judge_one(struct ten *ten, size_t number, FILE *out)
{
    arena_clear(ten->arena);
    struct findings findings = {.arena = ten->arena};
    struct problems problems = {.arena = ten->arena};
    struct working working = {
        .arena = ten->arena, .design = ten->designs[number], .is_lasting = true};
    if (!judge_review(&findings, ten->judge, ten->designs[number], ten->rulebook, &working,
                      &problems) ||
        !findings_say(&findings) || problems.count > 0)
        stop("a rule is broken:", problems.count > 0 ? problems.items[0].message : "no memory");
    for (size_t i = 0; out != NULL && i < findings.count; i++) {
        const struct finding *finding = findings.items[i];
        if (strcmp(finding->about_kind, "design") !=
            0) /* nothing to look at: no verdict on a thing */
            fprintf(out, "%zu %s %s %s\n", number, short_name(finding->rule->id),
                    finding->about_name, outcome_name(finding->outcome));
    }
    working_close(&working);
}

static size_t check_one(const struct design *design, size_t number, FILE *out)
{
    size_t tally = 0;
    for (size_t k = 0; k < CHECKS; k++) {
        const struct objects *things = &design->of_kind[checks[k].about];
        for (size_t i = 0; i < things->count; i++) {
            enum outcome outcome = checks[k].judge(things->items[i]);
            tally += 1 + (outcome == OUTCOME_FAIL ? (size_t)1 << 32 : 0);
            if (out != NULL)
                fprintf(out, "%zu %s %s %s\n", number, checks[k].rule, things->items[i]->path,
                        outcome_name(outcome));
        }
    }
    return tally;
}

static FILE *open_in(const char *directory, const char *name)
{
    char path[4096];
    snprintf(path, sizeof path, "%s/%s", directory, name);
    FILE *file = fopen(path, "w");
    if (file == NULL)
        stop("cannot write", path);
    return file;
}

static void write_verdicts(struct ten *ten, const char *directory)
{
    FILE *facts = open_in(directory, "facts"), *rules = open_in(directory, "rules"),
         *hand = open_in(directory, "hand");
    for (size_t i = 0; i < ten->count; i++) {
        facts_write(facts, ten->designs[i]);
        judge_one(ten, i, rules);
        ten->verdicts += check_one(ten->designs[i], i, hand) & 0xffffffff;
    }
    if (fclose(facts) != 0 || fclose(rules) != 0 || fclose(hand) != 0)
        stop("cannot write to", directory);
}

static void time_passes(struct ten *ten, long passes)
{
    size_t fails = 0;
    for (long pass = 0; pass < passes; pass++) {
        double start = now();
        for (size_t i = 0; i < ten->count; i++)
            judge_one(ten, i, NULL);
        double between = now();
        for (size_t i = 0; i < ten->count; i++)
            fails += check_one(ten->designs[i], i, NULL) >> 32;
        printf("rules %.1f\nhand %.1f\n", between - start, now() - between);
    }
    printf("fails %zu\nchecks %zu\n", passes > 0 ? fails / (size_t)passes : 0, ten->verdicts);
}

int main(int count, char **words)
{
    if (count != 6)
        stop("LIST CATALOGUES-DIR BOOK-DIR OUT-DIR", "PASSES");
    const char *names[] = {words[3]}, *directories[] = {NULL};
    struct ten ten = {.designs_arena = arena_new(), .arena = arena_new(), .judge = judge_new(NULL)};
    struct shelf *shelf = shelf_new(directories);
    struct date day;
    if (ten.designs_arena == NULL || ten.arena == NULL || ten.judge == NULL || shelf == NULL ||
        !date_read(&day, "2026-08-03", strlen("2026-08-03")))
        stop("no", "memory");
    struct problems problems = {.arena = ten.designs_arena};
    read_designs(&ten, words[1], words[2]);
    if (!rulebook_resolve(&ten.rulebook, names, 1, day, shelf_find, shelf, ten.designs_arena,
                          &problems))
        stop("the book was not read:", problems.count > 0 ? problems.items[0].message : words[3]);
    write_verdicts(&ten, words[4]);
    time_passes(&ten, strtol(words[5], NULL, 10));
    judge_free(ten.judge);
    shelf_free(shelf);
    arena_free(ten.arena);
    arena_free(ten.designs_arena);
    return 0;
}
