/* Follows what a rule names from its parameters on: thing.fact.fact, for … in ipairs(thing.list),
 * local name = thing.fact. */
#include "linting.h"

#include <stdio.h>
#include <string.h>

#include "calculator.h"
#include "text.h"

/* What a name in the text stands for. */
struct known {
    const struct rule_token *name;
    enum kind_id kind;
    bool is_list;
    const struct fact_row *row; /* the fact that a chain ends in, or NULL */
};

struct following {
    struct linting *linting;
    const struct lint_text *text;
    struct known locals[LINT_LOCALS];
    size_t count;
};

static bool is_same(const struct rule_token *a, const struct rule_token *b)
{
    return a->length == b->length && memcmp(a->text, b->text, a->length) == 0;
}

static const struct rule_token *token_at(const struct following *following, size_t at)
{
    static const struct rule_token none = {RULE_TOKEN_SIGN, "", 0, 0, 0};
    return at < following->text->count ? &following->text->tokens[at] : &none;
}

static bool is_at(const struct following *following, size_t at, const char *word)
{
    return rule_token_is(token_at(following, at), word);
}

/* KIND_NONE: from here on the name stands for something that is not known. */
static void set_local(struct following *following, const struct rule_token *name, enum kind_id kind,
                      bool is_list)
{
    for (size_t i = 0; i < following->count; i++)
        if (is_same(following->locals[i].name, name)) {
            following->locals[i] = (struct known){name, kind, is_list, NULL};
            return;
        }
    if (following->count < LINT_LOCALS)
        following->locals[following->count++] = (struct known){name, kind, is_list, NULL};
}

static struct known find_local(const struct following *following, const struct rule_token *name)
{
    for (size_t i = 0; i < following->count; i++)
        if (is_same(following->locals[i].name, name))
            return following->locals[i];
    return (struct known){name, KIND_NONE, false, NULL};
}

static const char *word_of(const struct following *following, const struct rule_token *token)
{
    const char *word = arena_copy(following->linting->arena, token->text, token->length);
    return word != NULL ? word : "";
}

static const char *near_fact(const struct kind *kind, const char *name)
{
    const char *known[120];
    const struct calculator *one;
    size_t count = 0;
    for (; count < kind->fact_count && count < 80; count++)
        known[count] = kind->facts[count].name;
    for (size_t i = 0; count < 120 && (one = calculator_at(i)) != NULL; i++)
        if (one->about_kind == kind->id)
            known[count++] = one->name;
    return text_find_near(name, known, count);
}

static bool is_method(const struct kind *kind, const char *name)
{
    return strcmp(name, "called") == 0 || strcmp(name, "kind_of") == 0 ||
           calculator_find(kind->id, name) != NULL;
}

/* :is("a", "b") and :has("a") of a fact with a closed list of words. */
static void check_words(struct following *following, const struct fact_row *row, size_t at)
{
    if (!is_at(following, at, ":") || row->vocabulary == NULL ||
        (!is_at(following, at + 1, "is") && !is_at(following, at + 1, "has")) ||
        !is_at(following, at + 2, "("))
        return;
    for (at += 3; token_at(following, at)->type == RULE_TOKEN_TEXT; at += 2) {
        const struct rule_token *token = token_at(following, at);
        const char *word = word_of(following, token);
        const struct vocabulary *known = row->vocabulary;
        const char *near = text_find_near(word, known->words, known->count);
        if (near == NULL)
            near = text_find_part(word, known->words, known->count);
        if (vocabulary_find(known, word) == NULL)
            lint_tell(following->linting, following->text, token, "word-unknown",
                      "'%s' is no word for %s%s%s%s", word, row->name,
                      near != NULL ? "; did you mean '" : "", near != NULL ? near : "",
                      near != NULL ? "'?" : "");
        if (!is_at(following, at + 1, ","))
            return;
    }
}

