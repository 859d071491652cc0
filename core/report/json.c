/* The report for programs: the shape is documented with its schema. */
#include "report.h"

#include <string.h>

#include "parts.h"
#include "unread.h"

enum { SHAPE = 1 };

static json_t *book_json(const struct book_in_force *one)
{
    json_t *object = json_object();
    return json_whole(
        object, json_put(object, "book", json_text(one->book->name)) &&
                    json_put(object, "edition", json_text(one->edition)) &&
                    json_put(object, "title", json_text(one->book->title)) &&
                    json_put(object, "adopted_by",
                             json_text(one->adopted_by != NULL ? one->adopted_by->name : NULL)));
}

static json_t *books_json(const struct rulebook *rulebook)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && rulebook != NULL && i < rulebook->book_count; i++)
        is_whole = json_push(array, book_json(&rulebook->books[i]));
    return json_whole(array, is_whole);
}

static json_t *counts_json(const struct findings *findings)
{
    struct finding_counts counts = {{0}, 0, 0, 0};
    json_t *object = json_object();
    bool is_whole = object != NULL;
    if (findings != NULL)
        counts = findings_count(findings);
    for (size_t i = 0; is_whole && i < OUTCOME_COUNT; i++)
        is_whole =
            json_put(object, outcome_name((enum outcome)i), json_integer((json_int_t)counts.of[i]));
    return json_whole(
        object,
        is_whole &&
            json_put(object, "failing_should", json_integer((json_int_t)counts.failing_should)) &&
            json_put(object, "waived", json_integer((json_int_t)counts.waived)) &&
            json_put(object, "signed", json_integer((json_int_t)counts.signed_off)));
}

static json_t *problem_json(const struct problem *problem)
{
    json_t *object = json_object();
    bool is_whole = json_put(object, "code", json_text(problem->code)) &&
                    json_put(object, "message", json_text(problem->message)) &&
                    json_put(object, "place", json_place(problem->place));
    if (is_whole && problem->other.file != NULL)
        is_whole = json_put(object, "other", json_place(problem->other));
    if (is_whole && problem->example != NULL)
        is_whole = json_put(object, "example", json_text(problem->example));
    return json_whole(object, is_whole);
}

static json_t *problems_json(const struct problems *problems)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < problems->count; i++)
        is_whole = json_push(array, problem_json(&problems->items[i]));
    return json_whole(array, is_whole);
}

static json_t *fact_json(const struct input *input, struct arena *arena)
{
    json_t *object = json_object();
    const char *name = input_name(input, arena);
    bool is_whole = name != NULL && json_put(object, "fact", json_text(name));
    is_whole = is_whole &&
               (input->is.type == AMOUNT_NONE ? json_put(object, "value", json_text(input->text)) &&
                                                    json_put(object, "unit", json_null())
                                              : json_put_amount(object, input->is, NULL));
    return json_whole(object, is_whole && json_put(object, "place", json_place(input->place)) &&
                                  json_put(object, "source", json_text(input->source)) &&
                                  json_put(object, "assumed",
                                           input->is_assumed ? json_text(input->assumed_why != NULL
                                                                             ? input->assumed_why
                                                                             : "not given")
                                                             : json_null()));
}

static json_t *unread_json(const struct unread *unread)
{
    json_t *object = json_object();
    return json_whole(object,
                      json_put(object, "kind", json_text(unread->kind->name)) &&
                          json_put(object, "fact", json_text(unread->fact->name)) &&
                          json_put(object, "given", json_integer((json_int_t)unread->given)) &&
                          json_put(object, "unread", json_integer((json_int_t)unread->unread)));
}

static json_t *not_checked_json(const struct report *report, struct arena *arena)
{
    json_t *array = json_array();
    struct unread *unread = NULL;
    size_t count = 0;
    bool is_whole = array != NULL;
    if (report->design != NULL && report->findings != NULL)
        is_whole = is_whole && unread_collect(&unread, &count, report, arena);
    for (size_t i = 0; is_whole && i < count; i++)
        is_whole = json_push(array, unread_json(&unread[i]));
    return json_whole(array, is_whole);
}

