#include "series.h"
#include <string.h>

/* Reads what a book above says, now that its kind is known. */
static void read_said(struct resolving *resolving, const struct declaration *declaration,
                      struct said *said)
{
    struct quantity_fault fault;
    if (!said->text || declaration_read_amount(&said->is, declaration, said->text, &fault))
        return;
    struct place place = said->place;
    const char *example =
        arena_format(resolving->arena, "is: %s", declaration_example(declaration));
    tell_both(resolving, fault.code, place, declaration->place, example, "the value %s: %s",
              declaration->name, fault.message);
}

/* A share that its own book writes in percent, and another as 25 for 25 %: the number would hold a
 * hundred times over, and most often loosen. It is as good as none. */
static void check_share(struct resolving *resolving, const struct series *series, struct said *said)
{
    const struct book_value *own = series->declared;
    const char *model = own->count > 0 ? own->entries[0].said.text : NULL;
    if (!model || !strchr(model, '%') || !said->text || strchr(said->text, '%') ||
        said->is.type != AMOUNT_NUMBER || said->is.quantity.value <= 1)
        return;
    tell_both(resolving, "share-bare", said->place, own->entries[0].said.place,
              arena_format(resolving->arena, "is: %s %%", said->text),
              "%s is a share, which %s writes as %s: %s without %% is a hundred times as much",
              series->name, resolving->books[series->declared_by].book->name, model, said->text);
    said->is = (struct amount){.type = AMOUNT_NONE};
}

static struct entry *read_entry(struct resolving *resolving, const struct declaration *declaration,
                                const struct entry *entry)
{
    struct entry *copy = arena_take(resolving->arena, sizeof *copy);
    if (!copy)
        return NULL;
    *copy = *entry;
    read_said(resolving, declaration, &copy->said);
    if (entry->bands) {
        copy->bands = arena_take(resolving->arena, entry->band_count * sizeof *copy->bands);
        if (!copy->bands)
            return NULL;
        memcpy(copy->bands, entry->bands, entry->band_count * sizeof *copy->bands);
        for (size_t i = 0; i < entry->band_count; i++)
            read_said(resolving, declaration, &copy->bands[i].said);
    }
    return copy;
}

static bool is_own(const struct series *series, const struct giver *giver)
{
    return giver->given == series->declared;
}

/* May this entry be the one that counts on the day, and is it later than the best so far? */
static bool is_better(const struct resolving *resolving, const struct series *series,
                      const struct giver *giver, const struct entry *entry,
                      const struct entry *best)
{
    const char *adopted = resolving->books[giver->book].edition;
    if (is_own(series, giver) && entry->edition && !is_same_name(entry->edition, adopted))
        return false;
    return has_begun(entry->from, resolving->rulebook->on) &&
           (!best || date_compare(entry->from, best->from) >= 0);
}

/* Finds what one book says on the day, and tells every entry of it that cannot be. */
static bool choose_live(struct resolving *resolving, const struct series *series,
                        struct giver *giver)
{
    const struct declaration *declaration = series->declared->declaration;
    struct entry *best = NULL;
    enum edition_fit best_fit = EDITION_FITS;
    struct edition_question question = {
        .is_needed = !declaration->given_above && !is_company(resolving, giver->book),
        .what = arena_format(resolving->arena, "the value %s", series->name)};
    for (size_t i = 0; i < giver->given->count; i++) {
        struct entry *entry = read_entry(resolving, declaration, &giver->given->entries[i]);
        if (!entry || !question.what)
            return false;
        enum edition_fit fit = EDITION_FITS;
        question.edition = entry->edition;
        question.place = entry->place;
        if (!is_own(series, giver))
            check_share(resolving, series, &entry->said);
        if (!is_own(series, giver) && !entry->is_repeal)
            fit = judge_edition(resolving, series->declared_by, &question);
        if (is_better(resolving, series, giver, entry, best)) {
            best = entry;
            best_fit = fit;
        }
    }
    if (!best || best->is_repeal || has_ended(best->repealed, resolving->rulebook->on))
        return true;
    giver->live = best;
    giver->is_stale = best_fit != EDITION_FITS;
    question.edition = best->edition;
    question.place = best->place;
    if (best_fit == EDITION_OTHER)
        tell_stale(resolving, series->declared_by, &question);
    return true;
}

/* The live ones that `above` (NO_BOOK: anyone) sees below it, as givers and as books. */
static size_t list_live(const struct resolving *resolving, const struct series *series,
                        size_t above, size_t *givers, size_t *books)
{
    size_t count = 0;
    for (size_t i = 0; i < series->giver_count; i++) {
        const struct giver *giver = &series->givers[i];
        if (!giver->live || (above != NO_BOOK && !does_reach(resolving, above, giver->book)))
            continue;
        givers[count] = i;
        books[count++] = giver->book;
    }
    return count;
}

/* A company may not loosen: then what stands below stands on. */
static void hold_company(struct resolving *resolving, struct series *series, struct giver *giver,
                         size_t *givers, size_t *books)
{
    static const char *const words[] = {[STRICTER_NEITHER] =
                                            "as it is, since neither side of it is stricter",
                                        [STRICTER_LARGER] = "or larger",
                                        [STRICTER_SMALLER] = "or smaller"};
    const struct declaration *declaration = series->declared->declaration;
    size_t count = list_live(resolving, series, giver->book, givers, books);
    size_t winner = find_winner(resolving, books, count);
    for (size_t i = 0; i < count && giver->live; i++) {
        const struct giver *below = &series->givers[givers[i]];
        if ((winner != NO_BOOK && winner != i) || below->is_stale ||
            !is_looser(declaration, giver->live, below->live))
            continue;
        const char *text = below->live->said.text ? below->live->said.text : "its bands";
        const char *example = arena_format(resolving->arena, "%s: %s, %s", series->name, text,
                                           words[declaration->stricter]);
        tell_both(resolving, "company-loosens", giver->live->place, below->live->place, example,
                  "%s is a company's book and may only tighten, so %s of %s (%s) stands",
                  resolving->books[giver->book].book->name, series->name,
                  resolving->books[below->book].book->name, text);
        giver->live = NULL;
    }
}

