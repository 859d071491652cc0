#include "cases.h"

#include <string.h>

#include "case_reading.h"
#include "file.h"
#include "text.h"

static const char case_example[] =
    "- {says: two layers are one too many, with: [{thing: roof_plane south, layers: 2}], "
    "expect: {kind: fail}}";
static const char books_example[] = "books: [marrow-bay]";

static void write_node(struct text *out, const struct node *node)
{
    if (node->type == NODE_SCALAR) {
        text_add_format(out, "%zu:", node->length);
        text_add(out, node->text, node->length);
        return;
    }
    size_t count = node->type == NODE_MAPPING ? 2 * node->length : node->length;
    text_add_word(out, node->type == NODE_MAPPING ? "{" : "[");
    for (size_t i = 0; i < count; i++)
        write_node(out, node->items[i]);
    text_add_word(out, "]");
}

const char *case_write_node(const struct node *node, struct arena *arena)
{
    struct text text = {0};
    write_node(&text, node);
    const char *copy = text.is_short ? NULL : arena_copy(arena, text.bytes, text.length);
    text_free(&text);
    return copy;
}

const struct node *case_find(const struct case_file *file, const struct node *node, const char *key)
{
    const struct node *own = node_find(node, key);
    return own != NULL ? own : node_find(file->root, key);
}

/* A text that a case says itself, else its file. */
static const char *find_shared(const struct case_file *file, const struct node *node,
                               const char *key, const char *example)
{
    bool is_own = node_find(node, key) != NULL || node_find(file->root, key) == NULL;
    return find_text(file->reader, is_own ? node : file->root, key, example);
}

static void read_case_values(struct rule_case *one, const struct case_file *file,
                             const struct node *node)
{
    static const char example[] = "values: {ground_snow_load: 40 psf}";
    const struct node *values = case_find(file, node, "values");
    if (values == NULL || !expect_node(&file->reader->complaints, values, NODE_MAPPING, example))
        return;
    one->values = arena_take(file->reader->arena, (values->length + 1) * sizeof *one->values);
    for (size_t i = 0; one->values != NULL && i < values->length; i++) {
        const struct node *key = values->items[2 * i], *is = values->items[2 * i + 1];
        if (expect_node(&file->reader->complaints, is, NODE_SCALAR, example))
            one->values[one->value_count++] = (struct case_value){key->text, is->text, is->place};
    }
}

static const char *join_edition(struct arena *arena, const char *name, const char *edition)
{
    return arena_format(arena, "%s@%s", name, edition);
}

/* `books`; else the book itself, a code at each of `editions`, which are by themselves all. Gives
 * the number of stacks: a case is run once on each. */
static const char *const **read_stacks(const struct case_file *file, const struct node *node,
                                       size_t *count)
{
    struct arena *arena = file->reader->arena;
    const struct node *books = node_find(node, "editions") != NULL ? node_find(node, "books")
                                                                   : case_find(file, node, "books");
    const struct node *editions = case_find(file, node, "editions");
    const char *const *named = NULL;
    const char *const *all = file->book->editions;
    if (books != NULL &&
        expect_node(&file->reader->complaints, books, NODE_SEQUENCE, books_example))
        named = read_texts(file->reader, books, "book");
    else if (editions != NULL &&
             expect_node(&file->reader->complaints, editions, NODE_SEQUENCE, "editions: [2021]"))
        all = read_texts(file->reader, editions, "edition");
    size_t length = 0;
    while (named == NULL && all != NULL && all[length] != NULL)
        length++;
    *count = length > 0 ? length : 1;
    const char *const **stacks = arena_take(arena, *count * sizeof(const char *const *));
    for (size_t i = 0; stacks != NULL && i < *count; i++) {
        const char **stack = arena_take(arena, 2 * sizeof *stack);
        if (stack == NULL)
            return NULL;
        stack[0] = length > 0 ? join_edition(arena, file->book->name, all[i]) : file->book->name;
        stacks[i] = named != NULL && named[0] != NULL ? named : stack;
    }
    return stacks;
}

/* All that tells the case from another: everything but its sentence. */
static const char *make_key(const struct rule_case *one, const struct case_file *file,
                            const struct node *node)
{
    static const char *const parts[] = {"with", "without", "adding", "values", "expect"};
    struct arena *arena = file->reader->arena;
    const char *key =
        arena_format(arena, "%s|%s|%s", one->rule, one->given, one->on != NULL ? one->on : "");
    for (size_t i = 0; key != NULL && one->books[i] != NULL; i++)
        key = arena_format(arena, "%s|%s", key, one->books[i]);
    for (size_t i = 0; key != NULL && i < sizeof parts / sizeof parts[0]; i++) {
        const struct node *part = case_find(file, node, parts[i]);
        const char *says = part != NULL ? case_write_node(part, arena) : "";
        key = says != NULL ? arena_format(arena, "%s|%s", key, says) : NULL;
    }
    return key;
}

