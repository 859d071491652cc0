/* report, inside the room: what stands before, between and behind the reports of one format. */
#ifndef REPORT_ENVELOPE_H
#define REPORT_ENVELOPE_H

#define SARIF_BEGINS                                                                               \
    "{\"$schema\":\"https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/"           \
    "sarif-schema-2.1.0.json\",\"version\":\"2.1.0\",\"runs\":[\n"
#define SARIF_BETWEEN ",\n"
#define SARIF_ENDS    "\n]}\n"
#define JUNIT_BEGINS  "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites>\n"
#define JUNIT_BETWEEN "\n"
#define JUNIT_ENDS    "\n</testsuites>\n"

#endif
