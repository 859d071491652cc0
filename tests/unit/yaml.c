/* The YAML room: what it reads and where it says things stand. */
#include "yaml_trial.h"

static void test_tree(void)
{
    struct trial trial = read_text("b: 1\n"
                                   "a:\n"
                                   "  - x\n"
                                   "  - {y: 'q', z: \"é\", w: }\n"
                                   "c: [[], {}]\n");
    const struct node *root = root_of(&trial);
    CHECK(trial.is_good && trial.problems.count == 0, "a plain file is read without a problem");
    if (!CHECK(root && root->type == NODE_MAPPING && root->length == 3,
               "three pairs at the root")) {
        end(&trial);
        return;
    }
    CHECK_TEXT(root->items[0]->text, "b", "pairs keep the order of the file");
    CHECK_TEXT(root->items[4]->text, "c", "pairs keep the order of the file");
    CHECK(root->items[0]->is_plain, "a key without quotes is plain");
    const struct node *list = node_find(root, "a");
    CHECK(list && list->type == NODE_SEQUENCE && list->length == 2 && !list->text, "a list of two");
    CHECK(is_at(list->place, 3, 3), "a list begins at its first dash");
    CHECK(is_at(list->items[0]->place, 3, 5), "an item begins behind its dash");
    const struct node *inner = list->items[1];
    CHECK(inner->type == NODE_MAPPING && is_at(inner->place, 4, 5), "a mapping at its brace");
    CHECK(is_at(node_find(inner, "y")->place, 4, 9), "a value in a flow mapping");
    CHECK(!node_find(inner, "y")->is_plain && !node_find(inner, "z")->is_plain,
          "a text in quotes is not plain");
    CHECK_TEXT(node_find(inner, "z")->text, "é", "UTF-8 stays as it is");
    CHECK(node_find(inner, "z")->length == 2, "a length counts bytes");
    CHECK(is_at(inner->items[4]->place, 4, 22), "columns count code points");
    const struct node *nothing = node_find(inner, "w");
    CHECK(nothing && nothing->is_plain && nothing->length == 0, "no value: an empty plain scalar");
    const struct node *last = node_find(root, "c");
    CHECK(last->items[0]->length == 0 && !last->items[0]->items, "an empty list has no items");
    CHECK(last->items[1]->type == NODE_MAPPING && last->items[1]->length == 0, "an empty mapping");
    CHECK(!node_find(root, "d") && !node_find(list, "a") && !node_find(NULL, "a"),
          "what is not there is not found");
    CHECK_TEXT(root->place.file, "a.yaml", "a place names its file");
    end(&trial);
}

static void test_scalars(void)
{
    struct trial trial = read_text("lit: |\n  one\n    two\n\n  three\n"
                                   "fold: >-\n  one\n  two\n"
                                   "multi: one\n  two\n"
                                   "single: 'it''s'\n"
                                   "double: \"a\\tb\\n\\u00e9\\\"\"\n"
                                   "time: 12:30\n"
                                   "norway: no\n"
                                   "hash: a#b # comment\n"
                                   "? asked\n: answered\n");
    const struct node *root = root_of(&trial);
    if (CHECK(trial.is_good && root, "all kinds of scalars are read")) {
        CHECK_TEXT(node_find(root, "lit")->text, "one\n  two\n\nthree\n", "| keeps its lines");
        CHECK(!node_find(root, "lit")->is_plain, "a block text is not plain");
        CHECK(is_at(node_find(root, "lit")->place, 1, 6), "a block text begins at its sign");
        CHECK_TEXT(node_find(root, "fold")->text, "one two", ">- folds");
        CHECK_TEXT(node_find(root, "multi")->text, "one two", "a plain text over two lines");
        CHECK_TEXT(node_find(root, "single")->text, "it's", "single quotes");
        CHECK_TEXT(node_find(root, "double")->text, "a\tb\né\"", "double quotes");
        CHECK_TEXT(node_find(root, "time")->text, "12:30", "a colon without a space is text");
        CHECK_TEXT(node_find(root, "norway")->text, "no", "nothing is guessed");
        CHECK_TEXT(node_find(root, "hash")->text, "a#b", "a comment is no text");
        CHECK_TEXT(node_find(root, "asked")->text, "answered", "a key behind a question mark");
    }
    end(&trial);
}

