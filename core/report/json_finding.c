/* One finding as JSON. */
#include "parts.h"

#include <string.h>

#include "shown.h"
#include "signoff.h"

static json_t *option_json(const struct option *option)
{
    json_t *object = json_object();
    return json_whole(object,
                      json_put(object, "name", json_text(option->name)) &&
                          json_put(object, "kind", json_text(outcome_name(option->outcome))) &&
                          json_put(object, "tests", json_tests(option->tests, option->test_count)));
}

static json_t *options_json(const struct test *test)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < test->option_count; i++)
        is_whole = json_push(array, option_json(&test->options[i]));
    return json_whole(array, is_whole);
}

/* The limit's own unit for both, where the test names none: two numbers side by side in one unit.
 */
static const struct unit *shared_unit(const struct test *test)
{
    return test->unit != NULL                    ? test->unit
           : test->limit.type == AMOUNT_QUANTITY ? test->limit.quantity.unit
                                                 : NULL;
}

static json_t *margin_json(bool has_margin, double margin)
{
    return has_margin ? json_number(margin) : json_null();
}

static bool put_pair(json_t *object, const struct test *test)
{
    const struct unit *unit = shared_unit(test);
    if (test->relation == RELATION_ONE_OF || test->relation == RELATION_REVIEW ||
        test->relation == RELATION_MISSING || test->relation == RELATION_BROKEN)
        return true;
    return json_put(object, "actual", json_amount(test->actual, unit)) &&
           json_put(object, "limit",
                    test->limit.type == AMOUNT_NONE ? json_null() : json_amount(test->limit, unit));
}

static json_t *test_json(const struct test *test)
{
    json_t *object = json_object();
    double margin = test->margin;
    bool has_margin = test->has_margin;
    const char *what =
        test->what == NULL && test->relation == RELATION_MISSING ? test->missing.fact : test->what;
    if (test->relation == RELATION_ONE_OF)
        has_margin = options_margin(&margin, test->options, test->option_count);
    bool is_whole = json_put(object, "what", json_text(what)) && put_pair(object, test) &&
                    json_put(object, "relation", json_text(relation_name(test->relation))) &&
                    json_put(object, "kind", json_text(outcome_name(test->outcome))) &&
                    json_put(object, "margin", margin_json(has_margin, margin));
    if (test->relation == RELATION_ONE_OF)
        is_whole = is_whole && json_put(object, "options", options_json(test));
    return json_whole(object, is_whole);
}

json_t *json_tests(const struct test *tests, size_t count)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < count; i++)
        is_whole = json_push(array, test_json(&tests[i]));
    return json_whole(array, is_whole);
}

static bool push_missing(json_t *array, const struct missing *missing)
{
    for (size_t i = 0; i < json_array_size(array); i++) {
        const char *fact = json_string_value(json_object_get(json_array_get(array, i), "fact"));
        if (fact != NULL && missing->fact != NULL && strcmp(fact, missing->fact) == 0)
            return true; /* told by another way of the group already */
    }
    json_t *object = json_object();
    return json_push(
        array, json_whole(object, json_put(object, "fact", json_text(missing->fact)) &&
                                      json_put(object, "place", json_place(missing->place)) &&
                                      json_put(object, "example", json_text(missing->example))));
}

static bool push_all_missing(json_t *array, const struct test *tests, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        if (tests[i].relation == RELATION_MISSING && !push_missing(array, &tests[i].missing))
            return false;
        for (size_t k = 0; k < tests[i].option_count; k++)
            if (!push_all_missing(array, tests[i].options[k].tests, tests[i].options[k].test_count))
                return false;
    }
    return true;
}

static json_t *missing_json(const struct finding *finding)
{
    json_t *array = json_array();
    return json_whole(array, array != NULL &&
                                 push_all_missing(array, finding->tests, finding->test_count));
}

/* By number among the report's facts: a hundred findings may rest on one. */
static json_t *inputs_json(const struct finding *finding)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < finding->input_count; i++)
        is_whole = json_push(array, json_integer((json_int_t)finding->inputs[i]->number));
    return json_whole(array, is_whole);
}

