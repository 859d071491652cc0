#include "stir.h"

#include <math.h>
#include <string.h>

#include "room.h"
#include "unit.h"

void judge_stir(struct judge *judge, struct stir *stir)
{
    judge->stir = stir;
}

bool amount_stir(struct amount *amount, bool is_up)
{
    double *value = &amount->quantity.value;
    double step = fabs(*value) * STIR_STEP;
    switch (amount->type) {
    case AMOUNT_YESNO:
        amount->yes = !amount->yes;
        return true;
    case AMOUNT_QUANTITY:
    case AMOUNT_NUMBER:
        if (amount->type == AMOUNT_QUANTITY && amount->quantity.dimension.is_point)
            step = 2;
        else if (*value == 0)
            step = amount->quantity.unit != NULL ? amount->quantity.unit->factor : 1;
        *value += is_up ? step : -step;
        amount->quantity.written = NULL;
        return true;
    default:
        return false;
    }
}

static void note_site(struct stir *stir, unsigned line, bool is_number)
{
    for (size_t i = 0; i < stir->count; i++)
        if (stir->sites[i].line == line)
            return;
    struct stir_site *sites =
        arena_grow(stir->arena, stir->sites, stir->count, &stir->capacity, sizeof *sites);
    if (sites == NULL)
        return; /* the arena stays marked as short */
    stir->sites = sites;
    sites[stir->count++] = (struct stir_site){line, is_number};
}

/* What cannot go up or down is turned round: what held holds no more, and the other way about. */
static void turn_round(struct test *test)
{
    static const char elsewhere[] = "\x01";
    if (test->relation == RELATION_BE)
        test->actual.yes = !test->actual.yes;
    else if (test->limit.type == AMOUNT_YESNO)
        test->limit.yes = !test->limit.yes;
    else if (test->limit.type == AMOUNT_WORD && test->actual.type == AMOUNT_WORD)
        test->limit.word =
            strcmp(test->limit.word, test->actual.word) == 0 ? elsewhere : test->actual.word;
}

void room_stir(lua_State *lua, struct test *test)
{
    lua_Debug caller;
    struct stir *stir = room_judge(lua)->stir;
    if (stir == NULL || !lua_getstack(lua, 1, &caller) || !lua_getinfo(lua, "l", &caller) ||
        caller.currentline <= 0)
        return;
    unsigned line = (unsigned)caller.currentline;
    bool is_number = test->relation != RELATION_BE &&
                     (test->limit.type == AMOUNT_QUANTITY || test->limit.type == AMOUNT_NUMBER);
    note_site(stir, line, is_number);
    if (line != stir->line)
        return;
    if (is_number)
        amount_stir(&test->limit, stir->is_up);
    else
        turn_round(test);
}
