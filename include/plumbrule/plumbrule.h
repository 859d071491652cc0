/* Plumbrule: holds a rooftop-solar design against the rulebook of its town.
 *
 * The whole promise on one page. A pointer that comes back through `out` is yours to close; a
 * returned pointer belongs to the thing it was asked of. Nothing here reads a clock, the network or
 * the environment. Two threads may each run a desk of their own.
 *
 * An aid, not an approval: local codes and the authority having jurisdiction decide, and licensed
 * people must design, install and inspect. */
#ifndef PLUMBRULE_PLUMBRULE_H
#define PLUMBRULE_PLUMBRULE_H
#include <stdbool.h>
#include <stddef.h>

#ifdef __cplusplus
extern "C" {
#endif

#define PLUMBRULE_EXPORT __attribute__((visibility("default")))

/* How a check ended; also the program's exit codes. */
enum plumbrule_end {
    PLUMBRULE_STANDS = 0, /* nothing that must hold fails, nothing is open */
    PLUMBRULE_FAILS = 1,  /* a `shall` fails */
    PLUMBRULE_OPEN = 2,   /* a fact is missing, or a person must judge */
    PLUMBRULE_UNREAD = 3, /* a design, book or values file was not read, or no rule is in force */
    PLUMBRULE_RULE_BROKEN = 4, /* something is wrong in a rule file */
    PLUMBRULE_COMMAND = 64,    /* the command line is wrong */
    PLUMBRULE_NO_MEMORY = 70,
    PLUMBRULE_NOT_WRITTEN = 74 /* output was not written */
};

/* What stays warm between checks: books read, rules compiled, memory. */
struct plumbrule;

/* What to check with. All texts must outlive the call they are handed to. */
struct plumbrule_options {
    /* Sought first, in this order; the installed books and those of the source tree follow.
     * Ends in NULL; NULL: none. */
    const char *const *book_directories;
    /* The same for catalogues of equipment; the design's own folder comes before all. */
    const char *const *catalogue_directories;
    const char *const *books; /* names, lowest first; ends in NULL */
    const char *on;           /* YYYY-MM-DD, or NULL: the design's permit application date */
    const char *format;       /* "text", "json", "ndjson", "sarif", "junit" or "html" */
    bool with_working;        /* what each finding read and calculated, too */
    bool with_color;          /* text only */
    unsigned width;           /* text only; 0: 80 columns */
    bool failures_only;       /* sarif only: no results but those that fail */
};

/* False: no memory. */
PLUMBRULE_EXPORT bool plumbrule_open(struct plumbrule **out);
PLUMBRULE_EXPORT void plumbrule_close(struct plumbrule *plumbrule);

/* Checks one design file and gives back the report as text (UTF-8, ends in NUL), which belongs to
 * `plumbrule` and lives until its next call. Problems are part of the report. With
 * PLUMBRULE_NO_MEMORY the report is empty. Never PLUMBRULE_NOT_WRITTEN: writing is the caller's. */
PLUMBRULE_EXPORT enum plumbrule_end plumbrule_check(const char **report, size_t *length,
                                                    struct plumbrule *plumbrule,
                                                    const char *design_path,
                                                    const struct plumbrule_options *options);

/* "0.1.0" */
PLUMBRULE_EXPORT const char *plumbrule_version(void);

#ifdef __cplusplus
}
#endif
#endif
