/* Who decided, and when: the history of a rule and of each number of the law. */
#include "explaining.h"

#include <string.h>

#include "block.h"
#include "shown.h"

/* What a book's entry at this place says, or NULL. */
static const struct entry *entry_of(const struct act *act, const char *name)
{
    for (size_t i = 0; i < act->book->value_count; i++) {
        const struct book_value *value = &act->book->values[i];
        if (strcmp(value->name, name) != 0)
            continue;
        for (size_t k = 0; k < value->count; k++)
            if (value->entries[k].place.line == act->place.line &&
                value->entries[k].place.column == act->place.column)
                return &value->entries[k];
    }
    return NULL;
}

/* " to 36 in", " by elevation", or nothing. */
static const char *act_number(const struct explaining *sheet, const struct act *act,
                              const struct value *value)
{
    const struct entry *entry = value != NULL ? entry_of(act, value->name) : NULL;
    if (entry == NULL)
        return "";
    if (entry->band_count > 0)
        return ", by elevation";
    return entry->said.text != NULL ? arena_format(sheet->arena, ": %s", entry->said.text) : "";
}

/* The edition at which the book is adopted, with a space before it, or nothing. */
static const char *edition_text(const struct explaining *sheet, const struct book *book)
{
    const struct rulebook *rulebook = sheet->report->rulebook;
    for (size_t i = 0; i < rulebook->book_count; i++)
        if (rulebook->books[i].book == book && rulebook->books[i].edition != NULL)
            return arena_format(sheet->arena, " %s", rulebook->books[i].edition);
    return "";
}

bool explain_acts(struct explaining *sheet, const struct act *acts, size_t count,
                  const struct value *value)
{
    for (size_t i = 0; i < count; i++) {
        const struct act *act = &acts[i];
        char from[16] = "";
        if (act->from.year != 0)
            date_write(from, sizeof from, act->from);
        const char *place = place_text(act->place, sheet->arena);
        const char *number = act_number(sheet, act, value);
        const char *edition = edition_text(sheet, act->book);
        if (place == NULL || number == NULL || edition == NULL ||
            !explain_below(sheet, arena_format(sheet->arena, "%s%s%s%s %s it%s%s%s (%s)", from,
                                               from[0] ? " " : "", act->book->name, edition,
                                               act->verb, number, act->cite ? ", " : "",
                                               act->cite ? act->cite : "", place)))
            return false;
    }
    return true;
}

static const char *value_head(const struct explaining *sheet, const struct value *value)
{
    char is[128];
    const char *says = value->declaration->says != NULL ? value->declaration->says : "";
    if (value->state != VALUE_IN_FORCE || value->entry == NULL)
        return arena_format(sheet->arena, "%s: no number is in force on that day%s%s", value->name,
                            says[0] ? "; " : "", says);
    amount_write(is, sizeof is, value_shown(value, sheet->report->design), NULL, 6);
    return arena_format(sheet->arena, "%s = %s%s%s", value->name, is, says[0] ? ": " : "", says);
}

bool explain_values(struct explaining *sheet, const struct finding *finding)
{
    if (finding->value_count > 0 && !explain_head(sheet, "Numbers of the law"))
        return false;
    for (size_t i = 0; i < finding->value_count; i++) {
        const struct value *value = finding->values[i];
        if (!explain_tell(sheet, value_head(sheet, value)) ||
            !explain_acts(sheet, value->acts, value->act_count, value))
            return false;
    }
    return true;
}
