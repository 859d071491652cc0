/* Books as they are read from their folders: every mistake at its place, and the shelf. */
#include "books_trial.h"

#define TOWN "unread/dates/book.yaml:"

/* Reads one book and compares all that is told of reading it. */
static void check_read(const char *name, const char *on, const char *should, const char *sentence)
{
    struct trial trial = resolve("unread", name, on);
    CHECK_TEXT(told(&trial), should, sentence);
    check_excerpts(&trial);
    end(&trial);
}

static void test_cards(void)
{
    check_read("card", "2022-01-01",
               "unread/card/book.yaml:2:1 unknown-key\n"
               "unread/card/book.yaml:7:1 unknown-key\n"
               "unread/card/book.yaml:8:1 unknown-key\n"
               "unread/card/book.yaml:3:15 value-empty\n"
               "unread/card/book.yaml:5:8 node-type\n"
               "unread/card/book.yaml:4:7 role-unknown\n"
               "unread/card/book.yaml:6:19 covers-unknown\n"
               "unread/card/book.yaml:6:31 covers-unknown\n",
               "what a book says of itself, all mistakes at once");
    struct trial trial = resolve("unread", "card", "2022-01-01");
    CHECK(says(&trial, "unknown-key", "did you mean 'title'?"), "a near key");
    CHECK(says(&trial, "unknown-key", "'colour'; there is: book, title"), "a far key");
    CHECK(says(&trial, "covers-unknown", "did you mean 'generator'?"), "a near thing");
    CHECK(says(&trial, "role-unknown", "model code, authority, utility, company"), "the roles");
    CHECK_TEXT(find_problem(&trial, "value-empty")->example, "maintained_by: Building Department",
               "a right example");
    CHECK(trial.is_good && trial.rulebook->book_count == 1, "what can be read is there");
    resolve_again(&trial, "roleless", "2022-01-01");
    CHECK_TEXT(told(&trial), "unread/roleless/book.yaml:1:1 key-missing\n", "a role is asked for");
    CHECK_TEXT(find_problem(&trial, "key-missing")->example, "role: authority", "with an example");
    end(&trial);
}

static void test_good_cards(void)
{
    struct trial trial = resolve("stack", "pell-harbor tidewire sunny-hull", "2022-01-01");
    const struct book_in_force *books = trial.rulebook->books;
    CHECK_TEXT(books[3].book->title, "Town of Pell Harbor, residential rooftop PV", "its title");
    CHECK_TEXT(books[3].book->maintained_by, "Building Department", "who maintains it");
    CHECK_TEXT(books[3].book->scope, "one- and two-family dwellings, roof-mounted PV", "its scope");
    CHECK_TEXT(books[3].book->covers[0], "detached building", "what it covers");
    CHECK(!books[3].book->covers[1] && !books[0].book->covers[0], "and nothing else");
    CHECK(books[0].book->role == ROLE_MODEL_CODE, "a book with editions is a model code");
    CHECK(books[1].book->role == ROLE_MODEL_CODE, "or says so");
    CHECK(books[2].book->role == ROLE_AUTHORITY && books[4].book->role == ROLE_UTILITY &&
              books[5].book->role == ROLE_COMPANY,
          "the other roles");
    CHECK_TEXT(books[0].book->editions[1], "2021", "its editions");
    CHECK(!books[0].book->editions[2] && !books[3].book->editions[0], "and no others");
    CHECK_TEXT(short_path(books[3].book->directory), "stack/towns/pell-harbor", "its folder");
    const struct declaration *declaration =
        rulebook_find_value(trial.rulebook, "ground_snow")->declaration;
    CHECK_TEXT(declaration->says, "mapped snow load on the ground", "what a value says");
    CHECK_TEXT(declaration->cite, "R2", "and where it is asked for");
    CHECK(declaration->given_above, "by whom it is given");
    CHECK_TEXT(rulebook_find_value(trial.rulebook, "exposure")->declaration->words[1], "open",
               "the words it may be");
    end(&trial);
}

static void test_dates_and_entries(void)
{
    struct trial trial = resolve("unread", "dates", "2022-01-01");
    CHECK_TEXT(told(&trial),
               TOWN "7:12 book-name-bad\n" TOWN "8:24 date-bad\n" TOWN "9:46 period-empty\n" TOWN
                    "10:5 key-missing\n" TOWN "11:5 key-missing\n" TOWN "12:5 node-type\n" TOWN
                    "14:9 node-type\n" TOWN "15:10 key-missing\n" TOWN "15:38 key-missing\n" TOWN
                    "15:71 key-missing\n" TOWN "16:74 unknown-key\n" TOWN
                    "16:62 period-empty\n" TOWN "17:9 entries-none\n" TOWN "18:3 name-bad\n" TOWN
                    "19:45 is-and-bands\n" TOWN "14:3 value-unknown\n" TOWN
                    "15:3 value-unknown\n" TOWN "16:3 value-unknown\n" TOWN
                    "17:3 value-unknown\n" TOWN "19:3 value-unknown\n",
               "adoptions and entries, all mistakes at once");
    CHECK(says(&trial, "date-bad", "'2020-02-30'"), "a day that is none");
    CHECK_TEXT(find_problem(&trial, "book-name-bad")->example,
               "- {book: irc, edition: 2021, from: 2023-01-01}", "a right example");
    check_excerpts(&trial);
    end(&trial);
}

