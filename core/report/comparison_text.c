/* A comparison for people: what changed in the books, then what it does, design by design. */
#include "comparison.h"

#include "block.h"

enum { WIDTH = 80, ITEM_AT = 2, BELOW_AT = 6 };

struct telling {
    struct page page;
    const struct comparison *comparison;
    struct arena *arena;
};

static bool tell_item(struct telling *telling, const char *label, const char *text)
{
    if (label == NULL || text == NULL)
        return false;
    page_paragraph(&telling->page, ITEM_AT, label, STYLE_PLAIN, BELOW_AT, text);
    return true;
}

static bool tell_below(struct telling *telling, const char *text)
{
    if (text == NULL)
        return false;
    page_paragraph(&telling->page, 0, NULL, STYLE_PLAIN, BELOW_AT, text);
    return true;
}

static const char *side_text(const struct telling *telling, const struct compared_side *side)
{
    char on[16] = "";
    if (side->has_date)
        date_write(on, sizeof on, side->on);
    return arena_format(telling->arena, "%s%s%s", side->name, on[0] ? " on " : "", on);
}

static bool tell_head(struct telling *telling)
{
    const char *was = side_text(telling, &telling->comparison->was);
    const char *is = side_text(telling, &telling->comparison->is);
    if (was == NULL || is == NULL)
        return false;
    page_paragraph(&telling->page, 0, "old:", STYLE_PLAIN, 5, was);
    page_paragraph(&telling->page, 0, "new:", STYLE_PLAIN, 5, is);
    return true;
}

static bool tell_books(struct telling *telling)
{
    const struct comparison *comparison = telling->comparison;
    if (comparison->book_count > 0)
        page_heading(&telling->page, STYLE_STRONG, "Books");
    for (size_t i = 0; i < comparison->book_count; i++) {
        const struct compared_book *book = &comparison->books[i];
        const char *text =
            !book->was_there ? arena_format(telling->arena, "added%s%s",
                                            book->is ? ", edition " : "", book->is ? book->is : "")
            : !book->is_there
                ? "no longer there"
                : arena_format(telling->arena, "edition %s -> %s", book->was ? book->was : "none",
                               book->is ? book->is : "none");
        if (!tell_item(telling, arena_format(telling->arena, "%s:", book->name), text))
            return false;
    }
    return true;
}

static bool tell_rule(struct telling *telling, const struct compared_rule *rule)
{
    struct arena *arena = telling->arena;
    const char *label = arena_format(arena, "%s %s:", rule_change_name(rule->change), rule->id);
    const char *title = rule->title != NULL ? rule->title : "its card cannot be read";
    const char *text = arena_format(arena, "%s (%s)", title,
                                    rule->is_cite != NULL    ? rule->is_cite
                                    : rule->was_cite != NULL ? rule->was_cite
                                                             : "no citation");
    if (rule->change == RULE_CITED)
        text = arena_format(arena, "%s -> %s", rule->was_cite != NULL ? rule->was_cite : "none",
                            rule->is_cite != NULL ? rule->is_cite : "none");
    return tell_item(telling, label, text) &&
           (rule->by == NULL || rule->change == RULE_CITED || tell_below(telling, rule->by));
}

/* What holds or no longer holds first, then new texts, then citations. */
static bool tell_rules(struct telling *telling)
{
    const struct comparison *comparison = telling->comparison;
    if (comparison->rule_count > 0)
        page_heading(&telling->page, STYLE_STRONG, "Rules");
    for (enum rule_change change = RULE_ADDED; change <= RULE_CITED; change++)
        for (size_t i = 0; i < comparison->rule_count; i++)
            if (comparison->rules[i].change == change && !tell_rule(telling, &comparison->rules[i]))
                return false;
    return true;
}

static const char *number_or(const char *number, const char *by)
{
    return number != NULL ? number : by != NULL ? "no number in force" : "not there";
}

static bool tell_side(struct telling *telling, const char *label, const char *by,
                      struct place where)
{
    const char *place = place_text(where, telling->arena);
    return by == NULL ||
           (place != NULL &&
            tell_below(telling, arena_format(telling->arena, "%s %s%s%s%s", label, by,
                                             place[0] ? " (" : "", place, place[0] ? ")" : "")));
}

static bool tell_value(struct telling *telling, const struct compared_value *value)
{
    const char *tightening = tightening_name(value->tightening);
    const char *text =
        value->is_cited_only
            ? arena_format(telling->arena, "%s, cited anew: %s -> %s", value->is, value->was_by,
                           value->is_by)
            : arena_format(telling->arena, "%s -> %s%s%s%s%s", number_or(value->was, value->was_by),
                           number_or(value->is, value->is_by), tightening != NULL ? ", " : "",
                           tightening != NULL ? tightening : "",
                           value->next != NULL ? "; the next holds from " : "",
                           value->next != NULL ? value->next : "");
    return tell_item(telling, arena_format(telling->arena, "%s:", value->name), text) &&
           (value->is_cited_only || (tell_side(telling, "was:", value->was_by, value->was_place) &&
                                     tell_side(telling, "is:", value->is_by, value->is_place)));
}

/* Numbers first, then what is only cited anew. */
static bool tell_values(struct telling *telling)
{
    const struct comparison *comparison = telling->comparison;
    if (comparison->value_count > 0)
        page_heading(&telling->page, STYLE_STRONG, "Values");
    for (int cited = 0; cited < 2; cited++)
        for (size_t i = 0; i < comparison->value_count; i++)
            if (comparison->values[i].is_cited_only == (cited == 1) &&
                !tell_value(telling, &comparison->values[i]))
                return false;
    return true;
}

