/* The YAML room: what is too large, too deep or simply broken, from a stranger. */
#include "yaml_trial.h"

static void test_many_keys(void)
{
    static char text[YAML_BYTES];
    size_t length = 0;
    for (int i = 0; i < 45000; i++)
        length +=
            (size_t)snprintf(text + length, sizeof text - length, "key%d: 1\n", (i * 7919) % 45000);
    length +=
        (size_t)snprintf(text + length, sizeof text - length, "key7919: 2\nkey0: 2\nother: 3\n");
    struct trial trial = read_bytes(text, length);
    if (CHECK(trial.problems.count == 2, "two keys of very many stand twice")) {
        const struct problem *items = trial.problems.items;
        CHECK(is_at(items[0].place, 45001, 1) && is_at(items[0].other, 2, 1), "the first of them");
        CHECK(is_at(items[1].place, 45002, 1) && is_at(items[1].other, 1, 1), "the second");
    }
    const struct node *root = root_of(&trial);
    CHECK(root && root->length == 45001, "each key stays once");
    CHECK(root && node_find(root, "other"), "the last key is found");
    end(&trial);
}

static void check_repeated(const char *piece, size_t times, const char *code, unsigned line,
                           unsigned column)
{
    size_t size = strlen(piece);
    char *text = malloc(size * times);
    if (!text)
        abort();
    for (size_t i = 0; i < times; i++)
        memcpy(text + i * size, piece, size);
    struct trial trial = read_bytes(text, size * times);
    bool holds = !trial.is_good && trial.problems.count == 1 &&
                 strcmp(trial.problems.items[0].code, code) == 0 &&
                 is_at(trial.problems.items[0].place, line, column);
    if (!CHECK(holds, "a piece repeated without end is refused with its place") &&
        trial.problems.count > 0)
        fprintf(stderr, "    %s: is %s at %u:%u\n", piece, trial.problems.items[0].code,
                trial.problems.items[0].place.line, trial.problems.items[0].place.column);
    end(&trial);
    free(text);
}

static void test_depth(void)
{
    check_repeated("[", 10000, "too-deep", 1, 33);
    check_repeated("[", YAML_BYTES, "too-deep", 1, 33);
    check_repeated("[\n", 10000, "too-deep", 33, 1);
    check_repeated("{a: ", 10000, "too-deep", 1, 32 * 4 + 1);
    check_repeated("- ", 10000, "too-deep", 1, 65);
    /* A pair in a list is a mapping too: three levels in each piece. */
    check_repeated("[\"a\": {b: ", 5000, "too-deep", 1, 10 * 10 + 7);
}

static void test_depth_edge(void)
{
    char text[256] = "";
    memset(text, '[', 32);
    memset(text + 32, ']', 32);
    struct trial trial = read_text(text);
    CHECK(trial.is_good, "32 deep is taken");
    end(&trial);
    memset(text, '[', 33);
    memset(text + 33, ']', 33);
    check_refused(text, "too-deep", 1, 33, "32 deep");
    text[0] = '\0';
    for (int i = 0; i < 20; i++)
        sprintf(text + strlen(text), "%*sa:\n", i, "");
    trial = read_text(text);
    CHECK(trial.is_good, "indented 20 deep is taken");
    end(&trial);
}

static void test_caps(void)
{
    size_t size = 2 * (size_t)YAML_BYTES;
    char *text = malloc(size);
    if (!text)
        abort();
    memset(text, '#', size);
    check_refused_bytes(text, size, "file-large", 0, 0, "1 MiB");
    struct trial trial = read_bytes(text, YAML_BYTES);
    CHECK(trial.is_good, "1 MiB is taken");
    end(&trial);
    memset(text, 'x', size);
    trial = read_bytes(text, YAML_SCALAR);
    CHECK(trial.is_good && root_of(&trial)->length == YAML_SCALAR, "a text of 64 KiB is taken");
    end(&trial);
    check_refused_bytes(text, YAML_SCALAR + 1, "text-too-long", 1, 1, "64 KiB");
    for (size_t i = 0; i < size; i += 2)
        memcpy(text + i, "x,", 2);
    memcpy(text, " [", 2);
    check_refused_bytes(text, 300000, "too-many-nodes", 1, 3 + 2 * (YAML_NODES - 1), "100000");
    memset(text, 'k', 3000);
    memcpy(text + 2000, ": 1\nb: 2\n", 10);
    check_refused(text, "key-too-long", 1, 1, "1024");
    text[0] = '?', text[1] = ' ', text[2000] = '\n', text[2001] = ':';
    memcpy(text + 2002, " 1\nb: 2\n", 9);
    check_refused(text, "key-too-long", 1, 3, "1024");
    free(text);
}

