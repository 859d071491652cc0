/* Help, made from the tables. */
#include "desk.h"

#include <stdio.h>
#include <string.h>

#include "page.h"

enum { WIDTH = 80, OPTION_AT = 2, SAYS_AT = 26 };

static void write_flag(struct page *page, const struct flag *flag)
{
    char label[80], says[300];
    size_t length = 0;
    snprintf(label, sizeof label, "%s%c%s--%s%s%s", flag->letter ? "-" : "   ",
             flag->letter ? flag->letter : ' ', flag->letter ? ", " : "", flag->name,
             flag->argument ? " " : "", flag->argument ? flag->argument : "");
    length = (size_t)snprintf(says, sizeof says, "%s%s", flag->says,
                              flag->repeats ? " May be given several times." : "");
    for (size_t i = 0; flag->choices != NULL && flag->choices[i] != NULL && length < sizeof says;
         i++)
        length += (size_t)snprintf(says + length, sizeof says - length, "%s%s",
                                   i == 0 ? " One of: " : ", ", flag->choices[i]);
    page_paragraph(page, OPTION_AT, label, STYLE_PLAIN, SAYS_AT, says);
}

void help_write_command(struct text *out, const struct command *command)
{
    struct page page = {out, WIDTH, false};
    text_add_format(out, "plumbrule %s%s%s [OPTION…]\n\n", command->name,
                    command->operands[0] ? " " : "", command->operands);
    page_paragraph(&page, 0, NULL, STYLE_PLAIN, 0, command->says);
    text_add_word(out, "\nOptions\n");
    for (size_t i = 0; command->flags[i] != FLAG_COUNT; i++)
        write_flag(&page, flag_at(command->flags[i]));
}

const struct ending *ending_at(size_t at)
{
    static const struct ending endings[] = {
        {PLUMBRULE_STANDS, "nothing that must hold fails, nothing is open"},
        {PLUMBRULE_FAILS, "something that must hold fails"},
        {PLUMBRULE_OPEN, "a fact is missing, or a person must judge"},
        {PLUMBRULE_UNREAD, "a design, book or values file was not read, or no rule is in force"},
        {PLUMBRULE_RULE_BROKEN, "something is wrong in a rule file"},
        {PLUMBRULE_COMMAND, "the command line is wrong"},
        {PLUMBRULE_NO_MEMORY, "no memory, or the check of a design was cut off"},
        {PLUMBRULE_NOT_WRITTEN,
         "output was not written (without a word where a pipe's reader has gone)"},
    };
    return at < sizeof endings / sizeof endings[0] ? &endings[at] : NULL;
}

void help_write(struct text *out)
{
    struct page page = {out, WIDTH, false};
    const struct command *command;
    text_add_word(out,
                  "plumbrule COMMAND …\n\nHolds a rooftop-solar design against the rulebook of "
                  "its town.\n\nCommands (plumbrule COMMAND --help tells more)\n");
    for (size_t i = 0; (command = command_at(i)) != NULL; i++)
        page_paragraph(&page, OPTION_AT, command->name, STYLE_PLAIN, 10, command->says);
    text_add_word(out,
                  "\nHow it ends (over several designs, the first that happened of 64, 74, 70, "
                  "3, 4, 1,\n2, 0)\n");
    const struct ending *ending;
    for (size_t i = 0; (ending = ending_at(i)) != NULL; i++)
        text_add_format(out, "  %-3d %s\n", ending->code, ending->says);
    text_add_word(out, "\nFirst steps\n"
                       "  plumbrule books\n"
                       "  plumbrule check house.yaml --book marrow-bay --on 2026-05-04\n");
}
