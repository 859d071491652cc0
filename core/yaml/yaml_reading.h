/* yaml: one file while it is being read, and the mistakes told about it so far. */
#ifndef YAML_READING_H
#define YAML_READING_H
#include "tree.h"

struct reading {
    struct source *source;
    struct arena *arena; /* of the tree */
    struct problems *problems;
    const char *file;     /* the path, in the arena of the problems: they may outlive the tree */
    size_t before;        /* problems that stood there before this file */
    size_t told;          /* mistakes told, the closing one not counted */
    size_t keys_repeated; /* how many of them leave the tree fit to be looked at */
    bool is_full;         /* YAML_PROBLEMS were told and there was one more */
    bool is_short;        /* of memory */
};

/* Adds a problem of weight PROBLEM_INPUT with its excerpt. After YAML_PROBLEMS of them the next one
 * becomes a closing problem, and all later ones are silent. NULL: not added. */
struct problem *tell_mistake(struct reading *reading, const char *code, struct place place,
                             const char *example, const char *format, ...)
    __attribute__((format(printf, 5, 6)));
/* The same, with a second place that belongs to it. */
void complain_other(struct reading *reading, struct problem *problem, struct place other);
/* Puts the problems of this file in the order of their places and adds what memory made of it. */
void end_complaints(struct reading *reading);

#endif
