/* How intake says what is wrong in a file: at a node, with the line and a right example. */
#ifndef INTAKE_COMPLAIN_H
#define INTAKE_COMPLAIN_H
#include "problem.h"
#include "tree.h"

/* One file's complaints. After YAML_PROBLEMS of them one more says so, and the rest is silent. */
struct complaints {
    const struct source *source;
    struct problems *problems;
    size_t told;
    const struct source *also; /* another file whose nodes may stand among those of this one */
};

/* Says what is wrong at a node (NULL: the file as a whole). `example` may be NULL. Returns false,
 * so that a reader can `return complain(…)`. */
bool complain(struct complaints *complaints, const struct node *node, const char *code,
              const char *example, const char *format, ...) __attribute__((format(printf, 5, 6)));
/* The same with a place `offset` bytes into a plain scalar. */
bool complain_inside(struct complaints *complaints, const struct node *node, size_t offset,
                     const char *code, const char *example, const char *format, ...)
    __attribute__((format(printf, 6, 7)));
/* The same citing a second place. */
bool complain_both(struct complaints *complaints, const struct node *node, struct place other,
                   const char *code, const char *format, ...) __attribute__((format(printf, 5, 6)));
/* An unknown word: suggests the near one, else lists what there is. `what` names it: "fact of
 * roof_plane". */
bool complain_unknown(struct complaints *complaints, const struct node *node, const char *code,
                      const char *what, const char *const *known, size_t count);
/* A word that is not in its list: the same, and where only a part of one was given, that one, too.
 */
bool complain_word(struct complaints *complaints, const struct node *node, const char *what,
                   const char *const *known, size_t count);
/* Checks the node's type and complains: "a list is needed here". */
bool expect_node(struct complaints *complaints, const struct node *node, enum node_type type,
                 const char *example);

#endif
