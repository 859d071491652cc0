/* rulebook, inside the room: what books say about rules, checked, before it is weighed. */
#ifndef RULEBOOK_CHANGES_H
#define RULEBOOK_CHANGES_H
#include "resolving.h"

/* One change of one book about a rule that is there. */
struct weighed {
    size_t book; /* whose change it is */
    size_t rule; /* in rulebook->rules */
    const struct change *change;
    enum edition_fit fit;
};

struct weighed_list {
    struct weighed *items; /* by book, lowest first, then as written */
    size_t count, capacity;
};

/* All changes of the stack about rules in force, each mistake told. False: no memory. */
bool weigh_changes(struct resolving *resolving, struct weighed_list *list);
/* "the change of irc/second-pathway". Never NULL. */
const char *change_words(struct resolving *resolving, const struct change *change);
/* "irc" of "irc/second-pathway". Never NULL. */
const char *book_part(struct resolving *resolving, const char *id);
/* The number of the book whose rule it is, by the id's part before the slash; or NO_BOOK. */
size_t rule_book(const struct resolving *resolving, const char *id);

#endif
