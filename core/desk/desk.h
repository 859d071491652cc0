/* desk: the command line; one file per command. Alone reads the environment. */
#ifndef DESK_DESK_H
#define DESK_DESK_H
#include "plumbrule/plumbrule.h"
#include "problem.h"
#include "text.h"

enum flag_id {
    FLAG_BOOK,
    FLAG_ON,
    FLAG_JOBS,
    FLAG_FROM_LIST,
    FLAG_FORMAT,
    FLAG_OUTPUT,
    FLAG_BOOKS,
    FLAG_CATALOGUES,
    FLAG_COLOR,
    FLAG_WITH_WORKING,
    FLAG_REPORT, /* the formats of a check */
    FLAG_FAILURES_ONLY,
    FLAG_WHAT,
    FLAG_STIR,
    FLAG_ADOPTS,
    FLAG_IN,
    FLAG_RULE,
    FLAG_ABOUT,
    FLAG_AGAINST,
    FLAG_HELP,
    FLAG_VERSION,
    FLAG_COUNT
};

/* One option: parsed, completed and explained from the same row. */
struct flag {
    const char *name;
    char letter;                /* 0: none */
    const char *argument;       /* "DIR"; NULL: takes none */
    const char *const *choices; /* what the argument may be; ends in NULL; NULL: anything */
    bool repeats;
    const char *says;
};

/* A list of words from the command line; ends in NULL. */
struct words {
    const char **items;
    size_t count, capacity;
};

/* One run of the program. */
struct desk {
    struct arena *arena;
    struct problems problems; /* told on the error stream at the end */
    struct words operands;
    struct words
        given[FLAG_COUNT]; /* arguments of each option, in order ("" where it takes none) */
    struct text out;       /* what the run gives out */
    bool is_written;       /* the command has written its output itself */
};

struct command {
    const char *name, *operands, *says;
    const enum flag_id *flags; /* ends in FLAG_COUNT */
    enum plumbrule_end (*run)(struct desk *desk);
};

enum plumbrule_end run_check(struct desk *desk);
enum plumbrule_end run_books(struct desk *desk);
enum plumbrule_end run_rules(struct desk *desk);
enum plumbrule_end run_calc(struct desk *desk);
enum plumbrule_end run_draw(struct desk *desk);
enum plumbrule_end run_prove(struct desk *desk);
enum plumbrule_end run_schema(struct desk *desk);
enum plumbrule_end run_new(struct desk *desk);
enum plumbrule_end run_lint(struct desk *desk);
enum plumbrule_end run_explain(struct desk *desk);
enum plumbrule_end run_compare(struct desk *desk);

/* All commands; NULL past the end. */
const struct command *command_at(size_t at);
const struct command *command_find(const char *name);
const struct flag *flag_at(enum flag_id id);

/* Parses what stands behind the command's name (argv[0] is that name). False: problems say why. */
bool desk_parse(struct desk *desk, const struct command *command, int argc, char **argv);
/* The last argument of an option, or NULL. */
const char *desk_last(const struct desk *desk, enum flag_id id);
bool desk_has(const struct desk *desk, enum flag_id id);
/* "roof, one-line": what the argument of an option may be. Lives in the desk's arena. */
const char *choices_text(struct desk *desk, const struct flag *flag);
/* A mistake of the command line. Always PLUMBRULE_COMMAND. `example` may be NULL. */
enum plumbrule_end desk_refuse(struct desk *desk, const char *code, const char *example,
                               const char *format, ...) __attribute__((format(printf, 4, 5)));
/* Adds a word at the end. False: no memory. */
bool words_add(struct words *words, const char *word, struct arena *arena);
/* Is each folder of --books and --catalogues there, and may it be read? False: problems say. */
bool desk_check_folders(struct desk *desk);
/* Directories with books from --books and the environment; NULL: no memory. */
const char *const *desk_book_directories(struct desk *desk);
/* Takes files of sign-offs, which a shell puts among designs, out of the operands from `first` on;
 * each is a note. False: nothing else was there, or no memory: refused. */
bool desk_leave_signoffs(struct desk *desk, size_t first);
/* --on, if it is there, read and right. False: refused. */
bool desk_check_date(struct desk *desk);

/* Does the command line ask for a line per design? */
bool is_batch(const struct desk *desk);
/* Checks what stands on the command line for a batch. False: refused. */
bool batch_is_complete(struct desk *desk);
/* Checks many designs, a line for each, and writes the lines. */
enum plumbrule_end check_batch(struct desk *desk, const struct plumbrule_options *options);

/* Help for everything, or for one command. */
void help_write(struct text *out);
void help_write_command(struct text *out, const struct command *command);

/* How a run ends: an exit code and what it means; NULL past the end. */
struct ending {
    int code;
    const char *says;
};
const struct ending *ending_at(size_t at);
/* The manual page, for troff with the man macros. */
void manual_write(struct text *out);

/* Tells on the error stream what went wrong. False: there was no memory, and nothing is told. */
bool desk_tell(const struct problems *problems);
/* Writes the desk's output where it belongs. The code, or PLUMBRULE_NOT_WRITTEN: a problem says
 * why, unless the reader of a pipe has gone, which it knows itself. */
enum plumbrule_end desk_write(struct desk *desk, enum plumbrule_end end);
/* The whole program. */
int desk_main(int argc, char **argv);

#endif
