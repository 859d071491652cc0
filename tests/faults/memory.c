/* Memory that runs out: every allocation of a whole check fails once, alone and with all that
 * follow, in our rooms, in Lua and, in the plain build, in every library below. Of a large check an
 * even spread of them. memory [--all]: with --all every one of the large check, too; takes long. */
#include <signal.h>
#include <unistd.h>

#include "batch.h"
#include "check.h"
#include "plumbrule/plumbrule.h"
#include "supply.h"
#include "warm.h"

#ifdef SUPPLY_WRAPS /* sanitizers take their time */
enum { SPREAD = 12, STEP = 5 };
#else
enum { SPREAD = 120, STEP = 1 };
#endif

struct subject {
    const char *design, *book, *format;
    const char *const *book_directories;
    bool in_parts; /* handed on while it is written, as workers do */
    enum plumbrule_end end;
    char *report; /* as it is with memory */
    size_t asked; /* allocations of a check from nothing */
    size_t broken_off, as_usual, told;
};

/* What was handed on; without memory of its own, which could run out, too. */
struct taken {
    char bytes[4 << 20];
    size_t length, parts;
    bool refuses;
};

static bool take_part(struct text *part, void *context)
{
    struct taken *taken = context;
    if (part->is_short || taken->refuses || taken->length + part->length >= sizeof taken->bytes)
        return false;
    memcpy(taken->bytes + taken->length, part->bytes, part->length + 1);
    taken->length += part->length;
    taken->parts++;
    text_clear(part);
    return true;
}

static enum plumbrule_end check_in_parts(struct taken *taken, struct plumbrule *plumbrule,
                                         const char *design,
                                         const struct plumbrule_options *options)
{
    const char *rest;
    size_t length;
    const struct part_taker taker = {take_part, taken};
    taken->length = taken->parts = 0;
    enum plumbrule_end end =
        plumbrule_check_in_parts(&rest, &length, plumbrule, design, options, &taker);
    if (end == PLUMBRULE_NO_MEMORY) {
        CHECK(length == 0, "without memory nothing is left to hand on");
        taken->length = 0;
    }
    memcpy(taken->bytes + taken->length, rest, length + 1);
    taken->length += length;
    return end;
}

static enum plumbrule_end check(struct plumbrule *plumbrule, const struct subject *subject,
                                const char **report)
{
    static struct taken taken;
    size_t length;
    const char *const books[] = {subject->book, NULL};
    const struct plumbrule_options options = {.book_directories = subject->book_directories,
                                              .books = books,
                                              .on = "2026-08-03",
                                              .format = subject->format};
    if (subject->in_parts) {
        *report = taken.bytes;
        return check_in_parts(&taken, plumbrule, subject->design, &options);
    }
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

/* A line in parts is the same line, never whole in memory; who takes no more ends it. */
static void compare_parts(const struct subject *subject)
{
    static struct taken taken;
    struct plumbrule *plumbrule;
    const char *const books[] = {subject->book, NULL};
    const struct plumbrule_options options = {
        .books = books, .on = "2026-08-03", .format = subject->format};
    const char *whole;
    size_t length;
    supply_reset();
    if (!CHECK(plumbrule_open(&plumbrule), "with memory it opens"))
        exit(EXIT_FAILURE);
    enum plumbrule_end end = check_in_parts(&taken, plumbrule, subject->design, &options);
    CHECK(taken.parts > 5, "a long line comes in parts");
    CHECK(plumbrule_check(&whole, &length, plumbrule, subject->design, &options) == end &&
              length == taken.length && memcmp(whole, taken.bytes, length) == 0,
          "together they are the whole line");
    taken.refuses = true;
    end = check_in_parts(&taken, plumbrule, subject->design, &options);
    CHECK(end == PLUMBRULE_NO_MEMORY && taken.length == 0, "who takes no more ends the line");
    plumbrule_close(plumbrule);
}

/* What a batch wrote: whole lines, each as usual or one that tells of memory. */
static void judge_lines(const struct subject *subject, char *text, size_t lines, size_t *broken)
{
    size_t seen = 0, usual = strlen(subject->report);
    for (char *line = text, *next; *line != '\0'; line = next, seen++) {
        next = strchr(line, '\n');
        if (!CHECK(next != NULL, "only whole lines are written"))
            return;
        next++;
        bool is_usual = (size_t)(next - line) == usual && memcmp(line, subject->report, usual) == 0;
        bool tells = strncmp(line, "{\"plumbrule\":1,", 15) == 0 && next[-2] == '}' &&
                     next - line < 2000 && strstr(line, "memory") != NULL;
        CHECK(is_usual || tells, "a line is as usual, or tells of memory");
        *broken += !is_usual;
    }
    CHECK(seen == lines, "as many lines as are told");
}

/* Workers inherit how many allocations there were: most of those that fail are theirs, some while
 * parts of the line are handed on already. */
static void fail_batch(struct subject subject)
{
    static char text[8 << 20];
    enum { RUNS = 60 };
    const char *const books[] = {subject.book, NULL};
    const struct plumbrule_options options = {
        .books = books, .on = "2026-08-03", .format = "ndjson"};
    const char *const designs[] = {subject.design, subject.design};
    size_t broken = 0;
    learn(&subject);
    signal(SIGPIPE, SIG_IGN);
    for (size_t run = 1; run <= RUNS; run++) {
        char path[] = "/tmp/plumbrule-memory-XXXXXX";
        struct problems problems = {.arena = arena_new()};
        struct batch batch = {.options = &options,
                              .designs = designs,
                              .count = 2,
                              .list = -1,
                              .jobs = 1,
                              .out = mkstemp(path),
                              .terminal = -1};
        struct batch_result result;
        unlink(path);
        supply_reset();
        supply()->fails_at = run * subject.asked * 2 / RUNS;
        supply()->fails_on = run % 2 == 0;
        batch_run(&result, &batch, &problems);
        supply_reset();
        ssize_t length = pread(batch.out, text, sizeof text - 1, 0);
        text[length > 0 ? length : 0] = '\0';
        judge_lines(&subject, text, result.written, &broken);
        close(batch.out);
        arena_free(problems.arena);
    }
    fprintf(stderr, "batches of two: %d times one failed, %zu lines tell of it\n", RUNS, broken);
    CHECK(broken > RUNS / 8, "memory ran short in workers");
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
    struct subject large = {.design = FAULTS_DIR "/../../samples/quill-hollow/failing.yaml",
                            .book = "marrow-bay",
                            .format = "ndjson"};
    struct subject lines = small;
    lines.format = "ndjson";
    fail_all(small, is_long ? 1 : STEP);
    fail_all(lines, is_long ? 1 : 3 * STEP);
    fail_all(large, is_long ? 1 : 0);
    fail_batch(large);
    compare_parts(&large);
    large.in_parts = true;
    fail_all(large, is_long ? 1 : 0);
    return checks_end();
}
