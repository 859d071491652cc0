/* review, inside the room: declared things that no book in force has rules for. */
#ifndef REVIEW_SCOPE_H
#define REVIEW_SCOPE_H
#include "design.h"
#include "finding.h"

/* Adds a finding for a person for each of them, under the rule id "plumbrule/scope". False: no
 * memory. */
bool scope_review(struct findings *findings, const struct design *design,
                  const struct rulebook *rulebook);

#endif
