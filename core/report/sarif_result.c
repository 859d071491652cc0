/* One finding as a result: a kind for each, a level for what fails, suppressions for waivers and
 * sign-offs. */
#include <string.h>

#include "sarif.h"
#include "signoff.h"

const char *sarif_uri(const char *path, struct arena *arena)
{
    static const char plain[] =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/";
    struct text uri = {0};
    if (path[0] == '/')
        text_add_word(&uri, "file://");
    for (const char *at = path; *at != '\0'; at++)
        if (strchr(plain, *at) != NULL)
            text_add(&uri, at, 1);
        else
            text_add_format(&uri, "%%%02X", (unsigned)(unsigned char)*at);
    char *copy =
        uri.is_short || uri.bytes == NULL ? NULL : arena_copy(arena, uri.bytes, uri.length);
    text_free(&uri);
    return copy;
}

static bool put_index(json_t *location, const struct sarif *sarif, const char *path)
{
    for (size_t i = 0; i < sarif->file_count; i++)
        if (strcmp(sarif->files[i].path, path) == 0)
            return json_put(location, "index", json_integer((json_int_t)i));
    return true;
}

static json_t *region_json(struct place place)
{
    json_t *object = json_object();
    bool is_whole = json_put(object, "startLine", json_integer(place.line));
    if (is_whole && place.column > 0)
        is_whole = json_put(object, "startColumn", json_integer(place.column));
    return json_whole(object, is_whole);
}

json_t *sarif_location(const struct sarif *sarif, struct place place)
{
    json_t *object = json_object(), *physical, *artifact;
    if (place.file == NULL || object == NULL)
        return object;
    const char *uri = sarif_uri(place.file, sarif->arena);
    physical = json_object();
    artifact = json_object();
    bool is_whole = uri != NULL && json_put(artifact, "uri", json_text(uri)) &&
                    put_index(artifact, sarif, place.file);
    is_whole = json_put(physical, "artifactLocation", json_whole(artifact, is_whole));
    if (is_whole && place.line > 0)
        is_whole = json_put(physical, "region", region_json(place));
    return json_whole(object, json_put(object, "physicalLocation", json_whole(physical, is_whole)));
}

/* The place in the file, and the thing by kind and name. */
static json_t *locations_json(const struct sarif *sarif, const struct finding *finding)
{
    json_t *array = json_array(), *location = sarif_location(sarif, finding->place);
    json_t *things = json_array(), *thing = json_object();
    const char *path =
        arena_format(sarif->arena, "%s:%s", finding->about_kind, finding->about_name);
    bool is_whole = path != NULL && json_put(thing, "name", json_text(finding->about_name)) &&
                    json_put(thing, "kind", json_text(finding->about_kind)) &&
                    json_put(thing, "fullyQualifiedName", json_text(path));
    is_whole = json_push(things, json_whole(thing, is_whole));
    is_whole = json_put(location, "logicalLocations", json_whole(things, is_whole));
    return json_whole(array, json_push(array, json_whole(location, is_whole)));
}

static bool push_missing(json_t *array, const struct sarif *sarif, const struct test *tests,
                         size_t count)
{
    for (size_t i = 0; i < count; i++) {
        const struct missing *missing = &tests[i].missing;
        if (tests[i].relation == RELATION_MISSING && missing->place.file != NULL) {
            const char *text = arena_format(sarif->arena, "To give here: %s%s%s.", missing->fact,
                                            missing->example != NULL ? ", for example " : "",
                                            missing->example != NULL ? missing->example : "");
            json_t *location = sarif_location(sarif, missing->place);
            bool is_whole = text != NULL && json_put(location, "message", sarif_message(text));
            if (!json_push(array, json_whole(location, is_whole)))
                return false;
        }
        for (size_t k = 0; k < tests[i].option_count; k++)
            if (!push_missing(array, sarif, tests[i].options[k].tests,
                              tests[i].options[k].test_count))
                return false;
    }
    return true;
}

/* What is missing in several ways of a group is one place. */
static json_t *related_json(const struct sarif *sarif, const struct finding *finding)
{
    json_t *all = json_array(), *array = json_array();
    bool is_whole = all != NULL && array != NULL &&
                    push_missing(all, sarif, finding->tests, finding->test_count);
    for (size_t i = 0; is_whole && i < json_array_size(all); i++) {
        bool is_there = false;
        for (size_t k = 0; k < json_array_size(array) && !is_there; k++)
            is_there = json_equal(json_array_get(all, i), json_array_get(array, k)) == 1;
        if (!is_there)
            is_whole = json_array_append(array, json_array_get(all, i)) == 0;
    }
    json_decref(all);
    return json_whole(array, is_whole);
}

