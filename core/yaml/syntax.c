#include "syntax.h"
#include "lines.h"
#include <string.h>

/* One error being looked at. */
struct stop {
    struct reading *reading;
    const yaml_parser_t *parser;
    const struct syntax_hint *hint;
    struct place at, context; /* where libyaml stopped, and where the thing it was reading began */
    size_t offset;            /* the byte at `at` */
    struct line line;         /* the line of `at`; empty behind the end of the file */
};

static const char *const PAIR = "title: Clear width";

static struct place mark_place(yaml_mark_t mark)
{
    return (struct place){NULL, (unsigned)mark.line + 1, (unsigned)mark.column + 1};
}

static bool stopped_by(const struct stop *stop, const char *words)
{
    return stop->parser->problem && strstr(stop->parser->problem, words);
}

static bool stopped_in(const struct stop *stop, const char *words)
{
    return stop->parser->context && strstr(stop->parser->context, words);
}

static bool is_at_end(const struct stop *stop)
{
    return stop->offset >= stop->reading->source->length;
}

static char byte_at(const struct stop *stop)
{
    return is_at_end(stop) ? '\0' : stop->reading->source->bytes[stop->offset];
}

/* Does nothing but white space stand before the stop on its line? */
static bool is_first_on_line(const struct stop *stop)
{
    const char *at = stop->reading->source->bytes + stop->offset;
    for (const char *byte = stop->line.bytes; byte < at; byte++)
        if (*byte != ' ' && *byte != '\t')
            return false;
    return true;
}

/* The character at the stop, for a message. */
static const char *character_at(const struct stop *stop)
{
    const char *bytes = stop->reading->source->bytes + stop->offset;
    size_t length = is_at_end(stop) ? 0 : 1;
    while (length > 0 && ((unsigned char)bytes[length] & 0xC0) == 0x80 &&
           stop->offset + length < stop->reading->source->length)
        length++;
    const char *text = arena_copy(stop->reading->problems->arena, bytes, length);
    return text ? text : "";
}

void tell_directive(struct reading *reading, struct place place)
{
    tell_mistake(reading, "directive", place, NULL,
                 "a directive (a line that begins with %%) is not "
                 "taken; leave it out");
}

/* A tab before the first word of the line, or at the stop itself. */
static bool tell_tab(const struct stop *stop)
{
    size_t lead = 0;
    while (lead < stop->line.length && stop->line.bytes[lead] == ' ')
        lead++;
    struct place place = stop->at;
    if (lead < stop->line.length && stop->line.bytes[lead] == '\t') {
        place.column = (unsigned)lead + 1;
        tell_mistake(stop->reading, "tab", place, NULL, "a tab cannot indent; use spaces");
    } else if (byte_at(stop) == '\t') {
        tell_mistake(stop->reading, "tab", place, NULL, "a tab cannot stand here; use a space");
    } else {
        return false;
    }
    return true;
}

/* A quote left open ends at the next one, lines later, and the error stands behind that. */
static bool tell_long_quote(const struct stop *stop)
{
    const struct syntax_hint *hint = stop->hint;
    if (hint->quote.line == 0 || hint->quote.line == hint->quote_end.line ||
        hint->quote_end.line != stop->at.line)
        return false;
    struct problem *problem = tell_mistake(
        stop->reading, "quote-not-closed", hint->quote, NULL,
        "the quote that opens here ends only lines later; close it where the text ends");
    complain_other(stop->reading, problem, stop->at);
    return true;
}

static bool tell_quote(const struct stop *stop)
{
    if (!stopped_in(stop, "quoted scalar"))
        return false;
    if (stopped_by(stop, "end of stream") || stopped_by(stop, "document indicator"))
        tell_mistake(stop->reading, "quote-not-closed", stop->context, "cite: \"Town Code 14-07\"",
                     "the quote that opens here is never closed");
    else
        tell_mistake(
            stop->reading, "bad-escape", stop->at, "label: 'C:\\north'",
            "what follows the backslash has no meaning in double quotes; use single quotes or "
            "write \\\\");
    return true;
}

/* A bracket or brace that is not closed, or an item without a comma. */
static bool tell_bracket(const struct stop *stop)
{
    bool is_list = stopped_by(stop, "',' or ']'"), is_mapping = stopped_by(stop, "',' or '}'");
    bool is_cut = is_at_end(stop) && stopped_by(stop, "node content") && stop->hint->open.line > 0;
    if (!is_list && !is_mapping && !is_cut)
        return false;
    struct place open = is_cut ? stop->hint->open : stop->context;
    size_t at = place_offset(stop->reading->source, open);
    char bracket = at < stop->reading->source->length ? stop->reading->source->bytes[at] : '[';
    const char *example =
        bracket == '{' ? "{rule: irc/ridge, edition: 2021}" : "[modules, inverters]";
    if (is_at_end(stop)) {
        tell_mistake(stop->reading, "bracket-not-closed", open, example,
                     "the bracket that opens here is never closed");
        return true;
    }
    struct problem *problem =
        tell_mistake(stop->reading, "bracket-not-closed", stop->at, example,
                     "a comma is missing before this, or the bracket is not closed");
    complain_other(stop->reading, problem, open);
    return true;
}

