/* The YAML room: what it refuses, at which place and in whose words. */
#include "yaml_trial.h"

static void test_bytes(void)
{
    check_refused_bytes("a: 1\nb: x\0y\n", 12, "nul-character", 2, 5, "NUL character U+0000");
    check_refused("a: 1\nb: \x1b[2J\n", "control-character", 2, 4, "U+001B");
    check_refused("a: \x7f\n", "control-character", 1, 4, "U+007F");
    check_refused("a: \xc2\x9b\n", "control-character", 1, 4, "U+009B");
    check_refused("é: ü\xe2\x80\xa8\n", "control-character", 1, 5, "editors do not count");
    check_refused("a: x\xe2\x80\xaey\n", "control-character", 1, 5, "direction");
    check_refused("a: 1\nb: \xef\xbb\xbf\n", "byte-order-mark", 2, 4, "byte order mark");
    check_refused("name: caf\xe9 x\n", "not-utf-8", 1, 10, "0xE9 is not UTF-8");
    check_refused("a: \xed\xa0\x80\n", "not-utf-8", 1, 4, "0xED");
    check_refused("a: \"\\0\"\n", "control-character", 1, 4, "escape");
    check_refused("a: \"x\\x1bc\"\n", "control-character", 1, 4, "U+001B");
    check_refused("a: \"\\u202e\"\n", "control-character", 1, 4, "direction");
    check_refused_bytes("\xff\xfe\x61\0:\0", 6, "not-utf-8", 0, 0, "UTF-16");
    check_refused_bytes("a\0:\0 \0b\0", 8, "not-utf-8", 0, 0, "UTF-16");
    check_refused_bytes("\0a\0:\0 \0b", 8, "not-utf-8", 0, 0, "UTF-16");
    struct trial several = read_text("a: \x01\nb: \x02\xff\n");
    CHECK(several.problems.count == 3, "every bad byte is told");
    end(&several);
    char binary[4096];
    unsigned state = 1;
    for (size_t i = 0; i < sizeof binary; i++) {
        state = state * 1103515245u + 12345u;
        binary[i] = (char)(state >> 16);
    }
    check_refused_bytes(binary, sizeof binary, "not-text", 0, 0, "not a text file");
}

static void test_refused(void)
{
    check_refused("a: 1\nb: &x 2\n", "anchor", 2, 4, "anchor");
    check_refused("a: 1\nb: *x\n", "alias", 2, 4, "alias");
    check_refused("a: *important*\n", "alias", 1, 4, "quotes");
    check_refused("a: & b\n", "anchor", 1, 4, "quotes");
    check_refused("<<: {a: 1}\n", "merge-key", 1, 1, "merge key");
    check_refused("a: !!str 1\n", "tag", 1, 4, "tag");
    check_refused("a: !own [1]\n", "tag", 1, 4, "tag");
    check_refused("a: !own {b: 1}\n", "tag", 1, 4, "tag");
    check_refused("a: !o!x 1\n", "tag", 1, 4, "tag");
    check_refused("%YAML 1.1\n---\na: 1\n", "directive", 1, 1, "directive");
    check_refused("%TAG ! tag:x,2000:\n---\na: 1\n", "directive", 1, 1, "directive");
    check_refused("# x\n%TAG !a! tag", "directive", 2, 1, "directive");
    check_refused("%YAML 1.1\na: 1\n", "directive", 1, 1, "directive");
    check_refused("%OWN\n---\na: 1\n", "directive", 1, 1, "directive");
    check_refused("%YAML 3.0\n---\na: 1\n", "directive", 1, 1, "directive");
    check_refused("a: 1\n---\nb: 2\n", "second-document", 2, 1, "one");
    check_refused("a: 1\n...\n# x\n---\nb: 2\n", "second-document", 4, 1, "one");
    check_refused("a: 1\n...\nb: 2\n", "second-document", 3, 1, "one");
    check_refused("? [a, b]\n: 1\n", "key-not-text", 1, 3, "not a list");
    check_refused("{{{a: 1}: 2}: 3}: 4\n", "key-not-text", 1, 1, "not a list");
    check_refused("{a: 1}: 2\n", "key-not-text", 1, 1, "not a list");
    check_refused("? |\n  two\n  lines\n: 1\n", "key-not-text", 1, 3, "one line");
    check_refused("\"a\\nb\": 1\n", "key-not-text", 1, 1, "one line");
    check_refused("a: {: 1}\n", "key-missing", 1, 5, "no key");
    check_refused("a: 1\n: 2\n", "key-missing", 2, 1, "no key");
    check_refused("'': 2\n", "key-missing", 1, 1, "no key");
    struct trial quoted = read_text("\"<<\": 1\na: \"*x\"\nb: '&x'\nc: \"!t\"\n");
    CHECK(quoted.is_good, "in quotes every sign is text");
    end(&quoted);
    struct trial self = read_text("a: &x [*x]\n");
    CHECK(!self.is_good && !self.source && self.problems.count == 2, "an alias to itself");
    CHECK_TEXT(self.problems.items[0].code, "anchor", "its anchor first");
    CHECK(is_at(self.problems.items[1].place, 1, 8), "its alias second");
    end(&self);
    struct trial second = read_text("a: 1\n---\nb: 2\n");
    CHECK(is_at(second.problems.items[0].other, 1, 1), "where the first document began");
    end(&second);
}

