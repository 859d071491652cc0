/* Runs a command to its end, its output to nowhere, and watches how much memory it and its workers
 * keep to themselves. watch EVERY-MS COMMAND… — prints "seconds parent-KiB workers
 * most-KiB-of-a-worker exit-code". Private memory is what /proc/PID/smaps_rollup calls
 * Private_Clean and Private_Dirty; the parent's own peak (VmHWM) would count shared pages. */
#include <fcntl.h>
#include <spawn.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include "measure.h"

enum { MOST_WORKERS = 64 };

struct watched {
    long parent, worker;
    int workers;
};

static long private_of(long pid)
{
    char path[64], line[256];
    long sum = 0, kib;
    snprintf(path, sizeof path, "/proc/%ld/smaps_rollup", pid);
    FILE *file = fopen(path, "r");
    if (file == NULL)
        return 0;
    while (fgets(line, sizeof line, file) != NULL)
        if (sscanf(line, "Private_Clean: %ld", &kib) == 1 ||
            sscanf(line, "Private_Dirty: %ld", &kib) == 1)
            sum += kib;
    fclose(file);
    return sum;
}

static void look(struct watched *watched, pid_t pid)
{
    char path[64];
    long own = private_of(pid), child;
    int workers = 0;
    watched->parent = own > watched->parent ? own : watched->parent;
    snprintf(path, sizeof path, "/proc/%ld/task/%ld/children", (long)pid, (long)pid);
    FILE *file = fopen(path, "r");
    if (file == NULL)
        return;
    while (fscanf(file, "%ld", &child) == 1 && workers < MOST_WORKERS) {
        long theirs = private_of(child);
        workers++;
        watched->worker = theirs > watched->worker ? theirs : watched->worker;
    }
    fclose(file);
    watched->workers = workers > watched->workers ? workers : watched->workers;
}

int main(int count, char **words)
{
    extern char **environ;
    struct watched watched = {0};
    posix_spawn_file_actions_t quiet;
    pid_t child;
    int status = 0;
    if (count < 3)
        return 64;
    posix_spawn_file_actions_init(&quiet);
    posix_spawn_file_actions_addopen(&quiet, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
    posix_spawn_file_actions_addopen(&quiet, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
    double start = now();
    if (posix_spawn(&child, words[2], &quiet, NULL, words + 2, environ) != 0)
        return 1;
    useconds_t every = (useconds_t)strtoul(words[1], NULL, 10) * 1000;
    /* Sleeps do not lengthen what is timed by more than one of them: short runs ask for short ones.
     */
    while (waitpid(child, &status, WNOHANG) == 0) {
        if (every > 0)
            look(&watched, child);
        usleep(every > 0 ? every : 200);
    }
    printf("%.6f %ld %d %ld %d\n", (now() - start) * 1e-6, watched.parent, watched.workers,
           watched.worker, WIFEXITED(status) ? WEXITSTATUS(status) : 255);
    return 0;
}
