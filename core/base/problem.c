#include "problem.h"

#include "text.h"

struct problem *problems_add(struct problems *problems, enum problem_weight weight,
                             const char *code, struct place place, const char *format, ...)
{
    va_list arguments;

    va_start(arguments, format);
    char *message = arena_format_list(problems->arena, format, arguments);
    va_end(arguments);
    if (message)
        text_mend(message); /* names are quoted up to some bytes */

    struct problem *items = NULL;
    if (message)
        items = arena_grow(problems->arena, problems->items, problems->count, &problems->capacity,
                           sizeof *items);
    if (!items) {
        problems->dropped++;
        return NULL;
    }
    problems->items = items;

    struct problem *problem = &items[problems->count++];
    *problem = (struct problem){.weight = weight, .code = code, .place = place, .message = message};
    return problem;
}
