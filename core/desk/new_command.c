/* plumbrule new: lays out what a person then fills in. Nothing that is there is written over. */
#include "desk.h"

#include <errno.h>
#include <string.h>
#include <sys/stat.h>

#include "file.h"
#include "intake.h"
#include "laying_out.h"
#include "search.h"
#include "survey.h"

/* ---- files ------------------------------------------------------------------------------------
 */

static enum plumbrule_end refuse_file(struct desk *desk, const char *path, const char *why)
{
    problems_add(&desk->problems, PROBLEM_OUTPUT, "file-unwritten", (struct place){path, 0, 0},
                 "%s", why);
    return PLUMBRULE_NOT_WRITTEN;
}

/* A file that is not there yet. */
static enum plumbrule_end write_new(struct desk *desk, const char *path, const struct text *text)
{
    struct stat there;
    if (path == NULL || text->is_short)
        return PLUMBRULE_NO_MEMORY;
    if (lstat(path, &there) == 0)
        return refuse_file(desk, path, "this is there already, and is not written over");
    if (!file_write(path, text->bytes, text->length, &desk->problems))
        return PLUMBRULE_NOT_WRITTEN;
    text_add_format(&desk->out, "%s\n", path);
    return PLUMBRULE_STANDS;
}

static bool make_folder(struct desk *desk, const char *path)
{
    if (mkdir(path, 0777) == 0 || errno == EEXIST)
        return true;
    refuse_file(desk, path,
                errno == ENOENT
                    ? "the folder cannot be made: the one it is to stand in is not there"
                    : "the folder cannot be made");
    return false;
}

static bool is_plain(const char *name)
{
    static const char letters[] =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_";
    return name[0] != '\0' && name[0] != '-' && name[0] != '_' &&
           strspn(name, letters) == strlen(name);
}

static enum plumbrule_end refuse_name(struct desk *desk, const char *what, const char *name,
                                      const char *example)
{
    return desk_refuse(desk, "name-bad", example,
                       "the name of a %s is letters, digits and -, not '%s'", what, name);
}

/* How it ends where a book was not found or not read. */
static enum plumbrule_end end_unfound(const struct desk *desk)
{
    for (size_t i = 0; i < desk->problems.count; i++)
        if (desk->problems.items[i].weight == PROBLEM_MEMORY)
            return PLUMBRULE_NO_MEMORY;
    if (desk->problems.count == 0)
        return PLUMBRULE_NO_MEMORY;
    return desk->problems.items[0].weight == PROBLEM_COMMAND ? PLUMBRULE_COMMAND : PLUMBRULE_UNREAD;
}

/* ---- book -------------------------------------------------------------------------------------
 */

/* Reads "nec@2023,irc@2021"; each must be a book that is there, with that edition. */
static bool read_adopted(struct layout_book *layout, struct desk *desk, struct shelf *shelf)
{
    const char *at = desk_last(desk, FLAG_ADOPTS);
    while (at != NULL && *at != '\0' && layout->count < LAYOUT_BOOKS) {
        size_t length = strcspn(at, ","), name = strcspn(at, "@,");
        struct layout_adoption *one = &layout->adopts[layout->count++];
        const char *called = arena_copy(desk->arena, at, name);
        const char *edition =
            name < length ? arena_copy(desk->arena, at + name + 1, length - name - 1) : NULL;
        if (called == NULL)
            return false;
        one->book = shelf_find(shelf, called, (struct place){0}, &desk->problems);
        one->edition = edition;
        bool has = one->book == NULL || one->book->editions == NULL ||
                   (edition == NULL && one->book->editions[0] == NULL);
        for (size_t i = 0; !has && edition != NULL && one->book->editions[i] != NULL; i++)
            has = strcmp(one->book->editions[i], edition) == 0;
        if (!has)
            desk_refuse(desk, "edition-unknown", "--adopts nec@2023,irc@2021",
                        "--adopts: %s has no edition '%s'", called, edition != NULL ? edition : "");
        at += length + (at[length] == ',');
    }
    return desk->problems.count == 0;
}

static enum plumbrule_end write_book(struct desk *desk, const struct layout_book *layout,
                                     const char *folder)
{
    static void (*const writers[])(struct text *, const struct layout_book *) = {
        layout_write_book, layout_write_values, layout_write_rule, layout_write_rule_cases};
    static const char *const files[] = {"book.yaml", "values.yaml", "near-meter.lua",
                                        "cases/near-meter.yaml"};
    const char *cases = path_join(desk->arena, folder, "cases");
    const char *book = path_join(desk->arena, folder, "book.yaml");
    if (cases == NULL || book == NULL)
        return PLUMBRULE_NO_MEMORY;
    if (file_is_there(book))
        return refuse_file(desk, book, "this is there already, and is not written over");
    if (!make_folder(desk, folder) || !make_folder(desk, cases))
        return PLUMBRULE_NOT_WRITTEN;
    enum plumbrule_end end = PLUMBRULE_STANDS;
    for (size_t i = 0; end == PLUMBRULE_STANDS && i < sizeof files / sizeof files[0]; i++) {
        struct text text = {0};
        writers[i](&text, layout);
        end = write_new(desk, path_join(desk->arena, folder, files[i]), &text);
        text_free(&text);
    }
    return end;
}

static enum plumbrule_end new_book(struct desk *desk, struct shelf *shelf, const char *name)
{
    struct layout_book layout = {.name = name, .from = desk_last(desk, FLAG_ON)};
    const char *in = desk_last(desk, FLAG_IN);
    const char *folder = in != NULL ? path_join(desk->arena, in, name) : name;
    if (layout.from == NULL)
        layout.from = "2026-01-01";
    if (!is_plain(name))
        return refuse_name(desk, "book", name, "plumbrule new book my-town --adopts irc@2021");
    if (folder == NULL)
        return PLUMBRULE_NO_MEMORY;
    return read_adopted(&layout, desk, shelf) ? write_book(desk, &layout, folder)
                                              : end_unfound(desk);
}

