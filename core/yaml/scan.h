/* yaml: what is wrong with the bytes of a file before anything is read into them. */
#ifndef YAML_SCAN_H
#define YAML_SCAN_H
#include "yaml_reading.h"

/* What bytes that stand in no text of ours are. */
enum bad_kind { BAD_NOTHING, BAD_NUL, BAD_CONTROL, BAD_BREAK, BAD_DIRECTION, BAD_MARK, BAD_UTF8 };

struct bad_byte {
    enum bad_kind kind;
    size_t offset;  /* where it begins */
    size_t length;  /* bytes it takes */
    unsigned point; /* the code point, or the byte for BAD_UTF8 */
};

/* The first bad byte or code point at or behind `from`. False: there is none. */
bool bad_byte_find(struct bad_byte *out, const char *bytes, size_t length, size_t from);
/* In the words of a person, for a message. */
const char *bad_kind_words(enum bad_kind kind);
/* Tells what is wrong with the bytes; false if anything is. Takes a byte order mark at the start
 * off the source. */
bool scan_bytes(struct reading *reading);

#endif
