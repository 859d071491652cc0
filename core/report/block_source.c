/* Who decided: the rule with its acts, the values with their books. */
#include "block.h"

#include "shown.h"

static const char *acts_text(const struct rule *rule, struct arena *arena)
{
    const char *text = "";
    for (size_t i = 0; i < rule->act_count && text != NULL; i++) {
        const struct act *act = &rule->acts[i];
        char from[16] = "";
        if (act->from.year != 0)
            date_write(from, sizeof from, act->from);
        text = arena_format(arena, "%s; %s %s it%s%s%s%s%s", text, act->book->name, act->verb,
                            from[0] ? " from " : "", from, act->cite ? " (" : "",
                            act->cite ? act->cite : "", act->cite ? ")" : "");
    }
    return text;
}

const char *cite_text(const struct finding *finding, struct arena *arena)
{
    const struct rule *rule = finding->rule;
    bool is_of_town = rule->text_by != NULL && rule->text_by != rule->book;
    const struct book *book = is_of_town ? rule->text_by : rule->book;
    const char *edition = is_of_town ? NULL : rule->edition;
    const char *cite = finding->cite != NULL ? finding->cite : "";
    if (book == NULL)
        return cite;
    return arena_format(arena, "%s%s%s%s%s", book->name, edition != NULL ? " " : "",
                        edition != NULL ? edition : "", cite[0] != '\0' ? ", " : "", cite);
}

/* Citation, and who made it hold. */
bool block_tell_rule(const struct block *block)
{
    const struct rule *rule = block->finding->rule;
    if (rule->book == NULL) /* one of the program's own */
        return block_tell(block, "rule", rule->id);
    const char *acts = acts_text(rule, block->arena),
               *cite = cite_text(block->finding, block->arena);
    return acts != NULL && cite != NULL &&
           block_tell(block, "rule", ARENA_JOIN(block->arena, cite, " (", rule->id, ")", acts));
}

static const char *value_text(const struct value *value, const struct design *design,
                              struct arena *arena)
{
    char is[128], from[16] = "";
    const char *place;
    if (value->state != VALUE_IN_FORCE || value->entry == NULL)
        return arena_format(arena, "%s: no number is in force on that day", value->name);
    amount_write(is, sizeof is, value_shown(value, design), NULL, 6);
    if (value->entry->from.year != 0)
        date_write(from, sizeof from, value->entry->from);
    place = place_text(value->entry->place, arena);
    if (place == NULL)
        return NULL;
    return arena_format(arena, "%s = %s, set by %s%s%s%s%s%s%s, %s", value->name, is,
                        value->book->name, value->edition != NULL ? " " : "",
                        value->edition != NULL ? value->edition : "", from[0] ? " from " : "", from,
                        value->entry->cite ? ", " : "",
                        value->entry->cite ? value->entry->cite : "", place);
}

bool block_tell_values(const struct block *block)
{
    for (size_t i = 0; i < block->finding->value_count; i++)
        if (!block_tell(block, i == 0 ? "values" : "",
                        value_text(block->finding->values[i], block->report->design, block->arena)))
            return false;
    return true;
}