/* Is there a colon with a word right behind it? */
static bool has_tight_colon(struct line line)
{
    for (size_t i = 0; i + 1 < line.length; i++)
        if (line.bytes[i] == ':' && line.bytes[i + 1] != ' ' && line.bytes[i + 1] != '\t')
            return true;
    return false;
}

/* libyaml looks no farther for the colon behind a key. */
enum { FARTHEST_COLON = 1024 };

static bool tell_far_colon(const struct stop *stop, struct place key)
{
    tell_mistake(stop->reading, "key-too-long", key, PAIR,
                 "no colon follows within %d characters; a key is shorter than that",
                 FARTHEST_COLON);
    return true;
}

static bool tell_key(const struct stop *stop)
{
    struct line line;
    if (!stopped_by(stop, "could not find expected ':'"))
        return false;
    if (!line_find(&line, stop->reading->source, stop->context.line))
        line = stop->line;
    if (has_tight_colon(line))
        tell_mistake(stop->reading, "space-missing", stop->context, PAIR,
                     "a space is missing after the colon");
    else if (line.length > FARTHEST_COLON)
        return tell_far_colon(stop, stop->context);
    else
        tell_mistake(stop->reading, "colon-missing", stop->context, PAIR,
                     "a key and a colon are expected here");
    return true;
}

/* A first line without a key makes all behind it one text. */
static bool tell_root(const struct stop *stop)
{
    const struct node *root = stop->reading->source->root;
    if (!root || root->type != NODE_SCALAR)
        return false;
    bool is_tight = strchr(root->text, ':') != NULL;
    tell_mistake(stop->reading, is_tight ? "space-missing" : "colon-missing", root->place, PAIR,
                 is_tight ? "a space is missing after the colon"
                          : "a key and a colon are expected here");
    return true;
}

/* A second colon on the line, or a line further in than the value above lets it be. */
static bool tell_value(const struct stop *stop)
{
    if (!stopped_by(stop, "mapping values are not allowed"))
        return false;
    const char *bytes = stop->line.bytes;
    size_t before = stop->offset - (size_t)(bytes - stop->reading->source->bytes);
    bool has_colon = false;
    for (size_t i = 0; !is_at_end(stop) && i + 1 < before; i++)
        has_colon = has_colon || (bytes[i] == ':' && bytes[i + 1] == ' ');
    if (has_colon) {
        tell_mistake(stop->reading, "colon-in-text", stop->at, "title: \"Ridge: clear width\"",
                     "a second colon stands on this line; put a text that holds one in quotes");
        return true;
    }
    struct place place = {NULL, stop->at.line, 1};
    while (place.column <= before && bytes[place.column - 1] == ' ')
        place.column++;
    if (stop->at.column - place.column > FARTHEST_COLON)
        return tell_far_colon(stop, place);
    if (tell_root(stop))
        return true;
    tell_mistake(
        stop->reading, "bad-indentation", place, NULL,
        "this pair stands further in than the line above lets it; pairs of one mapping begin "
        "in one column");
    return true;
}

/* A line that belongs to nothing above, or more text behind a value that has ended. */
static bool tell_block(const struct stop *stop)
{
    bool is_list = stopped_by(stop, "expected '-' indicator");
    if (!is_list && !stopped_by(stop, "did not find expected key"))
        return false;
    struct problem *problem;
    if (!is_first_on_line(stop))
        problem =
            tell_mistake(stop->reading, "text-after-value", stop->at, "note: \"a 'quoted' word\"",
                         "a value has ended before this, and nothing may follow it on the line");
    else if (is_list)
        problem = tell_mistake(stop->reading, "bad-indentation", stop->at, NULL,
                               "this line stands in the column of a list but does not begin with a "
                               "dash and a space");
    else if (byte_at(stop) == ':')
        problem = tell_mistake(stop->reading, "key-missing", stop->at, PAIR,
                               "there is no key before the colon");
    else if (byte_at(stop) == '-')
        problem = tell_mistake(stop->reading, "bad-indentation", stop->at, NULL,
                               "an item of a list stands where a key is expected");
    else
        problem = tell_mistake(stop->reading, "bad-indentation", stop->at, NULL,
                               "this line begins in a column in which nothing above began");
    complain_other(stop->reading, problem, stop->context);
    return true;
}

/* Does a line "..." stand right before the stop? */
static bool follows_end_mark(const struct stop *stop)
{
    struct line line;
    for (unsigned number = stop->at.line; number > 1; number--)
        if (line_find(&line, stop->reading->source, number - 1) && line.length > 0)
            return line.length >= 3 && memcmp(line.bytes, "...", 3) == 0;
    return false;
}

