#include "sarif.h"

#include <assert.h>
#include <string.h>

#include "envelope.h"

json_t *sarif_message(const char *text)
{
    json_t *object = json_object();
    return json_whole(object, json_put(object, "text", json_text(text != NULL ? text : "")));
}

/* Adds a member unless its text is missing. */
static bool put_text(json_t *object, const char *key, const char *text)
{
    return text == NULL || json_put(object, key, json_text(text));
}

/* ---- the tool and its rules ------------------------------------------------------------------ */

static const struct finding *first_of(const struct sarif *sarif, const struct rule *rule,
                                      bool with_remedy)
{
    const struct findings *findings = sarif->report->findings;
    for (size_t i = 0; i < findings->count; i++)
        if (findings->items[i]->rule == rule &&
            (!with_remedy || findings->items[i]->remedy != NULL))
            return findings->items[i];
    return NULL;
}

static json_t *rule_properties(const struct rule *rule, const struct finding *finding)
{
    json_t *object = json_object();
    return json_whole(object,
                      object != NULL && put_text(object, "cite", finding->cite) &&
                          put_text(object, "book", rule->book != NULL ? rule->book->name : NULL) &&
                          put_text(object, "edition", rule->edition));
}

static json_t *rule_json(const struct sarif *sarif, const struct rule *rule)
{
    const struct finding *finding = first_of(sarif, rule, false);
    const struct finding *remedied = first_of(sarif, rule, true);
    assert(finding != NULL); /* rules are collected from findings */
    const char *title = finding->title != NULL ? finding->title : rule->id;
    const char *full =
        arena_format(sarif->arena, "%s. It stands in %s%s%s, %s.", title,
                     rule->book != NULL ? rule->book->name : "the program itself",
                     rule->edition != NULL ? " " : "", rule->edition != NULL ? rule->edition : "",
                     finding->cite != NULL ? finding->cite : "without a citation");
    const char *help = remedied == NULL
                           ? full
                           : arena_format(sarif->arena, "%s What to do where it fails: %s", full,
                                          remedied->remedy);
    json_t *object = json_object();
    return json_whole(object,
                      full != NULL && help != NULL && json_put(object, "id", json_text(rule->id)) &&
                          json_put(object, "shortDescription",
                                   sarif_message(arena_format(sarif->arena, "%s.", title))) &&
                          json_put(object, "fullDescription", sarif_message(full)) &&
                          json_put(object, "help", sarif_message(help)) &&
                          json_put(object, "properties", rule_properties(rule, finding)));
}

static json_t *tool_json(const struct sarif *sarif)
{
    json_t *tool = json_object(), *driver = json_object(), *rules = json_array();
    bool is_whole = rules != NULL;
    for (size_t i = 0; is_whole && i < sarif->rule_count; i++)
        is_whole = json_push(rules, rule_json(sarif, sarif->rules[i]));
    is_whole = json_put(driver, "rules", json_whole(rules, is_whole)) &&
               json_put(driver, "name", json_text("Plumbrule")) &&
               json_put(driver, "version", json_text(sarif->report->version)) &&
               json_put(driver, "semanticVersion", json_text(sarif->report->version)) &&
               json_put(driver, "fullDescription", sarif_message(report_caution()));
    return json_whole(tool, json_put(tool, "driver", json_whole(driver, is_whole)));
}

/* ---- problems -------------------------------------------------------------------------------- */

static json_t *notification_json(const struct sarif *sarif, const struct problem *problem)
{
    const char *text = problem->example == NULL ? problem->message
                                                : arena_format(sarif->arena, "%s; for example: %s",
                                                               problem->message, problem->example);
    json_t *object = json_object(), *descriptor = json_object(), *locations = json_array();
    bool is_whole = json_put(descriptor, "id", json_text(problem->code));
    is_whole = json_put(object, "descriptor", json_whole(descriptor, is_whole));
    if (problem->place.file != NULL && is_whole)
        is_whole = json_push(locations, sarif_location(sarif, problem->place));
    is_whole = json_put(object, "locations", json_whole(locations, is_whole));
    return json_whole(
        object, is_whole && text != NULL && json_put(object, "message", sarif_message(text)) &&
                    json_put(object, "level",
                             json_text(problem->weight == PROBLEM_NOTE ? "note" : "error")));
}

/* Readers that see only what fails are told what they do not see. */
static json_t *unsettled_json(const struct sarif *sarif)
{
    struct finding_counts counts = findings_count(sarif->report->findings);
    const char *text =
        arena_format(sarif->arena,
                     "Only what fails is listed. Besides, %zu findings are open because facts are "
                     "missing and %zu are for a person to judge.",
                     counts.of[OUTCOME_OPEN], counts.of[OUTCOME_REVIEW]);
    json_t *object = json_object();
    return json_whole(object, text != NULL && json_put(object, "message", sarif_message(text)) &&
                                  json_put(object, "level", json_text("warning")));
}

