/* Digests of files: the same bytes, the same digest. */
#ifndef BASE_DIGEST_H
#define BASE_DIGEST_H
#include <stddef.h>

enum { DIGEST_TEXT_SIZE = 65 };

/* SHA-256 as FIPS 180-4 (2015) has it, as 64 hexadecimal digits and a NUL. */
void digest_write(char text[DIGEST_TEXT_SIZE], const void *bytes, size_t length);

#endif
