/* Reads what lua_dump writes: the form of Lua 5.4 (ldump.c and lopcodes.h of its sources say it). A
 * dump of any other form, or one that does not end where it should, tells nothing. */
#include "rule_code.h"

#include <stdint.h>
#include <string.h>

#include "text.h"

/* Instructions that matter here: their numbers, and where a jump goes. */
enum {
    SET_UPVALUE = 10,
    REST_OF_CONSTANT = 25,
    WHOLE_OF_CONSTANT = 28,
    REST = 37,
    WHOLE = 40,
    JUMP = 56,
    FOR_LOOP = 73,
    IN_LOOP = 77
};
enum { OPERATION = 0x7F, JUMP_SHIFT = 7, JUMP_ZERO = (1 << 24) - 1 };

/* Types of constants. */
enum {
    NIL = 0x00,
    NO = 0x01,
    YES = 0x11,
    INTEGER = 0x03,
    SHORT_TEXT = 0x04,
    NUMBER = 0x13,
    LONG_TEXT = 0x14
};

enum { DEPTH_MOST = 100 };

struct dump {
    const unsigned char *at, *end;
    bool is_wrong;
    struct rule_code *code;
};

static void skip(struct dump *dump, size_t bytes)
{
    if (bytes > (size_t)(dump->end - dump->at))
        dump->is_wrong = true;
    else
        dump->at += bytes;
}

static unsigned char byte(struct dump *dump)
{
    const unsigned char *at = dump->at;
    skip(dump, 1);
    return dump->is_wrong ? 0 : *at;
}

/* Seven bits a byte, the largest first; the last byte is marked. */
static size_t count(struct dump *dump)
{
    size_t number = 0;
    unsigned char next;
    do {
        if (number > (SIZE_MAX >> 8))
            dump->is_wrong = true;
        next = byte(dump);
        number = number << 7 | (next & 0x7F);
    } while ((next & 0x80) == 0 && !dump->is_wrong);
    return dump->is_wrong ? 0 : number;
}

static void skip_text(struct dump *dump)
{
    size_t size = count(dump);
    if (size > 0) /* 0: there is none; else its length and one */
        skip(dump, size - 1);
}

static void read_code(struct dump *dump, bool is_inner)
{
    size_t instructions = count(dump);
    for (size_t i = 0; i < instructions && !dump->is_wrong; i++) {
        uint32_t one = 0;
        const unsigned char *at = dump->at;
        skip(dump, sizeof one);
        if (dump->is_wrong)
            return;
        memcpy(&one, at, sizeof one);
        unsigned operation = one & OPERATION;
        dump->code->sets_upvalues |= operation == SET_UPVALUE;
        dump->code->divides_whole |= operation == REST_OF_CONSTANT ||
                                     operation == WHOLE_OF_CONSTANT || operation == REST ||
                                     operation == WHOLE;
        dump->code->goes_back |=
            operation == FOR_LOOP || operation == IN_LOOP ||
            (operation == JUMP && (int64_t)(one >> JUMP_SHIFT) - JUMP_ZERO < 0);
    }
    if (!is_inner)
        dump->code->instructions = instructions;
}

static void skip_constants(struct dump *dump)
{
    for (size_t left = count(dump); left > 0 && !dump->is_wrong; left--) {
        unsigned type = byte(dump);
        if (type == INTEGER || type == NUMBER)
            skip(dump, 8);
        else if (type == SHORT_TEXT || type == LONG_TEXT)
            skip_text(dump);
        else if (type != NIL && type != NO && type != YES)
            dump->is_wrong = true;
    }
}

/* Lines, names of locals and of upvalues: none, as it was asked for. */
static void skip_names(struct dump *dump)
{
    for (int i = 0; i < 4; i++)
        if (count(dump) != 0)
            dump->is_wrong = true;
}

static void read_function(struct dump *dump, int depth)
{
    enum { PARAMETERS_AND_SUCH = 3, OF_AN_UPVALUE = 3 };
    if (depth > DEPTH_MOST)
        dump->is_wrong = true;
    skip_text(dump); /* of the source */
    count(dump);     /* its first line */
    count(dump);
    skip(dump, PARAMETERS_AND_SUCH);
    read_code(dump, depth > 0);
    skip_constants(dump);
    for (size_t left = count(dump); left > 0 && !dump->is_wrong; left--)
        skip(dump, OF_AN_UPVALUE);
    size_t functions = count(dump);
    dump->code->has_functions |= functions > 0;
    for (; functions > 0 && !dump->is_wrong; functions--)
        read_function(dump, depth + 1);
    if (!dump->is_wrong)
        skip_names(dump);
}

static int add(lua_State *lua, const void *bytes, size_t length, void *to)
{
    (void)lua;
    text_add(to, bytes, length);
    return 0;
}

enum {
    HEAD_WORDS = 15,
    HEAD = HEAD_WORDS + sizeof(lua_Integer) + sizeof(lua_Number),
    BEGIN = HEAD + 1 /* behind the number of upvalues: the chunk's function */
};

static bool is_head_known(const char *bytes)
{
    /* Signature, version and format, bytes that a copy would spoil, sizes, an integer, a number. */
    char head[HEAD] = "\x1BLua\x54\x00\x19\x93\r\n\x1A\n\x04\x08\x08";
    const lua_Integer integer = 0x5678;
    const lua_Number number = 370.5;
    memcpy(head + HEAD_WORDS, &integer, sizeof integer);
    memcpy(head + HEAD_WORDS + sizeof integer, &number, sizeof number);
    return memcmp(bytes, head, sizeof head) == 0;
}

bool rule_code_look(struct rule_code *out, lua_State *lua, int index)
{
    struct text text = {0};
    *out = (struct rule_code){.sets_upvalues = false};
    lua_pushvalue(lua, index);
    bool is_known = lua_dump(lua, add, &text, 1) == 0 && !text.is_short && text.length > BEGIN &&
                    is_head_known(text.bytes);
    lua_pop(lua, 1);
    if (is_known) {
        const unsigned char *bytes = (const unsigned char *)text.bytes;
        struct dump dump = {bytes + BEGIN, bytes + text.length, false, out};
        read_function(&dump, 0);
        is_known = !dump.is_wrong && dump.at == dump.end;
    }
    text_free(&text);
    return is_known;
}
