#include "words.h"

#include <stddef.h>

#define VOCABULARY(id, ...) const char *const words_for_##id[] = {__VA_ARGS__, NULL};
#include "facts/words.facts"
#undef VOCABULARY
