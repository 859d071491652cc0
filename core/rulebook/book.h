/* rulebook: books as they are written, and what is in force of them on a day. */
#ifndef RULEBOOK_BOOK_H
#define RULEBOOK_BOOK_H
#include "amount.h"
#include "index.h"
#include "problem.h"

/* Who maintains a book decides what it may do: a company may only add or tighten. */
enum book_role { ROLE_MODEL_CODE, ROLE_AUTHORITY, ROLE_UTILITY, ROLE_COMPANY };

enum stricter { STRICTER_NEITHER, STRICTER_LARGER, STRICTER_SMALLER };

/* What a value is: said once in the whole stack, by the book that first uses it. */
struct declaration {
    const char *name;
    enum amount_type type;    /* quantity, number, yes/no or word */
    enum measure measure;     /* of a quantity */
    const char *const *words; /* of a word: what it may be; ends in NULL */
    const char *basis;        /* such as "strength level"; part of the declaration; or NULL */
    enum stricter stricter;
    const char *says;
    bool given_above; /* no number of its own: a book above must give one */
    const char *cite; /* where the value itself is asked for, or NULL: see its entries */
    struct place place;
};

/* What an entry says, and where the text of it stands. */
struct said {
    const char *text; /* "40 psf", as in the file; NULL: unreadable, told */
    struct place place;
    struct amount is; /* AMOUNT_NONE until it was read by its declaration */
};

/* A number that holds up to an elevation, that elevation included. */
struct band {
    struct quantity up_to; /* a length */
    struct said said;
};

/* One number of the law. */
struct entry {
    struct date from; /* of a model code's edition: the year 0 */
    struct date
        repealed;        /* its own end, if it has one: that day it no longer holds; year 0: none */
    bool is_repeal;      /* from that day on there is none */
    const char *edition; /* the edition it was written for, or NULL */
    struct said said;    /* without bands */
    struct band *bands;  /* by elevation, lowest first; or NULL */
    size_t band_count;
    const char *cite;
    struct place place;
};

/* Reads what an entry says as its declaration wants it: "18 in", "0.33" or "33 %", "yes", a word
 * (the declaration's own text). False: *fault says why. A declaration whose kind was not readable
 * (AMOUNT_NONE) takes anything and gives AMOUNT_NONE. */
bool declaration_read_amount(struct amount *out, const struct declaration *declaration,
                             const char *text, struct quantity_fault *fault);
/* How an amount of it is written, for an error: "18 in", "yes". */
const char *declaration_example(const struct declaration *declaration);

struct book_value {
    const char *name;
    struct declaration *declaration; /* NULL: declared by a book below */
    struct entry *entries;           /* in file order */
    size_t count, capacity;
    struct place place;
};

enum change_verb { CHANGE_DELETES, CHANGE_RESTORES, CHANGE_REPLACES };

struct change {
    enum change_verb verb;
    const char *rule;    /* "irc/second-pathway" */
    const char *edition; /* of the model code it was written for, or NULL */
    const char *file;    /* REPLACES: path of the new text */
    struct date from;
    struct date repealed; /* year 0: never */
    const char *cite;
    struct place place;
};

struct adoption {
    const char *book;
    const char *edition; /* NULL: the book has none */
    struct date from;
    struct date repealed; /* year 0: never */
    const char *cite;     /* or NULL */
    struct place place;
};

/* A rule's file. Its id is BOOK/NAME. */
struct rule_file {
    const char *id;
    const char *edition; /* the edition whose text it is, or NULL: all */
    const char *path;
};

/* The authority lifts a `shall` for one thing. */
struct waiver {
    const char *rule;
    const char *about; /* "roof_plane:south" */
    const char *reason, *granted_by, *permit;
    struct date from, until;
    struct place place;
};

/* A file of a book as it was read, so that a later mistake can show its line. */
struct book_text {
    const char *path, *bytes;
    size_t length;
};

