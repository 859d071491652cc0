/* The limits of the closed room: who counts, and how a runaway rule is stopped at its line. */
#ifndef JUDGE_ROOM_LIMITS_H
#define JUDGE_ROOM_LIMITS_H
#include "room.h"

/* Takes the limits asked for (NULL, 0: the usual ones). */
void limits_set(struct judge *judge, const struct judge_limits *asked);
/* The budget of each call, for a design (NULL: for none): a rule may look at every thing. */
void limits_fit(struct judge *judge, const struct design *design);
/* Lua's allocator; context: the judge. Counts always, refuses only between start and end. */
void *limits_allocate(void *context, void *block, size_t old_size, size_t new_size);
/* Before and after each protected call: the limits hold between them. */
void limits_start(struct judge *judge);
/* The same for a call that surely ends before the hook would look at it. */
void limits_start_straight(struct judge *judge);
void limits_end(struct judge *judge);
/* Has the rule taken more in all its calls than one may in a review? What it looks at of every
 * other thing, for every thing, adds up. */
bool limits_rule_is_spent(struct judge *judge);
/* Counts the facts that the finding rests on as work of the rule. */
void limits_count_reads(struct judge *judge);
/* What to say of a rule that is spent. NULL: no memory. */
const char *limits_sentence_of_rule(struct judge *judge);
/* What to say of a rule that was stopped. NULL: no memory. */
const char *limits_sentence(struct judge *judge, enum runaway runaway);

#endif
