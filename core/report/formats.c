/* The formats by name. */
#include <string.h>

#include "envelope.h"
#include "report.h"

static const struct report_format formats[] = {
    {.name = "text", .write = report_write_text, .between = "\n\n", .tells_few = true},
    {.name = "json", .write = report_write_json},
    {.name = "ndjson", .write = report_write_ndjson},
    {.name = "sarif",
     .write = report_write_sarif,
     .begins = SARIF_BEGINS,
     .between = SARIF_BETWEEN,
     .ends = SARIF_ENDS},
    {.name = "junit",
     .write = report_write_junit,
     .begins = JUNIT_BEGINS,
     .between = JUNIT_BETWEEN,
     .ends = JUNIT_ENDS},
    {.name = "html", .write = report_write_html, .stands_alone = true, .needs_working = true},
};

const struct report_format *report_format_find(const char *name)
{
    for (size_t i = 0; i < sizeof formats / sizeof formats[0]; i++)
        if (strcmp(formats[i].name, name) == 0)
            return &formats[i];
    return NULL;
}
