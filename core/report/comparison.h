/* Two stacks of books, or one on two days: what changed, and what that does to designs. */
#ifndef REPORT_COMPARISON_H
#define REPORT_COMPARISON_H
#include "finding.h"
#include "text.h"

struct compared_side {
    const char *name; /* "marrow-bay+lantern-roofworks" */
    bool has_date;
    struct date on;
};

struct compared_book {
    const char *name;
    bool was_there, is_there;
    const char *was, *is; /* editions, or NULL */
};

enum rule_change {
    RULE_ADDED,    /* it is in no book of the old side */
    RULE_RESTORED, /* it was deleted */
    RULE_GONE,     /* it is in no book of the new side */
    RULE_DELETED,  /* it is in one, and deleted */
    RULE_REWRITTEN,
    RULE_CITED /* only its citation is another */
};

struct compared_rule {
    enum rule_change change;
    const char *id, *title;
    const char *was_cite, *is_cite; /* NULL: not there */
    const char *by;                 /* "marrow-bay deletes it from 2025-05-01, …", or NULL */
};

enum tightening { TIGHTENING_UNKNOWN, TIGHTENED, LOOSENED };

struct compared_value {
    const char *name, *says;    /* says: or NULL */
    const char *was, *is;       /* numbers as people read them; NULL: none in force */
    const char *was_by, *is_by; /* "irc 2021, R324.6.2"; NULL: the stack has no such value */
    struct place was_place, is_place;
    enum tightening tightening;
    bool is_cited_only; /* the number is the same */
    const char *next;   /* day from which the new side has one; or NULL */
};

/* A finding as the exit code sees it. */
enum standing {
    STANDING_NONE, /* that side says nothing of the thing by this rule */
    STANDING_FAIL,
    STANDING_ADVICE, /* a `should` fails */
    STANDING_WAIVED,
    STANDING_OPEN,
    STANDING_REVIEW,
    STANDING_SIGNED,
    STANDING_PASS,
    STANDING_INFORMATIONAL,
    STANDING_NOT_APPLICABLE,
    STANDING_COUNT
};

struct compared_finding {
    const char *rule, *title, *about; /* "roof_plane south" */
    enum standing was, is;
    const char *was_message, *is_message; /* NULL where it says nothing */
    struct place place;
};

struct comparison_counts {
    size_t paired; /* on both sides */
    size_t newly_fail, no_longer_fail, newly_open, newly_for_person;
    size_t added, gone;   /* findings of the one side alone */
    size_t other_numbers; /* the same outcome for another reason or with other numbers */
};

struct compared_design {
    const char *path;
    bool is_compared;                  /* false: one side could not be made, problems say why */
    struct compared_finding *findings; /* those whose outcome is another */
    size_t finding_count, finding_capacity;
    struct comparison_counts counts;
};

/* All of it lives in its arena. */
struct comparison {
    struct arena *arena;
    struct compared_side was, is;
    bool has_books; /* false: the books of a side could not be had, so nothing is said of them */
    struct compared_book *books;
    struct compared_rule *rules;
    struct compared_value *values;
    size_t book_count, book_capacity, rule_count, rule_capacity, value_count, value_capacity;
    struct compared_design *designs;
    size_t design_count;
};

const char *standing_name(enum standing standing);       /* "fail", "signed" … */
const char *rule_change_name(enum rule_change change);   /* "added" … */
const char *tightening_name(enum tightening tightening); /* "stricter", "looser"; NULL */
struct comparison_counts comparison_count(const struct comparison *comparison);
/* 1: something newly fails; 2: something is newly open or for a person; else 0. */
int comparison_code(const struct comparison *comparison);
/* Each adds to `out`; false: no memory. */
bool comparison_write_text(struct text *out, const struct comparison *comparison);
bool comparison_write_json(struct text *out, const struct comparison *comparison,
                           const struct problems *problems);

#endif
