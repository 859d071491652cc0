/* From the first word of the command line to the exit code. */
#include "desk.h"

#include <errno.h>
#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include "file.h"
#include "report.h"

enum { COMMANDS_MOST = 32 };

static int write_stdout(const char *bytes, size_t length)
{
    while (length > 0) {
        ssize_t step = write(STDOUT_FILENO, bytes, length);
        if (step < 0 && errno == EINTR)
            continue;
        if (step < 0)
            return errno;
        bytes += step;
        length -= (size_t)step;
    }
    return 0;
}

static enum plumbrule_end refuse_stdout(struct desk *desk, int error)
{
    char reason[128];
    if (error == EPIPE) /* its reader has read all that it wanted */
        return PLUMBRULE_NOT_WRITTEN;
    if (strerror_r(error, reason, sizeof reason) != 0)
        snprintf(reason, sizeof reason, "error %d", error);
    problems_add(&desk->problems, PROBLEM_OUTPUT, "output-unwritten", (struct place){0},
                 "the output cannot be written: %s", reason);
    return PLUMBRULE_NOT_WRITTEN;
}

enum plumbrule_end desk_write(struct desk *desk, enum plumbrule_end end)
{
    if (desk->is_written)
        return end;
    const char *path = desk_last(desk, FLAG_OUTPUT);
    const char *bytes = desk->out.bytes != NULL ? desk->out.bytes : "";
    if (desk->out.is_short)
        return (enum plumbrule_end)exit_code_first((int)end, PLUMBRULE_NO_MEMORY);
    if (path != NULL)
        return file_write(path, bytes, desk->out.length, &desk->problems)
                   ? end
                   : (enum plumbrule_end)exit_code_first((int)end, PLUMBRULE_NOT_WRITTEN);
    int error = write_stdout(bytes, desk->out.length);
    return error == 0
               ? end
               : (enum plumbrule_end)exit_code_first((int)end, (int)refuse_stdout(desk, error));
}

static void refuse_command(struct desk *desk, const char *name)
{
    const char *names[COMMANDS_MOST];
    char list[200] = "";
    size_t count = 0, length = 0;
    const struct command *command;
    for (; count < COMMANDS_MOST && (command = command_at(count)) != NULL; count++) {
        names[count] = command->name;
        length += (size_t)snprintf(list + length, sizeof list - length, "%s%s",
                                   count > 0 ? ", " : "", command->name);
    }
    const char *near = text_find_near(name, names, count);
    if (name[0] == '-')
        desk_refuse(desk, "command-none", "plumbrule check house.yaml --book marrow-bay",
                    "'%s' stands where a command is needed; plumbrule --help lists them", name);
    else if (near != NULL)
        desk_refuse(desk, "command-unknown", NULL, "there is no command '%s'; did you mean '%s'?",
                    name, near);
    else
        desk_refuse(desk, "command-unknown", NULL, "there is no command '%s'; there is %s", name,
                    list);
}

static bool is_word(const char *argument, const char *word, const char *letter)
{
    return strcmp(argument, word) == 0 || strcmp(argument, letter) == 0;
}

static enum plumbrule_end run_command(struct desk *desk, int argc, char **argv)
{
    const struct command *command = command_find(argv[0]);
    if (command == NULL) {
        refuse_command(desk, argv[0]);
        return PLUMBRULE_COMMAND;
    }
    if (!desk_parse(desk, command, argc, argv))
        return desk->problems.count > 0 ? PLUMBRULE_COMMAND : PLUMBRULE_NO_MEMORY;
    if (desk_has(desk, FLAG_HELP)) {
        help_write_command(&desk->out, command);
        return PLUMBRULE_STANDS;
    }
    if (!desk_check_folders(desk))
        return desk->problems.count > 0 ? PLUMBRULE_UNREAD : PLUMBRULE_NO_MEMORY;
    return command->run(desk);
}

static enum plumbrule_end run(struct desk *desk, int argc, char **argv)
{
    if (argc < 2)
        return desk_refuse(desk, "command-none", "plumbrule check house.yaml --book marrow-bay",
                           "a command is missing; plumbrule --help lists them");
    if (is_word(argv[1], "--help", "-h"))
        help_write(&desk->out);
    else if (is_word(argv[1], "--version", "-V"))
        text_add_format(&desk->out, "plumbrule %s\n", plumbrule_version());
    else if (is_word(argv[1], "--manual", "--manual"))
        manual_write(&desk->out);
    else
        return run_command(desk, argc - 1, argv + 1);
    return PLUMBRULE_STANDS;
}

bool desk_tell(const struct problems *problems)
{
    struct text text = {0};
    report_write_problems(&text, problems, false);
    bool is_told = !text.is_short;
    if (is_told && text.bytes != NULL)
        fputs(text.bytes, stderr);
    text_free(&text);
    return is_told;
}

int desk_main(int argc, char **argv)
{
    struct desk desk = {.arena = arena_new()};
    desk.problems.arena = desk.arena;
    signal(SIGPIPE, SIG_IGN); /* a closed pipe is output that was not written */
    enum plumbrule_end end = desk.arena != NULL ? run(&desk, argc, argv) : PLUMBRULE_NO_MEMORY;
    if (desk.arena != NULL && arena_is_short(desk.arena) && !desk.is_written)
        end = PLUMBRULE_NO_MEMORY; /* whatever came of what is not there */
    if (end != PLUMBRULE_NO_MEMORY && end != PLUMBRULE_COMMAND)
        end = desk_write(&desk, end);
    bool is_short = end == PLUMBRULE_NO_MEMORY;
    bool is_told = (!is_short || desk.is_written) && desk_tell(&desk.problems);
    if (!is_told) {
        fputs("plumbrule: there is no memory left\n", stderr);
        end = (enum plumbrule_end)exit_code_first((int)end, PLUMBRULE_NO_MEMORY);
    } else if (is_short) { /* a batch goes on with the others */
        fputs("plumbrule: there was no memory for a design, or its check was cut off: "
              "see its line\n",
              stderr);
    }
    text_free(&desk.out);
    arena_free(desk.arena);
    return (int)end;
}
