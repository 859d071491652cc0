/* report, inside the room: the HTML report, as well-formed markup that is readable without script.
 * Whatever text comes from a design or a book goes through html_say, html_put or html_set, which
 * escape it and leave no control character in it. */
#ifndef REPORT_HTML_H
#define REPORT_HTML_H
#include "report.h"

enum { HTML_DEEPEST = 32 }; /* elements inside one another; our own pages need about half */

/* Inputs that share a row are of one class; from 1, in the order of their first telling. */
struct html_classes {
    struct index by_key;  /* to the class's number in `of_input` */
    size_t *of_input;     /* by the input's number; 0: not told yet */
    size_t count;         /* of classes */
    struct shared **rows; /* by class: its row in the finding that is written … */
    size_t *written;      /* … as long as this is that finding's round */
    size_t round;
};

/* One report while it is written. Once memory is short it stays so, and the owner asks at the end.
 */
struct html {
    struct text *out;
    const struct report *report;
    struct arena *arena;
    bool is_short;
    bool is_in_tag; /* a start tag stands open for attributes */
    size_t depth;
    const char *tags[HTML_DEEPEST]; /* of the elements that are open */
    struct html_classes classes;
};

/* Makes a writer that adds to `out`; what comes of it is told by html_end. JUnit's XML is written
 * with it, too. */
void html_begin(struct html *html, struct text *out, const struct report *report);
/* Frees the writer. False: there was no memory. */
bool html_end(struct html *html);
/* Opens an element; class may be NULL. Attributes follow before any content. */
void html_open(struct html *html, const char *tag, const char *class_name);
void html_set(struct html *html, const char *attribute, const char *value);
/* NULL: no memory was left to make the text. */
void html_say(struct html *html, const char *text);
void html_close(struct html *html);
/* A whole element with nothing but text. */
void html_put(struct html *html, const char *tag, const char *class_name, const char *text);
void html_put_format(struct html *html, const char *tag, const char *class_name, const char *format,
                     ...) __attribute__((format(printf, 4, 5)));
/* An element that has no end tag, with one attribute. */
void html_void(struct html *html, const char *tag, const char *attribute, const char *value);
/* Markup of our own making, as it is. */
void html_raw(struct html *html, const char *markup);
/* A section with a heading of level 2 and the id that the contents link to; ends with html_close.
 */
void html_section(struct html *html, const char *id, const char *title);
/* A table that may be moved sideways where it is wide, with its caption and heads (ends in NULL);
 * rows follow, then html_table_end. */
void html_table(struct html *html, const char *class_name, const char *caption,
                const char *const *heads);
void html_table_end(struct html *html);
/* A row whose cells are texts; the first one heads the row. Texts of NULL are empty cells. */
void html_row(struct html *html, const char *const *cells, size_t count);
/* A text that a failed arena made NULL: then memory is short, and it is the empty text. */
const char *html_text(struct html *html, const char *text);

/* ---- what findings say, in words ------------------------------------------------------------ */

/* The groups of findings by what there is to do, in the order they are told. */
enum html_group {
    GROUP_FAILS,
    GROUP_ADVICE,
    GROUP_OPEN,
    GROUP_REVIEW,
    GROUP_WAIVED,
    GROUP_SIGNED,
    GROUP_STANDS,
    GROUP_TO_KNOW,
    GROUP_NOT_APPLICABLE,
    GROUP_COUNT
};

enum html_group html_group_of(const struct finding *finding);
/* "fails", "open" …: a class of the style sheet. */
const char *html_group_class(enum html_group group);
/* "Fails", "Open" …: what stands on the badge. */
const char *html_group_word(enum html_group group);
/* A fact as people read it; NULL: nobody told. */
const char *html_fact(struct html *html, const struct object *object, unsigned slot);
/* The same, with a dash where nobody told. */
const char *html_fact_or_dash(struct html *html, const struct object *object, unsigned slot);
/* "14 % inside", "8 % outside", "at the limit"; "" without a margin. */
const char *html_margin(struct html *html, bool has_margin, double margin);
/* The bar that shows a margin beside its words. */
void html_margin_bar(struct html *html, bool has_margin, double margin);
/* "f12" of the finding that stands at 11. */
const char *html_finding_id(struct html *html, size_t at);
/* A file as people name it: what stands in a book by the book's name, a catalogue without its
 * folders, the design as it was given. Then with its line; "" where there is no file. */
const char *html_file(struct html *html, const char *path);
const char *html_place(struct html *html, struct place place);
/* A link into the report. */
void html_link(struct html *html, const char *id, const char *text);

/* ---- parts of a finding --------------------------------------------------------------------- */

void html_tests(struct html *html, const struct test *tests, size_t count);
void html_values_of(struct html *html, const struct finding *finding);
void html_inputs(struct html *html, const struct finding *finding);
/* Stands between what is said of one finding in one line. */
#define HTML_MARK " · "
/* " · irc 2021, R324.6.2": a section says nothing without its code. Nothing where nobody cites. */
void html_cite(struct html *html, const struct finding *finding);
void html_steps(struct html *html, const struct finding *finding);
/* Has it a calculation sheet, which one (from 1), and the steps or the way to them. */
bool html_has_sheet(const struct finding *finding);
size_t html_sheet_number(const struct html *html, size_t at);
void html_steps_or_sheet(struct html *html, size_t at, bool in_place);
/* Where many findings are open: the facts that most of them wait for. */
void html_wanted(struct html *html);
/* What needs action, each with its number and what it says, linked. */
void html_actions(struct html *html);
/* Every fact that is missing and not yet told, those inside the ways of a group too. The first one
 * begins a list, which the caller ends with html_close where `told` has any. */
void html_missing(struct html *html, const struct test *tests, size_t count, struct index *told);
/* One finding that opens to its whole working; `number` is what drawings key it by, 0: none. */
void html_finding(struct html *html, size_t at, size_t number);

/* ---- the sections, in their order ----------------------------------------------------------- */

void html_head(struct html *html);
void html_problems(struct html *html);
void html_findings(struct html *html);
void html_drawings(struct html *html);
void html_margins(struct html *html);
void html_values(struct html *html);
void html_labels(struct html *html);
void html_equipment(struct html *html);
void html_sheets(struct html *html);
void html_checklists(struct html *html);
void html_papers(struct html *html);
void html_jobsite(struct html *html);
void html_not_checked(struct html *html);
void html_origin(struct html *html);

/* The style sheet in pieces, NULL past the end: nothing from anywhere else. */
const char *html_style(size_t at);

#endif
