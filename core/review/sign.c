#include "sign.h"

#include <string.h>

#include "digest.h"
#include "equipment.h"
#include "file.h"
#include "signoffs.h"

/* As large as a file that can be read as a design. */
enum { DESIGN_BYTES = YAML_BYTES };

static bool is_about(const struct signoff *signoff, const struct finding *finding)
{
    size_t kind = strlen(finding->about_kind);
    return strcmp(finding->rule->id, signoff->rule) == 0 &&
           strncmp(signoff->about, finding->about_kind, kind) == 0 && signoff->about[kind] == ':' &&
           strcmp(signoff->about + kind + 1, finding->about_name) == 0;
}

/* The finding that it is about: one that still waits, else any. */
static struct finding *find_finding(const struct findings *findings, const struct signoff *signoff)
{
    struct finding *any = NULL;
    for (size_t i = 0; i < findings->count; i++) {
        struct finding *finding = findings->items[i];
        if (!is_about(signoff, finding))
            continue;
        if (finding->outcome == OUTCOME_REVIEW && finding->signoff == NULL)
            return finding;
        any = finding;
    }
    return any;
}

static bool note(struct review *review, const struct signoff *signoff, const char *code,
                 const char *example, const char *why)
{
    struct problem *problem = problems_add(&review->problems, PROBLEM_NOTE, code, signoff->place,
                                           "the sign-off of %s for %s by %s lifts nothing: %s",
                                           signoff->rule, signoff->about, signoff->by, why);
    if (problem != NULL)
        problem->example = example;
    return problem != NULL;
}

static bool note_changed(struct review *review, const struct signoff *signoff, const char *digest)
{
    return note(review, signoff, "signoff-lapsed",
                arena_format(review->problems.arena, "digest: %s (once it is judged anew)", digest),
                "what was signed is not this file: the design has changed since, or it was another "
                "design");
}

/* It was signed for other data sheets than those of today, or did not say for which. */
static bool note_equipment(struct review *review, const struct signoff *signoff,
                           const char *equipment)
{
    const char *example =
        arena_format(review->problems.arena, "equipment: %s (once it is judged anew)", equipment);
    if (equipment[0] == '\0')
        return note(review, signoff, "signoff-lapsed", NULL,
                    "it names data sheets, but the design uses no equipment of a catalogue");
    if (signoff->equipment != NULL)
        return note(review, signoff, "signoff-lapsed", example,
                    "the data sheets of the equipment that the design uses have changed since; it "
                    "is to be renewed");
    return note(review, signoff, "signoff-incomplete", example,
                "it does not say which data sheets were signed, and the design uses equipment of "
                "catalogues, which may have changed since; it is to be renewed, with 'equipment'");
}

static bool note_ended(struct review *review, const struct signoff *signoff)
{
    char until[16];
    date_write(until, sizeof until, signoff->until);
    const char *why = arena_format(review->problems.arena, "it ended on %s", until);
    return why != NULL && note(review, signoff, "signoff-expired", NULL, why);
}

/* What the rule says there instead of handing the point to a person. */
static const char *other_outcome(const struct finding *finding)
{
    switch (finding->outcome) {
    case OUTCOME_FAIL:
        return "it fails there, and no sign-off lifts what fails";
    case OUTCOME_OPEN:
        return "a fact is missing there, and no sign-off stands for a fact";
    case OUTCOME_REVIEW:
        return "another sign-off has accepted it already";
    default:
        return "nothing there waits for a person";
    }
}

/* What is signed: the design's own file, and the data sheets it uses ("": none of a catalogue). */
struct signed_files {
    char design[DIGEST_TEXT_SIZE], equipment[DIGEST_TEXT_SIZE];
};

static bool is_same_equipment(const struct signoff *signoff, const struct signed_files *files)
{
    return strcmp(signoff->equipment != NULL ? signoff->equipment : "", files->equipment) == 0;
}

static bool hang(struct review *review, const struct signoff *signoff,
                 const struct signed_files *files)
{
    const struct rule *rule = rulebook_find_rule(review->rulebook, signoff->rule);
    struct finding *finding = find_finding(&review->findings, signoff);
    if (strcmp(signoff->digest, files->design) != 0)
        return note_changed(review, signoff, files->design);
    if (!is_same_equipment(signoff, files))
        return note_equipment(review, signoff, files->equipment);
    if (signoff->until.year != 0 && date_compare(review->on, signoff->until) > 0)
        return note_ended(review, signoff);
    if (finding == NULL && (rule == NULL || !rule->holds))
        return note(review, signoff, "signoff-orphaned", NULL, "no such rule is in force");
    if (finding == NULL)
        return note(review, signoff, "signoff-orphaned", NULL,
                    "the rule says nothing of such a thing in this design");
    if (finding->outcome != OUTCOME_REVIEW || finding->signoff != NULL)
        return note(review, signoff, "signoff-unused", NULL, other_outcome(finding));
    finding->signoff = signoff;
    return true;
}

bool review_sign(struct review *review)
{
    struct signoffs signoffs;
    struct arena *arena = review->problems.arena;
    char *bytes;
    struct signed_files files;
    size_t length;
    signoffs_read(&signoffs, review->design->path, arena, &review->problems);
    if (signoffs.count == 0)
        return !arena_is_short(arena);
    if (!file_read(&bytes, &length, review->design->path, DESIGN_BYTES, arena, PROBLEM_INPUT,
                   &review->problems))
        return !arena_is_short(arena); /* told; everything stays for a person */
    digest_write(files.design, bytes, length);
    if (!equipment_digest(files.equipment, review->design, arena))
        return false;
    for (size_t i = 0; i < signoffs.count; i++)
        if (!hang(review, &signoffs.items[i], &files))
            return false;
    return !arena_is_short(arena);
}
