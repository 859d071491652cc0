/* The manual page, made from the same tables as the help. */
#include <string.h>

#include "desk.h"

/* Words as roff takes them: a backslash, a hyphen that is one, a point at the beginning. */
static void add_words(struct text *out, const char *words)
{
    if (*words == '.' || *words == '\'')
        text_add_word(out, "\\&");
    for (; *words != '\0'; words++) {
        if (*words == '\\')
            text_add_word(out, "\\e");
        else if (*words == '-')
            text_add_word(out, "\\-");
        else
            text_add(out, words, 1);
    }
}

static void add_line(struct text *out, const char *macro, const char *words)
{
    text_add_word(out, macro);
    add_words(out, words);
    text_add_word(out, "\n");
}

static void add_flag(struct text *out, const struct flag *flag)
{
    text_add_word(out, ".TP\n.B ");
    if (flag->letter != 0)
        text_add_format(out, "\\-%c\\fR, \\fB", flag->letter);
    text_add_word(out, "\\-\\-");
    add_words(out, flag->name);
    if (flag->argument != NULL)
        text_add_format(out, " \\fI%s", flag->argument);
    text_add_word(out, "\n");
    add_line(out, "", flag->says);
    if (flag->repeats)
        text_add_word(out, "May be given several times.\n");
    for (size_t i = 0; flag->choices != NULL && flag->choices[i] != NULL; i++) {
        text_add_word(out, i == 0 ? "One of: " : ", ");
        add_words(out, flag->choices[i]);
        if (flag->choices[i + 1] == NULL)
            text_add_word(out, ".\n");
    }
}

static void add_command(struct text *out, const struct command *command)
{
    text_add_word(out, ".SS plumbrule ");
    add_words(out, command->name);
    text_add_word(out, " ");
    add_words(out, command->operands);
    text_add_word(out, "\n");
    add_line(out, "", command->says);
    for (size_t i = 0; command->flags[i] != FLAG_COUNT; i++)
        if (command->flags[i] != FLAG_HELP)
            add_flag(out, flag_at(command->flags[i]));
}

void manual_write(struct text *out)
{
    const struct command *command;
    const struct ending *ending;
    text_add_format(out, ".TH PLUMBRULE 1 \"\" \"plumbrule %s\"\n", plumbrule_version());
    text_add_word(out, ".SH NAME\nplumbrule \\- holds a rooftop\\-solar design against the "
                       "rulebook of its town\n.SH SYNOPSIS\n.B plumbrule\n.I COMMAND\n"
                       "[\\fIOPERAND\\fR ...] [\\fIOPTION\\fR ...]\n.SH COMMANDS\n");
    for (size_t i = 0; (command = command_at(i)) != NULL; i++)
        add_command(out, command);
    text_add_word(out, ".SH EXIT STATUS\nOver several designs, the first that happened of 64, 74, "
                       "70, 3, 4, 1, 2, 0.\n");
    for (size_t i = 0; (ending = ending_at(i)) != NULL; i++) {
        text_add_format(out, ".TP\n.B %d\n", ending->code);
        add_line(out, "", ending->says);
    }
    text_add_word(out, ".SH ENVIRONMENT\n.TP\n.B PLUMBRULE_BOOKS\nFolders of rulebooks, with "
                       "colons between, sought after \\-\\-books.\n.TP\n.B NO_COLOR\nWith any "
                       "value: no colour.\n.SH CAUTION\nAn aid, not an approval: local codes and "
                       "the authority having jurisdiction decide, and licensed people must "
                       "design, install and inspect.\n");
}
