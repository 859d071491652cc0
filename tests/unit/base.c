/* Memory, text, numbers, problems, names, and files that are not what they should be. */
#include <errno.h>
#include <fcntl.h>
#include <locale.h>
#include <signal.h>
#include <stdint.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>
#include "arena.h"
#include "check.h"
#include "file.h"
#include "index.h"
#include "memory_limit.h"
#include "problem.h"
#include "text.h"

static bool is_zeroed(const unsigned char *bytes, size_t length)
{
    for (size_t i = 0; i < length; i++)
        if (bytes[i] != 0)
            return false;
    return true;
}

static void check_arena(void)
{
    struct arena *arena = arena_new();
    unsigned char *first = arena_take(arena, 100), *last = NULL;
    bool are_aligned = true, are_zeroed = true;

    memset(first, 1, 100);
    for (size_t size = 0; size < 3000; size++) {
        last = arena_take(arena, size);
        are_aligned = are_aligned && (uintptr_t)last % 16 == 0;
        are_zeroed = are_zeroed && is_zeroed(last, size);
        memset(last, 0xFF, size);
    }
    CHECK(are_aligned, "pieces are aligned to 16 bytes");
    CHECK(are_zeroed, "pieces are zeroed");
    CHECK(first[99] == 1, "pieces do not overlap");
    unsigned char *large = arena_take(arena, 5000000);
    CHECK(large && is_zeroed(large, 5000000), "a piece larger than any block");
    CHECK(arena_take(arena, 0) != NULL, "nothing is a piece too");

    arena_clear(arena);
    unsigned char *again = arena_take(arena, 100);
    CHECK(again == first, "a cleared arena hands the same memory out again");
    CHECK(is_zeroed(again, 100), "and zeroed");
    large = arena_take(arena, 5000000);
    CHECK(large && is_zeroed(large, 5000000), "large blocks are kept warm");

    CHECK(!arena_is_short(arena), "memory was never short");
    CHECK(arena_take(arena, SIZE_MAX) == NULL && arena_is_short(arena), "more than there is");
    if (CAN_LIMIT_MEMORY)
        CHECK(arena_take(arena, SIZE_MAX / 2 - 64) == NULL, "more than there is, but countable");
    CHECK(arena_copy(arena, "x", SIZE_MAX) == NULL, "a copy with its NUL wraps around");
    CHECK(arena_take(arena, 8) != NULL && arena_is_short(arena), "short stays marked");
    arena_clear(arena);
    CHECK(!arena_is_short(arena), "until cleared");
    CHECK_TEXT(arena_copy(arena, "ridge", 3), "rid", "a copy ends in NUL");
    CHECK_TEXT(arena_copy(arena, NULL, 0), "", "an empty copy");
    CHECK_TEXT(arena_format(arena, "%s %d", "row", 7), "row 7", "format");
    arena_free(arena);
    arena_free(NULL);
}

static void check_growing(void)
{
    struct arena *arena = arena_new();
    int *items = NULL;
    size_t count = 0, capacity = 0;
    bool is_right = true;

    for (; count < 5000; count++) {
        items = arena_grow(arena, items, count, &capacity, sizeof *items);
        is_right = is_right && items[count] == 0;
        items[count] = (int)count;
    }
    for (size_t i = 0; i < count; i++)
        is_right = is_right && items[i] == (int)i;
    CHECK(is_right, "a growing array keeps its items, new ones are zeroed");

    size_t huge = SIZE_MAX / 8;
    CHECK(arena_grow(arena, items, huge, &huge, 8) == NULL && huge == SIZE_MAX / 8,
          "an array that cannot grow stands as it was");
    CHECK(arena_is_short(arena), "and memory is short");
    arena_free(arena);
}

