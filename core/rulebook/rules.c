#include "changes.h"
#include <string.h>

/* ---- the rules as their books write them -------------------------------------------------- */

/* Of the files of one id, the text of the edition in force, else the one for all. */
static const struct rule_file *choose_file(const struct book_in_force *in_force, size_t from,
                                           size_t *next)
{
    const struct book *book = in_force->book;
    const struct rule_file *best = NULL;
    size_t at = from;
    for (; at < book->rule_count && strcmp(book->rules[at].id, book->rules[from].id) == 0; at++) {
        const struct rule_file *file = &book->rules[at];
        if (file->edition ? is_same_name(file->edition, in_force->edition) : !best)
            best = file;
    }
    *next = at;
    return best;
}

static bool add_rules(struct resolving *resolving, const struct book_in_force *in_force)
{
    struct rulebook *rulebook = resolving->rulebook;
    for (size_t at = 0, next = 0; at < in_force->book->rule_count; at = next) {
        const struct rule_file *file = choose_file(in_force, at, &next);
        if (!file)
            continue;
        struct rule *rule = &rulebook->rules[rulebook->rule_count];
        if (!index_add(&rulebook->rule_index, file->id, rule))
            return false;
        *rule = (struct rule){.id = file->id,
                              .path = file->path,
                              .book = in_force->book,
                              .edition = in_force->edition,
                              .text_by = in_force->book,
                              .holds = true};
        rulebook->rule_count++;
    }
    return true;
}

static bool add_all_rules(struct resolving *resolving)
{
    struct rulebook *rulebook = resolving->rulebook;
    size_t total = 0;
    for (size_t i = 0; i < resolving->book_count; i++)
        total += resolving->books[i].book->rule_count;
    rulebook->rules = arena_take(resolving->arena, (total + 1) * sizeof *rulebook->rules);
    if (!rulebook->rules)
        return false;
    for (size_t i = 0; i < resolving->book_count; i++)
        if (!add_rules(resolving, &resolving->books[i]))
            return false;
    return true;
}

/* ---- what the books above do to one of them ----------------------------------------------- */

/* `deletes` and `restores` answer one question, `replaces` another. */
static bool is_about_text(const struct weighed *weighed)
{
    return weighed->change->verb == CHANGE_REPLACES;
}

/* The change of one book about one target that counts on the day, or NULL. */
static const struct weighed *choose_change(const struct resolving *resolving,
                                           const struct weighed_list *list, size_t rule,
                                           size_t book, bool about_text)
{
    struct date on = resolving->rulebook->on;
    size_t owner = rule_book(resolving, resolving->rulebook->rules[rule].id);
    const struct weighed *best = NULL;
    for (size_t i = 0; i < list->count; i++) {
        const struct weighed *item = &list->items[i];
        if (item->rule != rule || item->book != book || is_about_text(item) != about_text)
            continue;
        /* A code's own change for another edition is no mistake: it just is not its turn. */
        if (book == owner && item->fit != EDITION_FITS)
            continue;
        if (has_begun(item->change->from, on) &&
            (!best || date_compare(item->change->from, best->change->from) >= 0))
            best = item;
    }
    return best && !has_ended(best->change->repealed, on) ? best : NULL;
}

/* A live change that was written for another edition is told, and does nothing. */
static bool is_stale(struct resolving *resolving, const struct weighed *item)
{
    if (item->fit != EDITION_OTHER)
        return false;
    struct edition_question question = {.edition = item->change->edition,
                                        .what = change_words(resolving, item->change),
                                        .place = item->change->place};
    tell_stale(resolving, rule_book(resolving, item->change->rule), &question);
    return true;
}

static void add_act(struct rule *rule, const struct resolving *resolving,
                    const struct weighed *item)
{
    static const char *const verbs[] = {[CHANGE_DELETES] = "deletes",
                                        [CHANGE_RESTORES] = "restores",
                                        [CHANGE_REPLACES] = "replaces"};
    rule->acts[rule->act_count++] =
        (struct act){verbs[item->change->verb], resolving->books[item->book].book,
                     item->change->cite, item->change->from, item->change->place};
}

