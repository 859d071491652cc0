#include "desk.h"

#include <getopt.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "date.h"

enum { OPTION_BASE = 1000, LETTERS = 3 * FLAG_COUNT + 3 };

enum plumbrule_end desk_refuse(struct desk *desk, const char *code, const char *example,
                               const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    const char *message = arena_format_list(desk->arena, format, arguments);
    va_end(arguments);
    struct problem *problem =
        problems_add(&desk->problems, PROBLEM_COMMAND, code, (struct place){0}, "%s",
                     message != NULL ? message : "the command line is wrong");
    if (problem != NULL)
        problem->example = example;
    return PLUMBRULE_COMMAND;
}

bool words_add(struct words *words, const char *word, struct arena *arena)
{
    if (words->count + 1 >= words->capacity) { /* one more, so that the list ends in NULL */
        size_t capacity = words->capacity == 0 ? 8 : 2 * words->capacity;
        const char **items = arena_take(arena, capacity * sizeof *items);
        if (items == NULL)
            return false;
        for (size_t i = 0; i < words->count; i++)
            items[i] = words->items[i];
        words->items = items;
        words->capacity = capacity;
    }
    words->items[words->count++] = word;
    words->items[words->count] = NULL;
    return true;
}

const char *desk_last(const struct desk *desk, enum flag_id id)
{
    const struct words *given = &desk->given[id];
    return given->count > 0 ? given->items[given->count - 1] : NULL;
}

bool desk_has(const struct desk *desk, enum flag_id id)
{
    return desk->given[id].count > 0;
}

/* The command's options as getopt_long wants them. */
static void make_tables(struct option *table, char *letters, const struct command *command)
{
    size_t count = 0, at = 0;
    letters[at++] = '-'; /* operands come in order, whatever POSIXLY_CORRECT says */
    letters[at++] = ':'; /* mistakes are told by us */
    for (; command->flags[count] != FLAG_COUNT; count++) {
        const struct flag *flag = flag_at(command->flags[count]);
        table[count] =
            (struct option){flag->name, flag->argument != NULL ? required_argument : no_argument,
                            NULL, OPTION_BASE + (int)command->flags[count]};
        if (flag->letter != 0)
            letters[at++] = flag->letter;
        if (flag->letter != 0 && flag->argument != NULL)
            letters[at++] = ':';
    }
    table[count] = (struct option){0};
    letters[at] = '\0';
}

static enum flag_id flag_of(int code, const struct command *command)
{
    if (code >= OPTION_BASE)
        return (enum flag_id)(code - OPTION_BASE);
    for (size_t i = 0; command->flags[i] != FLAG_COUNT; i++)
        if (flag_at(command->flags[i])->letter == code)
            return command->flags[i];
    return FLAG_COUNT;
}

static bool refuse_unknown(struct desk *desk, const struct command *command, const char *word)
{
    const char *names[FLAG_COUNT];
    char list[300] = "";
    size_t count = 0, length = 0;
    for (; command->flags[count] != FLAG_COUNT; count++) {
        names[count] = flag_at(command->flags[count])->name;
        length += (size_t)snprintf(list + length, sizeof list - length, "%s--%s",
                                   count > 0 ? ", " : "", names[count]);
    }
    const char *bare = word + strspn(word, "-");
    char *name = arena_copy(desk->arena, bare, strcspn(bare, "="));
    const char *near = name != NULL ? text_find_near(name, names, count) : NULL;
    if (near != NULL)
        desk_refuse(desk, "option-unknown", NULL, "%s has no option %s; did you mean --%s?",
                    command->name, word, near);
    else
        desk_refuse(desk, "option-unknown", NULL, "%s has no option %s; it has %s", command->name,
                    word, list);
    return false;
}

/* getopt_long did not like it: unknown, without its argument, or with one it does not take. */
static bool refuse_option(struct desk *desk, const struct command *command, int code, int about,
                          const char *word)
{
    enum flag_id id = about != 0 ? flag_of(about, command) : FLAG_COUNT;
    if (code == ':' && id != FLAG_COUNT) {
        desk_refuse(desk, "option-argument", NULL, "--%s needs %s", flag_at(id)->name,
                    flag_at(id)->argument);
        return false;
    }
    if (id != FLAG_COUNT) {
        desk_refuse(desk, "option-argument", NULL, "--%s takes no argument", flag_at(id)->name);
        return false;
    }
    if (about != 0) {
        char letter[3] = {'-', (char)about, '\0'};
        const char *kept = arena_copy(desk->arena, letter, 2);
        return refuse_unknown(desk, command, kept != NULL ? kept : word);
    }
    return refuse_unknown(desk, command, word);
}

const char *choices_text(struct desk *desk, const struct flag *flag)
{
    const char *list = "";
    for (size_t i = 0; list != NULL && flag->choices[i] != NULL; i++)
        list = arena_format(desk->arena, "%s%s%s", list, i > 0 ? ", " : "", flag->choices[i]);
    return list != NULL ? list : "";
}

static bool is_choice(const struct flag *flag, const char *argument)
{
    for (size_t i = 0; flag->choices != NULL && flag->choices[i] != NULL; i++)
        if (strcmp(flag->choices[i], argument) == 0)
            return true;
    return flag->choices == NULL;
}

