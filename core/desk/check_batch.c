/* plumbrule check over many designs: a line for each. */
#include "desk.h"

#include <errno.h>
#include <fcntl.h>
#include <malloc.h>
#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include "batch.h"
#include "file.h"
#include "finding.h"

static const char line_format[] = "ndjson";

enum { OWN_MAPPING = 128 * 1024 }; /* bytes */

bool is_batch(const struct desk *desk)
{
    const char *format = desk_last(desk, FLAG_REPORT);
    return desk_has(desk, FLAG_JOBS) || desk_has(desk, FLAG_FROM_LIST) ||
           (format != NULL && strcmp(format, line_format) == 0);
}

/* 1 without --jobs; 0: it is no such number. */
static unsigned read_jobs(const struct desk *desk)
{
    const char *text = desk_last(desk, FLAG_JOBS);
    unsigned jobs = 0;
    if (text == NULL)
        return 1;
    if (strspn(text, "0123456789") != strlen(text) || strlen(text) > 3)
        return 0;
    for (; *text != '\0'; text++)
        jobs = jobs * 10 + (unsigned)(*text - '0');
    return jobs <= BATCH_JOBS_MOST ? jobs : 0;
}

bool batch_is_complete(struct desk *desk)
{
    const char *format = desk_last(desk, FLAG_REPORT);
    if (format != NULL && strcmp(format, line_format) != 0)
        desk_refuse(desk, "format-lines", "--format ndjson",
                    "--%s writes one line of JSON per design; --format %s does not go with it",
                    desk_has(desk, FLAG_JOBS) ? "jobs" : "from-list", format);
    if (read_jobs(desk) == 0)
        desk_refuse(desk, "jobs-bad", "--jobs 2", "--jobs takes a number from 1 to %d",
                    BATCH_JOBS_MOST);
    return desk->problems.count == 0;
}

/* False: a problem says why. */
static bool open_list(int *list, struct desk *desk)
{
    const char *path = desk_last(desk, FLAG_FROM_LIST);
    char reason[128];
    *list = path == NULL ? -1 : STDIN_FILENO;
    if (path == NULL || strcmp(path, "-") == 0)
        return true;
    *list = open(path, O_RDONLY | O_CLOEXEC | O_NOCTTY);
    if (*list >= 0)
        return true;
    if (strerror_r(errno, reason, sizeof reason) != 0)
        snprintf(reason, sizeof reason, "error");
    problems_add(&desk->problems, PROBLEM_INPUT, "list-unreadable", (struct place){.file = path},
                 "the list cannot be read: %s", reason);
    return false;
}

static enum plumbrule_end run_batch(struct desk *desk, const struct batch *batch)
{
    struct batch_result result;
    struct file_draft draft = {.file = -1};
    struct batch whole = *batch;
    const char *path = desk_last(desk, FLAG_OUTPUT);
    if (path != NULL && !file_draft_open(&draft, path, &desk->problems))
        return PLUMBRULE_NOT_WRITTEN;
    if (path != NULL)
        whole.out = draft.file;
    batch_run(&result, &whole, &desk->problems);
    if (result.written == 0 && result.end == PLUMBRULE_STANDS && result.signal == 0) {
        /* Nothing was checked, which must not look as if all stood. */
        problems_add(&desk->problems, PROBLEM_INPUT, "list-empty",
                     (struct place){.file = desk_last(desk, FLAG_FROM_LIST)},
                     "the list names no design, so nothing was checked");
        result.end = PLUMBRULE_UNREAD;
    }
    bool is_whole = result.signal == 0 && result.end != PLUMBRULE_NOT_WRITTEN;
    if (path != NULL && !file_draft_close(&draft, is_whole, &desk->problems))
        result.end = (enum plumbrule_end)exit_code_first((int)result.end, PLUMBRULE_NOT_WRITTEN);
    if (result.signal != 0) /* whoever started it is to know that it was stopped */
        raise(result.signal);
    return result.end;
}

enum plumbrule_end check_batch(struct desk *desk, const struct plumbrule_options *options)
{
    struct plumbrule_options of_lines = *options;
    struct batch batch = {.options = &of_lines,
                          .designs = desk->operands.items,
                          .count = desk->operands.count,
                          .jobs = read_jobs(desk),
                          .out = STDOUT_FILENO,
                          .terminal = isatty(STDERR_FILENO) == 1 ? STDERR_FILENO : -1};
    of_lines.format = line_format;
    desk->is_written = true;
#ifdef M_MMAP_THRESHOLD
    /* Long lines get mappings of their own: else a worker takes over, with the heap, the room of
     * all lines that were ever held at once. */
    mallopt(M_MMAP_THRESHOLD, OWN_MAPPING);
#endif
    if (!open_list(&batch.list, desk))
        return PLUMBRULE_UNREAD;
    enum plumbrule_end end = run_batch(desk, &batch);
    if (batch.list > STDIN_FILENO)
        close(batch.list);
    return end;
}
