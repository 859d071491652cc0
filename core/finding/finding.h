/* finding: what one rule says of one thing, with every pair it compared, and the algebra of
 * outcomes. */
#ifndef FINDING_FINDING_H
#define FINDING_FINDING_H
#include "book.h"

/* Worst first; the words are SARIF 2.1.0's. Within a check or an option the first that occurs
 * decides. */
enum outcome {
    OUTCOME_FAIL,
    OUTCOME_OPEN,
    OUTCOME_REVIEW,
    OUTCOME_PASS,
    OUTCOME_INFORMATIONAL,
    OUTCOME_NOT_APPLICABLE,
    OUTCOME_COUNT
};

enum relation {
    RELATION_NOT_EXCEED, /* actual <= limit */
    RELATION_AT_LEAST,   /* actual >= limit */
    RELATION_LESS_THAN,  /* actual < limit */
    RELATION_MORE_THAN,  /* actual > limit */
    RELATION_EQUAL,      /* the same amount */
    RELATION_BE,         /* a yes/no that must be yes */
    RELATION_ONE_OF,     /* a group of alternatives */
    RELATION_REVIEW,     /* no comparison: a person must judge; `what` says what */
    RELATION_MISSING,    /* no comparison: a fact or value was not there */
    RELATION_BROKEN      /* no comparison: the rule could not be run to its end */
};

enum normative { SHALL, SHOULD };

/* A fact that nobody told, and where to tell it. */
struct missing {
    const char *fact;    /* "roof_plane south: slope" or "value ground_snow_load" */
    const char *example; /* "slope: 4/12", or NULL */
    struct place place;
};

struct test;

struct option {
    const char *name;
    enum outcome outcome;
    struct test *tests;
    size_t test_count, test_capacity;
};

/* One compared pair, a group of alternatives, or the reason why there is no comparison. */
struct test {
    const char *what;
    enum relation relation;
    enum normative normative;
    enum outcome outcome;
    struct amount actual, limit; /* AMOUNT_NONE where there is none */
    const struct unit *unit;     /* to show both in, or NULL */
    bool has_margin;
    double margin;          /* distance inside the limit as a share of it; negative: outside */
    struct missing missing; /* RELATION_MISSING */
    struct option *options; /* RELATION_ONE_OF */
    size_t option_count;
};

/* A fact that findings rest on. */
struct input {
    size_t number;      /* among those of the review */
    const char *kind;   /* "busbar"; NULL: there is only one */
    const char *thing;  /* "main"; NULL: of the design itself */
    const char *fact;   /* "rating"; NULL: that there is such a thing */
    struct amount is;   /* AMOUNT_NONE: missing, or a list */
    const char *text;   /* as people read it */
    const char *source; /* measured, data sheet …; or NULL */
    bool is_assumed;
    const char *assumed_why;
    struct place place;
};

/* A step of the working: see calc's steps. */
struct line {
    const char *text, *source;
};

struct signoff; /* signoff.h of design */

struct finding {
    const struct rule *rule;
    const char *title;
    const char *cite; /* as it is in the edition in force */
    enum outcome outcome;
    enum normative normative;
    const char *about_kind,
        *about_name;     /* "busbar", "main/bus"; of the whole: "design" and its name */
    struct place place;  /* of that thing in the design */
    const char *message; /* NULL: not yet said (findings_say) */
    const char *remedy;  /* or NULL */
    struct test *tests;
    size_t test_count, test_capacity;
    const struct input **inputs; /* shared by all findings that rest on the fact */
    size_t input_count;
    const struct value **values; /* that decided, each once, in the order of first reading */
    size_t value_count, value_capacity;
    struct line *working;
    size_t line_count;
    const struct waiver *waiver;   /* lifts a failed shall; or NULL */
    const struct signoff *signoff; /* accepts what is for a person; or NULL */
    size_t order; /* rule's place in the rulebook, then thing's place: the order of findings */
};

/* All findings of one review; in its arena. */
struct findings {
    struct arena *arena;
    struct finding **items;
    size_t count, capacity;
    const struct input **inputs; /* that any of them rests on, each once */
    size_t input_count, input_capacity;
    const struct book_text **rule_texts; /* of the rules that were run, as they were read; those
                                            last as long as the judge */
    size_t rule_text_count, rule_text_capacity;
};

struct finding_counts {
    size_t of[OUTCOME_COUNT];
    size_t failing_should, waived; /* among the fails; neither decides the exit code */
    size_t signed_off;             /* among what is for a person; they do not decide it either */
};

