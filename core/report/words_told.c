/* What there is to say of each word of a rule, for people and for language servers. */
#include <string.h>

#include "calculator.h"
#include "schema.h"

static const struct word_told words[] = {
    {"shall.not_exceed", "(what, actual, limit, unit)", NULL,
     "Actual must be at most the limit. The unit, if there is one, is what both are shown in."},
    {"shall.be_at_least", "(what, actual, limit, unit)", NULL,
     "Actual must be at least the limit."},
    {"shall.be_less_than", "(what, actual, limit, unit)", NULL,
     "Actual must be less than the limit."},
    {"shall.be_more_than", "(what, actual, limit, unit)", NULL,
     "Actual must be more than the limit."},
    {"shall.be_equal", "(what, actual, limit, unit)", NULL, "Both must be the same."},
    {"shall.be", "(what, yes)", NULL, "This must hold: a yes/no fact or a comparison."},
    {"shall.meet_one_of", "(options)", NULL,
     "One way of several must hold: { {\"its name\", function() … end}, … }. All are tried."},
    {"should.not_exceed", "(what, actual, limit, unit)", NULL,
     "As with shall, but what does not hold is a warning."},
    {"should.be_at_least", "(what, actual, limit, unit)", NULL,
     "As with shall, but what does not hold is a warning."},
    {"should.be_less_than", "(what, actual, limit, unit)", NULL,
     "As with shall, but what does not hold is a warning."},
    {"should.be_more_than", "(what, actual, limit, unit)", NULL,
     "As with shall, but what does not hold is a warning."},
    {"should.be_equal", "(what, actual, limit, unit)", NULL,
     "As with shall, but what does not hold is a warning."},
    {"should.be", "(what, yes)", NULL, "As with shall, but what does not hold is a warning."},
    {"review", "(why, ...)", NULL, "Hands a point to a person, with values to look at."},
    {"same", "(a, b)", "boolean", "Are both the same? Things that cannot be compared are refused."},
    {"smallest", "(a, ...)", "any", "The smallest of several amounts of one kind."},
    {"largest", "(a, ...)", "any", "The largest of several amounts of one kind."},
    {"round_up", "(number)", "number", "To the next whole number above."},
    {"round_down", "(number)", "number", "To the next whole number below."},
    {"abs", "(a)", "any", "Without its sign."},
    {"sqrt", "(a)", "any", "The square root."},
    {"sin", "(angle)", "number", "The sine of an angle."},
    {"cos", "(angle)", "number", "The cosine of an angle."},
    {"tan", "(angle)", "number", "The tangent of an angle."},
    {"celsius", "(number)", "plumbrule.quantity", "A temperature: celsius(30)."},
    {"fahrenheit", "(number)", "plumbrule.quantity", "A temperature: fahrenheit(86)."},
    {"format", "(pattern, ...)", "string", "A text with values in it: format(\"%s of %d\", a, n)."},
    {"type", "(a)", "string", "What something is: \"quantity\", \"number\", \"word\" …"},
    {"tostring", "(a)", "string", "Anything as people read it."},
    {"tonumber", "(text)", "number|nil", "The number that a text says, or nil."},
    {"ipairs", "(list)", "any", "Goes through a list: for _, one in ipairs(list) do … end."},
    {"select", "(n, ...)", "any", "What stands from the n-th on."},
    {"math.floor", "(number)", "number", "To the next whole number below."},
    {"math.ceil", "(number)", "number", "To the next whole number above."},
    {"math.abs", "(a)", "any", "Without its sign."},
    {"math.sqrt", "(a)", "any", "The square root."},
    {"math.min", "(a, ...)", "any", "The smallest."},
    {"math.max", "(a, ...)", "any", "The largest."},
    {"math.log10", "(number)", "number", "The logarithm to the base 10."},
    {"math.exp", "(number)", "number", "The exponential."},
    {"math.pi", NULL, "number", "3.14159…"},
    {"string.len", "(text)", "integer", "How many bytes it has."},
    {"string.sub", "(text, first, last)", "string", "A part of it."},
    {"string.lower", "(text)", "string", "In small letters."},
    {"string.upper", "(text)", "string", "In large letters."},
    {"string.contains", "(text, piece)", "boolean", "Does it hold this piece, letter by letter?"},
    {"string.numbers_before", "(text, unit, ...)", "number?, number?",
     "The least and the largest number before one of these units, with a blank between or without; "
     "nil where there is none."},
    {"table.insert", "(list, value)", NULL, "Adds at the end."},
    {"table.remove", "(list)", "any", "Takes from the end."},
    {"table.concat", "(list, between)", "string", "Joins texts."},
    {"table.sort", "(list, before)", NULL, "Sorts; what is equal keeps its order."},
};

/* What a result is to a language server. */
static const char *type_of(const struct parameter *result)
{
    return result->type == AMOUNT_QUANTITY ? "plumbrule.quantity"
           : result->type == AMOUNT_NUMBER ? "number"
           : result->type == AMOUNT_YESNO  ? "boolean"
           : result->type == AMOUNT_DATE   ? "plumbrule.date"
                                           : "string";
}

bool word_find(struct word_told *out, const char *name)
{
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
        if (strcmp(words[i].name, name) == 0) {
            *out = words[i];
            return true;
        }
    const struct calculator *calculator =
        strncmp(name, "calc.", 5) == 0 ? calculator_find(KIND_NONE, name + 5) : NULL;
    if (calculator == NULL)
        return false;
    *out = (struct word_told){name, "(inputs)", type_of(&calculator->results[0]),
                              calculator->sentence};
    return true;
}
