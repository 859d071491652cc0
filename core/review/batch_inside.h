/* review, inside the room: the parts of a batch. */
#ifndef REVIEW_BATCH_INSIDE_H
#define REVIEW_BATCH_INSIDE_H
#include <signal.h>
#include <stdint.h>
#include <sys/types.h>

#include "batch.h"
#include "text.h"

enum {
    PATH_BYTES = 4096,  /* what is longer no system opens, and is cut to this */
    QUEUE = 2,          /* designs a worker has before it, so that it never waits for the next */
    WINDOW_PER_JOB = 8, /* designs that may be ahead of the next line, for each worker */
    /* Designs a worker takes before a new one stands in for it. The pages it shares with the batch
     * become its own one after the other as Lua's collector marks them; so memory is that of so
     * many designs, however many there are. A fork costs less than one review. */
    WORKER_DESIGNS = 200
};

/* ---- where paths come from --------------------------------------------------------------------
 */

struct path_source {
    const char *const *named;
    size_t named_count, next;
    int list; /* -1: none, or all read */
    char buffer[16 * 1024];
    size_t used, at;
    struct text line; /* as far as it was read */
    int error;        /* why the list cannot be read further; 0: it can */
};

enum source_state { SOURCE_PATH, SOURCE_WAIT, SOURCE_END };

/* The next path into `path`, which is emptied first. SOURCE_WAIT: the list has no more for now;
 * poll its descriptor and call source_fill. */
enum source_state source_next(struct text *path, struct path_source *source);
/* Reads on in the list, once. */
void source_fill(struct path_source *source);
/* How many paths there are in all; 0: cannot be told (a pipe). */
size_t source_count(const struct path_source *source);

/* ---- the window: designs read, under way or done, but not yet written -------------------------
 */

enum slot_state { SLOT_FREE, SLOT_WAITING, SLOT_SENT, SLOT_DONE };

struct slot {
    enum slot_state state;
    enum plumbrule_end end;
    struct text path, line;
};

/* ---- workers ----------------------------------------------------------------------------------
 */

/* An answer comes in parts, each behind a head of its own. */
struct reply_head {
    uint64_t length;
    uint32_t end;     /* of the last part: how the check ended */
    uint32_t is_last; /* else more of the line follows */
};

struct worker {
    pid_t process;      /* 0: none */
    int to, from;       /* our ends of its pipes */
    size_t sent[QUEUE]; /* slots it has before it, first to last */
    size_t sent_count;
    unsigned taken; /* designs it was ever sent */
    unsigned char head[sizeof(struct reply_head)];
    size_t head_length;
    uint64_t left;     /* bytes of the part still to come, once its head is there */
    bool is_last;      /* the part that comes ends the line */
    bool is_under_way; /* parts of the line are there */
};

struct crew {
    struct worker *workers;
    unsigned count;
    struct slot *slots; /* the whole window */
    size_t slot_count;
    struct plumbrule *plumbrule; /* warm */
    const struct plumbrule_options *options;
    sigset_t before; /* signals that were blocked before the batch */
};

/* A new worker in place `at`, whose former one, if any, is left to the caller to end. False: none
 * to be had, and the place is as it was. */
bool worker_start(struct crew *crew, unsigned at);
/* Whether it can be sent a design. One that took all it may is replaced first, once it is idle;
 * where no other is to be had it goes on. */
bool worker_takes(struct crew *crew, unsigned at);
/* Hands it one more design. What cannot be sent shows when its answer is read. */
void worker_send(struct worker *worker, size_t slot, const struct text *path);
/* Reads what it has to say into the slot it works at. False: it is lost. `is_short`: no memory. */
bool worker_read(struct worker *worker, struct slot *slots, bool *is_short);
/* Closes its pipes and waits for it; with `at_once` it is ended. The signal that ended it, 0: none.
 */
int worker_end(struct worker *worker, bool at_once);

/* ---- lines ------------------------------------------------------------------------------------
 */

/* A line that says why there is no other for this design. False: no memory. */
bool line_of_problem(struct slot *slot, enum problem_weight weight, const char *code,
                     const char *message);
/* Writes a line as a whole. 0, or what went wrong; -1: a signal of `stops` waits, and nobody reads.
 */
int line_write(int out, const struct text *line, const sigset_t *stops);
/* A signal of the set that waits to be delivered; 0: none. */
int signal_waiting(const sigset_t *stops);

/* ---- how far it is ----------------------------------------------------------------------------
 */

struct progress {
    int terminal;        /* -1: nobody is told */
    size_t all;          /* 0: not known */
    int64_t began, told; /* milliseconds */
};

void progress_start(struct progress *progress, int terminal, size_t all);
void progress_tell(struct progress *progress, size_t done);
void progress_clear(struct progress *progress);

#endif
