#include "changes.h"
#include <string.h>

const struct value *rulebook_find_value(const struct rulebook *rulebook, const char *name)
{
    return index_find(&rulebook->value_index, name);
}

const struct rule *rulebook_find_rule(const struct rulebook *rulebook, const char *id)
{
    return index_find(&rulebook->rule_index, id);
}

static void tell_memory(struct problems *problems)
{
    problems_add(problems, PROBLEM_MEMORY, "memory", (struct place){0},
                 "there is no memory to resolve the books");
}

/* A waiver for a rule that is not there lifts nothing; it is told, but it stops nothing. */
static void check_waiver(struct resolving *resolving, const struct waiver *waiver)
{
    bool is_resting = rule_book(resolving, waiver->rule) == NO_BOOK &&
                      find_dormant(resolving, book_part(resolving, waiver->rule));
    if (is_resting || rulebook_find_rule(resolving->rulebook, waiver->rule))
        return;
    struct rulebook *rulebook = resolving->rulebook;
    const char **ids = arena_take(resolving->arena, (rulebook->rule_count + 1) * sizeof *ids);
    for (size_t i = 0; ids && i < rulebook->rule_count; i++)
        ids[i] = rulebook->rules[i].id;
    const char *hint = ids ? near_hint(resolving, waiver->rule, ids, rulebook->rule_count) : "";
    struct problem *problem =
        tell(resolving, "waiver-orphaned", waiver->place, NULL,
             "the waiver is for a rule that is not in the stack, %s%s", waiver->rule, hint);
    if (problem)
        problem->weight = PROBLEM_NOTE;
}

bool resolve_waivers(struct resolving *resolving)
{
    struct rulebook *rulebook = resolving->rulebook;
    size_t total = 0;
    for (size_t i = 0; i < resolving->book_count; i++)
        total += resolving->books[i].book->waiver_count;
    rulebook->waivers = arena_take(resolving->arena, (total + 1) * sizeof(const struct waiver *));
    if (!rulebook->waivers)
        return false;
    for (size_t i = 0; i < resolving->book_count; i++) {
        const struct book *book = resolving->books[i].book;
        for (size_t j = 0; j < book->waiver_count; j++) {
            const struct waiver *waiver = &book->waivers[j];
            if (book->role != ROLE_AUTHORITY) {
                tell(resolving, "waiver-not-authority", waiver->place, NULL,
                     "only an authority's book can waive a rule, and %s is none", book->name);
                continue;
            }
            rulebook->waivers[rulebook->waiver_count++] = waiver;
            check_waiver(resolving, waiver);
        }
    }
    return true;
}

static bool resolve_stack(struct resolving *resolving, const char *const *names, size_t count)
{
    /* A circle is told even where a book is missing. */
    bool is_whole = gather_books(resolving, names, count);
    bool is_ordered = order_books(resolving);
    if (!is_whole || !is_ordered)
        return false;
    resolving->rulebook->books = resolving->books;
    resolving->rulebook->book_count = resolving->book_count;
    size_t told = resolving->problems->count;
    bool is_done =
        resolve_values(resolving) && resolve_rules(resolving) && resolve_waivers(resolving);
    sort_problems(resolving->problems, told);
    return is_done;
}

bool rulebook_resolve(struct rulebook **out, const char *const *names, size_t count, struct date on,
                      find_book *find, void *context, struct arena *arena,
                      struct problems *problems)
{
    *out = NULL;
    struct rulebook *rulebook = arena_take(arena, sizeof *rulebook);
    if (!rulebook) {
        tell_memory(problems);
        return false;
    }
    *rulebook = (struct rulebook){
        .arena = arena, .on = on, .value_index = {.arena = arena}, .rule_index = {.arena = arena}};
    struct resolving resolving = {.rulebook = rulebook,
                                  .arena = arena,
                                  .problems = problems,
                                  .find = find,
                                  .context = context};
    bool is_good = resolve_stack(&resolving, names, count);
    if (arena_is_short(arena)) {
        tell_memory(problems);
        return false;
    }
    if (is_good)
        *out = rulebook;
    return is_good;
}