/* What a fact leads to: a thing or a list of one kind, or nothing that can be followed. */
static struct known follow_fact(const struct fact_row *row)
{
    struct known next = {NULL, KIND_NONE, false, row};
    size_t kinds = 0;
    if (row->type == TYPE_ONE || row->type == TYPE_LIST || row->type == TYPE_INVERSE)
        next.kind = row->kind;
    for (int id = 0;
         (row->type == TYPE_REFERENCE || row->type == TYPE_REFERENCES) && id < KIND_COUNT; id++)
        if (row->kinds >> id & 1) {
            next.kind = (enum kind_id)id;
            kinds++;
        }
    if (kinds > 1)
        next.kind = KIND_NONE;
    next.is_list =
        row->type == TYPE_LIST || row->type == TYPE_INVERSE || row->type == TYPE_REFERENCES;
    return next;
}

/* Follows name.fact.fact from *at, which stands behind the name; *at ends behind the chain. */
static struct known follow(struct following *following, struct known from, size_t *at)
{
    while (from.kind != KIND_NONE) {
        const struct rule_token *name = token_at(following, *at + 1);
        if (from.is_list) {
            if (!is_at(following, *at, "[") || !is_at(following, *at + 2, "]"))
                return from;
            from.is_list = false;
            *at += 3;
            continue;
        }
        bool is_asked = is_at(following, *at, ":");
        if ((!is_asked && !is_at(following, *at, ".")) || name->type != RULE_TOKEN_NAME)
            return from;
        const struct kind *kind = kind_at(from.kind);
        const char *word = word_of(following, name);
        int slot = kind_find_fact(kind, word);
        *at += 2;
        from.kind = KIND_NONE;
        if (is_method(kind, word))
            return from;
        if (slot >= 0 && !is_asked) {
            check_words(following, &kind->facts[slot], *at);
            from = follow_fact(&kind->facts[slot]);
            continue;
        }
        const char *near = near_fact(kind, word);
        lint_tell(following->linting, following->text, name,
                  is_asked ? "method-unknown" : "fact-unknown", "a %s has no '%s%s'%s%s%s",
                  kind->name, is_asked ? ":" : "", word, near != NULL ? "; did you mean '" : "",
                  near != NULL ? near : "", near != NULL ? "'?" : "");
    }
    return from;
}

/* A value by its name in the rule; NULL: none, or declared by several books. */
static const struct declaration *declaration_at(const struct following *following, size_t at)
{
    const struct linting *linting = following->linting;
    const struct declaration *found = NULL;
    for (size_t i = 0; i < linting->declared_count; i++)
        if (is_at(following, at, linting->declared[i])) {
            if (found != NULL)
                return NULL;
            found = linting->declarations[i];
        }
    return found;
}

/* shall.not_exceed("…", thing.fact, book.value): `begin` is the chain's first token, `end` stands
 * behind it. Unlike kinds break the rule when it runs, and what is unlike is the value. */
static void check_compared(struct following *following, const struct fact_row *row, size_t begin,
                           size_t end)
{
    const struct declaration *value = declaration_at(following, end + 3);
    bool is_compared = begin >= 5 && is_at(following, begin - 1, ",") &&
                       token_at(following, begin - 2)->type == RULE_TOKEN_TEXT &&
                       is_at(following, begin - 3, "(") && is_at(following, begin - 5, ".") &&
                       is_at(following, end, ",") && is_at(following, end + 1, "book") &&
                       is_at(following, end + 2, ".") &&
                       (is_at(following, end + 4, ")") || is_at(following, end + 4, ","));
    if (!is_compared || value == NULL || row->type != TYPE_QUANTITY ||
        (value->type != AMOUNT_NUMBER && value->type != AMOUNT_QUANTITY))
        return;
    enum measure measure = value->type == AMOUNT_NUMBER ? PURE_NUMBER : value->measure;
    if (!dimension_is_same(measure_dimension(measure), measure_dimension(row->measure)))
        lint_tell(following->linting, following->text, token_at(following, end + 3), "value-kind",
                  "the value %s is declared with kind: %s and cannot be compared with %s, which "
                  "needs kind: %s and a unit behind the number",
                  value->name, measure_name(measure), row->name, measure_name(row->measure));
}

