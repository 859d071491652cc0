#include "lint.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "cases.h"
#include "file.h"
#include "linting.h"
#include "text.h"

bool lint_read(struct lint_text *out, const char *path, struct arena *arena)
{
    char *bytes;
    size_t length, at = 0;
    unsigned line = 1;
    struct rule_token token;
    struct problems unread = {.arena = arena};
    *out = (struct lint_text){.path = path};
    if (!file_read(&bytes, &length, path, 1 << 16, arena, PROBLEM_RULE, &unread))
        return false;
    out->bytes = bytes;
    while (rule_token_next(&token, bytes, length, &at, &line)) {
        struct rule_token *tokens =
            arena_grow(arena, out->tokens, out->count, &out->capacity, sizeof *tokens);
        if (tokens == NULL)
            return false;
        out->tokens = tokens;
        tokens[out->count++] = token;
    }
    return true;
}

/* The line that a token stands in. */
static const char *line_of(const struct lint_text *text, const struct rule_token *token,
                           struct arena *arena)
{
    const char *start = token->text;
    while (start > text->bytes && start[-1] != '\n')
        start--;
    return arena_copy(arena, start, strcspn(start, "\n"));
}

void lint_tell(struct linting *linting, const struct lint_text *text,
               const struct rule_token *token, const char *code, const char *format, ...)
{
    char message[500];
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(message, sizeof message, format, arguments);
    va_end(arguments);
    struct place place = {text->path, token->line, token->column};
    struct problem *problem =
        problems_add(linting->problems, PROBLEM_NOTE, code, place, "%s", message);
    if (problem != NULL)
        problem->excerpt = line_of(text, token, linting->problems->arena);
}

static void tell_at(struct linting *linting, struct place place, const char *code,
                    const char *message)
{
    problems_add(linting->problems, PROBLEM_NOTE, code, place, "%s",
                 message != NULL ? message : "there is no memory left");
}

/* The name behind "book." at this token; NULL: it is none. */
static const struct rule_token *value_at(const struct lint_text *text, size_t at)
{
    bool is_value = at + 2 < text->count && rule_token_is(&text->tokens[at], "book") &&
                    rule_token_is(&text->tokens[at + 1], ".") &&
                    text->tokens[at + 2].type == RULE_TOKEN_NAME &&
                    (at == 0 || !rule_token_is(&text->tokens[at - 1], "."));
    return is_value ? &text->tokens[at + 2] : NULL;
}

bool lint_reads_value(const struct lint_text *text, const char *name)
{
    for (size_t i = 0; i < text->count; i++) {
        const struct rule_token *value = value_at(text, i);
        if (value != NULL && rule_token_is(value, name))
            return true;
    }
    return false;
}

void lint_values(struct linting *linting, const struct lint_text *text)
{
    for (size_t i = 0; i < text->count; i++) {
        const struct rule_token *value = value_at(text, i);
        bool is_declared = value == NULL;
        for (size_t k = 0; !is_declared && k < linting->declared_count; k++)
            is_declared = rule_token_is(value, linting->declared[k]);
        if (is_declared)
            continue;
        const char *name = arena_copy(linting->arena, value->text, value->length);
        const char *near =
            name != NULL ? text_find_near(name, linting->declared, linting->declared_count) : NULL;
        lint_tell(linting, text, value, "value-undeclared", "no book declares a value '%s'%s%s%s",
                  name != NULL ? name : "", near != NULL ? "; did you mean '" : "",
                  near != NULL ? near : "", near != NULL ? "'?" : "");
    }
}

/* ---- the shelf --------------------------------------------------------------------------------
 */

struct all_books {
    const struct book **items;
    size_t count;
};

/* All books there are: a code's value may be read by another book's rule. What is wrong in them is
 * theirs to tell. */
static bool read_all(struct all_books *out, struct shelf *shelf, const struct book *own,
                     struct arena *arena)
{
    char **paths;
    size_t count;
    struct problems unsaid = {.arena = arena};
    if (!shelf_list(&paths, &count, shelf, arena))
        return false;
    out->items = arena_take(arena, (count + 1) * sizeof(const struct book *));
    out->count = 0;
    for (size_t i = 0; out->items != NULL && i < count; i++) {
        const struct book *book = shelf_find(shelf, paths[i], (struct place){0}, &unsaid);
        if (book != NULL && book != own)
            out->items[out->count++] = book;
    }
    if (out->items != NULL)
        out->items[out->count++] = own;
    return out->items != NULL;
}

static bool list_declared(struct linting *linting, const struct all_books *all)
{
    for (size_t i = 0; i < all->count; i++)
        for (size_t k = 0; k < all->items[i]->value_count; k++) {
            if (all->items[i]->values[k].declaration == NULL)
                continue;
            const char **names =
                arena_grow(linting->arena, linting->declared, linting->declared_count,
                           &linting->declared_capacity, sizeof *names);
            const struct declaration **declarations =
                arena_grow(linting->arena, linting->declarations, linting->declared_count,
                           &linting->declaration_capacity, sizeof *declarations);
            if (names == NULL || declarations == NULL)
                return false;
            linting->declared = names;
            linting->declarations = declarations;
            declarations[linting->declared_count] = all->items[i]->values[k].declaration;
            names[linting->declared_count++] = all->items[i]->values[k].name;
        }
    return true;
}

static bool any_reads(const struct all_books *all, const char *name, struct arena *arena)
{
    for (size_t i = 0; i < all->count; i++)
        for (size_t k = 0; k < all->items[i]->rule_count; k++) {
            struct lint_text text;
            if (lint_read(&text, all->items[i]->rules[k].path, arena) &&
                lint_reads_value(&text, name))
                return true;
        }
    return false;
}

