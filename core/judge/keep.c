/* What a finding rests on, kept in it: facts read, steps of the working. */
#include "room.h"

#include <string.h>

static void name_read(struct input *input, const struct fact_read *read)
{
    const struct object *object = read->object;
    bool is_only = object->kind->count == ONLY, is_root = object->kind->count == ROOT;
    input->kind = is_only || is_root ? NULL : object->kind->name;
    input->thing = is_root ? NULL : object->path;
    input->fact = object_row(object, read->slot)->name;
}

const char *room_name_of_read(struct judge *judge, const struct fact_read *read)
{
    struct input input = {.number = 0};
    name_read(&input, read);
    return input_name(&input, judge->page);
}

static bool is_value(enum fact_type type)
{
    return type != TYPE_ONE && type != TYPE_LIST && type != TYPE_INVERSE;
}

/* What a fact with no amount of its own says, for people. */
static const char *text_of_read(struct judge *judge, const struct fact_read *read)
{
    const struct fact *fact = object_fact(read->object, read->slot);
    const struct fact_row *row = object_row(read->object, read->slot);
    char amount[160];
    if (fact->state == FACT_MISSING)
        return "not given";
    if (fact->state == FACT_NONE)
        return "none";
    if (fact->written != NULL)
        return fact->written;
    if (row->type == TYPE_REFERENCE)
        return fact->is.object->path;
    if (row->type == TYPE_WORDS || row->type == TYPE_WORD_LIST || row->type == TYPE_TEXTS) {
        const char *text = "";
        for (size_t i = 0; i < fact->count && text != NULL; i++)
            text = arena_format(judge->page, "%s%s%s", text, i ? ", " : "", fact->is.words[i]);
        return text;
    }
    if (row->type == TYPE_POINT || row->type == TYPE_POINTS)
        return row->type == TYPE_POINT ? "a point"
                                       : arena_format(judge->page, "%zu points", fact->count);
    if (row->type == TYPE_REFERENCES)
        return arena_format(judge->page, "%zu named", fact->count);
    amount_write(amount, sizeof amount, object_amount(read->object, read->slot), NULL, 12);
    return arena_copy(judge->page, amount, strlen(amount));
}

/* What a fact says, written out once in a review: hundreds of findings may rest on it. */
static const struct input *told_of(struct judge *judge, const struct fact_read *read)
{
    const struct fact *fact = object_fact(read->object, read->slot);
    const struct input **told = &judge->told[read->object->first_fact + read->slot];
    if (*told != NULL)
        return *told;
    struct input *input = findings_add_input(judge->findings);
    if (input == NULL)
        return NULL;
    name_read(input, read);
    input->is = object_amount(read->object, read->slot);
    input->text = text_of_read(judge, read);
    input->source = fact->source;
    input->is_assumed = fact->state == FACT_ASSUMED;
    input->assumed_why = read->object->kind->absences[read->slot].why;
    input->place = fact->place;
    if (input->text == NULL)
        return NULL;
    return *told = input;
}

static bool keep_reads(struct judge *judge)
{
    struct finding *finding = judge->finding;
    const struct working *working = judge->working;
    /* Hundreds for some findings, and their number is known: no growing by halves. */
    finding->inputs = arena_take(judge->page, working->read_count * sizeof *finding->inputs);
    if (finding->inputs == NULL)
        return false;
    for (size_t i = 0; i < working->read_count; i++) {
        const struct fact_read *read = &working->reads[i];
        if (!is_value(object_row(read->object, read->slot)->type))
            continue;
        const struct input *input = told_of(judge, read);
        if (input == NULL)
            return false;
        finding->inputs[finding->input_count++] = input;
    }
    return true;
}

/* The working, copied into the finding before the next one begins. */
bool room_keep_working(struct judge *judge)
{
    struct finding *finding = judge->finding;
    const struct working *working = judge->working;
    if (!keep_reads(judge))
        return false;
    finding->working = arena_take(judge->page, working->step_count * sizeof *finding->working);
    if (finding->working == NULL)
        return false;
    for (size_t i = 0; i < working->step_count; i++)
        finding->working[i] = (struct line){working->steps[i].text, working->steps[i].source};
    finding->line_count = working->step_count;
    return true;
}
