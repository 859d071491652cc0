#include "scan.h"
#include "lines.h"
#include "text.h"
#include <string.h>

enum {
    BINARY_COUNT = 8,  /* more bad bytes than this … */
    BINARY_SHARE = 10, /* … and more than one in ten: no text at all */
};

/* C1 controls, line ends no editor counts, marks that turn the direction of what follows so that a
 * line reads otherwise than it is, the byte order mark, and what Unicode keeps for no character. */
static enum bad_kind point_kind(unsigned point)
{
    if (point == 0x85 || point == 0x2028 || point == 0x2029)
        return BAD_BREAK;
    if (point < 0xA0 || point == 0xFFFE || point == 0xFFFF)
        return BAD_CONTROL;
    if ((point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069))
        return BAD_DIRECTION;
    return point == 0xFEFF ? BAD_MARK : BAD_NOTHING;
}

static struct bad_byte look_at_point(const char *bytes, size_t length, size_t offset)
{
    unsigned char lead = (unsigned char)bytes[offset];
    size_t size = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    struct bad_byte bad = {BAD_UTF8, offset, 1, lead};
    size_t at;
    if (size > length - offset || !text_is_utf8(bytes + offset, size, &at)) {
        /* What would have belonged to it is told with it. */
        while (bad.length < size && bad.length < length - offset &&
               ((unsigned char)bytes[offset + bad.length] & 0xC0) == 0x80)
            bad.length++;
        return bad;
    }
    unsigned point = lead & (0x7Fu >> size);
    for (size_t i = 1; i < size; i++)
        point = point << 6 | ((unsigned char)bytes[offset + i] & 0x3Fu);
    return (struct bad_byte){point_kind(point), offset, size, point};
}

bool bad_byte_find(struct bad_byte *out, const char *bytes, size_t length, size_t from)
{
    for (size_t at = from; at < length;) {
        at += text_plain_length(bytes + at, length - at);
        if (at == length)
            break;
        unsigned char byte = (unsigned char)bytes[at];
        if (byte == '\n' || byte == '\t' || byte == '\r') {
            at++;
            continue;
        }
        *out = byte >= 0x80 ? look_at_point(bytes, length, at)
                            : (struct bad_byte){byte ? BAD_CONTROL : BAD_NUL, at, 1, byte};
        if (out->kind != BAD_NOTHING)
            return true;
        at += out->length;
    }
    return false;
}

const char *bad_kind_words(enum bad_kind kind)
{
    static const char *const words[] = {
        [BAD_NOTHING] = "character",
        [BAD_NUL] = "NUL character",
        [BAD_CONTROL] = "control character",
        [BAD_BREAK] = "line break that editors do not count,",
        [BAD_DIRECTION] = "mark that turns the direction of the text,",
        [BAD_MARK] = "byte order mark",
        [BAD_UTF8] = "byte",
    };
    return words[kind];
}

static void tell_bad_byte(struct reading *reading, const struct bad_byte *bad)
{
    static const char *const codes[] = {
        [BAD_NUL] = "nul-character",       [BAD_CONTROL] = "control-character",
        [BAD_BREAK] = "control-character", [BAD_DIRECTION] = "control-character",
        [BAD_MARK] = "byte-order-mark",    [BAD_UTF8] = "not-utf-8",
    };
    struct place place = offset_place(reading->source, bad->offset);
    if (bad->kind == BAD_UTF8)
        tell_mistake(reading, codes[bad->kind], place, NULL,
                     "the byte 0x%02X is not UTF-8; save the file as UTF-8", bad->point);
    else
        tell_mistake(reading, codes[bad->kind], place, NULL,
                     "a %s U+%04X cannot stand in the file; remove it", bad_kind_words(bad->kind),
                     bad->point);
}

/* Two bytes to a character: by its mark, or because every other of the first bytes is NUL. */
static bool is_utf16(const struct source *source)
{
    const unsigned char *b = (const unsigned char *)source->bytes;
    if (source->length < 2)
        return false;
    if ((b[0] == 0xFF && b[1] == 0xFE) || (b[0] == 0xFE && b[1] == 0xFF))
        return true;
    return source->length >= 4 && !b[0] != !b[1] && !b[0] == !b[2] && !b[1] == !b[3];
}

static bool is_binary(const struct source *source)
{
    struct bad_byte bad;
    size_t count = 0, from = 0;
    while (bad_byte_find(&bad, source->bytes, source->length, from)) {
        count++;
        from = bad.offset + bad.length;
    }
    return count > BINARY_COUNT && count > source->length / BINARY_SHARE;
}

static bool refuse_whole(struct reading *reading, const char *code, const char *message)
{
    const char *const no_example = NULL;
    tell_mistake(reading, code, (struct place){NULL, 0, 0}, no_example, "%s", message);
    return false;
}

bool scan_bytes(struct reading *reading)
{
    struct source *source = reading->source;
    if (source->length > YAML_BYTES)
        return refuse_whole(reading, "file-large", "the file is larger than 1 MiB");
    if (is_utf16(source))
        return refuse_whole(reading, "not-utf-8", "the file is UTF-16; save it as UTF-8");
    if (source->length >= 3 && memcmp(source->bytes, "\xEF\xBB\xBF", 3) == 0) {
        source->bytes += 3;
        source->length -= 3;
    }
    struct bad_byte bad;
    if (!bad_byte_find(&bad, source->bytes, source->length, 0))
        return true;
    if (is_binary(source))
        return refuse_whole(reading, "not-text", "this is not a text file");
    do
        tell_bad_byte(reading, &bad);
    while (!reading->is_full &&
           bad_byte_find(&bad, source->bytes, source->length, bad.offset + bad.length));
    return false;
}
