/* The same lists for programs. */
#include "listing.h"

#include "parts.h"

static json_t *whole(json_t *value, bool is_whole)
{
    if (is_whole && value != NULL)
        return value;
    json_decref(value);
    return NULL;
}

static int add_dumped(const char *bytes, size_t length, void *out)
{
    text_add(out, bytes, length);
    return ((struct text *)out)->is_short ? -1 : 0;
}

/* Writes the value and frees it. */
static bool dump(struct text *out, json_t *json)
{
    bool is_written =
        json != NULL && json_dump_callback(json, add_dumped, out, JSON_INDENT(2)) == 0;
    text_add(out, "\n", 1);
    json_decref(json);
    return is_written && !out->is_short;
}

static json_t *act_json(const struct act *act)
{
    json_t *object = json_object();
    return whole(object, json_put(object, "book", json_text(act->book->name)) &&
                             json_put(object, "verb", json_text(act->verb)) &&
                             json_put(object, "from", json_date(act->from)) &&
                             json_put(object, "cite", json_text(act->cite)) &&
                             json_put(object, "place", json_place(act->place)));
}

static json_t *acts_json(const struct rule *rule)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < rule->act_count; i++)
        is_whole = json_push(array, act_json(&rule->acts[i]));
    return whole(array, is_whole);
}

static json_t *rule_json(const struct rule_entry *entry)
{
    const struct rule *rule = entry->rule;
    json_t *object = json_object();
    return whole(object,
                 json_put(object, "rule", json_text(rule->id)) &&
                     json_put(object, "title", json_text(entry->title)) &&
                     json_put(object, "cite", json_text(entry->cite)) &&
                     json_put(object, "book", json_text(rule->book->name)) &&
                     json_put(object, "edition", json_text(rule->edition)) &&
                     json_put(object, "holds", json_boolean(rule->holds)) &&
                     json_put(object, "text_by",
                              json_text(rule->text_by != NULL ? rule->text_by->name : NULL)) &&
                     json_put(object, "path", json_text(rule->path)) &&
                     json_put(object, "acts", acts_json(rule)));
}

bool list_rules_as_json(struct text *out, const struct rulebook *rulebook,
                        const struct rule_entry *entries, size_t count)
{
    json_t *array = json_array(), *object = json_object();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < count; i++)
        is_whole = json_push(array, rule_json(&entries[i]));
    is_whole = is_whole && json_put(object, "plumbrule", json_integer(1)) &&
               json_put(object, "on", json_date(rulebook->on));
    if (!json_put(object, "rules", array)) /* takes the array over, also where it fails */
        is_whole = false;
    return dump(out, whole(object, is_whole));
}

static json_t *editions_json(const struct book *book)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && book->editions != NULL && book->editions[i] != NULL; i++)
        is_whole = json_push(array, json_text(book->editions[i]));
    return whole(array, is_whole);
}

static json_t *book_json(const struct book *book)
{
    json_t *object = json_object();
    return whole(object, json_put(object, "book", json_text(book->name)) &&
                             json_put(object, "title", json_text(book->title)) &&
                             json_put(object, "role", json_text(role_name(book->role))) &&
                             json_put(object, "editions", editions_json(book)) &&
                             json_put(object, "scope", json_text(book->scope)) &&
                             json_put(object, "maintained_by", json_text(book->maintained_by)) &&
                             json_put(object, "path", json_text(book->directory)));
}

bool list_books_as_json(struct text *out, const struct book *const *books, size_t count)
{
    json_t *array = json_array(), *object = json_object();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < count; i++)
        is_whole = json_push(array, book_json(books[i]));
    is_whole = is_whole && json_put(object, "plumbrule", json_integer(1));
    if (!json_put(object, "books", array))
        is_whole = false;
    return dump(out, whole(object, is_whole));
}
