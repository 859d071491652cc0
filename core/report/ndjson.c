/* One design, one line: the report for programs that read many. */
#include "parts.h"

bool report_write_ndjson(struct text *out, const struct report *report)
{
    struct arena *arena = arena_new();
    bool is_written =
        json_write(out, arena != NULL ? json_report(report, arena) : NULL, JSON_COMPACT);
    text_add(out, "\n", 1);
    arena_free(arena);
    return is_written && !out->is_short;
}
