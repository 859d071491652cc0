#include "book_reading.h"
#include <string.h>
#include "file.h"

/* ---- adopts ------------------------------------------------------------------------------- */

static const char adoption_example[] = "- {book: irc, edition: 2021, from: 2023-01-01}";

static void check_adoption_twice(struct book_reader *reader, const struct node *item,
                                 const struct adoption *adoption)
{
    const struct book *book = reader->book;
    for (size_t i = 0; i < book->adoption_count; i++) {
        const struct adoption *other = &book->adoptions[i];
        if (strcmp(other->book, adoption->book) == 0 &&
            date_compare(other->from, adoption->from) == 0) {
            complain_both(&reader->complaints, item, other->place, "from-twice",
                          "two adoptions of %s begin on the same day", adoption->book);
            return;
        }
    }
}

static bool check_adopted(struct book_reader *reader, const struct node *item, const char *name)
{
    const struct node *node = node_find(item, "book");
    if (!is_plain_name(name))
        return complain(&reader->complaints, node, "book-name-bad", adoption_example,
                        "a book is adopted by its name, without a path, not '%.80s'", name);
    if (reader->book->name && strcmp(reader->book->name, name) == 0)
        return complain(&reader->complaints, node, "adopts-itself", NULL, "%s adopts itself", name);
    return true;
}

static void read_adoption(struct book_reader *reader, const struct node *item)
{
    static const char *const keys[] = {"book", "edition", "from", "repealed", "cite", NULL};
    struct book *book = reader->book;
    if (!check_keys(reader, item, "key of an adoption", keys, adoption_example))
        return;
    struct adoption adoption = {.place = item->place};
    adoption.book = find_text(reader, item, "book", "irc");
    adoption.edition = find_text(reader, item, "edition", NULL);
    adoption.from = find_date(reader, item, "from", "2023-01-01");
    adoption.repealed = find_date(reader, item, "repealed", NULL);
    adoption.cite = find_text(reader, item, "cite", NULL);
    check_period(reader, item, adoption.from, adoption.repealed, "repealed");
    if (!adoption.book || !check_adopted(reader, item, adoption.book) || adoption.from.year == 0)
        return;
    check_adoption_twice(reader, item, &adoption);
    struct adoption *adoptions = arena_grow(reader->arena, book->adoptions, book->adoption_count,
                                            &reader->adoption_capacity, sizeof *adoptions);
    if (!adoptions)
        return;
    book->adoptions = adoptions;
    adoptions[book->adoption_count++] = adoption;
}

void read_adoptions(struct book_reader *reader, const struct node *list)
{
    for (size_t i = 0; list && i < list->length; i++)
        read_adoption(reader, list->items[i]);
}

/* ---- deletes, restores, replaces ---------------------------------------------------------- */

static const char delete_example[] =
    "- {rule: irc/second-pathway, edition: 2021, from: 2025-05-01, cite: \"Ordinance 2025-9\"}";
static const char replace_example[] = "- {rule: irc/second-pathway, edition: 2021, with: "
                                      "pathway.lua, from: 2025-05-01, cite: \"Ordinance 2025-9\"}";

/* "irc/second-pathway": a book and a rule of it. */
static bool check_rule_id(struct book_reader *reader, const struct node *item, const char *id)
{
    const char *slash = strchr(id, '/');
    if (slash && slash > id && slash[1] && !strchr(slash + 1, '/'))
        return true;
    return complain(&reader->complaints, node_find(item, "rule"), "rule-id-bad",
                    "rule: irc/second-pathway",
                    "a rule is named by its book and its name, as in irc/second-pathway, not "
                    "'%.80s'",
                    id);
}

/* The path of the text that a rule is replaced with; NULL: told. */
static const char *find_replacement(struct book_reader *reader, const struct node *item)
{
    const char *name = find_text(reader, item, "with", "pathway.lua");
    if (!name)
        return NULL;
    const struct node *node = node_find(item, "with");
    const char *dot = strrchr(name, '.');
    if (strchr(name, '/') || !dot || dot == name || strcmp(dot, ".lua") != 0) {
        complain(&reader->complaints, node, "file-name-bad", "with: pathway.lua",
                 "a .lua file in this book's folder is needed, not '%.80s'", name);
        return NULL;
    }
    const char *path = path_join(reader->arena, reader->book->directory, name);
    if (path && (!file_is_there(path) || file_is_directory(path))) {
        complain(&reader->complaints, node, "file-missing", NULL,
                 "there is no file %.80s in this book's folder", name);
        return NULL;
    }
    return path;
}

/* Are both about one question? Whether it holds, or what it says. */
static bool is_same_target(const struct change *a, const struct change *b)
{
    return strcmp(a->rule, b->rule) == 0 &&
           (a->verb == CHANGE_REPLACES) == (b->verb == CHANGE_REPLACES);
}

