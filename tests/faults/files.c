/* Files that give out: reads that bring little or fail, files that change under the reader, a text
 * of a million lines, output that is written in bits or not at all. */
#include <errno.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

#include "check.h"
#include "desk.h"
#include "file.h"
#include "supply.h"

#define DESIGN FAULTS_DIR "/design.yaml"

static enum plumbrule_end check(const char *design, const char *format, char **report)
{
    struct plumbrule *plumbrule;
    const char *text;
    size_t length;
    const char *const books[] = {"flaw-point", NULL};
    const char *const directories[] = {FAULTS_DIR "/books", NULL};
    const char *const catalogues[] = {FAULTS_DIR, NULL};
    const struct plumbrule_options options = {.book_directories = directories,
                                              .catalogue_directories = catalogues,
                                              .books = books,
                                              .on = "2026-08-03",
                                              .format = format};
    if (!CHECK(plumbrule_open(&plumbrule), "it opens"))
        exit(EXIT_FAILURE);
    enum plumbrule_end end = plumbrule_check(&text, &length, plumbrule, design, &options);
    *report = strdup(text);
    plumbrule_close(plumbrule);
    return end;
}

/* ---- reading ----------------------------------------------------------------------------------
 */

static void test_short_reads(void)
{
    char *usual, *report;
    supply_reset();
    CHECK(check(DESIGN, "json", &usual) == PLUMBRULE_STANDS, "the design stands");
    for (size_t most = 1; most < 300; most = most * 3 + 1)
        for (int interrupted = 0; interrupted < 2; interrupted++) {
            supply_reset();
            supply()->read_most = most;
            supply()->is_interrupted = interrupted == 1;
            CHECK(check(DESIGN, "json", &report) == PLUMBRULE_STANDS, "it still stands");
            CHECK_TEXT(report, usual, "reads that bring little change nothing");
            free(report);
        }
    free(usual);
}

static void test_failing_reads(void)
{
    char *report;
    supply_reset();
    supply()->read_most = 100;
    check(DESIGN, "json", &report);
    free(report);
    size_t reads = supply()->reads;
    CHECK(reads > 10, "there are reads to fail");
    for (size_t n = 1; n <= reads; n++) {
        supply_reset();
        supply()->read_most = 100;
        supply()->read_fails_at = n;
        supply()->error = n % 2 == 0 ? EIO : EISDIR;
        enum plumbrule_end end = check(DESIGN, "json", &report);
        CHECK(end == PLUMBRULE_UNREAD || end == PLUMBRULE_RULE_BROKEN,
              "what is not read never stands");
        CHECK(strstr(report, "cannot be read") != NULL, "it is told");
        free(report);
    }
    supply_reset();
}

/* ---- files that change ------------------------------------------------------------------------
 */

static char changing[] = "/tmp/plumbrule-faults-XXXXXX";

static void write_plain(const char *path, const char *bytes, size_t length)
{
    int file = open(path, O_WRONLY | O_CREAT | O_TRUNC, 0600);
    if (file < 0 || write(file, bytes, length) != (ssize_t)length || close(file) != 0)
        abort();
}

static char *design_bytes(size_t *length)
{
    char *bytes = malloc(64 * 1024);
    int file = open(DESIGN, O_RDONLY);
    ssize_t step = bytes != NULL && file >= 0 ? read(file, bytes, 64 * 1024) : -1;
    if (step <= 0)
        abort();
    close(file);
    *length = (size_t)step;
    return bytes;
}

/* The panels are gone, as if they had never been: what is left is a design, too. */
static void cut(void)
{
    size_t length;
    char *bytes = design_bytes(&length);
    *strstr(bytes, "panels:") = '\0';
    if (truncate(changing, (off_t)strlen(bytes)) != 0)
        abort();
    free(bytes);
}

static void lengthen(void)
{
    int file = open(changing, O_WRONLY | O_APPEND);
    if (file < 0 || write(file, "meters: none\n", 13) != 13)
        abort();
    close(file);
}

