/* Workers: processes that share the warm books (copy on write) and take a path for a line. */
#ifndef _GNU_SOURCE
/* The size of a pipe, which only Linux lets one set. The C library wants the name so.
 * NOLINTNEXTLINE(bugprone-reserved-identifier) */
#define _GNU_SOURCE
#endif
#include "batch_inside.h"

#include <errno.h>
#include <fcntl.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include "warm.h"

enum {
    PIPE_BYTES = 1024 * 1024, /* the most that a process gets unless it is root's */
    LINE_BYTES = 1024 * 1024  /* room for most lines at once: what is not filled costs nothing */
};

/* All of it, or false: the other side is gone. */
static bool read_whole(int from, void *bytes, size_t length)
{
    for (size_t done = 0; done < length;) {
        ssize_t step = read(from, (char *)bytes + done, length - done);
        if (step == 0 || (step < 0 && errno != EINTR))
            return false;
        done += step > 0 ? (size_t)step : 0;
    }
    return true;
}

static bool write_whole(int to, const void *bytes, size_t length)
{
    for (size_t done = 0; done < length;) {
        ssize_t step = write(to, (const char *)bytes + done, length - done);
        if (step < 0 && errno != EINTR)
            return false;
        done += step > 0 ? (size_t)step : 0;
    }
    return true;
}

/* ---- in the worker ----------------------------------------------------------------------------
 */

static bool answer(int to, struct reply_head head, const char *bytes)
{
    return write_whole(to, &head, sizeof head) && write_whole(to, bytes, (size_t)head.length);
}

static bool hand_on(struct text *part, void *to)
{
    bool is_taken = !part->is_short &&
                    answer(*(int *)to, (struct reply_head){.length = part->length}, part->bytes);
    text_clear(part);
    return is_taken;
}

static void work(const struct crew *crew, int from, int to)
{
    char path[PATH_BYTES + 1];
    uint32_t length;
    const struct part_taker batch = {hand_on, &to};
    while (read_whole(from, &length, sizeof length) && length <= PATH_BYTES &&
           read_whole(from, path, length)) {
        const char *line;
        size_t line_length;
        path[length] = '\0';
        enum plumbrule_end end = plumbrule_check_in_parts(&line, &line_length, crew->plumbrule,
                                                          path, crew->options, &batch);
        if (!answer(to, (struct reply_head){line_length, (uint32_t)end, true}, line))
            return;
    }
}

/* A key pressed at the terminal is for the one that writes the lines: it ends the workers. */
static void set_signals(const struct crew *crew)
{
    sigset_t blocked = crew->before;
    sigaddset(&blocked, SIGINT);
    sigaddset(&blocked, SIGHUP);
    sigprocmask(SIG_SETMASK, &blocked, NULL);
}

/* Also those of the one it stands in for, which would never see them closed. */
static void close_others(const struct crew *crew)
{
    for (unsigned i = 0; i < crew->count; i++)
        if (crew->workers[i].process != 0) {
            close(crew->workers[i].to);
            close(crew->workers[i].from);
        }
}

/* Lines that the batch still holds would stay with the worker when the batch has long written them.
 */
static void give_back_lines(const struct crew *crew)
{
    for (size_t i = 0; i < crew->slot_count; i++)
        text_free(&crew->slots[i].line);
}

/* ---- in the batch -----------------------------------------------------------------------------
 */

static bool open_pipes(int request[2], int answer[2])
{
    if (pipe(request) != 0)
        return false;
    if (pipe(answer) == 0) {
        fcntl(answer[0], F_SETFL, O_NONBLOCK);
#ifdef F_SETPIPE_SZ
        /* A line fits as a whole, so that its worker goes on at once. Where that is not granted it
         * is only slower. */
        (void)fcntl(answer[1], F_SETPIPE_SZ, PIPE_BYTES);
#endif
        return true;
    }
    close(request[0]);
    close(request[1]);
    return false;
}

bool worker_start(struct crew *crew, unsigned at)
{
    int request[2], answer[2];
    if (!open_pipes(request, answer))
        return false;
    pid_t process = fork();
    if (process == 0) {
        set_signals(crew);
        close_others(crew);
        give_back_lines(crew);
        close(request[1]);
        close(answer[0]);
        work(crew, request[0], answer[1]);
        _exit(0);
    }
    close(request[0]);
    close(answer[1]);
    if (process < 0) {
        close(request[1]);
        close(answer[0]);
        return false;
    }
    crew->workers[at] = (struct worker){.process = process, .to = request[1], .from = answer[0]};
    return true;
}

