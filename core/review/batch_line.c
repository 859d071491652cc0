/* Whole lines, and what is told beside them. */
#include "batch_inside.h"

#include <errno.h>
#include <inttypes.h>
#include <poll.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

#include "report.h"

enum { PIECE = 4096, WAIT = 100, PATIENCE = 10, TELL_EVERY = 500 };

bool line_of_problem(struct slot *slot, enum problem_weight weight, const char *code,
                     const char *message)
{
    struct problems problems = {.arena = arena_new()};
    struct place place = {.file = slot->path.bytes};
    bool is_written = false;
    text_clear(&slot->line);
    if (problems.arena != NULL &&
        problems_add(&problems, weight, code, place, "%s", message) != NULL) {
        const struct report report = {
            .design_path = slot->path.bytes, .problems = &problems, .version = plumbrule_version()};
        is_written = report_write_ndjson(&slot->line, &report);
        slot->end = (enum plumbrule_end)exit_code(NULL, &problems, true);
        slot->state = SLOT_DONE;
    }
    arena_free(problems.arena);
    return is_written;
}

int signal_waiting(const sigset_t *stops)
{
    static const int signals[] = {SIGINT, SIGTERM, SIGHUP};
    sigset_t waiting;
    if (sigpending(&waiting) != 0)
        return 0;
    for (size_t i = 0; i < sizeof signals / sizeof signals[0]; i++)
        if (sigismember(stops, signals[i]) == 1 && sigismember(&waiting, signals[i]) == 1)
            return signals[i];
    return 0;
}

/* Waits until a piece can be written without waiting any longer. False: asked to stop, and still
 * nobody reads. */
static bool wait_for_reader(int out, const sigset_t *stops)
{
    struct pollfd reader = {.fd = out, .events = POLLOUT};
    for (int asked = 0; asked < PATIENCE;) {
        if (poll(&reader, 1, WAIT) != 0)
            return true;
        asked += signal_waiting(stops) != 0;
    }
    return false;
}

/* A disk that is full has taken a part: it is taken back. */
static void take_back(int out, off_t start)
{
    struct stat about;
    if (start < 0 || fstat(out, &about) != 0 || !S_ISREG(about.st_mode))
        return;
    if (ftruncate(out, start) == 0)
        lseek(out, start, SEEK_SET);
}

/* Where the line begins in a file; -1: it is none. */
static off_t begin_of_line(int out)
{
    struct stat about;
    if (fstat(out, &about) != 0 || !S_ISREG(about.st_mode))
        return -1;
    return lseek(out, 0, SEEK_CUR);
}

/* Is there somebody who reads, and may be slow? */
static bool has_reader(int out)
{
    struct stat about;
    return fstat(out, &about) != 0 || S_ISFIFO(about.st_mode) || S_ISSOCK(about.st_mode) ||
           isatty(out) == 1;
}

int line_write(int out, const struct text *line, const sigset_t *stops)
{
    off_t start = begin_of_line(out);
    bool in_pieces = start < 0 && has_reader(out);
    for (size_t done = 0; done < line->length;) {
        size_t piece = line->length - done;
        if (in_pieces) {
            piece = piece < PIECE ? piece : PIECE;
            if (!wait_for_reader(out, stops))
                return -1;
        }
        ssize_t step = write(out, line->bytes + done, piece);
        if (step < 0 && errno != EINTR && errno != EAGAIN) {
            int error = errno;
            take_back(out, start);
            return error;
        }
        done += step > 0 ? (size_t)step : 0;
    }
    return 0;
}

static int64_t milliseconds(void)
{
    struct timespec now;
    if (clock_gettime(CLOCK_MONOTONIC, &now) != 0)
        return 0;
    return (int64_t)now.tv_sec * 1000 + now.tv_nsec / 1000000;
}

void progress_start(struct progress *progress, int terminal, size_t all)
{
    *progress = (struct progress){.terminal = terminal, .all = all};
    if (terminal >= 0)
        progress->began = progress->told = milliseconds();
}

static void tell(const struct progress *progress, const char *text, size_t length)
{
    ssize_t written = write(progress->terminal, text, length);
    (void)written; /* who is not there is not told */
}

void progress_tell(struct progress *progress, size_t done)
{
    char text[160];
    if (progress->terminal < 0)
        return;
    int64_t now = milliseconds(), took = now - progress->began;
    if (now - progress->told < TELL_EVERY)
        return;
    progress->told = now;
    double rate = took > 0 ? 1000.0 * (double)done / (double)took : 0;
    int length = snprintf(text, sizeof text, "\r%zu", done);
    if (progress->all > 0)
        length += snprintf(text + length, sizeof text - (size_t)length, " of %zu", progress->all);
    length +=
        snprintf(text + length, sizeof text - (size_t)length, " designs, %.0f a second", rate);
    if (progress->all >= done && rate > 0) {
        int64_t left = (int64_t)((double)(progress->all - done) / rate);
        length += snprintf(text + length, sizeof text - (size_t)length,
                           ", %" PRId64 ":%02" PRId64 ":%02" PRId64 " left", left / 3600,
                           left / 60 % 60, left % 60);
    }
    length += snprintf(text + length, sizeof text - (size_t)length, "\033[K");
    tell(progress, text, (size_t)length);
}

void progress_clear(struct progress *progress)
{
    if (progress->terminal >= 0)
        tell(progress, "\r\033[K", 4);
}
