#include "book_reading.h"
#include <string.h>
#include "file.h"

/* Things a design can declare that not every book has rules for. */
static const char *const coverable[] = {"storage",
                                        "generator",
                                        "ground array",
                                        "second dwelling unit",
                                        "detached building",
                                        "panel in a detached building",
                                        "other occupancy",
                                        "limit of export",
                                        NULL};

/* A text copied from the example of the trade: what a book must say of itself. */
static void read_card(struct book_reader *reader, const struct node *root)
{
    struct book *book = reader->book;
    book->title = find_text(reader, root, "title", "Town of Marrow Bay, residential rooftop PV");
    book->maintained_by = find_text(reader, root, "maintained_by", "Building Department");
    book->scope =
        find_text(reader, root, "scope", "one- and two-family dwellings, roof-mounted PV");
}

static const char *last_part(const char *directory)
{
    const char *slash = strrchr(directory, '/');
    return slash ? slash + 1 : directory;
}

/* The name is the folder's, or nobody would find it by its name. */
static void read_name(struct book_reader *reader, const struct node *root)
{
    struct book *book = reader->book;
    const char *folder = last_part(book->directory);
    const char *name = find_text(reader, root, "book", is_plain_name(folder) ? folder : "my-town");
    if (name && !is_plain_name(name))
        complain(&reader->complaints, node_find(root, "book"), "book-name-bad", "book: marrow-bay",
                 "a book's name is letters, digits and -, not '%.80s'", name);
    else if (name && is_plain_name(folder) && strcmp(folder, name) != 0)
        complain(&reader->complaints, node_find(root, "book"), "book-name-other",
                 arena_format(reader->arena, "book: %s", folder),
                 "the book calls itself %.80s, but its folder is called %.80s", name, folder);
    book->name = name && is_plain_name(name) ? name : folder;
}

static void read_role(struct book_reader *reader, const struct node *root)
{
    static const char *const roles[] = {"model code", "authority", "utility", "company", NULL};
    struct book *book = reader->book;
    bool has_editions = book->editions && book->editions[0];
    const char *text = find_text(reader, root, "role", has_editions ? NULL : "authority");
    book->role = has_editions ? ROLE_MODEL_CODE : ROLE_AUTHORITY;
    if (!text)
        return;
    const struct node *node = node_find(root, "role");
    for (size_t i = 0; roles[i]; i++) {
        if (strcmp(roles[i], text) != 0)
            continue;
        book->role = (enum book_role)i;
        if (has_editions && i != ROLE_MODEL_CODE)
            complain(&reader->complaints, node_find(root, "editions"), "editions-needless", NULL,
                     "only a model code comes in editions; what else changes has dates");
        return;
    }
    complain_unknown(&reader->complaints, node, "role-unknown", "role", roles, 4);
}

static void read_covers(struct book_reader *reader, const struct node *root)
{
    struct book *book = reader->book;
    const struct node *list = find_list(reader, root, "covers", "covers: [storage]");
    book->covers = read_texts(reader, list, "declared thing");
    for (size_t i = 0; list && i < list->length; i++) {
        const struct node *item = list->items[i];
        bool is_known = item->type != NODE_SCALAR || item->length == 0;
        for (size_t j = 0; coverable[j] && !is_known; j++)
            is_known = strcmp(coverable[j], item->text) == 0;
        if (!is_known)
            complain_unknown(&reader->complaints, item, "covers-unknown", "declared thing",
                             coverable, sizeof coverable / sizeof coverable[0] - 1);
    }
}

static void read_root(struct book_reader *reader, const struct node *root)
{
    static const char *const keys[] = {"book",     "title",    "maintained_by", "role",   "scope",
                                       "covers",   "editions", "adopts",        "values", "deletes",
                                       "restores", "replaces", "waivers",       NULL};
    struct book *book = reader->book;
    check_keys(reader, root, "key of a book", keys, "book: marrow-bay");
    read_name(reader, root);
    read_card(reader, root);
    book->editions = read_texts(
        reader, find_list(reader, root, "editions", "editions: [2018, 2021]"), "edition");
    read_role(reader, root);
    read_covers(reader, root);
    read_adoptions(reader, find_list(reader, root, "adopts",
                                     "adopts: [{book: irc, edition: 2021, from: 2023-01-01}]"));
    if (node_find(root, "values"))
        read_values(reader, node_find(root, "values"));
    read_changes(reader, find_list(reader, root, "deletes", NULL), CHANGE_DELETES);
    read_changes(reader, find_list(reader, root, "restores", NULL), CHANGE_RESTORES);
    read_changes(reader, find_list(reader, root, "replaces", NULL), CHANGE_REPLACES);
    read_waivers(reader, find_list(reader, root, "waivers", NULL));
}

void keep_source(struct book_reader *reader, const struct source *source)
{
    struct book *book = reader->book;
    struct book_text *texts = arena_grow(reader->arena, book->texts, book->text_count,
                                         &reader->text_capacity, sizeof *texts);
    if (!texts)
        return;
    book->texts = texts;
    texts[book->text_count++] = (struct book_text){source->path, source->bytes, source->length};
}

/* Opens one file of the book and makes its complaints the reader's. False: nothing to look at. */
static bool open_file(struct book_reader *reader, struct source **source, const char *path)
{
    yaml_read_file(source, path, reader->arena, reader->problems);
    if (!*source)
        return false;
    reader->complaints = (struct complaints){.source = *source, .problems = reader->problems};
    keep_source(reader, *source);
    return true;
}

static void read_values_file(struct book_reader *reader)
{
    struct source *source;
    const char *path = path_join(reader->arena, reader->book->directory, "values.yaml");
    if (!path || !file_is_there(path))
        return;
    reader->book->is_partial = !open_file(reader, &source, path);
    if (reader->book->is_partial)
        return;
    if (source->root)
        read_values(reader, source->root);
    else
        complain(&reader->complaints, NULL, "file-empty", "ridge_setback: {kind: length, …}",
                 "the file says nothing");
}

bool book_read(struct book **out, const char *directory, struct arena *arena,
               struct problems *problems)
{
    size_t before = problems->count;
    struct source *source;
    struct book_reader reader = {.arena = arena, .problems = problems};
    *out = NULL;
    reader.book = arena_take(arena, sizeof *reader.book);
    const char *path = path_join(arena, directory, "book.yaml");
    if (!reader.book || !path || !open_file(&reader, &source, path))
        return false;
    reader.book->directory = directory;
    reader.book->place = (struct place){.file = source->path};
    if (!source->root)
        return complain(&reader.complaints, NULL, "file-empty", "book: marrow-bay",
                        "the file says nothing");
    if (!expect_node(&reader.complaints, source->root, NODE_MAPPING, "book: marrow-bay"))
        return false;
    read_root(&reader, source->root);
    read_values_file(&reader);
    read_rule_files(&reader);
    if (arena_is_short(arena))
        return false;
    *out = reader.book;
    return problems->count == before;
}