/* Else it is nothing, or another option of the command: what was meant is not there. */
static bool is_argument(const struct command *command, const char *argument)
{
    for (size_t i = 0; command->flags[i] != FLAG_COUNT; i++)
        if (strncmp(argument, "--", 2) == 0 &&
            strcmp(argument + 2, flag_at(command->flags[i])->name) == 0)
            return false;
    return argument[0] != '\0';
}

/* "marrow-bay+ours" is how compare names a stack; elsewhere each book has its own --book. */
static bool refuse_stack(struct desk *desk, const char *argument)
{
    const char *example = "--book";
    for (const char *at = argument; example != NULL && *at != '\0';) {
        size_t length = strcspn(at, "+");
        example = arena_format(desk->arena, "%s %.*s%s", example, (int)length, at,
                               at[length] != '\0' ? " --book" : "");
        at += length + (at[length] != '\0');
    }
    desk_refuse(desk, "option-argument", example, "--book names one book, not several: '%s'",
                argument);
    return false;
}

static bool take(struct desk *desk, const struct command *command, enum flag_id id,
                 const char *argument)
{
    const struct flag *flag = flag_at(id);
    if (argument != NULL && id != FLAG_ON && !is_argument(command, argument)) {
        desk_refuse(desk, "option-argument", NULL, "--%s needs %s, not '%s'", flag->name,
                    flag->argument, argument);
        return false;
    }
    if (argument != NULL && !is_choice(flag, argument)) {
        desk_refuse(desk, "option-choice", NULL, "--%s '%s' is not known; it takes %s", flag->name,
                    argument, choices_text(desk, flag));
        return false;
    }
    if (id == FLAG_BOOK && argument != NULL && strchr(argument, '+') != NULL &&
        strchr(argument, '/') == NULL)
        return refuse_stack(desk, argument);
    if (!flag->repeats && flag->argument != NULL && desk_has(desk, id)) {
        desk_refuse(desk, "option-twice", NULL, "--%s is given twice", flag->name);
        return false;
    }
    return words_add(&desk->given[id], argument != NULL ? argument : "", desk->arena);
}

static bool take_operand(struct desk *desk, const struct command *command, const char *word)
{
    if (word[0] != '\0')
        return words_add(&desk->operands, word, desk->arena);
    desk_refuse(desk, "operand-empty", NULL, "a word of the command line is empty; %s takes %s",
                command->name, command->operands[0] != '\0' ? command->operands : "none");
    return false;
}

/* A single dash before a long name: getopt would read -book as -b with the argument "ook". */
static bool is_short_of_dash(const struct command *command, const char *word)
{
    if (word == NULL || word[0] != '-' || word[1] == '-')
        return false;
    size_t length = strcspn(word + 1, "=");
    for (size_t i = 0; length > 1 && command->flags[i] != FLAG_COUNT; i++) {
        const char *name = flag_at(command->flags[i])->name;
        if (strlen(name) == length && strncmp(word + 1, name, length) == 0)
            return true;
    }
    return false;
}

bool desk_parse(struct desk *desk, const struct command *command, int argc, char **argv)
{
    struct option table[FLAG_COUNT + 1];
    char letters[LETTERS];
    int code;
    make_tables(table, letters, command);
    opterr = 0;
    optind = 0; /* begin anew */
    for (;;) {
        int before = optind;
        const char *word = argv[before > 0 ? before : 1];
        if (is_short_of_dash(command, word))
            return refuse_unknown(desk, command, word);
        code = getopt_long(argc, argv, letters, table, NULL);
        if (code == -1)
            break;
        if (code == '?' || code == ':')
            return refuse_option(desk, command, code, optopt, word);
        bool is_taken = code == 1 ? take_operand(desk, command, optarg)
                                  : take(desk, command, flag_of(code, command), optarg);
        if (!is_taken)
            return false;
    }
    for (; optind < argc; optind++)
        if (!take_operand(desk, command, argv[optind]))
            return false;
    return true;
}

static bool is_signoffs(const char *path)
{
    static const char ending[] = ".signoff.yaml";
    size_t length = strlen(path), tail = sizeof ending - 1;
    return length > tail && strcmp(path + length - tail, ending) == 0;
}

bool desk_leave_signoffs(struct desk *desk, size_t first)
{
    size_t kept = first, count = desk->operands.count;
    for (size_t i = first; i < count; i++) {
        const char *path = desk->operands.items[i];
        if (!is_signoffs(path))
            desk->operands.items[kept++] = path;
        else
            problems_add(&desk->problems, PROBLEM_NOTE, "signoffs", (struct place){0},
                         "%s holds sign-offs; they are read with their design", path);
    }
    if (kept == count)
        return true;
    desk->operands.items[kept] = NULL;
    desk->operands.count = kept;
    if (kept == first)
        desk_refuse(desk, "design-none", "plumbrule check house.yaml --book marrow-bay",
                    "no design is named");
    return kept > first && !arena_is_short(desk->arena);
}

bool desk_check_date(struct desk *desk)
{
    const char *on = desk_last(desk, FLAG_ON);
    struct date date;
    if (on == NULL || date_read(&date, on, strlen(on)))
        return true;
    desk_refuse(desk, "date-bad", "--on 2026-05-04",
                "--on '%s' is no day of the calendar written YYYY-MM-DD", on);
    return false;
}
