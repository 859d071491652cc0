/* Text that grows. Once memory is short it stays short: later additions do nothing, and the owner
 * asks once, at the end. */
#ifndef BASE_TEXT_H
#define BASE_TEXT_H
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <string.h>

struct text {
    char *bytes; /* ends in NUL; NULL while nothing was added */
    size_t length, capacity;
    bool is_short;
};

/* Do both say the same? Few that differ have the same first byte, which is seen at once. */
static inline bool text_is_same(const char *a, const char *b)
{
    if (a[0] != b[0] || a[0] == '\0')
        return a[0] == b[0];
    return a[1] == b[1] && strcmp(a, b) == 0; /* most that begin alike go on otherwise */
}

void text_free(struct text *text);
void text_clear(struct text *text);
void text_add(struct text *text, const char *bytes, size_t length);
void text_add_word(struct text *text, const char *word);
/* Room for `length` more bytes, to be written at the place returned and then counted to the length.
 * NULL: no memory, and the text is short. */
char *text_room(struct text *text, size_t length);
void text_add_format(struct text *text, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* Bytes at the start that are plain: printable ASCII, from space to tilde. Nearly all of a text is.
 */
size_t text_plain_length(const char *bytes, size_t length);
/* Code points in UTF-8 text; bytes that are not UTF-8 count one each. */
size_t text_count_points(const char *bytes, size_t length);
/* Is all of it well-formed UTF-8 (no surrogates, no overlong forms)? If not, *at is the first bad
 * byte. */
bool text_is_utf8(const char *bytes, size_t length, size_t *at);
/* The most bytes, `most` at most, that end at the end of a code point. */
size_t text_cut(const char *bytes, size_t length, size_t most);
/* Takes out what is left of code points that were cut in two, as a precision of printf does. */
void text_mend(char *text);
/* Adds to the text in a buffer of `size` bytes what fits, up to the end of a code point. */
void text_append(char *buffer, size_t size, const char *text);
/* Edit distance for suggestions (two neighbours swapped are one edit), at most `limit` + 1. */
size_t text_distance(const char *a, const char *b, size_t limit);
/* The same word in other letter case, else the nearest of `count` words within length/3 edits, or
 * NULL. */
const char *text_find_near(const char *word, const char *const *words, size_t count);
/* The only one of `count` words that has the part as a word of its own ("branch": "microinverter
 * branch"), else the only one that begins with it, else the only one with it anywhere; NULL: none.
 */
const char *text_find_part(const char *part, const char *const *words, size_t count);

/* Bytes of the number that the text begins with, 0: it begins with none. */
size_t number_length(const char *bytes, size_t length);
/* A finite decimal number that takes up the whole of the text: [+-]digits[.digits][e[+-]digits].
 * Free of any locale. False: not such a number, longer than 64 bytes, or beyond what a double
 * holds (too large, or so small that digits would be lost). */
bool number_read(double *out, const char *bytes, size_t length);
/* The shortest of 1 to 12 significant digits that gives the number back to 12 digits; "-0" is "0".
 * The number must be finite. Buffer of at least 32 bytes. */
void number_write(char *buffer, size_t size, double number);
/* The same with `most` significant digits, 1 to 12. Plain from 1e-5 up to 1e15, else as 1.5e-7. */
void number_write_digits(char *buffer, size_t size, double number, int most);

#endif