/* Small numbers with a fixed beginning, so that every run tries the same files. */
static unsigned next_number(unsigned *state, unsigned below)
{
    *state = *state * 1664525u + 1013904223u;
    return (*state >> 8) % below;
}

static size_t mutate(char *text, size_t length, size_t size, unsigned *state)
{
    static const char *const pieces[] = {
        "\t",           "\"",    "'",  "[",     "]",     "{",   "}",
        ": ",           ",",     "\n", "- ",    "? ",    "&a ", "*a ",
        "!t",           "|\n",   ">",  "---\n", "...\n", "%",   "\xc3",
        "<<: ",         "#",     "\\", "@",     "\r",    " ",   "  ",
        "\xe2\x80\xa8", "a: 1\n"};
    unsigned count = 1 + next_number(state, 4);
    for (unsigned i = 0; i < count && length > 0; i++) {
        size_t at = next_number(state, (unsigned)length);
        unsigned way = next_number(state, 4);
        if (way == 0) {
            text[at] = (char)next_number(state, 256);
        } else if (way == 1) {
            size_t gone = 1 + next_number(state, 12);
            gone = gone > length - at ? length - at : gone;
            memmove(text + at, text + at + gone, length - at - gone);
            length -= gone;
        } else if (way == 2) {
            const char *piece = pieces[next_number(state, sizeof pieces / sizeof *pieces)];
            size_t extra = strlen(piece);
            if (length + extra > size)
                continue;
            memmove(text + at + extra, text + at, length - at);
            memcpy(text + at, piece, extra);
            length += extra;
        } else {
            length = at + 1;
        }
    }
    return length;
}

/* Walks the whole tree: all of it must be there and well formed. */
static size_t count_nodes(const struct node *node, unsigned depth)
{
    size_t count = 1, items = node->type == NODE_MAPPING ? 2 * node->length : node->length;
    if (depth > YAML_DEPTH || node->place.line == 0 || node->place.column == 0)
        return 0;
    if (node->type == NODE_SCALAR)
        return node->text && strlen(node->text) == node->length ? 1 : 0;
    for (size_t i = 0; i < items; i++) {
        size_t inner = count_nodes(node->items[i], depth + 1);
        if (inner == 0)
            return 0;
        count += inner;
    }
    return count;
}

static bool is_sound(const struct trial *trial)
{
    if (trial->is_good != (trial->problems.count == 0) || (trial->is_good && !trial->source))
        return false;
    for (size_t i = 0; i < trial->problems.count; i++) {
        const struct problem *problem = &trial->problems.items[i];
        if (!problem->message[0] || problem->weight != PROBLEM_INPUT ||
            (problem->place.line > 0 && !problem->excerpt &&
             strcmp(problem->code, "not-yaml") != 0))
            return false;
    }
    const struct node *root = root_of(trial);
    return !root || count_nodes(root, 0) > 0;
}

static void test_mutants(void)
{
    static const char *const names[] = {TESTS_DIR "/yaml/book.yaml", TESTS_DIR "/yaml/design.yaml"};
    unsigned state = 20260301, good = 0, bad = 0, unsound = 0, unexplained = 0;
    for (size_t name = 0; name < 2; name++) {
        char sample[4096], text[8192];
        FILE *file = fopen(names[name], "rb");
        size_t length = file ? fread(sample, 1, sizeof sample, file) : 0;
        if (!CHECK(length > 100, "the sample is there"))
            return;
        fclose(file);
        for (int i = 0; i < 5000; i++) {
            memcpy(text, sample, length);
            struct trial trial = read_bytes(text, mutate(text, length, sizeof text, &state));
            *(trial.is_good ? &good : &bad) += 1;
            unsound += !is_sound(&trial);
            for (size_t p = 0; p < trial.problems.count; p++)
                unexplained += strcmp(trial.problems.items[p].code, "not-yaml") == 0;
            end(&trial);
        }
    }
    CHECK(unsound == 0, "a changed file gives a sound tree or a problem with its line");
    CHECK(unexplained == 0, "no mistake is left without words of its own");
    CHECK(good > 500 && bad > 500, "the changes make good files and bad ones");
}

int main(void)
{
    test_many_keys();
    test_depth();
    test_depth_edge();
    test_caps();
    test_mutants();
    return checks_end();
}
