/* Attacks on the closed room: one rule file each in tests/room/attacks. A file says what must come
 * of it: the outcome of its first finding, the problem's code, words of the problem; the line that
 * the problem must name ends in "-- here". */
#include "room_trial.h"

#include <time.h>

struct expected {
    char outcome[20], code[20];
    const char *says; /* or NULL */
    unsigned line;    /* 0: the file as a whole */
};

static struct expected read_expected(const char *text)
{
    struct expected expected = {.says = NULL};
    const char *at = strstr(text, "-- Expects: ");
    if (at == NULL || sscanf(at, "-- Expects: %19s %19s", expected.outcome, expected.code) != 2)
        return expected;
    const char *says = strstr(at, " says "), *end = strchr(at, '\n');
    if (says != NULL && says < end)
        expected.says = says + strlen(" says ");
    const char *here = strstr(text, "-- here");
    for (const char *byte = text; here != NULL && byte < here; byte++)
        expected.line += *byte == '\n';
    expected.line += here != NULL;
    return expected;
}

static bool line_begins_in(const char *sentence, const char *line)
{
    char piece[200];
    snprintf(piece, sizeof piece, "%.*s", (int)strcspn(line, "\n"), line);
    return strstr(sentence, piece) != NULL;
}

/* No address, no control character, no bad UTF-8. */
static bool is_clean(const char *text)
{
    size_t bad;
    for (const char *at = text; at != NULL && *at != '\0'; at++)
        if ((unsigned char)*at < 0x20 || *at == 0x7F)
            return false;
    return text == NULL || (strstr(text, "0x") == NULL && strstr(text, "userdata") == NULL &&
                            text_is_utf8(text, strlen(text), &bad));
}

static bool tests_are_clean(const struct test *tests, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        if (!is_clean(tests[i].what) || !is_clean(tests[i].missing.fact))
            return false;
        for (size_t k = 0; k < tests[i].option_count; k++)
            if (!is_clean(tests[i].options[k].name) ||
                !tests_are_clean(tests[i].options[k].tests, tests[i].options[k].test_count))
                return false;
    }
    return true;
}

static bool all_is_clean(const struct room_trial *trial)
{
    for (size_t i = 0; i < trial->problems.count; i++)
        if (!is_clean(trial->problems.items[i].message))
            return false;
    for (size_t i = 0; i < trial->findings.count; i++) {
        const struct finding *finding = trial->findings.items[i];
        if (!is_clean(finding->message) || !is_clean(finding->title) ||
            !tests_are_clean(finding->tests, finding->test_count))
            return false;
    }
    return true;
}

static void check_problem(const struct room_trial *trial, const struct expected *expected,
                          const char *name)
{
    if (strcmp(expected->code, "-") == 0) {
        check_that(trial->problems.count == 0, name, 0, "nothing is wrong with the rule");
        return;
    }
    if (!check_that(trial->problems.count == 1, name, (int)expected->line, "one problem")) {
        for (size_t i = 0; i < trial->problems.count; i++)
            fprintf(stderr, "    %s\n", trial->problems.items[i].message);
        return;
    }
    const struct problem *problem = &trial->problems.items[0];
    check_text(problem->code, expected->code, name, (int)expected->line, problem->message);
    check_that(problem->weight == PROBLEM_RULE, name, 0, "it is a mistake in a rule");
    if (!check_that(problem->place.line == expected->line, name, (int)expected->line,
                    "the problem names the line"))
        fprintf(stderr, "    it says line %u: %s\n", problem->place.line, problem->message);
    if (expected->says != NULL)
        check_that(line_begins_in(problem->message, expected->says), name, 0, problem->message);
}

static void try_attack(struct room_trial *trial, const char *path, const char *name,
                       const struct expected *expected)
{
    struct timespec before, after;
    alarm(120); /* a hang is a failure */
    clock_gettime(CLOCK_MONOTONIC, &before);
    room_review(trial, path);
    clock_gettime(CLOCK_MONOTONIC, &after);
    double seconds =
        (double)(after.tv_sec - before.tv_sec) + (double)(after.tv_nsec - before.tv_nsec) / 1e9;
    if (seconds > 1)
        fprintf(stderr, "%s took %.1f s\n", name, seconds);
    check_that(trial->is_done, name, 0, "the review comes to its end");
    const struct finding *finding = finding_of(trial, "room/attack", 0);
    if (check_that(finding != NULL, name, 0, "there is a finding"))
        check_text(outcome_name(finding->outcome), expected->outcome, name, 0, finding->message);
    check_problem(trial, expected, name);
    check_that(witness_passes(trial), name, 0, "the other rule runs and passes");
    check_that(all_is_clean(trial), name, 0, "no address and no raw byte comes out");
}

static void test_attacks(void)
{
    struct room_trial trial = room_open(NULL);
    char **names;
    size_t count = 0;
    CHECK(file_list(&names, &count, ROOM_DIR "attacks", ".lua", trial.arena), "the attacks");
    for (size_t i = 0; i < count; i++) {
        size_t length;
        char *text;
        const char *path = path_join(trial.arena, ROOM_DIR "attacks", names[i]);
        struct problems problems = {.arena = trial.arena};
        if (!file_read(&text, &length, path, 1 << 20, trial.arena, PROBLEM_INPUT, &problems))
            abort();
        struct expected expected = read_expected(text);
        check_that(expected.outcome[0] != '\0', names[i], 0, "the file says what comes of it");
        try_attack(&trial, path, names[i], &expected);
    }
    fprintf(stderr, "%zu attacks\n", count);
    CHECK(count >= 200, "all attacks are there");
    room_close(&trial);
}