static struct place first_directive(const struct stop *stop)
{
    struct line line;
    struct place place = {NULL, 1, 1};
    while (place.line < stop->at.line && line_find(&line, stop->reading->source, place.line) &&
           (line.length == 0 || line.bytes[0] != '%'))
        place.line++;
    return place;
}

static bool tell_rest(const struct stop *stop)
{
    if (!stopped_by(stop, "<document start>"))
        return false;
    if (!stop->hint->has_begun)
        tell_directive(stop->reading, first_directive(stop));
    else if (follows_end_mark(stop))
        tell_mistake(stop->reading, "second-document", stop->at, NULL,
                     "a second document begins here; a file holds one");
    else
        tell_mistake(stop->reading, "text-after-value", stop->at, NULL,
                     "what the file holds has ended before this, and nothing may follow it");
    return true;
}

/* A value that begins with a sign YAML keeps for itself, or that is not there. */
static bool tell_start(const struct stop *stop)
{
    struct arena *arena = stop->reading->problems->arena;
    const char *sign = character_at(stop);
    if (stopped_by(stop, "cannot start any token"))
        tell_mistake(stop->reading, "quotes-missing", stop->at,
                     arena_format(arena, "label: \"%s\"", sign),
                     "a text that begins with %s stands in quotes", sign);
    else if (stopped_by(stop, "node content") && *sign == ':')
        tell_mistake(stop->reading, "key-missing", stop->at, PAIR,
                     "there is no key before the colon");
    else if (stopped_by(stop, "node content"))
        tell_mistake(stop->reading, "value-missing", stop->at, NULL,
                     "a value is missing before %s; a text that begins with it stands in quotes",
                     sign);
    else if (stopped_by(stop, "block sequence entries"))
        tell_mistake(stop->reading, "bad-indentation", stop->at, "deletes:\n  - irc/second-pathway",
                     "a list cannot begin here; its first dash stands on a line of its own");
    else if (stopped_by(stop, "mapping keys"))
        tell_mistake(stop->reading, "quotes-missing", stop->at, "label: \"? \"",
                     "a text that begins with a question mark and a space stands in quotes");
    else
        return false;
    return true;
}

/* What we do not take anyway, written so that libyaml refuses it first. */
static bool tell_refused(const struct stop *stop)
{
    if (stopped_in(stop, "anchor") || stopped_in(stop, "alias"))
        tell_mistake(stop->reading, stopped_in(stop, "anchor") ? "anchor" : "alias", stop->context,
                     "label: \"*1\"", "a text that begins with & or * stands in quotes");
    else if (stopped_in(stop, "directive") || stopped_by(stop, "directive") ||
             stopped_by(stop, "incompatible YAML document"))
        tell_directive(stop->reading, stop->context.line ? stop->context : stop->at);
    else if (stopped_in(stop, "tag") || stopped_by(stop, "tag handle"))
        tell_mistake(stop->reading, "tag", stop->context.line ? stop->context : stop->at,
                     "label: \"!\"",
                     "a tag (!name) is not taken; put a text that begins with ! in quotes");
    else if (stopped_by(stop, "unexpected ':'"))
        tell_mistake(
            stop->reading, "space-missing", stop->at, "{rule: irc/ridge, edition: 2021}",
            "in brackets a space and a value follow a colon; a text that holds one stands in "
            "quotes");
    else if (stopped_in(stop, "block scalar"))
        tell_mistake(stop->reading, "bad-block-text", stop->at, "note: |\n  First line.",
                     "nothing may follow the sign | or > on its line");
    else
        return false;
    return true;
}

void tell_syntax(struct reading *reading, const yaml_parser_t *parser,
                 const struct syntax_hint *hint)
{
    static bool (*const tellers[])(const struct stop *) = {
        tell_tab,   tell_long_quote, tell_quote, tell_bracket, tell_key,
        tell_value, tell_block,      tell_rest,  tell_start,   tell_refused};
    if (parser->error == YAML_MEMORY_ERROR) {
        reading->is_short = true;
        return;
    }
    struct stop stop = {reading,
                        parser,
                        hint,
                        mark_place(parser->problem_mark),
                        {NULL, 0, 0},
                        0,
                        {reading->source->bytes + reading->source->length, 0}};
    if (parser->context)
        stop.context = mark_place(parser->context_mark);
    stop.offset = place_offset(reading->source, stop.at);
    if (!line_find(&stop.line, reading->source, stop.at.line)) {
        /* Behind a last line that does not end: libyaml counts one more. */
        stop.at = offset_place(reading->source, reading->source->length);
        line_find(&stop.line, reading->source, stop.at.line);
    }
    for (size_t i = 0; i < sizeof tellers / sizeof *tellers; i++)
        if (tellers[i](&stop))
            return;
    tell_mistake(reading, "not-yaml", stop.at, NULL, "this cannot be read as YAML");
}