static void test_repeated_keys(void)
{
    struct trial trial = read_text("limit: 1\nb:\n  x: 1\n  'x': 2\nlimit: 3\nc: {y: 1, y: 2}\n"
                                   "limit: 4\n");
    const struct problem *items = trial.problems.items;
    CHECK(!trial.is_good, "a key twice is a mistake");
    if (CHECK(trial.problems.count == 4, "all of them are told")) {
        CHECK(is_at(items[0].place, 4, 3) && is_at(items[0].other, 3, 3), "both places, nested");
        CHECK(is_at(items[1].place, 5, 1) && is_at(items[1].other, 1, 1), "both places");
        CHECK(is_at(items[2].place, 6, 11) && is_at(items[2].other, 6, 5), "both places, flow");
        CHECK(is_at(items[3].place, 7, 1) && is_at(items[3].other, 1, 1), "a third time");
        CHECK_TEXT(items[1].message, "\"limit\" is given a second time here",
                   "in a person's words");
        CHECK_TEXT(items[1].excerpt, "limit: 3", "with its line");
        CHECK_TEXT(items[1].other.file, "a.yaml", "the other place names its file");
    }
    const struct node *root = root_of(&trial);
    if (CHECK(root && root->length == 3, "the tree can still be looked at"))
        CHECK_TEXT(node_find(root, "limit")->text, "1", "and holds the first");
    end(&trial);
}

static void test_cap(void)
{
    char text[4096];
    for (int count = 20; count <= 60; count += 20) {
        size_t length = 0;
        for (int i = 0; i <= count; i++)
            length += (size_t)snprintf(text + length, sizeof text - length, "k: 1\n");
        struct trial trial = read_bytes(text, length);
        CHECK(!trial.is_good, "many mistakes are mistakes");
        if (count == 20) {
            CHECK(trial.problems.count == 20 && trial.source, "twenty are all told");
        } else {
            CHECK(trial.problems.count == 21 && !trial.source, "of more, twenty and a closing one");
            CHECK_TEXT(trial.problems.items[20].code, "too-many-problems", "which says so");
            CHECK(is_at(trial.problems.items[20].place, 0, 0), "about the whole file");
        }
        end(&trial);
    }
    struct trial bomb = read_text("a: &a [x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\n"
                                  "c: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\n"
                                  "d: &d [*c,*c,*c,*c,*c,*c,*c,*c,*c]\n");
    CHECK(!bomb.is_good && !bomb.source && bomb.problems.count == 21, "an alias bomb ends early");
    end(&bomb);
}