/* With so little address space that malloc fails: in a process of its own. */
static void check_stretching(void)
{
    struct arena *arena = arena_new();
    size_t capacity = 0, other_capacity = 0;
    int *items = arena_grow(arena, NULL, 0, &capacity, sizeof *items), *before = items;
    for (int i = 0; i < 100; i++) {
        items = arena_grow(arena, items, (size_t)i, &capacity, sizeof *items);
        CHECK(items == before, "what was taken last grows where it stands");
        items[i] = i;
    }
    int *other = arena_grow(arena, NULL, 0, &other_capacity, sizeof *other);
    other[0] = 7;
    items = arena_grow(arena, items, capacity, &capacity, sizeof *items);
    CHECK(items != before && items[99] == 99 && other[0] == 7, "what is not last moves");
    CHECK(is_zeroed((unsigned char *)(items + 128), sizeof *items), "new room is empty");
    arena_free(arena);
}

static void check_joining(void)
{
    struct arena *arena = arena_new();
    char buffer[8] = "ab";
    CHECK_TEXT(ARENA_JOIN(arena, "main", ": ", "", "rating"), "main: rating", "joined");
    CHECK_TEXT(ARENA_JOIN(arena, ""), "", "nothing joined");
    text_append(buffer, sizeof buffer, "cd");
    CHECK_TEXT(buffer, "abcd", "appended");
    text_append(buffer, sizeof buffer, "ef°");
    CHECK_TEXT(buffer, "abcdef", "cut at a code point");
    arena_free(arena);
}

static void check_no_memory(void)
{
    pid_t child = fork();
    if (child == 0) {
        struct rlimit limit = {64 << 20, 64 << 20};
        struct arena *arena = arena_new();
        struct problems problems = {.arena = arena};
        struct text text = {0};
        size_t taken = 0;
        if (setrlimit(RLIMIT_AS, &limit) != 0)
            _exit(10);
        while (arena_take(arena, 1 << 20) && taken < 100)
            taken++;
        while (arena_take(arena, 16))
            taken++;
        bool is_short = taken < 100 + (1 << 20) && arena_is_short(arena);
        bool is_told = !problems_add(&problems, PROBLEM_INPUT, "x", (struct place){0}, "%d", 1) &&
                       problems.dropped == 1 && problems.count == 0;
        for (int i = 0; i < 30 && !text.is_short; i++) {
            char *more = malloc(4 << 20);
            if (more)
                text_add(&text, memset(more, 'x', 4 << 20), 4 << 20);
            else
                text_add_format(&text, "%100000000d", 1);
        }
        size_t length = text.length;
        text_add_word(&text, "more");
        _exit(!is_short ? 11 : !is_told ? 12 : !text.is_short || text.length != length ? 13 : 0);
    }
    int status = 0;
    CHECK(child > 0 && waitpid(child, &status, 0) == child, "the child ran");
    CHECK(WIFEXITED(status) && WEXITSTATUS(status) == 0, "no memory is told, not crashed on");
    if (WIFEXITED(status) && WEXITSTATUS(status) != 0)
        fprintf(stderr, "    exit %d\n", WEXITSTATUS(status));
}

static void check_growing_text(void)
{
    struct text text = {0};
    char should[4016];

    text_add(&text, NULL, 0);
    CHECK_TEXT(text.bytes, "", "nothing added");
    text_add_word(&text, "ridge");
    text_add_format(&text, " %d %s", 18, "in");
    CHECK_TEXT(text.bytes, "ridge 18 in", "added up");
    text_clear(&text);
    CHECK(text.length == 0 && text.bytes[0] == '\0', "cleared");
    for (int i = 0; i < 1000; i++)
        text_add_format(&text, "%04d", i);
    for (int i = 0; i < 1000; i++)
        snprintf(should + 4 * (size_t)i, 16, "%04d", i);
    CHECK_TEXT(text.bytes, should, "grown");
    text_free(&text);
    CHECK(!text.bytes && !text.length, "freed");
}

