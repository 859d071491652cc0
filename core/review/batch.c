#include "batch.h"

#include <errno.h>
#include <poll.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "batch_inside.h"
#include "finding.h"
#include "warm.h"

enum { WAIT = 100 };

/* All that a batch has under way. Slots are a ring: the next line to write is at `first`. */
struct batch_run {
    const struct batch *batch;
    struct batch_result *result;
    struct problems *problems;
    struct path_source source;
    struct slot *slots;
    size_t slot_count, first, held;
    struct crew crew;
    struct pollfd *polled; /* one per worker, then the list */
    struct progress progress;
    sigset_t stops; /* signals that ask us to stop */
    bool is_read, is_over;
};

static void end_with(struct batch_run *run, enum plumbrule_end end)
{
    run->result->end = (enum plumbrule_end)exit_code_first((int)run->result->end, (int)end);
}

static void stop(struct batch_run *run, enum problem_weight weight, const char *code,
                 const char *message, int error)
{
    char reason[128] = "";
    if (error != 0 && strerror_r(error, reason, sizeof reason) != 0)
        snprintf(reason, sizeof reason, "error %d", error);
    problems_add(run->problems, weight, code, (struct place){0}, "%s%s%s", message,
                 error != 0 ? ": " : "", reason);
    end_with(run, weight == PROBLEM_OUTPUT   ? PLUMBRULE_NOT_WRITTEN
                  : weight == PROBLEM_MEMORY ? PLUMBRULE_NO_MEMORY
                                             : PLUMBRULE_UNREAD);
    run->is_over = true;
}

/* The reader of the standard output has read all that it wanted: nobody needs to be told. */
static void leave(struct batch_run *run)
{
    end_with(run, PLUMBRULE_NOT_WRITTEN);
    run->is_over = true;
}

static void stop_short(struct batch_run *run)
{
    stop(run, PROBLEM_MEMORY, "memory", "there is no memory left", 0);
}

static struct slot *slot_at(struct batch_run *run, size_t from_first)
{
    return &run->slots[(run->first + from_first) % run->slot_count];
}

/* Fills the window as far as paths are there. */
static void take_paths(struct batch_run *run)
{
    while (!run->is_read && !run->is_over && run->held < run->slot_count) {
        struct slot *slot = slot_at(run, run->held);
        enum source_state state = source_next(&slot->path, &run->source);
        if (state == SOURCE_WAIT)
            return;
        if (state == SOURCE_END) {
            run->is_read = true;
            if (run->source.error != 0)
                stop(run, PROBLEM_INPUT, "list-unreadable", "the list cannot be read further",
                     run->source.error);
            return;
        }
        slot->state = SLOT_WAITING;
        run->held++;
        if (slot->path.is_short || (strlen(slot->path.bytes) != slot->path.length &&
                                    !line_of_problem(slot, PROBLEM_INPUT, "path-bad",
                                                     "the path in the list holds a NUL byte")))
            stop_short(run);
    }
}

/* Gives each worker what it can hold, the emptiest first. */
static void hand_out(struct batch_run *run)
{
    for (size_t i = 0; i < run->held; i++) {
        struct slot *slot = slot_at(run, i);
        struct worker *freest = NULL;
        if (slot->state != SLOT_WAITING)
            continue;
        for (unsigned k = 0; k < run->crew.count; k++) {
            struct worker *worker = &run->crew.workers[k];
            if (worker_takes(&run->crew, k) &&
                (freest == NULL || worker->sent_count < freest->sent_count))
                freest = worker;
        }
        if (freest == NULL)
            return;
        slot->state = SLOT_SENT;
        worker_send(freest, (size_t)(slot - run->slots), &slot->path);
    }
}

/* The design it worked at has its line; what else it had goes to the others. */
static void replace_worker(struct batch_run *run, unsigned at)
{
    char message[160];
    struct worker *worker = &run->crew.workers[at];
    struct worker lost = *worker;
    int signal = worker_end(worker, true);
    for (size_t i = 0; i < lost.sent_count; i++)
        run->slots[lost.sent[i]].state = SLOT_WAITING;
    snprintf(message, sizeof message,
             "the check of this design was cut off (its worker ended by signal %d): it is not "
             "checked",
             signal);
    if (lost.sent_count > 0 &&
        !line_of_problem(&run->slots[lost.sent[0]], PROBLEM_MEMORY, "worker-lost", message))
        stop_short(run);
    run->result->replaced++;
    bool is_there = worker_start(&run->crew, at);
    for (unsigned i = 0; !is_there && i < run->crew.count; i++)
        is_there = run->crew.workers[i].process != 0;
    if (!is_there)
        stop(run, PROBLEM_MEMORY, "worker-none", "no worker can be started", 0);
}

/* Waits for answers, for the list, or for a while. */
static void listen(struct batch_run *run)
{
    unsigned count = run->crew.count;
    bool wants_list = !run->is_read && run->held < run->slot_count && run->source.list >= 0 &&
                      run->source.at == run->source.used;
    for (unsigned i = 0; i < count; i++)
        run->polled[i] = (struct pollfd){
            .fd = run->crew.workers[i].process != 0 ? run->crew.workers[i].from : -1,
            .events = POLLIN};
    run->polled[count] =
        (struct pollfd){.fd = wants_list ? run->source.list : -1, .events = POLLIN};
    if (poll(run->polled, count + 1, WAIT) <= 0)
        return;
    if (run->polled[count].revents != 0)
        source_fill(&run->source);
    for (unsigned i = 0; i < count && !run->is_over; i++) {
        bool is_short = false;
        if (run->polled[i].revents != 0 &&
            !worker_read(&run->crew.workers[i], run->slots, &is_short))
            replace_worker(run, i);
        if (is_short)
            stop_short(run);
    }
}