struct book {
    const char *name, *title, *maintained_by, *scope;
    enum book_role role;
    const char *directory; /* as given or found */
    const char *const
        *covers; /* declared things it has rules for: "storage", "ground array" …; ends in NULL */
    const char *const *editions; /* of a model code; ends in NULL; empty: none */
    struct adoption *adoptions;
    size_t adoption_count;
    struct book_value *values;
    size_t value_count;
    struct change *changes;
    size_t change_count;
    struct rule_file *rules; /* in byte order of id, then edition */
    size_t rule_count;
    struct waiver *waivers;
    size_t waiver_count;
    struct book_text *texts;
    size_t text_count;
    bool is_partial;    /* values.yaml could not be read: who knows what it declares */
    struct place place; /* book.yaml */
};

/* ---- what is in force --------------------------------------------------------------------- */

enum value_state {
    VALUE_IN_FORCE,
    VALUE_NOT_IN_FORCE, /* declared, but no entry holds on that day: reading it makes a finding open
                         */
    VALUE_RIVALS        /* undecided, a problem was told: two books give one and neither adopts the
                           other, or the one that counts was written for another edition */
};

/* One act in the history of a rule or a value that is in force on the day: "adopts", "adds",
 * "amends", "deletes", "restores", "replaces". */
struct act {
    const char *verb;
    const struct book *book;
    const char *cite; /* or NULL */
    struct date from; /* year 0: since ever */
    struct place place;
};

struct value {
    const char *name;
    const struct declaration *declaration;
    const struct book *declared_by;
    enum value_state state;
    struct amount is;          /* AMOUNT_NONE where the entry has bands: ask value_at_elevation */
    const struct book *book;   /* that gives it */
    const char *edition;       /* of that book as adopted, or NULL */
    const struct entry *entry; /* a copy whose amounts are read */
    struct act *acts;          /* "adds" by the book that declares it, "amends"; by date */
    size_t act_count;
};

struct rule {
    const char *id;             /* "nec/busbar": keeps it when replaced */
    const char *path;           /* of the text in force */
    const struct book *book;    /* whose rule it is */
    const char *edition;        /* of that book as adopted, or NULL */
    const struct book *text_by; /* whose text is in force */
    bool holds;                 /* false: deleted and not restored */
    struct act *acts;           /* by date */
    size_t act_count;
};

struct book_in_force {
    const struct book *book;
    const char *edition;           /* or NULL */
    const struct book *adopted_by; /* NULL: named by the caller */
    struct place place;            /* of the adoption */
};

/* Belongs to the arena it was resolved in. */
struct rulebook {
    struct arena *arena;
    struct date on;
    struct book_in_force
        *books; /* each once, lowest first (what is adopted stands before who adopts) */
    size_t book_count;
    struct value *values; /* in byte order of name */
    size_t value_count;
    struct index value_index;
    struct rule *rules; /* by book (lowest first), then id; deleted ones included */
    size_t rule_count;
    struct index rule_index;
    const struct waiver **waivers; /* of authorities, expired ones too; by book, then as written */
    size_t waiver_count;
};

const struct value *rulebook_find_value(const struct rulebook *rulebook, const char *name);
const struct rule *rulebook_find_rule(const struct rulebook *rulebook, const char *id);

/* What a value in force is at an elevation (a length). Without bands that is `value->is`. NULL:
 * above the highest band, so not in force there; or not in force at all. */
const struct amount *value_at_elevation(const struct value *value, struct quantity elevation);

/* How the resolution asks for a book that is adopted; `context` is the shelf's. NULL: there is
 * none, or it could not be read (a problem was told). */
typedef const struct book *find_book(void *context, const char *name, struct place asked_at,
                                     struct problems *problems);

/* Resolves the stack of `count` named books, each later one counting as adopting the earlier ones,
 * for one day. A name may carry an edition: "nec@2023" (needed for a model code named directly).
 * Mistakes are problems (PROBLEM_INPUT) and the rest still resolves; false: nothing can be reviewed
 * with it (a circle, one book at two editions, an unknown book or edition, no memory). */
bool rulebook_resolve(struct rulebook **out, const char *const *names, size_t count, struct date on,
                      find_book *find, void *context, struct arena *arena,
                      struct problems *problems);

#endif