static void check_utf8(void)
{
    static const char *const bad[] = {
        "\x80",
        "\xBF",
        "\xC0\x80",
        "\xC1\xBF",
        "\xC3",
        "\xE0\x80\x80",
        "\xE2\x82",
        "\xED\xA0\x80",
        "\xED\xBF\xBF",
        "\xE0\x9F\xBF",
        "\xF0\x80\x80",
        "\xF4\x90\x80\x80",
        "\xF0\x8F\xBF\xBF",
        "\xF5\x80\x80\x80",
        "\xFF",
        "\xC3(",
        "\xE2(\xA1",
        "\xE2\x82(",
        "\xF0\x90\x80(",
    };
    static const char good[] = "é€\xED\x9F\xBF\xEE\x80\x80\xF0\x90\x80\x80\xF4\x8F\xBF\xBF a";
    size_t at = 99;

    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        char text[16];
        snprintf(text, sizeof text, "ab%s", bad[i]);
        CHECK(!text_is_utf8(text, strlen(text), &at) && at == 2, "not UTF-8, from the third byte");
    }
    CHECK(text_is_utf8(good, sizeof good - 1, &at), "the ends of all ranges");
    CHECK(text_count_points(good, sizeof good - 1) == 8, "count code points");
    CHECK(text_count_points("a\xFF\xC3", 3) == 3, "what is no UTF-8 counts one each");
    CHECK(text_is_utf8("", 0, &at) && text_count_points("", 0) == 0, "nothing");
    CHECK(text_cut("é€a", 6, 5) == 5 && text_cut("é€a", 6, 4) == 2 && text_cut("é", 2, 1) == 0 &&
              text_cut("é", 2, 9) == 2,
          "cut at code points");
    char cut[] = "a\xC3 \xE2\x82' \xF0\x9F\x8C\xA1 \xC3\xA9 \xFF \xF0\x9F\x8C";
    text_mend(cut);
    CHECK_TEXT(cut, "a ' \xF0\x9F\x8C\xA1 \xC3\xA9 \xFF ", "what was cut in two is taken out");
}

static void test_part(void)
{
    static const char *const words[] = {
        "PV source",         "PV output", "inverter output", "microinverter branch",
        "combined branches", "10 AWG",    "1-1/4 in",        "14 in"};
    enum { WORDS = sizeof words / sizeof *words };
    CHECK_TEXT(text_find_part("branch", words, WORDS), "microinverter branch", "a word of its own");
    CHECK_TEXT(text_find_part("Inverter", words, WORDS), "inverter output", "in other letters");
    CHECK_TEXT(text_find_part("comb", words, WORDS), "combined branches", "a beginning");
    CHECK_TEXT(text_find_part("mi", words, WORDS), "microinverter branch", "a short one");
    CHECK_TEXT(text_find_part("10", words, WORDS), "10 AWG", "a size without its unit");
    CHECK_TEXT(text_find_part("croinv", words, WORDS), "microinverter branch", "letters inside");
    CHECK(text_find_part("PV", words, WORDS) == NULL, "two begin so");
    CHECK(text_find_part("output", words, WORDS) == NULL, "two hold it");
    CHECK(text_find_part("branche", words, WORDS) != NULL, "letters of one");
    CHECK(text_find_part("so", words, WORDS) == NULL, "two letters inside are nothing");
    CHECK(text_find_part("c", words, WORDS) == NULL, "one letter is no beginning");
    CHECK(text_find_part("", words, WORDS) == NULL, "nothing is no part");
    CHECK(text_find_part("PV source circuit", words, WORDS) == NULL, "more than any");
}

