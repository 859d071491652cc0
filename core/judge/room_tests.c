/* shall, should, meet_one_of, review, same: how a rule says what must hold. */
#include "room.h"

#include <math.h>
#include <string.h>

#include "unit.h"

enum {
    WHAT_LETTERS = 400,
    REVIEW_VALUES = 8,
    NESTED_MOST = 8,
    FINDINGS_FULL = 50 /* findings of one rule that may each be full to the last comparison */
};

static const char *keep_what(lua_State *lua, int index)
{
    luaL_checktype(lua, index, LUA_TSTRING);
    return room_keep_text(lua, index, "what is compared", WHAT_LETTERS);
}

/* The list that is being filled: there is one only while a check runs. */
static struct frame *filled_frame(lua_State *lua)
{
    struct judge *judge = room_judge(lua);
    if (judge->stage != STAGE_CHECK)
        luaL_error(lua, "shall, should and review are said in check(), and nowhere else");
    return judge->frame;
}

/* A new test in the list that is being filled. */
static struct test *new_test(lua_State *lua)
{
    struct judge *judge = room_judge(lua);
    struct frame *frame = filled_frame(lua);
    if (++judge->results > judge->limits.results)
        luaL_error(lua, "a finding may record at most %d comparisons", (int)judge->limits.results);
    if (++judge->rule_results > judge->limits.results * FINDINGS_FULL)
        luaL_error(lua, "a rule may record at most %d comparisons in all",
                   (int)(judge->limits.results * FINDINGS_FULL));
    struct test *test = test_add(frame->tests, frame->count, frame->capacity, judge->page);
    if (test == NULL)
        luaL_error(lua, "not enough memory");
    return test;
}

static struct amount amount_at(lua_State *lua, int index, const char *role)
{
    char name[80];
    struct amount amount = {.type = AMOUNT_NONE};
    if (!room_keep_amount(&amount, lua, index) && lua_isnoneornil(lua, index))
        luaL_error(lua, "%s is not there (nil)", role);
    if (amount.type == AMOUNT_NONE)
        luaL_error(lua, "%s cannot be a %s", role, room_type_name(lua, index, name, sizeof name));
    if (amount.type == AMOUNT_NUMBER && !isfinite(amount.quantity.value))
        luaL_error(lua, "%s came out not finite", role);
    return amount;
}

/* The optional last argument: a unit to show both amounts in. */
static const struct unit *unit_at_index(lua_State *lua, int index)
{
    if (lua_isnoneornil(lua, index))
        return NULL;
    struct quantity *quantity = room_to_quantity(lua, index);
    const struct unit *unit = quantity != NULL ? quantity->unit : NULL;
    if (unit == NULL)
        luaL_error(lua, "the last argument is a unit, such as inch or psf");
    return unit;
}

/* shall.not_exceed("what", actual, limit [, unit]) and its like. Upvalue: twice the relation,
 * and one more for should. */
static int compare(lua_State *lua)
{
    struct quantity_fault fault;
    lua_Integer asks = lua_tointeger(lua, lua_upvalueindex(1));
    struct test test = {.relation = (enum relation)(asks / 2),
                        .normative = asks % 2 == 0 ? SHALL : SHOULD};
    if (filled_frame(lua)->above != NULL && test.normative == SHOULD)
        return luaL_error(lua, "'should' does not stand inside meet_one_of");
    test.what = keep_what(lua, 1);
    test.actual = amount_at(lua, 2, "the actual amount");
    if (test.relation == RELATION_BE) {
        if (test.actual.type != AMOUNT_YESNO)
            return luaL_error(lua, "be() asks for yes or no: a yes/no fact or a comparison");
        test.limit = amount_of_yesno(true);
    } else {
        test.limit = amount_at(lua, 3, "the limit");
        test.unit = unit_at_index(lua, 4);
    }
    if (test.unit != NULL && test.actual.type == AMOUNT_QUANTITY &&
        !dimension_is_same(test.unit->dimension, test.actual.quantity.dimension))
        return luaL_error(lua, "the unit to show does not fit what is compared");
    room_stir(lua, &test);
    if (!test_judge(&test, &fault))
        return luaL_error(lua, "%s", fault.message);
    *new_test(lua) = test;
    return 0;
}

/* review("why", value …): a point that a person must judge; the check goes on. */
static int review(lua_State *lua)
{
    char text[160];
    struct judge *judge = room_judge(lua);
    filled_frame(lua);
    if (lua_gettop(lua) > 1 + REVIEW_VALUES)
        return luaL_error(lua, "review() shows at most %d values", REVIEW_VALUES);
    const char *why = keep_what(lua, 1);
    for (int i = 2; i <= lua_gettop(lua); i++) {
        room_write_value(text, sizeof text, lua, i);
        why = arena_format(judge->page, "%s%s %s", why, i == 2 ? ":" : ",", text);
        if (why == NULL)
            return luaL_error(lua, "not enough memory");
    }
    *new_test(lua) = (struct test){
        .what = why, .relation = RELATION_REVIEW, .normative = SHALL, .outcome = OUTCOME_REVIEW};
    return 0;
}

