/* yaml: files that many readings ask for, put together once as long as their bytes stay the same.
 */
#ifndef YAML_KEPT_SOURCES_H
#define YAML_KEPT_SOURCES_H
#include "tree.h"

struct kept_sources;

/* NULL: no memory. */
struct kept_sources *kept_sources_new(void);
void kept_sources_free(struct kept_sources *kept);
/* Lets go of what has changed since it was kept. What was read before may lean on it: to be called
 * where none of that is looked at any more. */
void kept_sources_tidy(struct kept_sources *kept);

/* As yaml_read_file: the file is read each time, but where a kept one of that path has the same
 * bytes, its tree is handed out, which nobody may change. It belongs to `kept`, and stays at least
 * until the next tidying. A file with a mistake is never kept. */
bool yaml_read_kept(struct source **out, struct kept_sources *kept, const char *path,
                    struct arena *arena, struct problems *problems);

#endif
