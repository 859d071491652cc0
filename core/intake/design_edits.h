/* Facts of a design set anew before it is read: how a case says "the same house, but". */
#ifndef INTAKE_DESIGN_EDITS_H
#define INTAKE_DESIGN_EDITS_H
#include "model.h"
#include "tree.h"

enum design_edit_verb {
    EDIT_SETS,   /* facts of a thing get new values */
    EDIT_BLANKS, /* a fact is told by nobody; or, without a fact, the thing goes */
    EDIT_ADDS    /* lists of a thing get more items */
};

struct design_edit {
    enum design_edit_verb verb;
    const struct node *at; /* what names the thing: "roof_plane south" */
    enum kind_id kind;
    const char *name; /* "south", "main/pv"; "": of a kind that stands once in what holds it */
    const struct node *facts; /* SETS, ADDS: the mapping; its key `thing` is no fact */
    const char *fact;         /* BLANKS: or NULL */
};

struct design_edits {
    struct design_edit *items;
    size_t count, capacity;
    const struct source *source; /* where they are written */
};

struct design_reader;

/* Reads "roof_plane south" into kind and name of an edit. False: there is no such kind. */
bool design_edit_name(struct design_edit *edit, const char *text, struct arena *arena);
/* Applies the edits that name things in this tree: that of a design, or of a catalogue, which holds
 * models alone. Marks in `is_done` (one per edit) those that found their thing. */
void design_edits_apply(const struct design_edits *edits, bool *is_done, struct node *root,
                        bool is_catalogue, struct arena *arena);
/* Complains of those that found nothing. */
void design_edits_complain(const struct design_edits *edits, const bool *is_done,
                           struct design_reader *reader);

#endif
