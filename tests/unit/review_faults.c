/* Slips in the geometry as a review tells them: what comes of one row once, in order, and without
 * holding each against all others. */
#include <unistd.h>

#include "check.h"
#include "design.h"
#include "plumbrule/plumbrule.h"

static size_t asked;

bool __real_object_has(const struct object *object, unsigned slot);
bool __wrap_object_has(const struct object *object, unsigned slot);
bool __wrap_object_has(const struct object *object, unsigned slot)
{
    asked++;
    return __real_object_has(object, slot);
}

static const char roof[] =
    "module_models:\n"
    "  - {name: Quillon Q440, length: 74 in, width: 41 in}\n"
    "roof:\n"
    "  planes:\n"
    "    - name: south\n"
    "      outline: [[0 ft, 0 ft], [40 ft, 0 ft], [40 ft, 16 ft], [0 ft, 16 ft]]\n"
    "      edges: [eave, rake, ridge, rake]\n"
    "module_rows:\n";

/* As many rows of three beside the plane, and one module of its own. */
static void write_design(FILE *file, size_t rows)
{
    fputs(roof, file);
    for (size_t i = 0; i < rows; i++)
        fprintf(file,
                "  - {name: r%zu, model: Quillon Q440, plane: south, at: [%zu in, 400 in], "
                "orientation: portrait, columns: 3, rows: 1, gap: 1 in, status: new}\n",
                i, i * 130);
    fputs("modules:\n"
          "  - {name: alone, model: Quillon Q440, plane: south, at: [0 in, 600 in], orientation: "
          "portrait, status: new}\n",
          file);
}

/* Are all told in order, each row as one? The module of its own comes first, as modules do. */
static bool are_told(const char *report, size_t rows)
{
    char sentence[160];
    const char *at = strstr(report, "module alone: the module does not lie on");
    size_t told = 0;
    for (size_t i = 0; at != NULL && i < rows; i++) {
        snprintf(sentence, sizeof sentence,
                 "module r%zu-1-1 and 2 more of its row: the module does not lie on roof plane "
                 "south at all",
                 i);
        at = strstr(at, sentence);
    }
    for (const char *next = report; (next = strstr(next, "does not lie on roof")) != NULL; next++)
        told++;
    return at != NULL && told == rows + 1;
}

/* How often whether a thing has a fact is asked for so many rows. */
static size_t asked_for(size_t rows)
{
    char path[] = "/tmp/plumbrule-faults-XXXXXX";
    const char *const books[] = {"marrow-bay", NULL};
    const struct plumbrule_options options = {
        .books = books, .on = "2026-08-03", .format = "ndjson"};
    FILE *file = fdopen(mkstemp(path), "w");
    struct plumbrule *plumbrule;
    const char *report;
    size_t length;
    write_design(file, rows);
    fclose(file);
    CHECK(plumbrule_open(&plumbrule), "there is memory");
    asked = 0;
    CHECK(plumbrule_check(&report, &length, plumbrule, path, &options) == PLUMBRULE_UNREAD,
          "the design has slips");
    CHECK(are_told(report, rows), "each row is told once, in order, and with how many");
    plumbrule_close(plumbrule);
    unlink(path);
    return asked;
}

int main(void)
{
    size_t few = asked_for(100), many = asked_for(800);
    CHECK(many < 12 * few, "eight times as many take eight times the work");
    return checks_end();
}
