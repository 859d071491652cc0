#include "room.h"

#include <stdlib.h>
#include <string.h>

#include "room_limits.h"
#include "room_pool.h"

const char room_words;
const enum thing_tag room_signal = THING_NONE;

void room_set_word(lua_State *lua, const char *name)
{
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    lua_insert(lua, -2);
    lua_setfield(lua, -2, name);
    lua_pop(lua, 1);
}

static int refuse_write(lua_State *lua)
{
    char name[80];
    room_write_value(name, sizeof name, lua, 2);
    return luaL_error(lua, "'%s' cannot be set: what a rule needs it keeps in a local", name);
}

enum { NAMES_MOST = 256 };

static int compare_names(const void *a, const void *b)
{
    return strcmp(*(const char *const *)a, *(const char *const *)b);
}

static int refuse_name(lua_State *lua)
{
    char name[80];
    const char *known[NAMES_MOST] = {NULL};
    size_t count = 0;
    room_write_value(name, sizeof name, lua, 2);
    lua_pushnil(lua);
    while (count < NAMES_MOST && lua_next(lua, lua_upvalueindex(1)) != 0) {
        if (lua_type(lua, -2) == LUA_TSTRING)
            known[count++] = lua_tostring(lua, -2); /* stays: the table holds it */
        lua_pop(lua, 1);
    }
    qsort(known, count, sizeof *known, compare_names); /* Lua's order is another in each run */
    const char *near = text_find_near(name, known, count);
    if (near != NULL)
        return luaL_error(lua, "there is no '%s' here; did you mean '%s'?", name, near);
    return luaL_error(lua, "there is no '%s' here", name);
}

void room_refuse_others(lua_State *lua)
{
    lua_createtable(lua, 0, 1);
    lua_pushvalue(lua, -2);
    lua_pushcclosure(lua, refuse_name, 1);
    lua_setfield(lua, -2, "__index");
    lua_setmetatable(lua, -2);
}

void room_freeze(lua_State *lua)
{
    room_refuse_others(lua);
    lua_newtable(lua); /* the empty one */
    lua_createtable(lua, 0, 3);
    lua_pushvalue(lua, -3);
    lua_setfield(lua, -2, "__index");
    lua_pushcfunction(lua, refuse_write);
    lua_setfield(lua, -2, "__newindex");
    lua_pushboolean(lua, false);
    lua_setfield(lua, -2, "__metatable");
    lua_setmetatable(lua, -2);
    lua_remove(lua, -2);
}

/* Is it a control character: C0, DEL, or C1 in UTF-8? */
static bool is_control(const char *at)
{
    unsigned char byte = (unsigned char)at[0];
    return byte < 0x20 || byte == 0x7F || (byte == 0xC2 && (unsigned char)at[1] < 0xA0);
}

void room_clean(char *text)
{
    size_t bad;
    for (char *at = text; *at != '\0'; at++)
        if (is_control(at))
            *at = *at == '\n' || *at == '\t' ? ' ' : '?';
    while (!text_is_utf8(text, strlen(text), &bad))
        text[bad] = '?';
}

const char *room_keep_text(lua_State *lua, int index, const char *what, size_t most)
{
    size_t length, bad;
    const char *text = lua_tolstring(lua, index, &length);
    if (length == 0 || length > most)
        luaL_error(lua, "%s must have from 1 to %d letters", what, (int)most);
    size_t plain = text_plain_length(text, length);
    bool is_plain = plain == length || text_is_utf8(text, length, &bad);
    for (size_t i = plain; is_plain && i < length; i++)
        is_plain = !is_control(text + i);
    if (!is_plain)
        luaL_error(lua, "%s must be plain text, without control characters", what);
    const char *copy = arena_copy(room_judge(lua)->page, text, length);
    if (copy == NULL)
        luaL_error(lua, "not enough memory");
    return copy;
}

bool room_is_signal(lua_State *lua, int index)
{
    return lua_type(lua, index) == LUA_TLIGHTUSERDATA &&
           lua_touserdata(lua, index) == (const void *)&room_signal;
}