static void test_changes(void)
{
    check_read("changes", "2022-01-01",
               "unread/changes/book.yaml:7:12 rule-id-bad\n"
               "unread/changes/book.yaml:8:5 key-missing\n"
               "unread/changes/book.yaml:10:30 file-name-bad\n"
               "unread/changes/book.yaml:11:30 file-missing\n"
               "unread/changes/book.yaml:12:5 key-missing\n"
               "unread/changes/book.yaml:14:5 key-missing\n"
               "unread/changes/book.yaml:15:115 period-empty\n"
               "unread/changes/odd name.lua:0:0 rule-name-bad\n"
               "unread/changes/2024:0:0 folder-unknown\n"
               "unread/changes/book.yaml:8:5 rule-unknown\n",
               "changes, waivers and files");
    struct trial trial = resolve("wrong", "twice", "2019-01-01");
    CHECK_TEXT(told(&trial),
               "wrong/twice/book.yaml:6:61 from-twice wrong/twice/book.yaml:6\n"
               "wrong/twice/book.yaml:10:7 from-twice wrong/twice/book.yaml:9\n"
               "wrong/twice/book.yaml:14:5 from-twice wrong/twice/book.yaml:12\n",
               "two that begin on one day cite both");
    check_excerpts(&trial);
    end(&trial);
}

static void test_two_files(void)
{
    struct trial trial = resolve("wrong", "two-files", "2022-01-01");
    CHECK_TEXT(told(&trial),
               "wrong/two-files/values.yaml:3:5 from-twice wrong/two-files/values.yaml:2\n",
               "two that begin on one day, though for two editions");
    CHECK_TEXT(value_text(&trial, "ground_snow"), "25 psf by two-files", "a value in book.yaml");
    CHECK_TEXT(value_text(&trial, "own_gap"), "1 in by two-files", "another in values.yaml");
    check_excerpts(&trial);
    end(&trial);
}

#define VALUES "unread/values/values.yaml:"

static void test_values(void)
{
    check_read(
        "values@2018", "2022-01-01",
        "unread/values/book.yaml:5:24 listed-twice\n" VALUES "1:10 key-missing\n" VALUES
        "2:18 kind-unknown\n" VALUES "3:10 key-missing\n" VALUES "4:36 stricter-unknown\n" VALUES
        "5:11 key-missing\n" VALUES "6:43 stricter-needless\n" VALUES "7:12 number-missing\n" VALUES
        "8:78 given-above-and-here\n" VALUES "9:67 edition-unknown\n" VALUES
        "10:77 unit-wrong\n" VALUES "10:104 unit-missing\n" VALUES "11:69 key-missing\n" VALUES
        "12:106 bands-order\n" VALUES "13:1 value-twice unread/values/book.yaml:6\n"
        "unread/values/book.yaml:6:10 value-unknown\n",
        "declarations, all mistakes at once");
    struct trial trial = resolve("unread", "values@2018", "2022-01-01");
    CHECK(says(&trial, "kind-unknown", "did you mean 'length'?"), "a near kind");
    CHECK_TEXT(find_problem(&trial, "unit-missing")->example, "is: 18 in", "a right example");
    CHECK_TEXT(value_text(&trial, "bad_unit"), "undecided", "what cannot be read is no number");
    end(&trial);
    check_read("more-values", "2022-01-01",
               "unread/more-values/book.yaml:7:65 true-needed\n"
               "unread/more-values/book.yaml:7:10 number-missing\n"
               "unread/more-values/book.yaml:8:35 words-needless\n"
               "unread/more-values/book.yaml:9:33 words-none\n"
               "unread/more-values/book.yaml:10:92 edition-needless\n"
               "unread/more-values/book.yaml:11:90 bands-empty\n"
               "unread/more-values/book.yaml:12:95 unit-missing\n"
               "unread/more-values/book.yaml:13:3 name-bad\n",
               "and more of them");
}

static void test_files(void)
{
    check_read("empty", "2022-01-01", "unread/empty/book.yaml:0:0 file-empty\n", "an empty file");
    check_read("list", "2022-01-01", "unread/list/book.yaml:1:1 node-type\n", "a list");
    check_read("no-file", "2022-01-01", "unread/no-file/book.yaml:0:0 file-directory\n",
               "a directory");
    check_read("repeats", "2022-01-01",
               "unread/repeats/book.yaml:2:1 duplicate-key unread/repeats/book.yaml:1\n",
               "a key twice");
    check_read("other-name", "2022-01-01", "unread/deep/other-name/book.yaml:1:7 book-name-other\n",
               "a book is called as its folder is");
    struct trial trial = resolve("unread", "no-file", "2022-01-01");
    CHECK(!trial.is_good && !trial.rulebook, "without its file there is no book");
    end(&trial);
}

