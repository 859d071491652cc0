/* yaml: libyaml's events put together to a tree. */
#ifndef YAML_BUILD_H
#define YAML_BUILD_H
#include "yaml_reading.h"

/* Sets the root of the source as far as it could be read, and tells every mistake on the way. */
void build_tree(struct reading *reading);

#endif
