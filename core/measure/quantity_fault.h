/* measure, inside the room: the sentences that say why a reading or an operation did not come off.
 */
#ifndef MEASURE_QUANTITY_FAULT_H
#define MEASURE_QUANTITY_FAULT_H
#include "quantity.h"

/* Sets the fault; always false. A message too long is cut at a code point. */
bool fault_set(struct quantity_fault *fault, const char *code, size_t offset, const char *format,
               ...) __attribute__((format(printf, 4, 5)));
/* "a length is needed, such as 18 in; units: in, ft, …". Without a dimension: that a number and a
 * unit are needed. */
void fault_write_need(char *buffer, size_t size, const struct dimension *want);
/* "a length", or "a quantity in m·kg/s²". Buffer of at least 80 bytes. */
void fault_write_kind(char *buffer, size_t size, struct dimension dimension);
/* The person's text, short enough for a message and free of control characters. */
void fault_write_text(char *buffer, size_t size, const char *text, size_t length);

#endif
