/* Pages of reference in Markdown, made from the tables. */
#include <stdio.h>
#include <string.h>

#include "calculator.h"
#include "schema.h"

static const char made[] = "<!-- Made by plumbrule schema; do not change by hand. -->\n\n";

/* In a cell of a table a bar would end it. */
static void add_cell(struct text *out, const char *words)
{
    for (; words != NULL && *words != '\0'; words++) {
        if (*words == '|')
            text_add_word(out, "\\");
        text_add(out, words, 1);
    }
}

static const char *absence_text(const struct kind *kind, size_t slot)
{
    return kind->absences[slot].means;
}

static void write_takes(struct text *out, const struct fact_row *row)
{
    char kinds[200], low[32], high[32];
    switch (row->type) {
    case TYPE_QUANTITY:
    case TYPE_NUMBER:
    case TYPE_COUNT:
        number_write(low, sizeof low, row->low);
        number_write(high, sizeof high, row->high);
        text_add_format(out, "%s, %s to %s%s%s",
                        row->type == TYPE_QUANTITY ? measure_name(row->measure)
                        : row->type == TYPE_NUMBER ? "number"
                                                   : "count",
                        low, high, row->type == TYPE_QUANTITY ? " " : "",
                        row->type == TYPE_QUANTITY ? row->unit : "");
        return;
    case TYPE_CHOICE:
    case TYPE_WORDS:
    case TYPE_WORD_LIST:
        text_add_word(out, row->type == TYPE_CHOICE  ? "one of: "
                           : row->type == TYPE_WORDS ? "any of: "
                                                     : "list of: ");
        for (size_t i = 0; i < row->vocabulary->count; i++)
            text_add_format(out, "%s%s", i > 0 ? ", " : "", row->vocabulary->words[i]);
        return;
    case TYPE_REFERENCE:
    case TYPE_REFERENCES:
        kinds_write(kinds, sizeof kinds, row->kinds);
        text_add_format(out, "%s of %s", row->type == TYPE_REFERENCE ? "name" : "names", kinds);
        return;
    case TYPE_ONE:
    case TYPE_LIST:
    case TYPE_INVERSE:
        text_add_format(out, "%s [%s](#%s)%s", row->type == TYPE_ONE ? "one" : "list of",
                        kind_at(row->kind)->name, kind_at(row->kind)->name,
                        row->type == TYPE_INVERSE ? ", worked out from the other side" : "");
        return;
    default: {
        static const char *const names[] = {
            [TYPE_TEXT] = "text",  [TYPE_TEXTS] = "texts",   [TYPE_YESNO] = "yes or no",
            [TYPE_DATE] = "a day", [TYPE_POINT] = "a point", [TYPE_POINTS] = "points"};
        text_add_word(out, names[row->type]);
    }
    }
}

static void write_fact(struct text *out, const struct kind *kind, size_t slot)
{
    const struct fact_row *row = &kind->facts[slot];
    char example[200];
    fact_write_example(example, sizeof example, row);
    text_add_format(out, "| `%s` | ", row->name);
    write_takes(out, row);
    text_add_word(out, " | ");
    add_cell(out, row->sentence);
    if (absence_text(kind, slot) != NULL)
        text_add_format(out, " Not given it means: %s.", absence_text(kind, slot));
    text_add_word(out, row->type == TYPE_INVERSE ? " | " : " | `");
    add_cell(out, row->type == TYPE_INVERSE ? "" : example);
    text_add_word(out, row->type == TYPE_INVERSE ? " |\n" : "` |\n");
}

bool reference_write_facts(struct text *out)
{
    text_add_format(out,
                    "%s# Facts\n\nEvery kind of thing in a design, and what can be told of "
                    "it. Nothing is required but names; what is left blank is missing, and "
                    "what rests on it is open.\n",
                    made);
    for (size_t id = 0; id < KIND_COUNT; id++) {
        const struct kind *kind = kind_at((enum kind_id)id);
        text_add_format(out,
                        "\n## %s\n\n%s%s\n\n| fact | takes | says | example |\n|---|---|---|---|\n",
                        kind->name, kind->sentence,
                        kind->count == MODEL   ? " Stands in catalogue files; has a `name`."
                        : kind->count == NAMED ? " Has a `name`."
                                               : "");
        for (size_t slot = 0; slot < kind->fact_count; slot++)
            write_fact(out, kind, slot);
    }
    return !out->is_short;
}

bool reference_write_words(struct text *out, const char *const *words, size_t count)
{
    struct word_told told;
    text_add_format(out, "%s# Words of a rule\n\n| word | says |\n|---|---|\n", made);
    for (size_t i = 0; i < count; i++) {
        if (!word_find(&told, words[i]) || strncmp(words[i], "calc.", 5) == 0)
            continue;
        text_add_format(out, "| `%s%s` | ", words[i], told.inputs != NULL ? told.inputs : "");
        add_cell(out, told.sentence);
        text_add_word(out, " |\n");
    }
    text_add_word(out,
                  "\n## Units\n\nA number times a unit is a quantity: `18 * inch`. There are:");
    for (size_t i = 0, units = 0; i < count; i++)
        if (!word_find(&told, words[i]))
            text_add_format(out, "%s `%s`", units++ > 0 ? "," : "", words[i]);
    text_add_word(out, ".\n\n## Things\n\nA fact is read by its name: `plane.slope`. A choice is "
                       "asked: `covering:is(\"slate\")`; a set of words: `listings:has(\"UL "
                       "2703\")`; a list: `modules:count()`, `modules[1]`. Every thing answers "
                       "`thing:called()` and `thing:kind_of()`, and its kind's calculators "
                       "(calculators.md). A value of the law is read by its name, too: "
                       "`book.pathway_width`; `book:edition(\"nec\")` is the edition in force.\n");
    return !out->is_short;
}

