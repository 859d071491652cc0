/* yaml: where a line of the file stands. Lines end in LF, CR LF or CR, as libyaml counts them. */
#ifndef YAML_LINES_H
#define YAML_LINES_H
#include "tree.h"

/* The bytes of one line, without its end. */
struct line {
    const char *bytes;
    size_t length;
};

/* False: the file has no such line. Lines count from 1. */
bool line_find(struct line *out, const struct source *source, unsigned line);
/* The byte at a place; the length of the file where the place is past its end. */
size_t place_offset(const struct source *source, struct place place);
/* The place of a byte. */
struct place offset_place(const struct source *source, size_t offset);

#endif
