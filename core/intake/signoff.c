#include "signoffs.h"

#include <string.h>

#include "book_reading.h"
#include "digest.h"
#include "file.h"

static const char signoff_example[] =
    "- {rule: nec/supply-side, about: \"service:service\", verdict: accepted, by: Ada Thornbury, "
    "license: PE 20418, why: lugs seen on site, on: 2026-08-10, digest: (of the design's file)}";

const char *signoffs_path(const char *design_path, struct arena *arena)
{
    const char *slash = strrchr(design_path, '/'), *dot = strrchr(design_path, '.');
    bool has_ending = dot != NULL && (slash == NULL || dot > slash);
    size_t length = has_ending ? (size_t)(dot - design_path) : strlen(design_path);
    return arena_format(arena, "%.*s.signoff.yaml", (int)length, design_path);
}

static bool is_digest(const char *text)
{
    size_t digits = strspn(text, "0123456789abcdef");
    return digits == DIGEST_TEXT_SIZE - 1 && text[digits] == '\0';
}

/* A sign-off takes a point upon itself; it has no word for anything else. */
static bool check_words(struct book_reader *reader, const struct node *item, const char *verdict,
                        const struct signoff *signoff)
{
    if (strcmp(verdict, "accepted") != 0)
        return complain(&reader->complaints, node_find(item, "verdict"), "verdict-unknown",
                        "verdict: accepted",
                        "a sign-off says accepted; what is not accepted stays as it is, without "
                        "one, so '%.40s' is no verdict",
                        verdict);
    if (!is_digest(signoff->digest))
        return complain(&reader->complaints, node_find(item, "digest"), "digest-bad", NULL,
                        "the SHA-256 of the design's file is needed, 64 hexadecimal digits in "
                        "small letters");
    if (signoff->equipment != NULL && !is_digest(signoff->equipment))
        return complain(&reader->complaints, node_find(item, "equipment"), "digest-bad", NULL,
                        "the SHA-256 of the equipment is needed as a check tells it, 64 "
                        "hexadecimal digits in small letters");
    return true;
}

static void read_signoff(struct signoffs *out, struct book_reader *reader, const struct node *item)
{
    static const char *const keys[] = {"rule", "about", "verdict", "by",        "license", "why",
                                       "on",   "until", "digest",  "equipment", NULL};
    size_t before = reader->problems->count;
    if (!check_keys(reader, item, "key of a sign-off", keys, signoff_example))
        return;
    struct signoff one = {.place = item->place};
    one.rule = find_text(reader, item, "rule", "nec/supply-side");
    one.about = find_about(reader, item, "\"service:service\"");
    const char *verdict = find_text(reader, item, "verdict", "accepted");
    one.by = find_text(reader, item, "by", "Ada Thornbury");
    one.license = find_text(reader, item, "license", "PE 20418");
    one.why = find_text(reader, item, "why", "lugs seen on site");
    one.on = find_date(reader, item, "on", "2026-08-10");
    one.until = find_date(reader, item, "until", NULL);
    one.digest = find_text(reader, item, "digest", "(SHA-256 of the design's file)");
    one.equipment = find_text(reader, item, "equipment", NULL);
    if (reader->problems->count > before || one.about == NULL || /* no memory */
        !check_words(reader, item, verdict, &one))
        return;
    struct signoff *items =
        arena_grow(reader->arena, out->items, out->count, &out->capacity, sizeof *items);
    if (items == NULL)
        return;
    out->items = items;
    items[out->count++] = one;
}

bool signoffs_read(struct signoffs *out, const char *design_path, struct arena *arena,
                   struct problems *problems)
{
    struct source *source;
    size_t before = problems->count;
    const char *path = signoffs_path(design_path, arena);
    *out = (struct signoffs){0};
    if (path == NULL)
        return false;
    if (!file_is_there(path))
        return true;
    struct book_reader reader = {.arena = arena, .problems = problems};
    yaml_read_file(&source, path, arena, problems);
    if (source == NULL)
        return false;
    reader.complaints = (struct complaints){.source = source, .problems = problems};
    if (source->root != NULL &&
        expect_node(&reader.complaints, source->root, NODE_SEQUENCE, signoff_example))
        for (size_t i = 0; i < source->root->length; i++)
            read_signoff(out, &reader, source->root->items[i]);
    return problems->count == before && !arena_is_short(arena);
}