static int raise_signal(lua_State *lua, enum signal_kind kind)
{
    room_judge(lua)->signal = kind;
    lua_pushlightuserdata(lua, (void *)(uintptr_t)&room_signal);
    return lua_error(lua);
}

int room_raise_missing(lua_State *lua, const struct missing *missing)
{
    room_judge(lua)->missing = *missing;
    return raise_signal(lua, SIGNAL_MISSING);
}

/* The fact that a person gives where this one is missing: rows, where things can be told by rows.
 */
static const struct fact_row *row_to_give(const struct object *object, unsigned slot)
{
    if (object->kind->id == KIND_design && slot == SLOT_design_modules)
        slot = SLOT_design_module_rows;
    else if (object->kind->id == KIND_racking && slot == SLOT_racking_attachments)
        slot = SLOT_racking_attachment_rows;
    return object_row(object, slot);
}

static const char *rest_of_example(const struct fact_row *row)
{
    return row->type != TYPE_LIST               ? ""
           : kind_at(row->kind)->count == MODEL ? ", or in a file that catalogue names"
                                                : ", or none where there is none";
}

struct missing room_missing_fact(struct judge *judge, const struct object *object, unsigned slot)
{
    const struct fact_row *row = row_to_give(object, slot);
    char example[300];
    fact_write_example(example, sizeof example, row);
    text_append(example, sizeof example, rest_of_example(row));
    struct fact_read read = {object, slot};
    struct missing missing = {.fact = room_name_of_read(judge, &read),
                              .example = arena_copy(judge->page, example, strlen(example)),
                              .place = object_fact(object, slot)->place};
    return missing;
}

int room_raise_missing_fact(lua_State *lua, const struct object *object, unsigned slot)
{
    struct judge *judge = room_judge(lua);
    struct missing missing = room_missing_fact(judge, object, slot);
    return room_raise_missing(lua, &missing);
}

int room_raise_review(lua_State *lua, const char *why)
{
    room_judge(lua)->why = why;
    return raise_signal(lua, SIGNAL_REVIEW);
}

int room_raise_stop(lua_State *lua)
{
    const struct stop *stop = &room_judge(lua)->working->stop;
    switch (stop->kind) {
    case STOP_MISSING:
        return room_raise_missing_fact(lua, stop->object, stop->slot);
    case STOP_BEYOND:
        return room_raise_review(lua, stop->why);
    case STOP_WRONG:
        return luaL_error(lua, "%s", stop->why);
    default:
        return luaL_error(lua, "not enough memory");
    }
}

/* Runs protected, once per state. */
static int fill(lua_State *lua)
{
    lua_newtable(lua);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &room_words);
    room_add_quantities(lua);
    room_add_views(lua);
    room_add_words(lua);
    room_add_tests(lua);
    room_add_calculators(lua);
    room_add_found(lua);
    room_check_words(lua);
    /* From here on the words are frozen: a name that is none of them raises. */
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &room_words);
    room_freeze(lua);
    lua_getmetatable(lua, -1);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &room_words);
    lua_pop(lua, 1);
    return 0;
}

struct judge *judge_new(const struct judge_limits *limits)
{
    struct judge *judge = calloc(1, sizeof *judge);
    if (judge == NULL)
        return NULL;
    limits_set(judge, limits);
    judge->arena = arena_new();
    judge->files.arena = judge->arena;
    judge->pool = room_pool_new();
    judge->lua =
        judge->arena != NULL && judge->pool != NULL ? lua_newstate(limits_allocate, judge) : NULL;
    if (judge->lua == NULL) {
        judge_free(judge);
        return NULL;
    }
    *(struct judge **)lua_getextraspace(judge->lua) = judge;
    lua_pushcfunction(judge->lua, fill);
    if (lua_pcall(judge->lua, 0, 0, 0) != LUA_OK) {
        judge_free(judge);
        return NULL;
    }
    return judge;
}

void judge_free(struct judge *judge)
{
    if (judge == NULL)
        return;
    if (judge->lua != NULL)
        lua_close(judge->lua);
    room_pool_free(judge->pool);
    arena_free(judge->arena);
    free(judge);
}
