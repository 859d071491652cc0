/* rulebook, inside the room: one resolution while it is being made. */
#ifndef RULEBOOK_RESOLVING_H
#define RULEBOOK_RESOLVING_H
#include "book.h"

#define NO_BOOK ((size_t)-1)

/* One book counting as adopting another on the day. */
struct link {
    size_t upper, lower;             /* books by number */
    const struct adoption *adoption; /* NULL: by the order of the command line */
};

struct resolving {
    struct rulebook *rulebook;
    struct arena *arena;
    struct problems *problems;
    find_book *find;
    void *context;
    struct book_in_force *books; /* in the order found, then lowest first */
    size_t book_count, book_capacity;
    struct link *links;
    size_t link_count, link_capacity;
    bool *reaches; /* book_count × book_count: does the row adopt the column, directly or not? */
    const struct book **dormant; /* adopted on some day, but not on this one */
    size_t dormant_count, dormant_capacity;
    bool is_dormant_sought;
};

/* Adds a problem with its excerpt; `example` may be NULL. The returned one may be NULL. */
struct problem *tell(struct resolving *resolving, const char *code, struct place place,
                     const char *example, const char *format, ...)
    __attribute__((format(printf, 5, 6)));
/* The same citing a second place. */
void tell_both(struct resolving *resolving, const char *code, struct place place,
               struct place other, const char *example, const char *format, ...)
    __attribute__((format(printf, 6, 7)));
/* Puts the problems told since there were `from` of them in the order of their places. */
void sort_problems(struct problems *problems, size_t from);
/* "; did you mean X?", or "" where nothing is near. Never NULL. */
const char *near_hint(struct resolving *resolving, const char *word, const char *const *words,
                      size_t count);
/* "2018, 2021" of a list that ends in NULL. Never NULL. */
const char *list_names(struct resolving *resolving, const char *const *names);

bool has_editions(const struct book *book);
bool has_edition(const struct book *book, const char *edition);
bool is_same_name(const char *a, const char *b);

/* Finds the books of the stack and puts them in order. False: a circle, two editions of one, or one
 * that is not there; problems say so. */
bool gather_books(struct resolving *resolving, const char *const *names, size_t count);
/* Orders books lowest first and finds who reaches whom. False: a circle, told; or no memory. */
bool order_books(struct resolving *resolving);
/* The number of a book in force by name, or NO_BOOK. */
size_t book_number(const struct resolving *resolving, const char *name);
bool does_reach(const struct resolving *resolving, size_t upper, size_t lower);
/* The one of `count` books that adopts all the others, as its place in the list, or NO_BOOK. */
size_t find_winner(const struct resolving *resolving, const size_t *books, size_t count);
/* Two of the list that no other one adopts. Only where there is no winner. */
void find_rivals(const struct resolving *resolving, const size_t *books, size_t count,
                 size_t *first, size_t *second);
/* A book that is adopted, directly or not, on other days than this, or NULL. Their own problems are
 * told on their day. */
const struct book *find_dormant(struct resolving *resolving, const char *name);
void seek_dormant(struct resolving *resolving);

/* What of a series with `from` and `repealed` holds on the day: is `from` the better choice than
 * `best` (year 0: none yet)? */
bool has_begun(struct date from, struct date on);
bool has_ended(struct date repealed, struct date on);

/* A company may only add or tighten, whatever the edition, so it need not name one. */
bool is_company(const struct resolving *resolving, size_t book);

/* Whether what a book above says about a thing of `target` may stand by the edition it names. */
enum edition_fit {
    EDITION_FITS,
    EDITION_OTHER, /* written for another one: wrong while it is live */
    EDITION_WRONG  /* a mistake on any day, told */
};
struct edition_question {
    const char *edition; /* as named, or NULL */
    bool is_needed;      /* may it not be left out? */
    const char *what;    /* "the value ridge_setback_small" */
    struct place place;
};
enum edition_fit judge_edition(struct resolving *resolving, size_t target,
                               const struct edition_question *question);
void tell_stale(struct resolving *resolving, size_t target,
                const struct edition_question *question);

/* Would a company's entry stand looser than the one it would take the place of? */
bool is_looser(const struct declaration *declaration, const struct entry *company,
               const struct entry *below);

/* By date; what is of one day stays in the order of the books. */
void sort_acts(struct act *acts, size_t count);

bool resolve_values(struct resolving *resolving);
bool resolve_rules(struct resolving *resolving);
bool resolve_waivers(struct resolving *resolving);

#endif
