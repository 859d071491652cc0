/* Numbers that tie what is drawn to the findings of the report. */
#include "drawing_sheet.h"

#include <string.h>

#include "block.h"
#include "drawing.h"

/* The groups of findings that need action, in the order in which the report tells them. */
static int group_of(const struct finding *finding)
{
    if (finding->outcome == OUTCOME_FAIL)
        return finding->waiver != NULL ? 4 : finding->normative == SHALL ? 0 : 1;
    if (finding->outcome == OUTCOME_REVIEW)
        return finding->signoff != NULL ? 5 : 3;
    return finding->outcome == OUTCOME_OPEN ? 2 : 6;
}

static const struct object *object_of(const struct finding *finding, const struct design *design)
{
    enum kind_id kind = kind_find(finding->about_kind);
    if (kind == KIND_NONE)
        return NULL;
    const struct objects *all = &design->of_kind[kind];
    for (size_t i = 0; i < all->count; i++)
        if (strcmp(all->items[i]->path, finding->about_name) == 0)
            return all->items[i];
    return NULL;
}

void keys_collect(struct keys *out, struct canvas *canvas, kind_set kinds)
{
    const struct findings *findings = canvas->report->findings;
    *out = (struct keys){0};
    if (findings == NULL || findings->count == 0)
        return;
    out->items = arena_take(canvas->arena, findings->count * sizeof *out->items);
    canvas->is_short |= out->items == NULL;
    size_t number = 0;
    for (int group = 0; group < 6 && out->items != NULL; group++)
        for (size_t i = 0; i < findings->count; i++) {
            const struct finding *finding = findings->items[i];
            if (group_of(finding) != group)
                continue;
            number++;
            enum kind_id kind = kind_find(finding->about_kind);
            if (kind == KIND_NONE || (kinds & (kind_set)1 << kind) == 0)
                continue;
            out->items[out->count++] =
                (struct key){finding, object_of(finding, canvas->report->design), number, false};
        }
}

struct key *keys_find(const struct keys *keys, const struct object *object)
{
    for (size_t i = 0; object != NULL && i < keys->count; i++)
        if (keys->items[i].object == object)
            return &keys->items[i];
    return NULL;
}

struct key *keys_find_finding(const struct keys *keys, const struct finding *finding)
{
    for (size_t i = 0; i < keys->count; i++)
        if (keys->items[i].finding == finding)
            return &keys->items[i];
    return NULL;
}

const char *key_word(const struct finding *finding)
{
    static const char *const words[] = {"fails",         "fails (a should)", "open",  "for review",
                                        "fails, waived", "signed",           "stands"};
    return words[group_of(finding)];
}

bool key_is_fail(const struct key *key)
{
    return key != NULL && key->finding->outcome == OUTCOME_FAIL && key->finding->waiver == NULL;
}

enum { MARK = 9, LIST_MOST = 14 };

/* A full disc fails, a ring fails a should, a square is open, a diamond is for review. */
static void draw_mark(struct canvas *canvas, const struct key *key, double x, double y)
{
    int group = group_of(key->finding);
    const struct stroke line = {INK, 1.6, group == 4 || group == 5 ? "3 2" : NULL, PAPER};
    const struct point diamond[] = {
        {x, y - MARK - 3}, {x + MARK + 3, y}, {x, y + MARK + 3}, {x - MARK - 3, y}};
    if (group == 0)
        canvas_circle(canvas, x, y, MARK, (struct stroke){PAPER, 1, NULL, ALARM});
    else if (group == 2)
        canvas_rect(canvas, x - MARK, y - MARK, 2 * MARK, 2 * MARK, line);
    else if (group == 3 || group == 5)
        canvas_polygon(canvas, diamond, 4, line);
    else
        canvas_circle(canvas, x, y, MARK, line);
    const struct lettering lettering = {
        key->number < 100 ? 10 : 8, ANCHOR_MIDDLE, true, false, group == 0 ? PAPER : INK, 0};
    canvas_text_format(canvas, x, y + 3.6, lettering, "%zu", key->number);
    canvas_keep(canvas, (struct box){x - MARK - 2, y - MARK - 2, x + MARK + 2, y + MARK + 2});
}

