/* review, inside the room: sign-offs are hung on what waits for a person. */
#ifndef REVIEW_SIGN_H
#define REVIEW_SIGN_H
#include "review.h"

/* Hangs the sign-offs beside the design on the `review` findings that they accept. One that lifts
 * nothing says why (PROBLEM_NOTE): the design changed since, it ended, the rule says something else
 * there or nothing at all. A fail or an open is never lifted. False: no memory. */
bool review_sign(struct review *review);

#endif
