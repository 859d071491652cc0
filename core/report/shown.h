/* report, inside the room: what a value of a book is at the site of a design. */
#ifndef REPORT_SHOWN_H
#define REPORT_SHOWN_H
#include "design.h"
#include "finding.h"

/* AMOUNT_NONE: there is none in force, or it goes by elevation and the design does not tell its. */
struct amount value_shown(const struct value *value, const struct design *design);

#endif
