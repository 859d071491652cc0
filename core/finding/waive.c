/* Waivers: the authority lifts a `shall` for one thing. A waived fail stays a fail. */
#include "finding.h"

#include <string.h>

/* Is "roof_plane:south" this thing? */
static bool is_about(const struct waiver *waiver, const struct finding *finding)
{
    size_t kind = strlen(finding->about_kind);
    return strncmp(waiver->about, finding->about_kind, kind) == 0 && waiver->about[kind] == ':' &&
           strcmp(waiver->about + kind + 1, finding->about_name) == 0;
}

static struct finding *find_finding(const struct findings *findings, const struct waiver *waiver)
{
    for (size_t i = 0; i < findings->count; i++)
        if (strcmp(findings->items[i]->rule->id, waiver->rule) == 0 &&
            is_about(waiver, findings->items[i]))
            return findings->items[i];
    return NULL;
}

static bool note(struct problems *problems, const struct waiver *waiver, const char *code,
                 const char *what)
{
    return problems_add(problems, PROBLEM_NOTE, code, waiver->place,
                        "the waiver of %s for %s lifts nothing: %s", waiver->rule, waiver->about,
                        what) != NULL;
}

static bool note_date(struct problems *problems, const struct waiver *waiver, const char *code,
                      const char *what, struct date date)
{
    char day[16], sentence[80];
    date_write(day, sizeof day, date);
    strcpy(sentence, what);
    strcat(sentence, day);
    return note(problems, waiver, code, sentence);
}

static bool is_given(struct date date)
{
    return date.year != 0;
}

/* Hangs one waiver, or says why it lifts nothing. */
static bool hang(struct findings *findings, const struct rulebook *rulebook,
                 const struct waiver *waiver, const char *permit, struct problems *problems)
{
    const struct rule *rule = rulebook_find_rule(rulebook, waiver->rule);
    struct finding *finding = find_finding(findings, waiver);
    if (waiver->permit != NULL && permit != NULL && strcmp(waiver->permit, permit) != 0)
        return true; /* of another job */
    if (waiver->permit != NULL && permit == NULL && finding != NULL)
        return note(problems, waiver, "waiver-permit",
                    "the design does not tell its permit number");
    if (waiver->permit != NULL && permit == NULL)
        return true;
    if (is_given(waiver->from) && date_compare(rulebook->on, waiver->from) < 0)
        return note_date(problems, waiver, "waiver-early", "it holds only from ", waiver->from);
    if (is_given(waiver->until) && date_compare(rulebook->on, waiver->until) > 0)
        return note_date(problems, waiver, "waiver-expired", "it ended on ", waiver->until);
    if (rule == NULL || !rule->holds)
        return note(problems, waiver, "waiver-orphaned", "no such rule is in force");
    if (finding == NULL)
        return note(problems, waiver, "waiver-orphaned",
                    "the rule says nothing of such a thing in this design");
    if (finding->outcome != OUTCOME_FAIL)
        return note(problems, waiver, "waiver-unused", "the rule does not fail there");
    if (finding->normative == SHOULD)
        return note(problems, waiver, "waiver-unused", "what fails there is only a `should`");
    if (finding->waiver != NULL)
        return note(problems, waiver, "waiver-unused", "another waiver has lifted it already");
    finding->waiver = waiver;
    return true;
}

bool findings_waive(struct findings *findings, const struct rulebook *rulebook, const char *permit,
                    struct problems *problems)
{
    bool is_complete = true;
    for (size_t i = 0; i < rulebook->waiver_count; i++)
        is_complete =
            hang(findings, rulebook, rulebook->waivers[i], permit, problems) && is_complete;
    return is_complete;
}
