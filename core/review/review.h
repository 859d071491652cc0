/* review: the line itself, from a design's file to its findings. */
#ifndef REVIEW_REVIEW_H
#define REVIEW_REVIEW_H
#include "intake.h"
#include "judge.h"

/* What stays warm from one review to the next. */
struct bench {
    struct arena *arena;            /* of one review; cleared before the next */
    struct arena *shelf_arena;      /* the shelf's directories */
    const char *const *directories; /* that the shelf was made for */
    struct shelf *shelf;
    bool shelf_is_stale; /* something was wrong in a book: the next review reads anew */
    struct judge *judge;
    struct kept_sources *catalogues;   /* that earlier designs named */
    struct arena *rulebook_arena;      /* of the rulebook that was resolved last */
    struct rulebook *rulebook;         /* NULL: none, or something was wrong with it */
    const char *const *rulebook_books; /* that it was made of */
    struct date rulebook_on;           /* and the day */
};

struct bench_options {
    const char *const *book_directories, *const *catalogue_directories, *const *books;
    const char *on;
    bool with_working;
    bool without_messages; /* the report makes those it tells, which are few */
};

/* One review; all of it in the bench's arena. */
struct review {
    struct design *design;     /* NULL: not read */
    struct rulebook *rulebook; /* NULL: not resolved */
    struct findings findings;
    struct problems problems;
    bool has_date;
    struct date on;
};

/* False: no memory. */
bool bench_open(struct bench *out);
void bench_close(struct bench *bench);
/* Empties the arena for the next review. */
void bench_start(struct bench *bench, struct review *review);
/* The day whose rules hold: `on`, else the design's. False: there is none, and a problem asks for
 * it (where the design was not read nobody asks). */
bool review_find_date(struct review *review, const char *on);
/* Reads the books named for one day. False: problems say why. */
bool bench_resolve(struct review *review, struct bench *bench, const struct bench_options *options);
/* The shelf for these directories, kept as long as it is asked for the same. False: no memory. */
bool bench_fetch_shelf(struct bench *bench, const char *const *given);
/* The whole line for one design. False: no memory; all else is in findings and problems. */
bool bench_review(struct review *out, struct bench *bench, const char *design_path,
                  const struct bench_options *options);

#endif
