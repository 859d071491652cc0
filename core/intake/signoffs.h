/* The sign-offs beside a design: house.signoff.yaml belongs to house.yaml. */
#ifndef INTAKE_SIGNOFFS_H
#define INTAKE_SIGNOFFS_H
#include "problem.h"
#include "signoff.h"

struct signoffs {
    struct signoff *items; /* as written */
    size_t count, capacity;
};

/* The file's name. NULL: no memory. */
const char *signoffs_path(const char *design_path, struct arena *arena);
/* Reads them into the arena; where there is no such file there are none. An item that cannot be
 * read is a problem and lifts nothing. False: a problem was told, or no memory. */
bool signoffs_read(struct signoffs *out, const char *design_path, struct arena *arena,
                   struct problems *problems);

#endif
