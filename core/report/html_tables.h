/* report, inside the room: tables of things of one kind with chosen facts as columns. */
#ifndef REPORT_HTML_TABLES_H
#define REPORT_HTML_TABLES_H
#include "html.h"

/* The first column is the thing's path; the others are facts. */
struct fact_table {
    enum kind_id kind;
    const char *caption;
    const char *const *heads; /* the first one over the names; ends in NULL */
    const unsigned *slots;    /* one less than heads */
};

/* Nothing where the design has no such thing. */
void html_fact_table(struct html *html, const struct fact_table *table);
/* A list of facts of one thing, each with its sentence: what is told and what is not. */
void html_fact_list(struct html *html, const struct object *object, const unsigned *slots,
                    size_t count);
/* Findings that `is_of` picks, each as a line with its badge, linked. Gives their number. */
size_t html_answers(struct html *html, bool (*is_of)(const struct finding *finding));
/* The part of a rule's id behind the book: "ridge-clearance". */
const char *html_rule_name(const struct finding *finding);

#endif
