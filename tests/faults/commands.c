/* Memory that runs out while the program explains, compares and reads sign-offs: each end is the
 * usual one with the usual output, or says that memory was short. */
#include "check.h"
#include "desk.h"
#include "supply.h"

#include <stdint.h>
#include <unistd.h>

enum { WORDS_MOST = 16, OUTPUT_MOST = 1 << 20, IN_A_ROW = 60 };

#ifdef SUPPLY_WRAPS /* sanitizers take their time */
enum { STEP = 7 };
#else
enum { STEP = 1 };
#endif

struct subject {
    const char *words[WORDS_MOST];
    int code;
};

/* The program with what it prints led into a file; the file's bytes come back. */
static int run(const struct subject *subject, char *printed, int file)
{
    char *words[WORDS_MOST + 1];
    int count = 0, before[] = {dup(STDOUT_FILENO), dup(STDERR_FILENO)};
    for (; subject->words[count] != NULL; count++)
        words[count] = (char *)(uintptr_t)subject->words[count];
    words[count] = NULL;
    if (ftruncate(file, 0) != 0 || lseek(file, 0, SEEK_SET) != 0)
        exit(EXIT_FAILURE);
    dup2(file, STDOUT_FILENO);
    dup2(file, STDERR_FILENO);
    int code = desk_main(count, words);
    supply_reset();
    dup2(before[0], STDOUT_FILENO);
    dup2(before[1], STDERR_FILENO);
    close(before[0]);
    close(before[1]);
    ssize_t length = pread(file, printed, OUTPUT_MOST - 1, 0);
    printed[length > 0 ? length : 0] = '\0';
    return code;
}

static void fail_all(const struct subject *subject, int file)
{
    char *usual = malloc(OUTPUT_MOST), *printed = malloc(OUTPUT_MOST);
    if (usual == NULL || printed == NULL)
        exit(EXIT_FAILURE);
    supply_reset();
    int code = run(subject, usual, file);
    if (!CHECK(code == subject->code, "with memory it ends as it should"))
        fprintf(stderr, "    %s ends with %d\n%s\n", subject->words[1], code, usual);
    size_t broken_off = 0, as_usual = 0, in_a_row = 0, n = 1;
    for (; n < 100000; n += STEP) {
        supply()->fails_at = n;
        supply()->fails_on = n / STEP % 2 == 0;
        code = run(subject, printed, file);
        if (code == 70)
            broken_off++;
        else if (code == subject->code && strcmp(usual, printed) == 0)
            as_usual++;
        else if (!CHECK(strstr(printed, "memory") != NULL && code > PLUMBRULE_OPEN,
                        "what is not as usual says that memory was short, and never stands"))
            fprintf(stderr, "    allocation %zu of %s: %d\n%.2000s\n", n, subject->words[1], code,
                    printed);
        /* past the last allocation all is as usual, again and again */
        in_a_row = code == 70 ? 0 : in_a_row + 1;
        if (in_a_row > IN_A_ROW)
            break;
    }
    fprintf(stderr, "%s: %zu times one failed: %zu broken off, %zu as usual\n", subject->words[1],
            n / STEP, broken_off, as_usual);
    CHECK(broken_off > 20, "memory ran short in many places");
    free(usual);
    free(printed);
}

int main(void)
{
    char path[] = "/tmp/commands-XXXXXX";
    int file = mkstemp(path);
    if (file < 0)
        return EXIT_FAILURE;
    unlink(path);
    const struct subject explain = {{"plumbrule", "explain", FAULTS_DIR "/design.yaml", "--rule",
                                     "flaw-point/ridge", "--book", "flaw-harbor", "--books",
                                     FAULTS_DIR "/books", NULL},
                                    0};
    const struct subject compare = {{"plumbrule", "compare", "--books", FAULTS_DIR "/books",
                                     "flaw-point", "flaw-harbor", FAULTS_DIR "/signed.yaml",
                                     FAULTS_DIR "/design.yaml", NULL},
                                    1};
    struct subject json = compare;
    json.words[8] = "--format";
    json.words[9] = "json";
    const struct subject check = {{"plumbrule", "check", FAULTS_DIR "/signed.yaml", "--book",
                                   "flaw-harbor", "--books", FAULTS_DIR "/books", NULL},
                                  1};
    fail_all(&explain, file);
    fail_all(&compare, file);
    fail_all(&json, file);
    fail_all(&check, file);
    return checks_end();
}
