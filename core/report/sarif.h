/* report, inside the room: pieces of SARIF 2.1.0 (OASIS, 2020, with errata 01). */
#ifndef REPORT_SARIF_H
#define REPORT_SARIF_H
#include "deciding.h"
#include "parts.h"

/* One log's run while it is made. */
struct sarif {
    const struct report *report;
    struct arena *arena;
    struct deciding_file *files; /* as `artifacts` lists them */
    size_t file_count;
    const struct rule **rules; /* as the driver lists them */
    size_t rule_count;
};

/* {"text": …}. */
json_t *sarif_message(const char *text);
/* A path as a reference that fits into a URI. NULL: no memory. */
const char *sarif_uri(const char *path, struct arena *arena);
/* {"physicalLocation": …}; an empty object where there is no file. */
json_t *sarif_location(const struct sarif *sarif, struct place place);
/* All findings, or those that fail only. */
json_t *sarif_results(const struct sarif *sarif);

#endif
