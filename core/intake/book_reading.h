/* intake, inside the room: a book's folder while it is being read. */
#ifndef INTAKE_BOOK_READING_H
#define INTAKE_BOOK_READING_H
#include "book.h"
#include "complain.h"

struct book_reader {
    struct complaints complaints; /* of the file being read */
    struct arena *arena;
    struct problems *problems;
    struct book *book;
    size_t value_capacity, text_capacity, rule_capacity;
    size_t adoption_capacity, change_capacity, waiver_capacity;
};

/* Reads the folder at `directory` into *out, as far as it can be read. False: problems say why;
 * *out is NULL where book.yaml could not be read at all. */
bool book_read(struct book **out, const char *directory, struct arena *arena,
               struct problems *problems);

/* ---- nodes (book_nodes.c) ----------------------------------------------------------------- */

/* Tells every key of the mapping that is not known; `what` names them: "key of a book". False: it
 * is no mapping, told. `keys` ends in NULL. */
bool check_keys(struct book_reader *reader, const struct node *node, const char *what,
                const char *const *keys, const char *example);
/* The value of a key where it is text that says something. NULL: told, or not there; what is not
 * there is told where `example` is given. */
const char *find_text(struct book_reader *reader, const struct node *mapping, const char *key,
                      const char *example);
/* The thing of a key `about`, as "roof_plane:south". NULL as above, or told as no such name. */
const char *find_about(struct book_reader *reader, const struct node *mapping, const char *example);
/* The same for a day; year 0: none. `example` NULL: it may be missing. */
struct date find_date(struct book_reader *reader, const struct node *mapping, const char *key,
                      const char *example);
/* The value of a key where it is a list, else NULL (told). */
const struct node *find_list(struct book_reader *reader, const struct node *mapping,
                             const char *key, const char *example);
/* The texts of a list, ends in NULL; each twice is told. Never NULL but for want of memory. */
const char *const *read_texts(struct book_reader *reader, const struct node *list,
                              const char *what);
/* Is it letters, digits, - and _, beginning with a letter or digit? */
bool is_plain_name(const char *text);
/* An end on or before its beginning is told, at the key `repealed`. */
void check_period(struct book_reader *reader, const struct node *mapping, struct date from,
                  struct date end, const char *key);

/* ---- the parts ---------------------------------------------------------------------------- */

/* Adds one file to those whose lines can be shown later. */
void keep_source(struct book_reader *reader, const struct source *source);

void read_adoptions(struct book_reader *reader, const struct node *list);
void read_changes(struct book_reader *reader, const struct node *list, enum change_verb verb);
void read_waivers(struct book_reader *reader, const struct node *list);
/* `values:` of book.yaml, or the whole of values.yaml. */
void read_values(struct book_reader *reader, const struct node *mapping);
/* The entries of one value: a list, or a mapping of editions. */
void read_entries(struct book_reader *reader, struct book_value *value, const struct node *list);
void read_editions(struct book_reader *reader, struct book_value *value,
                   const struct node *mapping);
void check_series(struct book_reader *reader, const struct book_value *value);
/* The .lua files of the folder. */
void read_rule_files(struct book_reader *reader);

#endif
