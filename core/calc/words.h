/* The closed vocabularies as calculators' parameters take them: words_for_exposure and the like,
 * each ending in NULL, made from facts/words.facts so that they are said once. */
#ifndef CALC_WORDS_H
#define CALC_WORDS_H

#define VOCABULARY(id, ...) extern const char *const words_for_##id[];
#include "facts/words.facts"
#undef VOCABULARY

#endif
