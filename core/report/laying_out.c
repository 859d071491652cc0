#include "laying_out.h"

#include <string.h>

static void add_adoptions(struct text *out, const struct layout_book *layout)
{
    if (layout->count == 0) {
        text_add_format(out,
                        "# adopts:            # the model codes that hold here, and since when\n"
                        "#   - {book: irc, edition: 2021, from: %s, cite: \"Ordinance 1\"}\n",
                        layout->from);
        return;
    }
    text_add_word(out, "adopts: # the model codes that hold here: put in the day and the ordinance "
                       "of each\n");
    for (size_t i = 0; i < layout->count; i++)
        text_add_format(out, "  - {book: %s, %s%s%sfrom: %s, cite: \"Ordinance 1\"}\n",
                        layout->adopts[i].book->name,
                        layout->adopts[i].edition != NULL ? "edition: " : "",
                        layout->adopts[i].edition != NULL ? layout->adopts[i].edition : "",
                        layout->adopts[i].edition != NULL ? ", " : "", layout->from);
}

/* What the codes leave to a town: without a number, what rests on it is open. */
static void add_given_above(struct text *out, const struct layout_book *layout)
{
    text_add_word(
        out, "\n# The town's own numbers. What the codes leave to you stands here: without it, "
             "what rests on it is open.\n# A number of a code is amended by name, too, with the "
             "edition that you write for:\n"
             "#   ridge_setback_small: [{from: 2026-01-01, edition: 2021, is: 36 in, cite: "
             "\"Ordinance 1\"}]\n# values:\n");
    for (size_t i = 0; i < layout->count; i++) {
        const struct book *book = layout->adopts[i].book;
        for (size_t k = 0; k < book->value_count; k++) {
            const struct declaration *declaration = book->values[k].declaration;
            if (declaration == NULL || !declaration->given_above)
                continue;
            text_add_format(out, "#   # %s\n#   %s: [{from: %s, is: %s, cite: \"Ordinance 1\"}]\n",
                            declaration->says != NULL ? declaration->says : book->values[k].name,
                            book->values[k].name, layout->from, declaration_example(declaration));
        }
    }
}

void layout_write_book(struct text *out, const struct layout_book *layout)
{
    text_add_format(out,
                    "# The book of one authority. plumbrule prove %s runs its cases; plumbrule "
                    "rules --book %s --on DAY\n# shows what is in force.\n"
                    "book: %s # as the folder is called\n"
                    "title: Town of %s, residential rooftop PV\n"
                    "maintained_by: Building Department\n"
                    "role: authority # or utility, or company: a company may only add and tighten\n"
                    "scope: one- and two-family dwellings, roof-mounted PV\n",
                    layout->name, layout->name, layout->name, layout->name);
    add_adoptions(out, layout);
    add_given_above(out, layout);
    text_add_word(
        out, "\n# A rule of a code that does not hold here, or that reads otherwise:\n"
             "# deletes:\n"
             "#   - {rule: irc/roof-layers, edition: 2021, from: 2026-01-01, cite: \"Ordinance "
             "1\"}\n"
             "# replaces:\n"
             "#   - {rule: irc/roof-layers, edition: 2021, with: layers.lua, from: 2026-01-01, "
             "cite: \"Ordinance 1\"}\n");
}

void layout_write_values(struct text *out, const struct layout_book *layout)
{
    text_add_format(
        out,
        "# Values that this book's own rules use: each is declared once, with its kind, the "
        "stricter "
        "side and a sentence.\n# An entry holds from its day until the next one begins; add a new "
        "one, and leave the old one for old designs.\n"
        "meter_distance:\n"
        "  kind: length\n"
        "  stricter: smaller\n"
        "  says: how far the utility's disconnect may stand from the meter\n"
        "  entries:\n"
        "    - {from: %s, is: 10 ft, cite: \"Ordinance 1\"}\n",
        layout->from);
}