/* ---- the book ---------------------------------------------------------------------------------
 */

/* A number for a value that nobody declares would change nothing. */
static void check_declared(struct linting *linting, const struct book_value *value)
{
    for (size_t i = 0; i < linting->declared_count; i++)
        if (strcmp(linting->declared[i], value->name) == 0)
            return;
    if (lint_is_told(linting->problems, value->place))
        return; /* on one of the book's days */
    const char *near = text_find_near(value->name, linting->declared, linting->declared_count);
    tell_at(linting, value->place, "value-undeclared",
            arena_format(linting->arena, "no book declares a value '%s'%s%s%s", value->name,
                         near != NULL ? "; did you mean '" : "", near != NULL ? near : "",
                         near != NULL ? "'?" : ""));
}

/* The first declaration of a value that there is, or NULL. */
static const struct declaration *declaration_of(const struct all_books *all, const char *name)
{
    for (size_t i = 0; i < all->count; i++)
        for (size_t k = 0; k < all->items[i]->value_count; k++)
            if (all->items[i]->values[k].declaration != NULL &&
                strcmp(all->items[i]->values[k].name, name) == 0)
                return all->items[i]->values[k].declaration;
    return NULL;
}

static void check_values(struct linting *linting, const struct book *book,
                         const struct all_books *all)
{
    for (size_t i = 0; i < book->value_count; i++) {
        const struct book_value *value = &book->values[i];
        const struct declaration *declaration = declaration_of(all, value->name);
        check_declared(linting, value);
        if (value->declaration == NULL && declaration != NULL)
            lint_numbers(linting, book, value, declaration);
        if (value->declaration != NULL && !any_reads(all, value->name, linting->arena))
            tell_at(linting, value->place, "value-unused",
                    arena_format(linting->arena, "no rule of any book reads the value %s",
                                 value->name));
        if (value->declaration != NULL && value->declaration->says == NULL)
            tell_at(linting, value->place, "says-missing",
                    arena_format(linting->arena,
                                 "the value %s has no sentence: people see it in reports",
                                 value->name));
        for (size_t k = 1; k < value->count; k++)
            if (date_compare(value->entries[k].from, value->entries[k - 1].from) < 0)
                tell_at(linting, value->entries[k].place, "dates-order",
                        "this entry begins before the one above it: write them in the order of "
                        "their days");
    }
    for (size_t k = 0; k < book->adoption_count; k++)
        if (book->adoptions[k].cite == NULL)
            tell_at(linting, book->adoptions[k].place, "cite-missing",
                    "this adoption does not say which ordinance makes it");
}

static bool has_case(const struct cases *cases, const char *rule)
{
    for (size_t i = 0; i < cases->count; i++)
        if (strcmp(cases->items[i].rule, rule) == 0 &&
            strcmp(cases->items[i].expect.kind, "notApplicable") != 0 &&
            strcmp(cases->items[i].expect.kind, "deleted") != 0)
            return true;
    return false;
}

/* The card, under every edition that the text serves: a missing citation is told by the judge. */
static enum kind_id read_card(struct linting *linting, struct bench *bench, const struct book *book,
                              const struct rule_file *file)
{
    struct card card;
    enum kind_id about = KIND_NONE;
    size_t count = 0;
    while (file->edition == NULL && book->editions != NULL && book->editions[count] != NULL)
        count++;
    for (size_t i = 0; i < (count > 0 ? count : 1); i++) {
        const struct rule rule = {.id = file->id,
                                  .path = file->path,
                                  .edition = count > 0 ? book->editions[i] : file->edition};
        if (judge_read_card(&card, bench->judge, &rule, linting->arena, linting->problems))
            about = kind_find(card.about);
    }
    return about;
}

static void check_rules(struct linting *linting, struct bench *bench, const struct book *book)
{
    struct cases cases;
    cases_read(&cases, book, linting->arena, linting->problems);
    for (size_t i = 0; i < book->rule_count; i++) {
        const struct rule_file *file = &book->rules[i];
        struct lint_text text;
        enum kind_id about = read_card(linting, bench, book, file);
        if (lint_read(&text, file->path, linting->arena)) {
            lint_values(linting, &text);
            if (about != KIND_NONE)
                lint_facts(linting, &text, about);
        }
        if (!has_case(&cases, file->id) && (i == 0 || strcmp(book->rules[i - 1].id, file->id) != 0))
            tell_at(linting, (struct place){file->path, 0, 0}, "rule-unproved",
                    arena_format(linting->arena, "no case fires the rule %s", file->id));
    }
}

bool bench_lint(const char ***files, struct bench *bench, const char *name,
                const char *const *directories, struct arena *arena, struct problems *problems)
{
    struct linting linting = {.arena = arena, .problems = problems};
    struct all_books all;
    *files = arena_take(arena, sizeof **files);
    if (*files == NULL || !bench_fetch_shelf(bench, directories))
        return false;
    const struct book *book = shelf_find(bench->shelf, name, (struct place){0}, problems);
    if (book == NULL)
        return !arena_is_short(arena);
    if (!read_all(&all, bench->shelf, book, arena) || !list_declared(&linting, &all))
        return false;
    check_rules(&linting, bench, book);
    lint_days(&linting, name, book, bench->shelf);
    check_values(&linting, book, &all);
    *files = arena_take(arena, (book->rule_count + 1) * sizeof **files);
    for (size_t i = 0; *files != NULL && i < book->rule_count; i++)
        (*files)[i] = book->rules[i].path;
    return *files != NULL && !arena_is_short(arena);
}
