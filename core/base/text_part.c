/* Words that are known by a part of them. */
#include "text.h"

#include <string.h>
#include <strings.h>

/* From the surest on: "branch" is one of the words of "microinverter branch", and only letters of
 * "combined branches". */
enum part { PART_WORD, PART_BEGINNING, PART_LETTERS, PARTS };

static bool holds(const char *whole, const char *part, size_t length, enum part how)
{
    size_t last = strlen(whole);
    for (size_t at = 0; at + length <= last; at++) {
        bool begins = at == 0 || whole[at - 1] == ' ';
        bool ends = at + length == last || whole[at + length] == ' ';
        if (strncasecmp(whole + at, part, length) == 0 &&
            (how == PART_LETTERS || (how == PART_BEGINNING && at == 0) ||
             (how == PART_WORD && begins && ends)))
            return true;
    }
    return false;
}

const char *text_find_part(const char *part, const char *const *words, size_t count)
{
    /* Fewer letters would be found by chance. */
    static const size_t least[PARTS] = {[PART_WORD] = 1, [PART_BEGINNING] = 2, [PART_LETTERS] = 3};
    size_t length = strlen(part);
    for (enum part how = PART_WORD; how < PARTS && length >= least[how]; how++) {
        const char *found = NULL;
        size_t holding = 0;
        for (size_t i = 0; i < count; i++)
            if (holds(words[i], part, length, how)) {
                found = words[i];
                holding++;
            }
        if (holding == 1)
            return found;
    }
    return NULL;
}
