#include "block.h"

#include <string.h>

#include "assumed.h"
#include "signoff.h"

const char *place_text(struct place place, struct arena *arena)
{
    if (place.file == NULL)
        return "";
    return place.line == 0 ? place.file : arena_format(arena, "%s:%u", place.file, place.line);
}

const char *about_text(const struct finding *finding, struct arena *arena)
{
    return strcmp(finding->about_kind, finding->about_name) == 0
               ? finding->about_kind
               : ARENA_JOIN(arena, finding->about_kind, " ", finding->about_name);
}

bool block_tell(const struct block *block, const char *label, const char *text)
{
    if (text == NULL)
        return false;
    page_paragraph(block->page, LABEL_AT, label, STYLE_FAINT, TEXT_AT, text);
    return true;
}

static enum style style_of(const struct finding *finding)
{
    if (finding->waiver != NULL || finding->signoff != NULL)
        return STYLE_UNSURE;
    switch (finding->outcome) {
    case OUTCOME_FAIL:
        return finding->normative == SHALL ? STYLE_BAD : STYLE_UNSURE;
    case OUTCOME_PASS:
        return STYLE_GOOD;
    case OUTCOME_OPEN:
    case OUTCOME_REVIEW:
        return STYLE_UNSURE;
    default:
        return STYLE_PLAIN;
    }
}

static const char *word_of(const struct finding *finding)
{
    switch (finding->outcome) {
    case OUTCOME_FAIL:
        return finding->waiver != NULL        ? "Fails, waived:"
               : finding->normative == SHOULD ? "Falls short of advice:"
                                              : "Fails:";
    case OUTCOME_OPEN:
        return "Open:";
    case OUTCOME_REVIEW:
        return finding->signoff != NULL ? "Signed:" : "For a person:";
    case OUTCOME_PASS:
        return "Stands:";
    case OUTCOME_INFORMATIONAL:
        return "To know:";
    default:
        return "Does not apply:";
    }
}

/* Number, outcome and title on the first line. */
static bool tell_head(const struct block *block, size_t number)
{
    const char *head = arena_format(block->arena, "%-2zu %s", number, word_of(block->finding));
    if (head == NULL)
        return false;
    page_gap(block->page);
    page_paragraph(block->page, 0, head, style_of(block->finding), LABEL_AT, block->finding->title);
    return true;
}

static bool tell_where(const struct block *block)
{
    const struct finding *finding = block->finding;
    const char *place = place_text(finding->place, block->arena);
    const char *about = about_text(finding, block->arena);
    return place != NULL && about != NULL &&
           block_tell(
               block, "where",
               arena_format(block->arena, "%s%s%s", about, place[0] != '\0' ? ", " : "", place));
}

static const char *option_word(enum outcome outcome)
{
    switch (outcome) {
    case OUTCOME_FAIL:
        return "not met";
    case OUTCOME_PASS:
        return "met";
    case OUTCOME_REVIEW:
        return "for a person";
    default:
        return "open";
    }
}

/* Each way of a group with each of its comparisons. */
static bool tell_options(const struct block *block, const struct test *group)
{
    for (size_t i = 0; i < group->option_count; i++) {
        const struct option *option = &group->options[i];
        const char *says = option->test_count > 0 ? "" : "nothing was compared";
        for (size_t k = 0; k < option->test_count && says != NULL; k++) {
            const char *one = test_sentence(&option->tests[k], block->arena);
            says = one == NULL ? NULL
                               : arena_format(block->arena, "%s%s%s", says, k > 0 ? "; " : "", one);
        }
        if (says == NULL)
            return false;
        const char *text = arena_format(block->arena, "\"%s\" (%s): %s.", option->name,
                                        option_word(option->outcome), says);
        if (!block_tell(block, i == 0 ? "ways" : "", text))
            return false;
    }
    return true;
}

/* What beside the deciding comparison was found: further tests and the ways of groups. */
static bool tell_tests(const struct block *block)
{
    const struct finding *finding = block->finding;
    const struct test *deciding = tests_deciding(finding->tests, finding->test_count);
    for (size_t i = 0; i < finding->test_count; i++) {
        const struct test *test = &finding->tests[i];
        if (test->relation == RELATION_ONE_OF) {
            if (!tell_options(block, test))
                return false;
        } else if (test != deciding && test->relation != RELATION_MISSING) {
            const char *sentence = test_sentence(test, block->arena);
            if (sentence == NULL ||
                !block_tell(block, test->outcome == OUTCOME_PASS ? "holds" : "also",
                            arena_format(block->arena, "%s.", sentence)))
                return false;
        }
    }
    return true;
}

static bool tell_missing_one(const struct block *block, const struct missing *missing)
{
    const char *place = place_text(missing->place, block->arena);
    if (place == NULL)
        return false;
    if (!block_tell(
            block, "to give",
            arena_format(block->arena, "%s%s%s", missing->fact, place[0] ? ", at " : "", place)))
        return false;
    return missing->example == NULL ||
           block_tell(block, "", arena_format(block->arena, "for example: %s", missing->example));
}

