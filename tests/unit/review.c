/* The public interface: warm or cold, in any order and on two threads a design gets the same
 * report. */
#include <locale.h>
#include <malloc.h>
#include <pthread.h>
#include "check.h"
#include "plumbrule/plumbrule.h"

#define SAMPLES TESTS_DIR "/../samples/quill-hollow/"

static const char *const books[] = {"marrow-bay", NULL};
static const struct plumbrule_options options = {
    .books = books, .on = "2026-08-03", .format = "json"};

static const char *const designs[] = {SAMPLES "failing.yaml", SAMPLES "standing.yaml",
                                      SAMPLES "unfinished.yaml"};
enum { DESIGNS = sizeof designs / sizeof designs[0] };

/* The report of a design by a desk of its own; yours to free. */
static char *report_alone(const char *design, enum plumbrule_end *end)
{
    struct plumbrule *plumbrule;
    const char *report;
    size_t length;
    if (!plumbrule_open(&plumbrule))
        return NULL;
    *end = plumbrule_check(&report, &length, plumbrule, design, &options);
    char *copy = malloc(length + 1);
    if (copy != NULL)
        memcpy(copy, report, length + 1);
    plumbrule_close(plumbrule);
    return copy;
}

struct round {
    char *const *alone;
    size_t differing, done;
    bool backwards;
};

/* All designs three times over at one warm desk. */
static void *run_round(void *context)
{
    struct round *round = context;
    struct plumbrule *plumbrule;
    if (!plumbrule_open(&plumbrule))
        return NULL;
    for (size_t i = 0; i < 3 * DESIGNS; i++) {
        size_t at = round->backwards ? DESIGNS - 1 - i % DESIGNS : i % DESIGNS;
        const char *report;
        size_t length;
        plumbrule_check(&report, &length, plumbrule, designs[at], &options);
        round->differing += strcmp(report, round->alone[at]) != 0;
        round->done++;
    }
    plumbrule_close(plumbrule);
    return NULL;
}

static void test_order(char *const *alone)
{
    struct round forwards = {.alone = alone}, backwards = {.alone = alone, .backwards = true};
    run_round(&forwards);
    run_round(&backwards);
    CHECK(forwards.done == 3 * DESIGNS && forwards.differing == 0,
          "a warm desk says the same as a fresh one");
    CHECK(backwards.done == 3 * DESIGNS && backwards.differing == 0, "in the other order too");
}

static void test_threads(char *const *alone)
{
    struct round rounds[2] = {{.alone = alone}, {.alone = alone, .backwards = true}};
    pthread_t threads[2];
    size_t started = 0;
    for (; started < 2; started++)
        if (pthread_create(&threads[started], NULL, run_round, &rounds[started]) != 0)
            break;
    for (size_t i = 0; i < started; i++)
        pthread_join(threads[i], NULL);
    CHECK(started == 2, "there are two threads");
    for (size_t i = 0; i < 2; i++)
        CHECK(rounds[i].done == 3 * DESIGNS && rounds[i].differing == 0,
              "two threads do not hear of each other");
}

/* A host whose locale writes a comma for a point. */
static void test_locale(char *const *alone)
{
    static const char *const locales[] = {"de_DE.UTF-8", "fr_FR.UTF-8", "de_DE.utf8",
                                          "nl_NL.UTF-8"};
    const char *set = NULL;
    for (size_t i = 0; i < sizeof locales / sizeof locales[0] && set == NULL; i++)
        set = setlocale(LC_ALL, locales[i]);
    if (set == NULL) {
        fprintf(stderr, "skipped: no locale here writes a comma for a point\n");
        return;
    }
    struct round round = {.alone = alone};
    run_round(&round);
    CHECK(round.done == 3 * DESIGNS && round.differing == 0, "the host's locale changes nothing");
    setlocale(LC_ALL, "C");
}

/* The report of one design under books and a day, copied; NULL: none. */
static char *report_under(struct plumbrule *plumbrule, const char *const *of_books, const char *on)
{
    const char *report;
    size_t length;
    struct plumbrule_options asked = options;
    asked.books = of_books;
    asked.on = on;
    plumbrule_check(&report, &length, plumbrule, designs[1], &asked);
    return length > 0 ? strdup(report) : NULL;
}

