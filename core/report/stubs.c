/* Type stubs for a language server, and the std of luacheck: what a rule may say. */
#include <string.h>

#include "calculator.h"
#include "schema.h"

static const char head[] =
    "---@meta\n"
    "-- What a rule can say and see, for a language server. Made by plumbrule schema stubs.\n\n"
    "---@class plumbrule.quantity\n"
    "---@operator add(plumbrule.quantity): plumbrule.quantity\n"
    "---@operator sub(plumbrule.quantity): plumbrule.quantity\n"
    "---@operator mul(plumbrule.quantity|number): plumbrule.quantity\n"
    "---@operator div(plumbrule.quantity|number): plumbrule.quantity\n"
    "---@operator unm: plumbrule.quantity\n\n"
    "---@class plumbrule.date\n\n"
    "---@class plumbrule.word\n"
    "---@field is fun(self, ...: string): boolean True if it is any of these words.\n\n"
    "---@class plumbrule.words\n"
    "---@field has fun(self, ...: string): boolean True if it has all of these words.\n"
    "---@field count fun(self): integer\n\n"
    "---@class plumbrule.list<T>: { [integer]: T }\n"
    "---@field count fun(self): integer\n\n"
    "---@class plumbrule.book Values of the law by name.\n"
    "---@field [string] any\n"
    "---@field edition fun(self, book: string): string The edition in force.\n\n"
    "---@class plumbrule.Rule\n"
    "---@field title string\n"
    "---@field cite string|table<string, string> The section; or one for each edition.\n"
    "---@field about string The kind of thing; one finding for each.\n"
    "---@field applies? fun(thing: any, book: plumbrule.book, design: plumbrule.design): boolean\n"
    "---@field check fun(thing: any, book: plumbrule.book, design: plumbrule.design)\n"
    "---@field remedy? string\n\n";

static void write_fact_type(struct text *out, const struct fact_row *row)
{
    static const char *const plain[] = {[TYPE_QUANTITY] = "plumbrule.quantity",
                                        [TYPE_NUMBER] = "number",
                                        [TYPE_COUNT] = "integer",
                                        [TYPE_CHOICE] = "plumbrule.word",
                                        [TYPE_WORDS] = "plumbrule.words",
                                        [TYPE_WORD_LIST] = "plumbrule.words",
                                        [TYPE_TEXT] = "string",
                                        [TYPE_TEXTS] = "plumbrule.words",
                                        [TYPE_YESNO] = "boolean",
                                        [TYPE_DATE] = "plumbrule.date"};
    bool is_list = row->type == TYPE_LIST || row->type == TYPE_INVERSE;
    bool is_set = is_list || row->type == TYPE_REFERENCES;
    if (row->type <= TYPE_DATE) {
        text_add_word(out, plain[row->type]);
        return;
    }
    if (is_set)
        text_add_word(out, "plumbrule.list<");
    if (row->type == TYPE_ONE || is_list)
        text_add_format(out, "plumbrule.%s", kind_at(row->kind)->name);
    for (size_t id = 0, count = 0; id < KIND_COUNT && row->type != TYPE_ONE && !is_list; id++)
        if (row->kinds >> id & 1)
            text_add_format(out, "%splumbrule.%s", count++ > 0 ? "|" : "",
                            kind_at((enum kind_id)id)->name);
    text_add_word(out, is_set ? ">" : row->type == TYPE_REFERENCE ? "|nil" : "");
}

static void write_method(struct text *out, const struct calculator *calculator)
{
    text_add_format(out, "---@field %s fun(self", calculator->name);
    for (size_t i = 0; i < calculator->input_count; i++)
        text_add_format(out, ", %s%s: any", calculator->inputs[i].name,
                        calculator->inputs[i].is_optional ? "?" : "");
    text_add_word(out, "): ");
    for (size_t i = 0; i < calculator->result_count; i++)
        text_add_format(out, "%s%s", i > 0 ? ", " : "",
                        calculator->results[i].type == AMOUNT_QUANTITY ? "plumbrule.quantity"
                        : calculator->results[i].type == AMOUNT_NUMBER ? "number"
                        : calculator->results[i].type == AMOUNT_YESNO  ? "boolean"
                                                                       : "any");
    text_add_format(out, " %s\n", calculator->sentence);
}

static void write_kind(struct text *out, const struct kind *kind)
{
    const struct calculator *calculator;
    text_add_format(out, "---@class (exact) plumbrule.%s %s\n", kind->name, kind->sentence);
    for (size_t i = 0; i < kind->fact_count; i++) {
        if (kind->facts[i].type == TYPE_POINT || kind->facts[i].type == TYPE_POINTS)
            continue; /* geometry is asked of calculators */
        text_add_format(out, "---@field %s ", kind->facts[i].name);
        write_fact_type(out, &kind->facts[i]);
        text_add_format(out, " %s\n", kind->facts[i].sentence);
    }
    text_add_word(out, "---@field called fun(self): string Its name.\n"
                       "---@field kind_of fun(self): string Its kind.\n");
    for (size_t i = 0; (calculator = calculator_at(i)) != NULL; i++)
        if (calculator->about_kind == kind->id)
            write_method(out, calculator);
    text_add_word(out, "\n");
}

/* "shall" of "shall.be"; the whole of a word that stands alone. */
static size_t library_length(const char *word)
{
    return strcspn(word, ".");
}

static void write_word(struct text *out, const char *word)
{
    struct word_told told;
    if (!word_find(&told, word)) {
        text_add_format(out, "---@type plumbrule.quantity\n%s = nil\n", word);
        return;
    }
    text_add_format(out, "---%s\n", told.sentence);
    if (told.inputs == NULL) {
        text_add_format(out, "---@type %s\n%s = nil\n", told.gives, word);
        return;
    }
    if (told.gives != NULL)
        text_add_format(out, "---@return %s\n", told.gives);
    text_add_format(out, "function %s%s end\n", word, told.inputs);
}

bool stubs_write(struct text *out, const char *const *words, size_t count)
{
    const char *library = "";
    text_add_word(out, head);
    for (size_t id = 0; id < KIND_COUNT; id++)
        write_kind(out, kind_at((enum kind_id)id));
    for (size_t i = 0; i < count; i++) {
        size_t length = library_length(words[i]);
        bool is_new = words[i][length] == '.' &&
                      (strncmp(library, words[i], length) != 0 || library[length] != '.');
        if (is_new)
            text_add_format(out, "%.*s = {}\n", (int)length, words[i]);
        library = words[i][length] == '.' ? words[i] : "";
        write_word(out, words[i]);
    }
    return !out->is_short;
}

bool luacheck_write(struct text *out, const char *prefix, const char *const *words, size_t count)
{
    text_add_format(out,
                    "-- What a rule can say, for luacheck. Made by plumbrule schema luacheck.\n"
                    "%s{\n  read_globals = {\n",
                    prefix);
    for (size_t i = 0; i < count;) {
        size_t length = library_length(words[i]);
        if (words[i][length] == '\0') {
            text_add_format(out, "    %s = {},\n", words[i++]);
            continue;
        }
        const char *library = words[i];
        text_add_format(out, "    %.*s = { fields = {\n", (int)length, library);
        for (; i < count && strncmp(words[i], library, length + 1) == 0; i++)
            text_add_format(out, "      %s = {},\n", words[i] + length + 1);
        text_add_word(out, "    } },\n");
    }
    text_add_word(out, "  },\n}\n");
    return !out->is_short;
}