/* Writes what is done, in order. */
static void write_lines(struct batch_run *run)
{
    while (!run->is_over && run->held > 0 && slot_at(run, 0)->state == SLOT_DONE) {
        struct slot *slot = slot_at(run, 0);
        if (slot->line.length == 0 &&
            !line_of_problem(slot, PROBLEM_MEMORY, "memory", "there is no memory left to check it"))
            stop_short(run);
        int error = run->is_over ? -1 : line_write(run->batch->out, &slot->line, &run->stops);
        if (error == EPIPE && run->batch->out == STDOUT_FILENO)
            leave(run);
        else if (error > 0)
            stop(run, PROBLEM_OUTPUT, "output-unwritten", "the output cannot be written", error);
        if (error != 0)
            return;
        end_with(run, slot->end);
        run->result->written++;
        text_free(&slot->line); /* or all would grow to the longest line there ever was */
        slot->state = SLOT_FREE;
        run->first = (run->first + 1) % run->slot_count;
        run->held--;
    }
}

static void check_all(struct batch_run *run)
{
    for (;;) {
        take_paths(run);
        if (run->is_over || (run->is_read && run->held == 0))
            return;
        hand_out(run);
        write_lines(run);
        run->result->signal = signal_waiting(&run->stops);
        if (run->is_over || run->result->signal != 0)
            return;
        progress_tell(&run->progress, run->result->written);
        if (!run->is_read || run->held > 0)
            listen(run);
    }
}

/* Holds back the signals that ask us to stop, until a line is whole; those that were ignored before
 * stay so. */
static void hold_signals(struct batch_run *run)
{
    static const int signals[] = {SIGINT, SIGTERM, SIGHUP};
    struct sigaction action;
    sigemptyset(&run->stops);
    for (size_t i = 0; i < sizeof signals / sizeof signals[0]; i++)
        if (sigaction(signals[i], NULL, &action) == 0 && action.sa_handler != SIG_IGN)
            sigaddset(&run->stops, signals[i]);
    sigprocmask(SIG_BLOCK, &run->stops, &run->crew.before);
}

static bool start(struct batch_run *run)
{
    const struct batch *batch = run->batch;
    unsigned jobs = batch->jobs < 1                 ? 1
                    : batch->jobs > BATCH_JOBS_MOST ? BATCH_JOBS_MOST
                                                    : batch->jobs;
    run->source = (struct path_source){
        .named = batch->designs, .named_count = batch->count, .list = batch->list};
    run->slot_count = (size_t)jobs * WINDOW_PER_JOB;
    run->slots = calloc(run->slot_count, sizeof *run->slots);
    run->crew.workers = calloc(jobs, sizeof *run->crew.workers);
    run->polled = calloc((size_t)jobs + 1, sizeof *run->polled);
    run->crew.options = batch->options;
    run->crew.count = jobs;
    run->crew.slots = run->slots;
    run->crew.slot_count = run->slot_count;
    return run->slots != NULL && run->crew.workers != NULL && run->polled != NULL &&
           plumbrule_open(&run->crew.plumbrule);
}

/* Waits for the first path, which may tell the day whose books are read before workers begin. */
static void warm(struct batch_run *run)
{
    take_paths(run);
    while (run->held == 0 && !run->is_read && signal_waiting(&run->stops) == 0) {
        listen(run);
        take_paths(run);
    }
    if (run->held > 0 && slot_at(run, 0)->state == SLOT_WAITING && !slot_at(run, 0)->path.is_short)
        plumbrule_warm(run->crew.plumbrule, slot_at(run, 0)->path.bytes, run->batch->options);
}

static void start_workers(struct batch_run *run)
{
    unsigned started = 0;
    for (unsigned i = 0; i < run->crew.count; i++)
        started += worker_start(&run->crew, i);
    if (started == 0)
        stop(run, PROBLEM_MEMORY, "worker-none", "no worker can be started", errno);
}

static void finish(struct batch_run *run)
{
    bool at_once = run->is_over || run->result->signal != 0;
    for (unsigned i = 0; run->crew.workers != NULL && i < run->crew.count; i++)
        worker_end(&run->crew.workers[i], at_once);
    for (size_t i = 0; run->slots != NULL && i < run->slot_count; i++) {
        text_free(&run->slots[i].path);
        text_free(&run->slots[i].line);
    }
    text_free(&run->source.line);
    free(run->slots);
    free(run->crew.workers);
    free(run->polled);
    plumbrule_close(run->crew.plumbrule);
    if (run->result->signal != 0) { /* taken in: the caller decides how to end */
        sigset_t taken;
        int signal;
        sigemptyset(&taken);
        sigaddset(&taken, run->result->signal);
        sigwait(&taken, &signal);
    }
    sigprocmask(SIG_SETMASK, &run->crew.before, NULL);
}

void batch_run(struct batch_result *out, const struct batch *batch, struct problems *problems)
{
    struct batch_run run = {.batch = batch, .result = out, .problems = problems};
    *out = (struct batch_result){.end = PLUMBRULE_STANDS};
    hold_signals(&run);
    if (!start(&run)) {
        stop_short(&run);
    } else {
        progress_start(&run.progress, batch->terminal, source_count(&run.source));
        warm(&run);
        if (!run.is_over && run.held > 0)
            start_workers(&run);
        if (!run.is_over)
            check_all(&run);
        progress_clear(&run.progress);
    }
    finish(&run);
}
