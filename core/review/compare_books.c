/* What changed in the books: which there are, which rules hold and with whose text. */
#include "comparing.h"

#include <assert.h>
#include <string.h>

#include "file.h"
#include "search.h"

enum { RULE_BYTES = 1 << 20 };

static bool is_same(const char *a, const char *b)
{
    return a == NULL || b == NULL ? a == b : strcmp(a, b) == 0;
}

static const struct book_in_force *find_book_named(const struct rulebook *rulebook,
                                                   const char *name)
{
    for (size_t i = 0; i < rulebook->book_count; i++)
        if (strcmp(rulebook->books[i].book->name, name) == 0)
            return &rulebook->books[i];
    return NULL;
}

static bool add_book(struct comparing *comparing, const struct book_in_force *was,
                     const struct book_in_force *is)
{
    struct comparison *comparison = comparing->comparison;
    assert(was != NULL || is != NULL);
    /* cppcheck-suppress nullPointerRedundantCheck ; one of the two is there, as asserted above */
    const char *name = is != NULL ? is->book->name : was->book->name;
    if (was != NULL && is != NULL && is_same(was->edition, is->edition))
        return true;
    struct compared_book *items =
        arena_grow(comparing->arena, comparison->books, comparison->book_count,
                   &comparison->book_capacity, sizeof *items);
    if (items == NULL)
        return false;
    comparison->books = items;
    items[comparison->book_count++] =
        (struct compared_book){compare_keep(comparing, name), was != NULL, is != NULL,
                               was != NULL ? compare_keep(comparing, was->edition) : NULL,
                               is != NULL ? compare_keep(comparing, is->edition) : NULL};
    return true;
}

static bool add_books(struct comparing *comparing, const struct rulebook *was,
                      const struct rulebook *is)
{
    for (size_t i = 0; i < is->book_count; i++)
        if (!add_book(comparing, find_book_named(was, is->books[i].book->name), &is->books[i]))
            return false;
    for (size_t i = 0; i < was->book_count; i++)
        if (find_book_named(is, was->books[i].book->name) == NULL &&
            !add_book(comparing, &was->books[i], NULL))
            return false;
    return true;
}

/* Is it the same text, wherever it stands? What cannot be read is told by the reviews. */
static bool is_same_text(struct comparing *comparing, const struct rule *was, const struct rule *is)
{
    char *a, *b;
    size_t a_length, b_length;
    struct problems unread = {.arena = comparing->was.arena};
    if (strcmp(was->path, is->path) == 0)
        return true;
    return file_read(&a, &a_length, was->path, RULE_BYTES, comparing->was.arena, PROBLEM_INPUT,
                     &unread) &&
           file_read(&b, &b_length, is->path, RULE_BYTES, comparing->was.arena, PROBLEM_INPUT,
                     &unread) &&
           a_length == b_length && memcmp(a, b, a_length) == 0;
}

/* The last that a book did to the rule. */
static const char *act_text(struct comparing *comparing, const struct rule *rule)
{
    const struct act *act = rule->act_count > 0 ? &rule->acts[rule->act_count - 1] : NULL;
    char from[16] = "";
    if (act == NULL)
        return NULL;
    if (act->from.year != 0)
        date_write(from, sizeof from, act->from);
    return arena_format(comparing->arena, "%s %s it%s%s%s%s", act->book->name, act->verb,
                        from[0] ? " from " : "", from, act->cite != NULL ? ", " : "",
                        act->cite != NULL ? act->cite : "");
}

static bool read_card(struct card *out, struct comparing *comparing, struct bench *bench,
                      const struct rule *rule)
{
    struct problems problems = {.arena = comparing->arena};
    *out = (struct card){0};
    if (rule == NULL || !rule->holds)
        return true;
    if (!judge_read_card(out, bench->judge, rule, comparing->arena, &problems))
        *out = (struct card){0};
    return compare_keep_problems(comparing, &problems);
}

