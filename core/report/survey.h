/* Sheets to be filled in, made from the fact table: a survey of a house, a catalogue of equipment.
 */
#ifndef REPORT_SURVEY_H
#define REPORT_SURVEY_H
#include "text.h"

/* Every kind with its facts blank, each with its sentence, unit and example. What most houses have
 * one of stands ready; other lists stand as comments. The text keeps whether memory was short. */
void survey_write(struct text *out, const char *title);
/* Every kind of model with one item, whose facts are blank in the same way. */
void survey_write_catalogue(struct text *out);

#endif
