#include "text.h"

#include <assert.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

void text_free(struct text *text)
{
    free(text->bytes);
    *text = (struct text){0};
}

void text_clear(struct text *text)
{
    text->length = 0;
    text->is_short = false;
    if (text->bytes)
        text->bytes[0] = '\0';
}

static bool widen(struct text *text, size_t more)
{
    size_t capacity = text->capacity < 128 ? 256 : text->capacity;
    while (capacity <= SIZE_MAX / 4 && capacity - text->length <= more)
        capacity *= 2;
    char *bytes = capacity - text->length > more ? realloc(text->bytes, capacity) : NULL;
    if (!bytes) {
        text->is_short = true;
        return false;
    }
    text->bytes = bytes;
    text->capacity = capacity;
    return true;
}

/* Room for `more` bytes and the NUL behind them. */
static inline bool text_widen(struct text *text, size_t more)
{
    return !text->is_short && (more < text->capacity - text->length || widen(text, more));
}

void text_add(struct text *text, const char *bytes, size_t length)
{
    if (!text_widen(text, length))
        return;
    if (length > 0)
        memcpy(text->bytes + text->length, bytes, length);
    text->length += length;
    text->bytes[text->length] = '\0';
}

char *text_room(struct text *text, size_t length)
{
    return text_widen(text, length) ? text->bytes + text->length : NULL;
}

void text_add_word(struct text *text, const char *word)
{
    text_add(text, word, strlen(word));
}

void text_add_format(struct text *text, const char *format, ...)
{
    va_list arguments;

    va_start(arguments, format);
    int length = vsnprintf(NULL, 0, format, arguments);
    va_end(arguments);
    assert(length >= 0);
    if (length < 0 || !text_widen(text, (size_t)length))
        return;

    va_start(arguments, format);
    vsnprintf(text->bytes + text->length, (size_t)length + 1, format, arguments);
    va_end(arguments);
    text->length += (size_t)length;
}

/* Bytes of the code point at the start; 0: not UTF-8. The ranges are table 3-7 of the Unicode
 * Standard (well-formed byte sequences). */
static size_t point_length(const unsigned char *bytes, size_t length)
{
    unsigned char first = bytes[0], low = 0x80, high = 0xBF;
    size_t wanted;

    if (first < 0x80)
        return 1;
    if (first < 0xC2 || first > 0xF4)
        return 0;
    wanted = first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
    if (first == 0xE0)
        low = 0xA0; /* overlong below */
    if (first == 0xED)
        high = 0x9F; /* surrogates above */
    if (first == 0xF0)
        low = 0x90;
    if (first == 0xF4)
        high = 0x8F; /* past U+10FFFF above */
    if (length < wanted || bytes[1] < low || bytes[1] > high)
        return 0;
    for (size_t i = 2; i < wanted; i++)
        if (bytes[i] < 0x80 || bytes[i] > 0xBF)
            return 0;
    return wanted;
}

/* Are all eight printable ASCII? No byte has its high bit set, is below 0x20 or is 0x7F; a borrow
 * from a byte below can only make it say no. */
static bool are_plain(uint64_t bytes)
{
    const uint64_t ones = 0x0101010101010101u, high = 0x80 * ones;
    return ((bytes | (bytes - 0x20 * ones) | ((bytes ^ 0x7F * ones) - ones)) & high) == 0;
}

size_t text_plain_length(const char *bytes, size_t length)
{
    size_t at = 0;
    uint64_t eight;

    for (; length - at >= sizeof eight; at += sizeof eight) {
        memcpy(&eight, bytes + at, sizeof eight);
        if (!are_plain(eight))
            break;
    }
    while (at < length && bytes[at] >= ' ' && bytes[at] <= '~')
        at++;
    return at;
}

size_t text_count_points(const char *bytes, size_t length)
{
    size_t points = 0, at = 0;

    for (;;) {
        size_t plain = text_plain_length(bytes + at, length - at);
        points += plain;
        at += plain;
        if (at == length)
            return points;
        size_t step = point_length((const unsigned char *)bytes + at, length - at);
        at += step > 0 ? step : 1;
        points++;
    }
}

bool text_is_utf8(const char *bytes, size_t length, size_t *at)
{
    for (size_t i = 0; i < length;) {
        size_t plain = text_plain_length(bytes + i, length - i);
        i += plain;
        if (i == length)
            break;
        size_t step = point_length((const unsigned char *)bytes + i, length - i);
        if (step == 0) {
            if (at)
                *at = i;
            return false;
        }
        i += step;
    }
    return true;
}

size_t text_cut(const char *bytes, size_t length, size_t most)
{
    if (length <= most)
        return length;

    size_t end = 0;
    while (end < most) {
        size_t step = point_length((const unsigned char *)bytes + end, length - end);
        if (end + (step > 0 ? step : 1) > most)
            break;
        end += step > 0 ? step : 1;
    }
    return end;
}

/* Bytes of the code point that such a byte begins; 0: it begins none of several. */
static size_t wanted_bytes(unsigned char byte)
{
    return byte < 0xC2 || byte > 0xF4 ? 0 : byte < 0xE0 ? 2 : byte < 0xF0 ? 3 : 4;
}

void text_mend(char *text)
{
    size_t at = text_plain_length(text, strlen(text)), kept = at;
    while (text[at] != '\0') {
        size_t length = 1, whole = wanted_bytes((unsigned char)text[at]);
        while (length < whole && ((unsigned char)text[at + length] & 0xC0) == 0x80)
            length++;
        bool is_cut = length < whole;
        for (size_t i = 0; i < length && !is_cut; i++)
            text[kept++] = text[at + i];
        at += length;
    }
    text[kept] = '\0';
}

void text_append(char *buffer, size_t size, const char *text)
{
    size_t used = strlen(buffer), length = strlen(text), room = size - used - 1;

    if (length > room)
        length = text_cut(text, length, room);
    memcpy(buffer + used, text, length);
    buffer[used + length] = '\0';
}