static void tell_change_rivals(struct resolving *resolving, const struct rule *rule,
                               const struct weighed *const *live, const size_t *books, size_t count)
{
    size_t first, second;
    find_rivals(resolving, books, count, &first, &second);
    const struct weighed *a = live[first], *b = live[second];
    /* The book whose rule it is may be a rival itself; it has no line for that. */
    struct place there = a ? a->change->place : resolving->books[books[first]].book->place;
    struct place here = b ? b->change->place : resolving->books[books[second]].book->place;
    tell_both(resolving, "rivals", b ? here : there, b ? there : here, NULL,
              "%s and %s both decide about the rule %s and neither adopts the other; a book that "
              "adopts both must decide",
              resolving->books[books[first]].book->name, resolving->books[books[second]].book->name,
              rule->id);
}

/* The change that wins over all live ones about one target; NULL: the rule as its book has it. */
static const struct weighed *decide(struct resolving *resolving, const struct weighed_list *list,
                                    size_t number, bool about_text)
{
    struct rule *rule = &resolving->rulebook->rules[number];
    size_t owner = rule_book(resolving, rule->id), count = 0;
    const struct weighed **live =
        arena_take(resolving->arena, resolving->book_count * sizeof(const struct weighed *));
    size_t *books = arena_take(resolving->arena, resolving->book_count * sizeof *books);
    if (!live || !books)
        return NULL; /* the arena knows that it is short */
    for (size_t i = 0; i < resolving->book_count; i++) {
        const struct weighed *item = choose_change(resolving, list, number, i, about_text);
        if (item && is_stale(resolving, item))
            item = NULL;
        if (!item && i != owner)
            continue;
        if (item)
            add_act(rule, resolving, item);
        live[count] = item;
        books[count++] = i;
    }
    size_t winner = find_winner(resolving, books, count);
    if (winner == NO_BOOK)
        tell_change_rivals(resolving, rule, live, books, count);
    return winner == NO_BOOK ? NULL : live[winner];
}

/* How the rule came into the stack: added by its book, adopted by those above. */
static void add_origin(const struct resolving *resolving, struct rule *rule)
{
    size_t owner = rule_book(resolving, rule->id);
    if (rule->book->role != ROLE_MODEL_CODE)
        rule->acts[rule->act_count++] =
            (struct act){.verb = "adds", .book = rule->book, .place = rule->book->place};
    for (size_t i = 0; i < resolving->link_count; i++) {
        const struct link *link = &resolving->links[i];
        if (link->lower != owner || !link->adoption)
            continue;
        rule->acts[rule->act_count++] =
            (struct act){"adopts", resolving->books[link->upper].book, link->adoption->cite,
                         link->adoption->from, link->adoption->place};
    }
}

static bool resolve_rule(struct resolving *resolving, const struct weighed_list *list,
                         size_t number)
{
    struct rule *rule = &resolving->rulebook->rules[number];
    size_t most = resolving->link_count + 2 * resolving->book_count + 1;
    rule->acts = arena_take(resolving->arena, most * sizeof *rule->acts);
    if (!rule->acts)
        return false;
    add_origin(resolving, rule);
    const struct weighed *text = decide(resolving, list, number, true);
    const struct weighed *holds = decide(resolving, list, number, false);
    if (text) {
        rule->path = text->change->file;
        rule->text_by = resolving->books[text->book].book;
    }
    rule->holds = !holds || holds->change->verb != CHANGE_DELETES;
    sort_acts(rule->acts, rule->act_count);
    return true;
}

bool resolve_rules(struct resolving *resolving)
{
    struct weighed_list list;
    if (!add_all_rules(resolving) || !weigh_changes(resolving, &list))
        return false;
    for (size_t i = 0; i < resolving->rulebook->rule_count; i++)
        if (!resolve_rule(resolving, &list, i))
            return false;
    return true;
}