static bool is_changed(enum rule_change *out, struct comparing *comparing, const struct rule *was,
                       const struct rule *is, bool is_cited_anew)
{
    bool held = was != NULL && was->holds, holds = is != NULL && is->holds;
    if (!held && !holds)
        return false;
    if (!held)
        *out = was == NULL ? RULE_ADDED : RULE_RESTORED;
    else if (!holds)
        *out = is == NULL ? RULE_GONE : RULE_DELETED;
    else if (!is_same_text(comparing, was, is))
        *out = RULE_REWRITTEN;
    else
        *out = RULE_CITED;
    return *out != RULE_CITED || is_cited_anew;
}

static bool add_rule(struct comparing *comparing, const struct rule *was, const struct rule *is)
{
    struct comparison *comparison = comparing->comparison;
    struct card before, after;
    enum rule_change change;
    if (!read_card(&before, comparing, &comparing->was, was) ||
        !read_card(&after, comparing, &comparing->is, is))
        return false;
    if (!is_changed(&change, comparing, was, is, !is_same(before.cite, after.cite)))
        return true;
    struct compared_rule *items =
        arena_grow(comparing->arena, comparison->rules, comparison->rule_count,
                   &comparison->rule_capacity, sizeof *items);
    if (items == NULL)
        return false;
    comparison->rules = items;
    items[comparison->rule_count++] =
        (struct compared_rule){change,
                               compare_keep(comparing, is != NULL ? is->id : was->id),
                               after.title != NULL ? after.title : before.title,
                               before.cite,
                               after.cite,
                               is != NULL ? act_text(comparing, is) : NULL};
    return true;
}

static bool add_rules(struct comparing *comparing, const struct rulebook *was,
                      const struct rulebook *is)
{
    for (size_t i = 0; i < is->rule_count; i++)
        if (!add_rule(comparing, rulebook_find_rule(was, is->rules[i].id), &is->rules[i]))
            return false;
    for (size_t i = 0; i < was->rule_count; i++)
        if (rulebook_find_rule(is, was->rules[i].id) == NULL &&
            !add_rule(comparing, &was->rules[i], NULL))
            return false;
    return true;
}

static size_t count_names(const char *const *names)
{
    size_t names_count = 0;
    while (names[names_count] != NULL)
        names_count++;
    return names_count;
}

/* NULL: could not be resolved, problems say why. */
static struct rulebook *resolve(struct comparing *comparing, struct shelf *shelf,
                                const char *const *books, struct date on)
{
    struct problems problems = {.arena = comparing->arena};
    struct rulebook *rulebook = NULL;
    if (!rulebook_resolve(&rulebook, books, count_names(books), on, shelf_find, shelf,
                          comparing->arena, &problems))
        rulebook = NULL;
    compare_keep_problems(comparing, &problems);
    return rulebook;
}

/* The two sides may name two folders of one book. */
static bool compare_on_shelves(struct comparing *comparing, struct shelf *was_shelf,
                               struct shelf *is_shelf)
{
    struct comparison *comparison = comparing->comparison;
    const struct compare_options *options = comparing->options;
    const struct rulebook *was =
        resolve(comparing, was_shelf, options->was_books, comparison->was.on);
    const struct rulebook *is = resolve(comparing, is_shelf, options->is_books, comparison->is.on);
    if (was == NULL || is == NULL)
        return !arena_is_short(comparing->arena);
    comparison->has_books = true;
    return add_books(comparing, was, is) && add_rules(comparing, was, is) &&
           compare_values(comparing, was, is);
}

bool compare_books(struct comparing *comparing)
{
    const char *const *directories =
        search_books(comparing->options->book_directories, comparing->arena);
    struct shelf *was = directories != NULL ? shelf_new(directories) : NULL;
    struct shelf *is = was != NULL ? shelf_new(directories) : NULL;
    bool is_done = is != NULL && compare_on_shelves(comparing, was, is);
    if (is != NULL)
        shelf_free(is);
    if (was != NULL)
        shelf_free(was);
    return is_done;
}
