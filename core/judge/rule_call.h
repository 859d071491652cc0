/* Calls into a rule within its limits, and what came of them. */
#ifndef JUDGE_RULE_CALL_H
#define JUDGE_RULE_CALL_H
#include "room.h"

/* Runs a stage of a rule protected, with its limits on; the card's table stands at `card_index`, 0
 * where the card itself is run, whose table is left on the stack. A status of Lua's; what went
 * wrong is left on the stack. */
int rule_call(struct judge *judge, enum stage stage, struct running *running, int card_index);
/* The sentence and the line (0: cannot be told) of an error that a call left on the stack. NULL: no
 * memory. */
const char *rule_call_error(struct judge *judge, int status, unsigned *line, const char **code);
/* Tells a mistake of the rule, once for each line and code. */
void rule_call_problem(struct judge *judge, const char *code, unsigned line, const char *message);
/* Tells why its file could not be compiled. */
void rule_call_bad_text(struct problems *problems, const struct rule *rule,
                        const struct rule_text *text);
/* Tells why its card could not be read, and gives the sentence back. */
const char *rule_call_bad_card(struct judge *judge, int status);

#endif
