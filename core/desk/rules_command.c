/* plumbrule rules: what is in force on a day. */
#include "desk.h"

#include <string.h>

#include "listing.h"
#include "report.h"
#include "review.h"

/* Each rule with its card; a card that cannot be read is a problem, and the rule still shows. */
static struct rule_entry *read_cards(struct review *review, struct bench *bench)
{
    const struct rulebook *rulebook = review->rulebook;
    struct rule_entry *entries =
        arena_take(bench->arena, (rulebook->rule_count + 1) * sizeof *entries);
    for (size_t i = 0; entries != NULL && i < rulebook->rule_count; i++) {
        struct card card = {0};
        entries[i].rule = &rulebook->rules[i];
        if (judge_read_card(&card, bench->judge, &rulebook->rules[i], bench->arena,
                            &review->problems)) {
            entries[i].title = card.title;
            entries[i].cite = card.cite;
        }
    }
    return entries;
}

static enum plumbrule_end list_rules(struct desk *desk, struct bench *bench)
{
    const struct bench_options options = {.book_directories = desk_book_directories(desk),
                                          .books = desk->given[FLAG_BOOK].items,
                                          .on = desk_last(desk, FLAG_ON)};
    const char *format = desk_last(desk, FLAG_FORMAT);
    struct review review;
    bool is_written = true;
    bench_start(bench, &review);
    if (options.book_directories == NULL)
        return PLUMBRULE_NO_MEMORY;
    if (review_find_date(&review, options.on) && bench_resolve(&review, bench, &options)) {
        struct rule_entry *entries = read_cards(&review, bench);
        size_t count = review.rulebook->rule_count;
        is_written = entries != NULL &&
                     (format != NULL && strcmp(format, "json") == 0
                          ? list_rules_as_json(&desk->out, review.rulebook, entries, count)
                          : list_rules_as_text(&desk->out, review.rulebook, entries, count));
    }
    if (!desk_tell(&review.problems) || !is_written) /* they live in the bench's arena */
        return PLUMBRULE_NO_MEMORY;
    return (enum plumbrule_end)exit_code(NULL, &review.problems, any_rule_holds(review.rulebook));
}

enum plumbrule_end run_rules(struct desk *desk)
{
    struct bench bench;
    if (desk->operands.count > 0)
        return desk_refuse(desk, "operand", "--book marrow-bay", "rules takes no '%s'",
                           desk->operands.items[0]);
    if (!desk_has(desk, FLAG_BOOK))
        desk_refuse(desk, "book-none", "--book marrow-bay",
                    "no rulebook is named; plumbrule books lists them");
    if (!desk_has(desk, FLAG_ON))
        desk_refuse(desk, "date-missing", "--on 2026-05-04",
                    "no day is given whose rules are meant: --on YYYY-MM-DD");
    if (!desk_check_date(desk) || desk->problems.count > 0)
        return PLUMBRULE_COMMAND;
    if (!bench_open(&bench))
        return PLUMBRULE_NO_MEMORY;
    enum plumbrule_end end = list_rules(desk, &bench);
    bench_close(&bench);
    return end;
}