/* A desk keeps what it resolved last; books and days that change must show, there and back. */
static void test_other_books_and_days(void)
{
    static const char *const other_books[] = {"larch-pass", NULL};
    static const char *const both[] = {"larch-pass", "sallow-point", NULL};
    static const struct {
        const char *const *books;
        const char *on;
    } asked[] = {{books, "2026-05-04"},
                 {other_books, "2026-05-04"},
                 {both, "2026-05-04"},
                 {books, "2020-05-04"},
                 {books, "2026-05-04"}};
    enum { ASKED = sizeof asked / sizeof asked[0] };
    struct plumbrule *one = NULL;
    char *reports[ASKED] = {NULL};
    if (!CHECK(plumbrule_open(&one), "a desk opens"))
        return;
    for (size_t i = 0; i < ASKED; i++) {
        struct plumbrule *fresh = NULL;
        reports[i] = report_under(one, asked[i].books, asked[i].on);
        char *alone =
            plumbrule_open(&fresh) ? report_under(fresh, asked[i].books, asked[i].on) : NULL;
        CHECK(reports[i] != NULL && alone != NULL && strcmp(reports[i], alone) == 0,
              "a desk says what a fresh one says");
        free(alone);
        plumbrule_close(fresh);
    }
    for (size_t i = 1; i + 1 < ASKED; i++)
        CHECK(strcmp(reports[0], reports[i]) != 0, "other books or days say something else");
    for (size_t i = 0; i < ASKED; i++)
        free(reports[i]);
    plumbrule_close(one);
}

/* Bytes that are taken from the C library; 0 under sanitizers, which have their own. */
static size_t bytes_taken(void)
{
    struct mallinfo2 info = mallinfo2();
    return info.uordblks + info.hblkhd;
}

/* Each design of a long batch may be of another day: what is kept for one must not stay for all. */
static void test_many_days(void)
{
    enum { DAYS = 90, WARM = 30, LEAST = 256 * 1024 };
    struct plumbrule *plumbrule = NULL;
    size_t warm = 0;
    if (!CHECK(plumbrule_open(&plumbrule), "a desk opens"))
        return;
    for (int day = 0; day < DAYS; day++) {
        char on[16];
        const char *report;
        size_t length;
        struct plumbrule_options asked = options;
        snprintf(on, sizeof on, "2026-%02d-%02d", 5 + day / 28, 1 + day % 28);
        asked.on = on;
        plumbrule_check(&report, &length, plumbrule, designs[day % DESIGNS], &asked);
        if (day == WARM)
            warm = bytes_taken();
    }
    CHECK(bytes_taken() <= warm + LEAST, "memory does not grow with the days");
    plumbrule_close(plumbrule);
}

static void test_mistakes(void)
{
    struct plumbrule *plumbrule;
    struct plumbrule_options wrong = options;
    const char *report;
    size_t length;
    if (!CHECK(plumbrule_open(&plumbrule), "a desk opens"))
        return;
    CHECK(plumbrule_check(&report, &length, plumbrule, SAMPLES "gone.yaml", &wrong) ==
              PLUMBRULE_UNREAD,
          "a design that is not there");
    CHECK(strlen(report) == length && length > 0, "has a report");
    wrong.on = "2026-02-30";
    CHECK(plumbrule_check(&report, &length, plumbrule, designs[1], &wrong) == PLUMBRULE_COMMAND,
          "no day of the calendar");
    wrong = options;
    wrong.books = NULL;
    CHECK(plumbrule_check(&report, &length, plumbrule, designs[1], &wrong) == PLUMBRULE_COMMAND,
          "no book");
    wrong = options;
    wrong.format = "xml";
    CHECK(plumbrule_check(&report, &length, plumbrule, designs[1], &wrong) == PLUMBRULE_COMMAND,
          "no such format");
    CHECK(length == 0, "has no report");
    wrong = options;
    wrong.on = NULL;
    CHECK(plumbrule_check(&report, &length, plumbrule, designs[1], &wrong) != PLUMBRULE_UNREAD,
          "without a day the design's own holds");
    plumbrule_close(plumbrule);
    plumbrule_close(NULL);
}

int main(void)
{
    static const enum plumbrule_end ends[DESIGNS] = {PLUMBRULE_FAILS, PLUMBRULE_STANDS,
                                                     PLUMBRULE_OPEN};
    char *alone[DESIGNS];
    for (size_t i = 0; i < DESIGNS; i++) {
        enum plumbrule_end end = PLUMBRULE_NO_MEMORY;
        alone[i] = report_alone(designs[i], &end);
        if (!CHECK(alone[i] != NULL, "a design is checked"))
            return checks_end();
        CHECK(end == ends[i], "and ends as its name says");
    }
    CHECK(strcmp(alone[0], alone[1]) != 0, "different designs have different reports");
    test_order(alone);
    test_threads(alone);
    test_locale(alone);
    test_other_books_and_days();
    test_many_days();
    test_mistakes();
    for (size_t i = 0; i < DESIGNS; i++)
        free(alone[i]);
    return checks_end();
}
