/* What a rule hands over, taken as an amount; and how any value is named and shown to people. */
#include "room.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static bool thing_to_amount(struct amount *out, const enum thing_tag *thing)
{
    switch (*thing) {
    case THING_QUANTITY:
        *out = amount_of_quantity(((const struct thing_quantity *)thing)->quantity);
        return true;
    case THING_WORD:
        *out = amount_of_word(((const struct thing_word *)thing)->word);
        return true;
    case THING_DATE:
        *out = amount_of_date(((const struct thing_date *)thing)->date);
        return true;
    default:
        return false;
    }
}

void room_refuse_nul(lua_State *lua, int index)
{
    if (strlen(lua_tostring(lua, index)) != lua_rawlen(lua, index))
        luaL_error(lua, "a text with a NUL byte in it");
}

bool room_to_amount(struct amount *out, lua_State *lua, int index)
{
    switch (lua_type(lua, index)) {
    case LUA_TUSERDATA:
        return thing_to_amount(out, lua_touserdata(lua, index));
    case LUA_TNUMBER:
        *out = amount_of_number(lua_tonumber(lua, index));
        return true;
    case LUA_TBOOLEAN:
        *out = amount_of_yesno(lua_toboolean(lua, index));
        return true;
    case LUA_TSTRING:
        room_refuse_nul(lua, index);
        *out = amount_of_word(lua_tostring(lua, index));
        return true;
    default:
        return false;
    }
}

bool room_keep_amount(struct amount *out, lua_State *lua, int index)
{
    if (!room_to_amount(out, lua, index))
        return false;
    if (out->type == AMOUNT_WORD && lua_type(lua, index) == LUA_TSTRING)
        out->word =
            out->word[0] != '\0' ? room_keep_text(lua, index, "a word to compare", 400) : "";
    return true;
}

const char *room_type_name(lua_State *lua, int index, char *buffer, size_t size)
{
    static const char *const names[] = {[THING_WORD] = "word",
                                        [THING_DATE] = "date",
                                        [THING_LIST] = "list",
                                        [THING_WORDS] = "list of words",
                                        [THING_BOOK] = "book"};
    int tag = room_tag(lua, index);
    char dimension[64];
    if (tag == THING_QUANTITY) {
        dimension_write(dimension, sizeof dimension, room_to_quantity(lua, index)->dimension);
        snprintf(buffer, size, "%s", dimension);
    } else if (tag == THING_OBJECT)
        snprintf(buffer, size, "%s",
                 ((struct thing_object *)lua_touserdata(lua, index))->object->kind->name);
    else
        snprintf(buffer, size, "%s", tag != 0 ? names[tag] : luaL_typename(lua, index));
    return buffer;
}

void room_write_value(char *buffer, size_t size, lua_State *lua, int index)
{
    struct amount amount;
    if (lua_isnil(lua, index))
        snprintf(buffer, size, "nil");
    else if (lua_type(lua, index) == LUA_TSTRING) {
        const char *text = lua_tostring(lua, index);
        snprintf(buffer, size, "%.*s", (int)text_cut(text, strlen(text), size - 1), text);
        room_clean(buffer);
    } else if (lua_type(lua, index) == LUA_TNUMBER && !isfinite(lua_tonumber(lua, index)))
        snprintf(buffer, size, "a number that is not finite");
    else if (room_to_amount(&amount, lua, index)) {
        char text[160];
        amount_write(text, sizeof text, amount, NULL, 12);
        snprintf(buffer, size, "%s", text);
    } else if (room_tag(lua, index) == THING_OBJECT)
        snprintf(buffer, size, "%s",
                 ((struct thing_object *)lua_touserdata(lua, index))->object->path);
    else
        room_type_name(lua, index, buffer, size);
}
