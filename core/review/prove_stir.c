/* Moves: each number of the law and each compared limit, one step elsewhere. */
#include "proving.h"

#include <string.h>

#include "file.h"
#include "rule_tokens.h"

/* One move that was asked for before, or a new one. NULL: no memory. */
static struct proof_move *find_move(struct proving *proving, const char *thing, const char *how,
                                    struct place place)
{
    struct proof *proof = proving->proof;
    for (size_t i = 0; i < proof->move_count; i++)
        if (strcmp(proof->moves[i].thing, thing) == 0 && strcmp(proof->moves[i].how, how) == 0)
            return &proof->moves[i];
    struct proof_move *moves = arena_grow(proving->arena, proof->moves, proof->move_count,
                                          &proof->move_capacity, sizeof *moves);
    if (moves == NULL)
        return NULL;
    proof->moves = moves;
    moves[proof->move_count] = (struct proof_move){.thing = thing, .how = how, .place = place};
    return &moves[proof->move_count++];
}

/* Does the case come out otherwise now? */
static bool try_move(struct proving *proving, struct trial *trial, struct proof_move *move)
{
    struct findings findings;
    struct problems problems = {.arena = proving->run_arena};
    if (!trial_run(&findings, trial, proving, &problems))
        return false;
    move->is_tried = true;
    move->is_noticed = trial_mismatch(trial, &findings) != NULL;
    return true;
}

/* ---- values --------------------------------------------------------------------------------- */

/* "value pathway_width (2021)", "value basic_wind_speed from 2026-07-01". NULL: no memory. */
static const char *name_entry(struct arena *arena, const char *name, const struct entry *entry)
{
    char from[16];
    if (entry->from.year == 0)
        return arena_format(arena, "value %s (%s)", name,
                            entry->edition != NULL ? entry->edition : "given above");
    date_write(from, sizeof from, entry->from);
    return arena_format(arena, "value %s from %s", name, from);
}

/* Everything that one entry says, moved; the copy stands in the case's arena. */
static bool move_entry(struct value *value, bool is_up, const char *word, struct arena *arena)
{
    struct entry *entry = arena_take(arena, sizeof *entry);
    if (entry == NULL)
        return false;
    *entry = *value->entry;
    if (word != NULL)
        value->is = amount_of_word(word);
    else if (entry->bands == NULL)
        amount_stir(&value->is, is_up);
    else {
        entry->bands = arena_take(arena, entry->band_count * sizeof *entry->bands);
        if (entry->bands == NULL)
            return false;
        memcpy(entry->bands, value->entry->bands, entry->band_count * sizeof *entry->bands);
        for (size_t i = 0; i < entry->band_count; i++)
            amount_stir(&entry->bands[i].said.is, is_up);
    }
    entry->said.is = value->is;
    value->entry = entry;
    return true;
}

static bool move_value(struct proving *proving, struct trial *trial, struct value *value,
                       const char *how, bool is_up, const char *word)
{
    const struct value before = *value;
    const char *thing = name_entry(proving->arena, value->name, value->entry);
    struct proof_move *move =
        thing != NULL ? find_move(proving, thing, how, value->entry->place) : NULL;
    if (move == NULL)
        return false;
    if (move->is_noticed)
        return true;
    bool is_tried =
        move_entry(value, is_up, word, proving->case_arena) && try_move(proving, trial, move);
    *value = before;
    return is_tried;
}

static bool move_word(struct proving *proving, struct trial *trial, struct value *value)
{
    const char *const *words = value->declaration->words;
    for (size_t i = 0; words != NULL && words[i] != NULL; i++) {
        const char *how = arena_format(proving->arena, "as \"%s\"", words[i]);
        if (strcmp(words[i], value->is.word) == 0)
            continue;
        if (how == NULL || !move_value(proving, trial, value, how, true, words[i]))
            return false;
    }
    return true;
}

/* Is it a number of this book, or one that it leaves to others? */
static bool is_ours(const struct proving *proving, const struct value *value)
{
    return value->state == VALUE_IN_FORCE && value->entry != NULL && value->book != NULL &&
           strcmp(value->book->name, proving->book->name) == 0;
}

static bool move_read_value(struct proving *proving, struct trial *trial, struct value *value)
{
    if (!is_ours(proving, value))
        return true;
    if (value->declaration->type == AMOUNT_WORD)
        return move_word(proving, trial, value);
    if (value->declaration->type == AMOUNT_YESNO)
        return move_value(proving, trial, value, "turned round", true, NULL);
    return move_value(proving, trial, value, "a step up", true, NULL) &&
           move_value(proving, trial, value, "a step down", false, NULL);
}

/* The findings go with the next run: what they rest on is listed first. */
static struct value **list_values(const struct trial *trial, const struct findings *findings,
                                  struct arena *arena, size_t *count)
{
    struct value **values =
        arena_take(arena, (trial->rulebook.value_count + 1) * sizeof(struct value *));
    *count = 0;
    for (size_t v = 0; values != NULL && v < trial->rulebook.value_count; v++) {
        bool is_read = false;
        for (size_t i = 0; i < findings->count && !is_read; i++)
            for (size_t k = 0; k < findings->items[i]->value_count; k++)
                is_read = is_read || findings->items[i]->values[k] == &trial->rulebook.values[v];
        if (is_read)
            values[(*count)++] = &trial->rulebook.values[v];
    }
    return values;
}