static void check_nearness(void)
{
    static const char *const words[] = {"pitch", "slope", "azimuth", "spacing", "span"};

    CHECK(text_distance("slope", "slope", 3) == 0, "the same");
    CHECK(text_distance("slope", "slpoe", 3) == 1, "two swapped are one edit");
    CHECK(text_distance("slope", "slop", 3) == 1 && text_distance("slop", "slope", 3) == 1, "one");
    CHECK(text_distance("kitten", "sitting", 5) == 3, "three edits");
    CHECK(text_distance("kitten", "sitting", 2) == 3, "not more than the limit and one");
    CHECK(text_distance("", "abc", 5) == 3 && text_distance("abc", "", 5) == 3, "from nothing");
    CHECK(text_distance("a", "abcdefgh", 2) == 3, "far apart by length");
    CHECK_TEXT(text_find_near("azimut", words, 5), "azimuth", "near");
    CHECK_TEXT(text_find_near("spacign", words, 5), "spacing", "swapped");
    CHECK(text_find_near("ridge", words, 5) == NULL, "none is near");
    CHECK_TEXT(text_find_near("AZIMUTH", words, 5), "azimuth", "in other letters");
    CHECK(text_find_near("E", (const char *[]){"B", "C"}, 2) == NULL, "a letter is no misspelling");
    CHECK_TEXT(text_find_near("c", (const char *[]){"B", "C"}, 2), "C", "but in the other case");
    static const char *const sizes[] = {"2x4", "2x8", "2x10", "10 AWG", "14 AWG"};
    CHECK_TEXT(text_find_near("2x9", sizes, 5), "2x8", "the nearest by number, of two the first");
    CHECK_TEXT(text_find_near("2x11", sizes, 5), "2x10", "the nearest by number");
    CHECK_TEXT(text_find_near("13 awg", sizes, 5), "14 AWG", "with its unit");
    CHECK(text_find_near("3x9", sizes, 5) == NULL, "another beginning");
    static const char *const pairs[] = {"metal shingle", "rake_setback", "one-family dwelling",
                                        "installer_license", "No. 2"};
    CHECK(text_find_near("asphalt shingle", pairs, 5) == NULL, "another word before a shared one");
    CHECK(text_find_near("ridge_setback", pairs, 5) == NULL, "and of a name");
    CHECK_TEXT(text_find_near("metl shingle", pairs, 5), "metal shingle", "a slip in one word");
    CHECK_TEXT(text_find_near("one family dwelling", pairs, 5), "one-family dwelling", "a hyphen");
    CHECK_TEXT(text_find_near("installer_licence", pairs, 5), "installer_license", "one letter");
    CHECK_TEXT(text_find_near("No 2", pairs, 5), "No. 2", "a point left out of a short word");
    test_part();
    CHECK(text_find_near("spat", words, 0) == NULL, "no words");
    char word[300];
    memset(word, 'x', 299);
    word[299] = '\0';
    CHECK(text_find_near(word, words, 5) == NULL, "a word of 299 letters");
    CHECK(text_distance(word, word, 3) == 0, "is the same as itself");
}

static void check_number(const char *text, double should)
{
    double number = -99;

    CHECK(number_read(&number, text, strlen(text)) && number == should, text);
}

static void check_numbers(void)
{
    static const char *const bad[] = {
        "",
        " 1",
        "1 ",
        "+",
        "-",
        ".",
        ".5",
        "5.",
        "1e",
        "1e+",
        "1.e3",
        "nan",
        "inf",
        "0x10",
        "1,5",
        "1_0",
        "--1",
        "+-1",
        "1e5.",
        "infinity",
        "1e309",
        "-1e400",
        "1e-400",
        "1e-310",
        "1.5.2",
        "1f",
        "1d",
        "١",
        "1e99999999999999999999",
    };
    double number;
    char digits[80];

    check_number("0", 0);
    check_number("-0.0", 0);
    check_number("+18", 18);
    check_number("0018", 18);
    check_number("52.083", 52.083);
    check_number("1e3", 1000);
    check_number("1E+3", 1000);
    check_number("-2.5e-3", -0.0025);
    check_number("1.7976931348623157e308", 1.7976931348623157e308);
    check_number("0e999", 0);
    check_number("0.1", 0.1);
    check_number("9007199254740993", 9007199254740992.0);
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++)
        CHECK(!number_read(&number, bad[i], strlen(bad[i])), bad[i]);
    CHECK(number_read(&number, "18x", 2) && number == 18, "the length counts, not the NUL");
    CHECK(!number_read(&number, "1\0", 2), "NUL is no digit");
    memset(digits, '3', sizeof digits);
    CHECK(number_read(&number, digits, 64), "64 digits");
    CHECK(!number_read(&number, digits, 65), "65 are too long");
    CHECK(number_length("18in", 4) == 2 && number_length("2e3V", 4) == 3 &&
              number_length("2eV", 3) == 1 && number_length("in", 2) == 0 &&
              number_length("3.m", 3) == 1 && number_length("-4/12", 5) == 2,
          "the number a text begins with");
}