static void tell_rivals(struct resolving *resolving, const struct series *series,
                        const size_t *givers, const size_t *books, size_t count)
{
    size_t first, second;
    find_rivals(resolving, books, count, &first, &second);
    const struct giver *a = &series->givers[givers[first]], *b = &series->givers[givers[second]];
    const struct book *lower = resolving->books[a->book].book,
                      *upper = resolving->books[b->book].book;
    const char *company = lower->role == ROLE_COMPANY   ? lower->name
                          : upper->role == ROLE_COMPANY ? upper->name
                                                        : NULL;
    tell_both(resolving, "rivals", b->live->place, a->live->place,
              company ? arena_format(resolving->arena, "--book marrow-bay --book %s", company)
                      : NULL,
              "%s and %s both give the value %s and neither adopts the other; a book that adopts "
              "both must decide",
              lower->name, upper->name, series->name);
}

/* The value's history: what every book says that is live on the day. */
static bool add_acts(struct resolving *resolving, const struct series *series, struct value *value)
{
    value->acts = arena_take(resolving->arena, (series->giver_count + 1) * sizeof *value->acts);
    if (!value->acts)
        return false;
    for (size_t i = 0; i < series->giver_count; i++) {
        const struct giver *giver = &series->givers[i];
        if (!giver->live || giver->is_stale)
            continue;
        value->acts[value->act_count++] = (struct act){
            is_own(series, giver) ? "adds" : "amends", resolving->books[giver->book].book,
            giver->live->cite, giver->live->from, giver->live->place};
    }
    sort_acts(value->acts, value->act_count);
    return true;
}

/* A book that is named after a company's counts as adopting it, and would loosen it unseen. */
static void tell_overruled(struct resolving *resolving, const struct series *series,
                           const struct giver *winner)
{
    const struct book *decides = resolving->books[winner->book].book;
    const char *text = winner->live->said.text ? winner->live->said.text : "its bands";
    for (size_t i = 0; i < series->giver_count && !is_company(resolving, winner->book); i++) {
        const struct giver *giver = &series->givers[i];
        const struct book *company = resolving->books[giver->book].book;
        if (giver->live && is_company(resolving, giver->book) &&
            is_looser(series->declared->declaration, winner->live, giver->live))
            tell_both(resolving, "company-below", giver->live->place, winner->live->place,
                      arena_format(resolving->arena, "--book marrow-bay --book %s", company->name),
                      "%s is a company's book, but %s is named after it and decides %s (%s): name "
                      "the company's book last",
                      company->name, decides->name, series->name, text);
    }
}

static void set_winner(const struct resolving *resolving, const struct giver *giver,
                       struct value *value)
{
    value->state = giver->is_stale ? VALUE_RIVALS : VALUE_IN_FORCE;
    value->entry = giver->live;
    value->is = giver->live->said.is;
    value->book = resolving->books[giver->book].book;
    value->edition = resolving->books[giver->book].edition;
    /* What could not be read is as good as none; the problem was told. */
    if (!giver->live->bands && value->is.type == AMOUNT_NONE)
        value->state = VALUE_RIVALS;
}

static bool resolve_series(struct resolving *resolving, struct series *series, struct value *value)
{
    size_t *givers = arena_take(resolving->arena, series->giver_count * sizeof *givers);
    size_t *books = arena_take(resolving->arena, series->giver_count * sizeof *books);
    if (!givers || !books)
        return false;
    *value = (struct value){.name = series->name,
                            .declaration = series->declared->declaration,
                            .declared_by = resolving->books[series->declared_by].book,
                            .state = VALUE_NOT_IN_FORCE};
    for (size_t i = 0; i < series->giver_count; i++) {
        struct giver *giver = &series->givers[i];
        if (!choose_live(resolving, series, giver))
            return false;
        if (giver->live && is_company(resolving, giver->book))
            hold_company(resolving, series, giver, givers, books);
    }
    size_t count = list_live(resolving, series, NO_BOOK, givers, books);
    size_t winner = find_winner(resolving, books, count);
    if (winner != NO_BOOK) {
        set_winner(resolving, &series->givers[givers[winner]], value);
        tell_overruled(resolving, series, &series->givers[givers[winner]]);
    } else if (count > 0) {
        value->state = VALUE_RIVALS;
        tell_rivals(resolving, series, givers, books, count);
    }
    if (series->is_torn)
        value->state = VALUE_RIVALS;
    return add_acts(resolving, series, value);
}

bool resolve_values(struct resolving *resolving)
{
    struct rulebook *rulebook = resolving->rulebook;
    struct all_series all;
    if (!collect_series(resolving, &all))
        return false;
    rulebook->values = arena_take(resolving->arena, (all.count + 1) * sizeof *rulebook->values);
    if (!rulebook->values)
        return false;
    for (size_t i = 0; i < all.count; i++) {
        struct value *value = &rulebook->values[rulebook->value_count];
        if (!all.items[i]->declared)
            tell_undeclared(resolving, &all, all.items[i]);
        else if (!resolve_series(resolving, all.items[i], value) ||
                 !index_add(&rulebook->value_index, value->name, value))
            return false;
        else
            rulebook->value_count++;
    }
    return true;
}
