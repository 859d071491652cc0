/* What other programs need to know of our files, made from the one table: JSON Schemas for editors
 * and validators, type stubs and a luacheck std for rules, pages for readers. */
#ifndef REPORT_SCHEMA_H
#define REPORT_SCHEMA_H
#include "design.h"
#include "finding.h"
#include "text.h"

/* Each adds a JSON Schema (2020-12) to `out`; false: no memory. They describe a YAML file as a JSON
 * value: what the file leaves blank is null. */
bool schema_write_design(struct text *out); /* also of a catalogue */
bool schema_write_book(struct text *out);   /* book.yaml */
bool schema_write_values(struct text *out); /* values.yaml */
bool schema_write_cases(struct text *out);  /* cases/NAME.yaml */
bool schema_write_result(struct text *out); /* check --format json */

/* A word that a rule can say: "abs", "shall.be", "calc.ampacity", "inch". */
struct word_told {
    const char *name;
    const char *inputs; /* "(what, actual, limit, unit)"; NULL: it is no function */
    const char *gives;  /* type for a language server, or NULL: nothing */
    const char *sentence;
};

/* What there is to say of a word; false: it is a unit. */
bool word_find(struct word_told *out, const char *name);

/* `words` are all that a rule can say, in byte order. */
bool stubs_write(struct text *out, const char *const *words, size_t count);
/* As a Lua table behind `prefix`: "return ". */
bool luacheck_write(struct text *out, const char *prefix, const char *const *words, size_t count);
bool reference_write_words(struct text *out, const char *const *words, size_t count);
bool reference_write_facts(struct text *out);
bool reference_write_calculators(struct text *out);

/* One rule for its page: its card under each edition, and what its cases say. */
struct rule_told {
    const char *id, *title, *about, *remedy;
    const char **editions, **cites; /* side by side; an edition may be NULL */
    size_t cite_count;
    const char **says, **kinds; /* of its cases, side by side */
    size_t case_count;
};
/* The page of one rule, and the page that lists those of a book. */
bool reference_write_rule(struct text *out, const struct rule_told *rule);
bool reference_write_rules(struct text *out, const char *book, const char *title,
                           const struct rule_told *rules, size_t count);

#endif
