/* A survey sheet: a design with nothing told yet, made from the fact table. */
#ifndef REPORT_SURVEY_H
#define REPORT_SURVEY_H
#include "text.h"

/* Every kind with its facts blank, each with its sentence, unit and example. What most houses have
 * one of stands ready; other lists stand as comments. The text keeps whether memory was short. */
void survey_write(struct text *out, const char *title);

#endif