/* ---- compared limits ------------------------------------------------------------------------ */

static const char *name_site(struct proving *proving, const char *rule, unsigned line)
{
    return arena_format(proving->arena, "%s line %u", rule, line);
}

static bool move_site(struct proving *proving, struct trial *trial, struct stir *stir,
                      unsigned line, const char *how)
{
    const char *thing = name_site(proving, trial->rule->id, line);
    struct place place = {trial->rule->path, line, 0};
    struct proof_move *move = thing != NULL ? find_move(proving, thing, how, place) : NULL;
    if (move == NULL)
        return false;
    if (move->is_noticed)
        return true;
    stir->line = line;
    bool is_tried = try_move(proving, trial, move);
    stir->line = 0;
    return is_tried;
}

static bool move_sites(struct proving *proving, struct trial *trial, const struct stir *met)
{
    struct stir stir = {.arena = proving->run_arena};
    bool is_done = true;
    for (size_t i = 0; is_done && i < met->count; i++) {
        const struct stir_site *site = &met->sites[i];
        for (int up = 1; is_done && up >= (site->is_number ? 0 : 1); up--) {
            stir = (struct stir){.arena = proving->run_arena, .is_up = up == 1};
            judge_stir(proving->bench->judge, &stir);
            is_done = move_site(proving, trial, &stir, site->line,
                                !site->is_number ? "turned round"
                                : up             ? "a step up"
                                                 : "a step down");
        }
    }
    judge_stir(proving->bench->judge, NULL);
    return is_done;
}

bool prove_stirred(struct proving *proving, struct trial *trial, const struct stir *met,
                   const struct findings *findings)
{
    size_t count;
    struct value **values = list_values(trial, findings, proving->case_arena, &count);
    bool is_own_rule = strcmp(trial->rule->text_by->name, proving->book->name) == 0;
    if (values == NULL)
        return false;
    for (size_t i = 0; i < count; i++)
        if (!move_read_value(proving, trial, values[i]))
            return false;
    return !is_own_rule || move_sites(proving, trial, met);
}

/* ---- what no case came to -------------------------------------------------------------------- */

static bool has_move(const struct proof *proof, const char *thing)
{
    for (size_t i = 0; i < proof->move_count; i++)
        if (strcmp(proof->moves[i].thing, thing) == 0)
            return true;
    return false;
}

static bool add_unmoved(struct proving *proving, const char *thing, bool is_number,
                        struct place place)
{
    if (thing == NULL)
        return false;
    if (has_move(proving->proof, thing))
        return true;
    return is_number ? find_move(proving, thing, "a step up", place) != NULL &&
                           find_move(proving, thing, "a step down", place) != NULL
                     : find_move(proving, thing, "turned round", place) != NULL;
}

static bool add_unmoved_values(struct proving *proving)
{
    const struct book *book = proving->book;
    for (size_t i = 0; i < book->value_count; i++) {
        const struct book_value *value = &book->values[i];
        bool is_number = value->declaration == NULL ||
                         value->declaration->type == AMOUNT_QUANTITY ||
                         value->declaration->type == AMOUNT_NUMBER;
        for (size_t k = 0; k < value->count; k++)
            if (!value->entries[k].is_repeal &&
                !add_unmoved(proving, name_entry(proving->arena, value->name, &value->entries[k]),
                             is_number, value->entries[k].place))
                return false;
    }
    return true;
}

static bool add_unmoved_sites(struct proving *proving, const struct proving_rule *rule)
{
    char *text;
    size_t length, at = 0;
    unsigned line = 1;
    struct rule_token token[4] = {{0}};
    struct problems problems = {.arena = proving->run_arena};
    arena_clear(proving->run_arena);
    if (!file_read(&text, &length, rule->path, 1 << 16, proving->run_arena, PROBLEM_RULE,
                   &problems))
        return true; /* told by the judge */
    while (rule_token_next(&token[3], text, length, &at, &line)) {
        bool compares = rule_token_is(&token[1], ".") && rule_token_is(&token[3], "(") &&
                        (rule_token_is(&token[0], "shall") || rule_token_is(&token[0], "should")) &&
                        !rule_token_is(&token[2], "meet_one_of");
        if (compares && !add_unmoved(proving, name_site(proving, rule->id, token[3].line),
                                     !rule_token_is(&token[2], "be"),
                                     (struct place){rule->path, token[3].line, 0}))
            return false;
        memmove(token, token + 1, 3 * sizeof *token);
    }
    return true;
}

bool prove_unmoved(struct proving *proving)
{
    if (!add_unmoved_values(proving))
        return false;
    for (size_t i = 0; i < proving->rule_count; i++)
        if (!add_unmoved_sites(proving, &proving->rules[i]))
            return false;
    return true;
}
