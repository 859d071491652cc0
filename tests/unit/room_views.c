/* What rules are shown of designs of many sizes, one after the other by one judge: each time what a
 * judge of its own would show, with more views than are kept and with fewer. */
#include "room_trial.h"

/* Holds a view of everything that it passes, and looks at all of them again when it has seen the
 * last. */
static const char looking[] =
    "return {title = 'Looks', cite = 'x', about = 'design', check = function(design)\n"
    "local things, slopes, turns, covers, steep = {}, {}, {}, {}, 0 * deg\n"
    "for i, plane in ipairs(design.roof.planes) do\n"
    "things[i], slopes[i], turns[i], covers[i] = plane, plane.slope, plane.azimuth, "
    "plane.covering\n"
    "steep = steep + plane.slope end\n"
    "local right, named, seen, again = 0, 0, {}, 0\n"
    "for _, plane in ipairs(design.roof.planes) do seen[plane] = true end\n"
    "for i = 1, #things do if seen[things[i]] then again = again + 1 end end\n"
    "for i = 1, #things do\n"
    "if same(slopes[i], things[i].slope) and same(turns[i], things[i].azimuth) and\n"
    "covers[i]:is('slate') and same(things[i], design.roof.planes[i]) then right = right + 1 end\n"
    "if same(things[i]:called(), format('p%d', i)) then named = named + 1 end end\n"
    "shall.be_equal(format('Right, of %d', #things), right, design.roof.planes:count())\n"
    "shall.be_equal('Named', named, #things)\n"
    "shall.be_equal('Found by the thing itself', again, #things)\n"
    "shall.not_exceed('Slopes of all', steep, 1 * deg)\n"
    "review('The last', things[#things], slopes[#things], turns[#things]) end }\n";

static const char head[] =
    "title: House of %zu\ncatalogue: none\n"
    "project: {permit_application_date: 2026-08-03, scope: [roof-mounted PV]}\n"
    "site: {exposure: C}\nmodules: none\nmodule_rows: none\nroof:\n  planes:\n";

static struct design *house_of(size_t planes, size_t turn, struct arena *arena)
{
    static const char *const nowhere[] = {NULL};
    struct catalogues catalogues = {.directories = nowhere};
    struct problems problems = {.arena = arena};
    struct design *design = NULL;
    const char *directory = getenv("TMPDIR");
    char *path = arena_format(arena, "%s/plumbrule-views-%ld.yaml", directory ? directory : "/tmp",
                              (long)getpid());
    FILE *file = path != NULL ? fopen(path, "w") : NULL;
    if (file == NULL)
        abort();
    fprintf(file, head, planes);
    for (size_t i = 1; i <= planes; i++)
        fprintf(file, "    - {name: p%zu, slope: %zu°, azimuth: %zu°, covering: slate}\n", i,
                1 + (i + turn) % 50, (7 * i + turn) % 360);
    if (fclose(file) != 0 || !design_read(&design, path, &catalogues, arena, &problems)) {
        fprintf(stderr, "%s\n", problems.count > 0 ? problems.items[0].message : path);
        abort();
    }
    remove(path);
    return design;
}

/* All findings of the last review, in the arena. */
static char *tell(const struct room_trial *trial, struct arena *arena)
{
    char *all = arena_format(arena, "%zu problems\n", trial->problems.count);
    for (size_t i = 0; i < trial->findings.count; i++) {
        const struct finding *finding = trial->findings.items[i];
        for (size_t k = 0; k < finding->test_count; k++) {
            char actual[160] = "";
            if (finding->tests[k].relation != RELATION_REVIEW)
                amount_write(actual, sizeof actual, finding->tests[k].actual, NULL, 12);
            all = arena_format(arena, "%s%s: %s %s\n", all, finding->rule->id,
                               finding->tests[k].what, actual);
        }
    }
    return all;
}

int main(void)
{
    /* Growing to more than are kept, shrinking, growing by little, and all of it again. */
    static const size_t sizes[] = {3, 400, 1, 900, 2600, 2, 2200, 120, 260, 5, 2100, 3};
    struct room_trial trial = room_open(NULL);
    struct judge *one = trial.judge;
    const char *path = write_rule(looking, strlen(looking));
    for (size_t i = 0; i < sizeof sizes / sizeof sizes[0]; i++) {
        struct arena *arena = arena_new();
        if (arena == NULL)
            abort();
        trial.design = house_of(sizes[i], i, arena);
        trial.judge = one;
        room_review(&trial, path);
        char *together = tell(&trial, arena);
        CHECK(trial.is_done && trial.problems.count == 0, together);
        trial.judge = judge_new(NULL);
        if (trial.judge == NULL)
            abort();
        room_review(&trial, path);
        CHECK_TEXT(together, tell(&trial, arena), "as by a judge of its own");
        const struct finding *finding = finding_of(&trial, "room/attack", 0);
        CHECK(finding != NULL && finding->test_count == 5 &&
                  finding->tests[0].outcome == OUTCOME_PASS &&
                  finding->tests[1].outcome == OUTCOME_PASS &&
                  finding->tests[2].outcome == OUTCOME_PASS &&
                  finding->tests[3].outcome == OUTCOME_FAIL,
              together);
        judge_free(trial.judge);
        arena_free(arena);
    }
    trial.judge = one;
    remove(path);
    room_close(&trial);
    return checks_end();
}
