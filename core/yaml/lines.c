#include "lines.h"
#include "text.h"
#include <string.h>

enum { SHOWN_BYTES = 200 };

/* Bytes up to the next line end. */
static size_t line_length(const struct source *source, size_t from)
{
    size_t at = from;
    while (at < source->length && source->bytes[at] != '\n' && source->bytes[at] != '\r')
        at++;
    return at - from;
}

/* The first byte behind the line end at `at`. */
static size_t after_line_end(const struct source *source, size_t at)
{
    bool is_pair =
        source->bytes[at] == '\r' && at + 1 < source->length && source->bytes[at + 1] == '\n';
    return at + (is_pair ? 2 : 1);
}

bool line_find(struct line *out, const struct source *source, unsigned line)
{
    size_t from = 0;
    for (unsigned number = 1;; number++) {
        size_t length = line_length(source, from);
        if (number == line) {
            *out = (struct line){source->bytes + from, length};
            return true;
        }
        if (from + length >= source->length)
            return false;
        from = after_line_end(source, from + length);
    }
}

/* Is this byte inside a code point that an earlier byte began? */
static bool is_inside_point(char byte)
{
    return ((unsigned char)byte & 0xC0) == 0x80;
}

size_t place_offset(const struct source *source, struct place place)
{
    struct line line;
    if (!line_find(&line, source, place.line))
        return source->length;
    size_t at = 0;
    for (unsigned column = 1; column < place.column && at < line.length; column++) {
        at++;
        while (at < line.length && is_inside_point(line.bytes[at]))
            at++;
    }
    return (size_t)(line.bytes - source->bytes) + at;
}

struct place offset_place(const struct source *source, size_t offset)
{
    struct place place = {source->path, 1, 1};
    size_t from = 0;
    for (;;) {
        size_t end = from + line_length(source, from);
        size_t next = end < source->length ? after_line_end(source, end) : source->length + 1;
        if (offset < next) {
            place.column = (unsigned)text_count_points(source->bytes + from, offset - from) + 1;
            return place;
        }
        from = next;
        place.line++;
    }
}

/* What a terminal may be shown of a line: a control character, or a byte that is no UTF-8, is '?'.
 */
static void clean(char *text, size_t length)
{
    for (size_t i = 0; i < length; i++) {
        unsigned char byte = (unsigned char)text[i];
        if ((byte < 0x20 && byte != '\t') || byte == 0x7F)
            text[i] = '?';
        if (byte == 0xC2 && i + 1 < length && (unsigned char)text[i + 1] < 0xA0)
            text[i] = text[i + 1] = '?';
    }
    for (size_t done = 0, bad = 0; done < length; done += bad + 1) {
        if (text_is_utf8(text + done, length - done, &bad))
            return;
        text[done + bad] = '?';
    }
}

char *source_line(const struct source *source, unsigned line, struct arena *arena)
{
    struct line found;
    if (!line_find(&found, source, line))
        return NULL;
    size_t length = text_cut(found.bytes, found.length, SHOWN_BYTES);
    char *text = arena_copy(arena, found.bytes, length);
    if (text)
        clean(text, length);
    return text;
}
