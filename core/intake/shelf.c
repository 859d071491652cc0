#include "shelf_folders.h"
#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include "book_reading.h"
#include "text.h"

enum { NAMES_SHOWN = 20 };

struct shelf *shelf_new(const char *const *directories)
{
    struct shelf *shelf = calloc(1, sizeof *shelf);
    if (!shelf)
        return NULL;
    shelf->directories = directories;
    shelf->arena = arena_new();
    if (!shelf->arena) {
        free(shelf);
        return NULL;
    }
    return shelf;
}

void shelf_free(struct shelf *shelf)
{
    if (!shelf)
        return;
    arena_free(shelf->arena);
    free(shelf);
}

static char *keep_text(struct arena *arena, const char *text)
{
    return text ? arena_copy(arena, text, strlen(text)) : NULL;
}

/* Problems outlive the shelf, so all of one is copied. */
static void retell(struct problems *problems, const struct problem *told)
{
    struct arena *arena = problems->arena;
    for (size_t i = 0; i < problems->count; i++) {
        const struct problem *there = &problems->items[i];
        if (strcmp(there->code, told->code) == 0 && strcmp(there->message, told->message) == 0 &&
            there->place.line == told->place.line && there->place.column == told->place.column &&
            there->place.file && told->place.file &&
            strcmp(there->place.file, told->place.file) == 0)
            return;
    }
    struct place place = told->place, other = told->other;
    place.file = keep_text(arena, place.file);
    other.file = keep_text(arena, other.file);
    struct problem *problem =
        problems_add(problems, told->weight, told->code, place, "%s", told->message);
    if (!problem)
        return;
    problem->other = other;
    problem->example = keep_text(arena, told->example);
    problem->excerpt = keep_text(arena, told->excerpt);
}

static size_t find_read(const struct shelf *shelf, const char *real)
{
    for (size_t i = 0; i < shelf->book_count; i++)
        if (strcmp(shelf->books[i]->place, real) == 0)
            return i;
    return shelf->book_count;
}

/* Reads a folder that was not read yet; its number is then the last one. */
static bool read_folder(struct shelf *shelf, const char *directory, const char *real)
{
    struct arena *arena = shelf->arena;
    struct shelf_book **books =
        arena_grow(arena, shelf->books, shelf->book_count, &shelf->book_capacity, sizeof *books);
    struct problems *told =
        arena_grow(arena, shelf->told, shelf->book_count, &shelf->told_capacity, sizeof *told);
    struct shelf_book *book = arena_take(arena, sizeof *book);
    if (books)
        shelf->books = books;
    if (told)
        shelf->told = told;
    if (!books || !told || !book)
        return false;
    book->place = keep_text(arena, real);
    if (!book->place)
        return false;
    told[shelf->book_count] = (struct problems){.arena = arena};
    book_read(&book->book, directory, arena, &told[shelf->book_count]);
    books[shelf->book_count++] = book;
    return true;
}

static const struct book *tell_memory(struct problems *problems, struct place asked_at)
{
    problems_add(problems, PROBLEM_MEMORY, "memory", asked_at, "there is no memory for the book");
    return NULL;
}

static const struct book *open_folder(struct shelf *shelf, const char *directory,
                                      struct place asked_at, struct problems *problems)
{
    char real[PATH_MAX];
    if (!realpath(directory, real)) {
        problems_add(problems, PROBLEM_INPUT, "book-unreadable", asked_at,
                     "the folder %.200s cannot be opened", directory);
        return NULL;
    }
    size_t at = find_read(shelf, real);
    if (at == shelf->book_count && !read_folder(shelf, directory, real))
        return tell_memory(problems, asked_at);
    for (size_t i = 0; i < shelf->told[at].count; i++)
        retell(problems, &shelf->told[at].items[i]);
    if (arena_is_short(shelf->arena))
        return tell_memory(problems, asked_at);
    return shelf->books[at]->book;
}