/* ---- rule and case ----------------------------------------------------------------------------
 */

/* "town/near-meter" or "rules/towns/town/near-meter": the book, and the name behind the last slash.
 */
static const struct book *find_book_of(const char **name, struct desk *desk, struct shelf *shelf,
                                       const char *id)
{
    const char *slash = strrchr(id, '/');
    *name = NULL;
    if (slash == NULL || slash == id || !is_plain(slash + 1)) {
        desk_refuse(desk, "rule-id-bad", "my-town/near-meter",
                    "a rule is named by its book and its name, as in my-town/near-meter, not '%s'",
                    id);
        return NULL;
    }
    *name = slash + 1;
    const char *book = arena_copy(desk->arena, id, (size_t)(slash - id));
    return book != NULL ? shelf_find(shelf, book, (struct place){0}, &desk->problems) : NULL;
}

static enum plumbrule_end write_cases(struct desk *desk, const struct book *book, const char *name,
                                      bool is_of_new_rule)
{
    struct text text = {0};
    const char *id = arena_format(desk->arena, "%s/%s", book->name, name);
    const char *folder = path_join(desk->arena, book->directory, "cases");
    const char *file = arena_format(desk->arena, "cases/%s.yaml", name);
    if (id == NULL || folder == NULL || file == NULL)
        return PLUMBRULE_NO_MEMORY;
    if (!make_folder(desk, folder))
        return PLUMBRULE_NOT_WRITTEN;
    layout_write_cases(&text, id, is_of_new_rule);
    enum plumbrule_end end = write_new(desk, path_join(desk->arena, book->directory, file), &text);
    text_free(&text);
    return end;
}

static enum plumbrule_end new_rule(struct desk *desk, struct shelf *shelf, const char *id)
{
    const char *name;
    const struct book *book = find_book_of(&name, desk, shelf, id);
    const char *file = name != NULL ? arena_format(desk->arena, "%s.lua", name) : NULL;
    struct text text = {0};
    if (book == NULL || file == NULL)
        return end_unfound(desk);
    layout_write_empty_rule(&text);
    enum plumbrule_end end = write_new(desk, path_join(desk->arena, book->directory, file), &text);
    text_free(&text);
    return end == PLUMBRULE_STANDS ? write_cases(desk, book, name, true) : end;
}

static enum plumbrule_end new_case(struct desk *desk, struct shelf *shelf, const char *id)
{
    const char *name;
    const struct book *book = find_book_of(&name, desk, shelf, id);
    return book != NULL ? write_cases(desk, book, name, false) : end_unfound(desk);
}

/* ---- sheets -----------------------------------------------------------------------------------
 */

static enum plumbrule_end write_sheet(struct desk *desk, const char *name, struct text *text)
{
    const char *in = desk_last(desk, FLAG_IN);
    const char *file =
        arena_format(desk->arena, "%s%s%s.yaml", in != NULL ? in : "", in != NULL ? "/" : "", name);
    enum plumbrule_end end = write_new(desk, file, text);
    text_free(text);
    return end;
}

static enum plumbrule_end new_design(struct desk *desk, struct shelf *shelf, const char *name)
{
    (void)shelf;
    struct text text = {0};
    if (!is_plain(name))
        return refuse_name(desk, "design", name, "plumbrule new design my-house");
    survey_write(&text, name);
    return write_sheet(desk, name, &text);
}

static enum plumbrule_end new_catalogue(struct desk *desk, struct shelf *shelf, const char *name)
{
    (void)shelf;
    struct text text = {0};
    if (!is_plain(name))
        return refuse_name(desk, "catalogue", name, "plumbrule new catalogue my-equipment");
    survey_write_catalogue(&text);
    return write_sheet(desk, name, &text);
}

enum plumbrule_end run_new(struct desk *desk)
{
    static const struct {
        const char *what;
        enum plumbrule_end (*run)(struct desk *, struct shelf *, const char *);
    } kinds[] = {{"book", new_book},
                 {"rule", new_rule},
                 {"case", new_case},
                 {"design", new_design},
                 {"catalogue", new_catalogue}};
    enum { KINDS = sizeof kinds / sizeof kinds[0] };
    const char *names[KINDS];
    if (desk->operands.count != 2)
        return desk_refuse(desk, "operand", "plumbrule new book my-town --adopts nec@2023,irc@2021",
                           "say what is new and how it is called");
    if (!desk_check_date(desk))
        return PLUMBRULE_COMMAND;
    const char *what = desk->operands.items[0];
    const char *const *given = desk_book_directories(desk);
    const char *const *directories = given != NULL ? search_books(given, desk->arena) : NULL;
    for (size_t i = 0; i < KINDS; i++) {
        names[i] = kinds[i].what;
        if (strcmp(kinds[i].what, what) != 0)
            continue;
        struct shelf *shelf = directories != NULL ? shelf_new(directories) : NULL;
        if (shelf == NULL)
            return PLUMBRULE_NO_MEMORY;
        enum plumbrule_end end = kinds[i].run(desk, shelf, desk->operands.items[1]);
        shelf_free(shelf);
        return end;
    }
    const char *near = text_find_near(what, names, KINDS);
    return desk_refuse(desk, "new-unknown", NULL,
                       "new makes a book, a rule, a case, a design or a catalogue, not a '%s'%s%s",
                       what, near != NULL ? "; did you mean " : "", near != NULL ? near : "");
}
