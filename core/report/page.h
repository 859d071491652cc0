/* report, inside the room: a page of plain text for people, wrapped by code points. Whatever it is
 * handed, no control character reaches a terminal. */
#ifndef REPORT_PAGE_H
#define REPORT_PAGE_H
#include "text.h"

enum style { STYLE_PLAIN, STYLE_STRONG, STYLE_BAD, STYLE_UNSURE, STYLE_GOOD, STYLE_FAINT };

struct page {
    struct text *out;
    unsigned width; /* columns */
    bool with_color;
};

/* Control characters but the tab, and bytes that are not UTF-8, come out as U+FFFD. */
void text_add_printable(struct text *out, const char *bytes, size_t length);
/* A piece of text in a style; without colour just the text. */
void page_add_styled(struct page *page, enum style style, const char *text);
/* A paragraph whose lines begin at column `indent`, the first one after `label` (NULL: none) which
 * stands at column `label_at`. A word that is wider than the line stands alone on one. */
void page_paragraph(struct page *page, unsigned label_at, const char *label, enum style style,
                    unsigned indent, const char *text);
/* An empty line. */
void page_gap(struct page *page);
/* A heading over a section. */
void page_heading(struct page *page, enum style style, const char *text);

#endif