bool key_mark(struct canvas *canvas, struct key *key, const struct point *points, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        double x = points[i].x, y = points[i].y;
        const struct box box = {x - MARK - 2, y - MARK - 2, x + MARK + 2, y + MARK + 2};
        if (x < MARK + 4 || x > canvas->width - MARK - 4 || !canvas_is_free(canvas, box))
            continue;
        draw_mark(canvas, key, x, y);
        return key->is_outlined = true;
    }
    return false;
}

/* How many keys from `at` on say the same of several things. */
static size_t count_alike(const struct keys *keys, size_t at)
{
    const struct key *first = &keys->items[at];
    size_t count = 1;
    while (at + count < keys->count) {
        const struct key *next = &keys->items[at + count];
        if (next->finding->rule != first->finding->rule ||
            group_of(next->finding) != group_of(first->finding) ||
            next->number != first->number + count)
            break;
        count++;
    }
    return count;
}

/* The first letters without underscores: a kind's name as people read it. */
static const char *spaced(struct canvas *canvas, const char *text, size_t length)
{
    char *copy = text != NULL ? arena_copy(canvas->arena, text, strlen(text)) : NULL;
    canvas->is_short |= copy == NULL;
    for (size_t i = 0; copy != NULL && i < length; i++)
        if (copy[i] == '_')
            copy[i] = ' ';
    return copy;
}

static double write_key(struct canvas *canvas, const struct key *key, size_t alike, double y)
{
    const struct finding *finding = key->finding;
    const double left = MARGIN + 30, width = canvas->width - left - MARGIN;
    const struct lettering head = {12, ANCHOR_START, true, false, NULL, width};
    const struct lettering body = {11, ANCHOR_START, false, false, NULL, 0};
    bool is_whole = strcmp(finding->about_kind, finding->about_name) == 0;
    draw_mark(canvas, key, MARGIN + 12, y + 3);
    const char *about =
        alike > 1 ? arena_format(canvas->arena, "%zu to %zu, %s and %zu more", key->number,
                                 key->number + alike - 1, finding->about_name, alike - 1)
                  : spaced(canvas,
                           is_whole ? finding->about_kind
                                    : arena_format(canvas->arena, "%s %s", finding->about_kind,
                                                   finding->about_name),
                           strlen(finding->about_kind));
    const char *words = key_word(finding);
    canvas_text_format(canvas, left, y + 2, head, "%c%s: %s, %s", words[0] - 'a' + 'A', words + 1,
                       finding->title, about != NULL ? about : "");
    const char *cite = cite_text(finding, canvas->arena);
    if (cite == NULL)
        return y; /* the arena is short, which whoever draws asks */
    y = canvas_paragraph(canvas, left, y + 18, width, 3, body,
                         arena_format(canvas->arena, "%s (%s)", finding->message,
                                      finding->cite != NULL ? cite : finding->rule->id));
    return y + 12;
}

double keys_write(struct canvas *canvas, const struct keys *keys, double y)
{
    const struct lettering heading = {12, ANCHOR_START, true, false, FAINT, 0};
    const struct lettering body = {11,    ANCHOR_START, false,
                                   false, FAINT,        canvas->width - 2 * MARGIN};
    canvas_text(canvas, MARGIN, y, heading, "What needs action here");
    y += 22;
    if (canvas->report->findings == NULL)
        canvas_text(canvas, MARGIN, y, body, "This design was not held against a rulebook.");
    else if (keys->count == 0)
        canvas_text(canvas, MARGIN, y, body,
                    "No finding about what is drawn here needs action; the report says what was "
                    "checked.");
    if (keys->count == 0)
        return y + 16;
    size_t told = 0, at = 0;
    while (at < keys->count && told < LIST_MOST) {
        size_t alike = count_alike(keys, at);
        y = write_key(canvas, &keys->items[at], alike, y);
        at += alike;
        told++;
    }
    if (at < keys->count) {
        canvas_text_format(canvas, MARGIN, y, body, "And %zu more; the report tells them all.",
                           keys->count - at);
        y += 16;
    }
    return y;
}
