#include "changes.h"
#include <string.h>

const char *book_part(struct resolving *resolving, const char *id)
{
    const char *slash = strchr(id, '/');
    const char *name = arena_copy(resolving->arena, id, slash ? (size_t)(slash - id) : strlen(id));
    return name ? name : "";
}

size_t rule_book(const struct resolving *resolving, const char *id)
{
    const char *slash = strchr(id, '/');
    size_t length = slash ? (size_t)(slash - id) : strlen(id);
    for (size_t i = 0; i < resolving->book_count; i++) {
        const char *name = resolving->books[i].book->name;
        if (strlen(name) == length && memcmp(name, id, length) == 0)
            return i;
    }
    return NO_BOOK;
}

const char *change_words(struct resolving *resolving, const struct change *change)
{
    static const char *const nouns[] = {[CHANGE_DELETES] = "the deletion",
                                        [CHANGE_RESTORES] = "the restoration",
                                        [CHANGE_REPLACES] = "the replacement"};
    const char *words =
        arena_format(resolving->arena, "%s of %s", nouns[change->verb], change->rule);
    return words ? words : "";
}

/* Has the book a rule of this id in any edition? */
static bool has_rule(const struct book *book, const char *id)
{
    for (size_t i = 0; i < book->rule_count; i++)
        if (strcmp(book->rules[i].id, id) == 0)
            return true;
    return false;
}

/* Ids of all books in force, for a suggestion. */
static const char **list_ids(struct resolving *resolving, size_t *count)
{
    size_t total = 0;
    *count = 0;
    for (size_t i = 0; i < resolving->book_count; i++)
        total += resolving->books[i].book->rule_count;
    const char **ids = arena_take(resolving->arena, (total + 1) * sizeof *ids);
    for (size_t i = 0; ids && i < resolving->book_count; i++) {
        const struct book *book = resolving->books[i].book;
        for (size_t j = 0; j < book->rule_count; j++)
            ids[(*count)++] = book->rules[j].id;
    }
    return ids;
}

static void tell_unknown(struct resolving *resolving, const struct change *change)
{
    size_t count;
    const char **ids = list_ids(resolving, &count);
    tell(resolving, "rule-unknown", change->place, NULL, "the stack has no rule %s to change%s",
         change->rule, ids ? near_hint(resolving, change->rule, ids, count) : "");
}

/* The number of the rule, where the edition in force has it. */
static size_t rule_number(const struct rulebook *rulebook, const char *id)
{
    const struct rule *rule = rulebook_find_rule(rulebook, id);
    return rule ? (size_t)(rule - rulebook->rules) : NO_BOOK;
}

/* May a company do this? It may change what is its own, and restore. */
static bool is_forbidden(const struct resolving *resolving, size_t book, size_t target,
                         const struct change *change)
{
    return is_company(resolving, book) && book != target && change->verb != CHANGE_RESTORES;
}

static bool is_deleted_by_anyone(const struct resolving *resolving, const char *id)
{
    for (size_t i = 0; i < resolving->book_count; i++) {
        const struct book *book = resolving->books[i].book;
        for (size_t j = 0; j < book->change_count; j++)
            if (book->changes[j].verb == CHANGE_DELETES && strcmp(book->changes[j].rule, id) == 0)
                return true;
    }
    return false;
}

/* Mistakes that are there on any day; EDITION_WRONG: the change is out. */
static enum edition_fit check_change(struct resolving *resolving, size_t book, size_t target,
                                     const struct change *change)
{
    if (is_forbidden(resolving, book, target, change)) {
        tell(resolving, "company-loosens", change->place, NULL,
             "%s is a company's book and may only add or tighten, so %s stands as it is",
             resolving->books[book].book->name, change->rule);
        return EDITION_WRONG;
    }
    if (change->verb == CHANGE_RESTORES && !is_deleted_by_anyone(resolving, change->rule)) {
        tell(resolving, "restores-nothing", change->place, NULL,
             "no book of the stack deletes %s, so there is nothing to restore", change->rule);
        return EDITION_WRONG;
    }
    struct edition_question question = {.edition = change->edition,
                                        .is_needed = book != target && !is_company(resolving, book),
                                        .what = change_words(resolving, change),
                                        .place = change->place};
    return judge_edition(resolving, target, &question);
}

static bool weigh(struct resolving *resolving, struct weighed_list *list, size_t book,
                  const struct change *change)
{
    size_t target = rule_book(resolving, change->rule);
    if (target == NO_BOOK) {
        /* About a code that is not adopted on this day: about nothing, unless misspelt. */
        const struct book *dormant = find_dormant(resolving, book_part(resolving, change->rule));
        if (!dormant || !has_rule(dormant, change->rule))
            tell_unknown(resolving, change);
        return true;
    }
    if (!has_rule(resolving->books[target].book, change->rule)) {
        tell_unknown(resolving, change);
        return true;
    }
    enum edition_fit fit = check_change(resolving, book, target, change);
    size_t rule = rule_number(resolving->rulebook, change->rule);
    if (fit == EDITION_FITS && rule == NO_BOOK && resolving->books[target].edition)
        tell(resolving, "rule-unknown", change->place, NULL,
             "edition %s of %s has no rule %s to change", resolving->books[target].edition,
             resolving->books[target].book->name, change->rule);
    if (fit == EDITION_WRONG || rule == NO_BOOK)
        return true;
    struct weighed *items =
        arena_grow(resolving->arena, list->items, list->count, &list->capacity, sizeof *items);
    if (!items)
        return false;
    list->items = items;
    items[list->count++] = (struct weighed){book, rule, change, fit};
    return true;
}

bool weigh_changes(struct resolving *resolving, struct weighed_list *list)
{
    *list = (struct weighed_list){0};
    for (size_t i = 0; i < resolving->book_count; i++) {
        const struct book *book = resolving->books[i].book;
        for (size_t j = 0; j < book->change_count; j++)
            if (!weigh(resolving, list, i, &book->changes[j]))
                return false;
    }
    return true;
}
