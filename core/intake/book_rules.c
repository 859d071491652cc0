#include "book_reading.h"
#include <stdlib.h>
#include <string.h>
#include "file.h"

/* Is the file named in a `replaces`? Then it is no rule of its own. */
static bool is_replacement(const struct book *book, const char *path)
{
    for (size_t i = 0; i < book->change_count; i++)
        if (book->changes[i].file && strcmp(book->changes[i].file, path) == 0)
            return true;
    return false;
}

static struct node file_node(const char *path)
{
    return (struct node){.type = NODE_SCALAR, .place = {.file = path}};
}

static void add_rule_file(struct book_reader *reader, const char *directory, const char *edition,
                          const char *file)
{
    struct book *book = reader->book;
    const char *path = path_join(reader->arena, directory, file);
    const char *name = arena_copy(reader->arena, file, strlen(file) - strlen(".lua"));
    if (!path || !name || is_replacement(book, path))
        return;
    struct node node = file_node(path);
    if (!is_plain_name(name)) {
        complain(&reader->complaints, &node, "rule-name-bad", NULL,
                 "a rule's file name is letters, digits and -, such as second-pathway.lua");
        return;
    }
    struct rule_file *rules = arena_grow(reader->arena, book->rules, book->rule_count,
                                         &reader->rule_capacity, sizeof *rules);
    const char *id = arena_format(reader->arena, "%s/%s", book->name, name);
    if (!rules || !id)
        return;
    book->rules = rules;
    rules[book->rule_count++] = (struct rule_file){id, edition, path};
}

static bool is_edition(const struct book *book, const char *name)
{
    for (size_t i = 0; book->editions && book->editions[i]; i++)
        if (strcmp(book->editions[i], name) == 0)
            return true;
    return false;
}

/* One folder beside book.yaml: an edition's rules, the cases, or something that is none of ours
 * unless rules lie in it. */
static void read_folder(struct book_reader *reader, const char *name)
{
    char **files;
    size_t count;
    const char *path = path_join(reader->arena, reader->book->directory, name);
    if (!path || strcmp(name, "cases") == 0)
        return;
    if (!file_list(&files, &count, path, ".lua", reader->arena)) {
        struct node node = file_node(path);
        if (is_edition(reader->book, name) && !arena_is_short(reader->arena))
            complain(&reader->complaints, &node, "folder-unreadable", NULL,
                     "the rules of this edition cannot be read: the folder cannot be opened");
        return;
    }
    if (!is_edition(reader->book, name)) {
        struct node node = file_node(path);
        if (count > 0)
            complain(&reader->complaints, &node, "folder-unknown", NULL,
                     "rules lie in the folder %.80s, but the book names no such edition", name);
        return;
    }
    for (size_t i = 0; i < count; i++)
        add_rule_file(reader, path, name, files[i]);
}

/* By id, the one for all editions before those of one. */
static int compare_rule_files(const void *a, const void *b)
{
    const struct rule_file *left = a, *right = b;
    int order = strcmp(left->id, right->id);
    if (order != 0)
        return order;
    if (!left->edition || !right->edition)
        return (left->edition != NULL) - (right->edition != NULL);
    return strcmp(left->edition, right->edition);
}

void read_rule_files(struct book_reader *reader)
{
    struct book *book = reader->book;
    char **names;
    size_t count;
    if (file_list(&names, &count, book->directory, ".lua", reader->arena))
        for (size_t i = 0; i < count; i++)
            add_rule_file(reader, book->directory, NULL, names[i]);
    if (file_list(&names, &count, book->directory, NULL, reader->arena))
        for (size_t i = 0; i < count; i++)
            read_folder(reader, names[i]);
    if (book->rule_count > 0)
        qsort(book->rules, book->rule_count, sizeof *book->rules, compare_rule_files);
}