static void write_parameter(struct text *out, const struct parameter *parameter, const char *role)
{
    char low[32], high[32];
    number_write(low, sizeof low, parameter->low);
    number_write(high, sizeof high, parameter->high);
    text_add_format(out, "| %s | `%s` | ", role, parameter->name);
    if (parameter->type == AMOUNT_QUANTITY)
        text_add_format(out, "%s in %s", measure_name(parameter->measure), parameter->unit);
    else if (parameter->type == AMOUNT_WORD && parameter->words != NULL)
        for (size_t i = 0; parameter->words[i] != NULL; i++)
            text_add_format(out, "%s%s", i > 0 ? ", " : "", parameter->words[i]);
    else
        text_add_word(out, parameter->type == AMOUNT_NUMBER  ? "number"
                           : parameter->type == AMOUNT_YESNO ? "yes or no"
                           : parameter->type == AMOUNT_DATE  ? "a day"
                                                             : "word");
    if (role[0] == 'i' && (parameter->type == AMOUNT_QUANTITY || parameter->type == AMOUNT_NUMBER))
        text_add_format(out, ", %s to %s", low, high);
    text_add_format(out, " | ");
    add_cell(out, parameter->sentence);
    text_add_word(out, parameter->is_optional ? " May be left out. |\n" : " |\n");
}

bool reference_write_calculators(struct text *out)
{
    const struct calculator *one;
    text_add_format(out,
                    "%s# Calculators\n\n`plumbrule calc NAME input=value` runs a free one "
                    "like a hand calculation. A rule says `calc.NAME{input = value}`, or asks "
                    "a thing: `thing:NAME(input)`.\n",
                    made);
    for (size_t i = 0; (one = calculator_at(i)) != NULL; i++) {
        if (one->about_kind == KIND_NONE)
            text_add_format(out, "\n## calc.%s\n\n%s\n", one->name, one->sentence);
        else
            text_add_format(out, "\n## %s:%s\n\n%s\n", kind_at(one->about_kind)->name, one->name,
                            one->sentence);
        if (one->source != NULL)
            text_add_format(out, "Source: %s\n", one->source);
        text_add_word(out, "\n| | name | takes | says |\n|---|---|---|---|\n");
        for (size_t k = 0; k < one->input_count; k++)
            write_parameter(out, &one->inputs[k], "input");
        for (size_t k = 0; k < one->result_count; k++)
            write_parameter(out, &one->results[k], "result");
    }
    return !out->is_short;
}

/* "R324.6.2 (2018, 2021); R329.6.2 (2024)" */
static void write_cites(struct text *out, const struct rule_told *rule)
{
    for (size_t k = 0; k < rule->cite_count; k++) {
        const char *cite = rule->cites[k], *edition = rule->editions[k];
        bool is_same = k > 0 && strcmp(rule->cites[k - 1], cite) == 0;
        bool is_last = k + 1 == rule->cite_count || strcmp(rule->cites[k + 1], cite) != 0;
        if (!is_same)
            text_add_format(out, "%s%s", k == 0 ? "\nCited: " : "; ", cite);
        if (edition != NULL)
            text_add_format(out, "%s%s%s", is_same ? ", " : " (", edition, is_last ? ")" : "");
    }
}

bool reference_write_rule(struct text *out, const struct rule_told *rule)
{
    text_add_format(out, "%s# %s\n\n%s. About each %s.\n", made, rule->id, rule->title,
                    rule->about);
    write_cites(out, rule);
    text_add_format(out, "%s%s%s\n", rule->cite_count > 0 ? ".\n" : "",
                    rule->remedy != NULL ? "\nWhat to do: " : "",
                    rule->remedy != NULL ? rule->remedy : "");
    for (size_t k = 0; k < rule->case_count; k++)
        text_add_format(out, "%s- %s: **%s**\n", k == 0 ? "\nIts cases:\n\n" : "", rule->says[k],
                        rule->kinds[k]);
    return !out->is_short;
}

bool reference_write_rules(struct text *out, const char *book, const char *title,
                           const struct rule_told *rules, size_t count)
{
    text_add_format(
        out, "%s# Rules of %s\n\n%s.\n\n| rule | asks | about each | cases |\n|---|---|---|---|\n",
        made, book, title != NULL ? title : book);
    for (size_t i = 0; i < count; i++) {
        const char *name = strrchr(rules[i].id, '/');
        name = name != NULL ? name + 1 : rules[i].id;
        text_add_format(out, "| [%s](%s.md) | ", name, name);
        add_cell(out, rules[i].title);
        text_add_format(out, " | %s | %zu |\n", rules[i].about, rules[i].case_count);
    }
    return !out->is_short;
}
