/* review, inside the room: a book while it is being linted. */
#ifndef REVIEW_LINTING_H
#define REVIEW_LINTING_H
#include "book.h"
#include "lint.h"
#include "rule_tokens.h"

enum { LINT_LOCALS = 64 };

/* All tokens of one rule's text. */
struct lint_text {
    const char *path, *bytes;
    struct rule_token *tokens;
    size_t count, capacity;
};

struct linting {
    struct arena *arena;
    struct problems *problems;
    const char **declared; /* values that any book on the shelf declares */
    size_t declared_count, declared_capacity;
    const struct declaration **declarations; /* of each of these */
    size_t declaration_capacity;
};

/* Reads and cuts a rule's text. False: not readable (told elsewhere), or no memory. */
bool lint_read(struct lint_text *out, const char *path, struct arena *arena);
/* Adds a note at a token. */
void lint_tell(struct linting *linting, const struct lint_text *text,
               const struct rule_token *token, const char *code, const char *format, ...)
    __attribute__((format(printf, 5, 6)));
/* Does the text read book.NAME anywhere? */
bool lint_reads_value(const struct lint_text *text, const char *name);
/* Tells of values that no book declares. */
void lint_values(struct linting *linting, const struct lint_text *text);
/* Tells of facts, methods and words that do not exist; `about` is the kind that the card names. */
void lint_facts(struct linting *linting, const struct lint_text *text, enum kind_id about);
/* Tells what the book cannot say on the days from which something of it holds. Without an adoption
 * it has no such day. `name` is what the shelf knows it by. */
struct shelf;
void lint_days(struct linting *linting, const char *name, const struct book *book,
               struct shelf *shelf);
/* Does a problem stand at this place already? */
bool lint_is_told(const struct problems *problems, struct place place);
/* Tells which numbers of a value are not what its declaration, in whatever book, wants. */
void lint_numbers(struct linting *linting, const struct book *book, const struct book_value *value,
                  const struct declaration *declaration);

#endif
