/* review, inside the room: where books and catalogues are sought. */
#ifndef REVIEW_SEARCH_H
#define REVIEW_SEARCH_H
#include "arena.h"

/* The given directories (ends in NULL; may be NULL), then those of the installation, then those of
 * the source tree; ends in NULL. NULL: no memory. */
const char *const *search_books(const char *const *given, struct arena *arena);
const char *const *search_catalogues(const char *const *given, struct arena *arena);
/* Are they the same directories in the same order? */
bool search_is_same(const char *const *a, const char *const *b);

#endif
