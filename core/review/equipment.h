/* review, inside the room: the data sheets that a design leans on beyond its own file. */
#ifndef REVIEW_EQUIPMENT_H
#define REVIEW_EQUIPMENT_H
#include "design.h"
#include "digest.h"

/* SHA-256 of the entries of catalogues that the design uses, straight or by way of another: kind,
 * name and each fact as it is written, sorted by kind and name. What else stands in a catalogue,
 * the order of its entries and its comments do not count. "" where it uses none. False: no memory.
 */
bool equipment_digest(char digest[DIGEST_TEXT_SIZE], const struct design *design,
                      struct arena *arena);

#endif