const char *outcome_name(enum outcome outcome);    /* "pass", "notApplicable" … */
const char *relation_name(enum relation relation); /* "not_exceed" … */

/* fail > open > review > pass; over no tests: OUTCOME_COUNT (nothing was recorded). */
enum outcome tests_outcome(const struct test *tests, size_t count);
/* pass if any option passes, else open, else review, else fail. */
enum outcome options_outcome(const struct option *options, size_t count);
/* The least margin among compared pairs (a group counts with its best option's). False: there is
 * none to tell, because nothing compared has one, because it is open or for review, or because what
 * fails has none (a yes/no beside a pair that holds). */
bool tests_margin(double *out, const struct test *tests, size_t count);
/* The margin of the best option: the widest among those that pass, else the nearest miss. */
bool options_margin(double *out, const struct option *options, size_t count);
/* Is the failing part a shall? A finding fails as `error` if any failing test is a shall, else as
 * `warning`. */
enum normative tests_normative(const struct test *tests, size_t count);
/* Judges a pair by the house's comparison and sets outcome and margin; amounts of different types
 * or dimensions: false and *fault. */
bool test_judge(struct test *test, struct quantity_fault *fault);
/* Sets the outcome of each option of a group from its tests, then outcome and margin of the group.
 * False: an option recorded nothing, which is a broken rule. */
bool test_settle_group(struct test *group);

/* A new test at the end of a list; NULL: no memory. */
struct test *test_add(struct test **tests, size_t *count, size_t *capacity, struct arena *arena);
/* A new finding at the end; NULL: no memory. */
struct finding *finding_add(struct findings *findings);
/* "busbar main: rating", "service: rating", "title". NULL: no memory. */
const char *input_name(const struct input *input, struct arena *arena);
/* The same of `count` things: "module low-1 and 3 more: status". NULL: no memory. */
const char *input_names(const struct input *input, size_t count, struct arena *arena);
/* A new input for findings to share. NULL: no memory. */
struct input *findings_add_input(struct findings *findings);
/* What is compared with what, both in one unit and with as many digits as it takes to tell them
 * apart. Buffers of at least 128 bytes. */
void test_write_amounts(char *actual, char *limit, size_t size, const struct test *test);
/* "32 %", of a margin without its sign. Buffer of at least 40 bytes. */
void margin_write(char *buffer, size_t size, double margin);
/* One test as a sentence without a full stop; NULL: no memory. */
const char *test_sentence(const struct test *test, struct arena *arena);
/* The test that decides a finding: of the worst outcome the first by weight (shall before should)
 * and margin (least first); of a group the group itself. NULL: there is none. */
const struct test *tests_deciding(const struct test *tests, size_t count);
/* The option that stands for a group: one that decides its outcome, the widest margin first (a yes
 * or no that fails misses by the whole). NULL: there is none. */
const struct option *options_best(const struct option *options, size_t count);
/* One sentence for a finding that has its tests: what decides, with numbers. NULL: no memory. */
const char *finding_message(const struct finding *finding, struct arena *arena);
/* The message of every finding that has none yet. False: no memory. */
bool findings_say(struct findings *findings);
struct finding_counts findings_count(const struct findings *findings);
/* "nec/busbar|busbar:main". NULL: no memory. */
const char *finding_fingerprint(const struct finding *finding, struct arena *arena);
/* Order of books, rules and places; never of a hash. */
void findings_sort(struct findings *findings);
/* Hangs waivers on the fails that they lift; unused, orphaned and not yet or no longer valid ones
 * are problems (PROBLEM_NOTE). A waiver that names a permit lifts nothing but under that permit;
 * `permit` is the design's (NULL: not given). False: no memory. */
bool findings_waive(struct findings *findings, const struct rulebook *rulebook, const char *permit,
                    struct problems *problems);

/* Has the finding something open or for a person, under whatever its outcome is? A failing `should`
 * hides it from the outcome, not from the exit code. */
bool finding_is_unsettled(const struct finding *finding);
/* The exit code that findings (NULL: none) and problems lead to: the first that happened of 64, 74,
 * 70, 3, 4, 1, 2, 0. */
int exit_code(const struct findings *findings, const struct problems *problems,
              bool any_rule_in_force);
/* Does at least one rule hold? NULL: no. */
bool any_rule_holds(const struct rulebook *rulebook);
/* Of two exit codes the one that comes first in that order. */
int exit_code_first(int a, int b);

#endif
