/* Answers kept for one review, so that the same question is not worked out twice. Those of free
 * calculators follow from the inputs alone; with those of methods the facts are kept that were
 * read, and noted again with each telling: another finding rests on them too. Where steps are
 * written down, an answer keeps its own and they are told again with it. */
#ifndef CALC_KEPT_H
#define CALC_KEPT_H
#include "calculator.h"

/* Frees what was kept; NULL is fine. */
void kept_free(struct kept *kept);
/* Was this asked before? Then results, readings and steps are told again as they were. `about` is
 * NULL for a free calculator. */
bool kept_tell(struct amount *results, const struct calculator *calculator,
               const struct object *about, const struct amount *inputs, struct working *working);
/* Keeps results, the steps from `first_step` on and, about a thing, what the innermost piece of
 * work has read, and returns that. What finds no room, shows text as written, or has steps that do
 * not last as long, is not kept: NULL. */
struct readings *kept_add(const struct calculator *calculator, const struct object *about,
                          const struct amount *inputs, const struct amount *results,
                          size_t first_step, struct working *working);

#endif