/* same(a, b): are they the same? Raises across types, where == would quietly say no. */
static int same(lua_State *lua)
{
    char a[80], b[80];
    int order = 0;
    struct quantity_fault fault;
    struct amount left = {.type = AMOUNT_NONE}, right = {.type = AMOUNT_NONE};
    if (room_tag(lua, 1) == THING_OBJECT && room_tag(lua, 2) == THING_OBJECT) {
        lua_pushboolean(lua, ((struct thing_object *)lua_touserdata(lua, 1))->object ==
                                 ((struct thing_object *)lua_touserdata(lua, 2))->object);
        return 1;
    }
    bool can = room_to_amount(&left, lua, 1) && room_to_amount(&right, lua, 2);
    if (!can || left.type != right.type)
        return luaL_error(lua, "a %s and a %s are never the same",
                          room_type_name(lua, 1, a, sizeof a), room_type_name(lua, 2, b, sizeof b));
    switch (left.type) {
    case AMOUNT_WORD:
        order = strcmp(left.word, right.word);
        break;
    case AMOUNT_YESNO:
        order = left.yes != right.yes;
        break;
    case AMOUNT_DATE:
        order = date_compare(left.date, right.date);
        break;
    case AMOUNT_NUMBER:
        if (!isfinite(left.quantity.value) || !isfinite(right.quantity.value))
            return luaL_error(lua, "a number came out not finite");
        order = number_compare(left.quantity.value, right.quantity.value);
        break;
    default:
        if (!quantity_compare(&order, left.quantity, right.quantity, &fault))
            return luaL_error(lua, "%s", fault.message);
    }
    lua_pushboolean(lua, order == 0);
    return 1;
}

/* What an option that was left by a signal has to say. */
static void record_signal(lua_State *lua)
{
    struct judge *judge = room_judge(lua);
    struct test *test = new_test(lua);
    test->normative = SHALL;
    if (judge->signal == SIGNAL_MISSING) {
        test->relation = RELATION_MISSING;
        test->outcome = OUTCOME_OPEN;
        test->missing = judge->missing;
        test->what = judge->missing.fact;
    } else {
        test->relation = RELATION_REVIEW;
        test->outcome = OUTCOME_REVIEW;
        test->what = judge->why;
    }
    judge->signal = SIGNAL_NONE;
}

/* Runs one option in a frame of its own. Only our signals end here; all else goes on up. */
static void run_option(lua_State *lua, struct option *option, int function)
{
    struct judge *judge = room_judge(lua);
    struct frame frame = {&option->tests, &option->test_count, &option->test_capacity,
                          judge->frame};
    judge->frame = &frame;
    lua_pushvalue(lua, function);
    int status = lua_pcall(lua, 0, 0, 0);
    if (status != LUA_OK) {
        if (status != LUA_ERRRUN || !room_is_signal(lua, -1)) {
            judge->is_broken = true;
            judge->frame = frame.above;
            lua_error(lua);
        }
        lua_pop(lua, 1);
        record_signal(lua);
    }
    judge->frame = frame.above;
    if (option->test_count == 0)
        luaL_error(lua, "the option '%s' recorded nothing", option->name);
    option->outcome = tests_outcome(option->tests, option->test_count);
}

/* shall.meet_one_of { {"name", function() … end}, … } */
static int meet_one_of(lua_State *lua)
{
    struct judge *judge = room_judge(lua);
    luaL_checktype(lua, 1, LUA_TTABLE);
    size_t count = lua_rawlen(lua, 1);
    int depth = 0;
    for (const struct frame *frame = filled_frame(lua); frame != NULL; frame = frame->above)
        depth++;
    if (count < 2 || count > 20)
        return luaL_error(lua, "meet_one_of takes two to twenty options, not %d", (int)count);
    if (depth > NESTED_MOST)
        return luaL_error(lua, "meet_one_of stands inside itself too often");
    struct option *options = arena_take(judge->page, count * sizeof *options);
    if (options == NULL)
        return luaL_error(lua, "not enough memory");
    for (size_t i = 0; i < count; i++) {
        lua_settop(lua, 1);
        luaL_checkstack(lua, 8, "options");
        if (lua_rawgeti(lua, 1, (lua_Integer)i + 1) != LUA_TTABLE || lua_rawlen(lua, 2) != 2 ||
            lua_rawgeti(lua, 2, 1) != LUA_TSTRING || lua_rawgeti(lua, 2, 2) != LUA_TFUNCTION)
            return luaL_error(lua, "option %d must be {\"its name\", function() … end}",
                              (int)i + 1);
        options[i].name = room_keep_text(lua, 3, "the name of an option", WHAT_LETTERS);
        run_option(lua, &options[i], 4);
    }
    struct test *test = new_test(lua);
    test->what = "One of the options";
    test->relation = RELATION_ONE_OF;
    test->normative = SHALL;
    test->options = options;
    test->option_count = count;
    test->outcome = options_outcome(options, count);
    return 0;
}

static void add_normative(lua_State *lua, const char *name, enum normative normative)
{
    static const struct {
        const char *word;
        enum relation relation;
    } words[] = {{"not_exceed", RELATION_NOT_EXCEED},  {"be_at_least", RELATION_AT_LEAST},
                 {"be_less_than", RELATION_LESS_THAN}, {"be_more_than", RELATION_MORE_THAN},
                 {"be_equal", RELATION_EQUAL},         {"be", RELATION_BE}};
    lua_newtable(lua);
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++) {
        lua_pushinteger(lua, 2 * (lua_Integer)words[i].relation + (normative == SHOULD));
        lua_pushcclosure(lua, compare, 1);
        lua_setfield(lua, -2, words[i].word);
    }
    if (normative == SHALL) {
        lua_pushcfunction(lua, meet_one_of);
        lua_setfield(lua, -2, "meet_one_of");
    }
    room_freeze(lua);
    room_set_word(lua, name);
}

void room_add_tests(lua_State *lua)
{
    add_normative(lua, "shall", SHALL);
    add_normative(lua, "should", SHOULD);
    lua_pushcfunction(lua, review);
    room_set_word(lua, "review");
    lua_pushcfunction(lua, same);
    room_set_word(lua, "same");
}
