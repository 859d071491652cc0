/* Whole runs, from the start of a process to its end: an empty program, an empty Lua, and a check.
 * whole EMPTY LUA PLUMBRULE ARGUMENT… — what follows PLUMBRULE is handed to it. Each round runs all
 * three, beginning with another one each time. */
#include <fcntl.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include "measure.h"

enum { PROGRAMS = 3, WARM_UP = 20, ROUNDS = 400 };

struct program {
    char **words;
    long peak; /* KiB, the largest of all runs */
    struct series series;
};

static double run_once(struct program *program, posix_spawn_file_actions_t *quiet,
                       char **environment)
{
    pid_t child;
    int status;
    struct rusage usage;
    double start = now();
    if (posix_spawn(&child, program->words[0], quiet, NULL, program->words, environment) != 0 ||
        wait4(child, &status, 0, &usage) != child || !WIFEXITED(status) ||
        WEXITSTATUS(status) != 0) {
        fprintf(stderr, "%s did not run to a good end\n", program->words[0]);
        exit(1);
    }
    double end = now();
    if (usage.ru_maxrss > program->peak)
        program->peak = usage.ru_maxrss;
    return end - start;
}

static void write_table(struct program *programs)
{
    double empty = series_at(&programs[0].series, 0.5), lua = series_at(&programs[1].series, 0.5);
    double check = series_at(&programs[2].series, 0.5);
    for (int i = 0; i < PROGRAMS; i++)
        series_write(&programs[i].series);
    printf("  whole check / empty program                %9.2f\n", check / empty);
    printf("  whole check / lua5.4 -e ''                 %9.2f\n", check / lua);
    printf("  whole check / (empty + 2 × lua5.4 -e '')   %9.2f   (aim: at most 1)\n",
           check / (empty + 2 * lua));
    printf("  peak memory, check / empty                 %9.2f   (%ld KiB / %ld KiB)\n",
           (double)programs[2].peak / (double)programs[0].peak, programs[2].peak, programs[0].peak);
}

int main(int count, char **words)
{
    if (count < 5) {
        fputs("whole EMPTY LUA PLUMBRULE ARGUMENT…\n", stderr);
        return 64;
    }
    char *none[] = {NULL}; /* no variable changes what the loader or the program does */
    char *empty[] = {words[1], NULL}, *lua[] = {words[2], (char *)"-e", (char *)"", NULL};
    struct program programs[PROGRAMS] = {{.words = empty}, {.words = lua}, {.words = words + 3}};
    const char *const names[PROGRAMS] = {"empty program, same libraries", "lua5.4 -e ''",
                                         "whole check"};
    posix_spawn_file_actions_t quiet;
    posix_spawn_file_actions_init(&quiet);
    posix_spawn_file_actions_addopen(&quiet, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
    for (int i = 0; i < PROGRAMS; i++)
        series_open(&programs[i].series, names[i], ROUNDS);
    for (int round = 0; round < WARM_UP + ROUNDS; round++)
        for (int i = 0; i < PROGRAMS; i++) {
            struct program *program = &programs[(i + round) % PROGRAMS];
            double took = run_once(program, &quiet, none);
            if (round >= WARM_UP)
                program->series.samples[program->series.count++] = took;
        }
    write_table(programs);
    posix_spawn_file_actions_destroy(&quiet);
    for (int i = 0; i < PROGRAMS; i++)
        free(programs[i].series.samples);
    return 0;
}
