/* yaml: a YAML file as a tree whose nodes know their place. The only room that knows libyaml. */
#ifndef YAML_TREE_H
#define YAML_TREE_H
#include "problem.h"

enum node_type { NODE_SCALAR, NODE_SEQUENCE, NODE_MAPPING };

/* A node belongs to its tree's arena. */
struct node {
    enum node_type type;
    bool is_plain; /* a scalar without quotes and no block text; no value at all is an empty one */
    struct place place;  /* where it begins */
    const char *text;    /* scalar: its text, UTF-8, ends in NUL; else NULL */
    size_t length;       /* scalar: bytes of text; else the number of items or pairs */
    struct node **items; /* sequence: items; mapping: key, value, key, value … */
};

/* A file that was read: its bytes stay so that an error can show the line. */
struct source {
    const char *path;
    const char *bytes;
    size_t length;
    struct node *root; /* NULL: the file says nothing (empty or comments only) */
};

enum {
    YAML_BYTES = 1 << 20,
    YAML_DEPTH = 32,
    YAML_NODES = 100000,
    YAML_SCALAR = 1 << 16,
    YAML_PROBLEMS = 20
};

/* Reads one file, or bytes under a name, into the arena. False: problems of weight PROBLEM_INPUT
 * say why, each with place, excerpt and, where it helps, a right example: too large, deep or many
 * nodes; anchors, aliases, tags, directives, a second document; NUL, control characters, bad UTF-8;
 * a key twice (citing both places); keys that are not one line of text; whatever libyaml refuses.
 * At most YAML_PROBLEMS and a closing one, in the order of their places. *out is set where the tree
 * can still be looked at (nothing but keys given twice: the first pair of each stays), else NULL.
 * Places and excerpts of problems live in the arena of the problems. A byte order mark at the start
 * is no part of the source. */
bool yaml_read_file(struct source **out, const char *path, struct arena *arena,
                    struct problems *problems);
bool yaml_read(struct source **out, const char *path, const char *bytes, size_t length,
               struct arena *arena, struct problems *problems);

/* The value under a key of a mapping, or NULL. */
struct node *node_find(const struct node *mapping, const char *key);
/* The text of line `line` (from 1) of the source, cut at 200 bytes, without its end; control
 * characters other than tabs and bytes that are not UTF-8 read '?'. NULL: no memory or no such
 * line. */
char *source_line(const struct source *source, unsigned line, struct arena *arena);

#endif