/* Decimals of up to 15 digits, read as exactly as the C library reads them. */
static void check_short_numbers(void)
{
    uint64_t state = 88172645463325252u;

    for (int i = 0; i < 20000; i++) {
        char text[40];
        double number = 0;
        state = state * 6364136223846793005u + 1442695040888963407u;
        int behind = (int)(state >> 33) % 16;
        snprintf(text, sizeof text, "%.*f", behind, (double)(state >> 20) / pow(10, i % 16));
        if (!number_read(&number, text, strlen(text)) || number != strtod(text, NULL))
            CHECK(false, text);
    }
    CHECK(true, "all were read right");
}

static void check_number_written(double number, const char *should)
{
    char text[32];

    number_write(text, sizeof text, number);
    CHECK_TEXT(text, should, should);
}

static void check_numbers_written(void)
{
    char text[32];

    check_number_written(0, "0");
    check_number_written(-0.0, "0");
    check_number_written(18, "18");
    check_number_written(-23, "-23");
    check_number_written(0.1 + 0.2, "0.3");
    check_number_written(1.0 / 3, "0.333333333333");
    check_number_written(2.0 / 3, "0.666666666667");
    check_number_written(9315, "9315");
    check_number_written(52.0833, "52.0833");
    check_number_written(1e-5, "0.00001");
    check_number_written(1.25e-5, "0.0000125");
    check_number_written(1e-6, "1e-6");
    check_number_written(-1.5e-7, "-1.5e-7");
    check_number_written(999999999999.6, "1000000000000");
    check_number_written(123456789012345, "123456789012000");
    check_number_written(1e14, "100000000000000");
    check_number_written(1e15, "1e15");
    check_number_written(1.5e300, "1.5e300");
    check_number_written(-1.23456789012e-300, "-1.23456789012e-300");
    number_write_digits(text, sizeof text, 52.0833, 3);
    CHECK_TEXT(text, "52.1", "three digits");
    number_write_digits(text, sizeof text, 99.96, 3);
    CHECK_TEXT(text, "100", "rounded up past a digit");
    number_write_digits(text, sizeof text, 9315, 2);
    CHECK_TEXT(text, "9300", "fewer digits than before the point");
    number_write_digits(text, sizeof text, 7, 99);
    CHECK_TEXT(text, "7", "twelve digits at most");
    for (double number = 1.23456789e-12; number < 1e20; number *= 1.37) {
        double back = 0;
        number_write(text, sizeof text, number);
        CHECK(number_read(&back, text, strlen(text)) && fabs(back - number) <= 5.01e-12 * number,
              text);
    }
}

/* The digits are those that the C library rounds to, however the number was made: random bits, few
 * decimals, halves of the last digit, neighbours of powers of ten. */
