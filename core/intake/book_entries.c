#include "book_reading.h"
#include <string.h>

static const char list_example[] = "- {from: 2026-07-01, is: 36 in, cite: \"Ordinance 2026-3\"}";

/* Keeps what is said, and reads it where the kind is known by now. */
static void read_said(struct book_reader *reader, const struct declaration *declaration,
                      const struct node *node, struct said *said)
{
    struct quantity_fault fault;
    const char *example = declaration ? declaration_example(declaration) : "18 in";
    const char *shown = arena_format(reader->arena, "is: %s", example);
    said->place = node->place;
    if (!expect_node(&reader->complaints, node, NODE_SCALAR, shown))
        return;
    if (declaration && !declaration_read_amount(&said->is, declaration, node->text, &fault))
        complain_inside(&reader->complaints, node, fault.offset, fault.code, shown, "%s",
                        fault.message);
    else if (node->length == 0)
        complain(&reader->complaints, node, "value-empty", shown, "'is' says nothing");
    else
        said->text = node->text;
}

static bool read_up_to(struct book_reader *reader, const struct node *mapping, struct band *band)
{
    struct quantity_fault fault;
    const char *text = find_text(reader, mapping, "up_to", "2000 ft");
    if (!text)
        return false;
    if (quantity_read(&band->up_to, text, strlen(text), measure_dimension(LENGTH), &fault)) {
        band->up_to.written = text;
        return true;
    }
    return complain_inside(&reader->complaints, node_find(mapping, "up_to"), fault.offset,
                           fault.code, "up_to: 2000 ft", "%s", fault.message);
}

/* Bands stand from low to high, each above the one before. */
static void check_rising(struct book_reader *reader, const struct entry *entry,
                         const struct node *item)
{
    struct quantity_fault fault;
    int order = 0;
    if (entry->band_count < 2)
        return;
    const struct band *last = &entry->bands[entry->band_count - 1];
    if (quantity_compare(&order, last[-1].up_to, last->up_to, &fault) && order >= 0)
        complain(&reader->complaints, item, "bands-order",
                 "bands: [{up_to: 2000 ft, is: 30 psf}, {up_to: 4000 ft, is: 50 psf}]",
                 "each band must reach higher than the one before");
}

static void read_bands(struct book_reader *reader, const struct declaration *declaration,
                       const struct node *list, struct entry *entry)
{
    static const char example[] = "bands: [{up_to: 2000 ft, is: 30 psf}]";
    static const char *const keys[] = {"up_to", "is", NULL};
    if (!expect_node(&reader->complaints, list, NODE_SEQUENCE, example))
        return;
    entry->bands = arena_take(reader->arena, (list->length + 1) * sizeof *entry->bands);
    if (!entry->bands)
        return;
    for (size_t i = 0; i < list->length; i++) {
        const struct node *item = list->items[i];
        struct band band = {0};
        if (!check_keys(reader, item, "key of a band", keys, example) ||
            !read_up_to(reader, item, &band))
            continue;
        const struct node *is = node_find(item, "is");
        if (is)
            read_said(reader, declaration, is, &band.said);
        else
            complain(&reader->complaints, item, "key-missing", example, "'is' is missing here");
        entry->bands[entry->band_count++] = band;
        check_rising(reader, entry, item);
    }
    if (list->length == 0)
        complain(&reader->complaints, list, "bands-empty", example, "there is no band in it");
}

/* What it says: `is`, or `bands`. */
static void read_is(struct book_reader *reader, const struct declaration *declaration,
                    const struct node *mapping, struct entry *entry)
{
    const struct node *is = node_find(mapping, "is"), *bands = node_find(mapping, "bands");
    if (is && bands)
        complain(&reader->complaints, bands, "is-and-bands", NULL,
                 "an entry says one number with is, or several with bands, not both");
    else if (is)
        read_said(reader, declaration, is, &entry->said);
    else if (bands)
        read_bands(reader, declaration, bands, entry);
    else
        complain(&reader->complaints, mapping, "key-missing",
                 arena_format(reader->arena, "is: %s",
                              declaration ? declaration_example(declaration) : "18 in"),
                 "'is' is missing here");
}

