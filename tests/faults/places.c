/* Memory that runs out at each place of the program: every call that takes from an arena or adds to
 * a text fails once, found by where it returns to. What each command then prints is the usual, or
 * says that memory was short. */
#include "arena.h"
#include "check.h"
#include "desk.h"
#include "parts.h"
#include "text.h"

#include <stdint.h>
#include <unistd.h>

enum { WORDS_MOST = 16, OUTPUT_MOST = 1 << 23, PLACES_MOST = 1 << 14 };

/* Where takes return to, in the order in which a run meets them. */
static struct places {
    const void *at[PLACES_MOST]; /* hashed */
    const void *found[PLACES_MOST];
    size_t count;
    const void *fails;
    bool is_learning;
} * places(void)
{
    static struct places one;
    return &one;
}

static void learn(const void *at)
{
    struct places *all = places();
    size_t slot = (uintptr_t)at * 2654435761U % PLACES_MOST;
    while (all->at[slot] != NULL && all->at[slot] != at)
        slot = (slot + 1) % PLACES_MOST;
    if (all->at[slot] == at)
        return;
    if (all->count == PLACES_MOST / 2)
        exit(EXIT_FAILURE);
    all->at[slot] = at;
    all->found[all->count++] = at;
}

/* May the call that returns to `at`? The chosen place fails once. */
static bool may(const void *at)
{
    struct places *all = places();
    if (all->is_learning)
        learn(at);
    if (all->fails != at)
        return true;
    all->fails = NULL;
    return false;
}

#define HERE __builtin_return_address(0)
/* More than there can be: the arena itself refuses, and is marked as short. */
#define REFUSED(arena) __real_arena_take(arena, SIZE_MAX)

void *__real_arena_take(struct arena *arena, size_t size);
char *__real_arena_copy(struct arena *arena, const char *text, size_t length);
void *__real_arena_grow(struct arena *arena, void *items, size_t count, size_t *capacity,
                        size_t size);
void __real_text_add(struct text *text, const char *bytes, size_t length);
void *__wrap_arena_take(struct arena *arena, size_t size);
char *__wrap_arena_copy(struct arena *arena, const char *text, size_t length);
char *__wrap_arena_format(struct arena *arena, const char *format, ...);
void *__wrap_arena_grow(struct arena *arena, void *items, size_t count, size_t *capacity,
                        size_t size);
void __wrap_text_add(struct text *text, const char *bytes, size_t length);
void __wrap_text_add_word(struct text *text, const char *word);

void *__wrap_arena_take(struct arena *arena, size_t size)
{
    return may(HERE) ? __real_arena_take(arena, size) : REFUSED(arena);
}

char *__wrap_arena_copy(struct arena *arena, const char *text, size_t length)
{
    return may(HERE) ? __real_arena_copy(arena, text, length) : REFUSED(arena);
}

char *__wrap_arena_format(struct arena *arena, const char *format, ...)
{
    if (!may(HERE))
        return REFUSED(arena);
    va_list arguments;
    va_start(arguments, format);
    char *text = arena_format_list(arena, format, arguments);
    va_end(arguments);
    return text;
}

void *__wrap_arena_grow(struct arena *arena, void *items, size_t count, size_t *capacity,
                        size_t size)
{
    if (count < *capacity || may(HERE)) /* only one that has to grow can fail */
        return __real_arena_grow(arena, items, count, capacity, size);
    return REFUSED(arena);
}

void __wrap_text_add(struct text *text, const char *bytes, size_t length)
{
    text->is_short = text->is_short || !may(HERE);
    __real_text_add(text, bytes, length);
}

void __wrap_text_add_word(struct text *text, const char *word)
{
    text->is_short = text->is_short || !may(HERE);
    __real_text_add(text, word, strlen(word));
}

json_t *__real_json_object(void);
json_t *__real_json_array(void);
json_t *__real_json_integer(json_int_t number);
json_t *__real_json_text(const char *text);
bool __real_json_put(json_t *object, const char *key, json_t *value);
bool __real_json_push(json_t *array, json_t *value);
json_t *__wrap_json_object(void);
json_t *__wrap_json_array(void);
json_t *__wrap_json_integer(json_int_t number);
json_t *__wrap_json_text(const char *text);
bool __wrap_json_put(json_t *object, const char *key, json_t *value);
bool __wrap_json_push(json_t *array, json_t *value);

