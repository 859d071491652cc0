#include "survey.h"

#include <stdio.h>
#include <string.h>

#include "design.h"

enum { WIDTH = 100 };

/* How a line begins: by its depth, behind a comment sign where the list is an example only. */
struct margin {
    unsigned depth;
    bool is_comment;
};

static void begin(struct text *out, struct margin margin)
{
    for (unsigned i = 0; i < margin.depth; i++)
        text_add_word(out, "  ");
    if (margin.is_comment)
        text_add_word(out, "# ");
}

/* Words as a comment, on as many lines as it takes. */
static void add_comment(struct text *out, struct margin margin, const char *words)
{
    while (*words != '\0') {
        size_t most = WIDTH - 2 * margin.depth, length = strlen(words);
        if (length > most)
            for (length = most; length > 1 && words[length] != ' ';)
                length--;
        begin(out, margin);
        text_add_format(out, "# %.*s\n", (int)length, words);
        words += length;
        words += *words == ' ';
    }
}

static void describe(char *buffer, size_t size, const struct fact_row *row)
{
    char example[200], kinds[200];
    size_t length = (size_t)snprintf(buffer, size, "%s", row->sentence);
    fact_write_example(example, sizeof example, row);
    if (row->vocabulary != NULL) {
        for (size_t i = 0; i < row->vocabulary->count && length < size; i++)
            length += (size_t)snprintf(buffer + length, size - length, "%s%s",
                                       i > 0                      ? ", "
                                       : row->type == TYPE_CHOICE ? " One of: "
                                                                  : " Any of: ",
                                       row->vocabulary->words[i]);
        if (row->type == TYPE_CHOICE)
            return;
    }
    if (row->type == TYPE_REFERENCE || row->type == TYPE_REFERENCES) {
        kinds_write(kinds, sizeof kinds, row->kinds);
        snprintf(buffer + length, size - length, " The name of a %s.", kinds);
    } else if (length < size && row->type != TYPE_ONE && row->type != TYPE_LIST)
        snprintf(buffer + length, size - length, " (%s)", example);
}

/* What a house has at least one of, and what a catalogue lists, so that its item stands ready. */
static bool is_ready(enum kind_id kind)
{
    return kind_at(kind)->count == MODEL || kind == KIND_roof_plane || kind == KIND_module_row ||
           kind == KIND_circuit || kind == KIND_panel || kind == KIND_busbar;
}

static void write_facts(struct text *out, const struct kind *kind, struct margin margin);

static void write_list(struct text *out, const struct fact_row *row, struct margin margin)
{
    const struct kind *kind = kind_at(row->kind);
    struct margin inside = {margin.depth + 1, margin.is_comment || !is_ready(kind->id)};
    begin(out, margin);
    text_add_format(out, "%s:\n", row->name);
    begin(out, inside);
    text_add_format(out, "- name: %s-1\n", kind->name);
    if (inside.is_comment) { /* deeper lines stand behind the same sign */
        begin(out, inside);
        text_add_word(out, "  (its facts, each on a line of its own below the name:");
        for (size_t i = 0; i < kind->fact_count; i++)
            if (kind->facts[i].type != TYPE_INVERSE)
                text_add_format(out, "%s %s", i > 0 ? "," : "", kind->facts[i].name);
        text_add_word(out, ")\n");
        return;
    }
    write_facts(out, kind, (struct margin){margin.depth + 2, false});
}

static void write_fact(struct text *out, const struct fact_row *row, struct margin margin)
{
    char words[2000];
    describe(words, sizeof words, row);
    add_comment(out, margin, words);
    if (row->type == TYPE_LIST) {
        add_comment(out, margin, "Write none where there is none.");
        write_list(out, row, margin);
        return;
    }
    begin(out, margin);
    text_add_format(out, "%s:\n", row->name);
    if (row->type == TYPE_ONE)
        write_facts(out, kind_at(row->kind), (struct margin){margin.depth + 1, margin.is_comment});
}

static bool is_of_models(const struct fact_row *row)
{
    return row->type == TYPE_LIST && kind_at(row->kind)->count == MODEL;
}

static void write_facts(struct text *out, const struct kind *kind, struct margin margin)
{
    for (size_t i = 0; i < kind->fact_count; i++) {
        const struct fact_row *row = &kind->facts[i];
        if (row->type == TYPE_INVERSE || is_of_models(row) || strcmp(row->name, "title") == 0)
            continue;
        if (kind->count == ROOT)
            text_add_word(out, "\n");
        write_fact(out, row, margin);
    }
}

void survey_write(struct text *out, const char *title)
{
    text_add_word(
        out, "# A survey sheet: fill in what you know, with its unit, behind the colon. What "
             "stays blank is reported\n# as not given, never guessed. A value can say where it "
             "comes from: {is: 10 ft, from: measured}.\n# Equipment is named by catalogue "
             "files, which stand beside this file or in --catalogues DIR.\n");
    text_add_format(out, "title: %s\n", title);
    write_facts(out, kind_at(KIND_design), (struct margin){0, false});
}

void survey_write_catalogue(struct text *out)
{
    const struct kind *root = kind_at(KIND_design);
    text_add_word(
        out,
        "# A catalogue of equipment: copy the figures of each data sheet, with their units, "
        "behind the colons,\n# and name each model as designs will. Strike out the lists you do "
        "not need; a list takes any number\n# of models. What stays blank is reported as not "
        "given, never guessed. A value can say where it comes\n# from: {is: 440 W, from: data "
        "sheet}.\n");
    for (size_t i = 0; i < root->fact_count; i++) {
        if (!is_of_models(&root->facts[i]))
            continue;
        text_add_word(out, "\n");
        add_comment(out, (struct margin){0, false}, root->facts[i].sentence);
        write_list(out, &root->facts[i], (struct margin){0, false});
    }
}
