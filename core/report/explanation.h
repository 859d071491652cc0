/* One finding with its whole working, as a calculation sheet for people. */
#ifndef REPORT_EXPLANATION_H
#define REPORT_EXPLANATION_H
#include "report.h"

/* The rule and who decided about it, the facts with their places, the numbers of the law with their
 * history, the steps, the comparisons, the result. The finding must have been made with its
 * working. False: no memory. */
bool explanation_write(struct text *out, const struct report *report,
                       const struct finding *finding);
/* A rule that does not hold on the day of the report: who deleted it. False: no memory. */
bool explanation_write_absent(struct text *out, const struct report *report,
                              const struct rule *rule);

#endif
