/* A rule's text: read once, looked over, compiled once per judge. */
#include "room_limits.h"

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "file.h"

enum { RULE_BYTES = 64 * 1024, MARK_BYTES = 3 };

/* Where a long bracket opened at `at` closes, or the end; 0: none opens there. */
static size_t skip_long_bracket(const char *text, size_t length, size_t at)
{
    size_t level = 0;
    if (text[at] != '[')
        return 0;
    for (at++; at < length && text[at] == '='; at++)
        level++;
    if (at >= length || text[at] != '[')
        return 0;
    for (at++; at < length; at++) {
        size_t equals = 0;
        if (text[at] != ']')
            continue;
        while (at + 1 + equals < length && text[at + 1 + equals] == '=')
            equals++;
        if (equals == level && at + 1 + equals < length && text[at + 1 + equals] == ']')
            return at + equals + 2;
    }
    return length;
}

/* Lua ends a line at either. */
static bool is_line_end(char byte)
{
    return byte == '\n' || byte == '\r';
}

static size_t skip_comment(const char *text, size_t length, size_t at)
{
    size_t end = at + 2 < length ? skip_long_bracket(text, length, at + 2) : 0;
    if (end != 0)
        return end;
    while (at < length && !is_line_end(text[at]))
        at++;
    return at;
}

/* What a backslash in a string takes with it: "\z" all white space, a line end its other half. */
static size_t skip_escape(const char *text, size_t length, size_t at)
{
    if (++at >= length)
        return length;
    char escaped = text[at++];
    if (escaped == 'z')
        while (at < length && strchr(" \f\n\r\t\v", text[at]) != NULL)
            at++;
    else if (is_line_end(escaped) && at < length && is_line_end(text[at]) && text[at] != escaped)
        at++;
    return at;
}

static size_t skip_string(const char *text, size_t length, size_t at)
{
    char quote = text[at++];
    while (at < length && text[at] != quote && !is_line_end(text[at]))
        at = text[at] == '\\' ? skip_escape(text, length, at) : at + 1;
    return at < length ? at + 1 : length;
}

/* Nearly every byte can neither open something nor compare. */
static size_t skip_plain(const char *text, size_t length, size_t at)
{
    while (at < length && (isalnum((unsigned char)text[at]) || text[at] == ' '))
        at++;
    return at;
}

bool rule_text_find_equals(const char *text, size_t length, size_t *at)
{
    for (size_t i = skip_plain(text, length, 0); i < length; i = skip_plain(text, length, i)) {
        size_t end = skip_long_bracket(text, length, i);
        if (end != 0)
            i = end;
        else if (text[i] == '-' && i + 1 < length && text[i + 1] == '-')
            i = skip_comment(text, length, i);
        else if (text[i] == '"' || text[i] == '\'')
            i = skip_string(text, length, i);
        else if ((text[i] == '<' || text[i] == '>') && i + 1 < length && text[i + 1] == '=')
            i += 2;
        else if ((text[i] == '=' || text[i] == '~') && i + 1 < length && text[i + 1] == '=') {
            *at = i;
            return true;
        } else
            i++;
    }
    return false;
}

static void set_place(struct rule_text *file, struct arena *arena, const char *text, size_t at)
{
    size_t begin = at, end = at;
    file->line = 1;
    for (size_t i = 0; i < at; i++)
        if (text[i] == '\n')
            file->line++;
    while (begin > 0 && text[begin - 1] != '\n')
        begin--;
    while (text[end] != '\0' && text[end] != '\n')
        end++;
    file->column = 1 + (unsigned)text_count_points(text + begin, at - begin);
    file->excerpt = arena_copy(arena, text + begin, text_cut(text + begin, end - begin, 200));
}

static void set_line(struct rule_text *file, struct arena *arena, const char *text, unsigned line)
{
    size_t at = 0;
    for (unsigned n = 1; n < line && text[at] != '\0'; at++)
        if (text[at] == '\n')
            n++;
    set_place(file, arena, text, at);
    file->line = line;
    file->column = 0;
}

const char *rule_text_split(const char *message, unsigned *line)
{
    char *end;
    *line = 0;
    if (strncmp(message, "rule:", 5) != 0)
        return message;
    unsigned long number = strtoul(message + 5, &end, 10);
    if (strncmp(end, ": ", 2) != 0)
        return message;
    *line = (unsigned)number;
    return end + 2;
}

struct compiling {
    const char *text;
    size_t length;
    int chunk;
};

