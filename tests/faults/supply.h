/* The C library's calls as a test wants them: an allocation that fails, a read that brings little.
 * Stands before the library's own, for this program and for the libraries below it. */
#ifndef TESTS_FAULTS_SUPPLY_H
#define TESTS_FAULTS_SUPPLY_H
#include <stdbool.h>
#include <stddef.h>

struct supply {
    size_t allocations; /* asked for since it was set */
    size_t fails_at;    /* the allocation that fails, from 1; 0: none */
    bool fails_on;      /* and all that follow */
    size_t reads, writes;
    size_t read_most, write_most;         /* bytes a call takes at most; 0: all */
    size_t read_fails_at, write_fails_at; /* from 1; 0: none */
    int error;                            /* what those fail with */
    bool is_interrupted;                  /* every other read and write is */
    void (*before_read)(void);            /* called once, before the next read; NULL: nothing */
    bool is_sheltered;                    /* inside GEOS_init_r, where nothing fails */
};

/* The one of this program. */
struct supply *supply(void);
/* All as usual. */
void supply_reset(void);

#endif