/* ---- files that are no files of ours ---- */

#define CARD_HEAD "return { title = 'x', cite = 'y', about = 'design', check = function()"
#define CARD_TAIL " shall.be('Good', true) end }\n"

static void try_bytes(const char *bytes, size_t length, const char *outcome, const char *code,
                      unsigned line, const char *name)
{
    struct room_trial trial = room_open(NULL);
    struct expected expected = {.line = line};
    snprintf(expected.outcome, sizeof expected.outcome, "%s", outcome);
    snprintf(expected.code, sizeof expected.code, "%s", code);
    const char *path = write_rule(bytes, length);
    try_attack(&trial, path, name, &expected);
    remove(path);
    room_close(&trial);
}

static void test_bytes(void)
{
    static const struct {
        const char *name, *bytes;
        size_t length; /* 0: up to the NUL */
        const char *outcome, *code;
        unsigned line;
    } files[] = {
        {"bytecode", "\x1bLua\x54\0\x19\x93\r\n\x1a\n\4\10\10", 16, "open", "rule-not-text", 0},
        {"bytecode, no NUL", "\x1bLuaT", 0, "open", "rule-not-text", 0},
        {"NUL", CARD_HEAD "\0" CARD_TAIL, sizeof(CARD_HEAD "\0" CARD_TAIL) - 1, "open",
         "rule-not-text", 0},
        {"not UTF-8", "-- caf\xe9\n" CARD_HEAD CARD_TAIL, 0, "open", "rule-not-text", 0},
        {"escape", "-- \x1b[2J\n" CARD_HEAD CARD_TAIL, 0, "open", "rule-not-text", 0},
        {"byte order mark", "\xef\xbb\xbf" CARD_HEAD CARD_TAIL, 0, "pass", "-", 0},
        {"two byte order marks", "\xef\xbb\xbf\xef\xbb\xbf" CARD_HEAD CARD_TAIL, 0, "open",
         "rule-syntax", 1},
        {"first line of a shell", "#!/bin/sh\n" CARD_HEAD CARD_TAIL, 0, "open", "rule-syntax", 1},
        {"empty", "", 0, "open", "rule-card", 0},
        {"carriage returns", CARD_HEAD "\r" CARD_TAIL, 0, "pass", "-", 0},
        {"== behind a comment that ends in CR", CARD_HEAD " -- \r local x = 1 == 2 \n" CARD_TAIL, 0,
         "open", "rule-equals", 1},
        {"== behind \\z", CARD_HEAD " local x = 'a\\z\n ' local y = 1 == 2 -- '\n" CARD_TAIL, 0,
         "open", "rule-equals", 2},
        {"== behind \\ CR LF", CARD_HEAD " local x = 'a\\\r\n ' local y = 1 == 2 -- '\n" CARD_TAIL,
         0, "open", "rule-equals", 2},
        {"== in a text over two lines", CARD_HEAD " local x = 'a\\\n == ~=' " CARD_TAIL, 0, "pass",
         "-", 0},
    };
    for (size_t i = 0; i < sizeof files / sizeof files[0]; i++)
        try_bytes(files[i].bytes, files[i].length != 0 ? files[i].length : strlen(files[i].bytes),
                  files[i].outcome, files[i].code, files[i].line, files[i].name);
    enum { LARGE = 1 << 20 };
    char *large = malloc(LARGE);
    if (large == NULL)
        abort();
    memset(large, '-', LARGE);
    try_bytes(large, LARGE, "open", "file-large", 0, "1 MiB");
    free(large);
    struct room_trial trial = room_open(NULL);
    struct expected expected = {"open", "file-missing", NULL, 0};
    try_attack(&trial, ROOM_DIR "attacks/not-there.lua", "not there", &expected);
    struct expected folder = {"open", "file-directory", NULL, 0};
    try_attack(&trial, ROOM_DIR "attacks", "a folder", &folder);
    room_close(&trial);
}

/* The words a rule can say, all of them, beside the list that was agreed. */
static void test_words(void)
{
    struct room_trial trial = room_open(NULL);
    const char *const *words, *all = "";
    size_t count, length;
    char *agreed;
    struct problems problems = {.arena = trial.arena};
    CHECK(judge_list_words(&words, &count, trial.judge, trial.arena), "the words are listed");
    for (size_t i = 0; i < count; i++)
        if (strncmp(words[i], "calc.", 5) != 0) /* those stand in the room calc */
            all = arena_format(trial.arena, "%s%s\n", all, words[i]);
        else
            CHECK(calculator_find(KIND_NONE, words[i] + 5) != NULL, words[i]);
    if (!file_read(&agreed, &length, ROOM_DIR "words.txt", 1 << 16, trial.arena, PROBLEM_INPUT,
                   &problems))
        abort();
    CHECK_TEXT(all, agreed, "the words are those of tests/room/words.txt");
    room_close(&trial);
}

int main(void)
{
    test_attacks();
    test_bytes();
    test_words();
    return checks_end();
}
