/* yaml: what may be a key of a mapping, and that each stands there once. */
#ifndef YAML_KEYS_H
#define YAML_KEYS_H
#include "yaml_reading.h"

/* Tells what is wrong with a scalar as a key. */
void key_check(struct reading *reading, const struct node *key, bool is_block);
/* Tells every key that stands twice among key, value, key, value …; `count` items, the last value
 * may be missing. Keeps the first pair of each key, in order; returns how many items stay. */
size_t keys_keep_first(struct reading *reading, struct node **items, size_t count);

#endif