static void check_change_twice(struct book_reader *reader, const struct node *item,
                               const struct change *change)
{
    const struct book *book = reader->book;
    for (size_t i = 0; i < book->change_count; i++) {
        const struct change *other = &book->changes[i];
        bool side_by_side = change->from.year == 0 && change->edition && other->edition &&
                            strcmp(change->edition, other->edition) != 0;
        if (is_same_target(other, change) && date_compare(other->from, change->from) == 0 &&
            !side_by_side) {
            complain_both(&reader->complaints, item, other->place, "from-twice",
                          "two changes of %s begin on the same day", change->rule);
            return;
        }
    }
}

/* A code may drop a rule of its own in one edition, whatever the day. */
static bool is_own_of_edition(const struct book *book, const struct change *change)
{
    size_t length = book->name ? strlen(book->name) : 0;
    return length > 0 && change->rule && change->edition && book->editions && book->editions[0] &&
           strncmp(change->rule, book->name, length) == 0 && change->rule[length] == '/';
}

static void add_change(struct book_reader *reader, const struct change *change)
{
    struct book *book = reader->book;
    struct change *changes = arena_grow(reader->arena, book->changes, book->change_count,
                                        &reader->change_capacity, sizeof *changes);
    if (!changes)
        return;
    book->changes = changes;
    changes[book->change_count++] = *change;
}

static void read_change(struct book_reader *reader, const struct node *item, enum change_verb verb)
{
    static const char *const keys[] = {"rule", "edition", "from", "repealed", "cite", NULL};
    static const char *const replace_keys[] = {"rule", "edition",  "with", "from",
                                               "cite", "repealed", NULL};
    bool replaces = verb == CHANGE_REPLACES;
    if (!check_keys(reader, item, "key of a change", replaces ? replace_keys : keys,
                    replaces ? replace_example : delete_example))
        return;
    struct change change = {.verb = verb, .place = item->place};
    change.rule = find_text(reader, item, "rule", "irc/second-pathway");
    change.edition = find_text(reader, item, "edition", NULL);
    bool is_undated = is_own_of_edition(reader->book, &change) && !node_find(item, "from");
    change.from = find_date(reader, item, "from", is_undated ? NULL : "2025-05-01");
    change.repealed = find_date(reader, item, "repealed", NULL);
    change.cite = find_text(reader, item, "cite", "\"Ordinance 2025-9\"");
    change.file = replaces ? find_replacement(reader, item) : NULL;
    check_period(reader, item, change.from, change.repealed, "repealed");
    if (!change.rule || !check_rule_id(reader, item, change.rule) ||
        (change.from.year == 0 && !is_undated) || (replaces && !change.file))
        return;
    check_change_twice(reader, item, &change);
    add_change(reader, &change);
}

void read_changes(struct book_reader *reader, const struct node *list, enum change_verb verb)
{
    for (size_t i = 0; list && i < list->length; i++)
        read_change(reader, list->items[i], verb);
}

/* ---- waivers ------------------------------------------------------------------------------ */

static const char waiver_example[] =
    "- {rule: irc/second-pathway, about: \"roof_plane:south\", reason: flat roof behind it, "
    "granted_by: Fire Marshal, permit: B-26-0417, from: 2026-03-01, until: 2026-12-31}";

static void read_waiver(struct book_reader *reader, const struct node *item)
{
    static const char *const keys[] = {"rule",   "about", "reason", "granted_by",
                                       "permit", "from",  "until",  NULL};
    struct book *book = reader->book;
    if (!check_keys(reader, item, "key of a waiver", keys, waiver_example))
        return;
    struct waiver waiver = {.place = item->place};
    waiver.rule = find_text(reader, item, "rule", "irc/second-pathway");
    waiver.about = find_about(reader, item, "\"roof_plane:south\"");
    waiver.reason = find_text(reader, item, "reason", "flat roof behind it");
    waiver.granted_by = find_text(reader, item, "granted_by", "Fire Marshal");
    waiver.permit = find_text(reader, item, "permit", "B-26-0417");
    waiver.from = find_date(reader, item, "from", "2026-03-01");
    waiver.until = find_date(reader, item, "until", "2026-12-31");
    if (!waiver.rule || !waiver.about || !waiver.reason || !waiver.granted_by || !waiver.permit ||
        waiver.from.year == 0 || waiver.until.year == 0 ||
        !check_rule_id(reader, item, waiver.rule))
        return;
    if (date_compare(waiver.until, waiver.from) < 0) {
        complain(&reader->complaints, node_find(item, "until"), "period-empty", NULL,
                 "the waiver ends before it begins");
        return;
    }
    struct waiver *waivers = arena_grow(reader->arena, book->waivers, book->waiver_count,
                                        &reader->waiver_capacity, sizeof *waivers);
    if (!waivers)
        return;
    book->waivers = waivers;
    waivers[book->waiver_count++] = waiver;
}

void read_waivers(struct book_reader *reader, const struct node *list)
{
    for (size_t i = 0; list && i < list->length; i++)
        read_waiver(reader, list->items[i]);
}