/* check = function(thing, book, design): what the parameters stand for. */
static void read_parameters(struct following *following, size_t at, enum kind_id about)
{
    enum kind_id kinds[] = {about, KIND_NONE, KIND_design};
    for (size_t i = 0; i < 3; i++, at += 2) {
        if (token_at(following, at)->type == RULE_TOKEN_NAME)
            set_local(following, token_at(following, at), kinds[i], false);
        if (!is_at(following, at + 1, ","))
            return;
    }
}

/* Parameters of any other function hide what had their name before. */
static void hide_parameters(struct following *following, size_t at)
{
    while (!is_at(following, at, "(") && at < following->text->count)
        at++;
    for (at++; token_at(following, at)->type == RULE_TOKEN_NAME; at += 2) {
        set_local(following, token_at(following, at), KIND_NONE, false);
        if (!is_at(following, at + 1, ","))
            return;
    }
}

/* for _, one in ipairs(thing.list) do */
static void read_loop(struct following *following, size_t at)
{
    const struct rule_token *name = token_at(following, at + 3);
    size_t behind = at + 8;
    if (!is_at(following, at + 2, ",") || !is_at(following, at + 4, "in") ||
        !is_at(following, at + 5, "ipairs"))
        return;
    struct known list = find_local(following, token_at(following, at + 7));
    /* Mistakes in the chain are told when the walk comes to it. */
    struct problems quiet = {.arena = following->linting->arena},
                    *loud = following->linting->problems;
    following->linting->problems = &quiet;
    struct known end = follow(following, list, &behind);
    following->linting->problems = loud;
    set_local(following, name, end.is_list ? end.kind : KIND_NONE, false);
}

/* local name = thing.fact, and no more behind it */
static void read_local(struct following *following, size_t at)
{
    const struct rule_token *name = token_at(following, at + 1);
    size_t behind = at + 4;
    if (name->type != RULE_TOKEN_NAME || !is_at(following, at + 2, "="))
        return;
    struct known from = find_local(following, token_at(following, at + 3));
    struct problems quiet = {.arena = following->linting->arena},
                    *loud = following->linting->problems;
    following->linting->problems = &quiet;
    struct known end = follow(following, from, &behind);
    following->linting->problems = loud;
    bool is_whole = !is_at(following, behind, ":") && !is_at(following, behind, ".") &&
                    !is_at(following, behind, "or") && !is_at(following, behind, "and");
    set_local(following, name, is_whole ? end.kind : KIND_NONE, end.is_list);
}

void lint_facts(struct linting *linting, const struct lint_text *text, enum kind_id about)
{
    struct following following = {.linting = linting, .text = text};
    for (size_t at = 0; at < text->count; at++) {
        const struct rule_token *token = &text->tokens[at];
        bool is_card = at >= 2 && is_at(&following, at - 1, "=") &&
                       (is_at(&following, at - 2, "check") || is_at(&following, at - 2, "applies"));
        bool is_behind =
            at > 0 && (is_at(&following, at - 1, ".") || is_at(&following, at - 1, ":"));
        if (rule_token_is(token, "function") && is_card)
            read_parameters(&following, at + 2, about);
        else if (rule_token_is(token, "function"))
            hide_parameters(&following, at);
        else if (rule_token_is(token, "for"))
            read_loop(&following, at);
        else if (rule_token_is(token, "local"))
            read_local(&following, at);
        else if (token->type == RULE_TOKEN_NAME && !is_behind) {
            size_t behind = at + 1;
            struct known end = follow(&following, find_local(&following, token), &behind);
            if (end.row != NULL)
                check_compared(&following, end.row, at, behind);
        }
    }
}
