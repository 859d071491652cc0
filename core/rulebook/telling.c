#include "resolving.h"
#include <stdarg.h>
#include <string.h>
#include "text.h"

enum { SHOWN_BYTES = 200 };

static const struct book_text *find_text(const struct book *book, const char *file)
{
    for (size_t i = 0; i < book->text_count; i++)
        if (strcmp(book->texts[i].path, file) == 0)
            return &book->texts[i];
    return NULL;
}

static char *copy_line(const struct book_text *text, unsigned line, struct arena *arena)
{
    size_t from = 0, end = 0;
    for (unsigned number = 1; number < line && from < text->length; from++)
        number += text->bytes[from] == '\n';
    for (end = from; end < text->length && !strchr("\r\n", text->bytes[end]);)
        end++;
    return arena_copy(arena, text->bytes + from,
                      text_cut(text->bytes + from, end - from, SHOWN_BYTES));
}

static void add_excerpt(const struct resolving *resolving, struct problem *problem)
{
    if (!problem->place.file || problem->place.line == 0)
        return;
    for (size_t i = 0; i < resolving->book_count; i++) {
        const struct book_text *text = find_text(resolving->books[i].book, problem->place.file);
        if (text) {
            problem->excerpt = copy_line(text, problem->place.line, resolving->problems->arena);
            return;
        }
    }
}

/* A problem may outlive the shelf, so it keeps its own path. */
static struct place keep_place(struct arena *arena, struct place place)
{
    if (place.file)
        place.file = arena_copy(arena, place.file, strlen(place.file));
    return place;
}

static struct problem *tell_list(struct resolving *resolving, const char *code, struct place place,
                                 const char *example, const char *format, va_list arguments)
{
    struct arena *arena = resolving->problems->arena;
    const char *message = arena_format_list(arena, format, arguments);
    struct problem *problem = problems_add(resolving->problems, PROBLEM_INPUT, code,
                                           keep_place(arena, place), "%s", message ? message : "");
    if (!problem)
        return NULL;
    if (example)
        problem->example = arena_copy(arena, example, strlen(example));
    add_excerpt(resolving, problem);
    return problem;
}

struct problem *tell(struct resolving *resolving, const char *code, struct place place,
                     const char *example, const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    struct problem *problem = tell_list(resolving, code, place, example, format, arguments);
    va_end(arguments);
    return problem;
}

void tell_both(struct resolving *resolving, const char *code, struct place place,
               struct place other, const char *example, const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    struct problem *problem = tell_list(resolving, code, place, example, format, arguments);
    va_end(arguments);
    if (problem)
        problem->other = keep_place(resolving->problems->arena, other);
}

const char *near_hint(struct resolving *resolving, const char *word, const char *const *words,
                      size_t count)
{
    const char *near = text_find_near(word, words, count);
    const char *hint = near ? arena_format(resolving->arena, "; did you mean %s?", near) : "";
    return hint ? hint : "";
}

const char *list_names(struct resolving *resolving, const char *const *names)
{
    const char *list = "";
    for (size_t i = 0; names && names[i]; i++) {
        list = arena_format(resolving->arena, "%s%s%s", list, i > 0 ? ", " : "", names[i]);
        if (!list)
            return "";
    }
    return list;
}

static int compare_problems(const struct problem *a, const struct problem *b)
{
    if (!a->place.file || !b->place.file)
        return (a->place.file != NULL) - (b->place.file != NULL);
    int order = strcmp(a->place.file, b->place.file);
    if (order != 0)
        return order;
    if (a->place.line != b->place.line)
        return a->place.line < b->place.line ? -1 : 1;
    return (a->place.column > b->place.column) - (a->place.column < b->place.column);
}

void sort_problems(struct problems *problems, size_t from)
{
    for (size_t i = from + 1; i < problems->count; i++) {
        struct problem moving = problems->items[i];
        size_t at = i;
        for (; at > from && compare_problems(&problems->items[at - 1], &moving) > 0; at--)
            problems->items[at] = problems->items[at - 1];
        problems->items[at] = moving;
    }
}