/* Every missing fact once with its place, those inside the ways of a group too. */
static bool tell_missing(const struct block *block, const struct test *tests, size_t count,
                         struct index *told)
{
    for (size_t i = 0; i < count; i++) {
        struct test test = tests[i];
        if (test.outcome != OUTCOME_OPEN)
            continue;
        if (test.relation == RELATION_MISSING && index_find(told, test.missing.fact) == NULL &&
            (!index_add(told, test.missing.fact, told) || !tell_missing_one(block, &test.missing)))
            return false;
        for (size_t k = 0; k < test.option_count; k++)
            if (!tell_missing(block, test.options[k].tests, test.options[k].test_count, told))
                return false;
    }
    return true;
}

static bool tell_assumed(const struct block *block)
{
    const struct finding *one = block->finding;
    struct assumption *assumptions;
    size_t count;
    if (!assumed_collect(&assumptions, &count, one->inputs, one->input_count, block->arena))
        return false;
    for (size_t i = 0; i < count; i++)
        if (!block_tell(block, i == 0 ? "assumed" : "",
                        assumption_text(&assumptions[i], block->arena)))
            return false;
    return true;
}

static bool tell_waiver(const struct block *block)
{
    const struct waiver *waiver = block->finding->waiver;
    char until[16] = "";
    if (waiver == NULL)
        return true;
    if (waiver->until.year != 0)
        date_write(until, sizeof until, waiver->until);
    return block_tell(
        block, "waived",
        arena_format(block->arena, "by %s%s%s%s%s: %s",
                     waiver->granted_by != NULL ? waiver->granted_by : "the authority",
                     waiver->permit != NULL ? ", permit " : "",
                     waiver->permit != NULL ? waiver->permit : "", until[0] ? ", until " : "",
                     until, waiver->reason != NULL ? waiver->reason : "no reason given"));
}

static bool tell_signoff(const struct block *block)
{
    const struct signoff *signoff = block->finding->signoff;
    char on[16], until[16] = "";
    if (signoff == NULL)
        return true;
    date_write(on, sizeof on, signoff->on);
    if (signoff->until.year != 0)
        date_write(until, sizeof until, signoff->until);
    const char *place = place_text(signoff->place, block->arena);
    return place != NULL &&
           block_tell(block, "signed",
                      arena_format(block->arena, "accepted by %s, license %s, on %s%s%s: %s, %s",
                                   signoff->by, signoff->license, on, until[0] ? ", until " : "",
                                   until, signoff->why, place));
}

static bool tell_working(const struct block *block)
{
    const struct finding *finding = block->finding;
    if (!block->report->with_working)
        return true;
    for (size_t i = 0; i < finding->input_count; i++) {
        const struct input *input = finding->inputs[i];
        const char *place = place_text(input->place, block->arena);
        const char *name = input_name(input, block->arena);
        if (place == NULL || name == NULL ||
            !block_tell(block, i == 0 ? "read" : "",
                        arena_format(block->arena, "%s is %s%s%s%s%s", name,
                                     input->text != NULL ? input->text : "not given",
                                     input->source != NULL ? " by " : "",
                                     input->source != NULL ? input->source : "",
                                     place[0] ? ", " : "", place)))
            return false;
    }
    for (size_t i = 0; i < finding->line_count; i++) {
        const struct line *line = &finding->working[i];
        if (!block_tell(block, i == 0 ? "working" : "",
                        line->source == NULL
                            ? line->text
                            : arena_format(block->arena, "%s   [%s]", line->text, line->source)))
            return false;
    }
    return true;
}

static bool is_actionable(const struct finding *finding)
{
    return finding->outcome == OUTCOME_FAIL || finding->outcome == OUTCOME_OPEN ||
           finding->outcome == OUTCOME_REVIEW;
}

bool block_write(struct page *page, struct finding *finding, size_t number,
                 const struct report *report, struct arena *arena)
{
    struct block block = {page, finding, report, arena};
    const char *message =
        finding->message != NULL ? finding->message : finding_message(finding, arena);
    if (message == NULL || !tell_head(&block, number) || !tell_where(&block))
        return false;
    if (!block_tell(&block, "finding", arena_format(arena, "%s.", message)) || !tell_tests(&block))
        return false;
    struct index told = {.arena = arena};
    if (!tell_missing(&block, finding->tests, finding->test_count, &told) ||
        !block_tell_rule(&block) || !block_tell_values(&block) || !tell_assumed(&block) ||
        !tell_waiver(&block) || !tell_signoff(&block) || !tell_working(&block))
        return false;
    return finding->remedy == NULL || finding->outcome != OUTCOME_FAIL || !is_actionable(finding) ||
           block_tell(&block, "to do", finding->remedy);
}