static void overwrite(void)
{
    struct timespec times[2] = {{.tv_nsec = UTIME_NOW}, {.tv_sec = 1000000000}};
    int file = open(changing, O_WRONLY);
    if (file < 0 || pwrite(file, "#", 1, 0) != 1 || futimens(file, times) != 0)
        abort();
    close(file);
}

static void vanish(void)
{
    unlink(changing);
}

static void test_changing(void)
{
    static void (*const changes[])(void) = {cut, lengthen, overwrite};
    char *report;
    size_t length;
    supply_reset();
    char *bytes = design_bytes(&length);
    for (size_t i = 0; i < sizeof changes / sizeof changes[0]; i++) {
        write_plain(changing, bytes, length);
        supply_reset();
        supply()->before_read = changes[i];
        CHECK(check(changing, "json", &report) == PLUMBRULE_UNREAD, "a changed file is not judged");
        CHECK(strstr(report, "file-changed") != NULL, "it is told");
        free(report);
    }
    write_plain(changing, bytes, length);
    supply()->before_read = vanish;
    CHECK(check(changing, "json", &report) == PLUMBRULE_STANDS, "what is open is read to its end");
    free(report);
    free(bytes);
}

/* ---- a text of a million lines ----------------------------------------------------------------
 */

static void test_long_text(void)
{
    static const char *const lines[] = {"\n", "#\n", "- a\n", "a: b\n", "x\n"};
    char *text = malloc(5000016);
    if (text == NULL)
        abort();
    for (size_t i = 0; i < sizeof lines / sizeof lines[0]; i++) {
        size_t step = strlen(lines[i]), length = 0;
        char *report;
        for (size_t n = 0; n < 1000000; n++, length += step)
            memcpy(text + length, lines[i], step + 1);
        write_plain(changing, text, length);
        clock_t start = clock();
        CHECK(check(changing, "json", &report) == PLUMBRULE_UNREAD,
              "a million lines are no design");
        CHECK(clock() - start < 5 * CLOCKS_PER_SEC, "and are soon refused");
        CHECK(strlen(report) < 20000, "in a short report");
        free(report);
    }
    free(text);
}

/* ---- writing ----------------------------------------------------------------------------------
 */

static int run_desk(const char *output)
{
    char *words[] = {(char *)"plumbrule",
                     (char *)"check",
                     (char *)DESIGN,
                     (char *)"--books",
                     (char *)FAULTS_DIR "/books",
                     (char *)"--book",
                     (char *)"flaw-point",
                     (char *)"--output",
                     (char *)output,
                     NULL};
    return desk_main(9, words);
}

static char *bytes_of(const char *path, struct arena *arena)
{
    struct problems problems = {.arena = arena};
    char *bytes = NULL;
    size_t length;
    return file_read(&bytes, &length, path, 1 << 20, arena, PROBLEM_INPUT, &problems) ? bytes
                                                                                      : NULL;
}

static void test_writing(void)
{
    struct arena *arena = arena_new();
    supply_reset();
    CHECK(run_desk(changing) == PLUMBRULE_STANDS, "a report is written");
    const char *usual = bytes_of(changing, arena);
    supply_reset();
    supply()->write_most = 7;
    supply()->is_interrupted = true;
    CHECK(run_desk(changing) == PLUMBRULE_STANDS, "a report is written in bits");
    size_t writes = supply()->writes;
    supply_reset();
    CHECK_TEXT(bytes_of(changing, arena), usual, "and is whole");
    for (size_t n = 1; n < writes / 2; n += 1 + writes / 100) {
        write_plain(changing, "before", 6);
        supply_reset();
        supply()->write_most = 7;
        supply()->write_fails_at = n;
        supply()->error = n % 3 == 0 ? EIO : ENOSPC;
        CHECK(run_desk(changing) == PLUMBRULE_NOT_WRITTEN, "what is not written has its own end");
        supply_reset();
        CHECK_TEXT(bytes_of(changing, arena), "before", "the old file stands");
    }
    arena_free(arena);
}

int main(void)
{
    int file = mkstemp(changing);
    if (file < 0)
        return EXIT_FAILURE;
    close(file);
    test_short_reads();
    test_failing_reads();
    test_changing();
    test_long_text();
    test_writing();
    unlink(changing);
    return checks_end();
}
