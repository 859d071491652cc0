/* Things of the design and the book as a rule sees them: strict, read-only, and every reading
 * noted. */
#include "room_views.h"

#include <string.h>

static void push_one(lua_State *lua, const struct object *object, unsigned slot)
{
    const struct fact *fact = object_fact(object, slot);
    if (fact->state == FACT_NONE)
        lua_pushnil(lua); /* stated: there is none */
    else
        room_push_object(lua, fact->is.object);
}

/* The view of a fact, at the top: its tag is right, all else is to be written. */
static void *new_view(lua_State *lua, size_t key, size_t size, enum thing_tag tag)
{
    void *thing = room_show_anew(lua, key, tag);
    if (thing != NULL)
        return thing;
    thing = room_new_thing(lua, size, tag);
    room_keep_shown(lua, key, tag);
    return thing;
}

static void push_list(lua_State *lua, size_t key, const struct fact *fact)
{
    struct thing_list *thing = new_view(lua, key, sizeof *thing, THING_LIST);
    thing->objects = fact->state == FACT_NONE ? NULL : fact->is.objects;
    thing->count = fact->state == FACT_NONE ? 0 : fact->count;
}

static void push_words(lua_State *lua, size_t key, const struct fact *fact,
                       const struct fact_row *row)
{
    struct thing_words *thing = new_view(lua, key, sizeof *thing, THING_WORDS);
    thing->fact = fact;
    thing->row = row;
}

static void push_choice(lua_State *lua, size_t key, const char *word, const struct fact_row *row)
{
    struct thing_word *thing = new_view(lua, key, sizeof *thing, THING_WORD);
    *thing = (struct thing_word){THING_WORD, true, word, row->vocabulary->words, row->name};
}

static void push_amount_of(lua_State *lua, size_t key, const struct amount *amount)
{
    if (amount->type == AMOUNT_QUANTITY && !dimension_is_pure(amount->quantity.dimension)) {
        struct thing_quantity *thing = new_view(lua, key, sizeof *thing, THING_QUANTITY);
        thing->quantity = amount->quantity;
    } else if (amount->type == AMOUNT_DATE) {
        struct thing_date *thing = new_view(lua, key, sizeof *thing, THING_DATE);
        thing->date = amount->date;
    } else
        room_push_amount(lua, amount);
}

static int push_fact(lua_State *lua, const struct object *object, unsigned slot)
{
    const struct fact_row *row = object_row(object, slot);
    const struct fact *fact = object_fact(object, slot);
    struct working *working = room_judge(lua)->working;
    room_charge(lua, 1);
    working_read(working, object, slot);
    if (fact->state == FACT_MISSING) {
        (working_missing)(working, object, slot);
        return room_raise_stop(lua);
    }
    if (row->type == TYPE_ONE || row->type == TYPE_REFERENCE) {
        push_one(lua, object, slot);
        return 1;
    }
    size_t key = object->first_fact + slot;
    if (room_show_again(lua, key))
        return 1;
    switch (row->type) {
    case TYPE_LIST:
    case TYPE_REFERENCES:
    case TYPE_INVERSE:
        push_list(lua, key, fact);
        break;
    case TYPE_WORDS:
    case TYPE_WORD_LIST:
    case TYPE_TEXTS:
        push_words(lua, key, fact, row);
        break;
    case TYPE_CHOICE:
        push_choice(lua, key, fact->is.word, row);
        break;
    case TYPE_POINT:
    case TYPE_POINTS:
        return luaL_error(lua, "'%s' is geometry: ask the roof plane's calculators", row->name);
    default: {
        struct amount amount = object_amount(object, slot);
        push_amount_of(lua, key, &amount);
    }
    }
    return 1;
}

static int refuse_fact(lua_State *lua, const struct kind *kind)
{
    const char *known[80], *name = lua_tostring(lua, 2);
    size_t count = 0;
    for (size_t i = 0; i < kind->fact_count && count < 80; i++)
        known[count++] = kind->facts[i].name;
    const char *near = name != NULL ? text_find_near(name, known, count) : NULL;
    if (near != NULL)
        return luaL_error(lua, "a %s has no '%s'; did you mean '%s'?", kind->name, name, near);
    return luaL_error(lua, "a %s has no '%s'", kind->name, name != NULL ? name : "?");
}

