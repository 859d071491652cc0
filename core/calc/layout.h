/* Roof geometry, computed once per review and kept. */
#ifndef CALC_LAYOUT_H
#define CALC_LAYOUT_H
#include "working.h"

/* Frees a layout; NULL is fine. */
void layout_free(struct layout *layout);

#endif