static void check_digits_against_printf(void)
{
    uint64_t state = 88172645463325252U;
    long apart = 0;
    for (long i = 0; i < 300000; i++) {
        double number = 0, back = 0;
        char text[32], library[64];
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        uint64_t bits = state;
        int most = 1 + (int)(bits >> 8 & 0xFF) % 12, power = (int)(bits >> 16 & 0xFF) % 24;
        if (i % 4 == 0)
            memcpy(&number, &bits, sizeof number);
        else if (i % 4 == 1)
            number = (double)(bits >> 44) / 1000;
        else if (i % 4 == 2)
            number = ((double)(bits >> 47) + 0.5) / pow(10, power % 8);
        else
            number = pow(10, power - 8) * (1 + ((int)(bits >> 60) - 8) * 0x1p-53);
        if (!isfinite(number) || fabs(number) > 1e300 || fabs(number) < 1e-300)
            continue;
        number_write_digits(text, sizeof text, number, most);
        snprintf(library, sizeof library, "%.*e", most - 1, number);
        apart += !number_read(&back, text, strlen(text)) || back != strtod(library, NULL);
    }
    CHECK(apart == 0, "digits as the library rounds them");
}

/* A host may have set a locale that writes a comma. */
static void check_locale(void)
{
    static const char *const names[] = {"de_DE.UTF-8", "fr_FR.UTF-8", "de_DE.utf8", "C.UTF-8"};

    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++)
        if (setlocale(LC_ALL, names[i])) {
            check_number("1.5", 1.5);
            check_number_written(-0.0125, "-0.0125");
        }
    setlocale(LC_ALL, "C");
}

static void check_problems(void)
{
    struct arena *arena = arena_new();
    struct problems problems = {.arena = arena};
    struct place place = {"roof.yaml", 3, 7};

    struct problem *one =
        problems_add(&problems, PROBLEM_INPUT, "unit-missing", place, "%s has no unit", "18");
    CHECK(one && one->weight == PROBLEM_INPUT && one->place.line == 3, "a problem has its place");
    CHECK_TEXT(one->message, "18 has no unit", "and its sentence");
    one->example = "18 in";
    for (int i = 0; i < 100; i++)
        problems_add(&problems, PROBLEM_NOTE, "note", place, "%d", i);
    CHECK(problems.count == 101 && problems.dropped == 0, "all are kept");
    CHECK_TEXT(problems.items[0].example, "18 in", "completed ones too");
    CHECK_TEXT(problems.items[100].message, "99", "in the order in which they came");
    arena_free(arena);
}

static void check_index(void)
{
    struct arena *arena = arena_new();
    struct index index = {.arena = arena};
    bool are_found = true;

    CHECK(index_find(&index, "slope") == NULL, "an empty index");
    for (int i = 0; i < 3000; i++) {
        char *name = arena_format(arena, "name-%d", i);
        are_found = are_found && index_find(&index, name) == NULL;
        are_found = are_found && index_add(&index, name, name) && index_find(&index, name) == name;
    }
    for (int i = 0; i < 3000; i++) {
        const char *name = arena_format(arena, "name-%d", i);
        const char *thing = index_find(&index, name);
        are_found = are_found && thing && strcmp(thing, name) == 0;
    }
    CHECK(are_found && index.count == 3000, "each of 3000 names leads to its own thing");
    CHECK(index_find(&index, "name-3000") == NULL && index_find(&index, "") == NULL, "no other");
    arena_free(arena);
}

/* What stands in a folder of the test's own. */
struct folder {
    struct arena *arena;
    struct problems problems;
    char path[64];
};

static char *inside(struct folder *folder, const char *name)
{
    return path_join(folder->arena, folder->path, name);
}

/* The last problem told, and forgotten. */
static const struct problem *told(struct folder *folder)
{
    static const struct problem none = {.code = "nothing was told", .message = ""};

    if (folder->problems.count == 0)
        return &none;
    return &folder->problems.items[--folder->problems.count];
}

static bool can_read(struct folder *folder, const char *path, size_t limit, const char *should)
{
    char *bytes = NULL;
    size_t length = 0;

    return file_read(&bytes, &length, path, limit, folder->arena, PROBLEM_INPUT,
                     &folder->problems) &&
           length == strlen(should) && memcmp(bytes, should, length + 1) == 0;
}

