/* The folders that books and catalogues are sought in. */
#include "desk.h"

#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "file.h"

/* One that was named and is passed over would leave the search to the installed ones, silently. */
static void check_folder(struct desk *desk, enum flag_id id, const char *directory)
{
    const char *name = flag_at(id)->name, *holds = id == FLAG_BOOKS ? "rulebooks" : "catalogues";
    struct place place = {.file = directory[0] != '\0' ? directory : NULL};
    struct problem *problem = NULL;
    if (!file_is_there(directory))
        problem =
            problems_add(&desk->problems, PROBLEM_INPUT, "folder-missing", place,
                         "there is no such folder; --%s takes a folder that holds %s", name, holds);
    else if (!file_is_directory(directory))
        problem = problems_add(&desk->problems, PROBLEM_INPUT, "folder-file", place,
                               "this is a file; --%s takes the folder that holds %s", name, holds);
    else if (access(directory, R_OK | X_OK) != 0)
        problem = problems_add(&desk->problems, PROBLEM_INPUT, "folder-unreadable", place,
                               "the folder may not be read; --%s takes a folder that holds %s",
                               name, holds);
    if (problem != NULL)
        problem->example = id == FLAG_BOOKS ? "--books rules" : "--catalogues equipment";
}

bool desk_check_folders(struct desk *desk)
{
    static const enum flag_id ids[] = {FLAG_BOOKS, FLAG_CATALOGUES};
    for (size_t k = 0; k < sizeof ids / sizeof ids[0]; k++)
        for (size_t i = 0; i < desk->given[ids[k]].count; i++)
            check_folder(desk, ids[k], desk->given[ids[k]].items[i]);
    return desk->problems.count + desk->problems.dropped == 0;
}

/* The environment may name several folders, with colons between. */
static bool add_environment(struct words *words, struct arena *arena)
{
    const char *at = getenv("PLUMBRULE_BOOKS");
    while (at != NULL && *at != '\0') {
        size_t length = strcspn(at, ":");
        char *one = arena_copy(arena, at, length);
        if (one == NULL || (length > 0 && !words_add(words, one, arena)))
            return false;
        at += length + (at[length] == ':');
    }
    return true;
}

const char *const *desk_book_directories(struct desk *desk)
{
    static const char *const none[] = {NULL};
    struct words words = {0};
    for (size_t i = 0; i < desk->given[FLAG_BOOKS].count; i++)
        if (!words_add(&words, desk->given[FLAG_BOOKS].items[i], desk->arena))
            return NULL;
    if (!add_environment(&words, desk->arena))
        return NULL;
    return words.count > 0 ? words.items : none;
}
