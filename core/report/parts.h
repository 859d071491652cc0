/* report, inside the room: pieces of JSON. NULL everywhere means: no memory; what is handed in is
 * then gone. */
#ifndef REPORT_PARTS_H
#define REPORT_PARTS_H
#include <jansson.h>
#include "design.h"
#include "finding.h"
#include "report.h"

/* Puts a new value under a key or at the end of a list; a NULL value or target: false. */
bool json_put(json_t *object, const char *key, json_t *value);
bool json_push(json_t *array, json_t *value);
/* Text, with what is not UTF-8 replaced; NULL text: null. */
json_t *json_text(const char *text);
/* A finite number at 12 significant digits, never -0. */
json_t *json_number(double number);
json_t *json_date(struct date date);
/* {"file","line","column"}, or null where there is no file. */
json_t *json_place(struct place place);
/* {"value","unit"}: the unit is null for what has none. In `unit`, or NULL: its own. */
json_t *json_amount(struct amount amount, const struct unit *unit);
/* The same two keys into an object that is there. */
bool json_put_amount(json_t *object, struct amount amount, const struct unit *unit);
/* All tests of a finding or of an option. */
json_t *json_tests(const struct test *tests, size_t count);
/* Hands a value on that is whole; else frees it and gives NULL. */
json_t *json_whole(json_t *value, bool is_whole);
/* Adds the value as text, with jansson's flags; the value is gone then. False: no memory, which a
 * value of NULL stands for, too. */
bool json_write(struct text *out, json_t *value, size_t flags);
/* One finding whole. The design (or NULL) says at which elevation values by elevation are told. */
json_t *json_finding(const struct finding *finding, const struct design *design,
                     struct arena *arena);

#endif
