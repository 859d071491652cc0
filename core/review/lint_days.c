/* What a book says on the days it knows: editions, changes and numbers that cannot be. */
#include "linting.h"

#include <string.h>

#include "intake.h"

/* A book with more days is looked at on these; who wrote so many looks at the others by `rules`. */
enum { DAYS_MOST = 64 };

struct days {
    struct date items[DAYS_MOST];
    size_t count;
};

/* A day before the first adoption has no codes to hold anything against. */
static void add_day(struct days *days, struct date day)
{
    if (days->count == DAYS_MOST || (days->count > 0 && date_compare(day, days->items[0]) < 0))
        return;
    for (size_t i = 0; i < days->count; i++)
        if (date_compare(days->items[i], day) == 0)
            return;
    days->items[days->count++] = day;
}

static void list_days(struct days *days, const struct book *book)
{
    struct date first = book->adoptions[0].from;
    for (size_t i = 1; i < book->adoption_count; i++)
        if (date_compare(book->adoptions[i].from, first) < 0)
            first = book->adoptions[i].from;
    add_day(days, first);
    for (size_t i = 0; i < book->adoption_count; i++)
        add_day(days, book->adoptions[i].from);
    for (size_t i = 0; i < book->change_count; i++)
        add_day(days, book->changes[i].from);
    for (size_t i = 0; i < book->value_count; i++)
        for (size_t k = 0; k < book->values[i].count; k++)
            add_day(days, book->values[i].entries[k].from);
}

/* The text of the book that a place lies in, or NULL. */
static const struct book_text *text_at(const struct book *book, struct place place)
{
    for (size_t i = 0; place.file != NULL && i < book->text_count; i++)
        if (strcmp(book->texts[i].path, place.file) == 0)
            return &book->texts[i];
    return NULL;
}

bool lint_is_told(const struct problems *problems, struct place place)
{
    for (size_t i = 0; i < problems->count; i++) {
        struct place other = problems->items[i].place;
        if (other.line == place.line && other.column == place.column && other.file != NULL &&
            strcmp(other.file, place.file) == 0)
            return true;
    }
    return false;
}

/* Each is told once, however many days show it; what other books do wrong is theirs to tell. */
static void retell(struct linting *linting, const struct book *book, const struct problems *found)
{
    for (size_t i = 0; i < found->count; i++) {
        const struct problem *one = &found->items[i];
        if (text_at(book, one->place) == NULL || lint_is_told(linting->problems, one->place))
            continue;
        struct problem *problem =
            problems_add(linting->problems, one->weight, one->code, one->place, "%s", one->message);
        if (problem == NULL)
            return;
        problem->other = one->other;
        problem->example = one->example;
        problem->excerpt = one->excerpt;
    }
}

void lint_days(struct linting *linting, const char *name, const struct book *book,
               struct shelf *shelf)
{
    struct days days = {.count = 0};
    bool is_code = book->editions != NULL && book->editions[0] != NULL;
    if (book->adoption_count == 0 || is_code)
        return; /* alone it has nothing to hold its numbers against */
    list_days(&days, book);
    for (size_t i = 0; i < days.count; i++) {
        struct problems found = {.arena = linting->arena};
        struct rulebook *rulebook;
        rulebook_resolve(&rulebook, &name, 1, days.items[i], shelf_find, shelf, linting->arena,
                         &found);
        retell(linting, book, &found);
    }
}

static void check_said(struct linting *linting, const struct book *book,
                       const struct declaration *declaration, const struct said *said)
{
    struct quantity_fault fault;
    struct amount is;
    const struct book_text *text = text_at(book, said->place);
    if (said->text == NULL || text == NULL || lint_is_told(linting->problems, said->place) ||
        declaration_read_amount(&is, declaration, said->text, &fault))
        return;
    struct problem *problem =
        problems_add(linting->problems, PROBLEM_INPUT, fault.code, said->place, "the value %s: %s",
                     declaration->name, fault.message);
    if (problem == NULL)
        return;
    const struct source source = {text->path, text->bytes, text->length, NULL};
    problem->other = declaration->place;
    problem->example = arena_format(linting->arena, "is: %s", declaration_example(declaration));
    problem->excerpt = source_line(&source, said->place.line, linting->arena);
}

void lint_numbers(struct linting *linting, const struct book *book, const struct book_value *value,
                  const struct declaration *declaration)
{
    for (size_t i = 0; i < value->count; i++) {
        const struct entry *entry = &value->entries[i];
        if (entry->bands == NULL)
            check_said(linting, book, declaration, &entry->said);
        for (size_t k = 0; k < entry->band_count; k++)
            check_said(linting, book, declaration, &entry->bands[k].said);
    }
}