static json_t *signed_json(const struct signoff *signoff)
{
    json_t *array = json_array(), *object = json_object(), *properties = json_object();
    bool is_whole = json_put(properties, "by", json_text(signoff->by)) &&
                    json_put(properties, "license", json_text(signoff->license)) &&
                    json_put(properties, "on", json_date(signoff->on));
    is_whole = json_put(object, "properties", json_whole(properties, is_whole)) &&
               json_put(object, "kind", json_text("external")) &&
               json_put(object, "status", json_text("accepted")) &&
               json_put(object, "justification", json_text(signoff->why));
    return json_whole(array, json_push(array, json_whole(object, is_whole)));
}

static json_t *suppressions_json(const struct finding *finding)
{
    const struct waiver *waiver = finding->waiver;
    if (finding->signoff != NULL)
        return signed_json(finding->signoff);
    json_t *array = json_array();
    if (waiver == NULL)
        return array;
    json_t *object = json_object(), *properties = json_object();
    bool is_whole = json_put(properties, "granted_by", json_text(waiver->granted_by)) &&
                    json_put(properties, "permit", json_text(waiver->permit)) &&
                    json_put(properties, "until", json_date(waiver->until));
    is_whole = json_put(object, "properties", json_whole(properties, is_whole)) &&
               json_put(object, "kind", json_text("external")) &&
               json_put(object, "status", json_text("accepted")) &&
               json_put(object, "justification",
                        json_text(waiver->reason != NULL ? waiver->reason : "no reason given"));
    return json_whole(array, json_push(array, json_whole(object, is_whole)));
}

static json_t *properties_json(const struct finding *finding)
{
    double margin;
    bool has_margin = tests_margin(&margin, finding->tests, finding->test_count);
    json_t *object = json_object();
    return json_whole(
        object, json_put(object, "title", json_text(finding->title)) &&
                    json_put(object, "cite", json_text(finding->cite)) &&
                    json_put(object, "remedy", json_text(finding->remedy)) &&
                    json_put(object, "margin", has_margin ? json_number(margin) : json_null()) &&
                    json_put(object, "tests", json_tests(finding->tests, finding->test_count)));
}

static json_t *fingerprints_json(const struct sarif *sarif, const struct finding *finding)
{
    json_t *object = json_object();
    const char *print = finding_fingerprint(finding, sarif->arena);
    return json_whole(object, print != NULL && json_put(object, "plumbrule/v1", json_text(print)));
}

static json_t *result_json(const struct sarif *sarif, const struct finding *finding)
{
    size_t index = 0;
    while (index < sarif->rule_count && sarif->rules[index] != finding->rule)
        index++;
    const char *level = finding->outcome != OUTCOME_FAIL ? "none"
                        : finding->normative == SHALL    ? "error"
                                                         : "warning";
    const char *message = arena_format(sarif->arena, "%s.", finding->message);
    json_t *object = json_object();
    return json_whole(
        object, message != NULL && json_put(object, "ruleId", json_text(finding->rule->id)) &&
                    json_put(object, "ruleIndex", json_integer((json_int_t)index)) &&
                    json_put(object, "kind", json_text(outcome_name(finding->outcome))) &&
                    json_put(object, "level", json_text(level)) &&
                    json_put(object, "message", sarif_message(message)) &&
                    json_put(object, "locations", locations_json(sarif, finding)) &&
                    json_put(object, "relatedLocations", related_json(sarif, finding)) &&
                    json_put(object, "partialFingerprints", fingerprints_json(sarif, finding)) &&
                    json_put(object, "suppressions", suppressions_json(finding)) &&
                    json_put(object, "properties", properties_json(finding)));
}

json_t *sarif_results(const struct sarif *sarif)
{
    const struct findings *findings = sarif->report->findings;
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && findings != NULL && i < findings->count; i++)
        if (!sarif->report->failures_only || findings->items[i]->outcome == OUTCOME_FAIL)
            is_whole = json_push(array, result_json(sarif, findings->items[i]));
    return json_whole(array, is_whole);
}