static void check_refused(struct folder *folder, const char *path, size_t limit, const char *code)
{
    char *bytes = NULL;
    size_t length = 0;

    CHECK(!file_read(&bytes, &length, path, limit, folder->arena, PROBLEM_INPUT, &folder->problems),
          code);
    const struct problem *problem = told(folder);
    CHECK_TEXT(problem->code, code, problem->message);
    CHECK(problem->weight == PROBLEM_INPUT && problem->place.file == path &&
              strstr(problem->message, path) == NULL,
          "the place is not in the sentence");
}

static void check_reading(struct folder *folder)
{
    char *path = inside(folder, "roof.yaml"), *pipe = inside(folder, "pipe");

    CHECK(file_write(path, "slope: 4/12\n", 12, &folder->problems), "write");
    CHECK(can_read(folder, path, 100, "slope: 4/12\n"), "and read again");
    CHECK(can_read(folder, path, 12, "slope: 4/12\n"), "exactly as large as allowed");
    check_refused(folder, path, 11, "file-large");
    check_refused(folder, inside(folder, "none.yaml"), 100, "file-missing");
    check_refused(folder, inside(folder, "roof.yaml/x"), 100, "file-missing");
    check_refused(folder, folder->path, 100, "file-directory");
    CHECK(mkfifo(pipe, 0600) == 0, "a pipe");
    check_refused(folder, pipe, 100, "file-special");
    check_refused(folder, "/dev/zero", 100, "file-special");
    CHECK(file_write(path, "", 0, &folder->problems) && can_read(folder, path, 0, ""), "empty");

    CHECK(chmod(path, 0) == 0 && chmod(folder->path, 0755) == 0, "not readable");
    bool is_root = geteuid() == 0; /* may read everything, so steps aside */
    if (is_root)
        CHECK(seteuid(65534) == 0, "become nobody");
    check_refused(folder, path, 100, "file-unreadable");
    if (is_root)
        CHECK(seteuid(0) == 0, "and come back");
    CHECK(chmod(path, 0600) == 0 && file_is_there(path) && file_is_there(folder->path), "there");
    CHECK(!file_is_there(pipe) && !file_is_there(inside(folder, "none")), "not there");
    CHECK(file_is_directory(folder->path) && !file_is_directory(path), "a directory");
    unlink(pipe);
}

/* How many names stand in the folder that end so? */
static size_t count_names(struct folder *folder, const char *ending)
{
    char **names = NULL;
    size_t count = 99;

    CHECK(file_list(&names, &count, folder->path, ending, folder->arena), "list");
    return count;
}

static void check_listing(struct folder *folder)
{
    char **names = NULL;
    size_t count = 0;
    static const char *const files[] = {"b.lua", "a.lua", "B.lua", "a-1.lua", "x.txt"};

    for (size_t i = 0; i < 5; i++)
        CHECK(file_write(inside(folder, files[i]), "", 0, &folder->problems), files[i]);
    CHECK(mkdir(inside(folder, "cases"), 0700) == 0, "a directory");
    CHECK(mkdir(inside(folder, "dir.lua"), 0700) == 0, "a directory that is called like a file");
    CHECK(file_list(&names, &count, folder->path, ".lua", folder->arena) && count == 4, "four");
    CHECK_TEXT(names[0], "B.lua", "in byte order");
    CHECK_TEXT(names[1], "a-1.lua", "in byte order");
    CHECK_TEXT(names[2], "a.lua", "in byte order");
    CHECK(file_list(&names, &count, folder->path, NULL, folder->arena) && count == 2, "two");
    CHECK_TEXT(names[0], "cases", "directories alone");
    CHECK(!file_list(&names, &count, inside(folder, "none"), NULL, folder->arena), "no directory");
    CHECK(!file_list(&names, &count, inside(folder, "x.txt"), NULL, folder->arena), "a file");
}

static void check_unwritten(struct folder *folder, const char *path, int error)
{
    size_t names = count_names(folder, "");

    CHECK(!file_write(path, "new", 3, &folder->problems), path);
    const struct problem *problem = told(folder);
    CHECK_TEXT(problem->code, "file-unwritten", path);
    CHECK(problem->weight == PROBLEM_OUTPUT && strstr(problem->message, strerror(error)) != NULL,
          problem->message);
    CHECK(count_names(folder, "") == names, "nothing half-written stays");
}