enum { SHORT_TEXT = 40 }; /* bytes of a text that Lua surely holds once (LUAI_MAXSHORTLEN) */

/* Upvalue 1: names → slot or calculator. */
static int object_index(lua_State *lua)
{
    const struct object *object = ((struct thing_object *)lua_touserdata(lua, 1))->object;
    const char *name = lua_tostring(lua, 2);
    struct found_slot *found = &room_judge(lua)->found_slots[room_note_of(name, object->kind)];
    if (found->name == name && found->kind == object->kind)
        return push_fact(lua, object, found->slot);
    lua_pushvalue(lua, 2);
    switch (lua_rawget(lua, lua_upvalueindex(1))) {
    case LUA_TNUMBER:
        /* Lua holds each short text once: the table holds this very one. */
        if (strlen(name) <= SHORT_TEXT)
            *found = (struct found_slot){name, object->kind, (unsigned)lua_tointeger(lua, -1)};
        return push_fact(lua, object, (unsigned)lua_tointeger(lua, -1));
    case LUA_TFUNCTION:
        return 1;
    default:
        return refuse_fact(lua, object->kind);
    }
}

/* thing:called() */
static int object_name(lua_State *lua)
{
    if (room_tag(lua, 1) != THING_OBJECT)
        return luaL_error(lua, "called() is asked of a thing of the design");
    lua_pushstring(lua, ((struct thing_object *)lua_touserdata(lua, 1))->object->path);
    return 1;
}

/* thing:kind_of(): for references that may go to several kinds. */
static int object_kind(lua_State *lua)
{
    if (room_tag(lua, 1) != THING_OBJECT)
        return luaL_error(lua, "kind_of() is asked of a thing of the design");
    lua_pushstring(lua, ((struct thing_object *)lua_touserdata(lua, 1))->object->kind->name);
    return 1;
}

/* Table of one kind: its facts' slots, its methods. */
static void push_names(lua_State *lua, const struct kind *kind)
{
    const struct calculator *calculator;
    lua_newtable(lua);
    for (size_t slot = 0; slot < kind->fact_count; slot++) {
        lua_pushinteger(lua, (lua_Integer)slot);
        lua_setfield(lua, -2, kind->facts[slot].name);
    }
    lua_pushcfunction(lua, object_name);
    lua_setfield(lua, -2, "called");
    lua_pushcfunction(lua, object_kind);
    lua_setfield(lua, -2, "kind_of");
    for (calculator = calculator_next(NULL, kind->id); calculator != NULL;
         calculator = calculator_next(calculator, kind->id)) {
        lua_pushlightuserdata(lua, (void *)(uintptr_t)calculator);
        lua_pushcclosure(lua, room_call_method, 1);
        lua_setfield(lua, -2, calculator->name);
    }
}

static void push_metatable(lua_State *lua, const struct kind *kind)
{
    int *place = &room_judge(lua)->kind_metatables[kind->id];
    if (*place != 0) {
        lua_rawgeti(lua, LUA_REGISTRYINDEX, *place);
        return;
    }
    bool was_limited = room_lift_limits(lua);
    lua_newtable(lua);
    push_names(lua, kind);
    lua_pushcclosure(lua, object_index, 1);
    lua_setfield(lua, -2, "__index");
    room_close_metatable(lua, kind->name);
    lua_pushvalue(lua, -1);
    *place = luaL_ref(lua, LUA_REGISTRYINDEX);
    room_judge(lua)->is_limited = was_limited;
}

void room_push_object(lua_State *lua, const struct object *object)
{
    size_t key = room_key_of_object(lua, object);
    if (room_show_again(lua, key) || room_show_over(lua, object))
        return;
    size_t chain = SHOWN_OBJECTS + object->kind->id;
    struct thing_object *thing = room_show_anew(lua, key, chain);
    if (thing == NULL) {
        thing = lua_newuserdatauv(lua, sizeof *thing, 0);
        thing->tag = THING_OBJECT;
        push_metatable(lua, object->kind);
        lua_setmetatable(lua, -2);
        if (!room_keep_shown(lua, key, chain))
            room_keep_over(lua, object);
    }
    thing->object = object;
}
