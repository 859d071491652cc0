/* What the cases of a book show of it, for people and for programs. */
#ifndef REPORT_PROOF_H
#define REPORT_PROOF_H
#include "finding.h"
#include "text.h"

/* One case as it came out. */
struct proof_case {
    const char *rule, *says, *books; /* "irc@2021" */
    const char *wrong;               /* what is otherwise than expected; NULL: nothing */
    struct place place;
};

/* What no case shows. */
enum lack_kind { LACK_CASE, LACK_OPTION, LACK_VALUE };
struct proof_lack {
    enum lack_kind kind;
    const char *thing; /* the rule's id, or the value's name */
    const char *lacks; /* "a passing and an open case", the option's name; of a value NULL */
    struct place place;
};

/* A value or a limit one step elsewhere, and whether a case comes out otherwise then. */
struct proof_move {
    const char *thing; /* "value pathway_width", "irc/dead-load line 12" */
    const char *how;   /* "a step up", "turned round", "heated instead" */
    bool is_tried;     /* false: no case comes to it */
    bool is_noticed;
    struct place place;
};

struct proof {
    struct arena *arena;
    const char *book, *title;
    bool is_read; /* else a problem says why, and there is nothing to count */
    size_t rule_count;
    struct proof_case *cases;
    size_t case_count, case_capacity;
    struct proof_lack *lacks;
    size_t lack_count, lack_capacity;
    bool is_stirred;
    struct proof_move *moves;
    size_t move_count, move_capacity;
};

size_t proof_count_wrong(const struct proof *proof);
size_t proof_count_noticed(const struct proof *proof);
/* Each adds to `out`; false: no memory. JSON is one document over all books. */
bool proof_write_text(struct text *out, const struct proof *proof);
bool proof_write_json(struct text *out, const struct proof *proofs, size_t count,
                      const struct problems *problems);

#endif