static bool add_entry(struct book_reader *reader, struct book_value *value,
                      const struct entry *entry)
{
    struct entry *entries =
        arena_grow(reader->arena, value->entries, value->count, &value->capacity, sizeof *entries);
    if (!entries)
        return false;
    value->entries = entries;
    entries[value->count++] = *entry;
    return true;
}

/* An own value's edition must be one of the book's; of another book's we do not know yet. */
static void check_edition(struct book_reader *reader, const struct book_value *value,
                          const struct node *node, const char *edition)
{
    const char *const *editions = reader->book->editions;
    size_t count = 0;
    for (; editions && editions[count]; count++)
        if (strcmp(editions[count], edition) == 0)
            return;
    if (!value->declaration)
        return;
    if (count == 0)
        complain(&reader->complaints, node, "edition-needless", NULL,
                 "this book has no editions, so its value is not of edition %s", edition);
    else
        complain_unknown(&reader->complaints, node, "edition-unknown", "edition", editions, count);
}

static void read_entry(struct book_reader *reader, struct book_value *value,
                       const struct node *item)
{
    static const char *const keys[] = {"from", "is", "bands", "cite", "edition", "repealed", NULL};
    if (!check_keys(reader, item, "key of an entry", keys, list_example))
        return;
    struct entry entry = {.place = item->place};
    entry.repealed = find_date(reader, item, "repealed", NULL);
    entry.edition = find_text(reader, item, "edition", NULL);
    if (entry.edition)
        check_edition(reader, value, node_find(item, "edition"), entry.edition);
    bool says_something = node_find(item, "is") || node_find(item, "bands");
    if (node_find(item, "repealed") && !node_find(item, "from") && !says_something) {
        entry.is_repeal = true;
        entry.from = entry.repealed;
        entry.repealed = (struct date){0};
        entry.cite = find_text(reader, item, "cite", NULL);
    } else {
        entry.from = find_date(reader, item, "from", "2026-07-01");
        entry.cite = find_text(reader, item, "cite", "\"Ordinance 2026-3\"");
        read_is(reader, value->declaration, item, &entry);
        check_period(reader, item, entry.from, entry.repealed, "repealed");
    }
    if (entry.from.year != 0)
        add_entry(reader, value, &entry);
}

void read_entries(struct book_reader *reader, struct book_value *value, const struct node *list)
{
    if (!expect_node(&reader->complaints, list, NODE_SEQUENCE, list_example))
        return;
    if (list->length == 0)
        complain(&reader->complaints, list, "entries-none", list_example,
                 "there is no entry in it");
    for (size_t i = 0; i < list->length; i++)
        read_entry(reader, value, list->items[i]);
}

void read_editions(struct book_reader *reader, struct book_value *value, const struct node *mapping)
{
    static const char example[] = "editions: {2021: {is: 18 in, cite: R324.6.2}}";
    static const char *const keys[] = {"is", "bands", "cite", NULL};
    if (!expect_node(&reader->complaints, mapping, NODE_MAPPING, example))
        return;
    for (size_t i = 0; i < mapping->length; i++) {
        const struct node *key = mapping->items[2 * i], *item = mapping->items[2 * i + 1];
        check_edition(reader, value, key, key->text);
        if (!check_keys(reader, item, "key of an edition's entry", keys, example))
            continue;
        struct entry entry = {.place = key->place, .edition = key->text};
        entry.cite = find_text(reader, item, "cite", "R324.6.2");
        read_is(reader, value->declaration, item, &entry);
        add_entry(reader, value, &entry);
    }
}

/* May both begin on one day? Only a code's editions, side by side. */
static bool is_clash(const struct entry *a, const struct entry *b)
{
    if (date_compare(a->from, b->from) != 0)
        return false;
    return a->from.year != 0 || !a->edition || !b->edition || strcmp(a->edition, b->edition) == 0;
}

void check_series(struct book_reader *reader, const struct book_value *value)
{
    for (size_t i = 1; i < value->count; i++) {
        const struct entry *entry = &value->entries[i];
        const struct node at = {.type = NODE_MAPPING, .place = entry->place};
        char day[16];
        date_write(day, sizeof day, entry->from);
        for (size_t j = 0; j < i; j++) {
            if (!is_clash(entry, &value->entries[j]))
                continue;
            complain_both(&reader->complaints, &at, value->entries[j].place, "from-twice",
                          "two entries of %s begin on %s", value->name, day);
            break;
        }
    }
}
