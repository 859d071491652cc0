/* Answers kept for one review, so that the same question is not worked out twice: those of free
 * calculators, whose results follow from the inputs alone, and those of methods that have noted
 * their facts before they look here. Nothing is kept while steps are written down: then the working
 * is told each time in full. */
#ifndef CALC_KEPT_H
#define CALC_KEPT_H
#include "calculator.h"

/* Frees what was kept; NULL is fine. */
void kept_free(struct kept *kept);
/* The results given to these inputs before, or NULL. `about` is NULL for a free calculator. */
const struct amount *kept_find(const struct kept *kept, const struct calculator *calculator,
                               const struct object *about, const struct amount *inputs);
/* Keeps results. What finds no room, or shows text as written, is not kept. */
void kept_add(struct kept **kept, const struct calculator *calculator, const struct object *about,
              const struct amount *inputs, const struct amount *results);

#endif