static void check_writing(struct folder *folder)
{
    char *path = inside(folder, "out.json"), *link = inside(folder, "link.json");
    struct stat about;
    struct rlimit old, small = {1, 1};

    CHECK(file_write(path, "old", 3, &folder->problems) && chmod(path, 0640) == 0, "write");
    CHECK(symlink(path, link) == 0, "a link");
    CHECK(file_write(link, "newer", 5, &folder->problems), "write through a link");
    CHECK(lstat(link, &about) == 0 && S_ISLNK(about.st_mode), "the link stays");
    CHECK(can_read(folder, path, 99, "newer"), "the file behind it is new");
    CHECK(stat(path, &about) == 0 && (about.st_mode & 0777) == 0640, "with its rights");

    check_unwritten(folder, "/dev/full", ENOSPC);
    check_unwritten(folder, folder->path, EISDIR);
    check_unwritten(folder, inside(folder, "none/out.json"), ENOENT);
    check_unwritten(folder, inside(folder, "x.txt/out.json"), ENOTDIR);
    CHECK(file_write("/dev/null", "gone", 4, &folder->problems), "a device is written directly");
    CHECK(stat("/dev/null", &about) == 0 && S_ISCHR(about.st_mode), "and not replaced");

    signal(SIGXFSZ, SIG_IGN); /* a full disk, played by a limit of one byte a file */
    getrlimit(RLIMIT_FSIZE, &old);
    small.rlim_max = old.rlim_max;
    CHECK(setrlimit(RLIMIT_FSIZE, &small) == 0, "limit");
    check_unwritten(folder, path, EFBIG);
    CHECK(setrlimit(RLIMIT_FSIZE, &old) == 0, "no limit");
    CHECK(can_read(folder, path, 99, "newer"), "the old file stands");
}

static void check_paths(struct folder *folder)
{
    struct arena *arena = folder->arena;

    CHECK_TEXT(path_join(arena, "rules", "nec"), "rules/nec", "joined");
    CHECK_TEXT(path_join(arena, "rules/", "nec"), "rules/nec", "one slash");
    CHECK_TEXT(path_join(arena, "/", "nec"), "/nec", "at the root");
    CHECK_TEXT(path_beside(arena, "a/b.yaml", "c"), "a/c", "in the same directory");
    CHECK_TEXT(path_beside(arena, "b.yaml", "c"), "c", "in the one we stand in");
    CHECK_TEXT(path_beside(arena, "/b.yaml", "c"), "/c", "in the root");
}

static void remove_folder(struct folder *folder)
{
    char command[100];

    snprintf(command, sizeof command, "rm -r '%s'", folder->path);
    CHECK(system(command) == 0, "cleared away");
}

/* base [--no-limit]: without the limit on address space, of which checkers of memory need much
 * themselves. */
int main(int count, char **words)
{
    bool may_limit = count < 2 || strcmp(words[1], "--no-limit") != 0;
    struct folder folder = {.arena = arena_new(), .path = "/tmp/base-XXXXXX"};

    check_arena();
    check_growing();
    check_stretching();
    check_joining();
    if (CAN_LIMIT_MEMORY && may_limit)
        check_no_memory();
    check_growing_text();
    check_utf8();
    check_nearness();
    check_numbers();
    check_short_numbers();
    check_numbers_written();
    check_digits_against_printf();
    check_locale();
    check_problems();
    check_index();
    folder.problems.arena = folder.arena;
    if (CHECK(mkdtemp(folder.path) != NULL, "a folder of the test's own")) {
        check_reading(&folder);
        check_listing(&folder);
        check_writing(&folder);
        check_paths(&folder);
        remove_folder(&folder);
    }
    arena_free(folder.arena);
    return checks_end();
}
