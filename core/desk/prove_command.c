/* plumbrule prove: the cases of books. */
#include "desk.h"

#include <string.h>

#include "prove.h"
#include "report.h"

/* 1: a case comes out otherwise than expected; 2: something is shown by no case. */
static enum plumbrule_end end_of(const struct proof *proof)
{
    if (proof_count_wrong(proof) > 0)
        return PLUMBRULE_FAILS;
    if (!proof->is_read)
        return PLUMBRULE_STANDS; /* a problem decides */
    return proof->lack_count > 0 || proof->case_count == 0 ? PLUMBRULE_OPEN : PLUMBRULE_STANDS;
}

static bool write_proofs(struct desk *desk, const struct proof *proofs, size_t count,
                         const struct problems *problems)
{
    const char *format = desk_last(desk, FLAG_FORMAT);
    if (format != NULL && strcmp(format, "json") == 0)
        return proof_write_json(&desk->out, proofs, count, problems);
    bool is_first = true;
    for (size_t i = 0; i < count; i++) {
        if (!proofs[i].is_read)
            continue;
        if (!is_first)
            text_add_word(&desk->out, "\n");
        is_first = false;
        if (!proof_write_text(&desk->out, &proofs[i]))
            return false;
    }
    return true;
}

static enum plumbrule_end prove_all(struct desk *desk, struct bench *bench)
{
    const struct prove_options options = {
        desk_book_directories(desk), desk->given[FLAG_CATALOGUES].items, desk_has(desk, FLAG_STIR)};
    size_t count = desk->operands.count;
    struct proof *proofs = arena_take(desk->arena, count * sizeof *proofs);
    struct problems problems = {.arena = desk->arena};
    enum plumbrule_end end = PLUMBRULE_STANDS;
    if (options.book_directories == NULL || proofs == NULL)
        return PLUMBRULE_NO_MEMORY;
    for (size_t i = 0; i < count; i++) {
        if (!bench_prove(&proofs[i], bench, desk->operands.items[i], &options, desk->arena,
                         &problems))
            return PLUMBRULE_NO_MEMORY;
        end = (enum plumbrule_end)exit_code_first((int)end, (int)end_of(&proofs[i]));
    }
    if (!write_proofs(desk, proofs, count, &problems) || !desk_tell(&problems))
        return PLUMBRULE_NO_MEMORY;
    return (enum plumbrule_end)exit_code_first((int)end, exit_code(NULL, &problems, true));
}

enum plumbrule_end run_prove(struct desk *desk)
{
    struct bench bench;
    if (desk->operands.count == 0)
        return desk_refuse(desk, "book-none", "plumbrule prove marrow-bay",
                           "no rulebook is named; plumbrule books lists them");
    if (!bench_open(&bench))
        return PLUMBRULE_NO_MEMORY;
    enum plumbrule_end end = prove_all(desk, &bench);
    bench_close(&bench);
    return end;
}
