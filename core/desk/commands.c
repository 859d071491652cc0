/* The tables of commands and options. */
#include "desk.h"

#include <string.h>

static const char *const formats[] = {"text", "json", NULL};
static const char *const reports[] = {"text", "json", "ndjson", "sarif", "junit", "html", NULL};
static const char *const drawings[] = {"roof", "one-line", "panel", "labels", "loads", NULL};
static const char *const colors[] = {"auto", "always", "never", NULL};

static const struct flag flags[FLAG_COUNT] = {
    [FLAG_BOOK] = {"book", 'b', "NAME", NULL, true,
                   "A rulebook; each further one counts as adopting those before it."},
    [FLAG_ON] =
        {"on", 0, "DATE", NULL, false,
         "The day whose rules hold, or from which a new book adopts, YYYY-MM-DD; else, where there "
         "is a design, its permit application date."},
    [FLAG_JOBS] = {"jobs", 'j', "N", NULL, false,
                   "Writes one line of JSON per design, with N designs under way at once."},
    [FLAG_FROM_LIST] = {"from-list", 0, "FILE", NULL, false,
                        "Further designs, a path a line, with a line of JSON each; - is the "
                        "standard input."},
    [FLAG_FORMAT] = {"format", 'f', "FORMAT", formats, false, "How the output is written."},
    [FLAG_OUTPUT] = {"output", 'o', "FILE", NULL, false, "Where it is written."},
    [FLAG_BOOKS] =
        {"books", 0, "DIR", NULL, true,
         "A folder of rulebooks, sought before $PLUMBRULE_BOOKS and the installed ones."},
    [FLAG_CATALOGUES] = {"catalogues", 0, "DIR", NULL, true,
                         "A folder of equipment catalogues, sought after the design's own."},
    [FLAG_COLOR] = {"color", 0, "WHEN", colors, false,
                    "Colour; by itself only on a terminal, and never with NO_COLOR set."},
    [FLAG_WITH_WORKING] = {"with-working", 'w', NULL, NULL, false,
                           "With all that each finding read and calculated."},
    [FLAG_WHAT] = {"what", 0, "DRAWING", drawings, false, "Which drawing."},
    [FLAG_STIR] = {"stir", 0, NULL, NULL, false,
                   "Moves each value and each compared limit a step, and shows which moves no case "
                   "notices."},
    [FLAG_ADOPTS] = {"adopts", 0, "BOOKS", NULL, false,
                     "Model codes with their editions, as in nec@2023,irc@2021."},
    [FLAG_IN] = {"in", 0, "DIR", NULL, false, "The folder to write in; else this one."},
    [FLAG_RULE] = {"rule", 0, "ID", NULL, false, "The rule, as in irc/ridge-clearance."},
    [FLAG_ABOUT] = {"about", 0, "THING", NULL, false,
                    "The thing, as in 'roof_plane south'; else all that the rule is about."},
    [FLAG_AGAINST] = {"against", 0, "DATE", NULL, false,
                      "The day whose rules stand on the other side of the comparison."},
    [FLAG_REPORT] = {"format", 'f', "FORMAT", reports, false,
                     "How the report is written; html is one file per design."},
    [FLAG_FAILURES_ONLY] = {"failures-only", 0, NULL, NULL, false,
                            "With sarif: only what fails, for readers that pass over its kind."},
    [FLAG_HELP] = {"help", 'h', NULL, NULL, false, "This help."},
    [FLAG_VERSION] = {"version", 0, NULL, NULL, false, "The program's version."},
};

static const enum flag_id check_flags[] = {
    FLAG_BOOK,       FLAG_ON,    FLAG_REPORT,       FLAG_OUTPUT,        FLAG_BOOKS,
    FLAG_CATALOGUES, FLAG_COLOR, FLAG_WITH_WORKING, FLAG_FAILURES_ONLY, FLAG_JOBS,
    FLAG_FROM_LIST,  FLAG_HELP,  FLAG_COUNT};
static const enum flag_id books_flags[] = {FLAG_BOOKS, FLAG_FORMAT, FLAG_OUTPUT, FLAG_HELP,
                                           FLAG_COUNT};