static void test_syntax(void)
{
    check_refused("a:\n\tb: 1\n", "tab", 2, 1, "a tab cannot indent; use spaces");
    check_refused("a:\n  b: 1\n\tc: 2\n", "tab", 3, 1, "use spaces");
    check_refused("a:\n  b: 1\n  \tc: 2\n", "tab", 3, 3, "use spaces");
    check_refused("a: |\n  x\n\ty\n", "tab", 3, 1, "use spaces");
    check_refused("-\tx\n", "tab", 1, 2, "use a space");
    check_refused("-\t- x\n", "tab", 1, 2, "use a space");
    check_refused("key:value\n", "space-missing", 1, 1, "space is missing after the colon");
    check_refused("key:value\nb: 2\n", "space-missing", 1, 1, "space is missing after the colon");
    check_refused("key\nb: 2\n", "colon-missing", 1, 1, "a key and a colon");
    check_refused("a: 1\nkey:value\nb: 2\n", "space-missing", 2, 1, "space is missing");
    check_refused("a: 1\nhalf a pair\nb: 2\n", "colon-missing", 2, 1, "a key and a colon");
    check_refused("a: \"x\nb: 1\n", "quote-not-closed", 1, 4, "never closed");
    check_refused("b: 1\na: 'x\n", "quote-not-closed", 2, 4, "never closed");
    check_refused("a: \"x\nb: \"bar\"\n", "quote-not-closed", 1, 4, "lines later");
    check_refused("a: [1, 2\n", "bracket-not-closed", 1, 4, "never closed");
    check_refused("a: [1, 2", "bracket-not-closed", 1, 4, "never closed");
    check_refused("a: 1\nb", "colon-missing", 2, 1, "a key and a colon");
    check_refused("a: [1, {b: 2,\n", "bracket-not-closed", 1, 8, "never closed");
    check_refused("a: [1, 2\nb: 3\n", "bracket-not-closed", 2, 2, "comma");
    check_refused("a: {x: 1\nb: 3\n", "bracket-not-closed", 2, 2, "comma");
    check_refused("a: {x: \"1\" \"2\"}\n", "bracket-not-closed", 1, 12, "comma");
    check_refused("a: ]\n", "value-missing", 1, 4, "before ]");
    check_refused("a: , b\n", "value-missing", 1, 4, "before ,");
    check_refused("a: [x]]\n", "text-after-value", 1, 7, "nothing may follow");
    check_refused("{a: 1}}\n", "text-after-value", 1, 7, "nothing may follow");
    check_refused("a: \"x\" y\n", "text-after-value", 1, 8, "nothing may follow");
    check_refused("a: 'it's'\n", "text-after-value", 1, 8, "nothing may follow");
    check_refused("a: b: c\n", "colon-in-text", 1, 5, "in quotes");
    check_refused("a: 1\n  b: 2\n", "bad-indentation", 2, 3, "further in");
    check_refused("a:\n    b: 1\n  c: 2\n", "bad-indentation", 3, 3, "nothing above began");
    check_refused("a:\n  - x\n  y: 1\n", "bad-indentation", 3, 3, "dash and a space");
    check_refused("a: 1\n- b\n", "bad-indentation", 2, 1, "item of a list");
    check_refused("a: - b\n", "bad-indentation", 1, 4, "line of its own");
    check_refused("a: ? b\n", "quotes-missing", 1, 4, "question mark");
    check_refused("a: @home\n", "quotes-missing", 1, 4, "begins with @");
    check_refused("a: `x`\n", "quotes-missing", 1, 4, "begins with `");
    check_refused("a: %x\n", "quotes-missing", 1, 4, "begins with %");
    check_refused("a: {b:[1]}\n", "space-missing", 1, 6, "a space and a value");
    check_refused("a: |x\n  t\n", "bad-block-text", 1, 5, "| or >");
    check_refused("a: \"\\q\"\n", "bad-escape", 1, 5, "backslash");
    check_refused("a: \"\\ud800\"\n", "bad-escape", 1, 7, "backslash");
}

/* A mistake of syntax ends the reading; what was told before it stays. */
static void test_several(void)
{
    struct trial trial = read_text("a: 1\na: 2\nb: &x 3\nc: [1, 2\n");
    if (CHECK(trial.problems.count == 3 && !trial.source, "three mistakes of three kinds")) {
        CHECK_TEXT(trial.problems.items[0].code, "duplicate-key", "in the order of the file");
        CHECK_TEXT(trial.problems.items[1].code, "anchor", "in the order of the file");
        CHECK_TEXT(trial.problems.items[2].code, "bracket-not-closed", "in the order of the file");
        CHECK(trial.problems.items[2].example != NULL, "with a right example");
    }
    end(&trial);
}

int main(void)
{
    test_bytes();
    test_refused();
    test_repeated_keys();
    test_cap();
    test_syntax();
    test_several();
    return checks_end();
}
