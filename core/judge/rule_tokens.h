/* A rule's text as words and signs, without running it: enough to see what it names. */
#ifndef JUDGE_RULE_TOKENS_H
#define JUDGE_RULE_TOKENS_H
#include <stdbool.h>
#include <stddef.h>

enum rule_token_type { RULE_TOKEN_NAME, RULE_TOKEN_TEXT, RULE_TOKEN_NUMBER, RULE_TOKEN_SIGN };

struct rule_token {
    enum rule_token_type type;
    const char *text; /* where it begins; of a text in quotes what stands between them */
    size_t length;
    unsigned line, column; /* from 1; the column in bytes */
};

/* The next token from *at on, comments left out; *line is the line of *at. False: the end. */
bool rule_token_next(struct rule_token *out, const char *text, size_t length, size_t *at,
                     unsigned *line);
/* Is it this name or sign? */
bool rule_token_is(const struct rule_token *token, const char *word);

#endif
