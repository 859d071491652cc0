/* The book as a rule sees it: values by name, each reading noted in the finding. */
#include "room_views.h"

#include <string.h>

static int note_value(lua_State *lua, const struct value *value)
{
    struct judge *judge = room_judge(lua);
    struct finding *finding = judge->finding;
    for (size_t i = 0; i < finding->value_count; i++)
        if (finding->values[i] == value)
            return 0;
    const struct value **values = arena_grow(judge->page, finding->values, finding->value_count,
                                             &finding->value_capacity, sizeof(struct value *));
    if (values == NULL)
        return luaL_error(lua, "not enough memory");
    finding->values = values;
    values[finding->value_count++] = value;
    return 0;
}

/* What a value is here: by the site's elevation where its entry has bands. */
static const struct amount *amount_here(lua_State *lua, const struct value *value)
{
    struct judge *judge = room_judge(lua);
    const struct object *site;
    struct quantity elevation;
    if (value->state != VALUE_IN_FORCE)
        return NULL;
    if (value->entry->bands == NULL)
        return &value->is;
    if (!need_object(&site, judge->design->root, SLOT_design_site, judge->working))
        room_raise_stop(lua);
    if (site == NULL)
        room_raise_missing_fact(lua, judge->design->root, SLOT_design_site);
    if (!need_quantity(&elevation, site, SLOT_site_elevation, judge->working))
        room_raise_stop(lua);
    return value_at_elevation(value, elevation);
}

static int raise_no_value(lua_State *lua, const struct value *value)
{
    struct judge *judge = room_judge(lua);
    struct missing missing = {
        .fact = arena_format(judge->page, "a value in force for %s (%s)", value->name,
                             value->declaration->says != NULL ? value->declaration->says : ""),
        .example = arena_format(judge->page, "%s: [{from: 2026-01-01, is: %s, cite: \"…\"}]",
                                value->name, declaration_example(value->declaration)),
        .place = value->entry != NULL ? value->entry->place : value->declaration->place};
    return room_raise_missing(lua, &missing);
}

static void push_value(lua_State *lua, const struct value *value, const struct amount *amount)
{
    const struct declaration *declaration = value->declaration;
    if (amount->type == AMOUNT_WORD && declaration->words != NULL)
        room_push_word(lua, amount->word, declaration->words, value->name);
    else
        room_push_amount(lua, amount);
}

static int refuse_value(lua_State *lua, const char *name)
{
    const struct rulebook *rulebook = room_judge(lua)->rulebook;
    const char *near = NULL;
    size_t least = strlen(name) / 3 > 1 ? strlen(name) / 3 : 1;
    for (size_t i = 0; i < rulebook->value_count; i++) {
        size_t distance = text_distance(name, rulebook->values[i].name, least);
        if (distance <= least) {
            near = rulebook->values[i].name;
            least = distance > 0 ? distance - 1 : 0;
        }
    }
    if (near != NULL)
        return luaL_error(lua, "no book in force declares a value '%s'; did you mean '%s'?", name,
                          near);
    return luaL_error(lua, "no book in force declares a value '%s'", name);
}

/* book:edition("nec"): the edition in force, as text. */
static int edition(lua_State *lua)
{
    luaL_checktype(lua, 2, LUA_TSTRING);
    room_refuse_nul(lua, 2);
    const char *name = lua_tostring(lua, 2);
    const struct rulebook *rulebook = room_judge(lua)->rulebook;
    for (size_t i = 0; i < rulebook->book_count; i++)
        if (strcmp(rulebook->books[i].book->name, name) == 0) {
            if (rulebook->books[i].edition == NULL)
                return luaL_error(lua, "the book '%s' has no editions", name);
            lua_pushstring(lua, rulebook->books[i].edition);
            return 1;
        }
    name = room_keep_text(lua, 2, "the name of a book", 80);
    struct missing missing = {
        .fact = arena_format(room_judge(lua)->page, "an edition of %s in force", name)};
    return room_raise_missing(lua, &missing);
}

static int book_index(lua_State *lua)
{
    const char *name = luaL_checkstring(lua, 2);
    room_refuse_nul(lua, 2);
    if (strcmp(name, "edition") == 0) {
        lua_pushcfunction(lua, edition);
        return 1;
    }
    const struct value *value = rulebook_find_value(room_judge(lua)->rulebook, name);
    if (value == NULL)
        return refuse_value(lua, name);
    note_value(lua, value);
    const struct amount *amount = amount_here(lua, value);
    if (amount == NULL || amount->type == AMOUNT_NONE)
        return raise_no_value(lua, value);
    push_value(lua, value, amount);
    return 1;
}

/* It holds nothing, so that one serves all calls. */
void room_push_book(lua_State *lua)
{
    int *place = &room_judge(lua)->book;
    if (*place != 0) {
        lua_rawgeti(lua, LUA_REGISTRYINDEX, *place);
        return;
    }
    bool was_limited = room_lift_limits(lua);
    struct thing_book *thing = lua_newuserdatauv(lua, sizeof *thing, 0);
    thing->tag = THING_BOOK;
    lua_createtable(lua, 0, 4);
    lua_pushcfunction(lua, book_index);
    lua_setfield(lua, -2, "__index");
    room_close_metatable(lua, "book");
    lua_setmetatable(lua, -2);
    lua_pushvalue(lua, -1);
    *place = luaL_ref(lua, LUA_REGISTRYINDEX);
    room_judge(lua)->is_limited = was_limited;
}