/* Runs protected. */
static int compile(lua_State *lua)
{
    struct compiling *compiling = lua_touserdata(lua, 1);
    if (luaL_loadbufferx(lua, compiling->text, compiling->length, "@rule", "t") != LUA_OK)
        return lua_error(lua);
    compiling->chunk = luaL_ref(lua, LUA_REGISTRYINDEX);
    return 0;
}

/* Is it UTF-8 without control characters? A compiled chunk is not. */
static bool is_plain(const char *text, size_t length)
{
    size_t bad;
    for (size_t i = 0; i < length; i++) {
        bool is_control = (unsigned char)text[i] < 0x20 || text[i] == 0x7F;
        if (is_control && (text[i] == '\0' || strchr("\t\n\r", text[i]) == NULL))
            return false;
    }
    return text_is_utf8(text, length, &bad);
}

static void refuse_equals(struct rule_text *file, struct arena *arena, const char *text, size_t at)
{
    file->code = "rule-equals";
    file->wrong = text[at] == '='
                      ? "'==' is not used in rules, since it is quietly false for unlike "
                        "things; say same(a, b) or fact:is(\"word\")"
                      : "'~=' is not used in rules, since it is quietly true for unlike "
                        "things; say not same(a, b) or not fact:is(\"word\")";
    set_place(file, arena, text, at);
}

/* What the compiler said, left at the top of the stack. */
static void refuse_syntax(struct rule_text *file, struct judge *judge, const char *text, int status)
{
    unsigned line = 0;
    const char *message =
        lua_type(judge->lua, -1) == LUA_TSTRING ? lua_tostring(judge->lua, -1) : "not readable";
    message = rule_text_split(message, &line);
    file->code = status == LUA_ERRMEM ? "rule-memory" : "rule-syntax";
    char *wrong = arena_format(judge->arena, "the rule cannot be read: %.*s",
                               (int)text_cut(message, strlen(message), 1000), message);
    if (wrong != NULL)
        room_clean(wrong);
    file->wrong = wrong != NULL ? wrong : "the rule cannot be read";
    if (line > 0)
        set_line(file, judge->arena, text, line);
}

/* Lua cuts a chunk's name at 60 bytes, so every rule is "rule" in its messages. */
static void compile_text(struct judge *judge, struct rule_text *file, const char *text,
                         size_t length)
{
    struct compiling compiling = {text, length, LUA_NOREF};
    size_t at;
    if (!is_plain(text, length)) {
        file->code = "rule-not-text";
        file->wrong = "the rule is not plain text (UTF-8 without control characters)";
        return;
    }
    if (rule_text_find_equals(text, length, &at)) {
        refuse_equals(file, judge->arena, text, at);
        return;
    }
    lua_pushcfunction(judge->lua, compile);
    lua_pushlightuserdata(judge->lua, &compiling);
    limits_start(judge);
    int status = lua_pcall(judge->lua, 1, 0, 0);
    limits_end(judge);
    file->chunk = compiling.chunk;
    if (status != LUA_OK)
        refuse_syntax(file, judge, text, status);
    lua_settop(judge->lua, 0);
}

/* Some editors put a byte order mark before UTF-8. */
static bool begins_with_mark(const char *text, size_t length)
{
    return length >= MARK_BYTES && memcmp(text, "\xEF\xBB\xBF", MARK_BYTES) == 0;
}

struct rule_text *rule_text_find(struct judge *judge, const char *path)
{
    struct rule_text *file = index_find(&judge->files, path);
    if (file != NULL)
        return file;
    char *text, *kept_path = arena_copy(judge->arena, path, strlen(path));
    size_t length;
    struct problems problems = {.arena = judge->arena};
    file = arena_take(judge->arena, sizeof *file);
    if (file == NULL || kept_path == NULL)
        return NULL;
    file->chunk = LUA_NOREF;
    file->card_table = LUA_NOREF;
    judge->is_short = false;
    if (file_read(&text, &length, path, RULE_BYTES, judge->arena, PROBLEM_RULE, &problems)) {
        file->file = (struct book_text){kept_path, text, length};
        size_t mark = begins_with_mark(text, length) ? MARK_BYTES : 0;
        compile_text(judge, file, text + mark, length - mark);
    } else {
        file->code = problems.count > 0 ? problems.items[0].code : "memory";
        file->wrong = problems.count > 0 ? problems.items[0].message : "there was no memory";
    }
    /* What only lacked memory may be read another time. */
    bool lacked = judge->is_short || (file->code != NULL && strcmp(file->code, "memory") == 0);
    if (lacked || !index_add(&judge->files, kept_path, file))
        return NULL;
    return file;
}
