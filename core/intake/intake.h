/* intake: YAML into designs and books, every complaint with its place and a right example. */
#ifndef INTAKE_INTAKE_H
#define INTAKE_INTAKE_H
#include "book.h"
#include "design.h"
#include "tree.h"

/* Where catalogue files are sought after the design's own folder: directories, ends in NULL. Those
 * read before, which a design may lean on, or NULL: each is read anew. */
struct catalogues {
    const char *const *directories;
    struct kept_sources *kept;
};

/* Reads a design with the catalogue files it names. False: problems say why (*out is NULL). The
 * design belongs to the arena. */
bool design_read(struct design **out, const char *path, const struct catalogues *catalogues,
                 struct arena *arena, struct problems *problems);

/* The same, with some facts set anew before they are read (NULL: none). What cannot be set is a
 * problem at the place of the edit. */
struct design_edits;
bool design_read_edited(struct design **out, const char *path, const struct catalogues *catalogues,
                        const struct design_edits *edits, struct arena *arena,
                        struct problems *problems);

/* All books that were asked for, each read once. Search order: `directories`, ends in NULL; a book
 * NAME is DIRECTORY/NAME or DIRECTORY/SHELF/NAME (codes/, towns/ and the like) with a book.yaml in
 * it; a name with a slash is the path of a folder. */
struct shelf;
/* NULL: no memory. The directories must outlive the shelf. */
struct shelf *shelf_new(const char *const *directories);
void shelf_free(struct shelf *shelf);
/* A book by name, read at the first asking. NULL: not there or not readable; a problem citing
 * `asked_at` (no file: the command line) says so, naming near names. A find_book for
 * rulebook_resolve. */
const struct book *shelf_find(void *shelf, const char *name, struct place asked_at,
                              struct problems *problems);
/* The paths of all book folders on the shelf's directories, by name; each name once (the first
 * found). */
bool shelf_list(char ***names, size_t *count, const struct shelf *shelf, struct arena *arena);

#endif