static json_t *value_json(const struct value *value, const struct design *design)
{
    json_t *object = json_object();
    const struct entry *entry = value->state == VALUE_IN_FORCE ? value->entry : NULL;
    const struct book *book = value->book != NULL ? value->book : value->declared_by;
    return json_whole(
        object,
        json_put(object, "value", json_text(value->name)) &&
            json_put(object, "is",
                     entry != NULL ? json_amount(value_shown(value, design), NULL) : json_null()) &&
            json_put(object, "book", json_text(book != NULL ? book->name : NULL)) &&
            json_put(object, "edition", json_text(value->edition)) &&
            json_put(object, "from", entry != NULL ? json_date(entry->from) : json_null()) &&
            json_put(object, "cite", json_text(entry != NULL ? entry->cite : NULL)) &&
            json_put(object, "place", entry != NULL ? json_place(entry->place) : json_null()));
}

static json_t *values_json(const struct finding *finding, const struct design *design)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < finding->value_count; i++)
        is_whole = json_push(array, value_json(finding->values[i], design));
    return json_whole(array, is_whole);
}

static json_t *waiver_json(const struct waiver *waiver)
{
    if (waiver == NULL)
        return json_null();
    json_t *object = json_object();
    return json_whole(object, json_put(object, "reason", json_text(waiver->reason)) &&
                                  json_put(object, "granted_by", json_text(waiver->granted_by)) &&
                                  json_put(object, "permit", json_text(waiver->permit)) &&
                                  json_put(object, "until", json_date(waiver->until)) &&
                                  json_put(object, "place", json_place(waiver->place)));
}

static json_t *signoff_json(const struct signoff *signoff)
{
    if (signoff == NULL)
        return json_null();
    json_t *object = json_object();
    return json_whole(
        object, json_put(object, "by", json_text(signoff->by)) &&
                    json_put(object, "license", json_text(signoff->license)) &&
                    json_put(object, "why", json_text(signoff->why)) &&
                    json_put(object, "on", json_date(signoff->on)) &&
                    json_put(object, "until",
                             signoff->until.year != 0 ? json_date(signoff->until) : json_null()) &&
                    json_put(object, "digest", json_text(signoff->digest)) &&
                    json_put(object, "place", json_place(signoff->place)));
}

static json_t *about_json(const struct finding *finding)
{
    json_t *object = json_object();
    return json_whole(object, json_put(object, "kind", json_text(finding->about_kind)) &&
                                  json_put(object, "name", json_text(finding->about_name)));
}

static json_t *line_json(const struct line *line)
{
    json_t *object = json_object();
    return json_whole(object, json_put(object, "text", json_text(line->text)) &&
                                  json_put(object, "source", json_text(line->source)));
}

static json_t *working_json(const struct finding *finding)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < finding->line_count; i++)
        is_whole = json_push(array, line_json(&finding->working[i]));
    return json_whole(array, is_whole);
}

static const char *level_name(const struct finding *finding)
{
    return finding->outcome != OUTCOME_FAIL ? "none"
           : finding->normative == SHALL    ? "error"
                                            : "warning";
}

static bool put_head(json_t *object, const struct finding *finding, struct arena *arena)
{
    const char *message =
        finding->message != NULL ? finding->message : finding_message(finding, arena);
    return message != NULL && json_put(object, "rule", json_text(finding->rule->id)) &&
           json_put(object, "title", json_text(finding->title)) &&
           json_put(object, "kind", json_text(outcome_name(finding->outcome))) &&
           json_put(object, "level", json_text(level_name(finding))) &&
           json_put(object, "about", about_json(finding)) &&
           json_put(object, "cite", json_text(finding->cite)) &&
           json_put(object, "place", json_place(finding->place)) &&
           json_put(object, "message", json_text(message));
}

json_t *json_finding(const struct finding *finding, const struct design *design,
                     struct arena *arena)
{
    json_t *object = json_object();
    bool is_whole = put_head(object, finding, arena) &&
                    json_put(object, "tests", json_tests(finding->tests, finding->test_count)) &&
                    json_put(object, "missing", missing_json(finding)) &&
                    json_put(object, "inputs", inputs_json(finding)) &&
                    json_put(object, "decided_by", values_json(finding, design)) &&
                    json_put(object, "remedy", json_text(finding->remedy)) &&
                    json_put(object, "waived", waiver_json(finding->waiver)) &&
                    json_put(object, "signed", signoff_json(finding->signoff));
    if (is_whole && finding->line_count > 0)
        is_whole = json_put(object, "working", working_json(finding));
    return json_whole(object, is_whole);
}
