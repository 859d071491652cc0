/* Lists of books and of the rules in force, for people and for programs. */
#ifndef REPORT_LISTING_H
#define REPORT_LISTING_H
#include "book.h"
#include "text.h"

/* A rule with what its card says; title NULL: its card could not be read. */
struct rule_entry {
    const struct rule *rule;
    const char *title, *cite;
};

/* Each adds to `out`; false: no memory. */
bool list_rules_as_text(struct text *out, const struct rulebook *rulebook,
                        const struct rule_entry *entries, size_t count);
bool list_rules_as_json(struct text *out, const struct rulebook *rulebook,
                        const struct rule_entry *entries, size_t count);
bool list_books_as_text(struct text *out, const struct book *const *books, size_t count);
bool list_books_as_json(struct text *out, const struct book *const *books, size_t count);

/* "model code", "authority", "utility", "company" */
const char *role_name(enum book_role role);

#endif
