/* What changed among the numbers of the law. */
#include "comparing.h"

#include <string.h>

enum { DIGITS = 6 };

static bool is_in_force(const struct value *value)
{
    return value != NULL && value->state == VALUE_IN_FORCE && value->entry != NULL;
}

/* "40 psf", or "20 psf up to 500 ft, 30 psf up to 1500 ft"; NULL: none in force. */
static const char *number_text(struct comparing *comparing, const struct value *value)
{
    char is[128], up_to[128];
    const char *text = "";
    if (!is_in_force(value))
        return NULL;
    if (value->entry->band_count == 0) {
        amount_write(is, sizeof is, value->is, NULL, DIGITS);
        return arena_format(comparing->arena, "%s", is);
    }
    for (size_t i = 0; i < value->entry->band_count && text != NULL; i++) {
        const struct band *band = &value->entry->bands[i];
        amount_write(is, sizeof is, band->said.is, NULL, DIGITS);
        amount_write(up_to, sizeof up_to, amount_of_quantity(band->up_to), NULL, DIGITS);
        text =
            arena_format(comparing->arena, "%s%s%s up to %s", text, i > 0 ? ", " : "", is, up_to);
    }
    return text;
}

const char *compare_cite(struct comparing *comparing, const struct value *value)
{
    char from[16] = "";
    if (!is_in_force(value))
        return compare_keep(comparing, value->declared_by->name);
    if (value->entry->from.year != 0)
        date_write(from, sizeof from, value->entry->from);
    return arena_format(comparing->arena, "%s%s%s%s%s%s%s", value->book->name,
                        value->edition != NULL ? " " : "",
                        value->edition != NULL ? value->edition : "", from[0] ? " from " : "", from,
                        value->entry->cite != NULL ? ", " : "",
                        value->entry->cite != NULL ? value->entry->cite : "");
}

static bool is_so(enum relation relation, const struct value *was, const struct value *is)
{
    struct quantity_fault fault;
    struct test test = {.relation = relation, .actual = is->is, .limit = was->is};
    return test_judge(&test, &fault) && test.outcome == OUTCOME_PASS;
}

/* By the house's comparison; what goes by elevation by what it says. */
static bool is_same_number(const struct value *was, const struct value *is, const char *was_text,
                           const char *is_text)
{
    if (!is_in_force(was) || !is_in_force(is) || was_text == NULL || is_text == NULL)
        return was_text == is_text;
    if (was->entry->band_count > 0 || is->entry->band_count > 0)
        return strcmp(was_text, is_text) == 0;
    return is_so(RELATION_EQUAL, was, is);
}

/* By another book, or with another citation; a new edition alone is told of its book. */
static bool is_cited_anew(const struct value *was, const struct value *is)
{
    const char *before = was->entry->cite, *after = is->entry->cite;
    if (strcmp(was->book->name, is->book->name) != 0)
        return true;
    return before == NULL || after == NULL ? before != after : strcmp(before, after) != 0;
}

static enum tightening tightening_of(const struct value *was, const struct value *is)
{
    if (!is_in_force(was) || !is_in_force(is) || was->entry->band_count > 0 ||
        is->entry->band_count > 0 || is->declaration->stricter == STRICTER_NEITHER)
        return TIGHTENING_UNKNOWN;
    bool is_larger = is_so(RELATION_MORE_THAN, was, is);
    if (!is_larger && !is_so(RELATION_LESS_THAN, was, is))
        return TIGHTENING_UNKNOWN;
    return is_larger == (is->declaration->stricter == STRICTER_LARGER) ? TIGHTENED : LOOSENED;
}

/* The first day after this one from which a book of the stack gives a number; NULL: none. */
static const char *next_day(struct comparing *comparing, const struct rulebook *rulebook,
                            const char *name)
{
    struct date next = {0};
    char day[16];
    for (size_t i = 0; i < rulebook->book_count; i++)
        for (size_t k = 0; k < rulebook->books[i].book->value_count; k++) {
            const struct book_value *value = &rulebook->books[i].book->values[k];
            for (size_t e = 0; strcmp(value->name, name) == 0 && e < value->count; e++)
                if (!value->entries[e].is_repeal &&
                    date_compare(value->entries[e].from, rulebook->on) > 0 &&
                    (next.year == 0 || date_compare(value->entries[e].from, next) < 0))
                    next = value->entries[e].from;
        }
    if (next.year == 0)
        return NULL;
    date_write(day, sizeof day, next);
    return arena_format(comparing->arena, "%s", day);
}

static bool add_value(struct comparing *comparing, const struct value *was, const struct value *is,
                      const struct rulebook *after)
{
    struct comparison *comparison = comparing->comparison;
    struct compared_value one = {.was = number_text(comparing, was),
                                 .is = number_text(comparing, is)};
    const struct value *any = is != NULL ? is : was;
    one.was_by = was != NULL ? compare_cite(comparing, was) : NULL;
    one.is_by = is != NULL ? compare_cite(comparing, is) : NULL;
    bool is_same = is_same_number(was, is, one.was, one.is);
    if (is_same && !(is_in_force(was) && is_in_force(is) && is_cited_anew(was, is)))
        return true;
    one.is_cited_only = is_same;
    one.name = compare_keep(comparing, any->name);
    one.says = compare_keep(comparing, any->declaration->says);
    one.tightening = tightening_of(was, is);
    if (is_in_force(was))
        one.was_place = compare_keep_place(comparing, was->entry->place);
    if (is_in_force(is))
        one.is_place = compare_keep_place(comparing, is->entry->place);
    else if (is != NULL)
        one.next = next_day(comparing, after, is->name);
    struct compared_value *items =
        arena_grow(comparing->arena, comparison->values, comparison->value_count,
                   &comparison->value_capacity, sizeof *items);
    if (items == NULL)
        return false;
    comparison->values = items;
    items[comparison->value_count++] = one;
    return !arena_is_short(comparing->arena);
}

bool compare_values(struct comparing *comparing, const struct rulebook *was,
                    const struct rulebook *is)
{
    for (size_t i = 0; i < is->value_count; i++)
        if (!add_value(comparing, rulebook_find_value(was, is->values[i].name), &is->values[i], is))
            return false;
    for (size_t i = 0; i < was->value_count; i++)
        if (rulebook_find_value(is, was->values[i].name) == NULL &&
            !add_value(comparing, &was->values[i], NULL, is))
            return false;
    return true;
}