/* Mistakes in books and rules are the tool's configuration, all others its run. */
static json_t *notifications_json(const struct sarif *sarif, bool of_rules)
{
    const struct report *report = sarif->report;
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < report->problems->count; i++)
        if ((report->problems->items[i].weight == PROBLEM_RULE) == of_rules)
            is_whole = json_push(array, notification_json(sarif, &report->problems->items[i]));
    if (is_whole && !of_rules && report->failures_only && report->findings != NULL)
        is_whole = json_push(array, unsettled_json(sarif));
    return json_whole(array, is_whole);
}

static json_t *invocations_json(const struct sarif *sarif)
{
    const struct report *report = sarif->report;
    int code = exit_code(report->findings, report->problems, any_rule_holds(report->rulebook));
    json_t *array = json_array(), *object = json_object();
    bool is_whole =
        json_put(object, "executionSuccessful", json_boolean(code <= 2)) &&
        json_put(object, "exitCode", json_integer(code)) &&
        json_put(object, "toolExecutionNotifications", notifications_json(sarif, false)) &&
        json_put(object, "toolConfigurationNotifications", notifications_json(sarif, true));
    return json_whole(array, json_push(array, json_whole(object, is_whole)));
}

/* ---- files ----------------------------------------------------------------------------------- */

static json_t *artifact_json(const struct sarif *sarif, const struct deciding_file *file)
{
    json_t *object = json_object(), *location = json_object(), *roles = json_array();
    const char *uri = sarif_uri(file->path, sarif->arena);
    bool is_whole = uri != NULL && json_put(location, "uri", json_text(uri));
    is_whole = json_put(object, "location", json_whole(location, is_whole));
    bool is_target = strcmp(file->role, "design") == 0;
    bool has_roles =
        json_push(roles, json_text(is_target ? "analysisTarget" : "userSpecifiedConfiguration"));
    is_whole = json_put(object, "roles", json_whole(roles, has_roles)) && is_whole;
    if (file->is_read && is_whole) {
        json_t *hashes = json_object();
        is_whole =
            json_put(object, "hashes",
                     json_whole(hashes, json_put(hashes, "sha-256", json_text(file->digest))));
    }
    return json_whole(object, is_whole);
}

static json_t *artifacts_json(const struct sarif *sarif)
{
    json_t *array = json_array();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < sarif->file_count; i++)
        is_whole = json_push(array, artifact_json(sarif, &sarif->files[i]));
    return json_whole(array, is_whole);
}

static json_t *run_properties(const struct report *report)
{
    json_t *object = json_object(), *books = json_array();
    bool is_whole = books != NULL;
    for (size_t i = 0; is_whole && report->rulebook != NULL && i < report->rulebook->book_count;
         i++) {
        const struct book_in_force *one = &report->rulebook->books[i];
        json_t *book = json_object();
        bool has_name = book != NULL && put_text(book, "book", one->book->name) &&
                        put_text(book, "edition", one->edition);
        is_whole = json_push(books, json_whole(book, has_name));
    }
    return json_whole(
        object, json_put(object, "books", json_whole(books, is_whole)) &&
                    json_put(object, "on", report->has_date ? json_date(report->on) : json_null()));
}

static json_t *run_json(const struct sarif *sarif)
{
    json_t *run = json_object();
    return json_whole(run, json_put(run, "tool", tool_json(sarif)) &&
                               json_put(run, "columnKind", json_text("unicodeCodePoints")) &&
                               json_put(run, "invocations", invocations_json(sarif)) &&
                               json_put(run, "artifacts", artifacts_json(sarif)) &&
                               json_put(run, "results", sarif_results(sarif)) &&
                               json_put(run, "properties", run_properties(sarif->report)));
}

/* Findings are in the order of rules: each rule once. */
static bool collect_rules(struct sarif *sarif)
{
    const struct findings *findings = sarif->report->findings;
    if (findings == NULL)
        return true;
    sarif->rules = arena_take(sarif->arena, (findings->count + 1) * sizeof *sarif->rules);
    for (size_t i = 0; sarif->rules != NULL && i < findings->count; i++) {
        const struct rule *rule = findings->items[i]->rule;
        bool is_known = false;
        for (size_t k = 0; k < sarif->rule_count && !is_known; k++)
            is_known = sarif->rules[k] == rule;
        if (!is_known)
            sarif->rules[sarif->rule_count++] = rule;
    }
    return sarif->rules != NULL;
}

bool report_write_sarif(struct text *out, const struct report *report)
{
    struct sarif sarif = {.report = report, .arena = arena_new()};
    text_add_word(out, SARIF_BEGINS);
    bool is_written = sarif.arena != NULL && collect_rules(&sarif) &&
                      deciding_collect(&sarif.files, &sarif.file_count, report, sarif.arena) &&
                      json_write(out, run_json(&sarif), JSON_INDENT(1)) &&
                      !arena_is_short(sarif.arena); /* a text that is not there would be null */
    text_add_word(out, SARIF_ENDS);
    arena_free(sarif.arena);
    return is_written && !out->is_short;
}