json_t *__wrap_json_object(void)
{
    return may(HERE) ? __real_json_object() : NULL;
}

json_t *__wrap_json_array(void)
{
    return may(HERE) ? __real_json_array() : NULL;
}

json_t *__wrap_json_integer(json_int_t number)
{
    return may(HERE) ? __real_json_integer(number) : NULL;
}

json_t *__wrap_json_text(const char *text)
{
    return may(HERE) ? __real_json_text(text) : NULL;
}

bool __wrap_json_put(json_t *object, const char *key, json_t *value)
{
    if (may(HERE))
        return __real_json_put(object, key, value);
    json_decref(value);
    return false;
}

bool __wrap_json_push(json_t *array, json_t *value)
{
    if (may(HERE))
        return __real_json_push(array, value);
    json_decref(value);
    return false;
}

#define SAMPLES         FAULTS_DIR "/../../samples/"
#define FAILING         SAMPLES "quill-hollow/failing.yaml"
#define BAD             FAULTS_DIR "/books/flaw-point/book.yaml" /* it is no design */
#define HARBOR          "--book", "flaw-harbor", "--books", FAULTS_DIR "/books"
#define FORMAT(format)  "--format", format, "--book"
#define NEW             "/tmp/plumbrule-places"
#define CHECKED(format) "check", FAILING, "--format", format, "--with-working"

struct subject {
    const char *words[WORDS_MOST];
    int code;
};

/* The program with what it prints led into a file; the file's bytes come back. */
static int run(const struct subject *subject, char *printed, int file)
{
    char *words[WORDS_MOST + 2] = {(char *)(uintptr_t) "plumbrule"};
    int count = 1, before[] = {dup(STDOUT_FILENO), dup(STDERR_FILENO)};
    for (; subject->words[count - 1] != NULL; count++)
        words[count] = (char *)(uintptr_t)subject->words[count - 1];
    if (ftruncate(file, 0) != 0 || lseek(file, 0, SEEK_SET) != 0)
        exit(EXIT_FAILURE);
    dup2(file, STDOUT_FILENO);
    dup2(file, STDERR_FILENO);
    if (strcmp(words[1], "new") == 0 &&
        system("rm -rf " NEW " && mkdir " NEW " && cp -r " FAULTS_DIR "/books/flaw-point " NEW) !=
            0)
        exit(EXIT_FAILURE);
    int code = desk_main(count, words);
    places()->fails = NULL;
    places()->is_learning = false;
    for (int i = 0; i < 2; i++) {
        dup2(before[i], i == 0 ? STDOUT_FILENO : STDERR_FILENO);
        close(before[i]);
    }
    ssize_t length = pread(file, printed, OUTPUT_MOST - 1, 0);
    printed[length > 0 ? length : 0] = '\0';
    return code;
}

static void fail_all(const struct subject *subject, int file)
{
    static size_t done; /* places that an earlier command failed at are not tried again */
    char *usual = malloc(OUTPUT_MOST), *printed = malloc(OUTPUT_MOST);
    if (usual == NULL || printed == NULL)
        exit(EXIT_FAILURE);
    const char *const *words = subject->words;
    places()->is_learning = true;
    int code = run(subject, usual, file);
    if (!CHECK(code == subject->code, "with memory it ends as it should"))
        fprintf(stderr, "    %s %s ends with %d\n%.200s\n", words[0], words[1] ? words[1] : "",
                code, usual);
    size_t first = done, broken_off = 0, as_usual = 0;
    for (; done < places()->count; done++) {
        places()->fails = places()->found[done];
        code = run(subject, printed, file);
        if (code == 70)
            broken_off++;
        else if (code == subject->code && strcmp(usual, printed) == 0)
            as_usual++;
        else if (!CHECK(strstr(printed, "memory") != NULL &&
                            (code == PLUMBRULE_RULE_BROKEN ||
                             (code == PLUMBRULE_COMMAND && subject->code == code)),
                        "what is not as usual says that memory was short, in a rule or at all"))
            fprintf(stderr, "    place %p of %s %s: %d\n%.600s\n", places()->found[done], words[0],
                    words[1] ? words[1] : "", code, printed);
    }
    fprintf(stderr, "%s %s %s: %zu new places: %zu broken off, %zu as usual\n", words[0],
            words[1] ? words[1] : "", words[1] && words[2] ? words[2] : "", done - first,
            broken_off, as_usual);
    free(usual);
    free(printed);
}

