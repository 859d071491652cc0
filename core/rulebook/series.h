/* rulebook, inside the room: all that the stack says of each value, put together by name. */
#ifndef RULEBOOK_SERIES_H
#define RULEBOOK_SERIES_H
#include "resolving.h"

/* One book's part in a value. */
struct giver {
    size_t book;
    const struct book_value *given;
    struct entry *live; /* a copy whose amounts are read, or NULL */
    bool is_stale;      /* written for another edition than the one in force */
};

/* All that the stack says of one name. */
struct series {
    const char *name;
    const struct book_value *declared; /* NULL: nobody declares it */
    size_t declared_by;
    struct giver *givers; /* lowest book first */
    size_t giver_count, giver_capacity;
    bool is_torn; /* declared twice, told */
};

struct all_series {
    struct series **items;
    size_t count, capacity;
    struct index index;
    const char **names; /* of those declared */
    size_t name_count;
};

/* Puts together what the books say, in byte order of the names. False: no memory. */
bool collect_series(struct resolving *resolving, struct all_series *all);
/* Tells of a name that nobody declares, unless a book does that is adopted on other days. */
void tell_undeclared(struct resolving *resolving, const struct all_series *all,
                     const struct series *series);

#endif
