/* A whole check: design, book, values and a rule, divided by lines "----"; the first byte picks the
 * format. What could not be read or run never stands. */
#include "plumbrule/plumbrule.h"
#include "put.h"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    static const char *const formats[] = {"text", "json", "ndjson", "sarif", "junit", "html"};
    static const char *const files[] = {"design.yaml", "town/book.yaml", "town/values.yaml",
                                        "town/a.lua"};
    static struct plumbrule *plumbrule;
    static size_t runs;
    char path[PUT_PATH], design[PUT_PATH];
    size_t at = 1, part_length, report_length;
    const char *report;
    if (length < 1)
        return 0;
    if (runs++ % 200 == 0) {
        plumbrule_close(plumbrule);
        MUST(plumbrule_open(&plumbrule));
    }
    put_inner("town");
    for (size_t i = 0; i < sizeof files / sizeof files[0]; i++) {
        const uint8_t *part = put_part(bytes, length, &at, &part_length);
        put_file(i == 0 ? design : path, files[i], part, part_length);
    }
    const char *const directories[] = {put_folder(), NULL}, *const books[] = {"town", NULL};
    const char *const catalogues[] = {FUZZ_DIR "/../../samples/catalogue", NULL};
    const struct plumbrule_options options = {.book_directories = directories,
                                              .catalogue_directories = catalogues,
                                              .books = books,
                                              .on = bytes[0] & 64 ? NULL : "2026-08-03",
                                              .format = formats[bytes[0] % 6],
                                              .with_working = bytes[0] & 128};
    enum plumbrule_end end = plumbrule_check(&report, &report_length, plumbrule, design, &options);
    MUST(end <= PLUMBRULE_RULE_BROKEN && report_length > 0 && strlen(report) == report_length);
    if (end == PLUMBRULE_STANDS && strcmp(options.format, "text") == 0)
        MUST(strstr(report, "Could not be read or run") == NULL);
    if (strcmp(options.format, "ndjson") == 0)
        MUST(strchr(report, '\n') == report + report_length - 1);
    return 0;
}