static const enum flag_id rules_flags[] = {FLAG_BOOK,   FLAG_ON,   FLAG_BOOKS, FLAG_FORMAT,
                                           FLAG_OUTPUT, FLAG_HELP, FLAG_COUNT};
static const enum flag_id draw_flags[] = {FLAG_WHAT,       FLAG_BOOK,   FLAG_ON,   FLAG_BOOKS,
                                          FLAG_CATALOGUES, FLAG_OUTPUT, FLAG_HELP, FLAG_COUNT};
static const enum flag_id explain_flags[] = {FLAG_RULE,   FLAG_ABOUT, FLAG_BOOK,
                                             FLAG_ON,     FLAG_BOOKS, FLAG_CATALOGUES,
                                             FLAG_OUTPUT, FLAG_HELP,  FLAG_COUNT};
static const enum flag_id compare_flags[] = {FLAG_BOOK,   FLAG_ON,         FLAG_AGAINST,
                                             FLAG_BOOKS,  FLAG_CATALOGUES, FLAG_FORMAT,
                                             FLAG_OUTPUT, FLAG_HELP,       FLAG_COUNT};
static const enum flag_id calc_flags[] = {FLAG_OUTPUT, FLAG_HELP, FLAG_COUNT};
static const enum flag_id prove_flags[] = {FLAG_STIR,   FLAG_BOOKS, FLAG_CATALOGUES, FLAG_FORMAT,
                                           FLAG_OUTPUT, FLAG_HELP,  FLAG_COUNT};
static const enum flag_id new_flags[] = {FLAG_ADOPTS, FLAG_ON,   FLAG_IN,
                                         FLAG_BOOKS,  FLAG_HELP, FLAG_COUNT};
static const enum flag_id lint_flags[] = {FLAG_BOOKS, FLAG_OUTPUT, FLAG_HELP, FLAG_COUNT};
static const enum flag_id schema_flags[] = {FLAG_BOOKS, FLAG_OUTPUT, FLAG_HELP, FLAG_COUNT};

static const struct command commands[] = {
    {"check", "DESIGN…", "Holds designs against rulebooks and lists the findings.", check_flags,
     run_check},
    {"books", "", "Lists the rulebooks there are.", books_flags, run_books},
    {"rules", "", "Lists the rules in force on a day, and who adopted or changed them.",
     rules_flags, run_rules},
    {"prove", "BOOK…", "Runs the cases of rulebooks, and shows what no case proves.", prove_flags,
     run_prove},
    {"explain", "DESIGN",
     "Shows the whole working of what one rule says, and who decided about it.", explain_flags,
     run_explain},
    {"compare", "OLD NEW DESIGN… | --book NAME --on DATE --against DATE DESIGN…",
     "Shows what changed between two stacks of books (as in marrow-bay+lantern-roofworks), or "
     "between two days, and what it does to designs.",
     compare_flags, run_compare},
    {"draw", "DESIGN",
     "Draws a design as SVG; with books, what does not stand is keyed to its finding.", draw_flags,
     run_draw},
    {"new", "book NAME | rule BOOK/NAME | case BOOK/RULE | design NAME | catalogue NAME",
     "Lays out a new book, rule, file of cases, survey sheet or catalogue of equipment, with "
     "comments that teach.",
     new_flags, run_new},
    {"lint", "BOOK…", "Reads the rules of books without running them, and tells what is amiss.",
     lint_flags, run_lint},
    {"schema",
     "design | book | values | cases | result | stubs | luacheck | facts | calculators | words | "
     "rules BOOK…",
     "Prints schemas, type stubs and pages of reference, all made from the one table.",
     schema_flags, run_schema},
    {"calc", "[NAME INPUT=VALUE…]",
     "Runs one calculator as a hand calculation; alone, lists them with their inputs.", calc_flags,
     run_calc},
};

const struct command *command_at(size_t at)
{
    return at < sizeof commands / sizeof commands[0] ? &commands[at] : NULL;
}

const struct command *command_find(const char *name)
{
    const struct command *command = NULL;
    for (size_t i = 0; (command = command_at(i)) != NULL; i++)
        if (strcmp(command->name, name) == 0)
            return command;
    return NULL;
}

const struct flag *flag_at(enum flag_id id)
{
    return &flags[id];
}
