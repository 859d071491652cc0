/* Memory that runs out: every allocation of a whole check fails once, alone and with all that
 * follow, in our rooms, in Lua and, in the plain build, in every library below. Of a large check an
 * even spread of them. memory [--all]: with --all every one of the large check, too; takes long. */
#include "check.h"
#include "plumbrule/plumbrule.h"
#include "supply.h"

#ifdef SUPPLY_WRAPS /* sanitizers take their time */
enum { SPREAD = 12, STEP = 5 };
#else
enum { SPREAD = 120, STEP = 1 };
#endif

struct subject {
    const char *design, *book, *format;
    const char *const *book_directories;
    enum plumbrule_end end;
    char *report; /* as it is with memory */
    size_t asked; /* allocations of a check from nothing */
    size_t broken_off, as_usual, told;
};

static enum plumbrule_end check(struct plumbrule *plumbrule, const struct subject *subject,
                                const char **report)
{
    size_t length;
    const char *const books[] = {subject->book, NULL};
    const struct plumbrule_options options = {.book_directories = subject->book_directories,
                                              .books = books,
                                              .on = "2026-08-03",
                                              .format = subject->format};
    enum plumbrule_end end = plumbrule_check(report, &length, plumbrule, subject->design, &options);
    CHECK(strlen(*report) == length, "a report has its length");
    return end;
}

/* From nothing to the end, as usual. */
static void learn(struct subject *subject)
{
    struct plumbrule *plumbrule;
    const char *report;
    supply_reset();
    if (!CHECK(plumbrule_open(&plumbrule), "with memory it opens"))
        exit(EXIT_FAILURE);
    subject->end = check(plumbrule, subject, &report);
    subject->asked = supply()->allocations;
    subject->report = strdup(report);
    plumbrule_close(plumbrule);
}

static void judge_end(struct subject *subject, size_t n, enum plumbrule_end end, const char *report)
{
    if (end == PLUMBRULE_NO_MEMORY && report[0] == '\0') {
        subject->broken_off++;
    } else if (end == subject->end && strcmp(report, subject->report) == 0) {
        subject->as_usual++;
    } else {
        subject->told++;
        bool tells = strstr(report, "memory") != NULL;
        if (!CHECK(tells && end != PLUMBRULE_STANDS && end != PLUMBRULE_FAILS,
                   "what is not as usual tells of memory, and never stands"))
            fprintf(stderr, "    allocation %zu of %s as %s: ends with %d\n%.2000s\n", n,
                    subject->design, subject->format, end, report);
    }
}

static void fail_at(struct subject *subject, size_t n, bool fails_on)
{
    struct plumbrule *plumbrule;
    const char *report;
    supply_reset();
    supply()->fails_at = n;
    supply()->fails_on = fails_on;
    if (!plumbrule_open(&plumbrule)) {
        CHECK(plumbrule == NULL, "what does not open gives nothing back");
        subject->broken_off++;
        return;
    }
    enum plumbrule_end end = check(plumbrule, subject, &report);
    supply_reset();
    judge_end(subject, n, end, report);
    if (n % 7 == 0 || subject->asked < 20000) {
        end = check(plumbrule, subject, &report);
        bool is_usual = end == subject->end && strcmp(report, subject->report) == 0;
        if (!CHECK(is_usual, "with memory again all is as usual"))
            fprintf(stderr, "    after allocation %zu of %s: %.1000s\n", n, subject->design,
                    report);
    }
    plumbrule_close(plumbrule);
}

static void fail_all(struct subject subject, size_t step)
{
    learn(&subject);
    if (step == 0)
        step = subject.asked / SPREAD;
    size_t done = 0;
    for (size_t n = 1; n <= subject.asked; n += step, done++)
        fail_at(&subject, n, n / step % 2 == 0);
    if (step == 1)
        for (size_t n = 1; n <= subject.asked; n++, done++)
            fail_at(&subject, n, n % 2 != 0);
    fprintf(stderr,
            "%s, %s: %zu allocations, %zu times one failed: %zu broken off, %zu told, %zu as "
            "usual\n",
            subject.book, subject.format, subject.asked, done, subject.broken_off, subject.told,
            subject.as_usual);
    CHECK(subject.asked > 200 && subject.broken_off > 5, "memory ran short in many places");
    free(subject.report);
}

int main(int count, char **words)
{
    bool is_long = count > 1 && strcmp(words[1], "--all") == 0;
    const char *const directories[] = {FAULTS_DIR "/books", NULL};
    const struct subject small = {.design = FAULTS_DIR "/design.yaml",
                                  .book = "flaw-point",
                                  .book_directories = directories,
                                  .format = "text"};
    const struct subject large = {.design = FAULTS_DIR "/../../samples/quill-hollow/failing.yaml",
                                  .book = "marrow-bay",
                                  .format = "ndjson"};
    struct subject lines = small;
    lines.format = "ndjson";
    fail_all(small, is_long ? 1 : STEP);
    fail_all(lines, is_long ? 1 : 3 * STEP);
    fail_all(large, is_long ? 1 : 0);
    return checks_end();
}
