/* intake, inside the room: the shelf, and the folders where its books stand. */
#ifndef INTAKE_SHELF_FOLDERS_H
#define INTAKE_SHELF_FOLDERS_H
#include "intake.h"

/* A folder that was asked for, read once. */
struct shelf_book {
    const char *place; /* the real path of the folder, so that two ways to it are one */
    struct book *book; /* NULL: not readable */
};

struct shelf {
    const char *const *directories;
    struct arena *arena;
    struct shelf_book **books;
    size_t book_count, book_capacity;
    struct problems *told; /* what was found wrong in each, told again to whoever asks */
    size_t told_capacity;
};

/* Has the folder a book.yaml? */
bool is_book_folder(struct arena *arena, const char *directory);
/* The last part of a path: "codes/nec" → "nec". */
const char *folder_name(const char *path);
/* DIRECTORY/NAME, else DIRECTORY/(any)/NAME, of the first directory that has it; or NULL. */
const char *find_folder(const struct shelf *shelf, const char *name);

#endif
