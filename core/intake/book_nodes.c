#include "book_reading.h"
#include <string.h>
#include "model.h"
#include "text.h"

static size_t count_names(const char *const *names)
{
    size_t count = 0;
    while (names[count])
        count++;
    return count;
}

static bool has_name(const char *const *names, const char *name)
{
    for (size_t i = 0; names[i]; i++)
        if (strcmp(names[i], name) == 0)
            return true;
    return false;
}

bool check_keys(struct book_reader *reader, const struct node *node, const char *what,
                const char *const *keys, const char *example)
{
    if (!expect_node(&reader->complaints, node, NODE_MAPPING, example))
        return false;
    for (size_t i = 0; i < node->length; i++) {
        const struct node *key = node->items[2 * i];
        if (!has_name(keys, key->text))
            complain_unknown(&reader->complaints, key, "unknown-key", what, keys,
                             count_names(keys));
    }
    return true;
}

/* Is there a key that is nearly this one? Then that was told, and the right one is not missing. */
static bool has_near_key(const struct node *mapping, const char *key)
{
    for (size_t i = 0; i < mapping->length; i++)
        if (text_find_near(mapping->items[2 * i]->text, &key, 1))
            return true;
    return false;
}

/* The scalar under a key, with something in it. */
static const struct node *find_scalar(struct book_reader *reader, const struct node *mapping,
                                      const char *key, const char *example)
{
    const struct node *node = node_find(mapping, key);
    const char *shown = example ? arena_format(reader->arena, "%s: %s", key, example) : NULL;
    if (!node) {
        if (example && !has_near_key(mapping, key))
            complain(&reader->complaints, mapping, "key-missing", shown, "'%s' is missing here",
                     key);
        return NULL;
    }
    if (!expect_node(&reader->complaints, node, NODE_SCALAR, shown))
        return NULL;
    if (node->length == 0) {
        complain(&reader->complaints, node, "value-empty", shown, "'%s' says nothing", key);
        return NULL;
    }
    return node;
}

const char *find_text(struct book_reader *reader, const struct node *mapping, const char *key,
                      const char *example)
{
    const struct node *node = find_scalar(reader, mapping, key, example);
    return node ? node->text : NULL;
}

struct date find_date(struct book_reader *reader, const struct node *mapping, const char *key,
                      const char *example)
{
    struct date date = {0};
    const struct node *node = find_scalar(reader, mapping, key, example);
    if (node && !date_read(&date, node->text, node->length)) {
        complain(&reader->complaints, node, "date-bad",
                 arena_format(reader->arena, "%s: %s", key, example ? example : "2026-07-01"),
                 "a day of the calendar is needed, year-month-day, not '%.40s'", node->text);
        return (struct date){0};
    }
    return date;
}

const struct node *find_list(struct book_reader *reader, const struct node *mapping,
                             const char *key, const char *example)
{
    const struct node *node = node_find(mapping, key);
    if (!node || !expect_node(&reader->complaints, node, NODE_SEQUENCE, example))
        return NULL;
    return node;
}

const char *const *read_texts(struct book_reader *reader, const struct node *list, const char *what)
{
    size_t length = list ? list->length : 0, count = 0;
    const char **texts = arena_take(reader->arena, (length + 1) * sizeof *texts);
    for (size_t i = 0; texts && i < length; i++) {
        const struct node *item = list->items[i];
        if (!expect_node(&reader->complaints, item, NODE_SCALAR, what))
            continue;
        if (item->length == 0)
            complain(&reader->complaints, item, "value-empty", NULL, "this %s says nothing", what);
        else if (has_name(texts, item->text))
            complain(&reader->complaints, item, "listed-twice", NULL,
                     "%s '%.80s' stands here twice", what, item->text);
        else
            texts[count++] = item->text;
    }
    return texts;
}

bool is_plain_name(const char *text)
{
    static const char letters[] = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";
    if (*text == '\0' || !strchr(letters, *text))
        return false;
    for (; *text; text++)
        if (!strchr(letters, *text) && *text != '-' && *text != '_')
            return false;
    return true;
}

void check_period(struct book_reader *reader, const struct node *mapping, struct date from,
                  struct date end, const char *key)
{
    if (end.year == 0 || from.year == 0 || date_compare(from, end) < 0)
        return;
    complain(&reader->complaints, node_find(mapping, key), "period-empty", NULL,
             "it ends before it begins, or on the same day");
}

const char *find_about(struct book_reader *reader, const struct node *mapping, const char *example)
{
    const char *about = find_text(reader, mapping, "about", example);
    size_t length = about != NULL ? strcspn(about, ": ") : 0;
    const char *kind = about != NULL ? arena_copy(reader->arena, about, length) : NULL;
    if (kind == NULL)
        return NULL;
    bool is_whole =
        kind_find(kind) != KIND_NONE && about[length] != '\0' && about[length + 1] != '\0';
    if (is_whole && about[length] == ':')
        return about;
    complain(&reader->complaints, node_find(mapping, "about"), "about-bad",
             is_whole ? arena_format(reader->arena, "about: \"%s:%.80s\"", kind, about + length + 1)
                      : "about: \"roof_plane:south\"",
             "a thing is named by its kind and its name, as in roof_plane:south, not '%.80s'",
             about);
    return NULL;
}
