#include "rule_tokens.h"

#include <string.h>

static bool is_letter(char byte)
{
    return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') || byte == '_';
}

static bool is_digit(char byte)
{
    return byte >= '0' && byte <= '9';
}

/* Bytes of "[[", "[==[" and the like at `at`; 0: none opens there. */
static size_t bracket_length(const char *text, size_t length, size_t at)
{
    size_t end = at + 1;
    if (at >= length || text[at] != '[')
        return 0;
    while (end < length && text[end] == '=')
        end++;
    return end < length && text[end] == '[' ? end + 1 - at : 0;
}

/* Where the long bracket of this length ends. */
static size_t end_of_bracket(const char *text, size_t length, size_t at, size_t bracket)
{
    for (at += bracket; at + bracket <= length; at++) {
        size_t equals = 0;
        while (text[at] == ']' && equals < bracket - 2 && text[at + 1 + equals] == '=')
            equals++;
        if (text[at] == ']' && equals == bracket - 2 && text[at + bracket - 1] == ']')
            return at + bracket;
    }
    return length;
}

static size_t end_of_comment(const char *text, size_t length, size_t at)
{
    size_t bracket = bracket_length(text, length, at + 2);
    if (bracket > 0)
        return end_of_bracket(text, length, at + 2, bracket);
    while (at < length && text[at] != '\n')
        at++;
    return at;
}

static size_t end_of_quotes(const char *text, size_t length, size_t at)
{
    char quote = text[at++];
    while (at < length && text[at] != quote && text[at] != '\n')
        at += text[at] == '\\' && at + 1 < length ? 2 : 1;
    return at < length ? at + 1 : length;
}

/* Skips blanks and comments. */
static size_t skip(const char *text, size_t length, size_t at)
{
    for (;;) {
        while (at < length && strchr(" \t\r\n\f\v", text[at]) != NULL)
            at++;
        if (at + 1 >= length || text[at] != '-' || text[at + 1] != '-')
            return at;
        at = end_of_comment(text, length, at);
    }
}

static unsigned count_lines(const char *text, size_t from, size_t to)
{
    unsigned lines = 0;
    for (size_t i = from; i < to; i++)
        lines += text[i] == '\n';
    return lines;
}

static size_t end_of_token(struct rule_token *out, const char *text, size_t length, size_t at)
{
    size_t end = at + 1, bracket = bracket_length(text, length, at);
    out->type = RULE_TOKEN_SIGN;
    if (is_letter(text[at]) || is_digit(text[at])) {
        out->type = is_letter(text[at]) ? RULE_TOKEN_NAME : RULE_TOKEN_NUMBER;
        while (end < length && (is_letter(text[end]) || is_digit(text[end]) ||
                                (out->type == RULE_TOKEN_NUMBER && text[end] == '.')))
            end++;
    } else if (bracket > 0) {
        out->type = RULE_TOKEN_TEXT;
        end = end_of_bracket(text, length, at, bracket);
    } else if (text[at] == '"' || text[at] == '\'') {
        out->type = RULE_TOKEN_TEXT;
        end = end_of_quotes(text, length, at);
    }
    size_t inside = out->type != RULE_TOKEN_TEXT ? 0 : bracket > 0 ? bracket : 1;
    out->text = text + at + inside;
    out->length = end - at > 2 * inside ? end - at - 2 * inside : 0;
    return end;
}

bool rule_token_next(struct rule_token *out, const char *text, size_t length, size_t *at,
                     unsigned *line)
{
    size_t begin = skip(text, length, *at), start = begin;
    *line += count_lines(text, *at, begin);
    *at = begin;
    if (begin >= length)
        return false;
    while (start > 0 && text[start - 1] != '\n')
        start--;
    out->line = *line;
    out->column = (unsigned)(begin - start) + 1;
    *at = end_of_token(out, text, length, begin);
    *line += count_lines(text, begin, *at);
    return true;
}

bool rule_token_is(const struct rule_token *token, const char *word)
{
    return token->text != NULL && token->type != RULE_TOKEN_TEXT && token->length == strlen(word) &&
           memcmp(token->text, word, token->length) == 0;
}