/* Told once, whatever the number of editions. */
static bool is_new(const struct cases *cases, const struct rule_case *one,
                   const struct case_file *file, const struct node *node)
{
    for (size_t i = 0; i < cases->count; i++) {
        const struct rule_case *other = &cases->items[i];
        if (strcmp(other->key, one->key) == 0)
            return complain_both(&file->reader->complaints, node, other->place, "case-twice",
                                 "this case stands here twice: same design, changes and "
                                 "expectation");
        if (strcmp(other->rule, one->rule) == 0 && strcmp(other->says, one->says) == 0 &&
            other->place.line != one->place.line)
            return complain_both(&file->reader->complaints, node, other->place, "case-twice",
                                 "another case of the rule says the same sentence");
    }
    return true;
}

static bool add_case(struct cases *cases, const struct rule_case *one, struct arena *arena)
{
    struct rule_case *items =
        arena_grow(arena, cases->items, cases->count, &cases->capacity, sizeof *items);
    if (items == NULL)
        return false;
    cases->items = items;
    items[cases->count++] = *one;
    return true;
}

static void read_case(struct cases *cases, const struct case_file *file, const struct node *node)
{
    static const char *const keys[] = {"says",    "rule",   "given",  "books",  "editions", "on",
                                       "without", "adding", "values", "expect", "with",     NULL};
    struct book_reader *reader = file->reader;
    size_t before = reader->problems->count, stack_count;
    if (!check_keys(reader, node, "key of a case", keys, case_example))
        return;
    struct rule_case one = {.place = node->place};
    one.says = find_text(reader, node, "says", "two layers are one too many");
    one.rule = find_shared(file, node, "rule", "irc/ridge-clearance");
    one.given = find_shared(file, node, "given", "quill-hollow/standing");
    one.on = find_shared(file, node, "on", NULL);
    struct date day;
    if (one.on != NULL && !date_read(&day, one.on, strlen(one.on)))
        complain(&reader->complaints, case_find(file, node, "on"), "date-bad", "on: 2026-08-03",
                 "a day of the calendar is needed, year-month-day, not '%.40s'", one.on);
    read_case_values(&one, file, node);
    case_read_edits(&one, file, node);
    const char *const **stacks = read_stacks(file, node, &stack_count);
    bool asserts = case_read_expectation(&one.expect, file, node);
    if (!asserts || reader->problems->count > before || stacks == NULL)
        return;
    for (size_t i = 0; i < stack_count; i++) {
        one.books = stacks[i];
        one.key = make_key(&one, file, node);
        if (one.key == NULL || !is_new(cases, &one, file, node) ||
            !add_case(cases, &one, reader->arena))
            return;
    }
}

static void read_case_file(struct cases *cases, struct book_reader *reader, const struct book *book,
                           const char *path)
{
    static const char *const keys[] = {"rule", "given",  "books", "editions",
                                       "on",   "values", "cases", NULL};
    struct source *source;
    yaml_read_file(&source, path, reader->arena, reader->problems);
    if (source == NULL)
        return;
    reader->complaints = (struct complaints){.source = source, .problems = reader->problems};
    struct case_file file = {reader, book, source, source->root};
    if (source->root == NULL) {
        complain(&reader->complaints, NULL, "file-empty", "rule: irc/ridge-clearance",
                 "the file says nothing");
        return;
    }
    if (!check_keys(reader, source->root, "key of a file of cases", keys,
                    "rule: irc/ridge-clearance"))
        return;
    const struct node *list = node_find(source->root, "cases");
    if (list == NULL || list->length == 0)
        complain(&reader->complaints, list != NULL ? list : source->root, "key-missing",
                 case_example, "there are no 'cases' here");
    else if (expect_node(&reader->complaints, list, NODE_SEQUENCE, case_example))
        for (size_t i = 0; i < list->length; i++)
            read_case(cases, &file, list->items[i]);
}

bool cases_read(struct cases *out, const struct book *book, struct arena *arena,
                struct problems *problems)
{
    size_t before = problems->count, count = 0;
    char **names;
    struct book_reader reader = {.arena = arena, .problems = problems};
    const char *folder = path_join(arena, book->directory, "cases");
    *out = (struct cases){0};
    if (folder == NULL)
        return false;
    if (file_is_directory(folder) && file_list(&names, &count, folder, ".yaml", arena))
        for (size_t i = 0; i < count; i++) {
            const char *path = path_join(arena, folder, names[i]);
            if (path != NULL)
                read_case_file(out, &reader, book, path);
        }
    return problems->count == before && !arena_is_short(arena);
}
