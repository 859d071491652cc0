#include "proof.h"

#include <string.h>

#include "block.h"

enum { WIDTH = 80 };

size_t proof_count_wrong(const struct proof *proof)
{
    size_t wrong = 0;
    for (size_t i = 0; i < proof->case_count; i++)
        wrong += proof->cases[i].wrong != NULL;
    return wrong;
}

size_t proof_count_noticed(const struct proof *proof)
{
    size_t noticed = 0;
    for (size_t i = 0; i < proof->move_count; i++)
        noticed += proof->moves[i].is_noticed;
    return noticed;
}

static bool write_wrong(struct page *page, const struct proof_case *one, struct arena *arena)
{
    const char *place = place_text(one->place, arena);
    const char *says = arena_format(arena, "%s (%s)", one->says, one->books);
    if (place == NULL || says == NULL)
        return false;
    page_paragraph(page, 2, one->rule, STYLE_BAD, 4, says);
    page_paragraph(page, 4, NULL, STYLE_PLAIN, 6, one->wrong);
    page_paragraph(page, 4, NULL, STYLE_FAINT, 6, place);
    return true;
}

static bool write_lacks(struct page *page, const struct proof *proof, enum lack_kind kind,
                        const char *heading)
{
    bool any = false;
    for (size_t i = 0; i < proof->lack_count; i++) {
        const struct proof_lack *lack = &proof->lacks[i];
        if (lack->kind != kind)
            continue;
        if (!any)
            text_add_format(page->out, "\n%s\n", heading);
        any = true;
        const char *place = place_text(lack->place, proof->arena);
        const char *label =
            arena_format(proof->arena, "%s%s", lack->thing, lack->lacks != NULL ? ":" : "");
        if (place == NULL || label == NULL)
            return false;
        page_paragraph(page, 2, label, STYLE_PLAIN, 4, lack->lacks != NULL ? lack->lacks : place);
    }
    return true;
}

/* One line for a move that goes by unnoticed, and one for all moves of what no case comes to. */
static bool write_move(struct page *page, const struct proof *proof, size_t at)
{
    const struct proof_move *move = &proof->moves[at];
    const char *place = place_text(move->place, proof->arena);
    if (move->is_noticed ||
        (!move->is_tried && at > 0 && strcmp(move->thing, proof->moves[at - 1].thing) == 0))
        return true;
    const char *label = arena_format(proof->arena, "%s%s%s:", move->thing,
                                     move->is_tried ? " " : "", move->is_tried ? move->how : "");
    const char *why = arena_format(proof->arena, "%s (%s)",
                                   move->is_tried ? "no case notices" : "no case comes to it",
                                   place != NULL ? place : "");
    if (label == NULL || why == NULL)
        return false;
    page_paragraph(page, 2, label, STYLE_PLAIN, 4, why);
    return true;
}

static bool write_moves(struct page *page, const struct proof *proof)
{
    size_t noticed = proof_count_noticed(proof);
    if (proof->move_count == 0) {
        text_add_word(page->out, "\nStirred: there is nothing to stir.\n");
        return true;
    }
    text_add_format(page->out, "\nStirred: the cases notice %zu of %zu moves, %.0f %%\n", noticed,
                    proof->move_count, 100.0 * (double)noticed / (double)proof->move_count);
    for (size_t i = 0; i < proof->move_count; i++)
        if (!write_move(page, proof, i))
            return false;
    return true;
}

bool proof_write_text(struct text *out, const struct proof *proof)
{
    struct page page = {out, WIDTH, false};
    size_t wrong = proof_count_wrong(proof);
    text_add_format(out, "%s: %zu rule%s, %zu case%s, ", proof->book, proof->rule_count,
                    proof->rule_count == 1 ? "" : "s", proof->case_count,
                    proof->case_count == 1 ? "" : "s");
    if (wrong > 0)
        text_add_format(out, "%zu not as expected\n", wrong);
    else
        text_add_word(out, proof->case_count > 0 ? "all as expected\n" : "so nothing is proved\n");
    for (size_t i = 0; i < proof->case_count; i++)
        if (proof->cases[i].wrong != NULL && !write_wrong(&page, &proof->cases[i], proof->arena))
            return false;
    return write_lacks(&page, proof, LACK_CASE, "Rules that lack cases") &&
           write_lacks(&page, proof, LACK_OPTION, "Ways of meet_one_of that no case meets") &&
           write_lacks(&page, proof, LACK_VALUE, "Values that no case reads") &&
           (!proof->is_stirred || write_moves(&page, proof)) && !out->is_short;
}