/* ---- the shelf ---------------------------------------------------------------------------- */

static void test_finding(void)
{
    struct trial trial = resolve("stack", "pell-harbor", "2022-01-01");
    const struct place nowhere = {0};
    const struct book *book = shelf_find(trial.shelf, "pell-harbor", nowhere, &trial.problems);
    CHECK(book && book == shelf_find(trial.shelf, "pell-harbor", nowhere, &trial.problems),
          "a book is read once");
    const char *path =
        arena_format(trial.arena, "%s/books/stack/towns/../towns/pell-harbor//", TESTS_DIR);
    CHECK(shelf_find(trial.shelf, path, nowhere, &trial.problems) == book,
          "two ways to a folder are one book");
    CHECK(trial.problems.count == 0, "without a problem");
    static const char *const bad[] = {"", ".", "..", "pell harbor", "nothing", "./nothing", "/"};
    for (size_t i = 0; i < sizeof bad / sizeof *bad; i++)
        CHECK(!shelf_find(trial.shelf, bad[i], nowhere, &trial.problems) &&
                  trial.problems.count == i + 1 &&
                  strcmp(trial.problems.items[i].code, "book-unknown") == 0,
              "what is no book is told");
    CHECK(!shelf_find(trial.shelf, "pel-harbor", nowhere, &trial.problems), "a near name");
    CHECK(says(&trial, "book-unknown", "pel-harbor; did you mean pell-harbor?"), "is suggested");
    end(&trial);
}

static void test_paths(void)
{
    struct trial trial = resolve("stack", "green-state", "2022-01-01");
    const char *names = arena_format(trial.arena,
                                     "%s/books/shadow/first/roofcode "
                                     "%s/books/shadow/second/roofcode",
                                     TESTS_DIR, TESTS_DIR);
    resolve_again(&trial, names, "2022-01-01");
    CHECK(!trial.is_good, "two folders of one name do not go together");
    CHECK_TEXT(told(&trial),
               "shadow/second/roofcode/book.yaml:0:0 book-name-twice "
               "shadow/first/roofcode/book.yaml:0\n",
               "and both are cited");
    end(&trial);
    trial = resolve("shadow", "roofcode", "2022-01-01");
    CHECK_TEXT(trial.rulebook->books[0].book->title, "First", "the first found by name");
    end(&trial);
    /* A path of one's own goes before what lies on the shelf, also for those who adopt it. */
    trial = resolve("shadow", "roofcode", "2022-01-01");
    names = arena_format(trial.arena, "%s/books/stack/codes/roofcode@2018", TESTS_DIR);
    shelf_free(trial.shelf);
    const char **directories = arena_take(trial.arena, 3 * sizeof *directories);
    directories[0] = arena_format(trial.arena, "%s/books/shadow", TESTS_DIR);
    directories[1] = arena_format(trial.arena, "%s/books/stack", TESTS_DIR);
    trial.shelf = shelf_new(directories);
    names = arena_format(trial.arena, "%s green-state", names);
    resolve_again(&trial, names, "2022-01-01");
    CHECK(trial.is_good, "a code by its path, and a state that adopts it by name");
    CHECK_TEXT(value_text(&trial, "ridge_setback"), "12 in by roofcode", "are one stack");
    end(&trial);
}

static void test_list(void)
{
    struct trial trial = resolve("stack", "tidewire", "2022-01-01");
    static const char *const names[] = {"stack/states/green-state", "stack/towns/pell-harbor",
                                        "stack/codes/roofcode",     "stack/companies/sunny-hull",
                                        "stack/utilities/tidewire", "stack/codes/wirecode"};
    char **paths;
    size_t count;
    CHECK(shelf_list(&paths, &count, trial.shelf, trial.arena) && count == 6, "all books");
    for (size_t i = 0; i < 6 && i < count; i++)
        CHECK_TEXT(short_path(paths[i]), names[i], "by name");
    end(&trial);
    trial = resolve("shadow", "roofcode", "2022-01-01");
    CHECK(shelf_list(&paths, &count, trial.shelf, trial.arena) && count == 1, "each name once");
    CHECK_TEXT(short_path(paths[0]), "shadow/first/roofcode", "the first found");
    end(&trial);
    trial = resolve("no-such-folder", "roofcode", "2022-01-01");
    CHECK(shelf_list(&paths, &count, trial.shelf, trial.arena) && count == 0,
          "a directory that is not there holds none");
    CHECK_TEXT(told(&trial), "-:0:0 book-unknown\n", "and no book is found in it");
    end(&trial);
}

static void test_outliving(void)
{
    struct trial trial = resolve("wrong", "town loose", "2022-06-01");
    shelf_free(trial.shelf);
    trial.shelf = NULL;
    CHECK(strlen(told(&trial)) > 100, "problems outlive the shelf");
    check_excerpts(&trial);
    end(&trial);
}

int main(void)
{
    test_cards();
    test_good_cards();
    test_dates_and_entries();
    test_changes();
    test_two_files();
    test_values();
    test_files();
    test_finding();
    test_paths();
    test_list();
    test_outliving();
    return checks_end();
}
