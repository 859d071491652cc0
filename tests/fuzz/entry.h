/* What a fuzz target is: libFuzzer's entry, or that of alone.c, which runs named files once each.
 */
#ifndef TESTS_FUZZ_ENTRY_H
#define TESTS_FUZZ_ENTRY_H
#include <assert.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

/* Holds in every build, asserts or none. */
#define MUST(condition)                                                                            \
    do {                                                                                           \
        if (!(condition)) {                                                                        \
            fprintf(stderr, "%s:%d: must hold: %s\n", __FILE__, __LINE__, #condition);             \
            abort();                                                                               \
        }                                                                                          \
    } while (0)

#endif
