/* A comparison for programs. */
#include "comparison.h"

#include "parts.h"

static json_t *side_json(const struct compared_side *side)
{
    json_t *object = json_object();
    return json_whole(
        object, json_put(object, "books", json_text(side->name)) &&
                    json_put(object, "on", side->has_date ? json_date(side->on) : json_null()));
}

static json_t *book_json(const struct compared_book *book)
{
    json_t *object = json_object();
    const char *change = !book->was_there ? "added" : !book->is_there ? "gone" : "edition";
    return json_whole(object, json_put(object, "book", json_text(book->name)) &&
                                  json_put(object, "change", json_text(change)) &&
                                  json_put(object, "was", json_text(book->was)) &&
                                  json_put(object, "is", json_text(book->is)));
}

static json_t *rule_json(const struct compared_rule *rule)
{
    json_t *object = json_object();
    return json_whole(object,
                      json_put(object, "rule", json_text(rule->id)) &&
                          json_put(object, "title", json_text(rule->title)) &&
                          json_put(object, "change", json_text(rule_change_name(rule->change))) &&
                          json_put(object, "was_cite", json_text(rule->was_cite)) &&
                          json_put(object, "is_cite", json_text(rule->is_cite)) &&
                          json_put(object, "by", json_text(rule->by)));
}

static json_t *value_json(const struct compared_value *value)
{
    json_t *object = json_object();
    return json_whole(
        object, json_put(object, "value", json_text(value->name)) &&
                    json_put(object, "was", json_text(value->was)) &&
                    json_put(object, "is", json_text(value->is)) &&
                    json_put(object, "was_by", json_text(value->was_by)) &&
                    json_put(object, "is_by", json_text(value->is_by)) &&
                    json_put(object, "was_place", json_place(value->was_place)) &&
                    json_put(object, "is_place", json_place(value->is_place)) &&
                    json_put(object, "tightening", json_text(tightening_name(value->tightening))) &&
                    json_put(object, "cited_only", json_boolean(value->is_cited_only)) &&
                    json_put(object, "next", json_text(value->next)));
}

static json_t *changes_json(const struct comparison *comparison)
{
    json_t *books = json_array(), *rules = json_array(), *values = json_array();
    json_t *object = json_object();
    bool is_whole = true;
    for (size_t i = 0; is_whole && i < comparison->book_count; i++)
        is_whole = json_push(books, book_json(&comparison->books[i]));
    for (size_t i = 0; is_whole && i < comparison->rule_count; i++)
        is_whole = json_push(rules, rule_json(&comparison->rules[i]));
    for (size_t i = 0; is_whole && i < comparison->value_count; i++)
        is_whole = json_push(values, value_json(&comparison->values[i]));
    is_whole = json_put(object, "books", books) && is_whole;
    is_whole = json_put(object, "rules", rules) && is_whole;
    is_whole = json_put(object, "values", values) && is_whole;
    return json_whole(object, is_whole);
}

static bool put_count(json_t *object, const char *key, size_t count)
{
    return json_put(object, key, json_integer((json_int_t)count));
}

static json_t *counts_json(struct comparison_counts counts)
{
    json_t *object = json_object();
    return json_whole(object, put_count(object, "paired", counts.paired) &&
                                  put_count(object, "newly_fail", counts.newly_fail) &&
                                  put_count(object, "no_longer_fail", counts.no_longer_fail) &&
                                  put_count(object, "newly_open", counts.newly_open) &&
                                  put_count(object, "newly_for_person", counts.newly_for_person) &&
                                  put_count(object, "added", counts.added) &&
                                  put_count(object, "gone", counts.gone) &&
                                  put_count(object, "other_numbers", counts.other_numbers));
}

static json_t *finding_json(const struct compared_finding *finding)
{
    json_t *object = json_object();
    return json_whole(object,
                      json_put(object, "rule", json_text(finding->rule)) &&
                          json_put(object, "title", json_text(finding->title)) &&
                          json_put(object, "about", json_text(finding->about)) &&
                          json_put(object, "was", json_text(standing_name(finding->was))) &&
                          json_put(object, "is", json_text(standing_name(finding->is))) &&
                          json_put(object, "was_message", json_text(finding->was_message)) &&
                          json_put(object, "is_message", json_text(finding->is_message)) &&
                          json_put(object, "place", json_place(finding->place)));
}

static json_t *design_json(const struct compared_design *design)
{
    json_t *findings = json_array(), *object = json_object();
    bool is_whole = true;
    for (size_t i = 0; is_whole && i < design->finding_count; i++)
        is_whole = json_push(findings, finding_json(&design->findings[i]));
    is_whole = json_put(object, "findings", findings) && is_whole;
    return json_whole(object, is_whole && json_put(object, "design", json_text(design->path)) &&
                                  json_put(object, "compared", json_boolean(design->is_compared)) &&
                                  json_put(object, "counts", counts_json(design->counts)));
}

static json_t *designs_json(const struct comparison *comparison)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < comparison->design_count; i++)
        is_whole = json_push(array, design_json(&comparison->designs[i]));
    return json_whole(array, is_whole);
}

static json_t *problems_json(const struct problems *problems)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < problems->count; i++) {
        const struct problem *problem = &problems->items[i];
        json_t *object = json_object();
        is_whole = json_push(
            array,
            json_whole(object, json_put(object, "code", json_text(problem->code)) &&
                                   json_put(object, "message", json_text(problem->message)) &&
                                   json_put(object, "place", json_place(problem->place)) &&
                                   json_put(object, "other", json_place(problem->other)) &&
                                   json_put(object, "example", json_text(problem->example))));
    }
    return json_whole(array, is_whole);
}

bool comparison_write_json(struct text *out, const struct comparison *comparison,
                           const struct problems *problems)
{
    json_t *object = json_object();
    bool is_whole = json_put(object, "plumbrule", json_integer(1)) &&
                    json_put(object, "was", side_json(&comparison->was)) &&
                    json_put(object, "is", side_json(&comparison->is)) &&
                    json_put(object, "changes",
                             comparison->has_books ? changes_json(comparison) : json_null()) &&
                    json_put(object, "counts", counts_json(comparison_count(comparison))) &&
                    json_put(object, "designs", designs_json(comparison)) &&
                    json_put(object, "problems", problems_json(problems));
    bool is_written = json_write(out, json_whole(object, is_whole), JSON_INDENT(2));
    text_add(out, "\n", 1);
    return is_written && !out->is_short;
}