static json_t *head_json(const struct report *report)
{
    json_t *object = json_object();
    return json_whole(
        object,
        json_put(object, "plumbrule", json_integer(SHAPE)) &&
            json_put(object, "version", json_text(report->version)) &&
            json_put(object, "design", json_text(report->design_path)) &&
            json_put(object, "books", books_json(report->rulebook)) &&
            json_put(object, "on", report->has_date ? json_date(report->on) : json_null()) &&
            json_put(object, "counts", counts_json(report->findings)) &&
            json_put(object, "problems", problems_json(report->problems)));
}

static json_t *tail_json(const struct report *report, struct arena *arena)
{
    json_t *object = json_object();
    return json_whole(object, json_put(object, "not_checked", not_checked_json(report, arena)) &&
                                  json_put(object, "caution", json_text(report_caution())));
}

/* The long lists of a report, item by item. */
static json_t *finding_at(const struct report *report, size_t at, struct arena *arena)
{
    return json_finding(report->findings->items[at], report->design, arena);
}

static json_t *fact_at(const struct report *report, size_t at, struct arena *arena)
{
    return fact_json(report->findings->inputs[at], arena);
}

typedef json_t *item_at(const struct report *report, size_t at, struct arena *arena);

static bool put_list(json_t *object, const char *key, const struct report *report, item_at *item,
                     size_t count, struct arena *arena)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < count; i++)
        is_whole = json_push(array, item(report, i, arena));
    return json_put(object, key, json_whole(array, is_whole));
}

static size_t finding_count(const struct report *report)
{
    return report->findings != NULL ? report->findings->count : 0;
}

static size_t fact_count(const struct report *report)
{
    return report->findings != NULL ? report->findings->input_count : 0;
}

static json_t *report_json(const struct report *report, struct arena *arena)
{
    json_t *object = head_json(report), *tail = tail_json(report, arena);
    bool is_whole =
        object != NULL && tail != NULL &&
        put_list(object, "findings", report, finding_at, finding_count(report), arena) &&
        put_list(object, "facts", report, fact_at, fact_count(report), arena) &&
        json_object_update(object, tail) == 0;
    json_decref(tail);
    return json_whole(object, is_whole);
}

/* The members of an object without its braces. */
static bool write_members(struct text *out, json_t *object)
{
    size_t begin = out->length;
    if (!json_write(out, object, JSON_COMPACT))
        return false;
    out->length--;
    memmove(out->bytes + begin, out->bytes + begin + 1, out->length - begin - 1);
    out->length--;
    return true;
}

/* What stands so far goes on its way where somebody takes it. */
static bool hand_on(struct text *out, const struct report *report)
{
    enum { PART = 32 * 1024 };
    return report->hand_on == NULL || out->length < PART || report->hand_on(out, report->taker);
}

static bool write_list(struct text *out, const char *key, const struct report *report,
                       item_at *item, size_t count, struct arena *arena)
{
    text_add_format(out, ",\"%s\":[", key);
    for (size_t i = 0; i < count; i++) {
        if (i > 0)
            text_add(out, ",", 1);
        if (!json_write(out, item(report, i, arena), JSON_COMPACT) || !hand_on(out, report))
            return false;
    }
    text_add(out, "]", 1);
    return true;
}

/* The same as compact JSON, but never whole in memory: batches run with little. */
bool report_write_ndjson(struct text *out, const struct report *report)
{
    struct arena *arena = arena_new();
    text_add(out, "{", 1);
    bool is_written =
        arena != NULL && write_members(out, head_json(report)) &&
        write_list(out, "findings", report, finding_at, finding_count(report), arena) &&
        write_list(out, "facts", report, fact_at, fact_count(report), arena);
    text_add(out, ",", 1);
    is_written = is_written && write_members(out, tail_json(report, arena));
    text_add(out, "}\n", 2);
    arena_free(arena);
    return is_written && !out->is_short;
}

bool report_write_json(struct text *out, const struct report *report)
{
    struct arena *arena = arena_new();
    bool is_written =
        json_write(out, arena != NULL ? report_json(report, arena) : NULL, JSON_INDENT(2));
    text_add(out, "\n", 1);
    arena_free(arena);
    return is_written && !out->is_short;
}
