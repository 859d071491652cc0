/* plumbrule explain: the whole working of what one rule says. */
#include "desk.h"

#include <string.h>

#include "explanation.h"
#include "review.h"

static bool is_complete(struct desk *desk)
{
    if (desk->operands.count != 1)
        desk_refuse(
            desk, desk->operands.count == 0 ? "design-none" : "design-many",
            "plumbrule explain house.yaml --rule irc/ridge-clearance --book marrow-bay", "%s",
            desk->operands.count == 0 ? "no design is named" : "one design is explained at a time");
    if (!desk_has(desk, FLAG_RULE))
        desk_refuse(desk, "rule-none", "--rule irc/ridge-clearance",
                    "it is not said which rule; plumbrule rules lists them");
    if (!desk_has(desk, FLAG_BOOK))
        desk_refuse(desk, "book-none", "--book marrow-bay",
                    "no rulebook is named; plumbrule books lists them");
    return desk_check_date(desk) && desk->problems.count == 0;
}

/* Refuses a word that is not among those there are, naming the near one. */
static enum plumbrule_end refuse_word(struct desk *desk, const char *code, const char *what,
                                      const char *word, const char *const *known, size_t count)
{
    const char *near = text_find_near(word, known, count);
    if (near != NULL)
        return desk_refuse(desk, code, NULL, "%s '%s'; did you mean '%s'?", what, word, near);
    const char *list = "";
    for (size_t i = 0; i < count && i < 12 && list != NULL; i++)
        list = arena_format(desk->arena, "%s%s%s", list, i > 0 ? ", " : "", known[i]);
    return desk_refuse(desk, code, NULL, "%s '%s'%s%s%s", what, word,
                       count > 0 && count <= 12 ? "; there is " : "",
                       count <= 12 && list != NULL ? list : "",
                       count > 12 ? "; plumbrule rules lists them" : "");
}

/* The id of a rule that is named without its book; NULL: there is none such. */
static const char *find_without_book(const char *word, const char *const *ids, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        const char *slash = strchr(ids[i], '/');
        if (slash != NULL && strcmp(slash + 1, word) == 0)
            return ids[i];
    }
    return NULL;
}

/* Ids of the rulebook, and of findings that no book has a rule for. */
static enum plumbrule_end refuse_rule(struct desk *desk, const struct review *review)
{
    size_t count = review->rulebook->rule_count;
    const char **ids = arena_take(desk->arena, (count + 2) * sizeof *ids);
    if (ids == NULL)
        return PLUMBRULE_NO_MEMORY;
    for (size_t i = 0; i < count; i++)
        ids[i] = review->rulebook->rules[i].id;
    ids[count] = "plumbrule/scope";
    const char *rule = desk_last(desk, FLAG_RULE);
    const char *whole = find_without_book(rule, ids, count + 1);
    if (whole != NULL)
        return desk_refuse(desk, "rule-unknown", NULL,
                           "a rule is named with its book: did you mean '%s'?", whole);
    return refuse_word(desk, "rule-unknown", "the books have no rule", rule, ids, count + 1);
}

static bool is_of(const struct finding *finding, const char *rule)
{
    return strcmp(finding->rule->id, rule) == 0;
}

/* "roof_plane south", "roof_plane:south" or the name alone. */
static bool is_about(const struct finding *finding, const char *about)
{
    size_t kind = strlen(finding->about_kind);
    return about == NULL || strcmp(about, finding->about_name) == 0 ||
           (strncmp(about, finding->about_kind, kind) == 0 &&
            (about[kind] == ':' || about[kind] == ' ') &&
            strcmp(about + kind + 1, finding->about_name) == 0);
}

static enum plumbrule_end refuse_thing(struct desk *desk, const struct review *review)
{
    const char *rule = desk_last(desk, FLAG_RULE), *about = desk_last(desk, FLAG_ABOUT);
    const struct findings *findings = &review->findings;
    const char **things = arena_take(desk->arena, (2 * findings->count + 1) * sizeof *things);
    size_t count = 0;
    for (size_t i = 0; things != NULL && i < findings->count; i++) {
        const struct finding *one = findings->items[i];
        if (is_of(one, rule))
            things[count++] = arena_format(desk->arena, "%s %s", one->about_kind, one->about_name);
        if (is_of(one, rule) && things[count - 1] == NULL)
            return PLUMBRULE_NO_MEMORY;
    }
    if (things == NULL)
        return PLUMBRULE_NO_MEMORY;
    const char *what = arena_format(desk->arena, "%s says nothing in this design of a thing", rule);
    return what == NULL ? PLUMBRULE_NO_MEMORY
                        : refuse_word(desk, "thing-unknown", what, about, things, count);
}

/* Every finding of the rule about the thing, else about all. Those that wait for nothing to look
 * at say so. */
static enum plumbrule_end explain(struct desk *desk, const struct review *review,
                                  const struct report *report)
{
    const char *rule = desk_last(desk, FLAG_RULE), *about = desk_last(desk, FLAG_ABOUT);
    const struct rule *known = rulebook_find_rule(review->rulebook, rule);
    size_t told = 0, of_rule = 0;
    for (size_t i = 0; i < review->findings.count; i++) {
        const struct finding *one = review->findings.items[i];
        of_rule += is_of(one, rule);
        if (!is_of(one, rule) || !is_about(one, about))
            continue;
        if (told++ > 0)
            text_add_word(&desk->out, "\n\n");
        if (!explanation_write(&desk->out, report, one))
            return PLUMBRULE_NO_MEMORY;
    }
    if (told > 0)
        return PLUMBRULE_STANDS;
    if (of_rule > 0)
        return refuse_thing(desk, review);
    if (known == NULL)
        return refuse_rule(desk, review);
    return explanation_write_absent(&desk->out, report, known) ? PLUMBRULE_STANDS
                                                               : PLUMBRULE_NO_MEMORY;
}

static enum plumbrule_end review_and_explain(struct desk *desk, struct bench *bench,
                                             const struct bench_options *options)
{
    struct review review;
    const char *path = desk->operands.items[0];
    if (!bench_review(&review, bench, path, options))
        return PLUMBRULE_NO_MEMORY;
    const struct report report = {.design_path = path,
                                  .design = review.design,
                                  .rulebook = review.rulebook,
                                  .findings = &review.findings,
                                  .problems = &review.problems,
                                  .has_date = review.has_date,
                                  .on = review.on,
                                  .version = plumbrule_version(),
                                  .with_working = true};
    enum plumbrule_end end = PLUMBRULE_STANDS;
    if (review.design != NULL && review.rulebook != NULL)
        end = explain(desk, &review, &report);
    if (!desk_tell(&review.problems)) /* they live in the bench's arena */
        return PLUMBRULE_NO_MEMORY;
    int code = exit_code(NULL, &review.problems, any_rule_holds(review.rulebook));
    return (enum plumbrule_end)exit_code_first((int)end, code);
}

enum plumbrule_end run_explain(struct desk *desk)
{
    struct bench bench;
    if (!is_complete(desk))
        return PLUMBRULE_COMMAND;
    const struct bench_options options = {.book_directories = desk_book_directories(desk),
                                          .catalogue_directories =
                                              desk->given[FLAG_CATALOGUES].items,
                                          .books = desk->given[FLAG_BOOK].items,
                                          .on = desk_last(desk, FLAG_ON),
                                          .with_working = true};
    if (options.book_directories == NULL || !bench_open(&bench))
        return PLUMBRULE_NO_MEMORY;
    enum plumbrule_end end = review_and_explain(desk, &bench, &options);
    bench_close(&bench);
    return end;
}