void layout_write_rule(struct text *out, const struct layout_book *layout)
{
    (void)layout;
    text_add_word(
        out, "---@type plumbrule.Rule\n"
             "-- An example that works: change it, or delete it with its cases and its value.\n"
             "return {\n"
             "  title = \"Disconnect near the meter\",\n"
             "  cite = \"Ordinance 1\", -- the section that asks for it\n"
             "  about = \"disconnect\", -- one finding for each\n"
             "  applies = function(disconnect) return disconnect.role:is(\"utility\") end,\n"
             "  check = function(disconnect, book)\n"
             "    shall.not_exceed(\"Distance to the meter\", disconnect.distance_to_meter, "
             "book.meter_distance)\n"
             "  end,\n"
             "  remedy = \"Move the disconnect nearer to the meter.\",\n"
             "}\n");
}

void layout_write_rule_cases(struct text *out, const struct layout_book *layout)
{
    text_add_format(
        out,
        "# What the rule must say of one house and of small changes to it: one that passes, one "
        "that "
        "fails, one where a\n# fact is missing. State the limit, so that nobody can change the "
        "number unseen.\n"
        "rule: %s/near-meter\n"
        "given: quill-hollow/standing # a sample; or a path that begins in this book's folder\n"
        "on: %s\n"
        "cases:\n"
        "  - says: the disconnect stands 4 ft from the meter\n"
        "    expect: {kind: pass, about: \"disconnect:pv-disconnect\", actual: 4 ft, limit: 10 "
        "ft}\n"
        "  - says: it stands 2 ft too far away\n"
        "    with: [{thing: disconnect pv-disconnect, distance_to_meter: 12 ft}]\n"
        "    expect: {kind: fail, about: \"disconnect:pv-disconnect\", actual: 12 ft, margin: -20 "
        "%%}\n"
        "  - says: nobody has measured\n"
        "    without: [\"disconnect pv-disconnect: distance_to_meter\"]\n"
        "    expect: {kind: open, about: \"disconnect:pv-disconnect\"}\n",
        layout->name, layout->from);
}

void layout_write_empty_rule(struct text *out)
{
    text_add_word(
        out,
        "---@type plumbrule.Rule\n"
        "return {\n"
        "  title = \"What this rule asks for, in a few words\",\n"
        "  cite = \"the section that asks for it\",\n"
        "  about = \"design\", -- or a kind of thing, such as roof_plane: one finding for each\n"
        "  -- applies = function(thing, book, design) return true end,\n"
        "  check = function(thing, book, design)\n"
        "    -- shall.be_at_least(\"Clear width\", thing:clearance(\"ridge\"), "
        "book.ridge_setback_small, inch)\n"
        "    review(\"This rule is not written yet\")\n"
        "  end,\n"
        "  remedy = \"What to do where it does not hold.\",\n"
        "}\n");
}

void layout_write_cases(struct text *out, const char *rule, bool is_of_new_rule)
{
    text_add_format(out,
                    "# Cases of %s. Each says one sentence, changes little, and states what comes "
                    "of it.\nrule: %s\n"
                    "given: quill-hollow/standing # a sample; or a path that begins in this book's "
                    "folder\n"
                    "# on: 2026-08-03             # the day; else the design's own\n"
                    "cases:\n",
                    rule, rule);
    if (is_of_new_rule)
        text_add_word(out, "  - says: so far it is for a person to judge\n"
                           "    expect: {kind: review}\n");
    else
        text_add_word(out, "  - says: the house as it stands\n"
                           "    expect: {kind: } # fill in: pass, fail, open, review or "
                           "notApplicable\n");
    text_add_word(out,
                  "  # - says: the same house, a little changed\n"
                  "  #   with: [{thing: roof_plane south, layers: 3}]\n"
                  "  #   expect: {kind: fail, about: \"roof_plane:south\", actual: 3, limit: 2}\n"
                  "  # - says: nobody has told a fact that it rests on\n"
                  "  #   without: [\"roof_plane south: layers\"]\n"
                  "  #   expect: {kind: open, missing: \"roof_plane south: layers\"}\n");
}
