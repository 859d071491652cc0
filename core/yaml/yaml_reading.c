#include "yaml_reading.h"

static void close_complaints(struct reading *reading)
{
    struct place whole = {reading->file, 0, 0};
    reading->is_full = true;
    if (!problems_add(reading->problems, PROBLEM_INPUT, "too-many-problems", whole,
                      "there are more than %d mistakes in this file; the others are not told",
                      YAML_PROBLEMS))
        reading->is_short = true;
}

struct problem *tell_mistake(struct reading *reading, const char *code, struct place place,
                             const char *example, const char *format, ...)
{
    if (reading->is_full)
        return NULL;
    if (reading->told == YAML_PROBLEMS) {
        close_complaints(reading);
        return NULL;
    }
    struct arena *arena = reading->problems->arena;
    va_list arguments;
    va_start(arguments, format);
    char *message = arena_format_list(arena, format, arguments);
    va_end(arguments);
    place.file = reading->file;
    struct problem *problem =
        message ? problems_add(reading->problems, PROBLEM_INPUT, code, place, "%s", message) : NULL;
    if (!problem) {
        reading->is_short = true;
        return NULL;
    }
    reading->told++;
    problem->example = example;
    if (place.line > 0)
        problem->excerpt = source_line(reading->source, place.line, arena);
    return problem;
}

void complain_other(struct reading *reading, struct problem *problem, struct place other)
{
    if (!problem)
        return;
    problem->other = other;
    problem->other.file = reading->file;
}

static bool is_earlier(struct place a, struct place b)
{
    return a.line != b.line ? a.line < b.line : a.column < b.column;
}

void end_complaints(struct reading *reading)
{
    /* At most YAML_PROBLEMS of them, and perhaps no list at all. */
    struct problem *items = reading->told ? reading->problems->items + reading->before : NULL;
    for (size_t i = 1; i < reading->told; i++) {
        struct problem moved = items[i];
        size_t to = i;
        for (; to > 0 && is_earlier(moved.place, items[to - 1].place); to--)
            items[to] = items[to - 1];
        items[to] = moved;
    }
    if (reading->is_short)
        problems_add(reading->problems, PROBLEM_MEMORY, "no-memory",
                     (struct place){reading->file, 0, 0},
                     "there is not enough memory to read this file");
}
