/* What the files that read a design share. */
#ifndef INTAKE_DESIGN_READER_H
#define INTAKE_DESIGN_READER_H
#include "complain.h"
#include "design.h"
#include "design_edits.h"
#include "index.h"

/* A reference by name that waits until everything is read. */
struct pending {
    struct object *object;
    unsigned slot;
    const struct node *node;
    struct complaints *complaints; /* of the file it stands in */
};

/* Where the modules of a module row went. */
struct expansion {
    size_t first;
    size_t count;
    bool is_known; /* false: the row does not say how many */
};

struct design_reader {
    struct design *design;
    struct arena *arena;
    struct problems *problems;
    struct complaints *complaints;  /* of the file being read */
    struct index names[KIND_COUNT]; /* path → thing */
    struct pending *pending;
    size_t pending_count, pending_capacity;
    struct expansion *module_rows;    /* by the row's ordinal */
    const struct design_edits *edits; /* or NULL */
    bool *is_edited;                  /* by edit: has it found its thing? */
    bool lacks_catalogue;             /* one that is named was not found */
};

/* Reads a thing's facts from a mapping. Mistakes are complaints; reading goes on. */
void read_object(struct design_reader *reader, struct object *object, const struct node *node);
/* A right example of a fact; NULL: no memory. */
const char *example_of(struct design_reader *reader, const struct fact_row *row);
/* Is the node of the type that a fact takes? Else complains, with a right example. */
bool expect_value(struct design_reader *reader, struct complaints *complaints,
                  const struct node *node, enum node_type type, const struct fact_row *row);
/* Reads one fact that stands in its thing's own line: everything but ONE and LIST. */
void read_fact(struct design_reader *reader, struct object *object, unsigned slot,
               const struct node *node);
/* Reads a list of named things into a LIST fact, behind those that are in it already. */
void read_list(struct design_reader *reader, struct object *object, unsigned slot,
               const struct node *node);
/* Is the node the plain word `none`, or an empty list? */
bool node_is_none(const struct node *node);
/* Is nothing written behind the key? Then nobody has told the fact yet. */
bool node_is_blank(const struct node *node);

/* Resolves the references of rows of modules and attachments (`of_rows`), or all others. */
void resolve_references(struct design_reader *reader, bool of_rows);
/* Adds a thing at the end of a LIST fact. */
bool append_object(struct design_reader *reader, struct fact *list, struct object *object);
/* Adds a named thing; a name that is taken is a complaint at `node`. NULL: then, or no memory. */
struct object *add_named(struct design_reader *reader, enum kind_id kind, struct object *parent,
                         const char *name, const struct node *node);
/* Makes modules and attachments of their rows. */
void expand_rows(struct design_reader *reader);

#endif
