/* Words that are near a misspelt one. */
#include "text.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

enum { WORD_LONGEST = 128 }; /* longer words are never near each other */

static size_t least(size_t a, size_t b)
{
    return a < b ? a : b;
}

/* One row of the edit table: two neighbours swapped count as one edit. */
static size_t edit_row(const char *a, const char *b, size_t i, size_t width,
                       size_t rows[3][WORD_LONGEST + 1])
{
    size_t *before = rows[(i + 1) % 3], *above = rows[(i + 2) % 3], *row = rows[i % 3];
    size_t best = row[0] = i;

    for (size_t j = 1; j <= width; j++) {
        size_t cost = above[j - 1] + (a[i - 1] != b[j - 1]);
        cost = least(cost, least(above[j], row[j - 1]) + 1);
        if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
            cost = least(cost, before[j - 2] + 1);
        row[j] = cost;
        best = least(best, cost);
    }
    return best;
}

size_t text_distance(const char *a, const char *b, size_t limit)
{
    size_t height = strlen(a), width = strlen(b);
    size_t rows[3][WORD_LONGEST + 1];
    size_t apart = height > width ? height - width : width - height;

    if (apart > limit)
        return limit + 1;
    if (height > WORD_LONGEST || width > WORD_LONGEST)
        return strcmp(a, b) == 0 ? 0 : limit + 1;
    for (size_t j = 0; j <= width; j++)
        rows[0][j] = j;
    size_t best_above = 0;
    for (size_t i = 1; i <= height; i++) {
        size_t best = edit_row(a, b, i, width, rows);
        if (best > limit && best_above > limit) /* two rows: a swap may skip one */
            return limit + 1;
        best_above = best;
    }
    return least(rows[height % 3][width], limit + 1);
}

/* Do both begin and end alike but for one number ("2x9" and "2x10", "13 AWG" and "12 AWG")? Then
 * how far apart the last numbers are into `apart`. */
static bool is_number_apart(double *apart, const char *a, const char *b)
{
    size_t ends[2] = {strlen(a), strlen(b)};
    const char *words[2] = {a, b};
    size_t from[2], to[2];
    for (int i = 0; i < 2; i++) {
        to[i] = ends[i];
        while (to[i] > 0 && (words[i][to[i] - 1] < '0' || words[i][to[i] - 1] > '9'))
            to[i]--;
        from[i] = to[i];
        while (from[i] > 0 && words[i][from[i] - 1] >= '0' && words[i][from[i] - 1] <= '9')
            from[i]--;
        if (from[i] == to[i])
            return false;
    }
    if (from[0] != from[1] || strncasecmp(a, b, from[0]) != 0 ||
        strcasecmp(a + to[0], b + to[1]) != 0)
        return false;
    *apart = fabs(strtod(a + from[0], NULL) - strtod(b + from[1], NULL));
    return true;
}

/* The word that differs from this one in its number alone, and least; NULL: there is none. */
static const char *find_near_number(const char *word, const char *const *words, size_t count)
{
    const char *nearest = NULL;
    double least_apart = 0, apart;
    for (size_t i = 0; i < count; i++)
        if (is_number_apart(&apart, word, words[i]) && (nearest == NULL || apart < least_apart)) {
            nearest = words[i];
            least_apart = apart;
        }
    return nearest;
}

static bool is_gap(char letter)
{
    return letter == '\0' || strchr(" _-/", letter) != NULL;
}

/* How many edits two names may be apart that share whole words at an end: no more than what is left
 * of the one bears, since "asphalt shingle" is no misspelt "metal shingle". */
static size_t edits_between(const char *word, const char *other)
{
    size_t length = strlen(word), left = strlen(other), before = 0, after = 0;
    for (size_t i = 0; i < length && i < left && word[i] == other[i]; i++)
        if (is_gap(word[i]))
            before = i + 1;
    for (size_t i = 1; i <= length - before && i <= left - before; i++) {
        if (word[length - i] != other[left - i])
            break;
        if (is_gap(word[length - i]))
            after = i;
    }
    size_t rest = length - before - after;
    return before + after == 0 ? length : rest < 6 ? 1 : rest / 3;
}

const char *text_find_near(const char *word, const char *const *words, size_t count)
{
    size_t length = strlen(word), limit = length / 3;
    const char *nearest = NULL;

    for (size_t i = 0; i < count; i++)
        if (strcasecmp(word, words[i]) == 0)
            return words[i];
    /* Any short word is one edit from any other: "E" is no misspelt "B". */
    if (length < 3)
        return NULL;
    nearest = find_near_number(word, words, count);
    if (nearest != NULL)
        return nearest;
    for (size_t i = 0; i < count; i++) {
        size_t distance = text_distance(word, words[i], limit);
        if (distance > limit || distance > edits_between(word, words[i]))
            continue;
        nearest = words[i];
        if (distance == 0)
            break;
        limit = distance - 1; /* the first of equals stays */
    }
    return nearest;
}