int main(void)
{
    static const struct subject subjects[] = {
        {{"check", FAULTS_DIR "/signed.yaml", HARBOR, NULL}, 1},
        {{"check", FAULTS_DIR "/signed.yaml", HARBOR, "--format", "html", NULL}, 1},
        {{"check", FAULTS_DIR "/signed.yaml", HARBOR, "--format", "sarif", NULL}, 1},
        {{"check", FAULTS_DIR "/signed.yaml", HARBOR, "--format", "json", NULL}, 1},
        {{CHECKED("text"), "--book", "marrow-bay", NULL}, 1},
        {{CHECKED("json"), "--book", "marrow-bay", NULL}, 1},
        {{CHECKED("ndjson"), "--book", "marrow-bay", NULL}, 1},
        {{CHECKED("sarif"), "--book", "marrow-bay", NULL}, 1},
        {{CHECKED("junit"), "--book", "marrow-bay", NULL}, 1},
        {{CHECKED("html"), "--book", "marrow-bay", NULL}, 1},
        {{CHECKED("html"), "--book", "larch-pass", NULL}, 1},
        {{"check", FAILING, SAMPLES "gone.yaml", "--jobs", "2", "--book", "marrow-bay", NULL}, 3},
        {{"check", SAMPLES "quill-hollow/unfinished.yaml", FORMAT("html"), "marrow-bay", NULL}, 2},
        {{"check", SAMPLES "quill-hollow/unfinished.yaml", FORMAT("sarif"), "marrow-bay", NULL}, 2},
        {{"check", SAMPLES "quill-hollow/unfinished.yaml", FORMAT("text"), "marrow-bay", NULL}, 2},
        {{"check", SAMPLES "coast-and-summit/tallow-court.yaml", FORMAT("html"), "larch-pass",
          NULL},
         1},
        {{"check", SAMPLES "three-roofs/moss-end.yaml", FORMAT("html"), "ellowfield", NULL}, 0},
        {{"draw", FAILING, "--book", "marrow-bay", "--what", "roof", NULL}, 0},
        {{"draw", SAMPLES "three-roofs/moss-end.yaml", "--what", "loads", NULL}, 0},
        {{"draw", SAMPLES "coast-and-summit/fennel-row.yaml", "--what", "one-line", NULL}, 0},
        {{"draw", SAMPLES "quill-hollow/unfinished.yaml", "--what", "panel", NULL}, 0},
        {{"draw", FAILING, "--what", "labels", NULL}, 0},
        {{"explain", FAILING, "--rule", "irc/ridge-clearance", "--book", "marrow-bay", NULL}, 0},
        {{"explain", FAILING, "--rule", "nec/busbar", "--book", "marrow-bay", NULL}, 0},
        {{"explain", FAULTS_DIR "/signed.yaml", "--rule", "flaw-point/bus", HARBOR, NULL}, 0},
        {{"explain", FAILING, "--rule", "irc/ridge", "--book", "marrow-bay", NULL}, 64},
        {{"explain", FAILING, "--rule", "irc/ridge-clearance", "--about", "soth", "--book",
          "marrow-bay", NULL},
         64},
        {{"check", FAULTS_DIR "/beyond.yaml", HARBOR, NULL}, 2},
        {{"check", BAD, "--format", "text", "--book", "marrow-bay", NULL}, 3},
        {{"check", BAD, "--format", "json", "--book", "marrow-bay", NULL}, 3},
        {{"check", BAD, "--format", "sarif", "--book", "marrow-bay", NULL}, 3},
        {{"check", BAD, "--format", "junit", "--book", "marrow-bay", NULL}, 3},
        {{"check", BAD, "--format", "html", "--book", "marrow-bay", NULL}, 3},
        {{"check", FAILING, "--format", "sarif", "--book", "marow-bay", NULL}, 3},
        {{"check", SAMPLES "coast-and-summit/osprey-rise.yaml", FORMAT("html"), "larch-pass", NULL},
         1},
        {{"draw", BAD, "--what", "roof", NULL}, 3},
        {{"prove", "marow-bay", NULL}, 3},
        {{"rules", "--book", "marow-bay", "--on", "2026-08-03", NULL}, 3},
        {{"lint", "flaw-point", "--books", FAULTS_DIR "/books", NULL}, 1},
        {{"chekc", NULL}, 64},
        {{"check", "--help", NULL}, 0},
        {{"--help", NULL}, 0},
        {{"--manual", NULL}, 0},
        {{"books", NULL}, 0},
        {{"rules", "--book", "marrow-bay", "--on", "2026-08-03", NULL}, 0},
        {{"rules", "--book", "marrow-bay", "--on", "2026-08-03", "--format", "json", NULL}, 0},
        {{"lint", "reed-hollow-fire", NULL}, 0},
        {{"prove", "reed-hollow-fire", NULL}, 0},
        {{"prove", "reed-hollow-fire", "--format", "json", NULL}, 0},
        {{"prove", "reed-hollow-fire", "--stir", NULL}, 0},
        {{"compare", "flaw-point", "flaw-harbor", FAULTS_DIR "/signed.yaml", "--books",
          FAULTS_DIR "/books", NULL},
         1},
        {{"compare", "flaw-point", "flaw-harbor", FAULTS_DIR "/signed.yaml", "--format", "json",
          "--books", FAULTS_DIR "/books", NULL},
         1},
        {{"schema", "design", NULL}, 0},
        {{"schema", "book", NULL}, 0},
        {{"schema", "values", NULL}, 0},
        {{"schema", "cases", NULL}, 0},
        {{"schema", "result", NULL}, 0},
        {{"schema", "stubs", NULL}, 0},
        {{"schema", "facts", NULL}, 0},
        {{"schema", "words", NULL}, 0},
        {{"schema", "rules", "irc", NULL}, 0},
        {{"calc", NULL}, 0},
        {{"calc", "cold_voltage", "modules=10", "coefficient=-0.25 %/°C",
          "open_circuit_voltage=40 V", "temperature=-5 °C", NULL},
         0},
        {{"calc", "cold_voltag", NULL}, 64},
        {{"calc", "ocpd_up", "curent=20 A", NULL}, 64},
        {{"calc", "ocpd_up", "current=20 V", NULL}, 64},
        {{"calc", "ocpd_down", "current=2 A", NULL}, 2},
        {{"new", "design", "alder", "--in", NEW, NULL}, 0},
        {{"new", "rule", "flaw-point/alder", "--books", NEW, NULL}, 0},
        {{"new", "case", "flaw-point/alder", "--books", NEW, NULL}, 0},
        {{"new", "rule", "flaw-pint/alder", "--books", NEW, NULL}, 3},
        {{"new", "rule", "gone/alder", "--books", NEW, NULL}, 3},
        {{"new", "rule", NEW "/flaw-point/alder", NULL}, 0},
        {{"new", "rule", NEW "/gone/alder", NULL}, 3},
        {{"new", "book", "alder", "--adopts", "nec@2023,irc@2021", "--in", NEW, NULL}, 0},
        {{"new", "book", "alder", "--adopts", "gone@2023", "--in", NEW, NULL}, 3},
    };
    char path[] = "/tmp/places-XXXXXX";
    int file = mkstemp(path);
    if (file < 0)
        return EXIT_FAILURE;
    unlink(path);
    for (size_t i = 0; i < sizeof subjects / sizeof subjects[0]; i++)
        fail_all(&subjects[i], file);
    if (system("rm -rf " NEW) != 0)
        return EXIT_FAILURE;
    return checks_end();
}