/* The line at a place in one of the books read so far, or NULL. */
static char *find_line(const struct shelf *shelf, struct place place, struct arena *arena)
{
    for (size_t i = 0; place.file && i < shelf->book_count; i++) {
        const struct book *book = shelf->books[i]->book;
        for (size_t j = 0; book && j < book->text_count; j++) {
            const struct book_text *text = &book->texts[j];
            struct source source = {text->path, text->bytes, text->length, NULL};
            if (strcmp(text->path, place.file) == 0)
                return source_line(&source, place.line, arena);
        }
    }
    return NULL;
}

/* "; there is: irc, nec", or nothing. */
static const char *list_names(struct arena *arena, const char *const *names, size_t count)
{
    const char *list = "";
    for (size_t i = 0; names && list && i < count && i < NAMES_SHOWN; i++)
        list = arena_format(arena, "%s%s%s", list, i > 0 ? ", " : "; there is: ", names[i]);
    return list && count > NAMES_SHOWN ? arena_format(arena, "%s …", list) : list;
}

static const struct book *tell_unknown(struct shelf *shelf, const char *name, struct place asked_at,
                                       struct problems *problems)
{
    char **paths;
    size_t count;
    const char *near = NULL, *hint = "";
    struct place place = {keep_text(problems->arena, asked_at.file), asked_at.line,
                          asked_at.column};
    if (shelf_list(&paths, &count, shelf, shelf->arena)) {
        const char **names = arena_take(shelf->arena, (count + 1) * sizeof *names);
        for (size_t i = 0; names && i < count; i++)
            names[i] = folder_name(paths[i]);
        near = names ? text_find_near(name, names, count) : NULL;
        hint = near ? arena_format(shelf->arena, "; did you mean %s?", near)
                    : list_names(shelf->arena, names, count);
        if (!near && hint && !asked_at.file)
            hint = arena_format(shelf->arena, "%s; --books DIR says where others lie", hint);
    }
    if (name[0] != '\0' && is_book_folder(shelf->arena, name))
        hint = arena_format(shelf->arena, "; the folder ./%.80s is one: say --books .", name);
    if (arena_is_short(shelf->arena)) /* a list cut short would look like all there is */
        return tell_memory(problems, asked_at);
    struct problem *problem =
        problems_add(problems, PROBLEM_INPUT, "book-unknown", place, "there is no book %.80s%s",
                     name[0] != '\0' ? name : "without a name", hint);
    if (problem)
        problem->excerpt = find_line(shelf, asked_at, problems->arena);
    return NULL;
}

/* A path without the slashes at its end. */
static const char *trim_path(struct arena *arena, const char *path)
{
    size_t length = strlen(path);
    while (length > 1 && path[length - 1] == '/')
        length--;
    return arena_copy(arena, path, length);
}

static const struct book *find_by_path(struct shelf *shelf, const char *path, struct place asked_at,
                                       struct problems *problems)
{
    const char *directory = trim_path(shelf->arena, path);
    if (!directory)
        return tell_memory(problems, asked_at);
    if (is_book_folder(shelf->arena, directory))
        return open_folder(shelf, directory, asked_at, problems);
    if (arena_is_short(shelf->arena)) /* whether it is there was not seen */
        return tell_memory(problems, asked_at);
    problems_add(problems, PROBLEM_INPUT, "book-unknown", asked_at,
                 "there is no book.yaml in the folder %.200s", path);
    return NULL;
}

const struct book *shelf_find(void *context, const char *name, struct place asked_at,
                              struct problems *problems)
{
    struct shelf *shelf = context;
    if (strchr(name, '/'))
        return find_by_path(shelf, name, asked_at, problems);
    /* One that was read from a path of its own goes before what lies in the directories. */
    for (size_t i = 0; i < shelf->book_count; i++) {
        const struct book *book = shelf->books[i]->book;
        if (book && strcmp(book->name, name) == 0)
            return open_folder(shelf, book->directory, asked_at, problems);
    }
    const char *directory = is_plain_name(name) ? find_folder(shelf, name) : NULL;
    if (directory)
        return open_folder(shelf, directory, asked_at, problems);
    if (arena_is_short(shelf->arena)) /* what was not looked through may have it */
        return tell_memory(problems, asked_at);
    return tell_unknown(shelf, name, asked_at, problems);
}