bool worker_takes(struct crew *crew, unsigned at)
{
    struct worker *worker = &crew->workers[at], former = *worker;
    if (worker->process == 0 || worker->sent_count >= QUEUE)
        return false;
    if (worker->taken < WORKER_DESIGNS)
        return true;
    if (worker->sent_count > 0)
        return false;
    worker->taken = 0;
    if (worker_start(crew, at))
        worker_end(&former, true); /* it has nothing in hand, and might be stopped */
    return true;
}

void worker_send(struct worker *worker, size_t slot, const struct text *path)
{
    unsigned char message[sizeof(uint32_t) + PATH_BYTES];
    uint32_t length = (uint32_t)path->length;
    memcpy(message, &length, sizeof length);
    memcpy(message + sizeof length, path->bytes, path->length);
    worker->sent[worker->sent_count++] = slot;
    worker->taken++;
    (void)write_whole(worker->to, message, sizeof length + path->length);
}

/* A part is there; with the last one the slot is done. */
static void finish_part(struct worker *worker, struct slot *slots)
{
    struct slot *slot = &slots[worker->sent[0]];
    worker->head_length = 0;
    worker->is_under_way = !worker->is_last;
    if (!worker->is_last)
        return;
    if (slot->end == PLUMBRULE_NO_MEMORY) /* what came of it before is no line */
        text_clear(&slot->line);
    slot->state = SLOT_DONE;
    worker->sent_count--;
    memmove(worker->sent, worker->sent + 1, worker->sent_count * sizeof worker->sent[0]);
}

/* Reads the head of the next answer, or a part of it. False: the worker is gone, or it answers what
 * it was not asked; an interruption leaves all as it was. */
static bool read_head(struct worker *worker, struct slot *slots, bool *is_short)
{
    ssize_t step = read(worker->from, worker->head + worker->head_length,
                        sizeof worker->head - worker->head_length);
    if (step < 0)
        return errno == EINTR || errno == EAGAIN;
    if (step == 0 || worker->sent_count == 0)
        return false;
    worker->head_length += (size_t)step;
    if (worker->head_length < sizeof worker->head)
        return true;
    struct reply_head head;
    struct slot *slot = &slots[worker->sent[0]];
    memcpy(&head, worker->head, sizeof head);
    worker->left = head.length;
    worker->is_last = head.is_last;
    slot->end = (enum plumbrule_end)head.end;
    if (!worker->is_under_way)
        text_clear(&slot->line);
    size_t wanted = worker->is_last || worker->is_under_way ? (size_t)head.length : LINE_BYTES;
    *is_short = wanted > 0 && text_room(&slot->line, wanted) == NULL;
    return true;
}

/* The same for the line behind a head. */
static bool read_line(struct worker *worker, struct slot *slots, bool *is_short)
{
    struct text *line = &slots[worker->sent[0]].line;
    char *room = text_room(line, (size_t)worker->left);
    if (room == NULL) {
        *is_short = true;
        return true;
    }
    ssize_t step = read(worker->from, room, (size_t)worker->left);
    if (step < 0)
        return errno == EINTR || errno == EAGAIN;
    line->length += (size_t)step;
    room[step] = '\0';
    worker->left -= (uint64_t)step;
    return step > 0;
}

bool worker_read(struct worker *worker, struct slot *slots, bool *is_short)
{
    bool has_head = worker->head_length == sizeof worker->head;
    bool is_right =
        has_head ? read_line(worker, slots, is_short) : read_head(worker, slots, is_short);
    if (is_right && worker->head_length == sizeof worker->head && worker->left == 0)
        finish_part(worker, slots);
    return is_right;
}

int worker_end(struct worker *worker, bool at_once)
{
    int status = 0;
    if (worker->process == 0)
        return 0;
    if (at_once)
        kill(worker->process, SIGKILL);
    close(worker->to);
    close(worker->from);
    while (waitpid(worker->process, &status, 0) < 0 && errno == EINTR)
        ;
    worker->process = 0;
    return WIFSIGNALED(status) ? WTERMSIG(status) : 0;
}
