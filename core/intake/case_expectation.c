/* What a case expects. */
#include "case_reading.h"

#include <string.h>

static const char example[] =
    "expect: {kind: fail, about: \"roof_plane:south\", actual: 17.5 in, limit: 18 in}";
static const char *const kinds[] = {"pass",          "fail",          "open",   "review",
                                    "notApplicable", "informational", "deleted"};
static const char *const levels[] = {"error", "warning", "none"};

static bool is_among(const char *text, const char *const *words, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (strcmp(words[i], text) == 0)
            return true;
    return false;
}

/* A word of a closed list, or NULL after a complaint. */
static const char *find_word(const struct case_file *file, const struct node *expect,
                             const char *key, const char *const *words, size_t count)
{
    const char *text = find_text(file->reader, expect, key, NULL);
    if (text == NULL || is_among(text, words, count))
        return text;
    complain_unknown(&file->reader->complaints, node_find(expect, key), "word", key, words, count);
    return NULL;
}

/* Numbers are of one test, which a pass or a fail has. */
static void check_numbers(const struct case_file *file, const struct node *expect,
                          const struct expectation *out)
{
    static const char *const keys[] = {"actual", "limit", "margin"};
    bool has_numbers = strcmp(out->kind, "open") != 0 && strcmp(out->kind, "notApplicable") != 0 &&
                       strcmp(out->kind, "deleted") != 0;
    for (size_t i = 0; i < 3; i++) {
        const struct node *node = node_find(expect, keys[i]);
        if (node != NULL && !has_numbers && out->what == NULL)
            complain(&file->reader->complaints, node, "number-needless",
                     "what: Clear width below the ridge",
                     "of a finding that is %s no number decides; say with 'what' which test is "
                     "meant",
                     out->kind);
    }
    if (out->missing != NULL && strcmp(out->kind, "pass") == 0)
        complain(&file->reader->complaints, node_find(expect, "missing"), "missing-needless", NULL,
                 "where something is missing the finding is open, not pass");
}

bool case_read_expectation(struct expectation *out, const struct case_file *file,
                           const struct node *node)
{
    static const char *const keys[] = {"kind",  "about",  "level",  "cite",    "what", "actual",
                                       "limit", "margin", "option", "missing", NULL};
    struct complaints *complaints = &file->reader->complaints;
    const struct node *expect = node_find(node, "expect");
    if (expect == NULL || node_find(expect, "kind") == NULL ||
        (expect->type == NODE_MAPPING && node_find(expect, "kind")->length == 0))
        return complain(complaints, expect != NULL ? expect : node, "case-asserts-nothing", example,
                        "the case asserts nothing: say which kind of finding it must lead to");
    size_t before = file->reader->problems->count;
    if (!check_keys(file->reader, expect, "key of what is expected", keys, example))
        return false;
    *out = (struct expectation){.place = expect->place};
    out->kind = find_word(file, expect, "kind", kinds, sizeof kinds / sizeof kinds[0]);
    out->level = find_word(file, expect, "level", levels, sizeof levels / sizeof levels[0]);
    out->about = find_about(file->reader, expect, NULL);
    out->cite = find_text(file->reader, expect, "cite", NULL);
    out->what = find_text(file->reader, expect, "what", NULL);
    out->actual = find_text(file->reader, expect, "actual", NULL);
    out->limit = find_text(file->reader, expect, "limit", NULL);
    out->margin = find_text(file->reader, expect, "margin", NULL);
    out->option = find_text(file->reader, expect, "option", NULL);
    out->missing = find_text(file->reader, expect, "missing", NULL);
    if (out->kind != NULL)
        check_numbers(file, expect, out);
    return out->kind != NULL && file->reader->problems->count == before;
}
