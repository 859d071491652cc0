/* plumbrule lint: the rules of books read without running them, by us and by luacheck. */
#include "desk.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include "lint.h"
#include "report.h"
#include "schema.h"

enum { NOT_THERE = 127 };

/* ---- luacheck ---------------------------------------------------------------------------------
 */

/* Its configuration: a std of the words of a rule alone. False: no memory. */
static bool make_config(struct text *text, struct desk *desk, struct bench *bench)
{
    const char *const *words;
    size_t count;
    bool is_made = judge_list_words(&words, &count, bench->judge, desk->arena) &&
                   luacheck_write(text, "stds.plumbrule = ", words, count);
    /* A rule may take thing, book and design and use one of them: 212. */
    text_add_word(text, "std = \"plumbrule\"\nmax_line_length = false\n"
                        "ignore = { \"431\", \"432\", \"211/_.*\", \"212\" }\n");
    return is_made && !text->is_short;
}

static bool write_config(char *path, const struct text *text)
{
    int file = mkstemp(path);
    bool is_written = file >= 0 && write(file, text->bytes, text->length) == (ssize_t)text->length;
    if (file >= 0)
        close(file);
    return is_written;
}

/* Starts it with its output on a pipe. Negative: not started. */
static pid_t start(int *out, const char *config, const char *const *files, struct arena *arena)
{
    static const char *const options[] = {"luacheck",   "--formatter", "plain",   "--codes",
                                          "--no-color", "--no-cache",  "--config"};
    size_t fixed = sizeof options / sizeof options[0], count = 0;
    int ends[2];
    while (files[count] != NULL)
        count++;
    const char **words = arena_take(arena, (fixed + count + 3) * sizeof *words);
    if (words == NULL || pipe(ends) != 0)
        return -1;
    memcpy(words, options, sizeof options);
    words[fixed] = config;
    words[fixed + 1] = "--";
    memcpy(words + fixed + 2, files, count * sizeof *words);
    pid_t child = fork();
    if (child == 0) {
        dup2(ends[1], STDOUT_FILENO);
        close(ends[0]);
        close(ends[1]);
        execvp(words[0], (char *const *)(uintptr_t)words);
        _exit(NOT_THERE);
    }
    close(ends[1]);
    *out = ends[0];
    return child;
}

/* "FILE:12:3: (W113) accessing undefined variable 'x'", where FILE is one of ours. */
static void tell_line(struct problems *problems, const char *line, const char *const *files)
{
    for (; *files != NULL; files++) {
        unsigned row, column;
        int length = 0;
        size_t name = strlen(*files);
        if (strncmp(line, *files, name) != 0 ||
            /* rows and columns of luacheck, not of people: NOLINTNEXTLINE(cert-err34-c) */
            sscanf(line + name, ":%u:%u: %n", &row, &column, &length) != 2 || length == 0)
            continue;
        problems_add(problems, PROBLEM_NOTE, "luacheck", (struct place){*files, row, column}, "%s",
                     line + name + length);
        return;
    }
}

static void tell_lines(struct problems *problems, char *text, const char *const *files)
{
    char *rest = NULL;
    for (char *line = strtok_r(text, "\n", &rest); line != NULL; line = strtok_r(NULL, "\n", &rest))
        tell_line(problems, line, files);
}

static void read_all(struct text *out, int file)
{
    char bytes[4096];
    ssize_t count;
    while ((count = read(file, bytes, sizeof bytes)) > 0 || (count < 0 && errno == EINTR))
        if (count > 0)
            text_add(out, bytes, (size_t)count);
    close(file);
}

/* False: no memory. */
static bool run_luacheck(struct desk *desk, struct bench *bench, const char *const *files,
                         struct problems *problems)
{
    const char *folder = getenv("TMPDIR");
    char *config = arena_format(desk->arena, "%s/plumbrule-luacheck-XXXXXX",
                                folder != NULL && folder[0] != '\0' ? folder : "/tmp");
    struct text said = {0}, text = {0};
    int out = -1, status = -1;
    if (files[0] == NULL)
        return true;
    if (config == NULL || !make_config(&text, desk, bench)) {
        text_free(&text);
        return false;
    }
    pid_t child = write_config(config, &text) ? start(&out, config, files, desk->arena) : -1;
    if (child > 0) {
        read_all(&said, out);
        waitpid(child, &status, 0);
    }
    unlink(config);
    if (said.bytes != NULL)
        tell_lines(problems, said.bytes, files);
    bool is_whole = !said.is_short && !arena_is_short(desk->arena);
    text_free(&text);
    text_free(&said);
    if (child < 0 || !WIFEXITED(status) || WEXITSTATUS(status) >= 3)
        problems_add(problems, PROBLEM_NOTE, "luacheck-not-run", (struct place){0},
                     "luacheck could not be run, so that only our own part was done; on Debian it "
                     "is the package lua-check");
    return is_whole;
}

/* ---- all --------------------------------------------------------------------------------------
 */

static int compare_problems(const void *a, const void *b)
{
    const struct problem *left = a, *right = b;
    const char *one = left->place.file != NULL ? left->place.file : "";
    const char *other = right->place.file != NULL ? right->place.file : "";
    int order = strcmp(one, other);
    if (order == 0)
        order = (left->place.line > right->place.line) - (left->place.line < right->place.line);
    if (order == 0)
        order =
            (left->place.column > right->place.column) - (left->place.column < right->place.column);
    return order != 0 ? order : strcmp(left->message, right->message);
}

static enum plumbrule_end lint_all(struct desk *desk, struct bench *bench)
{
    const char *const *directories = desk_book_directories(desk);
    struct problems problems = {.arena = desk->arena};
    if (directories == NULL)
        return PLUMBRULE_NO_MEMORY;
    for (size_t i = 0; i < desk->operands.count; i++) {
        const char **files;
        if (!bench_lint(&files, bench, desk->operands.items[i], directories, desk->arena,
                        &problems) ||
            !run_luacheck(desk, bench, files, &problems))
            return PLUMBRULE_NO_MEMORY;
    }
    if (problems.count > 1)
        qsort(problems.items, problems.count, sizeof *problems.items, compare_problems);
    if (problems.count == 0)
        text_add_word(&desk->out, "Nothing is amiss.\n");
    else
        report_write_problems(&desk->out, &problems, false);
    enum plumbrule_end end = problems.count > 0 ? PLUMBRULE_FAILS : PLUMBRULE_STANDS;
    return (enum plumbrule_end)exit_code_first((int)end, exit_code(NULL, &problems, true));
}

enum plumbrule_end run_lint(struct desk *desk)
{
    struct bench bench;
    if (desk->operands.count == 0)
        return desk_refuse(desk, "book-none", "plumbrule lint marrow-bay",
                           "no rulebook is named; plumbrule books lists them");
    if (!bench_open(&bench))
        return PLUMBRULE_NO_MEMORY;
    enum plumbrule_end end = lint_all(desk, &bench);
    bench_close(&bench);
    return end;
}