static const char *standing_words(enum standing standing)
{
    static const char *const words[STANDING_COUNT] = {[STANDING_NONE] = "nothing",
                                                      [STANDING_FAIL] = "fails",
                                                      [STANDING_ADVICE] = "falls short",
                                                      [STANDING_WAIVED] = "waived",
                                                      [STANDING_OPEN] = "open",
                                                      [STANDING_REVIEW] = "for a person",
                                                      [STANDING_SIGNED] = "signed",
                                                      [STANDING_PASS] = "stands",
                                                      [STANDING_INFORMATIONAL] = "to know",
                                                      [STANDING_NOT_APPLICABLE] = "does not apply"};
    return words[standing];
}

static bool tell_finding(struct telling *telling, const struct compared_finding *finding)
{
    const char *label = arena_format(telling->arena, "%s -> %s:", standing_words(finding->was),
                                     standing_words(finding->is));
    const char *message = finding->is_message != NULL ? finding->is_message : finding->was_message;
    return tell_item(telling, label,
                     arena_format(telling->arena, "%s, %s", finding->rule, finding->about)) &&
           (finding->is == STANDING_NOT_APPLICABLE ||
            tell_below(telling, arena_format(telling->arena, "%s%s.",
                                             finding->is_message == NULL ? "was: " : "", message)));
}

static bool is_quiet(const struct compared_finding *finding)
{
    return (finding->was == STANDING_NONE || finding->is == STANDING_NONE) &&
           finding->was != STANDING_FAIL && finding->is != STANDING_FAIL &&
           finding->is != STANDING_OPEN && finding->is != STANDING_REVIEW &&
           finding->is != STANDING_ADVICE;
}

/* The worst first; findings that came or went and need nobody are only counted. */
static bool tell_findings(struct telling *telling, const struct compared_design *design)
{
    for (enum standing is = STANDING_NONE; is < STANDING_COUNT; is++)
        for (size_t i = 0; i < design->finding_count; i++) {
            /* what one side alone says comes behind what both say */
            enum standing order = is + 1 < STANDING_COUNT ? (enum standing)(is + 1) : STANDING_NONE;
            if (design->findings[i].is == order && !is_quiet(&design->findings[i]) &&
                !tell_finding(telling, &design->findings[i]))
                return false;
        }
    return true;
}

static bool tell_counts(struct telling *telling, struct comparison_counts counts)
{
    const struct {
        size_t count;
        const char *words;
    } parts[] = {{counts.newly_fail, "newly failing"},
                 {counts.no_longer_fail, "no longer failing"},
                 {counts.newly_open, "newly open"},
                 {counts.newly_for_person, "newly for a person"},
                 {counts.added, "added"},
                 {counts.gone, "gone"},
                 {counts.other_numbers, "with other numbers, as before in outcome"}};
    const char *text = "";
    for (size_t i = 0; i < sizeof parts / sizeof parts[0] && text != NULL; i++)
        if (parts[i].count > 0)
            text = arena_format(telling->arena, "%s%s%zu %s", text, text[0] ? ", " : "",
                                parts[i].count, parts[i].words);
    if (text == NULL)
        return false;
    const char *line =
        arena_format(telling->arena, "%zu finding%s on both sides; %s.", counts.paired,
                     counts.paired == 1 ? "" : "s", text[0] ? text : "nothing is otherwise");
    if (line != NULL)
        page_paragraph(&telling->page, 0, NULL, STYLE_PLAIN, ITEM_AT, line);
    return line != NULL;
}

static bool tell_design(struct telling *telling, const struct compared_design *design)
{
    page_heading(&telling->page, STYLE_STRONG, design->path);
    if (!design->is_compared) {
        page_paragraph(&telling->page, 0, NULL, STYLE_PLAIN, ITEM_AT,
                       "Not compared: one side could not be made.");
        return true;
    }
    return tell_findings(telling, design) && tell_counts(telling, design->counts);
}

static bool tell_sum(struct telling *telling)
{
    const struct comparison *comparison = telling->comparison;
    size_t compared = 0;
    if (comparison->design_count < 2)
        return true;
    for (size_t i = 0; i < comparison->design_count; i++)
        compared += comparison->designs[i].is_compared;
    const char *head = arena_format(telling->arena, "All %zu designs, %zu of them compared",
                                    comparison->design_count, compared);
    if (head == NULL)
        return false;
    page_heading(&telling->page, STYLE_STRONG, head);
    return tell_counts(telling, comparison_count(comparison));
}

static bool tell_all(struct telling *telling)
{
    const struct comparison *comparison = telling->comparison;
    if (!tell_head(telling))
        return false;
    if (!comparison->has_books)
        page_paragraph(&telling->page, 0, NULL, STYLE_PLAIN, 0,
                       "The books cannot be compared: see what is wrong in them.");
    else if (comparison->book_count + comparison->rule_count + comparison->value_count == 0)
        page_paragraph(&telling->page, 0, NULL, STYLE_PLAIN, 0, "The books say the same.");
    if (!tell_books(telling) || !tell_rules(telling) || !tell_values(telling))
        return false;
    for (size_t i = 0; i < comparison->design_count; i++)
        if (!tell_design(telling, &comparison->designs[i]))
            return false;
    return tell_sum(telling);
}

bool comparison_write_text(struct text *out, const struct comparison *comparison)
{
    struct arena *arena = arena_new();
    struct telling telling = {{out, WIDTH, false}, comparison, arena};
    bool is_written = arena != NULL && tell_all(&telling);
    arena_free(arena);
    return is_written && !out->is_short;
}