static void test_line_ends(void)
{
    static const char *const texts[] = {"a: 1\n\nü: x\n  \n", "a: 1\r\n\r\nü: x\r\n",
                                        "a: 1\r\rü: x", "\xEF\xBB\xBF\x61: 1\n\nü: x"};
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) {
        struct trial trial = read_text(texts[i]);
        const struct node *root = root_of(&trial);
        if (CHECK(trial.is_good && root && root->length == 2, "each kind of line end is read")) {
            CHECK(is_at(root->items[0]->place, 1, 1), "a byte order mark takes no column");
            CHECK(is_at(root->items[3]->place, 3, 4), "lines are counted alike");
            CHECK_TEXT(root->items[1]->text, "1", "no line end in the text");
            CHECK_TEXT(source_line(trial.source, 3, trial.arena), "ü: x", "the third line");
            CHECK_TEXT(source_line(trial.source, 1, trial.arena), "a: 1", "the first line");
            CHECK_TEXT(source_line(trial.source, 2, trial.arena), "", "an empty line");
            CHECK(!source_line(trial.source, 9, trial.arena), "no such line");
            CHECK(!source_line(trial.source, 0, trial.arena), "lines count from 1");
        }
        end(&trial);
    }
}

static void test_nothing(void)
{
    static const char *const texts[] = {"",      "\n\n",       "# only\n  # comments",
                                        "---\n", "---\n...\n", "\xEF\xBB\xBF"};
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) {
        struct trial trial = read_text(texts[i]);
        CHECK(trial.is_good && trial.problems.count == 0, "a file that says nothing is no mistake");
        CHECK(trial.source && !trial.source->root, "a file that says nothing has no root");
        end(&trial);
    }
}

static void test_source_line(void)
{
    char text[1000];
    memset(text, 'x', sizeof text);
    memcpy(text + 198, "ééé", 6);
    memcpy(text + 999, "\n", 1);
    struct source source = {"a.yaml", text, sizeof text, NULL};
    struct arena *arena = arena_new();
    if (!arena)
        abort();
    char *line = source_line(&source, 1, arena);
    CHECK(line && strlen(line) == 200, "a long line is cut at 200 bytes");
    source.bytes++;
    source.length--;
    line = source_line(&source, 1, arena);
    CHECK(line && strlen(line) == 199, "… but never inside a code point");
    source.bytes = "a\x1b[31m\xff\x7f\xc2\x9b é\t.";
    source.length = strlen(source.bytes);
    CHECK_TEXT(source_line(&source, 1, arena), "a?[31m???? é\t.",
               "a line shown to a terminal carries no control character and no bad byte");
    arena_free(arena);
}

static void test_files(void)
{
    struct trial trial = {.arena = arena_new()};
    if (!trial.arena)
        abort();
    trial.problems.arena = trial.arena;
    trial.is_good =
        yaml_read_file(&trial.source, TESTS_DIR "/yaml/book.yaml", trial.arena, &trial.problems);
    const struct node *root = root_of(&trial);
    if (CHECK(trial.is_good && root && root->length == 11, "a whole book is read")) {
        CHECK_TEXT(trial.source->path, TESTS_DIR "/yaml/book.yaml", "the path as it was given");
        CHECK_TEXT(root->place.file, TESTS_DIR "/yaml/book.yaml", "and so in each place");
        const struct node *winds = node_find(node_find(root, "values"), "basic_wind_speed");
        CHECK(winds && winds->length == 2, "a list that stands in the column of its key");
        CHECK_TEXT(node_find(winds->items[1], "is")->text, "130 mph", "a value deep inside");
        CHECK(is_at(node_find(winds->items[1], "is")->place, 15, 28), "and its place");
        CHECK_TEXT(node_find(root, "scope")->text,
                   "one- and two-family dwellings, roof-mounted PV\n", "a folded text");
    }
    struct source *other;
    CHECK(!yaml_read_file(&other, TESTS_DIR "/yaml/none.yaml", trial.arena, &trial.problems) &&
              !other && trial.problems.count == 1,
          "a file that is not there: one problem");
    CHECK(!yaml_read_file(&other, TESTS_DIR "/yaml", trial.arena, &trial.problems) && !other &&
              trial.problems.count == 2,
          "a directory: one problem");
    CHECK(yaml_read_file(&other, TESTS_DIR "/yaml/design.yaml", trial.arena, &trial.problems) &&
              trial.problems.count == 2,
          "a good file after bad ones is good");
    end(&trial);
}

int main(void)
{
    test_tree();
    test_scalars();
    test_line_ends();
    test_nothing();
    test_source_line();
    test_files();
    return checks_end();
}
